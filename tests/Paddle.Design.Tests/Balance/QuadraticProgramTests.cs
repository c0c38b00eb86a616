using Paddle.Design.Balance;

namespace Paddle.Design.Tests.Balance;

public class QuadraticProgramTests
{
    // Property: the optimality (Karush-Kuhn-Tucker) conditions, sufficient for a strictly convex program (Nocedal and Wright, Numerical
    // Optimization, ch. 16, from memory): every row holds, Hd + g is made up of the active rows with multipliers none negative, active rows
    // bind. Tolerance 1e-7 of the program's own scale: condition numbers to 1e6 times rounding.
    [Theory]
    [InlineData(2, 4)]
    [InlineData(5, 12)]
    [InlineData(9, 40)]
    [InlineData(13, 90)]
    public void Property_optimality_conditions(int n, int rowCount)
    {
        var random = new Random(17 + n);
        var program = new QuadraticProgram(n);
        int solved = 0, bound = 0;
        for (var trial = 0; trial < 2000; trial++)
        {
            var p = Program(random, n, rowCount, feasible: true);
            var d = new double[n];
            Assert.True(program.Solve(p.Hessian, p.Gradient, p.Rows, p.Bounds, d), $"trial {trial} is feasible and was refused");
            solved++;
            bound += program.Active.Length;
            AssertOptimal(p, d, program, trial);
        }

        Assert.Equal(2000, solved);
        Assert.True(bound > 1000, "the programs hardly touch their rows: the check would say little");
    }

    // Two rows that rounding alone tells from parallel ask for a step of 1e308 and beyond: no row is broken by a number that is none.
    [Fact]
    public void A_solution_that_is_not_a_number_is_none()
    {
        var d = new double[2];
        Assert.False(new QuadraticProgram(2).Solve([1, 0, 0, 1], [0, 0], [1e-160, 0], [-1e160], d));
    }

    // Property: against every set of active rows tried in turn: the least value among the feasible corners of all sets is the least of all.
    [Fact]
    public void Property_equals_brute_force()
    {
        const int N = 3, Rows = 6;
        var random = new Random(23);
        var program = new QuadraticProgram(N);
        int feasible = 0, infeasible = 0;
        for (var trial = 0; trial < 3000; trial++)
        {
            var p = Program(random, N, Rows, feasible: trial % 3 != 0);
            var best = BruteForce(p);
            var d = new double[N];
            var solved = program.Solve(p.Hessian, p.Gradient, p.Rows, p.Bounds, d);
            Assert.Equal(best is not null, solved);
            if (best is null)
            {
                infeasible++;
                continue;
            }

            feasible++;
            Assert.Equal(Value(p, best), Value(p, d), 1e-7 * (1 + Math.Abs(Value(p, best))));
            for (var i = 0; i < N; i++) Assert.Equal(best[i], d[i], 1e-5 * (1 + Math.Abs(best[i])));
        }

        Assert.True(feasible > 1500 && infeasible > 50, $"{feasible} feasible, {infeasible} not");
    }

    // Hand formula: least ½(x² + y²) on x + y ≥ 2 is at (1, 1) with multiplier 1; unconstrained it is −H⁻¹g.
    [Fact]
    public void Formula_small_programs()
    {
        var program = new QuadraticProgram(2);
        var d = new double[2];
        Assert.True(program.Solve([1, 0, 0, 1], [0, 0], [1, 1], [-2], d));
        Assert.Equal(1, d[0], 1e-12);
        Assert.Equal(1, d[1], 1e-12);
        Assert.Equal(0, program.Active[0]);
        Assert.Equal(1, program.Multipliers[0], 1e-12);

        Assert.True(program.Solve([4, 1, 1, 3], [1, 2], [], [], d));
        Assert.Equal(-1.0 / 11, d[0], 1e-12);
        Assert.Equal(-7.0 / 11, d[1], 1e-12);
        Assert.Equal(0, program.Active.Length);
    }

    // Property: rows that contradict each other are found out.
    [Fact]
    public void Property_contradiction_is_detected()
    {
        var program = new QuadraticProgram(2);
        Assert.False(program.Solve([1, 0, 0, 1], [0, 0], [1, 0, -1, 0], [-1, -1], new double[2])); // x ≥ 1 and x ≤ −1
        Assert.False(program.Solve([1, 0, 0, 1], [0, 0], [1, 1, -1, 0, 0, -1], [-3, 1, 1], new double[2])); // x + y ≥ 3, x ≤ 1, y ≤ 1
    }

    // Property: the same row given twice, or many rows through one corner, do not upset it.
    [Fact]
    public void Property_repeated_rows_are_harmless()
    {
        var random = new Random(31);
        const int N = 5;
        var program = new QuadraticProgram(N);
        for (var trial = 0; trial < 500; trial++)
        {
            var p = Program(random, N, 8, feasible: true);
            var doubled = p with { Rows = [.. p.Rows, .. p.Rows], Bounds = [.. p.Bounds, .. p.Bounds] };
            double[] once = new double[N], twice = new double[N];
            Assert.True(program.Solve(p.Hessian, p.Gradient, p.Rows, p.Bounds, once));
            Assert.True(program.Solve(doubled.Hessian, doubled.Gradient, doubled.Rows, doubled.Bounds, twice));
            for (var i = 0; i < N; i++) Assert.Equal(once[i], twice[i], 1e-6 * (1 + Math.Abs(once[i])));
        }
    }

