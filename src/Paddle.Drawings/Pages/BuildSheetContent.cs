using System.Globalization;
using Paddle.Design;
using Paddle.Design.Boards;
using Paddle.Design.Build;
using Paddle.Design.Finishing;
using Paddle.Design.Layout;
using Paddle.Design.Units;
using Paddle.Design.Wood;
using Paddle.Drawings.Views;

namespace Paddle.Drawings.Pages;

/// <summary>The build sheet to tape to the wall, in the order that it is read and in the units of the design; page and PDF write it.</summary>
internal static class BuildSheetContent
{
    private const double PictureMm = 190;

    // Before it is roughed the blade stands at the board's full thickness, and so does the shaft; there is nothing to caliper. The
    // finish is no thickness of wood.
    private static readonly BuildStage[] Thinned = [.. BuildStages.All.Where(stage => stage is >= BuildStage.BladeRoughed and <= BuildStage.Sanded)];

    public static string Title(BuildSheet sheet, DrawingContext context) => $"{(sheet.Outcome.IsTooWeak ? "NOT TO BE BUILT. " : "")}Build sheet: {context.Label}";

    /// <param name="plan">The maker's own board, or null where it is not known.</param>
    public static IReadOnlyList<Block> Of(DesignReport report, BuildSheet sheet, BoardPlan? plan, DrawingContext context)
    {
        var units = sheet.Units;
        return
        [
            .. Notice(report, units),
            new Paragraph(units == DrawingUnits.Inch
                ? "All lengths are in inches, sizes of wood rounded up to the next fraction; weights in ounces, grams beside. Pictures are not to scale."
                : "All lengths are in millimetres. Pictures are not to scale."),
            new Picture(StageView.Paddle(report, units)),
            sheet.GlueUp.Count > 0 ? new Together([new Heading(2, "Gluing up"), new Lines(sheet.GlueUp)]) : new Paragraph(Board(sheet, BoardNeed.For(sheet.Blank.ThickestSectionMm, WoodCatalogue.Find(report.Specification.Wood.Species)?.IsSoftwood ?? false))),
            .. Plan(plan, units),
            new Together([new Heading(2, "Where you should be"), Overview(sheet)]),
            new Together([new Heading(2, "Have at hand"), new Lines(sheet.Tools, Look.Check)]),
            new Heading(2, "Cautions"),
            new Lines([.. Cautions(sheet)], Look.Small),
            .. sheet.Stages.Select((_, i) => Stage(report, sheet, i)),
            new Heading(2, "Numbered stations"),
            Stations(sheet),
            ShaftLines(sheet),
            new Heading(2, "Sanding and finish"),
            Sanding(sheet),
            .. Coats(sheet),
            new Lines([.. Quantities(sheet.Finish, units), .. sheet.Finish.Notes, Tip(sheet.Tip, sheet.Tip.Chosen, units)], Look.Small),
            new Heading(2, "What the figures rest on"),
            new Lines(sheet.Assumptions, Look.Small),
            new Paragraph($"Engine {context.EngineVersion}.{(context.DesignCode is { } code ? $" Design code {code}" : "")}", Look.Small),
        ];
    }

    // The board comes before everything that is done to it.
    private static IEnumerable<Block> Plan(BoardPlan? plan, DrawingUnits units)
    {
        if (plan is null) yield break;
        var (board, heading) = (plan.Order.Boards[0], new Heading(2, "Your board"));
        if (plan.Count == 0)
        {
            yield return new Together([heading, new Paragraph(plan.Layout.Unplaced[0].Reasons[0].Message, Look.Stop)]);
            yield break;
        }

        var size = $"{DrawnLength.Text(board.LengthMm, units)} × {DrawnLength.Text(board.WidthMm, units)} × {DrawnLength.Text(board.ThicknessMm, units)}";
        var many = plan.Count == 1 ? "This paddle comes" : $"{Number(plan.Count, "0")} such paddles come";
        yield return new Together(
        [
            heading,
            new Paragraph($"{many} out of {size}, {DrawnLength.Text(plan.Layout.GapMm, units)} and more between outlines. Chalk the outlines before the first cut, and look for checks and knots again."),
            new Picture(BoardLayoutView.Board(plan.Order, plan.Layout, units, PictureMm)),
        ]);
    }

