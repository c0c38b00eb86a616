using System.Collections.Concurrent;
using System.Diagnostics;
using System.Diagnostics.Metrics;
using System.Net;
using System.Text;
using Microsoft.Extensions.DependencyInjection;
using OpenTelemetry;
using OpenTelemetry.Trace;
using PaddleApi.Endpoints.Builds;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Hosting.Telemetry;
using PaddleApi.Hosting.Work;
using PaddleApi.Tests.Contract;
using PaddleApi.Tests.Designs;

namespace PaddleApi.Tests.Http;

/// <summary>What is counted, and that nothing of a caller's is in it.</summary>
[Collection(HttpTests.Name)]
public sealed class TelemetryTests
{
    private const string Rack = """
        { "boards": [{ "id": "wide", "lengthMm": 1750, "widthMm": 260, "thicknessMm": 33.3, "species": "white-ash" }],
          "paddles": [{ "id": "guest", "design": { "handSpacingMm": 880, "wood": { "species": "white-ash" } } }] }
        """;

    private static readonly string Address = $"{DesignAddresses.Root}/{BuildExamples.Weighed.DesignCode}";

    [Fact]
    public async Task Designs_are_counted_by_how_they_came_out_and_refusals_by_rule()
    {
        using var factory = new ApiFactory();
        using var client = factory.Client();
        using var counts = new Counts(factory);

        await PostAsync(client, Requests.Least);
        await PostAsync(client, """{"handSpacingMm":880,"wood":{"species":"white-ash"},"aims":{"maximumMassG":300} }""");
        await PostAsync(client, """{"handSpacingMm":99,"wood":{"species":"white-ash"} }""");
        await PostAsync(client, """{"private":1}""");
        using var first = await client.GetAsync(Address);
        using var again = new HttpRequestMessage(HttpMethod.Get, Address);
        again.Headers.IfNoneMatch.Add(first.Headers.ETag!);
        using var held = await client.SendAsync(again);

        Assert.Equal(
            ["paddle.answers.held", "paddle.refusals kind=invalid-values place=/handSpacingMm", "paddle.refusals kind=malformed-json",
                "paddle.solve.duration outcome=closest", "paddle.solve.duration outcome=met"],
            counts.Seen.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task The_gates_show_who_works_and_who_waits()
    {
        using var factory = new ApiFactory(new Dictionary<string, string> { ["Limits:ConcurrentFiles"] = "1", ["Limits:MostWaitSeconds"] = "60" });
        using var client = factory.Client();
        using var counts = new Counts(factory);
        var place = await factory.Services.GetRequiredService<FileGate>().EnterAsync(CancellationToken.None);
        var waits = client.GetAsync($"{Address}/template.dxf");
        while (factory.Services.GetRequiredService<FileGate>().Waiting == 0) await Task.Yield();

        var gauges = counts.Observed();

        Assert.Equal(1, gauges["paddle.gate.busy gate=files"]);
        Assert.Equal(1, gauges["paddle.gate.waiting gate=files"]);
        Assert.Equal(0, gauges["paddle.gate.waiting gate=solving"]);
        Assert.Equal(0, gauges["paddle.gate.busy gate=bodies"]);
        place.Dispose();
        using var answer = await waits;
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public async Task A_request_is_a_trace_of_its_steps_and_no_span_holds_a_design()
    {
        var spans = new Spans();
        // Nobody listens there; what the service's own reader is sent is what this one sees.
        using var plain = new ApiFactory(new Dictionary<string, string> { ["Telemetry:Otlp"] = "true", ["OTEL_EXPORTER_OTLP_ENDPOINT"] = "http://127.0.0.1:1" });
        using var factory = plain.WithWebHostBuilder(host => host.ConfigureServices(services =>
            services.ConfigureOpenTelemetryTracerProvider(traces => traces.AddProcessor(new SimpleActivityExportProcessor(spans)))));
        using var client = factory.CreateClient();

        await PostAsync(client, Requests.Least);
        await spans.RequestsEndedAsync(1);
        using var drawing = await client.GetAsync($"{Address}/outline.svg?units=inch");
        await spans.RequestsEndedAsync(2);
        using var layout = await client.PostAsync("/v1/board-layouts", new StringContent(Rack, Encoding.UTF8, "application/json"));
        await spans.RequestsEndedAsync(3);

        Assert.Equal(
            ["paddle.read", "paddle.validate outcome=passed", "paddle.wait outcome=taken", "paddle.solve outcome=met", "paddle.work", "paddle.report", "request route=/v1/designs",
                "paddle.read", "paddle.validate outcome=passed", "paddle.evaluate outcome=met", "paddle.draw file=outline.svg", "request route=/v1/designs/{designCode}/outline.svg",
                "paddle.read", "paddle.validate outcome=passed", "paddle.wait outcome=taken", "paddle.solve outcome=met", "paddle.work",
                "request route=/v1/board-layouts"],
            spans.Seen);
        var all = string.Join('\n', spans.Whole);
        Assert.DoesNotContain(BuildExamples.Weighed.DesignCode!, all, StringComparison.Ordinal);
        Assert.DoesNotContain("880", all, StringComparison.Ordinal);
        Assert.DoesNotContain("inch", all, StringComparison.Ordinal);
    }

    // What would be sent: short, and with every tag.
    private sealed class Spans : BaseExporter<Activity>
    {
        public ConcurrentQueue<string> Seen { get; } = new();

        public ConcurrentQueue<string> Whole { get; } = new();

        // A request's own span ends after its answer has left.
        public async Task RequestsEndedAsync(int count)
        {
            for (var wait = 0; wait < 500 && Seen.Count(span => span.StartsWith("request", StringComparison.Ordinal)) < count; wait++) await Task.Delay(20);
        }

        public override ExportResult Export(in Batch<Activity> batch)
        {
            foreach (var span in batch)
            {
                var isOurs = span.Source.Name == ServiceTraces.Name;
                Seen.Enqueue(isOurs ? string.Join(' ', [span.DisplayName, .. span.TagObjects.Select(tag => $"{tag.Key}={tag.Value}")]) : $"request route={span.GetTagItem("http.route")}");
                Whole.Enqueue($"{span.DisplayName} {span.TraceStateString} {string.Join(' ', span.TagObjects)} {string.Join(' ', span.Events.Select(one => one.Name))}");
            }

            return ExportResult.Success;
        }
    }

    [Fact]
    public async Task Prometheus_is_answered_on_its_port_alone_and_reads_no_design()
    {
        using var factory = new ApiFactory(new Dictionary<string, string> { ["Telemetry:PrometheusPort"] = "1" });
        using var client = factory.SocketClient();
        using var closed = await client.GetAsync("/metrics");
        Assert.Equal(HttpStatusCode.NotFound, closed.StatusCode);

        // In process a request is told which port it came by.
        using var inProcess = new ApiFactory(new Dictionary<string, string> { ["Telemetry:PrometheusPort"] = "9464" });
        using var caller = inProcess.CreateClient();
        using var design = await caller.GetAsync(Address);
        using var drawing = await caller.GetAsync($"{Address}/outline.svg?units=inch");
        var answer = await inProcess.Server.SendAsync(context =>
        {
            context.Request.Path = "/metrics";
            context.Request.Method = "GET";
            context.Connection.LocalPort = 9464;
        });
        using var read = new StreamReader(answer.Response.Body);
        var text = await read.ReadToEndAsync();

        Assert.Equal(200, answer.Response.StatusCode);
        Assert.Contains("http_server_request_duration_seconds", text, StringComparison.Ordinal);
        Assert.Contains("/v1/designs/{designCode}/outline.svg", text, StringComparison.Ordinal);
        Assert.Contains("paddle_gate_waiting", text, StringComparison.Ordinal);
        Assert.DoesNotContain(BuildExamples.Weighed.DesignCode!, text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task As_it_stands_nobody_reads_the_counts()
    {
        using var factory = new ApiFactory();
        using var client = factory.Client();

        using var answer = await client.GetAsync("/metrics");

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    private static async Task PostAsync(HttpClient client, string body)
    {
        using var content = new StringContent(body, Encoding.UTF8, "application/json");
        using var answer = await client.PostAsync(new Uri(DesignAddresses.Root, UriKind.Relative), content);
    }

    private sealed class Counts : IDisposable
    {
        private readonly MeterListener listener = new();
        private readonly Dictionary<string, double> gauges = new(StringComparer.Ordinal);

        public Counts(ApiFactory factory)
        {
            var meters = factory.Services.GetRequiredService<IMeterFactory>();
            listener.InstrumentPublished = (instrument, its) =>
            {
                if (instrument.Meter.Name == ServiceMeters.Name && instrument.Meter.Scope == meters) its.EnableMeasurementEvents(instrument);
            };
            listener.SetMeasurementEventCallback<long>((instrument, value, tags, _) => Note(instrument, value, tags));
            listener.SetMeasurementEventCallback<double>((instrument, value, tags, _) => Note(instrument, value, tags));
            listener.Start();
        }

        public List<string> Seen { get; } = [];

        public Dictionary<string, double> Observed()
        {
            listener.RecordObservableInstruments();
            return gauges;
        }

        public void Dispose() => listener.Dispose();

        private void Note(Instrument instrument, double value, ReadOnlySpan<KeyValuePair<string, object?>> tags)
        {
            var name = string.Join(' ', tags.ToArray().Select(tag => $"{tag.Key}={tag.Value}").Prepend(instrument.Name));
            lock (Seen)
            {
                if (instrument.IsObservable) gauges[name] = value;
                else Seen.Add(name);
            }
        }
    }
}
