using Paddle.Design.Fitting;
using Paddle.Design.Strength;

namespace Paddle.Design.Tests.Fitting;

public class FittingAdvisorTests
{
    private static FittingAdvice Advice(FittingRequest request)
    {
        var outcome = FittingAdvisor.Advise(request);
        Assert.Empty(outcome.Refusals);
        return outcome.Answer!;
    }

    private static IReadOnlyList<InputRefusal> Refusals(FittingRequest request)
    {
        var outcome = FittingAdvisor.Advise(request);
        Assert.Null(outcome.Answer);
        return outcome.Refusals;
    }

    [Fact]
    public void A_measured_spacing_is_used_as_it_is_and_stature_only_checks()
    {
        var a = Advice(new FittingRequest { Paddler = new() { HandSpacingMm = 889, StatureMm = 1756 } });
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
        var outcome = FittingAdvisor.Advise(new FittingRequest { Paddler = new() { HandSpacingMm = barMm, StatureMm = 1756 } });
        Assert.Equal(refused, outcome.Refusals.Any(r => r.JsonPointer == "/paddler/handSpacingMm"));
        if (!refused) Assert.Equal(doubted, outcome.Answer!.Cautions.Any(c => c.Id == "doubtful-handSpacingMm"));
    }

    [Fact]
    public void Span_and_stature_are_combined_and_their_weights_shown()
    {
        var a = Advice(new FittingRequest { Paddler = new() { StatureMm = 1756, ArmSpanMm = 1850 } });
        var combined = a.Methods.Single(m => m.Id == "combined");
        Assert.Equal("used", combined.Role);
        var parts = a.Methods.Where(m => m.Role == "combined").ToList();
        Assert.Equal(2, parts.Count);
        Assert.Equal(1, parts.Sum(p => p.Weight!.Value), 9);
        Assert.Equal(combined.ValueMm, parts.Sum(p => p.Weight!.Value * p.ValueMm), 9);
        Assert.Equal(combined.ValueMm, a.HandSpacingMm.Value, 0.51);
    }

    [Fact]
    public void The_length_used_is_named_and_the_two_styles_stand_beside_it()
    {
        var a = Advice(new FittingRequest { Paddler = new() { StatureMm = 1756, HandSpacingMm = 892, HandBreadthMm = 88 } });
        Assert.Equal("service-geometry", a.LengthRules.UsedId);
        Assert.Single(a.Methods, m => m.Quantity == "overallLengthMm" && m.Role == "used");
        Assert.Equal(a.Suggested.OverallLengthMm, a.OverallLengthMm.Value);
        Assert.InRange(a.LengthRules.LongReachMm!.Value - a.LengthRules.SeatedMm!.Value, 150, 300);
        Assert.All(a.Methods, m => Assert.True(m.StandardErrorMm > 0 && m.Source.Length > 0));
    }

    [Fact]
    public void Without_stature_or_sitting_height_the_seated_rules_are_left_out()
    {
        var a = Advice(new FittingRequest { Paddler = new() { HandSpacingMm = 860 } });
        Assert.DoesNotContain(a.Methods, m => m.Group == "seated");
        Assert.Null(a.LengthRules.SeatedMm);
    }

    // The styles always lie 200 mm apart: news is only a length that its own style's rule does not reach. Floor to chin or nose of 1756 mm is 1528 to 1598 mm.
    [Theory]
    [InlineData(892, false)]
    [InlineData(830, false)]
    [InlineData(1005, true)]
    [InlineData(770, true)]
    public void Rules_that_differ_are_told_only_when_it_is_news(double barMm, bool told)
    {
        var a = Advice(new FittingRequest { Paddler = new() { StatureMm = 1756, HandSpacingMm = barMm } });
        Assert.Equal(told, a.LengthRules.Flagged);
        Assert.Equal(told, a.Cautions.Any(c => c.Id == "rules-differ"));
    }

