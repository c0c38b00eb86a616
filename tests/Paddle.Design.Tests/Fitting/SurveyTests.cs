using MathNet.Numerics.Distributions;
using Paddle.Design.Fitting;

namespace Paddle.Design.Tests.Fitting;

public class SurveyTests
{
    public static TheoryData<string> DimensionIds => [.. Survey.Dimensions.Select(d => d.Id)];

    public static TheoryData<string> LineIds => [.. Survey.Lines.Select(l => l.Dimension.Id)];

    private static SurveyDimension Dimension(string id) => Survey.Dimensions.Single(d => d.Id == id);

    private static StatureLines Lines(string id) => Survey.Lines.Single(l => l.Dimension.Id == id);

    // The published percentiles come from the raw people, the normal's from mean and deviation: they must agree to an eighth of a
    // deviation (a quarter for body mass, which is skewed) and the half unit to which the percentiles are printed.
    [Theory]
    [MemberData(nameof(DimensionIds))]
    public void Published_percentiles_agree_with_the_normal(string id)
    {
        var tolerance = id == "bodyMassKg" ? 0.25 : 0.125;
        foreach (var f in new[] { Dimension(id).Men, Dimension(id).Women })
        {
            Assert.Equal(Normal.InvCDF(f.Mean, f.StandardDeviation, 0.05), f.Percentile5, (tolerance * f.StandardDeviation) + 0.5);
            Assert.Equal(Normal.InvCDF(f.Mean, f.StandardDeviation, 0.95), f.Percentile95, (tolerance * f.StandardDeviation) + 0.5);
        }
    }

    [Theory]
    [MemberData(nameof(LineIds))]
    public void Each_line_passes_through_the_means(string id)
    {
        Assert.Equal(Dimension(id).Men.Mean, Lines(id).Men.At(Survey.Stature.Men.Mean), 0.35);
        Assert.Equal(Dimension(id).Women.Mean, Lines(id).Women.At(Survey.Stature.Women.Mean), 0.35);
    }

    // Slope r σ_y/σ_H and scatter σ_y √(1 − r²): the correlations as tabulated with the lines.
    [Theory]
    [InlineData("armSpanMm", 0.82, 0.82)]
    [InlineData("sittingHeightMm", 0.78, 0.76)]
    [InlineData("eyeHeightSittingMm", 0.76, 0.74)]
    [InlineData("shoulderHeightSittingMm", 0.66, 0.63)]
    [InlineData("handLengthMm", 0.67, 0.65)]
    [InlineData("handBreadthMm", 0.47, 0.47)]
    public void Slopes_and_scatter_follow_from_the_correlations(string id, double men, double women)
    {
        foreach (var (line, figure, stature, r) in new[]
        {
            (Lines(id).Men, Dimension(id).Men, Survey.Stature.Men, men),
            (Lines(id).Women, Dimension(id).Women, Survey.Stature.Women, women),
        })
        {
            Assert.Equal(r, line.Slope * stature.StandardDeviation / figure.StandardDeviation, 0.011);
            Assert.InRange(line.StandardErrorMm / (figure.StandardDeviation * Math.Sqrt(1 - (r * r))), 0.96, 1.04);
        }
    }

    // Pooled over the survey: mean 866.8, deviation 59.0, line −72.8 + 0.5481 H, scatter 32.
    [Fact]
    public void Pooling_gives_the_published_pooled_hand_spacing()
    {
        Assert.Equal(0.67, Survey.ShareOfMen, 0.005);
        Assert.Equal(866.8, Survey.PooledMean(Survey.HandSpacing), 0.1);
        Assert.Equal(59.0, Survey.PooledStandardDeviation(Survey.HandSpacing), 0.1);
        var line = Survey.PooledLine(Survey.HandSpacingLines);
        Assert.Equal(0.5481, line.Slope, 0.0005);
        Assert.Equal(-72.8, line.InterceptMm, 0.8);
        Assert.Equal(32, line.StandardErrorMm, 0.5);
    }

    // Fractions of stature: hand 0.1101 and 0.1112, shoulder breadth 0.2367 and 0.2244, sitting height 0.5229 and 0.5260 (ANSUR II);
    // 0.108, 0.259, 0.520 (Drillis and Contini 1966, from memory).
    [Theory]
    [InlineData("handLengthMm", 0.1101, 0.1112)]
    [InlineData("shoulderBreadthMm", 0.2367, 0.2244)]
    [InlineData("sittingHeightMm", 0.5229, 0.5260)]
    [InlineData("handSpacingMm", 0.508, 0.501)]
    public void Fractions_of_stature_match_their_table(string id, double men, double women)
    {
        Assert.Equal(men, Dimension(id).Men.Mean / Survey.Stature.Men.Mean, 0.0005);
        Assert.Equal(women, Dimension(id).Women.Mean / Survey.Stature.Women.Mean, 0.0005);
    }

    [Fact]
    public void Percentile_of_the_mixture_matches_the_mathnet_normals()
    {
        var expected = 100 * ((Survey.ShareOfMen * new Normal(891.8, 47.7).CumulativeDistribution(850))
            + ((1 - Survey.ShareOfMen) * new Normal(815.5, 45.2).CumulativeDistribution(850)));
        Assert.Equal(expected, Survey.PooledPercentile(Survey.HandSpacing, 850), 9);
        Assert.InRange(expected, 38, 40);
    }
}
