using Paddle.Design.Fitting;
using Paddle.Design.Outline;

namespace Paddle.Design.Tests.Fitting;

public class FittingAdvisorTests
{
    private static FittingAdvice Advice(FittingRequest request)
    {
        var outcome = FittingAdvisor.Advise(request);
        Assert.Empty(outcome.Refusals);
        return outcome.Advice!;
    }

    private static IReadOnlyList<InputRefusal> Refusals(FittingRequest request)
    {
        var outcome = FittingAdvisor.Advise(request);
        Assert.Null(outcome.Advice);
        return outcome.Refusals;
    }

    [Fact]
    public void A_measured_spacing_is_used_as_it_is_and_stature_only_checks()
    {
        var a = Advice(new FittingRequest(new PaddlerMeasurements(HandSpacingMm: 889, StatureMm: 1756)));
        Assert.Equal(889, a.HandSpacingMm.Value);
        Assert.Equal("used", a.Methods.Single(m => m.Id == "bar-on-head").Role);
        var stature = a.Methods.Single(m => m.Id == "stature");
        Assert.Equal("check", stature.Role);
        Assert.Equal(890, stature.ValueMm, 1.0);
        Assert.DoesNotContain(a.Cautions, c => c.Id.StartsWith("doubtful", StringComparison.Ordinal));
    }

    // The check's error joins the estimate's 48.5 mm and the bar's 10 mm: 49.6 mm. 2.5 of them are 124 mm, 5 are 248 mm.
    [Theory]
    [InlineData(889.7 + 120, false, false)]
    [InlineData(889.7 + 128, true, false)]
    [InlineData(889.7 - 128, true, false)]
    [InlineData(889.7 - 255, true, true)]
    public void A_measured_spacing_far_from_stature_is_doubted_then_refused(double barMm, bool doubted, bool refused)
    {
        var outcome = FittingAdvisor.Advise(new FittingRequest(new PaddlerMeasurements(HandSpacingMm: barMm, StatureMm: 1756)));
        Assert.Equal(refused, outcome.Refusals.Any(r => r.JsonPointer == "/paddler/handSpacingMm"));
        if (!refused)
        {
            Assert.Equal(doubted, outcome.Advice!.Cautions.Any(c => c.Id == "doubtful-handSpacingMm"));
        }
    }

    [Fact]
    public void Span_and_stature_are_combined_and_their_weights_shown()
    {
        var a = Advice(new FittingRequest(new PaddlerMeasurements(StatureMm: 1756, ArmSpanMm: 1850)));
        var combined = a.Methods.Single(m => m.Id == "combined");
        Assert.Equal("used", combined.Role);
        var parts = a.Methods.Where(m => m.Role == "combined").ToList();
        Assert.Equal(2, parts.Count);
        Assert.Equal(1, parts.Sum(p => p.Weight!.Value), 9);
        Assert.Equal(combined.ValueMm, parts.Sum(p => p.Weight!.Value * p.ValueMm), 9);
        Assert.Equal(combined.ValueMm, a.HandSpacingMm.Value, 0.51);
    }

    [Fact]
    public void The_length_used_is_named_and_the_spread_flagged()
    {
        var a = Advice(new FittingRequest(new PaddlerMeasurements(StatureMm: 1756, HandSpacingMm: 892, HandBreadthMm: 88)));
        Assert.Equal("service-geometry", a.Spread.UsedId);
        Assert.Single(a.Methods, m => m.Quantity == "overallLengthMm" && m.Role == "used");
        Assert.True(a.Spread.Flagged);
        Assert.Contains(a.Cautions, c => c.Id == "rules-differ");
        Assert.Equal(a.Design.OverallLengthMm, a.OverallLengthMm.Value);
        Assert.InRange(a.Spread.LongReachMm!.Value - a.Spread.SeatedMm!.Value, 150, 300);
        Assert.All(a.Methods, m => Assert.True(m.StandardErrorMm > 0 && m.Source.Length > 0));
    }

    [Fact]
    public void Without_stature_or_sitting_height_the_seated_rules_are_left_out()
    {
        var a = Advice(new FittingRequest(new PaddlerMeasurements(HandSpacingMm: 860)));
        Assert.DoesNotContain(a.Methods, m => m.Group == "seated");
        Assert.Null(a.Spread.SeatedMm);
    }