    private sealed record RandomProgram(double[] Hessian, double[] Gradient, double[] Rows, double[] Bounds);

    private static RandomProgram Program(Random random, int n, int rowCount, bool feasible)
    {
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var factor = new double[n * n];
        for (var i = 0; i < factor.Length; i++) factor[i] = Normal();
        var hessian = new double[n * n];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++)
            {
                for (var k = 0; k < n; k++) hessian[i * n + j] += factor[i * n + k] * factor[j * n + k];
            }

            hessian[i * n + i] += Math.Pow(10, -3 + 4 * random.NextDouble());
        }

        // Symmetric to the last bit.
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < i; j++) hessian[i * n + j] = hessian[j * n + i];
        }

        double[] rows = [.. Enumerable.Range(0, rowCount * n).Select(_ => Normal())], bounds = new double[rowCount];
        double[] inside = [.. Enumerable.Range(0, n).Select(_ => 3 * Normal())];
        for (var r = 0; r < rowCount; r++)
        {
            var at = 0.0;
            for (var k = 0; k < n; k++) at += rows[r * n + k] * inside[k];
            bounds[r] = feasible ? Math.Abs(Normal()) - at : Normal() - at;
        }

        return new(hessian, [.. Enumerable.Range(0, n).Select(_ => 10 * Normal())], rows, bounds);
    }

    private static double Row(RandomProgram p, int r, double[] d)
    {
        var sum = p.Bounds[r];
        for (var k = 0; k < d.Length; k++) sum += p.Rows[r * d.Length + k] * d[k];
        return sum;
    }

    private static double Value(RandomProgram p, double[] d)
    {
        var sum = 0.0;
        for (var i = 0; i < d.Length; i++)
        {
            sum += p.Gradient[i] * d[i];
            for (var j = 0; j < d.Length; j++) sum += 0.5 * d[i] * p.Hessian[i * d.Length + j] * d[j];
        }

        return sum;
    }

    private static void AssertOptimal(RandomProgram p, double[] d, QuadraticProgram program, int trial)
    {
        var n = d.Length;
        var scale = 1 + d.Max(Math.Abs);
        for (var r = 0; r < p.Bounds.Length; r++) Assert.True(Row(p, r, d) >= -1e-7 * scale, $"trial {trial}: row {r} broken");

        var residual = (double[])p.Gradient.Clone();
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++) residual[i] += p.Hessian[i * n + j] * d[j];
        }

        var pull = 1 + residual.Max(Math.Abs);
        for (var a = 0; a < program.Active.Length; a++)
        {
            var (r, multiplier) = (program.Active[a], program.Multipliers[a]);
            Assert.True(multiplier >= -1e-9 * pull, $"trial {trial}: multiplier {multiplier}");
            Assert.True(Math.Abs(Row(p, r, d)) <= 1e-7 * scale, $"trial {trial}: active row {r} at {Row(p, r, d)}");
            for (var k = 0; k < n; k++) residual[k] -= multiplier * p.Rows[r * n + k];
        }

        Assert.True(residual.Max(Math.Abs) <= 1e-7 * pull, $"trial {trial}: gradient left over {residual.Max(Math.Abs)}");
    }

    private static double[]? BruteForce(RandomProgram p)
    {
        var n = p.Gradient.Length;
        double[]? best = null;
        for (var set = 0; set < 1 << p.Bounds.Length; set++)
        {
            var chosen = Enumerable.Range(0, p.Bounds.Length).Where(r => (set >> r & 1) == 1).ToArray();
            if (chosen.Length > n) continue;
            var size = n + chosen.Length;
            var system = MathNet.Numerics.LinearAlgebra.Matrix<double>.Build.Dense(size, size);
            var right = MathNet.Numerics.LinearAlgebra.Vector<double>.Build.Dense(size);
            for (var i = 0; i < n; i++)
            {
                right[i] = -p.Gradient[i];
                for (var j = 0; j < n; j++) system[i, j] = p.Hessian[i * n + j];
            }

            for (var a = 0; a < chosen.Length; a++)
            {
                right[n + a] = -p.Bounds[chosen[a]];
                for (var k = 0; k < n; k++) system[n + a, k] = system[k, n + a] = p.Rows[chosen[a] * n + k];
            }

            var d = system.Solve(right).SubVector(0, n).ToArray();
            if (d.Any(double.IsNaN)) continue;
            if (Enumerable.Range(0, p.Bounds.Length).Any(r => Row(p, r, d) < -1e-8 * (1 + d.Max(Math.Abs)))) continue;
            if (best is null || Value(p, d) < Value(p, best)) best = d;
        }

        return best;
    }
}
