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
        const double Margin = TilePlan.MarginMm;
        var sketch = new Sketch();
        var inner = widthMm - 2 * Margin;
        TitleBlock.Heading(
            sketch, context.Label, $"{KeyFigures.BladeName(report)} paddle: templates at true scale, {plan.Columns * plan.Rows} tiles and section cards", Margin, Margin, inner,
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
        var height = Lettering.Note * Math.Min(1, room / lines.Max(line => StrokeAlphabet.WidthMm(line, Lettering.Note)));
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
