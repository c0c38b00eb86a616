using System.Collections.Concurrent;
using System.Net.Sockets;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using PaddleApi.Endpoints.Builds;
using PaddleApi.Hosting;
using PaddleApi.Tests.Contract;
using Serilog.Core;
using Serilog.Events;
using Serilog.Formatting.Compact;

namespace PaddleApi.Tests.Http;

[Collection(HttpTests.Name)]
public sealed class RequestLogTests(RequestLogTests.LoggedService logged) : IClassFixture<RequestLogTests.LoggedService>
{
    private static readonly string Code = BuildExamples.Weighed.DesignCode!;

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

    public static TheoryData<string, string, string?, string> Private => new()
    {
        { "GET", $"/v1/designs/{Code}", null, "/v1/designs/{designCode}" },
        { "GET", $"/v1/designs/{Code}/outline.svg?units=inch", null, "/v1/designs/{designCode}/outline.svg" },
        { "GET", $"/v1/designs/{Code}/build?boardThicknessMm=73.25", null, "/v1/designs/{designCode}/build" },
        { "GET", $"/v1/designs/{Code}/build?boardThicknessMm=73,25", null, "/v1/designs/{designCode}/build" },
        { "GET", $"/v1/designs/{Code}/build?private=73.25", null, "/v1/designs/{designCode}/build" },
        { "GET", $"/v1/designs/{Code[..40]}", null, "/v1/designs/{designCode}" },
        { "GET", $"/v1/designs/{Code}/private.svg", null, "/v1/designs/{designCode}/{fileName}" },
        { "GET", $"/v1/desings/{Code}", null, "(none)" },
        { "GET", "/private/73.25", null, "(none)" },
        { "PUT", $"/v1/designs/{Code}", null, "(none)" },
        { "POST", "/v1/fittings", """{"paddler":{"statureMm":1733.25,"private":1}}""", "/v1/fittings" },
        { "POST", "/v1/fittings", """{"paddler":{"statureMm":1733.25}}""", "/v1/fittings" },
        { "POST", "/v1/fittings", """{"paddler":{"statureMm":173325}}""", "/v1/fittings" },
        { "POST", "/v1/fittings", """{"label":"private\ud800"}""", "/v1/fittings" },
        { "POST", "/v1/balance-corrections", $$"""{"designCode":"{{Code}}","stage":"sawn","massG":1733.25,"balanceMm":800}""", "/v1/balance-corrections" },
        { "POST", "/v1/designs", "{\"label\":\"private\",", "/v1/designs" },
    };

