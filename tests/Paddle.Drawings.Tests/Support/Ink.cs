using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Paddle.Drawings.Tests.Support;

/// <summary>A path as it stands in a written picture: its layer, how it is drawn, and the ends of its steps, mm of the picture.</summary>
internal sealed partial record Ink(string Layer, string Css, string Fill, double StrokeMm, bool IsDashed, IReadOnlyList<(double X, double Y)> Points)
{
    public double Left => Points.Min(p => p.X);
    public double Right => Points.Max(p => p.X);
    public double Top => Points.Min(p => p.Y);
    public double Bottom => Points.Max(p => p.Y);
    public double Width => Right - Left;
    public double Height => Bottom - Top;
    public (double X, double Y) Centre => ((Left + Right) / 2, (Top + Bottom) / 2);
    /// <summary>Whether it stands for wood.</summary>
    public bool IsWood => Fill == "#f6efe2";
    public bool IsUpright => Points.Count == 2 && Math.Abs(Points[0].X - Points[1].X) < 1e-6;

    /// <summary>All paths of a picture in the order in which they are drawn.</summary>
    public static List<Ink> Of(XElement svg) =>
    [
        .. svg.Descendants(SvgReader.Svg + "path").Select(path => (Group: path.Parent!, Data: (string)path.Attribute("d")!)).Select(path => new Ink(
            ((string)path.Group.Attribute("class")!).Split(' ')[0], (string)path.Group.Attribute("class")!, (string)path.Group.Attribute("fill")!,
            SvgReader.Number((string)path.Group.Attribute("stroke-width")!), ((string?)path.Group.Attribute("stroke-dasharray"))?.Split(' ').Length == 2, Ends(path.Data))),
    ];

    private static List<(double X, double Y)> Ends(string data)
    {
        var ends = new List<(double X, double Y)>();
        foreach (Match step in Step().Matches(data))
        {
            double[] numbers = [.. Decimal().Matches(step.Value).Select(number => SvgReader.Number(number.Value))];
            ends.Add((numbers[^2], numbers[^1]));
        }

        return ends;
    }

    [GeneratedRegex("[MLC][^MLCZ]+")]
    private static partial Regex Step();

    [GeneratedRegex(@"-?[0-9]+(?:\.[0-9]+)?")]
    private static partial Regex Decimal();
}
