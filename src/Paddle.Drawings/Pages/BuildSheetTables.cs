using System.Globalization;
using Paddle.Design.Boards;
using Paddle.Design.Build;
using Paddle.Design.Finishing;
using Paddle.Design.Units;

namespace Paddle.Drawings.Pages;

/// <summary>The tables of the printed build sheet.</summary>
internal static class BuildSheetTables
{
    // Before it is roughed the blade stands at the board's full thickness, and so does the shaft; there is nothing to caliper. The
    // finish is no thickness of wood.
    private static readonly BuildStage[] Thinned = [.. BuildStages.All.Where(stage => stage is >= BuildStage.BladeRoughed and <= BuildStage.Sanded)];

    /// <summary>Every stage with the figures to stop by and room for the maker's own.</summary>
    public static string Overview(BuildSheet sheet, DrawingUnits units) => Html.Table(
        $"Weight, and balance point in {(units == DrawingUnits.Metric ? "millimetres" : "inches")} from the top of the grip: expected, and the band of nine paddles in ten",
        ["Stage", "Weight", "Balance point", "Weighed", "Balanced"],
        sheet.Stages.Select((stage, i) => (string[])
            [Numbered(i, stage.Title), MassBand(stage.MassG, units), PlaceBand(stage.BalanceMm, units), "", ""]),
        "overview");

    /// <summary>The board to buy, or what the maker's own leaves.</summary>
    public static string Board(BuildSheet sheet, BoardNeed need, DrawingUnits units)
    {
        var blank = sheet.Blank;
        var cut = $"Cut {Up(blank.LengthMm, units)} × {Up(blank.WidthMm, units)} from it; {DrawnLength.Rough(blank.EndTrimMm, units)} is kept clear at each end.";
        return Html.Paragraph(blank.IsOwn
            ? $"Your own board is used, {Size(blank.ThicknessMm, units)} thick. The thickest section is {Up(blank.ThickestSectionMm, units)}: "
                + $"{DrawnLength.Shaving(blank.OverMm / 2, units)} is left to plane off each face there. {cut}"
            : $"{need.InWords(units)} {cut}");
    }

    /// <summary>What caliper and rule should read, station by station.</summary>
    public static string Stations(BuildSheet sheet, DrawingUnits units)
    {
        var (sawn, done) = (sheet.Stages[(int)BuildStage.Sawn], sheet.Stages[(int)BuildStage.Sanded]);
        return Html.Table(
            $"Half breadth from the centre line, then thickness on it after each stage, {DrawnLength.UnitName(units)}",
            ["No.", "From top", "Mark", "Half, sawn", "Half, done", .. Thinned.Select(Heading)],
            done.Stations.Select((station, i) => (string[])
            [
                station.Number.ToString(CultureInfo.InvariantCulture),
                DrawnLength.Figure(station.XMm, units),
                station.Mark,
                Figure(sawn.Stations[i].HalfBreadthMm, units),
                Figure(station.HalfBreadthMm, units),
                .. Thinned.Select(stage => Figure(sheet.Stages[(int)stage].Stations[i].ThicknessMm, units)),
            ]),
            "figures stations");
    }

    /// <summary>Lines on the squared shaft.</summary>
    public static string ShaftLines(BuildSheet sheet, DrawingUnits units) => Html.Table(
        $"Lines on the squared shaft, {DrawnLength.UnitName(units)}: eight sides from each edge, sixteen from each corner of the eight",
        ["No.", "From top", "Width", "Thickness", "8 on face", "8 on side", "Facet, degrees", "16 on face", "16 on side", "16 on facet"],
        sheet.ShaftLines.Select(line => (string[])
        [
            line.Number.ToString(CultureInfo.InvariantCulture),
            DrawnLength.Figure(line.XMm, units),
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
            $"Spar gauge: {gauge.Between(units)} between the fences, points {gauge.First(units)} from each fence, {gauge.Apart(units)} apart; its lines lie "
                + $"{DrawnLength.Shaving(gauge.LineErrorMm, units)} outside the exact ones at most.",
            bits,
            $"Grip: saw a kerf {Size(kerf.PlaceMm, units)} from the top, {Size(kerf.DepthMm, units)} deep on "
                + $"{(kerf.Faces == 2 ? "both faces" : "the hollowed face")}; {Up(kerf.LeftMm, units)} is left.",
        ]);
    }

    /// <summary>Grits by zone.</summary>
    public static string Sanding(BuildSheet sheet, DrawingUnits units) => Html.Table(
        "Sanding",
        ["Zone", "Grits", "Takes off each face, at most", "Why", "Source"],
        sheet.Sanding.Select(step => (string[])
        [
            step.Zone, string.Join(", ", step.Grits.Select(grit => $"P{grit}")), step.RemovesMm > 0 ? DrawnLength.Shaving(step.RemovesMm, units) : "the shine", step.Why, step.Source,
        ]));

    /// <summary>Coats in order of time, with quantities and the reinforced tip.</summary>
    public static string Coats(BuildSheet sheet, DrawingUnits units)
    {
        var finish = sheet.Finish;
        var table = finish.Coats.Count == 0 ? "" : Html.Table(
            "Coats",
            ["Day", "Coat", "Where", "Pour", "Thinner, %", "Then wait, days"],
            finish.Coats.Select(coat => (string[])
            [
                Number(coat.StartDay, "0.#"), $"{coat.Finish} {coat.Number}", coat.Zone, DrawnAmount.Volume(coat.Litres, units),
                Number(coat.ThinnerPercent, "0"), Number(coat.WaitDays, "0.#"),
            ]));
        return table + Html.List([.. Quantities(finish, units), .. finish.Notes, Tip(sheet.Tip, sheet.TipChosen, units)]);
    }

    public static string MassBand(StageFigure figure, DrawingUnits units)
    {
        var grams = $"{Number(figure.Value, "0")} g ({Number(figure.Low, "0")} to {Number(figure.High, "0")})";
        return units == DrawingUnits.Metric
            ? grams
            : $"{DrawnAmount.Ounces(figure.Value)} oz ({DrawnAmount.Ounces(figure.Low)} to {DrawnAmount.Ounces(figure.High)}), {grams}";
    }

    public static string PlaceBand(StageFigure figure, DrawingUnits units) =>
        $"{DrawnLength.Rough(figure.Value, units)} ({DrawnLength.RoughFigure(figure.Low, units)} to {DrawnLength.RoughFigure(figure.High, units)})";

    /// <summary>A stage's number and title.</summary>
    public static string Numbered(int index, string title) => string.Create(CultureInfo.InvariantCulture, $"{index + 1}. {title}");

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

    private static string Heading(BuildStage stage) => BuildStages.Id(stage).Replace('-', ' ');

    // Sizes of wood go up: what is left on can come off.
    private static string Figure(double mm, DrawingUnits units) => DrawnLength.InColumn(mm, units, LengthRounding.Up);

    private static string Up(double mm, DrawingUnits units) => DrawnLength.Text(mm, units, LengthRounding.Up);

    private static string Near(double mm, DrawingUnits units) => DrawnLength.InColumn(mm, units);

    private static string Size(double mm, DrawingUnits units) =>
        mm > DrawnLength.FineUpToMm ? DrawnLength.Rough(mm, units) : DrawnLength.Text(mm, units);

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
