using Paddle.Design.Fitting;

namespace Paddle.Design.Tests.Fitting;

public class LengthRulesTests
{
    // Worked example: stature 1756, hand breadth 88, seat 130 above water, blade 600, freeboard 38, grip 20, hand spacing 892.
    [Fact]
    public void Rules_give_the_worked_example()
    {
        Assert.Equal(1594, LengthRules.BarOnHeadMm(20, 892, 88, 38, 600), 0.5);
        Assert.Equal(1528, LengthRules.FloorToChinMm(1756), 0.5);
        Assert.Equal(1598, LengthRules.FloorToNoseMm(1756), 0.5);
        Assert.Equal(1360, LengthRules.NoseToSeatMm(805, 600), 0.5);
        Assert.Equal(1333, LengthRules.ShoulderToWaterMm(603, 130, 600), 0.5);
        Assert.Equal(1648, LengthRules.CrownCapMm(918, 130, 600), 0.5);
        Assert.Equal(1550, LengthRules.OwnGeometryMm(20, 892, 38, 600), 0.5);
    }

    // The two groups of rules lie about 200 to 260 mm apart for the same person.
    [Fact]
    public void The_two_groups_lie_far_apart()
    {
        double[] gaps =
        [
            LengthRules.BarOnHeadMm(20, 892, 88, 38, 600) - LengthRules.NoseToSeatMm(805, 600),
            LengthRules.BarOnHeadMm(20, 892, 88, 38, 600) - LengthRules.ShoulderToWaterMm(603, 130, 600),
            LengthRules.FloorToNoseMm(1756) - LengthRules.NoseToSeatMm(805, 600),
        ];
        Assert.All(gaps, g => Assert.InRange(g, 195, 270));
    }

    // Common practice: hands 35 in apart, 1 to 2 in clear, a two-foot blade: about 60 to 62 in.
    [Fact]
    public void The_practitioners_figure_comes_out()
    {
        const double Inch = 25.4;
        Assert.InRange(LengthRules.OwnGeometryMm(20, 35 * Inch, 1 * Inch, 24 * Inch) / Inch, 60, 62.01);
        Assert.InRange(LengthRules.OwnGeometryMm(20, 35 * Inch, 1.5 * Inch, 24 * Inch) / Inch, 60, 62);
        Assert.InRange(LengthRules.OwnGeometryMm(15, 35 * Inch, 2 * Inch, 24 * Inch) / Inch, 60, 62);
    }

    // Worked: R1 upright 844 and leaning 20° 785 above the seat; R4 583, about the shoulder.
    [Theory]
    [InlineData(892 + 44 + 38, 0, 844)]
    [InlineData(892 + 44 + 38, 20, 785)]
    [InlineData(733 - 20, 0, 583)]
    public void Grip_hand_height_matches_the_worked_values(double shaftMm, double leanDegrees, double expectedMm) =>
        Assert.Equal(expectedMm, LengthRules.TopHandAboveSeatMm(shaftMm, leanDegrees, 130), 0.6);
}
