using System.Buffers.Binary;
using System.Numerics;
using System.Text;
using Paddle.Design;
using Paddle.Drawings.Solids;
using Paddle.Drawings.Views;

namespace Paddle.Drawings.Files;

/// <summary>The solid as a binary STL in millimetres: x from the top of the grip along the shaft, y across, z off the face.</summary>
/// <remarks>Header of 80 bytes, count of facets, then 50 bytes a facet, little-endian; from memory of the format's public descriptions.</remarks>
internal sealed class SolidStl : IBlockwiseDesignFile
{
    private const int HeaderCharacters = 80;
    private const int FacetBytes = 50;
    private const int FacetsPerBlock = 1200;

    public string FileName => "solid.stl";

    public string MediaType => "model/stl";

    public string Description => "The solid as a closed mesh in millimetres, for a viewer, a mill or a model.";

    public string Version => "2";

    public bool DependsOnPaper => false;

    public void Write(DesignReport report, DrawingContext context, Stream output)
    {
        foreach (var block in Blocks(report, context)) output.Write(block.Span);
    }

    public IEnumerable<ReadOnlyMemory<byte>> Blocks(DesignReport report, DrawingContext context)
    {
        var mesh = new SolidMesh(report);
        var header = new byte[84];

        Encoding.ASCII.GetBytes(Name(report)).CopyTo(header, 0);
        BinaryPrimitives.WriteUInt32LittleEndian(header.AsSpan(80), (uint)mesh.Facets().LongCount());
        yield return header;

        var block = new byte[FacetsPerBlock * FacetBytes];
        var filled = 0;
        foreach (var (a, b, c) in mesh.Facets())
        {
            WriteFacet(block.AsSpan(filled), a, b, c);
            filled += FacetBytes;
            if (filled < block.Length) continue;
            yield return block;
            filled = 0;
        }

        if (filled > 0) yield return block.AsMemory(0, filled);
    }

    // A header that began with "solid" would be taken for the text form. What is wrong with the paddle goes first: readers show the beginning.
    private static string Name(DesignReport report)
    {
        const string What = "Canoe paddle, binary STL, millimetres", Short = "; paddle, mm";
        if (!OutcomeNotice.IsNeeded(report)) return What;
        var notice = OutcomeNotice.Brief(report, HeaderCharacters - Short.Length);
        return notice.Length + 2 + What.Length <= HeaderCharacters ? $"{notice}; {What}" : notice + Short;
    }

    private static void WriteFacet(Span<byte> bytes, Corner a, Corner b, Corner c)
    {
        Vector3 from = Vector(a), normal = Vector3.Cross(Vector(b) - from, Vector(c) - from);
        var length = normal.Length();
        normal = length > 0 ? normal / length : Vector3.Zero;
        Put(bytes, normal);
        Put(bytes[12..], from);
        Put(bytes[24..], Vector(b));
        Put(bytes[36..], Vector(c));
        bytes[48] = bytes[49] = 0;
    }

    private static Vector3 Vector(Corner corner) => new(corner.X, corner.Y, corner.Z);

    private static void Put(Span<byte> bytes, Vector3 v)
    {
        BinaryPrimitives.WriteSingleLittleEndian(bytes, v.X);
        BinaryPrimitives.WriteSingleLittleEndian(bytes[4..], v.Y);
        BinaryPrimitives.WriteSingleLittleEndian(bytes[8..], v.Z);
    }
}
