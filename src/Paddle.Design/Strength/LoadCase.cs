namespace Paddle.Design.Strength;

/// <summary>How a load case acts on the paddle.</summary>
public enum LoadAction
{
    /// <summary>Water pressure growing with the square of the distance from the stroke's pivot.</summary>
    Stroke,
    /// <summary>Water pressure spread evenly over the face.</summary>
    EvenPressure,
    /// <summary>A thrust along the shaft on the tip, with a force sideways.</summary>
    TipThrust,
    /// <summary>A stroke's pressure, looked at where it bends the blade across the grain.</summary>
    AcrossTheGrain,
}

/// <summary>One load case, all of it: solver, report, curves, corrections and contract read this record and know no case by name.</summary>
/// <param name="Id">Name in the contract.</param>
/// <param name="ForceN">Its force, N: on the blade, or along the shaft for a thrust.</param>
/// <param name="LeastFactor">Least factor asked of it, on the 5th percentile of the strength used.</param>
/// <param name="Source">Where force, share of strength and factor come from.</param>
public sealed record LoadCase(string Id, LoadAction Action, double ForceN, double LeastFactor, string Source)
{
    /// <summary>Force sideways on the tip, across the faces, N; of a thrust only.</summary>
    public double SideForceN { get; init; }
    /// <summary>Distance of the stroke's pivot above the throat, mm; of a stroke only. Theory L5.</summary>
    public double PivotMm { get; init; }
    /// <summary>Share of the strength of a five-minute test that a load of this duration and number may use. Theory L17.</summary>
    public double StrengthShare { get; init; } = 1;
    /// <summary>Whether the case bends the paddle along its length.</summary>
    public bool BendsAlongTheGrain => Action != LoadAction.AcrossTheGrain;
    /// <summary>Thrust along the shaft, N; 0 unless the case is one.</summary>
    internal double ThrustN => Action == LoadAction.TipThrust ? ForceN : 0;
    /// <summary>Name to print in a sentence.</summary>
    public string Name => Id.Replace('-', ' ');
}

/// <summary>How far above the throat the two strokes have their pivot, the point of the paddle at rest in the water. Theory L5.</summary>
/// <remarks>The pivot lies slip/ω above the blade's centre of pressure. Easy: slip 0.9 m/s at 2.2 rad/s, 0.42 m, about 100 mm above the
/// throat. Hard: slip 2.4 m/s (375 N on 0.067 m² at the high drag coefficient 2.0, which puts the pivot low and the resultant far out, the
/// safe side) at 3 rad/s, 0.8 m, about 450 mm above the throat. Turning rates are engineering assumptions: a sweep of about 60° in the
/// drive half of the cycle at 45 and 80 strokes a minute.</remarks>
internal static class StrokePivots
{
    /// <summary>Distance of the easy stroke's pivot above the throat, mm.</summary>
    public const double TouringMm = 100;
    /// <summary>Distance of the hard stroke's pivot above the throat, mm.</summary>
    public const double HardMm = 450;
}
