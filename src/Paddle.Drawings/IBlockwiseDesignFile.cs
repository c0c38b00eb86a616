using Paddle.Design;

namespace Paddle.Drawings;

/// <summary>A file too large to be held whole for every caller: it is made block by block, at the pace of whoever takes the blocks.</summary>
public interface IBlockwiseDesignFile : IDesignFile
{
    /// <summary>The bytes that <see cref="IDesignFile.Write"/> writes, in blocks.</summary>
    /// <param name="report">The design.</param>
    /// <param name="context">Label, units, paper and origin.</param>
    /// <returns>The blocks in order. Each is good only until the next is asked for: they share their room.</returns>
    IEnumerable<ReadOnlyMemory<byte>> Blocks(DesignReport report, DrawingContext context);
}
