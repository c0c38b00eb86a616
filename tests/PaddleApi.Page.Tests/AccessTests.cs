using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace PaddleApi.Page.Tests;

/// <summary>For a phone at a dusty bench, a keyboard and a screen reader, by day and by night.</summary>
[Collection(PageTests.Name)]
public sealed class AccessTests(Service service)
{
    private const int PhonePx = 360;

    // WCAG 2.2, 2.5.5 (enhanced), from memory: 44 CSS pixels.
    private const double TargetPx = 44;

    [BrowserTheory]
    [InlineData(ColorScheme.Light, 1280)]
    [InlineData(ColorScheme.Dark, 1280)]
    [InlineData(ColorScheme.Light, PhonePx)]
    [InlineData(ColorScheme.Dark, PhonePx)]
    public async Task Nothing_serious_stands_in_anybodys_way(ColorScheme scheme, int widthPx)
    {
        await using var visitor = await service.VisitorAsync(new() { ColorScheme = scheme, ViewportSize = new() { Width = widthPx, Height = 800 } });
        await visitor.OpenAsync();
        await FilledAsync(visitor);
        await BarriersAsync(visitor.Page);

        await visitor.Page.Locator("#hands").FillAsync("300");
        await Assertions.Expect(visitor.Page.Locator("#hands-error")).ToBeVisibleAsync();
        await BarriersAsync(visitor.Page);
    }

    [BrowserTheory]
    [InlineData(PhonePx)]
    [InlineData(320)]
    [InlineData(768)]
    public async Task Nothing_runs_off_the_side(int widthPx)
    {
        await using var visitor = await service.VisitorAsync(new() { ViewportSize = new() { Width = widthPx, Height = 740 }, HasTouch = true, IsMobile = true });
        await visitor.OpenAsync();
        await FilledAsync(visitor);

        Assert.Equal(widthPx, await visitor.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
        visitor.WasQuiet();
    }

    [BrowserFact]
    public async Task A_thumb_hits_what_it_aims_at()
    {
        await using var visitor = await service.VisitorAsync(new() { ViewportSize = new() { Width = PhonePx, Height = 740 }, HasTouch = true, IsMobile = true });
        await visitor.OpenAsync();
        await FilledAsync(visitor);

        // Links within a sentence are as high as its lines.
        var small = await visitor.Page.EvaluateAsync<string[]>(
            """
            least => [...document.querySelectorAll('button, input, select, summary, .button, .sizes a, #whole')]
              .filter(one => one.checkVisibility())
              .map(one => [one, one.getBoundingClientRect()])
              .filter(([, box]) => box.height < least || box.width < least)
              .map(([one, box]) => `${one.tagName} ${one.id || one.textContent} ${box.width} x ${box.height}`)
            """,
            TargetPx);

        Assert.Empty(small);
    }

    [BrowserFact]
    public async Task On_a_phone_both_hands_and_the_balance_point_are_on_the_drawing()
    {
        await using var visitor = await service.VisitorAsync(new() { ViewportSize = new() { Width = PhonePx, Height = 740 } });
        await visitor.OpenAsync();

        var drawing = visitor.Page.Locator("#upright svg");
        await Assertions.Expect(drawing).ToBeVisibleAsync();
        foreach (var name in (string[])["Top hand", "Lower hand", "Balances"]) await Assertions.Expect(drawing).ToContainTextAsync(name);
        await Assertions.Expect(visitor.Picture).ToBeHiddenAsync();
    }

    [BrowserFact]
    public async Task A_keyboard_is_enough()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var page = visitor.Page;
        var keys = page.Keyboard;
        var before = await visitor.SaysAsync();

        // The first stop leads past the questions.
        await keys.PressAsync("Tab");
        await Assertions.Expect(page.Locator(".skip")).ToBeFocusedAsync();
        await keys.PressAsync("Enter");
        await Assertions.Expect(page.Locator("#result")).ToBeFocusedAsync();
        Assert.Equal(before, await visitor.SaysAsync());

        await page.Locator(".skip").FocusAsync();
        await TabToAsync(page, "[name=units]");
        await keys.PressAsync("ArrowRight");
        before = await visitor.AnotherThanAsync(before);
        await TabToAsync(page, "#hands");
        await keys.PressAsync("Control+A");
        await keys.TypeAsync("36 1/4");
        before = await visitor.AnotherThanAsync(before);
        await TabToAsync(page, "#water");
        await keys.PressAsync("ArrowDown");
        before = await visitor.AnotherThanAsync(before);
        await Assertions.Expect(page.Locator("#others button").Nth(1)).ToBeVisibleAsync();
        await TabToAsync(page, "#others button");
        await keys.PressAsync("Enter");
        await visitor.AnotherThanAsync(before);

        await TabToAsync(page, "#weight");
        await keys.TypeAsync("32");
        await TabToAsync(page, "#point");
        await keys.TypeAsync("32");
        await keys.PressAsync("Enter");
        await Assertions.Expect(page.Locator("#bench-answer")).ToBeFocusedAsync();
        visitor.WasQuiet();
    }

    private static async Task TabToAsync(IPage page, string selector)
    {
        const int Most = 200;
        for (var i = 0; i < Most; i++)
        {
            if (await page.EvaluateAsync<bool>("selector => document.activeElement.matches(selector)", selector)) return;
            await page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail($"No number of tabs leads to {selector}.");
    }

    // The others beside it and the stages are there too.
    private static async Task FilledAsync(Visitor visitor)
    {
        await visitor.Page.Locator("#bench-section").ScrollIntoViewIfNeededAsync();
        await Assertions.Expect(visitor.Page.Locator("#point-hint")).ToContainTextAsync("To plan");
        await Assertions.Expect(visitor.Page.Locator("#others button").Nth(2)).ToBeVisibleAsync();
    }

    private static async Task BarriersAsync(IPage page)
    {
        var found = await page.RunAxe();
        Assert.NotEmpty(found.Passes);
        Assert.Empty(found.Violations.Where(violation => violation.Impact is "serious" or "critical")
            .Select(violation => $"{violation.Id}: {violation.Help}, {string.Join("; ", violation.Nodes.Select(node => node.Html))}"));
    }
}
