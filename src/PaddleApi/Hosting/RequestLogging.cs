using Serilog;
using Serilog.Events;
using Serilog.Formatting.Compact;

namespace PaddleApi.Hosting;

/// <summary>One structured line for each request, and never a body: a design belongs to who asked for it.</summary>
public static class RequestLogging
{
    // Enough to know the address by. A design code is a whole design, and that is a body by another name.
    private const int LongestPath = 120;

    /// <summary>Adds compact JSON logs on the standard output; levels come from the section <c>Serilog</c> of the configuration.</summary>
    /// <param name="builder">The application builder.</param>
    /// <returns>The same builder.</returns>
    public static WebApplicationBuilder AddRequestLogging(this WebApplicationBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.Services.AddSerilog((services, logger) => logger
            .MinimumLevel.Information()
            .MinimumLevel.Override("Microsoft.AspNetCore", LogEventLevel.Warning)
            .ReadFrom.Configuration(builder.Configuration)
            .ReadFrom.Services(services)
            .WriteTo.Console(new CompactJsonFormatter()));
        return builder;
    }

    /// <summary>Places the log line in the pipeline, round everything whose time it counts.</summary>
    /// <param name="app">The application.</param>
    /// <returns>The same application.</returns>
    public static IApplicationBuilder UseRequestLogging(this IApplicationBuilder app) => app.UseSerilogRequestLogging(log =>
    {
        log.MessageTemplate = "{RequestMethod} {RequestPath} answered {StatusCode} in {Elapsed:0.0} ms";
        log.GetLevel = Level;
        log.GetMessageTemplateProperties = (context, path, elapsed, status) =>
        [
            new LogEventProperty("RequestMethod", new ScalarValue(context.Request.Method)),
            new LogEventProperty("RequestPath", new ScalarValue(path.Length <= LongestPath ? path : path[..LongestPath] + "…")),
            new LogEventProperty("StatusCode", new ScalarValue(status)),
            new LogEventProperty("Elapsed", new ScalarValue(elapsed)),
            new LogEventProperty("RequestId", new ScalarValue(context.TraceIdentifier)),
        ];
    });

    // Health is asked every few seconds; its lines would bury the others.
    private static LogEventLevel Level(HttpContext context, double elapsedMs, Exception? fault) =>
        fault is not null || context.Response.StatusCode == StatusCodes.Status500InternalServerError ? LogEventLevel.Error
        : context.Request.Path.StartsWithSegments("/health", StringComparison.Ordinal) ? LogEventLevel.Debug
        : LogEventLevel.Information;
}
