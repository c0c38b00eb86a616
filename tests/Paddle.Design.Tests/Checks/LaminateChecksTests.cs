using Paddle.Design.Checks;
using Paddle.Design.Laminating;
using Paddle.Design.Tests.Laminating;
using Paddle.Design.Tests.Solid;

namespace Paddle.Design.Tests.Checks;

/// <summary>What is said of a glued-up paddle, and what can hurt, word for word.</summary>
public class LaminateChecksTests
{
    private const string Practice = "common practice, no source";
    private const string Lines = "theory J7-J9: flow from the change of the outline, followed against three-dimensional finite elements, held against shear along the grain and twice the tension across it (EN 1995-1-1, 6.1.7, from memory)";
    private const string Swells = "Wood Handbook eq. 13-2 with tangential shrinkage, an upper estimate: wood creeps; the limit is half the strength across the grain, common practice, no source";
    private const string Sheets = "theory J12-J13: transformed section, each wood at its own outermost fibre; shear VQ/(Ib)";
    private const string Alike = "Across 4 % of moisture the woods swell alike enough.";

    private static readonly LaminateReport Glued = PaddleDesigner.Design(LaminatedDesignTests.Asked(LaminatedDesignTests.CedarWings, TestPaddles.UsualSizes)).Laminate!;

    // Half of 2.4 MPa across the grain is 1.2; the worst of sheets, strips and glue is the one nearest its own least factor: 2.2/2 where 1.1 is asked, not 2.1/2 where 1 is.
    [Fact]
    public void What_holds_is_told_in_these_words()
    {
        var facing = new FacingReport("sugar-maple", 0.8, new("touring-stroke", 1200, 2, 2.1, 1), new("brace", 1200, 2, 2.2, 1.1), new("brace", 1200, 2, 9, 1.1), Swelling(1.1, 2.2), 1000, 500, 150, 1200);
        var report = Glued with { Shear = new("brace", 1200, 18, 1, 1, 1.1, 1.1), Swelling = Swelling(1.2, 2.4), SidesDifferPercent = 2, Facing = facing };
        Assert.Equal(
            [
                new("construction.glue-line", CheckStatus.Pass, 1.1, 1.1, "", "The wood beside the glue lines holds; a sound joint is as strong as the wood.", Lines),
                new("construction.swelling", CheckStatus.Pass, 1.2, 1.2, "MPa", Alike, Swells),
                new("construction.facing", CheckStatus.Pass, 1.1, 1.1, "", "Sheets, the strips under them and the glue between bear their stresses.", Sheets),
                new("construction.facing-swelling", CheckStatus.Pass, 1.1, 1.1, "MPa", Alike, Swells),
            ],
            Checks(report));
        Assert.Equal(["construction.swelling"], Checks(Glued with { Shear = null, SidesDifferPercent = 0 }).Select(check => check.Id));
    }

    [Fact]
    public void What_does_not_hold_is_told_in_these_words()
    {
        var facing = new FacingReport("sugar-maple", 0.8, new("hard-stroke", 1200, 2, 2.8, 1.3), new("brace", 1200, 2, 2.18, 1.1), new("brace", 1200, 2, 9, 1.1), Swelling(1.2, 2.2), 1000, 500, 150, 1200);
        var report = Glued with { Shear = new("brace", 1200, 18, 1, 1, 1.09, 1.1), Swelling = Swelling(1.3, 2.4), SidesDifferPercent = 2.1, Facing = facing };
        Assert.Equal(
            [
                new(
                    "construction.glue-line", CheckStatus.Fail, 1.09, 1.1, "", "The wood beside a glue line shears: move the line further out, or take a wood stronger in shear.", Lines),
                new(
                    "construction.swelling", CheckStatus.Warn, 1.3, 1.2, "MPa",
                    "Across 4 % of moisture white ash and western redcedar swell so differently that the joint or the wood beside it may open: glue them at the moisture they will "
                    + "be used at, rings the same way, and keep the finish sound.",
                    Swells),
                new(
                    "construction.facing", CheckStatus.Fail, 1.09, 1.1, "",
                    "Sheets on the faces, the strips under them or the glue between are overstressed: take thinner sheets or a less stiff wood.", Sheets),
                new(
                    "construction.facing-swelling", CheckStatus.Warn, 1.2, 1.1, "MPa",
                    "Sheets and strips swell so differently that the sheets may check or lift: glue them at the moisture they will be used at, and keep the finish sound.", Swells),
                new(
                    "construction.symmetry", CheckStatus.Warn, 2.1, 2, "percent",
                    "One side is stiffer than the other: it will warp with the weather, flex sideways and twist in the stroke. Lay the strips alike on both sides.",
                    "transformed section at the widest place; the limit is common practice, no source"),
            ],
            Checks(report));
    }

