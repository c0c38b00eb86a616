using MathNet.Numerics.RootFinding;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Tests.Solid;

namespace Paddle.Design.Tests.Strength;

public class ElasticityTests
{
    private const double EI = 2.5e8; // N·mm²
    private const double Length = 900;

    // Hand formula (Roark's Formulas for Stress and Strain, beams, from memory): overhanging beam, supports l apart, load P at a beyond:
    // Pa²(l + a)/(3EI) under the load. The moment runs in straight lines with a station at each knee, so the sum is exact.
    [Theory]
    [InlineData(880, 350)]
    [InlineData(500, 700)]
    public void Formula_overhanging_beam(double l, double a)
    {
        const double P = 50;
        var x = Even(0, l, 40).Concat(Even(l, l + a, 30).Skip(1)).ToArray();
        var curvature = x.Select(s => (s <= l ? P * a * s / l : P * (l + a - s)) / EI).ToArray();
        var y = new double[x.Length];
        ElasticCurve.Deflect(x, curvature, 0, l, y);
        TestPaddles.AssertRelative(P * a * a * (l + a) / (3 * EI), y[^1], 1e-9);
        Assert.Equal(0, y[0], 1e-12);
        Assert.Equal(0, y[40], 1e-12);

        // Between the supports it bends the other way, at most −Pal²/(9√3 EI), at l/√3 (same source; 0.5 % for the station nearest it).
        TestPaddles.AssertRelative(-P * a * l * l / (9 * Math.Sqrt(3) * EI), y.Min(), 0.005);
    }

    // Hand formula: cantilever PL³/(3EI): two supports a hair apart hold the end as a wall does (1e-6 of the length: 1e-5 of the sag).
    [Fact]
    public void Formula_cantilever()
    {
        const double P = 20;
        double[] x = [0, 1e-6 * Length, .. Even(2e-6 * Length, Length, 50)];
        var curvature = x.Select((s, i) => i == 0 ? 0 : P * (Length - s) / EI).ToArray();
        var y = new double[x.Length];
        ElasticCurve.Deflect(x, curvature, x[0], x[1], y);
        TestPaddles.AssertRelative(P * Length * Length * Length / (3 * EI), y[^1], 1e-5);
    }

    // Hand formula: simply supported under an even load, 5wL⁴/(384EI) in the middle; the parabola of the moment is followed by 90 chords.
    [Fact]
    public void Formula_even_load()
    {
        const double Load = 0.3;
        var x = Even(0, Length, 90);
        var curvature = x.Select(s => -Load * s * (Length - s) / 2 / EI).ToArray();
        var y = new double[x.Length];
        ElasticCurve.Deflect(x, curvature, 0, Length, y);
        TestPaddles.AssertRelative(5 * Load * Math.Pow(Length, 4) / (384 * EI), y[45], 2e-4);
    }

    // Hand formula: Euler's column π²EI/L². 0.2 %: sixty stations.
    [Fact]
    public void Formula_euler_column()
    {
        var x = Even(0, Length, 60);
        var critical = Buckling.CriticalLoadN(x, [.. x.Select(_ => EI)], 0, Length);
        TestPaddles.AssertRelative(Math.PI * Math.PI * EI / (Length * Length), critical, 0.002);
    }

    // Hand formula: symmetric stepped column, ends EI₁ over b, middle EI₂ over half-length h: tan(k₁b)·tan(k₂h) = k₁/k₂ with
    // kᵢ² = P/EIᵢ (A·sin k₁x joined to B·cos k₂(x − L/2) in value and slope; Timoshenko and Gere, Theory of Elastic Stability, from
    // memory). A station on either side of each step; 0.2 % as for the plain column.
    [Theory]
    [InlineData(0.25, 2)]
    [InlineData(0.30, 5)]
    [InlineData(0.20, 0.4)]
    public void Formula_stepped_column(double endShare, double middleOverEnd)
    {
        double b = endShare * Length, h = Length / 2 - b, middle = middleOverEnd * EI;
        double Misfit(double load)
        {
            double k1 = Math.Sqrt(load / EI), k2 = Math.Sqrt(load / middle);
            return k1 * Math.Cos(k1 * b) * Math.Cos(k2 * h) - k2 * Math.Sin(k1 * b) * Math.Sin(k2 * h);
        }

        var stiffer = Math.PI * Math.PI * Math.Max(EI, middle) / (Length * Length);
        var low = Math.PI * Math.PI * Math.Min(EI, middle) / (Length * Length);
        var exact = Brent.FindRoot(Misfit, 0.999 * low, 1.001 * stiffer, 1e-6);
        double[] x =
        [
            .. Even(0, b - 1e-6, 20), .. Even(b + 1e-6, Length - b - 1e-6, 40), .. Even(Length - b + 1e-6, Length, 20),
        ];
        double[] stiffness = [.. x.Select(s => s < b || s > Length - b ? EI : middle)];
        TestPaddles.AssertRelative(exact, Buckling.CriticalLoadN(x, stiffness, 0, Length), 0.002);
    }

