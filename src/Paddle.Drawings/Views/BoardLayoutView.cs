using Paddle.Design.Layout;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>Boards one below another, near edge down, with every outline and what to measure to chalk it.</summary>
internal static class BoardLayoutView
{
    private const double Margin = 20, FitLengthMm = 257;
    private const double HeadMm = 30, RowMm = 7;
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
        for (var k = 0; k < kinds.Count; k++) y = DrawBoard(sketch, order, layout, layout.Boards[k], kinds[k], context.Units, new(Margin, y), scale, isToFit ? Lettering.Small : Lettering.Figure);
        foreach (var missing in layout.Unplaced)
        {
            sketch.Text($"Not placed: {missing.PaddleId} × {missing.Count}. {missing.Reasons[0].Message}", Margin, y, Lettering.Small);
            y += RowMm;
        }

        sketch.Text($"Engine {context.EngineVersion}", Margin, y + 4, Lettering.Small);
        return sketch.Finish("board-layout", $"{context.Label}: boards", Summary(layout, context.Units) + ".", width, y + Margin);
    }

    /// <summary>The first board of a layout alone, as wide as a column of a page.</summary>
    /// <param name="widthMm">Width of the picture, mm.</param>
    public static Sheet Board(LayoutOrder order, BoardLayout layout, DrawingUnits units, double widthMm)
    {
        const double Letter = 1.9;
        var (sketch, cut) = (new Sketch(), layout.Boards[0]);
        var board = order.Boards.First(one => one.Id == cut.BoardId);
        var foot = DrawBoard(sketch, order, layout, cut, board, units, new(1, 0), (widthMm - 2) / board.LengthMm, Letter);
        return sketch.Finish("board", "The board with the outlines chalked on it, near edge below", Summary(layout, units) + ".", widthMm, foot - 3 * Letter);
    }

    private static double DrawBoard(
        Sketch sketch, LayoutOrder order, BoardLayout layout, CutBoard cut, RackBoard board, DrawingUnits units, Point corner, double scale, double letter)
    {
        var (left, top) = (corner.X, corner.Y);
        var foot = top + 2.8 * letter + board.WidthMm * scale;
        Point At(double x, double y) => new(left + x * scale, foot - y * scale);
        string Text(double mm) => DrawnLength.Text(mm, units);
        var name = board.Count == 1 ? $"Board {board.Id}" : $"Board {board.Id}, copy {cut.Copy}";
        sketch.Text($"{name}: {Text(board.LengthMm)} × {Text(board.WidthMm)} × {Text(board.ThicknessMm)}; yield {cut.YieldPercent:0.#} %", left, top + letter, letter, strong: true);
        sketch.Path(SheetPath.Rectangle(left, foot - board.WidthMm * scale, board.LengthMm * scale, board.WidthMm * scale), LineKind.Narrow, Layer.Blank, Fill.Wood, css: BoardCss);
        foreach (var defect in board.Defects)
        {
            var corners = defect.Corners().Select(corner => At(Math.Clamp(corner.XMm, 0, board.LengthMm), Math.Clamp(corner.YMm, 0, board.WidthMm)));
            sketch.Path(SheetPath.Polyline(corners, closed: true), LineKind.Narrow, Layer.Marks, css: DefectCss);
        }

        foreach (var offcut in cut.Offcuts)
        {
            var far = At(offcut.XMm, offcut.YMm + offcut.WidthMm);
            sketch.Path(SheetPath.Rectangle(far.X, far.Y, offcut.LengthMm * scale, offcut.WidthMm * scale), LineKind.Fine, Layer.Stations);
            var text = $"off-cut {Text(offcut.LengthMm)} × {Text(offcut.WidthMm)}";
            sketch.Fitted(text, far.X + offcut.LengthMm * scale / 2, far.Y + offcut.WidthMm * scale / 2, letter, offcut.LengthMm * scale - 4);
        }

        var row = foot + 1.6 * letter;
        var places = layout.Placements.Where(one => one.BoardId == cut.BoardId && one.BoardCopy == cut.Copy).OrderByDescending(one => one.YMm);
        foreach (var place in places)
        {
            var paddle = order.PaddleOf(place);
            var sign = place.RotatedDegrees == 0 ? 1 : -1;
            var path = FacePaths.Whole(paddle.Outline, 0, 0).Map(point => At(place.XMm + sign * point.X, place.YMm - sign * point.Y));
            sketch.Path(path, LineKind.Visible, Layer.Outline, css: OutlineCss);
            var (grip, tip) = (place.XMm, place.XMm + sign * paddle.LengthMm);
            sketch.Path(SheetPath.Line(At(grip, place.YMm).X, At(grip, place.YMm).Y, At(tip, place.YMm).X, At(tip, place.YMm).Y), LineKind.Centre, Layer.Centre);
            var middle = At(place.XMm + sign * (paddle.Places.ThroatMm + 0.55 * paddle.Places.BladeMm), place.YMm);
            sketch.Fitted(place.Name, middle.X, middle.Y - 1, letter, paddle.Places.BladeMm * scale * 0.7, strong: true);
            row += 1.8 * letter;
            var along = paddle.IsStrip
                ? $"ends at {Text(Math.Min(grip, tip))} and {Text(Math.Max(grip, tip))}, {Text(2 * paddle.HalfWidthMm)} wide"
                : $"top of the grip at {Text(grip)}, throat at {Text(place.XMm + sign * paddle.Places.ThroatMm)}, tip at {Text(tip)}";
            sketch.Text($"{place.Name}: centre line {Text(place.YMm)} from the near edge; from the left end, {along}", left, row, letter);
        }

        return row + 4 * letter;
    }

    private static string Summary(BoardLayout layout, DrawingUnits units) =>
        $"{layout.Totals.Paddles} {(layout.Totals.Paddles == 1 ? "paddle" : "paddles")} out of {layout.Totals.Boards} {(layout.Totals.Boards == 1 ? "board" : "boards")}, "
        + $"{layout.Totals.BoardFeet:0.##} board feet; {DrawnLength.Text(layout.GapMm, units)} between outlines at least; near edges below";
}
