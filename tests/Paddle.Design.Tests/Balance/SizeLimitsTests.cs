using Paddle.Design.Balance;
using Paddle.Design.Solid;

namespace Paddle.Design.Tests.Balance;

/// <summary>Between what each size may lie, figure for figure: theory B2 and B3, common practice, no source.</summary>
public class SizeLimitsTests
{
    [Fact]
    public void Every_size_lies_between_what_hands_like_and_tools_hold()
    {
        Assert.Equal(
            [
                ("shaft.widthMm", 25, 34, 25, 36, 20, 45), ("shaft.thicknessMm", 26, 36, 26, 40, 20, 45), ("shaft.upperWidthMm", 22, 30, 22, 30, 18, 45),
                ("shaft.upperThicknessMm", 22, 30, 22, 30, 18, 45), ("blade.throatThicknessMm", 18, 34, 18, 36, 10, 45), ("blade.middleThicknessMm", 9, 14, 9, 16, 4, 40),
                ("blade.tipThicknessMm", 5, 8.5, 5, 8.5, 3, 30), ("blade.edgeThicknessMm", 3.5, 5.5, 3.5, 5.5, 1.5, 20), ("grip.thicknessMm", 22, 30, 22, 30, 18, 50),
            ],
            SizeLimits.Rows.Select(row => (row.Name, row.Hardwood.Min, row.Hardwood.Max, row.Softwood.Min, row.Softwood.Max, row.Pinned.Min, row.Pinned.Max)));

        // 28 mm fill the lower hand and 7/8 in the hand below the grip; 3/8 in stay between hollows; 5 mm thinner by the throat at most, 2 from the middle to the tip
        // at least, 1 to 3 mm from the tip to the edge, 7 mm from the lower hand to the grip at most.
        Assert.Equal((28, 22.2, 9.5, 5), (SizeLimits.LeastMeanAtLowerHandMm, SizeLimits.LeastMeanAtGripMm, SizeLimits.LeastGripCoreMm, SizeLimits.MostThroatThinningMm));
        Assert.Equal(
            (2, 1, 3, 7, 1.25),
            (SizeLimits.LeastLowerThinningMm, SizeLimits.LeastTipOverEdgeMm, SizeLimits.MostTipOverEdgeMm, SizeLimits.MostTaperMm, SizeLimits.MostOval));
    }

    // A board of which 25.07 mm are left holds 25.0 mm by the caliper and 31 thirty-seconds, 24.61 mm, by the rule; widths are sawn out of its face. One of which
    // 20 mm are left is thinner than the least shaft and grip: these take what it has. On a rule 26 mm are 33 thirty-seconds, 36 are 45, 34 are 43.
    [Fact]
    public void No_thickness_is_more_than_the_board_leaves()
    {
        const double Rule = 25.4 / 32;
        Design.Outline.Range[] free = SizeLimits.For(false, 1, null, 0.1), held = SizeLimits.For(false, 1, 25.07, 0.1), thin = SizeLimits.For(true, 1, 20, 0.1);
        Assert.Equal(
            [new(25, 34), new(26, 36), new(22, 30), new(22, 30), new(18, 34), new(9, 14), new(5, 8.5), new(3.5, 5.5), new(22, 30)], Rounded(free));
        Assert.Equal(
            [new(25, 34), new(25, 25), new(22, 30), new(22, 25), new(18, 25), new(9, 14), new(5, 8.5), new(3.5, 5.5), new(22, 25)], Rounded(held));
        Assert.Equal(
            [new(25, 36), new(20, 20), new(22, 30), new(20, 20), new(18, 20), new(9, 16), new(5, 8.5), new(3.5, 5.5), new(20, 20)], Rounded(thin));
        Assert.Equal(Of(new(33 * Rule, 45 * Rule)), Of(SizeLimits.For(false, 1, null, Rule)[PaddleSizes.Shaft]));
        Assert.Equal(Of(new(31 * Rule, 31 * Rule)), Of(SizeLimits.For(false, 1, 25.07, Rule)[PaddleSizes.Shaft]));
        Assert.Equal(31 * Rule, SizeLimits.ThickestMm(25.07, Rule), 6);
        Assert.Equal((25.0, 25.1), (SizeLimits.ThickestMm(25.07, 0.1), SizeLimits.ThickestMm(25.1, 0.1)));

        Assert.Equal((30.0, 25.0, 30.0), (SizeLimits.ThickestGripMm(null, 0.1), SizeLimits.ThickestGripMm(25.07, 0.1), SizeLimits.ThickestGripMm(40, 0.1)));
        Assert.Equal((18.0, 45.0), Of(SizeLimits.PinnedOn(PaddleSizes.Shaft, 18.03, 0.1)));
        Assert.Equal((20.0, 45.0), Of(SizeLimits.PinnedOn(PaddleSizes.Shaft, 30, 0.1)));
        Assert.Equal((20.0, 45.0), Of(SizeLimits.PinnedOn(PaddleSizes.ShaftWidth, 18.03, 0.1)));
    }

    // 0.8 of an adult's: 25 becomes 20 mm, 26 20.8, 22 the least that may be pinned, 18, for 17.6; spine and edges shrink at the other end too: 14 to 11.2, 8.5 to 6.8,
    // 5.5 to 4.4. On a rule 18 mm lie between 22 and 23 thirty-seconds: the next one up may still be pinned.
    [Fact]
    public void A_small_paddle_has_its_share()
    {
        Assert.Equal(
            [new(20, 34), new(20.8, 36), new(18, 30), new(18, 30), new(14.4, 34), new(7.2, 11.2), new(4, 6.8), new(2.8, 4.4), new(18, 30)], Rounded(SizeLimits.For(false, 0.8, null, 0.1)));
        Assert.Equal(Math.Round(23 * 25.4 / 32, 6), Rounded(SizeLimits.For(false, 0.8, null, 25.4 / 32))[PaddleSizes.Grip].Min);
        Assert.Equal(742, SizeLimits.SmallSpacingMm);
    }

    private static Design.Outline.Range[] Rounded(Design.Outline.Range[] ranges) => [.. ranges.Select(range => new Design.Outline.Range(Math.Round(range.Min, 6), Math.Round(range.Max, 6)))];

    private static (double Min, double Max) Of(Design.Outline.Range range) => (Math.Round(range.Min, 6), Math.Round(range.Max, 6));
}
