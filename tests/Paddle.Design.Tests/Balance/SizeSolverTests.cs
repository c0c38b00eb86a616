using FsCheck.Xunit;
using Paddle.Design.Balance;
using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Tests.Solid;
using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Balance;

public class SizeSolverTests
{
    private const int N = PaddleSizes.Count;

    // Forty steps, each halved eleven times at most, from each of four starts.
    private const int MostEvaluations = 4 * (40 * 12 + 2);

    public static TheoryData<string, string, double, double, double?, double?, int, double> Cases => new()
    {
        // family, wood, body mass, safety factor, most flex, least flex, pinned size (-1 none), pinned to
        { "ottertail", "white-ash", 75, 1.5, null, null, -1, 0 },
        { "ottertail", "white-ash", 60, 1.2, 20, 8, -1, 0 },
        { "beavertail", "sugar-maple", 75, 1.5, null, null, -1, 0 },
        { "beavertail", "black-cherry", 55, 1.0, null, null, 4, 26 },
        { "voyageur", "sitka-spruce", 70, 1.2, null, null, -1, 0 },
        { "sturgeon-nose", "black-walnut", 65, 1.2, 25, null, -1, 0 },
        { "sugar-island", "yellow-birch", 80, 1.3, null, null, 5, 12 },
        { "square-tip", "white-oak", 75, 1.2, null, null, -1, 0 },
        { "teardrop", "shagbark-hickory", 75, 1.5, null, null, -1, 0 },

        // What cannot be had: a weak wood, a heavy paddler, a stiff paddle.
        { "teardrop", "northern-white-cedar", 90, 1.8, null, null, -1, 0 },
        { "ottertail", "western-redcedar", 100, 2.0, 5, null, -1, 0 },
        { "voyageur", "american-basswood", 95, 1.8, null, null, 1, 28 },
        { "square-tip", "quaking-aspen", 75, 1.5, null, null, 8, 30 },
        { "beavertail", "butternut", 80, 1.5, 6, 4, -1, 0 },
    };

    // Property: the solver's answer is never worse than the best point of a coarse grid: three or four levels of each size
    // (two of the ballast), without those that the shape's own rules exclude, and random points besides. No tolerance.
    [Theory, Trait(Sweep.Name, Sweep.Full)]
    [MemberData(nameof(Cases))]
    public void Property_never_worse_than_a_coarse_grid(
        string family, string species, double bodyMass, double factor, double? mostFlex, double? leastFlex, int pinnedSize, double pinnedTo)
    {
        var problem = State(family, species, bodyMass, factor, mostFlex, leastFlex, pinnedSize, pinnedTo);
        var v = (double[])problem.Start.Clone();
        var solver = SizeSolver.SolveFromSeveralStarts(problem, v);
        var merit = MeritAt(problem, v);
        Assert.InRange(solver.Evaluations, 1, MostEvaluations);

        var best = double.PositiveInfinity;
        foreach (var point in Grid(problem, Sweep.Of(3, 4)).Concat(RandomPoints(problem, Sweep.Of(1000, 5000)))) best = Math.Min(best, MeritAt(problem, point));
        Assert.True(merit <= best, $"solver {merit:F3}, grid {best:F3}");
    }

    // Property: the same question has the same answer, to the last bit.
    [Theory]
    [MemberData(nameof(Cases))]
    public void Property_deterministic(
        string family, string species, double bodyMass, double factor, double? mostFlex, double? leastFlex, int pinnedSize, double pinnedTo)
    {
        double[] Solve()
        {
            var problem = State(family, species, bodyMass, factor, mostFlex, leastFlex, pinnedSize, pinnedTo);
            var v = (double[])problem.Start.Clone();
            SizeSolver.SolveFromSeveralStarts(problem, v);
            return v;
        }

        Assert.Equal(Solve(), Solve());
    }

    // Property: from other starts the solver finds nothing better by more than 1 % of the mass. Strict where the aims can be met; where they
    // cannot, what is missed is missed by as little to 1 % of the aim.
    [Theory]
    [MemberData(nameof(Cases))]
    public void Property_other_starts_find_nothing_much_better(
        string family, string species, double bodyMass, double factor, double? mostFlex, double? leastFlex, int pinnedSize, double pinnedTo)
    {
        var problem = State(family, species, bodyMass, factor, mostFlex, leastFlex, pinnedSize, pinnedTo);
        var v = (double[])problem.Start.Clone();
        SizeSolver.SolveFromSeveralStarts(problem, v);
        var merit = MeritAt(problem, v);
        Assert.All(FromTwentyStarts(problem, seed: 53), other => Assert.True(merit <= 1.01 * other, $"another start ends at {other:F3}, the solver at {merit:F3}"));
    }

