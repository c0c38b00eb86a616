using FsCheck.Xunit;
using Paddle.Design.Fitting;
using Paddle.Design.Outline;

namespace Paddle.Design.Tests.Fitting;

public sealed class PaddleLengthsTests
{
    private static readonly GripPattern Pear = GripPattern.Of(GripStyle.Pear);
    private static readonly GripPattern Bar = GripPattern.Of(GripStyle.T);

    // Each row: spacing, freeboard, overall, blade given; spacing, freeboard, overall, blade, grip hand expected. The usual blade is 670.
    [Theory]
    [InlineData(880.0, null, null, null, 880, 38, 1608, 670, 20)]
    [InlineData(880.0, 50.0, null, 650.0, 880, 50, 1600, 650, 20)]
    [InlineData(null, null, 1588.0, 650.0, 880, 38, 1588, 650, 20)]
    [InlineData(null, 30.0, 1500.0, null, 780, 30, 1500, 670, 20)]
    [InlineData(880.0, null, 1600.0, 650.0, 880, 50, 1600, 650, 20)]
    [InlineData(880.0, null, 1590.0, null, 880, 20, 1590, 670, 20)]
    [InlineData(880.0, 38.0, 1588.0, null, 880, 38, 1588, 650, 20)]
    [InlineData(880.0, 38.0, 1588.0, 650.0, 880, 38, 1588, 650, 20)]
    [InlineData(845.0, 38.0, 1550.0, 650.0, 845, 38, 1550, 650, 17)]
    public void Lengths_given_complete_the_others(
        double? spacing, double? freeboard, double? overall, double? blade,
        double spacingIs, double freeboardIs, double overallIs, double bladeIs, double handIs)
    {
        var result = PaddleLengths.Resolve(new(spacing, freeboard, overall, blade), _ => 670, Pear, 95);

        var lengths = result.Lengths!;
        Assert.Empty(result.Conflicts);
        Assert.Equal(
            (spacingIs, freeboardIs, overallIs, bladeIs),
            (lengths.HandSpacingMm, lengths.FreeboardMm, lengths.OverallMm, lengths.BladeLengthMm));
        Assert.Equal(new(handIs, 95, handIs + spacingIs, handIs + spacingIs + freeboardIs, overallIs), lengths.Places);
    }

    [Fact]
    public void A_bar_grip_is_held_nearer_the_end() =>
        Assert.Equal(15, PaddleLengths.Resolve(new(880, 38, null, 650), _ => 670, Bar, 62).Lengths!.Places.TopHandMm);

    [Theory]
    [InlineData(1100.0, 150.0, null, 1000.0, 2270, 800, 2100, "handSpacingMm")]
    [InlineData(null, null, 1000.0, 650.0, 292, 400, 1100, "overallLengthMm")]
    [InlineData(null, null, 2100.0, 650.0, 1392, 400, 1100, "overallLengthMm")]
    [InlineData(880.0, null, 1500.0, 650.0, -50, 0, 150, "handSpacingMm overallLengthMm blade.lengthMm")]
    [InlineData(880.0, null, 1800.0, 650.0, 250, 0, 150, "handSpacingMm overallLengthMm blade.lengthMm")]
    [InlineData(880.0, 38.0, 1200.0, null, 262, 350, 1000, "handSpacingMm freeboardMm overallLengthMm")]
    [InlineData(880.0, 38.0, 1570.0, 650.0, 2, 5, 60, "handSpacingMm freeboardMm overallLengthMm blade.lengthMm")]
    [InlineData(880.0, 38.0, 1640.0, 650.0, 72, 5, 60, "handSpacingMm freeboardMm overallLengthMm blade.lengthMm")]
    public void Lengths_that_clash_are_named_with_what_would_fit(
        double? spacing, double? freeboard, double? overall, double? blade, double follows, double min, double max, string fields)
    {
        var result = PaddleLengths.Resolve(new(spacing, freeboard, overall, blade), _ => 670, Pear, 95);

        var conflict = Assert.Single(result.Conflicts);
        Assert.Null(result.Lengths);
        Assert.Equal(follows, conflict.FollowsMm, 9);
        Assert.Equal(new(min, max), conflict.LimitsMm);
        Assert.Equal(fields.Split(' '), conflict.Fields);
    }

    [Fact]
    public void The_reason_of_a_clash_gives_the_sum_and_the_length_that_would_fit()
    {
        var conflict = PaddleLengths.Resolve(new(880, 38, 1570, 650), _ => 670, Pear, 95).Conflicts.Single();

        Assert.Contains("880 + freeboard 38 + blade 650 = 1568 mm leaves 2 mm", conflict.Reason, StringComparison.Ordinal);
        Assert.Contains("an overall length of 1588 mm", conflict.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void The_overall_length_said_to_fit_does_fit()
    {
        var reason = PaddleLengths.Resolve(new(880, null, 1500, 650), _ => 670, Pear, 95).Conflicts.Single().Reason;
        Assert.Contains("an overall length of 1550 to 1700 mm", reason, StringComparison.Ordinal);

        Assert.Equal(0, PaddleLengths.Resolve(new(880, null, 1550, 650), _ => 670, Pear, 95).Lengths!.FreeboardMm);
        Assert.Equal(150, PaddleLengths.Resolve(new(880, null, 1700, 650), _ => 670, Pear, 95).Lengths!.FreeboardMm);
    }

    [Fact]
    public void A_short_grip_lowers_the_lowest_place_of_the_hand()
    {
        Assert.Equal(0.7 * 45, PaddleLengths.TopHandLimitsMm(45).Max);
        Assert.Equal(60, PaddleLengths.TopHandLimitsMm(140).Max);
    }

    [Fact]
    public void Nothing_given_is_a_fault_of_the_caller() =>
        Assert.Throws<ArgumentException>(() => PaddleLengths.Resolve(new(null, 38, null, 650), _ => 670, Pear, 95));

    [Property(MaxTest = 500)]
    public void Completed_lengths_given_back_lead_to_the_very_same_places(uint a, uint b, uint c)
    {
        // Tenths and hundredths of a millimetre are where binary sums lose their last digit.
        double spacing = 600 + a % 40000 / 100.0, freeboard = b % 1500 / 10.0, blade = 400 + c % 40000 / 100.0;
        var first = PaddleLengths.Resolve(new(spacing, freeboard, null, blade), _ => 670, Pear, 95).Lengths!;

        var again = PaddleLengths.Resolve(
            new(first.HandSpacingMm, first.FreeboardMm, first.OverallMm, first.BladeLengthMm), _ => 670, Pear, 95).Lengths!;

        Assert.Equal(first, again);
        Assert.Equal(20, first.Places.TopHandMm);
    }
}
