using NetTopologySuite.Geometries;
using Paddle.Design.Solid;
using Paddle.Design.Tests.Solid;

namespace Paddle.Design.Tests.Laminating;

public class StripSectionTests
{
    private const double Beyond = 1000;

    // Library: the section as a polygon of 20 000 points, clipped at the strip lines by NetTopologySuite; its area, the z of its upper half's
    // centroid and, trapezium by trapezium, ∫2h³/3 dy (handbook: a strip dy wide and 2h high has (2h)³/12). 1e-5 is the polygon's own error.
    [Theory]
    [InlineData(2, 0.5, 0, -20, 20)]
    [InlineData(2, 0.5, 0, 17, 41)]
    [InlineData(1, 1, 2.25, -15, 15)]
    [InlineData(1, 1, 2.25, 15, 60)]
    [InlineData(1.4, 0.8, 1.1, -74, -30)]
    [InlineData(2, 1, 2.25, 8, 45)]
    [InlineData(1.9, 1, 2.25, 60, Beyond)]
    public void Library_parts_equal_clipped_polygons(double p, double r, double edge, double from, double to)
    {
        const double W = 70, C = 8;
        var section = new Section(W, C, edge, SectionMoments.For(p, r));
        var part = StripLayup.Part(section.Moments, W, from, to);
        var upper = UpperHalf(section).Intersection(Box(from, to));

        TestPaddles.AssertRelative(2 * upper.Area, part.AreaMm2(section), 1e-5, "area");
        TestPaddles.AssertRelative(SecondMoment(section, Math.Max(from, -W), Math.Min(to, W)), part.FlatSecondMomentMm4(section), 1e-5, "second moment");
    }

    // Property: the parts of any split add up to the whole.
    [Fact]
    public void Property_parts_add_up()
    {
        var random = new Random(7);
        for (var n = 0; n < 200; n++)
        {
            double w = 20 + 60 * random.NextDouble(), a = w * (2 * random.NextDouble() - 1), b = a + w * random.NextDouble();
            var section = new Section(w, 9, 2 * random.NextDouble(), SectionMoments.For(1 + random.NextDouble(), 0.5 + 0.5 * random.NextDouble()));
            double Sum(Func<StripNumbers, double> of) => of(StripLayup.Part(section.Moments, w, -Beyond, a))
                + of(StripLayup.Part(section.Moments, w, a, b)) + of(StripLayup.Part(section.Moments, w, b, Beyond));
            TestPaddles.AssertRelative(section.AreaMm2, Sum(part => part.AreaMm2(section)), 1e-12);
            TestPaddles.AssertRelative(section.FlatSecondMomentMm4, Sum(part => part.FlatSecondMomentMm4(section)), 1e-12);
        }
    }

    // Textbook: flitched beam, a 10 × 200 mm steel plate between two 75 × 200 mm timbers, n = 20, bending with the plate (worked example of the
    // transformed section in texts on strength of materials, from memory; figures worked again by hand): I = 2·75·200³/12 + 20·10·200³/12 =
    // 1.00e8 + 1.3333e8 = 2.3333e8 mm⁴; under 10 kN·m the timber bears 10e6·100/2.3333e8 = 4.286 MPa, the plate 20 times that, 85.71 MPa.
    [Fact]
    public void Textbook_flitched_beam()
    {
        var section = new Section(80, 100, 100, SectionMoments.Ellipse);
        var beam = new StripLayup(
        [
            new(-Beyond, -5, 1, 1, 1, 1, 1, 1), new(-5, 5, 15, 20, 20, 20, 1, 1), new(5, Beyond, 1, 1, 1, 1, 1, 1),
        ]);

        var stiff = beam.Numbers(section.Moments, 80).Stiff;

        TestPaddles.AssertRelative(2.3333e8, stiff.FlatSecondMomentMm4(section), 1e-4);
        var timber = 10e6 * 100 / stiff.FlatSecondMomentMm4(section);
        TestPaddles.AssertRelative(4.286, timber, 1e-3);
        TestPaddles.AssertRelative(150 * 200 + 20 * 10 * 200, stiff.AreaMm2(section), 1e-12);

        // Made as strong for its stiffness, plate and timber are used alike; half as strong, the plate governs and shows its own stress.
        var weakPlate = beam with { Strips = [beam.Strips[0], beam.Strips[1] with { StrengthRatio = 10 }, beam.Strips[2]] };
        var (stress, ratio, strip) = weakPlate.Governing(section, timber, 0);
        TestPaddles.AssertRelative(85.71, stress, 1e-3);
        Assert.Equal((10, 1), (ratio, strip));
        TestPaddles.AssertRelative(0.5 * 40, weakPlate.MostBendingMPa(section, 40, 0), 1e-12);
    }

