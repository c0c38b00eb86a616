using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Wood;

public class TemperatureEffectTests
{
    [Theory] // USDA Wood Handbook FPL-GTR-282 table 5-15, modulus of elasticity parallel at 12 %, read in a public transcription
    [InlineData(-50, 17)]
    [InlineData(20, 0)]
    [InlineData(50, -7)]
    public void Clear_wood_meets_table_5_15(double temperatureC, double percent) =>
        Assert.Equal(percent, TemperatureEffect.ClearWoodModulusChangePercent(temperatureC), 1e-12);

    [Theory] // same handbook, table 5-16, worked by hand to 0.001
    [InlineData(70, 0.099)]
    [InlineData(100, -3.225)]
    public void Lumber_meets_table_5_16(double fahrenheit, double percent) =>
        Assert.Equal(percent, TemperatureEffect.LumberModulusChangePercent((fahrenheit - 32) / 1.8), 0.00051);

    [Fact]
    public void The_two_tables_tell_the_same_story_over_paddling_weather()
    {
        for (var t = -5.0; t <= 45.0; t += 5.0)
        {
            // One table is for clear wood and rounded to whole percents at 70 degrees from its zero, the other for lumber.
            Assert.Equal(TemperatureEffect.ClearWoodModulusChangePercent(t), TemperatureEffect.LumberModulusChangePercent(t), 1.5);
        }
    }

    [Theory]
    [InlineData(-51)]
    [InlineData(51)]
    [InlineData(double.NaN)]
    public void Outside_table_5_15_is_refused(double temperatureC) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TemperatureEffect.ClearWoodModulusChangePercent(temperatureC));

    [Theory]
    [InlineData(-27)]
    [InlineData(66)]
    [InlineData(double.NaN)]
    public void Outside_table_5_16_is_refused(double temperatureC) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TemperatureEffect.LumberModulusChangePercent(temperatureC));
}
