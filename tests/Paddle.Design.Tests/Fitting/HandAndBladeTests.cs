using Paddle.Design.Fitting;
using Paddle.Design.Outline;
using Paddle.Design.Strength;
using Paddle.Design.Water;

namespace Paddle.Design.Tests.Fitting;

public class HandAndBladeTests
{
    // Perimeter-equivalent diameters as tabulated.
    [Theory]
    [InlineData(28.6, 33, 30.84)]
    [InlineData(30, 36, 33.07)]
    [InlineData(25.4, 28.6, 27.02)]
    public void Oval_and_round_are_compared_by_girth(double widthMm, double thicknessMm, double expectedMm) =>
        Assert.Equal(expectedMm, ShaftFit.EquivalentDiameterMm(widthMm, thicknessMm), 0.006);

    // Mean hands 193.3 and 181.1 mm: comfort 38.1 and 35.7 (Kong and Lowe 2005), force 34.6 and 32.4 (Rossi et al.). Wooden shafts are slimmer: 1 1/8 in
    // for a man's hand (a book on canoe paddles, quoted on a carving blog), others in the same proportion to the hand.
    [Theory]
    [InlineData(193.3, 38.1, 34.6, 28.6)]
    [InlineData(181.1, 35.7, 32.4, 26.8)]
    public void Shaft_diameters_follow_the_trade_in_the_proportion_of_the_two_studies(double handMm, double comfortMm, double forceMm, double shaftMm)
    {
        var shaft = ShaftFit.Fit(handMm, 0, new PreferencesRequest());
        Assert.Equal((comfortMm, forceMm), (shaft.MostComfortableAtMm, shaft.GripsHardestAtMm));
        Assert.Equal(shaftMm, shaft.EquivalentDiameterMm, 0.051);
        Assert.Equal(ShaftSizeSetBy.Hand, shaft.SetBy);
        Assert.Equal(shaft.EquivalentDiameterMm, ShaftFit.EquivalentDiameterMm(shaft.WidthMm, shaft.ThicknessMm), 0.1);
        Assert.Equal(ShaftFit.OvalRatio, shaft.ThicknessMm / shaft.WidthMm, 0.005);
        Assert.True(ShaftFit.Fit(handMm, 0, new PreferencesRequest { SensitiveJoints = true }).WidthMm > shaft.WidthMm);
        Assert.True(ShaftFit.Fit(handMm, 0, new PreferencesRequest { LightCarry = true }).WidthMm < shaft.WidthMm);
    }

    // The trade's two shafts, 1 1/8 in in hardwood and 1 1/4 in in softwood (the same book), against beam theory: the softwood one is to be 7 % thicker by
    // the strengths of cherry and Sitka spruce (85 and 70 MPa, USDA Wood Handbook, from memory), the trade takes 11 %.
    [Fact]
    public void A_softwood_shaft_is_thicker_by_about_what_the_trade_takes()
    {
        var ottertail = BladeChoice.Family("ottertail");
        var hard = ShaftFit.ForStrokesMm(75, Duty.Touring, 38, ottertail, 620, SuggestedWood.Cherry);
        var soft = ShaftFit.ForStrokesMm(75, Duty.Touring, 38, ottertail, 620, SuggestedWood.Spruce);
        Assert.Equal(28.6, hard, 1e-9);
        Assert.InRange(soft / hard, 1.05, 31.8 / 28.6);
    }

    // Stress is moment over D³: the same under every duty, blade and mass.
    [Theory]
    [InlineData(50, Duty.Touring, "beavertail", 568)]
    [InlineData(110, Duty.Expedition, "sugar-island", 611)]
    [InlineData(75, Duty.Racing, "teardrop", 470)]
    public void The_shaft_for_the_strokes_bears_the_same_stress(double massKg, Duty duty, string family, double bladeMm)
    {
        // Peak over m^(2/3) and factor: 14.0 and 1.3, 16.3 and 1.5, 21.1 and 1.3 (Ho, Smith and O'Meara 2009; factors the service's own).
        var (peak, factor) = duty switch { Duty.Touring => (14.0, 1.3), Duty.Expedition => (16.3, 1.5), _ => (21.1, 1.3) };
        var (blade, ottertail) = (BladeChoice.Family(family), BladeChoice.Family("ottertail"));
        var moment = peak * factor * Math.Pow(massKg, 2.0 / 3) * (41 + (blade.PressureAt * bladeMm));
        var trade = 14.0 * 1.3 * Math.Pow(75, 2.0 / 3) * (38 + (ottertail.PressureAt * 620));
        var diameter = ShaftFit.ForStrokesMm(massKg, duty, 41, blade, bladeMm, SuggestedWood.Cherry);
        Assert.Equal(trade / Math.Pow(28.6, 3), moment / Math.Pow(diameter, 3), 1e-9 * trade);

        // And the oval made of it: w t² = D³.
        var oval = ShaftFit.Fit(100, diameter, new PreferencesRequest());
        Assert.Equal(diameter, Math.Cbrt(oval.WidthMm * oval.ThicknessMm * oval.ThicknessMm), 0.1);
        Assert.Equal(ShaftSizeSetBy.Strokes, oval.SetBy);
    }

