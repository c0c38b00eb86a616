using System.Globalization;
using System.Text.Json;
using PaddleApi.Contracts.Problems;
using PaddleApi.Hosting.Json;
using PaddleApi.Hosting.Telemetry;

namespace PaddleApi.Hosting.Problems;

/// <summary>
/// Answers with a problem of RFC 9457. It is sent whatever the caller's Accept says: an error in a form not asked for helps more than
/// an empty one. It is written whole before the first byte leaves, so that no failure can leave half a problem on the line.
/// </summary>
/// <param name="Detail">What went wrong this time.</param>
/// <param name="Errors">Faults by JSON Pointer, if any.</param>
/// <param name="RetryAfterSeconds">When to try again, if that helps.</param>
/// <param name="Status">HTTP status when it is not the kind's own.</param>
internal sealed record ProblemResult(
    ProblemKind Kind,
    string Detail,
    IReadOnlyDictionary<string, IReadOnlyList<Fault>>? Errors = null,
    int? RetryAfterSeconds = null,
    int? Status = null) : IResult, IStatusCodeHttpResult
{
    /// <summary>Media type of a problem.</summary>
    public const string MediaType = "application/problem+json";

    /// <inheritdoc/>
    public int? StatusCode => Status ?? Kind.Status;

    // Only of broken rules are the places those of the contract; elsewhere they may be the caller's own words.
    private string? Place => Kind == ProblemKinds.InvalidValues ? Errors?.Keys.FirstOrDefault() : null;

    /// <summary>The problem as it is written.</summary>
    /// <param name="instance">Path of the request.</param>
    public Problem ToProblem(string instance, string requestId) => new(Kind.Type, Kind.Title, StatusCode!.Value, Detail, instance, requestId, Errors);

    /// <inheritdoc/>
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.RequestServices.GetService<ServiceMeters>()?.Refused(Kind.Type[ProblemKinds.Root.Length..], Place);
        var response = httpContext.Response;
        response.StatusCode = StatusCode!.Value;
        response.Headers.CacheControl = "no-store";
        if (RetryAfterSeconds is { } seconds)
        {
            response.Headers.RetryAfter = seconds.ToString(CultureInfo.InvariantCulture);
        }

        var bytes = JsonSerializer.SerializeToUtf8Bytes(ToProblem(httpContext.Request.Path.ToUriComponent(), httpContext.TraceIdentifier), StrictJson.Options);
        response.ContentType = MediaType;
        response.ContentLength = bytes.Length;
        await response.Body.WriteAsync(bytes, httpContext.RequestAborted);
    }
}
