using System.Net;
using System.Text.RegularExpressions;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Browsers;

/// <summary>The page for people and its parts as answers: what a browser may do with them, and what a cache.</summary>
[Collection(HttpTests.Name)]
public sealed partial class PageTests(ApiFixture api) : IDisposable
{
    private const string Address = "/";

    // The page is no part of the contract that the usual client holds every answer against.
    private readonly HttpClient client = api.Factory.CreateClient();

    public void Dispose() => client.Dispose();

    [Fact]
    public async Task The_page_brings_all_it_needs_and_no_line_of_script_or_style_inline()
    {
        var page = await client.GetStringAsync(Address);
        string[] parts = [.. Part().Matches(page).Select(match => match.Groups[1].Value)];

        Assert.Equal(["page/icon.svg", "page/page.css", "page/page.js"], parts);
        Assert.DoesNotMatch(Inline(), page);
        foreach (var part in parts) await LeadsToItsPartsAsync($"/{part}");
    }

    [Fact]
    public async Task It_may_call_its_own_origin_and_nothing_else()
    {
        using var answer = await client.GetAsync(Address);

        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.StartsWith("default-src 'none'; script-src 'self'; style-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("connect-src 'self'", policy, StringComparison.Ordinal);
        Assert.Contains("form-action 'none'", policy, StringComparison.Ordinal);
        Assert.EndsWith("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Address, "text/html")]
    [InlineData("/page/page.css", "text/css")]
    [InlineData("/page/page.js", "text/javascript")]
    [InlineData("/page/icon.svg", "image/svg+xml")]
    public async Task A_cache_asks_before_it_gives_it_again_and_is_told_that_nothing_changed(string address, string mediaType)
    {
        using var first = await client.GetAsync(address);
        using var ask = new HttpRequestMessage(HttpMethod.Get, address);
        ask.Headers.IfNoneMatch.Add(first.Headers.ETag!);
        using var again = await client.SendAsync(ask);

        Assert.Equal(mediaType, first.Content.Headers.ContentType!.MediaType);
        Assert.False(first.Headers.ETag!.IsWeak);
        Assert.True(first.Headers.CacheControl!.NoCache);
        Assert.Equal(HttpStatusCode.NotModified, again.StatusCode);
        Assert.False(again.Headers.Contains("Content-Security-Policy"));
    }

    [Theory]
    [InlineData("/?code=p1", HttpStatusCode.BadRequest)]
    [InlineData("/page/page.js?v=1", HttpStatusCode.BadRequest)]
    [InlineData("/Page/page.js", HttpStatusCode.NotFound)]
    [InlineData("/page/page.js/", HttpStatusCode.NotFound)]
    [InlineData("/page/other.js", HttpStatusCode.NotFound)]
    [InlineData("/page/..%2fpage.js", HttpStatusCode.NotFound)]
    public async Task It_has_one_address_as_everything_here(string address, HttpStatusCode status)
    {
        using var answer = await client.GetAsync(address);

        Assert.Equal(status, answer.StatusCode);
    }

    private async Task LeadsToItsPartsAsync(string address)
    {
        using var answer = await client.GetAsync(address);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        if (!address.EndsWith(".js", StringComparison.Ordinal)) return;
        foreach (Match import in Import().Matches(await answer.Content.ReadAsStringAsync())) await LeadsToItsPartsAsync($"/page/{import.Groups[1].Value}");
    }

    [GeneratedRegex(@"(?:src|href)=""(page/[^""]+)""")]
    private static partial Regex Part();

    [GeneratedRegex(@"<style|\sstyle=|\son[a-z]+=|<script(?![^>]*\ssrc=)|javascript:")]
    private static partial Regex Inline();

    [GeneratedRegex(@"from '\./([a-z]+\.js)'")]
    private static partial Regex Import();
}
