using System.Diagnostics;
using OpenTelemetry;

namespace PaddleApi.Hosting.Telemetry;

/// <summary>
/// The steps of a request as spans: <c>paddle.read</c>, <c>.validate</c>, <c>.wait</c> at a gate and <c>.work</c> behind it, <c>.solve</c>,
/// <c>.evaluate</c>, <c>.report</c> and <c>.draw</c>. Without a reader none is made. They hold names of the contract alone: how a design came out, which file; no design, no measure, no word of a caller.
/// </summary>
internal static class ServiceTraces
{
    /// <summary>Name of the source.</summary>
    public const string Name = "PaddleApi";

    /// <summary>The platform's source, whose span of a request is the parent of ours.</summary>
    public const string Platform = "Microsoft.AspNetCore";

    private static readonly ActivitySource Source = new(Name);

    // Any other is a caller's own word; OpenTelemetry's conventions for HTTP spans (from memory) write _OTHER for it.
    private static readonly string[] Methods = [HttpMethods.Get, HttpMethods.Head, HttpMethods.Post, HttpMethods.Options];

    /// <summary>Begins a step, which ends when it is disposed of.</summary>
    public static Activity? Begin(string step) => Source.StartActivity($"paddle.{step}");

    /// <summary>Says on the platform's span what was asked and how it was answered, the address by its pattern.</summary>
    public static void Describe(Activity request, HttpContext context) => request
        .SetTag("http.request.method", Methods.Contains(context.Request.Method) ? context.Request.Method : "_OTHER")
        .SetTag("http.route", RequestLogging.PatternOf(context))
        .SetTag("http.response.status_code", context.Response.StatusCode);

    /// <summary>Takes from spans what is not known to be harmless: the platform's hold the whole address, and a design code is in it.</summary>
    internal sealed class Discreet : BaseProcessor<Activity>
    {
        private static readonly string[] Harmless = ["http.request.method", "http.route", "http.response.status_code", "error.type"];

        public override void OnEnd(Activity data)
        {
            data.TraceStateString = null;
            if (data.Source.Name == Name) return;
            foreach (var (tag, _) in data.TagObjects.ToList())
                if (!Harmless.Contains(tag)) data.SetTag(tag, null);
        }
    }
}
