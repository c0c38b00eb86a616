using Paddle.Design.Balance;
using Paddle.Design.Solid;
using Paddle.Design.Tests.Solid;

namespace Paddle.Design.Tests.Balance;

/// <summary>What the solver's rows mean, in the units of the aims and held against the report of the same sizes, which sums on a grid of its own.</summary>
public class ProblemRowsTests
{
    private static readonly PaddleForm Form = TestPaddles.Form(TestPaddles.Blade("ottertail"));

    [Theory]
    [InlineData(12)]
    [InlineData(5)]
    public void Rows_of_balance_and_flex_are_the_reports_figures_against_the_aims(double toleranceMm)
    {
        const double LeastMm = 4, MostMm = 20;
        var asked = TestPaddles.Asked(Form, aims: new(BalanceAim.LowerHand, toleranceMm, 1.5, LeastMm, MostMm, null));
        var report = PaddleDesigner.Design(asked with { Pinned = PinnedSizes.To(TestPaddles.UsualSizes) });
        var (problem, _) = Evaluated(asked);
        var rows = Enumerable.Range(0, problem.RowCount).Select(r => (Limit: problem.Limits[r], Row: problem.Rows[r])).ToList();
        double InItsUnit((Limit Limit, double Row) row) => row.Row / row.Limit.RowPerUnit;

        // A hair is kept back for rounding: 2 % of the tolerance, 2 in 1000 of a flex.
        var balance = rows.Where(row => row.Limit.Id == "aims.balanceToleranceMm").ToList();
        Assert.Equal(2, balance.Count);
        Assert.All(balance, row => Assert.Equal("mm", row.Limit.Unit));
        Assert.Equal(2 * toleranceMm, InItsUnit(balance[0]) + InItsUnit(balance[1]), 0.05 * toleranceMm);
        Assert.Equal(report.Balance.OffsetMm, (InItsUnit(balance[1]) - InItsUnit(balance[0])) / 2, 0.5);

        var most = Assert.Single(rows, row => row.Limit.Id == "aims.benchFlexMm.max");
        var least = Assert.Single(rows, row => row.Limit.Id == "aims.benchFlexMm.min");
        TestPaddles.AssertRelative(report.Flex.BenchFlexMm, MostMm - InItsUnit(most), 0.015, "most");
        TestPaddles.AssertRelative(report.Flex.BenchFlexMm, LeastMm + InItsUnit(least), 0.015, "least");
        TestPaddles.AssertRelative(report.Mass.TotalG, problem.MassG, 1e-3, "mass");
    }

    // The row of strength is the root of what is borne over what is asked, less one: squared it is the margin that the report finds at the worst of its
    // places; the rows stand some centimetres apart. A unit of safety moves it by half of its share (calculus).
    [Theory]
    [InlineData(1.2)]
    [InlineData(2)]
    public void The_least_row_of_strength_is_the_reports_margin(double leastFactor)
    {
        var asked = TestPaddles.Asked(Form, loads: TestPaddles.Loads(leastFactor: leastFactor), aims: new(BalanceAim.LowerHand, 12, leastFactor, null, null, null));
        var report = PaddleDesigner.Design(asked with { Pinned = PinnedSizes.To(TestPaddles.UsualSizes) });
        var (problem, _) = Evaluated(asked);
        var rows = Enumerable.Range(0, problem.RowCount).Where(r => problem.Limits[r].Group == LimitGroup.Strength).ToList();
        TestPaddles.AssertRelative(report.Strength.AlongTheGrainMargin, Math.Pow(1 + rows.Min(r => problem.Rows[r]), 2), 0.04);
        Assert.All(rows, r => Assert.Equal(0.5 / leastFactor, problem.Limits[r].RowPerUnit, 9));
        Assert.All(rows, r => Assert.Equal("strength.safetyFactor", problem.Limits[r].Id));
    }

    // A small paddle is carved in proportion, from the women's 5th percentile of hand spacing, 742 mm (ANSUR II), down to a shaft of 7/8 in for one of
    // 1 1/8 in, 22 mm for 28 (common practice, no source).
    [Theory]
    [InlineData(900, 1)]
    [InlineData(742, 1)]
    [InlineData(667.8, 0.9)]
    [InlineData(584, 0.78706)]
    [InlineData(500, 0.78571)]
    public void A_small_paddle_is_carved_in_proportion(double handSpacingMm, double share) => Assert.Equal(share, SizeLimits.SmallShare(handSpacingMm), 1e-4);

    // Spine and edges of a small paddle keep their share at both ends; a shaft may be as thick as its loads ask, and none thinner than may be pinned.
    [Theory]
    [InlineData(0.1)]
    [InlineData(25.4 / 32)]
    public void Limits_of_a_small_paddle_are_an_adults_share(double latticeMm)
    {
        foreach (var isSoftwood in (bool[])[false, true])
        {
            var (adult, small) = (SizeLimits.For(isSoftwood, 1, null, latticeMm), SizeLimits.For(isSoftwood, 0.8, null, latticeMm));
            for (var k = 0; k < adult.Length; k++)
            {
                var name = SizeLimits.Names[k];
                var isSpine = name is "blade.middleThicknessMm" or "blade.tipThicknessMm" or "blade.edgeThicknessMm";
                Assert.Equal(isSpine ? 0.8 * adult[k].Max : adult[k].Max, small[k].Max, latticeMm);
                if (!isSpine) Assert.Equal(adult[k].Max, small[k].Max);
                Assert.InRange(small[k].Min, Math.Max(SizeLimits.Pinned[k].Min, 0.8 * adult[k].Min - latticeMm) - 1e-9, Math.Max(SizeLimits.Pinned[k].Min, 0.8 * adult[k].Min) + latticeMm);
                Assert.Equal(0, Math.IEEERemainder(small[k].Min / latticeMm, 1), 1e-6);
                Assert.True(isSoftwood || adult[k].Max <= SizeLimits.For(true, 1, null, latticeMm)[k].Max, "softwood is carved no thinner");
            }
        }
    }

