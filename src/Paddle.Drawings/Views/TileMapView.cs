using System.Globalization;
using Paddle.Design;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>The first page of a printed template: how the tiles lie and a square to measure; and the marks that join the tiles.</summary>
internal static class TileMapView
{
    private const double CrossEveryMm = 100;

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
        var map = Margin + 32;
        var scale = DrawMap(sketch, report, half, plan, Margin, map, inner);

        var square = map + scale * half.HeightMm + 8;
        CalibrationSquare.Draw(sketch, Margin, square);
        string[] lines =
        [
            "1  Print every page at 100 %, never \"fit to page\".",
            "2  Measure the square both ways: 100 mm within 0.5 mm. If it is off, stop and print again.",
            "3  Trim each tile at its left cut marks; lay it on the dashed line of the tile before.",
            "4  The crosses of both tiles must fall on one another, the centre line must run straight.",
            $"5  Check with a tape: overall {Units.DrawnLength.Text(report.Specification.Form.Places.OverallMm, context.Units)}, "
            + $"throat {Units.DrawnLength.Text(report.Specification.Form.Places.ThroatMm, context.Units)} from the top.",
            "6  Glue to thin board, cut, fair the edge; trace, flip about the centre line, trace again.",
        ];
        double left = Margin + CalibrationSquare.SideMm + 10, room = widthMm - Margin - left;
        for (var i = 0; i < lines.Length; i++)
        {
            var wide = StrokeAlphabet.WidthMm(lines[i], Lettering.Note);
            sketch.Text(lines[i], left, square + 6 + 9 * i, wide <= room ? Lettering.Note : Lettering.Note * room / wide);
        }

        var origin = KeyFigures.Origin(context);
        sketch.Text(origin, left, square + 12 + 9 * lines.Length, Lettering.Small);
        return sketch.Finish("tile-map", context.Label, "", widthMm, heightMm);
    }

    /// <summary>Cut marks, overlap line and register crosses of one tile, in the tile's own window.</summary>
    public static Sheet Registers(Sheet sheet, TilePlan plan, int row, int column, double centreY)
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
            sketch.Text($"tile {TileName(plan, row, column + 1)} starts here", plan.StepX + 4, height - 4, Lettering.Note, turn: -90);
        }

        if (row < plan.Rows - 1)
        {
            sketch.Line(0, plan.StepY, width, plan.StepY, LineKind.Hidden, Layer.Marks);
            sketch.Text($"tile {TileName(plan, row + 1, column)} starts here", 4, plan.StepY + 5, Lettering.Note);
        }

        // Crosses at the same places of the sheet on every tile that shows them.
        foreach (var y in (double[])[centreY - 50, centreY, centreY + 12])
        {
            for (var x = 0.0; x < sheet.WidthMm + CrossEveryMm; x += CrossEveryMm / 2)
            {
                double at = x - left, down = y - top;
                var inOverlap = at >= 2 && at <= TilePlan.OverlapMm - 2 || at >= plan.StepX + 2 && at <= width - 2;
                var onGrid = x % CrossEveryMm == 0 && y != centreY + 12;
                if (at < 2 || at > width - 2 || down < 2 || down > height - 2 || !(inOverlap || onGrid)) continue;
                sketch.Line(at - 2, down, at + 2, down, LineKind.Fine, Layer.Marks);
                sketch.Line(at, down - 2, at, down + 2, LineKind.Fine, Layer.Marks);
            }
        }

        JoinCrosses(sketch, sheet, plan, row, column);
        return sketch.Finish("registers", "", "", width, height);
    }

    // Each join has two crosses of its own in the middle of its overlap, whatever the paper.
    private static void JoinCrosses(Sketch sketch, Sheet sheet, TilePlan plan, int row, int column)
    {
        var top = row * plan.StepY;
        foreach (var at in new[] { (column > 0, TilePlan.OverlapMm / 2), (column < plan.Columns - 1, plan.StepX + TilePlan.OverlapMm / 2) })
        {
            if (!at.Item1) continue;
            foreach (var share in (double[])[0.15, 0.85])
            {
                var down = share * Math.Min(sheet.HeightMm, plan.TileHeightMm) - (plan.Rows > 1 ? 0 : top);
                sketch.Line(at.Item2 - 3, down, at.Item2 + 3, down, LineKind.Narrow, Layer.Marks);
                sketch.Line(at.Item2, down - 3, at.Item2, down + 3, LineKind.Narrow, Layer.Marks);
                sketch.Path(SheetPath.Circle(at.Item2, down, 1.5), LineKind.Narrow, Layer.Marks);
            }
        }
    }

    private static double DrawMap(Sketch sketch, DesignReport report, Sheet half, TilePlan plan, double x, double y, double width)
    {
        double across = (plan.Columns - 1) * plan.StepX + plan.TileWidthMm;
        var scale = width / across;
        sketch.Path(
            FacePaths.Half(report.Outline, HalfTemplateView.OriginX, HalfTemplateView.CentreY(report)).Map(p => new(x + scale * p.X, y + scale * p.Y)),
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
