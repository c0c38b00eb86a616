using MathNet.Numerics.LinearAlgebra;
using Paddle.Design.Fitting;

namespace Paddle.Design.Tests.Fitting;

public class HandSpacingTests
{
    // Pooled line of the survey.
    [Theory]
    [InlineData(1500, 749)]
    [InlineData(1600, 804)]
    [InlineData(1700, 859)]
    [InlineData(1756, 890)]
    [InlineData(1800, 914)]
    [InlineData(1900, 969)]
    public void Stature_gives_the_tabulated_spacing(double statureMm, double expectedMm) =>
        Assert.Equal(expectedMm, HandSpacingMethods.FromStature(statureMm).ValueMm, 1.0);

    [Fact]
    public void Simple_ratio_agrees_within_the_scatter() =>
        Assert.All([1450.0, 1600, 1756, 1900, 1990], h => Assert.Equal(0.505 * h, HandSpacingMethods.FromStature(h).ValueMm, 33.0));

    [Theory]
    [InlineData(1814.2, 891.8)]
    [InlineData(1660.3, 815.5)]
    public void Mean_spans_give_the_mean_spacings(double spanMm, double expectedMm) =>
        Assert.Equal(expectedMm, HandSpacingMethods.FromArmSpan(spanMm).ValueMm, 1.0);

    // "About ±50 mm (1 SD)" of a stature estimate against a person's own bar test.
    [Fact]
    public void Stature_estimate_carries_about_fifty_millimetres_of_error()
    {
        Assert.Equal(50, HandSpacingMethods.FromStature(1750).StandardErrorMm, 2.0);
        Assert.True(HandSpacingMethods.FromArmSpan(1800).StandardErrorMm < HandSpacingMethods.FromStature(1750).StandardErrorMm);
    }

    // Upper arm 0.186 H, elbow axis to grip 330 (mean man) and 300 mm (mean woman).
    [Theory]
    [InlineData(75, 690, 632)]
    [InlineData(80, 765, 700)]
    [InlineData(85, 831, 761)]
    [InlineData(90, 892, 816)]
    [InlineData(95, 947, 866)]
    public void Elbow_angle_shifts_the_spacing_as_tabulated(double degrees, double manMm, double womanMm)
    {
        Assert.Equal(manMm, ElbowAngle.SpacingMm(891.8, ElbowAngle.UpperArmOverStature * 1756.2, 330, degrees), 1.0);
        Assert.Equal(womanMm, ElbowAngle.SpacingMm(815.5, ElbowAngle.UpperArmOverStature * 1628.5, 300, degrees), 1.0);
    }

    [Fact]
    public void Near_square_a_degree_is_worth_about_twelve_millimetres()
    {
        var u = ElbowAngle.UpperArmOverStature * 1756.2;
        var perDegree = (ElbowAngle.SpacingMm(891.8, u, 330, 91) - ElbowAngle.SpacingMm(891.8, u, 330, 89)) / 2;
        Assert.Equal(ElbowAngle.SpacingMmPerDegree, perDegree, 0.6);
    }