    private static IEnumerable<Block> Notice(DesignReport report, DrawingUnits units)
    {
        var lines = OutcomeNotice.Lines(report, units);
        if (lines.Count > 0) yield return new Together([new Heading(2, lines[0]), new Lines([.. lines.Skip(1)])], Look.Notice);
    }

    // Every stage with the figures to stop by and room for the maker's own.
    private static Table Overview(BuildSheet sheet) => new(
        $"Weight, and balance point in {(sheet.Units == DrawingUnits.Metric ? "millimetres" : "inches")} from the top of the grip: expected, and the band of nine paddles in ten",
        ["Stage", "Weight", "Balance point", "You weighed", "It balanced at"],
        [.. sheet.Stages.Select((stage, i) => (string[])[Numbered(i, stage.Title), .. Bands(sheet, stage), "", ""])],
        Look.Room);

    private static string[] Bands(BuildSheet sheet, StageSheet stage) => sheet.Weighs(stage.Stage)
        ? [MassBand(stage.MassG, sheet.Units), PlaceBand(stage.BalanceMm, sheet.Units)]
        : ["by the strips", "by the strips"];

    private static string Expected(BuildSheet sheet, StageSheet stage) => sheet.Weighs(stage.Stage)
        ? $"Expect {MassBand(stage.MassG, sheet.Units)}, balancing {PlaceBand(stage.BalanceMm, sheet.Units)} from the top. {stage.NextMove}"
        : "Strips thinner than a board weigh less than one: begin to weigh when the shaft is eight-sided.";

    private static string Board(BuildSheet sheet, BoardNeed need)
    {
        var (blank, units) = (sheet.Blank, sheet.Units);
        var cut = $"Cut {Up(blank.LengthMm, units)} × {Up(blank.WidthMm, units)} from it; {DrawnLength.Rough(blank.EndTrimMm, units)} is kept clear at each end.";
        return blank.IsOwn
            ? $"Your own board is used, {Size(blank.ThicknessMm, units)} thick. The thickest section is {Up(blank.ThickestSectionMm, units)}: "
                + $"{DrawnLength.Shaving(blank.OverMm / 2, units)} is left to plane off each face there. {cut}"
            : $"{need.InWords(units)} {cut}";
    }

    // A sheet is taken apart at the bench: each stage of a paddle that is too weak says so for itself.
    private static Together Stage(DesignReport report, BuildSheet sheet, int i)
    {
        var (stage, units) = (sheet.Stages[i], sheet.Units);
        var known = Join([.. stage.Cautions.Select(Name).Distinct().Select(name => $"{char.ToLowerInvariant(name[0])}{name[1..]}")]);
        return new(
            [
                new Heading(2, Numbered(i, stage.Title)),
                .. sheet.Outcome.IsTooWeak ? [new Paragraph($"{OutcomeNotice.TooWeak} {sheet.Outcome.Unmet[0].Advice}", Look.Notice)] : (Block[])[],
                new Paragraph(Expected(sheet, stage), Look.Expect),
            ],
            Beside: StageView.Draw(report, sheet, i),
            Words:
            [
                new Paragraph(Allowance(stage, units)),
                new Lines(stage.Mark),
                new Paragraph($"Measure: {string.Join(' ', stage.Measure)}"),
                new Paragraph($"STOP when: {stage.StopWhen}", Look.Stop),
                .. known.Length > 0 ? [new Paragraph($"Take care (see Cautions): {known}.", Look.Small)] : (Block[])[],
            ]);
    }

    // Each once in full, in the order of the work; those of one name together.
    private static IEnumerable<string> Cautions(BuildSheet sheet) => sheet.Stages.SelectMany(stage => stage.Cautions).DistinctBy(caution => caution.Id)
        .GroupBy(Name).Select(alike => $"{alike.Key}: {string.Join(' ', alike.Select(caution => $"{caution.Text} [{caution.Source}]"))}");

