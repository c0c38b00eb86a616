using Paddle.Design;
using Paddle.Design.Comparison;
using Paddle.Design.Solid;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>Designs laid over one another: half outlines, and thicknesses along the spine, with the tops of the grips together.</summary>
internal static class ComparisonView
{
    private const double Width = 297;
    private const double Left = 24;
    private const double Right = 282;
    private const double PanelMm = 52;
    private const double RowMm = 5.5;

    /// <summary>Class of a design's lines, before its number.</summary>
    public const string Css = "paddle";

    /// <summary>Colours of the designs; each has its own dashes too, so that colour is never alone.</summary>
    public static string Style { get; } = string.Concat(Looks.Select((look, k) =>
        $".{Css}{k}{{stroke:{look.Colour}{(look.Dashes.Length > 0 ? $";stroke-dasharray:{look.Dashes}" : "")}}}"));

    private static IEnumerable<(string Colour, string Dashes)> Looks
    {
        get
        {
            // Six colours and four kinds of dashes: twelve pairs, and lines that lie on one another show by turns.
            string[] colours = ["#1f1d1a", "#a03a1a", "#2b4f81", "#2f6b3a", "#6b4a8a", "#8a6d1c"], dashes = ["", "5 2", "1.5 1.5", "6 1.5 1.5 1.5"];
            return Enumerable.Range(0, 12).Select(k => (colours[k % 6], dashes[k % 4]));
        }
    }

    public static Sheet Draw(IReadOnlyList<ComparedPaddle> designs, DrawingContext context)
    {
        var (sketch, units) = (new Sketch(), context.Units);
        TitleBlock.Heading(
            sketch, context.Label, "Half outlines and thicknesses laid over one another, the tops of the grips together; across, both are drawn larger than along",
            12, 6, Width - 24, small: true);
        var overallMm = designs.Max(one => one.Report.Specification.Form.Places.OverallMm);
        double X(double xMm) => Left + (Right - Left) * xMm / overallMm;
        var top = 38 + DrawLegend(sketch, designs, units, 40);
        Panel(sketch, "Half-breadth", designs, solid => solid.HalfWidth, units, top, X);
        Panel(sketch, "Thickness along the spine", designs, solid => solid.HalfThickness.Select(half => 2 * half), units, top + PanelMm + 14, X);
        var foot = top + 2 * PanelMm + 14;
        DrawScale(sketch, overallMm, units, foot, X);
        sketch.Text($"Engine {context.EngineVersion}", Left, foot + 17, Lettering.Small);
        return sketch.Finish("comparison", $"{context.Label}: designs side by side", Describe(designs, units), Width, foot + 21);
    }

    private static double DrawLegend(Sketch sketch, IReadOnlyList<ComparedPaddle> designs, DrawingUnits units, double y)
    {
        var column = (Right - Left) / 2;
        for (var k = 0; k < designs.Count; k++)
        {
            double x = Left + k % 2 * column, at = y + k / 2 * RowMm;
            sketch.Line(x, at - 1, x + 12, at - 1, LineKind.Visible, Layer.Marks, $"{Css}{k}");
            var text = Caption(designs[k], units);
            sketch.Text(text, x + 14, at, Lettering.FitHeightMm(text, Lettering.Small, column - 18));
        }

        return (designs.Count + 1) / 2 * RowMm + 6;
    }

    private static void Panel(
        Sketch sketch, string name, IReadOnlyList<ComparedPaddle> designs, Func<PaddleSolid, IEnumerable<double>> read,
        DrawingUnits units, double top, Func<double, double> place)
    {
        PaddleSolid[] solids = [.. designs.Select(one => Fine(one.Report))];
        var most = solids.Max(solid => read(solid).Max());
        var step = Ticks.StepMm(most / 4, units);
        var high = Math.Ceiling(most / step - 1e-9) * step;
        double Y(double mm) => top + PanelMm * (1 - mm / high);
        sketch.Text($"{name}, {DrawnLength.UnitName(units)}", Left, top - 3, Lettering.Small, strong: true);
        for (var value = 0.0; value <= high + step / 2; value += step)
        {
            sketch.Line(Left, Y(value), Right, Y(value), value == 0 ? LineKind.Narrow : LineKind.Fine, Layer.Stations);
            sketch.Text(DrawnLength.Figure(value, units), Left - 2, Y(value) + 1.2, Lettering.Small, Anchor.End);
        }

        for (var k = 0; k < solids.Length; k++)
            sketch.Path(SheetPath.Polyline(solids[k].X.Zip(read(solids[k]), (x, value) => new Point(place(x), Y(value)))), LineKind.Visible, Layer.Outline, css: $"{Css}{k}");
    }

    private static PaddleSolid Fine(DesignReport report) => new EdgeProfile(report).Solid;

    private static void DrawScale(Sketch sketch, double overallMm, DrawingUnits units, double foot, Func<double, double> place)
    {
        var step = Ticks.StepMm(overallMm / 8, units);
        for (var at = 0.0; at <= overallMm + 1e-9; at += step)
        {
            sketch.Line(place(at), foot, place(at), foot + 1.5, LineKind.Narrow, Layer.Stations);
            sketch.Text(DrawnLength.Figure(at, units), place(at), foot + 5.5, Lettering.Small, Anchor.Middle);
        }

        sketch.Text($"From the top of the grip, {DrawnLength.UnitName(units)}", (Left + Right) / 2, foot + 10.5, Lettering.Small, Anchor.Middle);
    }

    private static string Caption(ComparedPaddle one, DrawingUnits units) =>
        $"{one.Id}: {DrawnLength.Text(one.Report.Specification.Form.Places.OverallMm, units)}, {KeyFigures.BladeName(one.Report).ToLowerInvariant()}, "
        + $"{KeyFigures.WoodName(one.Report).ToLowerInvariant()}, {DrawnAmount.Mass(one.Report.Finished.MassG, units)}, balances {KeyFigures.FromHand(one.Report, one.Report.Finished.CentreOfMassMm, units)}";

    private static string Describe(IReadOnlyList<ComparedPaddle> designs, DrawingUnits units) =>
        $"Half outlines and spine thicknesses of {designs.Count} designs laid over one another. {string.Join(". ", designs.Select(one => Caption(one, units)))}.";
}
