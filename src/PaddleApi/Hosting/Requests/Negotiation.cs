using Microsoft.Net.Http.Headers;
using PaddleApi.Hosting.Caching;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Problems;

namespace PaddleApi.Hosting.Requests;

/// <summary>Refuses callers who want a media type that an address cannot answer with (RFC 9110, 12.5.1).</summary>
internal static class Negotiation
{
    /// <summary>Says what an endpoint, or a group, can answer with; a caller who accepts none of it gets 406 before any work.</summary>
    public static TBuilder Offers<TBuilder>(this TBuilder builder, params string[] offered)
        where TBuilder : IEndpointConventionBuilder =>
        builder.AddEndpointFilter(async (context, next) => BestOf(context.HttpContext.Request, offered) is null
            ? new ProblemResult(ProblemKinds.NotAcceptable, $"This address answers with {string.Join(" or ", offered)}.")
            : await next(context)).Refuses(ProblemKinds.NotAcceptable);

    /// <summary>The media type to answer in at an address that has several: a cache on the way is told to keep them apart.</summary>
    public static string? Choose(HttpContext context, IReadOnlyList<string> offered)
    {
        context.Response.Headers.Vary = FixedContent.Negotiated;
        return BestOf(context.Request, offered);
    }

    /// <summary>The offered media type that the caller likes best.</summary>
    /// <param name="offered">The media types on offer, the service's favourite first.</param>
    /// <returns>A media type, or null when none is acceptable. A header that cannot be read counts as none given.</returns>
    public static string? BestOf(HttpRequest request, IReadOnlyList<string> offered)
    {
        if (!MediaTypeHeaderValue.TryParseList(request.Headers.Accept, out var accepted) || accepted.Count == 0)
        {
            return offered[0];
        }

        // OrderByDescending keeps the order of equals, so the service's favourite wins a draw.
        var best = offered.Select(type => (Type: type, Quality: Quality(accepted, new MediaTypeHeaderValue(type))))
            .OrderByDescending(choice => choice.Quality).First();
        return best.Quality > 0 ? best.Type : null;
    }

    // The most exact range that covers a type decides: "text/*;q=0, text/csv" takes text/csv.
    private static double Quality(IList<MediaTypeHeaderValue> accepted, MediaTypeHeaderValue type) => accepted
        .Where(range => Covers(range, type))
        .OrderByDescending(range => range.MatchesAllTypes ? 0 : range.MatchesAllSubTypes ? 1 : 2)
        .Select(range => range.Quality ?? 1)
        .FirstOrDefault();

    private static bool Covers(MediaTypeHeaderValue range, MediaTypeHeaderValue type) =>
        range.MatchesAllTypes
        || (range.Type.Equals(type.Type, StringComparison.OrdinalIgnoreCase)
            && (range.MatchesAllSubTypes || range.SubType.Equals(type.SubType, StringComparison.OrdinalIgnoreCase)));
}
