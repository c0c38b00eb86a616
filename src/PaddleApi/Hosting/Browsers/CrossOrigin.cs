using Microsoft.AspNetCore.Cors.Infrastructure;
using Microsoft.Extensions.Options;
using Microsoft.Net.Http.Headers;

namespace PaddleApi.Hosting.Browsers;

/// <summary>Whose pages may call the service. Bound from the section <c>CrossOrigin</c> and checked at start.</summary>
internal sealed class CrossOriginOptions
{
    /// <summary>Name of the configuration section.</summary>
    public const string Section = "CrossOrigin";

    /// <summary>The list when nothing is configured.</summary>
    public const string Anybody = "*";

    /// <summary>
    /// Origins whose pages may call, such as <c>https://paddles.example</c>; empty for anybody's. The service keeps nothing, knows nobody
    /// and takes no cookie, so a page gains nothing by calling it that it could not have by calling it from its own server.
    /// </summary>
    public IReadOnlyList<string> AllowedOrigins { get; init; } = [];
}

/// <summary>Lets pages of other origins call the service (CORS: the Fetch standard, 3.3).</summary>
internal static class CrossOrigin
{
    // As long as a browser keeps a preflight: Chromium caps it at two hours.
    private static readonly TimeSpan PreflightAge = TimeSpan.FromHours(2);

    // Without being named here a header is hidden from a page of another origin.
    private static readonly string[] Exposed =
    [
        HeaderNames.ETag, HeaderNames.Location, RequestIds.Header, "RateLimit", "RateLimit-Policy", HeaderNames.RetryAfter, HeaderNames.Allow,
        HeaderNames.AcceptRanges, HeaderNames.ContentRange, HeaderNames.ContentDisposition,
    ];

    /// <summary>Adds the rules for pages of other origins.</summary>
    public static IServiceCollection AddCrossOrigin(this IServiceCollection services)
    {
        services.AddOptions<CrossOriginOptions>()
            .BindConfiguration(CrossOriginOptions.Section, binder => binder.ErrorOnUnknownConfiguration = true)
            .Validate(
                options => options.AllowedOrigins.All(IsOrigin),
                $"{CrossOriginOptions.Section}:{nameof(CrossOriginOptions.AllowedOrigins)} holds origins: scheme, host in lower case and port, such as https://paddles.example.")
            .ValidateOnStart();
        services.AddOptions<CorsOptions>().Configure<IOptions<CrossOriginOptions>>((cors, options) => cors.AddDefaultPolicy(policy =>
        {
            policy.WithMethods(HttpMethods.Get, HttpMethods.Head, HttpMethods.Post).AllowAnyHeader()
                .WithExposedHeaders(Exposed).SetPreflightMaxAge(PreflightAge);
            if (options.Value.AllowedOrigins is { Count: > 0 } allowed) policy.WithOrigins([.. allowed]);
            else policy.AllowAnyOrigin();
        }));
        return services.AddCors();
    }

    /// <summary>Places the rules in the pipeline, round the handling of problems: a page of another origin is to read those too.</summary>
    public static IApplicationBuilder UseCrossOrigin(this IApplicationBuilder app)
    {
        var isListed = app.ApplicationServices.GetRequiredService<IOptions<CrossOriginOptions>>().Value.AllowedOrigins.Count > 0;

        // With a list the answer differs by origin, also the one to a request that names none: a cache must not give it to a page.
        return (isListed ? app.Use(VaryByOrigin) : app).UseCors();
    }

    private static Task VaryByOrigin(HttpContext context, RequestDelegate next)
    {
        context.Response.OnStarting(() =>
        {
            var vary = context.Response.Headers.GetCommaSeparatedValues(HeaderNames.Vary);
            if (!vary.Contains(HeaderNames.Origin, StringComparer.OrdinalIgnoreCase)) context.Response.Headers.Append(HeaderNames.Vary, HeaderNames.Origin);
            return Task.CompletedTask;
        });
        return next(context);
    }

    private static bool IsOrigin(string text) =>
        Uri.TryCreate(text, UriKind.Absolute, out var origin) && (origin.Scheme == Uri.UriSchemeHttp || origin.Scheme == Uri.UriSchemeHttps)
        && origin.GetLeftPart(UriPartial.Authority) == text;
}