    // A piece across the tip that bears 3.5 of 5 MPa bears 70 % of the push-off; one that bears more than all of it bears it all.
    [Theory]
    [InlineData(3.5, "70")]
    [InlineData(6, "100")]
    public void Cautions_of_every_wood_come_once_then_of_the_glue_and_of_the_tip(double strengthMPa, string percent)
    {
        var cautions = LaminateChecks.Cautions(Glued with { TipPiece = new("sugar-maple", 30, new("push-off", 1600, 5, strengthMPa, 1.1)) });
        Assert.Equal(
            new Caution(
                "tip-piece",
                $"A piece across the tip takes wear, not leverage: 19 in 20 bear {percent} % of the push-off reckoned with before they break across their grain. Along its grain it hardly "
                + "swells and holds the blade's width: its joint may open in wet and dry. Keep it short, let a spline into end grain, glue it with thickened epoxy at the moisture it "
                + "will be used at, and look at it before each trip; it is there to be replaced.",
                "theory J11, strength across the grain, 5th percentile; the rest common practice, no source"),
            cautions[^1]);
        Assert.Equal(
            new Caution(
                "adhesive",
                "Uncured epoxy and its hardener make skin allergic, for good: wear nitrile gloves, keep it off the skin, never wash it off with solvent, and do not sand it before it has "
                + "cured for a week; the dust of half-cured resin sensitises too.",
                "HSE RR079 and Contact Dermatitis 10:146 (1984), as quoted, read; the week and the solvent from memory"),
            cautions[^2]);
        var ofWoods = cautions.SkipLast(2).ToList();
        Assert.Equal(ofWoods.Count, ofWoods.Select(caution => caution.Id).Distinct().Count());
        Assert.All(Design.Checks.Cautions.For("western-redcedar").Concat(Design.Checks.Cautions.For("white-ash")), caution => Assert.Contains(caution, ofWoods));
        Assert.Equal("adhesive", LaminateChecks.Cautions(Glued)[^1].Id);
    }

    [Fact]
    public void What_can_hurt_is_told_in_these_words() => Assert.Equal(
        [
            new(
                "design-aid",
                "This is a calculation, not a proof of strength. Load a new paddle on land before trusting it on the water, look for cracks, dents and lifted grain "
                + "before each trip, and carry a spare.",
                "common practice, no source"),
            new(
                "edge-tools",
                "Keep both hands behind the edge and the work clamped; a sharp tool is safer than a dull one. Follow the tool's own manual and local rules, and let a "
                + "licensed tradesperson do what you are not trained for.",
                "hand-tool booklets for worker safety, read; the rest common practice, no source"),
            new(
                "saws",
                "Use the guard, riving knife and push sticks; wear eye protection marked Z87+ or EN 166 and hearing protection. Nearly all who are hurt at table saws "
                + "are the operators, mostly their fingers.",
                "29 CFR 1910.213 and 1910.133 in summaries; CPSC investigation guideline for table saws, July 2004"),
            new(
                "oily-rags",
                "Rags, pads and sanding dust wet with drying oil or oil varnish heat by themselves and can catch fire within hours. Spread them singly outdoors to "
                + "harden, or keep them under water in a closed metal can; never in a heap or a bin.",
                "NFPA, Evarts, November 2011 (14,070 fires a year from spontaneous heating, US, 2005-2009)"),
            new(
                "solvent",
                "Thinner vapour makes you dizzy and can burn: ventilate, no flame or heater; a dust mask does not stop vapour.",
                "OSHA chemical data on mineral spirits, read; the last from memory"),
            new(
                "life-jacket",
                "Wear a fastened life jacket on the water: of drowned boaters with known use, more than four in five wore none.",
                "US Coast Guard, Recreational Boating Statistics 2019 and 2021, quoted"),
            new(
                "cold-water",
                "Dress for the water, not the air. In cold water you have about 1 minute to control your breathing, 10 minutes of useful movement and 1 hour before the "
                + "cold takes consciousness.",
                "\"1-10-1\" as taught by Canadian and US boating-safety agencies, read"),
            new(
                "wood-dust-1",
                "Wood dust causes cancer of the nose and sinuses (IARC Group 1). Take it away at the tool, and wear a P2, FFP2 or N95 mask or better; sanding is the "
                + "dustiest step.",
                "IARC Monographs volumes 62 and 100C, the first read, the second quoted; controls from memory"),
            new(
                "wood-dust-2",
                "Eight-hour limits: 1 mg/m3 (NIOSH; ACGIH, western redcedar 0.5), 2 mg/m3 for hardwood in the EU, 3 mg/m3 for hardwood and 5 mg/m3 for softwood in the "
                + "UK. A mixture counts as hardwood.",
                "EU Directive 2017/2398 as described on several pages, UK limits on a trade safety page, ACGIH redcedar limit on a hazard-map page, all read; NIOSH and "
                + "ACGIH 1 mg/m3 from memory"),
            new(
                "wood-dust-3",
                "Wipe wet or use a vacuum; never sweep dry or blow dust about: fine dust in the air can also explode.",
                "from memory (NFPA 664 on explosion)"),
            new(
                "wood-dust-4",
                "Stop and see a doctor if breathing tightens or skin breaks out: once sensitised to a wood, you stay so.",
                "from memory"),
            new(
                "stock",
                "No knot, pith, check, shake, pitch pocket, compression failure or reaction wood in the shaft, throat or grip neck. A sound pin knot no bigger than a "
                + "match head may stay in the outer third of the blade. Grain must run the full length: short grain at the throat is where paddles break.",
                "Pennsylvania Code title 34, 21.23 for ladder rungs; the zones are this service's choice"),
            new(
                "northern-red-oak-1",
                "Dust is a listed sensitiser (skin, eyes or airways).",
                "woodturners' wood toxicity chart (1990) and its sources, read in copies (secondary)"),
            new(
                "northern-red-oak-2",
                "Oak dust is classed a confirmed human carcinogen (A1).",
                "ACGIH classification, read on a wood-dust data page"),
        ],
        Design.Checks.Cautions.For("northern-red-oak"));

    private static SwellingMismatch Swelling(double stressMPa, double strengthMPa) => new("white-ash", "western-redcedar", 0.4, stressMPa, strengthMPa);

    private static IEnumerable<DesignCheck> Checks(LaminateReport report) =>
        LaminateChecks.Of(report).Select(check => check with { Value = Math.Round(check.Value, 9), Limit = Math.Round(check.Limit, 9) });
}
