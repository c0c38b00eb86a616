using System.Globalization;

namespace PaddleApi.Hosting.Caching;

/// <summary>Answers that never change for one build of the service, so that any cache may keep them.</summary>
internal static class FixedContent
{
    /// <summary>
    /// How long a cache may answer without asking, seconds. An hour: after a release a browser shows the old figures no longer than that.
    /// </summary>
    public const int MaxAgeSeconds = 3600;

    /// <summary>The header Vary of an answer that is refused, or given in another form, by what the caller accepts.</summary>
    public const string Negotiated = "Accept, Accept-Encoding";

    /// <summary>Gives the good answers of a read-only endpoint a strong tag and a life in caches, and answers 304 to who holds them.</summary>
    public static TBuilder HasFixedContent<TBuilder>(this TBuilder builder)
        where TBuilder : IEndpointConventionBuilder
    {
        builder.AddEndpointFilter(async (context, next) =>
        {
            // The handler runs first: only it knows whether there is anything at this address.
            var result = await next(context);
            var answer = result is INestedHttpResult choice ? choice.Result : result;
            return answer is IStatusCodeHttpResult { StatusCode: StatusCodes.Status200OK } ? Stamp(context.HttpContext, result) : result;
        });
        builder.WithMetadata(FixedContentMark.Instance).WithMetadata(new ProducesResponseTypeMetadata(StatusCodes.Status304NotModified, typeof(void)));
        return builder;
    }

    /// <summary>Marks the answer as fixed content of the request's own address, which takes no query.</summary>
    /// <returns>The answer, or 304 when the caller holds it already.</returns>
    public static object? Stamp(HttpContext context, object? result)
    {
        return Stamp(context, EntityTags.Of(context.Request.Path.Value!)) ? TypedResults.StatusCode(StatusCodes.Status304NotModified) : result;
    }

    /// <summary>Sets the headers of fixed content with a tag made by <see cref="EntityTags.Of"/>: for handlers that want to know before any work.</summary>
    /// <param name="vary">The request's headers that choose among answers; null for none.</param>
    /// <returns>True when the caller holds the content already and 304 is the answer.</returns>
    public static bool Stamp(HttpContext context, string tag, string? vary = Negotiated)
    {
        var held = EntityTags.Held(context.Request, tag);
        var headers = context.Response.Headers;
        headers.ETag = held ?? tag;
        headers.CacheControl = string.Create(CultureInfo.InvariantCulture, $"public, max-age={MaxAgeSeconds}");
        headers.Vary = vary;
        return held is not null;
    }
}

/// <summary>Mark on endpoints whose answers carry a tag; the description of the service lists the headers.</summary>
internal sealed class FixedContentMark
{
    /// <summary>The mark.</summary>
    public static FixedContentMark Instance { get; } = new();
}
