using Paddle.Design.Layout;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>Boards one below another, near edge down, with every outline and what to measure to chalk it.</summary>
internal static class BoardLayoutView
{
    private const double Margin = 20, FitLengthMm = 257;
    private const double HeadMm = 30, RowMm = 7, GapMm = 22;
    /// <summary>Class of an outline's path, by which a program finds it.</summary>
    public const string OutlineCss = "paddle";
    /// <summary>Class of a board's edge.</summary>
    public const string BoardCss = "board";
    /// <summary>Class of a defect.</summary>
    public const string DefectCss = "defect";

    public static Sheet Draw(LayoutOrder order, BoardLayout layout, DrawingContext context, bool isToFit)
    {
        var sketch = new Sketch();
        var kinds = layout.Boards.Select(cut => order.Boards.First(board => board.Id == cut.BoardId)).ToList();
        var longest = kinds.Count > 0 ? kinds.Max(board => board.LengthMm) : FitLengthMm;
        var scale = isToFit ? FitLengthMm / longest : 1;
        var (width, y) = (Math.Max(FitLengthMm, longest * scale) + 2 * Margin, Margin);
        TitleBlock.Heading(sketch, context.Label, Summary(layout, context.Units), Margin, y, width - 2 * Margin, small: isToFit);
        y += HeadMm;
        for (var k = 0; k < kinds.Count; k++) y = DrawBoard(sketch, order, layout, layout.Boards[k], kinds[k], context.Units, y, scale, isToFit);
        foreach (var missing in layout.Unplaced)
        {
            sketch.Text($"Not placed: {missing.PaddleId} × {missing.Count}. {missing.Reasons[0].Message}", Margin, y, Lettering.Small);
            y += RowMm;
        }

        sketch.Text($"Engine {context.EngineVersion}", Margin, y + 4, Lettering.Small);
        return sketch.Finish("board-layout", $"{context.Label}: boards", Summary(layout, context.Units) + ".", width, y + Margin);
    }

    private static double DrawBoard(
        Sketch sketch, LayoutOrder order, BoardLayout layout, CutBoard cut, RackBoard board, DrawingUnits units, double top, double scale, bool isToFit)
    {
        var letter = isToFit ? Lettering.Small : Lettering.Figure;
        var (left, foot) = (Margin, top + (isToFit ? 8 : 14) + board.WidthMm * scale);
        Point At(double x, double y) => new(left + x * scale, foot - y * scale);
        string Text(double mm) => DrawnLength.Text(mm, units);
        sketch.Text(
            $"Board {board.Id}, copy {cut.Copy}: {Text(board.LengthMm)} × {Text(board.WidthMm)} × {Text(board.ThicknessMm)}; yield {cut.YieldPercent:0.#} %", left, top + letter, letter, strong: true);
        sketch.Path(SheetPath.Rectangle(left, foot - board.WidthMm * scale, board.LengthMm * scale, board.WidthMm * scale), LineKind.Narrow, Layer.Blank, Fill.Wood, css: BoardCss);
        foreach (var defect in board.Defects)
        {
            var corners = defect.Corners().Select(corner => At(Math.Clamp(corner.XMm, 0, board.LengthMm), Math.Clamp(corner.YMm, 0, board.WidthMm)));
            sketch.Path(SheetPath.Polyline(corners, closed: true), LineKind.Hidden, Layer.Marks, css: DefectCss);
        }

        foreach (var offcut in cut.Offcuts)
        {
            var corner = At(offcut.XMm, offcut.YMm + offcut.WidthMm);
            sketch.Path(SheetPath.Rectangle(corner.X, corner.Y, offcut.LengthMm * scale, offcut.WidthMm * scale), LineKind.Fine, Layer.Stations);
            var text = $"off-cut {Text(offcut.LengthMm)} × {Text(offcut.WidthMm)}";
            sketch.Fitted(text, corner.X + offcut.LengthMm * scale / 2, corner.Y + offcut.WidthMm * scale / 2, letter, offcut.LengthMm * scale - 4);
        }

        var row = foot + 1.6 * letter;
        var places = layout.Placements.Where(one => one.BoardId == cut.BoardId && one.BoardCopy == cut.Copy).OrderByDescending(one => one.YMm);
        foreach (var place in places)
        {
            var paddle = order.Paddles.First(one => one.Id == place.PaddleId);
            var sign = place.RotatedDegrees == 0 ? 1 : -1;
            var path = FacePaths.Whole(paddle.Outline, 0, 0).Map(point => At(place.XMm + sign * point.X, place.YMm - sign * point.Y));
            sketch.Path(path, LineKind.Visible, Layer.Outline, css: OutlineCss);
            var (grip, tip) = (place.XMm, place.XMm + sign * paddle.LengthMm);
            sketch.Path(SheetPath.Line(At(grip, place.YMm).X, At(grip, place.YMm).Y, At(tip, place.YMm).X, At(tip, place.YMm).Y), LineKind.Centre, Layer.Centre);
            var middle = At(place.XMm + sign * (paddle.Places.ThroatMm + 0.55 * paddle.Places.BladeMm), place.YMm);
            sketch.Fitted($"{place.PaddleId} no. {place.Copy}", middle.X, middle.Y - 1, letter, paddle.Places.BladeMm * scale * 0.7, strong: true);
            row += isToFit ? 5 : RowMm + 2;
            sketch.Text(
                $"{place.PaddleId} no. {place.Copy}: centre line {Text(place.YMm)} from the near edge; from the left end, top of the grip at {Text(grip)}, throat at "
                + $"{Text(place.XMm + sign * paddle.Places.ThroatMm)}, tip at {Text(tip)}", left, row, letter);
        }

        return row + GapMm;
    }

    private static string Summary(BoardLayout layout, DrawingUnits units) =>
        $"{layout.Totals.Paddles} {(layout.Totals.Paddles == 1 ? "paddle" : "paddles")} out of {layout.Totals.Boards} {(layout.Totals.Boards == 1 ? "board" : "boards")}, "
        + $"{layout.Totals.BoardFeet:0.##} board feet; {DrawnLength.Text(layout.GapMm, units)} between outlines at least; near edges below";
}
