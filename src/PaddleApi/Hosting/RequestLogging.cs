using Microsoft.AspNetCore.Diagnostics;
using Serilog;
using Serilog.Core;
using Serilog.Events;
using Serilog.Formatting.Compact;
using Serilog.Settings.Configuration;

namespace PaddleApi.Hosting;

/// <summary>
/// One structured line for each request, and never a body: a design belongs to who asked for it. A design code is a whole design and a query
/// may hold measures, so the address is logged by its pattern, and one that there is not, not at all.
/// </summary>
internal static class RequestLogging
{
    private const string NoAddress = "(none)";
    private const string Address = "RequestPath";
    // Named, or the start would look through every assembly for what could write a line.
    private static readonly ConfigurationReaderOptions Sinks = new(typeof(ConsoleLoggerConfigurationExtensions).Assembly);

    private const string Template = $"{{RequestMethod}} {{{Address}}} answered {{StatusCode}} in {{Elapsed:0.0}} ms";

    /// <summary>
    /// Adds compact JSON logs on the standard output; levels come from the section <c>Serilog</c> of the configuration. Below Warning the
    /// platform logs whole addresses: that is for looking for a fault on one's own machine.
    /// </summary>
    public static WebApplicationBuilder AddRequestLogging(this WebApplicationBuilder builder)
    {
        builder.Services.AddSerilog((services, logger) => logger
            .MinimumLevel.Information()
            .MinimumLevel.Override("Microsoft.AspNetCore", LogEventLevel.Warning)
            .ReadFrom.Configuration(builder.Configuration, Sinks)
            .ReadFrom.Services(services)
            .Enrich.With<NoAddresses>()
            .Filter.ByExcluding(line => Listening.IsTaken(line.Exception)) // said in one line by who starts it
            .WriteTo.Console(new DiscreetFormatter(new CompactJsonFormatter())));
        return builder;
    }

    /// <summary>Places the log line in the pipeline, round everything whose time it counts.</summary>
    public static IApplicationBuilder UseRequestLogging(this IApplicationBuilder app) => app.UseSerilogRequestLogging(log =>
    {
        log.MessageTemplate = Template;
        log.GetLevel = Level;
        log.GetMessageTemplateProperties = (context, _, elapsed, status) =>
        [
            new LogEventProperty("RequestMethod", new ScalarValue(context.Request.Method)),
            new LogEventProperty(Address, new ScalarValue(PatternOf(context))),
            new LogEventProperty("StatusCode", new ScalarValue(HungUp.Is(context) ? HungUp.Status : status)),
            new LogEventProperty("Elapsed", new ScalarValue(elapsed)),
            new LogEventProperty("RequestId", new ScalarValue(context.TraceIdentifier)),
        ];
    });

    /// <summary>The pattern of a request's address, which holds nothing of the caller's.</summary>
    // A handler of errors takes the endpoint from the request and keeps it beside the error.
    internal static string PatternOf(HttpContext context) =>
        (context.GetEndpoint() ?? context.Features.Get<IExceptionHandlerFeature>()?.Endpoint) is RouteEndpoint endpoint
            ? "/" + endpoint.RoutePattern.RawText!.Trim('/')
            : NoAddress;

    // Health is asked every few seconds; its lines would bury the others. A caller who hangs up is no fault of the service.
    private static LogEventLevel Level(HttpContext context, double elapsedMs, Exception? fault) =>
        (fault is not null && !IsHangUp(context, fault)) || context.Response.StatusCode == StatusCodes.Status500InternalServerError ? LogEventLevel.Error
        : context.Request.Path.StartsWithSegments("/health", StringComparison.Ordinal) ? LogEventLevel.Debug
        : LogEventLevel.Information;

    // The platform hangs the whole address on whatever is logged while a request is served.
    private sealed class NoAddresses : ILogEventEnricher
    {
        public void Enrich(LogEvent logEvent, ILogEventPropertyFactory propertyFactory)
        {
            if (logEvent.MessageTemplate.Text != Template) logEvent.RemovePropertyIfPresent(Address);
        }
    }

    private static bool IsHangUp(HttpContext context, Exception fault) =>
        fault is OperationCanceledException or IOException && context.RequestAborted.IsCancellationRequested;
}
