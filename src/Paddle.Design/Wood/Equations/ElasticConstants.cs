namespace Paddle.Design.Wood;

/// <summary>True and apparent moduli. The printed modulus is apparent: measured at mid-span of a beam 14 times as long as deep and with the
/// sag from shear left in. Count shear apart and the true modulus is needed; leave it in and the apparent one is: never both.</summary>
internal static class ElasticConstants
{
    /// <summary>True over apparent modulus of elasticity at a span of 14 depths. Theory W18.</summary>
    /// <remarks>USDA Wood Handbook, footnote c of table 5-3: add 10 % to correct for shear deflection.</remarks>
    public const double TrueOverApparent = 1.10;

    /// <summary>EL/G of a wood with no published shear modulus. Theory W20.</summary>
    /// <remarks>Common practice; it makes the shear share at 14 depths 0.098, the handbook's 10 %.</remarks>
    public const double DefaultModulusOverShearModulus = 16.0;

    /// <summary>True longitudinal modulus: <c>EL = 1.10 E</c>. Theory W18. Source: see <see cref="TrueOverApparent"/>.</summary>
    /// <param name="apparentModulusMPa">E, apparent at a span of 14 depths, MPa.</param>
    /// <returns>EL, MPa.</returns>
    public static double TrueModulusMPa(double apparentModulusMPa) => TrueOverApparent * apparentModulusMPa; // theory W18

    /// <summary>Shear sag over bending sag of a rectangular beam loaded at mid-span: <c>1.2 (E/G) (h/L)^2</c>. Theory W19. Source:
    /// elementary beam theory, rectangular section. A sag test at another span than 14 depths is brought to the true modulus by <c>EL = E
    /// (1 + share)</c>.</summary>
    /// <param name="modulusOverShearModulus">E/G.</param>
    /// <param name="spanOverDepth">L/h, above 0.</param>
    /// <returns>Shear sag as a fraction of bending sag.</returns>
    public static double ShearShareOfSag(double modulusOverShearModulus, double spanOverDepth) =>
        1.2 * modulusOverShearModulus / (spanOverDepth * spanOverDepth); // theory W19

    /// <summary>Shear modulus for bending along the grain: <c>G = EL (GLR/EL + GLT/EL)/2</c> where both ratios are published, else
    /// <c>EL/16</c>. Theory W20. Source: USDA Wood Handbook table 5-1 by species; the mean because the growth rings of a paddle may lie
    /// either way.</summary>
    /// <param name="trueModulusMPa">EL, MPa.</param>
    /// <returns>G, MPa.</returns>
    public static double ShearModulusMPa(WoodSpecies species, double trueModulusMPa)
    {
        return species is { ShearModulusRatioLR: { } lr, ShearModulusRatioLT: { } lt }
            ? trueModulusMPa * (lr + lt) / 2.0
            : trueModulusMPa / DefaultModulusOverShearModulus; // theory W20
    }
}
