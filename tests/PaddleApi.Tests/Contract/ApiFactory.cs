using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;

namespace PaddleApi.Tests.Contract;

/// <summary>Starts the service as it runs in production, with settings and parts changed where a test needs it.</summary>
public sealed class ApiFactory(
    IReadOnlyDictionary<string, string>? settings = null,
    Action<IServiceCollection>? services = null) : WebApplicationFactory<Program>
{
    private static readonly Lazy<Task<ApiDescription>> Described = new(async () =>
    {
        await using var factory = new ApiFactory();
        using var client = factory.CreateClient();
        return new ApiDescription(await client.GetStringAsync(DescriptionPath));
    });

    public const string DescriptionPath = "/openapi/v1.json";

    /// <summary>The description as this build of the code writes it.</summary>
    public static ApiDescription Description => Described.Value.GetAwaiter().GetResult();

    /// <summary>A client whose every answer is held against the description.</summary>
    public HttpClient Client() => CreateDefaultClient(new ContractHandler(() => Description));

    /// <summary>The same over real sockets, for what only the real server enforces.</summary>
    public HttpClient SocketClient()
    {
        UseKestrel(0);
        StartServer();
        var handler = new ContractHandler(() => Description) { InnerHandler = new SocketsHttpHandler() };
        return new HttpClient(handler) { BaseAddress = ClientOptions.BaseAddress };
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseEnvironment("Production");
        builder.UseSetting("Serilog:MinimumLevel:Default", "Fatal");
        builder.UseSetting("Serilog:MinimumLevel:Override:Microsoft.AspNetCore", "Fatal");
        foreach (var (key, value) in settings ?? new Dictionary<string, string>())
        {
            builder.UseSetting(key, value);
        }

        if (services is not null)
        {
            builder.ConfigureServices(services);
        }
    }
}
