using System.Net;
using System.Text.Json;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Http;

/// <summary>One table of bad requests that have no body: what is sent, the status and the kind of problem.</summary>
[Collection(HttpTests.Name)]
public sealed class BadRequestTests(ApiFixture api)
{
    public static TheoryData<string, string, string?, int, string> Table => new()
    {
        { "GET", "/page", null, 404, "not-found" },
        { "GET", "/v1", null, 404, "not-found" },
        { "GET", "/v2/woods", null, 404, "not-found" },
        { "GET", "/v1/wood", null, 404, "not-found" },
        { "GET", "/v1/woods/pine", null, 404, "not-found" },
        { "GET", "/v1/woods/white-ash/more", null, 404, "not-found" },
        { "GET", "/v1/woods/..%2f..%2fetc", null, 404, "not-found" },
        { "GET", "/v1/blade-families/spoon", null, 404, "not-found" },
        { "GET", "/problems/none", null, 404, "not-found" },
        { "POST", "/v1/woods", null, 405, "method-not-allowed" },
        { "PUT", "/v1/woods/white-ash", null, 405, "method-not-allowed" },
        { "DELETE", "/v1/blade-families", null, 405, "method-not-allowed" },
        { "OPTIONS", "/v1/woods", null, 405, "method-not-allowed" },
        { "GET", "/v1/woods", "text/html", 406, "not-acceptable" },
        { "GET", "/v1/woods", "application/json;q=0", 406, "not-acceptable" },
        { "GET", "/v1/woods", "application/json;q=0, */*", 406, "not-acceptable" },
        { "GET", "/v1/woods", "text/*, image/*", 406, "not-acceptable" },
    };

    [Theory, MemberData(nameof(Table))]
    public async Task A_bad_request_is_refused_with_its_kind(string method, string path, string? accept, int status, string kind)
    {
        using var request = new HttpRequestMessage(new HttpMethod(method), path);
        if (accept is not null)
        {
            request.Headers.Accept.ParseAdd(accept);
        }

        using var answer = await api.Client.SendAsync(request);
        using var problem = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());

        Assert.Equal(status, (int)answer.StatusCode);
        Assert.Equal($"/problems/{kind}", problem.RootElement.GetProperty("type").GetString());
        Assert.Equal(status, problem.RootElement.GetProperty("status").GetInt32());
    }

    [Theory]
    [InlineData("*/*")]
    [InlineData("application/*")]
    [InlineData("text/html, application/json;q=0.1")]
    [InlineData("text/html;q=0.9, */*;q=0.1")]
    public async Task A_caller_who_takes_JSON_among_others_gets_it(string accept)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/v1/woods");
        request.Headers.Accept.ParseAdd(accept);

        using var answer = await api.Client.SendAsync(request);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public async Task An_address_too_long_for_the_server_is_refused()
    {
        using var factory = new ApiFactory();
        using var plain = new HttpClient();
        using var client = factory.SocketClient();

        using var answer = await plain.GetAsync(new Uri(client.BaseAddress!, $"/v1/woods/{new string('x', 9000)}"));

        Assert.Equal(HttpStatusCode.RequestUriTooLong, answer.StatusCode);
    }

    [Fact]
    public async Task The_server_does_not_name_itself_and_forbids_guessing_media_types()
    {
        using var factory = new ApiFactory();
        using var client = factory.SocketClient();

        using var answer = await client.GetAsync("/v1/woods");
        using var ask = new HttpRequestMessage(HttpMethod.Head, "/v1/woods");
        using var head = await client.SendAsync(ask);

        Assert.False(answer.Headers.Contains("Server"));
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.Empty(await head.Content.ReadAsByteArrayAsync());
    }
}