    // The names that a maker reads are not those that a program does.
    private static string Name(Caution caution) => caution.Id switch
    {
        "design-aid" => "A calculation, no proof",
        "first-use" => "First launch",
        "stock" => "The stock",
        "band-saw" => "Band saw and jigsaw",
        "power-plane" => "Power plane",
        _ when caution.Id.StartsWith("wood-dust", StringComparison.Ordinal) => "Wood dust",
        _ when char.IsAsciiDigit(caution.Id[^1]) => "This wood",
        _ => $"{char.ToUpperInvariant(caution.Id[0])}{caution.Id[1..].Replace('-', ' ')}",
    };

    private static string Allowance(StageSheet stage, DrawingUnits units)
    {
        var left = stage.Allowance;
        if (stage.Stage == BuildStage.Finished) return "The wood is as it was sanded; only the finish is added.";
        if (left.OutlineMm == 0) return "Nothing is left on: these are the designed sizes.";
        string Face(double? mm) => mm is { } known ? DrawnLength.Shaving(known, units) : "the board's full thickness";
        var faces = ((string Zone, double? Mm)[])[("blade", left.BladeFaceMm), ("shaft", left.ShaftFaceMm), ("grip", left.GripFaceMm)];
        return $"Left on: outside the line {Face(left.OutlineMm)}; on each face of "
            + $"{string.Join(", of ", faces.GroupBy(face => Face(face.Mm)).Select(alike => $"{Join([.. alike.Select(face => face.Zone)])} {alike.Key}"))}.";
    }

    // What caliper and rule should read, station by station.
    private static Table Stations(BuildSheet sheet)
    {
        var (units, sawn, done) = (sheet.Units, sheet.Stages[(int)BuildStage.Sawn], sheet.Stages[(int)BuildStage.Sanded]);
        return new(
            $"Half breadth from the centre line, then thickness on it after each stage, {DrawnLength.UnitName(units)}",
            ["No.", "From top", "Mark", "Half, sawn", "Half, done", .. Thinned.Select(stage => Names.Of(stage).Replace('-', ' '))],
            [
                .. done.Stations.Select((station, i) => (string[])
                [
                    Number(station.Number, "0"), DrawnLength.Figure(station.XMm, units), station.Mark ?? "", Figure(sawn.Stations[i].HalfBreadthMm, units),
                    Figure(station.HalfBreadthMm, units), .. Thinned.Select(stage => Figure(sheet.Stages[(int)stage].Stations[i].ThicknessMm, units)),
                ]),
            ],
            Look.Figures);
    }

    private static Table ShaftLines(BuildSheet sheet)
    {
        var units = sheet.Units;
        return new(
            $"Lines on the squared shaft, {DrawnLength.UnitName(units)}: eight sides from each edge, sixteen from each corner of the eight",
            ["No.", "From top", "Width", "Thick", "8 on face", "8 on side", "Facet, degrees", "16 on face", "16 on side", "16 on facet"],
            [
                .. sheet.ShaftLines.Select(line => (string[])
                [
                    Number(line.Number, "0"), DrawnLength.Figure(line.XMm, units), Figure(line.WidthMm, units), Figure(line.ThicknessMm, units), Near(line.LineOnFaceMm, units),
                    Near(line.LineOnSideMm, units), Number(line.ChamferDegrees, "0"), Near(line.SixteenOnFaceMm, units), Near(line.SixteenOnSideMm, units),
                    Near(line.SixteenOnCornerMm, units),
                ]),
            ],
            Look.Figures);
    }

    private static Lines Sanding(BuildSheet sheet) => new(
        [
            .. sheet.Sanding.Select(step =>
                $"Sand {step.Zone}: {string.Join(", ", step.Grits.Select(grit => $"P{grit}"))}; takes {(step.RemovesMm > 0 ? $"{DrawnLength.Shaving(step.RemovesMm, sheet.Units)} off each face at most" : "off the shine")}. "
                + $"{step.Why} [{step.Source}]"),
        ],
        Look.Small);

