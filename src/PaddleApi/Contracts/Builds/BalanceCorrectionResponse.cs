using Paddle.Design.Build;

namespace PaddleApi.Contracts.Builds;

/// <summary>What a weighing and a balance point in the middle of the build say, and the least wood that brings the aim.</summary>
/// <param name="EngineVersion">Version of the engine that computed it.</param>
/// <param name="DesignCode">Code of the design.</param>
/// <param name="Stage">The stage just done.</param>
/// <param name="Status">
/// What it comes to: <c>on-plan</c> (nothing comes off beyond the plan), <c>cut</c> (removals says what), <c>measure-again</c> (readings do
/// not fit, and no cut is proposed from them) or <c>out-of-reach</c> (no cut that the limits allow brings it nearer its aim).
/// </param>
/// <param name="Summary">The same in a sentence.</param>
/// <param name="Doubts">Readings that do not fit design, stage and the other readings, the worst first; empty when all do.</param>
/// <param name="FitsStage">Another stage that doubted readings would fit as they are; only where there is one.</param>
/// <param name="DensityKgM3">Density that explains the readings, kg/m³; absent when they are not believed.</param>
/// <param name="Explanation">What explains the readings; absent when they are not believed.</param>
/// <param name="TargetMm">Aimed balance point, mm from the top of the grip.</param>
/// <param name="ToleranceMm">Tolerance to both sides, mm.</param>
/// <param name="Finished">The finished paddle if planed to plan; absent when the readings are not believed.</param>
/// <param name="Removals">
/// Least wood to take off beyond the plan, zone by zone from the grip down, in steps of 0.1 mm and none under 0.2; empty when nothing more
/// should come off.
/// </param>
/// <param name="Corrected">The paddle after it; absent when the readings are not believed.</param>
/// <param name="Achievable">
/// Whether the best estimate after it is in tolerance and within the most mass asked for; of a design that misses these itself, whether it
/// is no further out. Absent when the readings are not believed.
/// </param>
/// <param name="LeastBad">Choices when it is not; else absent.</param>
/// <param name="Advice">What to do, and what to know before doing it, in the units of the design.</param>
internal sealed record BalanceCorrectionResponse(
    string EngineVersion,
    string DesignCode,
    string Stage,
    CorrectionStatus Status,
    string Summary,
    IReadOnlyList<CorrectionDoubt> Doubts,
    string? FitsStage,
    double? DensityKgM3,
    CorrectionExplanation? Explanation,
    double TargetMm,
    double ToleranceMm,
    Forecast? Finished,
    IReadOnlyList<CorrectionRemoval> Removals,
    Corrected? Corrected,
    bool? Achievable,
    LeastBad? LeastBad,
    IReadOnlyList<CodedNote> Advice);

/// <summary>A reading that does not fit; where none is to blame by itself, the readings together, without figures.</summary>
/// <param name="Code">
/// <c>mass-does-not-fit</c>, <c>balance-does-not-fit</c>, <c>thickness-does-not-fit</c> or, of all together, <c>readings-do-not-fit</c>.
/// </param>
/// <param name="Text">The same in words.</param>
/// <param name="Reading">Place of the reading in the request, as a JSON pointer.</param>
/// <param name="Value">As read, in <paramref name="Unit"/>.</param>
/// <param name="Expected">What the design, the stage and the readings that fit expect.</param>
/// <param name="Low">5th percentile of what they expect.</param>
/// <param name="High">95th percentile of it.</param>
/// <param name="Unit">Unit of the four: g or mm.</param>
/// <param name="Deviations">Standard deviations that it lies off; beyond 3.29 it is doubted, beyond 6 it is not believed again either.</param>
/// <param name="WouldFit">A usual slip set right that would fit: a digit too many or too few, or a balance point read from the tip.</param>
internal sealed record CorrectionDoubt(
    string Code,
    string Text,
    string? Reading,
    double? Value,
    double? Expected,
    double? Low,
    double? High,
    string? Unit,
    double? Deviations,
    double? WouldFit);

/// <summary>What explains the readings.</summary>
/// <param name="Code"><c>even-wood</c> where a density of its own is enough, else <c>uneven-wood</c>.</param>
/// <param name="DensityUncertaintyKgM3">Standard uncertainty of the density, kg/m³.</param>
/// <param name="EndToEndPercent">Density at the tip end above that at the grip end, percent.</param>
/// <param name="UnevenNeeded">Whether even wood at the stage's plan fails to explain the balance point.</param>
/// <param name="UnexplainedMm">Balance point read, less that of even wood at the stage's plan, mm.</param>
/// <param name="ThicknessErrors">Thickness above the stage's plan by zone; negative where too thin.</param>
/// <param name="Words">The same in words.</param>
internal sealed record CorrectionExplanation(
    string Code,
    double DensityUncertaintyKgM3,
    double EndToEndPercent,
    bool UnevenNeeded,
    double UnexplainedMm,
    IReadOnlyList<ZoneThickness> ThicknessErrors,
    string Words);

/// <summary>A thickness in a zone.</summary>
/// <param name="Zone">The zone.</param>
/// <param name="ThicknessMm">Full thickness, mm.</param>
internal sealed record ZoneThickness(string Zone, double ThicknessMm);

/// <summary>Wood to take from one zone, beyond planing to plan.</summary>
/// <param name="Zone">The zone.</param>
/// <param name="MassG">Grams that come off.</param>
/// <param name="ThicknessMm">Full thickness off the middle in the heart of the zone, mm, running out to nothing at edges and ends.</param>
/// <param name="PerFaceMm">Of that, off each face, mm.</param>
/// <param name="How">Where and how to take it.</param>
internal sealed record CorrectionRemoval(
    string Zone,
    double MassG,
    double ThicknessMm,
    double PerFaceMm,
    string How);
