using Paddle.Design.Strength;

namespace Paddle.Design.Build;

/// <summary>Wood to take from one zone, beyond planing to plan.</summary>
/// <param name="Zone">The zone.</param>
/// <param name="Id">Its name in the contract.</param>
/// <param name="MassG">Grams that come off.</param>
/// <param name="ThicknessMm">Full thickness off the middle in the heart of the zone, mm, running out to nothing at edges and ends.</param>
/// <param name="PerFaceMm">Of that, off each face, mm.</param>
/// <param name="How">How to take it.</param>
public sealed record Removal(CorrectionZone Zone, string Id, double MassG, double ThicknessMm, double PerFaceMm, string How);

/// <summary>What explains the readings.</summary>
/// <param name="DensityKgM3">Density at the design's balance point, kg/m³.</param>
/// <param name="DensityUncertaintyKgM3">Its standard uncertainty.</param>
/// <param name="EndToEndPercent">Density at the tip end above that at the grip end, percent.</param>
/// <param name="UnevenNeeded">
/// Whether even wood at the stage's plan fails to explain the balance: it is more than 2 standard uncertainties off.
/// </param>
/// <param name="UnexplainedMm">Balance point read, less that of even wood at the stage's plan, mm.</param>
/// <param name="ThicknessErrorsMm">Thickness above plan by zone, mm, in the order of <see cref="CorrectionZones.All"/>.</param>
/// <param name="Words">The same in words.</param>
public sealed record Explanation(
    double DensityKgM3,
    double DensityUncertaintyKgM3,
    double EndToEndPercent,
    bool UnevenNeeded,
    double UnexplainedMm,
    IReadOnlyList<double> ThicknessErrorsMm,
    string Words);

/// <summary>A predicted finished paddle.</summary>
/// <param name="MassG">Mass, g.</param>
/// <param name="BalanceMm">Balance point, mm.</param>
/// <param name="StandardUncertaintyMm">Standard uncertainty of the balance point, mm.</param>
/// <param name="ChanceInTolerance">Chance that it ends in tolerance, 0 to 1.</param>
public sealed record Forecast(double MassG, double BalanceMm, double StandardUncertaintyMm, double ChanceInTolerance);

/// <summary>The paddle after the correction, its strength looked at again on the real solid.</summary>
/// <param name="MassG">Mass, g.</param>
/// <param name="BalanceMm">Balance point, mm.</param>
/// <param name="ChanceInTolerance">Chance that it ends in tolerance, 0 to 1.</param>
/// <param name="Weakest">The load case nearest to its least factor, or furthest below it.</param>
/// <param name="BenchFlexMm">Bench flex, mm.</param>
public sealed record Corrected(
    double MassG, double BalanceMm, double ChanceInTolerance, CaseResult Weakest, double BenchFlexMm);

/// <summary>What is left when wood would have to be put back.</summary>
/// <param name="AcceptOffsetMm">Offset from the aim to live with, mm; negative grip-heavy.</param>
/// <param name="MoveLowerHandMm">How far to move the lower-hand mark, mm towards the tip (negative towards the grip).</param>
/// <param name="AddAtTipG">Grams to add at the tip, as cloth and resin, to reach the aim; null when it is blade-heavy.</param>
/// <param name="AddAtGripG">Grams to add at the grip to reach the aim; null when it is grip-heavy.</param>
public sealed record LeastBad(double AcceptOffsetMm, double MoveLowerHandMm, double? AddAtTipG, double? AddAtGripG);
