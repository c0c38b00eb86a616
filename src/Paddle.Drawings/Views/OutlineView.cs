using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>The face of the paddle at true scale, grip to the left, with its marks, stations and key figures.</summary>
internal static class OutlineView
{
    private const double Margin = 20;
    private const double RowHeaderMm = 40;
    private const double FigureRowMm = 8;
    /// <summary>Id of the outline's path, by which a program finds it.</summary>
    public const string PathId = "paddle-outline";
    /// <summary>x of the top of the grip on the sheet, mm.</summary>
    public const double OriginX = Margin + RowHeaderMm;

    public static Sheet Draw(DesignReport report, DrawingContext context)
    {
        var (places, units, sketch) = (report.Specification.Form.Places, context.Units, new Sketch());
        var half = report.Specification.Form.Blade.HalfWidthMm;
        double width = OriginX + places.OverallMm + Margin, inner = width - 2 * Margin;
        TitleBlock.Heading(sketch, context.Label, $"{KeyFigures.BladeName(report)} paddle: outline on the face, true scale", Margin, Margin, inner);

        var marks = Landmarks.Of(report);
        var texts = marks.Select(mark => mark.Text(units)).ToArray();
        var rows = Landmarks.Rows(
            [.. marks.Select(mark => mark.XMm)], [.. texts.Select(text => Lettering.WidthMm(text, Lettering.Figure) + 5)]);
        var notice = OutcomeNotice.Draw(sketch, report, units, Margin, Margin + TitleBlock.HeadingMm, inner, Lettering.Figure);
        var top = Margin + TitleBlock.HeadingMm + notice + (rows.Max() + 1) * Landmarks.RowMm + 4;
        var centre = top + Math.Max(half, report.Specification.Form.Grip.WidthMm / 2);

        DrawStations(sketch, report, units, centre, centre + half + 6);
        sketch.Path(FacePaths.Whole(report.Outline, OriginX, centre), LineKind.Visible, Layer.Outline, id: PathId);
        sketch.Line(OriginX - 8, centre, OriginX + places.OverallMm + 8, centre, LineKind.Centre, Layer.Centre);
        DrawMarks(sketch, report, marks, texts, rows, top, centre);
        DrawWidth(sketch, report, units, centre);

        var dimensions = centre + half + 6 + 2 * FigureRowMm + 10;
        DrawLengths(sketch, report, units, centre, dimensions);
        var block = dimensions + 14;
        var figures = KeyFigures.Of(report, context);
        TitleBlock.Draw(sketch, figures, KeyFigures.Origin(context), Margin, block, inner);
        var height = block + TitleBlock.HeightMm(figures.Count, inner) + Margin / 2;
        return sketch.Finish(
            "outline",
            OutcomeNotice.Titled(report, $"{context.Label}: outline"),
            OutcomeNotice.Described(report, units, Describe(report, context)),
            width,
            height);
    }

    private static string Describe(DesignReport report, DrawingContext context)
    {
        var places = report.Specification.Form.Places;
        return $"Face of a canoe paddle ({KeyFigures.BladeName(report).ToLowerInvariant()} blade) at true scale, grip to the left. Overall "
            + $"{DrawnLength.Text(places.OverallMm, context.Units)}, throat at {DrawnLength.Text(places.ThroatMm, context.Units)} from the top of the "
            + $"grip, blade {DrawnLength.Text(report.Specification.Form.Blade.WidthMm, context.Units)} wide, finished it balances {KeyFigures.FromHand(report, report.Finished.CentreOfMassMm, context.Units)}. "
            + $"Half-breadths every {DrawnLength.Text(StationPlan.StepMm(context.Units), context.Units)} or less.";
    }

    private static void DrawStations(Sketch sketch, DesignReport report, DrawingUnits units, double centre, double rows)
    {
        double place = rows + FigureRowMm, breadth = place + FigureRowMm, unitY = Lettering.Note;
        sketch.Text($"From grip top, {DrawnLength.UnitName(units)}", Margin, place - 1.5, unitY);
        sketch.Text($"Half-breadth, {DrawnLength.UnitName(units)}", Margin, breadth - 1.5, unitY);
        foreach (var (x, room) in StationText.Places(report, units))
        {
            var half = report.Outline.HalfBreadthMm(x);
            sketch.Line(OriginX + x, centre - half, OriginX + x, rows + 1, LineKind.Fine, Layer.Stations);
            sketch.Fitted(DrawnLength.Figure(x, units), OriginX + x, place - 1.5, Lettering.Figure, room, Layer.Stations);
            sketch.Fitted(DrawnLength.Figure(half, units), OriginX + x, breadth - 1.5, Lettering.Figure, room, Layer.Stations, strong: true);
        }

        var end = OriginX + report.Specification.Form.Places.OverallMm;
        sketch.Line(Margin, rows + 1, end, rows + 1, LineKind.Fine, Layer.Stations);
        sketch.Line(Margin, place, end, place, LineKind.Fine, Layer.Stations);
        sketch.Line(Margin, breadth, end, breadth, LineKind.Fine, Layer.Stations);
    }

    private static void DrawMarks(
        Sketch sketch, DesignReport report, IReadOnlyList<Landmark> marks, string[] texts, int[] rows, double top, double centre)
    {
        for (var i = 0; i < marks.Count; i++)
        {
            var x = OriginX + marks[i].XMm;
            var baseline = top - 4 - rows[i] * Landmarks.RowMm;
            var half = report.Outline.HalfBreadthMm(marks[i].XMm);
            sketch.Line(x, baseline - 5, x, centre + half + 3, LineKind.Narrow, Layer.Marks);
            sketch.Text(texts[i], x + 2, baseline, Lettering.Figure, layer: Layer.Marks);
        }

        Landmarks.DrawBalance(sketch, OriginX + Landmarks.BalanceXMm(report), centre, 4);
    }

    private static void DrawWidth(Sketch sketch, DesignReport report, DrawingUnits units, double centre)
    {
        var form = report.Specification.Form;
        var x = OriginX + form.Places.ThroatMm + form.Blade.WidestAt * form.Places.BladeMm;

        // Along the line, on the side where the next station is further off.
        var step = StationPlan.StepMm(units);
        var left = (x - OriginX) % step > step / 2;
        sketch.Text(
            DrawnLength.Text(form.Blade.WidthMm, units) + " wide", left ? x - 2 : x + 7, centre - 8, Lettering.Figure, layer: Layer.Marks, turn: -90);
        Dimension.Arrow(sketch, x, centre - form.Blade.HalfWidthMm, 0, 1);
        Dimension.Arrow(sketch, x, centre + form.Blade.HalfWidthMm, 0, -1);
    }

    private static void DrawLengths(Sketch sketch, DesignReport report, DrawingUnits units, double centre, double y)
    {
        var places = report.Specification.Form.Places;
        double x0 = OriginX, throat = OriginX + places.ThroatMm, end = OriginX + places.OverallMm;
        foreach (var x in (double[])[x0, throat, end]) sketch.Line(x, centre + 8, x, y + 11, LineKind.Fine, Layer.Marks);
        Dimension.Level(sketch, x0, throat, y, "Grip and shaft " + DrawnLength.Text(places.ThroatMm, units));
        Dimension.Level(sketch, throat, end, y, "Blade " + DrawnLength.Text(places.BladeMm, units));
        Dimension.Level(sketch, x0, end, y + 9, "Overall " + DrawnLength.Text(places.OverallMm, units));
    }
}