    // A rectangle of 500 mm turning about 450 mm above the throat: ((950⁴ − 450⁴)/4 − 450 (950³ − 450³)/3)/((950³ − 450³)/3), 0.614 of it, in closed form.
    [Fact]
    public void The_pressure_of_a_hard_stroke_lies_beyond_the_centroid()
    {
        var rectangle = ((((Math.Pow(950, 4) - Math.Pow(450, 4)) / 4) - (450 * (Math.Pow(950, 3) - Math.Pow(450, 3)) / 3)) / ((Math.Pow(950, 3) - Math.Pow(450, 3)) / 3)) / 500;
        Assert.InRange(BladeChoice.Family("square-tip").PressureAt, rectangle, rectangle + 0.08); // its sides widen from the shaft
        foreach (var family in BladeFamilies.All)
        {
            var plan = BladePlan.For(new BladeShape(family, family.DefaultLengthMm, family.DefaultWidthMm, family.DefaultWidestAt, family.DefaultFullness, null));
            var outline = new HalfBreadthCurve(plan.Draw(0, 15));
            Assert.InRange(BladeChoice.Family(family.Id).PressureAt - (outline.CentroidMm() / outline.EndMm), 0.04, 0.12);
        }
    }

    // A child's shaft is 7/8 in at least (common practice, no source) and thins a little to the grip, so that it never widens on its way up.
    [Fact]
    public void A_slim_shaft_keeps_its_slimness_to_the_grip()
    {
        var child = ShaftFit.Fit(120, 15, new PreferencesRequest());
        Assert.Equal((22, ShaftSizeSetBy.Limits), (child.EquivalentDiameterMm, child.SetBy));
        Assert.True(child.UpperWidthMm < child.WidthMm && child.UpperThicknessMm < child.ThicknessMm);
        Assert.Null(ShaftFit.Fit(193, 28, new PreferencesRequest()).UpperWidthMm);
    }

    [Fact]
    public void Grip_sizes_stay_in_the_trades_ranges_for_the_middle_nine_in_ten()
    {
        foreach (var breadth in new[] { Survey.HandBreadth.Women.Percentile5, 78.2, 88.3, Survey.HandBreadth.Men.Percentile95 })
        {
            var pear = GripFit.Fit(185, breadth, WaterKind.DeepLake, 0, new PreferencesRequest());
            Assert.InRange(pear.WidthMm, 0.75 * breadth, 0.9 * breadth);
            Assert.InRange(pear.LengthMm, 70, 100);
            var tee = GripFit.Fit(185, breadth, WaterKind.FastWater, 0, new PreferencesRequest());
            Assert.Equal(GripStyle.T, tee.Style);
            Assert.InRange(tee.WidthMm, breadth + 14.5, 115);
        }
    }

    [Fact]
    public void A_straighter_wrist_asks_for_a_one_sided_grip()
    {
        Assert.Equal(GripFaces.OneSided, GripFit.Fit(190, 85, WaterKind.DeepLake, 0, new PreferencesRequest { StraighterWrist = true }).Faces);
        Assert.Equal(GripFaces.Matching, GripFit.Fit(190, 85, WaterKind.DeepLake, 0, new PreferencesRequest()).Faces);
    }

    // The reference case: 1.5 m/s, 20 N of hull drag, half the cycle pulling: 40 N on the family's default blade. On 0.075 m² at C_d 1.2 that slips 0.943 m/s.
    [Fact]
    public void Area_model_reproduces_its_reference_case()
    {
        var d = EffortArea.Demand(75, Effort.Easy, 45, 4);
        Assert.Equal((20, 40, 1.5), (d.HullDragN, d.MeanPullN, d.BoatSpeedMS));
        Assert.Equal(2.0 / 3, d.PullSeconds, 12);
        Assert.Equal(1, d.AreaShare, 12);
        Assert.Equal(0.943, PlateDrag.SlipMS(d.MeanPullN, 1.2, 0.075, FreshWater.DensityKgM3(15)), 0.0005);
    }

