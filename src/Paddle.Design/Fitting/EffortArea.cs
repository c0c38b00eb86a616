using Paddle.Design.Water;

namespace Paddle.Design.Fitting;

/// <summary>What the water model says of a blade in one paddler's hands.</summary>
/// <param name="BodyMassKg">m, body mass used, kg.</param>
/// <param name="StrokesPerMinute">f, cadence used.</param>
/// <param name="BoatSpeedMS">V, boat speed that goes with the effort, m/s.</param>
/// <param name="HullDragN">D, hull drag this paddler overcomes, N.</param>
/// <param name="MeanPullN">T, mean force during the pull, N.</param>
/// <param name="TargetSlipMS">s, slip aimed at, m/s.</param>
/// <param name="PullSeconds">Duration of the pull, s.</param>
/// <param name="TargetAreaMm2">A, blade area that gives that slip, mm².</param>
public sealed record StrokeDemand(
    double BodyMassKg,
    double StrokesPerMinute,
    double BoatSpeedMS,
    double HullDragN,
    double MeanPullN,
    double TargetSlipMS,
    double PullSeconds,
    double TargetAreaMm2);

/// <summary>
/// Blade area from body mass, effort and cadence. Each stroke must carry the hull's drag for one cycle; the pull's path past the boat is
/// set by the reach; the slip is held at the share of boat speed it has in the reference case; the area follows from the plate's drag.
/// The result grows with body mass and effort and falls with cadence: A ∝ V m^(2/3) / f.
/// </summary>
public static class EffortArea
{
    /// <summary>Body mass where unknown, kg (service's own choice).</summary>
    public const double DefaultBodyMassKg = 75;

    /// <summary>Reference boat speed, m/s: easy touring (common practice 1.3 to 1.8, no source).</summary>
    public const double ReferenceSpeedMS = 1.5;

    /// <summary>Hull drag per paddler at the reference speed, N (assumption, no source).</summary>
    public const double ReferenceDragN = 20;

    /// <summary>Reference blade area, m²: middle of the touring range 0.060 to 0.085 (common practice, no source).</summary>
    public const double ReferenceAreaM2 = 0.075;

    /// <summary>Reference cadence, strokes a minute. Source: forum and mailing-list reports of 35 to 50 in touring canoes.</summary>
    public const double ReferenceStrokesPerMinute = 45;

    /// <summary>Share of the cycle spent pulling (assumption, no source: 0.5 to 0.6).</summary>
    public const double ReferenceDuty = 0.5;

    /// <summary>Mean pull a trained paddler holds, N per kg^(2/3). Source: Ho, Smith and O'Meara 2009 (abstract), sub-elite dragon-boat paddlers, 5.5 ± 1.4.</summary>
    public const double SustainedPullPerMass = 5.5;

    /// <summary>
    /// Peak of a hard stroke of a trained paddler, mean and one standard deviation more, N per kg^(2/3). Source: Ho, Smith and O'Meara 2009
    /// (abstract), sub-elite dragon-boat paddlers, 11.4 ± 2.6.
    /// </summary>
    public const double TrainedPeakPerMass = 11.4 + 2.6;

    /// <summary>Smallest blade area offered, mm² (common practice, no source: touring blades 60 000 to 85 000).</summary>
    public const double SmallestAreaMm2 = 60_000;

    /// <summary>Largest blade area offered, mm² (common practice, no source: white water and racing 85 000 to 105 000).</summary>
    public const double LargestAreaMm2 = 105_000;

    /// <summary>More area in fast water, where one stroke must hold the boat: factor on the area (common practice, no source).</summary>
    public const double FastWaterFactor = 1.2;

    private const double Mm2PerM2 = 1_000_000;

    /// <summary>Reference slip and pull, all from the reference case at water of 15 °C and C_d 1.2.</summary>
    private static readonly (double SlipMS, double PathM) Reference = ReferenceCase();

    /// <summary>Body-mass scale of forces: m^(2/3).</summary>
    /// <param name="bodyMassKg">m, kg.</param>
    /// <returns>m^(2/3), kg^(2/3).</returns>
    /// <remarks>Source: scaling used by Ho, Smith and O'Meara 2009.</remarks>
    public static double MassScale(double bodyMassKg) => Math.Pow(bodyMassKg, 2.0 / 3); // theory F17

    /// <summary>
    /// Peak of the hardest stroke to expect: F = 14.0 m^(2/3) for who tours. Who trains or races is held to the design's own usual
    /// force, that of the best.
    /// </summary>
    /// <param name="bodyMassKg">m, kg.</param>
    /// <param name="effort">Effort.</param>
    /// <returns>F, whole N; null where the design's own is to hold.</returns>
    /// <remarks>Source: Ho, Smith and O'Meara 2009 (abstract); that a tourer pulls no harder than a trained paddler is an assumption.</remarks>
    public static double? HardStrokeN(double bodyMassKg, Effort effort) =>
        effort == Effort.Hard ? null : Math.Round(TrainedPeakPerMass * MassScale(bodyMassKg)); // theory F32

