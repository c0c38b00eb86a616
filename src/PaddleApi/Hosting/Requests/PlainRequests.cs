using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.AspNetCore.Routing.Patterns;
using Microsoft.Net.Http.Headers;
using PaddleApi.Contracts.Problems;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Problems;
using PaddleApi.Validation;

namespace PaddleApi.Hosting.Requests;

/// <summary>
/// Takes a request only in its one plain form, before any work. Each answer has one address: another spelling of the path would be another
/// entry in every cache, and a query that is passed over would answer what was not asked. Both are refused, as a slip in a body is, and not
/// redirected: nothing is guessed, it holds for POST alike, and no address made of a caller's words is ever sent back to be followed.
/// </summary>
internal static class PlainRequests
{
    private static readonly string[] Charsets = ["utf-8", "utf8"];

    /// <summary>Marks a group whose requests are held to it, and documents the refusal.</summary>
    public static RouteGroupBuilder TakesPlainRequests(this RouteGroupBuilder group) =>
        group.WithMetadata(PlainRequestMark.Instance).Refuses(ProblemKinds.BadRequest);

    /// <summary>Places the check in the pipeline, behind the handling of problems.</summary>
    public static IApplicationBuilder UsePlainRequests(this IApplicationBuilder app) => app.Use((context, next) =>
        context.GetEndpoint() is RouteEndpoint endpoint && endpoint.Metadata.GetMetadata<PlainRequestMark>() is not null
        && Refusal(context, endpoint) is { } problem
            ? problem.ExecuteAsync(context)
            : next(context));

    private static ProblemResult? Refusal(HttpContext context, RouteEndpoint endpoint)
    {
        var request = context.Request;
        var (path, query) = Split(TargetOf(context));
        return OtherSpelling(path, request, endpoint.RoutePattern)
            ?? UnknownQuery(query, request, endpoint)
            ?? (endpoint.Metadata.GetMetadata<IAcceptsMetadata>() is null ? null : OtherEncoding(context));
    }

    private static ProblemResult? OtherSpelling(string path, HttpRequest request, RoutePattern pattern)
    {
        // Routing passes over letter case, a slash at the end and what is percent-encoded without need.
        var plain = Plain(pattern, request.RouteValues);
        if (path.Length == 0 || path == plain || path == request.PathBase.ToUriComponent() + plain) return null;
        return new(ProblemKinds.NotFound, $"Nothing lives at this spelling of the address. Write {FaultValue.Shorten(plain)}: letter case counts, "
            + "no slash stands at the end, and no letter is percent-encoded that need not be.");
    }

    private static string Plain(RoutePattern pattern, RouteValueDictionary values) => pattern.PathSegments.Count == 0 ? "/" : string.Concat(pattern.PathSegments.Select(segment =>
        new PathString($"/{string.Concat(segment.Parts.Select(part => part switch
        {
            RoutePatternLiteralPart literal => literal.Content,
            RoutePatternSeparatorPart separator => separator.Content,
            RoutePatternParameterPart parameter => values[parameter.Name] as string,
            _ => "",
        }))}").ToUriComponent()));

    private static ProblemResult? UnknownQuery(string? query, HttpRequest request, Endpoint endpoint)
    {
        if (query is null) return null;
        string[] known = [.. endpoint.Metadata.GetOrderedMetadata<QueryNote>().Select(note => note.Name)];
        string[] unknown = [.. request.Query.Keys.Where(name => !known.Contains(name, StringComparer.Ordinal))];
        if (unknown.Length > 0)
        {
            var knows = known.Length == 0 ? "this address takes none" : $"it knows {string.Join(", ", known)}";
            return new(ProblemKinds.BadRequest, $"The query knows no '{FaultValue.Shorten(unknown[0])}'; {knows}.", Errors(unknown, known));
        }

        return query.Split('&').Contains("")
            ? new(ProblemKinds.BadRequest, "The query has an empty part: leave out a '?' or '&' that nothing follows.")
            : null;
    }

    private static Dictionary<string, IReadOnlyList<Fault>> Errors(string[] unknown, string[] known) => unknown.Take(Problem.MostFaults)
        .DistinctBy(FaultValue.Shorten)
        .ToDictionary(
            name => $"?{FaultValue.Shorten(name)}",
            _ => (IReadOnlyList<Fault>)[new("No parameter of this name is known here; names are case-sensitive.", Allowed: known)]);

    private static ProblemResult? OtherEncoding(HttpContext context)
    {
        var coding = context.Request.Headers.ContentEncoding.ToString();
        if (coding.Length > 0 && !coding.Equals("identity", StringComparison.OrdinalIgnoreCase))
        {
            // RFC 9110, 15.5.16: what would have been accepted. Bodies are small, and what is not unpacked cannot swell.
            context.Response.Headers.AcceptEncoding = "identity";
            return new(ProblemKinds.UnsupportedMediaType, "Bodies are read as they are: leave out the header Content-Encoding and send plain JSON.");
        }

        if (!MediaTypeHeaderValue.TryParse(context.Request.ContentType, out var type) || type.Charset.Length == 0) return null;
        if (!Charsets.Contains(HeaderUtilities.RemoveQuotes(type.Charset).ToString(), StringComparer.OrdinalIgnoreCase))
            return new(ProblemKinds.UnsupportedMediaType, "JSON is read in UTF-8 (RFC 8259, 8.1): leave out the charset or say utf-8.");

        // The platform knows it neither in quotes nor without its hyphen.
        type.Charset = Charsets[0];
        context.Request.ContentType = type.ToString();
        return null;
    }

    // A server that does not keep the target as it came has at least what it made of it.
    private static string TargetOf(HttpContext context) =>
        context.Features.GetRequiredFeature<IHttpRequestFeature>().RawTarget is { Length: > 0 } raw
            ? raw
            : context.Request.PathBase.ToUriComponent() + context.Request.Path.ToUriComponent() + context.Request.QueryString.ToUriComponent();

    /// <summary>The path and the query of a request target as they came (RFC 9112, 3.2), the query without its question mark.</summary>
    private static (string Path, string? Query) Split(string target)
    {
        if (!target.StartsWith('/'))
        {
            // Only a proxy is sent a whole address, but a server must understand it.
            var authority = target.IndexOf("://", StringComparison.Ordinal);
            var slash = authority < 0 ? -1 : target.IndexOf('/', authority + 3);
            target = slash < 0 ? "" : target[slash..];
        }

        var mark = target.IndexOf('?', StringComparison.Ordinal);
        return mark < 0 ? (target, null) : (target[..mark], target[(mark + 1)..]);
    }
}

/// <summary>Mark on endpoints that take a request in its plain form only.</summary>
internal sealed class PlainRequestMark
{
    /// <summary>The mark.</summary>
    public static PlainRequestMark Instance { get; } = new();
}
