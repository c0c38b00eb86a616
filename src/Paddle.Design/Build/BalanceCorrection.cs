using System.Text.Json.Serialization;
using Paddle.Design.Finishing;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>From a weighing and a balance point in the middle of the build to the least wood that brings the aim. Theory M22 to
/// M27.</summary>
/// <param name="Doubt">Why readings are doubted; null when they are not.</param>
/// <param name="Outlook">What the readings make of the paddle; null when they are not believed.</param>
/// <param name="Removals">Wood to take off beyond the plan; none when nothing is needed.</param>
/// <param name="ThicknessPlacesMm">Places of the thickness readings in their order, mm from the top of the grip.</param>
internal sealed record BalanceCorrection(
    CorrectionStatus Status, Doubt? Doubt, Outlook? Outlook, double AimMm, double ToleranceMm, IReadOnlyList<Removal> Removals,
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

        var fine = PaddleSolid.Shape(form, report.Sizes, report.Outline, form.FineGrid());
        var blank = Blank.For(
            report.Stations, WoodCatalogue.Find(wood.Species)?.IsSoftwood ?? false, build.Saw,
            build.BoardThicknessMm ?? report.Specification.BoardThicknessMm);
        StageModel Model(BuildStage at) => StageModel.Of(report, StageSolid.Of(fine, blank, at, build.Saw), fine, reading, build.Saw);
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
            status, doubt, new(Explain(estimate, model, reading), toPlan, finished, corrected, achievable, leastBad), aim, tolerance,
            removals, places);
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

    internal static List<Removal> RemovalList(PaddleForm form, double[] depthMm, double[] grams)
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
            CorrectionZone.BladeUpperThird => (places.ThroatMm, places.ThroatMm + third),
            CorrectionZone.BladeMiddleThird => (places.ThroatMm + third, places.ThroatMm + 2 * third),
            _ => (places.ThroatMm + 2 * third, places.OverallMm),
        };
    }

    private static LeastBad Choices(PaddleForm form, double massG, double offsetMm, double aimMm)
    {
        // Theory M14 backwards: dm = M · offset / distance from the aim.
        var tip = form.AlongShaftMm(form.Places.OverallMm - 30);
        return new(
            offsetMm, offsetMm, offsetMm < 0 ? massG * -offsetMm / (tip - aimMm) : null,
            offsetMm > 0 ? massG * offsetMm / (aimMm - form.Places.TopHandMm) : null);
    }

    private static Explanation Explain(StageEstimate estimate, StageModel model, BalanceReading reading)
    {
        var unexplained = reading.BalanceMm - model.Rows(model.Mean).Single(row => row.Kind == ReadingKind.Balance).Expected;
        return new(
            estimate.DensityKgM3, estimate.DensityUncertaintyKgM3, 100 * estimate.EndToEnd,
            Math.Abs(unexplained) > 2 * reading.BalanceErrorMm, unexplained, [.. CorrectionZones.All.Select(estimate.ThicknessErrorMm)]);
    }
}

/// <summary>What a correction comes to.</summary>
internal enum CorrectionStatus
{
    /// <summary>The paddle ends where it should: nothing more comes off than the plan says.</summary>
    OnPlan,
    /// <summary>Wood comes off beyond the plan.</summary>
    Cut,
    /// <summary>The readings cannot be of this paddle at this stage; no cut is proposed from them.</summary>
    MeasureAgain,
    /// <summary>No cut that the limits allow brings it nearer its aim.</summary>
    OutOfReach,
}

/// <summary>Why readings are doubted.</summary>
/// <param name="Readings">Those that do not fit, the worst first; empty where none is to blame by itself.</param>
/// <param name="FitsStage">Another stage whose plan they fit; null where there is none.</param>
/// <param name="IsBeyondBelief">Whether one lies so far off that taking it again settles nothing.</param>
internal sealed record Doubt(IReadOnlyList<ReadingDoubt> Readings, BuildStage? FitsStage, bool IsBeyondBelief);

/// <summary>Wood to take from one zone, beyond planing to plan.</summary>
/// <param name="MassG">Grams that come off.</param>
/// <param name="ThicknessMm">Full thickness off the middle in the heart of the zone, mm, running out to nothing at edges and ends.</param>
/// <param name="FromMm">Where the zone begins, mm from the top of the grip; the lower shaft's cut runs out beyond it, see <see cref="CorrectionZone"/>.</param>
internal sealed record Removal(CorrectionZone Zone, double MassG, double ThicknessMm, double FromMm, double ToMm)
{
    /// <summary>Of the thickness, off each face, mm.</summary>
    public double PerFaceMm => ThicknessMm / 2;
}

/// <summary>What explains the readings.</summary>
/// <param name="DensityKgM3">Density at the design's balance point, kg/m³.</param>
/// <param name="DensityUncertaintyKgM3">Its standard uncertainty.</param>
/// <param name="EndToEndPercent">Density at the tip end above that at the grip end, percent.</param>
/// <param name="UnevenNeeded">
/// Whether even wood at the stage's plan fails to explain the balance: it is more than 2 standard uncertainties off.
/// </param>
/// <param name="UnexplainedMm">Balance point read, less that of even wood at the stage's plan, mm.</param>
/// <param name="ThicknessErrorsMm">Thickness above plan by zone, mm, in the order of <see cref="CorrectionZones.All"/>.</param>
internal sealed record Explanation(
    double DensityKgM3, double DensityUncertaintyKgM3, double EndToEndPercent, bool UnevenNeeded, double UnexplainedMm,
    IReadOnlyList<double> ThicknessErrorsMm);

