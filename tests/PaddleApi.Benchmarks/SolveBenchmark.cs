using BenchmarkDotNet.Attributes;
using Paddle.Design;
using Paddle.Design.Request;
using PaddleApi.Contracts.Designs;
using PaddleApi.Endpoints.Designs;

namespace PaddleApi.Benchmarks;

/// <summary>One full solve, from the specification record to the report record, on one thread; and what surrounds it.</summary>
[MemoryDiagnoser]
public class SolveBenchmark
{
    private readonly DesignRequest asked;
    private readonly ResolvedDesign request;
    private readonly DesignReport report;
    private readonly PaddleSpecification pinned;

    /// <summary>Prepares the example request and its design.</summary>
    public SolveBenchmark()
    {
        asked = DesignExamples.HirePaddle;
        request = asked.Complete();
        report = PaddleDesigner.Design(request.Specification);
        pinned = request.Specification with { Pinned = PinnedSizes.To(report.Sizes) };
    }

    /// <summary>The solver chooses all nine sizes.</summary>
    [Benchmark(Baseline = true)]
    public DesignReport Solve() => PaddleDesigner.Design(request.Specification);

    /// <summary>Every size is pinned, as in a design code: nothing is left to solve.</summary>
    [Benchmark]
    public DesignReport Evaluate() => PaddleDesigner.Design(pinned);

    /// <summary>From the contract's request to a specification, every default filled in.</summary>
    [Benchmark]
    public object ReadRequest() => asked.Complete();

    /// <summary>The design code of a solved request.</summary>
    [Benchmark]
    public string EncodeDesignCode() => DesignCodes.Encode(request.Pin(report.Sizes));
}