    // The practitioner's figure: 35 in between the hands makes 60 to 62 in; common practice for touring paddles is 59 to 64 in (1500 to 1620 mm), whichever
    // way the spacing was found and whoever asks. 1754.8 mm and 1808 mm are the stature and the span that go with 889 mm.
    [Theory]
    [InlineData(889.0, null, null)]
    [InlineData(null, 1754.8, null)]
    [InlineData(null, null, 1808.0)]
    [InlineData(889.0, 1754.8, 1808.0)]
    [InlineData(null, 1754.8, 1808.0)]
    public void Hands_thirty_five_inches_apart_make_a_common_paddle(double? barMm, double? statureMm, double? spanMm)
    {
        foreach (var massKg in new double?[] { null, 55, 75, 120 })
        {
            foreach (var posture in Enum.GetValues<Posture>())
            {
                foreach (var place in Enum.GetValues<SeatPlace>())
                {
                    foreach (var (water, depth) in new (WaterKind, double?)[] { (WaterKind.DeepLake, null), (WaterKind.DeepLake, 660), (WaterKind.River, null), (WaterKind.Shallow, 620) })
                    {
                        foreach (var cadence in new[] { 25.0, 45, 49, 50, 70 })
                        {
                            var a = Advice(new FittingRequest { Paddler = new() { HandSpacingMm = barMm, StatureMm = statureMm, ArmSpanMm = spanMm, BodyMassKg = massKg }, Seat = new() { Posture = posture, Place = place }, Water = new() { Kind = water, DepthMm = depth }, Outing = new() { StrokesPerMinute = cadence } });
                            Assert.Equal(889, a.HandSpacingMm.Value, 1.0);
                            Assert.InRange(a.OverallLengthMm.Value, 1500, 1620);
                        }
                    }
                }
            }
        }
    }

    // An adult of 75 kg on a lake: 60 to 62 in for 35 in between the hands (above), touring blades of 600 to 850 cm² (common practice, no source).
    [Fact]
    public void A_common_paddler_gets_a_common_paddle()
    {
        var a = Advice(new FittingRequest { Paddler = new() { StatureMm = 1780, BodyMassKg = 75 } });
        Assert.InRange(a.OverallLengthMm.Value, 1500, 1620);
        Assert.InRange(a.Blade.AreaCm2, 600, 750);
        Assert.Equal("ottertail", a.Suggested.BladeFamily);
        Assert.Equal(Duty.Touring, a.Duty);
        Assert.InRange(a.Shaft.EquivalentDiameterMm, 27, 30.5);
        Assert.Equal("beavertail", Advice(new FittingRequest { Paddler = new() { StatureMm = 1780, BodyMassKg = 75 }, Seat = new() { Place = SeatPlace.Bow } }).Suggested.BladeFamily);
    }

    // Children's paddles run from 36 to 48 in, with shafts of 7/8 to 1 in (common practice, no source).
    [Fact]
    public void A_child_gets_a_childs_paddle()
    {
        var a = Advice(new FittingRequest { Paddler = new() { StatureMm = 1200 } });
        Assert.InRange(a.OverallLengthMm.Value, 1050, 1200);
        Assert.InRange(a.Blade.AreaCm2, 350, 450);
        Assert.InRange(a.Stroke.BodyMassKg, 21, 25);
        Assert.InRange(a.Shaft.EquivalentDiameterMm, 22, 25.4);
        Assert.True(a.Shaft.UpperWidthMm < a.Shaft.WidthMm);
        Assert.InRange(Advice(new FittingRequest { Paddler = new() { StatureMm = 1000 } }).OverallLengthMm.Value, 900, 1050);

        // A child known by its span alone is a child, too.
        var spanOnly = Advice(new FittingRequest { Paddler = new() { ArmSpanMm = 1180 } });
        Assert.InRange(spanOnly.Stroke.BodyMassKg, 19, 27);
        Assert.InRange(spanOnly.OverallLengthMm.Value, 1050, 1200);

        // And one who goes hard races nobody.
        var hard = Advice(new FittingRequest { Paddler = new() { StatureMm = 1350, BodyMassKg = 30 }, Outing = new() { Effort = Effort.Hard } });
        Assert.Equal(Duty.Touring, hard.Duty);
        Assert.DoesNotContain(hard.Reasons, r => r.Contains("rac", StringComparison.Ordinal) && !r.Contains("or a race", StringComparison.Ordinal));
    }

