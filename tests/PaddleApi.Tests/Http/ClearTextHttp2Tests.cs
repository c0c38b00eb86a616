using System.Net;
using System.Net.Sockets;
using System.Text;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.Extensions.DependencyInjection;
using PaddleApi.Tests.Contract;
using PaddleApi.Tests.Designs;

namespace PaddleApi.Tests.Http;

/// <summary>One address without TLS takes both versions of HTTP.</summary>
[Collection(HttpTests.Name)]
public sealed class ClearTextHttp2Tests : IDisposable
{
    private readonly ApiFactory factory = new();
    private readonly HttpClient client;

    public ClearTextHttp2Tests() => client = factory.SocketClient();

    public void Dispose()
    {
        client.Dispose();
        factory.Dispose();
    }

    [Theory]
    [InlineData("1.1")]
    [InlineData("2.0")]
    public async Task A_caller_chooses_the_version(string version)
    {
        client.DefaultRequestVersion = new Version(version);
        client.DefaultVersionPolicy = HttpVersionPolicy.RequestVersionExact;
        using var least = new StringContent(Requests.Least, Encoding.UTF8, "application/json");

        using var list = await client.GetAsync("/v1/woods");
        using var absent = await client.GetAsync("/v1/woods/none");
        using var design = await client.PostAsync(new Uri("/v1/designs", UriKind.Relative), least);

        Assert.All([list, absent, design], answer => Assert.Equal(new Version(version), answer.Version));
        Assert.Equal([HttpStatusCode.OK, HttpStatusCode.NotFound, HttpStatusCode.OK], new[] { list, absent, design }.Select(answer => answer.StatusCode));
    }

    [Fact]
    public async Task An_address_has_one_spelling_in_HTTP2_too()
    {
        client.DefaultRequestVersion = HttpVersion.Version20;
        client.DefaultVersionPolicy = HttpVersionPolicy.RequestVersionExact;

        using var slash = await client.GetAsync("/v1/woods/");
        using var query = await client.GetAsync("/v1/woods?x=1");

        Assert.Equal((HttpStatusCode.NotFound, HttpStatusCode.BadRequest), (slash.StatusCode, query.StatusCode));
    }

    // The first bytes may come one by one, and begin like those of HTTP/2.
    [Theory]
    [InlineData("GET /v1/woods HTTP/1.1", 200)]
    [InlineData("POST /v1/woods HTTP/1.1", 405)]
    [InlineData("PRIVATE /v1/woods HTTP/1.1", 405)]
    [InlineData("P", 400)]
    public async Task A_caller_who_begins_slowly_is_understood(string line, int status)
    {
        using var slow = new TcpClient { NoDelay = true };
        await slow.ConnectAsync(client.BaseAddress!.Host, client.BaseAddress.Port);
        var stream = slow.GetStream();
        try
        {
            foreach (var letter in $"{line}\r\nHost: {client.BaseAddress.Authority}\r\nConnection: close\r\n\r\n")
            {
                await stream.WriteAsync(new[] { (byte)letter });
                await Task.Yield();
            }
        }
        catch (IOException)
        {
            // What is no request line is answered and hung up on before all of it has been sent.
            Assert.Equal(400, status);
        }

        using var answer = new StreamReader(stream);

        Assert.StartsWith($"HTTP/1.1 {status} ", await answer.ReadLineAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_caller_who_hangs_up_without_a_word_leaves_the_service_well()
    {
        for (var i = 0; i < 20; i++)
        {
            using var silent = new TcpClient();
            await silent.ConnectAsync(client.BaseAddress!.Host, client.BaseAddress.Port);
            if (i % 2 == 0) await silent.GetStream().WriteAsync("PR"u8.ToArray());
        }

        using var answer = await client.GetAsync("/health/live");

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    // Nothing but the silent connection keeps the server from stopping; where it did, this would wait until the connection's patience ends.
    [Fact]
    public async Task A_silent_connection_does_not_keep_the_service_from_stopping()
    {
        using var silent = new TcpClient();
        await silent.ConnectAsync(client.BaseAddress!.Host, client.BaseAddress.Port);
        using var answer = await client.GetAsync("/health/live");
        var server = factory.Services.GetRequiredService<IServer>();

        await server.StopAsync(CancellationToken.None).WaitAsync(TimeSpan.FromSeconds(30));

        Assert.Equal(0, await silent.GetStream().ReadAsync(new byte[1]));
    }
}
