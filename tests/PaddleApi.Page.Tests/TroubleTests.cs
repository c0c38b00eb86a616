using Microsoft.Playwright;

namespace PaddleApi.Page.Tests;

/// <summary>Slips of the pen, slow lines, lost lines and a busy service.</summary>
[Collection(PageTests.Name)]
public sealed class TroubleTests(Service service)
{
    [BrowserTheory]
    [InlineData("hands", "300", "400")]
    [InlineData("hands", "abc", "Write a length")]
    [InlineData("hands", "", "Write a length")]
    [InlineData("hands", "1,500", "Write a length")]
    [InlineData("board", "3", "15")]
    [InlineData("board", "35 1", "Write a length")]
    public async Task A_refused_answer_is_marked_with_the_reason_beside_it(string field, string typed, string reason)
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var input = visitor.Page.Locator($"#{field}");
        var error = visitor.Page.Locator($"#{field}-error");

        await input.FillAsync(typed);

        await Assertions.Expect(error).ToContainTextAsync(reason);
        await Assertions.Expect(input).ToHaveAttributeAsync("aria-invalid", "true");
        Assert.Contains($"{field}-error", await input.GetAttributeAsync("aria-describedby"), StringComparison.Ordinal);
        await Assertions.Expect(visitor.Status).ToContainTextAsync("Not up to date");

        await input.FillAsync(field == "board" ? "30" : "870");

        await visitor.SettledAsync();
        await Assertions.Expect(error).ToBeHiddenAsync();
        Assert.Null(await input.GetAttributeAsync("aria-invalid"));
        visitor.WasQuiet(butForRefusals: true);
    }

    [BrowserFact]
    public async Task A_range_is_told_in_the_readers_unit()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        await visitor.Page.Locator("input[value=inch]").CheckAsync();
        await visitor.Page.Locator("input[value=height]").CheckAsync();

        await visitor.Page.Locator("#height").FillAsync("12");

        var error = visitor.Page.Locator("#height-error");
        await Assertions.Expect(error).ToContainTextAsync("86 5/8 in"); // 2200 mm
        await Assertions.Expect(error).Not.ToContainTextAsync("mm");
    }

    [BrowserFact]
    public async Task On_a_slow_line_the_last_answer_wins_and_the_overtaken_one_is_given_up()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var before = await visitor.SaysAsync();
        var reached = new TaskCompletionSource();
        var release = new TaskCompletionSource();
        var givenUp = new List<string>();
        visitor.Page.RequestFailed += (_, request) => givenUp.Add(request.PostData ?? "");
        await visitor.Page.RouteAsync("**/v1/fittings", async route =>
        {
            if (route.Request.PostData!.Contains("700", StringComparison.Ordinal))
            {
                reached.TrySetResult();
                await release.Task;
            }

            await route.ContinueAsync();
        });

        await visitor.Page.Locator("#hands").FillAsync("700");
        await reached.Task;
        await Assertions.Expect(visitor.Status).ToContainTextAsync("slow");
        await visitor.Page.Locator("#hands").FillAsync("950");
        var says = await visitor.AnotherThanAsync(before);
        release.SetResult();

        Assert.Contains(givenUp, body => body.Contains("700", StringComparison.Ordinal));
        Assert.Contains("between the hands 950 mm", await visitor.DrawnAsync(), StringComparison.Ordinal);

        // Nor does anything of the overtaken one come in later, when the others beside it have been asked for.
        await Assertions.Expect(visitor.Page.Locator("#others li:has(button)").Nth(1)).ToBeVisibleAsync();
        Assert.Equal(says, await visitor.SaysAsync());
        visitor.WasQuiet();
    }

    [BrowserTheory]
    [InlineData(503)]
    [InlineData(429)]
    public async Task A_busy_service_is_asked_again_when_it_says_so(int status)
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var before = await visitor.SaysAsync();
        var asked = 0;
        await visitor.Page.RouteAsync("**/v1/designs", route => Interlocked.Increment(ref asked) == 1
            ? route.FulfillAsync(new() { Status = status, Headers = new Dictionary<string, string> { ["Retry-After"] = "2" }, Body = "{}", ContentType = "application/problem+json" })
            : route.ContinueAsync());

        await visitor.Page.Locator("#hands").FillAsync("905");

        await Assertions.Expect(visitor.Status).ToContainTextAsync("busy; asking again in 2 s");
        await visitor.AnotherThanAsync(before);
        visitor.WasQuiet(butForRefusals: true);
    }

    [BrowserFact]
    public async Task A_lost_line_is_said_and_waited_for()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.OpenAsync();
        var before = await visitor.SaysAsync();

        await visitor.Context.SetOfflineAsync(true);
        await visitor.Page.Locator("#hands").FillAsync("915");
        await Assertions.Expect(visitor.Status).ToContainTextAsync("No connection");
        await visitor.Context.SetOfflineAsync(false);

        await visitor.AnotherThanAsync(before);
        Assert.Contains("between the hands 915 mm", await visitor.DrawnAsync(), StringComparison.Ordinal);
        visitor.WasQuiet(butForRefusals: true);
    }

    [BrowserFact]
    public async Task A_link_that_holds_no_paddle_leads_to_a_fitted_one()
    {
        await using var visitor = await service.VisitorAsync();

        await visitor.OpenAsync("#p1not-a-paddle");

        await Assertions.Expect(visitor.Page.Locator("#shared")).ToBeHiddenAsync();
        visitor.WasQuiet(butForRefusals: true);
    }
}