    [Fact]
    public void A_big_river_paddler_who_kneels_gets_a_straight_strong_paddle()
    {
        var a = Advice(new FittingRequest { Paddler = new() { StatureMm = 1900, BodyMassKg = 110 }, Seat = new() { Posture = Posture.Kneeling }, Water = new() { Kind = WaterKind.River, DepthMm = 450 }, Outing = new() { StrokesPerMinute = 65 } });
        Assert.Equal((0, Duty.Expedition, "white-ash"), (a.Suggested.BendDegrees, a.Duty, a.Suggested.Species));
        Assert.DoesNotContain(a.Reasons, r => r.Contains("seated stroke", StringComparison.Ordinal));
        Assert.True(a.Shaft.EquivalentDiameterMm > 30);
    }

    [Theory]
    [InlineData(null, WaterKind.DeepLake, Duty.Touring)]
    [InlineData(OutingPurpose.Day, WaterKind.Shallow, Duty.Touring)]
    [InlineData(OutingPurpose.Day, WaterKind.River, Duty.Expedition)]
    [InlineData(null, WaterKind.FastWater, Duty.Expedition)]
    [InlineData(OutingPurpose.Trip, WaterKind.DeepLake, Duty.Expedition)]
    [InlineData(OutingPurpose.Race, WaterKind.River, Duty.Racing)]
    public void The_duty_follows_the_outing(OutingPurpose? purpose, WaterKind water, Duty duty)
    {
        var a = Advice(new FittingRequest { Paddler = new() { StatureMm = 1756 }, Water = new() { Kind = water }, Outing = new() { Effort = Effort.Hard, Purpose = purpose } });
        Assert.Equal((duty, duty), (a.Duty, a.Suggested.Duty));
        Assert.All(a.Others, x => Assert.Equal(duty, x.Design.Duty));
    }

    [Fact]
    public void Shallow_water_shortens_the_blade_and_says_so()
    {
        var a = Advice(new FittingRequest { Paddler = new() { StatureMm = 1756 }, Water = new() { Kind = WaterKind.DeepLake, DepthMm = 640 } });
        Assert.False(a.Immersion.Fits);
        Assert.Equal("ottertail", a.Blade.Family);
        Assert.Equal(590, a.Blade.LengthMm);
        Assert.Contains(a.Reasons, r => r.Contains("kept to 590 mm", StringComparison.Ordinal));

        // Too shallow for any ottertail: a Sugar Island that goes under is offered.
        var shallow = Advice(new FittingRequest { Paddler = new() { StatureMm = 1756 }, Water = new() { Kind = WaterKind.DeepLake, DepthMm = 560 } });
        Assert.Contains(shallow.Cautions, c => c.Id == "blade-not-immersed");
        var other = shallow.Others.Single(x => x.Id == "shallower-water").Design;
        Assert.Equal("sugar-island", other.BladeFamily);
        Assert.True(other.BladeLengthMm + ImmersionDepth.BottomClearanceMm <= 560);
        Assert.DoesNotContain(
            Advice(new FittingRequest { Paddler = new() { StatureMm = 1756 }, Water = new() { Kind = WaterKind.Shallow, DepthMm = 560 } }).Others, x => x.Id == "deeper-water");
    }

    [Fact]
    public void Shallow_water_of_unknown_depth_is_asked_about() =>
        Assert.Contains(Advice(new FittingRequest { Paddler = new() { StatureMm = 1700 }, Water = new() { Kind = WaterKind.Shallow } }).Cautions, c => c.Id == "depth-unknown");

    [Fact]
    public void Shoulder_breadth_checks_and_never_sets_the_spacing()
    {
        var without = Advice(new FittingRequest { Paddler = new() { StatureMm = 1700 } });
        var with = Advice(new FittingRequest { Paddler = new() { StatureMm = 1700, ShoulderBreadthMm = 440 } });
        Assert.Equal(without.Suggested, with.Suggested);
        Assert.Contains(with.Reasons, r => r.StartsWith("Shoulder breadth only checks", StringComparison.Ordinal));
        Assert.Contains(Advice(new FittingRequest { Paddler = new() { StatureMm = 1700, ShoulderBreadthMm = 540 } }).Cautions, c => c.Id == "doubtful-shoulderBreadthMm");
        Assert.Equal("/paddler", Assert.Single(Refusals(new FittingRequest { Paddler = new() { ShoulderBreadthMm = 400 } })).JsonPointer);
    }

