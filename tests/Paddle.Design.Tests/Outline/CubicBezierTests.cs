using MathNet.Numerics.Integration;
using Paddle.Design.Outline;

namespace Paddle.Design.Tests.Outline;

public class CubicBezierTests
{
    // Property: the closed form against Gauss-Legendre quadrature of y·x', a polynomial of degree 5, exact but for rounding (1e-12 of
    // the piece's size).
    [Fact]
    public void Property_area_equals_quadrature()
    {
        var random = new Random(1);
        for (var n = 0; n < 2000; n++)
        {
            double P() => 500 * random.NextDouble() - 100;
            var piece = new CubicBezier(P(), P(), P(), P(), P(), P(), P(), P());
            var quadrature = GaussLegendreRule.Integrate(s => piece.Y(s) * piece.DX(s), 0, 1, 8);
            Assert.Equal(quadrature, piece.AreaUnder(), 1e-12 * 600 * 600 * 10);
        }
    }

    // Hand formula: the usual four-arc circle of radius 1 (handle 0.5522847498) has area π to 0.03 % (Goldapp 1991, from memory: the
    // radius errs by at most 2.7e-4).
    [Fact]
    public void Formula_quarter_circle()
    {
        const double K = 0.5522847498;
        var quarter = new CubicBezier(0, 1, K, 1, 1, K, 1, 0);
        Assert.Equal(Math.PI / 4, quarter.AreaUnder(), 3e-4 * Math.PI / 4);
        for (var s = 0.0; s <= 1; s += 0.01)
            Assert.Equal(1, Math.Sqrt(quarter.X(s) * quarter.X(s) + quarter.Y(s) * quarter.Y(s)), 2.8e-4);

        // Turning clockwise, so away from +y; end curvature 2/3·(1 − K)/K² by the Bézier end formula.
        Assert.Equal(-2.0 / 3 * (1 - K) / (K * K), quarter.Curvature(0), 1e-12);
    }

    // Property: derivatives against central differences (step 1e-5: truncation 1e-10, rounding 1e-10 of the size).
    [Fact]
    public void Property_slopes_equal_differences()
    {
        var piece = new CubicBezier(0, 15, 60, 15, 90, 70, 200, 74);
        for (var s = 0.05; s < 1; s += 0.05)
        {
            Assert.Equal((piece.X(s + 1e-5) - piece.X(s - 1e-5)) / 2e-5, piece.DX(s), 1e-5);
            Assert.Equal((piece.Y(s + 1e-5) - piece.Y(s - 1e-5)) / 2e-5, piece.DY(s), 1e-5);
        }
    }

    // Property: x(s(x)) = x to the solver's own 1e-9 mm, also at a vertical tangent, from any guess.
    [Fact]
    public void Property_parameter_is_found_from_any_guess()
    {
        var random = new Random(2);
        for (var n = 0; n < 3000; n++)
        {
            var length = 20 + 400 * random.NextDouble();
            var piece = new CubicBezier(
                0, 70, length * random.NextDouble(), 70, length * (1 - 0.7 * (n % 2) * random.NextDouble()), 30, length, 0);
            var x = length * random.NextDouble();
            Assert.Equal(x, piece.X(piece.ParameterAtX(x, random.NextDouble())), 1e-8);
        }
    }

    // Hand formula: Hermite's cubic takes the end values and slopes asked.
    [Fact]
    public void Formula_hermite_ends()
    {
        var piece = CubicBezier.Hermite(10, 4, 0.3, 40, 9, -0.2);
        Assert.Equal(4, piece.Y(0), 1e-12);
        Assert.Equal(9, piece.Y(1), 1e-12);
        Assert.Equal(0.3, piece.DY(0) / piece.DX(0), 1e-12);
        Assert.Equal(-0.2, piece.DY(1) / piece.DX(1), 1e-12);
        Assert.Equal(25, piece.X(0.5), 1e-12); // x runs evenly
    }
}

/// <summary>Curvature, which tells a fair curve; the drawing itself never asks for it.</summary>
internal static class BezierCurvature
{
    /// <summary>Signed curvature (1/mm) at the parameter s; positive turns towards +y. Source: differential geometry, any text.</summary>
    internal static double Curvature(this CubicBezier curve, double s)
    {
        double dx = curve.DX(s), dy = curve.DY(s);
        var ddx = 6 * ((1 - s) * (curve.X2 - 2 * curve.X1 + curve.X0) + s * (curve.X3 - 2 * curve.X2 + curve.X1));
        var ddy = 6 * ((1 - s) * (curve.Y2 - 2 * curve.Y1 + curve.Y0) + s * (curve.Y3 - 2 * curve.Y2 + curve.Y1));
        return (dx * ddy - dy * ddx) / Math.Pow(dx * dx + dy * dy, 1.5);
    }
}
