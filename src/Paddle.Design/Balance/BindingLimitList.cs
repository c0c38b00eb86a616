using Paddle.Design.Solid;

namespace Paddle.Design.Balance;

/// <summary>The limits that hold a design where it is, and what each is worth: multipliers of one small step from the rounded sizes, so
/// that a design read back from its code says the same as it did when it was solved. Theory B8.</summary>
internal static class BindingLimitList
{
    /// <summary>Gain of a design that meets every aim: grams saved.</summary>
    internal const string Saved = "g";

    /// <summary>Gain while a strength is missed.</summary>
    internal const string OfSafety = "safety factor";

    /// <summary>Gain while the balance is missed.</summary>
    internal const string OfBalance = "mm of balance";

    /// <summary>Gain while the flex is missed.</summary>
    internal const string OfFlex = "mm of flex";

    private const string OfShape = "mm of shape";
    private const int N = DesignProblem.N;
    private const int Box = -1;

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
        var (gradient, scale, unit) = missed is { } row ? Towards(problem, row, asked.Aims) : ([.. problem.CostGradient], 1, Saved);
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
            LimitGroup.Strength => (gradient, 2 * aims.MinimumSafetyFactor, OfSafety),
            LimitGroup.Balance => (gradient, DesignProblem.BalanceScaleMm, OfBalance),
            LimitGroup.Flex => (gradient, 1, OfFlex),
            _ => (gradient, 1, OfShape),
        };
    }

    private static IReadOnlyList<BindingLimit> Read(
        DesignProblem problem, ReadOnlySpan<double> v, double[] gradient, double boxMm, double scale, string unit, PaddleSpecification asked)
    {
        var steepest = gradient.Max(Math.Abs);
        var hessian = new double[N * N];
        for (var k = 0; k < N; k++) hessian[k * N + k] = steepest / (100 * boxMm);
        var most = problem.RowCount + 4 * N;
        Span<double> rows = stackalloc double[most * N], bounds = stackalloc double[most];
        Span<int> stands = stackalloc int[most]; // for a row of the problem, else for one of the sizes' limits or the box
        rows.Clear();
        var count = 0;
        for (var r = 0; r < problem.RowCount; r++)
        {
            var gradientOfRow = problem.RowGradients.AsSpan(r * N, N);
            if (problem.Rows[r] > boxMm * Lanes.Reach(gradientOfRow)) continue;
            gradientOfRow.CopyTo(rows[(count * N)..]);
            bounds[count] = Math.Max(problem.Rows[r], 0); // what is missed is held where it is
            stands[count++] = r;
        }

        for (var k = 0; k < N; k++)
        {
            for (var side = 0; side < 2; side++)
            {
                var room = Math.Max(0, side == 0 ? v[k] - problem.Low[k] : problem.High[k] - v[k]);
                rows[count * N + k] = side == 0 ? 1 : -1;
                bounds[count] = Math.Min(room, boxMm);
                stands[count++] = room < boxMm ? problem.RowCount + 2 * k + side : Box;
            }
        }

        var program = new QuadraticProgram(N);
        Span<double> step = stackalloc double[N];
        if (!program.Solve(hessian, gradient, rows[..(count * N)], bounds[..count], step)) return [];
        var worths = new Dictionary<(string Id, string Unit), double>();
        for (var a = 0; a < program.Active.Length; a++)
        {
            var stood = stands[program.Active[a]];
            if (stood == Box) continue;
            var (id, limitUnit, perUnit) = Named(problem, asked, stood);
            worths[(id, limitUnit)] = worths.GetValueOrDefault((id, limitUnit)) + program.Multipliers[a] * perUnit * scale;
        }

        return
        [
            .. worths.Where(worth => worth.Value > (unit == Saved ? LeastWorth : LeastWorth / 100)).OrderByDescending(worth => worth.Value)
                .Select(worth => new BindingLimit(worth.Key.Id, worth.Key.Unit, worth.Value, unit)),
        ];
    }

    private static (string Id, string Unit, double PerUnit) Named(DesignProblem problem, PaddleSpecification asked, int stood)
    {
        if (stood < problem.RowCount) return (problem.Limits[stood].Id, problem.Limits[stood].Unit, problem.Limits[stood].RowPerUnit);
        var (k, isLow) = ((stood - problem.RowCount) / 2, (stood - problem.RowCount) % 2 == 0);
        var byBoard = !isLow && k is not 0 and not 2 && asked.UsableThicknessMm is { } usable && problem.High[k] == usable;
        var id = asked.Fixed[k] is not null ? SizeLimits.Names[k] + ".pinned"
            : byBoard ? "wood.boardThicknessMm"
            : SizeLimits.Names[k] + (isLow ? ".min" : ".max");
        return (id, "mm", 1);
    }
}
