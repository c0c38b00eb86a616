namespace Paddle.Design.Strength;

/// <summary>How far above the throat the two strokes have their pivot, the point of the paddle at rest in the water. Theory L5.</summary>
/// <remarks>
/// The pivot lies slip/ω above the blade's centre of pressure. Easy: slip 0.9 m/s at 2.2 rad/s, 0.42 m, about 100 mm above the
/// throat. Hard: slip 2.4 m/s (375 N on 0.067 m² at the high drag coefficient 2.0, which puts the pivot low and the resultant
/// far out, the safe side) at 3 rad/s, 0.8 m, about 450 mm above the throat. Turning rates are engineering assumptions: a sweep
/// of about 60° in the drive half of the cycle at 45 and 80 strokes a minute.
/// </remarks>
internal static class StrokePivots
{
    /// <summary>Distance of the easy stroke's pivot above the throat, mm.</summary>
    public const double TouringMm = 100;

    /// <summary>Distance of the hard stroke's pivot above the throat, mm.</summary>
    public const double HardMm = 450;
}
