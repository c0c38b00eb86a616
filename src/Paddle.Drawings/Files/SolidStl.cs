using System.Buffers.Binary;
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

    public string FileName => "solid.stl";
    public string MediaType => "model/stl";
    public string Description => "The solid as a closed mesh in millimetres, for a viewer, a mill or a model.";
    public string Version => "2";
    public bool DependsOnPaper => false;
    public bool IsHeavy => true;

    public void Write(DesignReport report, DrawingContext context, Stream output, CancellationToken cancellation = default)
    {
        using var made = Open(report, context);
        made.CopyTo(output);
    }

    public Stream Open(DesignReport report, DrawingContext context)
    {
        var mesh = new SolidMesh(report);
        var header = new byte[StlStream.HeaderBytes];
        Encoding.ASCII.GetBytes(Name(report)).CopyTo(header, 0);
        BinaryPrimitives.WriteUInt32LittleEndian(header.AsSpan(HeaderCharacters), (uint)mesh.FacetCount);
        return new StlStream(header, mesh);
    }

    // A header that began with "solid" would be taken for the text form. What is wrong with the paddle goes first: readers show the beginning.
    private static string Name(DesignReport report)
    {
        const string What = "Canoe paddle, binary STL, millimetres", Short = "; paddle, mm";
        if (!OutcomeNotice.IsNeeded(report)) return What;
        var notice = OutcomeNotice.Brief(report, HeaderCharacters - Short.Length);
        return notice.Length + 2 + What.Length <= HeaderCharacters ? $"{notice}; {What}" : notice + Short;
    }
}
