namespace Paddle.Design.Fitting;

/// <summary>A design ready to ask for: only the fields a fitting decides. Lengths are whole millimetres inside the ranges a design accepts.</summary>
/// <param name="Label">Name of the design.</param>
/// <param name="HandSpacingMm">S, mm.</param>
/// <param name="FreeboardMm">c, lower hand to throat, mm.</param>
/// <param name="BladeFamily">Trade name of the blade.</param>
/// <param name="BladeLengthMm">L_b, mm.</param>
/// <param name="BladeWidthMm">W, mm.</param>
/// <param name="BendDegrees">Bend between shaft and blade, degrees.</param>
/// <param name="Shaft">Shaft section that fits the hand and bears the strokes.</param>
/// <param name="Grip">Grip that fits the hand.</param>
/// <param name="Species">Wood suggested.</param>
/// <param name="BodyMassKg">Body mass that the design's loads scale with, kg.</param>
/// <param name="Duty">Duty that the design's loads follow from.</param>
public sealed record SuggestedDesign(
    string Label,
    double HandSpacingMm,
    double FreeboardMm,
    string BladeFamily,
    double BladeLengthMm,
    double BladeWidthMm,
    double BendDegrees,
    ShaftSection Shaft,
    GripSize Grip,
    string Species,
    double BodyMassKg,
    PaddleDuty Duty)
{
    /// <summary>Body masses that a design's loads are given for, kg: a lighter child's paddle is made for the least.</summary>
    public static Outline.Range LoadedMassLimitsKg { get; } = new(12, 250);

    /// <summary>Overall length these sizes add up to, mm.</summary>
    public double OverallLengthMm => LengthRules.OwnGeometryMm(Grip.TopHandMm, HandSpacingMm, FreeboardMm, BladeLengthMm);

    /// <summary>The nearest design that is accepted: hand spacing and overall length both inside their limits, whole mm.</summary>
    /// <returns>This design, its hand spacing changed where it must be.</returns>
    internal SuggestedDesign WithinLimits()
    {
        var rest = OverallLengthMm - HandSpacingMm;
        var (spacings, overalls) = (PaddleLengths.HandSpacingLimitsMm, PaddleLengths.OverallLimitsMm);
        var least = Math.Max(spacings.Min, Math.Ceiling(overalls.Min - rest));
        var most = Math.Min(spacings.Max, Math.Floor(overalls.Max - rest));
        return this with { HandSpacingMm = Math.Round(Math.Clamp(HandSpacingMm, least, most)) };
    }
}
