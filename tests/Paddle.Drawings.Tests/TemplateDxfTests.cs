using Paddle.Drawings.Tests.Support;

namespace Paddle.Drawings.Tests;

public class TemplateDxfTests
{
    public static TheoryData<string> Families() => SampleDesigns.Families();

    [Theory]
    [MemberData(nameof(Families))]
    public void The_face_lies_at_the_origin_with_its_true_extents(string family)
    {
        var report = SampleDesigns.Varied(family);
        var face = Assert.Single(Read(family).Entities(), entity => entity.Layer == "OUTLINE");
        Assert.True(face.Closed);
        var half = Math.Max(report.Specification.Form.Blade.HalfWidthMm, report.Specification.Form.Grip.WidthMm / 2);
        Assert.Equal(0, face.Points.Min(p => p.X), 1e-3);
        Assert.Equal(report.Specification.Form.Places.OverallMm, face.Points.Max(p => p.X), 1e-3);

        // The chords' corners lie on the curve, so the widest may fall between two.
        Assert.InRange(face.Points.Max(p => p.Y), half - 0.05, half + 1e-3);
        Assert.InRange(face.Points.Min(p => p.Y), -half - 1e-3, -half + 0.05);
    }

    [Theory]
    [MemberData(nameof(Families))]
    public void Chords_keep_to_the_curve_within_a_twentieth_of_a_millimetre(string family)
    {
        var report = SampleDesigns.Varied(family);
        var points = Read(family).Entities().Single(entity => entity.Layer == "OUTLINE").Points;
        var dense = new List<(double X, double Y)>();
        foreach (var piece in report.Outline.Pieces)
        {
            for (var k = 0; k <= 400; k++) dense.Add((piece.X(k / 400.0), piece.Y(k / 400.0)));
        }

        var upper = points.Where(p => p.Y >= -1e-9).ToList();
        foreach (var (x, y) in dense)
        {
            var distance = Enumerable.Range(0, upper.Count - 1).Min(i => Distance((x, y), upper[i], upper[i + 1]));
            Assert.True(distance <= 0.05 + 1e-3, $"{distance:0.000} mm off at {x:0.0}");
        }
    }

    [Fact]
    public void The_drawing_says_millimetres_in_every_way_a_reader_may_look()
    {
        var dxf = Read("ottertail");
        Assert.Equal("AC1009", dxf.Header("$ACADVER"));
        Assert.Equal("4", dxf.Header("$INSUNITS"));
        Assert.Contains(dxf.Entities(), entity => entity.Text == "UNITS: MM");
        var square = dxf.Entities().Where(entity => entity.Layer == "CALIBRATION" && entity.Closed).ToList();
        var points = Assert.Single(square).Points;
        Assert.Equal(100, points.Max(p => p.X) - points.Min(p => p.X), 1e-6);
        Assert.Equal(100, points.Max(p => p.Y) - points.Min(p => p.Y), 1e-6);
    }

    [Fact]
    public void Everything_lies_on_a_declared_layer_and_within_the_extents()
    {
        var dxf = Read("ottertail");
        var layers = dxf.Layers();
        var (low, high) = (dxf.HeaderPoint("$EXTMIN"), dxf.HeaderPoint("$EXTMAX"));
        foreach (var entity in dxf.Entities())
        {
            Assert.Contains(entity.Layer, layers);
            if (entity.Kind != "POLYLINE") continue;
            Assert.True(entity.Points.Count > 1);
            Assert.All(entity.Points, p => Assert.True(p.X >= low.X && p.X <= high.X && p.Y >= low.Y && p.Y <= high.Y));
        }

        foreach (var needed in (string[])["OUTLINE", "HALF_TEMPLATE", "SECTIONS", "GAUGE_LINES", "CENTER", "STATIONS", "TEXT"])
            Assert.Contains(dxf.Entities(), entity => entity.Layer == needed);
    }

    [Fact]
    public void A_half_template_carries_half_the_area_of_the_face()
    {
        var entities = Read("ottertail").Entities();
        var face = Area(entities.Single(entity => entity.Layer == "OUTLINE").Points);
        var half = entities.Where(entity => entity.Layer == "HALF_TEMPLATE").Max(entity => Area(entity.Points));
        Assert.Equal(face / 2, half, 1.0);
        Assert.Equal(SampleDesigns.Varied("ottertail").Outline.AreaMm2(), face, face * 2e-4);
    }

    [Fact]
    public void A_label_cannot_write_drawing_commands()
    {
        using var stream = new MemoryStream();
        DesignFiles.Find("template.dxf")!.Write(
            SampleDesigns.Of("ottertail"), SampleDesigns.Context(label: SampleDesigns.HostileLabel), stream);
        var entities = new DxfReader(stream.ToArray()).Entities();
        Assert.Equal(Read("ottertail").Entities().Count, entities.Count);
        Assert.Contains(entities, entity => entity.Text.Contains("\\U+05E2", StringComparison.Ordinal) && entity.Text.Contains("<script>", StringComparison.Ordinal));
    }

    private static DxfReader Read(string family)
    {
        using var stream = new MemoryStream();
        DesignFiles.Find("template.dxf")!.Write(SampleDesigns.Varied(family), SampleDesigns.Context(), stream);
        return new(stream.ToArray());
    }

    private static double Area(List<(double X, double Y)> points)
    {
        var twice = 0.0;
        for (var i = 0; i < points.Count; i++)
        {
            var (a, b) = (points[i], points[(i + 1) % points.Count]);
            twice += a.X * b.Y - b.X * a.Y;
        }

        return Math.Abs(twice) / 2;
    }

    private static double Distance((double X, double Y) p, (double X, double Y) a, (double X, double Y) b)
    {
        double dx = b.X - a.X, dy = b.Y - a.Y;
        var t = Math.Clamp(((p.X - a.X) * dx + (p.Y - a.Y) * dy) / Math.Max(1e-18, dx * dx + dy * dy), 0, 1);
        return Math.Sqrt(Math.Pow(p.X - a.X - t * dx, 2) + Math.Pow(p.Y - a.Y - t * dy, 2));
    }
}
