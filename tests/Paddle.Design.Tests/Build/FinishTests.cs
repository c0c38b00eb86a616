using Paddle.Design.Build;
using Paddle.Design.Finishing;
using Paddle.Design.Solid;
using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Build;

public class FinishTests
{
    [Fact]
    public void Litres_and_grams_follow_the_coverage_arithmetic()
    {
        // 0.16 m² of blade in six coats and 0.107 m² of shaft and grip in three: worked by hand from the published coverage.
        Assert.Equal(0.1033, FinishPlan.VarnishLitresFor(0.16, 6), 4);
        Assert.Equal(0.0409, FinishPlan.OilLitresFor(0.107, 3), 4);
        Assert.Equal(33.0, FinishPlan.DryVarnishG(0.16, 6), 1);
    }

    [Fact]
    public void The_plan_uses_the_paddle_s_own_surfaces()
    {
        var report = BuildSamples.Cherry;
        var plan = FinishPlan.For(report.Mass, report.Specification.Form.Places.ThroatMm, FinishChoice.Usual);
        Assert.Equal(report.Mass.BladeSurfaceCm2 * 1e-4, plan.VarnishAreaM2, 12);
        Assert.Equal(report.Mass.SurfaceCm2 * 1e-4, plan.VarnishAreaM2 + plan.OilAreaM2, 12);
        Assert.Equal(FinishPlan.VarnishLitresFor(plan.VarnishAreaM2, 6), plan.Coats.Take(6).Sum(coat => coat.Litres), 12);
        Assert.Equal([50, 20, 10, 0, 0, 0], plan.Coats.Take(6).Select(coat => coat.ThinnerPercent));
        Assert.InRange(report.Specification.Form.Places.ThroatMm - plan.MaskingLineMm!.Value, 20, 30);
    }

    [Fact]
    public void Six_coats_take_nine_days_and_no_coat_goes_on_before_the_last_is_dry()
    {
        var report = BuildSamples.Cherry;
        var coats = FinishPlan.For(report.Mass, 938, FinishChoice.Usual).Coats;
        Assert.Equal(9, coats.First(coat => coat.Finish == "drying oil").StartDay, 9);
        for (var k = 1; k < coats.Count; k++)
            Assert.True(coats[k].StartDay >= coats[k - 1].StartDay + 1);
        Assert.Equal(coats.Max(coat => coat.StartDay + coat.WaitDays), FinishPlan.For(report.Mass, 938, FinishChoice.Usual).ReadyDay, 9);
        Assert.True(FinishPlan.For(report.Mass, 938, FinishChoice.Usual).ReadyDay >= 16);
    }

    [Theory]
    [InlineData(SurfaceFinish.Varnish, 6, SurfaceFinish.Varnish, 6, false)]
    [InlineData(SurfaceFinish.Varnish, 6, SurfaceFinish.Varnish, 3, false)]
    [InlineData(SurfaceFinish.Oil, 3, SurfaceFinish.Oil, 3, false)]
    [InlineData(SurfaceFinish.None, 0, SurfaceFinish.None, 0, false)]
    [InlineData(SurfaceFinish.Oil, 0, SurfaceFinish.None, 0, false)]
    [InlineData(SurfaceFinish.Varnish, 6, SurfaceFinish.None, 0, true)]
    [InlineData(SurfaceFinish.Oil, 3, SurfaceFinish.Varnish, 6, true)]
    public void There_is_a_masking_line_only_where_two_finishes_meet(SurfaceFinish blade, int onBlade, SurfaceFinish shaft, int onShaft, bool meets)
    {
        var plan = FinishPlan.For(BuildSamples.Cherry.Mass, 938, new(blade, onBlade, shaft, onShaft, false));
        Assert.Equal(meets, plan.MaskingLineMm is not null);
        Assert.Equal(meets, plan.Notes.Any(note => note.Contains("masking line", StringComparison.Ordinal)));
        Assert.Equal(onBlade + onShaft, plan.Coats.Count);
    }

