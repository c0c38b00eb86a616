using System.Net;
using System.Text;
using Microsoft.Extensions.Options;
using PaddleApi.Tests.Contract;
using PaddleApi.Tests.Designs;

namespace PaddleApi.Tests.Browsers;

/// <summary>
/// What a browser asks before it lets a page of another origin call (the Fetch standard, 3.3: CORS protocol). A real browser is asked in
/// .ci/check-files.
/// </summary>
[Collection(HttpTests.Name)]
public sealed class CrossOriginTests(ApiFixture api)
{
    private const string Page = "https://paddles.example";

    private static readonly string[] Hidden = ["ETag", "Location", "X-Request-Id", "RateLimit", "RateLimit-Policy", "Retry-After"];

    public static TheoryData<string, string, string?, HttpStatusCode> Calls => new()
    {
        { "GET", "/v1/woods", null, HttpStatusCode.OK },
        { "GET", "/openapi/v1.json", null, HttpStatusCode.OK },
        { "GET", "/v1/woods/none", null, HttpStatusCode.NotFound },
        { "GET", "/nowhere", null, HttpStatusCode.NotFound },
        { "DELETE", "/v1/woods", null, HttpStatusCode.MethodNotAllowed },
        { "POST", "/v1/designs", Requests.Least, HttpStatusCode.OK },
        { "POST", "/v1/designs", "{", HttpStatusCode.BadRequest },
        { "POST", "/v1/board-tests", "{}", HttpStatusCode.UnprocessableEntity },
    };

    [Theory, MemberData(nameof(Calls))]
    public async Task Any_page_may_read_any_answer_and_its_headers(string method, string address, string? body, HttpStatusCode status)
    {
        using var client = api.Factory.CreateClient();
        using var ask = new HttpRequestMessage(new HttpMethod(method), address);
        ask.Headers.Add("Origin", Page);
        if (body is not null) ask.Content = new StringContent(body, Encoding.UTF8, "application/json");

        using var answer = await client.SendAsync(ask);

        Assert.Equal(status, answer.StatusCode);
        Assert.Equal("*", Header(answer, "Access-Control-Allow-Origin"));
        Assert.All(Hidden, name => Assert.Contains(name, List(answer, "Access-Control-Expose-Headers")));
        Assert.False(answer.Headers.Contains("Access-Control-Allow-Credentials"));
        Assert.DoesNotContain("Origin", answer.Headers.Vary);
    }

    [Theory]
    [InlineData("POST", "/v1/designs", "content-type")]
    [InlineData("POST", "/v1/size-runs", "content-type,x-request-id")]
    [InlineData("GET", "/v1/woods", "if-none-match,x-request-id")]
    [InlineData("HEAD", "/v1/woods", "x-anything")]
    public async Task A_preflight_allows_reading_and_solving(string method, string address, string headers)
    {
        using var answer = await PreflightAsync(api.Factory, method, address, headers);

        Assert.Equal(HttpStatusCode.NoContent, answer.StatusCode);
        Assert.Equal("*", Header(answer, "Access-Control-Allow-Origin"));
        Assert.Contains(method, List(answer, "Access-Control-Allow-Methods"));
        Assert.Equal(headers.Split(','), List(answer, "Access-Control-Allow-Headers"));
        Assert.Equal("7200", Header(answer, "Access-Control-Max-Age"));
        Assert.True(answer.Headers.Contains("X-Request-Id"));
    }

    [Fact]
    public async Task A_preflight_does_not_allow_what_the_service_does_not_do()
    {
        using var answer = await PreflightAsync(api.Factory, "DELETE", "/v1/designs", "content-type");

        Assert.DoesNotContain("DELETE", List(answer, "Access-Control-Allow-Methods"));
    }

    [Fact]
    public async Task With_a_list_only_the_pages_on_it_may_call()
    {
        using var factory = Listing(Page, "http://localhost:3000");

        using var listed = await AskAsync(factory, Page);
        using var other = await AskAsync(factory, "https://other.example");
        using var file = await AskAsync(factory, "null");
        using var none = await AskAsync(factory, null);
        using var preflight = await PreflightAsync(factory, "POST", "/v1/designs", "content-type");
        using var foreign = await PreflightAsync(factory, "POST", "/v1/designs", "content-type", "https://paddles.example.evil.example");

        Assert.Equal(Page, Header(listed, "Access-Control-Allow-Origin"));
        Assert.Equal(Page, Header(preflight, "Access-Control-Allow-Origin"));
        Assert.All([other, file, none, foreign], answer => Assert.False(answer.Headers.Contains("Access-Control-Allow-Origin")));

        // A cache that has seen one of these answers must not give it to another page (RFC 9110, 12.5.5).
        Assert.All([listed, other, file, none], answer => Assert.Single(answer.Headers.Vary, "Origin"));
        Assert.All([listed, none], answer => Assert.Contains("Accept-Encoding", answer.Headers.Vary));
    }

    [Theory]
    [InlineData("*")]
    [InlineData("null")]
    [InlineData("paddles.example")]
    [InlineData("https://paddles.example/")]
    [InlineData("https://Paddles.example")]
    [InlineData("https://paddles.example/shop")]
    [InlineData("ftp://paddles.example")]
    public void What_is_no_origin_stops_the_service_at_start(string origin)
    {
        using var factory = Listing(origin);

        Assert.Throws<OptionsValidationException>(() => factory.CreateClient());
    }

    private static ApiFactory Listing(params string[] origins) => new(origins.Select((origin, index) => (Key: $"CrossOrigin:AllowedOrigins:{index}", origin))
        .ToDictionary(pair => pair.Key, pair => pair.origin));

    private static async Task<HttpResponseMessage> AskAsync(ApiFactory factory, string? origin)
    {
        using var client = factory.CreateClient();
        using var ask = new HttpRequestMessage(HttpMethod.Get, "/v1/woods");
        if (origin is not null) ask.Headers.Add("Origin", origin);
        return await client.SendAsync(ask);
    }

    private static async Task<HttpResponseMessage> PreflightAsync(
        ApiFactory factory, string method, string address, string headers, string origin = Page)
    {
        using var client = factory.CreateClient();
        using var ask = new HttpRequestMessage(HttpMethod.Options, address);
        ask.Headers.Add("Origin", origin);
        ask.Headers.Add("Access-Control-Request-Method", method);
        ask.Headers.Add("Access-Control-Request-Headers", headers);
        return await client.SendAsync(ask);
    }

    private static string Header(HttpResponseMessage answer, string name) => Assert.Single(answer.Headers.GetValues(name));

    private static string[] List(HttpResponseMessage answer, string name) =>
        Header(answer, name).Split(',', StringSplitOptions.TrimEntries);
}
