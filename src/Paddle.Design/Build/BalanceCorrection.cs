using System.Globalization;
using MathNet.Numerics.Distributions;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>Wood to take from one zone, beyond planing to plan.</summary>
/// <param name="Zone">The zone.</param>
/// <param name="Id">Its name in the contract.</param>
/// <param name="MassG">Grams that come off.</param>
/// <param name="ThicknessMm">Full thickness off the middle in the heart of the zone, mm, running out to nothing at edges and ends.</param>
/// <param name="PerFaceMm">Of that, off each face, mm.</param>
/// <param name="How">How to take it.</param>
public sealed record Removal(CorrectionZone Zone, string Id, double MassG, double ThicknessMm, double PerFaceMm, string How);

/// <summary>What explains the readings.</summary>
/// <param name="DensityKgM3">Density at the design's balance point, kg/m³.</param>
/// <param name="DensityUncertaintyKgM3">Its standard uncertainty.</param>
/// <param name="EndToEndPercent">Density at the tip end above that at the grip end, percent.</param>
/// <param name="UnevenNeeded">Whether even wood at the stage's plan fails to explain the balance: more than 2 standard uncertainties off.</param>
/// <param name="UnexplainedMm">Balance point read, less that of even wood at the stage's plan, mm.</param>
/// <param name="ThicknessErrorsMm">Thickness above plan by zone, mm, in the order of <see cref="CorrectionZones.All"/>.</param>
/// <param name="Words">The same in words.</param>
public sealed record Explanation(
    double DensityKgM3,
    double DensityUncertaintyKgM3,
    double EndToEndPercent,
    bool UnevenNeeded,
    double UnexplainedMm,
    IReadOnlyList<double> ThicknessErrorsMm,
    string Words);

/// <summary>A predicted finished paddle.</summary>
/// <param name="MassG">Mass, g.</param>
/// <param name="BalanceMm">Balance point, mm.</param>
/// <param name="StandardUncertaintyMm">Standard uncertainty of the balance point, mm.</param>
/// <param name="ChanceInTolerance">Chance that it ends in tolerance, 0 to 1.</param>
public sealed record Forecast(double MassG, double BalanceMm, double StandardUncertaintyMm, double ChanceInTolerance);

/// <summary>The paddle after the correction, its strength looked at again on the real solid.</summary>
/// <param name="MassG">Mass, g.</param>
/// <param name="BalanceMm">Balance point, mm.</param>
/// <param name="ChanceInTolerance">Chance that it ends in tolerance, 0 to 1.</param>
/// <param name="MinimumSafetyFactor">Least safety factor of all load cases.</param>
/// <param name="GoverningCase">The case that has it.</param>
/// <param name="BenchFlexMm">Bench flex, mm.</param>
public sealed record Corrected(
    double MassG, double BalanceMm, double ChanceInTolerance, double MinimumSafetyFactor, LoadCase GoverningCase, double BenchFlexMm);

/// <summary>What is left when wood would have to be put back.</summary>
/// <param name="AcceptOffsetMm">Offset from the aim to live with, mm; negative grip-heavy.</param>
/// <param name="MoveLowerHandMm">How far to move the lower-hand mark, mm towards the tip (negative towards the grip).</param>
/// <param name="AddAtTipG">Grams to add at the tip, as cloth and resin, to reach the aim; null when it is blade-heavy.</param>
/// <param name="AddAtGripG">Grams to add at the grip to reach the aim; null when it is grip-heavy.</param>
public sealed record LeastBad(double AcceptOffsetMm, double MoveLowerHandMm, double? AddAtTipG, double? AddAtGripG);

