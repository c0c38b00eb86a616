namespace Paddle.Design.Wood;

/// <summary>Strength under load held for a time or repeated. A stroke lasts a second or less, so a static strength is neither lowered nor
/// raised for its duration; repetition is what counts.</summary>
internal static class LoadDuration
{
    /// <summary>Share of static bending strength that clear straight-grained wood bears when loaded one way (stress ratio 0) some 30
    /// million times. Theory W17. Source: USDA Wood Handbook chapter 5, table of cyclic loading results, from memory.</summary>
    public const double OneWayBendingFatigueFraction = 0.40;

    /// <summary>Strength under a steady load as percent of the standard test's: <c>SL = 108.4/t^0.04635 + 18.3</c> (Madison curve). Theory
    /// W16. Source: from memory.</summary>
    /// <param name="seconds">t, time to failure, s, 1 or more.</param>
    /// <returns>SL, percent.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Time below 1 s, where the curve was never fitted.</exception>
    public static double MadisonPercent(double seconds)
    {
        if (!(seconds >= 1.0)) throw new ArgumentOutOfRangeException(nameof(seconds), seconds, "The Madison curve starts at 1 s.");
        return (108.4 / Math.Pow(seconds, 0.04635)) + 18.3; // theory W16
    }
}
