using System.Collections.Concurrent;
using Paddle.Design;
using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>Cards with the cross-sections at true scale: cut along the heavy line and halved on the middle line, each card gives a gauge
/// for either face. Shaft cards carry the lines for planing eight and sixteen sides.</summary>
internal static class SectionCards
{
    private const double Rim = 10;
    private const double CaptionMm = 34, LinesMm = 20;
    private const double Gap = 8;
    private const double LeastCellMm = 80;
    private const string Use = "Cut out the heavy shape; halved on the middle line, the card gauges either face.";

    /// <summary>All cards on one sheet of the given width; without one, wide enough for two blade cards side by side.</summary>
    public static Sheet OneSheet(DesignReport report, DrawingContext context, double? sheetWidthMm = null)
    {
        const double Margin = 12;
        var widthMm = sheetWidthMm ?? 2 * (report.Specification.Form.Blade.WidthMm + 2 * Rim + Margin) + Gap;
        var sketch = new Sketch();
        TitleBlock.Heading(
            sketch, context.Label, $"{KeyFigures.BladeName(report)} paddle: sections at true scale. {Use}", Margin, Margin, widthMm - 2 * Margin, small: true);
        var notice = OutcomeNotice.Draw(sketch, report, context.Units, Margin, Margin + TitleBlock.HeadingMm, widthMm - 2 * Margin, Lettering.Note);
        var top = Margin + TitleBlock.HeadingMm + notice + 6;
        var (cells, bottom) = Flow(SectionPlan.Of(report), Margin, top, widthMm - 2 * Margin, double.PositiveInfinity)[0];
        foreach (var (place, x, y) in cells) DrawCell(sketch, place, context.Units, x, y);
        var origin = KeyFigures.Origin(context);
        sketch.Text(origin, Margin, bottom + 8, Lettering.FitHeightMm(origin, Lettering.Note, widthMm - 2 * Margin));
        return sketch.Finish(
            "sections",
            OutcomeNotice.Titled(report, $"{context.Label}: sections"),
            OutcomeNotice.Described(report, context.Units, "Cross-sections of the paddle at true scale with width, thickness and edge; shaft sections with their eight-side and "
            + "sixteen-side lines."),
            widthMm,
            bottom + 8 + Margin);
    }

    /// <summary>The cards packed on pages of the given size.</summary>
    public static IReadOnlyList<Sheet> Pages(DesignReport report, DrawingContext context, double widthMm, double heightMm)
    {
        var pages = Flow(SectionPlan.Of(report), 0, 0, widthMm, heightMm);
        return
        [
            .. pages.Select(page =>
            {
                var sketch = new Sketch();
                foreach (var (place, x, y) in page.Cells) DrawCell(sketch, place, context.Units, x, y);
                return sketch.Finish("sections", "Sections at true scale", Use, widthMm, heightMm);
            }),
        ];
    }

    private static List<(List<(SectionPlace Place, double X, double Y)> Cells, double Bottom)> Flow(
        IReadOnlyList<SectionPlace> places, double left, double top, double width, double height)
    {
        var pages = new List<(List<(SectionPlace, double, double)> Cells, double Bottom)>();
        var cells = new List<(SectionPlace, double, double)>();
        double x = left, y = top, rowHeight = 0;
        foreach (var place in places)
        {
            var (cellWidth, cellHeight) = CellSize(place);
            if (x > left && x + cellWidth > left + width) (x, y, rowHeight) = (left, y + rowHeight + Gap, 0);
            if (cells.Count > 0 && y + cellHeight > top + height)
            {
                pages.Add((cells, y));
                (cells, x, y, rowHeight) = ([], left, top, 0);
            }

            cells.Add((place, x, y));
            x += cellWidth + Gap;
            rowHeight = Math.Max(rowHeight, cellHeight);
        }

        pages.Add((cells, y + rowHeight));
        return pages;
    }

    private static (double Width, double Height) CellSize(SectionPlace place) =>
        (Math.Max(LeastCellMm, 2 * (place.Section.HalfWidthMm + Rim)), CaptionMm + 2 * (place.Section.HalfThicknessMm + Rim));

