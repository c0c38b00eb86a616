using System.Text.RegularExpressions;
using Paddle.Design;
using Paddle.Design.Units;
using Paddle.Drawings.Tests.Support;
using Paddle.Drawings.Views;
using UglyToad.PdfPig;
using static Paddle.Drawings.Tests.Support.DrawnFile;

namespace Paddle.Drawings.Tests;

/// <summary>Figures that somebody saws to, read back from the files and held against what the same file draws.</summary>
public partial class LetteredFiguresTests
{
    public static TheoryData<string, string, DrawingUnits> Drawings()
    {
        var data = new TheoryData<string, string, DrawingUnits>();
        foreach (var family in (string[])["ottertail", "square-tip", SampleDesigns.OwnOffsets])
        {
            foreach (var units in Enum.GetValues<DrawingUnits>())
            {
                data.Add("outline.svg", family, units);
                data.Add("half-template.svg", family, units);
            }
        }

        return data;
    }

    [Theory, MemberData(nameof(Drawings))]
    public void Half_breadths_and_places_are_those_of_the_curve_above_them(string file, string family, DrawingUnits units)
    {
        var drawing = Svg(file, SampleDesigns.Varied(family), units);
        var id = file == "outline.svg" ? OutlineView.PathId : HalfTemplateView.PathId;
        var curves = SvgReader.Curves((string)SvgReader.ById(drawing, id).Attribute("d")!);
        var (top, centre) = (curves[0].A.X, curves[0].A.Y);
        var texts = Texts(drawing);
        var unit = units == DrawingUnits.Metric ? "mm" : "in";
        var places = Row(texts, file == "outline.svg" ? $"From grip top, {unit}" : $"From top, {unit}");
        var breadths = Row(texts, $"Half-breadth, {unit}");
        Assert.True(places.Count > 10);
        Assert.Equal(places.Select(text => text.X), breadths.Select(text => text.X));
        foreach (var (place, breadth) in places.Zip(breadths))
        {
            // Read to the nearest tenth of a millimetre, or to a thirty-second and beyond a foot to a sixteenth of an inch.
            Assert.Equal(place.X - top, Millimetres(place.Text, units), Step(place.X - top, units) / 2 + 0.01);
            var curve = curves.First(c => place.X <= c.D.X + 1e-6);
            var half = centre - SvgReader.YAt(curve, place.X);
            Assert.Equal(half, Millimetres(breadth.Text, units), Step(half, units) / 2 + 0.02);
        }
    }

    [Theory, MemberData(nameof(Drawings))]
    public void Named_places_stand_where_their_figure_says(string file, string family, DrawingUnits units)
    {
        var report = SampleDesigns.Varied(family);
        var drawing = Svg(file, report, units);
        var id = file == "outline.svg" ? OutlineView.PathId : HalfTemplateView.PathId;
        var curves = SvgReader.Curves((string)SvgReader.ById(drawing, id).Attribute("d")!);
        var top = curves[0].A.X;
        var named = 0;
        foreach (var text in Texts(drawing))
        {
            var match = Place().Match(text.Text);
            if (!match.Success) continue;
            named++;
            var x = Millimetres(match.Groups["at"].Value, units);
            // The lettering stands two millimetres beside its line; beyond a foot it is read to a sixteenth of an inch, a balance point to a millimetre.
            Assert.Equal(x, text.X - 2 - top, units == DrawingUnits.Metric ? 0.51 : 25.4 / 32 + 0.21);
            if (match.Groups["half"].Success)
            {
                var half = curves[0].A.Y - SvgReader.YAt(curves.First(c => top + x <= c.D.X + 1), Math.Min(top + x, curves.Last(c => c.D.X > c.A.X).D.X));
                Assert.Equal(half, Millimetres(match.Groups["half"].Value, units), Step(half, units) / 2 + 0.15);
            }
        }

        Assert.InRange(named, 3, 12);
        string[] hands = ["Lower hand", "Throat"];
        Assert.All(hands, name => Assert.Contains(Texts(drawing), text => text.Text.StartsWith(name, StringComparison.OrdinalIgnoreCase)));
    }

    [Theory]
    [InlineData(DrawingUnits.Metric, 100, 10, "100 mm, within 0.5 mm", "2  Measure the square both ways: 100 mm within 0.5 mm.")]
    [InlineData(DrawingUnits.Inch, 101.6, 12.7, "4 in, within 1/64 in", "2  Measure the square both ways: 4 in within 1/64 in.")]
    public void The_square_of_the_scale_check_is_as_large_as_it_says_on_every_file(
        DrawingUnits units, double sideMm, double tickMm, string lettering, string instruction)
    {
        var report = SampleDesigns.Of("ottertail");
        var svg = Svg("half-template.svg", report, units);
        var corners = Numbers().Matches((string)SvgReader.ById(svg, "calibration-square").Attribute("d")!).Select(number => SvgReader.Number(number.Value)).ToList();
        Assert.Equal(sideMm, corners.Where((_, i) => i % 2 == 0).Max() - corners.Where((_, i) => i % 2 == 0).Min(), 1e-3);
        Assert.Equal(sideMm, corners.Where((_, i) => i % 2 == 1).Max() - corners.Where((_, i) => i % 2 == 1).Min(), 1e-3);
        Assert.Contains(Texts(svg), text => text.Text == lettering);

        var dxf = new DxfReader(Written("template.dxf", report, units)).Entities().Where(entity => entity.Layer == "CALIBRATION").ToList();
        var square = dxf.Single(entity => entity.Closed).Points;
        Assert.Equal(sideMm, square.Max(p => p.X) - square.Min(p => p.X), 1e-3);
        Assert.Contains(dxf, entity => entity.Text == lettering);

        // The marks along its foot are those of a rule: every centimetre, or every half inch.
        var foot = square.Min(p => p.Y);
        var ticks = dxf.Where(entity => entity.Points.Count == 2 && entity.Points.Any(p => Math.Abs(p.Y - foot) < 1e-6) && entity.Points.All(p => p.Y < foot + 5))
            .Select(entity => entity.Points[0].X - square.Min(p => p.X)).Order().ToList();
        Assert.Equal(Enumerable.Range(1, (int)Math.Round(sideMm / tickMm) - 1).Select(k => Math.Round(k * tickMm, 3)), ticks.Select(x => Math.Round(x, 3)));

        using var pdf = PdfDocument.Open(Written("templates.pdf", report, units));
        var words = string.Concat(pdf.GetPage(1).Letters.Select(letter => letter.Value));
        Assert.Contains(instruction, words, StringComparison.Ordinal);
        Assert.Contains(lettering, words, StringComparison.Ordinal);
        Assert.Contains(pdf.GetPage(1).Paths, path => path.GetBoundingRectangle() is { } box
            && Math.Abs(box.Width * 25.4 / 72 - sideMm) < 0.05 && Math.Abs(box.Height * 25.4 / 72 - sideMm) < 0.05);
    }

