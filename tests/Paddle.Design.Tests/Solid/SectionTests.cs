using MathNet.Numerics.Integration;
using NetTopologySuite.Geometries;
using Paddle.Design.Solid;

namespace Paddle.Design.Tests.Solid;

public class SectionTests
{
    private const double W = 60;
    private const double C = 7;
    private const double Exact = 1e-12; // closed form against closed form: rounding only

    // Hand formula (any handbook of mechanics): ellipse, half-axes a and b: πab, πab³/4, πa³b/4.
    [Fact]
    public void Formula_ellipse()
    {
        var section = new Section(W, C, 0, SectionMoments.Ellipse);
        TestPaddles.AssertRelative(Math.PI * W * C, section.AreaMm2, Exact);
        TestPaddles.AssertRelative(Math.PI * W * C * C * C / 4, section.FlatSecondMomentMm4, Exact);
        TestPaddles.AssertRelative(Math.PI * W * W * W * C / 4, section.EdgeSecondMomentMm4, Exact);
        TestPaddles.AssertRelative(Math.PI * W * C * C / 4, section.FlatModulusMm3, Exact);
    }

    // Hand formula: a rhombus is two triangles of base 2a and height b: area 2ab; bh³/12 about each base gives ab³/3, a³b/3.
    [Fact]
    public void Formula_diamond()
    {
        var section = new Section(W, C, 0, SectionMoments.For(1, 1));
        TestPaddles.AssertRelative(2 * W * C, section.AreaMm2, Exact);
        TestPaddles.AssertRelative(W * C * C * C / 3, section.FlatSecondMomentMm4, Exact);
        TestPaddles.AssertRelative(W * W * W * C / 3, section.EdgeSecondMomentMm4, Exact);
    }

    // Hand formula: a parabolic segment fills 2/3 of its box (Archimedes), so two of 2w by c make 8wc/3; (4/3)w∫c³(1 − u²)³du =
    // (4/3)(16/35)wc³ = 64wc³/105; 4w³c∫u²(1 − u²)du = 8w³c/15.
    [Fact]
    public void Formula_parabolic_lens()
    {
        var section = new Section(W, C, 0, SectionMoments.For(2, 1));
        TestPaddles.AssertRelative(8.0 / 3 * W * C, section.AreaMm2, Exact);
        TestPaddles.AssertRelative(64.0 / 105 * W * C * C * C, section.FlatSecondMomentMm4, Exact);
        TestPaddles.AssertRelative(8.0 / 15 * W * W * W * C, section.EdgeSecondMomentMm4, Exact);
    }

