using Paddle.Design;
using Paddle.Design.Units;

namespace Paddle.Drawings;

/// <summary>One kind of file that a design can be had as.</summary>
public interface IDesignFile
{
    /// <summary>File name, which also names it in a URL, such as <c>outline.svg</c>.</summary>
    string FileName { get; }
    /// <summary>Media type, such as <c>image/svg+xml</c>.</summary>
    string MediaType { get; }
    /// <summary>What is in it, in one sentence, for a list of files.</summary>
    string Description { get; }
    /// <summary>Changes whenever the same design would be written differently: part of a cache's key.</summary>
    string Version { get; }
    /// <summary>Whether <see cref="DrawingContext.Paper"/> changes what is written.</summary>
    bool DependsOnPaper { get; }
    /// <summary>Whether making it costs many times what the design itself costs.</summary>
    bool IsHeavy => false;

    /// <summary>Writes the file; the same design and context give the same bytes.</summary>
    /// <param name="report">The design.</param>
    /// <param name="output">Receives the bytes; stays open, need not seek.</param>
    void Write(DesignReport report, DrawingContext context, Stream output, CancellationToken cancellation = default);
}

/// <summary>A file too large to be held whole for every caller: its bytes are made as they are read, from any place on.</summary>
internal interface IBlockwiseDesignFile : IDesignFile
{
    /// <summary>Opens the bytes that <see cref="IDesignFile.Write"/> writes. Nothing before the place that is read from is made.</summary>
    /// <param name="report">The design.</param>
    /// <returns>A stream to read and seek in, for one reader.</returns>
    Stream Open(DesignReport report, DrawingContext context);
}

/// <summary>What a drawing needs to know beside the design.</summary>
/// <param name="Label">The owner's name for the design; any text, printed safely.</param>
/// <param name="EngineVersion">Version of the service that computed the design.</param>
/// <param name="DesignCode">Code by which the design can be had again, or null.</param>
/// <param name="Paper">Paper of printed templates.</param>
public sealed record DrawingContext(
    string Label,
    DrawingUnits Units,
    string EngineVersion,
    string? DesignCode = null,
    PaperSize Paper = PaperSize.A4);

/// <summary>Paper that templates are printed on.</summary>
public enum PaperSize
{
    /// <summary>210 × 297 mm.</summary>
    A4,
    /// <summary>8 1/2 × 11 in.</summary>
    Letter,
    /// <summary>297 × 420 mm.</summary>
    A3,
    /// <summary>One sheet as long as the template, for a roll plotter.</summary>
    Roll,
}
