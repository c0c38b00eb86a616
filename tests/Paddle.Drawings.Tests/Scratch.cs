using Paddle.Design.Outline;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Units;
using Paddle.Drawings.Views;

namespace Paddle.Drawings.Tests;

public class Scratch
{
    [Fact]
    public void Dump()
    {
        var dir = Environment.GetEnvironmentVariable("PADDLE_DUMP");
        if (dir is null) return;
        foreach (var family in BladeFamilies.All)
        {
            foreach (var units in Enum.GetValues<DrawingUnits>())
            {
                var report = SampleDesigns.Of(family.Id, family.Id == "teardrop" ? 12 : 0, family.Id == "square-tip" ? GripStyle.T : family.Id == "sugar-island" ? GripStyle.Palm : GripStyle.Pear,
                    family.Id == "beavertail" ? GripFaces.OneSided : GripFaces.Matching);
                var context = new DrawingContext("Heron Lake hire paddle M", units, "0.1.0", "p1-abcdefghijklmnopqrstuvwxyz0123456789");
                void W(string n, string s) => File.WriteAllText(Path.Combine(dir, $"{n}-{family.Id}-{units}.svg"), s);
                W("outline", OutlineSvg.Write(report, context));
                W("half", SvgWriter.Write(HalfTemplateView.Draw(report, context)));
                W("elevation", SvgWriter.Write(ElevationView.Draw(report, context)));
                W("sections", SvgWriter.Write(SectionCards.OneSheet(report, context, 297)));
                W("strength", SvgWriter.Write(StrengthView.Draw(report, context), StrengthView.Style));
                W("overview", SvgWriter.Write(OverviewView.Draw(report, context), OverviewView.Style, scalable: true));
            }
        }
    }
}
