namespace Paddle.Design.Solid;

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
