using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.Options;

namespace PaddleApi.Hosting;

/// <summary>Where the service listens and what the server refuses before any of our code runs.</summary>
internal static class ServerSetup
{
    /// <summary>The address when none is configured: this machine only, so that nothing is open by accident.</summary>
    public const string DefaultUrl = "http://localhost:5080";

    private const int MostUnreadBytes = 64 * 1024;

    private const double SlowestBytesPerSecond = 1024;

    private static readonly string[] AddressKeys = ["urls", "http_ports", "https_ports"];

    /// <summary>Sets the address and the server's limits.</summary>
    public static WebApplicationBuilder AddServer(this WebApplicationBuilder builder)
    {
        // In code and not in appsettings.json, which is found only when the service is started from its own folder.
        var configured = AddressKeys.Any(key => !string.IsNullOrEmpty(builder.Configuration[key]))
            || builder.Configuration.GetSection("Kestrel:Endpoints").Exists();
        if (!configured)
        {
            builder.WebHost.UseUrls(DefaultUrl);
        }

        builder.Services.AddOptions<ServiceLimits>().BindConfiguration(
            ServiceLimits.Section, binder => binder.ErrorOnUnknownConfiguration = true).ValidateDataAnnotations().ValidateOnStart();
        builder.WebHost.UseKestrelHttpsConfiguration();
        builder.WebHost.ConfigureKestrel((_, kestrel) =>
        {
            var limits = kestrel.ApplicationServices.GetRequiredService<IOptions<ServiceLimits>>().Value;
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = limits.MaxRequestBodyBytes;
            kestrel.Limits.MaxConcurrentConnections = limits.MaxConnections;
            // What has come and is not taken yet waits here, for each connection.
            kestrel.Limits.MaxRequestBufferSize = Math.Max(MostUnreadBytes, limits.MaxRequestLineBytes);
            kestrel.Limits.MaxRequestLineSize = limits.MaxRequestLineBytes;

            // Slower than a telephone line is nobody who means well. What drips faster still is ended by WholeBodies.
            kestrel.Limits.MinRequestBodyDataRate = new MinDataRate(SlowestBytesPerSecond, TimeSpan.FromSeconds(5));
            kestrel.Limits.MinResponseDataRate = new MinDataRate(SlowestBytesPerSecond, TimeSpan.FromSeconds(5));

            // Requests are small: a caller who takes longer than this to send the headers holds a connection open for nothing.
            kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(10);
            kestrel.Limits.KeepAliveTimeout = TimeSpan.FromSeconds(60);
            kestrel.ConfigureEndpointDefaults(listen => listen.UseClearTextHttp2(kestrel.Limits.KeepAliveTimeout));
        });
        return builder;
    }

    /// <summary>Serves until told to end. An address already taken is one line with the way out, and no trace of the inside.</summary>
    /// <returns>Exit code: 0, or 1 where the address was taken.</returns>
    public static async Task<int> ServeAsync(this WebApplication app, TextWriter errors)
    {
        try
        {
            await app.RunAsync();
            return 0;
        }
        catch (IOException fault) when (IsTaken(fault))
        {
            await errors.WriteLineAsync($"{fault.Message} Stop what listens there, or name another address: --urls http://localhost:5081");
            return 1;
        }
    }

    /// <summary>Whether an address to listen on is taken.</summary>
    internal static bool IsTaken(Exception? fault) => fault is IOException { InnerException: AddressInUseException };
}
