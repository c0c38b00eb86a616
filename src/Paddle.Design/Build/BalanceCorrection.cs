using Paddle.Design.Finishing;
using Paddle.Design.Solid;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>From a weighing and a balance point in the middle of the build to the least wood that brings the aim. Theory M22 to
/// M27.</summary>
/// <param name="Status">What it comes to.</param>
/// <param name="Doubt">Why readings are doubted; null when they are not.</param>
/// <param name="Outlook">What the readings make of the paddle; null when they are not believed.</param>
/// <param name="AimMm">Aimed balance point, mm.</param>
/// <param name="Removals">Wood to take off beyond the plan; none when nothing is needed.</param>
/// <param name="ThicknessPlacesMm">Places of the thickness readings in their order, mm from the top of the grip.</param>
internal sealed record BalanceCorrection(
    CorrectionStatus Status,
    Doubt? Doubt,
    Outlook? Outlook,
    double AimMm,
    double ToleranceMm,
    IReadOnlyList<Removal> Removals,
    IReadOnlyList<double> ThicknessPlacesMm)
{
    /// <summary>Standard uncertainty of a hand-made cut, as a share of its depth. Common practice, no source.</summary>
    public const double CutVariation = 0.15;

    // Further off than this no reading is, however often it is taken: the paddle or the design is another. Own choice.
    private const double BeyondBelief = 6;

    /// <summary>Works the correction out.</summary>
    /// <param name="report">The design.</param>
    /// <param name="reading">Stage, mass, balance point and thickness readings.</param>
    /// <param name="options">What to aim for; null for the defaults.</param>
    /// <exception cref="ArgumentOutOfRangeException">A reading or an option outside its range.</exception>
    public static BalanceCorrection Solve(DesignReport report, BalanceReading reading, CorrectionOptions? options = null)
    {
        options ??= new();
        BalanceReadingChecks.Require(report, reading, options);
        var build = options.Build ?? new();
        var (form, _, wood, _, aims) = report.Specification;
        double[] places = [.. (reading.Readings ?? []).Select(one => one.XMm)];
        double aim = report.Balance.TargetMm, tolerance = aims.BalanceToleranceMm;

        var fine = PaddleSolid.Shape(form, report.Sizes, report.Outline, StationGrid.Fine);
        var blank = Blank.For(
            report.Stations, WoodCatalogue.Find(wood.SpeciesId)?.IsSoftwood ?? false, build.Saw,
            build.BoardThicknessMm ?? report.Specification.BoardThicknessMm);
        StageModel Model(BuildStage at) =>
            StageModel.Of(report, StageSolid.Of(fine, blank, at, build.Saw), fine, reading, build.Saw);
        var model = Model(reading.Stage);
        var doubt = Doubted(report, reading, model, Model);
        if (doubt is not null && (!reading.MeasuredAgain || doubt.IsBeyondBelief))
            return new(CorrectionStatus.MeasureAgain, doubt, null, aim, tolerance, [], places);

        var estimate = StageEstimate.Fit(report, model);
        var finish = options.CountFinish
            ? new Laden(report.Finished.MassG, report.Finished.CentreOfMassMm, report.Finished.ShiftMm)
            : null;
        var forecast = new FinishedForecast(
            report, StageSolid.Of(fine, blank, BuildStage.Finished, build.Saw), reading.Stage, build.Saw, model.TakenMm, finish);
        var (mass, first) = forecast.Sum(estimate.Theta);
        var uncertainty = forecast.BalanceUncertaintyMm(estimate);
        var finished = new Forecast(mass, first / mass, uncertainty, FinishedForecast.Chance(first / mass, uncertainty, aim, tolerance));

        var goal = CutGoal.Of(report, forecast.Planned(), options.Confidence);
        var toPlan = IsToPlan(model) && goal.HoldsMass(mass);
        var (gPerMm, firstPerMm) = forecast.PerMillimetre(estimate);
        var plan = CutPlan.For(report, forecast, estimate, fine, goal, uncertainty, leave: toPlan);
        var removedG = plan.DepthMm.Select((depth, z) => depth * gPerMm[z]).ToArray();
        var massAfter = mass - removedG.Sum();
        var balanceAfter = (first - plan.DepthMm.Select((depth, z) => depth * firstPerMm[z]).Sum()) / massAfter;
        var corrected = new Corrected(
            massAfter, balanceAfter, FinishedForecast.Chance(balanceAfter, plan.UncertaintyMm, aim, tolerance),
            plan.Strength.Governing, plan.BenchFlexMm);

        var achievable = toPlan || goal.Holds(balanceAfter, massAfter, goal.IsMetByPlan ? 0 : reading.BalanceErrorMm);
        var removals = RemovalList(form, plan.DepthMm, removedG);
        var leastBad = achievable ? null : Choices(form, massAfter, balanceAfter - aim, aim);
        var status = removals.Count > 0 ? CorrectionStatus.Cut : achievable ? CorrectionStatus.OnPlan : CorrectionStatus.OutOfReach;
        return new(
            status,
            doubt,
            new(Explain(estimate, model, reading), toPlan, finished, corrected, achievable, leastBad),
            aim,
            tolerance,
            removals,
            places);
    }

    private static Doubt? Doubted(DesignReport report, BalanceReading reading, StageModel model, Func<BuildStage, StageModel> at)
    {
        var form = report.Specification.Form;
        var length = form.AlongShaftMm(form.Places.OverallMm);
        var test = ReadingTest.Of(model.Rows(model.Mean), model.Deviation, length);
        if (test.Fits) return null;
        double? Chance(StageModel other) => ReadingTest.ChanceOf(other.Rows(other.Mean), other.Deviation);
        var (chance, other) = BuildStages.All.Where(stage => stage != reading.Stage)
            .Select(stage => (Chance: Chance(at(stage)), Stage: (BuildStage?)stage))
            .MaxBy(one => one.Chance ?? -1);
        return new(test.Doubts, chance is null ? null : other, test.Doubts.Any(doubt => doubt.Deviations > BeyondBelief));
    }

    // No reading lies further off the stage's plan than it can be read to, or than the plan is printed to. The mass may: a board has its
    // own density.
    private static bool IsToPlan(StageModel model) => model.Rows(model.Mean).All(row =>
        row.Kind == ReadingKind.Mass
        || (row.Expected - row.Read <= row.ReadingError
            && row.Read - row.Expected <= row.ReadingError + (row.Kind == ReadingKind.Thickness ? model.StepMm : 0)));

    private static List<Removal> RemovalList(PaddleForm form, double[] depthMm, double[] grams)
    {
        var removals = new List<Removal>();
        foreach (var zone in CorrectionZones.All)
        {
            var depth = depthMm[(int)zone];
            if (depth <= 0) continue;
            var (from, to) = Reach(zone, form);
            removals.Add(new(zone, grams[(int)zone], depth, from, to));
        }

        return removals;
    }

    private static (double FromMm, double ToMm) Reach(CorrectionZone zone, PaddleForm form)
    {
        var places = form.Places;
        var third = places.BladeMm / 3;
        return zone switch
        {
            CorrectionZone.Grip => (0.0, places.GripEndMm),
            CorrectionZone.ShaftUpper => (form.Grip.LengthMm * GripProfile.CrestEnd, places.LowerHandMm),
            CorrectionZone.ShaftLower => (places.LowerHandMm, places.ThroatMm),
            CorrectionZone.BladeUpper => (places.ThroatMm, places.ThroatMm + third),
            CorrectionZone.BladeMiddle => (places.ThroatMm + third, places.ThroatMm + 2 * third),
            _ => (places.ThroatMm + 2 * third, places.OverallMm),
        };
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

    private static Explanation Explain(StageEstimate estimate, StageModel model, BalanceReading reading)
    {
        var unexplained = reading.BalanceMm - model.Rows(model.Mean).Single(row => row.Kind == ReadingKind.Balance).Expected;
        return new(
            estimate.DensityKgM3,
            estimate.DensityUncertaintyKgM3,
            100 * estimate.EndToEnd,
            Math.Abs(unexplained) > 2 * reading.BalanceErrorMm,
            unexplained,
            [.. CorrectionZones.All.Select(estimate.ThicknessErrorMm)]);
    }
}
