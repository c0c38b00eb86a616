using System.Text.Json;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http.Metadata;
using PaddleApi.Hosting.Json;

namespace PaddleApi.Hosting.Problems;

/// <summary>Says in the service's own words what an exception means to the caller. No text of an exception leaves the process.</summary>
internal sealed class ExceptionToProblem : IExceptionHandler
{
    /// <summary>True for failures that the caller's request explains.</summary>
    public static bool IsForeseen(Exception exception) => exception is ProblemException or BadHttpRequestException or OperationCanceledException;

    public async ValueTask<bool> TryHandleAsync(HttpContext httpContext, Exception exception, CancellationToken cancellationToken)
    {
        if (httpContext.RequestAborted.IsCancellationRequested && exception is OperationCanceledException)
        {
            httpContext.Response.StatusCode = StatusCodes.Status499ClientClosedRequest;
            return true;
        }

        var result = exception switch
        {
            ProblemException problem => new ProblemResult(problem.Kind, problem.Message, problem.Errors),
            BadHttpRequestException bad => await DescribeAsync(httpContext, bad, cancellationToken),
            OperationCanceledException => new ProblemResult(ProblemKinds.Timeout, ProblemKinds.Timeout.Meaning),
            _ => new ProblemResult(ProblemKinds.Internal, "The service met a fault of its own. Report the request id if it happens again."),
        };
        await result.ExecuteAsync(httpContext);
        return true;
    }

    private static async Task<ProblemResult> DescribeAsync(HttpContext context, BadHttpRequestException bad, CancellationToken cancellation)
    {
        switch (bad.StatusCode)
        {
            case StatusCodes.Status413PayloadTooLarge:
                return new ProblemResult(ProblemKinds.TooLarge, ProblemHandling.TooLarge(context));
            case StatusCodes.Status415UnsupportedMediaType:
                return new ProblemResult(
                    ProblemKinds.UnsupportedMediaType, "The body must be JSON with the header Content-Type: application/json.");
            case StatusCodes.Status400BadRequest when bad.InnerException is JsonException || context.Request.HasJsonContentType():
                return await DescribeBodyAsync(context, cancellation);
            default:
                var kind = ProblemKinds.OfStatus(bad.StatusCode);
                return new ProblemResult(kind, "A part of the path or the query cannot be read.", Status: bad.StatusCode);
        }
    }

    private static async Task<ProblemResult> DescribeBodyAsync(HttpContext context, CancellationToken cancellation)
    {
        var endpoint = context.Features.Get<IExceptionHandlerFeature>()?.Endpoint ?? context.GetEndpoint();
        var type = endpoint?.Metadata.GetMetadata<IAcceptsMetadata>()?.RequestType;
        if (type is null || !context.Request.Body.CanSeek)
        {
            return new ProblemResult(ProblemKinds.MalformedJson, "The body cannot be read as the JSON this address asks for.");
        }

        context.Request.Body.Position = 0;
        using var copy = new MemoryStream();
        await context.Request.Body.CopyToAsync(copy, cancellation);
        var found = JsonFaults.Find(copy.ToArray(), type, StrictJson.Options);
        return new ProblemResult(ProblemKinds.MalformedJson, found.Detail, found.Errors);
    }
}
