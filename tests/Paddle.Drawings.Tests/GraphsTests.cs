using System.Globalization;
using System.Xml.Linq;
using Paddle.Design.Comparison;
using Paddle.Design.Fitting;
using Paddle.Design.Units;
using Paddle.Drawings.Tests.Support;
using Paddle.Drawings.Views;
using static Paddle.Drawings.Tests.Support.DrawnFile;
using static Paddle.Drawings.Tests.Support.Printed;

namespace Paddle.Drawings.Tests;

/// <summary>Graphs read off the scales that are lettered beside them, as their readers read them.</summary>
public class GraphsTests
{
    // A point of a scale: where a figure stands and what it says.
    private sealed record Scale(double At0, double PerUnit)
    {
        public double Value(double at) => (at - At0) / PerUnit;

        // All figures must stand evenly, or it is no scale.
        public static Scale Through(IReadOnlyList<(double At, double Value)> figures, double roundedTo)
        {
            Assert.InRange(figures.Count, 3, 30);
            var (a, b) = (figures.MinBy(one => one.Value), figures.MaxBy(one => one.Value));
            var scale = new Scale(a.At - a.Value * (b.At - a.At) / (b.Value - a.Value), (b.At - a.At) / (b.Value - a.Value));
            Assert.All(figures, one => Assert.Equal(one.Value, scale.Value(one.At), roundedTo));
            return scale;
        }
    }

    private static SizeRunAdvice Run { get; } = new(
        [new(1384.3, 800, 0.314, 3), new(1473.2, 880, 0.452, 5), new(1574.8, 960, 0.234, 2)], 17.46, 0.734, 0.951,
        [new(1, 44.4, null, [1473.2]), new(2, 25.4, 19, [1400, 1520]), new(3, 17.46, 7.94, [1384.3, 1473.2, 1574.8]), new(4, 12.7, 4.76, [1380, 1440, 1500, 1580])],
        [new(1320, 1370, 0.12), new(1370, 1420, 0.26), new(1420, 1470, 0.31), new(1470, 1520, 0.21), new(1520, 1570, 0.1)], []);

    [Theory]
    [InlineData(DrawingUnits.Metric)]
    [InlineData(DrawingUnits.Inch)]
    public void Customers_and_sizes_read_off_the_scales_are_the_runs(DrawingUnits units)
    {
        var svg = XDocument.Parse(SizeRunSvg.Write(Run, SampleDesigns.Context(units)));
        var (texts, inks, unit) = (Texts(svg), Ink.Of(svg.Root!), units == DrawingUnits.Metric ? "mm" : "in");
        var bars = inks.Where(ink => ink.Css.EndsWith(SizeRunView.BarCss, StringComparison.Ordinal)).ToList();
        Assert.Equal(5, bars.Count);
        var foot = bars[0].Bottom;
        var along = Scale.Through([.. texts.Where(text => Math.Abs(text.Y - foot - 5.5) < 1e-6).Select(text => (text.X, Millimetres(text.Text, units)))], 0.01);
        Assert.Contains(texts, text => text.Text == $"Overall length that fits, {unit}" && text.Y > foot);
        var up = Scale.Through([.. texts.Where(text => text.X < bars[0].Left && text.Y < foot + 2 && text.Y > 30 && char.IsDigit(text.Text[0])).Select(text => (text.Y - 1.2, SvgReader.Number(text.Text)))], 2e-3);
        Assert.Contains(texts, text => text.Text == "% of the customers");
        foreach (var (bin, bar) in Run.Histogram.Zip(bars))
        {
            Assert.Equal((bin.LowMm, bin.HighMm), (along.Value(bar.Left), along.Value(bar.Right)), (a, b) => Math.Abs(a.Item1 - b.Item1) < 0.05 && Math.Abs(a.Item2 - b.Item2) < 0.05);
            Assert.Equal((0, 100 * bin.Share), (up.Value(bar.Bottom), up.Value(bar.Top)), (a, b) => Math.Abs(a.Item1 - b.Item1) < 0.01 && Math.Abs(a.Item2 - b.Item2) < 0.01);
        }

        var lines = inks.Where(ink => ink.Css.EndsWith(SizeRunView.SizeCss, StringComparison.Ordinal)).ToList();
        Assert.Equal(Run.Sizes.Select(size => size.OverallLengthMm), lines.Select(line => along.Value(line.Left)), (a, b) => Math.Abs(a - b) < 0.05);
        foreach (var ((size, line), words) in Run.Sizes.Zip(lines).Zip((string[])["# × 3, 31 %", "# × 5, 45 %", "# × 2, 23 %"]))
        {
            var text = Assert.Single(texts, text => text.Text.EndsWith(words[1..], StringComparison.Ordinal));
            Assert.Equal(1.5, Math.Abs(text.X - line.Left), 0.002);
            new Said(words, (size.OverallLengthMm, Near)).AssertIn(text.Text, units);
        }

        new Said("3 sizes: mean misfit #; 73 % within #, 95 % within #", (17.46, Near), (25, Near), (50, Near)).AssertIn(Assert.Single(texts, text => text.Text.StartsWith("3 sizes", StringComparison.Ordinal)).Text, units);
        Assert.Equal("Heron Lake hire paddle M: size run", svg.Root!.Element(SvgReader.Svg + "title")!.Value);
        Assert.StartsWith("Histogram of customers by the overall length that fits them. Sizes: ", svg.Root!.Element(SvgReader.Svg + "desc")!.Value, StringComparison.Ordinal);

        // What each further size buys, column by column.
        List<Lettered> sizes = Row(texts, "Sizes"), misfits = Row(texts, "Mean misfit"), gains = Row(texts, "Last size buys");
        Assert.Equal(["1", "2", "3", "4"], sizes.Select(text => text.Text));
        Assert.Equal(sizes.Select(text => text.X), misfits.Select(text => text.X));
        Assert.Equal(sizes.Skip(1).Select(text => text.X), gains.Select(text => text.X));
        foreach (var (point, text) in Run.Curve.Zip(misfits)) new Said("#", (point.MeanMisfitMm, Near)).AssertIn(text.Text, units);
        foreach (var (point, text) in Run.Curve.Skip(1).Zip(gains)) new Said("#", (point.GainMm!.Value, Near)).AssertIn(text.Text, units);
        Assert.Equal(["3"], svg.Descendants(SvgReader.Svg + "text").Where(text => (string?)text.Attribute("font-weight") == "bold" && SvgReader.Number((string)text.Attribute("y")!) == sizes[0].Y && text.Value != "Sizes").Select(text => text.Value));
    }

