using Paddle.Design.Build;

namespace PaddleApi.Contracts.Builds;

/// <summary>Turns a correction into the answer of the contract.</summary>
public static class BalanceCorrectionResponses
{
    /// <summary>The answer.</summary>
    /// <param name="correction">The correction.</param>
    /// <param name="stage">The stage it was asked at.</param>
    /// <param name="engineVersion">Version of the engine.</param>
    /// <param name="designCode">Code of the design.</param>
    public static BalanceCorrectionResponse From(BalanceCorrection correction, BuildStage stage, string engineVersion, string designCode)
    {
        ArgumentNullException.ThrowIfNull(correction);
        var (finished, corrected) = (correction.Finished, correction.Corrected);
        return new(
            engineVersion,
            designCode,
            BuildStages.Id(stage),
            correction.Explanation.DensityKgM3,
            Explanation(correction.Explanation),
            correction.AimMm,
            correction.ToleranceMm,
            new(finished.MassG, finished.BalanceMm, finished.StandardUncertaintyMm, finished.ChanceInTolerance),
            [.. correction.Removals.Select(cut => new CorrectionRemoval(cut.Id, cut.MassG, cut.ThicknessMm, cut.PerFaceMm, cut.How))],
            new(
                corrected.MassG,
                corrected.BalanceMm,
                corrected.ChanceInTolerance,
                corrected.Weakest.SafetyFactor,
                corrected.Weakest.Case.Id,
                corrected.BenchFlexMm),
            correction.Achievable,
            correction.LeastBad is { } left
                ? new(left.AcceptOffsetMm, left.MoveLowerHandMm, left.AddAtTipG, left.AddAtGripG)
                : null,
            correction.Advice);
    }

    private static CorrectionExplanation Explanation(Explanation explanation) => new(
        explanation.DensityUncertaintyKgM3,
        explanation.EndToEndPercent,
        explanation.UnevenNeeded,
        explanation.UnexplainedMm,
        [.. CorrectionZones.All.Select((zone, i) => new ZoneThickness(CorrectionZones.Id(zone), explanation.ThicknessErrorsMm[i]))],
        explanation.Words);
}
