using Paddle.Design;
using Paddle.Design.Outline;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>The edge of the paddle at true scale: spine, edge lines to plane to, the grip's hollow with its saw kerf, and the bend.</summary>
internal static class ElevationView
{
    private const double Margin = 20;
    private const double RowMm = 8;
    private const double OriginX = Margin + 40;

    public static Sheet Draw(DesignReport report, DrawingContext context)
    {
        var (form, units, sketch) = (report.Specification.Form, context.Units, new Sketch());
        var profile = new EdgeProfile(report);
        var silhouette = profile.Silhouette();
        double high = silhouette.Max(point => point.Y), low = silhouette.Min(point => point.Y);
        double right = OriginX + silhouette.Max(point => point.X), width = right + Margin, inner = width - 2 * Margin;
        TitleBlock.Heading(
            sketch, context.Label, $"{KeyFigures.BladeName(report)} paddle: edge view, true scale, both faces", Margin, Margin, inner);

        var notice = OutcomeNotice.Draw(sketch, report, units, Margin, Margin + TitleBlock.HeadingMm, inner, Lettering.Figure);
        var centre = Margin + TitleBlock.HeadingMm + notice + 22 + high;
        Point Put(Point p) => new(OriginX + p.X, centre - p.Y);
        var rows = centre - low + 16;
        DrawStations(sketch, report, profile, units, Put, rows, right);
        if (form.BendDegrees == 0) DrawBlank(sketch, profile, units, centre);
        sketch.Path(SheetPath.Polyline(silhouette.Select(Put), closed: true), LineKind.Visible, Layer.Outline);
        foreach (var side in (int[])[1, -1])
            sketch.Path(SheetPath.Polyline(profile.EdgeLine(side).Select(Put)), LineKind.Narrow, Layer.Outline);
        DrawCentre(sketch, report, profile, Put);
        DrawKerfs(sketch, report, units, centre);
        DrawNotes(sketch, report, profile, units, Put, centre);

        var block = rows + 3 * RowMm + 6;
        var figures = KeyFigures.Of(report, context);
        TitleBlock.Draw(sketch, figures, KeyFigures.Origin(context), Margin, block, inner);
        return sketch.Finish(
            "elevation",
            OutcomeNotice.Titled(report, $"{context.Label}: edge view"),
            OutcomeNotice.Described(report, units, $"Edge of the paddle at true scale, grip to the left: spine {DrawnLength.Text(report.Sizes.ThroatThicknessMm, units)} at the throat, "
            + $"{DrawnLength.Text(report.Sizes.MiddleThicknessMm, units)} at mid-blade, {DrawnLength.Text(report.Sizes.TipThicknessMm, units)} at the tip; "
            + $"edge {DrawnLength.Text(report.Sizes.EdgeThicknessMm, units)}; bend {form.BendDegrees:0.#} degrees."),
            width,
            block + TitleBlock.HeightMm(figures.Count, inner) + Margin / 2);
    }

    private static void DrawStations(
        Sketch sketch, DesignReport report, EdgeProfile profile, DrawingUnits units, Func<Point, Point> put, double rows, double right)
    {
        string[] names = ["From grip top", "Centre thickness", "Edge thickness"];
        for (var i = 0; i < names.Length; i++)
        {
            var y = rows + (i + 1) * RowMm;
            sketch.Text($"{names[i]}, {DrawnLength.UnitName(units)}", Margin, y - 1.5, Lettering.Note);
            sketch.Line(Margin, y, right, y, LineKind.Fine, Layer.Stations);
        }

        var stations = StationText.Places(report, units);
        double[] xs = [.. stations.Select(station => station.XMm)];
        var solid = SolidLook.At(report, xs);
        for (var i = 0; i < xs.Length; i++)
        {
            var room = stations[i].RoomMm;
            double c = solid.HalfThickness[i], e = solid.EdgeHalfThickness[i], offset = profile.Solid.Form.Grip.Faces == GripFaces.OneSided
                && xs[i] < profile.Solid.Form.Places.GripEndMm ? solid.CentreOffsetMm(i) : 0;
            Point top = put(profile.At(xs[i], offset + c)), bottom = put(profile.At(xs[i], offset - c));
            sketch.Line(top.X, top.Y, bottom.X, bottom.Y, LineKind.Fine, Layer.Stations);
            var at = put(profile.At(xs[i], 0)).X;
            sketch.Line(bottom.X, bottom.Y, at, rows + 1, LineKind.Fine, Layer.Stations);
            string Up(double mm) => DrawnLength.Figure(mm, units, LengthRounding.Up);
            sketch.Fitted(DrawnLength.Figure(xs[i], units), at, rows + RowMm - 1.5, Lettering.Figure, room, Layer.Stations);
            sketch.Fitted(Up(2 * c), at, rows + 2 * RowMm - 1.5, Lettering.Figure, room, Layer.Stations, strong: true);
            if (e > 0) sketch.Fitted(Up(2 * e), at, rows + 3 * RowMm - 1.5, Lettering.Figure, room, Layer.Stations);
        }

        sketch.Line(Margin, rows + 1, right, rows + 1, LineKind.Fine, Layer.Stations);
    }

