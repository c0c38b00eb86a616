using Paddle.Design.Water;

namespace Paddle.Design.Tests.Water;

public class FreshWaterTests
{
    // Densities from the formula of Bettin and Spieweck as tabulated to two decimals.
    [Theory]
    [InlineData(0, 999.84)]
    [InlineData(4, 999.97)]
    [InlineData(5, 999.96)]
    [InlineData(10, 999.70)]
    [InlineData(15, 999.10)]
    [InlineData(20, 998.20)]
    [InlineData(25, 997.04)]
    [InlineData(40, 992.215)] // Tanaka and others, Metrologia 38 (2001), from memory
    public void Density_matches_the_tabulated_values(double temperatureC, double expectedKgM3) =>
        Assert.Equal(expectedKgM3, FreshWater.DensityKgM3(temperatureC), 0.0051);

    [Fact]
    public void Density_is_greatest_near_four_degrees()
    {
        var densest = Enumerable.Range(0, 4001).Select(i => i / 100.0).MaxBy(FreshWater.DensityKgM3);
        Assert.InRange(densest, 3.9, 4.05); // 3.98 °C, textbook value, from memory
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(40.1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Temperatures_of_no_open_water_are_refused(double temperatureC) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => FreshWater.DensityKgM3(temperatureC));
}
