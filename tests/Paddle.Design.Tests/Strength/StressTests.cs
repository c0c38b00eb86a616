using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Tests.Solid;

namespace Paddle.Design.Tests.Strength;

public class StressTests
{
    // Worked values of the reference figures for shaft stress: σ = 32M/(πd³), solid round shaft, MPa, to the figure printed.
    [Theory]
    [InlineData(28.6, 35, 15.2)]
    [InlineData(28.6, 70, 30.5)]
    [InlineData(28.6, 105, 45.7)]
    [InlineData(31.75, 35, 11.1)]
    [InlineData(31.75, 70, 22.3)]
    [InlineData(31.75, 105, 33.4)]
    public void Worked_round_shaft(double diameter, double momentNm, double stressMPa)
    {
        var section = new Section(diameter / 2, diameter / 2, 0, SectionMoments.Ellipse);
        Assert.Equal(stressMPa, momentNm * 1000 / section.FlatModulusMm3, 0.051);
    }

    // Hand formula: an oval shaft, depth h in the direction of the load, width w: Z = πwh²/32.
    [Fact]
    public void Formula_oval_shaft() =>
        TestPaddles.AssertRelative(
            Math.PI * 28 * 32 * 32 / 32, new Section(14, 16, 0, SectionMoments.Ellipse).FlatModulusMm3, 1e-12);

    // Worked values of the reference figures for loads: m^(2/3), to the figure printed.
    [Theory]
    [InlineData(60, 15.33)]
    [InlineData(70, 16.98)]
    [InlineData(75, 17.78)]
    [InlineData(90, 20.08)]
    public void Worked_body_mass_scale(double mass, double scale)
    {
        var loads = TestPaddles.Loads(mass);
        Assert.Equal(scale, loads.Case("touring-stroke").ForceN / 5.0, 0.0051);
        Assert.Equal(scale, loads.Case("hard-stroke").ForceN / 21.1, 0.0051);
    }

    // Worked values of the reference figures for loads at 75 kg: touring 89 N, hard stroke 375 N, brace and push-off 368 N; 125 N sideways.
    [Fact]
    public void Worked_loads_at_75_kg()
    {
        var loads = TestPaddles.Loads(Loads.UnknownBodyMassKg);
        Assert.Equal(89, loads.Case("touring-stroke").ForceN, 0.5);
        Assert.Equal(375, loads.Case("hard-stroke").ForceN, 0.5);
        Assert.Equal(368, loads.Case("brace").ForceN, 0.5);
        Assert.Equal(368, loads.Case("push-off").ForceN, 0.5);
        Assert.Equal(125, loads.Case("push-off").SideForceN, 1e-9);
        Assert.Equal(loads.Case("hard-stroke").ForceN, loads.Case("edge-press").ForceN);
    }

    // Property: across the blade the spine is the worst place. A strip is a cantilever under an even pressure: stress at u goes as
    // (1 − u)²/h(u)², for every section down the blade and any edge no thicker than the spine.
    [Fact]
    public void Property_plate_strip_is_worst_at_the_spine()
    {
        for (var t = 0.0; t <= 1; t += 0.01)
        {
            var moments = SectionMoments.For(BladeBlend.CrownExponent(t), BladeBlend.CrownPower(t));
            foreach (var edge in new[] { 0, 0.2, 0.5, 0.9, 1 })
            {
                var section = new Section(70, 6, 6 * edge, moments);
                for (var u = 0.0; u < 1; u += 0.01)
                {
                    var ratio = (1 - u) * 6 / section.HalfThicknessAtMm(u);
                    Assert.True(ratio <= 1 + 1e-12, $"t {t}, edge {edge}, u {u}: {ratio}");
                }
            }
        }
    }

