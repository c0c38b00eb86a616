namespace Paddle.Design.Solid;

/// <summary>Spine thickness down the blade: a monotone, tangent-continuous cubic (PCHIP) through the shaft at t = 0 and the three sizes at
/// 0.08, 0.5 and 0.92, level at both ends. Theory S7.</summary>
/// <remarks>
/// Source: Fritsch and Butland 1984, weighted harmonic mean slopes, as in MathNet.Numerics' CubicSpline.InterpolatePchip
/// (a test compares the two). At a fixed t the thickness is linear in the sizes and in the two inner slopes.
/// </remarks>
internal static class SpineProfile
{
    /// <summary>Place of the throat thickness, fraction of the blade.</summary>
    public const double Throat = 0.08;

    /// <summary>Place of the middle thickness, fraction of the blade.</summary>
    public const double Middle = 0.5;

    /// <summary>Place of the tip thickness, fraction of the blade.</summary>
    public const double Tip = 0.92;

    /// <summary>Slopes dT/dt (mm per blade) at the throat and the middle knot.</summary>
    public static (double AtThroat, double AtMiddle) Slopes(double shaft, double throat, double middle, double tip) =>
        (HarmonicSlope((throat - shaft) / Throat, (middle - throat) / (Middle - Throat), Throat, Middle - Throat),
         HarmonicSlope((middle - throat) / (Middle - Throat), (tip - middle) / (Tip - Middle), Middle - Throat, Tip - Middle));

    /// <summary>Weights of (shaft, throat, middle, tip, slope at throat, slope at middle) in the thickness at t.</summary>
    internal static SpineWeights Weights(double t)
    {
        if (t <= Throat)
        {
            var (h0, h1, _, k1) = Hermite(t, 0, Throat);
            return new(h0, h1, 0, 0, k1, 0);
        }

        if (t <= Middle)
        {
            var (h0, h1, k0, k1) = Hermite(t, Throat, Middle);
            return new(0, h0, h1, 0, k0, k1);
        }

        if (t < Tip)
        {
            var (h0, h1, k0, _) = Hermite(t, Middle, Tip);
            return new(0, 0, h0, h1, 0, k0);
        }

        return new(0, 0, 0, 1, 0, 0);
    }

    /// <summary>Weighted harmonic mean of two chord slopes of one sign (both thinning); 0 when either is level.</summary>
    private static double HarmonicSlope(double before, double after, double spanBefore, double spanAfter)
    {
        if (before * after <= 0) return 0;
        double w1 = 2 * spanAfter + spanBefore, w2 = spanAfter + 2 * spanBefore;
        return (w1 + w2) / (w1 / before + w2 / after);
    }

    private static (double H0, double H1, double K0, double K1) Hermite(double t, double from, double to)
    {
        double span = to - from, x = (t - from) / span, step = Smooth.Step(x);
        return (1 - step, step, span * x * (1 - x) * (1 - x), -span * x * x * (1 - x));
    }
}

/// <summary>Weights of the sizes and inner slopes in the spine thickness at one place.</summary>
internal readonly record struct SpineWeights(
    double Shaft, double Throat, double Middle, double Tip, double ThroatSlope, double MiddleSlope);
