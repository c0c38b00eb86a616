namespace Paddle.Design.Wood;

/// <summary>Loss of strength and stiffness where the grain runs out of the stick. A slope is rise over run: 1:20 is 0.05.</summary>
internal static class GrainSlope
{
    /// <summary>q for modulus of rupture, with n = 2.</summary>
    /// <remarks>USDA Wood Handbook table 5-11 gives 0.04 to 0.10, from memory; 0.04 reproduces table 5-12 (from memory) within 3
    /// points.</remarks>
    public const double RuptureRatio = 0.04;

    /// <summary>q for modulus of elasticity, with n = 2.</summary>
    /// <remarks>USDA Wood Handbook table 5-11 gives 0.04 to 0.12, from memory; the middle is taken.</remarks>
    public const double ElasticityRatio = 0.08;

    /// <summary>q for compression parallel to the grain, with n = 2.</summary>
    /// <remarks>USDA Wood Handbook table 5-11 gives 0.03 to 0.40, from memory; 0.40 reproduces the compression column of table 5-12 (from
    /// memory) within 2 points.</remarks>
    public const double CompressionRatio = 0.40;

    /// <summary>Fraction of the straight-grained property left at a slope: <c>N/P = q / (sin^n a + q cos^n a)</c>, <c>a = atan(slope)</c>.
    /// Theory W4. Source: USDA Wood Handbook, equation 5-2 (Hankinson form), from memory.</summary>
    /// <param name="slope">Rise over run of the grain, 0 or more.</param>
    /// <param name="acrossOverAlong">q = Q/P, property across the grain over property along it, between 0 and 1.</param>
    /// <param name="exponent">n, usually 2.</param>
    /// <returns>N/P, 1 for straight grain.</returns>
    public static double HankinsonFraction(double slope, double acrossOverAlong, double exponent = 2.0)
    {
        // sin^2 and cos^2 of atan(s) are s^2/(1+s^2) and 1/(1+s^2): no trigonometry needed.
        var along = 1.0 / (1.0 + (slope * slope));
        var across = slope * slope * along;
        if (exponent != 2.0)
        {
            along = Math.Pow(along, exponent / 2.0);
            across = Math.Pow(across, exponent / 2.0);
        }

        return acrossOverAlong / (across + (acrossOverAlong * along)); // theory W4
    }

    /// <summary>Derivative of <see cref="HankinsonFraction"/> (n = 2) by the slope: <c>2 q s (q - 1)/(s² + q)²</c>.</summary>
    /// <param name="slope">s, rise over run, 0 or more.</param>
    /// <param name="acrossOverAlong">q.</param>
    public static double HankinsonRate(double slope, double acrossOverAlong)
    {
        var below = (slope * slope) + acrossOverAlong;
        return 2 * acrossOverAlong * slope * (acrossOverAlong - 1) / (below * below);
    }
}
