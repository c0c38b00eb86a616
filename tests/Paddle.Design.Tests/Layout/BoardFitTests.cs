using Paddle.Design.Layout;
using Paddle.Design.Request;
using static Paddle.Design.Tests.Layout.LayoutSamples;

namespace Paddle.Design.Tests.Layout;

public class BoardFitTests
{
    private static DesignRequest Wish(double handMm = 840) => new() { HandSpacingMm = handMm, Wood = new() { Species = "white-ash" } };

    private static BoardFit Find(RackBoard board, DesignRequest wish, int count) => BoardFit.Find(wish, count, Order([board], []), default);

    [Fact]
    public void A_large_board_changes_nothing()
    {
        var fit = Find(Board("board", 2000, 400) with { ThicknessMm = 44.4 }, Wish(), 2);
        Assert.Equal(2, fit.Count);
        Assert.Equal(["/wood/boardThicknessMm"], fit.Changes.Select(change => change.JsonPointer));
        Assert.Equal(PaddleDesigner.Design(Wish()).Sizes, fit.Report!.Sizes);
    }

    // 1 1/8 x 8 x 66 in: a board that many have.
    [Fact]
    public void A_pair_out_of_a_narrow_board_trades_width_for_length()
    {
        var board = Board("board", 66 * 25.4, 8 * 25.4) with { ThicknessMm = 28.6 };
        var fit = Find(board, Wish(), 2);
        Assert.Equal(2, fit.Count);
        var (asked, blade) = (PaddleDesigner.Design(Wish()).Specification.Form.Blade, fit.Report!.Specification.Form.Blade);
        Assert.True(blade.WidthMm < asked.WidthMm && blade.LengthMm > asked.LengthMm);
        Assert.InRange(fit.Layout!.Boards[0].UsedWidthMm, board.WidthMm - 2, board.WidthMm);
        Assert.True(2 * fit.Report.Stations.HalfThickness.Max() <= 28.6 - 1 + 1e-9);
        Assert.True(fit.Report.Outcome.IsMet);
        AssertSound(Order([board], [LayoutPaddle.Of("paddle", fit.Report, 2, false)]), fit.Layout);
    }

    [Fact]
    public void A_short_board_shortens_the_blade_and_keeps_the_hands_apart()
    {
        var fit = Find(Board("board", 1400, 300), Wish(), 1);
        Assert.Equal(1400, fit.Report!.Specification.Form.Places.OverallMm, 1.0);
        Assert.Equal(840, fit.Report.Specification.Form.Places.HandSpacingMm, 1e-6);
        Assert.Contains(fit.Changes, change => change.JsonPointer == "/blade/lengthMm" && change.Allowed < change.Asked);
    }

    [Fact]
    public void Fewer_come_out_of_a_board_than_wished_and_none_of_one_too_short()
    {
        var fewer = Find(Board("board", 1600, 200), Wish(), 3);
        Assert.InRange(fewer.Count, 1, 2);
        Assert.NotEmpty(fewer.Reasons);
        var none = Find(Board("board", 1100, 200), Wish(), 2);
        Assert.Equal(0, none.Count);
        Assert.Null(none.Report);
        Assert.Contains("too short", none.Reasons[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void The_grain_of_the_board_is_reckoned_with()
    {
        var fit = Find(Board("board", 1700, 300) with { GrainSlope = 0.06 }, Wish(), 1);
        Assert.Equal(0.06, fit.Report!.Specification.Wood.SlopeOfGrain, 6);
        Assert.Contains(fit.Changes, change => change.JsonPointer == "/wood/slopeOfGrain");
    }
}
