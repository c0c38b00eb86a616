using Paddle.Design.Solid;

namespace Paddle.Design.Balance;

/// <summary>
/// The limits that hold a design where it is, and what each is worth: multipliers of one small step from the rounded sizes, so that a
/// design read back from its code says the same as it did when it was solved. Theory B8.
/// </summary>
internal static class BindingLimitList
{
    private const int N = DesignProblem.N;

    // A limit further off than this does not hold the sizes; rounding leaves less than that.
    private const double BoxSteps = 4;

    // Limits worth less than this per unit, in g or in hundredths of the missed aim, are not what holds the design.
    private const double LeastWorth = 0.05;

    internal static IReadOnlyList<BindingLimit> At(PaddleSpecification asked, PaddleSizes sizes)
    {
        if (asked.Free.Bits == 0) return [];
        var problem = DesignProblem.State(asked, around: sizes);
        Span<double> v = stackalloc double[N];
        sizes.CopyTo(v);
        problem.Evaluate(v);
        var missed = Missed(problem);
        var (gradient, scale, unit) = missed is { } row ? Towards(problem, row, asked.Aims) : ([.. problem.CostGradient], 1, "g");
        return Read(problem, v, gradient, BoxSteps * asked.LatticeMm, scale, unit, asked);
    }

    // The row of the foremost group that is missed by more than rounding.
    private static int? Missed(DesignProblem problem)
    {
        int? worst = null;
        for (var r = 0; r < problem.RowCount; r++)
        {
            if (problem.Rows[r] >= -0.006) continue;
            if (worst is not { } w || problem.Limits[r].Group < problem.Limits[w].Group
                || (problem.Limits[r].Group == problem.Limits[w].Group && problem.Rows[r] < problem.Rows[w])) worst = r;
        }

        return worst;
    }

    // What would help a missed aim, in that aim's own unit.
    private static (double[] Gradient, double Scale, string Unit) Towards(DesignProblem problem, int row, Aims aims)
    {
        double[] gradient = [.. problem.RowGradients.AsSpan(row * N, N)];
        for (var k = 0; k < N; k++) gradient[k] = -gradient[k];
        return problem.Limits[row].Group switch
        {
            LimitGroup.Strength => (gradient, 2 * aims.MinimumSafetyFactor, "safety factor"),
            LimitGroup.Balance => (gradient, DesignProblem.BalanceScaleMm, "mm of balance"),
            LimitGroup.Flex => (gradient, 1, "mm of flex"),
            _ => (gradient, 1, "mm of shape"),
        };
    }

    private static IReadOnlyList<BindingLimit> Read(
        DesignProblem problem, ReadOnlySpan<double> v, double[] gradient, double boxMm, double scale, string unit, PaddleSpecification asked)
    {
        var steepest = gradient.Max(Math.Abs);
        var hessian = new double[N * N];
        for (var k = 0; k < N; k++) hessian[k * N + k] = steepest / (100 * boxMm);
        var rows = new List<double>();
        var bounds = new List<double>();
        var limits = new List<(string Id, string Unit, double PerUnit)?>();
        void Add(ReadOnlySpan<double> row, double bound, (string, string, double)? limit)
        {
            rows.AddRange(row);
            bounds.Add(Math.Max(bound, 0)); // what is missed is held where it is
            limits.Add(limit);
        }

        for (var r = 0; r < problem.RowCount; r++)
        {
            var limit = problem.Limits[r];
            Add(problem.RowGradients.AsSpan(r * N, N), problem.Rows[r], (limit.Id, limit.Unit, limit.RowPerUnit));
        }

        Span<double> one = stackalloc double[N];
        for (var k = 0; k < N; k++)
        {
            var name = SizeLimits.Names[k];
            var isFixed = asked.Fixed[k] is not null;
            one.Clear();
            one[k] = 1;
            Add(one, v[k] - problem.Low[k], (isFixed ? name + ".pinned" : name + ".min", "mm", 1));
            Add(one, boxMm, null);
            one[k] = -1;
            var byBoard = asked.UsableThicknessMm is { } usable && problem.High[k] == usable;
            Add(one, problem.High[k] - v[k], (isFixed ? name + ".pinned" : byBoard ? "wood.boardThicknessMm" : name + ".max", "mm", 1));
            Add(one, boxMm, null);
        }

        var program = new QuadraticProgram(N);
        if (!program.Solve(hessian, gradient, rows.ToArray(), bounds.ToArray(), new double[N])) return [];
        var worths = new Dictionary<(string Id, string Unit), double>();
        for (var a = 0; a < program.Active.Length; a++)
        {
            if (limits[program.Active[a]] is not { } limit) continue;
            var key = (limit.Id, limit.Unit);
            worths[key] = worths.GetValueOrDefault(key) + program.Multipliers[a] * limit.PerUnit * scale;
        }

        return
        [
            .. worths.Where(worth => worth.Value > (unit == "g" ? LeastWorth : LeastWorth / 100)).OrderByDescending(worth => worth.Value)
                .Select(worth => new BindingLimit(worth.Key.Id, worth.Key.Unit, worth.Value, unit)),
        ];
    }
}
