namespace Paddle.Design.Wood;

/// <summary>Strength and stiffness at the moisture the paddle is used at. Moisture is percent of ovendry mass throughout; figures hold near
/// 21 degrees C.</summary>
internal static class MoistureAdjustment
{
    /// <summary>Percent strength lost per percent of moisture, modulus of rupture of a hardwood with no green figure.</summary>
    /// <remarks>ANC-18 (1951) as quoted in a boat-building text, appendix B-4: yellow birch and true hickory, both 4.8.</remarks>
    public const double HardwoodRupturePercentPerPercent = 4.8;

    /// <summary>The same for the modulus of elasticity of a hardwood.</summary>
    /// <remarks>ANC-18 as above: mean of yellow birch 2.0 and true hickory 2.8.</remarks>
    public const double HardwoodElasticityPercentPerPercent = 2.4;

    /// <summary>The same for the modulus of rupture of a softwood.</summary>
    /// <remarks>ANC-18 as above: mean of the six softwoods 3.6, 5.2, 3.4, 3.7, 4.8 and 3.9.</remarks>
    public const double SoftwoodRupturePercentPerPercent = 4.1;

    /// <summary>The same for the modulus of elasticity of a softwood.</summary>
    /// <remarks>ANC-18 as above: mean of the six softwoods 1.8, 1.6, 1.6, 1.8, 2.0 and 1.7.</remarks>
    public const double SoftwoodElasticityPercentPerPercent = 1.75;

    /// <summary>The same for compression parallel to the grain, any wood.</summary>
    /// <remarks>ANC-18's own figure was not read. Equation 5-3 on this table's rows gives 3.9 to 6.3 % per percent, and only yellow birch
    /// and white spruce pass 6.0: a wood without a green figure is not flattered when wet.</remarks>
    public const double CompressionPercentPerPercent = 6.0;

    /// <summary>Property at moisture M: <c>P = P12 (P12/Pg)^((12 - M)/(Mp - 12))</c> below Mp, and Pg at or above it. Theory W1. Source:
    /// USDA Wood Handbook FPL-GTR-282, equation 5-3. Not for work to maximum load, impact bending or tension perpendicular to the
    /// grain.</summary>
    /// <param name="at12">P12, the property at 12 % moisture, any unit, above 0.</param>
    /// <param name="green">Pg, the property when green, same unit, above 0.</param>
    /// <param name="mpPercent">Mp, the intersection moisture of the species, percent, above 12.</param>
    /// <param name="moisturePercent">M, percent, 0 or more.</param>
    /// <returns>P, in the unit of <paramref name="at12"/>.</returns>
    public static double FromGreenValue(double at12, double green, double mpPercent, double moisturePercent) =>
        moisturePercent >= mpPercent ? green : at12 * Math.Pow(at12 / green, (12.0 - moisturePercent) / (mpPercent - 12.0)); // theory W1

    /// <summary>Property at moisture M where no green value is published: <c>P = P12 (1 + p/100)^(12 - M)</c>, held at its value at Mp
    /// above Mp. Theory W2. Source: ANC-18 (1951), as quoted in a boat-building text, appendix B-4.</summary>
    /// <param name="at12">P12, the property at 12 % moisture, any unit.</param>
    /// <param name="percentPerPercent">p, percent change of the property per percent of moisture.</param>
    /// <param name="mpPercent">Mp, moisture above which strength no longer changes, percent.</param>
    /// <param name="moisturePercent">M, percent, 0 or more.</param>
    /// <returns>P, in the unit of <paramref name="at12"/>.</returns>
    public static double FromPercentRule(double at12, double percentPerPercent, double mpPercent, double moisturePercent) =>
        at12 * Math.Pow(1.0 + (percentPerPercent / 100.0), 12.0 - Math.Min(moisturePercent, mpPercent)); // theory W2

    /// <summary>Tension strength across the grain at moisture M. Equation 5-3 is not for this property and no other rule was found, so this
    /// runs straight from the value at 12 % to a lower green value at Mp, and stays level where the green value is not lower or M is below
    /// 12 %: drying is never credited with strength across the grain. Theory W3; rule of this service between two published
    /// points.</summary>
    /// <param name="at12MPa">Strength at 12 % moisture, MPa.</param>
    /// <param name="greenMPa">Strength when green, MPa.</param>
    /// <param name="mpPercent">Mp, percent, above 12.</param>
    /// <param name="moisturePercent">M, percent, 0 or more.</param>
    /// <returns>Mean strength across the grain at M, MPa.</returns>
    public static double AcrossTheGrainMPa(double at12MPa, double greenMPa, double mpPercent, double moisturePercent)
    {
        var wetness = Math.Clamp((moisturePercent - 12.0) / (mpPercent - 12.0), 0.0, 1.0);
        return at12MPa - (wetness * Math.Max(at12MPa - greenMPa, 0.0)); // theory W3
    }

    /// <summary>Mean modulus of rupture of straight-grained wood at a moisture, MPa: theory W1, else W2.</summary>
    /// <param name="moisturePercent">M, percent, 0 or more.</param>
    /// <returns>Modulus of rupture, MPa.</returns>
    public static double ModulusOfRuptureMPa(WoodSpecies species, double moisturePercent) =>
        Adjust(species, species.ModulusOfRupture12MPa, species.ModulusOfRuptureGreenMPa,
            species.IsSoftwood ? SoftwoodRupturePercentPerPercent : HardwoodRupturePercentPerPercent, moisturePercent);

    /// <summary>Mean apparent modulus of elasticity of straight-grained wood at a moisture, MPa: theory W1, else W2.</summary>
    /// <param name="moisturePercent">M, percent, 0 or more.</param>
    /// <returns>Apparent modulus of elasticity, MPa.</returns>
    public static double ModulusOfElasticityMPa(WoodSpecies species, double moisturePercent) =>
        Adjust(species, species.ModulusOfElasticity12MPa, species.ModulusOfElasticityGreenMPa,
            species.IsSoftwood ? SoftwoodElasticityPercentPerPercent : HardwoodElasticityPercentPerPercent, moisturePercent);

    /// <summary>Mean compression strength parallel to the grain at a moisture, MPa: theory W1, else W2.</summary>
    /// <param name="moisturePercent">M, percent, 0 or more.</param>
    /// <returns>Compression strength, MPa.</returns>
    public static double CompressionParallelMPa(WoodSpecies species, double moisturePercent) =>
        Adjust(species, species.CompressionParallel12MPa, species.CompressionParallelGreenMPa,
            CompressionPercentPerPercent, moisturePercent);

    private static double Adjust(WoodSpecies species, double at12, double? green, double percentPerPercent, double moisturePercent) =>
        green is { } known
            ? FromGreenValue(at12, known, species.MpPercent, moisturePercent)
            : FromPercentRule(at12, percentPerPercent, species.MpPercent, moisturePercent);
}
