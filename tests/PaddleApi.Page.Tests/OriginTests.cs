using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;

namespace PaddleApi.Page.Tests;

/// <summary>A page of somebody else's that calls the service, and this page behind somebody's prefix.</summary>
[Collection(PageTests.Name)]
public sealed class OriginTests(Service service)
{
    [BrowserFact]
    public async Task A_page_of_another_origin_gets_what_this_page_gets()
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        builder.Logging.ClearProviders();
        await using var elsewhere = builder.Build();
        elsewhere.MapGet("/", () => Results.Content("<!doctype html><title>An outfitter</title><p id=out>nothing", "text/html"));
        await elsewhere.StartAsync();
        await using var visitor = await service.VisitorAsync();
        await visitor.Page.GotoAsync(elsewhere.Urls.First());
        Assert.NotEqual(service.Address.Authority, new Uri(visitor.Page.Url).Authority);

        var said = await visitor.Page.EvaluateAsync<string>(
            """
            async service => {
              const post = (path, body) => fetch(service + path, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body) });
              const fitting = await post('v1/fittings', { paddler: { statureMm: 1700 } });
              const design = await post('v1/designs', (await fitting.json()).design);
              const { links } = await design.json();
              const image = new Image();
              image.crossOrigin = 'anonymous';
              image.src = service + links.overview.slice(1);
              await image.decode();
              return [fitting.status, design.status, image.naturalWidth > 100 ? 'drawn' : 'not drawn'].join(' ');
            }
            """,
            service.Address.ToString());

        Assert.Equal("200 200 drawn", said);
    }

    // A proxy that takes its prefix off before it asks the service: the page knows nothing of it.
    [BrowserFact]
    public async Task Behind_a_prefix_the_page_works_too()
    {
        await using var visitor = await service.VisitorAsync();
        await visitor.Page.RouteAsync("**/*", async route =>
        {
            var asked = new Uri(route.Request.Url);
            if (!asked.AbsolutePath.StartsWith("/paddles/", StringComparison.Ordinal))
            {
                await route.FulfillAsync(new() { Status = 404 });
                return;
            }

            var answer = await route.FetchAsync(new() { Url = new Uri(service.Address, asked.PathAndQuery["/paddles".Length..]).ToString() });
            await route.FulfillAsync(new() { Response = answer });
        });

        await visitor.OpenAsync("paddles/");

        Assert.True(await visitor.IsDrawnAsync());
        Assert.Contains("/paddles/v1/designs/", await visitor.Page.Locator("[data-file=templates]").GetAttributeAsync("href"), StringComparison.Ordinal);
        visitor.WasQuiet();
    }
}
