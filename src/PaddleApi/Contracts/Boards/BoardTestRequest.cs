namespace PaddleApi.Contracts.Boards;

/// <summary>A board weighed and measured, and sagged or tapped to learn its stiffness.</summary>
internal sealed record BoardTestRequest
{
    /// <summary>Id of the wood; required.</summary>
    public string? Species { get; init; }

    /// <summary>Moisture of the board, percent; required.</summary>
    public double? MoisturePercent { get; init; }

    /// <summary>Length, mm; required.</summary>
    public double? LengthMm { get; init; }

    /// <summary>Width, mm; required.</summary>
    public double? WidthMm { get; init; }

    /// <summary>Thickness, mm; required.</summary>
    public double? ThicknessMm { get; init; }

    /// <summary>Mass, g; required.</summary>
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
    public double? SpanMm { get; init; }

    /// <summary>The weight at mid-span, N (1 kg weighs 9.81 N); required.</summary>
    public double? LoadN { get; init; }

    /// <summary>How far the middle goes down when the weight is put on, mm; required.</summary>
    public double? SagMm { get; init; }
}

/// <summary>A tone.</summary>
internal sealed record TapRequest
{
    /// <summary>Lowest tone of the tapped board, Hz; required.</summary>
    public double? FrequencyHz { get; init; }
}

/// <summary>Standard uncertainties of a board's readings; null takes the usual one.</summary>
internal sealed record BoardErrorsRequest
{
    /// <summary>Of the length, mm; 1 unless stated.</summary>
    public double? LengthMm { get; init; }

    /// <summary>Of the width, mm; 0.3 unless stated.</summary>
    public double? WidthMm { get; init; }

    /// <summary>Of the thickness, mm; 0.1 unless stated.</summary>
    public double? ThicknessMm { get; init; }

    /// <summary>Of the mass, g; 1 unless stated.</summary>
    public double? MassG { get; init; }

    /// <summary>Of the span, mm; 1 unless stated.</summary>
    public double? SpanMm { get; init; }

    /// <summary>Of the load, percent of it; 0.5 unless stated.</summary>
    public double? LoadPercent { get; init; }

    /// <summary>Of the sag, mm; 0.1 unless stated.</summary>
    public double? SagMm { get; init; }

    /// <summary>Of the frequency, Hz; 0.5 unless stated.</summary>
    public double? FrequencyHz { get; init; }
}
