using BenchmarkDotNet.Running;

namespace PaddleApi.Benchmarks;

/// <summary>Runs the benchmarks named on the command line; see DEVELOPERS.md for the commands.</summary>
internal static class BenchmarkProgram
{
    private static void Main(string[] arguments) =>
        BenchmarkSwitcher.FromAssembly(typeof(BenchmarkProgram).Assembly).Run(arguments);
}
