using Paddle.Design.Checks;
using Paddle.Design.Finishing;
using Paddle.Design.Solid;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>What the maker chooses about the build.</summary>
/// <param name="BoardThicknessMm">Thickness of the board as measured, mm, or null for the next standard surfaced one.</param>
/// <param name="Saw">The saw that cuts the outline.</param>
/// <param name="StationSpacingMm">Largest distance between numbered stations, mm, 10 to 200.</param>
public sealed record BuildOptions(
    double? BoardThicknessMm = null,
    OutlineSaw Saw = OutlineSaw.BandSaw,
    double StationSpacingMm = 50);

/// <summary>What the caliper and the rule should read at one numbered station.</summary>
/// <param name="Number">Number, from 1 at the top of the grip.</param>
/// <param name="XMm">Place from the top of the grip, mm.</param>
/// <param name="ThicknessMm">Thickness at the centre line, mm.</param>
/// <param name="HalfBreadthMm">Centre line to the outside of the wood, mm.</param>
public sealed record StageStation(int Number, double XMm, double ThicknessMm, double HalfBreadthMm);

/// <summary>One stage of the build sheet.</summary>
/// <param name="Stage">The stage.</param>
/// <param name="Id">Its name in the contract.</param>
/// <param name="Title">Its title.</param>
/// <param name="Allowance">Wood left on.</param>
/// <param name="MassG">Mass, g, with its band.</param>
/// <param name="BalanceMm">Balance point, mm from the finished top of the grip along the shaft's line, with its band.</param>
/// <param name="Stations">What the caliper should read.</param>
/// <param name="Mark">What to mark and do.</param>
/// <param name="Measure">What to measure.</param>
/// <param name="StopWhen">The sign to stop.</param>
/// <param name="NextMoveMm">How far the balance point is expected to move at the next stage, mm; positive towards the tip.</param>
/// <param name="NextMove">The same in words.</param>
/// <param name="Cautions">What can hurt.</param>
public sealed record StageSheet(
    BuildStage Stage,
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
/// <param name="Blank">The board.</param>
/// <param name="Stages">Every stage in order.</param>
/// <param name="ShaftLines">Eight- and sixteen-side lines at the shaft's stations.</param>
/// <param name="Gauge">A spar gauge for them.</param>
/// <param name="RoundOvers">Round-over bits that may be used.</param>
/// <param name="Kerf">The kerf of the grip.</param>
/// <param name="Sanding">Sanding by zone.</param>
/// <param name="Finish">Varnish and oil.</param>
/// <param name="WithFinish">Mass and balance with them on.</param>
/// <param name="Tip">An optional reinforced tip of usual cloth.</param>
/// <param name="Assumptions">What the figures rest on, with sources.</param>
public sealed record BuildSheet(
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
    IReadOnlyList<string> Assumptions)
{
    /// <summary>Works the sheet out, step by step in the order of the work.</summary>
    /// <param name="report">The design.</param>
    /// <param name="options">The maker's choices; null for the defaults.</param>
    /// <exception cref="ArgumentOutOfRangeException">A board thinner than the paddle, or a choice outside its range.</exception>
    public static BuildSheet For(DesignReport report, BuildOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(report);
        options ??= new();
        ArgumentOutOfRangeException.ThrowIfLessThan(options.StationSpacingMm, 10);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(options.StationSpacingMm, 200);

        var (form, wood) = (report.Specification.Form, report.Specification.Wood);
        var fine = PaddleSolid.Shape(form, report.Sizes, report.Outline, StationGrid.Fine);
        var blank = Blank.For(
            report.Stations, WoodCatalogue.Find(wood.SpeciesId)?.IsSoftwood ?? false, options.Saw,
            options.BoardThicknessMm ?? report.Specification.BoardThicknessMm);
        var line = new OutlineLine(report.Outline);
        var solids = BuildStages.All.Select(stage => StageSolid.Of(fine, line, blank, stage, options.Saw)).ToArray();
        var grid = StationGrid.Printed(form.Lengths, form.Blade.WidestAt, options.StationSpacingMm);
        var stations = BuildStages.All.Select(stage => Stations(fine, line, blank, stage, options.Saw, grid)).ToArray();

        var lines = ShaftLayout.For(stations[(int)BuildStage.ShaftEightSided], [.. Zones(grid)]);
        var gauge = SparGauge.For(lines.Max(line => Math.Max(line.WidthMm, line.ThicknessMm)));
        var kerf = GripKerf.For(fine, blank, StageAllowance.After(BuildStage.GripCut, options.Saw).GripFaceMm!.Value);
        var finish = FinishPlan.For(report.Mass, form.Places.ThroatMm, report.Specification.Finish);
        var laden = new Laden(report.Finished.MassG, report.Finished.CentreOfMassMm, report.Finished.ShiftMm);
        var facts = new BuildFacts(
            blank, StageAllowance.SawMm(options.Saw), report.Sizes.EdgeThicknessMm, report.Sizes.TipThicknessMm, form.BendDegrees,
            form.Grip.Faces, gauge, kerf, finish.MaskingLineMm, report.Balance.TargetMm, report.Balance.ToleranceMm);

        var stages = BuildStages.All
            .Select((stage, i) => Sheet(stage, solids, stations[i], wood, options.Saw, facts, report.Cautions, laden))
            .ToArray();
        return new(
            blank,
            stages,
            lines,
            gauge,
            RoundOver.Choices(lines.Min(line => line.WidthMm), lines.Min(line => line.ThicknessMm)),
            kerf,
            SandingPlan.All,
            finish,
            laden,
            TipReinforcement.For(fine, laden.MassG, laden.BalanceMm),
            BuildAssumptions.For(wood));
    }

    private static StageSheet Sheet(
        BuildStage stage,
        StageSolid[] solids,
        IReadOnlyList<StageStation> stations,
        WoodInUse wood,
        OutlineSaw saw,
        BuildFacts facts,
        IReadOnlyList<Caution> cautions,
        Laden withFinish)
    {
        var i = (int)stage;
        var (mass, balance) = StageScatter.Of(solids[i], wood, saw);
        var next = i + 1 < solids.Length ? solids[i + 1].CentreMm - solids[i].CentreMm : withFinish.ShiftMm;
        var after = i + 1 < solids.Length ? BuildStages.Title(stage + 1) : "Varnish and oil";
        return new(
            stage,
            BuildStages.Id(stage),
            BuildStages.Title(stage),
            StageAllowance.After(stage, saw),
            mass,
            balance,
            stations,
            StageSteps.Mark(stage, facts),
            StageSteps.Measure(stage),
            StageSteps.StopWhen(stage, facts),
            next,
            Direction(after, next),
            StageCautions.For(stage, cautions, wood.SpeciesId));
    }

    private static string Direction(string after, double move) => Math.Abs(move) < 0.5
        ? $"{after}: the balance point should hardly move."
        : FormattableString.Invariant(
            $"{after}: the balance point should move {Math.Abs(move):F0} mm towards the {(move > 0 ? "tip" : "grip")}.");

    private static StageStation[] Stations(
        PaddleSolid fine, OutlineLine line, Blank blank, BuildStage stage, OutlineSaw saw, StationGrid grid)
    {
        var shape = new StageShape(fine, line, blank, stage, StageAllowance.After(stage, saw));
        var stations = new StageStation[grid.Patterns.Length];
        for (var i = 0; i < stations.Length; i++)
        {
            var pattern = grid.Patterns[i];
            var x = fine.Form.XMm(pattern);
            var section = shape.At(pattern, x);
            stations[i] = new(i + 1, x, section.ThicknessMm, section.HalfWidthMm);
        }

        return stations;
    }

    private static IEnumerable<Zone> Zones(StationGrid grid) => grid.Patterns.ToArray().Select(pattern => pattern.Segment.Zone);
}
