using Paddle.Design;

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