    // Whatever the person and the outing, the blade carries the hull's drag over a cycle, and slips the same share of the boat's speed.
    [Theory]
    [InlineData(23, Effort.Easy, 45, 2)]
    [InlineData(60, Effort.Easy, 35, 4)]
    [InlineData(90, Effort.Steady, 55, 8)]
    [InlineData(110, Effort.Hard, 70, 12)]
    public void Area_model_carries_the_hull_at_the_slip_of_the_reference(double massKg, Effort effort, double cadence, double hours)
    {
        var d = EffortArea.Demand(massKg, effort, cadence, hours);
        Assert.Equal(20 * Math.Pow((massKg + 20) / 95, 2.0 / 3) * Math.Pow(d.BoatSpeedMS / 1.5, 2), d.HullDragN, 1e-9);
        Assert.Equal(d.HullDragN * 60 / cadence, d.MeanPullN * d.PullSeconds, 1e-9);
        var density = FreshWater.DensityKgM3(15);
        var slip = PlateDrag.SlipMS(d.MeanPullN, 1.2, 0.075 * d.AreaShare, density);
        Assert.Equal(PlateDrag.SlipMS(40, 1.2, 0.075, density) / 1.5, slip / d.BoatSpeedMS, 1e-9);
    }

    // Elite dragon-boat paddlers pull for 0.38 s, sub-elite for 0.35 s, at 80 to 90 strokes a minute (impulse over mean force, Ho, Smith and O'Meara 2009, abstract).
    [Fact]
    public void A_quick_hard_pull_lasts_about_as_long_as_measured() => Assert.InRange(EffortArea.PullSeconds(85, 2.0), 0.35, 0.38 * 1.1);

    [Fact]
    public void No_pull_lasts_longer_than_its_cycle()
    {
        for (double cadence = 20; cadence <= 110; cadence++)
        {
            foreach (var speed in new[] { 1.3, 1.5, 2.0, 2.5 }) Assert.InRange(EffortArea.PullSeconds(cadence, speed) * cadence / 60, 0.2, 0.8);
        }
    }

    // Riegel's law, T2 = T1 (d2/d1)^1.06 (as quoted in running pages): twice the hours go 2^(1/1.06) times as far.
    [Fact]
    public void A_longer_day_is_paddled_more_slowly()
    {
        Assert.Equal(Math.Pow(2, 1 / 1.06), 2 * EffortArea.BoatSpeedMS(Effort.Easy, 8) / EffortArea.BoatSpeedMS(Effort.Easy, 4), 1e-9);
        Assert.Equal(1.7, EffortArea.BoatSpeedMS(Effort.Steady, 4), 1e-12);
        Assert.True(EffortArea.Demand(75, Effort.Easy, 45, 10).MeanPullN < EffortArea.Demand(75, Effort.Easy, 45, 3).MeanPullN);
    }

    // Median weights of a growth reference at 1.0, 1.2 and 1.4 m: about 15.5, 22.5 and 33.5 kg (from memory, growth charts of a national health agency). Adults:
    // the world's mean 24.3 kg/m² (NCD Risk Factor Collaboration 2016, summary).
    [Theory]
    [InlineData(1000, 15.5, 0.8)]
    [InlineData(1200, 22.5, 1.0)]
    [InlineData(1400, 33.5, 1.5)]
    [InlineData(1750, 74.4, 0.1)]
    public void Body_mass_follows_stature_where_it_is_not_known(double statureMm, double expectedKg, double withinKg) =>
        Assert.Equal(expectedKg, BodyMass.FromStatureKg(statureMm), withinKg);

    // m^(2/3): 15.33, 16.98, 17.78, 20.08. Sub-elite peak 203 N at 75 kg (Ho, Smith and O'Meara 2009).
    [Theory]
    [InlineData(60, 15.33)]
    [InlineData(70, 16.98)]
    [InlineData(75, 17.78)]
    [InlineData(90, 20.08)]
    public void Mass_scale_matches_its_check_values(double massKg, double expected) =>
        Assert.Equal(expected, EffortArea.MassScale(massKg), 0.0051);

    [Fact]
    public void A_trained_paddler_of_seventy_five_kilograms_holds_ninety_eight_newtons() => Assert.Equal(97.8, EffortArea.SustainedPullN(75), 0.05);

