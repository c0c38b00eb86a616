using Paddle.Design.Boards;
using Paddle.Design.Build;
using Paddle.Design.Checks;
using Paddle.Design.Tests.Build;
using Paddle.Design.Units;

namespace Paddle.Design.Tests.Boards;

public class BoardNeedTests
{
    [Theory]
    [InlineData(27, false, 33.3)]
    [InlineData(26, false, 27.0)]
    [InlineData(28, true, 31.75)]
    [InlineData(32, true, 38.1)]
    [InlineData(32, false, 33.3)]
    [InlineData(44, false, 45)]
    [InlineData(32.3, false, 33.3)]
    [InlineData(32.301, false, 44.4)]
    [InlineData(18.05, true, 19.05)]
    public void A_board_is_the_next_standard_thickness(double thickest, bool softwood, double expected) =>
        Assert.Equal(expected, BoardNeed.For(thickest, softwood).Stock.ThicknessMm, 9);

    // Thicknesses of hardwood: 5/4 surfaced 1 1/16 in (27.0 mm), rough 1 3/16 in (30.2 mm) at least, suppliers' charts and pages built on the
    // hardwood grading rules; of softwood: nominal 1 1/4 dressed 1 in, PS 20. A shaft of 1 1/8 in (28.575 mm) needs 6/4.
    [Theory]
    [InlineData(25.9, false, FiveQuarterVerdict.Surfaced)]
    [InlineData(26.0, false, FiveQuarterVerdict.Surfaced)]
    [InlineData(27.0, false, FiveQuarterVerdict.Rough)]
    [InlineData(28.0, false, FiveQuarterVerdict.Rough)]
    [InlineData(28.2, false, FiveQuarterVerdict.Rough)]
    [InlineData(28.21, false, FiveQuarterVerdict.No)]
    [InlineData(28.575, false, FiveQuarterVerdict.No)]
    [InlineData(30.0, false, FiveQuarterVerdict.No)]
    [InlineData(24.4, true, FiveQuarterVerdict.Surfaced)]
    [InlineData(27.0, true, FiveQuarterVerdict.No)]
    public void Five_quarter_stock_holds_what_is_left_after_planing(double thickest, bool softwood, FiveQuarterVerdict expected)
    {
        var need = BoardNeed.For(thickest, softwood);
        Assert.Equal(expected, need.Verdict);
        foreach (var units in Enum.GetValues<DrawingUnits>())
        {
            var words = need.InWords(units);
            Assert.Contains(expected == FiveQuarterVerdict.No ? "5/4 stock does not suffice" : "5/4 stock suffices", words);
            Assert.Contains(need.Stock.Name, words);
            Assert.DoesNotContain(units == DrawingUnits.Inch ? " mm" : " in ", words);
        }
    }

    // A maker is sent to a shop with these words.
    [Theory]
    [InlineData(18, true, "The thickest section is 18 mm, so that a surfaced board must be 19 mm: 5/4 stock suffices, and softwood nominal 1, surfaced (19.1 mm) does too.")]
    [InlineData(24, true, "The thickest section is 24 mm, so that a surfaced board must be 25 mm: 5/4 stock suffices, softwood nominal 1-1/4, surfaced (25.4 mm).")]
    [InlineData(27, false, "The thickest section is 27 mm, so that a surfaced board must be 28 mm: 5/4 stock suffices only rough (30.2 mm at least) and flat, planed 1 mm a face at home; surfaced, take hardwood 6/4 S2S (33.3 mm). State your board's thickness to have a paddle that a thinner one holds.")]
    [InlineData(44, false, "The thickest section is 44 mm, so that a surfaced board must be 45 mm: 5/4 stock does not suffice (27 mm surfaced), take planed from rough stock (45 mm). State your board's thickness to have a paddle that a thinner one holds.")]
    public void The_board_to_buy_is_said_in_words(double thickest, bool softwood, string words) =>
        Assert.Equal(words, BoardNeed.For(thickest, softwood).InWords(DrawingUnits.Metric));

    [Fact]
    public void Without_a_board_the_check_says_which_to_buy_and_is_the_sheets_own()
    {
        var report = BuildSamples.Cherry;
        var check = Check(report);
        var blank = BuildSheet.For(report).Blank;
        Assert.Equal(CheckStatus.Pass, check.Status);
        Assert.Equal(blank.ThickestSectionMm + 1, check.Value, 1e-9);
        Assert.Equal(blank.ThicknessMm, check.Limit, 1e-9);
        Assert.Contains(blank.Stock, check.Message);
    }

    [Fact]
    public void A_stated_board_holds_every_thickness_and_where_it_binds_it_says_what_it_costs()
    {
        var free = BuildSamples.Cherry;
        var thin = PaddleDesigner.Design(free.Specification with { BoardThicknessMm = 2 * free.Stations.HalfThickness.Max() - 1 });
        var check = Check(thin);
        Assert.Equal(CheckStatus.Pass, check.Status);
        Assert.True(2 * thin.Stations.HalfThickness.Max() <= thin.Specification.BoardThicknessMm - 1 + 1e-9);
        Assert.Contains(thin.Balance.BindingLimits, limit => limit.Id == "wood.boardThicknessMm");
        Assert.Matches("It holds the design back: each millimetre more would (save|raise|bring)", check.Message);
        Assert.DoesNotContain("boardThickness", check.Message);

        var inInches = PaddleDesigner.Design(thin.Specification with { Units = DrawingUnits.Inch });
        Assert.Contains("each sixteenth of an inch more", Check(inInches).Message);

        var thick = PaddleDesigner.Design(free.Specification with { BoardThicknessMm = 44.4 });
        Assert.Equal(free.Sizes, thick.Sizes);
        Assert.DoesNotContain("holds the design back", Check(thick).Message);
    }

    [Theory]
    [InlineData(29.0, CheckStatus.Pass)]
    [InlineData(28.5, CheckStatus.Warn)]
    [InlineData(27.5, CheckStatus.Fail)]
    public void A_board_too_thin_for_what_is_pinned_is_spoken_of(double board, CheckStatus expected)
    {
        var asked = BuildSamples.Cherry.Specification;
        var report = PaddleDesigner.Design(asked with
        {
            BoardThicknessMm = board,
            Pinned = PinnedSizes.To(BuildSamples.Cherry.Sizes with
            {
                ShaftThicknessMm = 28,
                ThroatThicknessMm = 22,
                UpperThicknessMm = 23,
                GripThicknessMm = 24,
            })
        });
        Assert.Equal(expected, Check(report).Status);
    }

    [Fact]
    public void The_outcome_is_said_in_either_shops_words()
    {
        var asked = BuildSamples.Cherry.Specification;
        var weak = PaddleDesigner.Design(asked with { Pinned = new(ShaftWidthMm: 23, ShaftThicknessMm: 23) });
        Assert.True(weak.Outcome.IsTooWeak);
        Assert.Same(weak.Outcome, weak.OutcomeIn(DrawingUnits.Metric));
        var inches = weak.OutcomeIn(DrawingUnits.Inch);
        Assert.Equal(weak.Outcome.Unmet.Select(aim => (aim.Code, aim.Value, aim.Limit, aim.Advice)), inches.Unmet.Select(aim => (aim.Code, aim.Value, aim.Limit, aim.Advice)));
        Assert.All(weak.Outcome.Unmet, aim => Assert.Contains(" mm", aim.Message));
        Assert.All(inches.Unmet, aim => Assert.DoesNotContain(" mm", aim.Message));
    }

    private static DesignCheck Check(DesignReport report) => report.Checks.Single(check => check.Id == "board.stock");
}
