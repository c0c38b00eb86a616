using System.Text;
using Microsoft.AspNetCore.Http.HttpResults;
using Paddle.Design.Checks;
using Paddle.Design.Comparison;
using Paddle.Design.Units;
using Paddle.Drawings;
using PaddleApi.Contracts;
using PaddleApi.Contracts.Comparisons;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Caching;
using PaddleApi.Hosting.Callers;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;
using PaddleApi.Validation.Comparisons;

namespace PaddleApi.Endpoints.Comparisons;

/// <summary>Designs side by side: in figures, in words and laid over one another.</summary>
internal static class ComparisonEndpoints
{
    private const string Root = "/v1/comparisons";
    private const string Drawing = "comparison.svg";
    private const string Unnamed = "Designs";
    // No code holds it, and no client writes it as anything else (RFC 3986, 2.3).
    private const char Between = '.';
    private const string Codes = "2 to 12 design codes with a full stop between each two.";

    private static readonly string[] Offered = [MediaTypes.Json, MediaTypes.Svg];

    private static readonly ComparisonRequest Woods = new()
    {
        Label = "Heron Lake, size M in three woods",
        Designs =
        [
            new() { Id = "ash", Design = new() { HandSpacingMm = 880, Wood = new() { Species = "white-ash" } } },
            new() { Id = "cherry", Design = new() { HandSpacingMm = 880, Wood = new() { Species = "black-cherry" } } },
            new() { Id = "spruce", Design = new() { HandSpacingMm = 880, Wood = new() { Species = "sitka-spruce" } } },
        ],
    };

    private static readonly Lazy<IReadOnlyList<ComputedDesign>> Example = new(() => GivenDesigns.Make(Woods.Designs!, "/designs", default).Designs);

    /// <summary>Maps the endpoints.</summary>
    public static void MapComparisons(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup(Root).WithTags("Designs");
        group.MapPost("/", Compare)
            .Describe("compareDesigns", "Which of these paddles?",
                "Sets 2 to 12 designs side by side: every figure with the best and the worst, and in plain words what sets each apart from the first. "
                + "Ask for image/svg+xml to have their outlines and thicknesses laid over one another.")
            .RequestExample("woods", "One paddle in three woods", static () => Woods)
            .ResponseExample("woods", "Beside the one of ash", static () => Response(Woods.Designs!.Select(one => one.Id!), Example.Value, default))
            .Offers(Offered)
            .NeedsScope(Scopes.Design)
            .Validate<ComparisonRequest>()
            .Solves()
            .Produces<ComparisonResponse>(StatusCodes.Status200OK, MediaTypes.Json, MediaTypes.Svg);

        Coded(group.MapMethods("/{designCodes}", Routes.Reading, (string designCodes, HttpContext context) => Read(designCodes, (ids, designs) =>
                TypedResults.Ok(Response(ids, designs, context.Request.PathBase)))))
            .Describe("getComparison", "Designs side by side, by their codes",
                "The same for designs that have codes. They are called by their labels, or else A, B, C in the order of the codes.")
            .ResponseExample("woods", "Beside the one of ash", static () => Response(["A", "B", "C"], Example.Value, default))
            .Offers(MediaTypes.Json)
            .Produces<ComparisonResponse>();

        Coded(group.MapMethods("/{designCodes}/" + Drawing, Routes.Reading, (string designCodes) => Read(designCodes, (ids, designs) => Draw(ids, designs, null))))
            .Describe("getComparisonSvg", "Designs laid over one another, by their codes", "Outlines and thicknesses. The address is fit for an img tag.")
            .Offers(MediaTypes.Svg)
            .Produces<string>(StatusCodes.Status200OK, MediaTypes.Svg);
    }

    private static RouteHandlerBuilder Coded(RouteHandlerBuilder endpoint) => endpoint
        .Parameter("designCodes", Codes, static () => $"{DesignEndpoints.ExampleCode.Value}{Between}{Example.Value[0].Code}")
        .HasFixedContent()
        .Refuses(ProblemKinds.InvalidDesignCode);

    private static IResult Compare(ComparisonRequest request, HttpContext context)
    {
        var wanted = Negotiation.Choose(context, Offered);
        var (designs, faults) = GivenDesigns.Make(request.Designs!, "/designs", context.RequestAborted);
        if (faults.Count > 0) return Validated.Refusal(faults);
        var ids = Names(designs, [.. request.Designs!.Select(one => one.Id)]);
        return wanted == MediaTypes.Svg
            ? Draw(ids, designs, request.Label)
            : TypedResults.Ok(Response(ids, designs, context.Request.PathBase));
    }

    private static IResult Read(string designCodes, Func<IEnumerable<string>, IReadOnlyList<ComputedDesign>, IResult> answer)
    {
        var codes = designCodes.Split(Between, ComparisonValidator.MostDesigns + 1);
        if (codes.Length is < 2 or > ComparisonValidator.MostDesigns) return new ProblemResult(ProblemKinds.InvalidDesignCode, $"Here stand {Codes}");
        var designs = new List<ComputedDesign>();
        foreach (var code in codes)
        {
            var (read, problem) = DesignService.Read(code);
            if (problem is not null) return problem;
            designs.Add(DesignService.Evaluate(read!, code));
        }

        return answer(Names(designs, new string?[designs.Count]), designs);
    }

    // As given; or labels, where each has one of its own; or letters, which are nobody's.
    private static string[] Names(IReadOnlyList<ComputedDesign> designs, string?[] given)
    {
        string?[] wished = [.. designs.Select((one, k) => given[k] ?? one.Resolved.Request.Label)];
        return [.. wished.Select((name, k) => given[k] ?? (name is not null && wished.Count(other => other == name) == 1 ? name : Letter(k)))];

        string Letter(int k) => wished.Contains($"{(char)('A' + k)}") ? $"Design {k + 1}" : $"{(char)('A' + k)}";
    }

    private static ComparisonResponse Response(IEnumerable<string> ids, IReadOnlyList<ComputedDesign> designs, PathString pathBase)
    {
        var compared = Compared(ids, designs);
        var comparison = DesignComparison.Of(compared, Units(designs));
        var self = $"{pathBase.ToUriComponent()}{Root}/{string.Join(Between, designs.Select(one => one.Code))}";
        return new(
            EngineVersion.Text, new(self, $"{self}/{Drawing}"), [.. compared.Zip(designs, Entry)], comparison.Figures, comparison.Differences);
    }

    private static ComparedDesign Entry(ComparedPaddle paddle, ComputedDesign design) => new(
        paddle.Id, design.Resolved.Request.Label, design.Code, paddle.Report.Outcome.Word, paddle.Report.Outcome.Unmet,
        [.. paddle.Report.Checks.Where(check => check.Status != CheckStatus.Pass).Select(check => check.Id)]);

    private static ContentHttpResult Draw(IEnumerable<string> ids, IReadOnlyList<ComputedDesign> designs, string? label) => TypedResults.Text(
        ComparisonSvg.Write(Compared(ids, designs), new(string.IsNullOrWhiteSpace(label) ? Unnamed : label, Units(designs), EngineVersion.Text)), MediaTypes.Svg, Encoding.UTF8, StatusCodes.Status200OK);

    private static IReadOnlyList<ComparedPaddle> Compared(IEnumerable<string> ids, IReadOnlyList<ComputedDesign> designs) =>
        [.. ids.Zip(designs, (id, design) => new ComparedPaddle(id, design.Report))];

    private static DrawingUnits Units(IReadOnlyList<ComputedDesign> designs) => designs[0].Report.Specification.Units;
}