    // Property: the answer stands. Started again from it, with nothing learnt of the curvature, the solver gains less than a hundredth of a gram.
    // Stopped at its eighth step it would gain grams in four. In the last three a face lies level, where the taper's allowance kinks: without the
    // tangents beyond the kink forty steps creep along it and leave 0.8 to 2.0 g.
    [Theory]
    [MemberData(nameof(Cases))]
    [InlineData("voyageur", "northern-white-cedar", 60, 1.2, null, 25.0, -1, 0)]
    [InlineData("sturgeon-nose", "sitka-spruce", 75, 1.5, null, null, -1, 0)]
    [InlineData("beavertail", "northern-white-cedar", 60, 1.2, null, null, -1, 0)]
    [InlineData("sturgeon-nose", "northern-white-cedar", 60, 1.2, null, null, -1, 0)]
    [InlineData("sugar-island", "northern-white-cedar", 60, 1.2, 20.0, 8.0, -1, 0)]
    [InlineData("square-tip", "sitka-spruce", 75, 1.5, 10.0, null, -1, 0)]
    [InlineData("beavertail", "northern-white-cedar", 60, 1.2, 20.0, 8.0, -1, 0)]
    public void Property_an_answer_is_where_nothing_more_is_gained(
        string family, string species, double bodyMass, double factor, double? mostFlex, double? leastFlex, int pinnedSize, double pinnedTo)
    {
        var problem = State(family, species, bodyMass, factor, mostFlex, leastFlex, pinnedSize, pinnedTo);
        var v = (double[])problem.Start.Clone();
        SizeSolver.Solve(problem, v);
        var merit = MeritAt(problem, v);
        SizeSolver.Solve(problem, v);
        Assert.InRange(merit - MeritAt(problem, v), -1e-9 * merit, 0.01);
    }

    // Property: where aims clash there are several valleys, and the deepest that twenty random starts find is found. From the usual start alone
    // the first three end in another one, 74, 104 and 235 g of penalty higher and up to 3.75 mm away; without the last of the other starts the fourth
    // does, 5 g higher.
    [Theory]
    [InlineData("sturgeon-nose", "black-cherry", 60, 1.2, 25, 8, 40)]
    [InlineData("square-tip", "western-redcedar", 75, 1.5, 25, 5, 5)]
    [InlineData("square-tip", "northern-white-cedar", 60, 1.2, 25, 5, 5)]
    [InlineData("sturgeon-nose", "sitka-spruce", 60, 1.2, 25, 8, 34)]
    public void Property_the_deepest_valley_is_found(
        string family, string species, double bodyMass, double factor, double leastFlex, int pinnedSize, double pinnedTo)
    {
        var problem = State(family, species, bodyMass, factor, null, leastFlex, pinnedSize, pinnedTo);
        var v = (double[])problem.Start.Clone();
        SizeSolver.SolveFromSeveralStarts(problem, v);
        var merit = MeritAt(problem, v);
        Assert.All(FromTwentyStarts(problem, seed: 61), other => Assert.InRange(other, merit * (1 - 1e-4), double.PositiveInfinity));
    }

    // Where the solver ends from random starts, without the others that it would try itself.
    private static IEnumerable<double> FromTwentyStarts(DesignProblem problem, int seed)
    {
        var random = new Random(seed);
        return Enumerable.Range(0, 20).Select(_ =>
        {
            var w = RandomPoint(problem, random);
            SizeSolver.Solve(problem, w);
            return MeritAt(problem, w);
        });
    }

    // Property: any paddle that may be asked for gives finite sizes within their limits, a blade that thins all the way, in a bounded number
    // of evaluations. Shape rules are held to 0.01 mm unless the strength cannot be had without breaking them, or a pinned size sets two of them at odds.
    [Property(MaxTest = 400, QuietOnSuccess = true)]
    public void Property_any_paddle_gives_sound_sizes(
        byte family, ushort length, ushort width, byte widestAt, byte fullness, ushort spacing, byte wood, byte mass, byte options)
    {
        var f = BladeFamilies.All[family % BladeFamilies.All.Count];
        double Of(double low, double high, int value, int top) => low + (high - low) * (value % (top + 1)) / top;
        var blade = TestPaddles.Blade(
            f.Id,
            Of(350, 1000, length, 650),
            Of(70, 240, width, 170),
            Of(f.WidestAtLimits.Min, f.WidestAtLimits.Max, widestAt, 255),
            Of(f.FullnessLimits.Min, f.FullnessLimits.Max, fullness, 255));
        var form = TestPaddles.Form(
            blade, Of(500, 1100, spacing, 600), Of(25, 60, options, 7), options % 3 == 0 ? Of(0, 15, options, 15) : 0,
            (GripStyle)(options % 3), (GripFaces)(options / 4 % 2));
        var species = WoodCatalogue.All[wood % WoodCatalogue.All.Count];
        var aims = new Aims(
            (BalanceAim)(options / 8 % 2), Of(3, 15, length, 12), Of(1, 2.5, width, 30), null, options % 5 == 0 ? Of(3, 30, mass, 27) : null, null);
        var pinned = new double?[N];
        if (options / 16 % 3 == 0)
        {
            var size = options % N;
            pinned[size] = Of(SizeLimits.Solver[size].Min, SizeLimits.Solver[size].Max, mass, 100);
        }

        var problem = DesignProblem.State(TestPaddles.Asked(
            form, WoodInUse.Resolve(species, Of(8, 18, wood, 10), Of(0, 0.06, wood, 6), null, null),
            TestPaddles.Loads(Of(40, 120, mass, 80), aims.MinimumSafetyFactor), aims, pinned));
        var v = (double[])problem.Start.Clone();
        var solver = SizeSolver.SolveFromSeveralStarts(problem, v);
        Assert.InRange(solver.Evaluations, 1, MostEvaluations);
        for (var k = 0; k < N; k++)
        {
            Assert.True(double.IsFinite(v[k]));
            Assert.InRange(v[k], problem.Low[k] - 1e-9, problem.High[k] + 1e-9);
        }

        Assert.True(double.IsFinite(MeritAt(problem, v)));
        var broken = MostBroken(problem, LimitGroup.Comfort);
        if (Array.TrueForAll(pinned, size => size is null) && MostBroken(problem, LimitGroup.Strength) < 1e-3)
            Assert.InRange(broken, 0, 0.01);
        foreach (var (thicker, thinner) in new[] { (1, 4), (4, 5), (5, 6), (6, 7) })
            Assert.True(v[thicker] >= v[thinner] - broken - 0.01, $"{SizeLimits.Names[thinner]} {v[thinner]} over {v[thicker]}");
    }

