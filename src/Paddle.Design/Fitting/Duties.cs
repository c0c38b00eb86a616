using Paddle.Design.Strength;

namespace Paddle.Design.Fitting;

/// <summary>Which duty an outing asks of its paddle, and how much stronger than a touring paddle that makes it.</summary>
internal static class Duties
{
    /// <param name="purpose">What it is for; a day where nothing is said.</param>
    /// <param name="water">Its water: moving water is an expedition's, whatever else.</param>
    /// <returns>The duty. How hard the paddler means to go changes blade and cadence, not the strength: a strong tourer is still a tourer.</returns>
    public static Duty Of(OutingPurpose? purpose, WaterKind? water) => purpose switch
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
