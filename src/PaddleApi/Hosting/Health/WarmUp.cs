namespace PaddleApi.Hosting.Health;

/// <summary>The trial work that must succeed once before the service calls itself ready.</summary>
internal sealed record WarmUpWork(Action Work);

/// <summary>Whether the trial work has succeeded.</summary>
internal sealed class Readiness
{
    private volatile bool ready;

    /// <summary>True once the trial work has succeeded.</summary>
    public bool IsReady => ready;

    /// <summary>Notes the success.</summary>
    public void MarkReady() => ready = true;
}

/// <summary>
/// Does one real design when the service starts: it compiles the code that the first caller would otherwise wait for, and it shows that
/// this build can design at all. A service whose trial fails stays up, but never becomes ready.
/// </summary>
internal sealed partial class WarmUp(WarmUpWork trial, Readiness readiness, IHostApplicationLifetime life, EndpointDataSource addresses, ILogger<WarmUp> log)
    : BackgroundService
{
    // Behind the start, which needs the processors too: whether it lives can be asked at once.
    protected override Task ExecuteAsync(CancellationToken stoppingToken)
    {
        life.ApplicationStarted.Register(() => Task.Run(Try, stoppingToken));
        return Task.CompletedTask;
    }

    private void Try()
    {
        try
        {
            // The first caller would wait for these too.
            _ = addresses.Endpoints;
            trial.Work();
            readiness.MarkReady();
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            LogFailure(log, fault.Message, fault);
        }
    }

    // The trial is the service's own: its words give nobody away.
    [LoggerMessage(Level = LogLevel.Critical, Message = "The trial design failed and the service stays not ready: {Reason}")]
    private static partial void LogFailure(ILogger log, string reason, Exception fault);
}

/// <summary>Adds the trial at start.</summary>
internal static class WarmUpSetup
{
    /// <summary>Adds the trial and what remembers its outcome.</summary>
    public static IServiceCollection AddWarmUp(this IServiceCollection services, Action work) => services
        .AddSingleton(new WarmUpWork(work))
        .AddSingleton<Readiness>()
        .AddHostedService<WarmUp>();
}