    // Hand formula: tapered column by the inverse method: y = sin ξ + α·sin 3ξ, ξ = πx/L, buckles at P when EI = −Py/y″ (positive
    // while −1/27 < α < 1/9). 0.2 %: eighty stations.
    [Theory]
    [InlineData(0.05)]
    [InlineData(-0.03)]
    public void Formula_tapered_column(double alpha)
    {
        const double P = 3000;
        var x = Even(0, Length, 80);
        double[] stiffness =
        [
            .. x.Select(s => Math.Clamp(s / Length, 1e-6, 1 - 1e-6) * Math.PI)
                .Select(q => P * Length * Length / (Math.PI * Math.PI)
                    * (Math.Sin(q) + alpha * Math.Sin(3 * q)) / (Math.Sin(q) + 9 * alpha * Math.Sin(3 * q))),
        ];
        TestPaddles.AssertRelative(P, Buckling.CriticalLoadN(x, stiffness, 0, Length), 0.002);
    }

    // Property: stations beyond the pins do not matter.
    [Fact]
    public void Property_only_the_shaft_between_the_pins_buckles()
    {
        double[] x = [-100, -50, .. Even(0, Length, 60), Length + 80];
        var critical = Buckling.CriticalLoadN(x, [.. x.Select(s => s is < 0 or > Length ? 1e3 : EI)], 0, Length);
        TestPaddles.AssertRelative(Math.PI * Math.PI * EI / (Length * Length), critical, 0.002);
    }

    // Hand formula: 1/(1 − P/Pcr); and it keeps rising, finite, beyond.
    [Fact]
    public void Formula_growth()
    {
        Assert.Equal(1, Buckling.Growth(0, 1000), 1e-12);
        Assert.Equal(2, Buckling.Growth(500, 1000), 1e-12);
        Assert.Equal(20, Buckling.Growth(950, 1000), 1e-9);
        var last = 0.0;
        for (var p = 0.0; p < 5000; p += 10)
        {
            var growth = Buckling.Growth(p, 1000);
            Assert.True(growth > last && double.IsFinite(growth));
            last = growth;
        }
    }

    // Hand formula: a free uniform beam rings at (4.730)²/(2π)·√(EI/(mL⁴)) (Den Hartog, Mechanical Vibrations, from memory). 0.5 %.
    [Theory]
    [InlineData(150)]
    [InlineData(200)]
    public void Formula_free_beam(int stations)
    {
        var x = Even(0, 1500, stations);
        const double PerMm = 0.45e-3; // kg/mm
        const double Stiffness = 4e8; // N·mm²
        var frequency = FreeVibration.FirstFrequencyHz(x, [.. x.Select(_ => PerMm)], [.. x.Select(_ => Stiffness)]);
        var exact = 4.730041 * 4.730041 / (2 * Math.PI) * Math.Sqrt(Stiffness * 1e-6 / (PerMm * 1000 * Math.Pow(1.5, 4)));
        TestPaddles.AssertRelative(exact, frequency, 0.005);
    }

    // Property: stiffness fourfold rings twice as high, mass fourfold half as high, turned end for end the same.
    [Fact]
    public void Property_frequency_scales()
    {
        var form = TestPaddles.Form(TestPaddles.Blade("ottertail"));
        var solid = TestPaddles.Shape(form, TestPaddles.PrintedGrid(form));
        double[] mass = [.. solid.Area.Select(a => a * 650e-9)], stiffness = [.. solid.FlatSecondMoment.Select(i => 12000 * i)];
        var plain = FreeVibration.FirstFrequencyHz(solid.X, mass, stiffness);
        TestPaddles.AssertRelative(2 * plain, FreeVibration.FirstFrequencyHz(solid.X, mass, [.. stiffness.Select(s => 4 * s)]), 1e-9);
        TestPaddles.AssertRelative(plain / 2, FreeVibration.FirstFrequencyHz(solid.X, [.. mass.Select(m => 4 * m)], stiffness), 1e-9);

        double[] turned = [.. solid.X.Reverse().Select(x => form.Places.OverallMm - x)];
        var other = FreeVibration.FirstFrequencyHz(turned, [.. mass.Reverse()], [.. stiffness.Reverse()]);
        TestPaddles.AssertRelative(plain, other, 0.005); // six passes end within this of each other
    }

