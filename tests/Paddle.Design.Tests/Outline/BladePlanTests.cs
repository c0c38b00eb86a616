using NetTopologySuite.Geometries;
using Paddle.Design.Outline;
using Paddle.Design.Tests.Solid;

namespace Paddle.Design.Tests.Outline;

public class BladePlanTests
{
    private const double ThroatMm = 900;
    private const int Samples = 200;

    public static TheoryData<string> Families => [.. BladeFamilies.All.Select(family => family.Id)];

    // Property: Green's theorem on the Béziers against NetTopologySuite's area and centroid of a polygon of 8000 points. The
    // polygon's own error is of order 1/points² ≈ 1e-7; 1e-6 allowed.
    [Theory]
    [MemberData(nameof(Families))]
    public void Property_area_and_centroid_equal_a_polygons(string id)
    {
        var family = BladeFamilies.Find(id)!;
        BladeShape[] blades =
        [
            TestPaddles.Blade(id),
            TestPaddles.Blade(id, length: 350, width: 240),
            TestPaddles.Blade(id, length: 1000, width: 70),
            TestPaddles.Blade(id, widestAt: family.WidestAtLimits.Min, fullness: family.FullnessLimits.Max),
            TestPaddles.Blade(id, widestAt: family.WidestAtLimits.Max, fullness: family.FullnessLimits.Min),
        ];
        foreach (var blade in blades)
        {
            var curve = new HalfBreadthCurve(BladePlan.For(blade).Draw(ThroatMm, 15));
            var polygon = Polygon(curve, 4000 / curve.Pieces.Length);
            TestPaddles.AssertRelative(polygon.Area, curve.AreaMm2(), 1e-6, $"{id} area");
            TestPaddles.AssertRelative(polygon.Centroid.X, curve.CentroidMm(), 1e-6, $"{id} centroid");
            Assert.True(polygon.IsValid, "the outline crosses itself");
        }
    }

    // Property: the whole paddle's outline as well, grip included.
    [Theory]
    [InlineData(GripStyle.Pear)]
    [InlineData(GripStyle.Palm)]
    [InlineData(GripStyle.T)]
    public void Property_whole_outline_is_smooth_and_its_area_a_polygons(GripStyle style)
    {
        var curve = TestPaddles.Form(TestPaddles.Blade("ottertail"), style: style).Outline(TestPaddles.UsualSizes);
        var polygon = Polygon(curve, 1000);
        TestPaddles.AssertRelative(polygon.Area, curve.AreaMm2(), 1e-6);
        TestPaddles.AssertRelative(polygon.Centroid.X, curve.CentroidMm(), 1e-6);
        AssertTangentContinuous(curve.Pieces, style.ToString());
    }

    // Property: what a fair blade is, over the whole range that a request may ask (lengths 350–1000, widths 70–240 mm, shafts
    // 20–45 mm, every family's own range of widest point and fullness).
    [Theory, Trait(Sweep.Name, Sweep.Full)]
    [MemberData(nameof(Families))]
    public void Property_every_blade_is_fair(string id)
    {
        foreach (var (blade, shaft) in Grid(id))
        {
            var what = $"{id} {blade.LengthMm}×{blade.WidthMm} at {blade.WidestAt:F2} full {blade.Fullness:F3} shaft {2 * shaft}";
            var pieces = BladePlan.For(blade).Draw(ThroatMm, shaft);
            var widest = ThroatMm + blade.WidestAt * blade.LengthMm;
            Assert.Equal(ThroatMm, pieces[0].X0, 1e-9);
            Assert.Equal(shaft, pieces[0].Y0, 1e-9);
            Assert.Equal(widest, pieces[0].X3, 1e-9);
            Assert.Equal(blade.HalfWidthMm, pieces[0].Y3, 1e-9);
            Assert.Equal(ThroatMm + blade.LengthMm, pieces[^1].X3, 1e-9);
            Assert.Equal(0, pieces[^1].Y3, 1e-9);

            Assert.True(Math.Abs(pieces[0].DY(0)) < 1e-9, what + ": not tangent to the shaft");
            AssertTangentContinuous(pieces, what);
            double above = pieces[0].Curvature(1), below = pieces[1].Curvature(0);
            TestPaddles.AssertRelative(above, below, 1e-9, what + ": curvature at the widest point");
            Assert.True(above < 0, what + ": not a maximum");
            Assert.True(Math.Abs(pieces[^1].DX(1)) < 1e-9 && pieces[^1].DY(1) < 0, what + ": tip not square to the centre line");

            AssertMonotoneX(pieces, what);
            AssertOneMaximum(pieces, what);
            AssertOneTurnOfCurvature(pieces, what);
        }
    }

    // Property: the asked fullness comes out to 1e-6 (Brent to 1e-10 on a fraction of order one), or, where the curve cannot carry
    // it, the nearest that it can: the ends of its reach are found by asking for nothing and for everything.
    [Theory, Trait(Sweep.Name, Sweep.Full)]
    [MemberData(nameof(Families))]
    public void Property_asked_fullness_or_the_nearest_is_drawn(string id)
    {
        foreach (var (blade, shaft) in Grid(id))
        {
            double least = Drawn(blade with { Fullness = 0 }, shaft), most = Drawn(blade with { Fullness = 1 }, shaft);
            Assert.True(least < most);
            Assert.Equal(Math.Clamp(blade.Fullness, least, most), Drawn(blade, shaft), 1e-6);
        }
    }

