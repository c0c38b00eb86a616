using Paddle.Design.Build;
using Paddle.Design.Laminating;
using Paddle.Design.Tests.Solid;
using Paddle.Design.Units;

namespace Paddle.Design.Tests.Laminating;

/// <summary>How a paddle is glued up, word for word: a wrong width or hour costs the wood.</summary>
public class GlueUpWordsTests
{
    private const string Caution = "Uncured epoxy and its hardener make skin allergic, for good: wear nitrile gloves, keep it off the skin, never wash it off with solvent, and do not sand it "
        + "before it has cured for a week; the dust of half-cured resin sensitises too. [HSE RR079 and Contact Dermatitis 10:146 (1984), as quoted, read; the week and the solvent from memory]";

    private const string Dry = "Fit them dry, with every clamp, and hold the joints against the light: nothing may show through. Mark a line across all strips to find the places again.";

    private const string Use = "Wet both faces with plain resin, then spread thickened resin on one. It fills a gap as wide as a card is thick, and softens in heat: keep a dark paddle out of a hot car.";

    private const string Cured = ", longer in the cold, before the clamps come off and before it is planed. Then plane the faces fair: that is the board which the stages "
        + "start from. Strips are no thicker than they must be, so the weights of a full board do not hold at first: weigh from the eight-sided shaft on.";
    private const string Cure = "Leave it 24 hours at 20 °C" + Cured, CureInInches = "Leave it 24 hours at 68 °F" + Cured;

    private static readonly GlueUp Up = new(
        [
            new("white-ash", 1, "whole", 36, 38, 41, 1600.02, 32.1, 0, 1550), new("western-redcedar", 2, "blade", 60, 62, 65, 550, 26, 1000, 1500),
            new("sugar-maple", 1, "tip", 30, 31, 34, 150, 9.1, 1520, 1550),
        ],
        4, 725.4, 30.6, 88.4, 7, 112);

    [Fact]
    public void Every_step_in_millimetres() => Assert.Equal(
        [
            "1 of white ash, whole length: saw 38 mm wide, 32.1 mm thick, 1600.1 mm long.",
            "2 of western redcedar, for the blade: saw 62 mm wide, 26 mm thick, 550 mm long; its finished wood lies from 1000 mm to 1500 mm below the top of the grip.",
            "1 of sugar maple, across the tip: saw 31 mm wide, 9.1 mm thick, 150 mm long; its finished wood lies from 1520 mm to 1550 mm below the top of the grip.",
            "Plane the edges square and straight just before gluing, 1 mm off each. Lay the strips with their middle planes in one plane and their grain running the same way, so that one "
                + "plane shaves them all.",
            Dry,
            "Spread 31 g of epoxy in all, for 4 joints of 725 cm² together. " + Use,
            "Clamp every 88 mm, from the middle outward, over battens and release film: 7 clamps for the longest joint, 120 N each at least. Keep the strips flat with battens across. Wipe "
                + "off what is squeezed out before it hardens.",
            "The piece across the tip, 30 mm of sugar maple, is glued on last, to the ends of the strips planed square: size the end grain with a first thin coat, then spread again; a "
                + "tongue or a spline along the joint keeps it where a knock would open it. Its grain lies across the blade.",
            Cure,
            "The sheets on the faces: 2 of sugar maple, 0.8 mm thick, 170 mm by 520 mm with something to trim, from 1000 mm below the top of the grip to the tip. Plane the blade to its plan "
                + "less 0.8 mm on each face there, spread 1200 cm² in all, lay both at once so that the blade stays flat, and press them between padded cauls shaped to the crown or in a "
                + "vacuum bag. Feather the upper end into the wood. Weights of the stages are those of a blade with its sheets on.",
            Caution,
        ],
        GlueUpWords.For(Report(Up, true, DrawingUnits.Metric)));

