using Paddle.Design.Build;

namespace Paddle.Design.Tests.Build;

public class RemovalProgramTests
{
    [Fact]
    public void The_linear_program_finds_the_best_of_all_vertices()
    {
        var random = new Random(31);
        var solved = 0;
        for (var trial = 0; trial < 400; trial++)
        {
            int n = 2 + random.Next(3), m = 3 + random.Next(4);
            double[] cost = [.. Enumerable.Range(0, n).Select(_ => random.NextDouble())];
            var rows = Enumerable.Range(0, m).Select(_ => Enumerable.Range(0, n).Select(_ => 2 * random.NextDouble() - 1).ToArray()).ToList();
            double[] bounds = [.. Enumerable.Range(0, m).Select(_ => 1.5 * random.NextDouble() - 0.4)];
            var best = BestVertex(cost, rows, bounds);
            var found = LeastCostProgram.Solve(cost, rows, bounds);
            if (best is null)
            {
                Assert.Null(found);
                continue;
            }

            solved++;
            Assert.NotNull(found);
            Assert.All(rows.Zip(bounds), row => Assert.True(row.First.Zip(found, (a, x) => a * x).Sum() <= row.Second + 1e-8));
            Assert.Equal(best.Value, cost.Zip(found, (c, x) => c * x).Sum(), 7);
        }

        Assert.True(solved > 200);
    }

    [Fact]
    public void No_other_cut_on_a_grid_takes_less_wood()
    {
        // Three zones with their own arms, one shared station, an aim 13 mm away: every cut on a grid of 0.05 mm is tried.
        const double Mass = 800, Balance = 880, Aim = 893, Reach = 5;
        double[] grams = [1.6, 5.4, 2.5], arms = [60, 350, 700];
        double[] first = [.. grams.Zip(arms, (g, a) => g * a)];
        double[][] shares = [[1, 0, 0], [0.4, 0.6, 0], [0, 1, 0], [0, 0.3, 0.7]];
        double[] limits = [3, 2.2, 2.9, 1.5];
        var (depth, missed) = RemovalProgram.Solve(Mass, Mass * Balance, grams, first, Aim - Reach, Aim + Reach, 0, shares, limits);
        Assert.Equal(0, missed, 9);

        double Wood(double[] d) => d.Zip(grams, (x, g) => x * g).Sum();
        bool Holds(double[] d)
        {
            for (var i = 0; i < shares.Length; i++)
            {
                if (shares[i].Zip(d, (s, x) => s * x).Sum() > limits[i] + 1e-9) return false;
            }

            var balance = (Mass * Balance - d.Zip(first, (x, f) => x * f).Sum()) / (Mass - Wood(d));
            return Math.Abs(balance - Aim) <= Reach + 1e-9;
        }

        Assert.True(Holds([.. depth]));
        var least = double.PositiveInfinity;
        for (var a = 0; a <= 60; a++)
        {
            for (var b = 0; b <= 60; b++)
            {
                for (var c = 0; c <= 60; c++)
                {
                    double[] d = [a * 0.05, b * 0.05, c * 0.05];
                    if (Holds(d)) least = Math.Min(least, Wood(d));
                }
            }
        }

        Assert.True(Wood(depth) <= least + 1e-9, "a cut on the grid takes less wood");
        Assert.True(least < Wood(depth) + 0.4, "the grid comes near the optimum");
    }

    [Fact]
    public void What_cannot_be_reached_is_missed_by_as_little_as_the_limits_let()
    {
        double[] grams = [2, 3], first = [2 * 100, 3 * 400];
        var (depth, missed) = RemovalProgram.Solve(800, 800 * 800, grams, first, 895, 905, 0, [[1, 0], [0, 1]], [1, 1]);
        Assert.Equal([1, 1], depth);
        var balance = (800 * 800 - first.Sum()) / (800 - grams.Sum());
        Assert.Equal((900 - 5 - balance) * (800 - grams.Sum()) / 800, missed, 6);
    }

    // Every choice of n rows (or zero bounds) taken as equalities, solved by Cramer-free elimination.
    private static double? BestVertex(double[] cost, List<double[]> rows, double[] bounds)
    {
        var n = cost.Length;
        var all = rows.Zip(bounds, (row, bound) => (Row: row, Bound: bound)).ToList();
        for (var j = 0; j < n; j++)
        {
            var unit = new double[n];
            unit[j] = -1;
            all.Add((unit, 0));
        }

        double? best = null;
        foreach (var choice in Choices(all.Count, n))
        {
            var x = Solve([.. choice.Select(i => (double[])all[i].Row.Clone())], [.. choice.Select(i => all[i].Bound)]);
            if (x is null || all.Any(row => row.Row.Zip(x, (a, v) => a * v).Sum() > row.Bound + 1e-9)) continue;
            var value = cost.Zip(x, (c, v) => c * v).Sum();
            if (best is null || value < best) best = value;
        }

        return best;
    }

    private static IEnumerable<int[]> Choices(int count, int take)
    {
        if (take == 0)
        {
            yield return [];
            yield break;
        }

        for (var last = take - 1; last < count; last++)
        {
            foreach (var rest in Choices(last, take - 1)) yield return [.. rest, last];
        }
    }

    private static double[]? Solve(double[][] a, double[] b)
    {
        var n = b.Length;
        for (var c = 0; c < n; c++)
        {
            var pivot = Enumerable.Range(c, n - c).MaxBy(r => Math.Abs(a[r][c]));
            if (Math.Abs(a[pivot][c]) < 1e-10) return null;
            (a[c], a[pivot], b[c], b[pivot]) = (a[pivot], a[c], b[pivot], b[c]);
            for (var r = 0; r < n; r++)
            {
                if (r == c) continue;
                var factor = a[r][c] / a[c][c];
                for (var k = c; k < n; k++) a[r][k] -= factor * a[c][k];
                b[r] -= factor * b[c];
            }
        }

        return [.. b.Select((value, i) => value / a[i][i])];
    }
}
