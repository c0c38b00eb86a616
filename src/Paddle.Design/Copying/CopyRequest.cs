using Paddle.Design.Fitting;
using Paddle.Design.Request;
using Paddle.Design.Units;

namespace Paddle.Design.Copying;

/// <summary>Readings off a paddle that exists. Places are measured along its middle line from the top of the grip.</summary>
public sealed record CopyRequest
{
    /// <summary>Name of the paddle, up to 80 printable characters.</summary>
    public string? Label { get; init; }
    /// <summary>Top of the grip to the tip, mm; required.</summary>
    [OverallLengthBound]
    public double? OverallLengthMm { get; init; }
    /// <summary>Top of the grip to where the shaft turns into the blade, mm; required.</summary>
    [Bound(400, 1400, "mm", "Shafts of single-blade paddles")]
    public double? ThroatMm { get; init; }
    /// <summary>What the caliper read, 3 to 60 stations from the grip to the tip; required.</summary>
    public IReadOnlyList<CopyStationRequest>? Stations { get; init; }
    /// <summary>What the finished paddle weighs, g.</summary>
    [Bound(100, 3000, "g", "Masses of single-blade wooden paddles")]
    public double? MassG { get; init; }
    /// <summary>Where it balances on a finger or an edge, mm from the top of the grip.</summary>
    [BalancePointBound]
    public double? BalanceMm { get; init; }
    /// <summary>How far it gave on the bench.</summary>
    public CopyBenchRequest? BenchFlex { get; init; }
    /// <summary>Its lowest note when it hangs free or lies on two soft edges and is tapped flat on the blade, Hz.</summary>
    [Bound(2, 200, "Hz", "First notes of paddles lie between 10 and 40 Hz; beyond these it is another")]
    public double? TapHz { get; init; }
    /// <summary>Species by its id, such as <c>white-ash</c>; null where nobody knows: the weight then says which it may be.</summary>
    public string? Species { get; init; }
    /// <summary>What is on its surfaces; blade varnished and shaft oiled when null.</summary>
    public FinishRequest? Finish { get; init; }
    /// <summary>Middle of the grip hand to middle of the lower hand as it is held, mm.</summary>
    [HandSpacingBound]
    public double? HandSpacingMm { get; init; }
    /// <summary>Middle of the lower hand as it is held, mm from the top of the grip.</summary>
    [Bound(PaddleLengths.LeastHandSpacingMm, 1200, "mm", "Hand spacings that fit a person, and the grip above them")]
    public double? LowerHandMm { get; init; }
    /// <summary>Angle between shaft and blade at the throat, degrees.</summary>
    [BendBound]
    public double? BendDegrees { get; init; }
    /// <summary>What is known of the grip; what is left null is found.</summary>
    public GripRequest? Grip { get; init; }
    /// <summary>How good the readings are.</summary>
    public CopyErrorsRequest? ReadingErrors { get; init; }
    /// <summary>The copy with one thing changed, up to 12; a longer one, a lighter one, one of another wood and one balanced lower when null.</summary>
    public IReadOnlyList<CopyVariantRequest>? Variants { get; init; }
    /// <summary>How the sentences and the copy's drawings are written.</summary>
    public DrawingRequest? Drawing { get; init; }
}

/// <summary>What was read at one place; what was not read is null.</summary>
public sealed record CopyStationRequest
{
    private const string SlipReason = "A slip of some millimetres is read, and doubted; beyond this it is no reading of a paddle";

    /// <summary>Place, mm from the top of the grip; required, each beyond the one before.</summary>
    [PaddlePlaceBound]
    public double? XMm { get; init; }
    /// <summary>Full width, mm.</summary>
    [Bound(0, 300, "mm", SlipReason)]
    public double? WidthMm { get; init; }
    /// <summary>Full thickness on the middle line, mm.</summary>
    [Bound(0, 100, "mm", SlipReason)]
    public double? ThicknessMm { get; init; }
    /// <summary>Full thickness at the edge, mm; on the blade only.</summary>
    [Bound(0, 50, "mm", SlipReason)]
    public double? EdgeThicknessMm { get; init; }
}

/// <summary>The bench: the paddle lies face down on two supports, a weight hangs from the blade. The deflection is what hanging the weight adds.</summary>
public sealed record CopyBenchRequest
{
    /// <summary>Weight, N: 9.81 times its kilograms; 50 when null.</summary>
    [Bound(5, 300, "N", "Weights that bend a paddle and do not break it")]
    public double? LoadN { get; init; }
    /// <summary>How far the place under the weight goes down, mm; required.</summary>
    [Bound(0.5, 300, "mm", "What a rule shows and wood bears")]
    public double? DeflectionMm { get; init; }
    /// <summary>The support near the grip, which holds the paddle down, mm from the top; the grip hand when null.</summary>
    [Bound(0, 1000, "mm", "On the grip or the shaft")]
    public double? UpperSupportMm { get; init; }
    /// <summary>The support on the shaft, mm from the top; the lower hand when null.</summary>
    [Bound(100, 1400, "mm", "On the shaft")]
    public double? LowerSupportMm { get; init; }
    /// <summary>Where the weight hangs, mm from the top; the blade's centre of pressure, as in a design's answer, when null.</summary>
    [Bound(400, 2100, "mm", "On the blade")]
    public double? LoadAtMm { get; init; }
}

/// <summary>Standard errors of the readings: two readings in three are nearer than this.</summary>
public sealed record CopyErrorsRequest
{
    /// <summary>Of overall length and throat by tape, mm; 1 when null.</summary>
    [ReadingErrorBound(0.1, 20, "mm")]
    public double? LengthMm { get; init; }
    /// <summary>Of widths and thicknesses by caliper, mm; 0.3 when null.</summary>
    [ReadingErrorBound(0.02, 5, "mm")]
    public double? CaliperMm { get; init; }
    /// <summary>Of the place of a station, mm; 0.5 when null.</summary>
    [ReadingErrorBound(0, 10, "mm")]
    public double? PlaceMm { get; init; }
    /// <summary>Of the weight, g; 2 when null.</summary>
    [ReadingErrorBound(0.1, 100, "g")]
    public double? MassG { get; init; }
    /// <summary>Of the balance point, mm; 2 when null.</summary>
    [ReadingErrorBound(0.1, 50, "mm")]
    public double? BalanceMm { get; init; }
    /// <summary>Of the deflection on the bench, mm; 0.5 when null.</summary>
    [ReadingErrorBound(0.02, 20, "mm")]
    public double? FlexMm { get; init; }
    /// <summary>Of the note, percent; 2 when null.</summary>
    [ReadingErrorBound(0.1, 30, "percent")]
    public double? TapPercent { get; init; }
}

/// <summary>The copy with one thing changed.</summary>
public sealed record CopyVariantRequest
{
    /// <summary>
    /// What changes: <c>longer</c> (the shaft, in mm), <c>lighter</c> (in g), <c>balance-lower</c> (towards the tip, in mm), <c>species</c>, or a
    /// size by its name in a design, such as <c>shaft.thicknessMm</c> (to so many mm). Required.
    /// </summary>
    public string? Change { get; init; }
    /// <summary>By how much, or to how much; 50.8, 50 or 20 when null, required of a size.</summary>
    [Bound(-300, 300, "", "In the unit of what changes; more is another paddle")]
    public double? Value { get; init; }
    /// <summary>The other wood, where that is what changes.</summary>
    public string? Species { get; init; }
}
