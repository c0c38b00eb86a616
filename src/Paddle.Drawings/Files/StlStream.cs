using System.Buffers.Binary;
using System.Numerics;
using Paddle.Drawings.Solids;

namespace Paddle.Drawings.Files;

/// <summary>The bytes of a binary STL, each band of facets around the paddle made when it is read. A caller who wants one byte costs one band and not
/// all of hundreds, and who takes them slowly holds the mesh's corners and no file.</summary>
/// <param name="header">Header and count of facets.</param>
internal sealed class StlStream(byte[] header, SolidMesh mesh) : Stream
{
    /// <summary>Length of the header with the count of facets.</summary>
    public const int HeaderBytes = 84;
    private const int FacetBytes = 50;

    private readonly Facet[] facets = new Facet[mesh.MostInBand];
    private readonly byte[] band = new byte[FacetBytes * mesh.MostInBand];
    private (long From, long To) inBand; // places in the file
    private long position;

    public override bool CanRead => true;
    public override bool CanSeek => true;
    public override bool CanWrite => false;
    public override long Length => HeaderBytes + FacetBytes * (long)mesh.FacetCount;

    public override long Position
    {
        get => position;
        set
        {
            ArgumentOutOfRangeException.ThrowIfNegative(value);
            position = value;
        }
    }

    public override long Seek(long offset, SeekOrigin origin) => Position = origin switch
    {
        SeekOrigin.Begin => offset,
        SeekOrigin.Current => position + offset,
        _ => Length + offset,
    };

    public override int Read(Span<byte> buffer)
    {
        var read = 0;
        while (read < buffer.Length && position < Length)
        {
            var rest = position < HeaderBytes ? header.AsSpan((int)position) : Rest();
            var taken = Math.Min(rest.Length, buffer.Length - read);
            rest[..taken].CopyTo(buffer[read..]);
            read += taken;
            position += taken;
        }

        return read;
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    // There is nothing to wait for; the platform's own way would take a thread to find that out.
    public override ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default) =>
        cancellationToken.IsCancellationRequested ? ValueTask.FromCanceled<int>(cancellationToken) : ValueTask.FromResult(Read(buffer.Span));

    public override Task<int> ReadAsync(byte[] buffer, int offset, int count, CancellationToken cancellationToken) =>
        ReadAsync(buffer.AsMemory(offset, count), cancellationToken).AsTask();

    public override void Flush()
    {
    }

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    // What is left of the band at the position.
    private Span<byte> Rest()
    {
        if (position < inBand.From || position >= inBand.To)
        {
            var (index, first) = mesh.BandOf((int)((position - HeaderBytes) / FacetBytes));
            var count = mesh.Fill(index, facets);
            for (var i = 0; i < count; i++) WriteFacet(band.AsSpan(i * FacetBytes, FacetBytes), facets[i]);
            var from = HeaderBytes + FacetBytes * (long)first;
            inBand = (from, from + FacetBytes * count);
        }

        return band.AsSpan((int)(position - inBand.From), (int)(inBand.To - position));
    }

    private static void WriteFacet(Span<byte> bytes, in Facet facet)
    {
        var normal = Vector3.Cross(facet.B - facet.A, facet.C - facet.A);
        var length = normal.Length();
        normal = length > 0 ? normal / length : Vector3.Zero;
        Put(bytes, normal);
        Put(bytes[12..], facet.A);
        Put(bytes[24..], facet.B);
        Put(bytes[36..], facet.C);
        bytes[48] = bytes[49] = 0;
    }

    private static void Put(Span<byte> bytes, Vector3 v)
    {
        BinaryPrimitives.WriteSingleLittleEndian(bytes, v.X);
        BinaryPrimitives.WriteSingleLittleEndian(bytes[4..], v.Y);
        BinaryPrimitives.WriteSingleLittleEndian(bytes[8..], v.Z);
    }
}
