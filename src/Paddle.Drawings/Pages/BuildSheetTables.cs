using System.Globalization;
using Paddle.Design.Build;
using Paddle.Drawings.Units;

namespace Paddle.Drawings.Pages;

/// <summary>The tables of the printed build sheet.</summary>
internal static class BuildSheetTables
{
    // Before it is roughed the blade stands at the board's full thickness, and so does the shaft; there is nothing to caliper.
    private const BuildStage FirstThinned = BuildStage.BladeRoughed;

    /// <summary>Every stage with the figures to stop by and room for the maker's own.</summary>
    public static string Overview(BuildSheet sheet, DrawingUnits units) => Html.Table(
        $"Mass, g, and balance point, {DrawnLength.UnitName(units)} from the top of the grip: expected, and the band of nine paddles in ten",
        ["Stage", "Mass", "Balance point", "What comes next", "Weighed", "Balanced"],
        [
            .. sheet.Stages.Select((stage, i) => (string[])
                [$"{i + 1}. {stage.Title}", Band(stage.MassG), PlaceBand(stage.BalanceMm, units), stage.NextMove, "", ""]),
            ["With varnish and oil", Number(sheet.WithFinish.MassG, "0"), DrawnLength.Text(sheet.WithFinish.BalanceMm, units), "", "", ""],
        ],
        "overview");

    /// <summary>The board to buy.</summary>
    public static string Board(BuildSheet sheet, DrawingUnits units)
    {
        var blank = sheet.Blank;
        return Html.Paragraph(
            $"{Up(blank.LengthMm, units)} × {Up(blank.WidthMm, units)} × {Size(blank.ThicknessMm, units)} ({blank.Stock}); "
            + $"{Size(blank.EndTrimMm, units)} is kept clear at each end, and the thickest section is {Up(blank.ThickestSectionMm, units)}.");
    }

    /// <summary>What caliper and rule should read, station by station.</summary>
    public static string Stations(BuildSheet sheet, DrawingUnits units)
    {
        var thinned = sheet.Stages.Where(stage => stage.Stage >= FirstThinned).ToList();
        var (sawn, finished) = (sheet.Stages[(int)BuildStage.Sawn], sheet.Stages[(int)BuildStage.Finished]);
        return Html.Table(
            $"Half breadth from the centre line, then thickness on it after each stage, {DrawnLength.UnitName(units)}",
            ["No.", "From top", "Half, sawn", "Half, done", .. thinned.Select(stage => Heading(stage.Stage))],
            finished.Stations.Select((station, i) => (string[])
            [
                station.Number.ToString(CultureInfo.InvariantCulture),
                DrawnLength.Place(station.XMm, units),
                Figure(sawn.Stations[i].HalfBreadthMm, units),
                Figure(station.HalfBreadthMm, units),
                .. thinned.Select(stage => Figure(stage.Stations[i].ThicknessMm, units)),
            ]),
            "figures");
    }

    /// <summary>Lines on the squared shaft.</summary>
    public static string ShaftLines(BuildSheet sheet, DrawingUnits units) => Html.Table(
        $"Lines on the squared shaft, {DrawnLength.UnitName(units)}: eight sides from each edge, sixteen from each corner of the eight",
        ["No.", "From top", "Width", "Thickness", "8 on face", "8 on side", "Facet, degrees", "16 on face", "16 on side", "16 on facet"],
        sheet.ShaftLines.Select(line => (string[])
        [
            line.Number.ToString(CultureInfo.InvariantCulture),
            DrawnLength.Place(line.XMm, units),
            Figure(line.WidthMm, units),
            Figure(line.ThicknessMm, units),
            Near(line.LineOnFaceMm, units),
            Near(line.LineOnSideMm, units),
            Number(line.ChamferDegrees, "0"),
            Near(line.SixteenOnFaceMm, units),
            Near(line.SixteenOnSideMm, units),
            Near(line.SixteenOnCornerMm, units),
        ]),
        "figures");

