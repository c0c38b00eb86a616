using Paddle.Design;
using Paddle.Design.Fitting;
using PaddleApi.Contracts.Fittings;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Callers;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Requests;

namespace PaddleApi.Endpoints.Fittings;

/// <summary>Fittings: from a person, a boat and a water to a paddle.</summary>
internal static class FittingEndpoints
{
    /// <summary>Maps the endpoint.</summary>
    public static RouteHandlerBuilder MapFittings(this IEndpointRouteBuilder routes) => FieldSelection
        .TakesFields(routes.MapPost("/v1/fittings", Fit))
        .WithTags("Fittings")
        .Describe("createFitting", "Which paddle for this person?",
            "Lengths, blade, grip and wood for a person, a seat and a water, with every method that applied, its error and its source. The "
            + "member design of the answer is a request ready for /v1/designs. A measured hand spacing beats every estimate; people who "
            + "cannot be are refused with what to measure instead, and /v1/measurements says how.")
        .RequestExample("guest", "A guest of a hire fleet, every member written out", static () => FittingExamples.Guest)
        .RequestExample("least", "The least that can be asked", static () => FittingExamples.Least)
        .ResponseExample("guest", "The guest's paddle", static () => Answer(FittingExamples.Guest, default))
        .Offers(MediaTypes.Json)
        .NeedsScope(Scopes.Fit)
        .Validate<FittingRequest>()
        .Solves()
        .Produces<FittingResponse>();

    private static IResult Fit(FittingRequest request, HttpContext context)
    {
        var (fields, refusal) = FieldSelection.Of<FittingResponse>(context.Request);
        return refusal is not null ? refusal : new WholeJson<FittingResponse>(Answer(request, context.RequestAborted), fields);
    }

    /// <summary>The answer to a request that its validator has passed: that has put the engine's own checks in front.</summary>
    internal static FittingResponse Answer(FittingRequest request, CancellationToken cancellation) =>
        new(PaddleFitter.Fit(request, cancellation).Answer!);
}
