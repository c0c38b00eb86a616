using Paddle.Design.Solid;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>Cross-sections as closed chains, y to the right and z up about the section's own centre, mm.</summary>
internal static class SectionPaths
{
    /// <summary>Octagon line from each edge, as a share of the face: 1 − 1/√2, so that all eight facets touch the ellipse.</summary>
    public const double EightSide = 0.2928932188134524;

    /// <summary>Sixteen-side line from each corner of the octagon, as a share of the facet, by the geometry of the regular figures.</summary>
    public const double SixteenSide = 0.2598915325;

    /// <summary>The section, round once, against the clock from the right edge.</summary>
    /// <param name="chords">Chords in a quarter; the points crowd towards the edge, where the curve turns.</param>
    public static IReadOnlyList<Point> Closed(Section section, int chords = 32)
    {
        var quarter = new Point[chords + 1];
        for (var j = 0; j <= chords; j++)
        {
            var u = j == chords ? 1 : Math.Sin(Math.PI / 2 * j / chords);
            quarter[j] = new(u * section.HalfWidthMm, section.HalfThicknessAtMm(u));
        }

        var points = new List<Point>(4 * chords + 4);
        for (var j = chords; j >= 0; j--) points.Add(quarter[j]);
        for (var j = 1; j <= chords; j++) points.Add(new(-quarter[j].X, quarter[j].Y));
        for (var j = chords; j >= 0; j--) points.Add(new(-quarter[j].X, -quarter[j].Y));
        for (var j = 1; j <= chords; j++) points.Add(new(quarter[j].X, -quarter[j].Y));
        return points;
    }

    /// <summary>The eight-sided shaft around an oval: each facet touches it.</summary>
    public static IReadOnlyList<Point> Octagon(double halfWidth, double halfThickness)
    {
        double y = halfWidth * (1 - 2 * EightSide), z = halfThickness * (1 - 2 * EightSide);
        return
        [
            new(halfWidth, z), new(y, halfThickness), new(-y, halfThickness), new(-halfWidth, z),
            new(-halfWidth, -z), new(-y, -halfThickness), new(y, -halfThickness), new(halfWidth, -z),
        ];
    }

    /// <summary>The sixteen places on the octagon's facets where the next facets begin.</summary>
    public static IReadOnlyList<Point> SixteenMarks(IReadOnlyList<Point> octagon)
    {
        var marks = new List<Point>(16);
        for (var i = 0; i < octagon.Count; i++)
        {
            Point a = octagon[i], b = octagon[(i + 1) % octagon.Count];
            marks.Add(a + SixteenSide * (b - a));
            marks.Add(b + SixteenSide * (a - b));
        }

        return marks;
    }
}
