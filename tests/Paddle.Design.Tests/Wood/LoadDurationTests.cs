using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Wood;

public class LoadDurationTests
{
    private const double Day = 86400;

    [Theory] // Madison curve from memory, worked by hand
    [InlineData(1, 126.7, 0.051)]
    [InlineData(10, 115.7, 0.051)]
    [InlineData(450, 99.97, 0.0051)]
    [InlineData(600, 98.9, 0.051)]
    [InlineData(7 * Day, 76.8, 0.051)]
    [InlineData(61 * Day, 71.2, 0.051)]
    [InlineData(3652.5 * Day, 62.1, 0.051)]
    public void Madison_curve(double seconds, double percent, double lastDigit) =>
        Assert.Equal(percent, LoadDuration.MadisonPercent(seconds), lastDigit);

    [Fact] // the well-known 1.6 between a standard test and ten years
    public void Test_to_ten_years_is_1_61() => Assert.Equal(
        1.61, LoadDuration.MadisonPercent(450) / LoadDuration.MadisonPercent(3652.5 * Day), 0.0051);

    [Theory]
    [InlineData(0.5)]
    [InlineData(0)]
    [InlineData(double.NaN)]
    public void Below_one_second_is_refused(double seconds) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LoadDuration.MadisonPercent(seconds));
}
