using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;

namespace Paddle.Design.Layout;

/// <summary>Outlines on a board as polygons of a geometry library, which shares nothing with the search: what it measures is what is told.</summary>
internal static class ExactClearance
{
    // A chord of a twentieth of a millimetre's sag would be seen on no board; these are a tenth of that.
    private const int PointsByPiece = 160;
    private static readonly GeometryFactory Factory = new();

    /// <summary>A paddle's outline where it lies.</summary>
    public static Polygon Outline(LayoutPaddle paddle, PaddlePlacement at)
    {
        var edge = new List<(double X, double Y)>();
        foreach (var piece in paddle.Outline.Pieces)
        {
            for (var k = edge.Count == 0 ? 0 : 1; k <= PointsByPiece; k++) edge.Add((piece.X((double)k / PointsByPiece), piece.Y((double)k / PointsByPiece)));
        }

        var sign = at.RotatedDegrees == 0 ? 1 : -1;
        Coordinate On(double x, double y) => new(at.XMm + sign * x, at.YMm + sign * y);
        var ring = edge.Select(p => On(p.X, p.Y)).Concat(Enumerable.Reverse(edge).Select(p => On(p.X, -p.Y))).ToList();
        ring.Add(ring[0].Copy());
        return Factory.CreatePolygon([.. ring.Where((point, k) => k == 0 || !point.Equals2D(ring[k - 1]))]);
    }

    /// <summary>Least distance between any two of some outlines, mm; null for fewer than two.</summary>
    public static double? LeastMm(IReadOnlyList<Polygon> outlines)
    {
        double? least = null;
        for (var a = 0; a < outlines.Count; a++)
        {
            for (var b = a + 1; b < outlines.Count; b++) least = Math.Min(least ?? double.PositiveInfinity, IndexedFacetDistance.Distance(outlines[a], outlines[b]));
        }

        return least;
    }

    /// <summary>Whether a polygon's sides cross or touch each other.</summary>
    public static bool CrossesItself(IReadOnlyList<(double X, double Y)> points)
    {
        Coordinate[] ring = [.. points.Select(p => new Coordinate(p.X, p.Y)), new(points[0].X, points[0].Y)];
        return !Factory.CreatePolygon(ring).IsValid;
    }
}