    // The practitioner's figure: 35 in between the hands and a two-foot blade come to 60 to 62 in. The blade here is the service's choice.
    [Fact]
    public void A_common_paddler_gets_a_common_paddle()
    {
        var a = Advice(new FittingRequest(new PaddlerMeasurements(HandSpacingMm: 889, BodyMassKg: 75)));
        double withTwoFootBlade = a.OverallLengthMm.Value - a.Blade.LengthMm + (24 * 25.4);
        Assert.InRange(withTwoFootBlade / 25.4, 60, 62.01);
        Assert.Equal("ottertail", a.Design.BladeFamily);
    }

    [Fact]
    public void Shallow_water_changes_family_and_length_and_says_so()
    {
        var a = Advice(new FittingRequest(new PaddlerMeasurements(StatureMm: 1756), Water: new WaterPlan(WaterKind.DeepLake, DepthMm: 560)));
        Assert.False(a.Immersion.Fits);
        Assert.Equal("sugar-island", a.Blade.Family.Id);
        Assert.True(a.Blade.LengthMm + ImmersionDepth.BottomClearanceMm <= 560);
        Assert.Contains(a.Reasons, r => r.Contains("too shallow", StringComparison.Ordinal));
        Assert.DoesNotContain(a.Alternatives, x => x.Id == "deeper-water");
    }

    [Fact]
    public void Shallow_water_of_unknown_depth_is_asked_about() =>
        Assert.Contains(Advice(new FittingRequest(new PaddlerMeasurements(StatureMm: 1700), Water: new WaterPlan(WaterKind.Shallow))).Cautions, c => c.Id == "depth-unknown");

    [Fact]
    public void Shoulder_breadth_checks_and_never_sets_the_spacing()
    {
        var without = Advice(new FittingRequest(new PaddlerMeasurements(StatureMm: 1700)));
        var with = Advice(new FittingRequest(new PaddlerMeasurements(StatureMm: 1700, ShoulderBreadthMm: 440)));
        Assert.Equal(without.Design, with.Design);
        Assert.Contains(with.Reasons, r => r.StartsWith("Shoulder breadth only checks", StringComparison.Ordinal));
        Assert.Contains(Advice(new FittingRequest(new PaddlerMeasurements(StatureMm: 1700, ShoulderBreadthMm: 540))).Cautions, c => c.Id == "doubtful-shoulderBreadthMm");
        Assert.Equal("/paddler", Assert.Single(Refusals(new FittingRequest(new PaddlerMeasurements(ShoulderBreadthMm: 400)))).JsonPointer);
    }

    [Fact]
    public void Heavier_slower_and_harder_paddlers_get_more_blade()
    {
        double Area(double massKg, double cadence, Effort effort) =>
            Advice(new FittingRequest(new PaddlerMeasurements(StatureMm: 1756, BodyMassKg: massKg), Outing: new OutingPlan(null, cadence, effort))).Water.TargetAreaMm2;
        Assert.True(Area(85, 45, Effort.Easy) > Area(65, 45, Effort.Easy));
        Assert.True(Area(75, 40, Effort.Easy) > Area(75, 50, Effort.Easy));
        Assert.True(Area(75, 50, Effort.Steady) > Area(75, 50, Effort.Easy));
    }

    [Fact]
    public void Water_no_blade_fits_is_said_to_be_so()
    {
        var a = Advice(new FittingRequest(new PaddlerMeasurements(StatureMm: 1756), Water: new WaterPlan(WaterKind.Shallow, DepthMm: 250)));
        Assert.Contains(a.Cautions, c => c.Id == "blade-not-immersed");
        Assert.InRange(a.Immersion.ImmersedShare, 0.4, 0.5);
        Assert.True(double.IsFinite(Advice(new FittingRequest(new PaddlerMeasurements(StatureMm: 1756), Water: new WaterPlan(WaterKind.Shallow, DepthMm: 100))).Water.SlipAtLowCoefficientMS));
    }

    [Fact]
    public void A_seated_quick_paddler_gets_a_shorter_bent_shaft()
    {
        var a = Advice(new FittingRequest(new PaddlerMeasurements(HandSpacingMm: 889), new SeatPlan(Posture.Sitting), Outing: new OutingPlan(StrokesPerMinute: 60)));
        Assert.Equal(12, a.Design.BendDegrees);
        Assert.Equal(889 - 75, a.Design.HandSpacingMm);
        Assert.Equal("basis", a.Methods.Single(m => m.Id == "bar-on-head").Role);
        Assert.Equal("used", a.Methods.Single(m => m.Id == "bent-shaft").Role);

        // Common practice for bent shafts: 48 to 54 in overall for most; 1219 to 1372 mm, here a large man's.
        Assert.InRange(a.OverallLengthMm.Value, 1219, 1400);
    }

