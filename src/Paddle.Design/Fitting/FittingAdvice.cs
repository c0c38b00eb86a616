using System.Text.Json.Serialization;
using Paddle.Design.Outline;
using Paddle.Design.Strength;

namespace Paddle.Design.Fitting;

/// <summary>A length with the band in which it lies for two people in three, mm.</summary>
/// <param name="Value">The length, mm.</param>
/// <param name="Low">Less one standard error, mm.</param>
/// <param name="High">Plus one standard error, mm.</param>
public readonly record struct ValueBand(double Value, double Low, double High);

/// <summary>One method that applied.</summary>
/// <param name="Id">The method.</param>
/// <param name="Quantity">What it gives: <c>handSpacingMm</c> or <c>overallLengthMm</c>.</param>
/// <param name="ValueMm">Its value, mm.</param>
/// <param name="StandardErrorMm">Its standard error, mm.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Role">
/// <c>used</c>; <c>combined</c>: part of the one used; <c>basis</c>: the one used starts from it; <c>check</c>: only checks;
/// <c>beside</c>: shown beside; <c>cap</c>: an upper limit.
/// </param>
/// <param name="Group">For overall lengths: <c>service</c>, <c>long-reach</c>, <c>seated</c> or <c>cap</c>.</param>
/// <param name="Weight">For a combined estimate: its weight, 0 to 1.</param>
public sealed record MethodResult(
    string Id,
    string Quantity,
    double ValueMm,
    double StandardErrorMm,
    string Source,
    string Role,
    string? Group = null,
    double? Weight = null);

/// <summary>How far the trade's rules for the overall length lie apart. They serve two styles and are never averaged.</summary>
/// <param name="UsedId">Id of the method used.</param>
/// <param name="LongReachMm">Mean of the long-reach rules that applied, mm.</param>
/// <param name="SeatedMm">Mean of the rules for seated paddlers that applied, mm.</param>
/// <param name="SpreadMm">Longest less shortest of all, mm.</param>
/// <param name="Flagged">Whether the length used lies outside what the rules of its own style span, beyond their scatter.</param>
public sealed record RuleSpread(string UsedId, double? LongReachMm, double? SeatedMm, double SpreadMm, bool Flagged);

/// <summary>The blade that suits the water and the stroke.</summary>
/// <param name="Family">Its family, as <c>blade.family</c> of a design.</param>
/// <param name="LengthMm">Throat to tip, mm.</param>
/// <param name="WidthMm">Full width at the widest point, mm.</param>
/// <param name="BendDegrees">Bend between shaft and blade, degrees.</param>
/// <param name="AreaCm2">Its area, cm².</param>
/// <param name="TargetAreaCm2">The area of this family that body mass, effort, cadence and hours ask for, before its usual sizes are kept, cm².</param>
public sealed record FittedBlade(string Family, double LengthMm, double WidthMm, double BendDegrees, double AreaCm2, double TargetAreaCm2)
{
    private const double Mm2PerCm2 = 100;

    internal static FittedBlade Of(ChosenBlade blade) => new(
        blade.Family.Id, blade.MadeLengthMm, blade.MadeWidthMm, blade.BendDegrees, blade.AreaMm2 / Mm2PerCm2, blade.WantedAreaMm2 / Mm2PerCm2);
}

/// <summary>An oval shaft that fits the hand and bears the outing's strokes. The design in this answer has it.</summary>
/// <param name="WidthMm">Short axis at the lower hand, parallel to the blade's face, mm.</param>
/// <param name="ThicknessMm">Long axis at the lower hand, square to the face, mm.</param>
/// <param name="EquivalentDiameterMm">Diameter of the round of the same girth, mm.</param>
/// <param name="GripsHardestAtMm">Diameter at which this hand grips hardest, mm: thicker than wooden shafts are made.</param>
/// <param name="MostComfortableAtMm">Diameter that this hand finds most comfortable, mm: thicker than wooden shafts are made.</param>
/// <param name="UpperWidthMm">Short axis below the grip, mm; null where the shaft may taper as a design likes.</param>
/// <param name="UpperThicknessMm">Long axis below the grip, mm; null where the shaft may taper as a design likes.</param>
/// <param name="SetBy">What asked for the size.</param>
public sealed record FittedShaft(
    double WidthMm, double ThicknessMm, double EquivalentDiameterMm, double GripsHardestAtMm, double MostComfortableAtMm,
    [property: JsonIgnore] double? UpperWidthMm, [property: JsonIgnore] double? UpperThicknessMm, [property: JsonIgnore] ShaftSizeSetBy SetBy);

/// <summary>What asked for a shaft's size.</summary>
public enum ShaftSizeSetBy
{
    Hand,
    /// <summary>The strokes it must bear.</summary>
    Strokes,
    /// <summary>The thinnest and thickest shafts made.</summary>
    Limits,
    /// <summary>The design it was tried in: with what hand and strokes asked for, it would not have met its aims.</summary>
    Aims,
}

