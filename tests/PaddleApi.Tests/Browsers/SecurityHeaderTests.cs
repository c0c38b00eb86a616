using System.Net;
using System.Text;
using PaddleApi.Endpoints.Builds;
using PaddleApi.Tests.Contract;
using PaddleApi.Tests.Designs;

namespace PaddleApi.Tests.Browsers;

/// <summary>Every answer tells browsers the same, whatever made it.</summary>
[Collection(HttpTests.Name)]
public sealed class SecurityHeaderTests(ApiFixture api)
{
    private const string Drawing = "default-src 'none'; style-src 'unsafe-inline'; sandbox; frame-ancestors 'none'";
    private const string Data = "default-src 'none'; frame-ancestors 'none'";
    private const string File = "frame-ancestors 'none'";
    private const string Design = "/v1/designs/";

    private static readonly string Code = BuildExamples.Weighed.DesignCode!;

    public static TheoryData<string, string, string?, HttpStatusCode, string> Answers => new()
    {
        { "/v1/woods", "*/*", null, HttpStatusCode.OK, Data },
        { "/v1/woods/none", "*/*", null, HttpStatusCode.NotFound, Data },
        { "/nowhere", "*/*", null, HttpStatusCode.NotFound, Data },
        { "/health/live", "*/*", null, HttpStatusCode.OK, Data },
        { "/openapi/v1.json", "*/*", null, HttpStatusCode.OK, Data },
        { $"{Design}{Code}", "*/*", null, HttpStatusCode.OK, Data },
        { $"{Design}{Code}/outline.svg", "*/*", null, HttpStatusCode.OK, Drawing },
        { $"{Design}{Code}/strength.svg", "*/*", null, HttpStatusCode.OK, Drawing },
        { $"{Design}{Code}/templates.pdf", "*/*", null, HttpStatusCode.OK, File },
        { $"{Design}{Code}/solid.stl", "*/*", null, HttpStatusCode.OK, File },
        { $"{Design}{Code}/offsets.csv", "*/*", null, HttpStatusCode.OK, File },
        { "/v1/designs", "image/svg+xml", Requests.Least, HttpStatusCode.OK, Drawing },
        { "/v1/designs", "*/*", Requests.Least, HttpStatusCode.OK, Data },
        { "/v1/size-runs", "image/svg+xml", """{"sizes":3,"population":{"men":1}}""", HttpStatusCode.OK, Drawing },
        { "/v1/size-runs", "image/svg+xml", "{", HttpStatusCode.BadRequest, Data },
    };

    [Theory, MemberData(nameof(Answers))]
    public async Task An_answer_may_do_no_more_than_its_kind_needs(string address, string accept, string? body, HttpStatusCode status, string policy)
    {
        using var ask = new HttpRequestMessage(body is null ? HttpMethod.Get : HttpMethod.Post, address);
        ask.Headers.Accept.ParseAdd(accept);
        if (body is not null) ask.Content = new StringContent(body, Encoding.UTF8, "application/json");

        using var answer = await api.Client.SendAsync(ask);

        Assert.Equal(status, answer.StatusCode);
        Assert.Equal(policy, Header(answer, "Content-Security-Policy"));
        Assert.Equal("nosniff", Header(answer, "X-Content-Type-Options"));
        Assert.Equal("no-referrer", Header(answer, "Referrer-Policy"));
        Assert.Equal("cross-origin", Header(answer, "Cross-Origin-Resource-Policy"));
    }

    // RFC 9111, 4.3.4: a cache updates what it holds by the headers of the 304.
    [Fact]
    public async Task A_304_does_not_change_the_policy_of_what_is_held()
    {
        using var first = await api.Client.GetAsync($"{Design}{Code}/outline.svg");
        using var ask = new HttpRequestMessage(HttpMethod.Get, $"{Design}{Code}/outline.svg");
        ask.Headers.IfNoneMatch.Add(first.Headers.ETag!);

        using var answer = await api.Client.SendAsync(ask);

        Assert.Equal(HttpStatusCode.NotModified, answer.StatusCode);
        Assert.False(answer.Headers.Contains("Content-Security-Policy"));
    }

    [Theory]
    [InlineData("/docs/index.html")]
    [InlineData("/docs/index.js")]
    public async Task The_page_to_try_the_service_on_loads_from_here_alone(string address)
    {
        using var client = api.Factory.CreateClient();
        using var answer = await client.GetAsync(address);

        var policy = Header(answer, "Content-Security-Policy");
        Assert.StartsWith("default-src 'self';", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("script-src", policy, StringComparison.Ordinal);
        Assert.EndsWith("frame-ancestors 'none'", policy, StringComparison.Ordinal);
    }

    private static string Header(HttpResponseMessage answer, string name) => Assert.Single(answer.Headers.GetValues(name));
}
