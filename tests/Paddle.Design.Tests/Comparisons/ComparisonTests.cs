using Paddle.Design.Comparison;
using Paddle.Design.Outline;
using Paddle.Design.Tests.Build;
using Paddle.Design.Tests.Laminating;
using Paddle.Design.Units;

namespace Paddle.Design.Tests.Comparisons;

/// <summary>Designs side by side, figure for figure and word for word: who chooses between two reads these.</summary>
public class ComparisonTests
{
    private const string Nothing = "Nothing that a hand, a scale or a tape would notice.";

    // As a report gives them: mass to 0.1 g, lengths to 0.01 mm, sizes to 0.001 mm, inertia to 0.0001 kg·m². Less weight, swing, force on the hand and slip,
    // and more safety, are better; of the balance what is nearer its aim on either side; of lengths, sizes and flex nothing is.
    [Fact]
    public void Every_figure_has_its_place_its_unit_its_value_and_its_best()
    {
        var found = DesignComparison.Of([new("a", A), new("b", B), new("c", A)], DrawingUnits.Metric).Figures;
        Assert.Equal(
            [
                ("/mass/finishedG", "Weight, finished", "g", "less", 600.0, 640.1, "a, c", "b"),
                ("/lengths/overallMm", "Overall length", "mm", null, 1500.12, 1503.12, "", ""),
                ("/lengths/bladeMm", "Blade length", "mm", null, 500.12, 503.12, "", ""),
                ("/design/blade/widthMm", "Blade width", "mm", null, 200, 202, "", ""),
                ("/stroke/bladeAreaCm2", "Blade area", "cm²", null, 700, 705, "", ""),
                ("/sizes/shaftWidthMm", "Shaft width at the lower hand", "mm", null, 28.123, 28.833, "", ""),
                ("/sizes/shaftThicknessMm", "Shaft thickness at the lower hand", "mm", null, 30.123, 30.833, "", ""),
                ("/sizes/middleThicknessMm", "Thickness at mid-blade", "mm", null, 10.123, 10.533, "", ""),
                ("/sizes/edgeThicknessMm", "Blade edge", "mm", null, 4.123, 3.8, "", ""),
                ("/balance/offsetMm", "Balance from the aim, finished", "mm", "nearer-nothing", 3.12, -4.12, "a, c", "b"),
                ("/mass/finishedInertiaLowerHandKgM2", "Swing about the lower hand", "kg·m²", "less", 0.1501, 0.14, "b", "a, c"),
                ("/strength/minimumSafetyFactor", "Least safety factor", null, "more", 1.501, 1.552, "b", "a, c"),
                ("/flex/benchFlexMm", "Bench flex", "mm", null, 10.12, 10.53, "", ""),
                ("/stroke/topHandForceN", "Top-hand force, easy stroke", "N", "less", 60.1, 61.1, "a, c", "b"),
                ("/stroke/lowerHandMomentNm", "Moment at the lower hand, easy stroke", "N·m", "less", 40.12, 41, "a, c", "b"),
                ("/stroke/slipSpeedMS", "Slip through the water", "m/s", "less", 0.912, 0.8, "b", "a, c"),
                ("/stroke/froudeEfficiency", "Share of the power that moves the boat", null, "more", 0.712, 0.75, "b", "a, c"),
                ("/stroke/immersionMm", "Depth that covers the blade", "mm", "less", 400.12, 405.12, "a, c", "b"),
            ],
            found.Select(one => (one.Pointer, one.Name, one.Unit, one.Better, one.Values[0], one.Values[1], string.Join(", ", one.Best), string.Join(", ", one.Worst))));
        Assert.All(found, one => Assert.Equal(one.Values[0], one.Values[2]));
    }

