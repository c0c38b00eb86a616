using BenchmarkDotNet.Running;

namespace PaddleApi.Benchmarks;

/// <summary>Runs the benchmarks named on the command line, or the HTTP ratios when it says <c>http</c> or <c>files</c>; see DEVELOPERS.md.</summary>
internal static class BenchmarkProgram
{
    private static async Task Main(string[] arguments)
    {
        if (arguments is ["http"]) await HttpRatios.Run();
        else if (arguments is ["files"]) await FileRatios.Run();
        else BenchmarkSwitcher.FromAssembly(typeof(BenchmarkProgram).Assembly).Run(arguments);
    }
}
