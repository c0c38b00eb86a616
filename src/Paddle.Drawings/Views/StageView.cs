using System.Globalization;
using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Design.Solid;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Views;

/// <summary>Pictures of the build sheet in millimetres of its page: the paddle, and for each stage what stands now (filled), what stood
/// before (dashed) and the lines to strike. Every figure is the sheet's own.</summary>
internal sealed class StageView
{
    private const double Wide = 82;
    private const double Text = 1.9;
    private const double Row = 3.4;

    private readonly DesignReport report;
    private readonly BuildSheet build;
    private readonly int index;
    private readonly DrawingUnits units;
    private readonly Sketch sketch = new();
    private readonly List<string> said = [];
    private double y = 1;

    private StageView(DesignReport report, BuildSheet build, int index) => (this.report, this.build, this.index, units) = (report, build, index, build.Units);

    /// <summary>The finished paddle, face and edge, with the places that a maker marks.</summary>
    public static Sheet Paddle(DesignReport report, DrawingUnits units)
    {
        // The lettering of the widest place may stand beyond the tip.
        const double Width = 190, RoomMm = 20;
        var (sketch, places) = (new Sketch(), report.Specification.Form.Places);
        var scale = (Width - RoomMm) / places.OverallMm;
        var marks = Landmarks.Of(report);
        var texts = marks.Select(mark => mark.Text(units)).ToArray();
        var rows = Landmarks.Rows([.. marks.Select(mark => scale * mark.XMm)], [.. texts.Select(text => Lettering.WidthMm(text, Text) + 2)]);
        var half = scale * Math.Max(report.Specification.Form.Blade.HalfWidthMm, report.Specification.Form.Grip.WidthMm / 2);
        var centre = 2 + (rows.Max() + 1) * Row + half;
        sketch.Path(FacePaths.Whole(report.Outline, 0, 0).Map(p => new(1 + scale * p.X, centre + scale * p.Y)), LineKind.Visible, Layer.Outline, Fill.Wood);
        for (var i = 0; i < marks.Count; i++)
        {
            var (x, foot) = (1 + scale * marks[i].XMm, centre - half - 1 - rows[i] * Row);
            sketch.Line(x, foot - Text, x, centre + scale * report.Outline.HalfBreadthMm(marks[i].XMm), LineKind.Fine, Layer.Stations);
            sketch.Text(texts[i], x + 0.8, foot, Text);
        }

        Landmarks.DrawBalance(sketch, 1 + scale * Landmarks.BalanceXMm(report), centre, 1.4);
        var profile = new EdgeProfile(report).Silhouette();
        var edge = centre + half + 3 + scale * profile.Max(p => p.Y);
        sketch.Path(SheetPath.Polyline(profile.Select(p => new Point(1 + scale * p.X, edge - scale * p.Y)), closed: true), LineKind.Narrow, Layer.Outline, Fill.Wood);
        var foot0 = edge - scale * profile.Min(p => p.Y) + 4;
        var overall = $"Overall {DrawnLength.Text(places.OverallMm, units)}, blade {DrawnLength.Text(places.BladeMm, units)} × {DrawnLength.Text(report.Specification.Form.Blade.WidthMm, units)}";
        sketch.Text(overall, Width / 2, foot0, Text, Anchor.Middle);
        return sketch.Finish("paddle", "The paddle, face and edge, grip to the left", $"{overall}; {string.Join("; ", texts)}.", Width, foot0 + 1.5);
    }

    /// <summary>The picture of a stage.</summary>
    public static Sheet Draw(DesignReport report, BuildSheet build, int index) => new StageView(report, build, index).Draw();

    private StageSheet Now => build.Stages[index];