    // 40.1 g of 600 are 7 %, of 640.1 6 %; 40.1 g are 1.41 oz; 5 cm² are 0.78 in²; 3 mm 3.8 and 2 mm 2.5, 0.71 mm 0.9 thirty-seconds; 3.12 and 4.12 mm 2.0 and 2.6
    // sixteenths.
    [Fact]
    public void More_and_less_are_told_in_the_shops_units()
    {
        var b = B with { Specification = B.Specification with { Wood = B.Specification.Wood with { Species = "white-ash" } }, Outcome = new([new("mass", 1, 2, "g", "Too heavy.", "")]) };
        var told = DesignComparison.Of([new("a", A), new("b", b), new("c", A)], DrawingUnits.Metric).Differences;
        Assert.Equal([("b", "a"), ("c", "a")], told.Select(one => (one.Id, one.Than)));
        Assert.Equal([Nothing], told[1].Sentences);
        Assert.Equal(
            [
                "Wood: white ash, not black cherry.", "Blade: ottertail, not beavertail.", "It is 40 g (7 %) heavier.", "It is 3 mm longer.", "Its blade is 3 mm longer.", "Its blade is 2 mm wider.",
                "It has 5 cm² (1 %) more blade.", "Its shaft is 0.7 mm wider.", "Its shaft is 0.7 mm thicker.", "It is 0.4 mm thicker at mid-blade.",
                "Its least safety factor is 0.05 higher.", "It gives 0.4 mm (4 %) more on the bench.", "It asks 1 N more of the top hand in an easy stroke.",
                "It wants 5 mm more depth of water.",
                "Finished it balances 4 mm from the lower hand towards the grip, not 3 mm from the lower hand towards the blade.", "It misses an aim: Too heavy.",
            ],
            told[0].Sentences);
        Assert.Equal(
            [
                "Wood: black cherry, not white ash.", "Blade: beavertail, not ottertail.", "It is 1.4 oz (40 g) (6 %) lighter.", "It is 1/8 in shorter.", "Its blade is 1/8 in shorter.", "Its blade is 3/32 in narrower.",
                "It has 1 in² (1 %) less blade.", "Its shaft is 1/32 in narrower.", "Its shaft is 1/32 in thinner.", "It is 1/32 in thinner at mid-blade.",
                "Its least safety factor is 0.05 lower.", "It gives 1/32 in (4 %) less on the bench.", "It asks 1 N less of the top hand in an easy stroke.",
                "It wants 3/16 in less depth of water.",
                "Finished it balances 1/8 in from the lower hand towards the blade, not 3/16 in from the lower hand towards the grip.", "It meets every aim.",
            ],
            DesignComparison.Of([new("b", b), new("a", A)], DrawingUnits.Inch).Differences[0].Sentences);
    }

    // Just under 5 g, 3 mm of length, 2 of width, 5 cm², 0.7 mm of shaft, 0.4 of blade and flex, 0.05, 1 N, 5 mm: what no hand, scale or tape tells apart.
    [Fact]
    public void What_nobody_would_notice_is_not_told()
    {
        var like = Changed(A, massG: 4.9, lengthMm: 2.9, widthMm: 1.9, areaCm2: 4.9, shaftMm: 0.69, thinMm: 0.39, factor: 0.049, forceN: 0.9, depthMm: 4.9, balanceMm: 0.3, edgeMm: 1);
        Assert.Equal([Nothing], Sentences(like, A));
        Assert.Equal([Nothing], Sentences(A, like));
        Assert.Equal(["It asks 12 N more of the top hand in an easy stroke."], Sentences(Changed(A, forceN: 12.4), A));
        Assert.Equal(["It asks 9.6 N less of the top hand in an easy stroke."], Sentences(Changed(A, forceN: -9.6), A));
        var (at, off) = (Changed(A, balanceMm: -2.7), Changed(A, balanceMm: -2.6));
        Assert.Equal(["Finished it balances at the lower hand, not 3 mm from the lower hand towards the blade."], Sentences(at, A));
        Assert.Equal(["Finished it balances 1 mm from the lower hand towards the blade, not at the lower hand."], Sentences(off, at));
    }

    [Fact]
    public void Strips_and_a_table_of_offsets_are_called_so()
    {
        var (asked, form) = (A.Specification, A.Specification.Form);
        var glued = A with { Specification = asked.GluedUp(LaminatedDesignTests.CedarWings) };
        Assert.Equal(["Wood: glued-up strips, not black cherry."], Sentences(glued, A));
        var own = A with { Specification = asked with { Form = form with { Blade = form.Blade with { Family = null, Offsets = [new(0, 15), new(150, 60), new(300, 100), new(500.123, 0)] } } } };
        Assert.Equal(["Blade: own offsets, not beavertail."], Sentences(own, A));
    }

