using Paddle.Design.Build;
using Paddle.Design.Finishing;
using Paddle.Design.Solid;
using Paddle.Design.Units;
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

    [Fact]
    public void A_schedule_worked_by_hand()
    {
        // 0.16 m² of blade varnished in six coats, 0.09 m² of shaft and 0.017 m² of grip oiled in three. Coverage 10 m²/L at first, then 12, of oil
        // 9.8, a quarter lost: 20, 16.67 and 13.65 mL a coat; thinner 50, 20 and 10 % and 250 mL for the brushes.
        var plan = FinishPlan.For(Surfaces(1600, 900, 170), 938, FinishChoice.Usual);
        Assert.Equal(
            [
                (1, "spar varnish", "blade", 20.0, 10.0, 0.0, 1.0), (2, "spar varnish", "blade", 16.7, 3.3, 1.0, 1.0), (3, "spar varnish", "blade", 16.7, 1.7, 2.0, 1.0),
                (4, "spar varnish", "blade", 16.7, 0.0, 3.0, 2.0), (5, "spar varnish", "blade", 16.7, 0.0, 5.0, 2.0), (6, "spar varnish", "blade", 16.7, 0.0, 7.0, 7.0),
                (1, "drying oil", "shaft and grip", 13.6, 0.0, 9.0, 1.0), (2, "drying oil", "shaft and grip", 13.6, 0.0, 10.0, 1.0),
                (3, "drying oil", "shaft and grip", 13.6, 0.0, 11.0, 7.0),
            ],
            plan.Coats.Select(coat => (
                coat.Number, coat.Finish, coat.Zone, Math.Round(1000 * coat.Litres, 1), Math.Round(1000 * coat.ThinnerLitres, 1), coat.StartDay, coat.WaitDays)));
        Assert.Equal((1600.0, 1070.0), (Math.Round(plan.VarnishAreaCm2, 6), Math.Round(plan.OilAreaCm2, 6)));
        Assert.Equal(0.1033, plan.VarnishLitres, 4);
        Assert.Equal(0.0409, plan.OilLitres, 4);
        Assert.Equal(0.2650, plan.ThinnerLitres, 4);
        Assert.Equal((0.25, 18.0, 913.0), (plan.BuyVarnishLitres, plan.ReadyDay, plan.MaskingLineMm!.Value));
        Assert.Equal(33.0, plan.VarnishDryG, 1); // 0.16 m² · 6 · 37.5 µm · 1100 kg/m³, a sixth sanded off
        Assert.Equal(15.0, plan.OilDryG, 1); // what 0.107 m² in three coats keep, by definition of the figure
    }

    [Theory]
    [InlineData(10, 1, 0.1, 0.25)] // 1.25 mL: no tin is opened for less than 100 mL
    [InlineData(1600, 6, 0.1033, 0.25)]
    [InlineData(3800, 6, 0.2454, 0.25)]
    [InlineData(4000, 6, 0.2583, 0.5)]
    [InlineData(7400, 6, 0.4779, 0.5)]
    [InlineData(8200, 6, 0.5296, 1)]
    public void Tins_hold_a_quarter_of_a_litre_and_whole_halves(double bladeCm2, int coats, double litres, double tin)
    {
        var plan = FinishPlan.For(Surfaces(bladeCm2, 900, 170), 938, new(SurfaceFinish.Varnish, coats, SurfaceFinish.None, 0, false));
        Assert.Equal(litres, plan.VarnishLitres, 4);
        Assert.Equal(tin, plan.BuyVarnishLitres);
    }

    [Fact]
    public void Where_there_is_no_varnish_nothing_is_bought_or_thinned()
    {
        var plan = FinishPlan.For(Surfaces(1600, 900, 170), 938, new(SurfaceFinish.Oil, 3, SurfaceFinish.Oil, 2, false));
        Assert.Equal((0.0, 0.0, 0.0, 0.0), (plan.VarnishLitres, plan.BuyVarnishLitres, plan.ThinnerLitres, plan.VarnishDryG));
        Assert.Equal(9.0, plan.ReadyDay); // the third coat two days on, a week to harden
        Assert.Equal([7.0, 7.0], plan.Coats.Where(coat => coat.Number == (coat.Zone == "blade" ? 3 : 2)).Select(coat => coat.WaitDays));
        Assert.Equal(0.0, FinishPlan.For(Surfaces(1600, 900, 170), 938, new(SurfaceFinish.None, 0, SurfaceFinish.None, 0, false)).ReadyDay);
    }

    [Fact]
    public void How_to_work_is_said_in_order()
    {
        const string Warm = "Work at 15-25 °C and at most 65 % humidity, one thin coat a day at most (finish makers' sheets, read).",
            Wipe = "Wipe the oil dry after a quarter of an hour: what stays on top stays sticky (common practice, no source).",
            Laboratory = "Three coats of spar varnish kept out about 30 % of the moisture that bare wood takes up in 14 days at 90 % humidity, linseed oil none and "
                + "tung oil 2 %: oil is for the hand, not against water (Forest Products Laboratory RP-462, 1985, quoted).",
            Millilitres = "Coverage on makers' sheets differs by 2.5 to 1: take the millilitres as plus or minus 30 %.",
            Tape = "Tape right round the shaft at the masking line";
        IReadOnlyList<string> Notes(SurfaceFinish blade, SurfaceFinish shaft, DrawingUnits units = default) => FinishPlan.For(
            Surfaces(1600, 900, 170), 938, new(blade, FinishChoice.UsualCoats(blade), shaft, FinishChoice.UsualCoats(shaft), false), units).Notes;
        Assert.Equal(
            [
                Warm,
                Tape + "; varnish the blade first and oil the shaft after it, so that no oil gets under the varnish (common practice, no source).",
                Wipe, Laboratory, Millilitres,
            ],
            Notes(SurfaceFinish.Varnish, SurfaceFinish.Oil));
        Assert.Contains("varnish the shaft first and oil the blade after it", Notes(SurfaceFinish.Oil, SurfaceFinish.Varnish)[1], StringComparison.Ordinal);
        Assert.Equal([Warm, Tape + " (common practice, no source).", Laboratory, Millilitres], Notes(SurfaceFinish.Varnish, SurfaceFinish.None));
        Assert.Equal([Warm, Laboratory, Millilitres], Notes(SurfaceFinish.Varnish, SurfaceFinish.Varnish));
        Assert.Equal([Warm, Wipe, Laboratory, Millilitres], Notes(SurfaceFinish.Oil, SurfaceFinish.Oil));
        Assert.Equal(
            ["Bare wood takes up water: it swells, grows heavier and greys; a worn finish is better than none (common practice, no source)."],
            Notes(SurfaceFinish.None, SurfaceFinish.None));
        var inches = Notes(SurfaceFinish.Oil, SurfaceFinish.Oil, DrawingUnits.Inch);
        Assert.StartsWith("Work at 59-77 °F", inches[0], StringComparison.Ordinal);
        Assert.EndsWith("take the ounces as plus or minus 30 %.", inches[^1], StringComparison.Ordinal);
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

    [Theory]
    [InlineData(60, 203)]
    [InlineData(150, 300)]
    public void Cloth_and_resin_are_those_of_the_tips_own_area(double lengthMm, double clothGM2)
    {
        // The tip's face by thin strips of its drawn half-breadths; 10 mm of cloth more round the edge; resin twice the cloth, 75 g/m² soaking in besides.
        var report = BuildSamples.Cherry;
        var overall = report.Specification.Form.Places.OverallMm;
        const double StripMm = 0.01;
        double face = 0, moment = 0;
        for (var x = overall - lengthMm + StripMm / 2; x < overall; x += StripMm)
        {
            face += 2 * report.Outline.HalfBreadthMm(x) * StripMm;
            moment += 2 * report.Outline.HalfBreadthMm(x) * StripMm * x;
        }

        var wrap = 10 * (2 * lengthMm + 2 * report.Outline.HalfBreadthMm(overall - lengthMm));
        var clothM2 = (2 * face + wrap) * 1e-6;
        var resin = 2 * clothM2 * clothGM2 + 2 * face * 1e-6 * 75;
        var tip = TipReinforcement.For(report.Stations, 700, 900, lengthMm, clothGM2);
        Assert.Equal(clothM2 * 1e4, tip.ClothAreaCm2, 0.02);
        Assert.Equal(clothM2 * clothGM2 + resin, tip.AddedG, 0.01);
        Assert.Equal(Math.Max(30, 1.3 * resin), tip.ResinG, 0.02);
        var arm = (tip.With.MassG * tip.With.BalanceMm - 700 * 900) / tip.AddedG;
        Assert.Equal(moment / face, arm, 0.01);
    }

    [Fact]
    public void Sanding_after_P80_takes_a_third_of_a_millimetre_from_each_face()
    {
        Assert.Equal(0.33, SandingPlan.RemovesMm([80, 120, 180, 220]), 2);
        Assert.Equal(0.125, SandingPlan.RemovesMm([120, 180, 220]), 9);
        Assert.All(SandingPlan.All, step => Assert.Equal(step.Grits.Order(), step.Grits));
    }

    // Between coats the shine goes, not wood: P220 takes 0.01 mm, less than a coat is thick.
    [Fact]
    public void Sanding_of_bare_wood_takes_wood_and_between_coats_none()
    {
        Assert.Equal(["blade", "shaft and grip", "between coats of varnish"], SandingPlan.All.Select(step => step.Zone));
        Assert.All(SandingPlan.All.SkipLast(1), step => Assert.Equal(SandingPlan.RemovesMm(step.Grits), step.RemovesMm, 12));
        Assert.All(SandingPlan.All.SkipLast(1), step => Assert.InRange(step.RemovesMm, 0.3, 0.4));
        Assert.Equal(0, SandingPlan.All[^1].RemovesMm);
        Assert.Contains("P220 scratches", SandingPlan.All[0].Why, StringComparison.Ordinal);
        Assert.Contains("feels slippery when wet", SandingPlan.All[1].Why, StringComparison.Ordinal);
        Assert.Contains("until the shine is gone", SandingPlan.All[2].Why, StringComparison.Ordinal);
        Assert.All(SandingPlan.All, step => Assert.NotEmpty(step.Source));
    }

    // What is printed is a whole millimetre or a sixteenth of an inch: less than half of it is no move at all.
    [Theory]
    [InlineData(DrawingUnits.Metric, 0.5)]
    [InlineData(DrawingUnits.Inch, 25.4 / 32)]
    public void Each_stage_says_how_the_next_one_moves_the_balance(DrawingUnits units, double leastMm)
    {
        var still = 0;
        foreach (var finish in new[] { FinishChoice.Usual, new FinishChoice(SurfaceFinish.None, 0, SurfaceFinish.None, 0, false) })
        {
            var stages = BuildSheet.For(PaddleDesigner.Design(BuildSamples.Cherry.Specification with { Units = units, Finish = finish })).Stages;
            Assert.Equal("This is the last stage.", stages[^1].NextMove);
            for (var i = 0; i + 1 < stages.Count; i++)
            {
                var move = stages[i].NextMoveMm;
                Assert.Equal(stages[i + 1].BalanceMm.Value - stages[i].BalanceMm.Value, move, 1e-9);
                var words = Math.Abs(move) < leastMm
                    ? "the balance point should hardly move."
                    : $"the balance point should move {DrawnLength.Rough(Math.Abs(move), units)} towards the {(move > 0 ? "tip" : "grip")}.";
                still += Math.Abs(move) < leastMm ? 1 : 0;
                Assert.Equal($"{stages[i + 1].Title}: {words}", stages[i].NextMove);
            }
        }

        Assert.True(still > 0, "no stage that leaves the balance where it is");
    }

    // The gauge and the widest round-over must go along the whole of the shaft: a gauge takes its thickest place, a bit its thinnest.
    [Fact]
    public void A_gauge_is_made_for_the_thickest_place_of_the_shaft_and_a_bit_for_the_thinnest()
    {
        var sheet = BuildSheet.For(BuildSamples.Cherry);
        var (lines, units) = (sheet.ShaftLines, sheet.Units);
        Assert.Equal(SparGauge.For(lines.Max(line => Math.Max(line.WidthMm, line.ThicknessMm)), units), sheet.Gauge);
        Assert.NotEqual(SparGauge.For(lines.Min(line => Math.Min(line.WidthMm, line.ThicknessMm)), units), sheet.Gauge);
        Assert.Equal(RoundOver.Choices(lines.Min(line => line.WidthMm), lines.Min(line => line.ThicknessMm), units), sheet.RoundOvers);
        Assert.NotEqual(RoundOver.Choices(lines.Max(line => line.WidthMm), lines.Max(line => line.ThicknessMm), units), sheet.RoundOvers);
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

    // Steiner's theorem on point masses (elementary mechanics): a bare paddle of 600 g about 800 mm, 20 g of varnish on its tip and 10 g of oil up the shaft.
    [Fact]
    public void A_finished_paddle_swings_as_the_points_it_is_made_of()
    {
        (double G, double AtMm)[] finish = [(20, 1450), (10, 350)];
        var bare = BuildSamples.Cherry.Mass with
        {
            GripG = 50,
            ShaftG = 300,
            BladeG = 250,
            CentreOfMassMm = 800,
            InertiaCentreKgM2 = 0.11,
            InertiaTopHandKgM2 = 0.11 + 0.6 * 0.76 * 0.76,
            InertiaLowerHandKgM2 = 0.11 + 0.6 * 0.12 * 0.12,
        };
        var places = BuildSamples.Cherry.Specification.Form.Places with { TopHandMm = 40, LowerHandMm = 920 };
        var finished = FinishedMass.Of(places, bare, new(20, 10, 0, finish.Sum(part => part.G * part.AtMm), finish.Sum(part => part.G * part.AtMm * part.AtMm)));
        double About(double mm) => 0.11 + 0.6 * Math.Pow((800 - mm) / 1000, 2) + finish.Sum(part => part.G / 1000 * Math.Pow((part.AtMm - mm) / 1000, 2));
        var centre = (600 * 800 + 20 * 1450 + 10 * 350) / 630.0;
        Assert.Equal(630, finished.MassG, 9);
        Assert.Equal(centre, finished.CentreOfMassMm, 9);
        Assert.Equal(centre - 800, finished.ShiftMm, 9);
        Assert.Equal(About(centre), finished.InertiaCentreKgM2, 12);
        Assert.Equal(About(40), finished.InertiaTopHandKgM2, 12);
        Assert.Equal(About(920), finished.InertiaLowerHandKgM2, 12);
    }

    // Each zone's surface, summed apart from the finish by the mass properties, times what a square metre keeps.
    [Theory]
    [InlineData(SurfaceFinish.Varnish, 6, SurfaceFinish.None, 0)]
    [InlineData(SurfaceFinish.None, 0, SurfaceFinish.Oil, 3)]
    public void A_finish_weighs_on_the_zone_that_it_covers(SurfaceFinish blade, int onBlade, SurfaceFinish shaft, int onShaft)
    {
        var report = BuildSamples.Cherry;
        var load = FinishLoad.On(Fine(report), new(blade, onBlade, shaft, onShaft, false));
        Assert.Equal(FinishChoice.DryGPerM2(blade, onBlade) * report.Mass.BladeSurfaceCm2 * 1e-4, load.BladeG, 9);
        Assert.Equal(FinishChoice.DryGPerM2(shaft, onShaft) * (report.Mass.ShaftSurfaceCm2 + report.Mass.GripSurfaceCm2) * 1e-4, load.ShaftG, 9);
        Assert.Equal(load.BladeG + load.ShaftG, load.MassG, 12);
        var throat = report.Specification.Form.Places.ThroatMm;
        Assert.Equal(onBlade > 0, load.FirstGmm > load.MassG * throat);
    }

    [Fact]
    public void Cloth_on_the_tip_is_a_mass_at_its_own_centre()
    {
        var report = BuildSamples.Cherry;
        FinishLoad plain = FinishLoad.On(Fine(report), FinishChoice.Usual), clothed = FinishLoad.On(Fine(report), FinishChoice.Usual with { TipReinforcement = true });
        var cloth = TipReinforcement.For(Fine(report), 500, 800);
        var centre = (cloth.With.MassG * cloth.With.BalanceMm - 500 * 800) / cloth.AddedG;
        Assert.Equal(cloth.AddedG, clothed.ClothG, 9);
        Assert.Equal(plain.MassG + cloth.AddedG, clothed.MassG, 9);
        Assert.Equal(cloth.AddedG * centre, clothed.FirstGmm - plain.FirstGmm, 1e-3);
        Assert.Equal(cloth.AddedG * centre * centre, clothed.SecondGmm2 - plain.SecondGmm2, 1);
    }

    [Fact]
    public void No_coats_are_bare_wood_and_one_coat_is_a_finish()
    {
        FinishChoice once = new(SurfaceFinish.Varnish, 1, SurfaceFinish.Oil, 1, false), never = new(SurfaceFinish.Varnish, 0, SurfaceFinish.Oil, 0, false);
        Assert.Equal(("blade varnished, shaft and grip oiled", "left bare"), (once.InWords(), never.InWords()));
        Assert.Equal(0, FinishChoice.UsualCoats(SurfaceFinish.None));
        FinishPlan one = FinishPlan.For(Surfaces(1600, 900, 170), 938, once), none = FinishPlan.For(Surfaces(1600, 900, 170), 938, never);
        Assert.Equal([("spar varnish", 50.0), ("drying oil", 0.0)], one.Coats.Select(coat => (coat.Finish, coat.ThinnerPercent)));
        Assert.Equal((1600.0, 1070.0), (Math.Round(one.VarnishAreaCm2, 9), Math.Round(one.OilAreaCm2, 9)));
        Assert.Equal((0.0, 0.0, 0.0, 0.0), (none.VarnishAreaCm2, none.OilAreaCm2, none.VarnishLitres, none.OilLitres));
        Assert.Empty(none.Coats);
    }

    private static MassProperties Surfaces(double bladeCm2, double shaftCm2, double gripCm2) =>
        BuildSamples.Cherry.Mass with { BladeSurfaceCm2 = bladeCm2, ShaftSurfaceCm2 = shaftCm2, GripSurfaceCm2 = gripCm2 };

    private static PaddleSolid Fine(DesignReport report) =>
        PaddleSolid.Shape(report.Specification.Form, report.Sizes, report.Outline, StationGrid.Fine);
}
