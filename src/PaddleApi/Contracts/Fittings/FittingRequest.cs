using Paddle.Design.Fitting;
using Paddle.Design.Units;

namespace PaddleApi.Contracts.Fittings;

/// <summary>
/// Which paddle for this person? Any measurements that hold a hand spacing, an arm span or a stature are enough; each further one narrows
/// the answer. How to take them is told at <c>/v1/measurements</c>.
/// </summary>
internal sealed record FittingRequest
{
    /// <summary>Name for the suggested design, up to 60 printable characters.</summary>
    public string? Label { get; init; }

    /// <summary>The person. Required, with at least one of hand spacing, arm span and stature.</summary>
    public PaddlerRequest? Paddler { get; init; }

    /// <summary>The seat.</summary>
    public SeatRequest? Seat { get; init; }

    /// <summary>The water.</summary>
    public WaterRequest? Water { get; init; }

    /// <summary>The outing.</summary>
    public OutingRequest? Outing { get; init; }

    /// <summary>What counts besides fit.</summary>
    public PreferencesRequest? Preferences { get; init; }

    /// <summary>Units that the shop measures in: every sentence of the answer is in them, and the suggested designs are drawn in them.</summary>
    public DrawingRequest? Drawing { get; init; }
}

/// <summary>A person's measurements, as far as they were taken.</summary>
internal sealed record PaddlerRequest
{
    /// <summary>Hand spacing by the bar on the head, mm: middle of one fist to middle of the other. Beats every estimate.</summary>
    public double? HandSpacingMm { get; init; }

    /// <summary>Stature without shoes, mm.</summary>
    public double? StatureMm { get; init; }

    /// <summary>Seat to crown, sitting upright, mm.</summary>
    public double? SittingHeightMm { get; init; }

    /// <summary>Between the bony points of the shoulders, mm. It only checks the other measurements.</summary>
    public double? ShoulderBreadthMm { get; init; }

    /// <summary>Finger tip to finger tip, arms spread, mm.</summary>
    public double? ArmSpanMm { get; init; }

    /// <summary>Wrist crease to the tip of the middle finger, mm.</summary>
    public double? HandLengthMm { get; init; }

    /// <summary>Across the knuckles without the thumb, mm.</summary>
    public double? HandBreadthMm { get; init; }

    /// <summary>Body mass, kg; that usual at the stature when null, a child's for a child.</summary>
    public double? BodyMassKg { get; init; }
}

/// <summary>Where the person sits.</summary>
internal sealed record SeatRequest
{
    /// <summary>Kneeling (when null) or sitting.</summary>
    public Posture? Posture { get; init; }

    /// <summary>Top of the pressed seat above the water, mm; 130 when null (assumption). A higher seat asks for more clear shaft.</summary>
    public double? HeightAboveWaterMm { get; init; }

    /// <summary>Bow, stern or solo (when null).</summary>
    public SeatPlace? Place { get; init; }
}

/// <summary>The water paddled most.</summary>
internal sealed record WaterRequest
{
    /// <summary>Kind of water; deep lake when null.</summary>
    public WaterKind? Kind { get; init; }

    /// <summary>Usual least depth, mm; no limit when null.</summary>
    public double? DepthMm { get; init; }

    /// <summary>Temperature of the water, °C; 15 when null.</summary>
    public double? TemperatureC { get; init; }
}

/// <summary>The outing.</summary>
internal sealed record OutingRequest
{
    /// <summary>Hours of paddling a day; 4 when null (assumption). A longer day is paddled more slowly, with a slightly smaller blade.</summary>
    public double? HoursPerDay { get; init; }

    /// <summary>Strokes a minute; that usual at the effort when null.</summary>
    public double? StrokesPerMinute { get; init; }

    /// <summary>Effort; easy when null. It sets boat speed and cadence, not the strength.</summary>
    public Effort? Effort { get; init; }

    /// <summary>What it is for, which sets how strong the paddle must be; a day when null, with an expedition's strength on moving water.</summary>
    public OutingPurpose? Purpose { get; init; }
}

/// <summary>What counts besides fit.</summary>
internal sealed record PreferencesRequest
{
    /// <summary>Spare shoulders, elbows and fingers; false when null.</summary>
    public bool? SensitiveJoints { get; init; }

    /// <summary>Keep the wrist of the grip hand straighter; false when null.</summary>
    public bool? StraighterWrist { get; init; }

    /// <summary>Weight counts on portages; false when null.</summary>
    public bool? LightCarry { get; init; }

    /// <summary>A bent shaft, for sitting and switching sides; false when null. Who kneels keeps a straight one.</summary>
    public bool? BentShaft { get; init; }
}
