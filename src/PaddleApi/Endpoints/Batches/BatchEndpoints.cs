using Microsoft.AspNetCore.Http.Timeouts;
using Microsoft.AspNetCore.Mvc;
using Paddle.Design.Fitting;
using Paddle.Design.Request;
using PaddleApi.Contracts.Designs;
using PaddleApi.Contracts.Fittings;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Endpoints.Fittings;
using PaddleApi.Hosting.Batches;
using PaddleApi.Hosting.Callers;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;

namespace PaddleApi.Endpoints.Batches;

/// <summary>Many requests in one call.</summary>
internal static class BatchEndpoints
{
    private const string How = " A request a line in, an answer a line out, in the order of the lines: { line, status, MEMBER } or, for a line that is refused, "
        + "{ line, status, problem }. Answers come while requests are still being sent: read while you send, for who does not read is not read from. "
        + "Blank lines are passed over. To stop, hang up.";

    /// <summary>Maps the endpoints.</summary>
    public static void MapBatches(this IEndpointRouteBuilder routes)
    {
        Map<DesignRequest, DesignResponse>(
            routes, "/v1/design-batches", "design",
            (pathBase, request, cancellation) => DesignService.Compute(request, cancellation).ToResponse(pathBase))
            .WithTags("Designs")
            .Describe("designBatch", "Design many paddles", "Designs as POST /v1/designs makes them." + How.Replace("MEMBER", "design", StringComparison.Ordinal))
            .RequestExample("two", "Two designs, the second refused", static () => "{\"handSpacingMm\":880,\"wood\":{\"species\":\"white-ash\"}}\n{\"handSpacingMm\":88}\n")
            .NeedsScope(Scopes.Design);
        Map<FittingRequest, FittingResponse>(
            routes, "/v1/fitting-batches", "fitting",
            (_, request, cancellation) => FittingEndpoints.Answer(request, cancellation))
            .WithTags("Fittings")
            .Describe("fittingBatch", "Fit many people", "Fittings as POST /v1/fittings makes them." + How.Replace("MEMBER", "fitting", StringComparison.Ordinal))
            .RequestExample("two", "Two guests", static () => "{\"paddler\":{\"statureMm\":1720}}\n{\"paddler\":{\"handSpacingMm\":880}}\n")
            .NeedsScope(Scopes.Fit);
    }

    private static RouteHandlerBuilder Map<TRequest, TAnswer>(
        IEndpointRouteBuilder routes, string path, string member, Func<PathString, TRequest, CancellationToken, TAnswer> answer)
        where TRequest : class =>
        FieldSelection.TakesFields(
            routes.MapPost(path, (HttpContext context) =>
            {
                var (fields, refusal) = FieldSelection.Of<TAnswer>(context.Request);
                var pathBase = context.Request.PathBase;
                return refusal is not null ? (IResult)refusal : new BatchAnswer<TRequest, TAnswer>(member, (request, cancellation) => answer(pathBase, request, cancellation), fields);
            }))
            .WithMetadata(new DisableRequestSizeLimitAttribute())
            .WithMetadata(new DisableRequestTimeoutAttribute())
            .Accepts<string>(BatchMedia.Ndjson)
            .Offers(BatchMedia.Ndjson)
            .Produces<string>(StatusCodes.Status200OK, BatchMedia.Ndjson)
            .Refuses(ProblemKinds.UnsupportedMediaType)
            .Refuses(ProblemKinds.Busy);
}
