using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using PaddleApi.Tests.Contract;
using PaddleApi.Tests.Designs;

namespace PaddleApi.Tests.PlainForm;

/// <summary>One answer, one address; one body, one reading.</summary>
[Collection(HttpTests.Name)]
public sealed class PlainRequestTests(ApiFixture api, OwnServices own) : IClassFixture<OwnServices>
{
    [Theory]
    [InlineData("gzip")]
    [InlineData("br")]
    [InlineData("deflate, identity")]
    [InlineData("no-such-coding")]
    public async Task A_packed_body_is_refused_saying_what_is_read(string coding)
    {
        using var content = new StringContent(Requests.Least, Encoding.UTF8, "application/json");
        content.Headers.TryAddWithoutValidation("Content-Encoding", coding);

        using var answer = await api.Client.PostAsync(new Uri("/v1/designs", UriKind.Relative), content);

        Assert.Equal(HttpStatusCode.UnsupportedMediaType, answer.StatusCode);
        Assert.Equal("identity", answer.Headers.GetValues("Accept-Encoding").Single());
        Assert.Contains("Content-Encoding", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_body_that_says_it_is_not_packed_is_read()
    {
        using var content = new StringContent(Requests.Least, Encoding.UTF8, "application/json");
        content.Headers.ContentEncoding.Add("identity");

        using var answer = await api.Client.PostAsync(new Uri("/v1/designs", UriKind.Relative), content);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Theory]
    [InlineData("utf-8", HttpStatusCode.OK)]
    [InlineData("\"UTF-8\"", HttpStatusCode.OK)]
    [InlineData("utf8", HttpStatusCode.OK)]
    [InlineData("utf-16", HttpStatusCode.UnsupportedMediaType)]
    [InlineData("iso-8859-1", HttpStatusCode.UnsupportedMediaType)]
    [InlineData("no-such-charset", HttpStatusCode.UnsupportedMediaType)]
    public async Task JSON_is_read_in_UTF8_alone(string charset, HttpStatusCode status)
    {
        using var content = new ByteArrayContent(Encoding.UTF8.GetBytes(Requests.Least));
        content.Headers.TryAddWithoutValidation("Content-Type", $"application/json; charset={charset}");

        using var answer = await api.Client.PostAsync(new Uri("/v1/designs", UriKind.Relative), content);

        Assert.Equal(status, answer.StatusCode);
    }

    // Over sockets, as it is typed: clients tidy an address up before they send it.
    [Theory]
    [InlineData("/v1/woods", 200)]
    [InlineData("http://{host}/v1/woods", 200)]
    [InlineData("/v1/woods/", 404)]
    [InlineData("/V1/woods", 404)]
    [InlineData("/v1/%77oods", 404)]
    [InlineData("/v1/woods/white%2Dash", 404)]
    [InlineData("/v1/./woods", 404)]
    [InlineData("/v1/x/../woods", 404)]
    [InlineData("/v1//woods", 404)]
    [InlineData("//v1/woods", 404)]
    [InlineData("/v1/woods/%77hite-ash/", 404)]
    [InlineData("/v1/woods?", 400)]
    [InlineData("/v1/woods?&", 400)]
    [InlineData("/v1/woods?x", 400)]
    [InlineData("/openapi/v1.json", 200)]
    [InlineData("/OpenApi/v1.json", 404)]
    [InlineData("/openapi/v1.json?x=1", 400)]
    [InlineData("/openapi/v2.json", 404)]
    public async Task An_address_has_one_spelling(string target, int status)
    {
        var (_, client) = own.With(overSockets: true);

        var answer = await Wire.AskAsync(client.BaseAddress!, $"GET {target.Replace("{host}", client.BaseAddress!.Authority, StringComparison.Ordinal)} HTTP/1.1");

        Assert.Equal(status, answer.Status);
        if (status >= 400) Assert.Contains("application/problem+json", answer.Head, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_description_has_a_strong_tag_and_is_not_sent_twice()
    {
        using var client = api.Factory.CreateClient();
        using var first = await client.GetAsync(ApiFactory.DescriptionPath);
        using var ask = new HttpRequestMessage(HttpMethod.Get, ApiFactory.DescriptionPath);
        ask.Headers.IfNoneMatch.Add(first.Headers.ETag!);
        using var second = await client.SendAsync(ask);
        using var packing = new HttpRequestMessage(HttpMethod.Get, ApiFactory.DescriptionPath);
        packing.Headers.AcceptEncoding.Add(new StringWithQualityHeaderValue("gzip"));
        using var packed = await client.SendAsync(packing);

        Assert.False(first.Headers.ETag!.IsWeak);
        Assert.True(first.Headers.CacheControl!.Public);
        Assert.Equal("application/json", first.Content.Headers.ContentType!.MediaType);
        Assert.Equal(HttpStatusCode.NotModified, second.StatusCode);
        Assert.Equal(first.Headers.ETag, second.Headers.ETag);
        Assert.NotEqual(first.Headers.ETag, packed.Headers.ETag);
        Assert.Contains("Accept-Encoding", first.Headers.Vary);
    }

    [Fact]
    public async Task The_same_description_has_the_same_tag_in_another_process()
    {
        using var other = new ApiFactory();
        using var there = other.CreateClient();
        using var here = api.Factory.CreateClient();

        using var one = await here.GetAsync(ApiFactory.DescriptionPath);
        using var two = await there.GetAsync(ApiFactory.DescriptionPath);

        Assert.Equal(one.Headers.ETag, two.Headers.ETag);
    }

    [Fact]
    public async Task More_unknown_parameters_than_are_listed_make_no_long_answer()
    {
        var query = string.Join('&', Enumerable.Range(0, 500).Select(index => $"x{index}={index}"));

        using var answer = await api.Client.GetAsync($"/v1/woods?{query}");
        using var problem = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal(32, problem.RootElement.GetProperty("errors").EnumerateObject().Count());
    }
}
