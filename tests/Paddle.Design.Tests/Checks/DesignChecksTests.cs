using Paddle.Design.Balance;
using Paddle.Design.Checks;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Tests.Build;
using Paddle.Design.Tests.Solid;
using Paddle.Design.Units;

namespace Paddle.Design.Tests.Checks;

/// <summary>Every check with its figure, limit, unit, words and source, worked out by hand: a maker acts on them.</summary>
public class DesignChecksTests
{
    private const string Asked = "the limit asked for in the request", Practice = "common practice, no source";
    private const string Hard = "a source of the hard stroke", Push = "a source of the push-off";
    private const string Sold = "boards as sold: PS 20 and suppliers' charts, read; 0.5 mm planed off each face common practice, no source";
    private const string HandMost = "28-40 mm accepted, 30-40 mm rated best: Kong and Lowe 2005, Int J Ind Ergon 35:495-507 (abstract)";
    private const string HandLeast = "27 mm is the least that makers carve in hardwood for a hand spacing of 889 mm, smaller hands in proportion: common practice, no source";
    private const string Buckling = "Euler column between the hands; factor of 3 is the service's own";
    private const string Damp = "Wood Handbook eq. 5-3 at 16 % moisture, the equilibrium at 20 degrees C and 80 % humidity (eq. 4-5)";
    private const string Usual = Practice + ": one-piece touring paddles weigh 550-850 g, those of taller people in proportion to length and width";
    private const string Grain = "FAA AC 43.13-1B table 1-1 (1:15 for aircraft wood) and Pennsylvania Code title 34, 21.23 (ladder rungs 1:15, or 1:12 when 15 % stronger than "
        + "needed); the limits 1:20 and 1:12 are this service's choice between them";

    private static readonly DesignReport Cherry = BuildSamples.Cherry;

    // Damp: W1 with the handbook's 85 and 55 MPa of black cherry and 25 %: 1.60 · (85/55)^(-4/13) = 1.40. Buckling: 3000 N over the push's 400 N;
    // the brace is no thrust. Girth of a circle of 30 mm. Widths of a beavertail: 150 to 205 mm; lengths 530 to 650 mm, up to a spacing of 973 mm.
    [Fact]
    public void A_good_paddle_passes_and_is_told_so_in_these_words()
    {
        var asked = Paddle(wood: TestPaddles.Wood("black-cherry"), aims: new(BalanceAim.LowerHand, 12, 1.5, 8, 12, 700));
        Assert.Equal(
            [
                new("balance.offset", CheckStatus.Pass, 4, 12, "mm", "Finished, it balances where asked.", Asked),
                new("strength.hard-stroke", CheckStatus.Pass, 1.6, 1.5, "", "Strong enough.", Hard),
                new("strength.push-off", CheckStatus.Pass, 1.6, 1.1, "", "Strong enough.", Push),
                new("strength.brace", CheckStatus.Pass, 1.6, 1.1, "", "Strong enough.", Push),
                new("strength.shaft-buckling", CheckStatus.Pass, 7.5, 3, "", "The shaft is far from buckling.", Buckling),
                new("strength.damp", CheckStatus.Pass, 1.3994, 1, "", "A hard stroke holds when the wood has been in damp air for weeks (16 %).", Damp),
                new("flex.least", CheckStatus.Pass, 10, 8, "mm", "Gives enough.", Asked),
                new("flex.most", CheckStatus.Pass, 10, 12, "mm", "Stiff enough.", Asked),
                new("mass.most", CheckStatus.Pass, 650, 700, "g", "Light enough.", Asked),
                new("mass.floats", CheckStatus.Pass, Math.Round(asked.Wood.DensityKgM3, 4), 1000, "kg/m3", "Floats.", "density of fresh water"),
                new("mass.usual", CheckStatus.Pass, 620, 850, "g", "Of a usual weight.", Usual),
                new("hand.shaft-least", CheckStatus.Pass, 30, 27, "mm", "Fills the lower hand.", HandLeast),
                new("hand.shaft-most", CheckStatus.Pass, 30, 40, "mm", "The lower hand closes round it.", HandMost),
                new("shape.shaft-oval", CheckStatus.Pass, 1, 1.255, "", "Round to gently oval.", Practice),
                new("shape.blade-length", CheckStatus.Pass, 590, 650, "mm", "Usual for the family.", Practice),
                new("shape.blade-width", CheckStatus.Pass, 168, 205, "mm", "Usual for the family.", Practice),
                new("shape.fullness", CheckStatus.Pass, 0.8, 0.8, "", "As full as asked.", "area below the widest point over its length times the full width"),
                new("wood.slope-of-grain", CheckStatus.Pass, 0.04, 0.05, "", "Straight enough.", Grain),
                new(
                    "wood.suitability", CheckStatus.Pass, 0, 0, "",
                    "Moderate weight, tough, works and finishes cleanly, little shrinkage and durable heartwood: the usual first choice for a one-piece paddle.", Practice),
                new(
                    "board.stock", CheckStatus.Pass, 26, 27, "mm",
                    "The thickest section is 25 mm, so that a surfaced board must be 26 mm: 5/4 stock suffices, hardwood 5/4 S2S (27 mm).", Sold),
            ],
            Of(asked));
    }

