using Microsoft.Extensions.Options;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Http;

[Collection(HttpTests.Name)]
public sealed class StartTests
{
    [Theory]
    [InlineData("Limits:MaxRequestBodyBytes", "0")]
    [InlineData("Limits:RequestTimeoutSeconds", "-1")]
    [InlineData("Limits:QueuedSolves", "100000")]
    public void A_limit_that_makes_no_sense_stops_the_service_at_start(string key, string value)
    {
        using var factory = new ApiFactory(new Dictionary<string, string> { [key] = value });

        Assert.Throws<OptionsValidationException>(() => factory.CreateClient());
    }

    [Fact]
    public async Task The_page_to_try_the_service_on_brings_all_it_needs()
    {
        using var factory = new ApiFactory();
        using var client = factory.CreateClient();

        var page = await client.GetStringAsync("/docs/index.html");

        Assert.DoesNotContain("https://", page, StringComparison.Ordinal);
        foreach (var part in new[] { "swagger-ui.css", "swagger-ui-bundle.js", "swagger-ui-standalone-preset.js" })
        {
            Assert.Contains(part, page, StringComparison.Ordinal);
            Assert.True((await client.GetByteArrayAsync($"/docs/{part}")).Length > 1000);
        }
    }
}
