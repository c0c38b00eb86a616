using System.Buffers;

namespace PaddleApi.Hosting.Requests;

/// <summary>
/// A body held in pages that are used again: a large one in one piece would be new ground for each caller, which the collector of memory
/// clears seldom and at one go.
/// </summary>
internal sealed class PagedBody : Stream
{
    // Below what the runtime counts as a large object.
    private const int PageBytes = 64 * 1024;

    private readonly List<byte[]> pages = [];
    private long length;
    private long position;

    public override bool CanRead => true;

    public override bool CanSeek => true;

    public override bool CanWrite => false;

    public override long Length => length;

    public override long Position
    {
        get => position;
        set
        {
            ArgumentOutOfRangeException.ThrowIfNegative(value);
            position = value;
        }
    }

    /// <summary>Takes in all that a stream gives.</summary>
    public async Task TakeAsync(Stream source, CancellationToken cancellation)
    {
        while (true)
        {
            var (page, at) = Math.DivRem(length, PageBytes);
            if (page == pages.Count) pages.Add(ArrayPool<byte>.Shared.Rent(PageBytes));
            var read = await source.ReadAsync(pages[(int)page].AsMemory((int)at, PageBytes - (int)at), cancellation);
            if (read == 0) return;
            length += read;
        }
    }

    public override int Read(Span<byte> buffer)
    {
        var read = 0;
        while (read < buffer.Length && position < length)
        {
            var (page, at) = Math.DivRem(position, PageBytes);
            var count = (int)Math.Min(Math.Min(buffer.Length - read, PageBytes - at), length - position);
            pages[(int)page].AsSpan((int)at, count).CopyTo(buffer[read..]);
            read += count;
            position += count;
        }

        return read;
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default) =>
        cancellationToken.IsCancellationRequested ? ValueTask.FromCanceled<int>(cancellationToken) : ValueTask.FromResult(Read(buffer.Span));

    public override Task<int> ReadAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken) =>
        ReadAsync(buffer.AsMemory(offset, count), cancellationToken).AsTask();

    public override long Seek(long offset, SeekOrigin origin) => Position = origin switch
    {
        SeekOrigin.Begin => offset,
        SeekOrigin.Current => position + offset,
        _ => length + offset,
    };

    public override void Flush()
    {
    }

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        foreach (var page in pages) ArrayPool<byte>.Shared.Return(page);
        pages.Clear();
        length = 0;
        base.Dispose(disposing);
    }
}
