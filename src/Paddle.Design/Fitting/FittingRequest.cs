using Paddle.Design.Units;
using Paddle.Design.Water;

namespace Paddle.Design.Fitting;

/// <summary>
/// Which paddle for this person? Any measurements that hold a hand spacing, an arm span or a stature are enough; each further one narrows
/// the answer. How to take them is told at <c>/v1/measurements</c>.
/// </summary>
public sealed record FittingRequest
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

    /// <summary>The same request with every part there, and what is usual filled in where it does not follow from the person.</summary>
    internal FittingRequest Complete() => this with
    {
        Label = string.IsNullOrWhiteSpace(Label) ? "Fitted paddle" : Label,
        Seat = new()
        {
            Posture = Seat?.Posture ?? Posture.Kneeling,
            HeightAboveWaterMm = Seat?.HeightAboveWaterMm ?? LengthRules.DefaultSeatHeightMm,
            Place = Seat?.Place ?? SeatPlace.Solo,
        },
        Water = (Water ?? new()) with { Kind = Water?.Kind ?? WaterKind.DeepLake },
        Outing = OutingAt(Outing?.Effort ?? Effort.Easy),
        Preferences = new()
        {
            SensitiveJoints = Preferences?.SensitiveJoints ?? false,
            StraighterWrist = Preferences?.StraighterWrist ?? false,
            LightCarry = Preferences?.LightCarry ?? false,
            BentShaft = Preferences?.BentShaft ?? false,
        },
    };

    private OutingRequest OutingAt(Effort effort) => new()
    {
        HoursPerDay = Outing?.HoursPerDay ?? EffortArea.ReferenceHours,
        StrokesPerMinute = Outing?.StrokesPerMinute ?? EffortArea.DefaultStrokesPerMinute(effort),
        Effort = effort,
        Purpose = Outing?.Purpose,
    };
}

/// <summary>A person's measurements, as far as they were taken.</summary>
public sealed record PaddlerRequest
{
    /// <summary>Hand spacing by the bar on the head, mm: middle of one fist to middle of the other. Beats every estimate.</summary>
    [Measured("handSpacingMm")]
    public double? HandSpacingMm { get; init; }
    /// <summary>Stature without shoes, mm.</summary>
    [Measured("statureMm")]
    public double? StatureMm { get; init; }
    /// <summary>Seat to crown, sitting upright, mm.</summary>
    [Measured("sittingHeightMm")]
    public double? SittingHeightMm { get; init; }
    /// <summary>Between the bony points of the shoulders, mm. It only checks the other measurements.</summary>
    [Measured("shoulderBreadthMm")]
    public double? ShoulderBreadthMm { get; init; }
    /// <summary>Finger tip to finger tip, arms spread, mm.</summary>
    [Measured("armSpanMm")]
    public double? ArmSpanMm { get; init; }
    /// <summary>Wrist crease to the tip of the middle finger, mm.</summary>
    [Measured("handLengthMm")]
    public double? HandLengthMm { get; init; }
    /// <summary>Across the knuckles without the thumb, mm.</summary>
    [Measured("handBreadthMm")]
    public double? HandBreadthMm { get; init; }
    /// <summary>Body mass, kg; that usual at the stature when null, a child's for a child.</summary>
    [Measured("bodyMassKg")]
    public double? BodyMassKg { get; init; }
}

/// <summary>Where the person sits.</summary>
public sealed record SeatRequest
{
    /// <summary>Kneeling (when null) or sitting.</summary>
    public Posture? Posture { get; init; }
    /// <summary>Top of the pressed seat above the water, mm; the usual is an assumption. A higher seat asks for more clear shaft.</summary>
    [Measured("heightAboveWaterMm", Usual = LengthRules.DefaultSeatHeightMm)]
    public double? HeightAboveWaterMm { get; init; }
    /// <summary>Bow, stern or solo (when null).</summary>
    public SeatPlace? Place { get; init; }
}

/// <summary>The water paddled most.</summary>
public sealed record WaterRequest
{
    /// <summary>Kind of water; deep lake when null.</summary>
    public WaterKind? Kind { get; init; }
    /// <summary>Usual least depth, mm; no limit when null.</summary>
    [Measured("depthMm")]
    public double? DepthMm { get; init; }
    /// <summary>Temperature of the water, °C.</summary>
    [Bound(FreshWater.LowestTemperatureC, FreshWater.HighestTemperatureC, "°C", "Open fresh water lies in it", Source = null, Usual = FreshWater.DefaultTemperatureC)]
    public double? TemperatureC { get; init; }
}

/// <summary>The outing.</summary>
public sealed record OutingRequest
{
    /// <summary>Hours of paddling a day; the usual is an assumption. A longer day is paddled more slowly, with a slightly smaller blade.</summary>
    [Bound(0.25, 18, "h", "A day's paddling lies in it (assumption, no source)", Source = null, Usual = EffortArea.ReferenceHours)]
    public double? HoursPerDay { get; init; }
    /// <summary>Strokes a minute; that usual at the effort when null.</summary>
    [Bound(20, 110, "strokes/min", "Touring runs at 35 to 50 and racing up to 90 (elite dragon boats, Ho, Smith and O'Meara 2009; margin assumed)", Source = null)]
    public double? StrokesPerMinute { get; init; }
    /// <summary>Effort; easy when null. It sets boat speed and cadence, not the strength.</summary>
    public Effort? Effort { get; init; }
    /// <summary>What it is for, which sets how strong the paddle must be; a day when null, with an expedition's strength on moving water.</summary>
    public OutingPurpose? Purpose { get; init; }
}

/// <summary>What counts besides fit.</summary>
public sealed record PreferencesRequest
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

/// <summary>How the paddler is placed in the boat.</summary>
public enum Posture
{
    /// <summary>Kneeling, weight against the seat or thwart.</summary>
    Kneeling,
    /// <summary>Sitting on the seat.</summary>
    Sitting,
}

/// <summary>Which seat the paddler takes.</summary>
public enum SeatPlace
{
    /// <summary>Front seat.</summary>
    Bow,
    /// <summary>Back seat, from which the boat is steered.</summary>
    Stern,
    /// <summary>Alone, near the middle.</summary>
    Solo,
}

/// <summary>The water paddled most.</summary>
public enum WaterKind
{
    /// <summary>Open water deeper than any blade.</summary>
    DeepLake,
    /// <summary>Moving water of mixed depth.</summary>
    River,
    /// <summary>Water in which the blade may touch.</summary>
    Shallow,
    /// <summary>Rapids.</summary>
    FastWater,
}

/// <summary>How hard the paddler means to go.</summary>
public enum Effort
{
    /// <summary>Touring with rests.</summary>
    Easy,
    /// <summary>Keeping on.</summary>
    Steady,
    /// <summary>Pressing on, at the pace of training.</summary>
    Hard,
}

/// <summary>What an outing is for.</summary>
public enum OutingPurpose
{
    /// <summary>A day on the water with help in reach.</summary>
    Day,
    /// <summary>A trip far from help.</summary>
    Trip,
    /// <summary>A race, or training for one.</summary>
    Race,
}
