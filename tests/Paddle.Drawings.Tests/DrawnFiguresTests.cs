using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Paddle.Design;
using Paddle.Design.Strength;
using Paddle.Design.Units;
using Paddle.Drawings.Tests.Support;
using Paddle.Drawings.Views;
using static Paddle.Drawings.Tests.Support.DrawnFile;

namespace Paddle.Drawings.Tests;

/// <summary>What a file draws, measured in the file and held against what it letters and against the design.</summary>
public partial class DrawnFiguresTests
{
    private sealed record Stroke(string Css, double X0, double Y0, double X1, double Y1);

    [Theory]
    [InlineData("ottertail", DrawingUnits.Metric)]
    [InlineData("square-tip", DrawingUnits.Inch)]
    public void Station_and_mark_lines_of_the_cad_drawing_span_the_face(string family, DrawingUnits units)
    {
        var report = SampleDesigns.Varied(family);
        var entities = new DxfReader(Written("template.dxf", report, units)).Entities();
        var read = 0;
        foreach (var (layer, over) in new[] { ("STATIONS", 0.0), ("MARKS", 5.0) })
        {
            var lines = entities.Where(entity => entity.Layer == layer && entity.Points.Count == 2 && Math.Abs(entity.Points[0].X - entity.Points[1].X) < 1e-6 && entity.Points.Any(p => p.Y < 0)).ToList();
            foreach (var text in entities.Where(entity => entity.Layer == layer && entity.Text.Length > 0))
            {
                if (Figure().Match(text.Text) is not { Success: true } figure) continue;

                // The lettering stands a millimetre beside its line.
                if (lines.FirstOrDefault(one => Math.Abs(one.Points[0].X + 1 - text.Points[0].X) < 1e-3 || Math.Abs(one.Points[0].X + 1 - text.Points[0].X) < 4 && text.Points[0].X > 0 && layer == "MARKS") is not { } line) continue;
                read++;
                var x = line.Points[0].X;
                Assert.Equal(x, Millimetres(figure.Groups["at"].Value, units), units == DrawingUnits.Metric ? 0.51 : 0.81);
                var half = report.Outline.HalfBreadthMm(x) + over;
                Assert.Equal(-half, line.Points.Min(p => p.Y), 0.002);
                Assert.Equal(half, line.Points.Max(p => p.Y), 0.002);
            }
        }

        Assert.InRange(read, 12, 80);
    }

    // The hole to hang the half template by lies within the grip, on the template's own side of its centre line.
    [Theory]
    [InlineData("ottertail")]
    [InlineData("sugar-island")]
    public void The_hole_of_a_half_template_lies_in_its_grip(string family)
    {
        var report = SampleDesigns.Varied(family);
        foreach (var paths in (List<List<(double X, double Y)>>[])[
            [.. new DxfReader(Written("template.dxf", report, DrawingUnits.Metric)).Entities().Where(entity => entity.Layer == "HALF_TEMPLATE").Select(entity => entity.Points)],
            [.. HalfTemplate(report)]])
        {
            var ordered = paths.OrderByDescending(points => points.Max(p => p.X) - points.Min(p => p.X)).ToList();
            var (template, hole) = (ordered[0], ordered[^1]);
            double left = template.Min(p => p.X), low = template.Min(p => p.Y), high = template.Max(p => p.Y);
            double x = (hole.Min(p => p.X) + hole.Max(p => p.X)) / 2, wide = hole.Max(p => p.X) - hole.Min(p => p.X);
            Assert.True(hole.Min(p => p.Y) > low && hole.Max(p => p.Y) < high, family);
            Assert.InRange(x - left, 5, report.Specification.Form.Places.GripEndMm);
            Assert.InRange(wide, 3, 30);
        }

        static IEnumerable<List<(double X, double Y)>> HalfTemplate(DesignReport report)
        {
            var drawing = Svg("half-template.svg", report, DrawingUnits.Metric);
            var outline = SvgReader.Curves((string)SvgReader.ById(drawing, HalfTemplateView.PathId).Attribute("d")!);
            yield return [.. outline.SelectMany(curve => new[] { curve.A, curve.D })];
            var grip = outline[0].A;
            yield return drawing.Descendants(SvgReader.Svg + "path").Select(path => SvgReader.Curves((string)path.Attribute("d")!))
                .Where(curves => curves.Count == 4 && curves.All(curve => Math.Abs(curve.A.X - grip.X) < 120))
                .Select(curves => curves.Select(curve => curve.A).ToList())
                .MinBy(points => points.Max(p => p.X) - points.Min(p => p.X))!;
        }
    }

