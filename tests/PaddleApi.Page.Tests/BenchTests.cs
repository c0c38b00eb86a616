using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace PaddleApi.Page.Tests;

/// <summary>The helper in mid-build.</summary>
[Collection(PageTests.Name)]
public sealed partial class BenchTests(Service service)
{
    [BrowserFact]
    public async Task A_weighing_and_a_balance_point_say_where_to_take_wood_with_a_picture()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var page = visitor.Page;
        var (massG, balanceMm) = await PlannedAsync(page, "sanded");

        await AskAsync(page, massG, balanceMm + 20);

        await Assertions.Expect(page.Locator("#bench-summary")).ToContainTextAsync("from the lower third of the blade");
        await Assertions.Expect(page.Locator("#bench-cuts li").First).ToContainTextAsync("off each face");
        await Assertions.Expect(page.Locator("#bench-picture")).ToBeVisibleAsync();
        Assert.True(await page.EvaluateAsync<bool>("async () => { const image = document.getElementById('bench-picture'); await image.decode(); return image.naturalWidth > 100; }"));
        Assert.Contains("Take", await page.Locator("#bench-picture").GetAttributeAsync("alt"), StringComparison.Ordinal);
        visitor.WasQuiet();
    }

    [BrowserFact]
    public async Task A_reading_that_is_doubted_is_believed_when_it_was_taken_again()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var page = visitor.Page;
        var (massG, balanceMm) = await PlannedAsync(page, "sanded");
        var summary = page.Locator("#bench-summary");

        await AskAsync(page, massG, balanceMm + 30);
        await Assertions.Expect(summary).ToContainTextAsync("Measure again");
        await Assertions.Expect(page.Locator("#bench-picture")).ToBeHiddenAsync();
        await page.Locator("#bench-again button").ClickAsync();

        await Assertions.Expect(summary).ToContainTextAsync("Take");
        await Assertions.Expect(page.Locator("#bench-picture")).ToBeVisibleAsync();
        visitor.WasQuiet();
    }

    [BrowserFact]
    public async Task A_paddle_to_plan_is_told_to_go_on()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var (massG, balanceMm) = await PlannedAsync(visitor.Page, "blade-planed");

        await AskAsync(visitor.Page, massG, balanceMm);

        await Assertions.Expect(visitor.Page.Locator("#bench-summary")).ToContainTextAsync("follows its plan");
        visitor.WasQuiet();
    }

    [BrowserFact]
    public async Task An_answer_about_one_paddle_goes_when_another_is_shown()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var (massG, balanceMm) = await PlannedAsync(visitor.Page, "blade-planed");
        await AskAsync(visitor.Page, massG, balanceMm);
        var before = await visitor.SaysAsync();

        await visitor.Page.Locator("#hands").FillAsync("820");
        await visitor.AnotherThanAsync(before);

        await Assertions.Expect(visitor.Page.Locator("#bench-answer")).ToBeHiddenAsync();
        visitor.WasQuiet();
    }

    [BrowserTheory]
    [InlineData("weight", "", "800", "Write a weight")]
    [InlineData("weight", "5", "800", "g")]
    [InlineData("point", "900", "far", "Write a length")]
    [InlineData("point", "900", "9000", "mm")]
    public async Task A_reading_that_cannot_be_is_marked_and_taken_to(string field, string weight, string point, string reason)
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var page = visitor.Page;
        await PlannedAsync(page, "blade-planed");

        await page.Locator("#weight").FillAsync(weight);
        await page.Locator("#point").FillAsync(point);
        await page.Locator("#bench button[type=submit]").ClickAsync();

        await Assertions.Expect(page.Locator($"#{field}-error")).ToContainTextAsync(reason);
        await Assertions.Expect(page.Locator($"#{field}")).ToBeFocusedAsync();
        await Assertions.Expect(page.Locator($"#{field}")).ToHaveAttributeAsync("aria-invalid", "true");
        visitor.WasQuiet(butForRefusals: true);
    }

    // What the page itself says is to be expected at a stage.
    private static async Task<(int MassG, int BalanceMm)> PlannedAsync(IPage page, string stage)
    {
        await page.Locator("#bench-section").ScrollIntoViewIfNeededAsync();
        await page.Locator("#stage").SelectOptionAsync(stage);
        await Assertions.Expect(page.Locator("#point-hint")).ToContainTextAsync("To plan");
        return (First(await page.Locator("#weight-hint").TextContentAsync()), First(await page.Locator("#point-hint").TextContentAsync()));
    }

    private static async Task AskAsync(IPage page, int massG, int balanceMm)
    {
        await page.Locator("#weight").FillAsync(massG.ToString(CultureInfo.InvariantCulture));
        await page.Locator("#point").FillAsync(balanceMm.ToString(CultureInfo.InvariantCulture));
        await page.Locator("#bench button[type=submit]").ClickAsync();
        await Assertions.Expect(page.Locator("#bench-answer")).ToBeVisibleAsync();
    }

    private static int First(string? text) => int.Parse(Planned().Match(text!).Groups[1].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"To plan (\d+)")]
    private static partial Regex Planned();
}
