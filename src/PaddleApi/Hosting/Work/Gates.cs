using Microsoft.Extensions.Options;
using PaddleApi.Hosting.OpenApi;
using PaddleApi.Hosting.Problems;

namespace PaddleApi.Hosting.Work;

/// <summary>The gate of work that solves.</summary>
internal sealed class SolveGate(ServiceLimits limits) : WorkGate(
    limits.ConcurrentSolves > 0 ? limits.ConcurrentSolves : Environment.ProcessorCount,
    limits.QueuedSolves,
    TimeSpan.FromSeconds(limits.MostWaitSeconds),
    limits.RetryAfterSeconds);

/// <summary>The gate of heavy files, build sheets, board layouts and size runs: they wait for each other and not for designs, nor designs for them.</summary>
internal sealed class FileGate(ServiceLimits limits) : WorkGate(
    limits.ConcurrentFiles > 0 ? limits.ConcurrentFiles : Math.Max(1, Environment.ProcessorCount / 2),
    limits.QueuedFiles,
    TimeSpan.FromSeconds(limits.MostWaitSeconds),
    limits.RetryAfterSeconds);

/// <summary>The gate of heavy bodies: each takes room while it comes and waits.</summary>
internal sealed class BodyGate(ServiceLimits limits) : WorkGate(
    limits.ConcurrentSizeRunBodies, limits.QueuedFiles, TimeSpan.FromSeconds(limits.MostWaitSeconds), limits.RetryAfterSeconds);

/// <summary>The gate of batches: each lasts as long as its caller sends, and its lines wait for the gate of work that solves.</summary>
internal sealed class BatchGate(ServiceLimits limits) : WorkGate(
    limits.ConcurrentBatches, limits.QueuedFiles, TimeSpan.FromSeconds(limits.MostWaitSeconds), limits.RetryAfterSeconds);

/// <summary>Puts the gates before the work, and marks the endpoints that have one.</summary>
internal static class Gates
{
    /// <summary>Adds the gates.</summary>
    public static IServiceCollection AddWorkGates(this IServiceCollection services) => services
        .AddSingleton(provider => new SolveGate(provider.GetRequiredService<IOptions<ServiceLimits>>().Value))
        .AddSingleton(provider => new FileGate(provider.GetRequiredService<IOptions<ServiceLimits>>().Value))
        .AddSingleton(provider => new BatchGate(provider.GetRequiredService<IOptions<ServiceLimits>>().Value))
        .AddSingleton(provider => new BodyGate(provider.GetRequiredService<IOptions<ServiceLimits>>().Value))
        .AddHostedService<IdleMemory>();

    /// <summary>
    /// Makes an endpoint wait for a place before it solves. Add it after <c>Validate</c>: the place is taken only once the body has been
    /// read and checked, so that a wrong caller holds none.
    /// </summary>
    public static RouteHandlerBuilder Solves(this RouteHandlerBuilder endpoint) =>
        endpoint.AddEndpointFilter<RouteHandlerBuilder, SolvingFilter>().Refuses(ProblemKinds.Busy);

    /// <summary>
    /// Makes an endpoint wait for room before its body is taken in, and for a place before it is read as JSON, because that is heavy work too.
    /// </summary>
    public static RouteHandlerBuilder HasHeavyBody(this RouteHandlerBuilder endpoint) =>
        endpoint.WithMetadata(HeavyBodyMark.Instance).Refuses(ProblemKinds.Busy);

    /// <summary>Places the gate of room for heavy bodies in the pipeline, before <c>UseWholeBodies</c>: what waits for room is not here yet.</summary>
    public static IApplicationBuilder UseRoomForBodies(this IApplicationBuilder app) => app.UseGateOfBodies<BodyGate>();

    /// <summary>Places the gate of work on heavy bodies in the pipeline, behind <c>UseWholeBodies</c>: a slow caller holds no place.</summary>
    public static IApplicationBuilder UseWorkOnBodies(this IApplicationBuilder app) => app.UseGateOfBodies<FileGate>();

    private static IApplicationBuilder UseGateOfBodies<TGate>(this IApplicationBuilder app)
        where TGate : WorkGate
    {
        var gate = app.ApplicationServices.GetRequiredService<TGate>();
        return app.Use(async (context, next) =>
        {
            if (context.GetEndpoint()?.Metadata.GetMetadata<HeavyBodyMark>() is null)
            {
                await next(context);
                return;
            }

            using var place = await gate.EnterAsync(context.RequestAborted);
            if (place.IsTaken) await next(context);
            else await Busy(place).ExecuteAsync(context);
        });
    }

    /// <summary>
    /// Sets threads by for light requests: a pool as small as the processors are many would have each wait until some heavy work is done,
    /// though the processors themselves are shared by turns.
    /// </summary>
    public static IApplicationBuilder UseSpareThreads(this IApplicationBuilder app)
    {
        var services = app.ApplicationServices;
        var heavy = services.GetRequiredService<SolveGate>().Places + services.GetRequiredService<FileGate>().Places;
        ThreadPool.GetMinThreads(out var threads, out var ports);
        ThreadPool.SetMinThreads(Math.Max(threads, Environment.ProcessorCount + heavy), ports);
        return app;
    }

    /// <summary>What a refused caller is told.</summary>
    internal static ProblemResult Busy(WorkPlace place) => new(ProblemKinds.Busy, ProblemKinds.Busy.Meaning, RetryAfterSeconds: place.RetryAfterSeconds);

    private sealed class SolvingFilter(SolveGate gate) : IEndpointFilter
    {
        public async ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
        {
            using var place = await gate.EnterAsync(context.HttpContext.RequestAborted);
            return place.IsTaken ? await next(context) : Busy(place);
        }
    }
}

/// <summary>Mark on endpoints whose bodies are heavy work to read.</summary>
internal sealed class HeavyBodyMark
{
    /// <summary>The mark.</summary>
    public static HeavyBodyMark Instance { get; } = new();
}
