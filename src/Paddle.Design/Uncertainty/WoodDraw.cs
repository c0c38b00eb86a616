using Paddle.Design.Wood;

namespace Paddle.Design.Uncertainty;

/// <summary>Draws the wood of one stick out of what is published of its species' scatter: density and strengths normal, as the 5th percentiles are
/// taken (W6), the modulus log-normal, for flex goes as one over it. Theory U1–U2.</summary>
/// <param name="mean">The wood in use: means, and strengths that 19 sticks in 20 exceed.</param>
/// <param name="isDensityMeasured">Whether the maker weighed the board: then its density is known.</param>
/// <param name="isModulusMeasured">Whether its modulus was tested: then that is known.</param>
/// <remarks>Strength keeps its whole scatter whatever was measured: a heavy or stiff board is not credited with strength nobody tested.</remarks>
internal sealed class WoodDraw(WoodInUse mean, bool isDensityMeasured, bool isModulusMeasured)
{
    /// <summary>How many normal numbers a draw takes: density, and what is left of bending strength, modulus and strength across the grain.</summary>
    internal const int Dimensions = 4;

    // Normal scatter reaches below nothing, four deviations down and more; there is no such wood.
    private const double LeastShare = 0.05;

    /// <summary>Correlation of bending strength and modulus.</summary>
    /// <remarks>JCSS Probabilistic Model Code, part 3.5 (timber), from memory. A stick that is weak is mostly limp too: density alone would make
    /// it 0.2, and a limp stick under a thrust would too often have strength to spare.</remarks>
    internal const double StiffWithStrong = 0.8;

    private readonly DensityPower power = DensityPower.Of(mean.IsSoftwood);

    /// <summary>One stick.</summary>
    /// <param name="z">Independent standard normal numbers.</param>
    /// <returns>The wood with the drawn strengths in place of the 5th percentiles.</returns>
    internal WoodInUse At(ReadOnlySpan<double> z)
    {
        var together = OwnCorrelation(power);
        var zStiff = together * z[1] + Math.Sqrt(1 - together * together) * z[2]; // theory U2
        var bending = mean.MeanBendingStrengthMPa * Share(power.Rupture, Scatter.RuptureVariation, z[0], z[1]);
        var across = mean.MeanCrossGrainStrengthMPa * Share(power.Across, Scatter.TensionPerpendicularVariation, z[0], z[3]);
        var stiff = isModulusMeasured ? 1 : LogShare(power.Elasticity, Scatter.ElasticityVariation, z[0], zStiff);
        return mean with
        {
            DensityKgM3 = isDensityMeasured ? mean.DensityKgM3 : mean.DensityKgM3 * Math.Max(LeastShare, 1 + Scatter.SpecificGravityVariation * z[0]),
            ApparentModulusMPa = mean.ApparentModulusMPa * stiff,
            ModulusMPa = mean.ModulusMPa * stiff,
            ShearModulusMPa = mean.ShearModulusMPa * stiff,
            BendingStrengthMPa = bending,
            CrossGrainStrengthMPa = across,
        };
    }

    // What density leaves of both must go together so far that in all they correlate as published.
    private static double OwnCorrelation(DensityPower power)
    {
        double rupture = ByDensity(power.Rupture, Scatter.RuptureVariation), elasticity = ByDensity(power.Elasticity, Scatter.ElasticityVariation);
        return (StiffWithStrong - rupture * elasticity) / Math.Sqrt((1 - rupture * rupture) * (1 - elasticity * elasticity)); // theory U2
    }

    // Correlation of a property with density: the share of its scatter that comes of it.
    private static double ByDensity(double power, double variation) => power * Scatter.SpecificGravityVariation / variation;

    // A straight line through the means with the power's slope there, and the rest of the published scatter on its own.
    private static double Share(double power, double variation, double zDensity, double zOwn) =>
        Math.Max(LeastShare, 1 + variation * Score(ByDensity(power, variation), zDensity, zOwn)); // theory U1

    private static double LogShare(double power, double variation, double zDensity, double zOwn)
    {
        var square = Math.Log(1 + variation * variation);
        return Math.Exp(Math.Sqrt(square) * Score(ByDensity(power, variation), zDensity, zOwn) - square / 2); // theory U1
    }

    private static double Score(double r, double zDensity, double zOwn) => r * zDensity + Math.Sqrt(1 - r * r) * zOwn;
}

/// <summary>Powers of specific gravity that a property at 12 % goes with. Theory U2.</summary>
/// <remarks>USDA Wood Handbook FPL-GTR-190, table 5-11a, from memory; a test holds the functions against the species' own figures. They run from
/// species to species. Within one the handbook calls the relation straight (ch. 5, from memory): the slope at the mean is taken.</remarks>
internal sealed record DensityPower(double Rupture, double Elasticity, double Across)
{
    private static readonly DensityPower Hardwood = new(1.13, 0.70, 1.30), Softwood = new(1.01, 0.84, 1.11);

    internal static DensityPower Of(bool isSoftwood) => isSoftwood ? Softwood : Hardwood;
}
