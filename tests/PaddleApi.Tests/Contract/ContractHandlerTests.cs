using System.Net;
using System.Text;
using Xunit.Sdk;

namespace PaddleApi.Tests.Contract;

/// <summary>Shows that the harness catches what it is there to catch.</summary>
public sealed class ContractHandlerTests
{
    private const string Description = """
        {
          "paths": {
            "/things/{id}": {
              "get": {
                "operationId": "getThing",
                "responses": {
                  "200": {
                    "headers": { "ETag": { "required": true } },
                    "content": { "application/json": { "schema": { "$ref": "#/components/schemas/Thing" } } }
                  },
                  "404": { "content": { "application/problem+json": { "schema": { "type": "object" } } } },
                  "default": { "content": { "application/problem+json": { "schema": { "type": "object" } } } }
                }
              }
            }
          },
          "components": {
            "schemas": {
              "Thing": {
                "type": "object",
                "required": ["widthMm"],
                "additionalProperties": false,
                "properties": { "widthMm": { "type": "number", "x-unit": "mm" } }
              }
            }
          }
        }
        """;

    private const string Json = "application/json";

    private const string Problem = "application/problem+json";

    [Theory]
    [InlineData("/things/a", 200, Json, """{"widthMm":1}""")]
    [InlineData("/things/a", 404, Problem, "{}")]
    [InlineData("/things/a", 500, Problem, "{}")]
    [InlineData("/other", 404, Problem, "{}")]
    public async Task An_answer_that_is_documented_passes(string path, int status, string mediaType, string body) =>
        Assert.Equal(status, (int)(await SendAsync(path, status, mediaType, body)).StatusCode);

    [Theory]
    [InlineData("/things/a", 201, Json, """{"widthMm":1}""", "not documented")]
    [InlineData("/things/a", 400, Problem, "{}", "not documented")]
    [InlineData("/things/a", 200, "text/plain", "x", "media type")]
    [InlineData("/things/a", 200, Json, """{"widthMm":"1"}""", "/widthMm")]
    [InlineData("/things/a", 200, Json, "{}", "widthMm")]
    [InlineData("/things/a", 200, Json, """{"widthMm":1,"colour":"red"}""", "/colour")]
    [InlineData("/things/a", 200, Json, "", "no body")]
    [InlineData("/things/a", 404, Problem, "[]", "does not fit")]
    [InlineData("/other", 200, Json, "{}", "outside the description")]
    public async Task An_answer_that_is_not_documented_fails_the_test_that_received_it(
        string path, int status, string mediaType, string body, string fault)
    {
        var failure = await Assert.ThrowsAsync<XunitException>(() => SendAsync(path, status, mediaType, body));

        Assert.Contains(fault, failure.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ETag")]
    [InlineData("X-Request-Id")]
    public async Task A_missing_header_fails_the_test(string header)
    {
        var failure = await Assert.ThrowsAsync<XunitException>(() => SendAsync("/things/a", 200, Json, """{"widthMm":1}""", without: header));

        Assert.Contains(header, failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_not_seen_is_named()
    {
        const string Unvisited = """{"paths":{"/never":{"get":{"responses":{"200":{},"default":{}}}}},"components":{"schemas":{}}}""";

        Assert.Equal(["GET /never -> 200"], Coverage.Unseen(new ApiDescription(Unvisited)));
    }

    private static async Task<HttpResponseMessage> SendAsync(string path, int status, string mediaType, string body, string? without = null)
    {
        var description = new ApiDescription(Description);
        using var client = new HttpClient(new ContractHandler(() => description) { InnerHandler = new Canned(status, mediaType, body, without) });
        return await client.GetAsync(new Uri("http://canned" + path));
    }

    private sealed class Canned(int status, string mediaType, string body, string? without) : HttpMessageHandler
    {
        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
        {
            var response = new HttpResponseMessage((HttpStatusCode)status) { Content = new StringContent(body, Encoding.UTF8, mediaType) };
            response.Headers.Add("ETag", "\"a\"");
            response.Headers.Add("X-Request-Id", "a");
            if (without is not null)
            {
                response.Headers.Remove(without);
            }

            return Task.FromResult(response);
        }
    }
}
