using Paddle.Design.Solid;

namespace Paddle.Design.Balance;

/// <summary>How the spine's two inner slopes answer to the sizes: the gradient of the weighted harmonic mean. Theory S7.</summary>
internal readonly record struct SpineSensitivity(
    double ThroatByShaft, double ThroatByThroat, double ThroatByMiddle, double MiddleByThroat, double MiddleByMiddle, double MiddleByTip)
{
    /// <summary>The sensitivities at sizes <paramref name="v"/> (mm), in the order of <see cref="PaddleSizes"/>.</summary>
    internal static SpineSensitivity At(ReadOnlySpan<double> v)
    {
        const double Upper = SpineProfile.Throat, Middle = SpineProfile.Middle - SpineProfile.Throat;
        const double Lower = SpineProfile.Tip - SpineProfile.Middle;
        double first = (v[4] - v[1]) / Upper, second = (v[5] - v[4]) / Middle, third = (v[6] - v[5]) / Lower;
        var (a, b) = Gradient(first, second, Upper, Middle);
        var (c, d) = Gradient(second, third, Middle, Lower);
        return new(-a / Upper, a / Upper - b / Middle, b / Middle, -c / Middle, c / Middle - d / Lower, d / Lower);
    }

    // Chords this little above level (mm per blade) are level but for rounding, and are taken from the thinning side: a solver
    // that rests on "no thicker than the shaft" must not see the gradient jump to zero and back.
    private const double Level = 1e-6;

    // Derivatives of (w1 + w2)·a·b/(w1·b + w2·a), zero where the chords do not both thin.
    private static (double ByBefore, double ByAfter) Gradient(double a, double b, double spanA, double spanB)
    {
        if (a > Level || b > Level) return (0, 0);
        (a, b) = (Math.Min(a, 0), Math.Min(b, 0));
        if (a == 0 && b == 0) return (0, 0);
        double w1 = 2 * spanB + spanA, w2 = spanB + 2 * spanA, mix = w1 * b + w2 * a, scale = (w1 + w2) / (mix * mix);
        return (scale * w1 * b * b, scale * w2 * a * a);
    }
}