    private Sheet Draw()
    {
        var places = report.Specification.Form.Places;
        var (blade, hand) = (Find("widest"), Find("lower hand"));
        var other = Blade(report.Specification.Form.Blade.WidestAt > 0.6 ? 0.4 : 0.75);
        switch (Now.Stage)
        {
            case BuildStage.Blank:
                Face(-build.Blank.EndTrimMm, places.OverallMm + build.Blank.EndTrimMm);
                Say($"{Up(build.Blank.LengthMm)} long, {Up(build.Blank.WidthMm)} wide, {DrawnLength.Text(build.Blank.ThicknessMm, units)} thick");
                Flat(blade, null, withLine: true);
                Say("Thin upright lines: the paddle's edges");
                break;
            case BuildStage.Sawn:
                Face(0, places.OverallMm);
                Flat(blade, index - 1, withLine: true);
                Say($"Saw {DrawnLength.Shaving(Now.Allowance.OutlineMm, units)} outside the thin upright lines");
                break;
            case BuildStage.EdgeLined:
                Face(0, places.OverallMm);
                Flat(blade, index - 1, withLine: true);
                Edge(blade);
                break;
            case BuildStage.BladeRoughed or BuildStage.BladePlaned:
                Face(places.ThroatMm, places.OverallMm, blade, other);
                Flat(blade, index - 1);
                Flat(other, index - 1);
                break;
            case BuildStage.ShaftEightSided:
                Face(places.GripEndMm, places.ThroatMm, hand);
                Shaft(hand);
                Gauge();
                break;
            case BuildStage.ShaftSixteenSided:
                Face(places.GripEndMm, places.ThroatMm, hand);
                Shaft(hand);
                break;
            case BuildStage.ShaftRounded:
                Face(places.GripEndMm, places.OverallMm, hand, blade);
                Shaft(hand);
                Flat(blade, index - 1);
                break;
            case BuildStage.GripCut:
                Face(0, places.GripEndMm);
                Grip();
                break;
            case BuildStage.Sanded:
                Face(0, places.OverallMm, hand, blade);
                Shaft(hand);
                Flat(blade, null);
                break;
            default:
                Finish();
                break;
        }

        if (Now.Stage is not (BuildStage.Blank or BuildStage.Finished))
        {
            y += 1.2;
            sketch.Text(Now.Stage == BuildStage.Sanded ? "Filled: now, at its designed sizes." : "Filled: now. Dashed: before; between them comes off.", 0, y + Text, Text);
            y += Row;
        }

        return sketch.Finish(
            Now.Id, $"{Now.Title}: what to see", $"The paddle with the reach of the work marked under it; {string.Join("; ", said)}.", Wide, y);
    }

    private int Find(string mark) => Now.Stations.ToList().FindIndex(station => station.Mark == mark);

    // The station next to a share of the blade.
    private int Blade(double share)
    {
        var x = report.Specification.Form.Places.ThroatMm + share * report.Specification.Form.Places.BladeMm;
        return Enumerable.Range(0, Now.Stations.Count).MinBy(i => Math.Abs(Now.Stations[i].XMm - x));
    }

