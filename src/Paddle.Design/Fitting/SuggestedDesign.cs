using Paddle.Design.Outline;

namespace Paddle.Design.Fitting;

/// <summary>A design ready to ask for: only the fields a fitting decides. Sizes are whole millimetres inside the ranges a design accepts.</summary>
/// <param name="Label">Name of the design.</param>
/// <param name="HandSpacingMm">S, mm, 500 to 1100.</param>
/// <param name="FreeboardMm">c, lower hand to throat, mm, 0 to 150.</param>
/// <param name="BladeFamily">Trade name of the blade.</param>
/// <param name="BladeLengthMm">L_b, mm, 400 to 900.</param>
/// <param name="BladeWidthMm">W, mm, 70 to 230.</param>
/// <param name="BendDegrees">Bend between shaft and blade, degrees.</param>
/// <param name="GripStyle">Style of the grip.</param>
/// <param name="GripWidthMm">Grip width, mm.</param>
/// <param name="GripLengthMm">Grip length, mm.</param>
/// <param name="GripFaces">Both faces alike, or one hollowed.</param>
/// <param name="Species">Wood suggested.</param>
/// <param name="BodyMassKg">Body mass that the design's loads scale with, kg.</param>
/// <param name="HardStrokeN">Peak of the hardest stroke to expect, N; null for the design's own at this body mass.</param>
/// <param name="ShaftWidthMm">Shaft's short axis that fits the hand, mm: information, the design's solver chooses.</param>
/// <param name="ShaftThicknessMm">Shaft's long axis that fits the hand, mm: information, the design's solver chooses.</param>
/// <param name="TopHandMm">Grip end to the middle of the grip hand, mm: information.</param>
public sealed record SuggestedDesign(
    string Label,
    double HandSpacingMm,
    double FreeboardMm,
    string BladeFamily,
    double BladeLengthMm,
    double BladeWidthMm,
    double BendDegrees,
    GripStyle GripStyle,
    double GripWidthMm,
    double GripLengthMm,
    GripFaces GripFaces,
    string Species,
    double BodyMassKg,
    double? HardStrokeN,
    double ShaftWidthMm,
    double ShaftThicknessMm,
    double TopHandMm)
{
    /// <summary>Overall length these sizes add up to, mm.</summary>
    public double OverallLengthMm => LengthRules.OwnGeometryMm(TopHandMm, HandSpacingMm, FreeboardMm, BladeLengthMm);

    /// <summary>The nearest design that is accepted: hand spacing and overall length both inside their limits, whole mm.</summary>
    /// <returns>This design, its hand spacing changed where it must be.</returns>
    internal SuggestedDesign WithinLimits()
    {
        double rest = OverallLengthMm - HandSpacingMm;
        var (spacings, overalls) = (PaddleLengths.HandSpacingLimitsMm, PaddleLengths.OverallLimitsMm);
        double least = Math.Max(spacings.Min, Math.Ceiling(overalls.Min - rest));
        double most = Math.Min(spacings.Max, Math.Floor(overalls.Max - rest));
        return this with { HandSpacingMm = Math.Round(Math.Clamp(HandSpacingMm, least, most)) };
    }

    /// <summary>Put a design together from its parts.</summary>
    /// <param name="label">Name.</param>
    /// <param name="handSpacingMm">S, whole mm.</param>
    /// <param name="freeboardMm">c, whole mm.</param>
    /// <param name="blade">Blade.</param>
    /// <param name="grip">Grip.</param>
    /// <param name="shaft">Shaft section that fits the hand.</param>
    /// <param name="species">Wood.</param>
    /// <param name="bodyMassKg">Body mass that the loads scale with, kg.</param>
    /// <param name="hardStrokeN">Peak of the hardest stroke, N, or null.</param>
    /// <returns>The design.</returns>
    internal static SuggestedDesign Of(
        string label, double handSpacingMm, double freeboardMm, ChosenBlade blade, GripSize grip, ShaftSection shaft, string species, double bodyMassKg, double? hardStrokeN) =>
        new(
            label, handSpacingMm, freeboardMm, blade.Family.Id, blade.LengthMm, blade.WidthMm, blade.BendDegrees,
            grip.Style, grip.WidthMm, grip.LengthMm, grip.Faces, species, bodyMassKg, hardStrokeN,
            shaft.WidthMm, shaft.ThicknessMm, grip.TopHandMm);
}
