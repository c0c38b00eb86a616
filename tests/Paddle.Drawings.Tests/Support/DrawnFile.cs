using System.Text;
using System.Xml.Linq;
using Paddle.Design;
using Paddle.Design.Units;

namespace Paddle.Drawings.Tests.Support;

/// <summary>A word or figure of a drawing and where it stands, mm.</summary>
internal sealed record Lettered(string Text, double X, double Y);

/// <summary>A file as it is written, and the figures lettered in it read as a maker reads them.</summary>
internal static class DrawnFile
{
    public static byte[] Written(string file, DesignReport report, DrawingContext context)
    {
        using var stream = new WriteOnlyStream();
        DesignFiles.Find(file)!.Write(report, context, stream);
        return stream.Bytes;
    }

    public static byte[] Written(string file, DesignReport report, DrawingUnits units) => Written(file, report, SampleDesigns.Context(units));

    public static XDocument Svg(string file, DesignReport report, DrawingUnits units) => XDocument.Parse(Encoding.UTF8.GetString(Written(file, report, units)));

    public static List<Lettered> Texts(XDocument drawing) =>
    [
        .. drawing.Descendants(SvgReader.Svg + "text").Select(text => new Lettered(
            text.Value, SvgReader.Number((string)text.Attribute("x")!), SvgReader.Number((string)text.Attribute("y")!))),
    ];

    /// <summary>What stands in one line with a header, from left to right.</summary>
    public static List<Lettered> Row(IReadOnlyList<Lettered> texts, string header)
    {
        var head = texts.Single(text => text.Text == header);
        return [.. texts.Where(text => Math.Abs(text.Y - head.Y) < 1e-6 && text != head).OrderBy(text => text.X)];
    }

    public static double Millimetres(string figure, DrawingUnits units) => units == DrawingUnits.Metric ? SvgReader.Number(figure) : InchRule.Read(figure);

    /// <summary>Least step of a figure, mm: a tenth, or a thirty-second and beyond a foot a sixteenth of an inch.</summary>
    public static double Step(double mm, DrawingUnits units) => units == DrawingUnits.Metric ? 0.1 : 25.4 / (mm > 300 ? 16 : 32);
}
