using System.ComponentModel.DataAnnotations;
using System.Net;
using System.Text.RegularExpressions;

namespace PaddleApi.Hosting.Callers;

/// <summary>
/// Who may ask for what, and how often. Bound from the section <c>Callers</c> and checked at start. As it stands anybody may ask for
/// anything, for the service keeps nothing.
/// </summary>
internal sealed partial class CallerOptions : IValidatableObject
{
    /// <summary>Name of the configuration section.</summary>
    public const string Section = "Callers";

    /// <summary>Stands in <see cref="OpenScopes"/> for no scope.</summary>
    public const string None = "none";

    /// <summary>Requests of one caller in a minute by the clock; 0 for no limit. A caller is a key, or else an address of the network.</summary>
    [Range(0, 1_000_000)]
    public int RequestsPerMinute { get; init; }

    /// <summary>
    /// Proxies whose word on who calls is taken, such as <c>10.0.0.0/8</c> or <c>127.0.0.1</c>; from anybody else the headers
    /// <c>X-Forwarded-For</c> and <c>X-Forwarded-Proto</c> are passed over.
    /// </summary>
    public IReadOnlyList<string> TrustedProxies { get; init; } = [];

    /// <summary>How many proxies stand one behind the other.</summary>
    [Range(1, 16)]
    public int ProxyHops { get; init; } = 1;

    /// <summary>The keys that are known.</summary>
    public IReadOnlyList<KeyOptions> Keys { get; init; } = [];

    /// <summary>Scopes that need no key; all when left out, and <c>none</c> for no scope.</summary>
    public IReadOnlyList<string>? OpenScopes { get; init; }

    /// <inheritdoc/>
    public IEnumerable<ValidationResult> Validate(ValidationContext validationContext)
    {
        foreach (var proxy in TrustedProxies.Where(proxy => !IPNetwork.TryParse(proxy, out _) && !IPAddress.TryParse(proxy, out _)))
            yield return new($"{Section}:{nameof(TrustedProxies)}: '{proxy}' is neither an address nor a network such as 10.0.0.0/8.");
        foreach (var scope in (OpenScopes ?? []).Where(scope => scope != None && !Scopes.All.Contains(scope)))
            yield return new($"{Section}:{nameof(OpenScopes)}: '{scope}' is none of {string.Join(", ", Scopes.All)} and {None}.");
        foreach (var key in Keys)
        {
            if (!Name().IsMatch(key.Id)) yield return new($"{Section}:{nameof(Keys)}: an id has 1 to 64 of the letters A-Z, a-z, 0-9, '.', '_' and '-'.");
            if (!Digest().IsMatch(key.Sha256)) yield return new($"{Section}:{nameof(Keys)}: {nameof(key.Sha256)} of '{key.Id}' is not 64 hexadecimal digits.");
            if (key.Scopes.Count == 0 || key.Scopes.Any(scope => !Scopes.All.Contains(scope)))
                yield return new($"{Section}:{nameof(Keys)}: the scopes of '{key.Id}' are some of {string.Join(", ", Scopes.All)}.");
        }

        if (Keys.DistinctBy(key => key.Id).Count() < Keys.Count) yield return new($"{Section}:{nameof(Keys)}: two keys have the same id.");
    }

    [GeneratedRegex(@"\A[A-Za-z0-9._-]{1,64}\z", RegexOptions.CultureInvariant)]
    private static partial Regex Name();

    [GeneratedRegex(@"\A[0-9A-Fa-f]{64}\z", RegexOptions.CultureInvariant)]
    private static partial Regex Digest();
}

/// <summary>A key that is known by its digest: who reads the configuration cannot call with it.</summary>
internal sealed class KeyOptions
{
    /// <summary>The name of its owner, for the configuration alone.</summary>
    public string Id { get; init; } = "";

    /// <summary>SHA-256 of the key, hexadecimal. A key is drawn by chance and long (<c>openssl rand -hex 32</c>), so that a plain digest will do.</summary>
    public string Sha256 { get; init; } = "";

    /// <summary>What it may be used for.</summary>
    public IReadOnlyList<string> Scopes { get; init; } = [];
}

/// <summary>What a key may be used for. Reading needs none: drawings and designs go into pages and caches by their addresses.</summary>
internal static class Scopes
{
    /// <summary>Designs solved.</summary>
    public const string Design = "design";

    /// <summary>Fittings and size runs.</summary>
    public const string Fit = "fit";

    /// <summary>Board tests and corrections of the balance.</summary>
    public const string Workshop = "workshop";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [Design, Fit, Workshop];
}