    // Customers who are nearly alike: tenths of an inch are on no rule.
    [Theory]
    [InlineData(3.175)]
    [InlineData(6.35)]
    [InlineData(9)]
    public void A_short_scale_in_inches_names_its_places_exactly(double barMm)
    {
        var advice = Run with { Sizes = [new(1397 + barMm, 850, 1, null)], Histogram = [new(1397, 1397 + barMm, 0.4), new(1397 + barMm, 1397 + 2 * barMm, 0.6)] };
        var svg = XDocument.Parse(SizeRunSvg.Write(advice, SampleDesigns.Context(DrawingUnits.Inch)));
        var bars = Ink.Of(svg.Root!).Where(ink => ink.Css.EndsWith(SizeRunView.BarCss, StringComparison.Ordinal)).ToList();
        var along = Scale.Through([.. Texts(svg).Where(text => Math.Abs(text.Y - bars[0].Bottom - 5.5) < 1e-6).Select(text => (text.X, Millimetres(text.Text, DrawingUnits.Inch)))], 0.01);
        Assert.Equal(1397, along.Value(bars[0].Left), 0.02);
        Assert.Equal(1397 + 2 * barMm, along.Value(bars[1].Right), 0.02);
    }

    [Fact]
    public void One_size_of_a_run_without_a_fleet_is_told_in_the_singular()
    {
        var svg = XDocument.Parse(SizeRunSvg.Write(Run with { Sizes = [new(1473.2, 880, 1, null)] }, SampleDesigns.Context()));
        Assert.Contains(Texts(svg), text => text.Text == "1 size: mean misfit 17.5 mm; 73 % within 25 mm, 95 % within 50 mm");
        Assert.Contains(Texts(svg), text => text.Text == "1473.2 mm, 100 %");
    }

