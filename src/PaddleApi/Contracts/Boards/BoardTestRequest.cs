using Paddle.Design;

namespace PaddleApi.Contracts.Boards;

/// <summary>A board weighed and measured, and sagged or tapped to learn its stiffness.</summary>
internal sealed record BoardTestRequest
{
    /// <summary>Id of the wood; required.</summary>
    public string? Species { get; init; }

    /// <summary>Moisture of the board, percent; required.</summary>
    [Bound(0, 40, "percent", "From ovendry to fresh from the saw")]
    public double? MoisturePercent { get; init; }

    /// <summary>Length, mm; required.</summary>
    [Bound(100, 6000, "mm", "Boards and test sticks")]
    public double? LengthMm { get; init; }

    /// <summary>Width, mm; required.</summary>
    [Bound(5, 600, "mm", "Boards and test sticks")]
    public double? WidthMm { get; init; }

    /// <summary>Thickness, mm; required.</summary>
    [Bound(2, 120, "mm", "Boards and test sticks")]
    public double? ThicknessMm { get; init; }

    /// <summary>Mass, g; required.</summary>
    [Bound(1, 100000, "g", "Boards and test sticks")]
    public double? MassG { get; init; }

    /// <summary>The board flat on two supports with a weight at mid-span; null when it was tapped, or for density alone.</summary>
    public SagRequest? Sag { get; init; }

    /// <summary>The board held at 0.224 of its length from each end and tapped on the face; null when it was sagged.</summary>
    public TapRequest? Tap { get; init; }

    /// <summary>How well each reading is known; what a tape, a caliper, a kitchen scale and a phone give unless stated.</summary>
    public BoardErrorsRequest? ReadingErrors { get; init; }
}

/// <summary>A sag between two supports.</summary>
internal sealed record SagRequest
{
    /// <summary>Between the supports, mm; required.</summary>
    [Bound(50, 6000, "mm", "Spans of boards and test sticks")]
    public double? SpanMm { get; init; }

    /// <summary>The weight at mid-span, N (1 kg weighs 9.81 N); required.</summary>
    [Bound(0.1, 2000, "N", "Weights that a hand can put on")]
    public double? LoadN { get; init; }

    /// <summary>How far the middle goes down when the weight is put on, mm; required.</summary>
    [Bound(0.05, 300, "mm", "Sags that a rule can read")]
    public double? SagMm { get; init; }
}

/// <summary>A tone.</summary>
internal sealed record TapRequest
{
    /// <summary>Lowest tone of the tapped board, Hz; required.</summary>
    [Bound(1, 20000, "Hz", "Tones that can be heard or recorded")]
    public double? FrequencyHz { get; init; }
}

/// <summary>Standard uncertainties of a board's readings; null takes the usual one.</summary>
internal sealed record BoardErrorsRequest
{
    /// <summary>Of the length, mm; 1 unless stated.</summary>
    [ReadingErrorBound(0, 50, "mm")]
    public double? LengthMm { get; init; }

    /// <summary>Of the width, mm; 0.3 unless stated.</summary>
    [ReadingErrorBound(0, 20, "mm")]
    public double? WidthMm { get; init; }

    /// <summary>Of the thickness, mm; 0.1 unless stated.</summary>
    [ReadingErrorBound(0, 10, "mm")]
    public double? ThicknessMm { get; init; }

    /// <summary>Of the mass, g; 1 unless stated.</summary>
    [ReadingErrorBound(0, 500, "g")]
    public double? MassG { get; init; }

    /// <summary>Of the span, mm; 1 unless stated.</summary>
    [ReadingErrorBound(0, 50, "mm")]
    public double? SpanMm { get; init; }

    /// <summary>Of the load, percent of it; 0.5 unless stated.</summary>
    [ReadingErrorBound(0, 50, "percent")]
    public double? LoadPercent { get; init; }

    /// <summary>Of the sag, mm; 0.1 unless stated.</summary>
    [ReadingErrorBound(0, 20, "mm")]
    public double? SagMm { get; init; }

    /// <summary>Of the frequency, Hz; 0.5 unless stated.</summary>
    [ReadingErrorBound(0, 500, "Hz")]
    public double? FrequencyHz { get; init; }
}
