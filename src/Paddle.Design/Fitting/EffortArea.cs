using Paddle.Design.Water;

namespace Paddle.Design.Fitting;

/// <summary>What an outing asks of one paddler's strokes.</summary>
/// <param name="BodyMassKg">m, body mass used, kg.</param>
/// <param name="StrokesPerMinute">f, cadence used.</param>
/// <param name="BoatSpeedMS">V, boat speed that goes with the effort and the hours, m/s.</param>
/// <param name="HullDragN">D, hull drag this paddler overcomes, N.</param>
/// <param name="MeanPullN">T, mean force during the pull, N.</param>
/// <param name="PullSeconds">t, duration of the pull, s; always less than the stroke's cycle.</param>
/// <param name="AreaShare">A/A₀, blade area asked for over that of the reference paddler, whatever the family.</param>
internal sealed record StrokeDemand(
    double BodyMassKg,
    double StrokesPerMinute,
    double BoatSpeedMS,
    double HullDragN,
    double MeanPullN,
    double PullSeconds,
    double AreaShare);

/// <summary>What the water model says of the blade chosen; low and high stand for the low and high drag coefficient.</summary>
/// <param name="Demand">Pull, slip and area the outing asks for.</param>
/// <param name="DragCoefficientLow">Fully submerged plate of the blade's proportions.</param>
/// <param name="DragCoefficientHigh">Plate in a shallow flume.</param>
/// <param name="SlipAtLowCoefficientMS">Slip with the low coefficient, m/s (the larger slip).</param>
/// <param name="SlipAtHighCoefficientMS">Slip with the high coefficient, m/s.</param>
/// <param name="EfficiencyAtLowCoefficient">Froude efficiency with the low coefficient, 0 to 1.</param>
/// <param name="EfficiencyAtHighCoefficient">Froude efficiency with the high coefficient, 0 to 1.</param>
internal sealed record BladeInWater(
    StrokeDemand Demand,
    double DragCoefficientLow,
    double DragCoefficientHigh,
    double SlipAtLowCoefficientMS,
    double SlipAtHighCoefficientMS,
    double EfficiencyAtLowCoefficient,
    double EfficiencyAtHighCoefficient,
    double StrokesPerDay);

/// <summary>Pull and blade area from body mass, effort, cadence and hours. Each stroke must carry the hull's drag for one cycle, and the
/// area keeps the slip at the share of boat speed it has in the reference case, an adult of 75 kg touring at 45 strokes a minute with the
/// family's usual blade. The reference is calibrated on what people carry (common practice), not validated: no measured choice of blades
/// was found.</summary>
internal static class EffortArea
{
    /// <summary>Body mass of the reference paddler, kg (service's own choice).</summary>
    public const double ReferenceBodyMassKg = 75;
    /// <summary>Share of boat and gear that a paddler moves besides the own body, kg (assumption, no source: half a 30 kg canoe and a day's kit).</summary>
    public const double GearKg = 20;
    /// <summary>Reference boat speed, m/s: easy touring (common practice 1.3 to 1.8, no source).</summary>
    public const double ReferenceSpeedMS = 1.5;
    /// <summary>Hull drag per paddler at the reference speed and mass, N (assumption, no source).</summary>
    public const double ReferenceDragN = 20;
    /// <summary>Reference cadence, strokes a minute. Source: forum and mailing-list reports of 35 to 50 in touring canoes.</summary>
    public const double ReferenceStrokesPerMinute = 45;
    /// <summary>Reference day, h of paddling; that where none is given (assumption, no source).</summary>
    public const double ReferenceHours = 4;
    /// <summary>Share of the cycle spent pulling at the reference (assumption, no source: 0.5 to 0.6).</summary>
    public const double ReferenceDuty = 0.5;
    /// <summary>Growth of time with distance that a body can keep up, T ∝ d^1.06. Source: Riegel 1981, as quoted in running pages.</summary>
    public const double EnduranceExponent = 1.06;
    /// <summary>Mean pull a trained paddler holds, N per kg^(2/3). Source: Ho, Smith and O'Meara 2009 (abstract), sub-elite dragon-boat paddlers, 5.5 ± 1.4.</summary>
    public const double SustainedPullPerMass = 5.5;
    private const double SecondsPerMinute = 60;
    /// <summary>Pull of the reference paddler, N: 40.</summary>
    public const double ReferencePullN = ReferenceDragN / ReferenceDuty;

    /// <summary>Body-mass scale of forces: m^(2/3).</summary>
    /// <param name="bodyMassKg">m, kg.</param>
    /// <returns>m^(2/3), kg^(2/3).</returns>
    /// <remarks>Source: scaling used by Ho, Smith and O'Meara 2009.</remarks>
    public static double MassScale(double bodyMassKg) => Math.Pow(bodyMassKg, 2.0 / 3); // theory F17

    /// <summary>Mean pull a trained paddler holds: F = 5.5 m^(2/3).</summary>
    /// <param name="bodyMassKg">m, kg.</param>
    /// <returns>F, N.</returns>
    /// <remarks>Source: Ho, Smith and O'Meara 2009 (abstract), sub-elite dragon-boat paddlers.</remarks>
    public static double SustainedPullN(double bodyMassKg) => SustainedPullPerMass * MassScale(bodyMassKg); // theory F18

    /// <summary>Hull drag of a paddler over that of the reference paddler at the same speed: μ = ((m + 20)/95)^(2/3), wetted surface by displacement.</summary>
    /// <param name="bodyMassKg">m, kg.</param>
    /// <returns>μ, dimensionless. A child pulls a share of the boat, too, so it falls less than the child's mass.</returns>
    /// <remarks>Source: surface of like shapes; the 20 kg of boat and gear are an assumption.</remarks>
    public static double DragShare(double bodyMassKg) => MassScale((bodyMassKg + GearKg) / (ReferenceBodyMassKg + GearKg)); // theory F32

