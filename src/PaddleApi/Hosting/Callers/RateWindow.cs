using System.Collections.Concurrent;

namespace PaddleApi.Hosting.Callers;

/// <summary>What is left to a caller in this minute.</summary>
/// <param name="IsAllowed">Whether this request is within the limit.</param>
/// <param name="ResetSeconds">Seconds until the count begins again.</param>
internal readonly record struct RateState(bool IsAllowed, int Remaining, int ResetSeconds);

/// <summary>
/// Counts the requests of each caller in a minute by the clock. The platform's limiters do not say when a window ends, which callers are
/// told here; and what is counted is thrown away as a whole, so that no number of callers fills the memory.
/// </summary>
/// <param name="most">Requests of one caller in a minute.</param>
internal sealed class RateWindow(int most, TimeProvider time)
{
    /// <summary>Length of the window, seconds.</summary>
    public const int Seconds = 60;

    // Beyond so many, new callers share one count until the minute is over.
    private const int MostCallers = 100_000;

    private Minute current = new(-1);

    /// <summary>Counts a request.</summary>
    public RateState Count(string caller)
    {
        var now = time.GetUtcNow().ToUnixTimeSeconds();
        var number = now / Seconds;
        var minute = current;
        if (minute.Number != number)
        {
            Interlocked.CompareExchange(ref current, new(number), minute);
            minute = current;
        }

        var count = minute.Add(caller);
        return new(count <= most, (int)Math.Max(0, most - count), (int)((number + 1) * Seconds - now));
    }

    private sealed class Minute(long number)
    {
        private readonly ConcurrentDictionary<string, Counter> counters = new(StringComparer.Ordinal);
        private int callers;

        public long Number => number;

        public long Add(string caller)
        {
            if (!counters.TryGetValue(caller, out var counter))
                counter = counters.GetOrAdd(Interlocked.Increment(ref callers) <= MostCallers ? caller : "", static _ => new());
            return Interlocked.Increment(ref counter.Value);
        }
    }

    private sealed class Counter
    {
        public long Value;
    }
}
