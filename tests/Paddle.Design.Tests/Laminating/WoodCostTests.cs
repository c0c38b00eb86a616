using Paddle.Design.Laminating;
using Paddle.Design.Request;

namespace Paddle.Design.Tests.Laminating;

public class WoodCostTests
{
    private static DesignRequest Ask(double? ash, double? cedar) => new()
    {
        HandSpacingMm = 880,
        Wood = new() { Species = "white-ash", PricePerBoardFoot = ash },
        Construction = new() { Kind = "laminated", Strips = [new() { WidthMm = 36 }, new() { Species = "western-redcedar", WidthMm = 60, PricePerBoardFoot = cedar }] },
    };

    // The trade's rule for board feet worked by hand from the strip list (theory N5): inches multiplied, thinner than one counted as one, over 144.
    [Fact]
    public void Board_feet_and_cost_of_both_ways_by_hand()
    {
        var report = PaddleDesigner.Design(Ask(8, 5));
        static double Feet(StripToCut strip) => strip.Count * strip.LengthMm / 25.4 * (strip.BoardWidthMm / 25.4) * Math.Max(1, (strip.ThicknessMm + 1) / 25.4) / 144;
        var strips = report.Laminate!.GlueLines.Strips;
        var row = LaminateComparison.Row(report);
        Assert.Equal(strips.Sum(Feet), row.BoardFeet, 1e-9);
        Assert.Equal(strips.Sum(strip => Feet(strip) * (strip.Species == "white-ash" ? 8 : 5)), row.WoodCost!.Value, 1e-9);

        // A board of one piece: some 63 in long, 6 in wide and 1 1/4 in thick.
        var one = LaminateComparison.OnePiece(report.Specification);
        Assert.InRange(one.BoardFeet, 2.9, 3.8);
        Assert.Equal(8 * one.BoardFeet, one.WoodCost!.Value, 1e-9);
        Assert.Equal((4, 0), (row.GlueLines, one.GlueLines));
        Assert.True(row.BoardFeet < one.BoardFeet, "strips leave the shaft's corners in the rack");
    }

    [Fact]
    public void Without_a_price_there_is_no_cost_and_no_other_figure_moves()
    {
        var (priced, bare) = (PaddleDesigner.Design(Ask(8, 5)), PaddleDesigner.Design(Ask(8, null)));
        Assert.Null(LaminateComparison.Row(bare).WoodCost);
        Assert.NotNull(LaminateComparison.OnePiece(bare.Specification).WoodCost);
        Assert.Equal(priced.Sizes, bare.Sizes);
        Assert.Equal(priced.Mass, bare.Mass);
    }
}
