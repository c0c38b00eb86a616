using MathNet.Numerics.Distributions;
using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Wood;

public class ScatterTests
{
    [Theory] // table 5-6 coefficients of variation through mean (1 - 1.645 COV), worked by hand to four digits
    [InlineData(Scatter.RuptureVariation, 0.7368)]
    [InlineData(Scatter.ElasticityVariation, 0.6381)]
    [InlineData(Scatter.SpecificGravityVariation, 0.8355)]
    public void Factor_matches_hand_figures(double variation, double factor) =>
        Assert.Equal(factor, Scatter.FifthPercentile(1, variation), 0.000051);

    [Fact]
    public void Black_cherry_rupture() => Assert.Equal(62.63, Scatter.FifthPercentile(85, Scatter.RuptureVariation), 0.0051);

    [Theory]
    [InlineData(85, Scatter.RuptureVariation)]
    [InlineData(11700, Scatter.ElasticityVariation)]
    [InlineData(49, Scatter.CompressionVariation)]
    [InlineData(3.9, Scatter.TensionPerpendicularVariation)]
    public void Is_the_5_percent_point_of_a_normal_distribution(double mean, double variation)
    {
        var expected = Normal.InvCDF(mean, variation * mean, 0.05);
        // The library's inverse error function is good to about 1e-9 of the value.
        Assert.Equal(expected, Scatter.FifthPercentile(mean, variation), 1e-8 * mean);
    }
}
