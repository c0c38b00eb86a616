namespace Paddle.Design.Fitting;

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

/// <summary>How hard a paddle is used; each has its forces and safety factors.</summary>
public enum PaddleDuty
{
    /// <summary>Lakes and flat water, day hire.</summary>
    Touring,
    /// <summary>Rivers, and trips far from help.</summary>
    Expedition,
    /// <summary>Races and training for them.</summary>
    Racing,
}

/// <summary>Which duty an outing asks of its paddle, and how much stronger than a touring paddle that makes it.</summary>
internal static class Duties
{
    // Peak of a hard stroke over m^(2/3), N kg^(-2/3), and least safety factor. Ho, Smith and O'Meara 2009 (abstract): sub-elite mean peak and
    // one standard deviation; elite mean peak; elite mean peak and one standard deviation. The factors are the service's own, calibrated on
    // what makers carve and not validated by tests.
    private const double TouringPeak = 11.4 + 2.6, ExpeditionPeak = 16.3, RacingPeak = 16.3 + 4.8;
    private const double UsualFactor = 1.3, FarFromHelpFactor = 1.5;

    /// <param name="purpose">What it is for; a day where nothing is said.</param>
    /// <param name="water">Its water: moving water is an expedition's, whatever else.</param>
    /// <returns>The duty. How hard the paddler means to go changes blade and cadence, not the strength: a strong tourer is still a tourer.</returns>
    public static PaddleDuty Of(OutingPurpose? purpose, WaterKind water) => purpose switch
    {
        OutingPurpose.Race => PaddleDuty.Racing,
        OutingPurpose.Trip => PaddleDuty.Expedition,
        _ => water is WaterKind.River or WaterKind.FastWater ? PaddleDuty.Expedition : PaddleDuty.Touring,
    };

    /// <summary>Hard stroke times least factor of a duty, over those of touring.</summary>
    /// <returns>Share, 1 for touring.</returns>
    public static double StrengthOverTouring(PaddleDuty duty) => duty switch
    {
        PaddleDuty.Expedition => ExpeditionPeak * FarFromHelpFactor / (TouringPeak * UsualFactor),
        PaddleDuty.Racing => RacingPeak / TouringPeak,
        _ => 1,
    };

    /// <summary>What the duty means, in plain words.</summary>
    public static string Reason(PaddleDuty duty) => duty switch
    {
        PaddleDuty.Expedition => "Strength for an expedition: rivers and trips far from help ask for the peak strokes of the strongest paddlers of this body mass, and a larger margin.",
        PaddleDuty.Racing => "Strength for racing: the peak strokes of the strongest paddlers of this body mass and one standard deviation more.",
        _ => "Strength for touring: lakes, flat water and day hire, with the peak strokes of trained paddlers of this body mass. Say so if the outing is a trip far from help or a race: the paddle must then be stronger.",
    };
}
