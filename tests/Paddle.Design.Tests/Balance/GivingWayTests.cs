using Paddle.Design.Balance;
using Paddle.Design.Outline;
using Paddle.Design.Strength;
using Paddle.Design.Tests.Validation;

namespace Paddle.Design.Tests.Balance;

/// <summary>When an aim cannot be met, only that one gives way.</summary>
public class GivingWayTests
{
    private static readonly BladeFamily Ottertail = BladeFamilies.Find("ottertail")!;

    // A throat pinned too thin is hopeless there; the shaft above it, which the pin does not touch, must still be strong everywhere.
    [Theory]
    [InlineData("ottertail", "black-cherry", 16)]
    [InlineData("square-tip", "black-cherry", 14)]
    [InlineData("beavertail", "sitka-spruce", 15)]
    public void A_hopeless_throat_leaves_the_shaft_strong_and_the_paddle_balanced(string family, string wood, double throatMm)
    {
        var report = PracticeTable.Design(BladeFamilies.Find(family)!, wood, pinned: new(ThroatThicknessMm: throatMm));
        Assert.True(report.Outcome.IsTooWeak);
        Assert.All(report.Outcome.Unmet, aim => Assert.True(aim.IsStrength, aim.Message));
        Assert.True(ShaftMargin(report) >= 0.995, $"shaft {ShaftMargin(report):0.000}");
    }

    // Stiffer than any shape can be: flex gives way, the foremost in the order; strength and balance stay.
    [Fact]
    public void An_impossible_flex_is_missed_alone()
    {
        var easy = PracticeTable.Design(Ottertail, "white-ash");
        var stiff = PaddleDesigner.Design(easy.Specification with { Aims = easy.Specification.Aims with { MostBenchFlexMm = 1 } });
        Assert.Equal(["flex.most"], stiff.Outcome.Unmet.Select(aim => aim.Code));
        Assert.True(stiff.Flex.BenchFlexMm < easy.Flex.BenchFlexMm);
        Assert.Contains(stiff.Balance.BindingLimits, limit => limit.GainUnit == "mm of flex");
    }

    // A short blade under long arms cannot balance at the lower hand: it says how far off it is and what would close it, by statics.
    [Fact]
    public void A_balance_out_of_reach_is_named_and_priced()
    {
        var report = PracticeTable.Design(BladeFamilies.Find("teardrop")!, "black-cherry", handSpacingMm: 1000);
        var unmet = Assert.Single(report.Outcome.Unmet);
        Assert.Equal("balance", unmet.Code);
        Assert.False(report.Balance.Achieved);
        var (balance, mass) = (report.Balance, report.Finished);
        Assert.Equal(
            balance.TargetMm, (mass.MassG * mass.CentreOfMassMm + balance.BallastG * balance.BallastAtMm) / (mass.MassG + balance.BallastG), 1e-9);
        Assert.Contains($"{balance.BallastG:0} g", unmet.Message, StringComparison.Ordinal);
        Assert.InRange(report.Sizes.MiddleThicknessMm, 9, 14); // what makers carve, ballast or not
    }

    // "No shape is strong enough" is said only where the solver had all sizes to choose.
    [Fact]
    public void What_is_said_of_a_weak_paddle_depends_on_who_chose_its_sizes()
    {
        var free = PracticeTable.Design(BladeFamilies.Find("voyageur")!, "western-redcedar", duty: Duty.Racing);
        Assert.Contains("No shape within what makers carve", Advice(free), StringComparison.Ordinal);
        var some = PracticeTable.Design(Ottertail, "black-cherry", pinned: new(ShaftWidthMm: 23, ShaftThicknessMm: 23));
        Assert.Contains("with the sizes you fixed", Advice(some), StringComparison.Ordinal);
        var all = PracticeTable.Design(Ottertail, "black-cherry", pinned: PinnedSizes.To(some.Sizes));
        Assert.StartsWith("Do not build it so", Advice(all), StringComparison.Ordinal);
    }

    // A design read back from its code says the same of its limits and its aims as when it was solved.
    [Theory]
    [InlineData("ottertail", "black-cherry", 889)]
    [InlineData("teardrop", "white-ash", 1000)]
    public void Read_back_with_every_size_pinned_it_says_the_same(string family, string wood, double handSpacingMm)
    {
        var solved = PracticeTable.Design(BladeFamilies.Find(family)!, wood, handSpacingMm);
        var again = PaddleDesigner.Design(solved.Specification with { Pinned = PinnedSizes.To(solved.Sizes), SolvedBefore = solved.Specification.Free });
        Assert.Equal(solved.Balance.BindingLimits, again.Balance.BindingLimits);
        Assert.Equal(solved.Outcome.Unmet, again.Outcome.Unmet);
        Assert.Equal(solved.Sizes, again.Sizes);
    }

    // A limit's worth, by solving again with it moved a little (finite difference on a fine lattice): grams saved a millimetre, to 15 %
    // (limits take turns).
    [Fact]
    public void A_limit_is_worth_what_moving_it_saves()
    {
        var report = PaddleDesigner.Design(PracticeTable.Design(Ottertail, "white-ash").Specification with { LatticeMm = 0.001 });
        var worth = report.Balance.BindingLimits.First(limit => limit.Id == "grip.thicknessMm.min");
        double At(double gripMm) => PaddleDesigner.Design(report.Specification with { Pinned = new(GripThicknessMm: gripMm) }) switch
        {
            var design => design.Mass.TotalG + BallastPrice.Of(design.Balance.OffsetMm).PriceG,
        };
        var saved = (At(22.4) - At(22)) / 0.4;
        Assert.Equal(worth.Gain, saved, 0.15 * worth.Gain);
    }

    [Fact]
    public void The_price_of_balance_is_smooth_and_never_more_than_three_grams_a_millimetre()
    {
        const double Step = 1e-6;
        for (var off = -40.0; off <= 40; off += 0.37)
        {
            var (price, rate) = BallastPrice.Of(off);
            var difference = (BallastPrice.Of(off + Step).PriceG - BallastPrice.Of(off - Step).PriceG) / (2 * Step);
            Assert.Equal(difference, rate, 1e-6);
            Assert.InRange(Math.Abs(rate), 0, BallastPrice.MostGPerMm);
            Assert.Equal(BallastPrice.Of(-off).PriceG, price, 1e-12);
        }
    }

    private static string Advice(DesignReport report) => report.Outcome.Unmet.First(aim => aim.IsStrength).Advice;

    private static double ShaftMargin(DesignReport report)
    {
        var (solid, loads, wood) = (report.Stations, report.Specification.Loads, report.Specification.Wood);
        var pressure = BladePressure.On(solid);
        var moments = new double[solid.Count];
        var least = double.PositiveInfinity;
        foreach (var loadCase in loads.AlongTheGrain)
        {
            BendingMoments.Fill(solid, pressure, loadCase, report.Strength.BucklingLoadN, moments);
            for (var i = 0; i <= solid.Grid.FirstBladePlace; i++)
            {
                var (stress, _) = StrengthCheck.StressMPa(solid, i, moments[i], loadCase.ThrustN);
                if (stress <= 0) continue;
                var strength = wood.BendingStrengthMPa * StrengthCheck.StrengthShare(solid, i, loadCase, wood);
                least = Math.Min(least, strength / stress / loadCase.LeastFactor);
            }
        }

        return least;
    }
}