    // Red oak is one to be careful with: 99 and 57 MPa, 25 %. What weighs 851 g is more than usual where the hands are no more than 889 mm apart.
    [Fact]
    public void A_bad_paddle_is_told_what_is_bad_in_these_words()
    {
        var asked = Paddle(
            new(528, 206), wood: TestPaddles.Wood("northern-red-oak", slopeOfGrain: 0.0501) with { DensityKgM3 = 1001 },
            aims: new(BalanceAim.LowerHand, 3.9, 1.5, 10.1, 9.9, 649), board: 26.5);
        const string Family = "Unusual for this family: beavertail.", Weak = "Weaker than the safety factor asked for.";
        Assert.Equal(
            [
                new(
                    "balance.offset", CheckStatus.Warn, 4, 3.9, "mm", "Finished, it balances 4 mm above the aim; 21 g let in 1500 mm from the top would close it.", Asked),
                new("strength.hard-stroke", CheckStatus.Fail, 1.05, 1.5, "", Weak, Hard),
                new("strength.push-off", CheckStatus.Fail, 1.05, 1.1, "", Weak, Push),
                new("strength.brace", CheckStatus.Fail, 1.05, 1.1, "", Weak, Push),
                new("strength.shaft-buckling", CheckStatus.Warn, 2.995, 3, "", "Pushing off could buckle the shaft.", Buckling),
                new(
                    "strength.damp", CheckStatus.Warn, 0.886, 1, "", "Damp (16 %), a hard stroke would load it beyond its 5th-percentile strength: keep the finish sound.", Damp),
                new("flex.least", CheckStatus.Fail, 10, 10.1, "mm", "Stiffer than asked for.", Asked),
                new("flex.most", CheckStatus.Fail, 10, 9.9, "mm", "Gives more than asked for.", Asked),
                new("mass.most", CheckStatus.Fail, 650, 649, "g", "Heavier than asked for.", Asked),
                new("mass.floats", CheckStatus.Fail, 1001, 1000, "kg/m3", "Would sink.", "density of fresh water"),
                new(
                    "mass.usual", CheckStatus.Warn, 851, 850, "g",
                    "Heavier than most people like for a day: a lighter wood, a smaller blade or a lower hard stroke would help.", Usual),
                new("hand.shaft-least", CheckStatus.Warn, 26.9, 27, "mm", "Thin in the lower hand.", HandLeast),
                new("hand.shaft-most", CheckStatus.Pass, 26.9, 40, "mm", "The lower hand closes round it.", HandMost),
                new("shape.shaft-oval", CheckStatus.Pass, 1, 1.255, "", "Round to gently oval.", Practice),
                new("shape.blade-length", CheckStatus.Warn, 528, 530, "mm", Family, Practice),
                new("shape.blade-width", CheckStatus.Warn, 206, 205, "mm", Family, Practice),
                new("wood.slope-of-grain", CheckStatus.Warn, 0.0501, 0.05, "", "Grain runs out: look again at the shaft and the throat, and take a straighter board if you can.", Grain),
                new(
                    "wood.suitability", CheckStatus.Warn, 0, 0, "",
                    "Strong enough, but heavy, open-pored and not durable: the open vessels drink water through the end grain.", Practice),
                new(
                    "board.stock", CheckStatus.Warn, 25.52, 25.5, "mm",
                    "Your board, 26.5 mm, leaves 25.5 mm when planed; the thickest section is 25.6 mm. It is too thin: take a thicker board, or thinner sizes.", Sold),
            ],
            Of(asked, shaftMm: 26.9, factor: 1.05, bucklingN: 1198, bareG: 851, thickestMm: 25.52).Where(check => check.Id != "shape.fullness"));
    }

