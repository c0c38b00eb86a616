using System.Globalization;
using Paddle.Design;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>The first page of a printed template: how the tiles lie and a square to measure; and the marks that join the tiles.</summary>
internal static class TileMapView
{
    private const double CrossEveryMm = 100;
    private const double LineMm = 9;
    private const double TightLineMm = 7;
    private const double NoticeRoomMm = 46;

    /// <summary>Name of a tile: its number, from the grip, row by row.</summary>
    public static string TileName(TilePlan plan, int row, int column) => (row * plan.Columns + column + 1).ToString(CultureInfo.InvariantCulture);

    public static Sheet Draw(DesignReport report, DrawingContext context, Sheet half, TilePlan plan, double widthMm, double heightMm)
    {
        const double Margin = TilePlan.UsualMarginMm;
        var sketch = new Sketch();
        var inner = widthMm - 2 * Margin;
        TitleBlock.Heading(
            sketch, context.Label, $"{KeyFigures.BladeName(report)} paddle: templates at true scale, {plan.InWords(context)} and section cards", Margin, Margin, inner,
            small: true);
        const double Map = Margin + 32;
        var units = context.Units;
        var scale = DrawMap(sketch, report, half, plan, units, Margin, Map, inner);

        var square = Map + scale * half.HeightMm + 8;
        CalibrationSquare.Draw(sketch, Margin, square, units);
        string[] lines =
        [
            "1  Print every page at 100 %, never \"fit to page\".",
            $"2  Measure the square both ways: {DrawnLength.Text(CalibrationSquare.SideMm(units), units)} within {CalibrationSquare.Tolerance(units)}. If it is off, stop and print again.",
            "3  Trim each tile at its left cut marks; lay it on the dashed line of the tile before.",
            "4  The crosses of both tiles must fall on one another, the centre line must run straight.",
            $"5  Check with a tape: overall {DrawnLength.Text(report.Specification.Form.Places.OverallMm, units)}, "
            + $"throat {DrawnLength.Text(report.Specification.Form.Places.ThroatMm, units)} from the top.",
            "6  Glue to thin board, cut, fair the edge; trace, flip about the centre line, trace again.",
        ];
        double left = Margin + CalibrationSquare.SideMm(units) + 10, room = widthMm - Margin - left;
        var height = Lettering.Note * Math.Min(1, room / lines.Max(line => Helvetica.WidthMm(line, Lettering.Note)));
        var top = square + OutcomeNotice.Draw(sketch, report, units, left, square, room, Lettering.Small, NoticeRoomMm);
        var step = top > square ? TightLineMm : LineMm;
        for (var i = 0; i < lines.Length; i++) sketch.Text(lines[i], left, top + 6 + step * i, height);
        var origin = KeyFigures.Origin(context);
        sketch.Text(origin, left, top + 7 + step * lines.Length, Lettering.Small);
        return sketch.Finish("tile-map", context.Label, "", widthMm, heightMm);
    }

    /// <summary>Cut marks, overlap line and register crosses of one tile, in the tile's own window.</summary>
    public static Sheet Registers(TilePlan plan, int row, int column, double centreY)
    {
        var sketch = new Sketch();
        double left = column * plan.StepX, top = row * plan.StepY, width = plan.TileWidthMm, height = plan.TileHeightMm;
        foreach (var x in (double[])[0, width])
        {
            foreach (var y in (double[])[0, height])
            {
                sketch.Line(x, y - Math.Sign(y - 1) * -4, x, y, LineKind.Narrow, Layer.Marks);
                sketch.Line(x - Math.Sign(x - 1) * -4, y, x, y, LineKind.Narrow, Layer.Marks);
            }
        }

        if (column < plan.Columns - 1)
        {
            sketch.Line(plan.StepX, 0, plan.StepX, height, LineKind.Hidden, Layer.Marks);
            sketch.Text($"tile {TileName(plan, row, column + 1)} starts here", plan.StepX + 3, 5, Lettering.Note, turn: 90);
        }

        if (row < plan.Rows - 1)
        {
            sketch.Line(0, plan.StepY, width, plan.StepY, LineKind.Hidden, Layer.Marks);
            sketch.Text($"tile {TileName(plan, row + 1, column)} starts here", 4, plan.StepY + 5, Lettering.Note);
        }

        // Crosses at the same places of the sheet on every tile that shows them: every 100 mm, and two more in each join.
        var over = centreY - 50 - top;
        for (var x = CrossEveryMm * Math.Ceiling(left / CrossEveryMm); x < left + width; x += CrossEveryMm) Cross(sketch, x - left, over, 2);
        foreach (var down in (double[])[centreY - 80 - top, centreY + 30 - top])
        {
            if (column > 0) Cross(sketch, TilePlan.OverlapMm / 2, down, 4);
            if (column < plan.Columns - 1) Cross(sketch, plan.StepX + TilePlan.OverlapMm / 2, down, 4);
        }

        return sketch.Finish("registers", "", "", width, height);
    }