    [Theory]
    [InlineData(DrawingUnits.Metric)]
    [InlineData(DrawingUnits.Inch)]
    public void A_card_letters_the_section_that_it_shows(DrawingUnits units)
    {
        // An oval shaft: its lines stand further off on the sides.
        var report = PaddleDesigner.Design(SampleDesigns.Asked("ottertail") with { Pinned = new(ShaftWidthMm: 27, ShaftThicknessMm: 30) });
        var drawing = Svg("sections.svg", report, units);
        var texts = Texts(drawing);

        // Closed chains of many chords are the sections themselves.
        var sections = drawing.Descendants(SvgReader.Svg + "path").Select(path => Numbers().Matches((string)path.Attribute("d")!))
            .Where(numbers => numbers.Count > 200).Select(numbers => numbers.Select(number => SvgReader.Number(number.Value)).ToList()).ToList();
        Assert.True(sections.Count >= 8);
        var octagons = 0;
        foreach (var section in sections)
        {
            double[] xs = [.. section.Where((_, i) => i % 2 == 0)], ys = [.. section.Where((_, i) => i % 2 == 1)];
            double wide = xs.Max() - xs.Min(), thick = ys.Max() - ys.Min();

            // Its caption is the nearest above it that begins at its card's left edge, a rim of 10 mm beside the section.
            var caption = texts.Where(text => Math.Abs(text.X - (xs.Min() - 10)) < 0.01 && text.Y < ys.Min() && text.Y > ys.Min() - 45).Select(text => text.Text).ToList();
            var size = Size().Match(Assert.Single(caption, text => text.Contains(" wide ·", StringComparison.Ordinal)));
            Assert.Equal(wide, Millimetres(size.Groups["wide"].Value, units), Step(wide, units) / 2 + 0.01);
            Assert.InRange(Millimetres(size.Groups["thick"].Value, units), thick - 0.06, thick + Step(thick, units));
            foreach (var (line, next) in caption.Zip(caption.Skip(1).Append("")))
            {
                // Lines for eight sides lie 1 − 1/√2 of a half-breadth off each edge, for sixteen tan 22.5° − tan 11.25° of it off the corner (geometry).
                if (Sides().Match(line) is not { Success: true } sides) continue;
                octagons++;
                var share = sides.Groups["n"].Value == "8" ? (1 - 1 / Math.Sqrt(2)) / 2 : (Math.Tan(Math.PI / 8) - Math.Tan(Math.PI / 16)) / 2;
                var face = Millimetres(sides.Groups["face"].Value, units);
                Assert.Equal((sides.Groups["n"].Value == "8" ? 2 : 1) * share * wide, face, Step(10, units) / 2 + 0.3);
                var side = OnTheSides().Match(next) is { Success: true } other ? Millimetres(other.Groups["side"].Value, units) : face;
                Assert.Equal((sides.Groups["n"].Value == "8" ? 2 : 1) * share * thick, side, Step(10, units) / 2 + 0.3);
            }
        }

        // To be read at arm's length: no line is shrunk below the small lettering of the drawings, capitals of 2.5 mm in letters of 3.47.
        Assert.All(drawing.Descendants(SvgReader.Svg + "text"), text => Assert.True(SvgReader.Number((string)text.Attribute("font-size")!) > 3.46, text.Value));
        Assert.True(octagons >= 4);
    }

    [GeneratedRegex("^(?:Top hand|Lower hand|Balance|Throat|Widest)[a-z ]* (?<at>[0-9. /]+) (?:mm|in)(?:, half (?<half>[0-9. /]+))?$")]
    private static partial Regex Place();

    [GeneratedRegex(@"-?[0-9]+(?:\.[0-9]+)?")]
    private static partial Regex Numbers();

    [GeneratedRegex("^(?<wide>[0-9. /]+) wide · (?<thick>[0-9. /]+?)(?: (?:mm|in))? thick")]
    private static partial Regex Size();

    [GeneratedRegex("^on the sides (?<side>[0-9. /]+) (?:mm|in)$")]
    private static partial Regex OnTheSides();

    [GeneratedRegex("^(?<n>8|16) sides: lines (?<face>[0-9. /]+) (?:mm|in) off")]
    private static partial Regex Sides();
}
