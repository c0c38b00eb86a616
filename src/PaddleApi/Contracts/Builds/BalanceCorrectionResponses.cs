using Paddle.Design;
using Paddle.Design.Build;

namespace PaddleApi.Contracts.Builds;

/// <summary>Turns a correction into the answer of the contract.</summary>
internal static class BalanceCorrectionResponses
{
    /// <summary>The answer.</summary>
    /// <param name="report">The design.</param>
    /// <param name="correction">The correction.</param>
    /// <param name="stage">The stage it was asked at.</param>
    /// <param name="designCode">Code of the design.</param>
    public static BalanceCorrectionResponse From(
        DesignReport report, BalanceCorrection correction, BuildStage stage, string designCode)
    {
        var words = new CorrectionWords(report, stage, correction);
        var outlook = correction.Outlook;
        return new(
            EngineVersion.Text,
            designCode,
            Names.Of(stage),
            correction.Status,
            words.Summary,
            [.. words.Doubts.Select((note, i) => Doubt(note, correction.Doubt!.Readings.ElementAtOrDefault(i)))],
            correction.Doubt?.FitsStage is { } other ? Names.Of(other) : null,
            outlook?.Explanation.DensityKgM3,
            outlook is null ? null : Explanation(outlook.Explanation, words.Explanation!),
            correction.AimMm,
            correction.ToleranceMm,
            outlook?.Finished,
            [
                .. correction.Removals.Select(cut => new CorrectionRemoval(
                    Names.Of(cut.Zone), cut.MassG, cut.ThicknessMm, cut.PerFaceMm, words.How(cut))),
            ],
            outlook?.Corrected,
            outlook?.Achievable,
            outlook?.LeastBad,
            words.Advice);
    }

    private static CorrectionDoubt Doubt(CodedNote note, ReadingDoubt? doubt) => doubt is null
        ? new(note.Code, note.Text, null, null, null, null, null, null, null, null)
        : new(
            note.Code,
            note.Text,
            doubt.Kind switch
            {
                ReadingKind.Mass => "/massG",
                ReadingKind.Balance => "/balanceMm",
                _ => FormattableString.Invariant($"/readings/{doubt.Index}/thicknessMm"),
            },
            doubt.Read,
            doubt.Expected,
            doubt.Low,
            doubt.High,
            doubt.Kind == ReadingKind.Mass ? "g" : "mm",
            doubt.Deviations,
            doubt.WouldFit);

    private static CorrectionExplanation Explanation(Explanation explanation, CodedNote words) => new(
        words.Code,
        explanation.DensityUncertaintyKgM3,
        explanation.EndToEndPercent,
        explanation.UnevenNeeded,
        explanation.UnexplainedMm,
        [.. CorrectionZones.All.Select((zone, i) => new ZoneThickness(Names.Of(zone), explanation.ThicknessErrorsMm[i]))],
        words.Text);
}
