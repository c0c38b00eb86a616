using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Tests.Solid;

namespace Paddle.Design.Tests.Strength;

public class CrossGrainBendingTests
{
    private const double FarPivotMm = 1e9; // an even pressure, to 1e-6
    private const double ForceN = 250;
    private const double L = CrossGrainBending.TwistShare;

    // Hand formula: an even bar under an even pressure bends along its length alike at every y; nothing is left to bend it across, and
    // only the share of the stress along the grain remains. 1e-6 of what the strip's own pressure would do: (Mη)″ = q·w/2 exactly, but
    // for the cubic's rounding.
    [Fact]
    public void Formula_even_bar_carries_each_strip_by_itself()
    {
        var (solid, pressure) = Plate(_ => 60, _ => 5);
        var q = 120 * Pressure(pressure);
        var stresses = Fill(solid, pressure, x => q * x * x / 2);
        foreach (var i in Body(solid))
        {
            var along = Moment(solid, i, x => q * x * x / 2) * solid.HalfThickness[i] / solid.FlatSecondMoment[i];
            Assert.Equal(CrossGrainBending.CurlShare * along, stresses[i], 1e-6 * Strip(q, 60, 5));
        }
    }

    // Hand formula: a wing that hangs from the spine alone, no moment along the blade: a cantilever strip, σ = 6m/t², m = p·w²/2.
    [Fact]
    public void Formula_wing_without_bending_along_is_a_cantilever_strip()
    {
        var (solid, pressure) = Plate(_ => 70, _ => 4);
        var p = Pressure(pressure);
        var stresses = Fill(solid, pressure, _ => 0);
        foreach (var i in Body(solid)) TestPaddles.AssertRelative(6 * (p * 70 * 70 / 2) / (8 * 8), stresses[i], 1e-6);
    }

    // Hand formula: a flat plate widening evenly, w = 20 + a·x, moment V·x growing towards the shaft: η = w/2, so m = ½(2 − 2λ)V·η′ with
    // η′ taken towards the tip. One central difference is exact for straight lines; 5e-5 for summing a square by chords 10 mm long. The
    // strip's own ½·q(w/2 − η) = 0.
    [Fact]
    public void Formula_moment_spreads_into_a_widening_plate()
    {
        const double V = 40, Widening = 0.1;
        var tip = TestPaddles.Form(TestPaddles.Blade("ottertail")).Places.OverallMm;
        var (solid, pressure) = Plate(fromTip => 90 - Widening * fromTip, _ => 6);
        var stresses = Fill(solid, pressure, fromTip => V * fromTip);
        foreach (var i in Body(solid))
        {
            double fromTip = tip - solid.X[i], w = solid.HalfWidth[i], reach = w / 2;
            var strip = Pressure(pressure) * (w * w + Widening * Widening * reach * reach / 3); // mean of q·w/2 within the reach
            var m = 0.5 * (strip + (2 - 2 * L) * V * Widening / 2);
            var along = V * fromTip * 6 / solid.FlatSecondMoment[i];
            TestPaddles.AssertRelative(1.5 * m / 36 + CrossGrainBending.CurlShare * along, stresses[i], 5e-5);
        }
    }

    // Hand formula: the differential form ½[q(w/2 − η) + (2 − 2λ)Vη′ − (1 − 2λ)Mη″], λ and λ of L19, for a gentle curve of width and
    // moment: 1.5 % for differences over a quarter of the width instead of none.
    [Fact]
    public void Formula_differences_follow_the_differential_form()
    {
        double W(double s) => 60 + 20 * Math.Cos(s / 160);
        double Slope(double s) => 20 / 160.0 * Math.Sin(s / 160); // towards the tip, s from the tip
        double Turn(double s) => -20 / 25600.0 * Math.Cos(s / 160);
        const double Q = 0.6;
        var tip = TestPaddles.Form(TestPaddles.Blade("ottertail")).Places.OverallMm;
        var (solid, pressure) = Plate(W, _ => 5);
        var stresses = Fill(solid, pressure, s => Q * s * s / 2);
        foreach (var i in Body(solid))
        {
            double s = tip - solid.X[i], moment = Q * s * s / 2, shear = Q * s, q = 2 * W(s) * Pressure(pressure);

            // The pressure's strip force is the paddle's own; the second difference of M gives Q, whatever q is.
            var m = 0.5 * (q * W(s) / 2 - Q * W(s) / 2 + (2 - 2 * L) * shear * Slope(s) / 2 - (1 - 2 * L) * moment * Turn(s) / 2);
            var expected = Math.Max(0, 1.5 * m / 25) + CrossGrainBending.CurlShare * moment * 5 / solid.FlatSecondMoment[i];
            Assert.Equal(expected, stresses[i], 0.015 * stresses.Max());
        }
    }

