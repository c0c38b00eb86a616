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
