using System.Text;
using Paddle.Design.Build;
using Paddle.Drawings;
using PaddleApi.Contracts.Builds;
using PaddleApi.Contracts.Problems;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Endpoints.Designs.Files;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Caching;
using PaddleApi.Hosting.Callers;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;
using PaddleApi.Validation;

namespace PaddleApi.Endpoints.Builds;

/// <summary>The balance corrected while there is still wood to take.</summary>
internal static class BalanceCorrectionEndpoints
{
    private static readonly string[] Offered = [MediaTypes.Json, MediaTypes.Svg];
    private const string Summary = "A paddle of the Heron Lake hire fleet, its board denser than the book";

    /// <summary>Maps the endpoint.</summary>
    public static RouteGroupBuilder MapBalanceCorrections(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("/v1/balance-corrections").WithTags("Builds");
        group.MapPost("/", Correct)
            .Describe("correctBalance", "Correct the balance in mid-build",
                "From the weighed mass and the balance point at a stage of the build, with thickness readings if there are any: the density that "
                + "explains them, the finished paddle if planed to plan, and the least wood to take from which zone, in grams and in millimetres, "
                + "so that it balances with every limit and safety factor still holding. Readings that cannot be of this paddle at this stage are "
                + "answered with the status measure-again and named in doubts, without a cut. When wood would have to be added, achievable is "
                + "false and leastBad says what is left to choose from. Ask for image/svg+xml to have it drawn: the paddle with the zones that wood "
                + "is to come off, and how deep.")
            .RequestExample("hire-paddle", Summary, static () => BuildExamples.Weighed)
            .ResponseExample("hire-paddle", Summary, static () => Answer(BuildExamples.Weighed))
            .Offers(Offered)
            .NeedsScope(Scopes.Workshop)
            .Validate<BalanceCorrectionRequest>()
            .Solves()
            .Produces<BalanceCorrectionResponse>(StatusCodes.Status200OK, MediaTypes.Json, MediaTypes.Svg)
            .Refuses(ProblemKinds.InvalidDesignCode);
        return group;
    }

    private static IResult Correct(BalanceCorrectionRequest request, HttpContext context)
    {
        // The same address answers in two media types, so a cache on the way must tell them apart.
        context.Response.Headers.Vary = FixedContent.Negotiated;
        var (solved, problem) = Solve(request);
        if (problem is not null) return problem;
        var (design, correction, stage) = solved!;
        return Negotiation.BestOf(context.Request, Offered) == MediaTypes.Svg
            ? TypedResults.Text(
                CorrectionSvg.Write(design.Report, correction, stage, DesignFileQuery.Default(design.Resolved.Request, design.Code)), MediaTypes.Svg, Encoding.UTF8)
            : TypedResults.Ok(ToResponse(solved));
    }

    private static BalanceCorrectionResponse Answer(BalanceCorrectionRequest request) => ToResponse(Solve(request).Solved!);

    private static BalanceCorrectionResponse ToResponse(SolvedCorrection solved) =>
        BalanceCorrectionResponses.From(solved.Design.Report, solved.Correction, solved.Stage, solved.Design.Code);

    private static (SolvedCorrection? Solved, ProblemResult? Problem) Solve(BalanceCorrectionRequest request)
    {
        var code = request.DesignCode!;
        var (resolved, problem) = DesignService.Read(code);
        if (problem is not null)
        {
            // In a body the code has a place; a caller that mends bodies by errors finds it there too.
            return (null, problem with
            {
                Errors = new Dictionary<string, IReadOnlyList<Fault>> { ["/designCode"] = [new(problem.Detail, FaultValue.Show(code))] },
            });
        }

        var design = DesignService.Evaluate(resolved!, code);
        var faults = BuildReading.Faults(request, design.Report);
        if (faults.Count > 0) return (null, Validated.Refusal(faults));
        var reading = BuildReading.Reading(request);
        return (new(design, BalanceCorrection.Solve(design.Report, reading, BuildReading.Aim(request)), reading.Stage), null);
    }

    private sealed record SolvedCorrection(ComputedDesign Design, BalanceCorrection Correction, BuildStage Stage);
}
