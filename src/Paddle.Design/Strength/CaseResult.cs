namespace Paddle.Design.Strength;

/// <summary>How one load case comes out. Theory L14.</summary>
/// <param name="StressMPa">Stress where the safety factor is least, MPa, with the allowance for a tapering spine.</param>
/// <param name="AtMm">Where that is, mm from the top of the grip.</param>
/// <param name="StrengthMPa">
/// Strength it is held against there, MPa: 5th percentile at the wood's moisture, at the slope of the board's grain and of the taper
/// together, times the share for the load's duration and number.
/// </param>
/// <param name="MeanStrengthMPa">The same from the mean strength, MPa.</param>
/// <param name="MaxStressMPa">Greatest stress anywhere, MPa.</param>
/// <param name="MaxStressAtMm">Where that is, mm from the top of the grip.</param>
public sealed record CaseResult(
    LoadCase Case, double StressMPa, double AtMm, double StrengthMPa, double MeanStrengthMPa, double MaxStressMPa, double MaxStressAtMm)
{
    /// <summary>Strength over stress where that is least.</summary>
    public double SafetyFactor => StrengthMPa / StressMPa;

    /// <summary>Safety factor over the least factor asked of the case: 1 or more when it holds.</summary>
    public double Margin => SafetyFactor / Case.LeastFactor;

    /// <summary>Mean strength over stress.</summary>
    public double SafetyFactorOnMean => MeanStrengthMPa / StressMPa;
}
