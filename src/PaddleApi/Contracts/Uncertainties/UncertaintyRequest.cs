using Paddle.Design;
using Paddle.Design.Request;

namespace PaddleApi.Contracts.Uncertainties;

/// <summary>A design to be made many times over, of other sticks and by other hands.</summary>
internal sealed record UncertaintyRequest : IGivesDesign
{
    /// <summary>Samples when none are stated: a power of two, which Sobol's points like.</summary>
    internal const int UsualSamples = 4096;

    /// <summary>Planing error when none is stated, mm: who works to the 32nds of a shop rule stays within one of them, which is two deviations, 19
    /// times in 20. Common practice, no source.</summary>
    internal const double UsualPlaningErrorMm = 0.4;

    /// <summary>A request for a design, which is solved first; this or <c>designCode</c>.</summary>
    public DesignRequest? Design { get; init; }
    /// <summary>Code of a design.</summary>
    public string? DesignCode { get; init; }
    /// <summary>How many paddles are made.</summary>
    [Bound(100, 10_000, "paddles", "Fewer tell nothing of what is rare, more take seconds", Usual = UsualSamples)]
    public int? Samples { get; init; }
    /// <summary>Another seed, another choice of sticks and slips. The same seed gives the same answer.</summary>
    [Bound(0, 1_000_000, "", "As many choices of sticks as anybody needs", Usual = 1)]
    public int? Seed { get; init; }
    /// <summary>Standard deviation of each of the nine sizes about its plan, mm; 0 for a paddle exactly to plan.</summary>
    [Bound(0, 1, "mm", "Who is off by more works without a caliper", Usual = UsualPlaningErrorMm)]
    public double? PlaningErrorMm { get; init; }
}
