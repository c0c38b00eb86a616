using Paddle.Design.Build;
using PaddleApi.Contracts.Builds;
using PaddleApi.Contracts.Problems;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Callers;
using PaddleApi.Hosting.OpenApi;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Work;
using PaddleApi.Validation;

namespace PaddleApi.Endpoints.Builds;

/// <summary>The balance corrected while there is still wood to take.</summary>
internal static class BalanceCorrectionEndpoints
{
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
                + "false and leastBad says what is left to choose from.")
            .RequestExample("hire-paddle", Summary, BuildExamples.Weighed)
            .ResponseExample("hire-paddle", Summary, static () => Answer(BuildExamples.Weighed))
            .Offers(MediaTypes.Json)
            .NeedsScope(Scopes.Workshop)
            .Validate<BalanceCorrectionRequest>()
            .Solves()
            .Produces<BalanceCorrectionResponse>()
            .Refuses(ProblemKinds.InvalidDesignCode);
        return group;
    }

    private static IResult Correct(BalanceCorrectionRequest request) => Answer(request) switch
    {
        ProblemResult problem => problem,
        var answer => TypedResults.Ok((BalanceCorrectionResponse)answer),
    };

    private static object Answer(BalanceCorrectionRequest request)
    {
        var code = request.DesignCode!;
        var (resolved, problem) = DesignService.Read(code);
        if (problem is not null)
        {
            // In a body the code has a place; a caller that mends bodies by errors finds it there too.
            return problem with
            {
                Errors = new Dictionary<string, IReadOnlyList<Fault>> { ["/designCode"] = [new(problem.Detail, FaultValue.Show(code))] },
            };
        }

        var report = DesignService.Evaluate(resolved!, code).Report;
        var faults = BuildReading.Faults(request, report);
        if (faults.Count > 0) return Validated.Refusal(faults);
        var reading = BuildReading.Reading(request);
        var correction = BalanceCorrection.Solve(report, reading, BuildReading.Aim(request));
        return BalanceCorrectionResponses.From(report, correction, reading.Stage, EngineVersion.Text, code);
    }
}
