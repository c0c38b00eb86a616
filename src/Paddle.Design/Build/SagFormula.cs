using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>Modulus of a board from its sag between two supports under a weight at mid-span. Theory M18.</summary>
internal static class SagFormula
{
    /// <summary>Modulus by the plain beam formula, all of the sag laid to bending: <c>E = P L³/(48 I y)</c>, I = b h³/12. Source: beam
    /// tables, simply supported, centre load. Theory M18.</summary>
    /// <param name="loadN">P, N.</param>
    /// <param name="spanMm">L, mm.</param>
    /// <param name="widthMm">b, mm.</param>
    /// <param name="thicknessMm">h, mm.</param>
    /// <param name="sagMm">y, mm: the difference with and without the load, so that the board's own weight drops out.</param>
    /// <returns>E of this span and thickness alone, MPa: neither the true modulus nor the book's apparent one.</returns>
    public static double PlainBeamModulusMPa(double loadN, double spanMm, double widthMm, double thicknessMm, double sagMm) =>
        loadN * Cube(spanMm) / (48 * SecondMomentMm4(widthMm, thicknessMm) * sagMm); // theory M18

    /// <summary>True modulus: the above times one plus the shear share of the sag (theory W19).</summary>
    /// <param name="loadN">P, N.</param>
    /// <param name="spanMm">L, mm.</param>
    /// <param name="widthMm">b, mm.</param>
    /// <param name="thicknessMm">h, mm.</param>
    /// <param name="sagMm">y, mm.</param>
    /// <param name="modulusOverShearModulus">E/G of the wood.</param>
    public static double TrueModulusMPa(
        double loadN, double spanMm, double widthMm, double thicknessMm, double sagMm, double modulusOverShearModulus) =>
        PlainBeamModulusMPa(loadN, spanMm, widthMm, thicknessMm, sagMm)
        * (1 + ElasticConstants.ShearShareOfSag(modulusOverShearModulus, spanMm / thicknessMm)); // theory M18

    /// <summary>Sag of the board under its own weight at mid-span, overhanging ends lifting it: <c>5 w L⁴/(384 E I) - w a² L²/(16 E I)</c>.
    /// Source: beam tables. Theory M18.</summary>
    /// <param name="spanMm">L, mm; a is half of what reaches over.</param>
    /// <param name="widthMm">b, mm.</param>
    /// <param name="thicknessMm">h, mm.</param>
    /// <param name="modulusMPa">E, MPa.</param>
    public static double OwnWeightSagMm(
        double massG, double lengthMm, double spanMm, double widthMm, double thicknessMm, double modulusMPa)
    {
        var w = massG * 1e-3 * 9.80665 / lengthMm; // N/mm
        double over = (lengthMm - spanMm) / 2, stiffness = modulusMPa * SecondMomentMm4(widthMm, thicknessMm);
        return (5 * w * Cube(spanMm) * spanMm / 384 - w * over * over * spanMm * spanMm / 16) / stiffness; // theory M18
    }

    internal static double SecondMomentMm4(double widthMm, double thicknessMm) => widthMm * Cube(thicknessMm) / 12;

    private static double Cube(double x) => x * x * x;
}
