namespace Paddle.Design.Strength;

/// <summary>What a paddle is made for.</summary>
public enum Duty
{
    /// <summary>Lakes, day trips and hire, within reach of the shore.</summary>
    Touring,
    /// <summary>Rivers and long trips, where a broken paddle is a danger.</summary>
    Expedition,
    /// <summary>Racing and training for it.</summary>
    Racing,
}

/// <summary>What a duty asks: forces by body mass m (kg), speed in a brace, repetition, and the least factors. Theory L1–L4 and L17.</summary>
/// <param name="TouringN">Peak of the stroke that is repeated for the paddle's life, N per kg^⅔.</param>
/// <param name="HardN">Peak of the hardest stroke, N per kg^⅔.</param>
/// <param name="FatigueShare">Share of static strength that the repeated stroke may use.</param>
/// <param name="BraceSpeedMS">Speed of the flat blade through the water in a brace, m/s.</param>
/// <param name="LeastFactor">Least factor of the hard stroke, on the 5th percentile; the other cases' are in proportion.</param>
/// <param name="TouringSource">Source of the repeated force and its share.</param>
/// <param name="HardSource">Source of the hard force.</param>
/// <remarks>Forces: Ho, Smith and O'Meara 2009, J Sports Sci 27:37-47 (abstract), elite and sub-elite single-blade paddlers. The factors
/// are calibrated so that shafts carved for generations pass and thinner ones do not; they are not validated by breaking paddles.</remarks>
internal sealed record DutyRule(
    Duty Duty, double TouringN, double HardN, double FatigueShare, double BraceSpeedMS, double LeastFactor,
    string TouringSource, string HardSource)
{
    /// <summary>What the least factors rest on, to be said wherever they are printed.</summary>
    public const string Basis =
        "Least factors are calibrated so that paddles carved for generations pass and thinner ones fail; they are not validated by breaking "
        + "paddles. They stand on the strength that 19 sticks in 20 exceed.";

    private const string Ho = "Ho, Smith and O'Meara 2009, J Sports Sci 27:37-47 (abstract)";

    private const string EasyStroke =
        "5.0 N per kg^(2/3) of body mass: assumption from a 20 N hull drag per paddler at 1.5 m/s; 0.40 of static strength for two million "
        + "strokes: EN 1995-2 annex A and Wood Handbook ch. 5, both from memory";

    public static IReadOnlyList<DutyRule> All { get; } =
    [
        new(Duty.Touring, 5.0, 14.0, 0.40, 2.5, 1.3, EasyStroke, "14.0 N per kg^(2/3): sub-elite mean peak + 1 SD, " + Ho),
        new(Duty.Expedition, 5.0, 16.3, 0.40, 3.0, 1.5, EasyStroke, "16.3 N per kg^(2/3): elite mean peak, " + Ho),
        new(Duty.Racing, 7.9, 21.1, 0.33, 3.0, 1.3,
            "7.9 N per kg^(2/3): an elite paddler's mean force, " + Ho + ", taken as the peak of a training stroke (assumption); 0.33 of static "
            + "strength for ten million strokes: EN 1995-2 annex A, from memory",
            "21.1 N per kg^(2/3): elite mean peak + 1 SD, " + Ho),
    ];

    public static DutyRule Of(Duty duty) => All.First(rule => rule.Duty == duty);
}
