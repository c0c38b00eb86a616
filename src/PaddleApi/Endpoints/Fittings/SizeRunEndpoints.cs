using System.Text;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Options;
using Paddle.Design.Fitting;
using Paddle.Design.Units;
using Paddle.Drawings;
using PaddleApi.Contracts;
using PaddleApi.Contracts.SizeRuns;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Callers;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Requests;
using PaddleApi.Validation;

namespace PaddleApi.Endpoints.Fittings;

/// <summary>Size runs: the few sizes that a fleet should own.</summary>
internal static class SizeRunEndpoints
{
    private const string Svg = "image/svg+xml";
    private const string Unnamed = "Size run";

    private static readonly string[] Offered = [MediaTypes.Json, Svg];

    /// <summary>Maps the endpoint.</summary>
    public static RouteHandlerBuilder MapSizeRuns(this IEndpointRouteBuilder routes)
    {
        var limits = routes.ServiceProvider.GetRequiredService<IOptions<ServiceLimits>>().Value;
        return routes.MapPost("/v1/size-runs", Choose)
            .WithTags("Fittings")
            .WithMetadata(new RequestSizeLimitAttribute(limits.MaxSizeRunBodyBytes))
            .Describe("createSizeRun", "Which few sizes should a fleet own?",
                "The lengths that make the mean misfit of the customers least, exactly; the share of customers near their size, the paddles of each "
                + "size in the fleet, and what one more size would buy. Up to 100 000 customers may be listed: this address takes bodies of "
                + "4 MiB unless its host says otherwise. Ask for image/svg+xml to have the histogram with the sizes drawn on it.")
            .RequestExample("fleet", "A hire fleet with guests as in the survey", static () => FittingExamples.Fleet)
            .RequestExample("club", "A club that knows its members", static () => FittingExamples.Club)
            .ResponseExample("fleet", "The fleet's sizes", static () => new SizeRunResponse(SizeRun.Advise(FittingExamples.Fleet).Answer!))
            .Offers(Offered)
            .NeedsScope(Scopes.Fit)
            .Validate<SizeRunRequest>()
            .HasHeavyBody()
            .Produces<SizeRunResponse>(StatusCodes.Status200OK, MediaTypes.Json, Svg);
    }

    private static IResult Choose(SizeRunRequest request, HttpContext context)
    {
        var wanted = Negotiation.Choose(context, Offered);
        var (advice, refusals) = SizeRun.Advise(request, context.RequestAborted);
        if (advice is null) return Validated.Refusal([.. refusals.Select(refusal => (refusal.JsonPointer, refusal.ToFault()))]);

        return wanted == Svg
            ? TypedResults.Text(SizeRunSvg.Write(advice, Drawing(request)), Svg, Encoding.UTF8)
            : TypedResults.Ok(new SizeRunResponse(advice));
    }

    private static DrawingContext Drawing(SizeRunRequest request) => new(
        string.IsNullOrWhiteSpace(request.Label) ? Unnamed : request.Label,
        DrawingRequest.Read(request.Drawing?.Units),
        EngineVersion.Text);
}
