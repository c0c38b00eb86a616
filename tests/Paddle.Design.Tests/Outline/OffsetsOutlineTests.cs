using MathNet.Numerics.Interpolation;
using Paddle.Design.Outline;
using Paddle.Design.Tests.Solid;

namespace Paddle.Design.Tests.Outline;

public class OffsetsOutlineTests
{
    private const double ThroatMm = 900;
    private const double ShaftHalfMm = 14;

    private static readonly Offset[] Table =
    [
        new(50, 18), new(100, 30), new(200, 62), new(260, 72), new(350, 70), new(450, 60), new(550, 41), new(620, 22), new(650, 0),
    ];

    // Property: a table of offsets is the maker's word, so the curve passes through every line of it (1e-7 mm: the curve's own 1e-9 mm
    // in x at slopes up to order ten).
    [Fact]
    public void Property_passes_through_every_offset()
    {
        var curve = Draw(Table);
        foreach (var offset in Table) Assert.Equal(offset.HalfBreadthMm, curve.HalfBreadthMm(ThroatMm + offset.XMm), 1e-7);
        Assert.Equal(ShaftHalfMm, curve.HalfBreadthMm(ThroatMm), 1e-9);
        Assert.Equal(0, curve.Pieces[0].DY(0), 1e-12);
    }

    // Published algorithm: MathNet.Numerics' PCHIP between the offsets, apart from the first stretch (made tangent to the shaft) and
    // the round tip.
    [Fact]
    public void Published_equals_pchip_between_offsets()
    {
        foreach (var table in RandomTables(300))
        {
            var curve = Draw(table);
            var spline = CubicSpline.InterpolatePchipSorted(
                [ThroatMm, .. table.Select(o => ThroatMm + o.XMm)], [ShaftHalfMm, .. table.Select(o => o.HalfBreadthMm)]);
            for (var x = table[0].XMm; x <= table[^2].XMm; x += 1.7)
                Assert.Equal(spline.Interpolate(ThroatMm + x), curve.HalfBreadthMm(ThroatMm + x), 1e-7);
        }
    }

    // Geometry: where the table runs level into its last stretch, the round tip is a quarter of an ellipse; one cubic leaves it by 3 in 10 000 at most.
    [Fact]
    public void Formula_a_tip_after_a_level_stretch_is_a_quarter_ellipse()
    {
        var curve = Draw([new(100, 30), new(200, 60), new(400, 60), new(500, 60), new(650, 0)]);
        for (var along = 0.02; along < 1; along += 0.02)
            Assert.Equal(1, Math.Sqrt(along * along + Math.Pow(curve.HalfBreadthMm(ThroatMm + 500 + 150 * along) / 60, 2)), 3e-4);
        Assert.Equal(0, curve.HalfBreadthMm(ThroatMm + 650), 1e-6);
    }

    // Property: shape-preserving: between two offsets the half-breadth never leaves the range of the two and never turns.
    [Fact]
    public void Property_monotone_between_offsets()
    {
        foreach (var table in RandomTables(300))
        {
            var curve = Draw(table);
            foreach (var piece in curve.Pieces)
            {
                var sign = Math.Sign(piece.Y3 - piece.Y0);
                for (var k = 0; k < 50; k++)
                {
                    var rise = piece.Y((k + 1) / 50.0) - piece.Y(k / 50.0);
                    Assert.True(rise * sign >= -1e-9, $"turns between {piece.X0} and {piece.X3}");
                    Assert.True(piece.DX(k / 50.0) >= 0, "x turns back");
                }
            }
        }
    }

    // Property: tangent-continuous at every offset; a table that ends in nothing has a round tip, square to the centre line.
    [Fact]
    public void Property_smooth_with_a_round_tip()
    {
        foreach (var table in RandomTables(100))
        {
            var pieces = Draw(table).Pieces;
            for (var i = 1; i < pieces.Length; i++)
                Assert.Equal(pieces[i - 1].DY(1) / pieces[i - 1].DX(1), pieces[i].DY(0) / pieces[i].DX(0), 1e-9);
            Assert.Equal(0, pieces[^1].DX(1), 1e-9);
            Assert.True(pieces[^1].DY(1) < 0);
        }
    }

    // Property: a table that ends in a breadth keeps its square end.
    [Fact]
    public void Property_square_end_is_kept()
    {
        var curve = Draw([new(100, 40), new(300, 90), new(450, 95), new(500, 80)]);
        Assert.Equal(80, curve.Pieces[^1].Y3, 1e-12);
        Assert.Equal(ThroatMm + 500, curve.EndMm, 1e-12);
    }

    [Fact]
    public void Property_widest_is_read_from_the_table()
    {
        var (width, at) = OffsetsOutline.Widest(Table);
        Assert.Equal(144, width, 1e-12);
        Assert.Equal(260.0 / 650, at, 1e-12);
    }

    private static HalfBreadthCurve Draw(Offset[] table) =>
        new(BladePlan.For(TestPaddles.OffsetsBlade(table)).Draw(ThroatMm, ShaftHalfMm));

    // Rising to one widest station, then falling to nothing: what a maker's blade does, with uneven stations.
    private static IEnumerable<Offset[]> RandomTables(int count)
    {
        var random = new Random(7);
        for (var n = 0; n < count; n++)
        {
            var lines = 4 + random.Next(12);
            var widest = 1 + random.Next(lines - 2);
            double x = 0, y = ShaftHalfMm;
            var table = new Offset[lines];
            for (var i = 0; i < lines; i++)
            {
                x += 10 + 90 * random.NextDouble();
                y = i <= widest ? y + 25 * random.NextDouble() : y * (0.4 + 0.6 * random.NextDouble());
                table[i] = new(x, i == lines - 1 ? 0 : y);
            }

            yield return table;
        }
    }
}