    private static void DrawCell(Sketch sketch, SectionPlace place, DrawingUnits units, double x, double y)
    {
        var (width, height) = CellSize(place);
        var lines = Caption(place, units);
        sketch.Text(place.Name, x, y + 6, Lettering.FitHeightMm(place.Name, Lettering.Figure, width), strong: true);
        // Many lines are smaller, and none touches the next.
        var pitch = Math.Min(5.5, LinesMm / (lines.Count - 1));
        var letters = Math.Min(Lettering.Note, pitch / 1.4);
        for (var i = 0; i < lines.Count; i++)
            sketch.Text(lines[i], x, y + 12.5 + pitch * i, Lettering.FitHeightMm(lines[i], letters, width));

        double w = place.Section.HalfWidthMm, c = place.Section.HalfThicknessMm;
        double centreX = x + w + Rim, centreY = y + CaptionMm + Rim + c;
        Point Put(Point p) => new(centreX + p.X, centreY - p.Y);
        sketch.Path(SheetPath.Rectangle(x, y + CaptionMm, 2 * (w + Rim), height - CaptionMm), LineKind.Fine, Layer.Sections);
        sketch.Line(centreX, centreY - c - Rim + 1, centreX, centreY + c + Rim - 1, LineKind.Centre, Layer.Centre);
        sketch.Line(centreX - w - Rim, centreY, centreX + w + Rim, centreY, LineKind.Centre, Layer.Centre);
        if (place.IsShaft) DrawGauge(sketch, w, c, Put);
        sketch.Path(SheetPath.Polyline(SectionPaths.Closed(place.Section).Select(Put), closed: true), LineKind.Visible, Layer.Sections);
    }

    private static void DrawGauge(Sketch sketch, double w, double c, Func<Point, Point> put)
    {
        var corner = put(new(-w, c));
        sketch.Path(SheetPath.Rectangle(corner.X, corner.Y, 2 * w, 2 * c), LineKind.Blank, Layer.Blank);
        var octagon = SectionPaths.Octagon(w, c);
        sketch.Path(SheetPath.Polyline(octagon.Select(put), closed: true), LineKind.Narrow, Layer.Gauge);
        foreach (var vertex in octagon)
        {
            // A tick standing off the face shows where the gauge scribes.
            var onFace = Math.Abs(Math.Abs(vertex.Y) - c) < 1e-9;
            var outward = onFace ? new Point(0, 4 * Math.Sign(vertex.Y)) : new Point(4 * Math.Sign(vertex.X), 0);
            Point from = put(vertex), to = put(vertex + outward);
            sketch.Line(from.X, from.Y, to.X, to.Y, LineKind.Narrow, Layer.Gauge);
        }

        foreach (var mark in SectionPaths.SixteenMarks(octagon))
        {
            var at = put(mark);
            sketch.Path(SheetPath.Circle(at.X, at.Y, 0.35), LineKind.Fine, Layer.Gauge, Fill.Ink);
        }
    }

    private static List<string> Caption(SectionPlace place, DrawingUnits units)
    {
        string Up(double mm) => DrawnLength.Figure(mm, units, LengthRounding.Up);
        double w = 2 * place.Section.HalfWidthMm, t = 2 * place.Section.HalfThicknessMm, e = 2 * place.Section.EdgeHalfThicknessMm;
        var unit = DrawnLength.UnitName(units);
        var lines = new List<string>
        {
            $"{DrawnLength.Figure(place.XMm, units)} {unit} from the top",
            e > 0.05 ? $"{DrawnLength.Figure(w, units)} wide · {Up(t)} thick · edge {Up(e)} {unit}" : $"{DrawnLength.Figure(w, units)} wide · {Up(t)} {unit} thick",
        };
        if (place.IsShaft)
        {
            // Facets: the one on the flat face is the width's, the one on the edge the thickness's.
            const double Flat = 1 - 2 * SectionPaths.EightSide;
            IEnumerable<string> Off(int sides, double share, string what)
            {
                string face = DrawnLength.Text(share * w, units), side = DrawnLength.Text(share * t, units);
                yield return $"{sides} sides: lines {face} off {what}";
                if (face != side) yield return $"on the sides {side}";
            }

            lines.AddRange(Off(8, SectionPaths.EightSide, "the edges"));
            lines.AddRange(Off(16, SectionPaths.SixteenSide * Flat, "those"));
        }
        else
        {
            lines.Add($"half way to the edge {Up(2 * place.Section.HalfThicknessAtMm(0.5))} {unit} thick");
        }

        return lines;
    }
}

/// <summary>Cross-sections as closed chains, y to the right and z up about the section's own centre, mm.</summary>
internal static class SectionPaths
{
    /// <summary>Octagon line from each edge, as a share of the face: 1 − 1/√2, so that all eight facets touch the ellipse.</summary>
    public const double EightSide = 0.2928932188134524;
    /// <summary>Sixteen-side line from each corner of the octagon, as a share of the facet, by the geometry of the regular figures.</summary>
    public const double SixteenSide = 0.2598915325;