    [Fact]
    public void Heavier_slower_and_harder_paddlers_get_more_blade()
    {
        double Area(double massKg, double cadence, Effort effort) =>
            Advice(new FittingRequest { Paddler = new() { StatureMm = 1756, BodyMassKg = massKg }, Outing = new() { StrokesPerMinute = cadence, Effort = effort } }).Blade.TargetAreaCm2;
        Assert.True(Area(85, 45, Effort.Easy) > Area(65, 45, Effort.Easy));
        Assert.True(Area(75, 40, Effort.Easy) > Area(75, 50, Effort.Easy));
        Assert.True(Area(75, 50, Effort.Steady) > Area(75, 50, Effort.Easy));
    }

    [Fact]
    public void Water_no_blade_fits_is_said_to_be_so()
    {
        var a = Advice(new FittingRequest { Paddler = new() { StatureMm = 1756 }, Water = new() { Kind = WaterKind.Shallow, DepthMm = 250 } });
        Assert.Contains(a.Cautions, c => c.Id == "blade-not-immersed");
        Assert.InRange(a.Immersion.ImmersedShare, 0.35, 0.5);
        Assert.True(double.IsFinite(Advice(new FittingRequest { Paddler = new() { StatureMm = 1756 }, Water = new() { Kind = WaterKind.Shallow, DepthMm = 100 } }).Stroke.SlipMS.Max));
    }

    [Theory]
    [InlineData(OutingPurpose.Race, false)]
    [InlineData(null, true)]
    public void Who_sits_and_races_or_wishes_gets_a_shorter_bent_shaft(OutingPurpose? purpose, bool wished)
    {
        var a = Advice(new FittingRequest { Paddler = new() { HandSpacingMm = 889 }, Seat = new() { Posture = Posture.Sitting }, Outing = new() { Purpose = purpose }, Preferences = new() { BentShaft = wished } });
        Assert.Equal(12, a.Suggested.BendDegrees);
        Assert.Equal(889 - 75, a.Suggested.HandSpacingMm);
        Assert.Equal("basis", a.Methods.Single(m => m.Id == "bar-on-head").Role);
        Assert.Equal("used", a.Methods.Single(m => m.Id == "bent-shaft").Role);
        Assert.Equal("straight-shaft", a.Others[0].Id);

        // Common practice for bent shafts: 48 to 54 in overall, 1219 to 1372 mm (a general how-to page).
        Assert.InRange(a.OverallLengthMm.Value, 1219, 1372);
    }

    // Nobody who kneels is bent, whatever the cadence, the water and the wish; who sits is offered it.
    [Fact]
    public void Who_kneels_keeps_a_straight_shaft()
    {
        foreach (var water in Enum.GetValues<WaterKind>())
        {
            foreach (var purpose in Enum.GetValues<OutingPurpose>())
            {
                var a = Advice(new FittingRequest { Paddler = new() { HandSpacingMm = 889 }, Seat = new() { Posture = Posture.Kneeling }, Water = new() { Kind = water, DepthMm = 400 }, Outing = new() { StrokesPerMinute = 90, Purpose = purpose }, Preferences = new() { BentShaft = true } });
                Assert.Equal(0, a.Suggested.BendDegrees);
                Assert.All(a.Others, x => Assert.Equal(0, x.Design.BendDegrees));
                Assert.Contains(a.Reasons, r => r.StartsWith("The shaft stays straight", StringComparison.Ordinal));
            }
        }

        var seated = Advice(new FittingRequest { Paddler = new() { HandSpacingMm = 889 }, Seat = new() { Posture = Posture.Sitting } });
        Assert.Equal((0, 12), (seated.Suggested.BendDegrees, seated.Others.Single(x => x.Id == "sit-and-switch").Design.BendDegrees));
    }

    [Fact]
    public void Sensitive_joints_are_offered_the_hand_at_the_shoulder()
    {
        var a = Advice(new FittingRequest { Paddler = new() { StatureMm = 1756 }, Preferences = new() { SensitiveJoints = true } });
        var low = a.Others.Single(x => x.Id == "hand-at-shoulder");
        var hand = LengthRules.TopHandAboveSeatMm(low.Design.HandSpacingMm + low.Design.FreeboardMm, 0, LengthRules.DefaultSeatHeightMm);
        Assert.Equal(SeatedBody.Of(new PaddlerRequest { StatureMm = 1756 })!.ShoulderHeightMm, hand, 0.51);
    }

