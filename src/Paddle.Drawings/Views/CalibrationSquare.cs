using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>A square to measure after printing: printers stretch, sometimes one way only.</summary>
internal static class CalibrationSquare
{
    public const double SideMm = 100;

    /// <summary>Accepted error on each side, mm; common practice, no source.</summary>
    public const double ToleranceMm = 0.5;

    /// <summary>Draws the square with its top left corner at a place.</summary>
    public static void Draw(Sketch sketch, double x, double y)
    {
        sketch.Path(SheetPath.Rectangle(x, y, SideMm, SideMm), LineKind.Narrow, Layer.Calibration, id: "calibration-square");
        sketch.Line(x, y + SideMm / 2, x + SideMm, y + SideMm / 2, LineKind.Fine, Layer.Calibration);
        sketch.Line(x + SideMm / 2, y, x + SideMm / 2, y + SideMm, LineKind.Fine, Layer.Calibration);
        sketch.Text("Check both ways", x + 4, y + 10, Lettering.Note, layer: Layer.Calibration);
        sketch.Text("100 mm, within 0.5", x + 4, y + 17, Lettering.Note, layer: Layer.Calibration);
        Bar(sketch, x, y + SideMm - 12);
    }

    // Four inches overshoot the square, so the bar is three.
    private static void Bar(Sketch sketch, double x, double y)
    {
        const double Inch = 25.4;
        for (var k = 0; k <= 3; k++) sketch.Line(x + k * Inch, y - (k % 3 == 0 ? 5 : 3), x + k * Inch, y, LineKind.Narrow, Layer.Calibration);
        sketch.Line(x, y, x + 3 * Inch, y, LineKind.Narrow, Layer.Calibration);
        sketch.Text("3 in", x + 3 * Inch + 2, y, Lettering.Note, layer: Layer.Calibration);
    }
}