    // Shares of the half-width at which points lie, for each count of chords that a drawing uses.
    private static readonly ConcurrentDictionary<int, double[]> Quarters = new();

    /// <summary>The section, round once, against the clock from the right edge.</summary>
    /// <param name="chords">Chords in a quarter; the points crowd towards the edge, where the curve turns.</param>
    public static IReadOnlyList<Point> Closed(Section section, int chords = 32)
    {
        var across = Quarters.GetOrAdd(chords, static chords => [.. Enumerable.Range(0, chords).Select(j => Math.Sin(Math.PI / 2 * j / chords)), 1]);
        var quarter = new Point[chords + 1];
        for (var j = 0; j <= chords; j++) quarter[j] = new(across[j] * section.HalfWidthMm, section.HalfThicknessAtMm(across[j]));

        var points = new List<Point>(4 * chords + 4);
        for (var j = chords; j >= 0; j--) points.Add(quarter[j]);
        for (var j = 1; j <= chords; j++) points.Add(new(-quarter[j].X, quarter[j].Y));
        for (var j = chords; j >= 0; j--) points.Add(new(-quarter[j].X, -quarter[j].Y));
        for (var j = 1; j <= chords; j++) points.Add(new(quarter[j].X, -quarter[j].Y));
        return points;
    }

    /// <summary>The eight-sided shaft around an oval: each facet touches it.</summary>
    public static IReadOnlyList<Point> Octagon(double halfWidth, double halfThickness)
    {
        double y = halfWidth * (1 - 2 * EightSide), z = halfThickness * (1 - 2 * EightSide);
        return
        [
            new(halfWidth, z), new(y, halfThickness), new(-y, halfThickness), new(-halfWidth, z),
            new(-halfWidth, -z), new(-y, -halfThickness), new(y, -halfThickness), new(halfWidth, -z),
        ];
    }

    /// <summary>The sixteen places on the octagon's facets where the next facets begin.</summary>
    public static IReadOnlyList<Point> SixteenMarks(IReadOnlyList<Point> octagon)
    {
        var marks = new List<Point>(16);
        for (var i = 0; i < octagon.Count; i++)
        {
            Point a = octagon[i], b = octagon[(i + 1) % octagon.Count];
            marks.Add(a + SixteenSide * (b - a));
            marks.Add(b + SixteenSide * (a - b));
        }

        return marks;
    }
}

/// <summary>A place where a template of the section helps.</summary>
internal sealed record SectionPlace(string Name, double XMm, bool IsShaft, Section Section);

/// <summary>Where sections are shown: at the sizes that fix the solid, and between them where the shape changes fast.</summary>
internal static class SectionPlan
{
    public static IReadOnlyList<SectionPlace> Of(DesignReport report)
    {
        var form = report.Specification.Form;
        var places = form.Places;
        var wanted = new List<(string Name, double X, bool Shaft)> { ("Grip at its crest", SolidLook.GripCrestMm(report), false) };
        if (form.Grip.HollowDepthMm > 0) wanted.Add(("Grip at its hollow", SolidLook.HollowMm(report), false));
        wanted.Add(("Shaft below the grip", places.GripEndMm, true));
        wanted.Add(("Shaft, half way", (places.GripEndMm + places.LowerHandMm) / 2, true));
        wanted.Add(("Lower hand to throat", places.LowerHandMm, true));
        foreach (var (name, at) in BladePlaces(form.Blade)) wanted.Add((name, places.ThroatMm + at * places.BladeMm, false));

        var ordered = wanted.OrderBy(place => place.X).ToArray();
        var solid = SolidLook.At(report, [.. ordered.Select(place => place.X)]);
        return [.. ordered.Select((place, i) => new SectionPlace(place.Name, place.X, place.Shaft, solid.Section(i)))];
    }

    private static IEnumerable<(string Name, double At)> BladePlaces(BladeShape blade)
    {
        yield return ("Blade below the throat", SpineProfile.Throat);
        yield return ("Blade, shoulder", 0.165);
        yield return ("Blade at a quarter", BladeBlend.ShoulderEnd);
        yield return ("Blade at half", SpineProfile.Middle);
        if (Math.Abs(blade.WidestAt - SpineProfile.Middle) > 0.04 && Math.Abs(blade.WidestAt - BladeBlend.ShoulderEnd) > 0.04)
            yield return ("Blade, widest", blade.WidestAt);
        yield return ("Blade at three quarters", 0.75);
        yield return ("Blade near the tip", SpineProfile.Tip);
    }
}
