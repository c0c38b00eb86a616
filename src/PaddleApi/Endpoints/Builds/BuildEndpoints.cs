using System.Security.Cryptography;
using System.Text;
using Paddle.Design.Build;
using Paddle.Drawings.Pages;
using PaddleApi.Contracts.Builds;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Endpoints.Designs.Files;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Caching;
using PaddleApi.Hosting.OpenApi;
using PaddleApi.Hosting.Problems;
using PaddleApi.Validation;
using PaddleApi.Validation.Builds;

namespace PaddleApi.Endpoints.Builds;

/// <summary>The build sheet of a design.</summary>
public static class BuildEndpoints
{
    private const string Build = "build";
    private const string Sheet = "build-sheet.html";
    private const string HtmlPage = "text/html";
    private const string Summary = "A paddle of the Heron Lake hire fleet; of each stage's stations every tenth is shown";
    private const int ExampleStep = 10;

    private static readonly BuildChoicesValidator Rules = new();

    // The page may show itself in its own style, and nothing more: the style is named by its digest (CSP Level 3, 2.3.1).
    private static readonly string Policy =
        $"default-src 'none'; style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(BuildSheetStyle.Css.ReplaceLineEndings("\n"))))}'; "
        + "base-uri 'none'; form-action 'none'";

    private static readonly string[] Known = ["boardThicknessMm", "saw", "varnishCoats", "oilCoats"];

    /// <summary>Maps the endpoints.</summary>
    /// <param name="routes">Where to map them.</param>
    /// <returns>The group.</returns>
    public static RouteGroupBuilder MapBuilds(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup(DesignAddresses.Root).WithTags("Builds");
        group.MapRead("/{designCode}/" + Build, Report)
            .Describe("getBuild", "From board to finished paddle",
                "For each stage of the work the wood left on, the thickness at numbered stations, the mass and the balance point to expect with "
                + "their bands, what to mark and measure, when to stop and what can hurt; with the board, the shaft's lines, the gauge, the "
                + "kerf of the grip, sanding, finish and an optional reinforced tip. Every mass is that of the stage's own solid.")
            .SheetOf()
            .ResponseExample("hire-paddle", Summary, static () => Shortened(Example()))
            .Offers(MediaTypes.Json)
            .Produces<BuildResponse>();

        group.MapRead("/{designCode}/" + Sheet, Page)
            .Describe("getBuildSheet", "The build sheet to print",
                "The same as one page for A4 or Letter: the paddle in one picture, the figures to stop by with room for your own, the stations, what to mark and "
                + "measure, and every caution with its source. It brings its style with it, runs no script and fetches nothing.")
            .SheetOf()
            .Offers(HtmlPage)
            .Produces<string>(StatusCodes.Status200OK, HtmlPage);
        return group;
    }

    private static RouteHandlerBuilder SheetOf(this RouteHandlerBuilder endpoint) => endpoint
        .Parameter("designCode", "The member designCode of an answer.", BuildExamples.Weighed.DesignCode!)
        .Parameter("boardThicknessMm", "Thickness of the board as measured, mm, 10 to 120; left out, the next standard surfaced one.", "33.3")
        .Parameter("saw", $"The saw that cuts the outline: {string.Join(" or ", BuildNames.Saws.Names)}; left out, the first.", "band-saw")
        .Parameter("varnishCoats", "Coats of varnish on the blade, 1 to 12; left out, 6.", "6")
        .Parameter("oilCoats", "Coats of oil on shaft and grip, 1 to 12; left out, 3.", "3")
        .WithMetadata(FixedContentMark.Instance)
        .Produces(StatusCodes.Status304NotModified)
        .Refuses(ProblemKinds.InvalidDesignCode)
        .Refuses(ProblemKinds.BadRequest)
        .Refuses(ProblemKinds.InvalidValues);

