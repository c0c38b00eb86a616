using Paddle.Design;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>One picture of the whole design for a web page: face, edge, sections and key figures; not to scale, light or dark as the reader prefers.</summary>
internal static class OverviewView
{
    private const double Width = 960;
    private const double Margin = 24;
    private const double Text = 9;
    private const double Small = 7.5;

    /// <summary>Colours for light and for dark pages, and lines that stay as thick when the picture grows.</summary>
    public const string Style = """
        .paper{fill:#fdfcf9}.line{stroke:#2c2a26;stroke-width:1.1}.fine{stroke:#2c2a26;stroke-width:.6;opacity:.45}.text{fill:#2c2a26}.soft{fill:#5f5a50}
        .wood{fill:#e8d5b0;stroke:#4a3a20;stroke-width:1.4}.ink{fill:#2c2a26}
        .line.notice{stroke:#a01818;stroke-width:2}.text.notice{fill:#a01818}
        @media (prefers-color-scheme:dark){.paper{fill:#1a1c1e}.line{stroke:#e6e2da}.fine{stroke:#e6e2da}.text{fill:#f1ede4}.soft{fill:#b9b3a6}
        .wood{fill:#7d6339;stroke:#f0dcb4}.ink{fill:#f1ede4}
        .line.notice{stroke:#ff9d8a}.text.notice{fill:#ff9d8a}}
        """;

    public static Sheet Draw(DesignReport report, DrawingContext context)
    {
        var (form, units, sketch) = (report.Specification.Form, context.Units, new Sketch());
        var scale = (Width - 2 * Margin) / form.Places.OverallMm;
        var label = Lettering.Safe(context.Label);
        sketch.Text(label, Margin, Margin + 14, Lettering.FitHeightMm(label, 16, Width - 2 * Margin), strong: true);
        sketch.Text(
            $"{KeyFigures.BladeName(report)} paddle in {KeyFigures.WoodName(report).ToLowerInvariant()}", Margin, Margin + 33, 10, css: "soft");

        var notice = OutcomeNotice.Draw(sketch, report, units, Margin, Margin + 42, Width - 2 * Margin, Text);
        var half = scale * Math.Max(form.Blade.HalfWidthMm, form.Grip.WidthMm / 2);
        var face = Margin + 70 + notice + 2 * 14 + half;
        DrawFace(sketch, report, units, scale, face, half);
        var edge = DrawEdge(sketch, report, scale, face + half + 34);
        var sections = DrawSections(sketch, report, units, edge + 22);
        var bottom = DrawFigures(sketch, report, context, sections + 12);
        return sketch.Finish(
            "overview", OutcomeNotice.Titled(report, label), OutcomeNotice.Described(report, units, Describe(report, context)), Width, bottom + Margin);
    }

    private static string Describe(DesignReport report, DrawingContext context) =>
        string.Join("; ", KeyFigures.Of(report, context).Select(figure => $"{figure.Name.ToLowerInvariant()} {figure.Value}"))
        + ". Face, edge and sections of the paddle, grip to the left.";

    private static void DrawFace(Sketch sketch, DesignReport report, DrawingUnits units, double scale, double centre, double half)
    {
        Point Put(Point p) => new(Margin + scale * p.X, centre + scale * p.Y);
        var marks = Landmarks.Of(report).Where(mark => mark.Name != "Widest").ToArray();
        var texts = marks.Select(mark => mark.Text(units)).ToArray();
        var rows = Landmarks.Rows(
            [.. marks.Select(mark => scale * mark.XMm)], [.. texts.Select(text => Lettering.WidthMm(text, Small) + 8)]);
        sketch.Path(FacePaths.Whole(report.Outline, 0, 0).Map(Put), LineKind.Visible, Layer.Outline, Fill.Wood, css: "wood");
        sketch.Line(Margin - 8, centre, Width - Margin + 8, centre, LineKind.Centre, Layer.Centre, "fine");
        for (var i = 0; i < marks.Length; i++)
        {
            var x = Margin + scale * marks[i].XMm;
            var baseline = centre - half - 8 - rows[i] * 14;
            sketch.Line(x, baseline - 7, x, centre + scale * report.Outline.HalfBreadthMm(marks[i].XMm) + 4, LineKind.Narrow, Layer.Marks, "fine");
            sketch.Text(texts[i], x + 4, baseline, Small);
        }

        Landmarks.DrawBalance(sketch, Margin + scale * Landmarks.BalanceXMm(report), centre, 5, "ink");
        var places = report.Specification.Form.Places;
        double y = centre + half + 16, throat = Margin + scale * places.ThroatMm, end = Width - Margin;
        Span(sketch, throat, end, y, DrawnLength.Text(places.BladeMm, units) + " blade");
        Span(sketch, Margin, throat, y, DrawnLength.Text(places.ThroatMm, units) + " grip and shaft");
    }