    [Theory]
    [InlineData(null, WaterKind.DeepLake, false, "black-cherry")]
    [InlineData(OutingPurpose.Trip, WaterKind.DeepLake, false, "white-ash")]
    [InlineData(OutingPurpose.Trip, WaterKind.DeepLake, true, "black-cherry")]
    [InlineData(OutingPurpose.Race, WaterKind.DeepLake, false, "white-ash")]
    [InlineData(null, WaterKind.FastWater, true, "white-ash")]
    public void The_wood_follows_water_outing_and_wishes(OutingPurpose? purpose, WaterKind water, bool lightCarry, string species) =>
        Assert.Equal(species, Advice(new FittingRequest { Paddler = new() { StatureMm = 1800 }, Water = new() { Kind = water }, Outing = new() { Purpose = purpose }, Preferences = new() { LightCarry = lightCarry } }).Suggested.Species);

    // The strengths that the shaft goes by are those of the catalogue of woods, within 3 %.
    [Fact]
    public void The_woods_suggested_are_those_of_the_catalogue()
    {
        foreach (var wood in new[] { SuggestedWood.Cherry, SuggestedWood.Ash, SuggestedWood.Spruce })
            Assert.Equal(wood.StrengthOverCherry, Strength(wood.Species) / Strength("black-cherry"), 0.03);

        static double Strength(string species) => Design.Wood.WoodCatalogue.Find(species)!.ModulusOfRupture12MPa;
    }

    [Fact]
    public void Freeboard_follows_the_seat_inside_the_trades_range()
    {
        Assert.Equal(38, FittingAdvisor.FreeboardMm(LengthRules.DefaultSeatHeightMm, SeatPlace.Bow));
        Assert.Equal(44, FittingAdvisor.FreeboardMm(LengthRules.DefaultSeatHeightMm, SeatPlace.Stern));
        Assert.Equal(26, FittingAdvisor.FreeboardMm(70, SeatPlace.Bow));
        Assert.Equal(48, FittingAdvisor.FreeboardMm(180, SeatPlace.Bow));
        Assert.Equal(50, FittingAdvisor.FreeboardMm(400, SeatPlace.Solo));
        Assert.Equal(25, FittingAdvisor.FreeboardMm(0, SeatPlace.Bow));
    }

    [Fact]
    public void Seated_heights_match_the_survey_at_the_mean_man()
    {
        var fromStature = SeatedBody.Of(new PaddlerRequest { StatureMm = 1756.2 })!;
        Assert.Equal(918.3, fromStature.SittingHeightMm, 6.0);
        Assert.Equal(804.5, fromStature.EyeHeightMm, 6.0);
        Assert.Equal(602.8, fromStature.ShoulderHeightMm, 6.0);
        var measured = SeatedBody.Of(new PaddlerRequest { SittingHeightMm = 918.3 })!;
        Assert.Equal(804.5, measured.EyeHeightMm, 4.0);
        Assert.Equal(602.8, measured.ShoulderHeightMm, 9.0);
        Assert.Null(SeatedBody.Of(new PaddlerRequest { HandSpacingMm = 800 }));
    }

    [Fact]
    public void Nothing_given_is_refused_with_what_to_measure()
    {
        var r = Assert.Single(Refusals(new FittingRequest { Paddler = new() { HandLengthMm = 190, BodyMassKg = 80 } }));
        Assert.Equal("/paddler", r.JsonPointer);
        Assert.Equal(["handSpacingMm", "armSpanMm", "statureMm"], r.MeasureInstead);
        Assert.Equal("/paddler", Assert.Single(Refusals(new FittingRequest { Paddler = null! })).JsonPointer);
    }

    [Fact]
    public void Impossible_people_are_refused()
    {
        var span = Assert.Single(Refusals(new FittingRequest { Paddler = new() { StatureMm = 1750, ArmSpanMm = 1400 } }));
        Assert.Equal("/paddler/armSpanMm", span.JsonPointer);
        Assert.Equal(["armSpanMm", "statureMm"], span.MeasureInstead);
        Assert.Equal("/paddler/sittingHeightMm", Assert.Single(Refusals(new FittingRequest { Paddler = new() { StatureMm = 1750, SittingHeightMm = 1150 } })).JsonPointer);
        Assert.Equal("/paddler/handLengthMm", Assert.Single(Refusals(new FittingRequest { Paddler = new() { StatureMm = 1750, HandLengthMm = 250 } })).JsonPointer);
        Assert.Equal("/paddler/bodyMassKg", Assert.Single(Refusals(new FittingRequest { Paddler = new() { StatureMm = 1900, BodyMassKg = 32 } })).JsonPointer);
        Assert.Equal("/paddler/handBreadthMm", Assert.Single(Refusals(new FittingRequest { Paddler = new() { HandSpacingMm = 880, HandLengthMm = 125, HandBreadthMm = 118 } })).JsonPointer);
    }