    [Fact]
    public void Sensitive_joints_are_offered_the_hand_at_the_shoulder()
    {
        var a = Advice(new FittingRequest(new PaddlerMeasurements(StatureMm: 1756), Preferences: new PaddlerPreferences(SensitiveJoints: true)));
        var low = a.Alternatives.Single(x => x.Id == "hand-at-shoulder");
        double hand = LengthRules.TopHandAboveSeatMm(low.Design.HandSpacingMm + low.Design.FreeboardMm, 0, LengthRules.DefaultSeatHeightMm);
        Assert.Equal(SeatedBody.Of(new PaddlerMeasurements(StatureMm: 1756))!.ShoulderHeightMm, hand, 0.51);
    }

    [Theory]
    [InlineData(75, WaterKind.DeepLake, false, "black-cherry")]
    [InlineData(100, WaterKind.DeepLake, false, "white-ash")]
    [InlineData(100, WaterKind.DeepLake, true, "sitka-spruce")]
    [InlineData(75, WaterKind.FastWater, true, "white-ash")]
    public void The_wood_follows_water_weight_and_wishes(double massKg, WaterKind water, bool lightCarry, string species) =>
        Assert.Equal(species, Advice(new FittingRequest(new PaddlerMeasurements(StatureMm: 1800, BodyMassKg: massKg), Water: new WaterPlan(water), Preferences: new PaddlerPreferences(LightCarry: lightCarry))).Design.Species);

    [Fact]
    public void Freeboard_follows_the_seat_inside_the_trades_range()
    {
        Assert.Equal(38, FittingAdvisor.FreeboardMm(new SeatPlan(Place: SeatPlace.Bow)));
        Assert.Equal(44, FittingAdvisor.FreeboardMm(new SeatPlan(Place: SeatPlace.Stern)));
        Assert.Equal(50, FittingAdvisor.FreeboardMm(new SeatPlan(HeightAboveWaterMm: 400)));
        Assert.Equal(25, FittingAdvisor.FreeboardMm(new SeatPlan(HeightAboveWaterMm: 0, Place: SeatPlace.Bow)));
    }

    [Fact]
    public void Seated_heights_match_the_survey_at_the_mean_man()
    {
        var fromStature = SeatedBody.Of(new PaddlerMeasurements(StatureMm: 1756.2))!;
        Assert.Equal(918.3, fromStature.SittingHeightMm, 6.0);
        Assert.Equal(804.5, fromStature.EyeHeightMm, 6.0);
        Assert.Equal(602.8, fromStature.ShoulderHeightMm, 6.0);
        var measured = SeatedBody.Of(new PaddlerMeasurements(SittingHeightMm: 918.3))!;
        Assert.Equal(804.5, measured.EyeHeightMm, 4.0);
        Assert.Equal(602.8, measured.ShoulderHeightMm, 9.0);
        Assert.Null(SeatedBody.Of(new PaddlerMeasurements(HandSpacingMm: 800)));
    }

    [Fact]
    public void Nothing_given_is_refused_with_what_to_measure()
    {
        var r = Assert.Single(Refusals(new FittingRequest(new PaddlerMeasurements(HandLengthMm: 190, BodyMassKg: 80))));
        Assert.Equal("/paddler", r.JsonPointer);
        Assert.Equal(["handSpacingMm", "armSpanMm", "statureMm"], r.MeasureInstead);
        Assert.Equal("/paddler", Assert.Single(Refusals(new FittingRequest(null!))).JsonPointer);
    }

