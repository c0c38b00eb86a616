using System.Globalization;
using System.Text.Json.Serialization;
using Paddle.Design.Balance;
using Paddle.Design.Finishing;
using Paddle.Design.Solid;
using Paddle.Design.Units;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>What the maker chooses about the build.</summary>
/// <param name="BoardThicknessMm">Thickness of the board as measured, mm, or null for the design's own or the next standard surfaced one.</param>
internal sealed record BuildOptions(double? BoardThicknessMm = null, OutlineSaw Saw = OutlineSaw.BandSaw);

/// <summary>What the caliper and the rule should read at one numbered station.</summary>
/// <param name="Number">Number, from 1 at the top of the grip.</param>
/// <param name="XMm">Place from the top of the grip, mm.</param>
/// <param name="ThicknessMm">Thickness at the centre line, mm.</param>
/// <param name="HalfBreadthMm">Centre line to the outside of the wood, mm.</param>
/// <param name="Mark">What is marked there, such as <c>throat</c>; absent at an even place of the maker's rule.</param>
internal sealed record StageStation(int Number, double XMm, double ThicknessMm, double HalfBreadthMm, string? Mark);

/// <summary>One stage of the work.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Id">Its name, as a balance correction asks for it.</param>
/// <param name="Title">Its title.</param>
/// <param name="Allowance">Wood left on outside the designed sizes.</param>
/// <param name="MassG">Predicted mass, g: of bare wood up to <c>sanded</c>, with its finish at <c>finished</c>.</param>
/// <param name="BalanceMm">Predicted balance point, mm from the finished top of the grip along the shaft's line.</param>
/// <param name="Stations">What caliper and rule should read at the numbered stations.</param>
/// <param name="Mark">What to mark and do.</param>
/// <param name="Measure">What to measure.</param>
/// <param name="StopWhen">The sign to stop.</param>
/// <param name="NextMoveMm">How far the balance point is expected to move at the next stage, mm; positive towards the tip.</param>
/// <param name="NextMove">The same in words.</param>
/// <param name="Cautions">What can hurt, with sources.</param>
internal sealed record StageSheet(
    [property: JsonIgnore] BuildStage Stage,
    string Id,
    string Title,
    StageAllowance Allowance,
    StageFigure MassG,
    StageFigure BalanceMm,
    IReadOnlyList<StageStation> Stations,
    IReadOnlyList<string> Mark,
    IReadOnlyList<string> Measure,
    string StopWhen,
    double NextMoveMm,
    string NextMove,
    IReadOnlyList<Caution> Cautions);

