using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>The face with the zones that wood is to come off, how deep it goes along the paddle, and where it balances before and after.</summary>
internal static class CorrectionView
{
    private const double Width = 960;
    private const double Margin = 24;
    private const double Text = 10;
    private const double Line = 17;
    private const double DepthMost = 30;
    /// <summary>Class of what is to come off, by which a program finds it.</summary>
    public const string CutCss = "cut";

    /// <summary>Light and dark, as the overview; what comes off is in red pencil.</summary>
    public const string Style = OverviewView.Style + """
        .line.cut{stroke:#a5381a;stroke-width:1.2;fill:#a5381a;fill-opacity:.3}.text.cut{fill:#8f2d12}
        @media (prefers-color-scheme:dark){.line.cut{stroke:#ff9d7a;fill:#ff9d7a}.text.cut{fill:#ffb296}}
        """;

    /// <summary>Draws it.</summary>
    /// <param name="stage">The stage that it was asked at.</param>
    public static Sheet Draw(DesignReport report, BalanceCorrection correction, BuildStage stage, DrawingContext context)
    {
        var (sketch, words) = (new Sketch(), new CorrectionWords(report, stage, correction));
        var label = Lettering.Safe(context.Label);
        sketch.Text("Where to take wood", Margin, Margin + 14, 15, strong: true);
        var what = $"{label}, {BuildStages.Title(stage).ToLowerInvariant()}";
        sketch.Text(what, Margin, Margin + 33, Lettering.FitHeightMm(what, Text, Width - 2 * Margin), css: "soft");
        var y = Margin + 56;
        string[] said = [words.Summary, .. words.Doubts.Select(doubt => doubt.Text)];
        foreach (var line in said.SelectMany(text => OutcomeNotice.Wrap([text], Text, Width - 2 * Margin)))
        {
            sketch.Text(line, Margin, y, Text, strong: true);
            y += Line;
        }

        y = DrawFace(sketch, report, correction, context, y);
        y = DrawDepths(sketch, report, correction, y);
        return sketch.Finish(
            "correction", $"Where to take wood: {what}", $"{string.Join(' ', said)} {string.Join(' ', correction.Removals.Select(words.How))}".Trim(), Width,
            DrawLegend(sketch, correction, words, y));
    }

    private static double DrawFace(Sketch sketch, DesignReport report, BalanceCorrection correction, DrawingContext context, double top)
    {
        var form = report.Specification.Form;
        var scale = Scale(report);
        Landmark[] marks =
        [
            .. new (string Name, double? AlongShaftMm)[]
            {
                ("Aim", correction.AimMm),
                ("Planed to plan", correction.Outlook?.Finished.BalanceMm),
                ("After the cut", correction.Removals.Count > 0 ? correction.Outlook?.Corrected.BalanceMm : null),
            }.Where(mark => mark.AlongShaftMm is not null)
                .Select(mark => new Landmark(mark.Name, Landmarks.OnCentreLineMm(form, mark.AlongShaftMm!.Value))).OrderBy(mark => mark.XMm),
        ];
        string[] texts = [.. marks.Select(mark => $"{mark.Name} {DrawnLength.Rough(form.AlongShaftMm(mark.XMm), context.Units)}")];
        var rows = Landmarks.Rows([.. marks.Select(mark => scale * mark.XMm)], [.. texts.Select(text => Lettering.WidthMm(text, Text) + 8)]);
        var half = scale * Math.Max(form.Blade.HalfWidthMm, form.Grip.WidthMm / 2);
        var centre = top + 6 + (rows.Max() + 1) * Line + half;
        Point Put(Point p) => new(Margin + scale * p.X, centre + scale * p.Y);
        sketch.Path(FacePaths.Whole(report.Outline, 0, 0).Map(Put), LineKind.Visible, Layer.Outline, Fill.Wood, css: "wood");

        // It runs out to nothing at the edges and where the zone ends: no part of the edge is touched.
        var stations = report.Stations;
        foreach (var cut in correction.Removals)
        {
            var within = Reach(report, cut);
            double Half(int i) => 0.9 * stations.HalfWidth[i] * CorrectionZones.Share(cut.Zone, stations.Grid.Patterns[i]);
            var there = within.Select(i => Put(new(stations.X[i], -Half(i))));
            var back = within.Reverse().Select(i => Put(new(stations.X[i], Half(i))));
            sketch.Path(SheetPath.Polyline(there.Concat(back), closed: true), LineKind.Narrow, Layer.Marks, css: CutCss);
        }

        sketch.Line(Margin - 8, centre, Width - Margin + 8, centre, LineKind.Centre, Layer.Centre, "fine");
        for (var i = 0; i < marks.Length; i++)
        {
            double x = Margin + scale * marks[i].XMm, baseline = centre - half - 6 - rows[i] * Line;
            sketch.Line(x, baseline - Text, x, centre + 9, LineKind.Narrow, Layer.Marks, "fine");
            sketch.Text(texts[i], x + 4, baseline, Text, strong: marks[i].Name == "Aim");
        }

        Landmarks.DrawBalance(sketch, Margin + scale * Landmarks.OnCentreLineMm(form, correction.AimMm), centre, 5, "ink");
        return centre + half;
    }

