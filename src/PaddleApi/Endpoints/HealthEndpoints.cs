using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Http.HttpResults;
using PaddleApi.Contracts;
using PaddleApi.Contracts.Health;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Health;
using PaddleApi.Hosting.Problems;

namespace PaddleApi.Endpoints;

/// <summary>Health, for whoever restarts the service or sends it callers.</summary>
internal static class HealthEndpoints
{
    private const string LiveAddress = "/health/live";
    private const int RetryAfterSeconds = 1;

    /// <summary>Maps the endpoints.</summary>
    public static RouteGroupBuilder MapHealth(this IEndpointRouteBuilder routes)
    {
        var group = routes.MapGroup("/health").WithTags("Health");
        group.MapMethods("/live", Routes.Reading, Live)
            .Describe("getLiveness", "Whether the service runs",
                "Answers 200 as long as the process can answer at all. Restart it when this fails.")
            .ResponseExample("live", "The service runs", () => new HealthState("live", EngineVersion.Text));
        group.MapMethods("/ready", Routes.Reading, Ready)
            .Describe("getReadiness", "Whether the service can take designs",
                "Answers 200 once one real design has been solved since the start, and 503 before. Send it callers only when this is 200.")
            .ResponseExample("ready", "The service takes designs", () => new HealthState("ready", EngineVersion.Text))
            .Refuses(ProblemKinds.NotReady);
        return group;
    }

    /// <summary>
    /// Answers whether the service runs, asked in its plain form, before the first look for an address makes them all: that takes longer than all
    /// else at the start, and who restarts the service must not wait for it.
    /// </summary>
    public static IApplicationBuilder UseLiveness(this IApplicationBuilder app) => app.Use((context, next) =>
        HttpMethods.IsGet(context.Request.Method) && context.Features.Get<IHttpRequestFeature>()?.RawTarget == LiveAddress
            ? Live(context.Response).ExecuteAsync(context)
            : next(context));

    private static Ok<HealthState> Live(HttpResponse response) => Fresh(response, "live");

    private static Results<Ok<HealthState>, ProblemResult> Ready(HttpResponse response, Readiness readiness) => readiness.IsReady
        ? Fresh(response, "ready")
        : new ProblemResult(ProblemKinds.NotReady, ProblemKinds.NotReady.Meaning, RetryAfterSeconds: RetryAfterSeconds);

    private static Ok<HealthState> Fresh(HttpResponse response, string status)
    {
        response.Headers.CacheControl = "no-store";
        return TypedResults.Ok(new HealthState(status, EngineVersion.Text));
    }
}
