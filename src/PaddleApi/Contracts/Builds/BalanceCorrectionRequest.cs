using Paddle.Design;
using Paddle.Design.Build;

namespace PaddleApi.Contracts.Builds;

/// <summary>A paddle weighed and balanced while it is being made.</summary>
internal sealed record BalanceCorrectionRequest
{
    /// <summary>Code of its design; required.</summary>
    public string? DesignCode { get; init; }

    /// <summary>The stage just done; required.</summary>
    public string? Stage { get; init; }

    /// <summary>Mass as weighed, g; required.</summary>
    [Bound(100, 20000, "g", "From a finished paddle to a heavy blank")]
    public double? MassG { get; init; }

    /// <summary>Balance point, mm from the finished top of the grip along the shaft's line; required.</summary>
    [BalancePointBound]
    public double? BalanceMm { get; init; }

    /// <summary>Thickness readings on the centre line; none when null.</summary>
    public IReadOnlyList<ThicknessReadingRequest>? Readings { get; init; }

    /// <summary>How well each reading is known; what a kitchen scale, a finger and a caliper give unless stated.</summary>
    public BalanceErrorsRequest? ReadingErrors { get; init; }

    /// <summary>
    /// Cuts of earlier corrections that have been taken, so that the paddle is held against its plan less these; none when null.
    /// </summary>
    public IReadOnlyList<EarlierRemovalRequest>? EarlierRemovals { get; init; }

    /// <summary>
    /// Whether the readings have been taken again and hold: what was doubted is then believed, unless it is beyond belief. Not so when null.
    /// </summary>
    public bool? MeasuredAgain { get; init; }

    /// <summary>How sure to be of ending in tolerance; 0.95 when null. At 0.5 the best estimate alone decides.</summary>
    [Bound(0.5, 0.99, "", "0.5 takes the best estimate; nothing hand-made is surer than 0.99", Source = null)]
    public double? Confidence { get; init; }

    /// <summary>Whether the aim is for the paddle with its finish on, as the design's own aim is; so when null. False aims with bare wood.</summary>
    public bool? CountFinish { get; init; }

    /// <summary>Board and saw as on the build sheet.</summary>
    public BuildChoices? Build { get; init; }
}

/// <summary>A thickness read with a caliper on the centre line.</summary>
internal sealed record ThicknessReadingRequest
{
    /// <summary>Place from the top of the grip, mm; required.</summary>
    [PaddlePlaceBound]
    public double? XMm { get; init; }

    /// <summary>Thickness, mm; required.</summary>
    [Bound(0, 1200, "mm", "Thicknesses with a digit too many are still read, and doubted")]
    public double? ThicknessMm { get; init; }
}

/// <summary>A cut that has been taken beyond the plan.</summary>
internal sealed record EarlierRemovalRequest
{
    /// <summary>The zone; required.</summary>
    public string? Zone { get; init; }

    /// <summary>Full thickness off the middle in the heart of the zone, mm; required.</summary>
    [Bound(0, BalanceReadingLimits.MostTakenMm, "mm", "More than this off one zone is another paddle")]
    public double? ThicknessMm { get; init; }
}

/// <summary>Standard uncertainties of a paddle's readings; null takes the usual one.</summary>
internal sealed record BalanceErrorsRequest
{
    /// <summary>Of the mass, g; 1 unless stated.</summary>
    [ReadingErrorBound(0.01, 100, "g")]
    public double? MassG { get; init; }

    /// <summary>Of the balance point, mm; 2 unless stated.</summary>
    [ReadingErrorBound(0.1, 50, "mm")]
    public double? BalanceMm { get; init; }

    /// <summary>Of a thickness, mm; 0.2 unless stated.</summary>
    [ReadingErrorBound(0.01, 5, "mm")]
    public double? ThicknessMm { get; init; }
}
