using Microsoft.AspNetCore.Http.HttpResults;
using PaddleApi.Contracts.Problems;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Caching;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;

namespace PaddleApi.Endpoints;

/// <summary>Explains the kinds of problem: the member <c>type</c> of each problem leads here.</summary>
internal static class ProblemEndpoints
{
    /// <summary>Maps the endpoints.</summary>
    public static RouteGroupBuilder MapProblems(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("/problems").WithTags("Problems").Offers(MediaTypes.Json).HasFixedContent();
        group.MapMethods("/", Routes.Reading, List)
            .Describe("listProblemKinds", "All kinds of problem",
                "Every kind of problem the service answers with: its address, its HTTP status, what it means and what to do.")
            .ResponseExample("all", "All kinds", () => new ProblemKindList(ProblemKinds.All));
        group.MapMethods("/{slug}", Routes.Reading, Get)
            .Describe("getProblemKind", "One kind of problem", "What the member type of a problem leads to: what it means and what to do.")
            .Parameter("slug", "Last part of the problem's type.", static () => "invalid-values")
            .ResponseExample("invalid-values", "Values out of range", () => ProblemKinds.InvalidValues)
            .Refuses(ProblemKinds.NotFound);
        return group;
    }

    private static Ok<ProblemKindList> List() => TypedResults.Ok(new ProblemKindList(ProblemKinds.All));

    private static Results<Ok<ProblemKind>, ProblemResult> Get(string slug) =>
        ProblemKinds.All.FirstOrDefault(kind => kind.Type == ProblemKinds.Root + slug) is { } found
            ? TypedResults.Ok(found)
            : new ProblemResult(ProblemKinds.NotFound, "No kind of problem has this name. All of them are listed at /problems.");
}