    // The face with the reach of the work under it and the sections' places on it.
    private void Face(double from, double to, params ReadOnlySpan<int> sections)
    {
        var blank = build.Blank;
        var scale = (Wide - 1) / blank.LengthMm;
        double X(double mm) => 0.5 + scale * (mm + blank.EndTrimMm);
        var (half, overall) = (scale * blank.WidthMm / 2, report.Specification.Form.Places.OverallMm);
        if (sections.Length > 0) y += Text + 0.8;
        var centre = y + half;
        var isBlank = Now.Stage == BuildStage.Blank;
        if (isBlank || Now.Stage == BuildStage.Sawn)
            sketch.Path(SheetPath.Rectangle(0.5, y, Wide - 1, 2 * half), isBlank ? LineKind.Visible : LineKind.Hidden, Layer.Blank, isBlank ? Fill.Wood : Fill.None);
        sketch.Path(
            FacePaths.Whole(report.Outline, 0, 0).Map(p => new(X(p.X), centre + scale * p.Y)), isBlank ? LineKind.Hidden : LineKind.Narrow, Layer.Outline,
            isBlank ? Fill.None : Fill.Wood);
        sketch.Line(0, centre, Wide, centre, LineKind.Centre, Layer.Centre);
        if (isBlank)
        {
            foreach (var station in Now.Stations) sketch.Line(X(station.XMm), y, X(station.XMm), y + 2 * half, LineKind.Fine, Layer.Stations);
        }

        int[] ordered = [.. sections];
        Array.Sort(ordered);
        for (var k = 0; k < ordered.Length; k++)
        {
            var station = Now.Stations[ordered[k]];
            sketch.Line(X(station.XMm), y - 0.4, X(station.XMm), y + 2 * half, LineKind.Narrow, Layer.Stations);
            var anchor = k == 0 && ordered.Length > 1 ? Anchor.End : k == 1 ? Anchor.Start : Anchor.Middle;
            sketch.Text(station.Number.ToString(CultureInfo.InvariantCulture), X(station.XMm), y - 1, Text, anchor, Layer.Stations);
        }

        y += 2 * half + 1;
        if (!isBlank) sketch.Line(X(Math.Max(0, from)), y, X(Math.Min(overall, to)), y, LineKind.Visible, Layer.Marks);
        y += 2;
    }

    // A section of the blade; the figures beside it are those of the table.
    private void Flat(int station, int? before, bool withLine = false)
    {
        const double Room = 56;
        var at = Now.Stations[station];
        var scale = Room / build.Blank.WidthMm;
        var tall = scale * Math.Max(at.ThicknessMm, before is { } b ? build.Stages[b].Stations[station].ThicknessMm : 0);
        Point centre = new(Room / 2 + 1, y + Math.Max(tall, 3 * Row) / 2 + 0.8);
        var reach = tall / 2 + 1;
        Outline(index, station, centre, scale, LineKind.Visible, Fill.Wood);
        if (before is { } earlier) Outline(earlier, station, centre, scale, LineKind.Hidden, Fill.None);
        sketch.Line(centre.X, centre.Y - reach, centre.X, centre.Y + reach, LineKind.Centre, Layer.Centre);
        foreach (var side in (int[])[1, -1])
        {
            if (withLine)
            {
                var half = side * scale * report.Outline.HalfBreadthMm(at.XMm);
                sketch.Line(centre.X + half, centre.Y - reach, centre.X + half, centre.Y + reach, LineKind.Narrow, Layer.Marks);
                continue;
            }

            // The edge lines that the bevel runs to.
            var (x, edge) = (centre.X + side * scale * at.HalfBreadthMm, scale * report.Sizes.EdgeThicknessMm / 2);
            foreach (var up in (int[])[1, -1]) sketch.Line(x, centre.Y + up * edge, x + side * 1.6, centre.Y + up * edge, LineKind.Narrow, Layer.Gauge);
        }

        Beside(station, Room + 3.5, y + Text + 0.6);
        y += Math.Max(tall + 2.4, 4 * Row + 1.2);
    }

    private void Beside(int station, double x, double top)
    {
        var at = Now.Stations[station];
        string[] lines =
        [
            string.Create(CultureInfo.InvariantCulture, $"No. {at.Number}{(at.Mark is null ? "" : $", {at.Mark}")}"), $"at {DrawnLength.Text(at.XMm, units)}",
            $"half {Up(at.HalfBreadthMm)}", $"thick {Up(at.ThicknessMm)}",
        ];
        for (var i = 0; i < lines.Length; i++) Put(lines[i], x, top + Row * i);
    }