    // A limit is still within it; half a millimetre is what whole millimetres of a blade leave.
    [Fact]
    public void At_its_limit_a_figure_still_passes()
    {
        var checks = Of(
            Paddle(new(529.5, 205.5), wood: TestPaddles.Wood("white-ash", slopeOfGrain: 0.05) with { DensityKgM3 = 1000 }, aims: new(BalanceAim.LowerHand, 4, 1.5, 10, 10, 650), board: 26),
            shaftMm: 27, factor: 1.5, bucklingN: 1200, bareG: 850, thickestMm: 25);
        Assert.DoesNotContain(checks, check => check.Status != CheckStatus.Pass && check.Id != "shape.fullness");
        Assert.Equal(
            ["shape.blade-length", "shape.blade-width"],
            Of(Paddle(new(529.4, 205.6))).Where(check => check.Status == CheckStatus.Warn && check.Id != "shape.fullness").Select(check => check.Id));
    }

    // A shaft of 33 by 26 mm is oval by 1.269 either way round, one of 32.6 by 26 by 1.254; the girth of 48 by 34 mm is that of a circle of 41.3 mm
    // (Ramanujan: half of 3 · 82 less the root of 178 · 150).
    [Fact]
    public void A_shaft_is_held_against_the_hand_by_its_girth_and_its_roundness()
    {
        DesignCheck Found(double width, double thickness, string id) =>
            Of(Paddle(), sizes: TestPaddles.UsualSizes with { ShaftWidthMm = width, ShaftThicknessMm = thickness }).Single(check => check.Id == id);
        Assert.Equal(new("shape.shaft-oval", CheckStatus.Warn, 1.2692, 1.255, "", "More oval than usual.", Practice), Found(33, 26, "shape.shaft-oval"));
        Assert.Equal(1.2692, Found(26, 33, "shape.shaft-oval").Value);
        Assert.Equal((CheckStatus.Pass, 1.2538), (Found(32.6, 26, "shape.shaft-oval").Status, Found(32.6, 26, "shape.shaft-oval").Value));
        Assert.Equal(new("hand.shaft-most", CheckStatus.Warn, 41.2993, 40, "mm", "Thick in the lower hand.", HandMost), Found(48, 34, "hand.shaft-most"));
    }

    // The least shaft goes with the hands' distance, from 27 mm at 889 mm down to 22/28.6 of it; more weight is usual with the square of it; the usual
    // length begins at 530 mm down to a spacing of 815.5 mm (survey, women's mean) and ends at 650 mm up to 973 mm (men's 95th percentile), in proportion
    // beyond; a bent shaft is a body's whose hands are 75 mm further apart. The usual width begins, for 40 kg and 700 mm, at
    // (60/95)^(2/3) · 590/509.5 = 0.852 of 150 mm: 590 · 0.736^(1/6) · (700/889)^0.4 = 509.5 mm is the length for that body.
    // A tall one's blade is longer, by (S/889)^0.8, and so may be narrower.
    [Theory]
    [InlineData(700, 0, 40, 21.2598, 850, 300, 454.9356, 100, 127.8613)]
    [InlineData(800, 0, 75, 24.2970, 850, 300, 519.9264, 220, 205)]
    [InlineData(800, 12, 75, 24.2970, 850, 300, 530, 220, 205)]
    [InlineData(650, 0, 75, 20.7692, 850, 700, 650, 220, 205)]
    [InlineData(1000, 0, 75, 27, 1075.5124, 700, 668.0370, 100, 136.5252)]
    [InlineData(1000, 5, 75, 27, 1075.5124, 720, 718.1398, 100, 128.8504)]
    public void What_is_usual_goes_with_the_body(
        double spacing, double bend, double bodyMassKg, double leastShaft, double mostG, double length, double lengthLimit, double width, double widthLimit)
    {
        var checks = Of(Paddle(new(length, width), spacing: spacing, bend: bend, bodyMassKg: bodyMassKg)).ToDictionary(check => check.Id);
        Assert.Equal(
            (leastShaft, mostG, lengthLimit, widthLimit),
            (checks["hand.shaft-least"].Limit, checks["mass.usual"].Limit, checks["shape.blade-length"].Limit, checks["shape.blade-width"].Limit));
    }

