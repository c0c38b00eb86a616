namespace Paddle.Design.Balance;

/// <summary>A limit that holds the design where it is.</summary>
/// <param name="Id">The limit: a size with min, max or pinned, an aim, or a rule of shape.</param>
/// <param name="Unit">Unit in which it is loosened; empty for a pure number.</param>
/// <param name="Gain">What loosening it by one unit would gain.</param>
/// <param name="GainUnit">Grams saved; or, while an aim is missed, how far that aim would be helped.</param>
public sealed record BindingLimit(string Id, string Unit, double Gain, string GainUnit);

/// <summary>How the aims came out.</summary>
/// <param name="TargetMm">Where it should balance, mm from the top of the grip along the shaft's line.</param>
/// <param name="ActualMm">Where it does.</param>
/// <param name="ToleranceMm">How far off is still good, mm.</param>
/// <param name="Achieved">Whether every aim is met: balance, strength, flex and mass.</param>
/// <param name="BindingLimits">The limits that bind, the costliest first; none when every size is pinned.</param>
/// <param name="Advice">What to change when an aim is missed, in plain words.</param>
public sealed record BalanceResult(
    double TargetMm,
    double ActualMm,
    double ToleranceMm,
    bool Achieved,
    IReadOnlyList<BindingLimit> BindingLimits,
    IReadOnlyList<string> Advice)
{
    /// <summary>Balance point less target, mm; negative when grip-heavy.</summary>
    public double OffsetMm => ActualMm - TargetMm;
}