    // Property: what a family promises by default it draws, at every length and width.
    [Theory]
    [MemberData(nameof(Families))]
    public void Property_default_fullness_is_reached(string id)
    {
        var family = BladeFamilies.Find(id)!;
        foreach (var length in new[] { 350, family.DefaultLengthMm, 1000 })
        {
            foreach (var width in new[] { 70, family.DefaultWidthMm, 240 })
                Assert.Equal(family.DefaultFullness, Drawn(TestPaddles.Blade(id, length, width), 15), 1e-6);
        }
    }

    // Property: a family's usual sizes and limits hold its defaults.
    [Theory]
    [MemberData(nameof(Families))]
    public void Property_defaults_lie_within_their_limits(string id)
    {
        var f = BladeFamilies.Find(id)!;
        Assert.True(f.UsualLengthMm.Contains(f.DefaultLengthMm) && f.UsualWidthMm.Contains(f.DefaultWidthMm));
        Assert.True(f.WidestAtLimits.Contains(f.DefaultWidestAt) && f.FullnessLimits.Contains(f.DefaultFullness));
    }

    internal static IEnumerable<(BladeShape Blade, double Shaft)> Grid(string id)
    {
        var f = BladeFamilies.Find(id)!;
        foreach (var length in Sweep.Of<double[]>([350, f.DefaultLengthMm, 1000], [350.0, 500, f.DefaultLengthMm, 800, 1000]))
        {
            foreach (var width in Sweep.Of<double[]>([70, f.DefaultWidthMm, 240], [70.0, 110, f.DefaultWidthMm, 240]))
            {
                foreach (var at in Spread(f.WidestAtLimits, f.DefaultWidestAt))
                {
                    foreach (var fullness in Spread(f.FullnessLimits, f.DefaultFullness))
                    {
                        foreach (var shaft in Sweep.Of<double[]>([10, 22.5], [10.0, 15, 22.5]))
                            yield return (TestPaddles.Blade(id, length, width, at, fullness), shaft);
                    }
                }
            }
        }
    }

    private static double Drawn(BladeShape blade, double shaft) =>
        BladePlan.For(blade).Draw(ThroatMm, shaft).Skip(1).Sum(piece => piece.AreaUnder())
        / ((1 - blade.WidestAt) * blade.LengthMm * blade.HalfWidthMm);

    private static double[] Spread(Paddle.Design.Outline.Range range, double usual) =>
        Sweep.Of<double[]>([range.Min, usual, range.Max], [range.Min, 0.5 * (range.Min + usual), usual, 0.5 * (range.Max + usual), range.Max]);

    private static Polygon Polygon(HalfBreadthCurve curve, int perPiece)
    {
        var upper = new List<Coordinate>();
        foreach (var piece in curve.Pieces)
        {
            for (var k = upper.Count == 0 ? 0 : 1; k <= perPiece; k++)
                upper.Add(new(piece.X(k / (double)perPiece), piece.Y(k / (double)perPiece)));
        }

        var ring = upper.Concat(upper.AsEnumerable().Reverse().Where(p => p.Y > 0).Select(p => new Coordinate(p.X, -p.Y))).ToList();
        ring.Add(ring[0]);
        return new(new LinearRing([.. ring]));
    }

    // Directions at a joint agree to 1e-7 rad, far below what a pencil shows.
    private static void AssertTangentContinuous(ReadOnlySpan<CubicBezier> pieces, string what)
    {
        for (var i = 1; i < pieces.Length; i++)
        {
            Assert.Equal(pieces[i - 1].X3, pieces[i].X0, 1e-9);
            Assert.Equal(pieces[i - 1].Y3, pieces[i].Y0, 1e-9);
            double before = Math.Atan2(pieces[i - 1].DY(1), pieces[i - 1].DX(1)), after = Math.Atan2(pieces[i].DY(0), pieces[i].DX(0));
            Assert.True(Math.Abs(before - after) < 1e-7, $"{what}: corner of {after - before:E2} rad at {pieces[i].X0}");
        }
    }

    private static void AssertMonotoneX(ReadOnlySpan<CubicBezier> pieces, string what)
    {
        foreach (var piece in pieces)
        {
            for (var k = 0; k <= Samples; k++)
                Assert.True(piece.DX(k / (double)Samples) >= -1e-9, $"{what}: x turns back at {piece.X(k / (double)Samples)}");
        }
    }

    private static void AssertOneMaximum(ReadOnlySpan<CubicBezier> pieces, string what)
    {
        for (var p = 0; p < pieces.Length; p++)
        {
            for (var k = 1; k < Samples; k++)
            {
                var slope = pieces[p].DY(k / (double)Samples);
                Assert.True(p == 0 ? slope > 0 : slope < 0, $"{what}: piece {p} turns at {k / (double)Samples}");
                Assert.True(pieces[p].Y(k / (double)Samples) > 0, what + ": half-breadth not positive");
            }
        }
    }

    private static void AssertOneTurnOfCurvature(ReadOnlySpan<CubicBezier> pieces, string what)
    {
        var changes = 0;
        for (var p = 0; p < pieces.Length; p++)
        {
            var last = 0;
            for (var k = 0; k <= Samples; k++)
            {
                var curvature = pieces[p].Curvature(k == Samples ? 1 : k / (double)Samples);
                if (!(Math.Abs(curvature) > 1e-9)) continue;
                if (last != 0 && Math.Sign(curvature) != last) changes++;
                last = Math.Sign(curvature);
                Assert.True(p == 0 || last < 0, $"{what}: bends outwards below the widest point, piece {p} at {k / (double)Samples}");
            }
        }

        Assert.True(changes <= 1, $"{what}: curvature changes sign {changes} times");
    }
}
