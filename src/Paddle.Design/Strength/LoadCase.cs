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
/// <param name="Action">How it acts.</param>
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
