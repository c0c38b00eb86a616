using System.Threading.RateLimiting;
using Microsoft.Extensions.Options;

namespace PaddleApi.Hosting.Solving;

/// <summary>
/// Lets as many solves run at once as there are processors and a few wait; the rest are told at once to come back. A queue without an end
/// would answer everybody too late.
/// </summary>
public sealed class SolveGate : IDisposable
{
    private readonly ConcurrencyLimiter limiter;

    /// <summary>A gate as wide as the limits say.</summary>
    /// <param name="options">The service's limits.</param>
    public SolveGate(IOptions<ServiceLimits> options)
    {
        ArgumentNullException.ThrowIfNull(options);
        var limits = options.Value;
        Places = limits.ConcurrentSolves > 0 ? limits.ConcurrentSolves : Environment.ProcessorCount;
        RetryAfterSeconds = limits.RetryAfterSeconds;
        limiter = new ConcurrencyLimiter(new ConcurrencyLimiterOptions
        {
            PermitLimit = Places,
            QueueLimit = limits.QueuedSolves,
            QueueProcessingOrder = QueueProcessingOrder.OldestFirst,
        });
    }

    /// <summary>How many solves may run at once.</summary>
    public int Places { get; }

    /// <summary>What a refused caller is told to wait, seconds.</summary>
    public int RetryAfterSeconds { get; }

    /// <summary>Waits for a place, or is refused at once when too many wait already.</summary>
    /// <param name="cancellation">Ends the wait.</param>
    /// <returns>A lease to be disposed when the work is done; it may have been refused.</returns>
    public ValueTask<RateLimitLease> EnterAsync(CancellationToken cancellation) => limiter.AcquireAsync(1, cancellation);

    /// <inheritdoc/>
    public void Dispose() => limiter.Dispose();
}