    // Property: what is found does not depend on how close the printed places lie, for every family: 1.5 % between 10 and 2.5 mm.
    [Fact]
    public void Property_does_not_depend_on_the_places()
    {
        foreach (var family in BladeFamilies.All)
        {
            double At(double spacing)
            {
                var form = TestPaddles.Form(TestPaddles.Blade(family.Id));
                var solid = TestPaddles.Shape(form, StationGrid.Printed(form.Lengths, form.Blade.WidestAt, spacing));
                return Stroke(solid).StressMPa;
            }

            TestPaddles.AssertRelative(At(2.5), At(10), 0.015, family.Id);
        }
    }

    // Property: twice the force is twice the stress at the same place; turned sizes (thinner all over) are worse.
    [Fact]
    public void Property_grows_with_force_and_thinness()
    {
        foreach (var family in BladeFamilies.All)
        {
            var form = TestPaddles.Form(TestPaddles.Blade(family.Id));
            var solid = TestPaddles.Shape(form, TestPaddles.PrintedGrid(form));
            var (once, at) = Stroke(solid);
            var (twice, atTwice) = Stroke(solid, 2 * ForceN);
            TestPaddles.AssertRelative(2 * once, twice, 1e-12, family.Id);
            Assert.Equal(at, atTwice);
            Assert.InRange(at, form.Places.ThroatMm + CrossGrainBending.From * form.Places.BladeMm, form.Places.OverallMm);
            var thin = TestPaddles.Shape(
                form, TestPaddles.PrintedGrid(form), TestPaddles.UsualSizes with { MiddleThicknessMm = 8, TipThicknessMm = 6, EdgeThicknessMm = 4 });
            Assert.True(Stroke(thin).StressMPa > once, family.Id);
        }
    }

    private static (double StressMPa, double AtMm) Stroke(PaddleSolid solid, double forceN = ForceN)
    {
        var pressure = BladePressure.On(solid);
        var moments = new double[solid.Count];
        for (var i = solid.Grid.FirstBladePlace; i < solid.Count; i++)
            moments[i] = pressure.StrokeMomentNmm(i, solid.X[i], forceN, StrokePivots.HardMm);
        return CrossGrainBending.Of(solid, moments, pressure, forceN, StrokePivots.HardMm);
    }

    // A plate of even thickness across, in place of the blade.
    private static (PaddleSolid Solid, BladePressure Pressure) Plate(Func<double, double> halfWidthMm, Func<double, double> halfThicknessMm)
    {
        var form = TestPaddles.Form(TestPaddles.Blade("ottertail"));
        var solid = TestPaddles.Bar(form, TestPaddles.PrintedGrid(form), 100, 10);
        for (var i = 0; i < solid.Count; i++)
        {
            var fromTip = form.Places.OverallMm - solid.X[i];
            double w = halfWidthMm(fromTip), c = halfThicknessMm(fromTip);
            (solid.HalfWidth[i], solid.HalfThickness[i], solid.EdgeHalfThickness[i]) = (w, c, c);
            solid.FlatSecondMoment[i] = 4.0 / 3 * w * c * c * c;
        }

        return (solid, BladePressure.On(solid));
    }

    private static double[] Fill(PaddleSolid solid, BladePressure pressure, Func<double, double> momentFromTip)
    {
        var stresses = new double[solid.Count];
        double[] moments = [.. Enumerable.Range(0, solid.Count).Select(i => Moment(solid, i, momentFromTip))];
        CrossGrainBending.Fill(solid, moments, pressure, ForceN, FarPivotMm, stresses);
        return stresses;
    }

    private static double Moment(PaddleSolid solid, int i, Func<double, double> fromTip) => fromTip(solid.Form.Places.OverallMm - solid.X[i]);

    private static double Pressure(BladePressure pressure) => ForceN / pressure.AreaMm2;

    private static double Strip(double q, double w, double c) => 0.75 * q / (2 * w) * w * w / (c * c);

    // Places whose neighbours a quarter of the width away are looked at too, and have such neighbours themselves.
    private static IEnumerable<int> Body(PaddleSolid solid) => Enumerable.Range(0, solid.Count).Where(i =>
        solid.X[i] >= solid.Form.Places.ThroatMm + CrossGrainBending.From * solid.Form.Places.BladeMm + 50
        && solid.X[i] <= solid.Form.Places.OverallMm - 100);
}
