using System.Globalization;
using Paddle.Design.Finishing;
using Paddle.Design.Solid;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>
/// From a weighing and a balance point in the middle of the build to the least wood that brings the aim. Theory M22 to M25.
/// </summary>
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
        BalanceReadingChecks.Require(report, reading, options);
        var build = options.Build ?? new();
        var (form, _, wood, loads, aims) = report.Specification;

        var fine = PaddleSolid.Shape(form, report.Sizes, report.Outline, StationGrid.Fine);
        var blank = Blank.For(report.Stations, WoodCatalogue.Find(wood.SpeciesId)?.IsSoftwood ?? false, build.Saw, build.BoardThicknessMm);
        var stage = StageSolid.Of(fine, blank, reading.Stage, build.Saw);
        var estimate = StageEstimate.Fit(report, stage, fine, reading, build.Saw);

        var finish = options.CountFinish
            ? new Laden(report.Finished.MassG, report.Finished.CentreOfMassMm, report.Finished.ShiftMm)
            : null;
        var forecast = new FinishedForecast(
            report, StageSolid.Of(fine, blank, BuildStage.Finished, build.Saw), reading.Stage, build.Saw, finish);
        var (mass, first) = forecast.Sum(estimate.Theta);
        var uncertainty = forecast.BalanceUncertaintyMm(estimate);
        double aim = report.Balance.TargetMm, tolerance = aims.BalanceToleranceMm;
        var finished = new Forecast(mass, first / mass, uncertainty, FinishedForecast.Chance(first / mass, uncertainty, aim, tolerance));

        var (gPerMm, firstPerMm) = forecast.PerMillimetre(estimate);
        var plan = CutPlan.For(report, forecast, estimate, fine, uncertainty, options.Confidence);
        uncertainty = plan.UncertaintyMm;
        var removedG = plan.DepthMm.Select((depth, z) => depth * gPerMm[z]).ToArray();
        var massAfter = mass - removedG.Sum();
        var balanceAfter = (first - plan.DepthMm.Select((depth, z) => depth * firstPerMm[z]).Sum()) / massAfter;
        var corrected = new Corrected(
            massAfter, balanceAfter, FinishedForecast.Chance(balanceAfter, uncertainty, aim, tolerance),
            plan.Strength.Governing, plan.BenchFlexMm);

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
            $"From {from:F0} to {to:F0} mm: {depth / 2:F2} mm off each face along the middle, "
            + $"running out to nothing at the edges and into the neighbouring zones.");
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
                $"Even wood at this stage's sizes would balance {Math.Abs(unexplained):F0} mm "
                + $"{(unexplained > 0 ? "nearer the grip" : "nearer the tip")} than read: taken as wood "
                + $"{Math.Abs(100 * estimate.EndToEnd):F1} % {(estimate.EndToEnd > 0 ? "denser" : "lighter")} at the tip end than at the "
                + $"grip end, and thickness off plan by up to {errors.Max(Math.Abs):F2} mm.")
            : "A density of its own explains mass and balance; no uneven wood or thickness is needed.";
        return new(
            estimate.DensityKgM3, estimate.DensityUncertaintyKgM3, 100 * estimate.EndToEnd, uneven, unexplained, errors, words);
    }
}
