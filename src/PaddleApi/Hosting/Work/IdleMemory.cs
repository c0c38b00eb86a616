namespace PaddleApi.Hosting.Work;

/// <summary>
/// Gives memory back after work: what solids and papers left behind stays resident until something asks for a collection, and a service that rests
/// asks for none. It looks at what has been allocated, so that nothing is counted on the way of a request.
/// </summary>
internal sealed class IdleMemory : BackgroundService
{
    private const long BytesOfAQuietSpell = 2_000_000, BytesWorthCollecting = 32_000_000;
    private static readonly TimeSpan Spell = TimeSpan.FromSeconds(5);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(Spell);
        var (before, collected) = (GC.GetTotalAllocatedBytes(), 0L);
        while (await timer.WaitForNextTickAsync(stoppingToken))
        {
            var now = GC.GetTotalAllocatedBytes();
            if (now - before < BytesOfAQuietSpell && now - collected > BytesWorthCollecting)
            {
                GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
                collected = now;
            }

            before = now;
        }
    }
}