    // Property: a pinned size that one rule of shape cannot live with does not let the other rules go.
    [Theory]
    [InlineData("teardrop", 12)]
    [InlineData("voyageur", 12)]
    [InlineData("voyageur", 14)]
    [InlineData("beavertail", 14)]
    public void Property_a_pin_beyond_a_rule_breaks_that_rule_only(string family, double tipMm)
    {
        var problem = State(family, "sugar-maple", 65, 1.2, null, null, 6, tipMm);
        var v = (double[])problem.Start.Clone();
        SizeSolver.SolveFromSeveralStarts(problem, v);
        Assert.Equal(tipMm, v[6]);
        Assert.True(v[1] >= v[4] - 0.01 && v[4] >= v[5] - 0.01 && v[5] >= v[6] - 0.01);
        Assert.True(v[0] >= v[2] - 0.01 && v[1] >= v[3] - 0.01, "the shaft grows upwards");
        Assert.True((v[0] + v[1]) / 2 >= SizeLimits.LeastMeanAtLowerHandMm - 0.01, "the shaft does not fill the lower hand");
    }

    private static double MostBroken(DesignProblem problem, LimitGroup group) =>
        Enumerable.Range(0, problem.RowCount).Where(r => problem.Limits[r].Group == group).Max(r => Math.Max(0, -problem.Rows[r]));

    private static DesignProblem State(
        string family, string species, double bodyMass, double factor, double? mostFlex, double? leastFlex, int pinnedSize, double pinnedTo)
    {
        var pinned = new double?[N];
        if (pinnedSize >= 0) pinned[pinnedSize] = pinnedTo;
        return DesignProblem.State(TestPaddles.Asked(
            TestPaddles.Form(TestPaddles.Blade(family)), TestPaddles.Wood(species), TestPaddles.Loads(bodyMass, factor),
            new(BalanceAim.LowerHand, 12, factor, leastFlex, mostFlex, null), pinned));
    }

    private static double MeritAt(DesignProblem problem, double[] v)
    {
        problem.Evaluate(v);
        return SizeSolver.Merit(problem);
    }

    private static IEnumerable<double[]> RandomPoints(DesignProblem problem, int count)
    {
        var random = new Random(59);
        for (var n = 0; n < count; n++) yield return RandomPoint(problem, random);
    }

    private static double[] RandomPoint(DesignProblem problem, Random random)
    {
        var v = new double[N];
        for (var k = 0; k < N; k++) v[k] = problem.Low[k] + (problem.High[k] - problem.Low[k]) * random.NextDouble();
        return v;
    }

    // All points of a lattice that thin towards the tip and do not grow towards the grip; the grip's thickness and the upper width, which
    // only carry ballast, at their ends alone.
    private static IEnumerable<double[]> Grid(DesignProblem problem, int levels)
    {
        double At(int k, int level, int of) => problem.Low[k] + (problem.High[k] - problem.Low[k]) * level / (of - 1);
        IEnumerable<double[]> Extend(IEnumerable<double[]> points, int k, int of, Func<double[], bool> keep) =>
            points.SelectMany(point => Enumerable.Range(0, of).Select(level => point.Select((x, j) => j == k ? At(k, level, of) : x).ToArray()))
                .Where(keep);

        IEnumerable<double[]> points = [new double[N]];
        points = Extend(points, 1, levels, _ => true);
        points = Extend(points, 4, levels, v => v[1] >= v[4]);
        points = Extend(points, 5, levels, v => v[4] >= v[5]);
        points = Extend(points, 6, levels, v => v[5] >= v[6]);
        points = Extend(points, 7, levels, v => v[6] >= v[7]);
        points = Extend(points, 0, levels, v => v[1] >= v[0] && v[1] <= SizeLimits.MostOval * v[0] + 2);
        points = Extend(points, 3, levels, v => v[1] >= v[3]);
        points = Extend(points, 2, 2, v => v[0] >= v[2] - 1);
        return Extend(points, 8, 2, _ => true);
    }
}