    // Hand formula: with the edge as thick as the centre the section is a rectangle, bh and bh³/12, whatever its exponents.
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 0.5)]
    [InlineData(1.6, 0.8)]
    public void Formula_rectangle_when_edge_equals_centre(double p, double r)
    {
        var section = new Section(W, C, C, SectionMoments.For(p, r));
        TestPaddles.AssertRelative(4 * W * C, section.AreaMm2, Exact);
        TestPaddles.AssertRelative(2 * W * Math.Pow(2 * C, 3) / 12, section.FlatSecondMomentMm4, Exact);
        TestPaddles.AssertRelative(2 * C * Math.Pow(2 * W, 3) / 12, section.EdgeSecondMomentMm4, Exact);
    }

    // Property: closed forms against tanh-sinh quadrature of the section's own outline (1e-8: the quadrature's error at a square-root
    // edge) for random exponents between ridge and lens, ellipse and sharp edge.
    [Fact]
    public void Property_closed_forms_equal_quadrature()
    {
        foreach (var section in RandomSections(400))
        {
            double Sum(Func<double, double> f) => DoubleExponentialTransformation.Integrate(f, 0, 1, 1e-10);
            var w = section.HalfWidthMm;
            TestPaddles.AssertRelative(4 * w * Sum(section.HalfThicknessAtMm), section.AreaMm2, 1e-8, "area");
            TestPaddles.AssertRelative(
                4.0 / 3 * w * Sum(u => Math.Pow(section.HalfThicknessAtMm(u), 3)), section.FlatSecondMomentMm4, 1e-8, "flat");
            TestPaddles.AssertRelative(
                4 * w * w * w * Sum(u => u * u * section.HalfThicknessAtMm(u)), section.EdgeSecondMomentMm4, 1e-8, "edge");
        }
    }

    // Hand formula: ∫y h³dy/∫h³dy of a quarter: rectangle w/2, triangle (1/20)/(1/4)·w, parabola (1/8)/(16/35)·w, ellipse
    // (1/5)/(3π/16)·w.
    [Theory]
    [InlineData(1, 1, 1, 0.5)]
    [InlineData(0, 1, 1, 0.2)]
    [InlineData(0, 2, 1, 35.0 / 128)]
    [InlineData(0, 2, 0.5, 16 / (15 * Math.PI))]
    public void Formula_spread_of_bending(double edgeShare, double p, double r, double ofHalfWidth) =>
        TestPaddles.AssertRelative(ofHalfWidth * W, new Section(W, C, edgeShare * C, SectionMoments.For(p, r)).BendingSpreadMm, Exact);

    // Property: the same against quadrature (1e-8, as above).
    [Fact]
    public void Property_spread_of_bending_equals_quadrature()
    {
        foreach (var section in RandomSections(200))
        {
            double Sum(Func<double, double> f) => DoubleExponentialTransformation.Integrate(f, 0, 1, 1e-10);
            double Cube(double u) => Math.Pow(section.HalfThicknessAtMm(u), 3);
            TestPaddles.AssertRelative(
                section.HalfWidthMm * Sum(u => u * Cube(u)) / Sum(Cube), section.BendingSpreadMm, 1e-8, "spread");
        }
    }

    // Property: area against NetTopologySuite's of the drawn polygon, points crowded at the edge where a round one turns (1e-5: chord
    // error of 2000 points a quarter on a curve of unbounded slope).
    [Fact]
    public void Property_area_equals_a_polygons()
    {
        foreach (var section in RandomSections(60))
        {
            var upper = Enumerable.Range(-2000, 4001)
                .Select(k => Math.Sin(Math.PI / 2 * k / 2000))
                .Select(u => new Coordinate(u * section.HalfWidthMm, section.HalfThicknessAtMm(Math.Abs(u))))
                .ToList();
            var ring = upper.Concat(upper.AsEnumerable().Reverse().Select(p => new Coordinate(p.X, -p.Y))).ToList();
            ring.Add(ring[0]);
            TestPaddles.AssertRelative(new Polygon(new LinearRing([.. ring])).Area, section.AreaMm2, 1e-5);
        }
    }

    // Hand formula: Ramanujan's second formula for the perimeter of an ellipse; 0.2 % is what the pattern promises.
    [Theory]
    [InlineData(15, 15.5)]
    [InlineData(15, 12)]
    [InlineData(70, 6)]
    [InlineData(40, 14)]
    public void Formula_perimeter_of_an_ellipse(double a, double b)
    {
        var h = (a - b) * (a - b) / ((a + b) * (a + b));
        var exact = Math.PI * (a + b) * (1 + 3 * h / (10 + Math.Sqrt(4 - 3 * h)));
        TestPaddles.AssertRelative(exact, new PerimeterPattern(SectionMoments.Ellipse).LengthMm(a, b, 0), 0.002);
    }

    [Fact]
    public void Formula_perimeter_of_a_rectangle_and_a_diamond()
    {
        TestPaddles.AssertRelative(4 * (W + C), new PerimeterPattern(SectionMoments.For(2, 1)).LengthMm(W, C, C), Exact);
        TestPaddles.AssertRelative(
            4 * Math.Sqrt(W * W + C * C), new PerimeterPattern(SectionMoments.For(1, 1)).LengthMm(W, C, 0), Exact);
    }

    // Property: within the promised 0.2 % of 20 000 chords for every exponent pair down the blade and every likely proportion.
    [Fact]
    public void Property_perimeter_within_its_promise_down_the_blade()
    {
        for (var t = 0.0; t <= 1; t += 0.02)
        {
            var moments = SectionMoments.For(BladeBlend.CrownExponent(t), BladeBlend.CrownPower(t));
            var pattern = new PerimeterPattern(moments);
            foreach (var (w, c, edge) in new[] { (15.0, 15.5, 0.0), (40, 12, 2), (75, 6, 2), (120, 4, 2), (20, 10, 4), (60, 15, 1.5) })
            {
                var e = edge * BladeBlend.EdgeShare(t);
                var section = new Section(w, c, e, moments);
                double exact = e, lastY = 0, lastZ = c;
                for (var k = 1; k <= 20000; k++)
                {
                    var u = Math.Sin(Math.PI / 2 * k / 20000);
                    double y = w * u, z = k == 20000 ? e : section.HalfThicknessAtMm(u);
                    exact += Math.Sqrt((y - lastY) * (y - lastY) + (z - lastZ) * (z - lastZ));
                    (lastY, lastZ) = (y, z);
                }

                TestPaddles.AssertRelative(4 * exact, pattern.LengthMm(w, c, e), 0.002, $"t {t:F2} w {w} c {c} e {e}");
            }
        }
    }

    private static IEnumerable<Section> RandomSections(int count)
    {
        var random = new Random(11);
        for (var n = 0; n < count; n++)
        {
            var c = 3 + 15 * random.NextDouble();
            yield return new(
                10 + 100 * random.NextDouble(),
                c,
                c * random.NextDouble(),
                SectionMoments.For(1 + random.NextDouble(), 0.5 + 0.5 * random.NextDouble()));
        }
    }
}
