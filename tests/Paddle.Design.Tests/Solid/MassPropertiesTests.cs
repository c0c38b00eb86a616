using Paddle.Design.Outline;
using Paddle.Design.Solid;

namespace Paddle.Design.Tests.Solid;

public class MassPropertiesTests
{
    private static readonly StationGrid VeryFine = StationGrid.Gauss([.. Enumerable.Repeat(60, Segment.All.Count)]);

    private static readonly double[] BladeKnots = [0.08, 0.25, 0.5, 0.92];

    public static TheoryData<string> Forms => [.. AllForms.Keys];

    private static Dictionary<string, PaddleForm> AllForms { get; } = MakeForms();

    // Worked example of the reference figures for swing weight: a uniform rod 1.5 m long of 0.70 kg has 0.525 kg·m² about its end
    // and 0.1448 about a point 0.889 m from it (mL²/3 and mL²/12 + m·0.139²). Exact but for the last figure printed.
    [Fact]
    public void Worked_uniform_rod()
    {
        var blade = TestPaddles.Blade("ottertail", length: 1500 - 938);
        var form = TestPaddles.Form(blade);
        form = form with { Places = form.Places with { TopHandMm = 0, LowerHandMm = 889, ThroatMm = 938, OverallMm = 1500 } };
        var rod = TestPaddles.Bar(form, StationGrid.Fine, 30, 28);
        var density = 0.70 / (30 * 28 * 1500 * 1e-9);
        var mass = MassProperties.Of(rod, density);
        Assert.Equal(700, mass.TotalG, 1e-6);
        Assert.Equal(750, mass.CentreOfMassMm, 1e-6);
        Assert.Equal(0.525, mass.InertiaTopHandKgM2, 1e-9);
        Assert.Equal(0.1448, mass.InertiaLowerHandKgM2, 0.00005);
        Assert.Equal(0.70 * 1.5 * 1.5 / 12, mass.InertiaCentreKgM2, 1e-9);
        Assert.Equal(2 * (30 + 28) * 1500 / 100.0, mass.SurfaceCm2, 1e-6);
    }

    // Property: the grids converge. Fine within 1e-4 of sixty points a segment, coarse within 1e-3: far inside the spread of wood.
    [Theory]
    [MemberData(nameof(Forms))]
    public void Property_grids_converge(string name)
    {
        var form = AllForms[name];
        var exact = MassProperties.Of(TestPaddles.Shape(form, VeryFine), 650);
        AssertClose(exact, MassProperties.Of(TestPaddles.Shape(form, StationGrid.Fine), 650), 1e-4, name + " fine");
        AssertClose(exact, MassProperties.Of(TestPaddles.Shape(form, StationGrid.Coarse), 650), 1e-3, name + " coarse");
    }

    // Property: the printed stations alone, summed by the trapezoid rule, give the report's figures within 0.5 %.
    [Theory]
    [MemberData(nameof(Forms))]
    public void Property_printed_stations_give_the_same_sums(string name)
    {
        var form = AllForms[name];
        var printed = TestPaddles.Shape(form, TestPaddles.PrintedGrid(form));
        double volume = 0, first = 0, across = 0, second = 0;
        for (var i = 1; i < printed.Count; i++)
        {
            foreach (var k in new[] { i - 1, i })
            {
                var slice = 0.5 * (printed.X[i] - printed.X[i - 1]) * printed.Section(k).AreaMm2;
                double along = form.AlongShaftMm(printed.X[k]), z = printed.CentreOffsetMm(k);
                volume += slice;
                first += slice * along;
                across += slice * z;
                second += slice * (along * along + z * z);
            }
        }

        var mass = MassProperties.Of(TestPaddles.Shape(form, StationGrid.Fine), 650);
        double centre = first / volume, offset = across / volume;
        TestPaddles.AssertRelative(mass.TotalG, volume * 650e-6, 0.005, "mass");
        TestPaddles.AssertRelative(mass.CentreOfMassMm, centre, 0.005, "centre");
        TestPaddles.AssertRelative(
            mass.InertiaCentreKgM2, (second - volume * (centre * centre + offset * offset)) * 650e-15, 0.005, "inertia");
    }

