using Paddle.Design.Outline;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;

namespace Paddle.Drawings.Tests;

/// <summary>
/// All families side by side from real designs, to look at. To write it anew: set PADDLE_CONTACT_SHEET to a folder and run this
/// test; each file of each family is written there too when PADDLE_ALL_FILES is set.
/// </summary>
public class ContactSheet
{
    private const double Column = 330;

    [Fact]
    public void Every_family_is_on_the_contact_sheet()
    {
        var sheet = Draw();
        var svg = SvgWriter.Write(sheet, OverviewView.Style, scalable: true);
        foreach (var family in BladeFamilies.All) Assert.Contains(sheet.Items.OfType<TextItem>(), text => text.Text == family.Name);

        if (Environment.GetEnvironmentVariable("PADDLE_CONTACT_SHEET") is not { Length: > 0 } folder) return;
        File.WriteAllText(Path.Combine(folder, "contact-sheet.svg"), svg);
        if (Environment.GetEnvironmentVariable("PADDLE_ALL_FILES") is { Length: > 0 }) WriteAll(folder);
    }

    // Paddles hang grip up, all to one scale, as on a rack.
    private static Sheet Draw()
    {
        const double Scale = 0.72, Top = 120, Left = 40;
        var sketch = new Sketch();
        sketch.Text("Seven blade families, one paddler", Left, 52, 24, strong: true);
        sketch.Text("889 mm between the hands, white ash, solved to be light, strong and balanced at the lower hand once finished; faces to one scale", Left, 82, 11, css: "soft");
        var tallest = 0.0;
        for (var i = 0; i < BladeFamilies.All.Count; i++)
        {
            var report = SampleDesigns.Of(BladeFamilies.All[i].Id);
            var centre = Left + (i + 0.5) * Column * Scale;
            Point Put(Point p) => new(centre + Scale * p.Y, Top + Scale * p.X);
            sketch.Path(FacePaths.Whole(report.Outline, 0, 0).Map(Put), LineKind.Visible, Layer.Outline, Fill.Wood, css: "wood");
            var hand = Put(new(report.Specification.Form.Places.LowerHandMm, 0));
            sketch.Line(hand.X - 26, hand.Y, hand.X + 26, hand.Y, LineKind.Narrow, Layer.Marks, "line");
            var balance = Put(new(Landmarks.BalanceXMm(report), 0));
            Landmarks.DrawBalance(sketch, balance.X, balance.Y, 5, "ink");
            var end = Top + Scale * report.Specification.Form.Places.OverallMm;
            tallest = Math.Max(tallest, end);
            Letter(sketch, report, centre, end + 24);
        }

        return sketch.Finish(
            "contact-sheet", "Blade families", "The faces of seven canoe paddles, one of each blade family, side by side to one scale.",
            2 * Left + BladeFamilies.All.Count * Column * Scale, tallest + 110);
    }

    private static void Letter(Sketch sketch, Paddle.Design.DesignReport report, double centre, double top)
    {
        string[] lines =
        [
            $"{DrawnLength.Text(report.Specification.Form.Places.OverallMm, DrawingUnits.Metric)} overall",
            $"blade {DrawnLength.Figure(report.Specification.Form.Places.BladeMm, DrawingUnits.Metric)} × {DrawnLength.Text(report.Specification.Form.Blade.WidthMm, DrawingUnits.Metric)}",
            FormattableString.Invariant($"{report.Finished.MassG:0} g finished, {report.Stroke.BladeAreaCm2:0} cm²"),
            FormattableString.Invariant($"least factor {report.Strength.Governing.SafetyFactor:0.00} of {report.Strength.Governing.Case.LeastFactor:0.00}"),
        ];
        sketch.Text(KeyFigures.BladeName(report), centre, top, 13, Anchor.Middle, strong: true);
        for (var i = 0; i < lines.Length; i++) sketch.Text(lines[i], centre, top + 20 + 16 * i, 9, Anchor.Middle, css: "soft");
    }

    private static void WriteAll(string folder)
    {
        foreach (var family in BladeFamilies.All)
        {
            foreach (var units in Enum.GetValues<DrawingUnits>())
            {
                var paper = units == DrawingUnits.Metric ? PaperSize.A4 : PaperSize.Letter;
                foreach (var file in DesignFiles.All)
                {
                    using var stream = File.Create(Path.Combine(folder, $"{family.Id}-{units}-{file.FileName}"));
                    file.Write(SampleDesigns.Varied(family.Id), SampleDesigns.Context(units, paper: paper), stream);
                }
            }
        }
    }
}
