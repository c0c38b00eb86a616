using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.Extensions.Options;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Telemetry;

namespace PaddleApi.Hosting.Requests;

/// <summary>
/// Takes a body in whole, within a time, before any work: reading JSON off the line would hold what the work holds for as long as a slow
/// caller likes, and what is wrong with a body is found by reading it a second time. The server limits its size beforehand; it stays in
/// memory, for the service writes no files.
/// </summary>
internal static class WholeBodies
{
    /// <summary>Places the reading in the pipeline, behind the refusals that need no body.</summary>
    public static IApplicationBuilder UseWholeBodies(this IApplicationBuilder app)
    {
        var most = TimeSpan.FromSeconds(app.ApplicationServices.GetRequiredService<IOptions<ServiceLimits>>().Value.UploadTimeoutSeconds);
        return app.Use(async (context, next) =>
        {
            var isTaken = context.GetEndpoint()?.Metadata.GetMetadata<IAcceptsMetadata>() is not null && context.Request.HasJsonContentType();
            if (!isTaken || await TakeAsync(context, most)) await next(context);
        });
    }

    private static async Task<bool> TakeAsync(HttpContext context, TimeSpan most)
    {
        using var step = ServiceTraces.Begin("read");
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted);
        patience.CancelAfter(most);
        try
        {
            var body = new PagedBody();
            context.Response.RegisterForDispose(body);
            await body.TakeAsync(context.Request.Body, patience.Token);
            context.Request.Body = body;
            return true;
        }
        catch (OperationCanceledException) when (!context.RequestAborted.IsCancellationRequested)
        {
            // What is still to come is not waited for: the connection ends with this answer.
            context.Response.Headers.Connection = "close";
            await new ProblemResult(ProblemKinds.SlowBody, $"The body did not come whole within {most.TotalSeconds:0} seconds.").ExecuteAsync(context);
            return false;
        }
    }
}