/// <summary>From a weighing and a balance point in the middle of the build to the least wood that brings the aim. Theory M22 to M25.</summary>
/// <param name="Explanation">What explains the readings.</param>
/// <param name="Finished">The finished paddle if planed to plan.</param>
/// <param name="AimMm">Aimed balance point, mm.</param>
/// <param name="ToleranceMm">Tolerance, mm.</param>
/// <param name="Removals">Wood to take off beyond the plan; none when nothing is needed.</param>
/// <param name="Corrected">The paddle after it.</param>
/// <param name="Achievable">
/// Whether the best estimate after it is in tolerance and within the most mass. The cut itself never crosses a limit; should the
/// wood be too thin before it, <see cref="Corrected"/> shows the safety factor and the advice says so.
/// </param>
/// <param name="LeastBad">Choices when it is not; else null.</param>
/// <param name="Advice">In plain words.</param>
public sealed record BalanceCorrection(
    Explanation Explanation,
    Forecast Finished,
    double AimMm,
    double ToleranceMm,
    IReadOnlyList<Removal> Removals,
    Corrected Corrected,
    bool Achievable,
    LeastBad? LeastBad,
    IReadOnlyList<string> Advice)
{
    // A cut thinner than this is a few strokes of a scraper and below what a caliper shows.
    private const double LeastDepthMm = 0.01;
    private const int Passes = 6;

    /// <summary>Standard uncertainty of a hand-made cut, as a share of its depth. Common practice, no source.</summary>
    public const double CutVariation = 0.15;

    /// <summary>Works the correction out.</summary>
    /// <param name="report">The design.</param>
    /// <param name="reading">Stage, mass, balance point and thickness readings.</param>
    /// <param name="options">What to aim for; null for the defaults.</param>
    /// <exception cref="ArgumentOutOfRangeException">A reading or an option outside its range.</exception>
    public static BalanceCorrection Solve(DesignReport report, BalanceReading reading, CorrectionOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(reading);
        options ??= new();
        Require(report, reading, options);
        var build = options.Build ?? new();
        var (form, _, wood, loads, aims) = report.Specification;

        var fine = PaddleSolid.Shape(form, report.Sizes, report.Outline, StationGrid.Fine);
        var blank = Blank.For(report.Stations, WoodCatalogue.Find(wood.SpeciesId)?.IsSoftwood ?? false, build.Saw, build.BoardThicknessMm);
        var stage = StageSolid.Of(fine, blank, reading.Stage, build.Saw);
        var estimate = StageEstimate.Fit(report, stage, fine, reading, build.Saw);

        var finish = options.CountFinish
            ? FinishLoad.Add(
                fine, report.Mass.TotalG, report.Mass.CentreOfMassMm,
                FinishPlan.For(report.Mass, form.Places.ThroatMm, build.VarnishCoats, build.OilCoats))
            : null;
        var forecast = new FinishedForecast(
            report, StageSolid.Of(fine, blank, BuildStage.Finished, build.Saw), reading.Stage, build.Saw, finish);
        var (mass, first) = forecast.Sum(estimate.Theta);
        var uncertainty = forecast.BalanceUncertaintyMm(estimate);
        double aim = report.Balance.TargetMm, tolerance = aims.BalanceToleranceMm;
        var finished = new Forecast(mass, first / mass, uncertainty, FinishedForecast.Chance(first / mass, uncertainty, aim, tolerance));

        var (gPerMm, firstPerMm) = forecast.PerMillimetre(estimate);
        var plan = Plan(report, forecast, estimate, fine, uncertainty, options.Confidence);
        uncertainty = plan.UncertaintyMm;
        var removedG = plan.DepthMm.Select((depth, z) => depth * gPerMm[z]).ToArray();
        var massAfter = mass - removedG.Sum();
        var balanceAfter = (first - plan.DepthMm.Select((depth, z) => depth * firstPerMm[z]).Sum()) / massAfter;
        var corrected = new Corrected(
            massAfter, balanceAfter, FinishedForecast.Chance(balanceAfter, uncertainty, aim, tolerance),
            plan.Strength.Governing.SafetyFactor, plan.Strength.Governing.Case, plan.BenchFlexMm);

        var offset = balanceAfter - aim;
        var achievable = Math.Abs(offset) <= tolerance + 1e-6 && !(massAfter > aims.MaximumMassG + 0.5);
        var removals = RemovalList(form, plan.DepthMm, removedG);
        var leastBad = achievable ? null : Choices(form, massAfter, offset, aim);
        var explanation = Explain(estimate, stage, reading);
        return new(
            explanation,
            finished,
            aim,
            tolerance,
            removals,
            corrected,
            achievable,
            leastBad,
            CorrectionAdvice.For(
                reading.Stage, wood, aims, explanation, finished, aim, removals, corrected, achievable, leastBad));
    }

    // Drawn in from the tolerance so that chance is on the maker's side; never to less than a tenth of it.
    private static double Reach(double toleranceMm, double uncertaintyMm, double confidence) =>
        Math.Max(0.1 * toleranceMm, toleranceMm - Normal.InvCDF(0, 1, confidence) * uncertaintyMm);

    private static double WithCutting(
        double uncertaintyMm, double[] depthMm, double[] gPerMm, double[] firstPerMm, double massG, double first)
    {
        var square = uncertaintyMm * uncertaintyMm;
        for (var z = 0; z < depthMm.Length; z++)
        {
            var shift = depthMm[z] * (firstPerMm[z] - gPerMm[z] * first / massG) / massG;
            square += CutVariation * shift * (CutVariation * shift);
        }

        return Math.Sqrt(square);
    }

    private static CutPlan Plan(
        DesignReport report,
        FinishedForecast forecast,
        StageEstimate estimate,
        PaddleSolid fine,
        double uncertaintyMm,
        double confidence)
    {
        var (_, _, wood, loads, aims) = report.Specification;
        var stations = report.Stations;
        var shares = stations.Grid.Patterns.ToArray().Select(CorrectionZones.Shares).ToArray();
        var fineShares = fine.Grid.Patterns.ToArray().Select(CorrectionZones.Shares).ToArray();

        // Thin beyond the doubt of the readings counts against strength; thinner by less than that may be nothing but noise.
        double[] tooThin =
        [
            .. CorrectionZones.All.Select(zone => Math.Max(
                0, -forecast.LeftMm(zone, estimate.ThicknessErrorMm(zone) + estimate.ThicknessUncertaintyMm(zone)))),
        ];
        var planed = stations.Thinned(Depths(shares, tooThin));
        var before = Looked(planed, fine.Thinned(Depths(fineShares, tooThin)), loads, wood);

        // A paddle planed too thin already may not get weaker still; elsewhere the factor asked for holds.
        var least = Math.Min(aims.MinimumSafetyFactor, before.Strength.Governing.SafetyFactor) - 1e-9;
        var mostFlex = Math.Max(aims.MostBenchFlexMm ?? double.PositiveInfinity, before.BenchFlexMm) + 1e-9;
        var (mass, first) = forecast.Sum(estimate.Theta);
        var (gPerMm, firstPerMm) = forecast.PerMillimetre(estimate);
        var excess = Math.Max(0, mass - (aims.MaximumMassG ?? double.PositiveInfinity));
        double[] Least(double[] limits, double doubtMm) => RemovalProgram.Solve(
            mass, first, gPerMm, firstPerMm, report.Balance.TargetMm, Reach(aims.BalanceToleranceMm, doubtMm, confidence), excess, shares,
            limits).DepthMm;

        // The deeper the cut, the more it may be off itself: a draft says how far it must carry, the plan allows for that.
        var limits = RemovalLimits.At(planed, loads, wood, aims.MinimumSafetyFactor);
        var uncertainty = WithCutting(uncertaintyMm, Least(limits, uncertaintyMm), gPerMm, firstPerMm, mass, first);
        double reserve = 1, scale = 1;
        for (var pass = 1; ; pass++)
        {
            var depth = Least(limits, uncertainty);

            // The cut itself changes buckling and flex a little: look at the real solid, and draw the limits in should it fall short.
            double[] both = [.. depth.Zip(tooThin, (cut, thin) => cut + thin)];
            var after = Looked(stations.Thinned(Depths(shares, both)), fine.Thinned(Depths(fineShares, both)), loads, wood);
            var weak = after.Strength.Governing.SafetyFactor < least;
            var soft = after.BenchFlexMm > mostFlex;
            if (!weak && !soft) return new(depth, after.Strength, after.BenchFlexMm, uncertainty);
            if (pass == Passes) return new(new double[depth.Length], before.Strength, before.BenchFlexMm, uncertaintyMm);
            if (weak) reserve *= 1.001 * least / after.Strength.Governing.SafetyFactor;
            if (soft) scale *= 0.5;
            limits = [.. RemovalLimits.At(planed, loads, wood, aims.MinimumSafetyFactor * reserve).Select(limit => limit * scale)];
        }
    }

    private static (StrengthCheck Strength, double BenchFlexMm) Looked(PaddleSolid stations, PaddleSolid fine, Loads loads, WoodInUse wood)
    {
        var pressure = BladePressure.On(stations);
        return (
            StrengthCheck.Of(stations, pressure, loads, wood),
            Flex.Of(fine, stations, pressure.CentreOfPressureMm(StrokePivots.TouringMm), wood).BenchFlexMm);
    }

    private static double[] Depths(double[][] shares, double[] depthMm) =>
        [.. shares.Select(share => share.Zip(depthMm, (s, d) => s * d).Sum())];

    private sealed record CutPlan(double[] DepthMm, StrengthCheck Strength, double BenchFlexMm, double UncertaintyMm);

    private static List<Removal> RemovalList(PaddleForm form, double[] depthMm, double[] grams)
    {
        var removals = new List<Removal>();
        foreach (var zone in CorrectionZones.All)
        {
            var depth = depthMm[(int)zone];
            if (depth < LeastDepthMm) continue;
            removals.Add(new(zone, CorrectionZones.Id(zone), grams[(int)zone], depth, depth / 2, How(zone, form, depth)));
        }

        return removals;
    }

    private static string How(CorrectionZone zone, PaddleForm form, double depth)
    {
        var places = form.Places;
        double third = places.BladeMm / 3;
        var (from, to) = zone switch
        {
            CorrectionZone.Grip => (0.0, places.GripEndMm),
            CorrectionZone.ShaftUpper => (form.Grip.LengthMm * GripProfile.CrestEnd, places.LowerHandMm),
            CorrectionZone.ShaftLower => (places.LowerHandMm, places.ThroatMm),
            CorrectionZone.BladeUpper => (places.ThroatMm, places.ThroatMm + third),
            CorrectionZone.BladeMiddle => (places.ThroatMm + third, places.ThroatMm + 2 * third),
            _ => (places.ThroatMm + 2 * third, places.OverallMm),
        };
        return string.Create(
            CultureInfo.InvariantCulture,
            $"From {from:F0} to {to:F0} mm: {depth / 2:F2} mm off each face along the middle, running out to nothing at the edges and into the neighbouring zones.");
    }

    private static LeastBad Choices(PaddleForm form, double massG, double offsetMm, double aimMm)
    {
        // Theory M14 backwards: dm = M · offset / distance from the aim.
        var tip = form.AlongShaftMm(form.Places.OverallMm - 30);
        return new(
            offsetMm,
            offsetMm,
            offsetMm < 0 ? massG * -offsetMm / (tip - aimMm) : null,
            offsetMm > 0 ? massG * offsetMm / (aimMm - form.Places.TopHandMm) : null);
    }

    private static Explanation Explain(StageEstimate estimate, StageSolid stage, BalanceReading reading)
    {
        var unexplained = reading.BalanceMm - stage.CentreMm;
        var uneven = Math.Abs(unexplained) > 2 * reading.BalanceErrorMm;
        var errors = CorrectionZones.All.Select(estimate.ThicknessErrorMm).ToArray();
        var words = uneven
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"Even wood at this stage's sizes would balance {Math.Abs(unexplained):F0} mm {(unexplained > 0 ? "nearer the grip" : "nearer the tip")} than read: taken as wood {Math.Abs(100 * estimate.EndToEnd):F1} % {(estimate.EndToEnd > 0 ? "denser" : "lighter")} at the tip end than at the grip end, and thickness off plan by up to {errors.Max(Math.Abs):F2} mm.")
            : "A density of its own explains mass and balance; no uneven wood or thickness is needed.";
        return new(
            estimate.DensityKgM3, estimate.DensityUncertaintyKgM3, 100 * estimate.EndToEnd, uneven, unexplained, errors, words);
    }

    private static void Require(DesignReport report, BalanceReading reading, CorrectionOptions options)
    {
        Positive(reading.MassG, nameof(reading.MassG));
        Positive(reading.BalanceMm, nameof(reading.BalanceMm));
        Positive(reading.MassErrorG, nameof(reading.MassErrorG));
        Positive(reading.BalanceErrorMm, nameof(reading.BalanceErrorMm));
        Positive(reading.ThicknessErrorMm, nameof(reading.ThicknessErrorMm));
        var overall = report.Specification.Form.Places.OverallMm;
        if (reading.BalanceMm >= overall)
            throw new ArgumentOutOfRangeException(nameof(reading), reading.BalanceMm, "The balance point must lie on the paddle.");
        foreach (var thickness in reading.Readings ?? [])
        {
            Positive(thickness.ThicknessMm, nameof(thickness.ThicknessMm));
            if (!(thickness.XMm >= 0 && thickness.XMm <= overall))
                throw new ArgumentOutOfRangeException(nameof(reading), thickness.XMm, "A reading must lie on the paddle.");
        }

        if (!(options.Confidence is >= 0.5 and <= 0.99))
            throw new ArgumentOutOfRangeException(nameof(options), options.Confidence, "Confidence must lie in 0.5 to 0.99.");
    }

    private static void Positive(double value, string name)
    {
        if (!(value > 0) || !double.IsFinite(value)) throw new ArgumentOutOfRangeException(name, value, "Must be above 0.");
    }
}
