using System.Globalization;
using Paddle.Design;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Tests.Support;
using Paddle.Drawings.Views;

namespace Paddle.Drawings.Tests;

public class ViewsTests
{
    public static TheoryData<string> Families() => SampleDesigns.Families();

    [Theory]
    [MemberData(nameof(Families))]
    public void The_solid_looked_at_anywhere_is_the_reports(string family)
    {
        var report = SampleDesigns.Varied(family);
        var solid = SolidLook.At(report, report.Stations.X);
        for (var i = 0; i < solid.Count; i++)
        {
            Assert.Equal(report.Stations.HalfWidth[i], solid.HalfWidth[i], 1e-6);
            Assert.Equal(report.Stations.HalfThickness[i], solid.HalfThickness[i], 1e-6);
            Assert.Equal(report.Stations.EdgeHalfThickness[i], solid.EdgeHalfThickness[i], 1e-6);
            Assert.Equal(report.Stations.CentreOffsetMm(i), solid.CentreOffsetMm(i), 1e-6);
        }
    }

    [Fact]
    public void A_place_off_the_paddle_is_refused()
    {
        var form = SampleDesigns.Of("ottertail").Specification.Form;
        Assert.Throws<ArgumentOutOfRangeException>(() => StationGrid.Through(form.Lengths, [form.Places.OverallMm + 1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => StationGrid.Through(form.Lengths, [-1.0]));
    }

    [Theory]
    [MemberData(nameof(Families))]
    public void The_curves_of_strength_peak_where_the_check_says(string family)
    {
        var report = SampleDesigns.Varied(family);
        var curves = StrengthCurves.Of(report.Stations, report.Strength, report.Specification.Loads, report.Specification.Wood);
        foreach (var curve in curves.Cases)
        {
            var result = report.Strength.Cases.Single(c => c.Case == curve.Case);
            Assert.Equal(result.MaxStressMPa, curve.StressesMPa.Max(), result.MaxStressMPa * 1e-6);
            var lowerHand = report.Stations.Grid.LowerHandPlace;
            Assert.Equal(curve.MomentsNm.Max(), curve.MomentsNm[lowerHand], 1e-6);
        }

        // Bending alone, summed another way: a little under the flex with shear.
        var tip = curves.BenchDeflectionsMm[^1];
        Assert.InRange(tip, 0.96 * report.Flex.TipDeflectionMm, 1.005 * report.Flex.TipDeflectionMm);
    }

    // A load case is one record in a list: the drawing has room, a line and a name for what is added there.
    [Fact]
    public void Two_more_load_cases_find_room_on_the_drawing_of_strength()
    {
        var asked = SampleDesigns.Of("ottertail").Specification;
        LoadCase More(string id) => asked.Loads.Case("brace") with { Id = id };
        var report = PaddleDesigner.Design(asked with { Loads = asked.Loads with { Cases = [.. asked.Loads.Cases, More("pry"), More("sweep")] } });

        var sheet = StrengthView.Draw(report, SampleDesigns.Context());

        TextLayout.AssertOnSheet(sheet);
        TextLayout.AssertApart(sheet);
        var drawn = System.Text.Encoding.UTF8.GetString(DrawnFile.Written("strength.svg", report, SampleDesigns.Context()));
        Assert.All(["pry", "sweep"], name => Assert.Contains($">{name}<", drawn, StringComparison.Ordinal));
        Assert.All(Enumerable.Range(0, report.Specification.Loads.AlongTheGrain.Count), k => Assert.Contains($".case{k}{{stroke", StrengthView.Style, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(12)]
    public void The_edge_view_shows_the_true_thicknesses(double bend)
    {
        var report = SampleDesigns.Of("teardrop", bendDegrees: bend);
        var profile = new EdgeProfile(report);
        var form = report.Specification.Form;
        var turn = bend * Math.PI / 180;
        foreach (var x in (double[])[400, form.Places.LowerHandMm, form.Places.ThroatMm + 0.5 * form.Places.BladeMm])
        {
            var c = SolidLook.At(report, [x]).HalfThickness[0];
            Point upper = profile.At(x, c), lower = profile.At(x, -c);
            Assert.Equal(2 * c, (upper - lower).Length, 9);
            Assert.True(Near(profile.Silhouette(), upper) < 0.05 && Near(profile.Silhouette(), lower) < 0.05);
        }

        var tip = profile.At(form.Places.OverallMm, 0);
        Assert.Equal(form.Places.BladeMm * Math.Sin(turn), tip.Y, 9);
        Assert.Equal(form.Places.ThroatMm + form.Places.BladeMm * Math.Cos(turn), tip.X, 9);
    }

    [Theory]
    [InlineData("ottertail")]
    [InlineData("beavertail")]
    [InlineData("sugar-island")]
    public void The_saw_kerf_stands_where_the_grip_is_thinnest(string family)
    {
        var report = SampleDesigns.Varied(family);
        var grip = report.Specification.Form.Places.GripEndMm;
        var kerf = SolidLook.HollowMm(report);
        var leave = SolidLook.At(report, [kerf]).HalfThickness[0];
        double[] others = [.. Enumerable.Range(0, 400).Select(k => grip * (0.2 + 0.8 * k / 400.0))];
        Assert.All(SolidLook.At(report, others).HalfThickness, half => Assert.True(half > leave - 0.005));
        Assert.InRange(kerf, 0.3 * grip, 0.8 * grip);
    }

    [Fact]
    public void The_silhouette_of_a_bent_paddle_does_not_cross_itself()
    {
        var points = new EdgeProfile(SampleDesigns.Of("teardrop", bendDegrees: 12)).Silhouette();
        for (var i = 0; i < points.Count; i++)
        {
            for (var j = i + 2; j < points.Count; j++)
            {
                if (i == 0 && j == points.Count - 1) continue;
                Assert.False(Cross(points[i], points[i + 1], points[j], points[(j + 1) % points.Count]), $"{points[i]} crosses {points[j]}");
            }
        }
    }

    [Fact]
    public void Thicknesses_are_lettered_up_never_down()
    {
        var report = SampleDesigns.Of("ottertail");
        var figures = KeyFigures.Of(report, SampleDesigns.Context(DrawingUnits.Inch));
        var edge = figures.Single(figure => figure.Name == "Blade edge").Value.Replace(" in", "", StringComparison.Ordinal);
        Assert.True(InchRule.Read(edge) >= report.Sizes.EdgeThicknessMm - 1e-3);
    }

    [Theory]
    [MemberData(nameof(Families))]
    public void Sections_close_and_have_the_reports_area(string family)
    {
        foreach (var place in SectionPlan.Of(SampleDesigns.Varied(family)))
        {
            var points = SectionPaths.Closed(place.Section, 60);
            var twice = 0.0;
            for (var i = 0; i < points.Count; i++)
            {
                var (a, b) = (points[i], points[(i + 1) % points.Count]);
                twice += a.X * b.Y - b.X * a.Y;
            }

            Assert.Equal(place.Section.AreaMm2, twice / 2, place.Section.AreaMm2 * 1e-3);
        }
    }

    [Fact]
    public void The_overview_follows_the_readers_light_or_dark_page()
    {
        var svg = System.Text.Encoding.UTF8.GetString(SafeFilesTests.Written("overview.svg", SampleDesigns.Context()));
        Assert.Contains("prefers-color-scheme:dark", svg, StringComparison.Ordinal);
        Assert.Contains(" width=\"960\"", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Balance_beyond_the_throat_of_a_bent_paddle_lies_further_along_the_blade()
    {
        var report = SampleDesigns.Of("teardrop", bendDegrees: 12);
        var throat = report.Specification.Form.Places.ThroatMm;
        var moved = report with { Finished = report.Finished with { CentreOfMassMm = throat + 50 } };
        Assert.Equal(throat + 50 / Math.Cos(12 * Math.PI / 180), Landmarks.BalanceXMm(moved), 9);
        Assert.Equal(
            "88 mm towards the blade",
            KeyFigures.FromHand(moved, moved.Finished.CentreOfMassMm, DrawingUnits.Metric),
            StringComparer.Create(CultureInfo.InvariantCulture, false));
    }

    private static double Near(IReadOnlyList<Point> chain, Point p) => Enumerable.Range(0, chain.Count).Min(i =>
    {
        Point a = chain[i], along = chain[(i + 1) % chain.Count] - a, to = p - a;
        var t = Math.Clamp((to.X * along.X + to.Y * along.Y) / Math.Max(1e-18, along.Length * along.Length), 0, 1);
        return (to - t * along).Length;
    });

    private static bool Cross(Point a, Point b, Point c, Point d)
    {
        static double Side(Point p, Point q, Point r) => (q.X - p.X) * (r.Y - p.Y) - (q.Y - p.Y) * (r.X - p.X);
        return Side(a, b, c) * Side(a, b, d) < 0 && Side(c, d, a) * Side(c, d, b) < 0;
    }
}
