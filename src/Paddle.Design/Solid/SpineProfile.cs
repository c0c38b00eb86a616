namespace Paddle.Design.Solid;

/// <summary>Spine thickness down the blade: a monotone, tangent-continuous cubic (PCHIP) through the shaft at t = 0 and the three sizes at
/// 0.08, 0.5 and 0.92, level at both ends. Theory S7.</summary>
/// <remarks>Source: Fritsch and Butland 1984, weighted harmonic mean slopes, as in MathNet.Numerics' CubicSpline.InterpolatePchip (a test
/// compares the two). At a fixed t the thickness is linear in the sizes and in the two inner slopes.</remarks>
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

/// <summary>Thickness of the grip along its length, γ = x over the grip's length. Theory S8.</summary>
internal static class GripProfile
{
    /// <summary>γ at which the rounded top has reached full thickness.</summary>
    public const double CapEnd = 0.16;
    /// <summary>γ at which the crest begins to run into the shaft.</summary>
    public const double CrestEnd = 0.36;

    /// <summary>Rounding of the top: 0 at the very end, 1 from <see cref="CapEnd"/>; a quarter ellipse.</summary>
    public static double Cap(double gamma)
    {
        if (gamma >= CapEnd) return 1;
        var fromFull = 1 - gamma / CapEnd;
        return Math.Sqrt(Math.Max(0, 1 - fromFull * fromFull));
    }

    /// <summary>Share of the grip's own thickness; the rest is the upper shaft's.</summary>
    public static double CrestShare(double gamma) => 1 - Smooth.Step((gamma - CrestEnd) / (1 - CrestEnd));

    /// <summary>Share of the hollow's depth: none on the crest, full from 0.60 to 0.64, none again at the shaft.</summary>
    public static double HollowShare(double gamma) => Smooth.Step((gamma - CrestEnd) / 0.24) * (1 - Smooth.Step((gamma - 0.64) / 0.32));
}

/// <summary>How the section changes down the blade: from the shaft's ellipse, through a ridged diamond below the throat, to a parabolic
/// lens at the tip. Everything depends only on t, the fraction of the blade from the throat. Theory S6.</summary>
internal static class BladeBlend
{
    /// <summary>Down to here the section stays the shaft's ellipse: the most bent stretch keeps the shaft's depth and roundness.</summary>
    public const double ShoulderStart = SpineProfile.Throat;
    /// <summary>Where the shaft's ellipse has become the blade's section with its full edge.</summary>
    public const double ShoulderEnd = 0.25;
    /// <summary>Where the ridge has become a round crown.</summary>
    public const double RidgeEnd = 0.92;

    /// <summary>Crown exponent p at t: 2 in the shaft, 1 at the shoulder's end, 2 again at the ridge's end.</summary>
    public static double CrownExponent(double t) =>
        t < ShoulderEnd ? 2 - Shoulder(t) : 1 + Smooth.Step((t - ShoulderEnd) / (RidgeEnd - ShoulderEnd));

    /// <summary>Crown power r at t: ½ in the shaft, 1 from the shoulder's end.</summary>
    public static double CrownPower(double t) => 0.5 + 0.5 * Shoulder(t);

    /// <summary>Share of the blade's edge thickness present at t: none at the shaft's round side, all from the shoulder's end.</summary>
    public static double EdgeShare(double t) => Shoulder(t);

    private static double Shoulder(double t) => Smooth.Step((t - ShoulderStart) / (ShoulderEnd - ShoulderStart));
}

/// <summary>The cubic step that every blend along the paddle uses.</summary>
internal static class Smooth
{
    /// <summary>3x² − 2x³ between 0 and 1; level outside, tangent-continuous everywhere.</summary>
    public static double Step(double x)
    {
        var t = Math.Clamp(x, 0, 1);
        return t * t * (3 - 2 * t);
    }
}
