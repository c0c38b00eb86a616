using Paddle.Design.Solid;

namespace Paddle.Design.Balance;

/// <summary>Where the paddle should balance.</summary>
public enum BalanceAim
{
    /// <summary>At the middle of the lower hand.</summary>
    LowerHand,
    Throat,
}

/// <summary>What the maker asks of the design.</summary>
/// <param name="BalanceToleranceMm">How far off that is still good, mm.</param>
/// <param name="MinimumSafetyFactor">Least safety factor in every load case, on 5th-percentile strength.</param>
/// <param name="LeastBenchFlexMm">Least bench flex, mm, or null.</param>
/// <param name="MostBenchFlexMm">Most bench flex, mm, or null.</param>
/// <param name="MaximumMassG">Most mass, g, or null.</param>
public sealed record Aims(
    BalanceAim BalanceAt,
    double BalanceToleranceMm,
    double MinimumSafetyFactor,
    double? LeastBenchFlexMm,
    double? MostBenchFlexMm,
    double? MaximumMassG);

/// <summary>Where a paddle should balance.</summary>
internal static class BalanceTarget
{
    /// <summary>The aimed balance point, mm from the top of the grip along the shaft's line.</summary>
    internal static double Mm(PaddleForm form, Aims aims) =>
        aims.BalanceAt == BalanceAim.LowerHand ? form.Places.LowerHandMm : form.Places.ThroatMm;
}
