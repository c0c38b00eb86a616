using Paddle.Design;
using Paddle.Design.Fitting;
using Paddle.Design.Request;

namespace PaddleApi.Contracts.Fittings;

/// <summary>The paddle that fits a person, why, and the request that designs it.</summary>
/// <param name="EngineVersion">Version of the engine that answered.</param>
/// <param name="OverallLengthMm">Top of the grip to the tip, mm.</param>
/// <param name="HandSpacingMm">Middle of the grip hand to middle of the lower hand, mm.</param>
/// <param name="FreeboardMm">Lower hand to throat, mm.</param>
/// <param name="Duty">How hard the paddle is used: <c>touring</c>, <c>expedition</c> or <c>racing</c>; its forces and safety factors follow from it.</param>
/// <param name="Blade">The blade.</param>
/// <param name="Shaft">The shaft's section.</param>
/// <param name="Grip">The grip, and what it does to the wrist.</param>
/// <param name="Immersion">The blade against the depth of the water.</param>
/// <param name="Stroke">What the water model says of effort, area and slip.</param>
/// <param name="Methods">Every method that applied, the ones used marked.</param>
/// <param name="LengthRules">How far the trade's rules for the overall length lie apart for this person.</param>
/// <param name="Reasons">Why, in plain words.</param>
/// <param name="Alternatives">Two other paddles that would do.</param>
/// <param name="Cautions">What to mind.</param>
/// <param name="Design">A request ready to be sent to <c>/v1/designs</c>.</param>
internal sealed record FittingResponse(
    string EngineVersion,
    ValueBand OverallLengthMm,
    ValueBand HandSpacingMm,
    double FreeboardMm,
    string Duty,
    FittedBlade Blade,
    FittedShaft Shaft,
    FittedGrip Grip,
    FittedImmersion Immersion,
    FittedStroke Stroke,
    IReadOnlyList<MethodResult> Methods,
    RuleSpread LengthRules,
    IReadOnlyList<string> Reasons,
    IReadOnlyList<FittingAlternativeDesign> Alternatives,
    IReadOnlyList<Caution> Cautions,
    DesignRequest Design);

/// <summary>The blade that suits the water and the stroke.</summary>
/// <param name="Family">Its family, as <c>blade.family</c> of a design.</param>
/// <param name="LengthMm">Throat to tip, mm.</param>
/// <param name="WidthMm">Full width at the widest point, mm.</param>
/// <param name="BendDegrees">Bend between shaft and blade, degrees.</param>
/// <param name="AreaCm2">Its area, cm².</param>
/// <param name="TargetAreaCm2">The area of this family that body mass, effort, cadence and hours ask for, before its usual sizes are kept, cm².</param>
internal sealed record FittedBlade(string Family, double LengthMm, double WidthMm, double BendDegrees, double AreaCm2, double TargetAreaCm2);

/// <summary>An oval shaft that fits the hand and bears the outing's strokes. The design in this answer has it.</summary>
/// <param name="WidthMm">Short axis at the lower hand, parallel to the blade's face, mm.</param>
/// <param name="ThicknessMm">Long axis at the lower hand, square to the face, mm.</param>
/// <param name="EquivalentDiameterMm">Diameter of the round of the same girth, mm.</param>
/// <param name="GripsHardestAtMm">Diameter at which this hand grips hardest, mm: thicker than wooden shafts are made.</param>
/// <param name="MostComfortableAtMm">Diameter that this hand finds most comfortable, mm: thicker than wooden shafts are made.</param>
internal sealed record FittedShaft(
    double WidthMm, double ThicknessMm, double EquivalentDiameterMm, double GripsHardestAtMm, double MostComfortableAtMm);

/// <summary>A grip that fits the hand.</summary>
/// <param name="Style"><c>pear</c>, <c>palm</c> or <c>t</c>.</param>
/// <param name="WidthMm">Full width, mm.</param>
/// <param name="LengthMm">From the top to where the plain shaft begins, mm.</param>
/// <param name="Faces">The wrist's choice: <c>matching</c> faces, or <c>one-sided</c>.</param>
/// <param name="TopHandMm">Top of the grip to the middle of the grip hand, mm.</param>
/// <param name="Reason">Why this style and these faces.</param>
internal sealed record FittedGrip(string Style, double WidthMm, double LengthMm, string Faces, double TopHandMm, string Reason);

/// <summary>The blade against the depth of the water.</summary>
/// <param name="DepthMm">Depth given, mm; left out when none was.</param>
/// <param name="NeededMm">Depth that the blade which fits the body needs, mm.</param>
/// <param name="Fits">Whether that blade fits; if not, the answer's blade is a shorter one of its family.</param>
/// <param name="ImmersedShare">Share of the answer's blade that can be under water, 0 to 1.</param>
internal sealed record FittedImmersion(double? DepthMm, double NeededMm, bool Fits, double ImmersedShare);

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
internal sealed record FittedStroke(
    double BodyMassKg,
    double StrokesPerMinute,
    double StrokesPerDay,
    double BoatSpeedMS,
    double HullDragN,
    double MeanPullN,
    double PullSeconds,
    ValueRange DragCoefficient,
    ValueRange SlipMS,
    ValueRange FroudeEfficiency);

/// <summary>Another paddle that would do.</summary>
/// <param name="Id">Name of the alternative, such as <c>shallower-water</c>.</param>
/// <param name="Reason">When to choose it.</param>
/// <param name="Design">A request ready to be sent to <c>/v1/designs</c>.</param>
internal sealed record FittingAlternativeDesign(string Id, string Reason, DesignRequest Design);
