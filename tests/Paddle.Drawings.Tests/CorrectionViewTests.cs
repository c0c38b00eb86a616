using System.Xml.Linq;
using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Tests.Support;
using Paddle.Drawings.Views;

namespace Paddle.Drawings.Tests;

public class CorrectionViewTests
{
    public static TheoryData<string> Families() => SampleDesigns.Families();

    [Theory]
    [MemberData(nameof(Families))]
    public void Every_cut_is_drawn_on_the_wood_and_as_deep_as_the_others_make_it(string family)
    {
        var report = SampleDesigns.Varied(family);
        foreach (var offMm in (double[])[-25, -14, 14, 25])
        {
            var correction = Corrected(report, offMm);
            var sheet = CorrectionView.Draw(report, correction, BuildStage.Sanded, SampleDesigns.Context(DrawingUnits.Metric));
            var cuts = sheet.Items.OfType<PathItem>().Where(item => item.Css == CorrectionView.CutCss).Select(item => Box(item.Path)).ToArray();
            var count = correction.Removals.Count;
            Assert.Equal(2 * count, cuts.Length);
            if (count == 0) continue;

            var wood = Box(sheet.Items.OfType<PathItem>().Single(item => item.Fill == Fill.Wood).Path);
            var perMm = (wood.Right - wood.Left) / report.Specification.Form.Places.OverallMm;
            var deepest = correction.Removals.Max(cut => cut.PerFaceMm);
            var tallest = cuts[count..].Max(cut => cut.Height);
            for (var k = 0; k < count; k++)
            {
                var (cut, face, depth) = (correction.Removals[k], cuts[k], cuts[count + k]);
                Assert.InRange(face.Top, wood.Top, wood.Bottom);
                Assert.InRange(face.Bottom, wood.Top, wood.Bottom);

                // Stations lie 10 mm apart at most, and neighbouring zones of the blade run into each other over 0.065 of it on both sides.
                var runOutMm = 0.065 * report.Specification.Form.Places.BladeMm + 10;
                Assert.InRange((depth.Left - wood.Left) / perMm, cut.FromMm - runOutMm - 0.1, cut.ToMm);
                Assert.InRange((depth.Right - wood.Left) / perMm, cut.FromMm, cut.ToMm + runOutMm + 0.1 + ShoulderMm(report, cut));
                Assert.Equal(cut.PerFaceMm / deepest, depth.Height / tallest, 0.02);
            }
        }
    }