    [Theory]
    [InlineData(DrawingUnits.Metric)]
    [InlineData(DrawingUnits.Inch)]
    public void Designs_laid_over_one_another_read_off_the_scales_are_the_designs(DrawingUnits units)
    {
        ComparedPaddle[] designs = [new("old", SampleDesigns.Varied("ottertail")), new("new", SampleDesigns.Varied("teardrop")), new("child", SampleDesigns.Varied("sturgeon-nose"))];
        var svg = XDocument.Parse(ComparisonSvg.Write(designs, SampleDesigns.Context(units)));
        var (texts, inks, unit) = (Texts(svg), Ink.Of(svg.Root!), units == DrawingUnits.Metric ? "mm" : "in");
        var curves = inks.Where(ink => ink.Layer == "outline").ToList();
        Assert.Equal(6, curves.Count);
        var foot = texts.Single(text => text.Text == $"From the top of the grip, {unit}").Y - 10.5;
        var along = Scale.Through([.. texts.Where(text => Math.Abs(text.Y - foot - 5.5) < 1e-6).Select(text => (text.X, Millimetres(text.Text, units)))], 0.01);
        foreach (var (name, first) in new[] { ("Half-breadth", 0), ("Thickness along the spine", 3) })
        {
            var top = texts.Single(text => text.Text == $"{name}, {unit}").Y;
            var up = Scale.Through([.. texts.Where(text => text.Y > top && text.Y < top + 58 && text.X < 23 && char.IsDigit(text.Text[0])).Select(text => (text.Y - 1.2, Millimetres(text.Text, units)))], 0.01);
            for (var k = 0; k < designs.Length; k++)
            {
                var (report, curve) = (designs[k].Report, curves[first + k]);
                Assert.EndsWith($"paddle{k}", curve.Css, StringComparison.Ordinal);
                Assert.Equal((0, report.Specification.Form.Places.OverallMm), (along.Value(curve.Left), along.Value(curve.Right)), (a, b) => Math.Abs(a.Item1 - b.Item1) < 0.05 && Math.Abs(a.Item2 - b.Item2) < 0.05);
                foreach (var (x, y) in curve.Points.Where((_, i) => i % 25 == 3))
                {
                    var at = Math.Clamp(along.Value(x), 0, report.Specification.Form.Places.OverallMm);
                    Assert.Equal(first == 0 ? report.Outline.HalfBreadthMm(at) : 2 * SolidLook.At(report, [at]).HalfThickness[0], up.Value(y), 0.2);
                }
            }
        }

        // The legend, beside a stroke drawn as the curve is.
        for (var k = 0; k < designs.Length; k++)
        {
            var (report, form) = (designs[k].Report, designs[k].Report.Specification.Form);
            var text = Assert.Single(texts, one => one.Text.StartsWith($"{designs[k].Id}: ", StringComparison.Ordinal));
            var mass = Mass(report.Finished.MassG, units);
            var off = report.Finished.CentreOfMassMm - form.Places.LowerHandMm;
            var isAt = Math.Abs(off) < (units == DrawingUnits.Metric ? 0.5 : 25.4 / 32);
            Said said = isAt
                ? new($"{designs[k].Id}: #, {form.Blade.Family!.Name.ToLowerInvariant()}, white ash, {mass}, balances at the lower hand", (form.Places.OverallMm, Near))
                : new($"{designs[k].Id}: #, {form.Blade.Family!.Name.ToLowerInvariant()}, white ash, {mass}, balances # towards the {(off > 0 ? "blade" : "grip")}", (form.Places.OverallMm, Near), (Math.Abs(off), Rough));
            said.AssertIn(text.Text, units);
            Assert.Contains(text.Text, svg.Root!.Element(SvgReader.Svg + "desc")!.Value, StringComparison.Ordinal);
            Assert.Contains(inks, ink => ink.Css.EndsWith($"marks line paddle{k}", StringComparison.Ordinal) && Math.Abs(ink.Right + 2 - text.X) < 0.002 && Math.Abs(ink.Top + 1 - text.Y) < 0.002);
        }

        Assert.StartsWith("Half outlines and spine thicknesses of 3 designs laid over one another. ", svg.Root!.Element(SvgReader.Svg + "desc")!.Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Designs_by_their_figures_stand_where_the_scales_say(bool isThreeFigured)
    {
        double[][] figures = [[620.5, 11.3, 30], [655, 9.1, 42], [702.25, 7.75, 36], [690, 10.4, 33], [611, 12.9, 38]];
        TradeOffStanding[] standings = [TradeOffStanding.Unbeaten, TradeOffStanding.Unbeaten, TradeOffStanding.Unbeaten, TradeOffStanding.Beaten, TradeOffStanding.MissesAim];
        TradeOffAxis[] axes = [new("mass", "g", false), new("bench flex", "mm", true), new("edge factor", "", true)];
        var kept = isThreeFigured ? 3 : 2;
        var svg = XDocument.Parse(TradeOffSvg.Write(
            new(["blade width, mm", "wood"], axes[..kept], [.. figures.Select((one, k) => new TradeOffPoint($"design {k}", one[..kept], standings[k]))], 2), SampleDesigns.Context()));
        var (texts, inks) = (Texts(svg), Ink.Of(svg.Root!));
        const double Foot = 164;
        var across = Scale.Through([.. texts.Where(text => Math.Abs(text.Y - Foot - 5) < 1e-6 && text.X > 29).Select(text => (text.X, SvgReader.Number(text.Text)))], 2e-3);
        var up = Scale.Through([.. texts.Where(text => text.X == 28 && text.Y < Foot + 2).Select(text => (text.Y - 1.2, SvgReader.Number(text.Text)))], 2e-3);
        Assert.Contains(texts, text => text.Text == "mass, g (less is better)" && text.Y == Foot + 11);
        Assert.Contains(texts, text => text.Text == "bench flex, mm (more is better)" && text.X < 28);

        var points = inks.Where(ink => ink.Css.Contains(" point ", StringComparison.Ordinal) && ink.Bottom < Foot + 1e-6).ToList();
        var widest = points.Where(ink => ink.Points.Count > 2).Max(ink => ink.Width);
        for (var k = 0; k < figures.Length; k++)
        {
            var css = standings[k] switch { TradeOffStanding.Unbeaten => "unbeaten", TradeOffStanding.Beaten => "beaten", _ => "missed" };
            var marks = points.Where(ink => ink.Css.EndsWith($"point {css}", StringComparison.Ordinal)
                && Math.Abs(across.Value(ink.Centre.X) - figures[k][0]) < 0.01 && Math.Abs(up.Value(ink.Centre.Y) - figures[k][1]) < 0.001).ToList();
            Assert.Equal(css == "missed" ? 2 : 1, marks.Count);
            if (css == "missed") continue;

            // The larger the third figure, the larger the circle; all alike without one.
            if (!isThreeFigured) Assert.Equal(3, marks[0].Width, 0.002);
            else Assert.Equal(Math.Abs(figures[k][2] - 42) < 1e-9, Math.Abs(marks[0].Width - widest) < 0.002);
        }

        Assert.Equal(isThreeFigured, texts.Exists(text => text.Text == "The larger the circle, the larger the edge factor (more is better)"));
        Assert.Contains(texts, text => text.Text == "3 of 7 designs are beaten by no other; 1 misses an aim; 2 cannot be made");
        Assert.All((string[])["no other beats it", "beaten by another", "misses an aim, held against none", "blade width, mm; wood"], words => Assert.Contains(texts, text => text.Text == words));

        // The unbeaten ones by their numbers, the least first figure first, with all their figures; each number beside its point.
        foreach (var (n, k) in ((int, int)[])[(1, 0), (2, 1), (3, 2)])
        {
            var name = Assert.Single(texts, text => text.Text == $"design {k}");
            var row = texts.Where(text => text.Y == name.Y).OrderBy(text => text.X).Select(text => text.Text).ToList();
            Assert.Equal([n.ToString(CultureInfo.InvariantCulture), $"design {k}", .. figures[k][..kept].Select(figure => figure.ToString(CultureInfo.InvariantCulture))], row);
            var point = points.Single(ink => ink.Css.EndsWith(" unbeaten", StringComparison.Ordinal) && Math.Abs(across.Value(ink.Centre.X) - figures[k][0]) < 0.01);
            Assert.Contains(texts, text => text.Text == n.ToString(CultureInfo.InvariantCulture) && text.X < point.Left && point.Left - text.X < 1 && text.Y < point.Top && point.Top - text.Y < 1);
        }

        Assert.DoesNotContain(texts, text => text.Text is "design 3" or "design 4");
        Assert.StartsWith("Designs by mass, g across and bench flex, mm upward. 3 of 7 designs are beaten by no other", svg.Root!.Element(SvgReader.Svg + "desc")!.Value, StringComparison.Ordinal);
    }

    // 1 lb is 453.59237 g exactly.
    internal static string Mass(double grams, DrawingUnits units)
    {
        var metric = string.Create(CultureInfo.InvariantCulture, $"{grams:0} g");
        return units == DrawingUnits.Metric ? metric : string.Create(CultureInfo.InvariantCulture, $"{grams / (453.59237 / 16):0.0} oz ({metric})");
    }
}
