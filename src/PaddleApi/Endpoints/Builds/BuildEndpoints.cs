using System.Security.Cryptography;
using System.Text;
using FluentValidation.Results;
using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Design.Layout;
using Paddle.Drawings;
using Paddle.Drawings.Files;
using Paddle.Drawings.Pages;
using PaddleApi.Contracts.Builds;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Endpoints.Designs.Files;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Browsers;
using PaddleApi.Hosting.Caching;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;
using PaddleApi.Validation.Builds;

namespace PaddleApi.Endpoints.Builds;

/// <summary>The build sheet of a design.</summary>
internal static class BuildEndpoints
{
    private const string HtmlPage = "text/html";
    private const string PdfFile = "application/pdf";
    private const string Summary = "A paddle of the Heron Lake hire fleet; of each stage's stations every tenth is shown";
    private const string ServiceSummary = "The same paddle used in damp air; the stages and the shaft's lines are left out";
    private const int ExampleStep = 10;

    private static readonly PaperSize[] DeskPaper = [PaperSize.A4, PaperSize.Letter];
    private static readonly BuildChoicesValidator Rules = new();
    private static readonly BoardSizesValidator BoardRules = new();
    private static readonly ServiceClimateValidator ClimateRules = new();
    private static readonly ServiceClimate ExampleClimate = new() { TemperatureC = 20, RelativeHumidityPercent = 80 };

    // The page may show itself in its own style, and nothing more: the style is named by its digest (CSP Level 3, 2.3.1).
    private static readonly string Policy =
        $"default-src 'none'; style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(BuildSheetStyle.Css.ReplaceLineEndings("\n"))))}'; "
        + $"base-uri 'none'; form-action 'none'; {SecurityHeaders.NoFrames}";

    /// <summary>Maps the endpoints.</summary>
    public static RouteGroupBuilder MapBuilds(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup(DesignAddresses.Root).WithTags("Builds");
        group.MapMethods("/{designCode}/" + DesignAddresses.Build, Routes.Reading, Report)
            .Describe("getBuild", "From board to finished paddle",
                "For each stage of the work the wood left on, the thickness at numbered stations, the mass and the balance point to expect with "
                + "their bands, what to mark and measure, when to stop and what can hurt; with the board, the shaft's lines, the gauge, the "
                + "kerf of the grip, sanding, finish and an optional reinforced tip. Every mass is that of the stage's own solid. Where the query "
                + "states the moisture in use, or the climate that gives it, inService says what shrinks or swells and how mass and balance change.")
            .SheetOf()
            .Query<ServiceClimate>(
                nameof(ServiceClimate.UsedMoisturePercent),
                "Moisture of the wood in use, percent of ovendry mass, for inService; not with a climate.", "9")
            .Query<ServiceClimate>(
                nameof(ServiceClimate.TemperatureC), "Air where it is used, degrees C, for inService; with relativeHumidityPercent.", "20")
            .Query<ServiceClimate>(
                nameof(ServiceClimate.RelativeHumidityPercent), "Relative humidity there, percent, for inService; with temperatureC.", "80")
            .ResponseExample("hire-paddle", Summary, static () => Shortened(Example(new())))
            .ResponseExample("hire-paddle-in-service", ServiceSummary, static () => Shortened(Example(ExampleClimate)) with { Stages = [], ShaftLines = [] })
            .Offers(MediaTypes.Json)
            .Produces<BuildResponse>();

        group.MapMethods("/{designCode}/" + DesignAddresses.BuildSheet, Routes.Reading, Page)
            .Describe("getBuildSheet", "The build sheet to print",
                "The same to tape to the wall, six sides of A4 or Letter at most: the paddle in one picture, the figures to stop by with room for your own, tools to have at "
                + "hand, every caution with its source, each stage with its own drawing, what to mark and measure and the sign to stop, the stations. All in the units of the "
                + "design. It brings its style with it, runs no script and fetches nothing.")
            .SheetOf()
            .Offers(HtmlPage)
            .Produces<string>(StatusCodes.Status200OK, HtmlPage);

        group.MapMethods("/{designCode}/" + DesignAddresses.BuildSheetPdf, Routes.Reading, Pdf)
            .Describe("getBuildSheetPdf", "The build sheet as a PDF", "The words and drawings of the page, laid out for A4 or Letter on six pages at most, with text to mark and search.")
            .SheetOf()
            .Query(DesignFileQuery.Paper, "Paper to print on; a4 when left out.", "letter", [.. DeskPaper.Select(Names.Of)])
            .Offers(PdfFile)
            .WithMetadata(new DownloadMark())
            .Produces<string>(StatusCodes.Status200OK, PdfFile)
            .Produces<string>(StatusCodes.Status206PartialContent, PdfFile)
            .Refuses(ProblemKinds.RangeNotSatisfiable);
        return group;
    }

    private static RouteHandlerBuilder SheetOf(this RouteHandlerBuilder endpoint) => DesignEndpoints.Code(endpoint)
        .Query<BuildChoices>(
            nameof(BuildChoices.BoardThicknessMm), "Thickness of the board as measured, mm; left out, the design's own or the next standard surfaced one.", "33.3")
        .Query<BoardSizes>(
            nameof(BoardSizes.BoardLengthMm), "Length of the maker's own board, mm, to have the paddle chalked on it, as often as it holds it; with boardWidthMm.", "1830")
        .Query<BoardSizes>(nameof(BoardSizes.BoardWidthMm), "Width of that board, mm; with boardLengthMm.", "260")
        .Query(BuildQuery.Saw, "The saw that cuts the outline; left out, the first.", "band-saw", Names.All<OutlineSaw>())
        .Refuses(ProblemKinds.InvalidValues)
        .Refuses(ProblemKinds.Busy);