    /// <summary>Mean pull a trained paddler holds: F = 5.5 m^(2/3).</summary>
    /// <param name="bodyMassKg">m, kg.</param>
    /// <returns>F, N.</returns>
    /// <remarks>Source: Ho, Smith and O'Meara 2009 (abstract), sub-elite dragon-boat paddlers.</remarks>
    public static double SustainedPullN(double bodyMassKg) => SustainedPullPerMass * MassScale(bodyMassKg); // theory F18

    /// <summary>Boat speed meant by an effort, m/s. Touring 1.3 to 1.8 (common practice, no source), fast cruising 2.2 to 2.7 (magazine).</summary>
    /// <param name="effort">The effort.</param>
    /// <returns>V, m/s.</returns>
    public static double BoatSpeedMS(Effort effort) => effort switch
    {
        Effort.Easy => 1.5,
        Effort.Steady => 1.7,
        Effort.Hard => 2.0,
        _ => throw new ArgumentOutOfRangeException(nameof(effort), effort, "Unknown effort."),
    };

    /// <summary>Cadence that goes with an effort where none is given, strokes a minute. Touring 35 to 50 (forum reports), marathon 60 to 80 (common practice, no source).</summary>
    /// <param name="effort">The effort.</param>
    /// <returns>f, strokes a minute.</returns>
    public static double DefaultStrokesPerMinute(Effort effort) => effort switch
    {
        Effort.Easy => 45,
        Effort.Steady => 50,
        Effort.Hard => 60,
        _ => throw new ArgumentOutOfRangeException(nameof(effort), effort, "Unknown effort."),
    };

    /// <summary>
    /// The pull, slip and blade area an effort asks for:
    /// D = 20 (V/1.5)² (m/75)^(2/3); u = V + s with s = V s₀/1.5; t = ℓ/u; T = 60 D/(f t); A = 2 T/(ρ C_d s²).
    /// s₀ and ℓ are those of the reference case (V 1.5 m/s, T 40 N, A 0.075 m², C_d 1.2: s₀ = 0.943 m/s, ℓ = 1.63 m).
    /// </summary>
    /// <param name="bodyMassKg">m, kg.</param>
    /// <param name="effort">Effort, which sets V.</param>
    /// <param name="strokesPerMinute">f, strokes a minute.</param>
    /// <param name="densityKgM3">ρ, water density, kg/m³.</param>
    /// <returns>The demand. Its area is the model's own, before any trade limit.</returns>
    /// <remarks>
    /// Source: derived; hull drag and duty assumed; drag ∝ V² and ∝ m^(2/3) (wetted surface) assumed.
    /// The slip is a comparison between blades, not a prediction.
    /// </remarks>
    public static StrokeDemand Demand(double bodyMassKg, Effort effort, double strokesPerMinute, double densityKgM3)
    {
        double speed = BoatSpeedMS(effort);
        double speedRatio = speed / ReferenceSpeedMS;
        double drag = ReferenceDragN * speedRatio * speedRatio * MassScale(bodyMassKg / DefaultBodyMassKg);
        double slip = Reference.SlipMS * speedRatio; // same Froude efficiency as the reference case
        double pullSeconds = Reference.PathM / (speed + slip);
        double meanPull = 60 * drag / (strokesPerMinute * pullSeconds);
        double area = PlateDrag.AreaM2(meanPull, PlateDrag.DefaultCoefficient, slip, densityKgM3); // theory F19
        return new StrokeDemand(bodyMassKg, strokesPerMinute, speed, drag, meanPull, slip, pullSeconds, area * Mm2PerM2);
    }

    /// <summary>Area the water asks for: the model's, a fifth more in fast water.</summary>
    /// <param name="areaMm2">Model's area, mm².</param>
    /// <param name="water">Kind of water.</param>
    /// <returns>A, mm².</returns>
    public static double WaterAreaMm2(double areaMm2, WaterKind water) => water == WaterKind.FastWater ? areaMm2 * FastWaterFactor : areaMm2;

    /// <summary>Area the water asks for, kept within the trade's range.</summary>
    /// <param name="areaMm2">Model's area, mm².</param>
    /// <param name="water">Kind of water.</param>
    /// <returns>A, mm².</returns>
    public static double TradeAreaMm2(double areaMm2, WaterKind water) =>
        Math.Clamp(WaterAreaMm2(areaMm2, water), SmallestAreaMm2, LargestAreaMm2);

    private static (double SlipMS, double PathM) ReferenceCase()
    {
        double pull = ReferenceDragN / ReferenceDuty;
        double slip = PlateDrag.SlipMS(pull, PlateDrag.DefaultCoefficient, ReferenceAreaM2, FreshWater.DensityKgM3(FreshWater.DefaultTemperatureC));
        double pullSeconds = ReferenceDuty * 60 / ReferenceStrokesPerMinute;
        return (slip, (ReferenceSpeedMS + slip) * pullSeconds);
    }
}