    private static void Cross(Sketch sketch, double x, double y, double arm)
    {
        sketch.Line(x - arm, y, x + arm, y, LineKind.Narrow, Layer.Marks);
        sketch.Line(x, y - arm, x, y + arm, LineKind.Narrow, Layer.Marks);
        if (arm > 2) sketch.Path(SheetPath.Circle(x, y, arm / 2), LineKind.Narrow, Layer.Marks);
    }

    private static double DrawMap(Sketch sketch, DesignReport report, Sheet half, TilePlan plan, DrawingUnits units, double x, double y, double width)
    {
        var across = (plan.Columns - 1) * plan.StepX + plan.TileWidthMm;
        var scale = width / across;
        sketch.Path(
            FacePaths.Half(report.Outline, HalfTemplateView.OriginX, HalfTemplateView.CentreY(report, units)).Map(p => new(x + scale * p.X, y + scale * p.Y)),
            LineKind.Narrow, Layer.Outline);
        for (var row = 0; row < plan.Rows; row++)
        {
            for (var column = 0; column < plan.Columns; column++)
            {
                double left = x + scale * column * plan.StepX, top = y + scale * row * plan.StepY;
                var high = scale * Math.Min(plan.TileHeightMm, half.HeightMm);
                sketch.Path(SheetPath.Rectangle(left, top, scale * plan.TileWidthMm, high), LineKind.Fine, Layer.Marks);
                sketch.Text(TileName(plan, row, column), left + scale * plan.TileWidthMm / 2, top + 6, Lettering.Figure, Anchor.Middle);
            }
        }

        return scale;
    }
}

/// <summary>How a long sheet is cut into pages that overlap.</summary>
/// <param name="PageWidthMm">Paper across, mm.</param>
/// <param name="PageHeightMm">Paper down, mm.</param>
/// <param name="Columns">Tiles across.</param>
/// <param name="LabelMm">Strip at the foot of each tile for its own label, mm.</param>
/// <param name="MarginMm">White edge, mm.</param>
/// <remarks>n = ceil((L − o)/(p − o)) tiles of p with the overlap o for a length L.</remarks>
internal sealed record TilePlan(double PageWidthMm, double PageHeightMm, int Columns, int Rows, double LabelMm, double MarginMm = TilePlan.UsualMarginMm)
{
    /// <summary>Edge that every printer leaves white, mm; common practice, no source.</summary>
    public const double UsualMarginMm = 10;
    /// <summary>Edge that desk printers of today can print to, mm: 1/4 in; common practice, no source. Used where it saves a sheet.</summary>
    public const double LeastMarginMm = 6.35;
    /// <summary>How far neighbours overlap, mm; common practice, no source.</summary>
    public const double OverlapMm = 10;
    /// <summary>Strip for a label of one line, mm.</summary>
    public const double OneLineMm = 8;