    // The edge seen from the side, larger than the rest: its centre line and the two lines of the edge thickness.
    private void Edge(int station)
    {
        const double Scale = 0.45;
        var (thick, edge) = (Scale * Now.Stations[station].ThicknessMm, Scale * report.Sizes.EdgeThicknessMm);
        var centre = y + thick / 2;
        sketch.Path(SheetPath.Rectangle(1, y, Wide - 2, thick), LineKind.Visible, Layer.Outline, Fill.Wood);
        sketch.Line(0, centre, Wide, centre, LineKind.Centre, Layer.Centre);
        foreach (var side in (int[])[1, -1]) sketch.Line(1, centre + side * edge / 2, Wide - 1, centre + side * edge / 2, LineKind.Narrow, Layer.Gauge);
        y += thick + 1;
        Say($"Edge on: its centre line, and lines {Up(report.Sizes.EdgeThicknessMm)} apart");
    }

    private void Shaft(int station)
    {
        const double Scale = 0.62;
        var at = Now.Stations[station];
        var before = build.Stages[Now.Stage == BuildStage.Sanded ? index : index - 1].Stations[station];
        var (tall, wide) = (Scale * before.ThicknessMm, Scale * 2 * before.HalfBreadthMm);
        Point centre = new(wide / 2 + 4, y + tall / 2 + 1);
        Outline(index, station, centre, Scale, LineKind.Visible, Fill.Wood);
        if (Now.Stage != BuildStage.Sanded) Outline(index - 1, station, centre, Scale, LineKind.Hidden, Fill.None);
        var line = build.ShaftLines.First(one => one.Number == at.Number);
        List<string> beside =
        [
            string.Create(CultureInfo.InvariantCulture, $"No. {at.Number}, lower hand, at {DrawnLength.Text(at.XMm, units)}"),
            $"{Up(2 * at.HalfBreadthMm)} wide, {Up(at.ThicknessMm)} thick",
        ];
        if (Now.Stage == BuildStage.ShaftEightSided)
        {
            sketch.Path(
                SheetPath.Rectangle(centre.X - Scale * line.WidthMm / 2, centre.Y - Scale * line.ThicknessMm / 2, Scale * line.WidthMm, Scale * line.ThicknessMm),
                LineKind.Narrow, Layer.Gauge);
            beside.Add("Square first; from each edge strike");
            beside.Add($"{Near(line.LineOnFaceMm)} on the faces,");
            beside.Add($"{Near(line.LineOnSideMm)} on the sides");
            Ticks(SectionPaths.Octagon(line.WidthMm / 2, line.ThicknessMm / 2), line.ThicknessMm / 2, centre, Scale);
        }
        else if (Now.Stage == BuildStage.ShaftSixteenSided)
        {
            beside.Add("From each corner of the eight strike");
            beside.Add($"{Near(line.SixteenOnFaceMm)} on the faces,");
            beside.Add($"{Near(line.SixteenOnSideMm)} on the sides,");
            beside.Add($"{Near(line.SixteenOnCornerMm)} on the corner facets");
            foreach (var mark in SectionPaths.SixteenMarks(SectionPaths.Octagon(line.WidthMm / 2, line.ThicknessMm / 2)))
                sketch.Path(SheetPath.Circle(centre.X + Scale * mark.X, centre.Y - Scale * mark.Y, 0.4), LineKind.Fine, Layer.Gauge, Fill.Ink);
        }

        for (var i = 0; i < beside.Count; i++) Put(beside[i], centre.X + wide / 2 + 5, y + 4 + Row * i);
        y += Math.Max(tall + 3, Row * beside.Count + 3);
    }

    // Where the gauge scribes: off each face and each side.
    private void Ticks(IReadOnlyList<Point> octagon, double c, Point centre, double scale)
    {
        foreach (var corner in octagon)
        {
            var isOnFace = Math.Abs(Math.Abs(corner.Y) - c) < 1e-9;
            Point from = new(centre.X + scale * corner.X, centre.Y - scale * corner.Y);
            var to = from + (isOnFace ? new Point(0, -2 * Math.Sign(corner.Y)) : new Point(2 * Math.Sign(corner.X), 0));
            sketch.Line(from.X, from.Y, to.X, to.Y, LineKind.Narrow, Layer.Gauge);
        }
    }

