using System.IO.Pipelines;
using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.DependencyInjection;
using Paddle.Design.Request;
using PaddleApi.Contracts.Designs;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Hosting.Batches;
using PaddleApi.Hosting.Work;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Batches;

[Collection(HttpTests.Name)]
public sealed class BatchHttpTests(ApiFixture api)
{
    private const string Line = """{"handSpacingMm":880,"wood":{"species":"white-ash"}}""";

    [Fact]
    public async Task Each_line_is_answered_as_the_address_of_one_answers_it_and_in_order()
    {
        string[] requests = [.. Enumerable.Range(0, 40).Select(k => $$"""{"handSpacingMm":{{800 + 3 * k}},"wood":{"species":"{{(k % 2 == 0 ? "white-ash" : "black-cherry")}}"} }""")];
        var lines = await Lines("/v1/design-batches", string.Join('\n', requests));

        Assert.Equal(Enumerable.Range(1, 40), lines.Select(line => line.GetProperty("line").GetInt32()));
        foreach (var k in (int[])[0, 1, 17, 39])
        {
            using var one = await Post("/v1/designs", requests[k], "application/json");
            Assert.Equal(await one.Content.ReadAsStringAsync(), lines[k].GetProperty("design").GetRawText());
        }
    }

    [Fact]
    public async Task Guests_are_fitted_line_by_line()
    {
        const string Guest = """{"paddler":{"statureMm":1720}}""";
        var lines = await Lines("/v1/fitting-batches", $$$"""{{{Guest}}}{{{"\n"}}}{"paddler":{"statureMm":9999}}{{{"\n"}}}""");
        using var one = await Post("/v1/fittings", Guest, "application/json");

        Assert.Equal([200, 422], lines.Select(line => line.GetProperty("status").GetInt32()));
        Assert.Equal(await one.Content.ReadAsStringAsync(), lines[0].GetProperty("fitting").GetRawText());
    }

    [Theory]
    [InlineData("{", 400, "/problems/malformed-json")]
    [InlineData("null", 400, "/problems/malformed-json")]
    [InlineData("[]", 400, "/problems/malformed-json")]
    [InlineData("""{"handSpacingMm":"880"}""", 400, "/problems/malformed-json")]
    [InlineData("""{"label":"\ud800"}""", 400, "/problems/malformed-json")]
    [InlineData("""{"handSpacingMm":880,"handSpacingMm":881}""", 400, "/problems/malformed-json")]
    [InlineData("""{"handSpacingMm":88,"wood":{"species":"white-ash"}}""", 422, "/problems/invalid-values")]
    [InlineData("""{"handSpacingMm":1e999,"wood":{"species":"white-ash"}}""", 400, "/problems/malformed-json")]
    public async Task A_bad_line_is_a_problem_on_its_line_and_the_others_are_answered(string bad, int status, string kind)
    {
        var lines = await Lines("/v1/design-batches", $"{Line}\r\n\n  \n{bad}\n{Line}");

        Assert.Equal([(1, 200), (4, status), (5, 200)], lines.Select(line => (line.GetProperty("line").GetInt32(), line.GetProperty("status").GetInt32())));
        var problem = lines[1].GetProperty("problem");
        Assert.Equal((kind, status), (problem.GetProperty("type").GetString(), problem.GetProperty("status").GetInt32()));
        Assert.NotEmpty(problem.GetProperty("errors").EnumerateObject());
    }

    [Fact]
    public async Task A_line_that_is_too_long_is_passed_over()
    {
        var lines = await Lines("/v1/design-batches", $"{Line}\n{new string('x', 300_000)}\n{Line}\n{new string('x', 300_000)}");
        Assert.Equal([200, 413, 200, 413], lines.Select(line => line.GetProperty("status").GetInt32()));
        Assert.Equal([1, 2, 3, 4], lines.Select(line => line.GetProperty("line").GetInt32()));
    }

    [Fact]
    public async Task Beyond_the_most_lines_nothing_is_read()
    {
        using var factory = new ApiFactory(new Dictionary<string, string> { ["Limits:MaxBatchLines"] = "3" });
        using var client = factory.Client();
        var lines = await Lines("/v1/design-batches", string.Join('\n', Enumerable.Repeat(Line, 6)), client);
        Assert.Equal([200, 200, 200, 413], lines.Select(line => line.GetProperty("status").GetInt32()));
    }

    [Fact]
    public async Task Fields_slim_every_line()
    {
        var lines = await Lines("/v1/design-batches?fields=outcome", $"{Line}\n{{}}");
        Assert.Equal("""{"line":1,"status":200,"design":{"outcome":"met"}}""", lines[0].GetRawText());
        Assert.Equal(422, lines[1].GetProperty("status").GetInt32());
    }

