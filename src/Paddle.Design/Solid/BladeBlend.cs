namespace Paddle.Design.Solid;

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
