using Paddle.Design.Outline;
using Paddle.Design.Tests.Solid;

namespace Paddle.Design.Tests.Outline;

public class HalfBreadthCurveTests
{
    private static readonly HalfBreadthCurve Curve = TestPaddles.Form(TestPaddles.Blade("sugar-island")).Outline(TestPaddles.UsualSizes);

    // Property: reading many places at once gives what reading one at a time gives.
    [Fact]
    public void Property_sampling_equals_single_readings()
    {
        var xs = Enumerable.Range(0, 1500).Select(i => Curve.StartMm + (Curve.EndMm - Curve.StartMm) * i / 1499.0).ToArray();
        var ys = new double[xs.Length];
        var parameters = new double[xs.Length];
        Curve.Sample(xs, ys, parameters);
        for (var i = 0; i < xs.Length; i++)
        {
            Assert.Equal(Curve.HalfBreadthMm(xs[i]), ys[i], 1e-6);
            Assert.InRange(parameters[i], 0, 1);
        }
    }

    [Fact]
    public void Property_nothing_outside_the_paddle()
    {
        Assert.Equal(0, Curve.HalfBreadthMm(-1));
        Assert.Equal(0, Curve.HalfBreadthMm(Curve.EndMm + 1));
    }

    // Hand formulas: rectangle and triangle.
    [Fact]
    public void Formula_rectangle_and_triangle()
    {
        var rectangle = new HalfBreadthCurve(CubicBezier.Hermite(10, 40, 0, 510, 40, 0));
        Assert.Equal(80 * 500, rectangle.AreaMm2(), 1e-6);
        Assert.Equal(260, rectangle.CentroidMm(), 1e-9);
        var triangle = new HalfBreadthCurve(CubicBezier.Hermite(0, 0, 0.1, 600, 60, 0.1));
        Assert.Equal(0.5 * 600 * 120, triangle.AreaMm2(), 1e-6);
        Assert.Equal(400, triangle.CentroidMm(), 1e-9);
    }
}