    [Fact]
    public void What_is_varnished_all_over_is_coated_on_the_same_days()
    {
        var both = FinishPlan.For(BuildSamples.Cherry.Mass, 938, new(SurfaceFinish.Varnish, 6, SurfaceFinish.Varnish, 4, false));
        var blade = FinishPlan.For(BuildSamples.Cherry.Mass, 938, new(SurfaceFinish.Varnish, 6, SurfaceFinish.None, 0, false));
        Assert.Equal(blade.ReadyDay, both.ReadyDay, 9);
        Assert.All(both.Coats.GroupBy(coat => coat.Number), coats => Assert.Single(coats.Select(coat => coat.StartDay).Distinct()));
        Assert.Equal(both.Coats.Select(coat => coat.StartDay).Order(), both.Coats.Select(coat => coat.StartDay));
    }

    [Theory]
    [InlineData(SurfaceFinish.Varnish, SurfaceFinish.Oil, false, "blade varnished, shaft and grip oiled")]
    [InlineData(SurfaceFinish.Oil, SurfaceFinish.Oil, false, "oiled all over")]
    [InlineData(SurfaceFinish.None, SurfaceFinish.None, false, "left bare")]
    [InlineData(SurfaceFinish.None, SurfaceFinish.None, true, "tip reinforced, bare all over")]
    [InlineData(SurfaceFinish.Varnish, SurfaceFinish.None, true, "tip reinforced, blade varnished, shaft and grip bare")]
    public void A_finish_is_said_in_words(SurfaceFinish blade, SurfaceFinish shaft, bool cloth, string expected) =>
        Assert.Equal(expected, new FinishChoice(blade, FinishChoice.UsualCoats(blade), shaft, FinishChoice.UsualCoats(shaft), cloth).InWords());

    [Fact]
    public void More_coats_weigh_more_and_carry_the_balance_further_to_the_tip()
    {
        var report = BuildSamples.Cherry;
        FinishedMass With(FinishChoice choice) => FinishedMass.Of(
            report.Specification.Form.Places, report.Mass, FinishLoad.On(Fine(report), choice));
        var (three, six) = (With(FinishChoice.Usual with { BladeCoats = 3 }), With(FinishChoice.Usual));
        Assert.True(six.MassG > three.MassG && six.ShiftMm > three.ShiftMm);
        var bare = With(new(SurfaceFinish.None, 0, SurfaceFinish.None, 0, false));
        Assert.Equal((report.Mass.TotalG, report.Mass.CentreOfMassMm), (bare.MassG, bare.CentreOfMassMm));
        Assert.True(With(FinishChoice.Usual with { TipReinforcement = true }).ShiftMm > six.ShiftMm + 2);
    }

    [Theory]
    [InlineData(135, 0.29)]
    [InlineData(203, 0.43)]
    public void Filled_cloth_is_as_thick_as_its_glass_and_resin(double cloth, double expectedMm)
    {
        var report = BuildSamples.Cherry;
        var tip = TipReinforcement.For(report.Stations, report.Mass.TotalG, report.Mass.CentreOfMassMm, 60, cloth);
        Assert.Equal(expectedMm, tip.ThicknessMm, 2);
    }

    [Fact]
    public void A_reinforced_tip_moves_the_balance_as_statics_says()
    {
        var report = BuildSamples.Cherry;
        var places = report.Specification.Form.Places;
        var tip = TipReinforcement.For(report.Stations, report.Mass.TotalG, report.Mass.CentreOfMassMm);
        Assert.InRange(tip.AddedG, 5, 15);
        Assert.Equal(report.Mass.TotalG + tip.AddedG, tip.With.MassG, 9);

        // Its own centre lies in the last 60 mm; the shift follows from mass and arm.
        var arm = (tip.With.MassG * tip.With.BalanceMm - report.Mass.TotalG * report.Mass.CentreOfMassMm) / tip.AddedG;
        Assert.InRange(arm, places.OverallMm - 60, places.OverallMm);
        Assert.Equal(tip.AddedG * (arm - report.Mass.CentreOfMassMm) / tip.With.MassG, tip.With.ShiftMm, 9);
    }

    [Fact]
    public void Sanding_after_P80_takes_a_third_of_a_millimetre_from_each_face()
    {
        Assert.Equal(0.33, SandingPlan.RemovesMm([80, 120, 180, 220]), 2);
        Assert.Equal(0.125, SandingPlan.RemovesMm([120, 180, 220]), 9);
        Assert.All(SandingPlan.All, step => Assert.Equal(step.Grits.Order(), step.Grits));
    }

