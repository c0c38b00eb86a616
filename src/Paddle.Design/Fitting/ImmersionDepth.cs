namespace Paddle.Design.Fitting;

/// <summary>Whether a blade can be immersed in the depth given.</summary>
/// <param name="DepthMm">Depth of the water, mm; null where unlimited or unknown.</param>
/// <param name="NeededMm">Depth that the blade which fits the body needs, mm.</param>
/// <param name="Fits">Whether that blade fits.</param>
/// <param name="Blade">The blade to use: the one that fits the body, shortened as far as its family goes where the water asks for it.</param>
/// <param name="ImmersedShare">Share of that blade's length that can be under water, 0 to 1.</param>
public sealed record ImmersionAdvice(double? DepthMm, double NeededMm, bool Fits, ChosenBlade Blade, double ImmersedShare);

/// <summary>Depth a blade needs, and the length that fits a shallower water.</summary>
internal static class ImmersionDepth
{
    /// <summary>Water to leave between tip and bottom, mm (assumption, no source).</summary>
    public const double BottomClearanceMm = 50;

    /// <summary>Depth needed with the blade upright and its throat at the water: L_b + clearance.</summary>
    /// <param name="bladeLengthMm">L_b, mm.</param>
    /// <remarks>Source: geometry; clearance assumed.</remarks>
    public static double NeededMm(double bladeLengthMm) => bladeLengthMm + BottomClearanceMm; // theory F22

    /// <summary>Check a blade against a depth; where it does not fit, shorten it within its family, the width taking up the area as far as
    /// it can. The family stays: another one is offered as an alternative, so that a centimetre of water never turns one paddle into
    /// another.</summary>
    /// <param name="spacingMm">The body's hand spacing, mm.</param>
    /// <param name="demand">What the outing asks.</param>
    /// <param name="depthMm">Depth, mm; null where unlimited or unknown.</param>
    public static ImmersionAdvice Check(BladeSizes family, double spacingMm, StrokeDemand demand, double bendDegrees, double? depthMm)
    {
        var chosen = BladeChoice.Size(family, spacingMm, demand, bendDegrees);
        var needed = NeededMm(chosen.LengthMm);
        if (depthMm is not { } depth || depth >= needed) return new ImmersionAdvice(depthMm, needed, true, chosen, 1);
        var longest = depth - BottomClearanceMm;
        var blade = BladeChoice.Size(family, spacingMm, demand, bendDegrees, longest);
        return new ImmersionAdvice(depthMm, needed, false, blade, Math.Clamp(longest / blade.LengthMm, 0, 1));
    }
}
