namespace Paddle.Design.Fitting;

/// <summary>Whether a blade can be immersed in the depth given.</summary>
/// <param name="DepthMm">Depth of the water, mm; null where unlimited or unknown.</param>
/// <param name="NeededMm">Depth the blade first chosen needs, mm.</param>
/// <param name="Fits">Whether that blade fits.</param>
/// <param name="Blade">The blade to use: the one chosen where it fits, else one that does; else the shortest there is.</param>
/// <param name="ImmersedShare">Share of that blade's length that can be under water, 0 to 1.</param>
public sealed record ImmersionAdvice(double? DepthMm, double NeededMm, bool Fits, ChosenBlade Blade, double ImmersedShare);

/// <summary>Depth a blade needs, and the family and length that fit a shallower water.</summary>
public static class ImmersionDepth
{
    /// <summary>Water to leave between tip and bottom, mm (assumption, no source).</summary>
    public const double BottomClearanceMm = 50;

    /// <summary>Families to try when the first does not fit, the longer blade first (common practice, no source).</summary>
    private static readonly string[] Shorter = ["sugar-island", "square-tip", "teardrop"];

    /// <summary>Depth needed with the blade upright and its throat at the water: L_b + clearance.</summary>
    /// <param name="bladeLengthMm">L_b, mm.</param>
    /// <returns>Depth, mm.</returns>
    /// <remarks>Source: geometry; clearance assumed.</remarks>
    public static double NeededMm(double bladeLengthMm) => bladeLengthMm + BottomClearanceMm; // theory F22

    /// <summary>
    /// Check a blade against a depth; where it does not fit, shorten it within its family, else take the first shorter family
    /// that fits, each sized for the same area.
    /// </summary>
    /// <param name="chosen">The blade chosen for area.</param>
    /// <param name="areaMm2">Area wanted, mm².</param>
    /// <param name="depthMm">Depth, mm; null where unlimited or unknown.</param>
    /// <returns>The advice.</returns>
    public static ImmersionAdvice Check(ChosenBlade chosen, double areaMm2, double? depthMm)
    {
        ArgumentNullException.ThrowIfNull(chosen);
        double needed = NeededMm(chosen.LengthMm);
        if (depthMm is not { } depth || depth >= needed)
        {
            return new ImmersionAdvice(depthMm, needed, true, chosen, 1);
        }

        double longest = depth - BottomClearanceMm;
        var fitting = Candidates(chosen).FirstOrDefault(f => f.ShortestMm <= longest);
        var family = fitting ?? BladeChoice.Families.MinBy(f => f.ShortestMm)!;
        double bend = family.Id == "teardrop" ? BladeChoice.BentShaftDegrees : 0;
        var blade = BladeChoice.Size(family, areaMm2, bend, longest);
        return new ImmersionAdvice(depthMm, needed, false, blade, Math.Clamp(longest / blade.LengthMm, 0, 1));
    }

    private static IEnumerable<BladeSizes> Candidates(ChosenBlade chosen) =>
        Shorter.Select(BladeChoice.Family).Prepend(chosen.Family);
}