/// <summary>A predicted finished paddle.</summary>
/// <param name="MassG">Mass, g.</param>
/// <param name="BalanceMm">Balance point, mm from the top of the grip.</param>
/// <param name="StandardUncertaintyMm">Standard uncertainty of the balance point, mm.</param>
/// <param name="ChanceInTolerance">Chance that it ends in tolerance, 0 to 1.</param>
internal sealed record Forecast(double MassG, double BalanceMm, double StandardUncertaintyMm, double ChanceInTolerance);

/// <summary>The paddle after the correction, its strength computed again on the thinned solid.</summary>
/// <param name="MassG">Mass, g.</param>
/// <param name="BalanceMm">Balance point, mm from the top of the grip.</param>
/// <param name="ChanceInTolerance">Chance that it ends in tolerance, 0 to 1.</param>
/// <param name="Weakest">The load case nearest to its least factor, or furthest below it.</param>
/// <param name="BenchFlexMm">Bench flex, mm.</param>
internal sealed record Corrected(double MassG, double BalanceMm, double ChanceInTolerance, [property: JsonIgnore] CaseResult Weakest, double BenchFlexMm)
{
    /// <summary>Its safety factor.</summary>
    public double MinimumSafetyFactor => Weakest.SafetyFactor;
    /// <summary>Which case that is.</summary>
    public string GoverningCase => Weakest.Id;
}

/// <summary>What the readings make of the paddle.</summary>
/// <param name="Explanation">What explains them.</param>
/// <param name="IsToPlan">Whether they cannot be told from the stage's plan, density apart.</param>
/// <param name="Finished">The finished paddle if planed to plan.</param>
/// <param name="Corrected">The paddle after the cut, the same where there is none.</param>
/// <param name="Achievable">
/// Whether the best estimate after it is in tolerance and within the most mass; of a design that lies outside these itself, whether it
/// is no further out. The cut itself never crosses a limit; should the wood be too thin before it, <see cref="Corrected"/> shows the
/// safety factor.
/// </param>
/// <param name="LeastBad">Choices when it is not; else null.</param>
internal sealed record Outlook(
    Explanation Explanation, bool IsToPlan, Forecast Finished, Corrected Corrected, bool Achievable, LeastBad? LeastBad);

/// <summary>What is left when wood would have to be put back.</summary>
/// <param name="AcceptOffsetMm">Offset from the aim to live with, mm; negative grip-heavy.</param>
/// <param name="MoveLowerHandMm">How far to move the lower-hand mark, mm towards the tip (negative towards the grip).</param>
/// <param name="AddAtTipG">Grams to add at the tip, as cloth and resin, to reach the aim; null when it is blade-heavy.</param>
/// <param name="AddAtGripG">Grams to add at the grip to reach the aim; null when it is grip-heavy.</param>
internal sealed record LeastBad(double AcceptOffsetMm, double MoveLowerHandMm, double? AddAtTipG, double? AddAtGripG);

/// <summary>Zones that wood is taken from to move the balance.</summary>
internal enum CorrectionZone
{
    /// <summary>The grip's crest, running out into the shaft.</summary>
    Grip,
    /// <summary>The shaft where the grip ends, running out to nothing at the lower hand and in the grip.</summary>
    ShaftUpper,
    /// <summary>The shaft from the lower hand to the throat, running out upwards to nothing at the grip's end and downwards in the shoulder of the blade.</summary>
    ShaftLower,
    /// <summary>Upper third of the blade.</summary>
    BladeUpperThird,
    /// <summary>Middle third of the blade.</summary>
    BladeMiddleThird,
    /// <summary>Lower third of the blade.</summary>
    BladeLowerThird,
}

/// <summary>Reach of the zones.</summary>
internal static class CorrectionZones
{
    // Neighbouring thirds of the blade run into each other over this fraction of the blade on both sides of their border.
    private const double RunOut = 0.065;

    /// <summary>All zones from the top down.</summary>
    public static IReadOnlyList<CorrectionZone> All { get; } = Enum.GetValues<CorrectionZone>();

    /// <summary>Share of a zone's thickness figure that applies at a place: 1 in its heart, running out smoothly; all shares at a place of
    /// shaft or blade add up to 1. Theory M22.</summary>
    public static double Share(CorrectionZone zone, StationPattern pattern)
    {
        var t = pattern.Coordinate;
        var blade = pattern.Segment.Zone == Zone.Blade;
        return zone switch
        {
            CorrectionZone.Grip => pattern.Weights.Grip,
            CorrectionZone.ShaftUpper => pattern.Weights.Upper,
            CorrectionZone.ShaftLower when blade => 1 - Shoulder(t),
            CorrectionZone.ShaftLower => pattern.LowerShare,
            _ when !blade => 0,
            CorrectionZone.BladeUpperThird => Shoulder(t) * (1 - Past(t, 1.0 / 3)),
            CorrectionZone.BladeMiddleThird => Past(t, 1.0 / 3) * (1 - Past(t, 2.0 / 3)),
            _ => Past(t, 2.0 / 3),
        };
    }

    internal static double[] Shares(StationPattern pattern) => [.. All.Select(zone => Share(zone, pattern))];

    private static double Shoulder(double t) => Smooth.Step(t / BladeBlend.ShoulderEnd);

    private static double Past(double t, double border) => Smooth.Step((t - border + RunOut) / (2 * RunOut));
}