    private static IResult Report(
        string designCode, double? boardThicknessMm, string? saw, int? varnishCoats, int? oilCoats, HttpContext context) =>
        Fetch(
            designCode,
            new() { BoardThicknessMm = boardThicknessMm, Saw = saw, VarnishCoats = varnishCoats, OilCoats = oilCoats },
            context,
            MediaTypes.Json,
            (design, sheet) => TypedResults.Ok(ToResponse(design, sheet, context.Request.PathBase, context.Request.QueryString)));

    private static IResult Page(
        string designCode, double? boardThicknessMm, string? saw, int? varnishCoats, int? oilCoats, HttpContext context) =>
        Fetch(
            designCode,
            new() { BoardThicknessMm = boardThicknessMm, Saw = saw, VarnishCoats = varnishCoats, OilCoats = oilCoats },
            context,
            HtmlPage,
            (design, sheet) =>
            {
                context.Response.Headers.ContentSecurityPolicy = Policy;
                return TypedResults.Text(BuildSheetPage.Write(design.Report, sheet, DesignFileQuery.Default(design.Resolved.Request, design.Code)), HtmlPage, Encoding.UTF8);
            });

    // Like a design's report the sheet is fixed by its address: who holds it is told so before it is computed.
    private static IResult Fetch(
        string code, BuildChoices choices, HttpContext context, string representation, Func<ComputedDesign, BuildSheet, IResult> answer)
    {
        var (resolved, problem) = DesignService.Read(code);
        if (problem is not null) return problem;
        if (context.Request.Query.Keys.FirstOrDefault(name => !Known.Contains(name, StringComparer.Ordinal)) is { } unknown)
        {
            return new ProblemResult(
                ProblemKinds.BadRequest, $"The query knows no '{FaultValue.Shorten(unknown)}'; it knows {string.Join(", ", Known)}.");
        }

        var outcome = Rules.Validate(choices);
        if (!outcome.IsValid) return InQuery(Validated.Refusal(outcome.Errors));
        var tag = EntityTags.Of(
            code, Build, representation, context.Request.PathBase.ToUriComponent(), context.Request.QueryString.ToUriComponent());

        // Only a stated board can be at odds with the design, and a refusal has no tag.
        var design = choices.BoardThicknessMm is null ? null : DesignService.Evaluate(resolved!, code);
        if (design is not null && BuildChoicesValidator.BoardFault(choices.BoardThicknessMm, design.Report) is { } fault)
            return Validated.Refusal([("?boardThicknessMm", fault)]);
        if (FixedContent.Stamp(context, tag)) return TypedResults.StatusCode(StatusCodes.Status304NotModified);
        design ??= DesignService.Evaluate(resolved!, code);
        return answer(design, BuildSheet.For(design.Report, BuildReading.Options(choices)));
    }

    // The same rules as for a body, but the places are parameters of the query.
    private static ProblemResult InQuery(ProblemResult refusal) => Validated.Refusal(
        [.. refusal.Errors!.SelectMany(pair => pair.Value.Select(fault => ($"?{pair.Key[1..]}", fault)))]);

    private static BuildResponse ToResponse(ComputedDesign design, BuildSheet sheet, PathString pathBase, QueryString query)
    {
        var root = $"{pathBase.ToUriComponent()}{DesignAddresses.Root}/{design.Code}";
        return BuildResponses.From(
            sheet,
            design.Resolved.Request.Label,
            EngineVersion.Text,
            design.Code,
            new($"{root}/{Build}{query.ToUriComponent()}", $"{root}/{Sheet}{query.ToUriComponent()}", root));
    }

    private static BuildResponse Example()
    {
        var code = BuildExamples.Weighed.DesignCode!;
        var design = DesignService.Evaluate(DesignService.Read(code).Design!, code);
        return ToResponse(design, BuildSheet.For(design.Report), default, default);
    }

    private static BuildResponse Shortened(BuildResponse build) => build with
    {
        Stages = [.. build.Stages.Select(stage => stage with { Stations = [.. stage.Stations.Where((_, index) => index % ExampleStep == 0)] })],
    };
}