    // Hand formula: a prismatic bar held as the paddle is held: bending Pa²(l + a)/(3EI), shear 1.2·P·a(l + a)/(l·GA). The load at
    // the tip leaves only the top hand's faint knee inside a piece (1e-6); at the centre of pressure the knee costs under 0.1 %.
    [Fact]
    public void Formula_bench_flex_of_a_bar()
    {
        var form = TestPaddles.Form(TestPaddles.Blade("ottertail"));
        var bar = TestPaddles.Bar(form, StationGrid.Fine, 40, 25);
        var wood = TestPaddles.Ash;
        double l = form.Places.HandSpacingMm, second = 40 * 25.0 * 25 * 25 / 12, area = 40 * 25;
        double Sag(double a) =>
            Loads.BenchN * a * a * (l + a) / (3 * wood.ModulusMPa * second)
            + 1.2 * Loads.BenchN * a * (l + a) / (l * wood.ShearModulusMPa * area);

        double tip = form.Places.OverallMm - form.Places.LowerHandMm, centre = 400;
        TestPaddles.AssertRelative(
            Sag(tip), Flex.Deflections(bar, form.Places.OverallMm, wood).BenchMm, 1e-6, "tip");
        TestPaddles.AssertRelative(
            Sag(centre), Flex.Deflections(bar, form.Places.LowerHandMm + centre, wood).BenchMm, 1e-3, "centre of pressure");
    }

    // Published value (Wood Handbook's 10 % rule, worked in the reference figures for wood): with centre load, span 14 depths and E/G = 16,
    // shear adds 1.2·(E/G)·(h/L)² = 0.098 of the bending sag. A bar held at its end and middle and loaded at the other end is that
    // beam turned over.
    [Fact]
    public void Published_shear_share()
    {
        var form = TestPaddles.Form(TestPaddles.Blade("ottertail", length: 700));
        form = form with { Places = form.Places with { TopHandMm = 0, LowerHandMm = 800, ThroatMm = 900, OverallMm = 1600 } };
        var bar = TestPaddles.Bar(form, StationGrid.Fine, 60, 1600 / 14.0);
        var wood = TestPaddles.Ash with { ShearModulusMPa = TestPaddles.Ash.ModulusMPa / 16 };
        var stiff = wood with { ShearModulusMPa = 1e12 };
        double with = Flex.Deflections(bar, 1600, wood).BenchMm, without = Flex.Deflections(bar, 1600, stiff).BenchMm;
        Assert.Equal(0.0980, with / without - 1, 0.00005);
    }

    // Property: the report's flex (virtual work on the fine grid) against curvature summed twice over the printed stations, with the
    // moments of a weight at the centre of pressure written out by hand. 2 %: what a maker summing the printed stations would get.
    [Theory]
    [InlineData("ottertail")]
    [InlineData("beavertail")]
    [InlineData("voyageur")]
    [InlineData("square-tip")]
    public void Property_flex_equals_double_integration(string family)
    {
        var form = TestPaddles.Form(TestPaddles.Blade(family));
        var wood = TestPaddles.Ash with { ShearModulusMPa = 1e12 };
        var stations = TestPaddles.Shape(form, TestPaddles.PrintedGrid(form));
        var at = BladePressure.On(stations).CentreOfPressureMm(StrokePivots.TouringMm);
        var places = form.Places;
        var curvature = new double[stations.Count];
        for (var i = 0; i < stations.Count; i++)
        {
            var x = stations.X[i];
            var moment = x >= places.LowerHandMm
                ? Math.Max(0, at - x)
                : (at - places.LowerHandMm) * Math.Max(0, x - places.TopHandMm) / places.HandSpacingMm;
            curvature[i] = moment == 0 ? 0 : Loads.BenchN * moment / (wood.ModulusMPa * stations.FlatSecondMoment[i]);
        }

        var y = new double[stations.Count];
        ElasticCurve.Deflect(stations.X, curvature, places.TopHandMm, places.LowerHandMm, y);
        var (bench, tip) = Flex.Deflections(TestPaddles.Shape(form, StationGrid.Fine), at, wood);
        TestPaddles.AssertRelative(ElasticCurve.At(stations.X, y, at), bench, 0.02, "bench");
        TestPaddles.AssertRelative(y[^1], tip, 0.02, "tip");
    }

    private static double[] Even(double from, double to, int steps) =>
        [.. Enumerable.Range(0, steps + 1).Select(k => from + (to - from) * k / steps)];
}
