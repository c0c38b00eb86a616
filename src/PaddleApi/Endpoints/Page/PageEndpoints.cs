using System.Security.Cryptography;
using System.Text;
using Microsoft.Net.Http.Headers;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Browsers;
using PaddleApi.Hosting.Caching;

namespace PaddleApi.Endpoints.Page;

/// <summary>
/// The page at <c>/</c> for people: it asks a few questions and calls this service as any other page may. Its addresses are relative, so that
/// it works behind a prefix as well.
/// </summary>
internal static class PageEndpoints
{
    private const string Html = "text/html";

    // It loads its own script and style and calls its own origin; nothing of it is inline, and no text becomes markup (Trusted Types). Drawings
    // are fetched, so that overtaken ones can be given up, and shown from memory.
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; connect-src 'self'; base-uri 'none'; form-action 'none'; "
        + $"require-trusted-types-for 'script'; trusted-types 'none'; {SecurityHeaders.NoFrames}";

    private static readonly (string Address, string Resource, string MediaType)[] Files =
    [
        ("/", "page/index.html", Html),
        ("/page/page.css", "page/page.css", "text/css"),
        ("/page/icon.svg", "page/icon.svg", MediaTypes.Svg),
        ("/page/api.js", "page/api.js", "text/javascript"),
        ("/page/bench.js", "page/bench.js", "text/javascript"),
        ("/page/figures.js", "page/figures.js", "text/javascript"),
        ("/page/measure.js", "page/measure.js", "text/javascript"),
        ("/page/page.js", "page/page.js", "text/javascript"),
        ("/page/parts.js", "page/parts.js", "text/javascript"),
        ("/page/rack.js", "page/rack.js", "text/javascript"),
        ("/page/strips.js", "page/strips.js", "text/javascript"),
        ("/page/upright.js", "page/upright.js", "text/javascript"),
    ];

    /// <summary>Maps the page and its parts.</summary>
    public static void MapPage(this IEndpointRouteBuilder routes)
    {
        foreach (var (address, resource, mediaType) in Files)
        {
            var bytes = Read(resource);
            var tag = EntityTags.Of(Convert.ToHexString(SHA256.HashData(bytes)));
            routes.MapMethods(address, Routes.Reading, (HttpContext context) => Answer(context, bytes, tag, mediaType)).ExcludeFromDescription();
        }
    }

    private static IResult Answer(HttpContext context, byte[] bytes, string tag, string mediaType)
    {
        var isHeld = FixedContent.Stamp(context, tag, HeaderNames.AcceptEncoding);

        // The parts of a page belong together: after a release none of them may be an hour older than the others. Asking costs a 304.
        context.Response.Headers.CacheControl = "public, no-cache";
        if (isHeld) return TypedResults.StatusCode(StatusCodes.Status304NotModified);
        if (mediaType == Html) context.Response.Headers.ContentSecurityPolicy = Policy;
        return TypedResults.Bytes(bytes, $"{mediaType}; charset={Encoding.UTF8.WebName}");
    }

    private static byte[] Read(string resource)
    {
        using var file = typeof(PageEndpoints).Assembly.GetManifestResourceStream(resource)!;
        using var bytes = new MemoryStream();
        file.CopyTo(bytes);
        return bytes.ToArray();
    }
}
