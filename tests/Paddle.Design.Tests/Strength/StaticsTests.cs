using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Tests.Solid;

namespace Paddle.Design.Tests.Strength;

public class StaticsTests
{
    private const double LargeN = 1e12; // a shaft that does not buckle

    // Worked example of the reference figures for the lever law: 100 N, hands 889 mm apart, 350 mm from the lower hand to the centre of
    // pressure: top hand 39.37 N, lower hand 139.37 N, 35.0 N·m at the lower hand (F·b/a, F·(a + b)/a, F·b). Last printed figure.
    [Theory]
    [InlineData(100, 39.37, 139.37, 35.0)]
    [InlineData(200, 78.7, 278.7, 70.0)]
    [InlineData(300, 118.1, 418.1, 105.0)]
    public void Worked_lever_law(double force, double topHand, double lowerHand, double momentNm)
    {
        var blade = TestPaddles.Blade("teardrop", length: 430);
        var arm = CentreOfPressureBelowThroat(blade);
        var form = TestPaddles.Form(blade, handSpacing: 889, freeboard: 350 - arm);
        var solid = TestPaddles.Shape(form, TestPaddles.PrintedGrid(form));
        var moments = Moments(solid, "touring-stroke", TestPaddles.Loads(asked: new(TouringStrokeN: force)));
        double At(double x) => ElasticCurve.At(solid.X, moments, x);

        var lower = form.Places.LowerHandMm;
        Assert.Equal(momentNm, At(lower) / 1000, 0.005);

        // Shear is the slope of the moment: the top hand's force above the lower hand, the blade's below; the hand carries both.
        var above = (At(lower) - At(lower - 100)) / 100;
        var below = (At(lower) - At(form.Places.ThroatMm)) / (form.Places.ThroatMm - lower);
        Assert.Equal(topHand, above, 0.05);
        Assert.Equal(force, below, 1e-6 * force);
        Assert.Equal(lowerHand, above + below, 0.05);
        for (var i = 0; solid.X[i] <= form.Places.TopHandMm; i++) Assert.Equal(0, moments[i]);
    }

    // Property: equilibrium. Whatever the stroke, the moment at the lower hand is the force times its arm to the centre of pressure.
    [Theory]
    [InlineData("ottertail")]
    [InlineData("voyageur")]
    [InlineData("square-tip")]
    public void Property_moment_is_force_times_arm(string family)
    {
        var form = TestPaddles.Form(TestPaddles.Blade(family));
        var solid = TestPaddles.Shape(form, TestPaddles.PrintedGrid(form));
        var pressure = BladePressure.On(solid);
        var loads = TestPaddles.Loads();
        foreach (var (id, force, centre) in new[]
        {
            ("touring-stroke", loads.Case("touring-stroke").ForceN, pressure.CentreOfPressureMm(StrokePivots.TouringMm)),
            ("hard-stroke", loads.Case("hard-stroke").ForceN, pressure.CentreOfPressureMm(StrokePivots.HardMm)),
            ("brace", loads.Case("brace").ForceN, pressure.CentroidMm),
        })
        {
            var moments = Moments(solid, id, loads);
            TestPaddles.AssertRelative(
                force * (centre - form.Places.LowerHandMm), moments[solid.Grid.LowerHandPlace], 1e-9, id);
        }
    }

    // Property: the moment on the blade is the pressure beyond, summed strip by strip (trapezoid rule on 20 000 strips: 1e-5).
    [Fact]
    public void Property_blade_moment_equals_the_sum_of_strips()
    {
        var form = TestPaddles.Form(TestPaddles.Blade("beavertail"));
        var solid = TestPaddles.Shape(form, TestPaddles.PrintedGrid(form));
        var moments = Moments(solid, "hard-stroke", TestPaddles.Loads());
        var pressure = BladePressure.On(solid);
        const int Strips = 20000;
        double throat = form.Places.ThroatMm, step = form.Places.BladeMm / Strips;
        foreach (var place in new[] { solid.Grid.FirstBladePlace, solid.Grid.FirstBladePlace + 12, solid.Count - 20 })
        {
            var sum = 0.0;
            for (var k = 0; k < Strips; k++)
            {
                var x = throat + (k + 0.5) * step;
                if (x <= solid.X[place]) continue;
                var local = pressure.StrokePressureMPa(x, TestPaddles.Loads().Case("hard-stroke").ForceN, StrokePivots.HardMm);
                sum += step * 2 * solid.Outline.HalfBreadthMm(x) * local * (x - solid.X[place]);
            }

            TestPaddles.AssertRelative(sum, moments[place], 1e-4);
        }
    }

    // Hand formula: a push-off's moment at the throat is the side force times the blade plus the thrust times half the shaft's depth;
    // all of it grows by 1/(1 − P/Pcr) (Timoshenko and Gere, Theory of Elastic Stability, from memory).
    [Fact]
    public void Formula_push_off()
    {
        var form = TestPaddles.Form(TestPaddles.Blade("ottertail"));
        var solid = TestPaddles.Shape(form, TestPaddles.PrintedGrid(form));
        var loads = TestPaddles.Loads();
        var pressure = BladePressure.On(solid);
        var moments = new double[solid.Count];
        var push = loads.Case("push-off");
        var buckling = 4 * push.ForceN;
        BendingMoments.Fill(solid, pressure, push, buckling, moments);
        var plain = push.SideForceN * form.Places.BladeMm + push.ForceN * solid.Sizes.ShaftThicknessMm / 2;
        TestPaddles.AssertRelative(plain / (1 - 0.25), moments[solid.Grid.FirstBladePlace], 1e-9);
    }

    // Property: a bend shortens the shaft's lever by its cosine and nothing else.
    [Fact]
    public void Property_bend_shortens_the_shafts_share()
    {
        var form = TestPaddles.Form(TestPaddles.Blade("teardrop"), bend: 12);
        double At(PaddleForm f)
        {
            var solid = TestPaddles.Shape(f, TestPaddles.PrintedGrid(f));
            var moments = Moments(solid, "touring-stroke", TestPaddles.Loads());
            return moments[solid.Grid.LowerHandPlace] - moments[solid.Grid.FirstBladePlace];
        }

        TestPaddles.AssertRelative(Math.Cos(12 * Math.PI / 180) * At(form with { BendDegrees = 0 }), At(form), 1e-9);
    }

    internal static double CentreOfPressureBelowThroat(BladeShape blade)
    {
        var form = TestPaddles.Form(blade);
        var solid = TestPaddles.Shape(form, TestPaddles.PrintedGrid(form));
        return BladePressure.On(solid).CentreOfPressureMm(StrokePivots.TouringMm) - form.Places.ThroatMm;
    }

    private static double[] Moments(PaddleSolid solid, string id, Loads loads)
    {
        var moments = new double[solid.Count];
        BendingMoments.Fill(solid, BladePressure.On(solid), loads.Case(id), LargeN, moments);
        return moments;
    }
}
