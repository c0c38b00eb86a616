using Paddle.Design.Balance;
using Paddle.Design.Build;
using Paddle.Design.Units;

namespace Paddle.Design.Tests.Build;

/// <summary>What a maker is told to do, word for word: a wrong side, zone or amount costs the paddle.</summary>
public class CorrectionWordsTests
{
    private const double ToleranceMm = 12;

    private static readonly DesignReport Cherry = BuildSamples.Cherry;

    private static readonly DesignReport InInches = Cherry with { Specification = Cherry.Specification with { Units = DrawingUnits.Inch } };

    [Theory]
    [InlineData(24, "nearer the grip", "denser")]
    [InlineData(-24, "nearer the tip", "lighter")]
    public void Wood_that_balances_further_down_is_denser_at_the_tip_end(double off, string even, string tipEnd)
    {
        // A board denser towards the tip balances nearer the tip: statics.
        var stage = BuildSheet.For(Cherry).Stages[^1];
        var found = BalanceCorrection.Solve(
            Cherry, new(BuildStage.Finished, stage.MassG.Value, stage.BalanceMm.Value + off, MeasuredAgain: true));
        Assert.Equal(Math.Sign(off), Math.Sign(found.Outlook!.Explanation.EndToEndPercent));
        var text = new CorrectionWords(Cherry, BuildStage.Finished, found).Explanation!.Text;
        Assert.Contains($"would balance {Math.Abs(off)} mm {even} than read", text, StringComparison.Ordinal);
        Assert.Contains($"% {tipEnd} at the tip end than at the grip end", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_explanation_names_sides_and_amounts()
    {
        Explanation uneven = new(560, 10, 0.85, true, 0.7, [0.1, -0.42, 0, 0, 0, 0.3]);
        Assert.Equal(
            new CodedNote(
                "uneven-wood",
                "Even wood at the sizes of this stage would balance 0.7 mm nearer the grip than read: taken as wood 0.8 % denser at the tip end than "
                + "at the grip end, and as thickness off the plan by up to 0.42 mm."),
            Words(Explained(uneven)).Explanation);
        Assert.Equal(
            new CodedNote(
                "uneven-wood",
                "Even wood at the sizes of this stage would balance 9/16 in nearer the tip than read: taken as wood 7.6 % lighter at the tip end than "
                + "at the grip end, and as thickness off the plan by up to 0.017 in."),
            Words(Explained(uneven with { EndToEndPercent = -7.6, UnexplainedMm = -14.3 }), InInches).Explanation);
        Assert.Equal(
            new CodedNote("even-wood", "Wood of one density explains mass and balance point."),
            Words(Explained(uneven with { UnevenNeeded = false })).Explanation);
        Assert.Null(Words(Doubted([Balance(900, 850, 840, 860)])).Explanation);
    }

    [Fact]
    public void A_cut_is_said_by_zone_depth_and_place()
    {
        Removal[] cuts =
        [
            new(CorrectionZone.Grip, 3.2, 0.4, 0, 95.4), new(CorrectionZone.BladeUpperThird, 7.1, 0.26, 973, 1190),
            new(CorrectionZone.BladeLowerThird, 5.5, 0.5, 1406.5, 1623),
        ];
        var words = Words(Cutting(cuts));
        Assert.Equal(
            "Take 16 g off beyond the plan: 0.4 mm from the grip, 0.26 mm from the upper third of the blade and 0.5 mm from the lower third of the blade.",
            words.Summary);
        Assert.Equal(
            "From 973 mm to 1190 mm from the top of the grip: 0.13 mm off each face along the middle, running out to nothing at the edges and into "
            + "the neighbouring zones.",
            words.How(cuts[1]));
        Assert.Equal("Lower third of the blade: 0.25 mm off each face, 1407 mm to 1623 mm from the top, 6 g", words.Brief(cuts[2]));

        // 0.4 mm is 0.016 in, 95.4 mm 3.76 in, 3.2 g 0.11 oz.
        var inches = Words(Cutting(cuts[..1]), InInches);
        Assert.Equal("Take 0.1 oz (3 g) off beyond the plan: 0.016 in from the grip.", inches.Summary);
        Assert.Equal("Grip: 0.008 in off each face, 0 in to 3 3/4 in from the top, 0.1 oz (3 g)", inches.Brief(cuts[0]));
    }

    // The two cuts of the shaft share all of it between the grip's end, 95 mm, and the lower hand, 900 mm: half way, at 498 mm, each has half. The lower
    // one goes on whole to the throat, 938 mm, and runs out in the first quarter of the blade's 590 mm, 147.5 mm; the upper one begins 0.36 of 95 mm down
    // the grip. In sixteenths of an inch: 1 3/8, 3 3/4, 19 9/16, 35 7/16, 36 15/16, 42 3/4.
    [Fact]
    public void A_cut_of_the_shaft_says_how_far_it_runs_out()
    {
        Removal upper = new(CorrectionZone.ShaftUpper, 12, 1.8, 34.2, 900), lower = new(CorrectionZone.ShaftLower, 9, 0.6, 900, 938);
        Assert.Equal([upper with { MassG = 0, ThicknessMm = 0 }, lower with { MassG = 0, ThicknessMm = 0 }], OnShaft());
        CorrectionWords words = Words(Cutting([upper, lower])), inches = Words(Cutting([upper, lower]), InInches);
        Assert.Equal(
            "From 34 mm to 900 mm from the top of the grip: 0.9 mm off each face along the middle where the grip ends, at 95 mm, half of it at 498 mm, running out to nothing at the "
            + "lower hand, at the edges and into the grip.",
            words.How(upper));
        Assert.Equal(
            "From 900 mm to 938 mm from the top of the grip: 0.3 mm off each face along the middle. Above the lower hand go on, with half of it at 498 mm, running out to nothing where "
            + "the grip ends, at 95 mm; below, running out to nothing in the shoulder of the blade, at 1086 mm, and at the edges.",
            words.How(lower));
        Assert.Equal(
            "From 35 7/16 in to 36 15/16 in from the top of the grip: 0.012 in off each face along the middle. Above the lower hand go on, with half of it at 19 9/16 in, running out to "
            + "nothing where the grip ends, at 3 3/4 in; below, running out to nothing in the shoulder of the blade, at 42 3/4 in, and at the edges.",
            inches.How(lower));
        Assert.Equal(
            "From 1 3/8 in to 35 7/16 in from the top of the grip: 0.035 in off each face along the middle where the grip ends, at 3 3/4 in, half of it at 19 9/16 in, running out to "
            + "nothing at the lower hand, at the edges and into the grip.",
            inches.How(upper));
        Assert.Equal("Lower shaft: 0.3 mm off each face, 900 mm to 938 mm from the top, half of it at 498 mm, 9 g", words.Brief(lower));
        Assert.Equal("Upper shaft: 0.035 in off each face, 1 3/8 in to 35 7/16 in from the top, half of it at 19 9/16 in, 0.4 oz (12 g)", inches.Brief(upper));

        // The wood that a cut of a millimetre takes off is as they say.
        double[] Off(CorrectionZone zone, params double[] places) =>
            [.. places.Select(x => Math.Round(CorrectionZones.Share(zone, StageEstimate.PatternAt(Cherry.Specification.Form, x)), 3))];
        Assert.Equal([0, 1, 0.5, 0, 0], Off(CorrectionZone.ShaftUpper, 34.2, 95, 497.5, 900, 1000));
        Assert.Equal([0, 0.5, 1, 1, 0], Off(CorrectionZone.ShaftLower, 95, 497.5, 900, 937, 1085.5));
    }

    // Where the two cuts lie, by a correction's own list.
    private static IEnumerable<Removal> OnShaft() =>
        BalanceCorrection.RemovalList(Cherry.Specification.Form, [0, 1, 1, 0, 0, 0], new double[6]).Select(cut => cut with { ThicknessMm = 0, FromMm = Math.Round(cut.FromMm, 9) });

    [Fact]
    public void Zones_have_the_names_of_the_trade_from_the_grip_down() => Assert.Equal(
        ["the grip", "the upper shaft", "the lower shaft", "the upper third of the blade", "the middle third of the blade", "the lower third of the blade"],
        CorrectionZones.All.Select(CorrectionWords.Name));

    [Fact]
    public void A_plan_that_is_met_is_left_alone()
    {
        Assert.Equal("The paddle follows its plan: nothing comes off beyond it.", Words(OnPlan(isToPlan: true)).Summary);
        Assert.Equal("The paddle ends where it should: nothing comes off beyond the plan.", Words(OnPlan(isToPlan: false)).Summary);
        Assert.Equal("No cut that the limits allow brings it nearer its aim.", Words(OutOfReach(20)).Summary);
        Assert.Equal([new("follow-plan", "Go on to plan.")], Words(OnPlan(true), stage: BuildStage.Sanded).Advice);
        Assert.Equal([new("done", "It is done.")], Words(OnPlan(true)).Advice);
        var off = Cherry with { Balance = Cherry.Balance with { ActualMm = Cherry.Balance.TargetMm - 17 } };
        Assert.Equal(
            new CodedNote(
                "design-off-aim", "The design itself balances 17 mm towards the grip from its aim, as its own answer says; the paddle does as the design."),
            Words(OnPlan(true), off).Advice[^1]);
    }

    [Fact]
    public void A_doubted_reading_is_named_with_what_was_expected_and_the_slip_that_would_explain_it()
    {
        // 1300 g where 800 g are expected: so much denser wood, 13/8 of the design's.
        var density = Cherry.Specification.Wood.DensityKgM3;
        var mass = Words(Doubted([new(ReadingKind.Mass, 0, 1300, 800, 700, 900, 9, null)]));
        Assert.Equal("Measure again before anything is cut: the mass does not fit.", mass.Summary);
        Assert.Equal(
            [
                new(
                    "mass-does-not-fit",
                    $"The mass reads 1300 g where 700 g to 900 g is to be expected. It would take wood of {density * 13 / 8:F0} kg/m³ where the design "
                    + $"has {density:F0} kg/m³."),
            ],
            mass.Doubts);
        Assert.Equal(
            [
                new("balance-does-not-fit", "The balance point reads 88 mm where 870 mm to 890 mm is to be expected. With one digit more, 880 mm would fit."),
                new("thickness-does-not-fit", "The thickness at 1200 mm reads 84 mm where 8 mm to 8.9 mm is to be expected. With one digit fewer, 8.4 mm would fit."),
            ],
            Words(Doubted([Balance(88, 880, 870, 890) with { WouldFit = 880 }, new(ReadingKind.Thickness, 1, 84, 8.4, 8, 8.9, 9, 8.4)])).Doubts);
        Assert.Equal(
            "The balance point reads 750 mm where 870 mm to 890 mm is to be expected. Read from the tip it would be 873 mm from the grip, and fit.",
            Words(Doubted([Balance(750, 880, 870, 890) with { WouldFit = 873 }])).Doubts[0].Text);
        Assert.EndsWith(
            "With one digit fewer, 800 g would fit.", Words(Doubted([new(ReadingKind.Mass, 0, 8000, 800, 700, 900, 9, 800)])).Doubts[0].Text, StringComparison.Ordinal);

        Assert.Equal(
            "Measure again before anything is cut: the mass, the balance point and the thickness at 1200 mm do not fit.",
            Words(Doubted([new(ReadingKind.Mass, 0, 1, 2, 1, 3, 9, null), Balance(1, 2, 1, 3), new(ReadingKind.Thickness, 1, 1, 2, 1, 3, 9, null)])).Summary);
        var none = Words(Doubted([]));
        Assert.Equal("Measure again before anything is cut: the readings do not fit this stage of the plan.", none.Summary);
        Assert.Equal(
            [
                new(
                    "readings-do-not-fit",
                    "No single reading is to blame, but together they lie further off this stage of the plan than wood and hands put them."),
            ],
            none.Doubts);
        Assert.Empty(Words(OnPlan(true)).Doubts);
    }

    [Fact]
    public void What_to_measure_again_depends_on_how_far_off_it_is()
    {
        CodedNote one = new("read-again", "Take it again, and look at what was typed; leave the wood alone until then."),
            two = new("read-again", "Take them again, and look at what was typed; leave the wood alone until then."),
            stage = new("check-stage", "As they are the readings would fit another stage: edges planed and lined."),
            design = new(
                "check-design",
                "No wood and no hand puts a reading so far off: should it read the same, the paddle is of another design or another wood."),
            hold = new("hold-to-it", "Should it read the same, say that it was measured again, and the cut is worked out from that."),
            holdThem = new("hold-to-it", "Should they read the same, say that it was measured again, and the cut is worked out from that.");
        var reading = Balance(900, 850, 840, 860);
        Assert.Equal([one, hold], Words(Doubted([reading])).Advice);
        Assert.Equal([two, holdThem], Words(Doubted([reading, reading])).Advice);
        Assert.Equal([one, design], Words(Doubted([reading], isBeyondBelief: true)).Advice);
        Assert.Equal([one], Words(Doubted([reading with { WouldFit = 850 }], isBeyondBelief: true)).Advice);
        Assert.Equal([two], Words(Doubted([reading with { WouldFit = 850 }, reading], isBeyondBelief: true)).Advice);
        Assert.Equal([one, stage, hold], Words(Doubted([reading], fits: BuildStage.EdgeLined)).Advice);
        Assert.Equal(
            [
                new(
                    "read-again",
                    "Close the caliper and look whether it reads nothing; then take a few thicknesses, the mass and the balance point again."),
                holdThem,
            ],
            Words(Doubted([])).Advice);
    }

    [Fact]
    public void How_to_cut_depends_on_the_stage_and_the_depth()
    {
        Removal shallow = new(CorrectionZone.BladeLowerThird, 4, 0.3, 1400, 1600), deep = shallow with { ThicknessMm = 0.305 };
        CodedNote through = new("cut-through-finish", "The finish comes off with it: scrape, balance, and put the finish on again there."),
            passes = new("cut-in-passes", "Scrape it off in light passes and balance between them: what is off stays off."),
            steps = new("cut-in-two-steps", "Scrape off two thirds of it, balance again, then take the rest: what is off stays off."),
            planing = new("cut-with-last-planing", "Take the cut with the last planing, then weigh and balance again, and ask once more before the sanding.");
        Assert.True(Cherry.Finished.Load.MassG > 0);
        Assert.Equal([through, passes], Words(Cutting([shallow])).Advice);
        Assert.Equal([through, steps], Words(Cutting([shallow, deep])).Advice);
        Assert.Equal([steps], Words(Cutting([deep]), stage: BuildStage.Sanded).Advice);
        Assert.Equal([planing], Words(Cutting([deep]), stage: BuildStage.BladePlaned).Advice);
        var bare = Cherry with { Finished = Cherry.Finished with { Load = new(0, 0, 0, 0, 0) } };
        Assert.Equal([passes], Words(Cutting([shallow]), bare).Advice);

        // A cut of what would have been in tolerance says what it is for.
        Assert.Equal(
            new CodedNote(
                "in-tolerance-already",
                "Without the cut it would most likely end in tolerance, 9 mm towards the tip from the aim with 12 mm allowed, but with a chance of 62 % only; "
                + "the cut makes it 95 %."),
            Words(Cutting([shallow], beforeMm: 9)).Advice[0]);
        Assert.Equal(through, Words(Cutting([shallow], beforeMm: 12.1)).Advice[0]);
        Assert.StartsWith(
            "Without the cut it would most likely end in tolerance, 12 mm towards the grip from", Words(Cutting([shallow], beforeMm: -11.9)).Advice[0].Text,
            StringComparison.Ordinal);
    }

    [Fact]
    public void When_only_wood_put_back_would_help_the_choices_are_named_with_their_sides()
    {
        CodedNote accept = new("accept-offset", "Accept it.");
        Assert.Equal(
            [
                new("short-of-aim", "It still balances 20 mm towards the tip from the aim: only wood put back would reach it. The choices:"),
                accept,
                new("move-lower-hand", "Move the lower-hand mark 20 mm towards the tip."),
                new("add-at-grip", "Add 19 g at the grip, such as a glued-on cap of dense wood."),
            ],
            Words(OutOfReach(20, grip: 18.6)).Advice);
        Assert.Equal(
            [
                new("short-of-aim", "It still balances 15 mm towards the grip from the aim: only wood put back would reach it. The choices:"),
                accept,
                new("move-lower-hand", "Move the lower-hand mark 15 mm towards the grip."),
                new("add-at-tip", "Add 16 g of cloth and resin at the tip, where it wears best."),
                new(
                    "leave-allowance",
                    "Leave part of the allowance on the lower third of the blade: wood not yet taken off needs no putting back."),
            ],
            Words(OutOfReach(-15, tip: 16), stage: BuildStage.GripCut).Advice);
        var partly = OutOfReach(20) with { Status = CorrectionStatus.Cut, Removals = [new(CorrectionZone.BladeLowerThird, 4, 0.3, 1400, 1600)] };
        var advice = Words(partly, stage: BuildStage.BladePlaned).Advice;
        Assert.Contains(new("short-of-aim", "With all that the limits let off it still balances 20 mm towards the tip from the aim: only wood put back would reach it. The choices:"), advice);
        Assert.Equal("Leave part of the allowance on grip and upper shaft: wood not yet taken off needs no putting back.", advice[^1].Text);

        // Nobody moves the hand of a paddle that balances at its throat, and nothing is to choose within tolerance.
        var throat = Cherry with { Specification = Cherry.Specification with { Aims = Cherry.Specification.Aims with { BalanceAt = BalanceAim.Throat } } };
        Assert.DoesNotContain(Words(OutOfReach(20, grip: 18), throat).Advice, note => note.Code == "move-lower-hand");
        var near = Words(OutOfReach(0.7), toleranceMm: 0.5);
        Assert.Equal("Move the lower-hand mark 1 mm towards the tip.", near.Advice.Single(note => note.Code == "move-lower-hand").Text);
        Assert.Empty(Words(OutOfReach(12)).Advice);
        Assert.NotEmpty(Words(OutOfReach(12.1)).Advice);
        var heavy = Cherry with { Specification = Cherry.Specification with { Aims = Cherry.Specification.Aims with { MaximumMassG = 650 } } };
        Assert.Equal(
            [new("too-heavy", "It stays heavier than asked for, 700 g against 650 g: no limit lets more wood come off.")], Words(OutOfReach(5), heavy).Advice);
    }

    [Fact]
    public void Wood_too_thin_and_a_design_too_weak_are_told_apart_and_a_doubt_stands()
    {
        var governing = Cherry.Strength.Governing;
        var thin = governing with { Case = governing.Case with { LeastFactor = 1.5 }, StrengthMPa = 27, StressMPa = 20 };
        var onPlan = OnPlan(true);
        var weak = onPlan with { Outlook = onPlan.Outlook! with { Corrected = onPlan.Outlook.Corrected with { Weakest = thin } } };
        Assert.Equal(
            new CodedNote(
                "wood-too-thin",
                $"The wood is thinner than planned: in the load case {thin.Case.Name} the safety factor is 1.35, below the 1.50 asked for, before any "
                + "correction. Keep the paddle for a lighter paddler or an easier trip, or start a new one."),
            Words(weak).Advice[0]);
        var enough = thin with { StrengthMPa = 30 };
        Assert.Equal(
            "done",
            Words(onPlan with { Outlook = onPlan.Outlook with { Corrected = onPlan.Outlook.Corrected with { Weakest = enough } } }).Advice[0].Code);

        var design = PaddleDesigner.Design(Cherry.Specification with { Pinned = new(ShaftWidthMm: 23, ShaftThicknessMm: 23) });
        Assert.Equal(
            ["design-too-weak", "done"], Words(weak, design with { Balance = Cherry.Balance }).Advice.Select(note => note.Code));
        Assert.Equal(
            "The design itself is too weak for its load cases, as its own answer says: do not build it so.", Words(weak, design).Advice[0].Text);
        Assert.Equal(
            new CodedNote("doubt-stands", "Readings that were doubted have been taken again and are believed."),
            Words(onPlan with { Doubt = new([Balance(900, 850, 840, 860)], null, false) }).Advice[0]);
    }

    private static CorrectionWords Words(
        BalanceCorrection correction, DesignReport? report = null, BuildStage stage = BuildStage.Finished, double toleranceMm = ToleranceMm) =>
        new(report ?? Cherry, stage, correction with { ToleranceMm = toleranceMm });

    private static ReadingDoubt Balance(double read, double expected, double low, double high) =>
        new(ReadingKind.Balance, 0, read, expected, low, high, 9, null);

    private static BalanceCorrection Doubted(ReadingDoubt[] readings, BuildStage? fits = null, bool isBeyondBelief = false) =>
        new(CorrectionStatus.MeasureAgain, new(readings, fits, isBeyondBelief), null, 880, ToleranceMm, [], [300, 1200]);

    private static BalanceCorrection Explained(Explanation explanation)
    {
        var plan = OnPlan(true);
        return plan with { Outlook = plan.Outlook! with { Explanation = explanation } };
    }

    private static BalanceCorrection OnPlan(bool isToPlan, double beforeMm = 0) => new(
        CorrectionStatus.OnPlan, null,
        new(
            new(560, 10, 0, false, 0, [0, 0, 0, 0, 0, 0]), isToPlan, new(700, 880 + beforeMm, 3, 0.62),
            new(700, 880, 0.95, Cherry.Strength.Governing, Cherry.Flex.BenchFlexMm), true, null),
        880, ToleranceMm, [], []);

    private static BalanceCorrection Cutting(Removal[] cuts, double beforeMm = 20) =>
        OnPlan(false, beforeMm) with { Status = CorrectionStatus.Cut, Removals = cuts };

    private static BalanceCorrection OutOfReach(double offsetMm, double? tip = null, double? grip = null)
    {
        var plan = OnPlan(false);
        return plan with
        {
            Status = CorrectionStatus.OutOfReach,
            Outlook = plan.Outlook! with { Achievable = false, LeastBad = new(offsetMm, offsetMm, tip, grip) },
        };
    }
}