    // Coats that are alike share a row.
    private static IEnumerable<Block> Coats(BuildSheet sheet)
    {
        if (sheet.Finish.Coats.Count == 0) yield break;
        yield return new Table(
            "Coats",
            ["Coat", "Where", "Pour for each", "Thinner, %", "On day", "Then wait, days"],
            [
                .. sheet.Finish.Coats.GroupBy(coat => (coat.Finish, coat.Zone, coat.ThinnerPercent, coat.Litres, coat.WaitDays)).Select(alike => (string[])
                [
                    $"{alike.Key.Finish} {string.Join(", ", alike.Select(coat => Number(coat.Number, "0")))}", alike.Key.Zone, DrawnAmount.Volume(alike.Key.Litres, sheet.Units),
                    Number(alike.Key.ThinnerPercent, "0"), string.Join(", ", alike.Select(coat => Number(coat.StartDay, "0.#"))), Number(alike.Key.WaitDays, "0.#"),
                ]),
            ],
            Look.Figures);
    }

    private static string MassBand(StageFigure figure, DrawingUnits units)
    {
        var grams = $"{Number(figure.Value, "0")} g ({Number(figure.Low, "0")} to {Number(figure.High, "0")})";
        return units == DrawingUnits.Metric
            ? grams
            : $"{DrawnAmount.Ounces(figure.Value)} oz ({DrawnAmount.Ounces(figure.Low)} to {DrawnAmount.Ounces(figure.High)}), {grams}";
    }

    private static string PlaceBand(StageFigure figure, DrawingUnits units) =>
        $"{DrawnLength.Rough(figure.Value, units)} ({DrawnLength.RoughFigure(figure.Low, units)} to {DrawnLength.RoughFigure(figure.High, units)})";

    private static string Numbered(int index, string title) => string.Create(CultureInfo.InvariantCulture, $"{index + 1}. {title}");

    private static IEnumerable<string> Quantities(FinishPlan finish, DrawingUnits units)
    {
        if (finish.MaskingLineMm is { } line) yield return $"Masking line: {Size(line, units)} from the top of the grip.";
        if (finish.Coats.Count > 0) yield return $"Ready on day {Number(finish.ReadyDay, "0.#")}, counted from the first coat.";
        if (finish.VarnishLitres > 0)
        {
            yield return $"Varnish {DrawnAmount.Volume(finish.VarnishLitres, units)} (buy {DrawnAmount.Volume(finish.BuyVarnishLitres, units)}); thinner "
                + $"{DrawnAmount.Volume(finish.ThinnerLitres, units)} with brush cleaning.";
        }

        if (finish.OilLitres > 0) yield return $"Oil {DrawnAmount.Volume(finish.OilLitres, units)}.";
    }

    private static string Tip(TipReinforcement tip, bool isChosen, DrawingUnits units) =>
        $"{(isChosen ? "The tip is reinforced" : "If you reinforce the tip")}: {DrawnAmount.Cloth(tip.ClothGM2, units)} cloth over the last "
        + $"{Size(tip.LengthMm, units)} on both faces, {DrawnAmount.Area(tip.ClothAreaCm2, units)} to cut, {DrawnAmount.Mass(tip.ResinG, units)} of resin to mix. "
        + $"It adds {DrawnAmount.Mass(tip.AddedG, units)} and moves the balance point {DrawnLength.Rough(tip.With.ShiftMm, units)} towards the tip"
        + (isChosen ? "; the finished figures count it." : ".");

    private static string Join(string[] parts) => parts.Length < 2 ? string.Concat(parts) : $"{string.Join(", ", parts[..^1])} and {parts[^1]}";

    // Sizes of wood go up: what is left on can come off.
    private static string Figure(double mm, DrawingUnits units) => DrawnLength.InColumn(mm, units, LengthRounding.Up);

    private static string Up(double mm, DrawingUnits units) => DrawnLength.Text(mm, units, LengthRounding.Up);

    private static string Near(double mm, DrawingUnits units) => DrawnLength.InColumn(mm, units);

    private static string Size(double mm, DrawingUnits units) => mm > DrawnLength.FineUpToMm ? DrawnLength.Rough(mm, units) : DrawnLength.Text(mm, units);

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
