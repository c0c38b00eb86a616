using Paddle.Design.Fitting;
using Paddle.Design.Outline;
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

    // Mean hands 193.3 and 181.1 mm: comfort 38.1 and 35.7 (Kong and Lowe 2005), force 34.6 and 32.4 (Rossi et al.).
    [Theory]
    [InlineData(193.3, 38.1, 34.6)]
    [InlineData(181.1, 35.7, 32.4)]
    public void Shaft_diameters_follow_the_two_studies(double handMm, double comfortMm, double forceMm)
    {
        Assert.Equal(comfortMm, ShaftFit.Fit(handMm, new PaddlerPreferences(SensitiveJoints: true)).EquivalentDiameterMm, 0.051);
        Assert.Equal(forceMm, ShaftFit.Fit(handMm, new PaddlerPreferences(LightCarry: true)).EquivalentDiameterMm, 0.051);
        var between = ShaftFit.Fit(handMm, new PaddlerPreferences());
        Assert.Equal((comfortMm + forceMm) / 2, between.EquivalentDiameterMm, 0.11);
        Assert.Equal(between.EquivalentDiameterMm, ShaftFit.EquivalentDiameterMm(between.WidthMm, between.ThicknessMm), 0.1);
        Assert.Equal(ShaftFit.OvalRatio, between.ThicknessMm / between.WidthMm, 0.005);
    }

    [Fact]
    public void Grip_sizes_stay_in_the_trades_ranges_for_the_middle_nine_in_ten()
    {
        foreach (double breadth in new[] { Survey.HandBreadth.Women.Percentile5, 78.2, 88.3, Survey.HandBreadth.Men.Percentile95 })
        {
            var pear = GripFit.Fit(185, breadth, WaterKind.DeepLake, 0, new PaddlerPreferences());
            Assert.InRange(pear.WidthMm, 0.75 * breadth, 0.9 * breadth);
            Assert.InRange(pear.LengthMm, 70, 100);
            var tee = GripFit.Fit(185, breadth, WaterKind.FastWater, 0, new PaddlerPreferences());
            Assert.Equal(GripStyle.T, tee.Style);
            Assert.InRange(tee.WidthMm, breadth + 14.5, 115);
        }
    }

    [Fact]
    public void A_straighter_wrist_asks_for_a_one_sided_grip()
    {
        Assert.Equal(GripFaces.OneSided, GripFit.Fit(190, 85, WaterKind.DeepLake, 0, new PaddlerPreferences(StraighterWrist: true)).Faces);
        Assert.Equal(GripFaces.Matching, GripFit.Fit(190, 85, WaterKind.DeepLake, 0, new PaddlerPreferences()).Faces);
    }

    // The reference case: 1.5 m/s, 20 N of hull drag, half the cycle pulling: 40 N, slip 0.943 m/s, 0.075 m².
    [Fact]
    public void Area_model_reproduces_its_reference_case()
    {
        var d = EffortArea.Demand(75, Effort.Easy, 45, FreshWater.DensityKgM3(15));
        Assert.Equal(40, d.MeanPullN, 1e-9);
        Assert.Equal(0.943, d.TargetSlipMS, 0.0005);
        Assert.Equal(75_000, d.TargetAreaMm2, 1e-3);
        Assert.Equal(0.614, PlateDrag.FroudeEfficiency(d.BoatSpeedMS, d.TargetSlipMS), 0.0005);
    }

    // A ∝ V m^(2/3)/f, derived in closed form from the five steps of the model.
    [Theory]
    [InlineData(60, Effort.Easy, 40)]
    [InlineData(90, Effort.Steady, 55)]
    [InlineData(110, Effort.Hard, 70)]
    public void Area_model_follows_its_closed_form(double massKg, Effort effort, double cadence)
    {
        var d = EffortArea.Demand(massKg, effort, cadence, FreshWater.DensityKgM3(15));
        double expected = 75_000 * (EffortArea.BoatSpeedMS(effort) / 1.5) * Math.Pow(massKg / 75, 2.0 / 3) * (45 / cadence);
        Assert.Equal(expected, d.TargetAreaMm2, 1e-3);

        // And the blade does carry the hull's drag over a cycle at that slip.
        double pull = PlateDrag.ForceN(1.2, d.TargetAreaMm2 / 1e6, d.TargetSlipMS, FreshWater.DensityKgM3(15));
        Assert.Equal(d.HullDragN * 60 / cadence, pull * d.PullSeconds, 1e-9);
    }

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

    // (11.4 + 2.6) · 75^(2/3) = 249 N for who tours; who races is left to the design's own 375 N.
    [Fact]
    public void The_hardest_stroke_follows_the_effort()
    {
        Assert.Equal(249, EffortArea.HardStrokeN(75, Effort.Easy));
        Assert.Equal(249, EffortArea.HardStrokeN(75, Effort.Steady));
        Assert.Null(EffortArea.HardStrokeN(75, Effort.Hard));
    }

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
                double drawn = new HalfBreadthCurve(plan.Draw(0, 15)).AreaMm2();
                Assert.InRange(sizes.AreaMm2(length, width) / drawn, 1 - within, 1 + within);
            }
        }
    }

    [Fact]
    public void Every_grip_fitted_is_one_that_a_design_accepts()
    {
        foreach (var water in Enum.GetValues<WaterKind>())
        {
            for (double length = 120; length <= 260; length += 5)
            {
                for (double breadth = 55; breadth <= 120; breadth += 5)
                {
                    foreach (double bend in new[] { 0.0, 12 })
                    {
                        var grip = GripFit.Fit(length, breadth, water, bend, new PaddlerPreferences());
                        var pattern = GripPattern.Of(grip.Style);
                        Assert.InRange(grip.WidthMm, pattern.WidthLimitsMm.Min, pattern.WidthLimitsMm.Max);
                        Assert.InRange(grip.LengthMm, pattern.LengthLimitsMm.Min, pattern.LengthLimitsMm.Max);
                    }
                }
            }
        }
    }

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
        for (double area = 50_000; area <= 110_000; area += 1_000)
        {
            var b = BladeChoice.Size(f, area, 0);
            Assert.InRange(b.LengthMm, f.ShortestMm, f.LongestMm);
            Assert.InRange(b.WidthMm, f.NarrowestMm, f.WidestMm);
            bool reachable = area >= f.AreaMm2(f.ShortestMm, f.NarrowestMm) && area <= f.AreaMm2(f.LongestMm, f.WidestMm);
            if (reachable)
            {
                Assert.InRange(b.AreaMm2 / area, 0.985, 1.015);
            }
        }
    }

    [Fact]
    public void Default_area_gives_a_blade_near_the_familys_default()
    {
        var f = BladeChoice.Family("ottertail");
        var b = BladeChoice.Size(f, f.AreaMm2(f.LengthMm, f.WidthMm), 0);
        Assert.Equal((f.LengthMm, f.WidthMm), (b.LengthMm, b.WidthMm));
    }

    [Fact]
    public void Every_shallow_depth_is_answered_by_a_blade_that_fits_or_by_saying_so()
    {
        foreach (var family in BladeChoice.Families)
        {
            var chosen = BladeChoice.Size(family, 75_000, 0);
            for (double depth = 50; depth <= 1000; depth += 10)
            {
                var advice = ImmersionDepth.Check(chosen, 75_000, depth);
                Assert.Equal(depth >= ImmersionDepth.NeededMm(chosen.LengthMm), advice.Fits);
                Assert.Equal(depth >= ImmersionDepth.NeededMm(advice.Blade.LengthMm), advice.ImmersedShare >= 1);
                if (depth >= ImmersionDepth.NeededMm(430))
                {
                    Assert.Equal(1, advice.ImmersedShare);
                }
            }
        }
    }

    [Fact]
    public void Catalogue_covers_every_body_measurement_and_names_error_and_source()
    {
        var names = typeof(PaddlerMeasurements).GetProperties().Where(p => p.PropertyType == typeof(double?)).Select(p => char.ToLowerInvariant(p.Name[0]) + p.Name[1..]);
        Assert.Empty(names.Except(MeasurementCatalogue.All.Select(m => m.Id)));
        Assert.All(MeasurementCatalogue.All, m =>
        {
            Assert.NotEmpty(m.Steps);
            Assert.True(m.TypicalError > 0 && m.Lowest < m.Highest && m.Source.Length > 0);
        });
    }
}