    // Property: printed stations are no more than 10 mm apart, in rising order, one at every knot and one at the widest point.
    [Theory]
    [MemberData(nameof(Forms))]
    public void Property_printed_stations_cover_the_paddle(string name)
    {
        var form = AllForms[name];
        var x = TestPaddles.Shape(form, TestPaddles.PrintedGrid(form)).X;
        Assert.Equal(0, x[0], 1e-9);
        Assert.Equal(form.Places.OverallMm, x[^1], 1e-9);
        for (var i = 1; i < x.Length; i++)
            Assert.True(x[i] > x[i - 1] && x[i] - x[i - 1] <= 10 + 1e-9, $"{name}: {x[i - 1]} to {x[i]}");

        double[] knots =
        [
            form.Places.GripEndMm,
            form.Places.LowerHandMm,
            form.Places.ThroatMm,
            form.Places.ThroatMm + form.Blade.WidestAt * form.Blade.LengthMm,
            .. BladeKnots.Select(t => form.Places.ThroatMm + t * form.Blade.LengthMm),
        ];
        foreach (var knot in knots) Assert.Contains(x, place => Math.Abs(place - knot) < 1e-3);
    }

    // Property: mass and inertia go with the density, balance and volume do not.
    [Fact]
    public void Property_density_scales_mass_only()
    {
        var solid = TestPaddles.Shape(AllForms["ottertail"], StationGrid.Fine);
        MassProperties light = MassProperties.Of(solid, 350), heavy = MassProperties.Of(solid, 700);
        TestPaddles.AssertRelative(2 * light.TotalG, heavy.TotalG, 1e-12);
        TestPaddles.AssertRelative(2 * light.InertiaLowerHandKgM2, heavy.InertiaLowerHandKgM2, 1e-12);
        Assert.Equal(light.CentreOfMassMm, heavy.CentreOfMassMm, 1e-9);
        Assert.Equal(light.VolumeCm3, heavy.VolumeCm3, 1e-9);
        Assert.Equal(light.SurfaceCm2, heavy.SurfaceCm2, 1e-9);
        TestPaddles.AssertRelative(350e-3 * light.VolumeCm3, light.TotalG, 1e-12);
    }

    // Property: a bend moves no wood, but carries the blade towards the grip along the shaft's line.
    [Fact]
    public void Property_bend_keeps_mass_and_moves_the_balance_to_the_grip()
    {
        var straight = AllForms["teardrop"];
        var before = MassProperties.Of(TestPaddles.Shape(straight with { BendDegrees = 0 }, StationGrid.Fine), 650);
        var after = MassProperties.Of(TestPaddles.Shape(straight with { BendDegrees = 12 }, StationGrid.Fine), 650);
        Assert.Equal(before.TotalG, after.TotalG, 1e-9);
        Assert.Equal(before.SurfaceCm2, after.SurfaceCm2, 1e-9);
        Assert.True(after.CentreOfMassMm < before.CentreOfMassMm - 1);

        // Hand formula: only the blade's own part of the first moment is shortened, by 1 − cos 12°.
        var solid = TestPaddles.Shape(straight, StationGrid.Fine);
        double volume = 0, blade = 0;
        for (var i = 0; i < solid.Count; i++)
        {
            var slice = solid.WeightMm(i) * solid.Section(i).AreaMm2;
            volume += slice;
            blade += slice * Math.Max(0, solid.X[i] - straight.Places.ThroatMm);
        }

        var shift = blade / volume * (1 - Math.Cos(12 * Math.PI / 180));
        Assert.Equal(before.CentreOfMassMm - shift, after.CentreOfMassMm, 1e-9);
    }

