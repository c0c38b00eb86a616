namespace Paddle.Design.Wood;

/// <summary>Scatter of wood about its mean. A design stands on the value that 19 sticks in 20 exceed, taking the scatter as
/// normal.</summary>
internal static class Scatter
{
    /// <summary>Coefficient of variation of modulus of rupture.</summary>
    /// <remarks>USDA Wood Handbook table 5-6, quoted in a public small-craft material survey, read.</remarks>
    public const double RuptureVariation = 0.16;

    /// <summary>Coefficient of variation of modulus of elasticity; source as for <see cref="RuptureVariation"/>.</summary>
    public const double ElasticityVariation = 0.22;
    /// <summary>Coefficient of variation of compression parallel to the grain; source as for <see cref="RuptureVariation"/>.</summary>
    public const double CompressionVariation = 0.18;
    /// <summary>Coefficient of variation of specific gravity; source as for <see cref="RuptureVariation"/>.</summary>
    public const double SpecificGravityVariation = 0.10;

    /// <summary>Coefficient of variation of tension perpendicular to the grain.</summary>
    /// <remarks>From memory: the figure was not in the text read. It equals that read for tension parallel, 25 %.</remarks>
    public const double TensionPerpendicularVariation = 0.25;

    /// <summary>z of the 5 % point of the standard normal distribution, sign dropped.</summary>
    public const double FifthPercentileZ = 1.6448536269514722;

    /// <summary>Value that 19 in 20 exceed: <c>x05 = mean (1 - z COV)</c>, z = 1.645. Theory W6. Source: normal distribution.</summary>
    /// <param name="variation">COV, coefficient of variation as a fraction, below 0.6 for a value above 0.</param>
    /// <returns>5th percentile, in the unit of <paramref name="mean"/>.</returns>
    public static double FifthPercentile(double mean, double variation) => mean * (1.0 - (FifthPercentileZ * variation)); // theory W6
}
