using Microsoft.Extensions.Options;

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

/// <summary>The gates of a service, and the threads that it keeps for the work that passes none.</summary>
internal static class WorkGates
{
    /// <summary>Adds the gates.</summary>
    public static IServiceCollection AddWorkGates(this IServiceCollection services) => services
        .AddSingleton(provider => new SolveGate(provider.GetRequiredService<IOptions<ServiceLimits>>().Value))
        .AddSingleton(provider => new FileGate(provider.GetRequiredService<IOptions<ServiceLimits>>().Value))
        .AddSingleton(provider => new BatchGate(provider.GetRequiredService<IOptions<ServiceLimits>>().Value))
        .AddSingleton(provider => new BodyGate(provider.GetRequiredService<IOptions<ServiceLimits>>().Value))
        .AddHostedService<IdleMemory>();

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
}
