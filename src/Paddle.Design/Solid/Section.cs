namespace Paddle.Design.Solid;

/// <summary>One cross-section of the paddle, symmetric about its own centre. Theory S1–S5.</summary>
/// <param name="HalfWidthMm">w: half-width, mm.</param>
/// <param name="HalfThicknessMm">c: half-thickness at the centre, mm.</param>
/// <param name="EdgeHalfThicknessMm">e: half-thickness at the edge, mm.</param>
/// <param name="Moments">Pure numbers of the section's exponents.</param>
internal readonly record struct Section(double HalfWidthMm, double HalfThicknessMm, double EdgeHalfThicknessMm, SectionMoments Moments)
{
    private double Crown => HalfThicknessMm - EdgeHalfThicknessMm;

    /// <summary>Half-thickness h(u), mm, at u = |y|/w. Theory S1.</summary>
    public double HalfThicknessAtMm(double u) =>
        EdgeHalfThicknessMm + Crown * Math.Pow(Math.Max(0, 1 - Math.Pow(u, Moments.P)), Moments.R);

    /// <summary>Area, mm²: A = 4w(e + (c − e)G1). Theory S3.</summary>
    public double AreaMm2 => 4 * HalfWidthMm * (EdgeHalfThicknessMm + Crown * Moments.G1);

    /// <summary>Second moment for bending across the faces, mm⁴: I = (4/3)w(e³ + 3e²kG1 + 3ek²G2 + k³G3), k = c − e. Theory S4.</summary>
    public double FlatSecondMomentMm4
    {
        get
        {
            double e = EdgeHalfThicknessMm, k = Crown;
            return 4.0 / 3 * HalfWidthMm
                * (e * e * e + 3 * e * e * k * Moments.G1 + 3 * e * k * k * Moments.G2 + k * k * k * Moments.G3);
        }
    }

    /// <summary>Second moment for bending edgewise, mm⁴: I = 4w³(e/3 + (c − e)∫u²g du). Theory S5.</summary>
    public double EdgeSecondMomentMm4 =>
        4 * HalfWidthMm * HalfWidthMm * HalfWidthMm
        * (EdgeHalfThicknessMm / 3 + Crown * SectionMoments.Integral(2, 1, Moments.P, Moments.R));

    /// <summary>Mean distance (mm) from the spine at which bending across the faces is carried: η = w∫u h³du/∫h³du. Theory S12.</summary>
    public double BendingSpreadMm
    {
        get
        {
            double e = EdgeHalfThicknessMm, k = Crown;
            var first = e * e * e / 2 + 3 * e * e * k * Moments.U1 + 3 * e * k * k * Moments.U2 + k * k * k * Moments.U3;
            var cube = e * e * e + 3 * e * e * k * Moments.G1 + 3 * e * k * k * Moments.G2 + k * k * k * Moments.G3;
            return cube > 0 ? HalfWidthMm * first / cube : 0;
        }
    }

    /// <summary>Section modulus for bending across the faces, mm³: I/c.</summary>
    public double FlatModulusMm3 => FlatSecondMomentMm4 / HalfThicknessMm;
}
