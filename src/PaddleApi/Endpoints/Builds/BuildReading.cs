using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Design.Fitting;
using Paddle.Design.Layout;
using PaddleApi.Contracts.Builds;
using PaddleApi.Contracts.Problems;
using PaddleApi.Validation;
using PaddleApi.Validation.Builds;

namespace PaddleApi.Endpoints.Builds;

/// <summary>From choices and readings in the contract to the engine's.</summary>
internal static class BuildReading
{
    private const string NotOnPaddle = "not-on-paddle";

    /// <summary>Choices that their validator has passed; null takes the usual ones.</summary>
    internal static BuildOptions Options(BuildChoices? choices)
    {
        var usual = new BuildOptions();
        return choices is null ? usual : usual with
        {
            BoardThicknessMm = choices.BoardThicknessMm,
            Saw = choices.Saw is { } saw ? Names.Find<OutlineSaw>(saw)!.Value : usual.Saw,
        };
    }

    /// <summary>The paddle on the maker's own board; null where its sizes are not stated.</summary>
    internal static BoardPlan? Plan(BoardSizes board, BuildSheet sheet, BuildChoices choices, DesignReport report, CancellationToken cancellation) =>
        // Strips come out of boards of several woods: /v1/board-layouts lays those out.
        board is { BoardLengthMm: { } length, BoardWidthMm: { } width } && report.Laminate is null
            ? BoardPlan.For(report, length, width, sheet.Blank.ThicknessMm, Options(choices).Saw, cancellation) : null;

    /// <summary>The paddle in a climate that its validator has passed; null where none is stated.</summary>
    internal static MoistureInService? InService(ServiceClimate climate, DesignReport report)
    {
        var used = climate is { TemperatureC: { } temperature, RelativeHumidityPercent: { } humidity }
            ? MoistureInService.FromClimate(temperature, humidity)
            : climate.UsedMoisturePercent;
        return used is { } percent ? MoistureInService.For(report, report.Specification.Wood.MoisturePercent, percent) : null;
    }

    /// <summary>Readings that their validator has passed.</summary>
    internal static BalanceReading Reading(BalanceCorrectionRequest request)
    {
        var reading = new BalanceReading(
            Names.Find<BuildStage>(request.Stage!)!.Value,
            request.MassG!.Value,
            request.BalanceMm!.Value,
            [.. (request.Readings ?? []).Select(one => new ThicknessReading(one.XMm!.Value, one.ThicknessMm!.Value))]);
        var errors = request.ReadingErrors;
        return reading with
        {
            MassErrorG = errors?.MassG ?? reading.MassErrorG,
            BalanceErrorMm = errors?.BalanceMm ?? reading.BalanceErrorMm,
            ThicknessErrorMm = errors?.ThicknessMm ?? reading.ThicknessErrorMm,
            EarlierRemovals =
            [
                .. (request.EarlierRemovals ?? []).Select(
                    cut => new EarlierRemoval(Names.Find<CorrectionZone>(cut.Zone!)!.Value, cut.ThicknessMm!.Value)),
            ],
            MeasuredAgain = request.MeasuredAgain ?? reading.MeasuredAgain,
        };
    }

    /// <summary>What to aim for.</summary>
    internal static CorrectionOptions Aim(BalanceCorrectionRequest request)
    {
        var usual = new CorrectionOptions();
        return new(request.Confidence ?? usual.Confidence, request.CountFinish ?? usual.CountFinish, Options(request.Build));
    }

    /// <summary>Faults that only the design can tell.</summary>
    internal static IReadOnlyList<(string Place, Fault Fault)> Faults(BalanceCorrectionRequest request, DesignReport report)
    {
        var overall = report.Specification.Form.Places.OverallMm;
        var faults = new List<(string Place, Fault Fault)>();
        if (request.BalanceMm >= overall)
            faults.Add(("/balanceMm", new("The balance point must lie on this paddle.", FaultValue.Show(request.BalanceMm), Max: overall, Unit: "mm", Code: NotOnPaddle)));
        for (var i = 0; i < (request.Readings?.Count ?? 0); i++)
        {
            if (request.Readings![i].XMm > overall)
                faults.Add((JsonPointers.Append(JsonPointers.Append("/readings", i), "xMm"), new(
                    "A reading must lie on this paddle.", FaultValue.Show(request.Readings[i].XMm), 0, overall, "mm", Code: NotOnPaddle)));
        }

        var weighed = BuildStages.Weighed(report.Laminate is not null);
        if (!weighed.Contains(Names.Find<BuildStage>(request.Stage!)!.Value))
        {
            faults.Add(("/stage", new(
                "Strips are thinner than the board that this stage reckons with: a glued-up paddle is weighed from the eight-sided shaft on.", request.Stage,
                Allowed: [.. weighed.Select(Names.Of)], Code: RefusalCodes.NotAccepted)));
        }

        if (BuildChoicesValidator.BoardFault(request.Build?.BoardThicknessMm, report) is { } fault)
            faults.Add(("/build/boardThicknessMm", fault));
        return faults;
    }
}
