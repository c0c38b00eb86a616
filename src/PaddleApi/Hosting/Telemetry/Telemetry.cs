using System.ComponentModel.DataAnnotations;
using System.Diagnostics;
using Microsoft.Extensions.DependencyInjection.Extensions;
using OpenTelemetry.Metrics;
using OpenTelemetry.Trace;

namespace PaddleApi.Hosting.Telemetry;

/// <summary>Who may read the service's counts. Bound from the section <c>Telemetry</c> and checked at start; nobody as it stands.</summary>
internal sealed class TelemetryOptions
{
    /// <summary>Name of the configuration section.</summary>
    public const string Section = "Telemetry";

    /// <summary>Sends counts and traces by OTLP; where to, the variables <c>OTEL_EXPORTER_OTLP_…</c> say.</summary>
    public bool Otlp { get; init; }

    /// <summary>
    /// Port on which <c>/metrics</c> is answered for Prometheus, 0 for none. The service must listen on it too, and who calls it should not
    /// reach it: <c>--urls "http://*:8080;http://10.0.0.5:9464"</c>.
    /// </summary>
    [Range(0, 65_535)]
    public int PrometheusPort { get; init; }
}

/// <summary>Hands the counts to who may read them.</summary>
internal static class Telemetry
{
    /// <summary>Where Prometheus asks.</summary>
    public const string Address = "/metrics";

    // The platform's own: time of requests by route and status, connections, collector and threads. Routes are patterns there, not addresses.
    private static readonly string[] Platform = ["Microsoft.AspNetCore.Hosting", "Microsoft.AspNetCore.Server.Kestrel", "System.Runtime"];

    /// <summary>Adds the counts, and those who read them as far as configured.</summary>
    public static WebApplicationBuilder AddTelemetry(this WebApplicationBuilder builder)
    {
        builder.Services.TryAddSingleton<ServiceMeters>();
        builder.Services.AddOptions<TelemetryOptions>().BindConfiguration(
            TelemetryOptions.Section, binder => binder.ErrorOnUnknownConfiguration = true).ValidateDataAnnotations().ValidateOnStart();
        var options = builder.Configuration.GetSection(TelemetryOptions.Section).Get<TelemetryOptions>() ?? new();

        // What is not asked for is not even loaded: the service is to start fast.
        if (options.Otlp || options.PrometheusPort > 0) Export(builder, options);
        return builder;
    }

    private static void Export(WebApplicationBuilder builder, TelemetryOptions options)
    {
        var telemetry = builder.Services.AddOpenTelemetry().WithMetrics(metrics =>
        {
            metrics.AddMeter([ServiceMeters.Name, .. Platform]);
            if (options.Otlp) metrics.AddOtlpExporter();
            if (options.PrometheusPort > 0) metrics.AddPrometheusExporter();
        });
        if (options.Otlp)
            telemetry.WithTracing(traces => traces.AddSource(ServiceTraces.Name, ServiceTraces.Platform).AddProcessor(new ServiceTraces.Discreet()).AddOtlpExporter());
    }

    /// <summary>Counts answers held, and answers Prometheus on its own port, where there is one: elsewhere the address is not there.</summary>
    public static WebApplication UseTelemetry(this WebApplication app)
    {
        // Made now, so that the gates are seen before the first design.
        var meters = app.Services.GetRequiredService<ServiceMeters>();
        var port = app.Services.GetRequiredService<Microsoft.Extensions.Options.IOptions<TelemetryOptions>>().Value.PrometheusPort;
        if (port > 0)
            app.UseOpenTelemetryPrometheusScrapingEndpoint(context => context.Connection.LocalPort == port && context.Request.Path == Address);
        app.Use(async (context, next) =>
        {
            var request = Activity.Current;
            await next(context);
            if (request is { IsAllDataRequested: true }) ServiceTraces.Describe(request, context);
            if (context.Response.StatusCode == StatusCodes.Status304NotModified) meters.Held();
        });
        return app;
    }
}