/// <summary>From board to finished paddle.</summary>
/// <param name="Units">Units of every sentence, and of the even stations.</param>
/// <param name="Outcome">How the design's aims came out: a paddle that is too weak is not to be built.</param>
/// <param name="Blank">The board.</param>
/// <param name="Stages">Every stage in the order of the work.</param>
/// <param name="ShaftLines">Eight- and sixteen-side lines at the shaft's stations.</param>
/// <param name="Gauge">A spar gauge for them.</param>
/// <param name="RoundOvers">Round-over bits that may be used instead, largest first.</param>
/// <param name="Kerf">The saw kerf across the grip that says how deep to pare.</param>
/// <param name="Sanding">Sanding by zone.</param>
/// <param name="Finish">The design's finish, with quantities and days.</param>
/// <param name="WithFinish">Mass and balance with it on; the last stage, <c>finished</c>, has the same with their bands.</param>
/// <param name="Tip">A reinforced tip of usual cloth, chosen or offered.</param>
/// <param name="Assumptions">What the figures rest on, with sources.</param>
/// <param name="Tools">What to have at hand.</param>
internal record BuildSheet(
    [property: JsonIgnore] DrawingUnits Units,
    [property: JsonIgnore] DesignOutcome Outcome,
    Blank Blank,
    IReadOnlyList<StageSheet> Stages,
    IReadOnlyList<ShaftLine> ShaftLines,
    SparGauge Gauge,
    IReadOnlyList<RoundOverChoice> RoundOvers,
    GripKerf Kerf,
    IReadOnlyList<SandingStep> Sanding,
    FinishPlan Finish,
    Laden WithFinish,
    TipReinforcement Tip,
    IReadOnlyList<string> Assumptions,
    [property: JsonIgnore] IReadOnlyList<string> Tools)
{
    /// <summary>What comes before the first stage where it is glued up of strips; nothing of one piece.</summary>
    [JsonIgnore]
    public IReadOnlyList<string> GlueUp { get; init; } = [];

    /// <summary>Whether the weights of a stage hold.</summary>
    internal bool Weighs(BuildStage stage) => BuildStages.Weighed(GlueUp.Count > 0).Contains(stage);

    /// <summary>Works the sheet out, step by step in the order of the work.</summary>
    /// <param name="report">The design.</param>
    /// <param name="options">The maker's choices; null for the defaults.</param>
    /// <exception cref="ArgumentOutOfRangeException">A board thinner than the paddle, or a choice outside its range.</exception>
    public static BuildSheet For(DesignReport report, BuildOptions? options = null)
    {
        options ??= new();
        var (form, wood, units) = (report.Specification.Form, report.Specification.Wood, report.Specification.Units);
        var fine = PaddleSolid.Shape(form, report.Sizes, report.Outline, form.FineGrid());
        var blank = Blank.For(
            report.Stations, WoodCatalogue.Find(wood.Species)?.IsSoftwood ?? false, options.Saw,
            options.BoardThicknessMm ?? report.Specification.BoardThicknessMm);
        var line = new OutlineLine(report.Outline);
        var solids = BuildStages.All.Select(stage => StageSolid.Of(fine, line, blank, stage, options.Saw)).ToArray();
        var plan = StationPlan.Of(form, units);
        var grid = StationGrid.Through(form.Lengths, [.. plan.Select(station => station.XMm)]);
        var stations = BuildStages.All.Select(stage => Stations(fine, line, blank, stage, options.Saw, plan, grid)).ToArray();

        var lines = ShaftLayout.For(stations[(int)BuildStage.ShaftEightSided], [.. Zones(grid)]);
        var gauge = SparGauge.For(lines.Max(line => Math.Max(line.WidthMm, line.ThicknessMm)), units);
        var kerf = GripKerf.For(fine, blank, StageAllowance.After(BuildStage.GripCut, options.Saw).GripFaceMm!.Value);
        var choice = report.Specification.Finish;
        var finish = FinishPlan.For(report.Mass, form.Places.ThroatMm, choice, units);
        var tip = TipFor(report, fine);
        var facts = new BuildFacts(
            units, blank, options.Saw, report.Sizes.EdgeThicknessMm, report.Sizes.TipThicknessMm, form.BendDegrees, form.Grip.Faces, gauge, kerf,
            choice, tip, finish.MaskingLineMm, report.Balance.TargetMm, report.Balance.ToleranceMm, report.Balance.OffsetMm, report.Laminate is not null);

        var figures = solids.Select(solid => StageScatter.Of(solid, wood, options.Saw)).ToArray();
        figures[^1] = StageScatter.WithFinish(figures[^1], report.Finished);
        var stages = BuildStages.All.Select(stage => Sheet(stage, figures, stations, facts, report)).ToArray();
        return new(
            units,
            report.Outcome,
            blank,
            stages,
            lines,
            gauge,
            RoundOver.Choices(lines.Min(line => line.WidthMm), lines.Min(line => line.ThicknessMm), units),
            kerf,
            SandingPlan.All,
            finish,
            new Laden(report.Finished.MassG, report.Finished.CentreOfMassMm, report.Finished.ShiftMm),
            tip with { Chosen = choice.TipReinforcement },
            BuildAssumptions.For(wood, units),
            ToolList.For(facts, finish, SandingPlan.All, report.Laminate))
        {
            GlueUp = GlueUpWords.For(report),
        };
    }

    // What the cloth does on top of the rest of the finish, whether it is chosen or only offered.
    private static TipReinforcement TipFor(DesignReport report, PaddleSolid fine)
    {
        var load = report.Finished.Load;
        if (load.ClothG <= 0) return TipReinforcement.For(fine, report.Finished.MassG, report.Finished.CentreOfMassMm);
        var without = FinishedMass.Of(
            report.Specification.Form.Places, report.Mass, FinishLoad.On(fine, report.Specification.Finish with { TipReinforcement = false }));
        return TipReinforcement.For(fine, without.MassG, without.CentreOfMassMm);
    }

    private static StageSheet Sheet(
        BuildStage stage, (StageFigure MassG, StageFigure BalanceMm)[] figures, IReadOnlyList<StageStation>[] stations, BuildFacts facts,
        DesignReport report)
    {
        var i = (int)stage;
        var steps = new StageSteps(facts);
        var next = i + 1 < figures.Length ? figures[i + 1].BalanceMm.Value - figures[i].BalanceMm.Value : 0;
        return new(
            stage,
            Names.Of(stage),
            Title(stage, facts.Finish),
            StageAllowance.After(stage, facts.Saw),
            figures[i].MassG,
            figures[i].BalanceMm,
            stations[i],
            steps.Mark(stage),
            steps.Measure(stage),
            steps.StopWhen(stage),
            next,
            i + 1 < figures.Length ? Direction(Title(stage + 1, facts.Finish), next, facts.Units) : "This is the last stage.",
            StageCautions.For(stage, report.Cautions, report.Specification.Laminate?.SpeciesIds ?? [report.Specification.Wood.Species]));
    }

    private static string Title(BuildStage stage, FinishChoice finish) =>
        stage == BuildStage.Finished ? $"{BuildStages.Title(stage)}: {finish.InWords()}" : BuildStages.Title(stage);

    private static string Direction(string after, double move, DrawingUnits units) => Math.Abs(move) < LeastMoveMm(units)
        ? $"{after}: the balance point should hardly move."
        : $"{after}: the balance point should move {DrawnLength.Rough(Math.Abs(move), units)} towards the {(move > 0 ? "tip" : "grip")}.";

    // Half of what is printed: less would be printed as nothing.
    private static double LeastMoveMm(DrawingUnits units) => units == DrawingUnits.Metric ? 0.5 : DrawnLength.MmPerInch / 32;

    private static StageStation[] Stations(
        PaddleSolid fine, OutlineLine line, Blank blank, BuildStage stage, OutlineSaw saw, IReadOnlyList<Station> plan, StationGrid grid)
    {
        var shape = new StageShape(fine, line, blank, stage, StageAllowance.After(stage, saw));
        var stations = new StageStation[plan.Count];
        for (var i = 0; i < stations.Length; i++)
        {
            var section = shape.At(grid.Patterns[i], plan[i].XMm);
            stations[i] = new(plan[i].Number, plan[i].XMm, section.ThicknessMm, section.HalfWidthMm, plan[i].Mark is { Length: > 0 } mark ? mark : null);
        }

        return stations;
    }

    private static IEnumerable<Zone> Zones(StationGrid grid) => grid.Patterns.ToArray().Select(pattern => pattern.Segment.Zone);
}