    // Hand formula: strip at the widest printed stations: σ = 6(pw²/2)/(2c)², the largest of all.
    [Fact]
    public void Formula_edge_press()
    {
        var (solid, pressure, check) = Check("ottertail");
        var force = TestPaddles.Loads().Case("edge-press").ForceN;
        var worst = Enumerable.Range(solid.Grid.FirstBladePlace, solid.Count - solid.Grid.FirstBladePlace)
            .Max(i => 6 * pressure.StrokePressureMPa(solid.X[i], force, StrokePivots.HardMm) * Math.Pow(solid.HalfWidth[i], 2) / 2
                / Math.Pow(2 * solid.HalfThickness[i], 2));
        TestPaddles.AssertRelative(worst, Case(check, "edge-press").MaxStressMPa, 1e-12);
    }

    // Property: the local pressure of a stroke sums to the stroke's force over the blade (20 000 strips: 1e-4).
    [Fact]
    public void Property_pressure_sums_to_the_force()
    {
        var (solid, pressure, _) = Check("sugar-island");
        double sum = 0, throat = solid.Form.Places.ThroatMm, step = solid.Form.Places.BladeMm / 20000;
        for (var k = 0; k < 20000; k++)
        {
            var x = throat + (k + 0.5) * step;
            sum += step * 2 * solid.Outline.HalfBreadthMm(x) * pressure.StrokePressureMPa(x, 300, StrokePivots.HardMm);
        }

        TestPaddles.AssertRelative(300, sum, 1e-4);
    }

    // Hand formula: each case's stress at its own worst place is M/Z (and P/A for a thrust), and no printed station has more.
    [Theory]
    [InlineData("ottertail")]
    [InlineData("teardrop")]
    [InlineData("voyageur")]
    public void Formula_stress_is_moment_over_modulus(string family)
    {
        var (solid, pressure, check) = Check(family);
        var loads = TestPaddles.Loads();
        var moments = new double[solid.Count];
        foreach (var loadCase in loads.AlongTheGrain)
        {
            BendingMoments.Fill(solid, pressure, loadCase, check.BucklingLoadN, moments);
            var worst = Enumerable.Range(0, solid.Count)
                .Where(i => moments[i] > 0 && solid.HalfThickness[i] > 0 && solid.HalfWidth[i] > 0)
                .Max(i => moments[i] / solid.Section(i).FlatModulusMm3 + loadCase.ThrustN / solid.Section(i).AreaMm2);
            TestPaddles.AssertRelative(worst, Case(check, loadCase.Id).MaxStressMPa, 1e-9, loadCase.Id);
            Assert.InRange(Case(check, loadCase.Id).AtMm, solid.Form.Places.TopHandMm, solid.Form.Places.OverallMm);
        }
    }

    // Property: twice the strength is twice the factor; only the touring stroke is held against the fatigue fraction.
    [Fact]
    public void Property_factors_follow_the_strengths()
    {
        var (solid, pressure, check) = Check("beavertail");
        var wood = TestPaddles.Ash;
        var twice = StrengthCheck.Of(
            solid, pressure, TestPaddles.Loads(), wood with { BendingStrengthMPa = 2 * wood.BendingStrengthMPa });
        foreach (var loadCase in TestPaddles.Loads().AlongTheGrain)
        {
            TestPaddles.AssertRelative(2 * Case(check, loadCase.Id).SafetyFactor, Case(twice, loadCase.Id).SafetyFactor, 1e-12);
            var share = loadCase.Id == "touring-stroke" ? 0.40 : 1;
            TestPaddles.AssertRelative(share * wood.BendingStrengthMPa / 1.05, Case(check, loadCase.Id).StrengthMPa, 1e-12);
        }

        Assert.Equal(check.Cases.Min(c => c.SafetyFactor), check.Governing.SafetyFactor);
    }

    private static CaseResult Case(StrengthCheck check, string id) => check.Cases.Single(c => c.Case.Id == id);

    private static (PaddleSolid Solid, BladePressure Pressure, StrengthCheck Check) Check(string family)
    {
        var form = TestPaddles.Form(TestPaddles.Blade(family));
        var solid = TestPaddles.Shape(form, TestPaddles.PrintedGrid(form));
        var pressure = BladePressure.On(solid);
        return (solid, pressure, StrengthCheck.Of(solid, pressure, TestPaddles.Loads(), TestPaddles.Ash));
    }
}
