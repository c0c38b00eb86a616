using Paddle.Design.Balance;
using Paddle.Design.Finishing;
using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Tests.Solid;

namespace Paddle.Design.Tests.Balance;

public class DesignProblemTests
{
    // Property: every gradient against central differences at random sizes inside the limits. Step 1e-4 mm: truncation of order 1e-8,
    // rounding of order 1e-9, of a value per millimetre; 1e-6 of the value plus 1e-6 of the row's largest slope allowed.
    [Theory]
    [InlineData("ottertail", 0, GripStyle.Pear)]
    [InlineData("square-tip", 0, GripStyle.T)]
    [InlineData("teardrop", 12, GripStyle.Palm)]
    [InlineData("voyageur", 0, GripStyle.Pear)]
    public void Property_gradients_equal_differences(string family, double bend, GripStyle style)
    {
        var form = TestPaddles.Form(TestPaddles.Blade(family), bend: bend, style: style);
        var aims = new Aims(BalanceAim.LowerHand, 12, 1.5, 5, 20, null);
        var problem = DesignProblem.State(TestPaddles.Asked(form, aims: aims));
        var random = new Random(41);
        for (var trial = 0; trial < 40; trial++)
        {
            var v = ThinningSizes(problem, random);
            problem.Evaluate(v);
            var rowCount = problem.RowCount;
            double[] costGradient = [.. problem.CostGradient], gradients = [.. problem.RowGradients];
            for (var k = 0; k < PaddleSizes.Count; k++)
            {
                const double Step = 1e-4;
                var (up, costUp) = At(problem, v, k, Step);
                var (down, costDown) = At(problem, v, k, -Step);
                Assert.Equal((costUp - costDown) / (2 * Step), costGradient[k], 2e-6 * (1 + Math.Abs(costGradient[k])));
                for (var r = 0; r < rowCount; r++)
                {
                    var largest = Enumerable.Range(0, PaddleSizes.Count).Max(j => Math.Abs(gradients[r * PaddleSizes.Count + j]));
                    var difference = (up[r] - down[r]) / (2 * Step);
                    var gradient = gradients[r * PaddleSizes.Count + k];
                    Assert.True(
                        Math.Abs(difference - gradient) <= 2e-6 * (1 + largest),
                        $"{family} row {r} ({problem.Limits[r].Id}) size {SizeLimits.Names[k]}: {gradient} against {difference}");
                }
            }
        }
    }

    // Property: the problem's mass and balance are the solid's on the same grid: exact at the sizes the outline was taken at, within 0.02 %
    // and 0.1 mm at others, where the outline's answer to the shaft's width is taken as a straight line.
    [Theory]
    [InlineData("ottertail")]
    [InlineData("beavertail")]
    [InlineData("voyageur")]
    public void Property_mass_and_balance_are_the_solids(string family)
    {
        var form = TestPaddles.Form(TestPaddles.Blade(family));
        var aims = new Aims(BalanceAim.LowerHand, 12, 1.5, null, null, null);
        var around = TestPaddles.UsualSizes;
        var bare = TestPaddles.Asked(form, aims: aims) with { Finish = new(SurfaceFinish.None, 0, SurfaceFinish.None, 0, false) };
        var problem = DesignProblem.State(bare, around: around);
        var random = new Random(43);
        for (var trial = 0; trial < 50; trial++)
        {
            var v = ThinningSizes(problem, random);
            if (trial == 0) around.CopyTo(v);
            problem.Evaluate(v);
            var solid = TestPaddles.Shape(form, StationGrid.Coarse, PaddleSizes.FromVector(v));
            var mass = MassProperties.Of(solid, TestPaddles.Ash.DensityKgM3);
            TestPaddles.AssertRelative(mass.TotalG, problem.MassG, trial == 0 ? 1e-9 : 2e-4, "mass");
            Assert.Equal(mass.CentreOfMassMm, problem.CentreMm, trial == 0 ? 1e-6 : 0.1);
        }
    }

    // Property: the balance that is aimed at is that of the finished paddle.
    [Fact]
    public void Property_the_finish_is_weighed()
    {
        var form = TestPaddles.Form(TestPaddles.Blade("ottertail"));
        var around = TestPaddles.UsualSizes;
        var problem = DesignProblem.State(TestPaddles.Asked(form), around: around);
        var v = new double[PaddleSizes.Count];
        around.CopyTo(v);
        problem.Evaluate(v);
        var solid = TestPaddles.Shape(form, StationGrid.Coarse);
        var mass = MassProperties.Of(solid, TestPaddles.Ash.DensityKgM3);
        var finished = FinishedMass.Of(form.Places, mass, FinishLoad.On(solid, FinishChoice.Usual));
        Assert.Equal(finished.CentreOfMassMm, problem.CentreMm, 1e-6);
        Assert.InRange(finished.ShiftMm, 5, 12);
    }

    // Property: pinned sizes stay put and bound their neighbours, so that the blade can still thin all the way.
    [Fact]
    public void Property_pinned_sizes_bound_their_neighbours()
    {
        var pinned = new double?[PaddleSizes.Count];
        pinned[5] = 20; // middle
        var problem = DesignProblem.State(TestPaddles.Asked(TestPaddles.Form(TestPaddles.Blade("ottertail")), pinned: pinned));
        Assert.Equal((20, 20), (problem.Low[5], problem.High[5]));
        Assert.True(problem.Low[4] >= 20 && problem.High[6] <= 20 && problem.High[7] <= 20);
        for (var k = 0; k < PaddleSizes.Count; k++) Assert.InRange(problem.Start[k], problem.Low[k], problem.High[k]);
    }

    // Property: a spine that is level but for rounding has the gradient of one that just thins.
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void Property_gradient_does_not_jump_at_a_level_spine(int size)
    {
        double[] level = [30, 30, 27, 28, 30, 11, 7, 4.5, 29], above = [.. level], below = [.. level];
        var sign = size == 1 ? -1 : 1;
        above[size] += sign * 1e-13;
        below[size] -= sign * 1e-13;
        var (a, b) = (SpineSensitivity.At(above), SpineSensitivity.At(below));
        Assert.Equal(b.ThroatByShaft, a.ThroatByShaft, 1e-6 * Math.Abs(b.ThroatByShaft));
        Assert.Equal(b.ThroatByThroat, a.ThroatByThroat, 1e-6 * Math.Abs(b.ThroatByThroat));
        Assert.True(b.ThroatByThroat != 0);
    }

    internal static double[] ThinningSizes(DesignProblem problem, Random random)
    {
        var v = new double[PaddleSizes.Count];
        for (var k = 0; k < v.Length; k++)
            v[k] = problem.Low[k] + (problem.High[k] - problem.Low[k]) * (0.02 + 0.96 * random.NextDouble());
        v[4] = Math.Min(v[4], v[1] - 0.1);
        v[5] = Math.Min(v[5], v[4] - 0.1);
        v[6] = Math.Min(v[6], v[5] - 0.1);
        v[7] = Math.Min(v[7], v[6] - 0.1);
        return v;
    }

    private static (double[] Rows, double Cost) At(DesignProblem problem, double[] v, int k, double step)
    {
        double[] moved = [.. v];
        moved[k] += step;
        problem.Evaluate(moved);
        return ([.. problem.Rows], problem.CostG);
    }
}
