using Paddle.Design.Wood;

namespace Paddle.Design.Uncertainty;

/// <summary>Draws the wood of one stick out of what is published of its species' scatter. Theory U1–U2.</summary>
/// <param name="mean">The wood in use: means, and strengths that 19 sticks in 20 exceed.</param>
/// <param name="isDensityMeasured">Whether the maker weighed the board: then its density is known.</param>
/// <param name="isModulusMeasured">Whether its modulus was tested: then that is known.</param>
/// <remarks>Strength keeps its whole scatter whatever was measured: a heavy or stiff board is not credited with strength nobody tested.</remarks>
internal sealed class WoodDraw(WoodInUse mean, bool isDensityMeasured, bool isModulusMeasured)
{
    /// <summary>How many normal numbers a draw takes: density, and what is left of bending strength, modulus and strength across the grain.</summary>
    internal const int Dimensions = 4;

    // Normal scatter reaches below nothing, four to five deviations down; there is no such wood.
    private const double LeastShare = 0.05;

    private readonly DensityPower power = DensityPower.Of(mean.IsSoftwood);

    /// <summary>One stick.</summary>
    /// <param name="z">Independent standard normal numbers.</param>
    /// <returns>The wood with the drawn strengths in place of the 5th percentiles.</returns>
    internal WoodInUse At(ReadOnlySpan<double> z)
    {
        var dense = Scatter.SpecificGravityVariation * z[0];
        var bending = mean.MeanBendingStrengthMPa * Share(power.Rupture, Scatter.RuptureVariation, z[0], z[1]);
        var across = mean.MeanCrossGrainStrengthMPa * Share(power.Across, Scatter.TensionPerpendicularVariation, z[0], z[3]);
        var stiff = isModulusMeasured ? 1 : Share(power.Elasticity, Scatter.ElasticityVariation, z[0], z[2]);
        return mean with
        {
            DensityKgM3 = isDensityMeasured ? mean.DensityKgM3 : mean.DensityKgM3 * Math.Max(LeastShare, 1 + dense),
            ApparentModulusMPa = mean.ApparentModulusMPa * stiff,
            ModulusMPa = mean.ModulusMPa * stiff,
            ShearModulusMPa = mean.ShearModulusMPa * stiff,
            BendingStrengthMPa = bending,
            CrossGrainStrengthMPa = across,
        };
    }

    // A straight line through the means with the power's slope there, and the rest of the published scatter on its own.
    private static double Share(double power, double variation, double zDensity, double zOwn)
    {
        var byDensity = power * Scatter.SpecificGravityVariation;
        return Math.Max(LeastShare, 1 + byDensity * zDensity + Math.Sqrt(variation * variation - byDensity * byDensity) * zOwn); // theory U1
    }
}

/// <summary>Powers of specific gravity that a property at 12 % goes with. Theory U2.</summary>
/// <remarks>USDA Wood Handbook FPL-GTR-190, table 5-11a, from memory; a test holds the functions against the species' own figures. They run from
/// species to species. Within one the handbook calls the relation straight (ch. 5, from memory): the slope at the mean is taken.</remarks>
internal sealed record DensityPower(double Rupture, double Elasticity, double Across)
{
    private static readonly DensityPower Hardwood = new(1.13, 0.70, 1.30), Softwood = new(1.01, 0.84, 1.11);

    internal static DensityPower Of(bool isSoftwood) => isSoftwood ? Softwood : Hardwood;
}
