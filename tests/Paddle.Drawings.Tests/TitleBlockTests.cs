using System.Globalization;
using Paddle.Design;
using Paddle.Design.Finishing;
using Paddle.Design.Units;
using Paddle.Drawings.Tests.Support;
using Paddle.Drawings.Views;
using static Paddle.Drawings.Tests.Support.DrawnFile;
using static Paddle.Drawings.Tests.Support.Printed;

namespace Paddle.Drawings.Tests;

/// <summary>The title block, headings and dimensions of the drawings of a design, read back from the files.</summary>
public class TitleBlockTests
{
    // A straight paddle, a bent one with other finishes, and one of the maker's own table.
    public static TheoryData<string, DrawingUnits> Designs => new()
    {
        { "ottertail", DrawingUnits.Metric }, { "ottertail", DrawingUnits.Inch }, { "bent", DrawingUnits.Inch }, { "bent", DrawingUnits.Metric }, { SampleDesigns.OwnOffsets, DrawingUnits.Metric },
    };

    private static DesignReport Bent { get; } = PaddleDesigner.Design(SampleDesigns.Asked("teardrop", 12, species: "black-cherry") with { Finish = new(SurfaceFinish.Oil, 2, SurfaceFinish.Oil, 2, true) });

    private static DesignReport Report(string name) => name == "bent" ? Bent : SampleDesigns.Varied(name);

