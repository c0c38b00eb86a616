namespace Paddle.Design.Fitting;

/// <summary>Body mass of a person who was not weighed, from stature.</summary>
internal static class BodyMass
{
    /// <summary>Body mass over stature squared of adults, kg/m². Source: age-standardised means of 2014, 24.2 (men) and 24.4 (women), NCD
    /// Risk Factor Collaboration 2016 (summary).</summary>
    public const double AdultIndex = (24.2 + 24.4) / 2;

    // Up to here everybody is taken as a child, from there on as an adult; in between one turns into the other without a step
    // (assumption, no source: a person of 1.5 m may be either).
    private const double ChildUpToM = 1.40, AdultFromM = 1.70;

    private const double MmPerM = 1000;

    /// <summary>Body mass of a child: the mean of 2.120 exp(1.993 H), girls, and 2.379 exp(1.895 H), boys.</summary>
    /// <param name="statureM">H, stature, m.</param>
    /// <returns>m, kg.</returns>
    /// <remarks>Source: Braillon 2017 (abstract), fitted to children of 2 to 18 years in twelve countries.</remarks>
    public static double ChildKg(double statureM) =>
        ((2.120 * Math.Exp(1.993 * statureM)) + (2.379 * Math.Exp(1.895 * statureM))) / 2; // theory F33

    /// <summary>Body mass from stature alone: a child's, an adult's, or between the two.</summary>
    /// <param name="statureMm">H, stature, mm.</param>
    /// <returns>m, kg; it grows with stature without a step.</returns>
    public static double FromStatureKg(double statureMm)
    {
        var stature = statureMm / MmPerM;
        var t = Math.Clamp((stature - ChildUpToM) / (AdultFromM - ChildUpToM), 0, 1);
        var adult = t * t * (3 - (2 * t));
        return ((1 - adult) * ChildKg(stature)) + (adult * AdultIndex * stature * stature); // theory F34
    }
}