    /// <summary>Gauge, round-over bits and the kerf of the grip.</summary>
    public static string Tools(BuildSheet sheet, DrawingUnits units)
    {
        var (gauge, kerf) = (sheet.Gauge, sheet.Kerf);
        var bits = sheet.RoundOvers.Count == 0
            ? "No round-over bit as sold fits this shaft."
            : $"Round-over bits that fit: {string.Join("; ", sheet.RoundOvers.Select(bit =>
                $"{bit.Name}, leaving {Size(bit.LeftAtCornerMm, units)} at the corner and a flat of {Size(bit.FlatLeftMm, units)}"))}.";
        return Html.List(
        [
            // A gauge is built once and must be right: hundredths of a millimetre in either system of units.
            $"Spar gauge: {Number(gauge.BetweenFencesMm, "0.##")} mm between the fences, points at {Number(gauge.FirstPointMm, "0.00")} and "
                + $"{Number(gauge.FirstPointMm + gauge.BetweenPointsMm, "0.00")} mm from one of them; its lines lie "
                + $"{Number(gauge.LineErrorMm, "0.00")} mm outside the exact ones at most.",
            bits,
            $"Grip: saw a kerf {Size(kerf.PlaceMm, units)} from the top, {Size(kerf.DepthMm, units)} deep on "
                + $"{(kerf.Faces == 2 ? "both faces" : "the hollowed face")}; {Up(kerf.LeftMm, units)} is left.",
        ]);
    }

    /// <summary>Grits by zone.</summary>
    public static string Sanding(BuildSheet sheet) => Html.Table(
        "Sanding",
        ["Zone", "Grits", "Takes off each face, at most", "Why", "Source"],
        sheet.Sanding.Select(step => (string[])
        [
            step.Zone, string.Join(", ", step.Grits.Select(grit => $"P{grit}")), step.RemovesMm > 0 ? $"{Number(step.RemovesMm, "0.00")} mm" : "the shine", step.Why, step.Source,
        ]));

    /// <summary>Coats in order of time, with quantities and the reinforced tip.</summary>
    public static string Coats(BuildSheet sheet, DrawingUnits units)
    {
        var (finish, tip) = (sheet.Finish, sheet.Tip);
        return Html.Table(
            "Coats",
            ["Day", "Coat", "Where", "Pour, mL", "Thinner, %", "Then wait, days"],
            finish.Coats.Select(coat => (string[])
            [
                Number(coat.StartDay, "0.#"), $"{coat.Finish} {coat.Number}", coat.Zone, Number(1000 * coat.Litres, "0"),
                Number(coat.ThinnerPercent, "0"), Number(coat.WaitDays, "0.#"),
            ])) + Html.List(
            [
                $"Masking line: {Size(finish.MaskingLineMm, units)} from the top of the grip. Ready on day {Number(finish.ReadyDay, "0.#")}.",
                $"Needed: varnish {Number(finish.VarnishLitres, "0.00")} L (buy {Number(finish.BuyVarnishLitres, "0.##")} L), oil "
                    + $"{Number(finish.OilLitres, "0.00")} L, thinner {Number(finish.ThinnerLitres, "0.00")} L with brush cleaning.",
                .. finish.Notes,
                $"If you reinforce the tip: {Number(tip.ClothGM2, "0")} g/m² cloth over the last {Size(tip.LengthMm, units)} on both faces, "
                    + $"{Number(tip.ClothAreaCm2, "0")} cm² to cut, {Number(tip.ResinG, "0")} g of resin to mix. It adds {Number(tip.AddedG, "0.0")} g and "
                    + $"moves the balance point {Size(tip.With.ShiftMm, units)} towards the tip.",
            ]);
    }

    /// <summary>A mass with its band, without its unit.</summary>
    public static string Band(StageFigure figure) =>
        $"{Number(figure.Value, "0")} ({Number(figure.Low, "0")} to {Number(figure.High, "0")})";

    /// <summary>A place with its band and its unit.</summary>
    public static string PlaceBand(StageFigure figure, DrawingUnits units) => units == DrawingUnits.Metric
        ? $"{Band(figure)} mm"
        : $"{Near(figure.Value, units)} ({Near(figure.Low, units)} to {Near(figure.High, units)}) in";

    private static string Heading(BuildStage stage) => BuildStages.Id(stage).Replace('-', ' ');

    // Sizes of wood go up: what is left on can come off.
    private static string Figure(double mm, DrawingUnits units) => DrawnLength.Figure(mm, units, LengthRounding.Up);

    private static string Up(double mm, DrawingUnits units) => DrawnLength.Text(mm, units, LengthRounding.Up);

    private static string Near(double mm, DrawingUnits units) => DrawnLength.Figure(mm, units);

    private static string Size(double mm, DrawingUnits units) => DrawnLength.Text(mm, units);

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
