using Paddle.Design.Units;

namespace Paddle.Design.Build;

/// <summary>One round-over bit on the squared shaft.</summary>
/// <param name="RadiusMm">Radius of the bit, mm.</param>
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
            .. sold.Where(radius => radius <= (smaller - LeastFlatMm) / 2)
                .OrderDescending()
                .Take(3)
                .Select(radius => new RoundOverChoice(
                    radius, smaller - 2 * radius, Rounding.LeftAtCornerMm((smaller + larger) / 2, radius), DrawnLength.Text(radius, units))),
        ];
    }
}
