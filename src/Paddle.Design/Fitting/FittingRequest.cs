using Paddle.Design.Strength;
using Paddle.Design.Units;

namespace Paddle.Design.Fitting;

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

/// <summary>The paddler's body: any subset that holds a hand spacing, an arm span or a stature is enough.</summary>
/// <param name="HandSpacingMm">Hand spacing by the bar-on-the-head test, mm.</param>
/// <param name="StatureMm">Stature without shoes, mm.</param>
/// <param name="SittingHeightMm">Seat to crown, mm.</param>
/// <param name="ShoulderBreadthMm">Between the bony points of the shoulders, mm; only checks the rest.</param>
/// <param name="ArmSpanMm">Finger tip to finger tip, mm.</param>
/// <param name="HandLengthMm">Wrist crease to tip of the middle finger, mm.</param>
/// <param name="HandBreadthMm">Across the knuckles without the thumb, mm.</param>
public sealed record PaddlerMeasurements(
    double? HandSpacingMm = null,
    double? StatureMm = null,
    double? SittingHeightMm = null,
    double? ShoulderBreadthMm = null,
    double? ArmSpanMm = null,
    double? HandLengthMm = null,
    double? HandBreadthMm = null,
    double? BodyMassKg = null);

/// <summary>Where the paddler sits.</summary>
/// <param name="Posture">Kneeling (default) or sitting.</param>
/// <param name="HeightAboveWaterMm">Seat above the water, cushion pressed flat, mm; 130 where unknown (assumption).</param>
/// <param name="Place">Bow, stern or solo (default).</param>
public sealed record SeatPlan(Posture Posture = Posture.Kneeling, double? HeightAboveWaterMm = null, SeatPlace Place = SeatPlace.Solo);

/// <summary>The water.</summary>
/// <param name="Kind">Kind of water; deep lake by default.</param>
/// <param name="DepthMm">Usual least depth, mm; unlimited where unknown.</param>
/// <param name="TemperatureC">Water temperature, °C; 15 where unknown.</param>
public sealed record WaterPlan(WaterKind Kind = WaterKind.DeepLake, double? DepthMm = null, double? TemperatureC = null);

/// <summary>The outing.</summary>
/// <param name="HoursPerDay">Hours of paddling a day; 4 where unknown (assumption).</param>
/// <param name="StrokesPerMinute">Cadence, strokes a minute; by effort where unknown.</param>
/// <param name="Effort">Effort; easy by default.</param>
/// <param name="Purpose">What it is for; where nothing is said a day, on moving water with an expedition's strength.</param>
public sealed record OutingPlan(
    double? HoursPerDay = null, double? StrokesPerMinute = null, Effort Effort = Effort.Easy, OutingPurpose? Purpose = null);

/// <summary>What the paddler cares for besides fit.</summary>
/// <param name="SensitiveJoints">Spare shoulders, elbows and fingers.</param>
/// <param name="StraighterWrist">Keep the grip hand's wrist straighter.</param>
/// <param name="LightCarry">Weight counts on portages.</param>
/// <param name="BentShaft">A bent shaft, for sitting and switching sides; made only for who sits.</param>
public sealed record PaddlerPreferences(
    bool SensitiveJoints = false, bool StraighterWrist = false, bool LightCarry = false, bool BentShaft = false);

/// <summary>The question "which paddle for this person".</summary>
/// <param name="Paddler">Body measurements.</param>
/// <param name="Seat">Seat; defaults where absent.</param>
/// <param name="Water">Water; defaults where absent.</param>
/// <param name="Outing">Outing; defaults where absent.</param>
/// <param name="Preferences">Preferences; none where absent.</param>
/// <param name="Label">Name to give the suggested design.</param>
/// <param name="Units">Units that the shop measures in: every sentence of the answer is in them.</param>
public sealed record FittingRequest(
    PaddlerMeasurements Paddler,
    SeatPlan? Seat = null,
    WaterPlan? Water = null,
    OutingPlan? Outing = null,
    PaddlerPreferences? Preferences = null,
    string? Label = null,
    DrawingUnits Units = DrawingUnits.Metric);

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

/// <summary>Which duty an outing asks of its paddle, and how much stronger than a touring paddle that makes it.</summary>
internal static class Duties
{
    /// <param name="purpose">What it is for; a day where nothing is said.</param>
    /// <param name="water">Its water: moving water is an expedition's, whatever else.</param>
    /// <returns>The duty. How hard the paddler means to go changes blade and cadence, not the strength: a strong tourer is still a tourer.</returns>
    public static Duty Of(OutingPurpose? purpose, WaterKind water) => purpose switch
    {
        OutingPurpose.Race => Duty.Racing,
        OutingPurpose.Trip => Duty.Expedition,
        _ => water is WaterKind.River or WaterKind.FastWater ? Duty.Expedition : Duty.Touring,
    };

    /// <summary>Hard stroke times least factor of a duty, over those of touring.</summary>
    /// <returns>Share, 1 for touring.</returns>
    public static double StrengthOverTouring(Duty duty) => HardStroke(duty) / HardStroke(Duty.Touring);

    private static double HardStroke(Duty duty)
    {
        var rule = DutyRule.Of(duty);
        return rule.HardN * rule.LeastFactor;
    }

    /// <summary>What the duty means, in plain words.</summary>
    public static string Reason(Duty duty) => duty switch
    {
        Duty.Expedition => "Strength for an expedition: rivers and trips far from help ask for the peak strokes of the strongest paddlers of this body mass, and a larger margin.",
        Duty.Racing => "Strength for racing: the peak strokes of the strongest paddlers of this body mass and one standard deviation more.",
        _ => "Strength for touring: lakes, flat water and day hire, with the peak strokes of trained paddlers of this body mass. Say so if the outing is a trip far from help or a race: the paddle must then be stronger.",
    };
}
