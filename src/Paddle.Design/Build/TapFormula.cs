namespace Paddle.Design.Build;

/// <summary>Modulus of a board from the tone that it gives when hung free and tapped across the face. Theory M19.</summary>
internal static class TapFormula
{
    /// <summary>First root of cos b cosh b = 1, the free bar's first bending mode. Source: any text on vibration.</summary>
    public const double FirstRoot = 4.730040744862704;

    /// <summary>Frequency of the first bending mode of a slender free bar: <c>f = b²/(2 pi) sqrt(E I/(m L³))</c>. Theory M19. Source:
    /// Euler-Bernoulli beam, any text on vibration.</summary>
    /// <param name="modulusMPa">E, MPa.</param>
    /// <param name="massG">m, g.</param>
    /// <param name="lengthMm">L, mm.</param>
    /// <param name="thicknessMm">Thickness in the direction of the motion, mm.</param>
    /// <returns>f, Hz.</returns>
    public static double SlenderFrequencyHz(double modulusMPa, double massG, double lengthMm, double widthMm, double thicknessMm)
    {
        // N mm² over kg mm³ is 1000 s⁻².
        var stiffness = modulusMPa * SagFormula.SecondMomentMm4(widthMm, thicknessMm);
        return FirstRoot * FirstRoot / (2 * Math.PI)
            * Math.Sqrt(1000 * stiffness / (massG * 1e-3 * lengthMm * lengthMm * lengthMm)); // theory M19
    }

    /// <summary>Factor by which shear and rotation lower f², so that the true modulus is the slender bar's times it: <c>1 + (h/L)²/12
    /// (49.48 + 12.30 k E/G)</c>, k = 1.2. Theory M20. Source: Goens' approximation to the Timoshenko beam, from memory; with E/G = 2 and k
    /// = 1.2 it gives the 6.585 (h/L)² of ASTM E1876 at a Poisson's ratio of 0 (from memory).</summary>
    /// <param name="thicknessOverLength">h/L.</param>
    /// <param name="modulusOverShearModulus">E/G.</param>
    public static double ThickBarFactor(double thicknessOverLength, double modulusOverShearModulus) =>
        1 + thicknessOverLength * thicknessOverLength / 12 * (49.48 + 12.30 * 1.2 * modulusOverShearModulus); // theory M20

    /// <summary>Modulus by the plain beam formula, shear and rotation left out. Theory M19.</summary>
    /// <param name="frequencyHz">f, Hz.</param>
    /// <param name="massG">m, g.</param>
    /// <param name="lengthMm">L, mm.</param>
    /// <returns>E, MPa.</returns>
    public static double PlainBeamModulusMPa(double frequencyHz, double massG, double lengthMm, double widthMm, double thicknessMm)
    {
        var ratio = frequencyHz / SlenderFrequencyHz(1, massG, lengthMm, widthMm, thicknessMm);
        return ratio * ratio;
    }

    /// <summary>True modulus of a free bar from its first frequency. Theory M19 and M20.</summary>
    /// <param name="frequencyHz">f, Hz.</param>
    /// <param name="massG">m, g.</param>
    /// <param name="lengthMm">L, mm.</param>
    /// <param name="modulusOverShearModulus">E/G.</param>
    /// <returns>E, MPa.</returns>
    public static double TrueModulusMPa(
        double frequencyHz, double massG, double lengthMm, double widthMm, double thicknessMm, double modulusOverShearModulus) =>
        PlainBeamModulusMPa(frequencyHz, massG, lengthMm, widthMm, thicknessMm)
        * ThickBarFactor(thicknessMm / lengthMm, modulusOverShearModulus);
}
