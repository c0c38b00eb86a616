using Paddle.Design.Build;

namespace Paddle.Design.Tests.Build;

public class RoundingTests
{
    [Fact]
    public void Eight_sides_of_a_30_mm_square_are_marked_8_787_mm_in()
    {
        Assert.Equal(0.292893, Rounding.EightSideLine, 6);
        Assert.Equal(0.414214, Rounding.EightSideFlat, 6);
        Assert.Equal(8.787, 30 * Rounding.EightSideLine, 3);
        Assert.Equal(8.369, 28.575 * Rounding.EightSideLine, 3);

        // The corner facet is as long as the flat left on the face: a regular octagon.
        Assert.Equal(Rounding.EightSideFlat, Rounding.EightSideLine * Math.Sqrt(2), 12);
    }

    [Fact]
    public void Sixteen_sides_are_marked_about_a_quarter_in_on_each_facet()
    {
        Assert.Equal(0.2599, Rounding.SixteenSideLine, 4);
        Assert.Equal(3.230, 30 * Rounding.EightSideFlat * Rounding.SixteenSideLine, 2);

        // What is left of the facet is a facet of the regular sixteen-sided figure.
        Assert.Equal(0.198912, Rounding.EightSideFlat * (1 - 2 * Rounding.SixteenSideLine), 6);
    }

    [Theory]
    [InlineData(4, 1)]
    [InlineData(8, 0.828427)]
    [InlineData(16, 0.795649)]
    [InlineData(32, 0.787931)]
    public void Polygons_round_a_circle_have_their_textbook_areas(int sides, double share) =>
        Assert.Equal(share, Rounding.PolygonAreaShare(sides), 6);

    [Theory]
    [InlineData(34, 28, 39.5, 14.08, 11.60, 12.90)]
    [InlineData(32, 27, 40.2, 13.25, 11.18, 12.26)]
    public void An_oval_s_facets_all_touch_its_ellipse(double a, double b, double degrees, double faceFlat, double sideFlat, double corner)
    {
        var line = ShaftLayout.At(1, 0, a, b);
        Assert.Equal(degrees, line.ChamferDegrees, 1);
        Assert.Equal(faceFlat, a - 2 * line.LineOnFaceMm, 2);
        Assert.Equal(sideFlat, b - 2 * line.LineOnSideMm, 2);
        Assert.Equal(corner, Math.Sqrt(line.LineOnFaceMm * line.LineOnFaceMm + line.LineOnSideMm * line.LineOnSideMm), 2);

        // Along the corner facet the ellipse's own measure never falls below 1, and touches it once.
        double x0 = a / 2 - line.LineOnFaceMm, y0 = b / 2, x1 = a / 2, y1 = b / 2 - line.LineOnSideMm;
        var least = Enumerable.Range(0, 2001).Min(k =>
        {
            double x = x0 + (x1 - x0) * k / 2000, y = y0 + (y1 - y0) * k / 2000;
            return 4 * (x * x / (a * a) + y * y / (b * b));
        });
        Assert.Equal(1, least, 5);
    }

    [Fact]
    public void A_7_10_7_gauge_leaves_a_hair_and_never_cuts_in()
    {
        var gauge = SparGauge.For(30);
        Assert.Equal(7.0 / 24, SparGauge.Share, 12);
        Assert.Equal(0.037, gauge.LineErrorMm, 3);
        Assert.Equal(gauge.BetweenFencesMm, gauge.FirstPointMm + gauge.BetweenPointsMm + gauge.LastPointMm, 9);
        Assert.Equal(10.0 / 7, gauge.BetweenPointsMm / gauge.FirstPointMm, 9);
        Assert.True(gauge.BetweenFencesMm > 30);
    }

    [Fact]
    public void A_round_over_leaves_at_the_corner_what_geometry_says()
    {
        Assert.Equal(0.66, Rounding.LeftAtCornerMm(28.6, 12.7), 2);
        Assert.Equal(1.97, Rounding.LeftAtCornerMm(28.6, 9.525), 1);
    }

    [Theory]
    [InlineData(34, 28)]
    [InlineData(30, 26)]
    [InlineData(25.7, 31.8)]
    public void Offered_round_overs_never_cut_into_the_ellipse_and_leave_the_bearing_a_flat(double a, double b)
    {
        var choices = RoundOver.Choices(a, b);
        Assert.NotEmpty(choices);
        foreach (var bit in choices)
        {
            Assert.True(bit.FlatLeftMm >= RoundOver.LeastFlatMm);
            for (var k = 0; k <= 90; k++)
            {
                var angle = k * Math.PI / 180;
                double x = a / 2 - bit.RadiusMm + bit.RadiusMm * Math.Cos(angle), y = b / 2 - bit.RadiusMm + bit.RadiusMm * Math.Sin(angle);
                Assert.True(4 * (x * x / (a * a) + y * y / (b * b)) >= 1 - 1e-9);
            }
        }
    }
}
