using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace PaddleApi.Page.Tests;

/// <summary>Somebody at the page, and what the browser complained of meanwhile.</summary>
public sealed partial class Visitor : IAsyncDisposable
{
    private const string Refused = "Failed to load resource";

    private readonly IBrowserContext context;
    private readonly Uri address;
    private readonly List<string> complaints = [];

    internal Visitor(IBrowserContext context, IPage page, Uri address)
    {
        (this.context, this.address, Page) = (context, address, page);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning") complaints.Add(message.Text);
        };
        page.PageError += (_, fault) => complaints.Add(fault);
    }

    public IPage Page { get; }

    public IBrowserContext Context => context;

    public ILocator Status => Page.Locator("#status");

    public ILocator Picture => Page.Locator("#picture");

    /// <summary>Opens the page and waits for its first paddle.</summary>
    public async Task OpenAsync(string rest = "")
    {
        await Page.GotoAsync(new Uri(address, rest).ToString());
        await SettledAsync();
    }

    /// <summary>Waits until the answers on the page are those of the paddle shown.</summary>
    public Task SettledAsync() => Assertions.Expect(Status).ToHaveTextAsync(Shown());

    /// <summary>Waits until it shows a paddle of another summary than before.</summary>
    public async Task<string> AnotherThanAsync(string before)
    {
        await Page.WaitForFunctionAsync(
            "before => { const text = document.getElementById('status').textContent; return / balances /.test(text) && text !== before; }", before);
        return await SaysAsync();
    }

    public async Task<string> SaysAsync() => (await Status.TextContentAsync())!;

    /// <summary>What a reader who cannot see the drawing is told of it.</summary>
    public async Task<string> DrawnAsync() => (await Picture.GetAttributeAsync("alt"))!;

    /// <summary>Whether the browser could draw the picture that it was given.</summary>
    public Task<bool> IsDrawnAsync() => Page.EvaluateAsync<bool>(
        "async () => { const image = document.getElementById('picture'); await image.decode(); return image.naturalWidth > 100 && image.naturalHeight > 100; }");

    /// <summary>The browser had nothing to complain of; a refusal that was asked for it notes by itself.</summary>
    public void WasQuiet(bool butForRefusals = false) =>
        Assert.Equal([], complaints.Where(text => !butForRefusals || !text.StartsWith(Refused, StringComparison.Ordinal)));

    public ValueTask DisposeAsync() => context.DisposeAsync();

    [GeneratedRegex(@"\S.*; balances ")]
    private static partial Regex Shown();
}
