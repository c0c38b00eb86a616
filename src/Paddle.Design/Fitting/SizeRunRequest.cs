using Paddle.Design.Units;

namespace Paddle.Design.Fitting;

/// <summary>
/// Which few sizes should a fleet own? The customers are given either one by one or as a mix of populations: the survey's men and
/// women, groups of one's own, or both together.
/// </summary>
internal sealed record SizeRunRequest
{
    /// <summary>Name of the fleet, up to 80 printable characters.</summary>
    public string? Label { get; init; }
    /// <summary>Number of sizes. Fewer are answered when no more lengths lie among the customers.</summary>
    [Bound(1, SizeRun.MostSizes, "sizes", "More than eight is no longer a run of few sizes")]
    public required int Sizes { get; init; }
    /// <summary>Step between the lengths that are made, mm. 25.4 keeps to whole inches.</summary>
    [Bound(1, 100, "mm", "Lengths are made to a millimetre at best, and a coarser step leaves no choice", Usual = SizeRun.DefaultStepMm)]
    public double? StepMm { get; init; }
    /// <summary>Paddles in the fleet; without it no counts are given.</summary>
    [Bound(1, 1_000_000, "paddles", "A fleet has at least one paddle")]
    public int? FleetCount { get; init; }
    /// <summary>Shares of the survey's men and women among the customers.</summary>
    public PopulationRequest? Population { get; init; }
    /// <summary>Groups of customers known by mean and spread, up to 20 with those of the population.</summary>
    public IReadOnlyList<CustomerGroupRequest>? Groups { get; init; }
    /// <summary>Customers one by one, up to 100 000.</summary>
    public IReadOnlyList<CustomerRequest>? Customers { get; init; }
    /// <summary>Shortest overall length that is made, mm.</summary>
    [FleetLengthBound]
    public double? ShortestStockMm { get; init; }
    /// <summary>Longest overall length that is made, mm.</summary>
    [FleetLengthBound]
    public double? LongestStockMm { get; init; }
    /// <summary>Blade length of the fleet's paddles, mm. It turns hand spacings into overall lengths.</summary>
    [Bound(PaddleLengths.LeastBladeLengthMm, PaddleLengths.MostBladeLengthMm, "mm", "Blades are designed in this range", Usual = SizeRun.DefaultBladeLengthMm)]
    public double? BladeLengthMm { get; init; }
    /// <summary>Lower hand to throat, mm.</summary>
    [Bound(PaddleLengths.LeastFreeboardMm, PaddleLengths.MostFreeboardMm, "mm", "Paddles are designed in this range", Usual = LengthRules.DefaultFreeboardMm)]
    public double? FreeboardMm { get; init; }
    /// <summary>How the histogram is lettered, and the units of the reasons.</summary>
    public DrawingRequest? Drawing { get; init; }
}

/// <summary>The range of an overall length of customers' paddles: wider than what is designed, for fleets as they are.</summary>
internal sealed class FleetLengthBoundAttribute() : BoundAttribute(800, 2200, "mm", "Canoe paddles are made in this range");

/// <summary>The range of a share of customers.</summary>
internal sealed class ShareBoundAttribute() : BoundAttribute(0, 1_000_000_000, "share", "Shares are parts of one whole, none negative");

/// <summary>Shares of the adults of the published survey; only their proportion counts.</summary>
internal sealed record PopulationRequest
{
    /// <summary>Share of men, in any unit.</summary>
    [ShareBound]
    public double? Men { get; init; }
    /// <summary>Share of women, in the same unit.</summary>
    [ShareBound]
    public double? Women { get; init; }
}

/// <summary>A group of customers taken as normally distributed.</summary>
internal sealed record CustomerGroupRequest
{
    /// <summary>Share of the customers, in the unit of the other shares.</summary>
    [ShareBound]
    public required double Share { get; init; }
    /// <summary>Mean, mm.</summary>
    public required double MeanMm { get; init; }
    /// <summary>Standard deviation, mm.</summary>
    [Bound(1, 300, "mm", "No group of people is more alike or more unlike")]
    public required double StandardDeviationMm { get; init; }
    /// <summary>What the two measure; hand spacing when null.</summary>
    public CustomerQuantity? Quantity { get; init; }
}

/// <summary>One customer: exactly one of the three.</summary>
internal sealed record CustomerRequest
{
    /// <summary>Overall length of the paddle that fits, mm.</summary>
    [FleetLengthBound]
    public double? OverallLengthMm { get; init; }
    /// <summary>Hand spacing, mm.</summary>
    [Measured("handSpacingMm")]
    public double? HandSpacingMm { get; init; }
    /// <summary>Stature, mm; the survey's line turns it into a hand spacing.</summary>
    [Measured("statureMm")]
    public double? StatureMm { get; init; }
}

/// <summary>What a customer's figure measures.</summary>
internal enum CustomerQuantity
{
    /// <summary>Overall length of the paddle that fits, mm.</summary>
    OverallLength,
    /// <summary>Hand spacing, mm.</summary>
    HandSpacing,
    /// <summary>Stature, mm.</summary>
    Stature,
}
