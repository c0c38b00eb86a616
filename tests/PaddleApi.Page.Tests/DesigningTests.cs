using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace PaddleApi.Page.Tests;

/// <summary>From an answer to a paddle, its drawing and its files.</summary>
[Collection(PageTests.Name)]
public sealed partial class DesigningTests(Service service)
{
    [BrowserFact]
    public async Task A_paddle_is_there_at_once_and_nothing_is_complained_of()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();

        Assert.True(await visitor.IsDrawnAsync());
        Assert.Contains("balance", await visitor.DrawnAsync(), StringComparison.OrdinalIgnoreCase);
        await Assertions.Expect(visitor.Page.Locator("#figures .figure")).Not.ToHaveCountAsync(0);
        await Assertions.Expect(visitor.Page.Locator("#cautions h3")).ToHaveTextAsync(["This design", "Tools", "Dust", "Finishes", "On the water"]);
        await Assertions.Expect(visitor.Page.Locator("#others li:has(button)").Nth(2)).ToBeVisibleAsync();
        visitor.WasQuiet();
    }

    [BrowserFact]
    public async Task Typed_measurements_change_the_drawing_and_the_template_can_be_fetched()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var (before, drawnBefore) = (await visitor.SaysAsync(), await visitor.DrawnAsync());

        await visitor.Page.Locator("#hands").FillAsync("");
        await visitor.Page.Locator("#hands").PressSequentiallyAsync("940");
        await visitor.AnotherThanAsync(before);

        var drawn = await visitor.DrawnAsync();
        Assert.NotEqual(drawnBefore, drawn);
        Assert.Contains("between the hands 940 mm", drawn, StringComparison.Ordinal);
        Assert.True(await visitor.IsDrawnAsync());
        Assert.Equal("%PDF-", await BeginningAsync(visitor, "templates", 5));
        Assert.Equal("  0", (await BeginningAsync(visitor, "dxf", 5)).TrimEnd('\r', '\n'));
        visitor.WasQuiet();
    }

    [BrowserTheory]
    [InlineData("35 1/2", "35 1/2")]
    [InlineData("35.5", "35 1/2")]
    [InlineData("35½\"", "35 1/2")]
    [InlineData("902 mm", "35 1/2")]
    [InlineData("2' 11 1/2", "35 1/2")]
    public async Task An_inch_shop_types_and_reads_fractions(string typed, string read)
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var before = await visitor.SaysAsync();
        await visitor.Page.Locator("input[value=inch]").CheckAsync();
        await Assertions.Expect(visitor.Page.Locator("#hands")).ToHaveValueAsync("34 5/8");
        before = await visitor.AnotherThanAsync(before);

        await visitor.Page.Locator("#hands").FillAsync(typed);
        await visitor.AnotherThanAsync(before);

        await Assertions.Expect(visitor.Page.Locator("#figures .figure").First).ToContainTextAsync($"Hands {read} in apart");
        Assert.Matches(Ounces(), await visitor.SaysAsync());
        Assert.Contains($"between the hands {read} in", await visitor.DrawnAsync(), StringComparison.Ordinal);
        visitor.WasQuiet();
        var reasons = await visitor.Page.Locator("#reasons").TextContentAsync();
        Assert.Contains($"The hand spacing of {read} in was", reasons, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", reasons, StringComparison.Ordinal);
    }

    [BrowserFact]
    public async Task Height_water_wood_and_board_lead_to_a_paddle_too()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var page = visitor.Page;
        var says = await visitor.SaysAsync();

        await page.Locator("input[value=height]").CheckAsync();
        says = await visitor.AnotherThanAsync(says);
        await page.Locator("#water").SelectOptionAsync("fast-water");
        says = await visitor.AnotherThanAsync(says);
        await page.Locator("#wood").SelectOptionAsync("sugar-maple");
        says = await visitor.AnotherThanAsync(says);
        await page.Locator("#board").FillAsync("27");
        await visitor.AnotherThanAsync(says);

        var request = page.Locator("#requests pre").Last;
        await Assertions.Expect(request).ToContainTextAsync("\"sugar-maple\"");
        await Assertions.Expect(request).ToContainTextAsync("\"boardThicknessMm\": 27");
        await Assertions.Expect(page.Locator("#requests pre").Nth(1)).ToContainTextAsync("\"statureMm\": 1750");
        visitor.WasQuiet();
    }

    [BrowserFact]
    public async Task Another_wood_beside_it_can_be_taken_over()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var page = visitor.Page;
        var before = await visitor.SaysAsync();
        var card = page.Locator("#others li", new() { HasText = "Sitka spruce" });
        var weight = await card.Locator("dd").First.TextContentAsync();

        await card.Locator("button").ClickAsync();

        Assert.Contains(weight!, await visitor.AnotherThanAsync(before), StringComparison.Ordinal);
        await Assertions.Expect(page.Locator("#wood")).ToHaveValueAsync("sitka-spruce");
        visitor.WasQuiet();
    }

    [BrowserFact]
    public async Task Another_blade_is_as_large_as_the_one_before()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var before = await visitor.SaysAsync();
        var areaBefore = BladeArea(await visitor.DrawnAsync());

        await visitor.Page.Locator("#family").SelectOptionAsync("beavertail");
        Assert.StartsWith("Beavertail", await visitor.AnotherThanAsync(before), StringComparison.Ordinal);

        // Length and width are rounded to a millimetre: half a per cent.
        Assert.InRange(BladeArea(await visitor.DrawnAsync()) / areaBefore, 0.99, 1.01);
        visitor.WasQuiet();
    }

    [BrowserFact]
    public async Task A_paddle_that_is_too_weak_is_said_to_be()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var before = await visitor.SaysAsync();
        await visitor.Page.Locator("#wood").SelectOptionAsync("western-redcedar");
        before = await visitor.AnotherThanAsync(before);
        await visitor.Page.Locator("#board").FillAsync("23");
        await visitor.AnotherThanAsync(before);

        await Assertions.Expect(visitor.Page.Locator("#outcome")).ToContainTextAsync("Do not build it so");
        await Assertions.Expect(visitor.Page.Locator("#outcome")).ToContainTextAsync("What to do:");
        await Assertions.Expect(visitor.Page.Locator("#figures .fail")).Not.ToHaveCountAsync(0);
        await Assertions.Expect(visitor.Page.Locator(".figure", new() { HasText = "Yours, as it lies." }).Locator(".value")).ToHaveTextAsync(new Regex(@"^23\smm$"));
        visitor.WasQuiet();
    }

    [BrowserFact]
    public async Task The_link_brings_the_same_paddle_back_and_holds_no_measurement_in_the_clear()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var before = await visitor.SaysAsync();
        await visitor.Page.Locator("#hands").FillAsync("913");
        var says = await visitor.AnotherThanAsync(before);
        var link = new Uri(visitor.Page.Url);
        Assert.Equal("", link.Query);
        Assert.DoesNotContain("913", link.Fragment.Split('&')[1], StringComparison.Ordinal);

        await using var other = await service.VisitorAsync();
        await other.OpenAsync(link.Fragment);

        Assert.Equal(says, await other.SaysAsync());
        Assert.Equal(await visitor.DrawnAsync(), await other.DrawnAsync());
        await Assertions.Expect(other.Page.Locator("#hands")).ToHaveValueAsync("913");
        await Assertions.Expect(other.Page.Locator("#shared")).ToBeVisibleAsync();
        Assert.Equal(Code(link), Code(new(other.Page.Url)));

        // Read in inches it is still the same paddle.
        await other.Page.Locator("input[value=inch]").CheckAsync();
        await other.AnotherThanAsync(says);
        Assert.Equal(Code(link), Code(new(other.Page.Url)));
        other.WasQuiet();
    }

    [BrowserFact]
    public async Task The_curl_that_is_shown_is_the_request_that_was_sent()
    {
        await using var visitor = await service.VisitorAsync(new() { Permissions = ["clipboard-read", "clipboard-write"] });
        var sent = new List<string>();
        visitor.Page.Request += (_, request) =>
        {
            if (request.Method == "POST" && request.Url.EndsWith("/v1/designs", StringComparison.Ordinal)) sent.Add(request.PostData!);
        };
        await visitor.OpenAsync();

        await visitor.Page.Locator("#requests .copy", new() { HasText = "Copy curl" }).Last.ClickAsync();
        await Assertions.Expect(visitor.Page.Locator("#requests .copy", new() { HasText = "Copied" })).ToBeVisibleAsync();

        var copied = await visitor.Page.EvaluateAsync<string>("() => navigator.clipboard.readText()");
        Assert.EndsWith($"/v1/designs -d '{sent[0]}'", copied, StringComparison.Ordinal);
        visitor.WasQuiet();
    }

    private static async Task<string> BeginningAsync(Visitor visitor, string file, int length)
    {
        var fetched = await visitor.Page.RunAndWaitForDownloadAsync(() => visitor.Page.Locator($"[data-file={file}]").ClickAsync());
        var bytes = await File.ReadAllBytesAsync(await fetched.PathAsync());
        return System.Text.Encoding.Latin1.GetString(bytes, 0, length);
    }

    private static double BladeArea(string drawn) => double.Parse(Area().Match(drawn).Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);

    private static string Code(Uri link) => link.Fragment.Split('&')[0];

    [GeneratedRegex(@"\d+\.\d\soz\s\(\d+\sg\)")]
    private static partial Regex Ounces();

    [GeneratedRegex(@"blade area (\d+) cm²")]
    private static partial Regex Area();
}
