using System.Globalization;
using Paddle.Design.Solid;
using Paddle.Design.Units;

namespace Paddle.Design.Build;

/// <summary>Lines to mark at one station of the shaft before its corners come off; all in mm.</summary>
/// <param name="Number">Number of the station on the build sheet.</param>
/// <param name="XMm">Place from the top of the grip.</param>
/// <param name="WidthMm">Width of the squared shaft there, seen on the face: finished width and allowance.</param>
/// <param name="ThicknessMm">Thickness of the squared shaft there: finished thickness and allowance.</param>
/// <param name="LineOnFaceMm">Eight-side line from each edge of the faces: 0.2929 of the width.</param>
/// <param name="LineOnSideMm">Eight-side line from each edge of the sides: 0.2929 of the thickness.</param>
/// <param name="ChamferDegrees">Angle between the corner facet and the face: 45 on a square shaft only.</param>
/// <param name="SixteenOnFaceMm">Sixteen-side line in from each corner of the octagon on the faces, mm.</param>
/// <param name="SixteenOnSideMm">The same on the sides, mm.</param>
/// <param name="SixteenOnCornerMm">The same on the corner facets, mm.</param>
internal sealed record ShaftLine(
    int Number, double XMm, double WidthMm, double ThicknessMm, double LineOnFaceMm, double LineOnSideMm, double ChamferDegrees,
    double SixteenOnFaceMm, double SixteenOnSideMm, double SixteenOnCornerMm);

/// <summary>Layout of the shaft's eight and sixteen sides. Theory M1 and M2.</summary>
internal static class ShaftLayout
{
    /// <summary>Lines on one rectangle.</summary>
    public static ShaftLine At(int number, double xMm, double widthMm, double thicknessMm)
    {
        double face = Rounding.EightSideLine * widthMm, side = Rounding.EightSideLine * thicknessMm;
        return new(
            number,
            xMm,
            widthMm,
            thicknessMm,
            face,
            side,
            Math.Atan2(side, face) * 180 / Math.PI,
            Rounding.SixteenSideLine * Rounding.EightSideFlat * widthMm,
            Rounding.SixteenSideLine * Rounding.EightSideFlat * thicknessMm,
            Rounding.SixteenSideLine * Math.Sqrt(face * face + side * side));
    }

    /// <summary>Lines at the shaft's stations, on the shaft squared to size with the eight-side stage's allowance.</summary>
    /// <param name="stations">Numbered stations of the eight-sided stage.</param>
    /// <param name="zones">Zone of each station, in the same order.</param>
    internal static IReadOnlyList<ShaftLine> For(IReadOnlyList<StageStation> stations, IReadOnlyList<Zone> zones)
    {
        var lines = new List<ShaftLine>();
        for (var i = 0; i < stations.Count; i++)
        {
            if (zones[i] == Zone.Shaft)
                lines.Add(At(stations[i].Number, stations[i].XMm, 2 * stations[i].HalfBreadthMm, stations[i].ThicknessMm));
        }

        return lines;
    }
}

/// <summary>A rectangle taken to eight sides, sixteen sides and an ellipse. All lines scale with the side that they lie on, so one set of
/// pure numbers serves the square and, by stretching one axis (an affine map), the rectangle. Theory M1 to M3, M5.</summary>
internal static class Rounding
{
    /// <summary>Line of the octagon from each edge, as a share of the face: <c>1 - 1/sqrt 2 = 0.2929</c>. Theory M1. Source: geometry of
    /// the regular octagon.</summary>
    public static double EightSideLine { get; } = 1 - Math.Sqrt(0.5);

    /// <summary>Flat left on a face at eight sides, as a share of the face: <c>sqrt 2 - 1 = 0.4142</c>. Theory M1.</summary>
    public static double EightSideFlat { get; } = Math.Sqrt(2) - 1;

    /// <summary>Line of the sixteen sides from each corner of the octagon, as a share of the facet: <c>(tan(pi/8) - tan(pi/16))/(2
    /// tan(pi/8)) = 0.2599</c>. Theory M2. Source: both polygons touch the same circle, whose facet at n sides is <c>w
    /// tan(pi/n)</c>.</summary>
    public static double SixteenSideLine { get; } = (Math.Tan(Math.PI / 8) - Math.Tan(Math.PI / 16)) / (2 * Math.Tan(Math.PI / 8));

    /// <summary>Area of the polygon of n sides that touches the ellipse, over width times thickness: <c>(n/4) tan(pi/n)</c>: 1, 0.8284 and
    /// 0.7956 for 4, 8 and 16 sides. Theory M3. Source: geometry of the regular polygon round a circle.</summary>
    /// <param name="sides">n, 4 or more.</param>
    public static double PolygonAreaShare(int sides) => sides / 4.0 * Math.Tan(Math.PI / sides);

    /// <summary>Area of the ellipse over width times thickness, pi/4. Theory M3.</summary>
    public const double EllipseAreaShare = Math.PI / 4;

    /// <summary>Wood left at the 45 degree corner of a square by a round-over bit, mm: <c>(sqrt 2 - 1)(w/2 - r)</c>. Theory M5. Source:
    /// distance from a quarter circle of radius r to one of radius w/2 along the diagonal.</summary>
    /// <param name="widthMm">w, mm.</param>
    /// <param name="radiusMm">r, mm.</param>
    public static double LeftAtCornerMm(double widthMm, double radiusMm) => (Math.Sqrt(2) - 1) * (widthMm / 2 - radiusMm); // theory M5
}

