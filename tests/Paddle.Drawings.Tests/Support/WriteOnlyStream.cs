namespace Paddle.Drawings.Tests.Support;

/// <summary>A stream like a response's body: it takes bytes, cannot seek or read, and must be left open.</summary>
internal sealed class WriteOnlyStream : Stream
{
    private readonly MemoryStream bytes = new();
    private bool closed;

    public byte[] Bytes => closed ? throw new InvalidOperationException("The file closed its caller's stream.") : bytes.ToArray();

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

    public override void Flush()
    {
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => bytes.Write(buffer, offset, count);

    public override void Write(ReadOnlySpan<byte> buffer) => bytes.Write(buffer);

    protected override void Dispose(bool disposing)
    {
        closed = true;
        base.Dispose(disposing);
    }
}