    // What the curve has is measured here on the outline itself.
    [Fact]
    public void A_fullness_out_of_reach_is_told()
    {
        var asked = Paddle(new(530, 205, 0.95));
        var check = Of(asked).Single(one => one.Id == "shape.fullness");
        var outline = asked.Form.Outline(TestPaddles.UsualSizes);
        var (throat, tip) = (asked.Form.Places.ThroatMm, asked.Form.Places.OverallMm);
        var from = throat + asked.Form.Blade.WidestAt * (tip - throat);
        var mean = Enumerable.Range(0, 20000).Average(k => 2 * outline.HalfBreadthMm(from + (k + 0.5) / 20000 * (tip - from)));
        Assert.Equal(mean / 205, check.Value, 1e-3);
        Assert.Equal(
            new(
                "shape.fullness", CheckStatus.Warn, check.Value, 0.95, "", "At these proportions the curve stays fair only at another fullness: it is drawn with this one.",
                "area below the widest point over its length times the full width"),
            check);

        // A difference of two thousandths is none that an eye sees.
        CheckStatus Off(double by) => Of(Paddle(new(530, 205, check.Value + by))).Single(one => one.Id == "shape.fullness").Status;
        Assert.Equal((CheckStatus.Pass, CheckStatus.Warn), (Off(0.0018), Off(0.0022)));
    }

    // Wood at 16 % is damp already; a glued-up paddle floats by what it weighs: 1 g to the cubic centimetre and more sinks.
    [Fact]
    public void What_a_wood_does_not_ask_is_not_checked_and_strips_float_by_their_weight()
    {
        Assert.DoesNotContain(Of(Paddle(wood: TestPaddles.Wood("white-ash", 16))), check => check.Id == "strength.damp");
        Assert.Contains(Of(Paddle(wood: TestPaddles.Wood("white-ash", 15.9))), check => check.Id == "strength.damp");
        Assert.DoesNotContain(Of(Paddle(aims: new(BalanceAim.LowerHand, 12, 1.5, null, null, null))), check => check.Id is "flex.least" or "flex.most" or "mass.most");
        var glued = Laminating.LaminatedDesignTests.Asked(Laminating.LaminatedDesignTests.CedarWings, TestPaddles.UsualSizes);
        var laminate = PaddleDesigner.Design(glued).Laminate;
        DesignCheck Floats(double volumeCm3) => DesignChecks.Of(
            glued, TestPaddles.UsualSizes, 26, Cherry.Balance, Cherry.Mass with { GripG = 100, ShaftG = 200, BladeG = 320, VolumeCm3 = volumeCm3 }, Cherry.Finished, Cherry.Strength,
            Cherry.Flex, laminate).Single(check => check.Id == "mass.floats");
        Assert.Equal((CheckStatus.Pass, 500.0), (Floats(1240).Status, Floats(1240).Value));
        Assert.Equal((CheckStatus.Fail, 1033.3), (Floats(600).Status, Math.Round(Floats(600).Value, 1)));
    }