    // The spar gauge from its side: fences, points and what is between them.
    private void Gauge()
    {
        const double Scale = 1.2;
        var gauge = build.Gauge;
        var (left, fence, between, first, apart) = (8.0, 3.0, Scale * gauge.BetweenFencesMm, Scale * gauge.FirstPointMm, Scale * gauge.BetweenPointsMm);
        sketch.Path(SheetPath.Rectangle(left - fence, y, between + 2 * fence, 3), LineKind.Narrow, Layer.Gauge, Fill.Wood);
        foreach (var x in (double[])[left - fence, left + between]) sketch.Path(SheetPath.Rectangle(x, y + 3, fence, 6), LineKind.Narrow, Layer.Gauge, Fill.Wood);
        foreach (var x in (double[])[left + first, left + first + apart]) sketch.Line(x, y + 3, x, y + 5, LineKind.Visible, Layer.Gauge);
        var foot = y + 8.5;
        sketch.Fitted(Bare(gauge.First(units)), left + first / 2, foot, Text, first - 1);
        sketch.Fitted(Bare(gauge.Apart(units)), left + first + apart / 2, foot, Text, apart - 1);
        sketch.Fitted(Bare(gauge.First(units)), left + 1.5 * first + apart, foot, Text, first - 1);
        Put($"Gauge: {gauge.Between(units)}", left + between + fence + 2, y + 4);
        Put("between fences", left + between + fence + 2, y + 4 + Row);
        y += 10;
        string Bare(string length) => length[..^DrawnLength.UnitSuffix(units).Length];
    }

    // The grip from its edge: the board's faces, the kerf down to the hollow, and what is pared away.
    private void Grip()
    {
        var (profile, kerf, form) = (new EdgeProfile(report), build.Kerf, report.Specification.Form);
        var end = form.Places.GripEndMm + 30;
        var scale = (Wide - 2) / end;
        var (board, left) = (build.Blank.ThicknessMm, Now.Allowance.GripFaceMm!.Value);
        var centre = y + 4 + scale * board / 2;
        int[] shown = [.. Enumerable.Range(0, profile.Solid.Count).Where(i => profile.Solid.X[i] <= end)];
        Point At(int i, int side) => new(
            1 + scale * profile.Solid.X[i], centre - scale * (profile.OwnOffset(i) + side * Math.Min(profile.Solid.HalfThickness[i] + left, board / 2)));
        sketch.Path(SheetPath.Polyline([.. shown.Select(i => At(i, 1)), .. shown.Reverse().Select(i => At(i, -1))], closed: true), LineKind.Visible, Layer.Outline, Fill.Wood);
        sketch.Path(SheetPath.Rectangle(1, centre - scale * board / 2, scale * form.Places.GripEndMm, scale * board), LineKind.Hidden, Layer.Blank);
        sketch.Line(0, centre, Wide, centre, LineKind.Centre, Layer.Centre);
        var x = 1 + scale * kerf.PlaceMm;
        foreach (var side in kerf.Faces == 2 ? (int[])[1, -1] : [1])
            sketch.Line(x, centre - side * (scale * board / 2 + 2), x, centre - side * scale * (board / 2 - kerf.DepthMm), LineKind.Visible, Layer.Gauge);
        y += 8 + scale * board + 1;
        Say($"Kerf {Size(kerf.PlaceMm)} from the top on {(kerf.Faces == 2 ? "both faces" : "the hollowed face")}");
        Say($"Kerf {Size(kerf.DepthMm)} deep; {Up(kerf.LeftMm)} stays");
        if (kerf.OtherFaceDepthMm > 0.05) Say($"The other face lies {Size(kerf.OtherFaceDepthMm)} below the board's there");
        var crest = Enumerable.Range(0, Now.Stations.Count).Where(i => Now.Stations[i].XMm <= form.Places.GripEndMm).MaxBy(i => Now.Stations[i].HalfBreadthMm);
        var at = Now.Stations[crest];
        Say(string.Create(CultureInfo.InvariantCulture, $"No. {at.Number} at {DrawnLength.Text(at.XMm, units)}: half {Up(at.HalfBreadthMm)}, thick {Up(at.ThicknessMm)}"));
    }