    /// <summary>Drawing on one tile across, mm.</summary>
    public double TileWidthMm => PageWidthMm - 2 * MarginMm;
    /// <summary>Drawing on one tile down, mm.</summary>
    public double TileHeightMm => PageHeightMm - 2 * MarginMm - LabelMm;
    /// <summary>From one tile to the next across, mm.</summary>
    public double StepX => TileWidthMm - OverlapMm;
    /// <summary>From one tile to the next down, mm.</summary>
    public double StepY => TileHeightMm - OverlapMm;
    public int Count => Columns * Rows;

    /// <summary>Tiles for a sheet: of lying and standing paper, of the usual and the least margin, what needs fewest; when equal the usual
    /// margin, and lying paper.</summary>
    public static TilePlan For(double paperShortMm, double paperLongMm, double sheetWidthMm, double sheetHeightMm, double labelMm = OneLineMm) =>
        ((double[])[UsualMarginMm, LeastMarginMm])
            .SelectMany(margin => (TilePlan[])[new(paperLongMm, paperShortMm, 1, 1, labelMm, margin), new(paperShortMm, paperLongMm, 1, 1, labelMm, margin)])
            .Select(plan => plan with { Columns = Across(sheetWidthMm, plan.TileWidthMm), Rows = Across(sheetHeightMm, plan.TileHeightMm) })
            .MinBy(plan => plan.Count)!;

    /// <summary>Such as <c>6 tiles (paper lying, 6.4 mm margins, 10 mm overlap)</c>.</summary>
    public string InWords(DrawingContext context) => string.Create(
        CultureInfo.InvariantCulture,
        $"{Count} tiles (paper {(PageWidthMm > PageHeightMm ? "lying" : "standing")}, margins {DrawnLength.Text(MarginMm, context.Units)}, overlap {DrawnLength.Text(OverlapMm, context.Units)})");

    private static int Across(double length, double tile) => Math.Max(1, (int)Math.Ceiling((length - OverlapMm) / (tile - OverlapMm) - 1e-9));
}

/// <summary>A square to measure after printing: printers stretch, sometimes one way only. Its side is a round figure of the maker's rule.</summary>
internal static class CalibrationSquare
{
    private const double InchSideIn = 4;

    /// <summary>Side, mm: 100 mm, or 4 in.</summary>
    public static double SideMm(DrawingUnits units) => units == DrawingUnits.Metric ? 100 : InchSideIn * DrawnLength.MmPerInch;

    /// <summary>Accepted error on each side, in words; common practice, no source.</summary>
    public static string Tolerance(DrawingUnits units) => units == DrawingUnits.Metric ? "0.5 mm" : "1/64 in";

    /// <summary>Draws the square with its top left corner at a place.</summary>
    public static void Draw(Sketch sketch, double x, double y, DrawingUnits units)
    {
        var side = SideMm(units);
        sketch.Path(SheetPath.Rectangle(x, y, side, side), LineKind.Narrow, Layer.Calibration, id: "calibration-square");
        sketch.Line(x, y + side / 2, x + side, y + side / 2, LineKind.Fine, Layer.Calibration);
        sketch.Line(x + side / 2, y, x + side / 2, y + side, LineKind.Fine, Layer.Calibration);
        sketch.Text("Check both ways", x + 4, y + 10, Lettering.Note, layer: Layer.Calibration);
        sketch.Text($"{DrawnLength.Text(side, units)}, within {Tolerance(units)}", x + 4, y + 17, Lettering.Note, layer: Layer.Calibration);
        Ticks(sketch, x, y, side, units == DrawingUnits.Metric ? 10 : DrawnLength.MmPerInch / 2);
    }

    // Along the foot and the right side, as on a rule.
    private static void Ticks(Sketch sketch, double x, double y, double side, double step)
    {
        for (var k = 1; k * step < side - 1e-6; k++)
        {
            var reach = k % 2 == 0 ? 4 : 2.5;
            sketch.Line(x + k * step, y + side - reach, x + k * step, y + side, LineKind.Fine, Layer.Calibration);
            sketch.Line(x + side - reach, y + side - k * step, x + side, y + side - k * step, LineKind.Fine, Layer.Calibration);
        }
    }
}