    [Theory]
    [InlineData("ottertail", DrawingUnits.Metric)]
    [InlineData("teardrop", DrawingUnits.Inch)]
    [InlineData("beavertail", DrawingUnits.Metric)]
    public void Letters_marks_and_depths_stand_where_the_cut_does(string family, DrawingUnits units)
    {
        var report = SampleDesigns.Varied(family);
        if (units == DrawingUnits.Inch) report = PaddleDesigner.Design(SampleDesigns.InInchesOf(report.Specification));
        var (places, form, cutsRead) = (report.Specification.Form.Places, report.Specification.Form, 0);
        foreach (var offMm in (double[])[-25, 14, 25])
        {
            var correction = Corrected(report, offMm);
            var svg = XDocument.Parse(CorrectionSvg.Write(report, correction, BuildStage.BladePlaned, SampleDesigns.Context(units)));
            var (inks, texts, words) = (Ink.Of(svg.Root!), DrawnFile.Texts(svg), new CorrectionWords(report, BuildStage.BladePlaned, correction));
            var wood = inks.Single(ink => ink.IsWood);
            var perMm = wood.Width / places.OverallMm;
            Assert.Equal((960 - 48) / places.OverallMm, perMm, 1e-5);
            double X(double alongMm) => wood.Left + perMm * alongMm;
            double Along(double alongShaftMm) => alongShaftMm <= places.ThroatMm ? alongShaftMm
                : places.ThroatMm + (alongShaftMm - places.ThroatMm) / Math.Cos(form.BendDegrees * Math.PI / 180);

            Assert.Contains(texts, text => text.Text == "Where to take wood");
            Assert.Contains(texts, text => text.Text == "Heron Lake hire paddle M, blade planed");
            Assert.StartsWith(words.Summary, svg.Root!.Element(SvgReader.Svg + "desc")!.Value, StringComparison.Ordinal);
            Assert.Equal("Where to take wood: Heron Lake hire paddle M, blade planed", svg.Root!.Element(SvgReader.Svg + "title")!.Value);

            // Three places along the paddle, each beside its line; the round sign on the aim.
            var (outlook, count) = (correction.Outlook!, correction.Removals.Count);
            var marks = new List<(string Name, double AlongShaftMm)> { ("Aim", correction.AimMm), ("Planed to plan", outlook.Finished.BalanceMm) };
            if (count > 0) marks.Add(("After the cut", outlook.Corrected.BalanceMm));
            foreach (var (name, at) in marks)
            {
                var text = Assert.Single(texts, one => one.Text.StartsWith($"{name} ", StringComparison.Ordinal));
                new Said($"{name} #", (at, Printed.Rough)).AssertIn(text.Text, units);
                Assert.Contains(inks, ink => ink.IsUpright && Math.Abs(ink.Left - X(Along(at))) < 0.01 && Math.Abs(ink.Left + 4 - text.X) < 0.01 && ink.Top < text.Y && ink.Bottom > wood.Centre.Y);
            }

            Assert.Equal(count > 0, texts.Exists(text => text.Text.StartsWith("After the cut", StringComparison.Ordinal)));
            var quarters = inks.Where(ink => ink.Css.EndsWith("ink", StringComparison.Ordinal)).ToList();
            Assert.Equal(X(Along(correction.AimMm)), (quarters.Min(ink => ink.Left) + quarters.Max(ink => ink.Right)) / 2, 0.01);
            Assert.Equal(10, quarters.Max(ink => ink.Right) - quarters.Min(ink => ink.Left), 0.01);

            // A letter over each hill of the strip, and the same before its words.
            var cuts = inks.Where(ink => ink.Css.EndsWith(CorrectionView.CutCss, StringComparison.Ordinal)).ToList();
            var strip = texts.SingleOrDefault(text => text.Text == "Depth off each face, drawn larger");
            Assert.Equal(count > 0, strip is not null);
            for (var k = 0; k < count; k++)
            {
                var (cut, face, hill) = (correction.Removals[k], cuts[k], cuts[count + k]);
                Assert.Equal(30 * cut.PerFaceMm / correction.Removals.Max(one => one.PerFaceMm), hill.Height, 0.5);
                Assert.True(hill.Top > wood.Bottom && strip!.Y > hill.Bottom);

                // It hangs from its line, its heart where it is nearly as deep as anywhere.
                var heart = hill.Points.Where(p => p.Y - hill.Top > 0.95 * hill.Height).Average(p => p.X);
                var letter = ((char)('A' + k)).ToString();
                var both = texts.Where(text => text.Text == letter).OrderBy(text => text.Y).ToList();
                Assert.Equal(2, both.Count);
                Assert.Equal(heart, both[0].X, 0.01);
                Assert.True(both[0].Y < hill.Top && both[0].Y > wood.Bottom);

                // The lower shaft's runs out up the taper so slowly that its heart begins above the lower hand.
                Assert.InRange((heart - wood.Left) / perMm, cut.FromMm - (cut.Zone == CorrectionZone.ShaftLower ? 0.05 * places.LowerHandMm : 0), cut.ToMm);
                Assert.Contains(texts, text => text.Text == words.Brief(cut) && text.Y == both[1].Y && text.X > both[1].X);
                Assert.True(both[1].Y > strip.Y);

                // On the face it keeps a tenth of the half-breadth clear of the edges where it is deepest.
                foreach (var side in (int[])[1, -1])
                {
                    var within = face.Points.Where(p => side * (p.Y - wood.Centre.Y) > 0 && Math.Abs(p.X - heart) < 6 * perMm).ToList();
                    Assert.NotEmpty(within);
                    Assert.All(within, p => Assert.Equal(0.9 * report.Outline.HalfBreadthMm((p.X - wood.Left) / perMm), Math.Abs(p.Y - wood.Centre.Y) / perMm, 0.4 + 0.05 * form.Blade.HalfWidthMm));
                }

                // Thirds of the blade run into each other: at their border each is half as deep.
                if (cut.Zone is not (CorrectionZone.BladeMiddleThird or CorrectionZone.BladeLowerThird)) continue;
                cutsRead++;
                var border = X(places.ThroatMm + places.BladeMm / 3 * (cut.Zone == CorrectionZone.BladeMiddleThird ? 1 : 2));
                var rising = hill.Points.Skip(1).Zip(hill.Points.Skip(2)).First(pair => pair.First.X <= border && pair.Second.X > border);
                var there = rising.First.Y + (rising.Second.Y - rising.First.Y) * (border - rising.First.X) / (rising.Second.X - rising.First.X);
                Assert.Equal(0.5, (there - hill.Top) / hill.Height, 0.03);
            }
        }

        Assert.True(cutsRead > 0 || family == "teardrop");
    }

