using System.Text.Json;
using Microsoft.Playwright;

namespace PaddleApi.Page.Tests;

/// <summary>A paddle that is glued up of strips.</summary>
[Collection(PageTests.Name)]
public sealed class StripsTests(Service service)
{
    [BrowserFact]
    public async Task A_glued_up_paddle_is_lighter_says_what_to_saw_and_opens_again_by_its_link()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var page = visitor.Page;
        await page.Locator("#wood").SelectOptionAsync("white-ash");
        var before = await visitor.SaysAsync();

        await page.GetByLabel("Glued up").CheckAsync();
        await page.GetByLabel("Strip 2: wood").SelectOptionAsync("western-redcedar");

        var after = await visitor.AnotherThanAsync(before);
        await Assertions.Expect(page.Locator("#glue-strips li").First).ToContainTextAsync("white ash, whole length");
        await Assertions.Expect(page.Locator("#glue-strips li").Nth(1)).ToContainTextAsync("western redcedar");
        using (var asked = JsonDocument.Parse((await page.GetByLabel("The paddle, JSON").TextContentAsync())!))
        {
            var construction = asked.RootElement.GetProperty("construction");
            Assert.Equal([36.0, 75.0], construction.GetProperty("strips").EnumerateArray().Select(strip => strip.GetProperty("widthMm").GetDouble()));
            Assert.True(construction.GetProperty("isMirrored").GetBoolean());
        }

        var link = new Uri(page.Url).Fragment;
        await using var other = await service.VisitorAsync();
        await other.OpenAsync(link);
        Assert.Equal(after, await other.SaysAsync());
        await Assertions.Expect(other.Page.GetByLabel("Strip 2: wood")).ToHaveValueAsync("western-redcedar");
        visitor.WasQuiet();
    }

    [BrowserFact]
    public async Task Strips_are_added_taken_away_and_marked_where_they_are_wrong()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var page = visitor.Page;
        await page.GetByLabel("Glued up").CheckAsync();
        await Assertions.Expect(page.GetByLabel("Take strip 1 away")).ToBeDisabledAsync();

        await page.GetByLabel("Strip 2: width").FillAsync("wide");
        await Assertions.Expect(page.Locator("#strips .error:visible")).ToContainTextAsync("Write a length");
        await page.GetByLabel("Strip 2: width").FillAsync("20");
        await Assertions.Expect(page.Locator("#strips .error:visible")).ToContainTextAsync("fill the greatest width");

        await page.GetByText("One more strip", new() { Exact = true }).ClickAsync();
        await page.GetByLabel("Strip 3: width").FillAsync("60");
        await visitor.SettledAsync();
        await page.GetByLabel("Inches").CheckAsync();
        await Assertions.Expect(page.GetByLabel("Strip 3: width in inches")).ToHaveValueAsync("2 3/8");
        await page.GetByLabel("Take strip 3 away").ClickAsync();
        await Assertions.Expect(page.Locator("#strips li")).ToHaveCountAsync(2);
        visitor.WasQuiet(butForRefusals: true);
    }
}
