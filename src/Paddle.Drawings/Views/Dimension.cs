using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Design.Units;
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

/// <summary>Round steps for the scales of a graph.</summary>
internal static class Ticks
{
    /// <summary>1, 2 or 5 times a power of ten, at least the wanted step.</summary>
    public static double Step(double wanted)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(Math.Max(wanted, 1e-9))));
        return wanted <= power ? power : wanted <= 2 * power ? 2 * power : wanted <= 5 * power ? 5 * power : 10 * power;
    }

    /// <summary>The same for lengths, mm. Below an inch it goes by halves down to a sixteenth, which the fractions lettered beside it name exactly:
    /// there is no 0.2 in on a rule.</summary>
    public static double StepMm(double wantedMm, DrawingUnits units)
    {
        if (units == DrawingUnits.Metric) return Step(wantedMm);
        var wanted = wantedMm / DrawnLength.MmPerInch;
        return DrawnLength.MmPerInch * (wanted > 0.5 ? Step(wanted) : Math.Max(1.0 / 16, Math.Pow(2, Math.Ceiling(Math.Log2(Math.Max(wanted, 1e-9))))));
    }
}

/// <summary>An even station of a drawing and the room that its figures have to either neighbour, mm.</summary>
internal readonly record struct StationRoom(double XMm, double RoomMm);

/// <summary>The even stations of a drawing: the same places as on the build sheet and in the table of offsets.</summary>
internal static class StationText
{
    private const double GapMm = 5;

    /// <summary>The stations in order.</summary>
    public static IReadOnlyList<StationRoom> Places(DesignReport report, DrawingUnits units)
    {
        double[] xs = [.. StationPlan.Even(report.Specification.Form, units)];
        return
        [
            .. xs.Select((x, i) => new StationRoom(
                x, Math.Min(i > 0 ? x - xs[i - 1] : double.PositiveInfinity, i + 1 < xs.Length ? xs[i + 1] - x : double.PositiveInfinity) - GapMm)),
        ];
    }
}
