using Microsoft.AspNetCore.Http.Features;

namespace PaddleApi.Hosting.Problems;

/// <summary>Turns every failure, thrown or bare, into a problem of RFC 9457.</summary>
internal static class ProblemHandling
{
    /// <summary>What is said of a body that does not say it is JSON.</summary>
    internal const string NoJson = "The body must be JSON with the header Content-Type: application/json; a batch, JSON line by line with application/x-ndjson.";

    /// <summary>Adds the handler of exceptions.</summary>
    public static IServiceCollection AddProblems(this IServiceCollection services) => services
        .AddProblemDetails()
        .AddExceptionHandler<ExceptionToProblem>();

    /// <summary>Places the handlers in the pipeline.</summary>
    public static IApplicationBuilder UseProblems(this IApplicationBuilder app) => app
        .UseExceptionHandler(new ExceptionHandlerOptions
        {
            // A refused request is the caller's fault and no error of the service; only what is unforeseen goes into the error log.
            SuppressDiagnosticsCallback = failure => ExceptionToProblem.IsForeseen(failure.Exception),
        })
        .Use(HungUp.NoteAsync)
        .UseStatusCodePages(pages => Describe(pages.HttpContext).ExecuteAsync(pages.HttpContext));

    /// <summary>What is said of a body that is too large. Addresses differ in what they take; the server knows the limit it has just enforced.</summary>
    internal static string TooLarge(HttpContext context) =>
        context.Features.Get<IHttpMaxRequestBodySizeFeature>()?.MaxRequestBodySize is { } most
            ? string.Create(null, $"The body is larger than {most} bytes, which is more than this address needs.")
            : ProblemKinds.TooLarge.Meaning;

    private static ProblemResult Describe(HttpContext context)
    {
        var kind = ProblemKinds.OfStatus(context.Response.StatusCode);
        return new ProblemResult(kind, kind.Status switch
        {
            404 => "Nothing lives at this address. The addresses are listed at /docs.",
            405 => $"{context.Request.Method} is not allowed here; allowed: {context.Response.Headers.Allow}.",
            413 => TooLarge(context),
            415 => NoJson,
            _ => kind.Meaning,
        }, Status: context.Response.StatusCode);
    }
}
