using System.Globalization;
using Paddle.Design;
using Paddle.Design.Strength;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>Bending moment, share of strength used and bench flex along the paddle.</summary>
internal static class StrengthView
{
    private const double Width = 297;
    private const double Left = 24;
    private const double Right = 282;
    private const double PanelMm = 42;
    private const int CasesInRow = 4;
    private const double CaseMm = 64, RowMm = 11;

    /// <summary>Colours of the cases; each case has its own dashes too, so that colour is never alone.</summary>
    public const string Style = """
        .case0{stroke:#2f6b3a}.case1{stroke:#a03a1a;stroke-dasharray:4 1.2}.case2{stroke:#2b4f81;stroke-dasharray:1.6 1}
        .case3{stroke:#6b4a8a;stroke-dasharray:5 1 1 1}.case4{stroke:#7a5c00;stroke-dasharray:6 1.5 2 1.5}.case5{stroke:#00666b;stroke-dasharray:.8 .8}
        .limit{stroke:#b00020;stroke-dasharray:2 2}.text.limit{stroke:none}
        .line.notice{stroke:#a01818}.text.notice{fill:#a01818}.flex0{stroke:#2c2a26}.wood{fill:#ecdfc8}
        """;

    public static Sheet Draw(DesignReport report, DrawingContext context)
    {
        var (sketch, units) = (new Sketch(), context.Units);
        var curves = StrengthCurves.Of(report.Stations, report.Strength, report.Specification.Loads, report.Specification.Wood);
        var governing = report.Strength.Governing;
        string N(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
        TitleBlock.Heading(
            sketch, context.Label,
            $"{KeyFigures.BladeName(report)} paddle in {KeyFigures.WoodName(report).ToLowerInvariant()}: least safety factor, of asked, {N(governing.SafetyFactor, "0.00")} of {N(governing.Case.LeastFactor, "0.00")}, {governing.Case.Name}, "
            + $"{DrawnLength.Text(governing.AtMm, units)} from the top",
            12, 6, Width - 24, small: true);
        var notice = OutcomeNotice.Draw(sketch, report, units, 12, 6 + TitleBlock.HeadingMm, Width - 24, Lettering.Note);
        var rows = (curves.Cases.Count + CasesInRow - 1) / CasesInRow;
        DrawLegend(sketch, report, curves, notice + 41);

        var overall = report.Specification.Form.Places.OverallMm;
        double X(double x) => Left + (Right - Left) * x / overall;
        var top = notice + 47 + rows * RowMm;
        Panel(sketch, "Bending moment, N·m", curves.XsMm, [.. curves.Cases.Select(c => c.MomentsNm)], "case", null, null, top, X);
        Panel(
            sketch, "Strength used along the grain, % of what the factor asked allows 19 sticks in 20", curves.XsMm,
            [.. curves.Cases.Select(c => c.StressesMPa.Zip(c.StrengthsMPa, (s, strength) => 100 * s * c.Case.LeastFactor / strength).ToArray())],
            "case", 100, "all that is allowed", top + PanelMm + 16, X);
        var inches = units == DrawingUnits.Inch;
        Panel(
            sketch, $"Bench flex under {Loads.BenchN:0} N at the centre of pressure, hands as supports, {(inches ? "in" : "mm")}", curves.XsMm,
            [curves.BenchDeflectionsMm.Select(d => inches ? d / DrawnLength.MmPerInch : d).ToArray()],
            "flex", null, null, top + 2 * (PanelMm + 16), X);
        var foot = top + 3 * (PanelMm + 16) - 8;
        foot = DrawPaddle(sketch, report, units, foot, X);
        var edge = report.Strength.Cases.First(c => !c.Case.BendsAlongTheGrain);
        sketch.Text(
            $"Across the grain, edge press: {N(edge.StressMPa, "0.00")} of {N(edge.StrengthMPa, "0.00")} MPa, factor {N(edge.SafetyFactor, "0.00")}. Bench flex {DrawnLength.Text(report.Flex.BenchFlexMm, units)}, "
            + $"first frequency {N(report.Flex.FirstFrequencyHz, "0.0")} Hz.",
            Left, foot + 6, Lettering.Small);
        return sketch.Finish(
            "strength",
            OutcomeNotice.Titled(report, $"{context.Label}: strength and flex"),
            OutcomeNotice.Described(report, units, $"Bending moment, strength used and bench flex along the paddle. Least safety factor, of asked: {N(governing.SafetyFactor, "0.00")} of {N(governing.Case.LeastFactor, "0.00")} ({governing.Case.Name})."),
            Width,
            foot + 12);
    }

    private static void DrawLegend(Sketch sketch, DesignReport report, StrengthCurves curves, double y)
    {
        for (var i = 0; i < curves.Cases.Count; i++)
        {
            var result = report.Strength.Cases.First(c => c.Case.Id == curves.Cases[i].Case.Id);
            double x = Left + i % CasesInRow * CaseMm, line = y + i / CasesInRow * RowMm;
            sketch.Line(x, line, x + 12, line, LineKind.Visible, Layer.Marks, $"case{i}");
            sketch.Text(result.Case.Name, x + 14, line + 1.2, Lettering.Small);
            sketch.Text(
                FormattableString.Invariant($"{result.Case.ForceN:0} N, factor {result.SafetyFactor:0.00} of {result.Case.LeastFactor:0.00}"), x + 14, line + 5.8, Lettering.Small);
        }
    }

    private static void Panel(
        Sketch sketch, string name, IReadOnlyList<double> xs, IReadOnlyList<IReadOnlyList<double>> lines, string css, double? limit, string? limitName,
        double top, Func<double, double> place)
    {
        double most = Math.Max(lines.Max(line => line.Take(Shown(xs)).Max()), limit ?? 0), least = Math.Min(0, lines.Min(line => line.Min()));
        var step = Ticks.Step((most - least) / 4);
        double high = Math.Ceiling(most / step - 1e-9) * step, low = Math.Floor(least / step + 1e-9) * step;
        double Y(double value) => top + PanelMm * (high - value) / (high - low);
        sketch.Text(name, Left, top - 3, Lettering.Small, strong: true);
        for (var value = low; value <= high + step / 2; value += step)
        {
            sketch.Line(Left, Y(value), Right, Y(value), Math.Abs(value) < step / 2 ? LineKind.Narrow : LineKind.Fine, Layer.Stations);
            sketch.Text(Math.Round(value, 6).ToString("0.####", CultureInfo.InvariantCulture), Left - 2, Y(value) + 1.2, Lettering.Small, Anchor.End);
        }

        for (var i = 0; i < lines.Count; i++)
        {
            var line = lines[i];
            sketch.Path(
                SheetPath.Polyline(Enumerable.Range(0, Shown(xs)).Select(k => new Point(place(xs[k]), Y(line[k])))),
                LineKind.Visible, Layer.Marks, css: css + i);
        }

        if (limit is not { } at) return;
        sketch.Line(Left, Y(at), Right, Y(at), LineKind.Narrow, Layer.Marks, "limit");
        sketch.Text(limitName!, Right - 1, Y(at) - 1.2, Lettering.Small, Anchor.End);
    }

    // At the very tip the section closes and a thrust on it is a matter of bearing, not of bending: the curves end 1 % short of it.
    private static int Shown(IReadOnlyList<double> xs) => xs.Count(x => x <= 0.99 * xs[^1]);

    private static double DrawPaddle(Sketch sketch, DesignReport report, DrawingUnits units, double y, Func<double, double> place)
    {
        var scale = place(1) - place(0);
        var half = scale * report.Specification.Form.Blade.HalfWidthMm;
        sketch.Path(
            FacePaths.Whole(report.Outline, 0, 0).Map(p => new(place(p.X), y + half + scale * p.Y)), LineKind.Narrow, Layer.Outline, Fill.Wood, css: "wood");
        var marks = Landmarks.Of(report).Where(mark => mark.Name is "Top hand" or "Lower hand").ToList();
        marks.Add(new("Centre of pressure", report.Stroke.CentreOfPressureMm));
        foreach (var mark in marks)
        {
            var x = place(mark.XMm);
            sketch.Line(x, y - 2, x, y + 2 * half + 2, LineKind.Narrow, Layer.Marks);
            sketch.Text(mark.Text(units), x, y + 2 * half + 6, Lettering.Small, mark.XMm < 100 ? Anchor.Start : Anchor.Middle);
        }

        return y + 2 * half + 8;
    }

}
