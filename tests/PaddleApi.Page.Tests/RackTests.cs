using Microsoft.Playwright;

namespace PaddleApi.Page.Tests;

/// <summary>The paddle on the maker's own board.</summary>
[Collection(PageTests.Name)]
public sealed class RackTests(Service service)
{
    [BrowserFact]
    public async Task A_board_shows_how_often_the_paddle_lies_on_it_with_a_picture_and_a_build_sheet()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var page = visitor.Page;

        await AskAsync(page, "1830", "260", "33.3");

        await Assertions.Expect(page.Locator("#rack-summary")).ToContainTextAsync("2 such paddles come out of this board");
        Assert.True(await page.EvaluateAsync<bool>("async () => { const image = document.getElementById('rack-picture'); await image.decode(); return image.naturalWidth > 100; }"));
        Assert.True(await page.Locator("#rack-cuts li").CountAsync() >= 3);
        var sheet = await page.RunAndWaitForDownloadAsync(() => page.Locator("#rack-sheet a").ClickAsync());
        Assert.EndsWith(".pdf", sheet.SuggestedFilename, StringComparison.Ordinal);
        visitor.WasQuiet();
    }

    [BrowserFact]
    public async Task A_board_that_is_too_narrow_says_why()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();

        await AskAsync(visitor.Page, "1830", "120", "33.3");

        await Assertions.Expect(visitor.Page.Locator("#rack-summary")).ToContainTextAsync("wide, the paddle");
        await Assertions.Expect(visitor.Page.Locator("#rack-picture")).ToBeHiddenAsync();
        visitor.WasQuiet();
    }

    [BrowserFact]
    public async Task What_is_no_length_is_marked_at_its_field()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();

        await AskAsync(visitor.Page, "1830", "wide", "33.3");

        await Assertions.Expect(visitor.Page.Locator("#rack-width-error")).ToContainTextAsync("Write a length");
        Assert.Equal("true", await visitor.Page.Locator("#rack-width").GetAttributeAsync("aria-invalid"));
        visitor.WasQuiet();
    }

    [BrowserFact]
    public async Task Another_paddle_is_laid_on_the_same_board()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var page = visitor.Page;
        await AskAsync(page, "1540", "200", "33.3");
        await Assertions.Expect(page.Locator("#rack-summary")).ToContainTextAsync("long, the paddle");

        await page.Locator("#hands").FillAsync("820");

        await Assertions.Expect(page.Locator("#rack-summary")).ToContainTextAsync("One paddle comes out of this board");
    }

    private static async Task AskAsync(IPage page, string length, string width, string thickness)
    {
        await page.Locator("#rack-length").FillAsync(length);
        await page.Locator("#rack-width").FillAsync(width);
        await page.Locator("#rack-thickness").FillAsync(thickness);
        await page.Locator("#rack button").ClickAsync();
    }
}