    [Fact]
    public void Impossible_people_are_refused()
    {
        var span = Assert.Single(Refusals(new FittingRequest(new PaddlerMeasurements(StatureMm: 1750, ArmSpanMm: 1400))));
        Assert.Equal("/paddler/armSpanMm", span.JsonPointer);
        Assert.Equal(["armSpanMm", "statureMm"], span.MeasureInstead);
        Assert.Equal("/paddler/sittingHeightMm", Assert.Single(Refusals(new FittingRequest(new PaddlerMeasurements(StatureMm: 1750, SittingHeightMm: 1150)))).JsonPointer);
        Assert.Equal("/paddler/handLengthMm", Assert.Single(Refusals(new FittingRequest(new PaddlerMeasurements(StatureMm: 1750, HandLengthMm: 250)))).JsonPointer);
        Assert.Equal("/paddler/bodyMassKg", Assert.Single(Refusals(new FittingRequest(new PaddlerMeasurements(StatureMm: 1900, BodyMassKg: 32)))).JsonPointer);
        Assert.Equal("/paddler/handBreadthMm", Assert.Single(Refusals(new FittingRequest(new PaddlerMeasurements(HandSpacingMm: 880, HandLengthMm: 125, HandBreadthMm: 118)))).JsonPointer);
    }

    [Theory]
    [InlineData(1199.9, false)]
    [InlineData(1200, true)]
    [InlineData(1408, true)]
    [InlineData(2200, true)]
    [InlineData(2200.1, false)]
    [InlineData(double.NaN, false)]
    public void Statures_outside_the_survey_are_flagged_and_far_outside_refused(double statureMm, bool accepted)
    {
        var outcome = FittingAdvisor.Advise(new FittingRequest(new PaddlerMeasurements(StatureMm: statureMm)));
        Assert.Equal(accepted, outcome.Advice is not null);
        if (accepted)
        {
            Assert.Contains(outcome.Advice!.Cautions, c => c.Id == "outside-survey" && c.Text.Contains("children", StringComparison.Ordinal));
        }
        else
        {
            Assert.Equal("/paddler/statureMm", Assert.Single(outcome.Refusals).JsonPointer);
        }
    }