    [Fact]
    public void Too_sharp_an_elbow_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ElbowAngle.SpacingMm(891.8, 326, 330, 40));

    // By hand: 880 ± 20 and 900 ± 40. Weights 1/400 and 1/1600 = 0.8 and 0.2: 884; error 1/√(1/400 + 1/1600) = √320 = 17.889.
    [Fact]
    public void Independent_estimates_combine_as_worked_by_hand()
    {
        var c = InverseVariance.Combine([880, 900], [20, 40]);
        Assert.Equal(884, c.Value, 9);
        Assert.Equal(Math.Sqrt(320), c.StandardError, 9);
        Assert.Equal([0.8, 0.2], c.Weights.Select(w => Math.Round(w, 12)));
    }

    // Three by hand: 10 ± 1, 13 ± 2, 16 ± 2: weights 1, 1/4, 1/4 over 1.5: (10 + 3.25 + 4)/1.5 = 11.5; error 1/√1.5.
    [Fact]
    public void Three_estimates_combine_as_worked_by_hand()
    {
        var c = InverseVariance.Combine([10, 13, 16], [1, 2, 2]);
        Assert.Equal(11.5, c.Value, 12);
        Assert.Equal(1 / Math.Sqrt(1.5), c.StandardError, 12);
    }

    [Fact]
    public void Without_correlation_the_matrix_form_is_the_plain_form()
    {
        var plain = InverseVariance.Combine([880, 900, 870], [20, 40, 33]);
        var matrix = InverseVariance.CombineCorrelated([880, 900, 870], Matrix<double>.Build.DenseOfDiagonalArray([400, 1600, 1089]));
        Assert.Equal(plain.Value, matrix.Value, 9);
        Assert.Equal(plain.StandardError, matrix.StandardError, 9);
    }

    // By hand: variances 4 and 9, covariance 3. w = (9 − 3)/(4 + 9 − 6) = 6/7; variance (36 − 9)/7 = 27/7.
    [Fact]
    public void Correlated_estimates_combine_as_worked_by_hand()
    {
        var c = InverseVariance.CombineCorrelated([70, 77], Matrix<double>.Build.DenseOfArray(new double[,] { { 4, 3 }, { 3, 9 } }));
        Assert.Equal(71, c.Value, 9);
        Assert.Equal(Math.Sqrt(27.0 / 7), c.StandardError, 9);
    }

    [Fact]
    public void An_estimate_that_would_count_negatively_is_left_out()
    {
        var c = InverseVariance.CombineCorrelated([70, 77], Matrix<double>.Build.DenseOfArray(new double[,] { { 4, 5 }, { 5, 9 } }));
        Assert.Equal([1.0, 0.0], c.Weights);
        Assert.Equal(70, c.Value, 12);
        Assert.Equal(2, c.StandardError, 12);
    }

    [Fact]
    public void Bad_estimates_are_refused()
    {
        Assert.Throws<ArgumentException>(() => InverseVariance.Combine([], []));
        Assert.Throws<ArgumentException>(() => InverseVariance.Combine([1, 2], [1]));
        Assert.Throws<ArgumentException>(() => InverseVariance.Combine([1], [0]));
    }

    // From the survey by hand: var S 3481, cov(S, span) 0.4995 × 12 284 = 6136, cov(S, H) 4441, cov(span, H) 8972, so the errors share
    // 3481 − 3065 − 2434 + 2456 = 438 mm²: more than the whole variance of the span line (400).
    [Fact]
    public void Span_and_stature_share_most_of_their_error()
    {
        Assert.Equal(438, HandSpacingMethods.SharedBodyVariance(), 8.0);
        var c = HandSpacingMethods.CombineSpanAndStature(1900, 1756);
        var span = HandSpacingMethods.FromArmSpan(1900).ValueMm;
        var stature = HandSpacingMethods.FromStature(1756).ValueMm;
        Assert.InRange(c.Weights[0], 0.93, 1.0);
        Assert.Equal(1, c.Weights.Sum(), 12);
        Assert.InRange(c.Value, stature, span);
        Assert.True(c.StandardError <= HandSpacingMethods.FromArmSpan(1900).StandardErrorMm);
    }

    // The plain weights would be 1/20² and 1/32²: 72 and 28 %. Drawn people of the survey's own covariance show that they do worse.
    [Fact]
    public void Correlated_weights_beat_plain_weights_on_drawn_people()
    {
        var shared = HandSpacingMethods.SharedBodyVariance();
        var random = new Random(20120401);
        var spanError = Math.Sqrt(400 + 56);
        var l21 = shared / spanError;
        var l22 = Math.Sqrt(1024 + 30 - (l21 * l21));
        double plain = 0;
        double best = 0;
        var weight = HandSpacingMethods.CombineSpanAndStature(1800, 1750).Weights[0];
        for (var i = 0; i < 20_000; i++)
        {
            var a = MathNet.Numerics.Distributions.Normal.Sample(random, 0, 1);
            var b = MathNet.Numerics.Distributions.Normal.Sample(random, 0, 1);
            var eSpan = spanError * a;
            var eStature = (l21 * a) + (l22 * b);
            plain += Math.Pow((0.72 * eSpan) + (0.28 * eStature), 2);
            best += Math.Pow((weight * eSpan) + ((1 - weight) * eStature), 2);
        }

        Assert.True(best < plain);
    }

    // Biacromial breadth plus two upper arms, by the survey's figures, is 21 % above the elbow-axis distance: no method may come near it.
    [Fact]
    public void Shoulder_breadth_plus_two_upper_arms_is_a_fifth_too_long()
    {
        var wrong = Survey.ShoulderBreadth.Men.Mean + (2 * 0.1909 * Survey.Stature.Men.Mean);
        Assert.Equal(1.215, wrong / Survey.HandSpacing.Men.Mean, 0.01);
        Assert.True(HandSpacingMethods.FromStature(Survey.Stature.Men.Mean).ValueMm < wrong - 150);
    }
}