    [Theory, MemberData(nameof(Private))]
    public async Task A_log_holds_no_design_no_measure_and_no_word_of_the_caller(string method, string address, string? body, string pattern)
    {
        var (lines, client) = logged.Fresh();
        using var ask = new HttpRequestMessage(new HttpMethod(method), address);
        ask.Headers.Add("X-Request-Id", "known-id");
        if (body is not null) ask.Content = new StringContent(body, Encoding.UTF8, "application/json");

        using var answer = await client.SendAsync(ask);

        var line = Assert.Single(lines.Written, entry => entry.Properties.ContainsKey("StatusCode"));
        Assert.Equal($"\"{pattern}\"", line.Properties["RequestPath"].ToString());
        Assert.DoesNotContain(lines.Written, entry => entry.Level >= LogEventLevel.Error);
        var text = string.Concat(lines.Written.Select(Unmeasured).Select(Printed));
        Assert.All(["private", "73.25", "73,25", "1733", Code[..40]], word => Assert.DoesNotContain(word, text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_else_is_logged_while_a_request_is_served_does_not_name_its_address()
    {
        var lines = new Lines();
        using var factory = Logged(lines, services => services.AddSingleton<IStartupFilter>(new Warning()));
        using var client = factory.CreateClient();

        using var answer = await client.GetAsync($"/v1/designs/{Code}");

        var warning = Assert.Single(lines.Written, entry => entry.Level == LogEventLevel.Warning);
        Assert.True(warning.Properties.ContainsKey("RequestId"));
        Assert.DoesNotContain(lines.Written, entry => Printed(entry).Contains(Code[..40], StringComparison.Ordinal));
    }

    [Fact]
    public void A_fault_is_logged_by_kind_and_place_and_not_in_its_words()
    {
        var fault = Thrown(() => throw new InvalidOperationException(
            "outer private", Thrown(() => throw new ArgumentOutOfRangeException("statureMm", 1733.25, "private"))));
        var entry = new LogEvent(
            DateTimeOffset.UnixEpoch, LogEventLevel.Error, fault, new Serilog.Parsing.MessageTemplateParser().Parse("It broke: {RequestId}"),
            [new LogEventProperty("RequestId", new ScalarValue("known-id"))]);

        var text = Printed(entry);

        Assert.Contains("System.InvalidOperationException", text, StringComparison.Ordinal);
        Assert.Contains("caused by System.ArgumentOutOfRangeException", text, StringComparison.Ordinal);
        Assert.Contains(nameof(A_fault_is_logged_by_kind_and_place_and_not_in_its_words), text, StringComparison.Ordinal);
        Assert.Contains("known-id", text, StringComparison.Ordinal);
        Assert.All(["private", "1733", "statureMm"], word => Assert.DoesNotContain(word, text, StringComparison.Ordinal));
    }

    private static readonly (string Line, string Further)[] HungUp =
    [
        ("POST /v1/designs", "Content-Type: application/json\r\nContent-Length: 1000\r\n\r\n{\"label\":"),
        ("POST /v1/designs", "Content-Type: application/json\r\nContent-Length: 1000\r\n\r\n{\"x\":1,"),
        ("POST /v1/designs", "Content-Type: application/json\r\nTransfer-Encoding: chunked\r\n\r\n8\r\n{\"x\":1,"),
        ($"GET /v1/designs/{Code}/solid.stl", "\r\n"),
        ($"GET /v1/designs/{Code}/templates.pdf", "Accept-Encoding: br\r\n\r\n"),
        ($"GET /v1/designs/{Code}/outline.svg", "Accept-Encoding: br\r\n\r\n"),
    ];

    [Fact]
    public async Task A_caller_who_hangs_up_is_no_error_of_the_service()
    {
        var lines = new Lines();
        using var factory = Logged(lines);
        using var client = factory.SocketClient();
        var server = client.BaseAddress!;
        foreach (var (line, further) in HungUp)
        {
            for (var i = 0; i < 5; i++)
            {
                using var caller = new TcpClient { LingerState = new LingerOption(enable: true, seconds: 0) };
                await caller.ConnectAsync(server.Host, server.Port);
                await caller.GetStream().WriteAsync(Encoding.Latin1.GetBytes($"{line} HTTP/1.1\r\nHost: {server.Authority}\r\n{further}"));

                // Some hang up at once and some in the midst of the answer, where there is one.
                if (i > 0 && line.StartsWith("GET", StringComparison.Ordinal)) _ = await caller.GetStream().ReadAsync(new byte[100 * i]);
            }
        }

        // Once the server has ended them all, their lines are written.
        await factory.Services.GetRequiredService<IServer>().StopAsync(CancellationToken.None);
        Assert.DoesNotContain(lines.Written, entry => entry.Level >= LogEventLevel.Warning);
        Assert.NotEmpty(lines.Written);
    }

    [Fact]
    public async Task A_caller_who_hangs_up_in_the_midst_of_an_answer_is_logged_as_gone()
    {
        var lines = new Lines();
        using var factory = Logged(lines);
        using var client = factory.SocketClient();
        var server = client.BaseAddress!;
        using (var caller = new TcpClient { LingerState = new LingerOption(enable: true, seconds: 0) })
        {
            await caller.ConnectAsync(server.Host, server.Port);
            await caller.GetStream().WriteAsync(Encoding.Latin1.GetBytes($"GET /v1/designs/{Code}/solid.stl HTTP/1.1\r\nHost: {server.Authority}\r\n\r\n"));
            _ = await caller.GetStream().ReadAsync(new byte[100]);
        }

        await factory.Services.GetRequiredService<IServer>().StopAsync(CancellationToken.None);
        var line = Assert.Single(lines.Written, entry => entry.Properties.ContainsKey("StatusCode"));
        Assert.Equal("499", line.Properties["StatusCode"].ToString());
        Assert.Equal(LogEventLevel.Information, line.Level);
    }

    [Fact]
    public async Task Health_stays_silent()
    {
        var lines = new Lines();
        using var factory = Logged(lines);
        using var client = factory.Client();

        using var health = await client.GetAsync("/health/live");

        Assert.DoesNotContain(lines.Written, entry => entry.Properties.ContainsKey("StatusCode"));
    }

    private static ApiFactory Logged(Lines lines, Action<IServiceCollection>? more = null) => new(
        new Dictionary<string, string> { ["Serilog:MinimumLevel:Default"] = "Information" },
        services =>
        {
            services.AddSingleton<ILogEventSink>(lines);
            more?.Invoke(services);
        });

    private static string Text(LogEvent entry) =>
        $"{entry.RenderMessage(null)} {entry.Exception} {string.Join(' ', entry.Properties.Select(property => property.Value.ToString()))}";

    /// <summary>
    /// The line without the numbers that the service makes up itself: among its hours, durations and random identifiers, any four digits turn up
    /// one day.
    /// </summary>
    private static LogEvent Unmeasured(LogEvent entry) => new(
        DateTimeOffset.UnixEpoch, entry.Level, entry.Exception, entry.MessageTemplate,
        entry.Properties.Where(property => property.Key is not "Elapsed").Select(property => new LogEventProperty(property.Key, property.Value)));

    private static string Printed(LogEvent entry)
    {
        using var text = new StringWriter();
        new DiscreetFormatter(new CompactJsonFormatter()).Format(entry, text);
        return text.ToString();
    }

    private static Exception Thrown(Action action)
    {
        try
        {
            action();
        }
        catch (Exception fault)
        {
            return fault;
        }

        throw new InvalidOperationException("It threw nothing.");
    }

    private sealed class Warning : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
        {
            app.Use((context, rest) =>
            {
                context.RequestServices.GetRequiredService<ILogger<Warning>>().LogWarning("Something is odd.");
                return rest(context);
            });
            next(app);
        };
    }

    /// <summary>One service for all whose lines can be told apart by what was written since they came.</summary>
    public sealed class LoggedService : IDisposable
    {
        private readonly Lines lines = new();
        private readonly ApiFactory factory;
        private readonly HttpClient client;

        public LoggedService()
        {
            factory = Logged(lines);
            client = factory.CreateClient();
        }

        internal (Lines Lines, HttpClient Client) Fresh()
        {
            lines.Written.Clear();
            return (lines, client);
        }

        public void Dispose()
        {
            client.Dispose();
            factory.Dispose();
        }
    }

    internal sealed class Lines : ILogEventSink
    {
        public ConcurrentQueue<LogEvent> Written { get; } = new();

        public void Emit(LogEvent logEvent) => Written.Enqueue(logEvent);
    }
}
