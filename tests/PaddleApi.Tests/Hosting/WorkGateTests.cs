using PaddleApi.Hosting.Work;

namespace PaddleApi.Tests.Hosting;

/// <summary>Waiting for a place is short in time; its number is only bounded.</summary>
public sealed class WorkGateTests
{
    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);

    [Fact]
    public async Task Those_who_come_in_one_moment_are_all_let_in_by_turns()
    {
        using var gate = new WorkGate(2, 1024, Minute, 1);
        var (inside, most) = (0, 0);

        await Task.WhenAll(Enumerable.Range(0, 64).Select(_ => Task.Run(async () =>
        {
            using var place = await gate.EnterAsync(CancellationToken.None);
            Assert.True(place.IsTaken);
            InterlockedMax(ref most, Interlocked.Increment(ref inside));
            await Task.Yield();
            Interlocked.Decrement(ref inside);
        })));

        Assert.InRange(most, 1, 2);
        Assert.Equal(0, gate.Waiting);
    }

    [Fact]
    public async Task Who_would_wait_too_long_is_told_at_once_how_long_it_may_be()
    {
        using var gate = new WorkGate(1, 1024, TimeSpan.FromSeconds(5), 1);
        for (var i = 0; i < 200; i++) gate.Learn(TimeSpan.FromSeconds(2));
        using var taken = await gate.EnterAsync(CancellationToken.None);

        // Of 2 s each: the first waits 2 s and the second 4; the third would wait 6.
        using var leaves = new CancellationTokenSource();
        Task<WorkPlace>[] waiting = [gate.EnterAsync(leaves.Token).AsTask(), gate.EnterAsync(leaves.Token).AsTask()];
        using var refused = await gate.EnterAsync(CancellationToken.None);

        Assert.False(refused.IsTaken);
        Assert.Equal(6, refused.RetryAfterSeconds);
        Assert.All(waiting, task => Assert.False(task.IsCompleted));
        await leaves.CancelAsync();
        foreach (var task in waiting) await Assert.ThrowsAnyAsync<OperationCanceledException>(() => task);
        Assert.Equal(0, gate.Waiting);
    }

    [Fact]
    public async Task Nobody_waits_longer_than_is_said_whatever_was_expected()
    {
        using var gate = new WorkGate(1, 1024, TimeSpan.FromMilliseconds(20), 3);
        using var taken = await gate.EnterAsync(CancellationToken.None);
        Assert.Equal(TimeSpan.Zero, gate.ExpectedWait);

        using var refused = await gate.EnterAsync(CancellationToken.None);

        Assert.False(refused.IsTaken);
        Assert.Equal(3, refused.RetryAfterSeconds);
    }

    [Fact]
    public async Task The_queue_is_bounded_in_number_too()
    {
        using var gate = new WorkGate(1, 1, Minute, 1);
        var taken = await gate.EnterAsync(CancellationToken.None);
        var waits = gate.EnterAsync(CancellationToken.None).AsTask();

        using var refused = await gate.EnterAsync(CancellationToken.None);
        Assert.False(refused.IsTaken);

        taken.Dispose();
        using var next = await waits;
        Assert.True(next.IsTaken);
    }

    [Fact]
    public async Task A_refusal_holds_no_place_and_teaches_nothing()
    {
        using var gate = new WorkGate(1, 0, Minute, 1);
        var taken = await gate.EnterAsync(CancellationToken.None);
        (await gate.EnterAsync(CancellationToken.None)).Dispose();
        Assert.Equal(TimeSpan.Zero, gate.ExpectedWait);
        taken.Dispose();

        using var again = await gate.EnterAsync(CancellationToken.None);
        Assert.True(again.IsTaken);
    }

    private static void InterlockedMax(ref int most, int value)
    {
        int seen;
        while ((seen = Volatile.Read(ref most)) < value && Interlocked.CompareExchange(ref most, value, seen) != seen)
        {
        }
    }
}
