using Paddle.Design.Solid;

namespace Paddle.Design.Strength;

/// <summary>Water pressure of the two strokes, each about its own pivot (the point of the paddle at rest in the water). Theory L5.</summary>
/// <param name="Touring">An easy stroke.</param>
/// <param name="Hard">A hard stroke; an even pressure does not depend on the pivot and may be read from either.</param>
/// <remarks>
/// The pivot lies slip/ω above the blade's centre of pressure. Easy: slip 0.9 m/s at 2.2 rad/s, 0.42 m, about 100 mm above the
/// throat. Hard: slip 2.4 m/s (375 N on 0.067 m² at the high drag coefficient 2.0, which puts the pivot low and the resultant
/// far out, the safe side) at 3 rad/s, 0.8 m, about 450 mm above the throat. Turning rates are engineering assumptions: a sweep
/// of about 60° in the drive half of the cycle at 45 and 80 strokes a minute.
/// </remarks>
public sealed record StrokePressures(BladePressure Touring, BladePressure Hard)
{
    /// <summary>Distance of the easy stroke's pivot above the throat, mm.</summary>
    public const double TouringPivotMm = 100;

    /// <summary>Distance of the hard stroke's pivot above the throat, mm.</summary>
    public const double HardPivotMm = 450;

    /// <summary>Sums both patterns on a solid's blade.</summary>
    /// <param name="solid">The solid; its first blade place is the throat.</param>
    public static StrokePressures On(PaddleSolid solid) =>
        new(BladePressure.On(solid, TouringPivotMm), BladePressure.On(solid, HardPivotMm));
}