    // 38 mm are 1 1/2 in (47.9 thirty-seconds, up), 32.1 1 9/32 (40.4), 1600 63 in; 1 mm is 3/64 in, never less than is meant; 30.6 g 1.1 oz; 725.4 cm² 112 in²;
    // 88.4 mm 3 1/2 in (55.7 sixteenths).
    [Fact]
    public void Every_step_in_inches()
    {
        var words = GlueUpWords.For(Report(Up with { Strips = [Up.Strips[0]], Count = 1, ClampForceN = 110 }, false, DrawingUnits.Inch));
        Assert.Equal(
            [
                "1 of white ash, whole length: saw 1 1/2 in wide, 1 9/32 in thick, 63 in long.",
                "Plane the edges square and straight just before gluing, 3/64 in off each. Lay the strips with their middle planes in one plane and their grain running the same way, so that "
                    + "one plane shaves them all.",
                Dry,
                "Spread 1.1 oz (31 g) of epoxy in all, for 1 joint of 112 in² together. " + Use,
                "Clamp every 3 1/2 in, from the middle outward, over battens and release film: 7 clamps for the longest joint, 110 N each at least. Keep the strips flat with battens across. "
                    + "Wipe off what is squeezed out before it hardens.",
                CureInInches,
                Caution,
            ],
            words);
    }

    private static DesignReport Report(GlueUp up, bool hasMore, DrawingUnits units)
    {
        var laminate = LaminatedDesignTests.CedarWings;
        if (hasMore) laminate = laminate with { TipPiece = new(TestPaddles.Wood("sugar-maple"), 30), Facing = new(TestPaddles.Wood("sugar-maple"), 0.8) };
        var report = PaddleDesigner.Design(LaminatedDesignTests.Asked(LaminatedDesignTests.CedarWings, TestPaddles.UsualSizes));
        PartStress stress = new("brace", 1200, 2, 4, 1.1);
        return report with
        {
            Specification = report.Specification with { Units = units },
            Laminate = report.Laminate! with
            {
                Laminate = laminate,
                GlueLines = up,
                Facing = hasMore ? new("sugar-maple", 0.8, stress, stress, stress, SwellingMismatch.Between(TestPaddles.Ash, TestPaddles.Ash), 1000, 500, 150, 1200) : null,
            },
        };
    }

    // A glue that harms says so, with where that was read, and is found by its class alone.
    [Fact]
    public void Every_glue_says_what_it_can_do_to_a_maker_and_to_a_paddle()
    {
        Assert.Equal(["epoxy", "polyurethane", "waterproof-pva"], Adhesive.All.Select(glue => glue.Id));
        Assert.All(Adhesive.All, glue => Assert.Same(glue, Adhesive.Find(glue.Id)));
        Assert.Null(Adhesive.Find("hide"));
        Assert.Contains("make skin allergic, for good", Adhesive.Find("epoxy")!.Caution, StringComparison.Ordinal);
        Assert.Contains("hot car", Adhesive.Find("epoxy")!.Use, StringComparison.Ordinal);
        var polyurethane = Adhesive.Find("polyurethane")!;
        Assert.Contains("isocyanates", polyurethane.Caution, StringComparison.Ordinal);
        Assert.Contains("asthma uses another glue", polyurethane.Caution, StringComparison.Ordinal);
        Assert.Contains("diisocyanates", polyurethane.CautionSource, StringComparison.Ordinal);
        var pva = Adhesive.Find("waterproof-pva")!;
        Assert.Contains("creeps under lasting load", pva.Use, StringComparison.Ordinal);
        Assert.Contains("varnished and dry", pva.Use, StringComparison.Ordinal);
        Assert.Contains("eyes and skin", pva.Caution, StringComparison.Ordinal);
        Assert.Contains("EN 204", pva.CautionSource, StringComparison.Ordinal);
        Assert.All(Adhesive.All, glue => Assert.All(new[] { glue.Name, glue.SpreadSource, glue.ClampSource }, Assert.NotEmpty));
    }
}
