using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using PaddleApi.Contracts.Problems;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Http;

/// <summary>Bodies sent to break the service's own way of refusing: each gets one whole problem, and nothing is an error of the service.</summary>
[Collection(HttpTests.Name)]
public sealed class HostileBodyTests(ApiFixture api)
{
    [Fact]
    public async Task A_bound_that_came_out_infinite_is_left_out_of_a_whole_problem()
    {
        var (answer, problem) = await PostAsync("/v1/board-tests", Bytes("""{"lengthMm":99,"readingErrors":{"lengthMm":1e308}}"""));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.NotNull(answer.Content.Headers.ContentLength);
        Assert.All(problem.GetProperty("errors").GetProperty("/lengthMm").EnumerateArray(), fault => Assert.Equal(99, fault.GetProperty("value").GetDouble()));
        Assert.Equal(1e308, problem.GetProperty("errors").GetProperty("/readingErrors/lengthMm")[0].GetProperty("value").GetDouble());
    }

    [Fact]
    public void A_fault_holds_no_number_that_JSON_cannot_write()
    {
        var fault = new Fault("No.", double.NaN, double.NegativeInfinity, double.PositiveInfinity);

        Assert.Equal((null, null, null), (fault.Value, fault.Min, fault.Max));
        Assert.Null((fault with { Max = double.NaN }).Max);
    }

    public static TheoryData<string, string, byte[], string> NoText => new()
    {
        { "half a pair in an unknown name", "/v1/designs", Bytes("""{"\ud800":1}"""), "" },
        { "the other half", "/v1/designs", Bytes("""{"\udc00":1}"""), "" },
        { "half a pair in a name below", "/v1/designs", Bytes("""{"wood":{"\ud800":1}}"""), "/wood" },
        { "half a pair in a text", "/v1/designs", Bytes("""{"label":"\ud800","wood":{"species":"white-ash"},"handSpacingMm":880}"""), "/label" },
        { "half a pair in a name of a list", "/v1/fittings", Bytes("""{"seat":{"posture":"\ud800"}}"""), "/seat/posture" },
        { "half a pair where a number belongs", "/v1/designs", Bytes("""{"handSpacingMm":"\ud800"}"""), "/handSpacingMm" },
        { "no UTF-8 in an unknown name", "/v1/designs", [.. "{\""u8, 0xFF, .. "\":1}"u8], "" },
        { "no UTF-8 in a text", "/v1/designs", [.. "{\n\"label\":\""u8, 0xC3, 0x28, .. "\"}"u8], "" },
        { "no UTF-8 in a name of a list", "/v1/fittings", [.. "{\"seat\":{\"posture\":\""u8, 0xED, 0xA0, 0x80, .. "\"}}"u8], "" },
        { "an overlong letter", "/v1/designs", [.. "{\"label\":\""u8, 0xC0, 0xAF, .. "\"}"u8], "" },
    };

    [Theory, MemberData(nameof(NoText))]
    public async Task What_is_no_text_is_a_plain_problem(string what, string address, byte[] body, string place)
    {
        var (answer, problem) = await PostAsync(address, body);

        Assert.True(answer.StatusCode == HttpStatusCode.BadRequest, what);
        Assert.Equal("/problems/malformed-json", problem.GetProperty("type").GetString());
        Assert.Equal(answer.Headers.GetValues("X-Request-Id").Single(), problem.GetProperty("requestId").GetString());
        Assert.True(problem.GetProperty("errors").TryGetProperty(place, out _), problem.GetRawText());
    }

    [Fact]
    public async Task Bytes_that_are_no_UTF8_are_found_by_line_and_byte()
    {
        var (_, problem) = await PostAsync("/v1/designs", [.. "{\n\"label\":\"é"u8, 0xFF, .. "\"}"u8]);

        Assert.Contains("not UTF-8 at line 2, byte 12", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_name_too_long_to_show_is_cut_between_characters()
    {
        var (answer, problem) = await PostAsync("/v1/designs", Bytes($$"""{"{{new string('a', 79)}}🛶🛶":1}"""));

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal($"/{new string('a', 79)}…", problem.GetProperty("errors").EnumerateObject().Single().Name);
    }

    [Theory]
    [InlineData("""{"noSuchMember":1}""", "/noSuchMember")]
    [InlineData("""{"label":5}""", "/label")]
    [InlineData("{\"a\":}", "")]
    public async Task A_byte_order_mark_does_not_hide_the_fault_behind_it(string body, string place)
    {
        var (_, problem) = await PostAsync("/v1/designs", [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(body)]);

        Assert.True(problem.GetProperty("errors").TryGetProperty(place, out _), problem.GetRawText());
    }

    // The reader stops at the first fault, long before the limit; what the fault is gets looked for in the whole.
    [Fact]
    public async Task A_broken_body_that_is_also_too_large_is_refused_over_sockets()
    {
        using var factory = new ApiFactory();
        using var client = factory.SocketClient();
        using var ask = new HttpRequestMessage(HttpMethod.Post, "/v1/designs")
        {
            Content = new StreamContent(new MemoryStream(Bytes($"{{\"x\":1,\"label\":\"{new string('x', 100 * 1024)}\"}}"))),
        };
        ask.Content.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        ask.Headers.TransferEncodingChunked = true;

        using var answer = await client.SendAsync(ask);

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
    }

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    private async Task<(HttpResponseMessage Answer, JsonElement Problem)> PostAsync(string address, byte[] body)
    {
        using var content = new ByteArrayContent(body);
        content.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        var answer = await api.Client.PostAsync(new Uri(address, UriKind.Relative), content);
        using var document = JsonDocument.Parse(await answer.Content.ReadAsByteArrayAsync());
        return (answer, document.RootElement.Clone());
    }
}
