using System.Diagnostics;
using Paddle.Design.Request;
using Paddle.Drawings;
using PaddleApi.Contracts.Builds;
using PaddleApi.Contracts.Designs;
using PaddleApi.Endpoints.Designs.Files;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Caching;
using PaddleApi.Hosting.Callers;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;
using PaddleApi.Hosting.Telemetry;

namespace PaddleApi.Endpoints.Designs;

/// <summary>Designs: one is solved from a request, and had again by its code.</summary>
internal static class DesignEndpoints
{
    private const string PostedDrawing = "outline.svg";
    private const int ExampleStep = 20;
    private const string ExampleSummary = "A paddle of a hire fleet; of its stations every twentieth is shown";

    private static readonly string[] Offered = [MediaTypes.Json, MediaTypes.Svg];

    /// <summary>Maps the endpoints.</summary>
    public static RouteGroupBuilder MapDesigns(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup(DesignAddresses.Root).WithTags("Designs");
        FieldSelection.TakesFields(group.MapPost("/", Create))
            .Describe("createDesign", "Design a paddle",
                "Chooses every size left null so that the paddle is light, strong and balanced, and reports on it. Nothing is kept here: the "
                + "answer's designCode is the design. When the aims cannot all be met the answer is the closest design, with balance.achieved "
                + "false and what to change. Ask for image/svg+xml to have the outline at once.")
            .RequestExample("hire-paddle", "A paddle of a hire fleet, every member written out", static () => DesignExamples.HirePaddle)
            .RequestExample("laminated-paddle", "Glued up of strips: a light shaft, hard wings", static () => DesignExamples.LaminatedPaddle)
            .RequestExample("least", "The least that can be asked", static () => DesignExamples.Least)
            .ResponseExample("hire-paddle", ExampleSummary, static () => Shortened(DesignService.Compute(DesignExamples.HirePaddle)))
            .Offers(Offered)
            .NeedsScope(Scopes.Design)
            .Validate<DesignRequest>()
            .Solves()
            .Produces<DesignResponse>(StatusCodes.Status200OK, MediaTypes.Json, MediaTypes.Svg)
            .Refuses(ProblemKinds.MalformedJson);

        FieldSelection.TakesFields(Code(group.MapMethods("/{designCode}", Routes.Reading, Report)))
            .Describe("getDesign", "A design by its code",
                "The report of a design whose every size is in its code: nothing is solved, and the same code keeps its shape when the solver improves.")
            .ResponseExample(
                "hire-paddle", ExampleSummary, static () => Shortened(DesignService.Evaluate(DesignService.Read(ExampleCode.Value).Design!, ExampleCode.Value)))
            .Offers(MediaTypes.Json)
            .Produces<DesignResponse>();

        group.MapFiles(Code);
        return group;
    }

    /// <summary>Describes an address that holds a design's code.</summary>
    internal static RouteHandlerBuilder Code(RouteHandlerBuilder endpoint) => endpoint
        .Parameter(
            "designCode", "The member designCode of an answer.", static () => ExampleCode.Value,
            typeof(BalanceCorrectionRequest).GetProperty(nameof(BalanceCorrectionRequest.DesignCode)))
        .WithMetadata(FixedContentMark.Instance)
        .Produces(StatusCodes.Status304NotModified)
        .Refuses(ProblemKinds.InvalidDesignCode);

    /// <summary>The code that examples of addresses hold.</summary>
    internal static Lazy<string> ExampleCode { get; } = new(() => DesignService.Compute(DesignExamples.HirePaddle).Code);

    // A reader learns from ten stations as much as from two hundred, and the description stays one that can be read through.
    private static DesignResponse Shortened(ComputedDesign design)
    {
        var answer = design.ToResponse(default);
        return answer with { Stations = [.. answer.Stations.Where((_, index) => index % ExampleStep == 0)] };
    }

    private static IResult Create(DesignRequest request, HttpContext context)
    {
        var wanted = Negotiation.Choose(context, Offered);
        var (fields, refusal) = FieldSelection.Of<DesignResponse>(context.Request);
        if (refusal is not null) return refusal;
        var begun = Stopwatch.GetTimestamp();
        var design = DesignService.Compute(request, context.RequestAborted);
        context.RequestServices.GetRequiredService<ServiceMeters>().Solved(Stopwatch.GetElapsedTime(begun), design.Report.Outcome.Unmet.Count == 0);
        return wanted == MediaTypes.Svg
            ? DesignFileResult.Make(
                DesignFiles.Find(PostedDrawing)!, design.Report, DesignFileQuery.Default(design.Resolved.Request, design.Code), context.RequestAborted)
            : new WholeJson<DesignResponse>(design.ToResponse(context.Request.PathBase), fields);
    }

    private static IResult Report(string designCode, HttpContext context)
    {
        var (request, problem) = DesignService.Decode(designCode);
        if (problem is not null) return problem;

        var (fields, refusal) = FieldSelection.Of<DesignResponse>(context.Request);
        if (refusal is not null) return refusal;

        // The report holds links, so the path that the service is mounted on is in its bytes.
        var tag = EntityTags.Of(designCode, MediaTypes.Json, context.Request.PathBase.ToUriComponent(), $"{fields}");
        return DesignService.Answer(context, request!, tag, FixedContent.Negotiated, design =>
            new WholeJson<DesignResponse>(DesignService.Evaluate(design, designCode).ToResponse(context.Request.PathBase), fields));
    }
}
