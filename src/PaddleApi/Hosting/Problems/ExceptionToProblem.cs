using System.Text.Json;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http.Metadata;
using PaddleApi.Hosting.Json;

namespace PaddleApi.Hosting.Problems;

/// <summary>Says in the service's own words what an exception means to the caller. No text of an exception leaves the process.</summary>
internal sealed class ExceptionToProblem : IExceptionHandler
{
    /// <summary>True for failures that the caller's request explains, or its going away. The service itself reads and writes no files.</summary>
    public static bool IsForeseen(Exception exception) => exception is ProblemException or OperationCanceledException or IOException;

    public async ValueTask<bool> TryHandleAsync(HttpContext httpContext, Exception exception, CancellationToken cancellationToken)
    {
        try
        {
            if (IsHangUp(exception)) HangUp(httpContext);
            else await (await ResultAsync(httpContext, exception, cancellationToken)).ExecuteAsync(httpContext);
        }
        catch (Exception later) when (IsHangUp(later) || (later is OperationCanceledException && httpContext.RequestAborted.IsCancellationRequested))
        {
            // It went away while the problem was looked for or sent.
            HangUp(httpContext);
        }

        return true;
    }

    // What the server throws for a body that does not come as it should is an IOException too, but has an answer.
    private static bool IsHangUp(Exception exception) => exception is IOException and not BadHttpRequestException;

    private static void HangUp(HttpContext context)
    {
        HungUp.Note(context);
        if (!context.Response.HasStarted) context.Response.StatusCode = HungUp.Status;
    }

    private static async Task<ProblemResult> ResultAsync(HttpContext context, Exception exception, CancellationToken cancellation) => exception switch
    {
        ProblemException problem => new(problem.Kind, problem.Message, problem.Errors),
        BadHttpRequestException bad => await DescribeAsync(context, bad, cancellation),
        OperationCanceledException => new(ProblemKinds.Timeout, ProblemKinds.Timeout.Meaning),
        _ => new(ProblemKinds.Internal, "The service met a fault of its own. Report the request id if it happens again."),
    };

    private static async Task<ProblemResult> DescribeAsync(HttpContext context, BadHttpRequestException bad, CancellationToken cancellation)
    {
        if (bad.StatusCode != StatusCodes.Status400BadRequest || !(bad.InnerException is JsonException || context.Request.HasJsonContentType()))
            return Describe(context, bad);
        return await DescribeBodyAsync(context, cancellation);
    }

    private static ProblemResult Describe(HttpContext context, BadHttpRequestException bad) => bad.StatusCode switch
    {
        StatusCodes.Status413PayloadTooLarge => new(ProblemKinds.TooLarge, ProblemHandling.TooLarge(context)),
        StatusCodes.Status415UnsupportedMediaType => new(ProblemKinds.UnsupportedMediaType, ProblemHandling.NoJson),
        _ => new(ProblemKinds.OfStatus(bad.StatusCode), "A part of the request cannot be read.", Status: bad.StatusCode),
    };

    private static async Task<ProblemResult> DescribeBodyAsync(HttpContext context, CancellationToken cancellation)
    {
        var endpoint = context.Features.Get<IExceptionHandlerFeature>()?.Endpoint ?? context.GetEndpoint();
        var type = endpoint?.Metadata.GetMetadata<IAcceptsMetadata>()?.RequestType;
        if (type is null || !context.Request.Body.CanSeek)
        {
            return new ProblemResult(ProblemKinds.MalformedJson, "The body cannot be read as the JSON this address asks for.");
        }

        // It was taken in whole before it was read, so that it can be read a second time for what is wrong with it.
        context.Request.Body.Position = 0;
        var copy = new byte[context.Request.Body.Length];
        await context.Request.Body.ReadExactlyAsync(copy, cancellation);
        return OfBody(copy, type);
    }

    /// <summary>What is wrong with JSON that could not be read as a type.</summary>
    internal static ProblemResult OfBody(byte[] json, Type type)
    {
        var found = JsonFaults.Find(json, type, StrictJson.Options);
        return new(found.IsOfValues ? ProblemKinds.InvalidValues : ProblemKinds.MalformedJson, found.Detail, found.Errors);
    }
}
