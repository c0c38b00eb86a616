using Paddle.Design.Units;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

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