    [Theory]
    [InlineData("ottertail", DrawingUnits.Metric)]
    [InlineData("beavertail", DrawingUnits.Metric)]
    [InlineData("sugar-island", DrawingUnits.Inch)]
    public void The_edge_view_letters_the_thicknesses_that_it_draws(string family, DrawingUnits units)
    {
        var report = SampleDesigns.Varied(family);
        var drawing = Svg("elevation.svg", report, units);
        var (texts, strokes) = (Texts(drawing), Strokes(drawing));
        var unit = units == DrawingUnits.Metric ? "mm" : "in";
        List<Lettered> places = Row(texts, $"From grip top, {unit}"), thick = Row(texts, $"Centre thickness, {unit}"), edge = Row(texts, $"Edge thickness, {unit}");
        Assert.True(places.Count > 10 && places.Count == thick.Count && edge.Count > 5);
        const double OriginX = 60;
        foreach (var (place, centre) in places.Zip(thick))
        {
            Assert.Equal(place.X - OriginX, Millimetres(place.Text, units), Step(place.X - OriginX, units) / 2 + 0.01);
            var line = strokes.Where(one => one.Css.StartsWith("stations", StringComparison.Ordinal) && Math.Abs(one.X0 - place.X) < 1e-3 && Math.Abs(one.X1 - place.X) < 1e-3).MinBy(one => one.Y0)!;
            var full = Math.Abs(line.Y1 - line.Y0);
            Assert.InRange(Millimetres(centre.Text, units), full - 0.06, full + Step(full, units) + 0.002);
            var solid = SolidLook.At(report, [Math.Clamp(place.X - OriginX, 0, report.Specification.Form.Places.OverallMm)]);
            Assert.Equal(2 * solid.HalfThickness[0], full, 0.003);
            if (edge.FirstOrDefault(one => Math.Abs(one.X - place.X) < 1e-3) is { } at)
                Assert.InRange(Millimetres(at.Text, units), 2 * solid.EdgeHalfThickness[0] - 0.06, 2 * solid.EdgeHalfThickness[0] + Step(5, units) + 0.002);
        }

        // The kerf: where it is said to be, down to what it leaves.
        var note = Assert.Single(texts, text => text.Text.StartsWith("Saw kerf", StringComparison.Ordinal));
        var words = Kerf().Match(note.Text);
        Assert.True(words.Success, note.Text);
        var kerfs = strokes.Where(one => one.Css.StartsWith("marks", StringComparison.Ordinal) && Math.Abs(one.X0 - one.X1) < 1e-6 && one.X0 < OriginX + report.Specification.Form.Places.GripEndMm).ToList();
        Assert.Equal(words.Groups["faces"].Value == "both faces" ? 2 : 1, kerfs.Count);
        Assert.All(kerfs, kerf => Assert.Equal(kerf.X0 - OriginX, Millimetres(words.Groups["at"].Value, units), 0.41));
        var left = Millimetres(words.Groups["left"].Value, units);
        if (kerfs.Count == 2) Assert.InRange(left, kerfs.Max(kerf => kerf.Y1) - kerfs.Min(kerf => kerf.Y1) - 0.06, kerfs.Max(kerf => kerf.Y1) - kerfs.Min(kerf => kerf.Y1) + Step(20, units) + 0.002);

        // The board: drawn as thick as it is lettered.
        var blank = Assert.Single(texts, text => text.Text.StartsWith("Blank at least", StringComparison.Ordinal));
        var least = Millimetres(Regex.Match(blank.Text, "least ([0-9. /]+) (mm|in) thick").Groups[1].Value, units);
        Assert.InRange(least, 2 * report.Stations.HalfThickness.Max() - 0.3, 2 * report.Stations.HalfThickness.Max() + 0.9);
    }

