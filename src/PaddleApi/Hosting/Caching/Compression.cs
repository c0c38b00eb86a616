using System.IO.Compression;
using Microsoft.AspNetCore.ResponseCompression;

namespace PaddleApi.Hosting.Caching;

/// <summary>Shrinks text on its way out for callers who ask for it.</summary>
internal static class Compression
{
    // Text, and the mesh, whose corners come again in six facets each; PDF files are packed already.
    private static readonly string[] MediaTypes =
        ["application/json", "application/problem+json", "image/svg+xml", "text/csv", "text/plain", "image/vnd.dxf", "model/stl", "text/html", "text/javascript", "text/css"];

    /// <summary>Whether answers of a media type are shrunk for callers who ask for it.</summary>
    public static bool Shrinks(string mediaType) => MediaTypes.Contains(mediaType);

    /// <summary>Adds compression at its fastest level: a design is to come back in milliseconds, and most of the gain is in the first level.</summary>
    public static IServiceCollection AddCompression(this IServiceCollection services) => services
        .Configure<BrotliCompressionProviderOptions>(brotli => brotli.Level = CompressionLevel.Fastest)
        .Configure<GzipCompressionProviderOptions>(gzip => gzip.Level = CompressionLevel.Fastest)
        .AddResponseCompression(compression =>
        {
            // Compression over TLS can give away a secret that is mixed with a caller's text (BREACH); no answer here holds a secret.
            compression.EnableForHttps = true;
            compression.MimeTypes = MediaTypes;
        });

    /// <summary>Places compression in the pipeline.</summary>
    public static IApplicationBuilder UseCompression(this IApplicationBuilder app) => app
        .Use((context, next) =>
        {
            context.Response.OnStarting(() =>
            {
                NameEncodedBytes(context.Response);
                return Task.CompletedTask;
            });
            return next(context);
        })
        .UseResponseCompression();

    // A strong tag names bytes, so compressed bytes need a tag of their own.
    private static void NameEncodedBytes(HttpResponse response)
    {
        var tag = response.Headers.ETag.ToString();
        var encoding = response.Headers.ContentEncoding.ToString();
        if (tag.Length > 0 && encoding.Length > 0 && !tag.StartsWith("W/", StringComparison.Ordinal))
        {
            response.Headers.ETag = EntityTags.Encoded(tag, encoding);
        }
    }
}
