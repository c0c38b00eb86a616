using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>Dimension lines with slim arrowheads, the figure above the line.</summary>
internal static class Dimension
{
    private const double ArrowMm = 3;

    /// <summary>A level dimension between two places.</summary>
    public static void Level(Sketch sketch, double x0, double x1, double y, string text, double height = Lettering.Figure)
    {
        sketch.Line(x0, y, x1, y, LineKind.Narrow, Layer.Marks);
        Arrow(sketch, x0, y, 1, 0);
        Arrow(sketch, x1, y, -1, 0);
        sketch.Text(text, (x0 + x1) / 2, y - 1.5, Lettering.FitHeightMm(text, height, Math.Max(8, x1 - x0 - 2 * ArrowMm)), Anchor.Middle);
    }

    /// <summary>An arrowhead at a place, its body lying in the given direction.</summary>
    public static void Arrow(Sketch sketch, double x, double y, double dx, double dy)
    {
        const double Half = ArrowMm / 6;
        sketch.Path(
            SheetPath.Polyline(
                [
                    new(x, y),
                    new(x + ArrowMm * dx - Half * dy, y + ArrowMm * dy + Half * dx),
                    new(x + ArrowMm * dx + Half * dy, y + ArrowMm * dy - Half * dx),
                ],
                closed: true),
            LineKind.Fine,
            Layer.Marks,
            Fill.Ink);
    }
}
