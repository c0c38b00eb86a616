using Paddle.Design.Layout;
using static Paddle.Design.Tests.Layout.LayoutSamples;

namespace Paddle.Design.Tests.Layout;

public class PairTests
{
    public static TheoryData<string, string, double, double> Pairs
    {
        get
        {
            var data = new TheoryData<string, string, double, double>();
            var families = Families.ToArray();
            for (var k = 0; k < families.Length; k++)
            {
                if (k == 0) data.Add(families[k], families[k], 860, 860);
                data.Add(families[k], families[(k + 3) % families.Length], 880, 830);
            }

            return data;
        }
    }

    // A dense search over every millimetre along the board and both ways round is the optimum; two millimetres of a tip's curve are lost to
    // its own sampling at most where the grips meet.
    [Theory]
    [MemberData(nameof(Pairs))]
    public void Two_out_of_one_board_are_within_a_millimetre_of_the_optimum(string one, string other, double hand, double otherHand)
    {
        LayoutPaddle a = NewPaddle("a", hand, one), b = NewPaddle("b", otherHand, other);
        var boardMm = Math.Ceiling(Math.Max(a.LengthMm, b.LengthMm)) + 90;
        var order = Order([Board("board", boardMm, 600)], [a, b]);
        var layout = Solve(order);
        var cut = Assert.Single(layout.Boards);

        var optimum = LeastPairMm(a, b, boardMm);
        Assert.InRange(cut.UsedWidthMm, optimum - 0.5, optimum + 1);
        Assert.True(cut.LeastGapMm >= GapMm - 0.01);
        AssertSound(order, layout);
    }

    [Fact]
    public void Two_fit_a_board_that_is_half_a_millimetre_wider_than_the_optimum()
    {
        LayoutPaddle a = NewPaddle("a", 870), b = NewPaddle("b", 820);
        var optimum = LeastPairMm(a, b, 1700);
        Assert.Empty(Solve(Order([Board("board", 1700, optimum + 0.5)], [a, b])).Unplaced);
        Assert.NotEmpty(Solve(Order([Board("board", 1700, optimum - 1)], [a, b])).Unplaced);
    }

    [Fact]
    public void Blade_beside_shaft_takes_less_than_blade_beside_blade()
    {
        var paddle = NewPaddle("a", 880, count: 2);
        var layout = Solve(Order([Board("board", 1700, 600)], [paddle]));
        Assert.Equal([0, 180], layout.Placements.Select(one => one.RotatedDegrees).Order());
        Assert.Single(layout.Boards[0].HeadToTail);
        Assert.True(layout.Boards[0].UsedWidthMm < 4 * paddle.HalfWidthMm - 50);
    }
}