    [Fact]
    public void A_wet_blade_swells_weighs_more_and_hangs_lower()
    {
        var report = BuildSamples.Cherry;
        var dry = MoistureInService.For(report, 12, 12);
        Assert.Equal(report.Mass.TotalG, dry.BareWood.MassG, 1e-6);
        Assert.Equal(0, dry.BareWood.ShiftMm, 1e-6);
        Assert.All(dry.Sizes, size => Assert.Equal(0, size.FlatSawnChangeMm, 12));

        var wet = MoistureInService.For(report, 12, 12, 20);
        Assert.Equal(report.Mass.BladeG * 8 / 112, wet.BareWood.MassG - report.Mass.TotalG, 1e-6);
        Assert.True(wet.BareWood.ShiftMm > 0);
        Assert.NotEmpty(wet.Notes);
    }

    [Fact]
    public void Shaped_dry_a_paddle_of_the_same_sizes_holds_more_wood()
    {
        // Ovendry wood per volume is 1000 G_M: shaped at 8 % and brought to 12 % it weighs G_8/G_12 times the design.
        var report = BuildSamples.Cherry;
        var ratio = WoodDensity.SpecificGravityFrom12(1, 11.5, 8);
        Assert.Equal(report.Mass.TotalG * ratio, MoistureInService.For(report, 8, 12).BareWood.MassG, 1e-6);
        Assert.True(ratio > 1);
    }

    [Fact]
    public void A_flat_sawn_cherry_blade_dries_by_the_handbook_s_shrinkage()
    {
        // 200 mm of flat-sawn cherry from 12 to 8 %: -1.978 mm (tangential 7.1 % green to ovendry, Wood Handbook table 4-3 and eq. 13-2).
        var change = MoistureInService.For(BuildSamples.Cherry, 12, 8).Sizes.Single(size => size.Id == "blade.widthMm");
        Assert.Equal(-1.978, change.FlatSawnChangeMm * 200 / change.BuiltMm, 3);
        Assert.True(Math.Abs(change.QuarterSawnChangeMm) < Math.Abs(change.FlatSawnChangeMm));
    }

    [Fact]
    public void A_climate_gives_the_handbook_s_moisture() => Assert.Equal(12.0, MoistureInService.FromClimate(21.1, 65), 1);

    [Fact]
    public void Surfaces_of_the_finish_are_those_of_the_mass()
    {
        var report = BuildSamples.Cherry;
        var plan = FinishPlan.For(report.Mass, 938, FinishChoice.Usual);
        Assert.Equal(report.Mass.TotalG + plan.VarnishDryG + plan.OilDryG, report.Finished.MassG, 9);
    }

    // Swing by the parallel-axis theorem from the finish's own slices (elementary mechanics), trapezoid over the printed stations: 1 %.
    [Fact]
    public void The_finish_adds_its_own_swing()
    {
        var report = BuildSamples.Cherry;
        var solid = report.Stations;
        double lower = report.Specification.Form.Places.LowerHandMm, swing = 0;
        for (var i = 1; i < solid.Count; i++)
        {
            double At(int k)
            {
                var pattern = solid.Grid.Patterns[k];
                var perM2 = pattern.Segment.Zone == Zone.Blade ? FinishPlan.DryVarnishG(1, 6) : FinishPlan.OilGPerM2Coat * 3;
                var around = pattern.Perimeter.LengthMm(solid.HalfWidth[k], solid.HalfThickness[k], solid.EdgeHalfThickness[k]);
                return perM2 * 1e-6 * around * (solid.X[k] - lower) * (solid.X[k] - lower) * 1e-9;
            }

            swing += (solid.X[i] - solid.X[i - 1]) * (At(i) + At(i - 1)) / 2;
        }

        var added = report.Finished.InertiaLowerHandKgM2 - report.Mass.InertiaLowerHandKgM2;
        Assert.Equal(swing, added, 0.01 * swing);
    }

    private static PaddleSolid Fine(DesignReport report) =>
        PaddleSolid.Shape(report.Specification.Form, report.Sizes, report.Outline, StationGrid.Fine);
}