    [Theory]
    [InlineData("/v1/design-batches")]
    [InlineData("/v1/fitting-batches")]
    public async Task Other_media_types_unknown_fields_and_a_full_house_are_refused(string path)
    {
        using var json = await Post(path, Line, "application/json");
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, json.StatusCode);
        using var refused = await Post($"{path}?fields=nothing", Line);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);

        using var factory = new ApiFactory(new Dictionary<string, string> { ["Limits:ConcurrentBatches"] = "1", ["Limits:MostWaitSeconds"] = "0" });
        using var client = factory.Client();
        using var place = await factory.Services.GetRequiredService<BatchGate>().EnterAsync(CancellationToken.None);
        using var busy = await Post(path, Line, client: client);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, busy.StatusCode);
    }

    [Fact]
    public async Task No_line_no_answer() => Assert.Empty(await Lines("/v1/design-batches", "\n \n", api.Factory.CreateClient()));

    [Fact]
    public async Task Over_real_sockets_it_is_the_same()
    {
        using var factory = new ApiFactory();
        using var client = factory.SocketClient();
        var lines = await Lines("/v1/design-batches", string.Join('\n', Enumerable.Repeat(Line, 100)), client);
        Assert.Equal(Enumerable.Range(1, 100), lines.Select(line => line.GetProperty("line").GetInt32()));
    }

    /// <summary>RFC 9112, 9.3.2: a client may send its next request on the same connection, and is answered in order.</summary>
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    public async Task The_connection_serves_the_next_request(int lines)
    {
        using var factory = new ApiFactory(new Dictionary<string, string> { ["Limits:MaxBatchLines"] = "3" });
        using var client = factory.SocketClient();
        var batch = string.Concat(Enumerable.Repeat(Line + "\n", lines));
        var both = $"POST /v1/design-batches HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/x-ndjson\r\nContent-Length: {batch.Length}\r\n\r\n{batch}"
            + "GET /health/live HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n";

        var answers = await Wire.SendAsync(client.BaseAddress!, Encoding.ASCII.GetBytes(both));

        Assert.Equal(200, answers.Status);
        Assert.Contains("HTTP/1.1 200", answers.Body, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_line_is_answered_while_the_next_is_not_yet_sent()
    {
        var (context, sent, got) = Connection();
        var running = Batch().ExecuteAsync(context);
        using var reader = new StreamReader(got.Reader.AsStream());
        for (var k = 1; k <= 3; k++)
        {
            await sent.Writer.WriteAsync(Encoding.UTF8.GetBytes(Line + "\n"));
            Assert.StartsWith($"{{\"line\":{k},\"status\":200,", await reader.ReadLineAsync(), StringComparison.Ordinal);
        }

        await sent.Writer.CompleteAsync();
        await running;
    }

    [Fact]
    public async Task Who_does_not_read_is_not_read_from()
    {
        var (context, sent, got) = Connection();
        var solved = 0;
        var running = Batch((request, _) =>
        {
            Interlocked.Increment(ref solved);
            return Solve(request);
        }).ExecuteAsync(context);

        // Sending stops by itself, and when everything stands still some lines have been answered and most have not.
        var sending = Task.Run(async () =>
        {
            for (var k = 0; k < 1000; k++) await sent.Writer.WriteAsync(Encoding.UTF8.GetBytes(Line + "\n"));
            await sent.Writer.CompleteAsync();
        });
        for (var before = -1; before != solved || solved == 0; await Task.Delay(300)) before = solved;
        Assert.False(sending.IsCompleted);
        Assert.InRange(solved, 1, 500);

        // Who reads on gets everything.
        var reading = Task.Run(async () =>
        {
            using var reader = new StreamReader(got.Reader.AsStream());
            var count = 0;
            while (await reader.ReadLineAsync() is not null) count++;
            return count;
        });
        await sending;
        await running;
        await got.Writer.CompleteAsync();
        Assert.Equal(1000, await reading);
    }

    [Fact]
    public async Task A_caller_who_hangs_up_ends_the_work()
    {
        var (context, sent, _) = Connection();
        using var gone = new CancellationTokenSource();
        context.Features.Set<IHttpRequestLifetimeFeature>(new HttpRequestLifetimeFeature { RequestAborted = gone.Token });
        var running = Batch().ExecuteAsync(context);
        await sent.Writer.WriteAsync(Encoding.UTF8.GetBytes(Line + "\n"));
        await gone.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => running);
        Assert.Equal(0, api.Factory.Services.GetRequiredService<BatchGate>().Busy);
    }

    private static DesignResponse Solve(DesignRequest request) => DesignService.Compute(request).ToResponse(default);

    private static BatchAnswer<DesignRequest, DesignResponse> Batch(Func<DesignRequest, CancellationToken, DesignResponse>? answer = null) =>
        new("design", answer ?? ((request, _) => Solve(request)), null);

    // What a connection is made of, with as little room on the way as can be.
    private (HttpContext Context, Pipe Sent, Pipe Got) Connection()
    {
        var narrow = new PipeOptions(pauseWriterThreshold: 256, resumeWriterThreshold: 128);
        var (sent, got) = (new Pipe(narrow), new Pipe(narrow));
        var context = new DefaultHttpContext { RequestServices = api.Factory.Services };
        context.Request.Body = sent.Reader.AsStream();
        context.Response.Body = got.Writer.AsStream(leaveOpen: true);
        return (context, sent, got);
    }

    private async Task<List<JsonElement>> Lines(string path, string body, HttpClient? client = null)
    {
        using var answer = await Post(path, body, client: client);
        Assert.Equal((HttpStatusCode.OK, "application/x-ndjson"), (answer.StatusCode, answer.Content.Headers.ContentType?.MediaType));
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(text.Length == 0 || text.EndsWith('\n'));
        return [.. text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonDocument.Parse(line).RootElement)];
    }

    private async Task<HttpResponseMessage> Post(string path, string body, string mediaType = "application/x-ndjson", HttpClient? client = null)
    {
        using var content = new StringContent(body, Encoding.UTF8);
        content.Headers.ContentType = MediaTypeHeaderValue.Parse(mediaType);
        return await (client ?? api.Client).PostAsync(path, content);
    }
}
