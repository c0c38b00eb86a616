using System.Diagnostics;
using Paddle.Drawings;
using PaddleApi.Endpoints.Designs;

namespace PaddleApi.Benchmarks;

/// <summary>
/// Files of a design against other answers of the same process, in turns: a file that the caller holds (304) against the least that the
/// platform can answer, the outline against the report, and the time a solid takes for a hundred thousand facets.
/// </summary>
internal static class FileRatios
{
    private const int Rounds = 11;
    private const int RequestsPerRound = 100;
    private const int StlHeaderBytes = 84;
    private const int FacetBytes = 50;

    internal static async Task Run()
    {
        await using var app = HttpRatios.Build();
        await app.StartAsync();
        var address = HttpRatios.AddressOf(app);
        var design = $"{DesignAddresses.Root}/{DesignService.Compute(DesignExamples.HirePaddle).Code}";
        using var whole = new HttpClient { BaseAddress = address };
        using var first = await whole.GetAsync($"{design}/outline.svg");

        (string Path, string Headers, string Status)[] asks =
        [
            ("/trivial", "", "200"),
            ($"{design}/outline.svg", $"If-None-Match: {first.Headers.ETag!.Tag}\r\n", "304"),
            (design, "", "200"),
            .. DesignFiles.All.Where(file => file is not IBlockwiseDesignFile).Select(file => ($"{design}/{file.FileName}", "", "200")),
        ];
        using var client = new PlainClient(address.Port);
        foreach (var (path, headers, status) in asks) client.Get(path, headers, status, RequestsPerRound);
        var work = asks.Select(_ => new List<double>()).ToArray();
        using var process = Process.GetCurrentProcess();
        for (var round = 0; round < Rounds; round++)
        {
            for (var i = 0; i < asks.Length; i++)
            {
                work[i].Add(MicrosecondsOfWork(process, () => client.Get(asks[i].Path, asks[i].Headers, asks[i].Status, RequestsPerRound)) / RequestsPerRound);
            }
        }

        var medians = work.Select(HttpRatios.Median).ToArray();
        Console.WriteLine("processor time, client included, median microseconds a request:");
        for (var i = 0; i < asks.Length; i++) Console.WriteLine($"  {asks[i].Status} {Path.GetFileName(asks[i].Path)[..Math.Min(24, Path.GetFileName(asks[i].Path).Length)],-24} {medians[i]:0}");
        Console.WriteLine($"  trivial to 304:     {medians[0] / medians[1]:0.00}   (aim 0.7)");
        Console.WriteLine($"  outline to report:  {medians[4] / medians[2]:0.00}   (aim 2 at most)");
        await Solid(whole, $"{design}/solid.stl", process);
        await app.StopAsync();
    }

    private static async Task Solid(HttpClient client, string path, Process process)
    {
        var facets = ((await client.GetByteArrayAsync(path)).Length - StlHeaderBytes) / FacetBytes;
        var work = new List<double>();
        for (var round = 0; round < Rounds; round++)
        {
            work.Add(MicrosecondsOfWork(process, () =>
            {
                for (var i = 0; i < 4; i++) client.GetByteArrayAsync(path).GetAwaiter().GetResult();
            }) / 4);
        }

        var perFile = HttpRatios.Median(work) / 1000;
        Console.WriteLine($"solid: {facets} facets, {perFile:0.0} ms, {perFile * 1e5 / facets:0.0} ms for 100 000   (aim 50 at most)");
    }

    private static double MicrosecondsOfWork(Process process, Action work)
    {
        process.Refresh();
        var before = process.TotalProcessorTime;
        work();
        process.Refresh();
        return (process.TotalProcessorTime - before).TotalMicroseconds;
    }
}
