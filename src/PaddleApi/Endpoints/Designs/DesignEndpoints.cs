using System.Text;
using PaddleApi.Contracts.Designs;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Caching;
using PaddleApi.Hosting.OpenApi;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Solving;
using PaddleApi.Validation;

namespace PaddleApi.Endpoints.Designs;

/// <summary>Designs: one is solved from a request, and had again by its code.</summary>
public static class DesignEndpoints
{
    private const string Svg = "image/svg+xml";
    private const int ExampleStep = 20;
    private const string ExampleSummary = "A paddle of a hire fleet; of its stations every twentieth is shown";

    private static readonly string[] Offered = [MediaTypes.Json, Svg];

    /// <summary>Maps the endpoints.</summary>
    /// <param name="routes">Where to map them.</param>
    /// <returns>The group.</returns>
    public static RouteGroupBuilder MapDesigns(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup(DesignAddresses.Root).WithTags("Designs");
        group.MapPost("/", Create)
            .Describe("createDesign", "Design a paddle",
                "Chooses every size left null so that the paddle is light, strong and balanced, and reports on it. Nothing is kept here: the "
                + "answer's designCode is the design. When the aims cannot all be met the answer is the closest design, with balance.achieved "
                + "false and what to change. Ask for image/svg+xml to have the outline at once.")
            .RequestExample("hire-paddle", "A paddle of a hire fleet, every member written out", DesignExamples.HirePaddle)
            .RequestExample("least", "The least that can be asked", DesignExamples.Least)
            .ResponseExample("hire-paddle", ExampleSummary, static () => Shortened(DesignService.Compute(DesignExamples.HirePaddle)))
            .Offers(Offered)
            .Validate<DesignRequest>()
            .Solves()
            .Produces<DesignResponse>(StatusCodes.Status200OK, MediaTypes.Json, Svg)
            .Refuses(ProblemKinds.MalformedJson);

        group.MapRead("/{designCode}", Report)
            .Describe("getDesign", "A design by its code",
                "The report of a design whose every size is in its code: nothing is solved, and the same code keeps its shape when the solver improves.")
            .Code()
            .ResponseExample(
                "hire-paddle", ExampleSummary, static () => Shortened(DesignService.Evaluate(DesignService.Read(ExampleCode.Value).Design!, ExampleCode.Value)))
            .Offers(MediaTypes.Json)
            .Produces<DesignResponse>();

        group.MapRead("/{designCode}/" + DesignAddresses.Outline, Outline)
            .Describe("getDesignOutline", "The outline of a design",
                "The outline on the face at true scale, one user unit a millimetre. Fit for an img tag: it is cacheable by any cache.")
            .Code()
            .Offers(Svg)
            .Produces<string>(StatusCodes.Status200OK, Svg);
        return group;
    }

    private static RouteHandlerBuilder Code(this RouteHandlerBuilder endpoint) => endpoint
        .Parameter("designCode", "The member designCode of an answer.", ExampleCode.Value)
        .WithMetadata(FixedContentMark.Instance)
        .Produces(StatusCodes.Status304NotModified)
        .Refuses(ProblemKinds.InvalidDesignCode);

    private static readonly Lazy<string> ExampleCode = new(() => DesignService.Compute(DesignExamples.HirePaddle).Code);

    // A reader learns from ten stations as much as from two hundred, and the description stays one that can be read through.
    private static DesignResponse Shortened(ComputedDesign design)
    {
        var answer = design.ToResponse(default);
        return answer with { Stations = [.. answer.Stations.Where((_, index) => index % ExampleStep == 0)] };
    }

    private static IResult Create(DesignRequest request, HttpContext context)
    {
        // The same address answers in two media types, so a cache on the way must tell them apart.
        context.Response.Headers.Vary = "Accept, Accept-Encoding";
        var design = DesignService.Compute(request);
        return MediaTypes.BestOf(context.Request, Offered) == Svg
            ? Drawn(design)
            : TypedResults.Ok(design.ToResponse(context.Request.PathBase));
    }

    private static IResult Report(string designCode, HttpContext context) =>
        Fetch(designCode, context, MediaTypes.Json, design => TypedResults.Ok(design.ToResponse(context.Request.PathBase)));

    private static IResult Outline(string designCode, HttpContext context) => Fetch(designCode, context, Svg, Drawn);

    // The tag is known from the code alone: who holds the answer is told so before anything is computed.
    private static IResult Fetch(string designCode, HttpContext context, string representation, Func<ComputedDesign, IResult> answer)
    {
        var (design, problem) = DesignService.Read(designCode);
        if (problem is not null) return problem;
        var tag = EntityTags.Of(designCode, representation, context.Request.PathBase.ToUriComponent());
        return FixedContent.Stamp(context, tag)
            ? TypedResults.StatusCode(StatusCodes.Status304NotModified)
            : answer(DesignService.Evaluate(design!, designCode));
    }

    private static IResult Drawn(ComputedDesign design) => TypedResults.Text(DesignOutline.Draw(design), Svg, Encoding.UTF8);
}
