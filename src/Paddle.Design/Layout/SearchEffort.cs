using System.Diagnostics;

namespace Paddle.Design.Layout;

/// <summary>
/// Counts the work of a search, so that it ends at the same place at every call and on every machine; the clock only ends it where a machine
/// is too slow for the time the caller gave.
/// </summary>
internal sealed class SearchEffort(TimeSpan limit, CancellationToken cancellation)
{
    // Looks at a place along a board that are made in a millisecond of a slow machine.
    private const double LooksByMs = 5000;

    private readonly long begun = Stopwatch.GetTimestamp();
    private long spent;

    /// <summary>Whether the clock ended the search.</summary>
    public bool IsCutShort { get; private set; }
    /// <summary>Time left.</summary>
    public TimeSpan Left => limit - Stopwatch.GetElapsedTime(begun);

    /// <summary>Counts work, and ends it when the caller has gone.</summary>
    /// <exception cref="OperationCanceledException">The caller has gone.</exception>
    public void Spend(int looks)
    {
        spent += looks;
        if ((spent & 0xFFF) < looks) cancellation.ThrowIfCancellationRequested();
    }

    /// <summary>Whether a share of the effort, or of the time, is over.</summary>
    public bool IsOver(double share)
    {
        if (spent > share * LooksByMs * limit.TotalMilliseconds) return true;
        return IsCutShort |= Left < (1 - share) * limit;
    }
}