    [Theory]
    [InlineData(899.9, false)]
    [InlineData(900, true)]
    [InlineData(1408, true)]
    [InlineData(2200, true)]
    [InlineData(2200.1, false)]
    [InlineData(double.NaN, false)]
    public void Statures_outside_the_survey_are_flagged_and_far_outside_refused(double statureMm, bool accepted)
    {
        var outcome = FittingAdvisor.Advise(new FittingRequest { Paddler = new() { StatureMm = statureMm } });
        Assert.Equal(accepted, outcome.Answer is not null);
        if (accepted)
        {
            Assert.Contains(outcome.Answer!.Cautions, c => c.Id == "outside-survey" && c.Text.Contains("child", StringComparison.Ordinal) == statureMm < 1500);
        }
        else
        {
            Assert.Equal("/paddler/statureMm", Assert.Single(outcome.Refusals).JsonPointer);
        }
    }

    [Fact]
    public void A_seat_below_the_water_is_refused()
    {
        var r = Assert.Single(Refusals(new FittingRequest { Paddler = new() { StatureMm = 1750 }, Seat = new() { HeightAboveWaterMm = -20 } }));
        Assert.Equal("/seat/heightAboveWaterMm", r.JsonPointer);
        Assert.Equal(["heightAboveWaterMm"], r.MeasureInstead);
        Assert.Contains("below the water", r.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_bad_value_is_reported_at_once()
    {
        var pointers = Refusals(new FittingRequest { Paddler = new() { StatureMm = 100, BodyMassKg = 5 }, Seat = new() { HeightAboveWaterMm = 900 }, Water = new() { DepthMm = 10, TemperatureC = 80 }, Outing = new() { HoursPerDay = 30, StrokesPerMinute = 300 } }).Select(r => r.JsonPointer);
        Assert.Equal(
            ["/paddler/statureMm", "/paddler/bodyMassKg", "/seat/heightAboveWaterMm", "/water/depthMm", "/water/temperatureC", "/outing/hoursPerDay", "/outing/strokesPerMinute"],
            pointers);
    }

    [Fact]
    public void Every_refusal_has_its_code()
    {
        string Code(FittingRequest request) => Assert.Single(Refusals(request)).Code;
        Assert.Equal("no-way-to-hand-spacing", Code(new FittingRequest { Paddler = new() }));
        Assert.Equal("out-of-range", Code(new FittingRequest { Paddler = new() { StatureMm = 500 } }));
        Assert.Equal("measurements-contradict", Code(new FittingRequest { Paddler = new() { StatureMm = 1750, ArmSpanMm = 1400 } }));
        Assert.Equal("body-mass-impossible", Code(new FittingRequest { Paddler = new() { StatureMm = 1900, BodyMassKg = 32 } }));
        Assert.Equal("seat-below-water", Code(new FittingRequest { Paddler = new() { StatureMm = 1750 }, Seat = new() { HeightAboveWaterMm = -20 } }));
    }

    // Hours and seat height are asked for, so they count.
    [Fact]
    public void Hours_and_seat_height_change_the_answer()
    {
        FittingAdvice Of(double hours, double seatMm) => Advice(new FittingRequest { Paddler = new() { StatureMm = 1756 }, Seat = new() { HeightAboveWaterMm = seatMm }, Outing = new() { HoursPerDay = hours } });
        var (usual, longer, higher) = (Of(3, 80), Of(9, 80), Of(3, 160));
        Assert.True(longer.Stroke.BoatSpeedMS < usual.Stroke.BoatSpeedMS && longer.Blade.WidthMm < usual.Blade.WidthMm);
        Assert.Equal(16, higher.OverallLengthMm.Value - usual.OverallLengthMm.Value);
    }
}
