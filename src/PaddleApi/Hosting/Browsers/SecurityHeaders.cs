namespace PaddleApi.Hosting.Browsers;

/// <summary>What every answer tells browsers, whichever address it comes from and whether it is good or a problem.</summary>
internal static class SecurityHeaders
{
    /// <summary>
    /// The policy (CSP Level 3) of a drawing that is opened as a page: it may show itself in its own style, and has an origin of its own; no
    /// script, no font, picture or address from elsewhere.
    /// </summary>
    public const string DrawingPolicy = $"default-src 'none'; style-src 'unsafe-inline'; sandbox; {NoFrames}";

    /// <summary>Nobody may show an answer in a frame: pages embed drawings by <c>img</c>, which frames have no part in.</summary>
    public const string NoFrames = "frame-ancestors 'none'";

    private const string DataPolicy = $"default-src 'none'; {NoFrames}";

    // The page to try the service on loads its own scripts and calls the service; it inlines styles and small pictures.
    private const string DocsPolicy =
        $"default-src 'self'; img-src 'self' data:; style-src 'self' 'unsafe-inline'; base-uri 'none'; form-action 'none'; {NoFrames}";

    private static readonly PathString Docs = "/docs";

    /// <summary>Places the headers in the pipeline, before anything that may answer.</summary>
    public static IApplicationBuilder UseSecurityHeaders(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        // Set when the answer starts: its media type is known by then, and a handler of errors clears what was set before.
        context.Response.OnStarting(() =>
        {
            Add(context);
            return Task.CompletedTask;
        });
        return next(context);
    });

    /// <summary>The policy of a media type; pages of their own set theirs themselves.</summary>
    /// <param name="mediaType">Media type without parameters; null where there is no body.</param>
    public static string PolicyOf(string? mediaType) => mediaType switch
    {
        MediaTypes.Svg => DrawingPolicy,
        MediaTypes.Json or Problems.ProblemResult.MediaType => DataPolicy,

        // These are no pages, and a browser's own reader of PDF does not start where nothing may be loaded.
        _ => NoFrames,
    };

    private static void Add(HttpContext context)
    {
        var response = context.Response;
        var headers = response.Headers;
        headers.XContentTypeOptions = "nosniff";

        // A design's address is the whole design; where its owner goes next is told nothing of it.
        headers["Referrer-Policy"] = "no-referrer";

        // Pages that isolate themselves (COEP) may embed a drawing only where it says so.
        headers["Cross-Origin-Resource-Policy"] = "cross-origin";

        // A cache takes over the headers of a 304 into what it holds, and a 304 has no media type to choose a policy by.
        if (response.StatusCode == StatusCodes.Status304NotModified || headers.ContentSecurityPolicy.Count > 0) return;
        headers.ContentSecurityPolicy = context.Request.Path.StartsWithSegments(Docs, StringComparison.Ordinal)
            ? DocsPolicy
            : PolicyOf(response.ContentType?.Split(';')[0].TrimEnd());
    }
}
