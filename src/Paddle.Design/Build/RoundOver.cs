namespace Paddle.Design.Build;

/// <summary>One round-over bit on the squared shaft.</summary>
/// <param name="RadiusMm">Radius of the bit, mm.</param>
/// <param name="FlatLeftMm">Flat left for the bearing on the thinner side, mm.</param>
/// <param name="LeftAtCornerMm">Wood left at the corner for the hand tools, mm.</param>
/// <param name="Name">Radius as bits are sold.</param>
public sealed record RoundOverChoice(double RadiusMm, double FlatLeftMm, double LeftAtCornerMm, string Name);

/// <summary>Which round-over bits may be used on a shaft. Theory M5.</summary>
public static class RoundOver
{
    /// <summary>Flat that the bearing needs, mm. Common practice, no source.</summary>
    public const double LeastFlatMm = 3;

    private static readonly (double Mm, string Name)[] Sold =
    [
        (3.175, "1/8 in"), (4.7625, "3/16 in"), (6, "6 mm"), (6.35, "1/4 in"), (7.9375, "5/16 in"), (8, "8 mm"), (9.525, "3/8 in"),
        (10, "10 mm"), (12, "12 mm"), (12.7, "1/2 in"), (15.875, "5/8 in"), (19.05, "3/4 in"),
    ];

    /// <summary>
    /// Bits that never cut into the oval: <c>r &lt;= b/2</c>, and leave the bearing its flat: <c>r &lt;= (b - 3 mm)/2</c>, b
    /// being the smaller side. Largest first.
    /// </summary>
    /// <param name="widthMm">Least width of the squared shaft, mm.</param>
    /// <param name="thicknessMm">Least thickness of the squared shaft, mm.</param>
    /// <returns>Up to three bits. Radii as sold: from memory.</returns>
    public static IReadOnlyList<RoundOverChoice> Choices(double widthMm, double thicknessMm)
    {
        double smaller = Math.Min(widthMm, thicknessMm), larger = Math.Max(widthMm, thicknessMm);
        return
        [
            .. Sold.Where(bit => bit.Mm <= (smaller - LeastFlatMm) / 2)
                .OrderByDescending(bit => bit.Mm)
                .Take(3)
                .Select(bit => new RoundOverChoice(
                    bit.Mm, smaller - 2 * bit.Mm, Rounding.LeftAtCornerMm((smaller + larger) / 2, bit.Mm), bit.Name)),
        ];
    }
}
