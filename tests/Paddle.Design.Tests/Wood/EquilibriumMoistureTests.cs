using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Wood;

public class EquilibriumMoistureTests
{
    [Theory] // USDA Wood Handbook table 4-2 at 21.1 C (70 F), printed to 0.1; 40 % read in a public transcription, the rest from memory
    [InlineData(30, 6.2)]
    [InlineData(40, 7.7)]
    [InlineData(50, 9.2)]
    [InlineData(65, 12.0)]
    [InlineData(80, 16.0)]
    [InlineData(90, 20.5)]
    public void Matches_table_4_2(double relativeHumidityPercent, double expectedPercent) =>
        // Half the last printed digit; 50 % gives 9.24, which prints 9.2.
        Assert.Equal(expectedPercent, EquilibriumMoisture.Percent(21.1, relativeHumidityPercent), 0.051);

    [Theory] // worked by hand from eq. 4-5, metric coefficients, to 0.01
    [InlineData(21.1, 65, 11.96)]
    [InlineData(21.1, 90, 20.48)]
    [InlineData(20, 50, 9.27)]
    [InlineData(20, 65, 12.00)]
    [InlineData(20, 80, 16.04)]
    [InlineData(10, 50, 9.47)]
    [InlineData(10, 65, 12.27)]
    [InlineData(10, 80, 16.38)]
    [InlineData(60, 50, 7.66)]
    [InlineData(60, 80, 13.56)]
    [InlineData(50, 20, 3.87)]
    [InlineData(0, 65, 12.37)]
    public void Matches_hand_figures(double temperatureC, double relativeHumidityPercent, double expectedPercent) =>
        Assert.Equal(expectedPercent, EquilibriumMoisture.Percent(temperatureC, relativeHumidityPercent), 0.0061);

    [Theory] // the handbook's other set of coefficients, for degrees F: W and first terms of K read, the rest from memory
    [InlineData(70, 30)]
    [InlineData(70, 65)]
    [InlineData(70, 90)]
    [InlineData(50, 65)]
    [InlineData(90, 80)]
    public void Agrees_with_the_same_equation_in_fahrenheit(double fahrenheit, double relativeHumidityPercent)
    {
        var f = fahrenheit;
        var w = 330 + (0.452 * f) + (0.00415 * f * f);
        var k = 0.791 + (0.000463 * f) - (0.000000844 * f * f);
        var k1 = 6.34 + (0.000775 * f) - (0.0000935 * f * f);
        var k2 = 1.09 + (0.0284 * f) - (0.0000904 * f * f);
        var kh = k * relativeHumidityPercent / 100;
        var expected = 1800 / w * ((kh / (1 - kh)) + (((k1 * kh) + (2 * k1 * k2 * kh * kh)) / (1 + (k1 * kh) + (k1 * k2 * kh * kh))));
        // Both sets are rounded to three digits: 0.02 points of moisture.
        Assert.Equal(expected, EquilibriumMoisture.Percent((f - 32) / 1.8, relativeHumidityPercent), 0.021);
    }

    [Fact]
    public void Dry_air_dries_wood_out() => Assert.Equal(0.0, EquilibriumMoisture.Percent(20, 0), 1e-12);

    [Theory]
    [InlineData(-1.5, 50)]
    [InlineData(61, 50)]
    [InlineData(20, -1)]
    [InlineData(20, 101)]
    [InlineData(double.NaN, 50)]
    [InlineData(20, double.NaN)]
    public void Air_outside_the_range_is_refused(double temperatureC, double relativeHumidityPercent) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => EquilibriumMoisture.Percent(temperatureC, relativeHumidityPercent));
}
