namespace Paddle.Design.Strength;

/// <summary>How one load case comes out.</summary>
/// <param name="Case">The case.</param>
/// <param name="MaxStressMPa">Stress where the safety factor is least, MPa; elementary beam or plate-strip theory.</param>
/// <param name="AtMm">Where that is, mm from the top of the grip.</param>
/// <param name="StrengthMPa">
/// Strength it is held against, MPa: 5th percentile at the moisture and grain of the wood, less the allowance of
/// <see cref="Allowances.SpineStress"/> for what beam theory misses, times the fatigue fraction for repeated loads.
/// </param>
/// <param name="MeanStrengthMPa">The same from the mean strength, MPa.</param>
public sealed record CaseResult(
    LoadCase Case, double MaxStressMPa, double AtMm, double StrengthMPa, double MeanStrengthMPa)
{
    /// <summary>Strength over stress.</summary>
    public double SafetyFactor => StrengthMPa / MaxStressMPa;

    /// <summary>Safety factor over the least factor asked of the case: 1 or more when it holds.</summary>
    public double Margin => SafetyFactor / Case.LeastFactor;

    /// <summary>Mean strength over stress.</summary>
    public double SafetyFactorOnMean => MeanStrengthMPa / MaxStressMPa;
}

/// <summary>Allowances for what the elementary theory does not see.</summary>
public static class Allowances
{
    /// <summary>
    /// The spine stress of a tapering, wood-like (orthotropic) blade is up to 5 % above beam theory. Source: 3-D finite-element
    /// models of such solids in 20-node bricks, made apart from this project. Theory L14.
    /// </summary>
    public const double SpineStress = 1.05;
}
