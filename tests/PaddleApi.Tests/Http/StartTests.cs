using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.Options;
using PaddleApi.Hosting;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Http;

[Collection(HttpTests.Name)]
public sealed class StartTests
{
    [Theory]
    [InlineData("Limits:MaxRequestBodyBytes", "0")]
    [InlineData("Limits:MaxSizeRunBodyBytes", "100")]
    [InlineData("Limits:RequestTimeoutSeconds", "-1")]
    [InlineData("Limits:QueuedSolves", "100000")]
    public void A_limit_that_makes_no_sense_stops_the_service_at_start(string key, string value)
    {
        using var factory = new ApiFactory(new Dictionary<string, string> { [key] = value });

        Assert.Throws<OptionsValidationException>(() => factory.CreateClient());
    }

    [Fact]
    public void A_mistyped_limit_stops_the_service_at_start()
    {
        using var factory = new ApiFactory(new Dictionary<string, string> { ["Limits:MaxBodyBytes"] = "1024" });

        Assert.Throws<InvalidOperationException>(() => factory.CreateClient());
    }

    [Fact]
    public void The_service_listens_on_this_machine_only_unless_told_otherwise()
    {
        Assert.Equal(ServerSetup.DefaultUrl, UrlsOf());
        Assert.Equal("http://*:8080", UrlsOf("--urls", "http://*:8080"));
        Assert.Null(UrlsOf("--http_ports", "8080"));
    }

    private static string? UrlsOf(params string[] arguments)
    {
        var builder = WebApplication.CreateBuilder(arguments);
        builder.AddServer();
        return builder.WebHost.GetSetting("urls");
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