    [Fact]
    public void A_seat_below_the_water_is_refused()
    {
        var r = Assert.Single(Refusals(new FittingRequest(new PaddlerMeasurements(StatureMm: 1750), new SeatPlan(HeightAboveWaterMm: -20))));
        Assert.Equal("/seat/heightAboveWaterMm", r.JsonPointer);
        Assert.Equal(["heightAboveWaterMm"], r.MeasureInstead);
        Assert.Contains("below the water", r.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_bad_value_is_reported_at_once()
    {
        var pointers = Refusals(new FittingRequest(
            new PaddlerMeasurements(StatureMm: 100, BodyMassKg: 5),
            new SeatPlan((Posture)9, 900),
            new WaterPlan((WaterKind)9, 10, 80),
            new OutingPlan(30, 300, (Effort)9))).Select(r => r.JsonPointer);
        Assert.Equal(
            ["/paddler/statureMm", "/paddler/bodyMassKg", "/seat/heightAboveWaterMm", "/water/depthMm", "/water/temperatureC", "/outing/hoursPerDay", "/outing/strokesPerMinute", "/seat/posture", "/water/kind", "/outing/effort"],
            pointers);
    }

    // Thousands of drawn people, seats, waters and outings, many of them absurd: an answer inside the design's ranges or a clear refusal.
    [Fact]
    public void Any_person_gets_a_sound_answer_or_a_clear_refusal()
    {
        var random = new Random(20240607);
        int answered = 0;
        for (int i = 0; i < 8_000; i++)
        {
            var request = Draw(random);
            var outcome = FittingAdvisor.Advise(request);
            if (outcome.Advice is { } advice)
            {
                answered++;
                AssertSound(advice);
            }
            else
            {
                Assert.NotEmpty(outcome.Refusals);
                Assert.All(outcome.Refusals, r => Assert.True(r.JsonPointer.StartsWith('/') && r.Message.Length > 10));
            }

            if (i % 50 == 0)
            {
                Assert.Equivalent(outcome, FittingAdvisor.Advise(request), strict: true);
            }
        }

        Assert.InRange(answered, 3_000, 7_600);
    }

    private static FittingRequest Draw(Random random)
    {
        double? Maybe(double share, double low, double high) => random.NextDouble() < share ? low + ((high - low) * random.NextDouble()) : null;
        bool absurd = random.NextDouble() < 0.15;
        double h = absurd ? 800 + (1800 * random.NextDouble()) : 1350 + (750 * random.NextDouble());
        double scatter = absurd ? 400 : 60;
        return new FittingRequest(
            new PaddlerMeasurements(
                Maybe(0.5, (0.505 * h) - scatter, (0.505 * h) + scatter),
                random.NextDouble() < 0.7 ? h : null,
                Maybe(0.3, (0.52 * h) - (scatter / 2), (0.52 * h) + (scatter / 2)),
                Maybe(0.2, 300, 480),
                Maybe(0.4, h - scatter, h + (1.5 * scatter)),
                Maybe(0.5, (0.11 * h) - (scatter / 5), (0.11 * h) + (scatter / 5)),
                Maybe(0.5, (0.05 * h) - (scatter / 8), (0.05 * h) + (scatter / 8)),
                Maybe(0.6, 35, 160)),
            new SeatPlan((Posture)random.Next(2), Maybe(0.6, absurd ? -50 : 0, 350), (SeatPlace)random.Next(3)),
            new WaterPlan((WaterKind)random.Next(4), Maybe(0.5, 80, 1500), Maybe(0.4, 0, 30)),
            new OutingPlan(Maybe(0.5, 0.5, 12), Maybe(0.6, 20, 110), (Effort)random.Next(3)),
            new PaddlerPreferences(random.Next(2) == 0, random.Next(2) == 0, random.Next(2) == 0),
            random.Next(2) == 0 ? "Hire paddle" : null);
    }

    private static void AssertSound(FittingAdvice a)
    {
        AssertDesign(a.Design);
        Assert.Equal(a.Design.OverallLengthMm, a.OverallLengthMm.Value);
        Assert.True(a.OverallLengthMm.Low < a.OverallLengthMm.Value && a.OverallLengthMm.Value < a.OverallLengthMm.High);
        Assert.Equal(2, a.Alternatives.Count);
        Assert.Equal(3, a.Alternatives.Select(x => x.Design with { Label = string.Empty }).Append(a.Design with { Label = string.Empty }).Distinct().Count());
        Assert.All(a.Alternatives, x => AssertDesign(x.Design));
        Assert.All(a.Methods, m => Assert.True(double.IsFinite(m.ValueMm) && double.IsFinite(m.StandardErrorMm) && m.StandardErrorMm > 0));
        Assert.Equal(2, a.Methods.Count(m => m.Role == "used"));
        Assert.InRange(a.Shaft.EquivalentDiameterMm, 28, 40);
        Assert.InRange(a.FreeboardMm, 25, 50);
        Assert.InRange(a.Water.TargetAreaMm2, 60_000, 105_000);
        Assert.InRange(a.Water.SlipAtHighCoefficientMS, 0, a.Water.SlipAtLowCoefficientMS);
        Assert.True(double.IsFinite(a.Water.SlipAtLowCoefficientMS));
        Assert.InRange(a.Water.EfficiencyAtLowCoefficient, 0, a.Water.EfficiencyAtHighCoefficient);
        Assert.InRange(a.Immersion.ImmersedShare, 0, 1);
        Assert.All(a.Reasons.Concat(a.Cautions.Select(c => c.Text)), t => Assert.DoesNotContain("NaN", t, StringComparison.Ordinal));
    }

    private static void AssertDesign(SuggestedDesign d)
    {
        var f = BladeChoice.Family(d.BladeFamily);
        Assert.InRange(d.HandSpacingMm, 500, 1100);
        Assert.InRange(d.FreeboardMm, 0, 150);
        Assert.InRange(d.BladeLengthMm, Math.Max(400, f.ShortestMm), Math.Min(900, f.LongestMm));
        Assert.InRange(d.BladeWidthMm, Math.Max(70, f.NarrowestMm), Math.Min(230, f.WidestMm));
        Assert.InRange(d.OverallLengthMm, 1000, 2100);
        var grip = GripPattern.Of(d.GripStyle);
        Assert.InRange(d.GripWidthMm, grip.WidthLimitsMm.Min, grip.WidthLimitsMm.Max);
        Assert.InRange(d.GripLengthMm, grip.LengthLimitsMm.Min, grip.LengthLimitsMm.Max);
        Assert.InRange(d.BodyMassKg, 35, 160);
        Assert.True(d.HardStrokeN is null or (> 140 and < 420));
        Assert.All([d.HandSpacingMm, d.FreeboardMm, d.BladeLengthMm, d.BladeWidthMm, d.GripWidthMm, d.GripLengthMm], x => Assert.Equal(Math.Round(x), x));
    }
}
