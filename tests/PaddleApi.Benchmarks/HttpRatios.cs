using System.Diagnostics;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Paddle.Design.Request;
using Paddle.Drawings;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Endpoints.Designs.Files;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Json;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;
using PaddleApi.Hosting.Telemetry;
using PaddleApi.Hosting.Work;

namespace PaddleApi.Benchmarks;

/// <summary>
/// POST /v1/designs against two endpoints in the same process: one that reads the same request and serialises a ready report, one that
/// reads it and writes the same bytes ready made. Requests go one at a time over a plain socket, in turns, so that the machine's
/// moods hit all three alike; the ratios of the medians are what counts.
/// </summary>
internal static class HttpRatios
{
    internal const string ReadySolid = "/ready-solid";
    private const int Rounds = 25;
    private const int RequestsPerRound = 200; // some tens of milliseconds: processor time is counted in steps of ten

    internal static async Task Run()
    {
        var body = JsonSerializer.SerializeToUtf8Bytes(DesignExamples.HirePaddle, StrictJson.Options);
        await using var app = Build();
        await app.StartAsync();
        var address = AddressOf(app);

        string[] paths = ["/v1/designs", "/ready-report", "/ready-bytes"];
        using var client = new PlainClient(address.Port);
        for (var turn = 0; turn < 3; turn++)
        {
            foreach (var path in paths) client.Post(path, body, 2000);
            await Task.Delay(2000); // what is hot is compiled again beside the work, which takes its time where others work too
        }

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

    internal static WebApplication Build()
    {
        var builder = WebApplication.CreateBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        builder.Services.AddStrictJson();
        builder.Services.AddProblems();
        builder.Services.AddValidation();
        builder.Services.AddTimeouts();
        builder.Services.AddWorkGates().AddSingleton<ServiceMeters>();

        var app = builder.Build();
        app.UseProblems();
        app.UseWholeBodies();
        app.UseRequestTimeouts();
        app.MapDesigns();

        var design = DesignService.Compute(DesignExamples.HirePaddle);
        var response = design.ToResponse(default);
        var bytes = JsonSerializer.SerializeToUtf8Bytes(response, StrictJson.Options);
        using var solid = new MemoryStream();
        DesignFiles.Find("solid.stl")!.Write(design.Report, DesignFileQuery.Default(design.Resolved.Request, design.Code), solid);
        var file = solid.ToArray();
        app.MapGet(ReadySolid, () => TypedResults.Bytes(file, "model/stl"));
        app.MapGet("/trivial", () => TypedResults.Text("paddle"));
        app.MapPost("/ready-report", (DesignRequest _) => TypedResults.Ok(response));
        app.MapPost("/ready-bytes", (DesignRequest _) => TypedResults.Bytes(bytes, "application/json"));
        return app;
    }

    internal static Uri AddressOf(WebApplication app) =>
        new(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());

    internal static double Median(List<double> values)
    {
        values.Sort();
        return values[values.Count / 2];
    }
}
