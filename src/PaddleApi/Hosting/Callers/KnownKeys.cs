using System.Security.Cryptography;
using System.Text;
using Microsoft.Extensions.Options;

namespace PaddleApi.Hosting.Callers;

/// <summary>The keys that are known.</summary>
internal sealed class KnownKeys(IOptions<CallerOptions> options)
{
    // Longer than any key: what is longer is not looked at.
    private const int MostCharacters = 512;
    private const string Scheme = "Bearer ";

    private readonly (byte[] Digest, KeyOptions Key)[] known = [.. options.Value.Keys.Select(key => (Convert.FromHexString(key.Sha256), key))];

    /// <summary>The key that a request brings (RFC 6750, 2.1).</summary>
    /// <returns>Whether it brings one, and which if it is known.</returns>
    public (bool IsGiven, KeyOptions? Key) Of(HttpRequest request)
    {
        if (known.Length == 0 || request.Headers.Authorization.Count == 0) return (false, null);
        var given = request.Headers.Authorization.ToString();
        if (given.Length > MostCharacters || !given.StartsWith(Scheme, StringComparison.OrdinalIgnoreCase)) return (true, null);
        var digest = SHA256.HashData(Encoding.UTF8.GetBytes(given[Scheme.Length..].Trim()));

        // Every key is compared, and each in the same time whatever it holds: how long an answer takes tells nothing of a key.
        KeyOptions? found = null;
        foreach (var (held, key) in known)
        {
            if (CryptographicOperations.FixedTimeEquals(held, digest)) found = key;
        }

        return (true, found);
    }
}
