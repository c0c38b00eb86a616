using System.Globalization;
using Paddle.Design.Fitting;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>The customers by overall length, the sizes drawn on them, and what each further size buys.</summary>
internal static class SizeRunView
{
    private const double Width = 297;
    private const double Left = 24;
    private const double Right = 282;
    private const double PanelMm = 90;
    private const double RowMm = 5;
    /// <summary>Class of a bar's path, by which a program finds it.</summary>
    public const string BarCss = "bar";
    /// <summary>Class of a size's line.</summary>
    public const string SizeCss = "size";

    public static Sheet Draw(SizeRunAdvice advice, DrawingContext context)
    {
        var (sketch, units, bars) = (new Sketch(), context.Units, advice.Histogram);
        TitleBlock.Heading(sketch, context.Label, Summary(advice, units), 12, 6, Width - 24, small: true);

        // Stock may end before the customers do: a size outside the bars still has its place.
        double low = Math.Min(bars[0].LowMm, advice.Sizes[0].OverallLengthMm), high = Math.Max(bars[^1].HighMm, advice.Sizes[^1].OverallLengthMm);
        double X(double lengthMm) => Left + (Right - Left) * (lengthMm - low) / (high - low);
        string[] texts = [.. advice.Sizes.Select(size => Text(size, units))];
        double[] xs = [.. advice.Sizes.Select(size => X(size.OverallLengthMm))];
        var rows = Landmarks.Rows(xs, [.. texts.Select(text => Lettering.WidthMm(text, Lettering.Small) + 4)]);
        var top = 40 + (rows.Max() + 1) * RowMm;

        DrawBars(sketch, bars, top, X);
        for (var i = 0; i < xs.Length; i++)
        {
            // The lettering runs to the right of its line, but for one that would leave the sheet.
            var baseline = top - 3 - rows[i] * RowMm;
            var fits = xs[i] + 1.5 + Lettering.WidthMm(texts[i], Lettering.Small) <= Width - 4;
            sketch.Line(xs[i], baseline - 3, xs[i], top + PanelMm, LineKind.Visible, Layer.Marks, SizeCss);
            sketch.Text(texts[i], xs[i] + (fits ? 1.5 : -1.5), baseline, Lettering.Small, fits ? Anchor.Start : Anchor.End, Layer.Marks, strong: true);
        }

        DrawScale(sketch, low, high, units, top + PanelMm, X);
        var foot = top + PanelMm + 18;
        foot = DrawCurve(sketch, advice, units, foot);
        sketch.Text($"Engine {context.EngineVersion}", Left, foot, Lettering.Small);
        return sketch.Finish("size-run", $"{context.Label}: size run", Describe(advice, units), Width, foot + 6);
    }

    private static void DrawBars(Sketch sketch, IReadOnlyList<HistogramBin> bars, double top, Func<double, double> place)
    {
        var most = Math.Max(bars.Max(bar => bar.Share), 1e-9);
        double foot = top + PanelMm, step = Ticks.Step(100 * most / 4) / 100, high = Math.Ceiling(most / step - 1e-9) * step;
        for (var share = 0.0; share <= high + step / 2; share += step)
        {
            var y = foot - PanelMm * share / high;
            sketch.Line(Left, y, Right, y, share == 0 ? LineKind.Narrow : LineKind.Fine, Layer.Stations);
            sketch.Text(Number(100 * share, "0.##"), Left - 2, y + 1.2, Lettering.Small, Anchor.End);
        }

        sketch.Text("% of the customers", Left - 14, foot - PanelMm / 2, Lettering.Small, Anchor.Middle, turn: -90);
        foreach (var bar in bars)
        {
            double x = place(bar.LowMm), tall = PanelMm * bar.Share / high;
            sketch.Path(SheetPath.Rectangle(x, foot - tall, place(bar.HighMm) - x, tall), LineKind.Fine, Layer.Outline, Fill.Wood, css: BarCss);
        }
    }

    private static void DrawScale(Sketch sketch, double low, double high, DrawingUnits units, double foot, Func<double, double> place)
    {
        var step = Ticks.StepMm((high - low) / 8, units);
        for (var k = Math.Ceiling(low / step - 1e-9); k * step <= high + 1e-9; k++)
        {
            sketch.Line(place(k * step), foot, place(k * step), foot + 1.5, LineKind.Narrow, Layer.Stations);
            sketch.Text(DrawnLength.Figure(k * step, units), place(k * step), foot + 5.5, Lettering.Small, Anchor.Middle);
        }

        sketch.Text($"Overall length that fits, {DrawnLength.UnitName(units)}", (Left + Right) / 2, foot + 11, Lettering.Small, Anchor.Middle);
    }

    private static double DrawCurve(Sketch sketch, SizeRunAdvice advice, DrawingUnits units, double y)
    {
        sketch.Text("Sizes", Left, y, Lettering.Small, strong: true);
        sketch.Text("Mean misfit", Left, y + RowMm, Lettering.Small, strong: true);
        sketch.Text("Last size buys", Left, y + 2 * RowMm, Lettering.Small, strong: true);
        foreach (var point in advice.Curve)
        {
            var x = Left + 32 + (point.Sizes - 1) * 28;
            var strong = point.Sizes == advice.Sizes.Count;
            sketch.Text(Number(point.Sizes, "0"), x, y, Lettering.Small, strong: strong);
            sketch.Text(DrawnLength.Text(point.MeanMisfitMm, units), x, y + RowMm, Lettering.Small, strong: strong);
            if (point.GainMm is { } gain) sketch.Text(DrawnLength.Text(gain, units), x, y + 2 * RowMm, Lettering.Small, strong: strong);
        }

        return y + 3 * RowMm + 3;
    }

    private static string Text(FleetSize size, DrawingUnits units) =>
        DrawnLength.Text(size.OverallLengthMm, units) + (size.Count is { } count ? $" × {Number(count, "0")}" : "") + $", {Number(100 * size.Share, "0")} %";

    private static string Summary(SizeRunAdvice advice, DrawingUnits units) =>
        $"{Number(advice.Sizes.Count, "0")} {(advice.Sizes.Count == 1 ? "size" : "sizes")}: mean misfit {DrawnLength.Text(advice.MeanMisfitMm, units)}; "
        + $"{Number(100 * advice.Within25MmShare, "0")} % within {DrawnLength.Text(25, units)}, {Number(100 * advice.Within50MmShare, "0")} % within {DrawnLength.Text(50, units)}";

    private static string Describe(SizeRunAdvice advice, DrawingUnits units) =>
        $"Histogram of customers by the overall length that fits them. Sizes: {string.Join("; ", advice.Sizes.Select(size => Text(size, units)))}. {Summary(advice, units)}.";

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
