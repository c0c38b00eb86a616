using System.Globalization;
using System.Text;
using Paddle.Drawings;
using PaddleApi.Contracts;
using PaddleApi.Contracts.Numbers;
using PaddleApi.Contracts.TradeOffs;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Callers;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Requests;

namespace PaddleApi.Endpoints.TradeOffs;

/// <summary>What one wish costs in another.</summary>
internal static class TradeOffEndpoints
{
    private const string Unnamed = "Trade-off";
    private static readonly string[] Offered = [MediaTypes.Json, MediaTypes.Svg];

    /// <summary>Maps the endpoint.</summary>
    public static RouteHandlerBuilder MapTradeOffs(this IEndpointRouteBuilder routes) => routes
        .MapPost("/v1/trade-offs", Answer)
        .WithTags("Designs")
        .Describe("createTradeOff", "What does it cost?",
            "Designs every combination of up to three varied inputs and tells which of them no other beats: as good in every wish and better in one. A "
            + "design that misses an aim is held against none, and one that cannot be asked for is told with the reason. Ask for image/svg+xml to have "
            + "them drawn, the first wish across and the second upward.")
        .RequestExample("fleet", "Width, length and wood of a fleet's blade", static () => Fleet)
        .ResponseExample("fleet", "What each costs", static () => TradeOffStudy.Of(Fleet, default).Answer!)
        .Offers(Offered)
        .NeedsScope(Scopes.Design)
        .Validate<TradeOffRequest>()
        .Solves()
        .Produces<TradeOffResponse>(StatusCodes.Status200OK, MediaTypes.Json, MediaTypes.Svg);

    /// <summary>A blade of an invented hire fleet; the same as docs/examples/trade-off.json.</summary>
    internal static TradeOffRequest Fleet => DocumentedExample.Read<TradeOffRequest>("trade-off.json");

    private static IResult Answer(TradeOffRequest request, HttpContext context)
    {
        var wanted = Negotiation.Choose(context, Offered);
        var (answer, faults) = TradeOffStudy.Of(request, context.RequestAborted);
        if (answer is null) return Validated.Refusal(faults);
        return wanted == MediaTypes.Svg
            ? TypedResults.Text(TradeOffSvg.Write(Picture(request, answer), Drawing(request)), MediaTypes.Svg, Encoding.UTF8)
            : TypedResults.Ok(answer);
    }

    private static TradeOffPicture Picture(TradeOffRequest request, TradeOffResponse answer) => new(
        [.. request.Vary!.Select(input => UnitNames.Of(input.Pointer!) is { } unit ? $"{Name(input.Pointer!)}, {unit}" : Name(input.Pointer!))],
        [.. answer.Objectives.Select(wish => new TradeOffAxis(Name(wish.Pointer), wish.Unit, wish.Aim == "maximise"))],
        [.. answer.Designs.Where(design => design.Figures is not null).Select(design => new TradeOffPoint(
            string.Join("; ", design.Varied.Select(value => value.ToString())), design.Figures!,
            design.Standing switch { TradeOffStudy.Unbeaten => TradeOffStanding.Unbeaten, "beaten" => TradeOffStanding.Beaten, _ => TradeOffStanding.MissesAim }))],
        answer.Designs.Count(design => design.Figures is null));

    // The pointer /mass/finishedG reads "mass finished".
    private static string Name(string pointer)
    {
        var words = new StringBuilder();
        foreach (var letter in UnitNames.Split(pointer).Name.Replace('/', ' ').Trim()) words.Append(char.IsUpper(letter) ? $" {char.ToLower(letter, CultureInfo.InvariantCulture)}" : letter);
        return words.ToString();
    }

    private static DrawingContext Drawing(TradeOffRequest request) => new(
        string.IsNullOrWhiteSpace(request.Base!.Label) ? Unnamed : request.Base.Label, default, EngineVersion.Text);
}
