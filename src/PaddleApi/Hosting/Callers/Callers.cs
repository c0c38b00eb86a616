using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.HttpOverrides;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Options;
using Microsoft.Net.Http.Headers;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Problems;

namespace PaddleApi.Hosting.Callers;

/// <summary>Looks at who calls: by which proxy, with which key and how often.</summary>
internal static class Callers
{
    private const string Policy = "default";
    private static readonly PathString Health = "/health";

    /// <summary>Adds the rules for callers.</summary>
    public static IServiceCollection AddCallers(this IServiceCollection services)
    {
        services.TryAddSingleton(TimeProvider.System);
        services.AddOptions<CallerOptions>().BindConfiguration(
            CallerOptions.Section, binder => binder.ErrorOnUnknownConfiguration = true).ValidateDataAnnotations().ValidateOnStart();
        services.AddOptions<ForwardedHeadersOptions>().Configure<IOptions<CallerOptions>>((forwarded, options) =>
        {
            forwarded.ForwardedHeaders = options.Value.TrustedProxies.Count == 0
                ? ForwardedHeaders.None
                : ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto;
            forwarded.ForwardLimit = options.Value.ProxyHops;
            forwarded.KnownIPNetworks.Clear();
            forwarded.KnownProxies.Clear();
            foreach (var proxy in options.Value.TrustedProxies)
            {
                if (IPAddress.TryParse(proxy, out var address)) forwarded.KnownProxies.Add(address);
                else forwarded.KnownIPNetworks.Add(System.Net.IPNetwork.Parse(proxy));
            }
        });
        return services.AddSingleton<KnownKeys>();
    }

    /// <summary>Documents that the addresses of a group are counted.</summary>
    public static RouteGroupBuilder CountsCallers(this RouteGroupBuilder group) => group.Refuses(ProblemKinds.TooManyRequests);

    /// <summary>Makes an endpoint need a scope, where the host has not opened that to all.</summary>
    public static RouteHandlerBuilder NeedsScope(this RouteHandlerBuilder endpoint, string scope) =>
        endpoint.WithMetadata(new ScopeMark(scope)).Refuses(ProblemKinds.NoKey).Refuses(ProblemKinds.KeyNotEnough);

    /// <summary>Places the look at callers in the pipeline, before any work but within what pages of other origins may read.</summary>
    public static IApplicationBuilder UseCallers(this IApplicationBuilder app)
    {
        var services = app.ApplicationServices;
        var options = services.GetRequiredService<IOptions<CallerOptions>>().Value;
        var keys = services.GetRequiredService<KnownKeys>();
        string[] open = [.. options.OpenScopes ?? Scopes.All];
        var rate = options.RequestsPerMinute > 0 ? new RateWindow(options.RequestsPerMinute, services.GetRequiredService<TimeProvider>()) : null;
        return app.Use((context, next) =>
        {
            // Whoever watches over the service asks often and from one place.
            if (context.Request.Path.StartsWithSegments(Health, StringComparison.Ordinal)) return next(context);
            var (isGiven, key) = keys.Of(context.Request);
            var refusal = (rate is null ? null : Counted(context, rate.Count(NameOf(context, key)), options.RequestsPerMinute))
                ?? (isGiven && key is null ? Unknown(context) : Unfit(context, key, open));
            return refusal is null ? next(context) : refusal.ExecuteAsync(context);
        });
    }

    private static ProblemResult? Counted(HttpContext context, RateState state, int most)
    {
        // Set when the answer starts, since a handler of errors clears what was set before. The fields are those of the IETF's draft on
        // RateLimit header fields for HTTP (from memory).
        context.Response.OnStarting(() =>
        {
            context.Response.Headers["RateLimit-Policy"] = string.Create(null, $"\"{Policy}\";q={most};w={RateWindow.Seconds}");
            context.Response.Headers["RateLimit"] = string.Create(null, $"\"{Policy}\";r={state.Remaining};t={state.ResetSeconds}");
            return Task.CompletedTask;
        });
        return state.IsAllowed ? null : new(
            ProblemKinds.TooManyRequests, $"This caller may send {most} requests a minute.", RetryAfterSeconds: state.ResetSeconds);
    }

    private static ProblemResult Unknown(HttpContext context)
    {
        context.Response.Headers[HeaderNames.WWWAuthenticate] = "Bearer realm=\"PaddleApi\", error=\"invalid_token\"";
        return new(ProblemKinds.NoKey, "The key in the header Authorization is not known here.");
    }

    private static ProblemResult? Unfit(HttpContext context, KeyOptions? key, string[] open)
    {
        if (context.GetEndpoint()?.Metadata.GetMetadata<ScopeMark>() is not { Scope: var scope } || open.Contains(scope)) return null;
        if (key?.Scopes.Contains(scope) == true) return null;
        context.Response.Headers[HeaderNames.WWWAuthenticate] = key is null
            ? $"Bearer realm=\"PaddleApi\", scope=\"{scope}\""
            : $"Bearer realm=\"PaddleApi\", error=\"insufficient_scope\", scope=\"{scope}\"";
        return key is null
            ? new(ProblemKinds.NoKey, "This address needs a key in the header Authorization.")
            : new(ProblemKinds.KeyNotEnough, $"The key is not for '{scope}'.");
    }

    // In the new protocol a household or a host has a whole network of 64 bits to call from.
    private static string NameOf(HttpContext context, KeyOptions? key)
    {
        if (key is not null) return $"key {key.Id}";
        if (context.Connection.RemoteIpAddress is not { } address) return "nobody";
        if (address.IsIPv4MappedToIPv6) address = address.MapToIPv4();
        return address.AddressFamily == AddressFamily.InterNetworkV6 ? Convert.ToHexString(address.GetAddressBytes().AsSpan(0, 8)) : address.ToString();
    }
}

/// <summary>Mark on endpoints that need a scope.</summary>
internal sealed record ScopeMark(string Scope);
