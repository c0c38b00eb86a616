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
        for (var turn = 0; turn < 3; turn++)
        {
            foreach (var (path, headers, status) in asks) client.Get(path, headers, status, RequestsPerRound);
            await Task.Delay(2000); // as for the requests that solve
        }

        var work = asks.Select(_ => new List<double>()).ToArray();
        using var process = Process.GetCurrentProcess();
        for (var round = 0; round < Rounds; round++)
        {
            for (var i = 0; i < asks.Length; i++)
            {
                var (path, headers, status) = asks[i];
                work[i].Add(MicrosecondsOfWork(process, () => client.Get(path, headers, status, RequestsPerRound)) / RequestsPerRound);
            }
        }

        var medians = work.Select(HttpRatios.Median).ToArray();
        Console.WriteLine("processor time, client included, median microseconds a request:");
        for (var i = 0; i < asks.Length; i++)
        {
            var name = asks[i].Path == design ? "report" : Path.GetFileName(asks[i].Path);
            Console.WriteLine($"  {asks[i].Status} {name,-20} {medians[i]:0}");
        }

        var outline = Array.FindIndex(asks, ask => ask.Status == "200" && ask.Path.EndsWith("/outline.svg", StringComparison.Ordinal));
        Console.WriteLine($"  trivial to 304:     {medians[0] / medians[1]:0.00}   (aim 0.7)");
        Console.WriteLine($"  outline to report:  {medians[outline] / medians[2]:0.00}   (aim 2 at most)");
        Solid(whole, $"{design}/solid.stl", process);
        await app.StopAsync();
    }

    private static void Solid(HttpClient client, string path, Process process)
    {
        string[] paths = [path, HttpRatios.ReadySolid];
        var work = paths.Select(_ => new List<double>()).ToArray();
        var facets = 0;
        for (var round = 0; round < Rounds; round++)
        {
            for (var i = 0; i < paths.Length; i++)
            {
                work[i].Add(MicrosecondsOfWork(process, () =>
                {
                    for (var k = 0; k < 4; k++) facets = (client.GetByteArrayAsync(paths[i]).GetAwaiter().GetResult().Length - StlHeaderBytes) / FacetBytes;
                }) / 4);
            }
        }

        var medians = work.Select(times => HttpRatios.Median(times) / 1000).ToArray();
        Console.WriteLine($"solid: {facets} facets, {medians[0]:0.0} ms, {medians[0] * 1e5 / facets:0.0} ms for 100 000   (aim 50 at most)");
        Console.WriteLine($"  its ready bytes to it: {medians[1] / medians[0]:0.00}   (aim 0.35)");
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
