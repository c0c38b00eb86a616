using NetTopologySuite.Geometries;
using Paddle.Design.Layout;
using Paddle.Design.Outline;
using Paddle.Design.Request;

namespace Paddle.Design.Tests.Layout;

/// <summary>Paddles and boards for the layouts, and a second way to look at where they lie: polygons of NetTopologySuite.</summary>
internal static class LayoutSamples
{
    internal const double GapMm = 5.2;
    private static readonly GeometryFactory Factory = new();

    internal static LayoutPaddle NewPaddle(string id, double handMm, string family = "ottertail", int count = 1, string wood = "white-ash", bool isOptional = false) => LayoutPaddle.Of(
        id, PaddleDesigner.Design(new DesignRequest { HandSpacingMm = handMm, Blade = new() { Family = family }, Wood = new() { Species = wood } }), count, isOptional);

    internal static RackBoard Board(string id, double lengthMm, double widthMm, int? count = 1, double? price = null, params DefectSpan[] defects) =>
        new(id, lengthMm, widthMm, 33.3, "white-ash", count, price, 0, defects);

    internal static LayoutOrder Order(IReadOnlyList<RackBoard> boards, IReadOnlyList<LayoutPaddle> paddles, double seconds = 8, bool isByPrice = false) =>
        new(boards, paddles, GapMm, 1, TimeSpan.FromSeconds(seconds), isByPrice);

    internal static BoardLayout Solve(LayoutOrder order) => LayoutReport.Of(order, default);

    /// <summary>The outline where the answer says it lies, from half-breadths at every millimetre.</summary>
    internal static Polygon OutlineOf(LayoutOrder order, PaddlePlacement place)
    {
        var curve = order.Paddles.Single(paddle => paddle.Id == place.PaddleId).Outline;
        var sign = place.RotatedDegrees == 0 ? 1 : -1;
        var xs = Enumerable.Range(0, (int)curve.EndMm + 1).Select(k => (double)k).Append(curve.EndMm).Distinct().ToArray();
        Coordinate At(double x, double y) => new(place.XMm + sign * x, place.YMm + sign * y);
        var ring = xs.Select(x => At(x, curve.HalfBreadthMm(x))).Concat(xs.Reverse().Select(x => At(x, -curve.HalfBreadthMm(x)))).ToList();
        ring.Add(ring[0].Copy());
        return Factory.CreatePolygon([.. ring.Where((point, k) => k == 0 || !point.Equals2D(ring[k - 1]))]);
    }

    internal static Polygon Rectangle(double xMm, double yMm, double lengthMm, double widthMm) => Factory.CreatePolygon(
        [new(xMm, yMm), new(xMm + lengthMm, yMm), new(xMm + lengthMm, yMm + widthMm), new(xMm, yMm + widthMm), new(xMm, yMm)]);

    internal static Geometry Circle(double xMm, double yMm, double radiusMm) => Factory.CreatePoint(new Coordinate(xMm, yMm)).Buffer(radiusMm, 32);

    /// <summary>Everything that a layout must keep, looked at with the polygons.</summary>
    internal static void AssertSound(LayoutOrder order, BoardLayout layout)
    {
        foreach (var cut in layout.Boards)
        {
            var board = order.Boards.Single(one => one.Id == cut.BoardId);
            var places = layout.Placements.Where(one => one.BoardId == cut.BoardId && one.BoardCopy == cut.Copy).ToList();
            var outlines = places.ConvertAll(place => OutlineOf(order, place));
            var inside = Rectangle(-0.02, -0.02, board.LengthMm + 0.04, board.WidthMm + 0.04);
            Assert.All(outlines, outline => Assert.True(inside.Covers(outline)));
            for (var a = 0; a < outlines.Count; a++)
            {
                for (var b = a + 1; b < outlines.Count; b++) Assert.True(outlines[a].Distance(outlines[b]) >= order.GapMm - 0.02, $"{places[a]} {places[b]}");
            }

            Assert.Equal(places.Count, cut.Paddles);
        }

        Assert.Equal(layout.Placements.Count, layout.Placements.Select(one => (one.PaddleId, one.Copy)).Distinct().Count());
        Assert.All(order.Paddles, paddle => Assert.Equal(
            paddle.Count, layout.Placements.Count(one => one.PaddleId == paddle.Id) + layout.Unplaced.Where(one => one.PaddleId == paddle.Id).Sum(one => one.Count)));
        Assert.All(order.Boards.Where(board => board.Count is not null), board => Assert.True(layout.Boards.Count(cut => cut.BoardId == board.Id) <= board.Count));
    }

    /// <summary>The least width that two paddles need on a board, by trying every millimetre along it both ways round; half-breadths at every half
    /// millimetre, widened by the gap as a disc widens them.</summary>
    internal static double LeastPairMm(LayoutPaddle a, LayoutPaddle b, double boardMm)
    {
        var wide = Widened(Halves(a, isTurned: false));
        var reach = (int)(2 * GapMm);
        var least = double.PositiveInfinity;
        foreach (var isTurned in (bool[])[false, true])
        {
            var other = Halves(b, isTurned);
            for (var along = -(int)(boardMm - a.LengthMm); along <= (int)(boardMm - b.LengthMm); along++)
            {
                var distance = 0.0;
                var shift = 2 * along + reach;
                for (var m = Math.Max(0, shift); m < Math.Min(wide.Length, shift + other.Length); m++) distance = Math.Max(distance, wide[m] + other[m - shift]);
                least = Math.Min(least, Math.Max(a.HalfWidthMm, distance + b.HalfWidthMm) - Math.Min(-a.HalfWidthMm, distance - b.HalfWidthMm));
            }
        }

        return least;
    }

    private static double[] Halves(LayoutPaddle paddle, bool isTurned) =>
        [.. Enumerable.Range(0, (int)(2 * paddle.LengthMm) + 1).Select(k => paddle.Outline.HalfBreadthMm(isTurned ? paddle.LengthMm - k / 2.0 : k / 2.0))];

    private static double[] Widened(double[] halves)
    {
        var reach = (int)(2 * GapMm);
        var wide = new double[halves.Length + 2 * reach];
        Array.Fill(wide, double.NegativeInfinity);
        for (var t = -reach; t <= reach; t++)
        {
            for (var k = 0; k < halves.Length; k++) wide[k + t + reach] = Math.Max(wide[k + t + reach], halves[k] + Math.Sqrt(GapMm * GapMm - t * t / 4.0));
        }

        return wide;
    }

    internal static IEnumerable<string> Families => BladeFamilies.All.Select(family => family.Id);
}
