using BenchmarkDotNet.Attributes;
using Paddle.Design;
using PaddleApi.Contracts.Designs;
using PaddleApi.Endpoints.Designs;

namespace PaddleApi.Benchmarks;

/// <summary>One full solve, from the specification record to the report record, on one thread; and what surrounds it.</summary>
[MemoryDiagnoser]
public class SolveBenchmark
{
    private static readonly ResolvedDesign Request = DesignRequestReader.Read(DesignExamples.HirePaddle);
    private static readonly DesignReport Report = PaddleDesigner.Design(Request.Specification);

    private static readonly PaddleSpecification Pinned =
        Request.Specification with { Pinned = PinnedSizes.To(Report.Sizes) };

    /// <summary>The solver chooses all nine sizes.</summary>
    [Benchmark(Baseline = true)]
    public DesignReport Solve() => PaddleDesigner.Design(Request.Specification);

    /// <summary>Every size is pinned, as in a design code: nothing is left to solve.</summary>
    [Benchmark]
    public DesignReport Evaluate() => PaddleDesigner.Design(Pinned);

    /// <summary>From the contract's request to a specification, every default filled in.</summary>
    [Benchmark]
    public ResolvedDesign ReadRequest() => DesignRequestReader.Read(DesignExamples.HirePaddle);

    /// <summary>The design code of a solved request.</summary>
    [Benchmark]
    public string EncodeDesignCode() => DesignCodes.Encode(Request.Pin(Report.Sizes));
}