    // Property: a paddle balanced about its parts: inertia about a hand is the parallel-axis sum (Steiner).
    [Fact]
    public void Property_parallel_axes()
    {
        var form = AllForms["ottertail"];
        var mass = MassProperties.Of(TestPaddles.Shape(form, StationGrid.Fine), 650);
        var arm = (mass.CentreOfMassMm - form.Places.LowerHandMm) / 1000;
        TestPaddles.AssertRelative(
            mass.InertiaCentreKgM2 + mass.TotalG / 1000 * arm * arm, mass.InertiaLowerHandKgM2, 1e-12);
    }

    // Property: what the line of mass leaves out, the sections' own spread, is under 0.1 % of the inertia, as its remark says.
    [Fact]
    public void Property_sections_own_spread_is_negligible()
    {
        var solid = TestPaddles.Shape(AllForms["ottertail"], StationGrid.Fine);
        var own = 0.0;
        for (var i = 0; i < solid.Count; i++) own += solid.WeightMm(i) * solid.Section(i).FlatSecondMomentMm4;
        Assert.InRange(own * 650e-15 / MassProperties.Of(solid, 650).InertiaCentreKgM2, 0, 0.001);
    }

    // Property: the areas and second moments that a solid carries are those of its sections.
    [Fact]
    public void Property_carried_section_figures_are_the_sections()
    {
        var solid = TestPaddles.Shape(AllForms["beavertail"], StationGrid.Fine);
        for (var i = 0; i < solid.Count; i++)
        {
            Assert.Equal(solid.Section(i).AreaMm2, solid.Area[i]);
            Assert.Equal(solid.Section(i).FlatSecondMomentMm4, solid.FlatSecondMoment[i]);
        }
    }

    // Property: another blade in the same form is another outline.
    [Fact]
    public void Property_changing_the_blade_changes_the_outline()
    {
        var form = AllForms["ottertail"];
        var changed = form with { Blade = form.Blade with { WidthMm = 130 } };
        var widest = changed.Places.ThroatMm + changed.Blade.WidestAt * changed.Blade.LengthMm;
        Assert.Equal(65, changed.Outline(TestPaddles.UsualSizes).HalfBreadthMm(widest), 1e-6);
    }

    // Property: one-sided grips are hollowed once, matching ones twice; the hollow takes wood away.
    [Fact]
    public void Property_hollow_takes_wood_from_each_hollowed_face()
    {
        double Grip(GripFaces faces, double depth)
        {
            var form = TestPaddles.Form(TestPaddles.Blade("ottertail"), faces: faces);
            form = form with { Grip = form.Grip with { HollowDepthMm = depth } };
            return MassProperties.Of(TestPaddles.Shape(form, StationGrid.Fine), 650).GripG;
        }

        var full = Grip(GripFaces.OneSided, 0);
        double once = full - Grip(GripFaces.OneSided, 4), twice = full - Grip(GripFaces.Matching, 4);
        Assert.True(once > 1);
        TestPaddles.AssertRelative(2 * once, twice, 1e-9);
    }

    // Property: hollowed on one side only, the grip's other face stays where it was, and the hollowed one sinks by the hollow.
    [Fact]
    public void Property_the_face_opposite_a_hollow_stays()
    {
        PaddleSolid Grip(double depth)
        {
            var form = TestPaddles.Form(TestPaddles.Blade("ottertail"), faces: GripFaces.OneSided);
            form = form with { Grip = form.Grip with { HollowDepthMm = depth } };
            return TestPaddles.Shape(form, TestPaddles.PrintedGrid(form));
        }

        var (full, hollow) = (Grip(0), Grip(4));
        var deepest = 0.0;
        for (var i = 0; i < full.Count; i++)
        {
            double Face(PaddleSolid solid, int side) => solid.CentreOffsetMm(i) + side * solid.HalfThickness[i];
            Assert.Equal(Face(full, -1), Face(hollow, -1), 1e-9);
            deepest = Math.Max(deepest, Face(full, 1) - Face(hollow, 1));
        }

        Assert.Equal(4, deepest, 0.05);
    }

