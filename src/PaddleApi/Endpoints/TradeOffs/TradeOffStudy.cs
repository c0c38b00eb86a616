using System.Text.Json;
using PaddleApi.Contracts;
using PaddleApi.Contracts.Numbers;
using PaddleApi.Contracts.Problems;
using PaddleApi.Contracts.TradeOffs;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Validation;

namespace PaddleApi.Endpoints.TradeOffs;

/// <summary>Designs every combination and holds them against one another.</summary>
internal static class TradeOffStudy
{
    /// <summary>Standing of a design that no other beats.</summary>
    public const string Unbeaten = "unbeaten";

    /// <summary>The answer, or what is wrong with the request.</summary>
    /// <param name="request">A request that its validator has passed.</param>
    public static (TradeOffResponse? Answer, IReadOnlyList<(string Place, Fault Fault)> Faults) Of(TradeOffRequest request, CancellationToken cancellation)
    {
        var (all, faults) = VariedRequests.Of(request);
        if (faults.Count > 0) return (null, faults);
        var (small, large) = (request.Minimise ?? [], request.Maximise ?? []);
        string[] pointers = [.. small, .. large];
        var rows = new TradeOffDesign[all.Count];
        for (var n = 0; n < rows.Length; n++)
        {
            cancellation.ThrowIfCancellationRequested();
            var varied = all[n].Values.Select((j, k) => request.Vary![k].Values![j]).ToList();
            if (all[n].Design is null)
            {
                rows[n] = new(varied, "refused", Refused: [.. all[n].Faults.Select(one => new TradeOffRefusal(one.Place, one.Fault.Reason, one.Fault.Code))]);
                continue;
            }

            var design = DesignService.Compute(all[n].Design!, cancellation);
            var report = design.ToJson();
            double?[] figures = [.. pointers.Select(pointer => Number(report, pointer))];
            if (Array.IndexOf(figures, null) is >= 0 and var missing)
            {
                var place = missing < small.Count ? JsonPointers.Append("/minimise", missing) : JsonPointers.Append("/maximise", missing - small.Count);
                return (null, [(place, new("A design's report has no number there.", FaultValue.Show(pointers[missing])))]);
            }

            var unmet = design.Report.Outcome.Unmet;
            rows[n] = new(varied, "closest", [.. figures.Select(figure => figure!.Value)], design.Code, UnmetAims: unmet.Count > 0 ? unmet : null);
        }

        Judge(rows, small.Count);
        return (new(
            EngineVersion.Text,
            [.. pointers.Select((pointer, k) => new TradeOffObjective(pointer, k < small.Count ? "minimise" : "maximise", UnitNames.Of(pointer) ?? ""))],
            rows.Count(row => row.Standing == Unbeaten), rows), []);
    }

    // A design that misses an aim is no choice: a paddle too weak would beat sound ones in mass.
    private static void Judge(TradeOffDesign[] rows, int small)
    {
        int[] met = [.. Enumerable.Range(0, rows.Length).Where(n => rows[n] is { Figures: not null, UnmetAims: null })];
        var by = Pareto.BeatenBy([.. met.Select(n => rows[n].Figures!.Select((figure, k) => k < small ? figure : -figure).ToArray())]);
        for (var m = 0; m < met.Length; m++)
            rows[met[m]] = rows[met[m]] with { Standing = by[m] is null ? Unbeaten : "beaten", BeatenBy = by[m] is { } other ? met[other] : null };
    }

    private static double? Number(JsonElement report, string pointer) =>
        JsonPointers.Find(report, pointer) is { ValueKind: JsonValueKind.Number } number ? number.GetDouble() : null;
}
