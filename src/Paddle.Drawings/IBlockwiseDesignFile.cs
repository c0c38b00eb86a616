using Paddle.Design;

namespace Paddle.Drawings;

/// <summary>A file too large to be held whole for every caller: its bytes are made as they are read, from any place on.</summary>
internal interface IBlockwiseDesignFile : IDesignFile
{
    /// <summary>Opens the bytes that <see cref="IDesignFile.Write"/> writes. Nothing before the place that is read from is made.</summary>
    /// <param name="report">The design.</param>
    /// <returns>A stream to read and seek in, for one reader.</returns>
    Stream Open(DesignReport report, DrawingContext context);
}
