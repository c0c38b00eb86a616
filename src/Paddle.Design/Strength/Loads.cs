using Paddle.Design.Water;

namespace Paddle.Design.Strength;

/// <summary>What a paddle is designed to stand.</summary>
/// <param name="BodyMassKg">Body mass that the default forces scale with, kg.</param>
/// <param name="Cases">Every load case, in the order in which a report lists them.</param>
public sealed record Loads(Duty Duty, double BodyMassKg, IReadOnlyList<LoadCase> Cases)
{
    /// <summary>Body mass when none is given, kg.</summary>
    public const double UnknownBodyMassKg = 75;
    /// <summary>Weight that a maker hangs at the centre of pressure to check the flex, N.</summary>
    public const double BenchN = 50;
    /// <summary>Peak over mean force of a stroke: 16.3/7.9. Source: elite dragon-boat paddlers, Ho, Smith and O'Meara 2009 (abstract).</summary>
    public const double PeakOverMean = 2.06;

    /// <summary>Strength for a load of a second or less over that of a five-minute test, applied to strokes, brace and push. Source: EN
    /// 1995-1-1, k_mod of instantaneous loads on solid timber, 1.10 in dry service, in the ICE Manual, table 19.9. Theory L17.</summary>
    public const double InstantaneousShare = 1.10;

    // Least factors of the cases other than the hard stroke when that has 1.3: fatigue strength is a life, not a collapse (EN 1995-2
    // annex A takes a partial factor of 1.0 there), and a brace, a push off the bottom or a split is an accident (EN 1995-1-1 takes 1.0; 1.1 is
    // kept because the speeds and forces are assumptions). From memory.
    private const double FatigueFactor = 1.0, AccidentFactor = 1.1;

    private const double DragOfFlatBlade = 1.2; // mean of the band of plate drag for a blade's aspect, theory H6
    private const double GravityMS2 = 9.80665;
    private const string Instantaneous = "; 1.10 on strength for its duration: EN 1995-1-1, instantaneous, in the ICE Manual table 19.9";

    /// <summary>Every load case, in the order in which a report lists them.</summary>
    public IReadOnlyList<LoadCase> Cases
    {
        get;
        init => (field, AlongTheGrain) = (value, [.. value.Where(loadCase => loadCase.BendsAlongTheGrain)]);
    } = Cases;

    /// <summary>The cases that bend the paddle along its length: those that the sizes are chosen for.</summary>
    public IReadOnlyList<LoadCase> AlongTheGrain { get; private init; } = [.. Cases.Where(loadCase => loadCase.BendsAlongTheGrain)];
    /// <summary>The easy stroke, whose pressure also gives the centre of pressure and the hands' forces.</summary>
    public LoadCase Touring => Cases.First(loadCase => loadCase.Action == LoadAction.Stroke);

    internal LoadCase Case(string id) => Cases.First(loadCase => loadCase.Id == id);

    /// <summary>The load cases of a duty. To add one: add its record here. Theory L1–L4.</summary>
    /// <param name="bladeAreaMm2">Area of the blade's face, mm²: what limits the force of a brace.</param>
    /// <param name="leastFactor">Least factor of the hard stroke in place of the duty's own; scales all others in proportion.</param>
    /// <param name="asked">Forces that the caller states in place of the defaults.</param>
    internal static Loads For(Duty duty, double bodyMassKg, double bladeAreaMm2, double? leastFactor = null, ForcesAsked? asked = null)
    {
        var rule = DutyRule.Of(duty);
        asked ??= new();
        var least = leastFactor ?? rule.LeastFactor;
        double scale = Math.Cbrt(bodyMassKg * bodyMassKg), halfWeight = 0.5 * bodyMassKg * GravityMS2, perFactor = least / rule.LeastFactor;
        var hard = asked.HardStrokeN ?? rule.HardN * scale;
        return new(duty, bodyMassKg,
        [
            new("touring-stroke", LoadAction.Stroke, asked.TouringStrokeN ?? rule.TouringN * scale, FatigueFactor * perFactor, rule.TouringSource)
            {
                PivotMm = StrokePivots.TouringMm,
                StrengthShare = rule.FatigueShare,
            },
            new("hard-stroke", LoadAction.Stroke, hard, least, rule.HardSource + Instantaneous)
            {
                PivotMm = StrokePivots.HardMm,
                StrengthShare = InstantaneousShare,
            },
            new("brace", LoadAction.EvenPressure, asked.BraceN ?? Math.Min(halfWeight, BraceN(bladeAreaMm2, rule.BraceSpeedMS)),
                AccidentFactor * perFactor,
                $"half the body weight, or what water gives at {rule.BraceSpeedMS:0.0} m/s if less (drag coefficient 1.2): the speed is an "
                + "assumption, no measured bracing force was found" + Instantaneous)
            {
                StrengthShare = InstantaneousShare,
            },
            new("push-off", LoadAction.TipThrust, asked.PushOffAxialN ?? halfWeight, AccidentFactor * perFactor,
                "half the body weight along the shaft, off the axis by half the shaft's depth, with 125 N sideways at 75 kg: engineering "
                + "assumption, no published figure found" + Instantaneous)
            {
                SideForceN = asked.PushOffSideN ?? 125 / Math.Cbrt(75.0 * 75.0) * scale,
                StrengthShare = InstantaneousShare,
            },
            new("edge-press", LoadAction.AcrossTheGrain, asked.EdgePressN ?? hard, AccidentFactor * perFactor,
                "pressure of the hard stroke bending the blade across the grain: plate equation weighted over the width, followed against "
                + "three-dimensional finite elements; a split shows and does not drop the paddler, so the factor is that of an accident"
                + Instantaneous)
            {
                PivotMm = StrokePivots.HardMm,
                StrengthShare = InstantaneousShare,
            },
        ]);
    }

    // Theory L3: the drag that a flat blade can find.
    private static double BraceN(double areaMm2, double speedMS) =>
        0.5 * FreshWater.DensityKgM3(FreshWater.DefaultTemperatureC) * DragOfFlatBlade * areaMm2 * 1e-6 * speedMS * speedMS;
}

/// <summary>Forces that a caller states, N; null ones follow from duty and body mass.</summary>
internal sealed record ForcesAsked(
    double? TouringStrokeN = null, double? HardStrokeN = null, double? BraceN = null, double? PushOffAxialN = null,
    double? PushOffSideN = null, double? EdgePressN = null);