    // Hand formula: a strip further out is stressed at its own thickest place: h(a)/c of a parabola is 1 − (a/w)².
    [Fact]
    public void Formula_a_strip_is_stressed_at_its_own_thickest_place()
    {
        var section = new Section(60, 8, 0, SectionMoments.For(2, 1));
        var layup = new StripLayup([new(-Beyond, -30, 1, 2, 1, 1, 1, 1), new(-30, 30, 1, 1, 1, 1, 1, 1), new(30, Beyond, 1, 2, 1, 1, 1, 1)]);
        var (stress, _, _) = layup.Governing(section, 10, 1);
        TestPaddles.AssertRelative(2 * (0.75 * 10 + 1), stress, 1e-12);
        Assert.Null(StripLayup.ThicknessShare(section, 60.1));
    }

    // Property: turned about, a section is what it was.
    [Fact]
    public void Property_turned_about_it_is_the_same()
    {
        LaidStrip[] strips = [new(-Beyond, -22, 0.5, 0.6, 0.6, 0.5, 0.6, 1), new(-22, 13, 1, 1, 1, 1, 1, 1), new(13, Beyond, 0.8, 0.9, 0.9, 0.8, 0.9, 1)];
        var turned = strips.Reverse().Select(strip => strip with { FromMm = -strip.ToMm, ToMm = -strip.FromMm }).ToArray();
        var moments = SectionMoments.For(1.5, 0.9);
        var (one, other) = (new StripLayup(strips).Numbers(moments, 66), new StripLayup(turned).Numbers(moments, 66));
        TestPaddles.AssertRelative(one.Mass.Whole.G1, other.Mass.Whole.G1, 1e-12);
        TestPaddles.AssertRelative(one.Stiff.Whole.G3, other.Stiff.Whole.G3, 1e-12);
    }

    private const int Points = 20000;

    // Points crowd at the edges, where a round one is steep.
    private static double Y(Section section, int k) => section.HalfWidthMm * Math.Sin(Math.PI * (k / (double)Points - 0.5));

    private static double H(Section section, double y) => section.HalfThicknessAtMm(Math.Min(1, Math.Abs(y) / section.HalfWidthMm));

    private static Polygon UpperHalf(Section section)
    {
        var ring = new List<Coordinate> { new(-section.HalfWidthMm, 0) };
        for (var k = 0; k <= Points; k++)
        {
            if (H(section, Y(section, k)) is > 0 and var h) ring.Add(new(Y(section, k), h));
        }

        ring.Add(new(section.HalfWidthMm, 0));
        ring.Add(ring[0]);
        return new GeometryFactory().CreatePolygon([.. ring]);
    }

    private static Geometry Box(double from, double to) => new GeometryFactory().ToGeometry(new Envelope(from, to, -1, 100));

    private static double SecondMoment(Section section, double from, double to)
    {
        const int Steps = 200000;
        var sum = 0.0;
        for (var k = 0; k < Steps; k++) sum += Math.Pow(H(section, from + (to - from) * (k + 0.5) / Steps), 3);
        return 2.0 / 3 * sum * (to - from) / Steps;
    }
}
