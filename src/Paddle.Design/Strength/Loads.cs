namespace Paddle.Design.Strength;

/// <summary>The forces a paddle is designed for, N. Every one may be replaced by the caller's own.</summary>
/// <param name="BodyMassKg">Body mass that the defaults scale with, kg.</param>
/// <param name="TouringStrokeN">Peak of an easy stroke, repeated a million times, at the centre of pressure.</param>
/// <param name="HardStrokeN">Peak of a strong paddler's hard stroke, at the centre of pressure.</param>
/// <param name="BraceN">Leaning on the blade laid flat on the water, pried over the lower hand; spread evenly.</param>
/// <param name="PushOffAxialN">Pushing off the bottom: along the shaft.</param>
/// <param name="PushOffSideN">Pushing off the bottom: sideways on the tip, across the faces.</param>
/// <param name="EdgePressN">Force whose pressure bends the blade across the grain; the hard stroke's unless replaced.</param>
public sealed record Loads(
    double BodyMassKg,
    double TouringStrokeN,
    double HardStrokeN,
    double BraceN,
    double PushOffAxialN,
    double PushOffSideN,
    double EdgePressN)
{
    /// <summary>Body mass when none is given, kg.</summary>
    public const double UnknownBodyMassKg = 75;

    /// <summary>Weight that a maker hangs at the centre of pressure to check the flex, N.</summary>
    public const double BenchN = 50;

    /// <summary>Peak over mean force of a stroke: 16.3/7.9. Source: elite dragon-boat paddlers, Ho, Smith and O'Meara 2009 (abstract).</summary>
    public const double PeakOverMean = 2.06;

    /// <summary>The defaults for a body mass. Theory L1–L4.</summary>
    /// <param name="bodyMassKg">Body mass, kg.</param>
    /// <remarks>
    /// Touring 5.0·m^⅔: engineering assumption from a 20 N hull drag at 1.5 m/s. Hard (16.3 + 4.8)·m^⅔: mean + 1 SD of elite
    /// peaks, Ho, Smith and O'Meara 2009 (abstract). Brace ½mg and push-off ½mg with 125 N sideways at 75 kg: engineering
    /// assumptions, no published figure found.
    /// </remarks>
    public static Loads ForBodyMass(double bodyMassKg)
    {
        var scale = Math.Cbrt(bodyMassKg * bodyMassKg);
        var halfWeight = 0.5 * bodyMassKg * 9.80665;
        var hard = 21.1 * scale;
        return new(bodyMassKg, 5.0 * scale, hard, halfWeight, halfWeight, 125 / Math.Cbrt(75.0 * 75.0) * scale, hard);
    }
}