    // How deep, along the paddle: the deepest cut fills the strip, whatever it is, for a tenth of a millimetre is to be seen as well.
    private static double DrawDepths(Sketch sketch, DesignReport report, BalanceCorrection correction, double top)
    {
        if (correction.Removals.Count == 0) return top + 8;
        double scale = Scale(report), ground = top + 26, deepest = correction.Removals.Max(cut => cut.PerFaceMm);
        sketch.Line(Margin, ground, Width - Margin, ground, LineKind.Narrow, Layer.Marks, "fine");
        for (var k = 0; k < correction.Removals.Count; k++)
        {
            var cut = correction.Removals[k];
            var within = Reach(report, cut);
            double Share(int i) => CorrectionZones.Share(cut.Zone, report.Stations.Grid.Patterns[i]);
            double X(int i) => Margin + scale * report.Stations.X[i];
            var depth = within.Select(i => new Point(X(i), ground + DepthMost * cut.PerFaceMm / deepest * Share(i)));
            sketch.Path(
                SheetPath.Polyline([new(X(within[0]), ground), .. depth, new(X(within[^1]), ground)], closed: true), LineKind.Narrow, Layer.Marks, css: CutCss);
            var heart = within.Where(i => Share(i) > 0.95 * within.Max(Share)).Average(X);
            sketch.Text(Letter(k), heart, ground - 6, Text, Anchor.Middle, strong: true, css: CutCss);
        }

        sketch.Text("Depth off each face, drawn larger", Width - Margin, ground + DepthMost + 14, 8, Anchor.End, css: "soft");
        return ground + DepthMost + 22;
    }

    private static double DrawLegend(Sketch sketch, BalanceCorrection correction, CorrectionWords words, double top)
    {
        for (var k = 0; k < correction.Removals.Count; k++)
        {
            var text = words.Brief(correction.Removals[k]);
            var y = top + 12 + k * (Line + 3);
            sketch.Text(Letter(k), Margin, y, Text, strong: true, css: CutCss);
            sketch.Text(text, Margin + 22, y, Lettering.FitHeightMm(text, Text, Width - 2 * Margin - 22));
        }

        return top + 12 + correction.Removals.Count * (Line + 3) + 4;
    }

    private static int[] Reach(DesignReport report, Removal cut)
    {
        var stations = report.Stations;
        return [.. Enumerable.Range(0, stations.Count).Where(i => CorrectionZones.Share(cut.Zone, stations.Grid.Patterns[i]) > 1e-3)];
    }

    private static double Scale(DesignReport report) => (Width - 2 * Margin) / report.Specification.Form.Places.OverallMm;

    private static string Letter(int k) => ((char)('A' + k)).ToString();
}