    [Theory]
    [MemberData(nameof(Families))]
    public void No_lettering_leaves_the_sheet_or_runs_into_another(string family)
    {
        foreach (var units in Enum.GetValues<DrawingUnits>())
        {
            foreach (var offMm in (double[])[-25, 0, 25, 120])
            {
                var report = SampleDesigns.Varied(family);
                var sheet = CorrectionView.Draw(
                    report, Corrected(report, offMm, again: offMm < 100), BuildStage.Sanded, SampleDesigns.Context(units) with { Label = SampleDesigns.HostileLabel });
                TextLayout.AssertOnSheet(sheet);
                TextLayout.AssertApart(sheet);
            }
        }
    }

    [Fact]
    public void Readings_that_are_doubted_are_drawn_without_a_cut_and_the_doubt_is_said()
    {
        var report = SampleDesigns.Of("ottertail");
        var correction = Corrected(report, 120, again: false);

        var sheet = CorrectionView.Draw(report, correction, BuildStage.Sanded, SampleDesigns.Context(DrawingUnits.Metric));

        Assert.Equal(CorrectionStatus.MeasureAgain, correction.Status);
        Assert.DoesNotContain(sheet.Items.OfType<PathItem>(), item => item.Css == CorrectionView.CutCss);
        Assert.Contains(sheet.Items.OfType<TextItem>(), item => item.Text.StartsWith("Measure again before anything is cut", StringComparison.Ordinal));
        Assert.Contains("Measure again", sheet.Description, StringComparison.Ordinal);
    }

    // The lower shaft's cut runs out into the shoulder of the blade.
    private static double ShoulderMm(DesignReport report, Removal cut) =>
        cut.Zone == CorrectionZone.ShaftLower ? 0.2 * report.Specification.Form.Places.BladeMm : 0;

    private static BalanceCorrection Corrected(DesignReport report, double offMm, bool again = true) => BalanceCorrection.Solve(
        report,
        new(BuildStage.Sanded, report.Mass.TotalG, report.Mass.CentreOfMassMm + offMm, MeasuredAgain: again),
        new(Confidence: 0.5));

    private static (double Left, double Top, double Right, double Bottom, double Height) Box(SheetPath path)
    {
        Point[] ends = [.. path.Steps.Where(step => step.Kind != StepKind.Close).Select(step => step.End)];
        var (top, bottom) = (ends.Min(p => p.Y), ends.Max(p => p.Y));
        return (ends.Min(p => p.X), top, ends.Max(p => p.X), bottom, bottom - top);
    }
}