    [Theory]
    [InlineData("ottertail", DrawingUnits.Metric)]
    [InlineData("sturgeon-nose", DrawingUnits.Inch)]
    public void Curves_of_strength_read_off_their_scales_are_the_designs(string family, DrawingUnits units)
    {
        var report = SampleDesigns.Varied(family);
        var drawing = Svg("strength.svg", report, units);
        var (texts, curves) = (Texts(drawing), StrengthCurves.Of(report.Stations, report.Strength, report.Specification.Loads, report.Specification.Wood));
        var overall = report.Specification.Form.Places.OverallMm;

        // Two steps of a scale at the left give millimetres of paper for what is drawn.
        (double At, double PerUnit) Scale(string name)
        {
            var top = Assert.Single(texts, text => text.Text.StartsWith(name, StringComparison.Ordinal));
            var figures = texts.Where(text => text.Y > top.Y && text.Y < top.Y + 50 && text.X < top.X && Plain().IsMatch(text.Text)).OrderBy(text => text.Y).ToList();
            Assert.InRange(figures.Count, 3, 9);
            var (a, b) = (SvgReader.Number(figures[0].Text), SvgReader.Number(figures[^1].Text));
            var perUnit = (figures[^1].Y - figures[0].Y) / (b - a);
            Assert.Equal(42, Math.Abs(figures[^1].Y - figures[0].Y), 0.1);
            return (figures[0].Y - 1.2 - a * perUnit, perUnit);
        }

        List<(double X, double Y)> Drawn(string css, double from, double to) => [.. Paths(drawing, css)
            .Select(path => Pairs((string)path.Attribute("d")!)).Where(points => points.Count > 20 && points.All(p => p.Y > from && p.Y < to)).Single()];

        var moments = Scale("Bending moment");
        var used = Scale("Strength used");
        var flex = Scale("Bench flex under");
        for (var k = 0; k < curves.Cases.Count; k++)
        {
            var curve = curves.Cases[k];
            foreach (var (scale, values) in new[]
            {
                (moments, curve.MomentsNm), (used, [.. curve.StressesMPa.Zip(curve.StrengthsMPa, (stress, strength) => 100 * curve.Case.LeastFactor * stress / strength)]),
            })
            {
                var points = Drawn($"case{k}", scale.At - 60, scale.At + 4);
                for (var i = 0; i < points.Count; i++)
                {
                    Assert.Equal(24 + 258 * curves.XsMm[i] / overall, points[i].X, 0.002);
                    Assert.Equal(values[i], (points[i].Y - scale.At) / scale.PerUnit, 0.005 / Math.Abs(scale.PerUnit));
                }
            }

            // Its name and figures in the legend, beside a stroke as it is drawn.
            var result = report.Strength.Cases.Single(one => one.Case.Id == curve.Case.Id);
            var name = Assert.Single(texts, text => text.Text == result.Case.Name);
            Assert.Contains(texts, text => text.X == name.X && text.Text == string.Create(CultureInfo.InvariantCulture, $"{result.Case.ForceN:0} N, factor {result.SafetyFactor:0.00} of {result.Case.LeastFactor:0.00}"));
            Assert.Contains(Strokes(drawing), stroke => stroke.Css.EndsWith($"case{k}", StringComparison.Ordinal) && stroke.X1 < name.X && name.X - stroke.X1 < 4 && Math.Abs(stroke.Y0 - name.Y) < 3);
        }

        var bent = Drawn("flex0", flex.At - 60, flex.At + 60);
        for (var i = 0; i < bent.Count; i++)
            Assert.Equal(curves.BenchDeflectionsMm[i] / (units == DrawingUnits.Inch ? 25.4 : 1), (bent[i].Y - flex.At) / flex.PerUnit, 0.005 / Math.Abs(flex.PerUnit));

        // All that is allowed is 100 %.
        var limit = Assert.Single(Strokes(drawing), stroke => stroke.Css.EndsWith("limit", StringComparison.Ordinal));
        Assert.Equal(100, (limit.Y0 - used.At) / used.PerUnit, 0.01);
        Assert.Contains(texts, text => text.Text == "all that is allowed" && text.Y < limit.Y0 && limit.Y0 - text.Y < 3);

        // What stands at the foot.
        var edge = report.Strength.Cases.Single(one => !one.Case.BendsAlongTheGrain);
        var foot = Assert.Single(texts, text => text.Text.StartsWith("Across the grain", StringComparison.Ordinal)).Text;
        foreach (var figure in (double[])[edge.StressMPa, edge.StrengthMPa, edge.SafetyFactor]) Assert.Contains(figure.ToString("0.00", CultureInfo.InvariantCulture), foot, StringComparison.Ordinal);
        Assert.Contains($"Bench flex {DrawnLength.Text(report.Flex.BenchFlexMm, units)}", foot, StringComparison.Ordinal);
        Assert.EndsWith(string.Create(CultureInfo.InvariantCulture, $"first frequency {report.Flex.FirstFrequencyHz:0.0} Hz."), foot, StringComparison.Ordinal);
        foreach (var (mark, at) in new[] { ("Top hand", report.Specification.Form.Places.TopHandMm), ("Lower hand", report.Specification.Form.Places.LowerHandMm), ("Centre of pressure", report.Stroke.CentreOfPressureMm) })
        {
            var text = Assert.Single(texts, one => one.Text == $"{mark} {DrawnLength.Text(at, units)}");
            Assert.Equal(24 + 258 * at / overall, text.X, 0.01);
            Assert.Contains(Strokes(drawing), stroke => Math.Abs(stroke.X0 - text.X) < 0.002 && Math.Abs(stroke.X1 - text.X) < 0.002 && stroke.Y1 < text.Y && text.Y - stroke.Y1 < 8);
        }
    }