    private void Finish()
    {
        var places = report.Specification.Form.Places;
        Face(0, places.OverallMm);
        var scale = (Wide - 1) / build.Blank.LengthMm;
        double X(double mm) => 0.5 + scale * (mm + build.Blank.EndTrimMm);
        var (foot, half) = (y, scale * build.Blank.WidthMm / 2);
        var centre = foot - 3 - half;
        if (build.Finish.MaskingLineMm is { } line) sketch.Line(X(line), centre - half, X(line), foot - 1, LineKind.Visible, Layer.Marks);
        Landmarks.DrawBalance(sketch, X(Landmarks.BalanceXMm(report)), centre, 1.2);
        if (build.Finish.MaskingLineMm is { } masked) Say($"Tape round the shaft {Size(masked)} from the top (upright line)");
        if (build.Tip.Chosen) Say($"Cloth over the last {Size(build.Tip.LengthMm)} of both faces");
        Say($"Balance point (round sign) {DrawnLength.Rough(Now.BalanceMm.Value, units)}, aim {DrawnLength.Rough(report.Balance.TargetMm, units)}");
    }

    // What stands at a station after a stage.
    private void Outline(int stage, int station, Point centre, double scale, LineKind line, Fill fill)
    {
        var (at, left) = (build.Stages[stage].Stations[station], build.Stages[stage].Allowance);
        var (w, c) = (at.HalfBreadthMm, at.ThicknessMm / 2);
        var isBlade = at.XMm > report.Specification.Form.Places.ThroatMm;
        Point[] box = [new(w, c), new(-w, c), new(-w, -c), new(w, -c)];
        var points = isBlade
            ? left.BladeFaceMm is { } face ? SectionPaths.Closed(Lens(at.XMm, w, c, face)) : box
            : left.ShaftFaceMm is null ? box
            : left.Shaft switch
            {
                ShaftShape.Square => box,
                ShaftShape.EightSided => SectionPaths.Octagon(w, c),
                ShaftShape.SixteenSided => SectionPaths.SixteenMarks(SectionPaths.Octagon(w, c)),
                _ => SectionPaths.Closed(Lens(at.XMm, w, c, 0)),
            };
        sketch.Path(SheetPath.Polyline(points.Select(p => new Point(centre.X + scale * p.X, centre.Y - scale * p.Y)), closed: true), line, Layer.Sections, fill);
    }

    // The designed section with the stage's wood on its faces; a full edge is thicker by it too.
    private Section Lens(double x, double w, double c, double face)
    {
        var designed = SolidLook.At(report, [x]).Section(0);
        var edge = designed.EdgeHalfThicknessMm * (1 + 2 * face / report.Sizes.EdgeThicknessMm);
        return new(w, c, Math.Min(edge, c), designed.Moments);
    }

    private void Say(string words)
    {
        Put(words, 0, y + Text + 0.4);
        y += Row;
    }

    private void Put(string words, double x, double foot)
    {
        said.Add(words);
        sketch.Text(words, x, foot, Lettering.FitHeightMm(words, Text, Wide - x));
    }

    private string Near(double mm) => DrawnLength.Text(mm, units);

    private string Up(double mm) => DrawnLength.Text(mm, units, LengthRounding.Up);

    private string Size(double mm) => mm > DrawnLength.FineUpToMm ? DrawnLength.Rough(mm, units) : DrawnLength.Text(mm, units);
}