    [Theory, MemberData(nameof(Designs))]
    public void The_key_figures_of_every_drawing_are_the_reports(string name, DrawingUnits units)
    {
        var report = Report(name);
        var (form, sizes, places, wood) = (report.Specification.Form, report.Sizes, report.Specification.Form.Places, report.Specification.Wood);
        string N(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
        Said FromHand(double balanceMm)
        {
            var off = balanceMm - places.LowerHandMm;
            return Math.Abs(off) < (units == DrawingUnits.Metric ? 0.5 : 25.4 / 32) ? new Said("at the lower hand") : new Said($"# towards the {(off > 0 ? "blade" : "grip")}", (Math.Abs(off), Rough));
        }

        var weakest = report.Strength.Cases.MinBy(one => one.SafetyFactor / one.Case.LeastFactor)!;
        var density = units == DrawingUnits.Metric ? $"{N(wood.DensityKgM3, "0")} kg/m³" : $"{N(wood.DensityKgM3 / 16.018463374, "0")} lb/ft³ ({N(wood.DensityKgM3, "0")} kg/m³)";
        var area = units == DrawingUnits.Metric ? $"{N(report.Stroke.BladeAreaCm2, "0")} cm²" : $"{N(report.Stroke.BladeAreaCm2 / 2.54 / 2.54, "0")} in²";
        (string Name, Said Value)[] expected =
        [
            ("Overall", new("#", (places.OverallMm, Near))),
            ("Between the hands", new("#", (places.LowerHandMm - places.TopHandMm, Near))),
            ("Blade, length × width", new("~ × #", (places.OverallMm - places.ThroatMm, Near), (form.Blade.WidthMm, Near))),
            ("Shaft at lower hand", new("~ × #", (sizes.ShaftWidthMm, Up), (sizes.ShaftThicknessMm, Up))),
            ("Shaft below grip", new("~ × #", (sizes.UpperWidthMm, Up), (sizes.UpperThicknessMm, Up))),
            ("Blade spine, throat · middle · tip", new("~ · ~ · #", (sizes.ThroatThicknessMm, Up), (sizes.MiddleThicknessMm, Up), (sizes.TipThicknessMm, Up))),
            ("Blade edge", new("#", (sizes.EdgeThicknessMm, Up))),
            ("Wood", $"{(name == "bent" ? "Black cherry" : "White ash")}, {N(wood.MoisturePercent, "0.#")} %, {density}"),
            ("Weight, finished", GraphsTests.Mass(report.Finished.MassG, units)),
            ("Balance, finished", FromHand(report.Finished.CentreOfMassMm)),
            ("Weight, bare wood", GraphsTests.Mass(report.Mass.TotalG, units)),
            ("Balance, bare wood", FromHand(report.Mass.CentreOfMassMm)),
            ("Finish", name == "bent" ? "Tip reinforced, oiled all over" : "Blade varnished, shaft and grip oiled"),
            ("Least safety factor, of asked", $"{N(weakest.SafetyFactor, "0.00")} of {N(weakest.Case.LeastFactor, "0.00")}, {weakest.Case.Name}"),
            ("Bench flex", new("#", (report.Flex.BenchFlexMm, Near))),
            ("Blade area", area),
        ];
        foreach (var file in (string[])["outline.svg", "elevation.svg", "overview.svg"])
        {
            var drawing = Svg(file, report, units);
            var texts = Texts(drawing);
            foreach (var (figure, value) in expected)
            {
                var at = Assert.Single(texts, text => text.Text == figure);
                value.AssertIn(Assert.Single(texts, text => text.X == at.X && text.Y > at.Y && text.Y < at.Y + 15).Text, units);
            }

            if (file != "overview.svg") Assert.Contains(texts, text => text.Text == $"Scale 1:1 · lettered in {(units == DrawingUnits.Metric ? "millimetres" : "inches")} · engine 0.1.0 · design p1-abcdefghijklmnopqrstu…");
        }

        Assert.Equal(expected.Length, KeyFigures.Of(report, SampleDesigns.Context(units)).Count);
    }

    [Theory, MemberData(nameof(Designs))]
    public void Headings_dimensions_and_descriptions_are_the_designs(string name, DrawingUnits units)
    {
        var report = Report(name);
        var (form, sizes, places) = (report.Specification.Form, report.Sizes, report.Specification.Form.Places);
        var blade = name switch { "bent" => "Teardrop", "ottertail" => "Ottertail", _ => "Own offsets" };
        var wood = name == "bent" ? "black cherry" : "white ash";
        var outline = Svg("outline.svg", report, units);
        var (texts, inks) = (Texts(outline), Ink.Of(outline.Root!));
        Assert.Contains(texts, text => text.Text == $"{blade} paddle: outline on the face, true scale");
        Assert.Equal("Heron Lake hire paddle M: outline", outline.Root!.Element(SvgReader.Svg + "title")!.Value);
        const double Origin = 60;

        // Lengths between arrows as far apart as they say, each in the middle of its line.
        foreach (var (words, from, to) in new[] { ("Grip and shaft", 0, places.ThroatMm), ("Blade", places.ThroatMm, places.OverallMm), ("Overall", 0, places.OverallMm) })
        {
            var text = Assert.Single(texts, text => text.Text.StartsWith($"{words} ", StringComparison.Ordinal) && char.IsDigit(text.Text[words.Length + 1]));
            new Said($"{words} #", (to - from, Near)).AssertIn(text.Text, units);
            Assert.Equal(Origin + (from + to) / 2, text.X, 0.002);
            var line = inks.Single(ink => ink.Layer == "marks" && ink.Height == 0 && Math.Abs(ink.Top - text.Y - 1.5) < 0.002 && Math.Abs(ink.Left - Origin - from) < 0.002 && Math.Abs(ink.Right - Origin - to) < 0.002);
            var arrows = inks.Where(ink => ink.Fill == "#000" && ink.Points.Count == 3 && Math.Abs(ink.Points[0].Y - line.Top) < 0.002).ToList();
            Assert.Contains(arrows, arrow => Math.Abs(arrow.Points[0].X - line.Left) < 0.002 && arrow.Right > line.Left + 2.9);
            Assert.Contains(arrows, arrow => Math.Abs(arrow.Points[0].X - line.Right) < 0.002 && arrow.Left < line.Right - 2.9);
        }

        new Said("# wide", (form.Blade.WidthMm, Near)).AssertIn(Assert.Single(texts, text => text.Text.EndsWith(" wide", StringComparison.Ordinal)).Text, units);
        var centre = inks.First(ink => ink.Layer == "centre").Top;
        var across = inks.Where(ink => ink.Fill == "#000" && ink.Points.Count == 3 && Math.Abs(ink.Points[0].X - Origin - places.ThroatMm - form.Blade.WidestAt * places.BladeMm) < 0.002).Select(ink => ink.Points[0].Y - centre).Order().ToList();
        Assert.Equal([-form.Blade.WidthMm / 2, form.Blade.WidthMm / 2], across, (a, b) => Math.Abs(a - b) < 0.002);

        var off = report.Finished.CentreOfMassMm - places.LowerHandMm;
        var isAt = Math.Abs(off) < (units == DrawingUnits.Metric ? 0.5 : 25.4 / 32);
        var start = $"Face of a canoe paddle ({blade.ToLowerInvariant()} blade) at true scale, grip to the left. Overall #, throat at # from the top of the grip, blade # wide, finished it balances ";
        var every = $". Half-breadths every {(units == DrawingUnits.Metric ? "50 mm" : "2 in")} or less.";
        var told = outline.Root!.Element(SvgReader.Svg + "desc")!.Value;
        if (isAt) new Said($"{start}at the lower hand{every}", (places.OverallMm, Near), (places.ThroatMm, Near), (form.Blade.WidthMm, Near)).AssertIn(told, units);
        else new Said($"{start}# towards the {(off > 0 ? "blade" : "grip")}{every}", (places.OverallMm, Near), (places.ThroatMm, Near), (form.Blade.WidthMm, Near), (Math.Abs(off), Rough)).AssertIn(told, units);

        // The edge: its words, and the bend by its angle and the length that lies beyond it.
        var edge = Svg("elevation.svg", report, units);
        var words2 = Texts(edge);
        Assert.Contains(words2, text => text.Text == $"{blade} paddle: edge view, true scale, both faces");
        Assert.All((string[])["spine: middle of the blade", "edge line: plane to this, then fair to the spine", "Lower hand", "Throat"], words => Assert.Contains(words2, text => text.Text == words));
        new Said("Edge of the paddle at true scale, grip to the left: spine # at the throat, # at mid-blade, # at the tip; edge #; bend " + (name == "bent" ? "12" : "0") + " degrees.",
            (sizes.ThroatThicknessMm, Near), (sizes.MiddleThicknessMm, Near), (sizes.TipThicknessMm, Near), (sizes.EdgeThicknessMm, Near)).AssertIn(edge.Root!.Element(SvgReader.Svg + "desc")!.Value, units);
        Assert.Equal(name == "bent", words2.Exists(text => text.Text == "Bend 12°"));
        var beyond = words2.SingleOrDefault(text => text.Text.StartsWith("Distances", StringComparison.Ordinal));
        if (name == "bent") new Said("Distances below the throat are along the blade (#)", (places.BladeMm, Near)).AssertIn(beyond!.Text, units);
        else Assert.Null(beyond);
        foreach (var (mark, x) in new[] { ("Lower hand", places.LowerHandMm), ("Throat", places.ThroatMm) })
        {
            var text = words2.Single(one => one.Text == mark);
            Assert.Contains(Ink.Of(edge.Root!), ink => ink.Layer == "marks" && ink.Points.Count == 2 && Math.Abs(ink.Points[0].X - Origin - x) < 0.002 && Math.Abs(Math.Abs(text.X - ink.Points[0].X) - 2) < 0.002 && ink.Top < text.Y && ink.Bottom > text.Y);
        }

        // What stands over the picture of the whole, the curves of strength, and the half template.
        Assert.Contains(Texts(Svg("overview.svg", report, units)), text => text.Text == $"{blade} paddle in {wood}");
        var strength = Svg("strength.svg", report, units);
        var weakest = report.Strength.Cases.MinBy(one => one.SafetyFactor / one.Case.LeastFactor)!;
        // Another case may have a lower factor and be asked less: the factor says nothing without what is asked.
        var factor = string.Create(CultureInfo.InvariantCulture, $"{weakest.SafetyFactor:0.00} of {weakest.Case.LeastFactor:0.00}");
        new Said($"{blade} paddle in {wood}: least safety factor, of asked, {factor}, {weakest.Case.Name}, # from the top", (weakest.AtMm, Near))
            .AssertIn(Assert.Single(Texts(strength), text => text.Text.Contains("least safety factor", StringComparison.Ordinal)).Text, units);
        Assert.Contains(Texts(strength), text => text.Text == "Bending moment, N·m");
        Assert.Contains(Texts(strength), text => text.Text == "Strength used along the grain, % of what the factor asked allows 19 sticks in 20");
        Assert.Contains(Texts(strength), text => text.Text == $"Bench flex under 50 N at the centre of pressure, hands as supports, {(units == DrawingUnits.Metric ? "mm" : "in")}");
        Assert.Equal($"Bending moment, strength used and bench flex along the paddle. Least safety factor, of asked: {factor} ({weakest.Case.Name}).", strength.Root!.Element(SvgReader.Svg + "desc")!.Value);
        var half = Svg("half-template.svg", report, units);
        Assert.Contains(Texts(half), text => text.Text == $"{blade} paddle: half template, true scale");
        new Said("Overall # · throat # from the top · blade # wide (half #)", (places.OverallMm, Near), (places.ThroatMm, Near), (form.Blade.WidthMm, Near), (form.Blade.WidthMm / 2, Near))
            .AssertIn(Assert.Single(Texts(half), text => text.Text.Contains(" from the top · blade ", StringComparison.Ordinal)).Text, units);
        Assert.EndsWith($"with a hang hole, registration ticks and a {(units == DrawingUnits.Metric ? "100 mm" : "4 in")} calibration square.", half.Root!.Element(SvgReader.Svg + "desc")!.Value, StringComparison.Ordinal);
    }
}
