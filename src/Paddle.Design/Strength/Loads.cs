using Paddle.Design.Wood;

namespace Paddle.Design.Strength;

/// <summary>What a paddle is designed to stand.</summary>
/// <param name="BodyMassKg">Body mass that the default forces scale with, kg.</param>
/// <param name="Cases">Every load case, in the order in which a report lists them.</param>
public sealed record Loads(double BodyMassKg, IReadOnlyList<LoadCase> Cases)
{
    /// <summary>Every load case, in the order in which a report lists them.</summary>
    public IReadOnlyList<LoadCase> Cases
    {
        get;
        init => (field, AlongTheGrain) = (value, [.. value.Where(loadCase => loadCase.BendsAlongTheGrain)]);
    } = Cases;

    /// <summary>Body mass when none is given, kg.</summary>
    public const double UnknownBodyMassKg = 75;

    /// <summary>Weight that a maker hangs at the centre of pressure to check the flex, N.</summary>
    public const double BenchN = 50;

    /// <summary>Peak over mean force of a stroke: 16.3/7.9. Source: elite dragon-boat paddlers, Ho, Smith and O'Meara 2009 (abstract).</summary>
    public const double PeakOverMean = 2.06;

    /// <summary>The cases that bend the paddle along its length: those that the sizes are chosen for.</summary>
    public IReadOnlyList<LoadCase> AlongTheGrain { get; private init; } = [.. Cases.Where(loadCase => loadCase.BendsAlongTheGrain)];

    /// <summary>The easy stroke, whose pressure also gives the centre of pressure and the hands' forces.</summary>
    public LoadCase Touring => Cases.First(loadCase => loadCase.Action == LoadAction.Stroke);

    /// <summary>The case with this id.</summary>
    public LoadCase Case(string id) => Cases.First(loadCase => loadCase.Id == id);

    /// <summary>The cases for a body mass. To add one: add its record here. Theory L1–L4.</summary>
    /// <param name="bodyMassKg">Body mass, kg.</param>
    /// <param name="leastFactor">Least safety factor.</param>
    /// <param name="asked">Forces that the caller states in place of the defaults.</param>
    public static Loads ForBodyMass(double bodyMassKg, double leastFactor, ForcesAsked? asked = null)
    {
        var scale = Math.Cbrt(bodyMassKg * bodyMassKg);
        var halfWeight = 0.5 * bodyMassKg * 9.80665;
        asked ??= new();
        var hard = asked.HardStrokeN ?? 21.1 * scale;
        return new(bodyMassKg,
        [
            new("touring-stroke", LoadAction.Stroke, asked.TouringStrokeN ?? 5.0 * scale, leastFactor,
                "5.0 N per kg^(2/3) of body mass: assumption from a 20 N hull drag per paddler at 1.5 m/s; fatigue fraction 0.40, "
                + "Wood Handbook table of cyclic results, from memory")
            {
                PivotMm = StrokePivots.TouringMm,
                StrengthShare = LoadDuration.OneWayBendingFatigueFraction,
            },
            new("hard-stroke", LoadAction.Stroke, hard, leastFactor,
                "21.1 N per kg^(2/3): mean + 1 SD of elite single-blade peaks, Ho, Smith and O'Meara 2009, J Sports Sci 27:37-47 (abstract)")
            {
                PivotMm = StrokePivots.HardMm,
            },
            new("brace", LoadAction.EvenPressure, asked.BraceN ?? halfWeight, leastFactor,
                "half the body weight on the flat blade: engineering assumption, no published figure found"),
            new("push-off", LoadAction.TipThrust, asked.PushOffAxialN ?? halfWeight, leastFactor,
                "half the body weight along the shaft, off the axis by half the shaft's depth, with 125 N sideways at 75 kg: engineering "
                + "assumption, no published figure found")
            {
                SideForceN = asked.PushOffSideN ?? 125 / Math.Cbrt(75.0 * 75.0) * scale,
            },
            new("edge-press", LoadAction.AcrossTheGrain, asked.EdgePressN ?? hard, leastFactor,
                "pressure of the hard stroke on a strip across the blade, held at the spine: cantilever plate strip, elementary mechanics")
            {
                PivotMm = StrokePivots.HardMm,
            },
        ]);
    }
}

/// <summary>Forces that a caller states, N; null ones follow from the body mass.</summary>
public sealed record ForcesAsked(
    double? TouringStrokeN = null,
    double? HardStrokeN = null,
    double? BraceN = null,
    double? PushOffAxialN = null,
    double? PushOffSideN = null,
    double? EdgePressN = null);