/// <summary>One round-over bit on the squared shaft.</summary>
/// <param name="RadiusMm">Radius, mm.</param>
/// <param name="FlatLeftMm">Flat left for the bearing on the thinner side, mm.</param>
/// <param name="LeftAtCornerMm">Wood left at the corner for the hand tools, mm.</param>
/// <param name="Name">Radius as bits are sold.</param>
internal sealed record RoundOverChoice(double RadiusMm, double FlatLeftMm, double LeftAtCornerMm, string Name);

/// <summary>Which round-over bits may be used on a shaft. Theory M5.</summary>
internal static class RoundOver
{
    /// <summary>Flat that the bearing needs, mm. Common practice, no source.</summary>
    public const double LeastFlatMm = 3;

    private static readonly double[] SoldMm = [6, 8, 10, 12, 16, 20];
    private static readonly double[] SoldIn = [1.0 / 8, 3.0 / 16, 1.0 / 4, 5.0 / 16, 3.0 / 8, 1.0 / 2, 5.0 / 8, 3.0 / 4];

    /// <summary>Bits that never cut into the oval: <c>r &lt;= b/2</c>, and leave the bearing its flat: <c>r &lt;= (b - 3 mm)/2</c>, b being
    /// the smaller side. Largest first.</summary>
    /// <param name="widthMm">Least width of the squared shaft, mm.</param>
    /// <param name="thicknessMm">Least thickness of the squared shaft, mm.</param>
    /// <param name="units">Units that the shop buys its bits in.</param>
    /// <returns>Up to three bits. Radii as sold: from memory.</returns>
    public static IReadOnlyList<RoundOverChoice> Choices(double widthMm, double thicknessMm, DrawingUnits units = DrawingUnits.Metric)
    {
        double smaller = Math.Min(widthMm, thicknessMm), larger = Math.Max(widthMm, thicknessMm);
        var sold = units == DrawingUnits.Metric ? SoldMm : SoldIn.Select(inches => inches * DrawnLength.MmPerInch);
        return
        [
            .. sold.Where(radius => radius <= (smaller - LeastFlatMm) / 2).OrderDescending().Take(3)
                .Select(radius => new RoundOverChoice(
                    radius, smaller - 2 * radius, Rounding.LeftAtCornerMm((smaller + larger) / 2, radius), DrawnLength.Text(radius, units))),
        ];
    }
}

/// <summary>A spar gauge: two fences that ride the shaft's sides, two points between them that scribe the eight-side lines.</summary>
/// <param name="BetweenFencesMm">Clear width between the fences' points, mm.</param>
/// <param name="FirstPointMm">Fence to the first point, mm.</param>
/// <param name="BetweenPointsMm">Between the two points, mm.</param>
/// <param name="LastPointMm">Second point to the other fence, mm.</param>
/// <param name="LineErrorMm">How far its line lies outside the exact one on the widest face, mm: wood left on, never cut into.</param>
/// <remarks>Theory M1. Source of 7:10:7: a maritime skills training page and a boat-building page, read; 7/24 = 0.2917 against 0.2929. The
/// fences must bear at points: round pins shift the line when the gauge is canted on a taper.</remarks>
internal sealed record SparGauge(
    double BetweenFencesMm, double FirstPointMm, double BetweenPointsMm, double LastPointMm, double LineErrorMm)
{
    /// <summary>Share of the width at which the gauge scribes: 7/24.</summary>
    public const double Share = 7.0 / 24;
    // 24 parts of 1/64 in: such a gauge is set out with a rule, 7, 10 and 7 marks of it at a time.
    private const double InchStepMm = 24 * DrawnLength.MmPerInch / 64;

    /// <summary>The gauge for a widest face.</summary>
    /// <param name="widestMm">Widest face that it rides on, mm.</param>
    /// <param name="units">Units of the rule that it is set out with.</param>
    public static SparGauge For(double widestMm, DrawingUnits units = DrawingUnits.Metric)
    {
        // A millimetre of play lets it pass the widest place; canted, it fits every narrower one and keeps its shares.
        var between = units == DrawingUnits.Metric ? Math.Ceiling(widestMm) + 1 : Math.Ceiling((widestMm + 1) / InchStepMm) * InchStepMm;
        return new(between, between * Share, between * (1 - 2 * Share), between * Share, (Rounding.EightSideLine - Share) * widestMm);
    }

    /// <summary>Clear width between the fences, in words.</summary>
    public string Between(DrawingUnits units) => Text(BetweenFencesMm, units);

    /// <summary>Fence to the first point, in words.</summary>
    public string First(DrawingUnits units) => Text(FirstPointMm, units);

    /// <summary>Between the points, in words.</summary>
    public string Apart(DrawingUnits units) => Text(BetweenPointsMm, units);

    // A gauge is built once and must be right: hundredths of a millimetre, or the marks that it was set out by.
    private static string Text(double mm, DrawingUnits units) => units == DrawingUnits.Metric
        ? mm.ToString("0.##", CultureInfo.InvariantCulture) + " mm"
        : DrawnLength.InchFigure(mm, 64) + " in";
}