    /// <summary>Boat speed meant by an effort kept up for a day of the reference length, m/s. Touring 1.3 to 1.8 (common practice, no source), fast cruising 2.2 to 2.7 (magazine).</summary>
    /// <returns>V, m/s.</returns>
    public static double UsualSpeedMS(Effort effort) => effort switch
    {
        Effort.Easy => 1.5,
        Effort.Steady => 1.7,
        Effort.Hard => 2.0,
        _ => throw new ArgumentOutOfRangeException(nameof(effort), effort, "Unknown effort."),
    };

    /// <summary>Boat speed of an effort kept up for some hours: V = V₀ (h/4)^(1/1.06 − 1).</summary>
    /// <param name="effort">The effort, which sets V₀.</param>
    /// <param name="hours">h, hours of paddling a day.</param>
    /// <returns>V, m/s: 4 % less for twice the hours.</returns>
    /// <remarks>Source: Riegel's endurance law, made for races of minutes to four hours and carried on beyond; that it holds for a day in a canoe is an assumption.</remarks>
    public static double BoatSpeedMS(Effort effort, double hours) =>
        UsualSpeedMS(effort) * Math.Pow(hours / ReferenceHours, (1 / EnduranceExponent) - 1); // theory F36

    /// <summary>Cadence that goes with an effort where none is given, strokes a minute: 45, 51, 60, in proportion to the boat's speed, so
    /// that every stroke carries the boat equally far. Touring 35 to 50 (forum reports), marathon 60 to 80 (common practice, no
    /// source).</summary>
    /// <returns>f, strokes a minute.</returns>
    public static double DefaultStrokesPerMinute(Effort effort) => ReferenceStrokesPerMinute * UsualSpeedMS(effort) / ReferenceSpeedMS;

    /// <summary>Duration of a pull: 1/t = f/60 + 1/t_r with t_r = (4/3 s)(1.5/V): half the cycle at the reference, a smaller share when slow, a larger one when quick, never all of it.</summary>
    /// <param name="strokesPerMinute">f, strokes a minute.</param>
    /// <param name="boatSpeedMS">V, m/s.</param>
    /// <returns>t, s.</returns>
    /// <remarks>Assumption, no source; at 85 strokes a minute and 2 m/s it gives 0.41 s, where elite dragon-boat paddlers pull for 0.38 s (impulse over mean force, Ho, Smith and O'Meara 2009).</remarks>
    public static double PullSeconds(double strokesPerMinute, double boatSpeedMS)
    {
        const double UnhurriedSeconds = SecondsPerMinute / ReferenceStrokesPerMinute * ReferenceDuty / (1 - ReferenceDuty);
        var unhurried = UnhurriedSeconds * ReferenceSpeedMS / boatSpeedMS;
        return 1 / ((strokesPerMinute / SecondsPerMinute) + (1 / unhurried)); // theory F37
    }

    /// <summary>The pull an outing asks for and the blade area that goes with it: D = 20 μ (V/1.5)²; T = 60 D/(f t); A/A₀ = (T/40)(1.5/V)²,
    /// which keeps the slip at the same share of the boat's speed.</summary>
    /// <param name="bodyMassKg">m, kg.</param>
    /// <param name="strokesPerMinute">f, strokes a minute.</param>
    /// <returns>The demand. It grows with body mass and falls with cadence; at the usual cadence it is the same for every effort.</returns>
    /// <remarks>Source: derived; hull drag assumed, ∝ V². A comparison between blades, not a prediction.</remarks>
    public static StrokeDemand Demand(double bodyMassKg, Effort effort, double strokesPerMinute, double hours)
    {
        var speed = BoatSpeedMS(effort, hours);
        var speedRatio = speed / ReferenceSpeedMS;
        var drag = ReferenceDragN * DragShare(bodyMassKg) * speedRatio * speedRatio;
        var pullSeconds = PullSeconds(strokesPerMinute, speed);
        var meanPull = SecondsPerMinute * drag / (strokesPerMinute * pullSeconds);
        var areaShare = meanPull / (ReferencePullN * speedRatio * speedRatio); // theory F19
        return new StrokeDemand(bodyMassKg, strokesPerMinute, speed, drag, meanPull, pullSeconds, areaShare);
    }

    /// <summary>Slip and efficiency of a blade under a pull, with the low and the high drag coefficient; the low one is that of the family's usual proportions.</summary>
    /// <param name="immersedShare">Share of it under water, 0 to 1.</param>
    /// <param name="densityKgM3">ρ, water density, kg/m³.</param>
    public static BladeInWater InWater(StrokeDemand demand, ChosenBlade blade, double immersedShare, double densityKgM3, double strokesPerDay)
    {
        const double Mm2PerM2 = 1_000_000;
        var drag = PlateDrag.Band(PlateDrag.AspectRatio(blade.Family.LengthMm, blade.Family.WidthMm));
        var areaM2 = blade.AreaMm2 * immersedShare / Mm2PerM2;
        var most = PlateDrag.SlipMS(demand.MeanPullN, drag.Low, areaM2, densityKgM3);
        var least = PlateDrag.SlipMS(demand.MeanPullN, drag.High, areaM2, densityKgM3);
        return new BladeInWater(
            demand, drag.Low, drag.High, most, least,
            PlateDrag.FroudeEfficiency(demand.BoatSpeedMS, most), PlateDrag.FroudeEfficiency(demand.BoatSpeedMS, least), strokesPerDay);
    }
}