/// <summary>What the build sheet's figures rest on.</summary>
internal static class BuildAssumptions
{
    internal static IReadOnlyList<string> For(WoodInUse wood, DrawingUnits units)
    {
        var source = StageScatter.DensityVariation(wood) < Scatter.SpecificGravityVariation
            ? "a weighed board, common practice, no source"
            : "Wood Handbook table 5-6, read in a survey: weigh the board and state its density to narrow it";
        var variation = StageScatter.DensityVariation(wood);
        return
        [
            string.Create(
                CultureInfo.InvariantCulture,
                $"Every stage is the design's own solid with that stage's allowance, summed as a solid; density "
                + $"{DrawnAmount.Density(wood.DensityKgM3, units)} at {wood.MoisturePercent:F0} % moisture."),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Bands hold nine paddles in ten. Mass: density varies by {100 * variation:F0} % (coefficient of variation; "
                + $"{source}) "
                + $"and every face is off by the stage's own tolerance."),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Balance: density changes from one end of the board to the other by {100 * StageScatter.EndToEndVariation:F0} % "
                + $"(standard deviation; assumption, no published figure found), and grip, shaft and blade faces are off each on "
                + $"their own."),
            "Allowances: common practice, no source, bounded by published sawing losses and sanding stock; wood cannot "
                + "be put back, so they are large rather than small.",
            "The balance point is measured from the finished top of the grip, along the shaft's line.",
            "A paddle takes 8-16 hours of work (a paddling magazine, 2015, p. 38, read), drying apart.",
        ];
    }
}

/// <summary>Sanding of one zone.</summary>
/// <param name="Zone">The zone.</param>
/// <param name="Grits">Grits in order, P grades (FEPA, ISO 6344).</param>
/// <param name="RemovesMm">Wood that the sequence takes from each face, mm, at most.</param>
/// <param name="Why">Why it stops there.</param>
/// <param name="Source">Where it comes from.</param>
internal sealed record SandingStep(string Zone, IReadOnlyList<int> Grits, double RemovesMm, string Why, string Source);

/// <summary>Sanding by zone.</summary>
internal static class SandingPlan
{
    /// <summary>Wood that the next grit must take to clear the scratches of a grit, mm per face. Source: wide-belt sanding table, a
    /// woodworking trade site, 7 August 2014, read (inches there): an upper value for hand sanding. Beyond P220 the table ends.</summary>
    public static IReadOnlyDictionary<int, double> NextRemovesMm { get; } = new Dictionary<int, double>
    {
        [60] = 0.38,
        [80] = 0.20,
        [100] = 0.15,
        [120] = 0.10,
        [150] = 0.05,
        [180] = 0.025,
        [220] = 0.013,
    };

    public static IReadOnlyList<SandingStep> All { get; } =
    [
        Step("blade", [80, 120, 180, 220],
            "A film of varnish bridges P220 scratches and needs their hold; finer gains nothing under it.",
            "finish makers' sheets (bare wood 120-220) and a woodworking magazine's rules for sanding, read"),
        Step("shaft and grip", [80, 120, 180, 240, 320, 400],
            "Bare or oiled wood is felt by the hand: stop at P400; up to P800 if you like, but a very fine polish on a hard, dense grip "
            + "feels slippery when wet.",
            "common practice, no source"),
        Step("between coats of varnish", [220, 320],
            "P220 on the early coats, P320 on the late ones, only until the shine is gone.",
            "a boat-owners' association's coat schedule, July 2012, read"),
    ];

    /// <summary>Wood taken by a sequence after its first grit, mm per face, as far as the table goes. Theory M11.</summary>
    public static double RemovesMm(IReadOnlyList<int> grits)
    {
        var sum = 0.0;
        for (var i = 0; i + 1 < grits.Count; i++) sum += NextRemovesMm.GetValueOrDefault(grits[i]);
        return sum; // theory M11
    }

    private static SandingStep Step(string zone, IReadOnlyList<int> grits, string why, string source) =>
        new(zone, grits, grits[0] >= 220 ? 0 : RemovesMm(grits), why, source);
}
