using Paddle.Design.Uncertainty;
using PaddleApi.Contracts.Uncertainties;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Callers;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;
using PaddleApi.Validation.Designs;

namespace PaddleApi.Endpoints.Uncertainties;

/// <summary>How sure a design is, wood and hands being what they are.</summary>
internal static class UncertaintyEndpoints
{
    /// <summary>Maps the endpoint.</summary>
    public static RouteHandlerBuilder MapUncertainties(this IEndpointRouteBuilder routes) => routes
        .MapPost("/v1/uncertainties", Answer)
        .WithTags("Designs")
        .Describe("createUncertainty", "How sure is it?",
            "Makes a design thousands of times over, each time of another stick of its wood and with other slips of the plane, and reports how its figures "
            + "spread and how often each check fails. Nothing is solved again. The points are Sobol's, scrambled by the seed: the same seed gives the same "
            + "answer. Paddles of one piece.")
        .RequestExample("fleet", "A paddle of a hire fleet", static () => Fleet)
        .ResponseExample("fleet", "How it spreads", static () => Respond(DesignService.Compute(Fleet.Design!), Fleet, default))
        .Offers(MediaTypes.Json)
        .NeedsScope(Scopes.Design)
        .Validate<UncertaintyRequest>()
        .Produces<UncertaintyResponse>()
        .Refuses(ProblemKinds.Busy);

    /// <summary>A paddle of an invented hire fleet; the same as docs/examples/uncertainty.json.</summary>
    internal static UncertaintyRequest Fleet => DocumentedExample.Read<UncertaintyRequest>("uncertainty.json");

    private static Gated Answer(UncertaintyRequest request, HttpContext context) => new(() =>
    {
        var (design, faults) = GivenDesigns.Make(request, "", context.RequestAborted);
        if (faults.Count > 0) return Validated.Refusal(faults);
        return design!.Report.Laminate is null
            ? TypedResults.Ok(Respond(design, request, context.RequestAborted))
            : Validated.Refusal([(request.Design is null ? "/designCode" : "/design/construction/kind", StripAgreement.NotOfStrips)]);
    });

    private static UncertaintyResponse Respond(ComputedDesign design, UncertaintyRequest request, CancellationToken cancellation)
    {
        var (samples, seed) = (request.Samples ?? UncertaintyRequest.UsualSamples, request.Seed ?? 1);
        var error = request.PlaningErrorMm ?? UncertaintyRequest.UsualPlaningErrorMm;
        return new(UncertaintyStudy.Of(design.Resolved, design.Report.Sizes, samples, seed, error, cancellation)) { DesignCode = design.Code };
    }
}
