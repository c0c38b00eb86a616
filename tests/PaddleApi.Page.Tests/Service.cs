using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Playwright;

namespace PaddleApi.Page.Tests;

/// <summary>The service on a port of its own and a browser before it, for all tests of the page.</summary>
public sealed class Service : IAsyncLifetime
{
    private const float PatienceMs = 30_000;

    private readonly Stack<IAsyncDisposable> started = [];
    private IPlaywright? playwright;
    private IBrowser? browser;

    /// <summary>Where the page lives.</summary>
    public Uri Address { get; private set; } = null!;

    public async Task InitializeAsync()
    {
        if (Chromium.Path is null) return;
        var factory = new Factory();
        started.Push(factory);
        factory.UseKestrel(0);
        factory.StartServer();
        Address = factory.ClientOptions.BaseAddress;
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = Chromium.Path, Args = ["--no-sandbox", "--disable-dev-shm-usage"] });
        started.Push(browser);
        Assertions.SetDefaultExpectTimeout(PatienceMs);
    }

    /// <summary>A visitor with nothing of any other visitor's, who waits as long as it takes.</summary>
    public async Task<Visitor> VisitorAsync(BrowserNewContextOptions? options = null)
    {
        options ??= new();
        options.ViewportSize ??= new() { Width = 1280, Height = 900 };
        options.Locale ??= "en-GB";
        var context = await browser!.NewContextAsync(options);
        context.SetDefaultTimeout(PatienceMs);
        return new(context, await context.NewPageAsync(), Address);
    }

    public async Task DisposeAsync()
    {
        while (started.TryPop(out var part)) await part.DisposeAsync();
        playwright?.Dispose();
    }

    private sealed class Factory : WebApplicationFactory<Program>
    {
        protected override void ConfigureWebHost(IWebHostBuilder builder)
        {
            builder.UseEnvironment("Production");
            builder.UseSetting("Serilog:MinimumLevel:Default", "Fatal");
            builder.UseSetting("Serilog:MinimumLevel:Override:Microsoft.AspNetCore", "Fatal");
        }
    }
}

/// <summary>One service and one browser serve all.</summary>
[CollectionDefinition(Name)]
public sealed class PageTests : ICollectionFixture<Service>
{
    public const string Name = "Page";
}
