using Paddle.Design.Uncertainty;

namespace Paddle.Design.Tests.Uncertainty;

public class SobolPointsTests
{
    // Source: Joe and Kuo's page of the sequence, its example of ten points in three dimensions, as public copies of their program print it.
    private static readonly double[][] Published =
    [
        [0, 0, 0], [0.5, 0.5, 0.5], [0.75, 0.25, 0.25], [0.25, 0.75, 0.75], [0.375, 0.375, 0.625], [0.875, 0.875, 0.125], [0.625, 0.125, 0.875],
        [0.125, 0.625, 0.375], [0.1875, 0.3125, 0.9375], [0.6875, 0.8125, 0.4375],
    ];

    [Fact]
    public void The_first_points_are_the_published_ones()
    {
        var points = new SobolPoints(3, seed: null);
        Assert.All(Published.Index(), one => Assert.Equal(one.Item, Point(points, one.Index)));
    }

    // Source: the 123rd point by their program with new-joe-kuo-6.21201, as the tests of a public library print it.
    [Fact]
    public void A_late_point_in_every_dimension_is_the_published_one() => Assert.Equal(
        [0.8828125, 0.2890625, 0.6796875, 0.7578125, 0.6015625, 0.9609375, 0.8671875, 0.4453125, 0.0390625, 0.6640625, 0.9921875, 0.4609375, 0.0078125],
        Point(new SobolPoints(SobolPoints.MostDimensions, seed: null), 122));

    // Source: Sobol 1967: of the first 2^k points each of 2^k equal cells of every axis holds one.
    [Theory]
    [InlineData(null)]
    [InlineData(1)]
    [InlineData(2026)]
    public void Every_axis_is_filled_evenly(int? seed)
    {
        const int Count = 256;
        var points = new SobolPoints(SobolPoints.MostDimensions, seed);
        var all = Enumerable.Range(0, Count).Select(k => Point(points, k)).ToList();
        for (var d = 0; d < points.Dimensions; d++)
            Assert.Equal(Enumerable.Range(0, Count), all.Select(point => (int)(point[d] * Count)).Order());
    }

    // Source: the first two dimensions are a (0, k, 2)-net in base 2 (Niederreiter 1987): every box of area 2^-k holds one point.
    [Fact]
    public void Scrambling_keeps_the_first_two_axes_a_net()
    {
        const int Bits = 8;
        var points = new SobolPoints(2, seed: 7);
        var all = Enumerable.Range(0, 1 << Bits).Select(k => Point(points, k)).ToList();
        for (var a = 0; a <= Bits; a++)
            Assert.Equal(1 << Bits, all.Select(point => ((int)(point[0] * (1 << a)), (int)(point[1] * (1 << (Bits - a))))).Distinct().Count());
    }

    [Fact]
    public void Another_seed_gives_other_points_and_none_at_the_ends()
    {
        var (one, other) = (new SobolPoints(5, 1), new SobolPoints(5, 2));
        Assert.NotEqual(Point(one, 0), Point(other, 0));
        Assert.All(Enumerable.Range(0, 1000), k => Assert.All(Point(one, k), x => Assert.InRange(x, 1e-10, 1 - 1e-10)));
    }

    private static double[] Point(SobolPoints points, int k)
    {
        var point = new double[points.Dimensions];
        points.Fill((uint)k, point);
        return point;
    }
}
