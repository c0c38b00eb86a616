using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>One half of the face at true scale, to cut from thin board: trace it, flip it about the centre line, trace it again, and both
/// halves match by construction.</summary>
internal static class HalfTemplateView
{
    private const double Margin = 10;
    /// <summary>Radius of the hang hole, mm.</summary>
    public const double HoleRadiusMm = 4;
    private const double RowMm = 8;
    public const string PathId = "half-template";
    /// <summary>x of the top of the grip on the sheet, mm.</summary>
    public const double OriginX = 46;

    /// <summary>y of the centre line on the sheet, mm.</summary>
    public static double CentreY(DesignReport report, DrawingUnits units)
    {
        var shaft = report.Sizes.ShaftWidthMm / 2;
        return Margin + Math.Max(report.Specification.Form.Blade.HalfWidthMm, CalibrationSquare.SideMm(units) + shaft + 6) + 2;
    }

    /// <param name="report">The design.</param>
    /// <param name="bare">Leaves out heading and square, which tiles would cut in two and have on a page of their own.</param>
    public static Sheet Draw(DesignReport report, DrawingContext context, bool bare = false)
    {
        var (form, units, sketch) = (report.Specification.Form, context.Units, new Sketch());
        var places = form.Places;
        var end = OriginX + places.OverallMm;
        var width = end + 20;
        var notice = bare ? 0 : OutcomeNotice.Draw(sketch, report, units, Margin, Margin, width - 2 * Margin, Lettering.Figure);
        var centre = CentreY(report, units) + notice;
        // Left of every mark on the lower shaft, whose lettering stands upright there.
        var firstMark = Landmarks.Of(report).Where(mark => mark.XMm > places.GripEndMm).Min(mark => mark.XMm);
        var squareX = OriginX + Math.Max(places.GripEndMm + 10, firstMark - CalibrationSquare.SideMm(units) - 24);
        if (!bare)
        {
            DrawText(sketch, report, context, squareX - 12, Margin + notice);
            CalibrationSquare.Draw(sketch, squareX, Margin + notice + 2, units);
        }

        DrawStations(sketch, report, units, centre);
        sketch.Path(FacePaths.Half(report.Outline, OriginX, centre), LineKind.Visible, Layer.HalfTemplate, id: PathId);
        sketch.Line(OriginX - 8, centre, end + 8, centre, LineKind.Centre, Layer.Centre);
        DrawRegisters(sketch, report, units, centre);
        DrawHole(sketch, report, centre);
        return sketch.Finish(
            "half-template",
            OutcomeNotice.Titled(report, $"{context.Label}: half template"),
            OutcomeNotice.Described(report, units, $"One half of the face of a canoe paddle ({KeyFigures.BladeName(report).ToLowerInvariant()} blade) at true scale, to trace and flip about the "
            + $"centre line, with a hang hole, registration ticks and a {DrawnLength.Text(CalibrationSquare.SideMm(units), units)} calibration square."),
            width,
            centre + 6 + 2 * RowMm + Margin);
    }

    private static void DrawText(Sketch sketch, DesignReport report, DrawingContext context, double right, double top)
    {
        var (form, units) = (report.Specification.Form, context.Units);
        var left = OriginX + form.Places.GripEndMm + 24;
        var width = Math.Max(40, right - left);
        var label = Lettering.Safe(context.Label);
        sketch.Text(label, left, top + 12, Lettering.FitHeightMm(label, Lettering.Title, width), strong: true);
        string L(double mm) => DrawnLength.Text(mm, units);
        string[] lines =
        [
            $"{KeyFigures.BladeName(report)} paddle: half template, true scale",
            $"Overall {L(form.Places.OverallMm)} · throat {L(form.Places.ThroatMm)} from the top · blade {L(form.Blade.WidthMm)} wide (half {L(form.Blade.HalfWidthMm)})",
            "Lay the straight edge on the centre line of the blank, trace, flip about the line, trace again.",
            "Paper moves with the weather: check the overall length and the throat with a tape before tracing.",
        ];
        for (var i = 0; i < lines.Length; i++)
            sketch.Text(lines[i], left, top + 23 + 9 * i, Lettering.FitHeightMm(lines[i], Lettering.Figure, width));
        var origin = KeyFigures.Origin(context);
        sketch.Text(origin, left, top + 23 + 9 * lines.Length, Lettering.FitHeightMm(origin, Lettering.Note, width));
    }

    private static void DrawStations(Sketch sketch, DesignReport report, DrawingUnits units, double centre)
    {
        double place = centre + 6 + RowMm, breadth = place + RowMm;
        sketch.Text($"From top, {DrawnLength.UnitName(units)}", Margin, place - 1.5, Lettering.Note);
        sketch.Text($"Half-breadth, {DrawnLength.UnitName(units)}", Margin, breadth - 1.5, Lettering.Note);
        foreach (var (x, room) in StationText.Places(report, units))
        {
            var half = report.Outline.HalfBreadthMm(x);
            sketch.Line(OriginX + x, centre - half, OriginX + x, centre + 3, LineKind.Fine, Layer.Stations);
            sketch.Fitted(DrawnLength.Figure(x, units), OriginX + x, place - 1.5, Lettering.Note, room, Layer.Stations);
            sketch.Fitted(DrawnLength.Figure(half, units), OriginX + x, breadth - 1.5, Lettering.Figure, room, Layer.Stations, strong: true);
        }
    }

    // Ticks across the centre line fall on one another after the flip; each stands at a place that the maker marks anyway.
    private static void DrawRegisters(Sketch sketch, DesignReport report, DrawingUnits units, double centre)
    {
        var places = report.Specification.Form.Places;
        var ends = (double[])[0, places.OverallMm];
        foreach (var station in StationPlan.Of(report.Specification.Form, units).Where(station => station.Mark.Length > 0 && !ends.Contains(station.XMm)))
        {
            var x = OriginX + station.XMm;
            var half = report.Outline.HalfBreadthMm(station.XMm);
            sketch.Line(x, centre - half - 5, x, centre + 6, LineKind.Narrow, Layer.Marks);
            var text = $"{char.ToUpperInvariant(station.Mark[0])}{station.Mark[1..]} {DrawnLength.Text(station.XMm, units)}, half {DrawnLength.Figure(half, units)}";
            if (station.XMm > places.ThroatMm) sketch.Text(text, x + 2, centre - half - 3, Lettering.Figure, layer: Layer.Marks);
            else sketch.Text(text, x + 1.8, centre - half - 4, Lettering.Note, layer: Layer.Marks, turn: -90);
        }

        Landmarks.DrawBalance(sketch, OriginX + Landmarks.BalanceXMm(report), centre, 3);
        foreach (var x in ends)
            sketch.Line(OriginX + x, centre - 12, OriginX + x, centre + 12, LineKind.Narrow, Layer.Marks);
    }

    private static void DrawHole(Sketch sketch, DesignReport report, double centre)
    {
        var x = OriginX + SolidLook.GripCrestMm(report);
        var y = centre - 0.55 * report.Specification.Form.Grip.WidthMm / 2;
        sketch.Path(SheetPath.Circle(x, y, HoleRadiusMm), LineKind.Narrow, Layer.HalfTemplate);
        sketch.Line(x - 6, y, x + 6, y, LineKind.Fine, Layer.Centre);
        sketch.Line(x, y - 6, x, y + 6, LineKind.Fine, Layer.Centre);
    }
}
