using System.Diagnostics;
using System.Threading.RateLimiting;

namespace PaddleApi.Hosting.Work;

/// <summary>
/// Lets a few pieces of work run at once and others wait, but nobody for long: who would wait longer than <paramref name="mostWait"/> is
/// told at once when to come back. A queue without an end would answer everybody too late; one that is short in number would refuse a page
/// that asks for fifty things in one moment.
/// </summary>
/// <param name="places">How many may run at once.</param>
/// <param name="mostWaiting">How many may wait, whatever the time.</param>
/// <param name="leastRetrySeconds">The least that a refused caller is told to wait, seconds.</param>
internal class WorkGate(int places, int mostWaiting, TimeSpan mostWait, int leastRetrySeconds) : IDisposable
{
    // Nobody is sent away for longer: the queue ends sooner than the longest wait in any case.
    private const int LongestRetrySeconds = 60;

    // One piece of work in so many decides the mean. It begins at nothing, so that nobody is refused before there is experience.
    private const double Memory = 1.0 / 32;

    private readonly ConcurrencyLimiter limiter = new(new ConcurrencyLimiterOptions
    {
        PermitLimit = places,
        QueueLimit = mostWaiting,
        QueueProcessingOrder = QueueProcessingOrder.OldestFirst,
    });

    private readonly Lock mean = new();
    private double meanSeconds;

    /// <summary>How many may run at once.</summary>
    public int Places => places;

    /// <summary>How many run.</summary>
    public long Busy => places - limiter.GetStatistics()!.CurrentAvailablePermits;

    /// <summary>How many wait.</summary>
    public long Waiting => limiter.GetStatistics()!.CurrentQueuedCount;

    /// <summary>How long a caller who came now would wait, from how long the work has taken of late.</summary>
    public TimeSpan ExpectedWait
    {
        get
        {
            var statistics = limiter.GetStatistics()!;
            if (statistics.CurrentAvailablePermits > 0) return TimeSpan.Zero;
            lock (mean) return TimeSpan.FromSeconds((statistics.CurrentQueuedCount + 1) * meanSeconds / places);
        }
    }

    /// <summary>Waits for a place, or is refused.</summary>
    /// <returns>A place to be disposed of when the work is done; it may have been refused.</returns>
    public async ValueTask<WorkPlace> EnterAsync(CancellationToken cancellation)
    {
        var free = limiter.AttemptAcquire();
        if (free.IsAcquired) return new(this, free);
        free.Dispose();
        var expected = ExpectedWait;
        return expected > mostWait ? Refused(expected) : await WaitAsync(expected, cancellation);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        limiter.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>Counts a piece of work into the mean.</summary>
    internal void Learn(TimeSpan took)
    {
        lock (mean) meanSeconds += Memory * (took.TotalSeconds - meanSeconds);
    }

    private async ValueTask<WorkPlace> WaitAsync(TimeSpan expected, CancellationToken cancellation)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        patience.CancelAfter(mostWait);
        try
        {
            var lease = await limiter.AcquireAsync(1, patience.Token);
            if (lease.IsAcquired) return new(this, lease);
            lease.Dispose();
            return Refused(expected);
        }
        catch (OperationCanceledException) when (!cancellation.IsCancellationRequested)
        {
            return Refused(mostWait);
        }
    }

    private WorkPlace Refused(TimeSpan wait) =>
        new(this, null, (int)Math.Clamp(Math.Ceiling(wait.TotalSeconds), leastRetrySeconds, Math.Max(leastRetrySeconds, LongestRetrySeconds)));
}

/// <summary>A place at a gate, or the refusal of one.</summary>
internal sealed class WorkPlace : IDisposable
{
    private readonly WorkGate gate;
    private readonly RateLimitLease? lease;
    private readonly long since = Stopwatch.GetTimestamp();

    internal WorkPlace(WorkGate gate, RateLimitLease? lease, int retryAfterSeconds = 0) =>
        (this.gate, this.lease, RetryAfterSeconds) = (gate, lease, retryAfterSeconds);

    /// <summary>True for a place, false for a refusal.</summary>
    public bool IsTaken => lease is not null;

    /// <summary>When to come back after a refusal, seconds.</summary>
    public int RetryAfterSeconds { get; }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (lease is null) return;
        gate.Learn(Stopwatch.GetElapsedTime(since));
        lease.Dispose();
    }
}