    // A sixteenth of an inch is 1.5875 mm: 10 g a millimetre are 16 g or 0.6 oz, 0.2 of a factor 0.32, 0.4 mm 0.635 mm or the next sixty-fourth, 1/32 in.
    [Theory]
    [InlineData(10, "g", DrawingUnits.Metric, "each millimetre more would save 10 g.")]
    [InlineData(10, "g", DrawingUnits.Inch, "each sixteenth of an inch more would save 0.6 oz (16 g).")]
    [InlineData(0.2, "safety factor", DrawingUnits.Metric, "each millimetre more would raise the least safety factor by 0.20.")]
    [InlineData(0.2, "safety factor", DrawingUnits.Inch, "each sixteenth of an inch more would raise the least safety factor by 0.32.")]
    [InlineData(0.4, "mm of balance", DrawingUnits.Metric, "each millimetre more would bring the balance 0.4 mm nearer to what is asked.")]
    [InlineData(0.4, "mm of balance", DrawingUnits.Inch, "each sixteenth of an inch more would bring the balance 1/32 in nearer to what is asked.")]
    [InlineData(0.4, "mm of flex", DrawingUnits.Metric, "each millimetre more would bring the flex 0.4 mm nearer to what is asked.")]
    [InlineData(0.4, "mm of shape", DrawingUnits.Metric, "each millimetre more would bring the shape 0.4 mm nearer to what is asked.")]
    public void A_board_says_what_more_of_it_would_bring(double gain, string unit, DrawingUnits units, string cost)
    {
        DesignCheck Board(params BindingLimit[] limits) => Of(Paddle(board: 27, units: units), thickestMm: 26, limits: limits).Single(check => check.Id == "board.stock");
        var held = units == DrawingUnits.Metric
            ? "Your board, 27 mm, leaves 26 mm when planed; the thickest section is 26 mm." : "Your board, 1 1/16 in, leaves 1 1/32 in when planed; the thickest section is 1 1/32 in.";
        Assert.Equal((CheckStatus.Pass, 26.0, 26.0, held), (Board().Status, Board().Value, Board().Limit, Board(new BindingLimit("shaft.widthMm.max", "mm", 1, "g")).Message));
        Assert.Equal($"{held} It holds the design back: {cost}", Board(new("shaft.widthMm.max", "mm", 1, "g"), new("wood.boardThicknessMm", "mm", gain, unit)).Message);
    }

    [Theory]
    [InlineData(26, CheckStatus.Pass)]
    [InlineData(26.0001, CheckStatus.Warn)]
    [InlineData(27, CheckStatus.Warn)]
    [InlineData(27.0001, CheckStatus.Fail)]
    public void A_board_that_could_be_left_rough_is_warned_of_and_a_thinner_one_fails(double thickestMm, CheckStatus expected) =>
        Assert.Equal(expected, Of(Paddle(board: 27), thickestMm: thickestMm).Single(check => check.Id == "board.stock").Status);

    // Only figures are rounded, to what the expectations are written to.
    private static IReadOnlyList<DesignCheck> Of(
        PaddleSpecification asked, double shaftMm = 30, PaddleSizes? sizes = null, double factor = 1.6, double bucklingN = 3000, double bareG = 620, double thickestMm = 25,
        IReadOnlyList<BindingLimit>? limits = null)
    {
        var balance = new BalanceResult(900, 896, 880, asked.Aims.BalanceToleranceMm, 21.3, 1500, limits ?? []);
        var strength = Cherry.Strength with { Cases = [.. asked.Loads.Cases.Select(one => new CaseResult(one, 20, 900, 20 * factor, 60, 20, 900))], BucklingLoadN = bucklingN };
        var checks = DesignChecks.Of(
            asked, sizes ?? TestPaddles.UsualSizes with { ShaftWidthMm = shaftMm, ShaftThicknessMm = shaftMm }, thickestMm, balance,
            Cherry.Mass with { GripG = 100, ShaftG = 200, BladeG = bareG - 300, VolumeCm3 = 1 }, Cherry.Finished with { MassG = 650 }, strength, Cherry.Flex with { BenchFlexMm = 10 });
        return [.. checks.Select(check => check with { Value = Math.Round(check.Value, 4), Limit = Math.Round(check.Limit, 4) })];
    }

    private sealed record Blade(double LengthMm, double WidthMm, double Fullness = 0.80);

    private static PaddleSpecification Paddle(
        Blade? blade = null, Design.Wood.WoodInUse? wood = null, Aims? aims = null, double? board = null, double spacing = 889, double bend = 0, double bodyMassKg = 75,
        DrawingUnits units = DrawingUnits.Metric)
    {
        LoadCase[] cases =
        [
            new("hard-stroke", LoadAction.Stroke, 300, 1.5, Hard), new("push-off", LoadAction.TipThrust, 400, 1.1, Push), new("brace", LoadAction.EvenPressure, 500, 1.1, Push),
        ];
        blade ??= new(590, 168);
        var form = TestPaddles.Form(TestPaddles.Blade("beavertail", blade.LengthMm, blade.WidthMm, fullness: blade.Fullness), spacing, bend: bend);
        return TestPaddles.Asked(form, wood, new(Duty.Touring, bodyMassKg, cases), aims) with { BoardThicknessMm = board, Units = units };
    }
}