    // The area a fitting works with is that of the outline the service draws, at the default size and within 3 % at the ends of the range.
    [Fact]
    public void A_blades_area_is_that_of_its_outline()
    {
        foreach (var family in BladeFamilies.All)
        {
            var sizes = BladeChoice.Family(family.Id);
            foreach (var (length, width, within) in new[] { (sizes.LengthMm, sizes.WidthMm, 1e-9), (sizes.ShortestMm, sizes.WidestMm, 0.03), (sizes.LongestMm, sizes.NarrowestMm, 0.03) })
            {
                var plan = BladePlan.For(new BladeShape(family, length, width, family.DefaultWidestAt, family.DefaultFullness, null));
                var drawn = new HalfBreadthCurve(plan.Draw(0, 15)).AreaMm2();
                Assert.InRange(sizes.AreaMm2(length, width) / drawn, 1 - within, 1 + within);
            }
        }
    }

    [Fact]
    public void Every_grip_fitted_is_one_that_a_design_accepts()
    {
        foreach (var water in Enum.GetValues<WaterKind>())
        {
            for (double length = 90; length <= 260; length += 5)
            {
                for (double breadth = 40; breadth <= 120; breadth += 5)
                {
                    foreach (var bend in new[] { 0.0, 12 })
                    {
                        var grip = GripFit.Fit(length, breadth, water, bend, new PreferencesRequest());
                        var pattern = GripPattern.Of(grip.Style);
                        Assert.InRange(grip.WidthMm, pattern.WidthLimitsMm.Min, pattern.WidthLimitsMm.Max);
                        Assert.InRange(grip.LengthMm, pattern.LengthLimitsMm.Min, pattern.LengthLimitsMm.Max);
                    }
                }
            }
        }
    }

    private static StrokeDemand Asking(double massKg, double areaShare) => EffortArea.Demand(massKg, Effort.Easy, 45, 4) with { AreaShare = areaShare };

    // Usual length first: the body sets it, and the width carries the area as far as the family's usual widths go.
    [Theory]
    [InlineData("ottertail")]
    [InlineData("beavertail")]
    [InlineData("voyageur")]
    [InlineData("sugar-island")]
    [InlineData("sturgeon-nose")]
    [InlineData("teardrop")]
    [InlineData("square-tip")]
    public void Sizing_hits_the_area_or_a_limit_of_the_family(string id)
    {
        var f = BladeChoice.Family(id);
        for (var share = 0.5; share <= 1.6; share += 0.05)
        {
            var b = BladeChoice.Size(f, BladeChoice.ReferenceSpacingMm, Asking(75, share), 0);
            Assert.Equal(f.LengthMm, b.LengthMm, 1e-9);
            Assert.InRange(b.WidthMm, f.NarrowestMm, f.WidestMm);
            if (share * f.WidthMm >= f.NarrowestMm && share * f.WidthMm <= f.WidestMm) Assert.Equal(share * f.AreaMm2(f.LengthMm, f.WidthMm), b.AreaMm2, 1e-6);
        }
    }

    [Fact]
    public void The_reference_paddler_gets_the_familys_default()
    {
        var f = BladeChoice.Family("ottertail");
        var b = BladeChoice.Size(f, BladeChoice.ReferenceSpacingMm, Asking(75, 1), 0);
        Assert.Equal((f.LengthMm, f.WidthMm), (b.MadeLengthMm, b.MadeWidthMm));
    }

    [Fact]
    public void A_blade_is_shortened_for_its_water_within_its_family_and_what_stays_out_is_said()
    {
        foreach (var family in BladeChoice.Families)
        {
            double before = 0;
            for (double depth = 100; depth <= 1000; depth += 5)
            {
                var advice = ImmersionDepth.Check(family, BladeChoice.ReferenceSpacingMm, Asking(75, 1), 0, depth);
                Assert.Equal(family, advice.Blade.Family);
                Assert.Equal(depth >= advice.NeededMm, advice.Fits);
                Assert.Equal(depth >= ImmersionDepth.NeededMm(family.ShortestMm), advice.ImmersedShare >= 1);
                Assert.InRange(advice.Blade.LengthMm - before, 0, depth == 100 ? 1000 : 5);
                before = advice.Blade.LengthMm;
            }
        }
    }

    [Fact]
    public void Catalogue_covers_every_body_measurement_and_names_error_and_source()
    {
        var names = typeof(PaddlerRequest).GetProperties().Where(p => p.PropertyType == typeof(double?)).Select(p => char.ToLowerInvariant(p.Name[0]) + p.Name[1..]);
        Assert.Empty(names.Except(MeasurementCatalogue.All.Select(m => m.Id)));
        Assert.All(MeasurementCatalogue.All, m =>
        {
            Assert.NotEmpty(m.Steps);
            Assert.True(m.TypicalError > 0 && m.Range.Min < m.Range.Max && m.Source.Length > 0);
        });
    }
}
