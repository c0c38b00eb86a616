using MathNet.Numerics.Interpolation;
using Paddle.Design.Solid;

namespace Paddle.Design.Tests.Solid;

public class SpineProfileTests
{
    // Published algorithm: MathNet.Numerics' PCHIP through the three sizes, with a level stretch of shaft above and of tip below, which
    // makes both ends level. 1e-9 mm: rounding.
    [Fact]
    public void Published_equals_pchip()
    {
        foreach (var (shaft, throat, middle, tip) in RandomSpines(500))
        {
            var pchip = CubicSpline.InterpolatePchipSorted(
                [-0.08, 0, 0.08, 0.5, 0.92, 1], [shaft, shaft, throat, middle, tip, tip]);
            for (var t = 0.0; t <= 1; t += 0.01)
                Assert.Equal(pchip.Interpolate(t), Thickness(t, shaft, throat, middle, tip), 1e-9);
        }
    }

    // Property: never thickens on the way to the tip, never leaves the range of its two neighbours (1e-12 mm: rounding).
    [Fact]
    public void Property_monotone_thinning()
    {
        foreach (var (shaft, throat, middle, tip) in RandomSpines(500))
        {
            var last = shaft + 1e-12;
            for (var t = 0.0; t <= 1; t += 0.002)
            {
                var now = Thickness(t, shaft, throat, middle, tip);
                Assert.True(now <= last + 1e-12, $"thickens at {t}");
                last = now;
            }

            Assert.Equal(tip, last, 1e-12);
        }
    }

    // Property: a spine of one thickness is level throughout.
    [Fact]
    public void Property_level_when_all_equal()
    {
        for (var t = 0.0; t <= 1; t += 0.05) Assert.Equal(9, Thickness(t, 9, 9, 9, 9), 1e-12);
    }

    private static double Thickness(double t, double shaft, double throat, double middle, double tip)
    {
        var sizes = TestPaddles.UsualSizes with
        {
            ShaftThicknessMm = shaft,
            ThroatThicknessMm = throat,
            MiddleThicknessMm = middle,
            TipThicknessMm = tip,
        };
        var segment = Segment.All.First(s => s.Zone == Zone.Blade && t >= s.From && t <= s.To);
        return StationPattern.At(segment, t).ThicknessMm(sizes, SpineSlopes.Of(sizes), 0);
    }

    private static IEnumerable<(double Shaft, double Throat, double Middle, double Tip)> RandomSpines(int count)
    {
        var random = new Random(3);
        for (var n = 0; n < count; n++)
        {
            var shaft = 25 + 15 * random.NextDouble();
            var throat = n % 5 == 0 ? shaft : shaft * (0.6 + 0.4 * random.NextDouble());
            var middle = throat * (0.3 + 0.7 * random.NextDouble());
            yield return (shaft, throat, middle, n % 7 == 0 ? middle : middle * (0.4 + 0.6 * random.NextDouble()));
        }
    }
}
