using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;
using Microsoft.Playwright;
using PaddleApi.Tests.Docs;

namespace PaddleApi.Page.Tests;

/// <summary>The pages that the guide shows, served by somebody else and opened in a browser; only the service's address is another.</summary>
[Collection(PageTests.Name)]
public sealed class GuideTests(Service service)
{
    private static readonly Guide Shown = new(File.ReadAllText(Path.Combine(Root(), "docs", "guide.md")));

    [BrowserFact]
    public async Task The_outfitters_page_fits_a_paddle_and_shows_it()
    {
        await using var elsewhere = await ServeAsync(Block("An outfitter's page"));
        await using var visitor = await service.VisitorAsync();
        await visitor.Page.GotoAsync(elsewhere.Urls.First());
        var (says, drawing) = (visitor.Page.Locator("#says"), visitor.Page.Locator("#drawing"));

        await visitor.Page.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(drawing).ToBeVisibleAsync();
        await Assertions.Expect(says).ToHaveTextAsync(new System.Text.RegularExpressions.Regex(@"^1\d\d cm long, \d{3} g\.$"));
        Assert.True(await IsDrawnAsync(drawing));
        var first = await drawing.GetAttributeAsync("src");
        var template = await visitor.Page.GetByRole(AriaRole.Link).GetAttributeAsync("href");
        using var client = new HttpClient();
        Assert.Equal("%PDF-"u8.ToArray(), (await client.GetByteArrayAsync(template))[..5]);

        // Somebody taller gets another paddle, and nobody at all is told why.
        await visitor.Page.GetByLabel("height").FillAsync("195");
        await visitor.Page.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(drawing).Not.ToHaveAttributeAsync("src", first!);
        Assert.True(await IsDrawnAsync(drawing));
        visitor.WasQuiet();
        await visitor.Page.GetByLabel("height").FillAsync("20");
        await visitor.Page.GetByRole(AriaRole.Button).ClickAsync();
        await Assertions.Expect(says).ToContainTextAsync("stature");
        visitor.WasQuiet(butForRefusals: true);
    }

    [BrowserFact]
    public async Task A_paddle_made_by_an_older_version_is_still_drawn_by_its_address()
    {
        await using var elsewhere = await ServeAsync(Block("A template by its address"));
        await using var visitor = await service.VisitorAsync();
        await visitor.Page.GotoAsync(elsewhere.Urls.First());

        Assert.True(await IsDrawnAsync(visitor.Page.GetByRole(AriaRole.Img)));
        visitor.WasQuiet();
    }

    [BrowserFact]
    public void Every_page_that_the_guide_shows_is_tried() =>
        Assert.Equal(["An outfitter's page", "A template by its address"], Shown.Blocks.Where(block => block.Language == "html").Select(block => block.Chapter));

    private static Task<bool> IsDrawnAsync(ILocator image) =>
        image.EvaluateAsync<bool>("async image => { await image.decode(); return image.naturalWidth > 100 && image.naturalHeight > 100; }");

    private static string Block(string chapter) => Shown.Blocks.Single(block => block.Chapter == chapter && block.Language == "html").Text;

    private async Task<WebApplication> ServeAsync(string page)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        builder.Logging.ClearProviders();
        var elsewhere = builder.Build();
        var here = page.Replace(Guide.ReadersService, service.Address.ToString().TrimEnd('/'), StringComparison.Ordinal);
        elsewhere.MapGet("/", () => Results.Content(here, "text/html; charset=utf-8"));
        elsewhere.MapGet("/favicon.ico", () => Results.NoContent());
        await elsewhere.StartAsync();
        return elsewhere;
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "PaddleApi.sln"))) folder = folder.Parent!;
        return folder.FullName;
    }
}
