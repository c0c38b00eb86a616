using System.Runtime.CompilerServices;

namespace PaddleApi.Hosting.Work;

/// <summary>
/// A stream whose bytes cost work to make or to pack, read in small pieces that wait for each other and not among all other work: a hundred
/// long files on their way must not have a short answer wait for more than a piece or two.
/// </summary>
internal sealed class InTurns(Stream content) : Stream
{
    // Packing a piece takes some tenths of a millisecond.
    private const int PieceBytes = 16 * 1024;

    // One piece at a time for every second processor; after each the thread looks for other work first.
    private static readonly TaskScheduler Turns = new ConcurrentExclusiveSchedulerPair(
        TaskScheduler.Default, Math.Max(1, Environment.ProcessorCount / 2), maxItemsPerTask: 1).ConcurrentScheduler;

    public override bool CanRead => true;

    public override bool CanSeek => content.CanSeek;

    public override bool CanWrite => false;

    public override long Length => content.Length;

    public override long Position { get => content.Position; set => content.Position = value; }

    public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
    {
        await default(Turn);
        return await content.ReadAsync(buffer[..Math.Min(buffer.Length, PieceBytes)], cancellationToken);
    }

    public override Task<int> ReadAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken) =>
        ReadAsync(buffer.AsMemory(offset, count), cancellationToken).AsTask();

    public override int Read(byte[] buffer, int offset, int count) => content.Read(buffer, offset, Math.Min(count, PieceBytes));

    public override long Seek(long offset, SeekOrigin origin) => content.Seek(offset, origin);

    public override void Flush()
    {
    }

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing) content.Dispose();
        base.Dispose(disposing);
    }

    private readonly struct Turn : ICriticalNotifyCompletion
    {
        public bool IsCompleted => false;

        public Turn GetAwaiter() => this;

        public void GetResult()
        {
        }

        public void OnCompleted(Action continuation) => UnsafeOnCompleted(continuation);

        public void UnsafeOnCompleted(Action continuation) =>
            Task.Factory.StartNew(continuation, CancellationToken.None, TaskCreationOptions.DenyChildAttach, Turns);
    }
}
