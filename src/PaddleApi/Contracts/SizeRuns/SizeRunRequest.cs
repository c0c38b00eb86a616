using Paddle.Design.Fitting;
using Paddle.Design.Units;

namespace PaddleApi.Contracts.SizeRuns;

/// <summary>
/// Which few sizes should a fleet own? The customers are given either one by one or as a mix of populations: the survey's men and
/// women, groups of one's own, or both together.
/// </summary>
internal sealed record SizeRunRequest
{
    /// <summary>Name of the fleet, up to 80 printable characters.</summary>
    public string? Label { get; init; }

    /// <summary>Number of sizes. Fewer are answered when no more lengths lie among the customers.</summary>
    public required int Sizes { get; init; }

    /// <summary>Step between the lengths that are made, mm; 25 when null. 25.4 keeps to whole inches.</summary>
    public double? StepMm { get; init; }

    /// <summary>Paddles in the fleet; without it no counts are given.</summary>
    public int? FleetCount { get; init; }

    /// <summary>Shares of the survey's men and women among the customers.</summary>
    public PopulationRequest? Population { get; init; }

    /// <summary>Groups of customers known by mean and spread, up to 20 with those of the population.</summary>
    public IReadOnlyList<CustomerGroupRequest>? Groups { get; init; }

    /// <summary>Customers one by one, up to 100 000.</summary>
    public IReadOnlyList<CustomerRequest>? Customers { get; init; }

    /// <summary>Shortest overall length that is made, mm.</summary>
    public double? ShortestStockMm { get; init; }

    /// <summary>Longest overall length that is made, mm.</summary>
    public double? LongestStockMm { get; init; }

    /// <summary>Blade length of the fleet's paddles, mm; 620 when null. It turns hand spacings into overall lengths.</summary>
    public double? BladeLengthMm { get; init; }

    /// <summary>Lower hand to throat, mm; 38 when null.</summary>
    public double? FreeboardMm { get; init; }

    /// <summary>How the histogram is lettered, and the units of the reasons.</summary>
    public DrawingRequest? Drawing { get; init; }
}

/// <summary>Shares of the adults of the published survey; only their proportion counts.</summary>
internal sealed record PopulationRequest
{
    /// <summary>Share of men, in any unit.</summary>
    public double? Men { get; init; }

    /// <summary>Share of women, in the same unit.</summary>
    public double? Women { get; init; }
}

/// <summary>A group of customers taken as normally distributed.</summary>
internal sealed record CustomerGroupRequest
{
    /// <summary>Share of the customers, in the unit of the other shares.</summary>
    public required double Share { get; init; }

    /// <summary>Mean, mm.</summary>
    public required double MeanMm { get; init; }

    /// <summary>Standard deviation, mm.</summary>
    public required double StandardDeviationMm { get; init; }

    /// <summary>What the two measure; hand spacing when null.</summary>
    public CustomerQuantity? Quantity { get; init; }
}

/// <summary>One customer: exactly one of the three.</summary>
internal sealed record CustomerRequest
{
    /// <summary>Overall length of the paddle that fits, mm.</summary>
    public double? OverallLengthMm { get; init; }

    /// <summary>Hand spacing, mm.</summary>
    public double? HandSpacingMm { get; init; }

    /// <summary>Stature, mm; the survey's line turns it into a hand spacing.</summary>
    public double? StatureMm { get; init; }
}
