using System.Xml.Linq;
using Paddle.Design.Units;
using Paddle.Drawings.Tests.Support;
using Paddle.Drawings.Views;

namespace Paddle.Drawings.Tests;

public class OutlineSvgTests
{
    public static TheoryData<string> Families() => SampleDesigns.Families();

    [Theory]
    [MemberData(nameof(Families))]
    public void The_drawn_curve_has_the_reports_half_breadth_at_every_station(string family)
    {
        var report = SampleDesigns.Varied(family);
        var curves = SvgReader.Curves((string)SvgReader.ById(Draw(family), OutlineView.PathId).Attribute("d")!);
        var half = curves.Count / 2;
        var centre = curves[0].A.Y;
        for (var i = 0; i < report.Stations.Count; i++)
        {
            var x = OutlineView.OriginX + report.Stations.X[i];
            var forth = curves.Take(half).First(c => x <= c.D.X + 1e-6);
            var back = curves.Skip(half).Last(c => x <= c.A.X + 1e-6);

            // At the vertical tangents of both ends y runs away from x; half a micrometre of rounding in x there is 0.02 mm in y.
            var tolerance = x - OutlineView.OriginX < 1 || report.Outline.EndMm + OutlineView.OriginX - x < 1 ? 0.05 : 0.01;
            Assert.Equal(report.Stations.HalfWidth[i], centre - SvgReader.YAt(forth, x), tolerance);
            Assert.Equal(report.Stations.HalfWidth[i], SvgReader.YAt(back, x) - centre, tolerance);
        }
    }

    [Theory]
    [MemberData(nameof(Families))]
    public void One_user_unit_is_one_millimetre(string family)
    {
        var svg = Draw(family).Root!;
        var box = ((string)svg.Attribute("viewBox")!).Split(' ').Select(SvgReader.Number).ToArray();
        Assert.Equal([0, 0, Millimetres(svg, "width"), Millimetres(svg, "height")], box);
        Assert.True(box[2] > SampleDesigns.Varied(family).Specification.Form.Places.OverallMm);
    }

    [Theory]
    [InlineData(DrawingUnits.Metric, "850")]
    [InlineData(DrawingUnits.Inch, "34")]
    public void Each_station_shows_its_half_breadth(DrawingUnits units, string station)
    {
        var report = SampleDesigns.Of("ottertail");
        var texts = XDocument.Parse(OutlineSvg.Write(report, SampleDesigns.Context(units))).Descendants(SvgReader.Svg + "text").ToList();
        var place = texts.Single(text => text.Value == station);
        var below = texts.Where(text => (string)text.Attribute("x")! == (string)place.Attribute("x")! && text != place).ToList();
        var x = units == DrawingUnits.Metric ? 850 : 34 * 25.4;
        Assert.Equal(DrawnLength.Figure(report.Outline.HalfBreadthMm(x), units), Assert.Single(below).Value);
    }

    [Theory]
    [MemberData(nameof(Families))]
    public void Lettering_stays_on_the_sheet(string family)
    {
        foreach (var units in Enum.GetValues<DrawingUnits>())
        {
            var report = SampleDesigns.Varied(family);
            Paddle.Drawings.Sheets.Sheet[] sheets =
            [
                OutlineView.Draw(report, SampleDesigns.Context(units)),
                ElevationView.Draw(report, SampleDesigns.Context(units)),
                HalfTemplateView.Draw(report, SampleDesigns.Context(units)),
                SectionCards.OneSheet(report, SampleDesigns.Context(units)),
                StrengthView.Draw(report, SampleDesigns.Context(units)),
                OverviewView.Draw(report, SampleDesigns.Context(units)),
            ];
            foreach (var sheet in sheets) TextLayout.AssertOnSheet(sheet);
        }
    }

    [Theory]
    [MemberData(nameof(Families))]
    public void No_two_letterings_collide(string family)
    {
        foreach (var units in Enum.GetValues<DrawingUnits>())
        {
            var report = SampleDesigns.Varied(family);
            var context = SampleDesigns.Context(units);
            TextLayout.AssertApart(OutlineView.Draw(report, context));
            TextLayout.AssertApart(ElevationView.Draw(report, context));
            TextLayout.AssertApart(HalfTemplateView.Draw(report, context));
            TextLayout.AssertApart(SectionCards.OneSheet(report, context));
            TextLayout.AssertApart(StrengthView.Draw(report, context));
            TextLayout.AssertApart(OverviewView.Draw(report, context));
        }
    }

    private static XDocument Draw(string family) => XDocument.Parse(OutlineSvg.Write(SampleDesigns.Varied(family), SampleDesigns.Context()));

    private static double Millimetres(XElement svg, string name)
    {
        var text = (string)svg.Attribute(name)!;
        Assert.EndsWith("mm", text, StringComparison.Ordinal);
        return SvgReader.Number(text[..^2]);
    }
}
