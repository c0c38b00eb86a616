using System.Buffers;
using System.Buffers.Text;
using System.IO.Compression;
using System.Security.Cryptography;
using Paddle.Design.Request;

namespace PaddleApi.Contracts.Designs;

/// <summary>
/// Writes a design into letters that fit a URL, and reads it back. The layout is the prefix <c>p1</c>, then in base64url three bytes of
/// the SHA-256 of the canonical text and the text itself, packed by Brotli. Packing keeps a code short enough for a mail or a label;
/// the check bytes catch a letter lost on the way, which could otherwise read as another paddle.
/// </summary>
internal static class DesignCodes
{
    /// <summary>Version of the layout; a code with another prefix is refused.</summary>
    public const string Prefix = "p1";

    /// <summary>The letters of a code, as JSON Schema states them.</summary>
    public const string Pattern = "^" + Prefix + "[A-Za-z0-9_-]+$";

    /// <summary>Longest code that is read: a design with sixty offsets takes about 1 KiB, and a request line may hold 8.</summary>
    public const int MostCharacters = 4096;

    /// <summary>Largest canonical text: sixty offsets with sixteen digits each stay below 4 KiB.</summary>
    public const int MostTextBytes = 16 * 1024;

    private const int CheckBytes = 3;

    // Measured on canonical texts of 240 bytes: level 3 packs them to 176 bytes in half the time of zlib's 181 or level 5's 180; level 11
    // gains another tenth for a hundred times the time. A window of 1 KiB is the least there is, and enough.
    private const int Quality = 3, WindowBits = 10;

    /// <summary>Writes a design.</summary>
    /// <param name="pinned">The request with every default filled in and every size pinned.</param>
    /// <returns>The same code for the same design, in whatever order and with whatever defaults it was asked for.</returns>
    public static string Encode(DesignRequest pinned)
    {
        var text = CanonicalDesign.Write(pinned);
        var longest = CheckBytes + BrotliEncoder.GetMaxCompressedLength(text.Length);
        var packed = ArrayPool<byte>.Shared.Rent(longest);
        try
        {
            AddCheck(text, packed);
            if (!BrotliEncoder.TryCompress(text, packed.AsSpan(CheckBytes), out var length, Quality, WindowBits))
                throw new InvalidOperationException("The room for the packed text was computed too small.");
            return Prefix + Base64Url.EncodeToString(packed.AsSpan(0, CheckBytes + length));
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(packed);
        }
    }

    /// <summary>Reads a code. Nothing it holds is trusted: letters, lengths and structure are checked, values are left to the validator.</summary>
    /// <param name="code">The code.</param>
    /// <returns>The design, or why the code cannot be read.</returns>
    public static DecodedDesign Decode(string code)
    {
        if (code.Length > MostCharacters) return new(null, DesignCodeFault.TooLong);
        if (!code.StartsWith(Prefix, StringComparison.Ordinal)) return new(null, DesignCodeFault.ForeignVersion);
        var letters = code.AsSpan(Prefix.Length);
        // Base64Url skips white space and takes padding; one design must have one spelling.
        if (letters.ContainsAnyExcept(Letters)) return new(null, DesignCodeFault.NotBase64Url);
        var packed = new byte[Base64Url.GetMaxDecodedLength(letters.Length)];
        // Good letters that do not make whole bytes are what is left of a longer code.
        if (Base64Url.DecodeFromChars(letters, packed, out _, out var length) != OperationStatus.Done || length <= CheckBytes)
            return new(null, DesignCodeFault.CutShort);
        return Unpack(packed.AsSpan(0, length));
    }

    private static readonly SearchValues<char> Letters =
        SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_");

    private static DecodedDesign Unpack(ReadOnlySpan<byte> packed)
    {
        var text = ArrayPool<byte>.Shared.Rent(MostTextBytes);
        try
        {
            var decoder = default(BrotliDecoder);
            OperationStatus status;
            int read, length;
            try
            {
                status = decoder.Decompress(packed[CheckBytes..], text.AsSpan(0, MostTextBytes), out read, out length);
            }
            finally
            {
                decoder.Dispose();
            }

            if (status == OperationStatus.DestinationTooSmall) return new(null, DesignCodeFault.TooBig);
            if (status == OperationStatus.NeedMoreData) return new(null, DesignCodeFault.CutShort);
            if (status != OperationStatus.Done || read != packed.Length - CheckBytes) return new(null, DesignCodeFault.Damaged);
            Span<byte> check = stackalloc byte[CheckBytes];
            AddCheck(text.AsSpan(0, length), check);
            if (!check.SequenceEqual(packed[..CheckBytes])) return new(null, DesignCodeFault.Damaged);
            return CanonicalDesign.Read(text.AsSpan(0, length)) is { } request ? new(request, null) : new(null, DesignCodeFault.NotADesign);
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(text);
        }
    }

    private static void AddCheck(ReadOnlySpan<byte> text, Span<byte> to)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(text, hash);
        hash[..CheckBytes].CopyTo(to);
    }
}

/// <summary>A code read.</summary>
/// <param name="Request">The design, its values not yet validated; null when the code cannot be read.</param>
/// <param name="Fault">Why it cannot be read; null when it can.</param>
internal sealed record DecodedDesign(DesignRequest? Request, DesignCodeFault? Fault);

/// <summary>Why a design code cannot be read.</summary>
public enum DesignCodeFault
{
    /// <summary>Longer than any code.</summary>
    TooLong,

    /// <summary>Of another version, or no code at all.</summary>
    ForeignVersion,

    /// <summary>Letters that base64url does not have.</summary>
    NotBase64Url,

    /// <summary>Ends before the design does.</summary>
    CutShort,

    /// <summary>Letters were changed.</summary>
    Damaged,

    /// <summary>Unpacks to more than any design.</summary>
    TooBig,

    /// <summary>Unpacks to something that is no design of this version.</summary>
    NotADesign,
}