    [Theory]
    [InlineData("ottertail", DrawingUnits.Metric)]
    [InlineData("teardrop", DrawingUnits.Inch)]
    public void The_picture_of_the_whole_design_has_face_edge_sections_and_figures(string family, DrawingUnits units)
    {
        var report = SampleDesigns.Varied(family);
        var drawing = Svg("overview.svg", report, units);
        var (texts, places) = (Texts(drawing), report.Specification.Form.Places);
        var wood = Paths(drawing, "wood").Select(path => Pairs((string)path.Attribute("d")!)).ToList();

        // Face and edge at one scale, then six sections at another.
        Assert.Equal(8, wood.Count);
        var scale = Wide(wood[0]) / places.OverallMm;
        Assert.Equal((960 - 2 * 24) / places.OverallMm, scale, 1e-4);
        var turn = report.Specification.Form.BendDegrees * Math.PI / 180;
        Assert.Equal(scale * (places.ThroatMm + places.BladeMm * Math.Cos(turn)), Wide(wood[1]), 3.0);
        Assert.InRange(Tall(wood[0]), 0.97 * scale * report.Specification.Form.Blade.WidthMm, 1.35 * scale * report.Specification.Form.Blade.WidthMm);

        var names = new[] { "grip", "shaft", "shoulder", "¼ blade", "½ blade", "near tip" };
        var plan = SectionPlan.Of(report).Where(place => place.Name is "Grip at its crest" or "Lower hand to throat" or "Blade, shoulder" or "Blade at a quarter" or "Blade at half" or "Blade near the tip").ToList();
        Assert.Equal(names.Length, plan.Count);
        var largest = Wide(wood[2]) / (2 * plan[0].Section.HalfWidthMm);
        foreach (var ((name, place), section) in names.Zip(plan).Zip(wood.Skip(2)))
        {
            Assert.Equal(largest, Wide(section) / (2 * place.Section.HalfWidthMm), 1e-3);
            Assert.Equal(largest * 2 * place.Section.HalfThicknessMm, Tall(section), 0.2);
            var middle = (section.Max(p => p.X) + section.Min(p => p.X)) / 2;
            var caption = Assert.Single(texts, text => text.Text == name);
            Assert.Equal(middle, caption.X, 0.01);
            Assert.Contains(texts, text => Math.Abs(text.X - middle) < 0.01 && text.Y < caption.Y && text.Y > section.Max(p => p.Y) && text.Text == DrawnLength.Text(2 * place.Section.HalfThicknessMm, units, LengthRounding.Up));
            Assert.InRange(section.Max(p => p.X), 24, 960 - 24 + 0.01);
        }

        // Sections stand clear of one another.
        Assert.All(wood.Skip(2).Zip(wood.Skip(3)), pair => Assert.True(pair.First.Max(p => p.X) + 10 < pair.Second.Min(p => p.X)));

        // Two lengths under the face that together are the whole.
        Assert.Contains(texts, text => text.Text == $"{DrawnLength.Text(places.BladeMm, units)} blade");
        Assert.Contains(texts, text => text.Text == $"{DrawnLength.Text(places.ThroatMm, units)} grip and shaft");
        foreach (var figure in KeyFigures.Of(report, SampleDesigns.Context(units)))
        {
            var name = Assert.Single(texts, text => text.Text == figure.Name);
            Assert.Contains(texts, text => text.Text == figure.Value && text.X == name.X && text.Y > name.Y && text.Y < name.Y + 20);
        }

        // The sign of the balance point stands on it, a circle of which two quarters are filled.
        var sign = Paths(drawing, "ink").Select(path => SvgReader.Curves((string)path.Attribute("d")!).Single()).ToList();
        Assert.Equal(2, sign.Count);
        var x = (sign.Max(curve => curve.A.X) + sign.Min(curve => curve.A.X)) / 2;
        Assert.Equal(24 + scale * Landmarks.BalanceXMm(report), x, 0.01);
        Assert.All(sign, curve => Assert.Equal(5, Math.Abs(curve.A.X - x), 0.002));
    }

