using BenchmarkDotNet.Attributes;
using Paddle.Design.Fitting;

namespace PaddleApi.Benchmarks;

/// <summary>The exact size run of a hundred thousand customers; aim: under 100 ms.</summary>
[MemoryDiagnoser]
public class SizeRunBenchmark
{
    private readonly SizeRunRequest request;

    /// <summary>Prepares the crowd.</summary>
    public SizeRunBenchmark()
    {
        var random = new Random(5);
        request = new()
        {
            Sizes = 8,
            Customers = [.. Enumerable.Range(0, 100_000).Select(_ => new CustomerRequest { HandSpacingMm = 700 + (300 * random.NextDouble()) })],
            FleetCount = 500,
        };
    }

    /// <summary>Eight sizes on the 25 mm step.</summary>
    [Benchmark]
    public object EightSizes() => SizeRun.Advise(request);
}
