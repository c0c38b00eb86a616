using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using PaddleApi.Contracts;

namespace PaddleApi.Hosting.Caching;

/// <summary>Strong entity tags (RFC 9110, 8.8.3): made of what decides the bytes, so that they are known before any work.</summary>
internal static class EntityTags
{
    // Half of a SHA-256 is beyond chance collisions, and short in a log.
    private const int TagBytes = 16;

    private static readonly string[] Encodings = ["br", "gzip"];

    /// <summary>The tag of content made by this build of the service from the given parts.</summary>
    /// <param name="parts">Everything else that decides the bytes: path, format, options.</param>
    public static string Of(params IEnumerable<string> parts)
    {
        var text = string.Join('\n', parts.Prepend(EngineVersion.Build));
        return $"\"{Base64Url.EncodeToString(SHA256.HashData(Encoding.UTF8.GetBytes(text)).AsSpan(0, TagBytes))}\"";
    }

    /// <summary>The tag of the same content in a content encoding: a strong tag names bytes, and compressed bytes are others.</summary>
    public static string Encoded(string tag, string encoding)
    {
        return $"{tag[..^1]}-{encoding}\"";
    }

    /// <summary>Finds which tag the caller already holds, if any.</summary>
    /// <returns>The tag to answer 304 with, or null when the caller needs the content.</returns>
    public static string? Held(HttpRequest request, string tag)
    {
        var given = Given(request);
        return given.Contains("*") ? tag : Named(given, tag);
    }

    /// <summary>
    /// Whether the caller names this very content, which it can only have from an earlier good answer; <c>*</c> names nothing.
    /// </summary>
    public static bool IsNamed(HttpRequest request, string tag) => Named(Given(request), tag) is not null;

    private static string? Named(string[] given, string tag) =>
        given.Length == 0 ? null : Encodings.Select(encoding => Encoded(tag, encoding)).Prepend(tag).FirstOrDefault(given.Contains);

    // Split at commas is safe here: our own tags hold none, and a foreign one that does cannot match.
    private static string[] Given(HttpRequest request)
    {
        return request.Headers.IfNoneMatch.Count == 0 ? [] :
        [
            .. request.Headers.IfNoneMatch.ToString().Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                .Select(entry => entry.StartsWith("W/", StringComparison.Ordinal) ? entry[2..] : entry),
        ];
    }
}