    // Points in the plane (elementary mechanics): a bent paddle turns about its centre of mass, which lies off the shaft's line.
    [Fact]
    public void A_bent_paddle_turns_about_a_centre_off_the_shafts_line()
    {
        var form = TestPaddles.Form(TestPaddles.Blade("teardrop"), bend: 12);
        var solid = TestPaddles.Shape(form, VeryFine);
        double mass = 0, along = 0, across = 0, turning = 0;
        (double Kg, double X, double Z)[] points =
        [
            .. Enumerable.Range(0, solid.Count).Select(i =>
            {
                var past = Math.Max(0, solid.X[i] - form.Places.ThroatMm);
                var turn = 12 * Math.PI / 180;
                return (solid.WeightMm(i) * solid.Area[i] * 650e-9, (solid.X[i] - past + past * Math.Cos(turn)) / 1000, past * Math.Sin(turn) / 1000);
            }),
        ];
        foreach (var (kg, x, z) in points) (mass, along, across) = (mass + kg, along + kg * x, across + kg * z);
        foreach (var (kg, x, z) in points) turning += kg * (Math.Pow(x - along / mass, 2) + Math.Pow(z - across / mass, 2));
        var told = MassProperties.Of(solid, 650);
        TestPaddles.AssertRelative(1000 * mass, told.TotalG, 1e-9);
        TestPaddles.AssertRelative(1000 * along / mass, told.CentreOfMassMm, 1e-9);
        TestPaddles.AssertRelative(turning, told.InertiaCentreKgM2, 1e-9);
    }

    private static Dictionary<string, PaddleForm> MakeForms()
    {
        var forms = BladeFamilies.All.ToDictionary(f => f.Id, f => TestPaddles.Form(TestPaddles.Blade(f.Id)));
        forms["palm"] = TestPaddles.Form(TestPaddles.Blade("beavertail"), style: GripStyle.Palm);
        forms["t"] = TestPaddles.Form(TestPaddles.Blade("square-tip"), style: GripStyle.T);
        forms["one-sided"] = TestPaddles.Form(TestPaddles.Blade("ottertail"), faces: GripFaces.OneSided);
        forms["bent"] = TestPaddles.Form(TestPaddles.Blade("teardrop"), bend: 12);
        forms["short and wide"] = TestPaddles.Form(TestPaddles.Blade("square-tip", length: 350, width: 240), handSpacing: 500);
        forms["long and narrow"] = TestPaddles.Form(TestPaddles.Blade("voyageur", length: 1000, width: 70), handSpacing: 1050);
        forms["offsets"] = TestPaddles.Form(TestPaddles.OffsetsBlade(
            new(50, 18), new(100, 30), new(200, 62), new(260, 72), new(350, 70), new(450, 60), new(550, 41), new(620, 22), new(650, 0)));
        return forms;
    }

    private static void AssertClose(MassProperties expected, MassProperties actual, double tolerance, string what)
    {
        TestPaddles.AssertRelative(expected.TotalG, actual.TotalG, tolerance, what + " mass");
        TestPaddles.AssertRelative(expected.CentreOfMassMm, actual.CentreOfMassMm, tolerance, what + " centre");
        TestPaddles.AssertRelative(expected.InertiaCentreKgM2, actual.InertiaCentreKgM2, tolerance, what + " inertia");
        TestPaddles.AssertRelative(expected.InertiaLowerHandKgM2, actual.InertiaLowerHandKgM2, tolerance, what + " swing");
        TestPaddles.AssertRelative(expected.SurfaceCm2, actual.SurfaceCm2, 10 * tolerance, what + " surface");
    }
}
