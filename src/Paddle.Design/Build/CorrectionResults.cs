using Paddle.Design.Strength;

namespace Paddle.Design.Build;

/// <summary>What a correction comes to.</summary>
internal enum CorrectionStatus
{
    /// <summary>The paddle ends where it should: nothing more comes off than the plan says.</summary>
    OnPlan,
    /// <summary>Wood comes off beyond the plan.</summary>
    Cut,
    /// <summary>The readings cannot be of this paddle at this stage; no cut is proposed from them.</summary>
    MeasureAgain,
    /// <summary>No cut that the limits allow brings it nearer its aim.</summary>
    OutOfReach,
}

/// <summary>Names of the statuses.</summary>
internal static class CorrectionStatuses
{
    /// <summary>The contract's name of a status.</summary>
    public static string Id(CorrectionStatus status) => status switch
    {
        CorrectionStatus.OnPlan => "on-plan",
        CorrectionStatus.Cut => "cut",
        CorrectionStatus.MeasureAgain => "measure-again",
        _ => "out-of-reach",
    };
}

/// <summary>Why readings are doubted.</summary>
/// <param name="Readings">Those that do not fit, the worst first; empty where none is to blame by itself.</param>
/// <param name="FitsStage">Another stage whose plan they fit; null where there is none.</param>
/// <param name="IsBeyondBelief">Whether one lies so far off that taking it again settles nothing.</param>
internal sealed record Doubt(IReadOnlyList<ReadingDoubt> Readings, BuildStage? FitsStage, bool IsBeyondBelief);

/// <summary>Wood to take from one zone, beyond planing to plan.</summary>
/// <param name="MassG">Grams that come off.</param>
/// <param name="ThicknessMm">Full thickness off the middle in the heart of the zone, mm, running out to nothing at edges and ends.</param>
/// <param name="FromMm">Where the zone begins, mm from the top of the grip.</param>
/// <param name="ToMm">Where it ends.</param>
internal sealed record Removal(CorrectionZone Zone, double MassG, double ThicknessMm, double FromMm, double ToMm)
{
    /// <summary>Of the thickness, off each face, mm.</summary>
    public double PerFaceMm => ThicknessMm / 2;
}

/// <summary>What explains the readings.</summary>
/// <param name="DensityKgM3">Density at the design's balance point, kg/m³.</param>
/// <param name="DensityUncertaintyKgM3">Its standard uncertainty.</param>
/// <param name="EndToEndPercent">Density at the tip end above that at the grip end, percent.</param>
/// <param name="UnevenNeeded">
/// Whether even wood at the stage's plan fails to explain the balance: it is more than 2 standard uncertainties off.
/// </param>
/// <param name="UnexplainedMm">Balance point read, less that of even wood at the stage's plan, mm.</param>
/// <param name="ThicknessErrorsMm">Thickness above plan by zone, mm, in the order of <see cref="CorrectionZones.All"/>.</param>
internal sealed record Explanation(
    double DensityKgM3,
    double DensityUncertaintyKgM3,
    double EndToEndPercent,
    bool UnevenNeeded,
    double UnexplainedMm,
    IReadOnlyList<double> ThicknessErrorsMm);

/// <summary>A predicted finished paddle.</summary>
/// <param name="BalanceMm">Balance point, mm.</param>
/// <param name="StandardUncertaintyMm">Standard uncertainty of the balance point, mm.</param>
/// <param name="ChanceInTolerance">Chance that it ends in tolerance, 0 to 1.</param>
internal sealed record Forecast(double MassG, double BalanceMm, double StandardUncertaintyMm, double ChanceInTolerance);

/// <summary>The paddle after the correction, its strength looked at again on the real solid.</summary>
/// <param name="BalanceMm">Balance point, mm.</param>
/// <param name="ChanceInTolerance">Chance that it ends in tolerance, 0 to 1.</param>
/// <param name="Weakest">The load case nearest to its least factor, or furthest below it.</param>
internal sealed record Corrected(
    double MassG, double BalanceMm, double ChanceInTolerance, CaseResult Weakest, double BenchFlexMm);

/// <summary>What the readings make of the paddle.</summary>
/// <param name="Explanation">What explains them.</param>
/// <param name="IsToPlan">Whether they cannot be told from the stage's plan, density apart.</param>
/// <param name="Finished">The finished paddle if planed to plan.</param>
/// <param name="Corrected">The paddle after the cut, the same where there is none.</param>
/// <param name="Achievable">
/// Whether the best estimate after it is in tolerance and within the most mass; of a design that lies outside these itself, whether it
/// is no further out. The cut itself never crosses a limit; should the wood be too thin before it, <see cref="Corrected"/> shows the
/// safety factor.
/// </param>
/// <param name="LeastBad">Choices when it is not; else null.</param>
internal sealed record Outlook(
    Explanation Explanation, bool IsToPlan, Forecast Finished, Corrected Corrected, bool Achievable, LeastBad? LeastBad);

/// <summary>What is left when wood would have to be put back.</summary>
/// <param name="AcceptOffsetMm">Offset from the aim to live with, mm; negative grip-heavy.</param>
/// <param name="MoveLowerHandMm">How far to move the lower-hand mark, mm towards the tip (negative towards the grip).</param>
/// <param name="AddAtTipG">Grams to add at the tip, as cloth and resin, to reach the aim; null when it is blade-heavy.</param>
/// <param name="AddAtGripG">Grams to add at the grip to reach the aim; null when it is grip-heavy.</param>
internal sealed record LeastBad(double AcceptOffsetMm, double MoveLowerHandMm, double? AddAtTipG, double? AddAtGripG);
