using System.Collections.Concurrent;
using System.Text;
using Microsoft.Extensions.DependencyInjection;
using PaddleApi.Tests.Contract;
using Serilog.Core;
using Serilog.Events;

namespace PaddleApi.Tests.Http;

[Collection(HttpTests.Name)]
public sealed class RequestLogTests
{
    [Fact]
    public async Task A_request_leaves_one_line_with_its_id_and_nothing_of_its_body()
    {
        var lines = new Lines();
        using var factory = Logged(lines);
        using var client = factory.Client();
        client.DefaultRequestHeaders.Add("X-Request-Id", "known-id");

        using var answer = await client.PostAsync("/v1/designs", new StringContent("{\"label\":\"very private\",", Encoding.UTF8, "application/json"));

        var line = Assert.Single(lines.Written, entry => entry.Properties.ContainsKey("StatusCode"));
        Assert.Equal(LogEventLevel.Information, line.Level);
        Assert.Equal("\"known-id\"", line.Properties["RequestId"].ToString());
        Assert.Equal("\"POST\"", line.Properties["RequestMethod"].ToString());
        Assert.Equal("\"/v1/designs\"", line.Properties["RequestPath"].ToString());
        Assert.Equal("400", line.Properties["StatusCode"].ToString());
        Assert.True(line.Properties.ContainsKey("Elapsed"));
        Assert.DoesNotContain(lines.Written, entry => Text(entry).Contains("private", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_long_address_is_cut_and_health_stays_silent()
    {
        var lines = new Lines();
        using var factory = Logged(lines);
        using var client = factory.Client();

        using var health = await client.GetAsync("/health/live");
        using var answer = await client.GetAsync($"/v1/woods/{new string('x', 2000)}");

        var line = Assert.Single(lines.Written, entry => entry.Properties.ContainsKey("StatusCode"));
        Assert.True(line.Properties["RequestPath"].ToString().Length < 200);
    }

    private static ApiFactory Logged(Lines lines) => new(
        new Dictionary<string, string> { ["Serilog:MinimumLevel:Default"] = "Information" },
        services => services.AddSingleton<ILogEventSink>(lines));

    private static string Text(LogEvent entry) =>
        $"{entry.RenderMessage(null)} {entry.Exception} {string.Join(' ', entry.Properties.Select(property => property.Value.ToString()))}";

    private sealed class Lines : ILogEventSink
    {
        public ConcurrentQueue<LogEvent> Written { get; } = new();

        public void Emit(LogEvent logEvent) => Written.Enqueue(logEvent);
    }
}