    private static void Span(Sketch sketch, double x0, double x1, double y, string text)
    {
        var wide = Lettering.WidthMm(text, Small) / 2 + 4;
        var middle = (x0 + x1) / 2;
        sketch.Line(x0 + 1, y, middle - wide, y, LineKind.Narrow, Layer.Marks, "fine");
        sketch.Line(middle + wide, y, x1 - 1, y, LineKind.Narrow, Layer.Marks, "fine");
        sketch.Line(x0 + 1, y - 4, x0 + 1, y + 4, LineKind.Narrow, Layer.Marks, "fine");
        sketch.Line(x1 - 1, y - 4, x1 - 1, y + 4, LineKind.Narrow, Layer.Marks, "fine");
        sketch.Text(text, middle, y + 3.5, Small, Anchor.Middle);
    }

    private static double DrawEdge(Sketch sketch, DesignReport report, double scale, double top)
    {
        var profile = new EdgeProfile(report);
        var silhouette = profile.Silhouette();
        double high = scale * silhouette.Max(p => p.Y), low = scale * silhouette.Min(p => p.Y);
        var centre = top + high;
        Point Put(Point p) => new(Margin + scale * p.X, centre - scale * p.Y);
        sketch.Path(SheetPath.Polyline(silhouette.Select(Put), closed: true), LineKind.Visible, Layer.Outline, Fill.Wood, css: "wood");
        foreach (var side in (int[])[1, -1])
            sketch.Path(SheetPath.Polyline(profile.EdgeLine(side).Select(Put)), LineKind.Narrow, Layer.Outline, css: "fine");
        return centre - low;
    }

    private static double DrawSections(Sketch sketch, DesignReport report, DrawingUnits units, double top)
    {
        string[] names = ["Grip at its crest", "Lower hand to throat", "Blade, shoulder", "Blade at a quarter", "Blade at half", "Blade near the tip"];
        var places = SectionPlan.Of(report).Where(place => names.Contains(place.Name)).ToArray();
        const double Gap = 22;
        var wide = places.Sum(place => 2 * place.Section.HalfWidthMm);
        var scale = (Width - 2 * Margin - Gap * (places.Length - 1)) / wide;
        scale = Math.Min(scale, 1.6);
        var tallest = scale * places.Max(place => place.Section.HalfThicknessMm);
        double x = Margin, centre = top + tallest;
        foreach (var place in places)
        {
            var half = scale * place.Section.HalfWidthMm;
            var at = x + half;
            sketch.Path(
                SheetPath.Polyline(SectionPaths.Closed(place.Section, 14).Select(p => new Point(at + scale * p.X, centre - scale * p.Y)), closed: true),
                LineKind.Visible, Layer.Sections, Fill.Wood, css: "wood");
            var size = DrawnLength.Text(2 * place.Section.HalfThicknessMm, units, LengthRounding.Up);
            sketch.Text(size, at, centre + tallest + 13, Small, Anchor.Middle);
            sketch.Text(ShortName(place.Name), at, centre + tallest + 25, Small, Anchor.Middle, css: "soft");
            x += 2 * half + Gap;
        }

        return centre + tallest + 30;
    }

    private static string ShortName(string name) => name switch
    {
        "Grip at its crest" => "grip",
        "Lower hand to throat" => "shaft",
        "Blade, shoulder" => "shoulder",
        "Blade at a quarter" => "¼ blade",
        "Blade at half" => "½ blade",
        _ => "near tip",
    };

    private static double DrawFigures(Sketch sketch, DesignReport report, DrawingContext context, double top)
    {
        const int Columns = 4;
        const double Row = 36;
        var figures = KeyFigures.Of(report, context);
        var column = (Width - 2 * Margin) / Columns;
        sketch.Line(Margin, top, Width - Margin, top, LineKind.Narrow, Layer.Text, "fine");
        for (var i = 0; i < figures.Count; i++)
        {
            double x = Margin + i % Columns * column, y = top + 16 + i / Columns * Row;
            sketch.Text(figures[i].Name, x, y, Lettering.FitHeightMm(figures[i].Name, Small, column - 8), css: "soft");
            sketch.Text(figures[i].Value, x, y + 14, Lettering.FitHeightMm(figures[i].Value, Text, column - 8), strong: true);
        }

        return top + 10 + (figures.Count + Columns - 1) / Columns * Row - 14;
    }
}
