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

/// <summary>What the water model says of the blade chosen; low and high stand for the low and high drag coefficient.</summary>
/// <param name="Demand">Pull, slip and area the outing asks for.</param>
/// <param name="DragCoefficientLow">Fully submerged plate of the blade's proportions.</param>
/// <param name="DragCoefficientHigh">Plate in a shallow flume.</param>
/// <param name="SlipAtLowCoefficientMS">Slip with the low coefficient, m/s (the larger slip).</param>
/// <param name="SlipAtHighCoefficientMS">Slip with the high coefficient, m/s.</param>
/// <param name="EfficiencyAtLowCoefficient">Froude efficiency with the low coefficient, 0 to 1.</param>
/// <param name="EfficiencyAtHighCoefficient">Froude efficiency with the high coefficient, 0 to 1.</param>
public sealed record BladeInWater(
    StrokeDemand Demand,
    double DragCoefficientLow,
    double DragCoefficientHigh,
    double SlipAtLowCoefficientMS,
    double SlipAtHighCoefficientMS,
    double EfficiencyAtLowCoefficient,
    double EfficiencyAtHighCoefficient,
    double StrokesPerDay);

/// <summary>Another paddle that would also do.</summary>
/// <param name="Id">Name of the alternative, such as <c>shallower-water</c>.</param>
/// <param name="Design">Its design.</param>
public sealed record FittingAlternative(string Id, string Reason, SuggestedDesign Design);

/// <summary>The answer to a fitting.</summary>
/// <param name="FreeboardMm">Clear shaft between lower hand and throat, mm.</param>
/// <param name="Shaft">Shaft section that fits the hand.</param>
/// <param name="Grip">Grip that fits the hand and the wrist.</param>
/// <param name="Immersion">Blade against depth.</param>
/// <param name="Water">Area, slip and efficiency.</param>
/// <param name="Spread">How far the length rules lie apart.</param>
/// <param name="Reasons">Why, in plain words.</param>
/// <param name="Alternatives">Two other paddles.</param>
/// <param name="Design">The design to ask for.</param>
public sealed record FittingAdvice(
    ValueBand OverallLengthMm,
    ValueBand HandSpacingMm,
    double FreeboardMm,
    Duty Duty,
    ChosenBlade Blade,
    ShaftSection Shaft,
    GripSize Grip,
    ImmersionAdvice Immersion,
    BladeInWater Water,
    IReadOnlyList<MethodResult> Methods,
    RuleSpread Spread,
    IReadOnlyList<string> Reasons,
    IReadOnlyList<FittingAlternative> Alternatives,
    IReadOnlyList<Caution> Cautions,
    SuggestedDesign Design);

/// <summary>Either an answer or the reasons for a refusal, never both.</summary>
/// <param name="Advice">The answer, or null when refused.</param>
/// <param name="Refusals">Why refused; empty when answered.</param>
public sealed record FittingOutcome(FittingAdvice? Advice, IReadOnlyList<InputRefusal> Refusals);