    private static IReadOnlyList<string> Sentences(DesignReport one, DesignReport first) => DesignComparison.Of([new("first", first), new("one", one)], DrawingUnits.Metric).Differences[0].Sentences;

    private static DesignReport A { get; } = Made(
        "beavertail", massG: 600.04, overallMm: 1500.123, bladeMm: 500.123, widthMm: 200, areaCm2: 700.04, [28.1234, 30.1234, 10.1234, 4.1234], offsetMm: 3.123, inertia: 0.15012,
        factor: 1.5012, benchMm: 10.123, forceN: 60.12, momentNm: 40.123, slipMS: 0.9123, share: 0.7123, depthMm: 400.123);

    private static DesignReport B { get; } = Made(
        "ottertail", massG: 640.06, overallMm: 1503.123, bladeMm: 503.123, widthMm: 202, areaCm2: 705.04, [28.8334, 30.8334, 10.5334, 3.8], offsetMm: -4.123, inertia: 0.14,
        factor: 1.552, benchMm: 10.533, forceN: 61.12, momentNm: 41, slipMS: 0.8, share: 0.75, depthMm: 405.123);

    private static DesignReport Made(
        string family, double massG, double overallMm, double bladeMm, double widthMm, double areaCm2, double[] sizes, double offsetMm, double inertia, double factor, double benchMm,
        double forceN, double momentNm, double slipMS, double share, double depthMm)
    {
        var report = BuildSamples.Cherry;
        var (asked, form) = (report.Specification, report.Specification.Form);
        return report with
        {
            Specification = asked with
            {
                Form = form with
                {
                    Places = new(17, 95, 900, overallMm - bladeMm, overallMm),
                    Blade = form.Blade with { Family = BladeFamilies.Find(family), LengthMm = bladeMm, WidthMm = widthMm },
                },
            },
            Finished = report.Finished with { MassG = massG, CentreOfMassMm = 900 + offsetMm, InertiaLowerHandKgM2 = inertia },
            Sizes = report.Sizes with { ShaftWidthMm = sizes[0], ShaftThicknessMm = sizes[1], MiddleThicknessMm = sizes[2], EdgeThicknessMm = sizes[3] },
            Balance = report.Balance with { TargetMm = 900, ActualMm = 900 + offsetMm },
            Strength = report.Strength with { Cases = [report.Strength.Cases[0] with { StressMPa = 20, StrengthMPa = 20 * factor }] },
            Flex = report.Flex with { BenchFlexMm = benchMm },
            Stroke = report.Stroke with { BladeAreaCm2 = areaCm2, TopHandForceN = forceN, LowerHandMomentNm = momentNm, SlipSpeedMS = slipMS, FroudeEfficiency = share, ImmersionMm = depthMm },
            Outcome = new([]),
        };
    }

    private static DesignReport Changed(
        DesignReport report, double massG = 0, double lengthMm = 0, double widthMm = 0, double areaCm2 = 0, double shaftMm = 0, double thinMm = 0, double factor = 0, double forceN = 0,
        double depthMm = 0, double balanceMm = 0, double edgeMm = 0)
    {
        var (form, sizes) = (report.Specification.Form, report.Sizes);
        return Made(
            form.Blade.Family!.Id, report.Finished.MassG + massG, form.Places.OverallMm + lengthMm, form.Blade.LengthMm + lengthMm, form.Blade.WidthMm + widthMm,
            report.Stroke.BladeAreaCm2 + areaCm2, [sizes.ShaftWidthMm + shaftMm, sizes.ShaftThicknessMm + shaftMm, sizes.MiddleThicknessMm + thinMm, sizes.EdgeThicknessMm + edgeMm],
            report.Balance.OffsetMm + balanceMm, report.Finished.InertiaLowerHandKgM2, report.Strength.MinimumSafetyFactor + factor, report.Flex.BenchFlexMm + thinMm,
            report.Stroke.TopHandForceN + forceN, report.Stroke.LowerHandMomentNm, report.Stroke.SlipSpeedMS, report.Stroke.FroudeEfficiency, report.Stroke.ImmersionMm + depthMm);
    }
}
