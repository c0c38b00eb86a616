using System.Globalization;
using Paddle.Design.Build;
using Paddle.Design.Request;
using PaddleApi.Contracts;
using PaddleApi.Contracts.Boards;
using PaddleApi.Contracts.Problems;
using PaddleApi.Validation.Designs;

namespace PaddleApi.Endpoints.Boards;

/// <summary>From a board's readings in the contract to the engine's and back.</summary>
internal static class BoardTestAnswers
{
    private const double UsualSpacingMm = 880;

    private static readonly DesignRequestValidator DesignRules = new();

    /// <summary>Answers a request that its validator has passed.</summary>
    internal static BoardTestResponse Answer(BoardTestRequest request)
    {
        var reading = Reading(request);
        var test = BoardTest.Evaluate(reading);
        return new(
            EngineVersion.Text,
            test.DensityKgM3,
            test.Stiffness is { } plain
                ? new(plain.PlainBeamModulusMPa, plain.PlainBeamUncertaintyMPa, plain.TrueOverPlainBeam)
                : null,
            test.Stiffness?.ModulusMPa,
            test.Stiffness?.ApparentModulusMPa,
            new(reading.Species, reading.MoisturePercent, test.DensityKgM3.Value, test.Stiffness?.ApparentModulusMPa.Value),
            test.Corrections,
            [.. test.Warnings, .. Unpasteable(test, reading)]);
    }

    // A design asks for narrower ranges than a test does: whoever pastes the wood is told before the design refuses it.
    private static IEnumerable<CodedNote> Unpasteable(BoardTest test, BoardReading reading)
    {
        var pasted = new WoodRequest
        {
            Species = reading.Species,
            MoisturePercent = reading.MoisturePercent,
            MeasuredDensityKgM3 = test.DensityKgM3.Value,
            MeasuredModulusMPa = test.Stiffness?.ApparentModulusMPa.Value,
        };
        foreach (var failure in DesignRules.Validate(new DesignRequest { HandSpacingMm = UsualSpacingMm, Wood = pasted }).Errors)
        {
            if (failure.CustomState is Fault { Value: double value, Min: { } least, Max: { } most } fault)
            {
                yield return new(
                    "design-refuses-wood",
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"A design refuses this wood: its {Name(failure.PropertyName)} of {value:G4} lies outside {least:G4} to {most:G4} {fault.Unit}."));
            }
        }
    }

    private static string Name(string property) => property switch
    {
        "Wood.MoisturePercent" => "moisture",
        "Wood.MeasuredDensityKgM3" => "density",
        _ => "apparent modulus",
    };

    private static BoardReading Reading(BoardTestRequest request) => new(
        request.Species!,
        request.MoisturePercent!.Value,
        request.LengthMm!.Value,
        request.WidthMm!.Value,
        request.ThicknessMm!.Value,
        request.MassG!.Value,
        Stiffness(request),
        Errors(request.ReadingErrors));

    private static StiffnessReading? Stiffness(BoardTestRequest request) => request switch
    {
        { Sag: { } sag } => new SagReading(sag.SpanMm!.Value, sag.LoadN!.Value, sag.SagMm!.Value),
        { Tap: { } tap } => new TapReading(tap.FrequencyHz!.Value),
        _ => null,
    };

    private static ReadingErrors Errors(BoardErrorsRequest? stated)
    {
        var usual = new ReadingErrors();
        return stated is null ? usual : usual with
        {
            LengthMm = stated.LengthMm ?? usual.LengthMm,
            WidthMm = stated.WidthMm ?? usual.WidthMm,
            ThicknessMm = stated.ThicknessMm ?? usual.ThicknessMm,
            MassG = stated.MassG ?? usual.MassG,
            SpanMm = stated.SpanMm ?? usual.SpanMm,
            LoadPercent = stated.LoadPercent ?? usual.LoadPercent,
            SagMm = stated.SagMm ?? usual.SagMm,
            FrequencyHz = stated.FrequencyHz ?? usual.FrequencyHz,
        };
    }
}
