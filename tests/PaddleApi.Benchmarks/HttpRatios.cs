using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using PaddleApi.Contracts.Designs;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Json;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Solving;
using PaddleApi.Validation;

namespace PaddleApi.Benchmarks;

/// <summary>
/// POST /v1/designs against two endpoints in the same process: one that reads the same request and serialises a ready report, one that
/// reads it and writes the same bytes ready made. Requests go one at a time over a plain socket, in turns, so that the machine's
/// moods hit all three alike; the ratios of the medians are what counts.
/// </summary>
internal static class HttpRatios
{
    private const int Rounds = 25;
    private const int RequestsPerRound = 200; // some tens of milliseconds: processor time is counted in steps of ten

    internal static async Task Run()
    {
        var body = JsonSerializer.SerializeToUtf8Bytes(DesignExamples.HirePaddle, StrictJson.Options);
        await using var app = Build();
        await app.StartAsync();
        var address = new Uri(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());

        string[] paths = ["/v1/designs", "/ready-report", "/ready-bytes"];
        using var client = new PlainClient(address.Port);
        foreach (var path in paths) client.Post(path, body, 2000);

        var times = paths.Select(_ => new List<double>()).ToArray();
        var work = paths.Select(_ => new List<double>()).ToArray();
        using var process = Process.GetCurrentProcess();
        for (var round = 0; round < Rounds; round++)
        {
            for (var i = 0; i < paths.Length; i++)
            {
                var before = process.TotalProcessorTime;
                times[i].Add(client.Post(paths[i], body, RequestsPerRound));
                process.Refresh();
                work[i].Add((process.TotalProcessorTime - before).TotalMicroseconds / RequestsPerRound);
            }
        }

        Print("wall time", times);
        Print("processor time, client included", work);
        await app.StopAsync();
    }

    private static void Print(string what, List<double>[] times)
    {
        var medians = times.Select(Median).ToArray();
        Console.WriteLine($"{what}, median microseconds a request: designs {medians[0]:0}, ready report {medians[1]:0}, ready bytes {medians[2]:0}");
        Console.WriteLine($"  ratio to a ready report: {medians[1] / medians[0]:0.000}   (aim 0.5)");
        Console.WriteLine($"  ratio to ready bytes:    {medians[2] / medians[0]:0.000}   (aim 0.15, never below 0.10)");
    }

    private static WebApplication Build()
    {
        var builder = WebApplication.CreateBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        builder.Services.AddStrictJson();
        builder.Services.AddProblems();
        builder.Services.AddValidation();
        builder.Services.AddTimeouts();
        builder.Services.AddSolveGate();

        var app = builder.Build();
        app.UseProblems();
        app.UseRequestTimeouts();
        app.MapDesigns();

        var design = DesignService.Compute(DesignExamples.HirePaddle);
        var response = design.ToResponse(default);
        var bytes = JsonSerializer.SerializeToUtf8Bytes(response, StrictJson.Options);
        app.MapPost("/ready-report", (DesignRequest _) => TypedResults.Ok(response));
        app.MapPost("/ready-bytes", (DesignRequest _) => TypedResults.Bytes(bytes, "application/json"));
        return app;
    }

    private static double Median(List<double> values)
    {
        values.Sort();
        return values[values.Count / 2];
    }

    /// <summary>As little of an HTTP client as will do, so that the client does not hide the server.</summary>
    private sealed class PlainClient : IDisposable
    {
        private readonly Socket socket = new(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        private readonly byte[] buffer = new byte[1 << 18];

        internal PlainClient(int port) => socket.Connect(IPAddress.Loopback, port);

        /// <summary>Posts a body several times; microseconds a request.</summary>
        internal double Post(string path, byte[] body, int times)
        {
            var head = $"POST {path} HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: {body.Length}\r\n\r\n";
            byte[] request = [.. Encoding.ASCII.GetBytes(head), .. body];
            var watch = Stopwatch.StartNew();
            for (var i = 0; i < times; i++)
            {
                socket.Send(request);
                ReadAnswer(path);
            }

            return watch.Elapsed.TotalMicroseconds / times;
        }

        public void Dispose() => socket.Dispose();

        private void ReadAnswer(string path)
        {
            var filled = 0;
            var headEnd = -1;
            while (true)
            {
                var got = socket.Receive(buffer, filled, buffer.Length - filled, SocketFlags.None);
                if (got == 0) throw new InvalidOperationException("The server closed the connection.");
                filled += got;
                var seen = buffer.AsSpan(0, filled);
                if (headEnd < 0)
                {
                    headEnd = seen.IndexOf("\r\n\r\n"u8);
                    if (headEnd < 0) continue;
                    if (!seen.StartsWith("HTTP/1.1 200"u8)) throw new InvalidOperationException($"{path}: {Encoding.ASCII.GetString(seen[..60])}");
                }

                if (IsComplete(seen, headEnd)) return;
            }
        }

        private static bool IsComplete(ReadOnlySpan<byte> answer, int headEnd)
        {
            var head = Encoding.ASCII.GetString(answer[..headEnd]);
            var length = head.IndexOf("Content-Length: ", StringComparison.OrdinalIgnoreCase);
            if (length < 0) return answer.EndsWith("0\r\n\r\n"u8);
            var text = head.AsSpan(length + "Content-Length: ".Length);
            var end = text.IndexOf('\r');
            return answer.Length >= headEnd + 4 + int.Parse(end < 0 ? text : text[..end], System.Globalization.CultureInfo.InvariantCulture);
        }
    }
}
