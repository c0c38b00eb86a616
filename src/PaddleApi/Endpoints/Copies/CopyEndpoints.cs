using System.Text.Json.Serialization;
using Paddle.Design.Copying;
using Paddle.Design.Request;
using PaddleApi.Contracts;
using PaddleApi.Contracts.Problems;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Callers;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;

namespace PaddleApi.Endpoints.Copies;

/// <summary>The answer to readings off a paddle.</summary>
/// <param name="EngineVersion">Version of the engine that computed it.</param>
/// <param name="Report">The copy, whose members stand beside the version.</param>
internal sealed record CopyResponse([property: JsonPropertyOrder(-1)] string EngineVersion, [property: JsonIgnore] CopyReport Report) : CopyReport(Report);

/// <summary>Another paddle like one that exists.</summary>
internal static class CopyEndpoints
{
    private const int ExampleStep = 8;

    /// <summary>Maps the endpoint.</summary>
    public static RouteHandlerBuilder MapCopies(this IEndpointRouteBuilder routes) => routes
        .MapPost("/v1/copies", Answer)
        .WithTags("Designs")
        .Describe("createCopy", "Another like the one I love",
            "From readings off a paddle to the design that explains them: lengths by tape, widths and thicknesses by caliper, weight and balance point, and "
            + "where it can be had the give on a bench or the note when it is tapped. Every reading stands beside what the design would read; one that "
            + "fits no paddle with the others is named to be measured again and does not count. Density and stiffness of the wood come with their standard "
            + "errors. The design is a request to be sent to /v1/designs as it is; the variants change one thing of it and say what that costs.")
        .RequestExample("favourite", "A paddle of a hire fleet that the guests ask for", static () => CopyExamples.Favourite)
        .ResponseExample("favourite", "The design that explains it; of readings and outline every eighth is shown, of the variants no designs", static () => Shortened(Respond(CopyExamples.Favourite, default).Response!))
        .Offers(MediaTypes.Json)
        .NeedsScope(Scopes.Design)
        .Validate<CopyRequest>()
        .Produces<CopyResponse>()
        .Refuses(ProblemKinds.Busy);

    // A reader learns from a few readings as much as from fifty.
    private static CopyResponse Shortened(CopyResponse whole) => whole with
    {
        Readings = [.. whole.Readings.Where((_, index) => index % ExampleStep == 0)],
        Outline = [.. whole.Outline.Where((_, index) => index % ExampleStep == 0)],
        Variants = [.. whole.Variants.Select(variant => variant with { Design = null })],
    };

    private static Gated Answer(CopyRequest request, HttpContext context) => new(() =>
    {
        var (response, faults) = Respond(request, context.RequestAborted);
        return response is null ? Validated.Refusal(faults) : TypedResults.Ok(response);
    });

    private static (CopyResponse? Response, IReadOnlyList<(string Place, Fault Fault)> Faults) Respond(CopyRequest request, CancellationToken cancellation)
    {
        var found = PaddleCopier.Copy(request, cancellation);

        // Readings may make a thing that is no paddle; the rules of designs say why.
        if (Faults(found.Design) is { Count: > 0 } faults) return (null, [.. faults.Select(one => ("/stations", one.Fault with { Reason = $"The readings make no paddle that can be designed. {one.Fault.Reason}" }))]);
        return (new(EngineVersion.Text, found with { DesignCode = Code(found.Design), Variants = [.. found.Variants.Select(Coded)] }), []);
    }

    private static CopyVariant Coded(CopyVariant variant)
    {
        if (variant.Design is not { } design) return variant;
        return Faults(design) is [var first, ..]
            ? variant with { Design = null, Figures = null, Difference = null, InWords = $"{variant.Name} cannot be made: {first.Fault.Reason}" }
            : variant with { DesignCode = Code(design) };
    }

    private static IReadOnlyList<(string Place, Fault Fault)> Faults(DesignRequest design) => GivenDesigns.Faults(design, "");

    private static string Code(DesignRequest design) => DesignService.Compute(design).Code;
}