    [Theory]
    [InlineData(0.7, 1)]
    [InlineData(1, 1)]
    [InlineData(1.3, 2)]
    [InlineData(2.01, 5)]
    [InlineData(30, 50)]
    [InlineData(0.0061, 0.01)]
    public void A_scale_goes_by_ones_twos_and_fives(double wanted, double step) => Assert.Equal(step, Ticks.Step(wanted), 9);

    private static double Wide(List<(double X, double Y)> points) => points.Max(p => p.X) - points.Min(p => p.X);

    private static double Tall(List<(double X, double Y)> points) => points.Max(p => p.Y) - points.Min(p => p.Y);

    // Corners of a path in order; of a curve its ends alone.
    private static List<(double X, double Y)> Pairs(string data)
    {
        var points = new List<(double X, double Y)>();
        foreach (Match step in PathStep().Matches(data))
        {
            double[] numbers = [.. Decimal().Matches(step.Value).Select(number => SvgReader.Number(number.Value))];
            points.Add((numbers[^2], numbers[^1]));
        }

        return points;
    }

    private static IEnumerable<XElement> Paths(XDocument drawing, string css) =>
        drawing.Descendants(SvgReader.Svg + "path").Where(path => ((string)path.Parent!.Attribute("class")!).Split(' ').Contains(css));

    private static List<Stroke> Strokes(XDocument drawing) =>
    [
        .. drawing.Descendants(SvgReader.Svg + "path")
            .Select(path => (Css: (string)path.Parent!.Attribute("class")!, Points: Pairs((string)path.Attribute("d")!)))
            .Where(path => path.Points.Count == 2)
            .Select(path => new Stroke(path.Css, path.Points[0].X, path.Points[0].Y, path.Points[1].X, path.Points[1].Y)),
    ];

    [GeneratedRegex("^(?:[A-Z][a-z ]* )?(?<at>[0-9][0-9. /]*?)(?: mm| in)?$")]
    private static partial Regex Figure();

    [GeneratedRegex("^Saw kerf (?<at>[0-9. /]+) (?:mm|in) from the top, (?<faces>both faces|this face); leave (?<left>[0-9. /]+) (?:mm|in)$")]
    private static partial Regex Kerf();

    [GeneratedRegex(@"^-?[0-9]+(?:\.[0-9]+)?$")]
    private static partial Regex Plain();

    [GeneratedRegex("[MLC][^MLCZ]+")]
    private static partial Regex PathStep();

    [GeneratedRegex(@"-?[0-9]+(?:\.[0-9]+)?")]
    private static partial Regex Decimal();
}