    private static void DrawBlank(Sketch sketch, EdgeProfile profile, DrawingUnits units, double centre)
    {
        var half = profile.Solid.HalfThickness.Max();
        var overall = profile.Solid.Form.Places.OverallMm;
        sketch.Path(SheetPath.Rectangle(OriginX, centre - half, overall, 2 * half), LineKind.Blank, Layer.Blank);
        sketch.Text(
            $"Blank at least {DrawnLength.Text(2 * half, units, LengthRounding.Up)} thick before sanding allowance",
            OriginX + 0.62 * profile.Solid.Form.Places.ThroatMm, centre - half - 3, Lettering.Note, Anchor.Middle);
    }

    private static void DrawCentre(Sketch sketch, DesignReport report, EdgeProfile profile, Func<Point, Point> put)
    {
        var places = report.Specification.Form.Places;
        Point a = put(profile.At(-8, 0)), b = put(profile.At(places.ThroatMm, 0)), c = put(profile.At(places.OverallMm + 8, 0));
        sketch.Path(SheetPath.Polyline([a, b, c]), LineKind.Centre, Layer.Centre);
    }

    // The kerf is sawn at the deepest place of the hollow and pared to from both sides.
    private static void DrawKerfs(Sketch sketch, DesignReport report, DrawingUnits units, double centre)
    {
        var grip = report.Specification.Form.Grip;
        if (grip.HollowDepthMm <= 0) return;
        var x = SolidLook.HollowMm(report);
        var solid = SolidLook.At(report, [SolidLook.GripCrestMm(report), x]);
        var faces = grip.Faces == GripFaces.Matching ? (int[])[1, -1] : [1];
        foreach (var side in faces)
        {
            double surface = solid.CentreOffsetMm(1) + side * solid.HalfThickness[1], outside = side * (solid.HalfThickness[0] + 7);
            sketch.Line(OriginX + x, centre - outside, OriginX + x, centre - surface, LineKind.Visible, Layer.Marks);
        }

        double textY = centre - solid.HalfThickness[0] - 10, left = OriginX + x;
        sketch.Line(left, centre - solid.HalfThickness[0] - 7, left + 6, textY - 2, LineKind.Narrow, Layer.Marks);
        sketch.Text(
            $"Saw kerf {DrawnLength.Text(x, units)} from the top, {(faces.Length == 2 ? "both faces" : "this face")}; leave {DrawnLength.Text(2 * solid.HalfThickness[1], units, LengthRounding.Up)}",
            left + 7, textY - 1, Lettering.Note, layer: Layer.Marks);
    }

    private static void DrawNotes(
        Sketch sketch, DesignReport report, EdgeProfile profile, DrawingUnits units, Func<Point, Point> put, double centre)
    {
        var places = report.Specification.Form.Places;
        foreach (var (name, x) in new[] { ("Lower hand", places.LowerHandMm), ("Throat", places.ThroatMm) })
        {
            var below = put(profile.At(x, -report.Sizes.ShaftThicknessMm / 2 - 3));
            sketch.Line(OriginX + x, centre - report.Sizes.ShaftThicknessMm / 2 - 8, OriginX + x, below.Y, LineKind.Narrow, Layer.Marks);
            sketch.Text(
                name, OriginX + x + (name == "Throat" ? 2 : -2), centre - report.Sizes.ShaftThicknessMm / 2 - 5, Lettering.Note,
                name == "Throat" ? Anchor.Start : Anchor.End, Layer.Marks);
        }

        var at = places.ThroatMm + 0.5 * places.BladeMm;
        var solid = SolidLook.At(report, [at]);
        var bent = report.Specification.Form.BendDegrees != 0;
        Note(sketch, put(profile.At(at, solid.HalfThickness[0])), bent ? -1 : 1, -1, "spine: middle of the blade");
        Note(sketch, put(profile.At(at + 10, -solid.EdgeHalfThickness[0])), 1, 1, "edge line: plane to this, then fair to the spine");
        if (report.Specification.Form.BendDegrees == 0) return;
        var throat = put(new(places.ThroatMm, 0));
        sketch.Line(throat.X, throat.Y, throat.X + 150, throat.Y, LineKind.Centre, Layer.Centre);
        sketch.Text(FormattableString.Invariant($"Bend {report.Specification.Form.BendDegrees:0.#}°"), throat.X + 152, throat.Y + 2, Lettering.Figure);
        sketch.Text($"Distances below the throat are along the blade ({DrawnLength.Text(places.BladeMm, units)})", throat.X + 190, throat.Y + 2, Lettering.Note);
    }

    private static void Note(Sketch sketch, Point at, int right, int down, string text)
    {
        Point knee = new(at.X + 10 * right, at.Y + down * 20), end = new(knee.X + 3 * right, knee.Y);
        sketch.Path(SheetPath.Polyline([at, knee, end]), LineKind.Narrow, Layer.Marks);
        sketch.Path(SheetPath.Circle(at.X, at.Y, 0.6), LineKind.Fine, Layer.Marks, Fill.Ink);
        sketch.Text(text, end.X + right, end.Y + 1.3, Lettering.Note, right > 0 ? Anchor.Start : Anchor.End, Layer.Marks);
    }
}
