using Paddle.Design.Build;
using PaddleApi.Contracts.Boards;
using PaddleApi.Hosting;

namespace PaddleApi.Endpoints.Boards;

/// <summary>From a board's readings in the contract to the engine's and back.</summary>
internal static class BoardTestAnswers
{
    /// <summary>Answers a request that its validator has passed.</summary>
    internal static BoardTestResponse Answer(BoardTestRequest request)
    {
        var reading = Reading(request);
        var test = BoardTest.Evaluate(reading);
        return new(
            EngineVersion.Text,
            Figure(test.DensityKgM3),
            test.ModulusMPa is { } modulus ? Figure(modulus) : null,
            new(reading.SpeciesId, reading.MoisturePercent, test.DensityKgM3.Value, test.ModulusMPa?.Value),
            test.Corrections,
            test.Warnings);
    }

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

    private static BoardFigure Figure(BoardProperty property) =>
        new(property.Value, property.StandardUncertainty, property.At12Percent, property.ZScore, property.Compared);
}
