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
    /// <summary>How many paddles are made; 4096 when null.</summary>
    public int? Samples { get; init; }
    /// <summary>Another seed, another choice of sticks and slips; 1 when null. The same seed gives the same answer.</summary>
    public int? Seed { get; init; }
    /// <summary>Standard deviation of each of the nine sizes about its plan, mm; 0.4 when null, 0 for a paddle exactly to plan.</summary>
    public double? PlaningErrorMm { get; init; }
}