/// <summary>A grip that fits the hand.</summary>
/// <param name="Style">Its style, as <c>grip.style</c> of a design.</param>
/// <param name="WidthMm">Full width, mm.</param>
/// <param name="LengthMm">From the top to where the plain shaft begins, mm.</param>
/// <param name="Faces">The wrist's choice: matching faces, or one hollowed.</param>
/// <param name="TopHandMm">Top of the grip to the middle of the grip hand, mm.</param>
/// <param name="Reason">Why this style and these faces.</param>
public sealed record FittedGrip(GripStyle Style, double WidthMm, double LengthMm, GripFaces Faces, double TopHandMm, string Reason);

/// <summary>The blade against the depth of the water.</summary>
/// <param name="DepthMm">Depth given, mm; left out when none was.</param>
/// <param name="NeededMm">Depth that the blade which fits the body needs, mm.</param>
/// <param name="Fits">Whether that blade fits; if not, the answer's blade is a shorter one of its family.</param>
/// <param name="ImmersedShare">Share of the answer's blade that can be under water, 0 to 1.</param>
public sealed record FittedImmersion(double? DepthMm, double NeededMm, bool Fits, double ImmersedShare)
{
    internal static FittedImmersion Of(ImmersionAdvice advice) => new(advice.DepthMm, advice.NeededMm, advice.Fits, advice.ImmersedShare);
}

/// <summary>Effort, area and slip by the water model: for comparing blades, not for predicting speed.</summary>
/// <param name="BodyMassKg">Body mass used, kg.</param>
/// <param name="StrokesPerMinute">Cadence used, strokes a minute.</param>
/// <param name="StrokesPerDay">Strokes in a day of this outing.</param>
/// <param name="BoatSpeedMS">Boat speed that goes with the effort, m/s.</param>
/// <param name="HullDragN">Hull drag that this paddler overcomes, N.</param>
/// <param name="MeanPullN">Mean force during the pull, N.</param>
/// <param name="PullSeconds">Duration of a pull, s.</param>
/// <param name="DragCoefficient">Low and high coefficient of drag.</param>
/// <param name="SlipMS">Slip of the blade chosen, from the high to the low coefficient, m/s.</param>
/// <param name="FroudeEfficiency">Its efficiency, from the low to the high coefficient.</param>
public sealed record FittedStroke(
    double BodyMassKg, double StrokesPerMinute, double StrokesPerDay, double BoatSpeedMS, double HullDragN, double MeanPullN, double PullSeconds,
    ValueRange DragCoefficient, ValueRange SlipMS, ValueRange FroudeEfficiency)
{
    internal static FittedStroke Of(BladeInWater water) => new(
        Math.Round(water.Demand.BodyMassKg, 1), // as the design in the answer states it
        water.Demand.StrokesPerMinute,
        water.StrokesPerDay,
        water.Demand.BoatSpeedMS,
        water.Demand.HullDragN,
        water.Demand.MeanPullN,
        water.Demand.PullSeconds,
        Range(water.DragCoefficientLow, water.DragCoefficientHigh),
        Range(water.SlipAtHighCoefficientMS, water.SlipAtLowCoefficientMS),
        Range(water.EfficiencyAtLowCoefficient, water.EfficiencyAtHighCoefficient));

    private static ValueRange Range(double least, double most) => new(Math.Round(least, 3), Math.Round(most, 3));
}

/// <summary>Another paddle that would also do.</summary>
/// <param name="Id">Name of the alternative, such as <c>shallower-water</c>.</param>
public sealed record FittingAlternative(string Id, string Reason, SuggestedDesign Design);

/// <summary>The paddle that fits a person, and why.</summary>
/// <param name="OverallLengthMm">Top of the grip to the tip, mm.</param>
/// <param name="HandSpacingMm">Middle of the grip hand to middle of the lower hand, mm.</param>
/// <param name="FreeboardMm">Lower hand to throat, mm.</param>
/// <param name="Duty">How hard the paddle is used; its forces and safety factors follow from it.</param>
/// <param name="Blade">The blade.</param>
/// <param name="Shaft">The shaft's section.</param>
/// <param name="Grip">The grip, and what it does to the wrist.</param>
/// <param name="Immersion">The blade against the depth of the water.</param>
/// <param name="Stroke">What the water model says of effort, area and slip.</param>
/// <param name="Methods">Every method that applied, the ones used marked.</param>
/// <param name="LengthRules">How far the trade's rules for the overall length lie apart for this person.</param>
/// <param name="Reasons">Why, in plain words.</param>
/// <param name="Cautions">What to mind.</param>
/// <param name="Suggested">The design to ask for.</param>
/// <param name="Others">Two other paddles that would do.</param>
public record FittingAdvice(
    ValueBand OverallLengthMm,
    ValueBand HandSpacingMm,
    double FreeboardMm,
    Duty Duty,
    FittedBlade Blade,
    FittedShaft Shaft,
    FittedGrip Grip,
    FittedImmersion Immersion,
    FittedStroke Stroke,
    IReadOnlyList<MethodResult> Methods,
    RuleSpread LengthRules,
    IReadOnlyList<string> Reasons,
    IReadOnlyList<Caution> Cautions,
    [property: JsonIgnore] SuggestedDesign Suggested,
    [property: JsonIgnore] IReadOnlyList<FittingAlternative> Others);