    // Two rows between the sizes of a shaft as a maker says them: it fills the hand by the mean of both its sizes, less on a small paddle; it tapers by a
    // difference, which on an inch rule is the nearest thirty-second.
    [Fact]
    public void Rows_of_shape_are_what_a_maker_says()
    {
        const double Lattice = 25.4 / 32;
        var rows = ShapeRow.For(SizeSet.Open(new()), 0.8, Lattice).ToDictionary(row => row.Id);
        var v = new double[PaddleSizes.Count];
        TestPaddles.UsualSizes.CopyTo(v);
        double Value(string id) => rows[id].Constant + rows[id].FirstWeight * v[rows[id].First] + rows[id].SecondWeight * v[rows[id].Second];
        var s = TestPaddles.UsualSizes;
        Assert.Equal((s.ShaftWidthMm + s.ShaftThicknessMm) / 2 - 0.8 * SizeLimits.LeastMeanAtLowerHandMm, Value("shaft.fills-the-lower-hand"), 9);
        Assert.Equal((s.UpperWidthMm + s.UpperThicknessMm) / 2 - 0.8 * SizeLimits.LeastMeanAtGripMm, Value("shaft.fills-the-hand-below-the-grip"), 9);
        Assert.Equal(9 * Lattice - (s.ShaftWidthMm - s.UpperWidthMm), Value("shaft.width-taper"), 9); // 7 mm are 8.8 thirty-seconds
        Assert.Equal(9 * Lattice - (s.ShaftThicknessMm - s.UpperThicknessMm), Value("shaft.thickness-taper"), 9);
        Assert.Equal(s.UpperThicknessMm - s.UpperWidthMm, Value("shaft.upper-not-wider-than-thick"), 9);
        Assert.Equal(1.25 * s.UpperWidthMm - s.UpperThicknessMm, Value("shaft.upper-not-too-oval"), 9);
        Assert.Equal(1.25 * s.ShaftWidthMm - s.ShaftThicknessMm, Value("shaft.not-too-oval"), 9);
        Assert.Equal(s.ShaftThicknessMm - s.UpperThicknessMm, Value("shaft.thickness-not-growing-upwards"), 9);
        Assert.Equal(s.ShaftThicknessMm - s.ThroatThicknessMm, Value("blade.throat-not-thicker-than-shaft"), 9);
        Assert.Equal(s.ThroatThicknessMm - s.MiddleThicknessMm, Value("blade.thins-towards-middle"), 9);
        Assert.Equal(s.MiddleThicknessMm - s.TipThicknessMm, Value("blade.thins-towards-tip"), 9);
        Assert.Equal(s.TipThicknessMm - s.EdgeThicknessMm, Value("blade.tip-not-thinner-than-edge"), 9);
        Assert.Equal(s.ThroatThicknessMm - s.ShaftThicknessMm + 6 * Lattice, Value("blade.throat-holds-the-shaft's-depth"), 9); // 5 mm are 6.3
        Assert.Equal(s.ShaftWidthMm - s.UpperWidthMm, Value("shaft.width-not-growing-upwards"), 9);
        Assert.Equal(s.ShaftThicknessMm - s.ShaftWidthMm, Value("shaft.not-wider-than-thick"), 9);
        Assert.Equal(s.MiddleThicknessMm - s.TipThicknessMm - 3 * Lattice, Value("blade.lower-half-thins"), 9); // 2 mm are 2.52
        Assert.Equal(s.TipThicknessMm - s.EdgeThicknessMm - Lattice, Value("blade.tip-thicker-than-edge"), 9);
        Assert.Equal(s.EdgeThicknessMm - s.TipThicknessMm + 4 * Lattice, Value("blade.tip-fairs-into-edge"), 9); // 3 mm are 3.8
    }

    // Between two sizes that the maker has fixed there is nothing left to choose; where one is free the limit stays.
    [Fact]
    public void Limits_between_two_fixed_sizes_are_left_out()
    {
        var s = TestPaddles.UsualSizes;
        var rows = ShapeRow.For(SizeSet.Open(PinnedSizes.To(s) with { MiddleThicknessMm = null }), 1, 0.1);
        Assert.Equal(["blade.thins-towards-middle", "blade.thins-towards-tip", "blade.lower-half-thins"], rows.Select(row => row.Id));
        Assert.Empty(ShapeRow.For(SizeSet.Open(PinnedSizes.To(s)), 1, 0.1));
    }

    private static (DesignProblem Problem, double[] Sizes) Evaluated(PaddleSpecification asked)
    {
        var problem = DesignProblem.State(asked, around: TestPaddles.UsualSizes);
        var v = new double[PaddleSizes.Count];
        TestPaddles.UsualSizes.CopyTo(v);
        problem.Evaluate(v);
        return (problem, v);
    }
}
