using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using PaddleApi.Hosting;

namespace PaddleApi.Tests.Hosting;

public sealed class ServerSetupTests
{
    [Fact]
    public async Task An_address_already_taken_is_one_line_with_the_way_out()
    {
        using var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        var port = ((IPEndPoint)taken.LocalEndpoint).Port;
        var builder = WebApplication.CreateSlimBuilder();
        builder.WebHost.UseUrls($"http://127.0.0.1:{port}");
        await using var app = builder.Build();
        using var said = new StringWriter();

        Assert.Equal(1, await app.ServeAsync(said));
        var line = Assert.Single(said.ToString().Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains($"127.0.0.1:{port}", line, StringComparison.Ordinal);
        Assert.Contains("--urls", line, StringComparison.Ordinal);
    }
}