    private static IResult Report(string designCode, HttpContext context) => Fetch(
        designCode, BuildQuery.Read(context.Request.Query), context, MediaTypes.Json,
        (design, sheet, plan, query) => new WholeJson<BuildResponse>(ToResponse(design, sheet, plan, query, context.Request.PathBase)));

    // The page prints the paddle as built, wherever it is used.
    private static IResult Page(string designCode, HttpContext context) => Fetch(
        designCode, BuildQuery.Read(context.Request.Query), context, HtmlPage,
        (design, sheet, plan, _) =>
        {
            context.Response.Headers.ContentSecurityPolicy = Policy;
            return TypedResults.Text(BuildSheetPage.Write(design.Report, sheet, DesignFileQuery.Default(design.Resolved.Request, design.Code), plan), HtmlPage, Encoding.UTF8);
        });

    private static IResult Pdf(string designCode, HttpContext context)
    {
        var (query, values) = (BuildQuery.Read(context.Request.Query), new QueryValues(context.Request.Query));
        var paper = values.Choice(DesignFileQuery.Paper, DeskPaper) ?? default;
        return Fetch(
            designCode, query with { Faults = [.. query.Faults, .. values.Faults] }, context, $"{PdfFile} {Names.Of(paper)}",
            (design, sheet, plan, _) => DesignFileResult.Make(
                new BuildSheetPdf(sheet, plan), design.Report, DesignFileQuery.Default(design.Resolved.Request, design.Code) with { Paper = paper }, context.RequestAborted));
    }

    // Like a design's report the sheet is fixed by its address: who holds it is told so before it is computed.
    private static IResult Fetch(
        string code, BuildQuery query, HttpContext context, string representation, Func<ComputedDesign, BuildSheet, BoardPlan?, BuildQuery, IResult> answer)
    {
        var (resolved, problem) = DesignService.Read(code);
        if (problem is not null) return problem;
        if (query.Faults.Count > 0) return Validated.Refusal(query.Faults);
        List<ValidationFailure> failures = [.. Rules.Validate(query.Choices).Errors, .. BoardRules.Validate(query.Board).Errors, .. ClimateRules.Validate(query.Climate).Errors];
        if (failures.Count > 0) return InQuery(Validated.Refusal(failures));
        var tag = EntityTags.Of(
            code, DesignAddresses.Build, representation, context.Request.PathBase.ToUriComponent(), query.Canonical.ToUriComponent());

        // Only a stated board can be at odds with the design, and a refusal has no tag.
        var stated = query.Choices.BoardThicknessMm;
        var design = stated is null ? null : DesignService.Evaluate(resolved!, code);
        if (design is not null && BuildChoicesValidator.BoardFault(stated, design.Report) is { } fault)
            return Validated.Refusal([("?boardThicknessMm", fault)]);
        if (FixedContent.Stamp(context, tag)) return TypedResults.StatusCode(StatusCodes.Status304NotModified);
        return new Gated(() =>
        {
            design ??= DesignService.Evaluate(resolved!, code);
            var sheet = BuildSheet.For(design.Report, BuildReading.Options(query.Choices));
            return answer(design, sheet, BuildReading.Plan(query.Board, sheet, query.Choices, design.Report, context.RequestAborted), query);
        });
    }

    // The same rules as for a body, but the places are parameters of the query.
    private static ProblemResult InQuery(ProblemResult refusal) => Validated.Refusal(
        [.. refusal.Errors!.SelectMany(pair => pair.Value.Select(fault => ($"?{pair.Key[1..]}", fault)))]);

    private static BuildResponse ToResponse(ComputedDesign design, BuildSheet sheet, BoardPlan? plan, BuildQuery query, PathString pathBase)
    {
        var root = $"{pathBase.ToUriComponent()}{DesignAddresses.Root}/{design.Code}";
        return new(sheet)
        {
            Label = design.Resolved.Request.Label,
            DesignCode = design.Code,
            Links = new(
                $"{root}/{DesignAddresses.Build}{query.Canonical.ToUriComponent()}",
                $"{root}/{DesignAddresses.BuildSheet}{query.OfSheet.ToUriComponent()}",
                $"{root}/{DesignAddresses.BuildSheetPdf}{query.OfSheet.ToUriComponent()}",
                root),
            InService = BuildReading.InService(query.Climate, design.Report),
            OnBoard = plan?.Layout,
        };
    }

    private static BuildResponse Example(ServiceClimate climate)
    {
        var code = DesignEndpoints.ExampleCode.Value;
        var design = DesignService.Evaluate(DesignService.Read(code).Design!, code);
        return ToResponse(design, BuildSheet.For(design.Report), null, new(new(), new(), climate, []), default);
    }

    private static BuildResponse Shortened(BuildResponse build) => build with
    {
        Stages = [.. build.Stages.Select(stage => stage with { Stations = [.. stage.Stations.Where((_, index) => index % ExampleStep == 0)] })],
    };
}
