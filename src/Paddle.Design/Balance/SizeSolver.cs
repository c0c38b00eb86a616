namespace Paddle.Design.Balance;

/// <summary>Finds the sizes: sequential quadratic programming with a BFGS model of the curvature, aims that may give way in a fixed order
/// when they clash, and a line search on the exact penalty. Deterministic. Theory B4–B6.</summary>
/// <remarks>Source: Nocedal and Wright, Numerical Optimization, ch. 18 (from memory).</remarks>
internal sealed class SizeSolver
{
    private const int N = DesignProblem.N;
    internal const int Groups = 5;
    private const int M = N + Groups;
    private const int MostSteps = 40;

    // The rows' straight-line model is good for steps of a few millimetres. Later steps may be twice the one before: a small box
    // leaves few rows within reach.
    private const double FirstStepMm = 4;
    private const double ShortestBoxMm = 0.5;
    // How often a step is halved at most, after which halving the tangents from beyond a kink are taken in, and how many times over.
    private const int MostHalvings = 11, HalvingsBeforeTangents = 3, MostTangents = 3;
    // Far below what a step of a millimetre changes the mass by.
    private const double LeastCurvatureGPerMm2 = 1e-3;

    // Grams that one unit of a broken aim costs: far above what any aim gains in wood, and each aim far above the next. A millimetre of
    // shape is worth some 0.03 of a factor's root: strength must outweigh it at that rate.
    private static readonly double[] Penalties = [1e7, 1e6, 1e4, 2e3, 2e2];

    // All that hands and tools allow; a slim throat over a thin, even blade; a slim throat over a thick one. In the order of the sizes, mm.
    private static readonly double[][] OtherStarts =
    [[34, 36, 30, 30, 34, 16, 8.5, 5.5, 30], [28, 29, 24, 25, 24, 8.5, 7, 5.5, 24], [30, 31, 24, 25, 22, 16, 8, 5, 22]];

    // Rows let go one after the other; each of them is a limit that nothing can reach, and there are few.
    private const int MostLettingGo = 24;

    private readonly DesignProblem problem;
    private readonly QuadraticProgram strict = new(N);
    private QuadraticProgram? yielding;
    private QuadraticProgram last;
    private bool mustYield;
    private double boxMm = FirstStepMm;
    private readonly double[] hessian = new double[M * M];
    private readonly double[] gradient = new double[M];
    private readonly double[] step = new double[M];
    private readonly double[] corrected = new double[M];
    private double[] rows;
    private double[] bounds;
    private double[] metBounds;
    private readonly int[] problemRow;
    private int problemRowCount;
    private int rowCount;
    private readonly double[] curvature = new double[N * N];
    private readonly double[] lagrangian = new double[N];

    private SizeSolver(DesignProblem problem)
    {
        (this.problem, last) = (problem, strict);
        RowMultipliers = new double[problem.Rows.Length];
        problemRow = new int[problem.Rows.Length];
        (rows, bounds, metBounds) = ([], [], []);
        MakeRoom(problem.Rows.Length + 2 * N, N);
    }

    /// <summary>Multiplier of each row of the problem at the solution, g per unit of the row.</summary>
    internal double[] RowMultipliers { get; }
    /// <summary>Multiplier of each size's lower limit, g/mm.</summary>
    internal double[] LowMultipliers { get; } = new double[N];
    /// <summary>Multiplier of each size's upper limit, g/mm.</summary>
    internal double[] HighMultipliers { get; } = new double[N];
    /// <summary>How often the problem was evaluated.</summary>
    internal int Evaluations { get; private set; }

    /// <summary>The foremost group of aims that had to give way, or -1.</summary>
    internal int MissedGroup
    {
        get
        {
            for (var g = 0; g < Groups; g++)
            {
                if (step[N + g] > 1e-4) return g;
            }

            return -1;
        }
    }

    /// <summary>Grams that one unit of a broken aim of a group costs.</summary>
    internal static double Penalty(int group) => Penalties[group];

    /// <summary>Solves the problem from <paramref name="v"/>, which receives the sizes.</summary>
    internal static SizeSolver Solve(DesignProblem problem, Span<double> v, CancellationToken cancellation = default)
    {
        var solver = new SizeSolver(problem);
        solver.Run(v, cancellation);
        return solver;
    }

    /// <summary>
    /// Solves the problem from <paramref name="v"/>; should an aim be missed there, from other starts too, and keeps the best. Where
    /// aims clash the problem has several valleys: a thick and a slim throat, a full and a hollow middle.
    /// </summary>
    internal static SizeSolver SolveFromSeveralStarts(DesignProblem problem, Span<double> v, CancellationToken cancellation = default)
    {
        var best = Solve(problem, v, cancellation);
        if (best.MissedGroup < 0) return best;
        var merit = Merit(problem);
        var evaluations = best.Evaluations;
        Span<double> other = stackalloc double[N];
        for (var start = 0; start < OtherStarts.Length; start++)
        {
            for (var k = 0; k < N; k++) other[k] = Math.Clamp(OtherStarts[start][k], problem.Low[k], problem.High[k]);
            var solver = Solve(problem, other, cancellation);
            evaluations += solver.Evaluations;
            var otherMerit = Merit(problem);
            if (otherMerit >= merit) continue;
            (best, merit) = (solver, otherMerit);
            other.CopyTo(v);
        }

        best.Evaluate(v);
        best.Evaluations = evaluations + 1;
        return best;
    }

    /// <summary>Solves the problem; should an aim be out of reach, lets go of just the rows that nothing can reach, the foremost group
    /// first, and solves again with every other row held: one hopeless limit must not take the others down with it. Theory B4.</summary>
    internal static SizeSolver SolveLettingGo(DesignProblem problem, Span<double> v, CancellationToken cancellation = default)
    {
        var solver = SolveFromSeveralStarts(problem, v, cancellation);
        for (var pass = 0; pass < MostLettingGo && solver.MissedGroup >= 0; pass++)
        {
            problem.LetGo((LimitGroup)solver.MissedGroup, solver.RowMultipliers);
            solver = Solve(problem, v, cancellation);
        }

        return solver;
    }

    /// <summary>Cost plus the penalty of every broken aim: what the solver makes least. Theory B4.</summary>
    internal static double Merit(DesignProblem problem)
    {
        Span<double> worst = stackalloc double[Groups];
        worst.Clear();
        for (var r = 0; r < problem.RowCount; r++)
        {
            ref var depth = ref worst[(int)problem.Limits[r].Group];
            depth = Math.Max(depth, -problem.Rows[r]);
        }

        var merit = problem.CostG;
        for (var g = 0; g < Groups; g++) merit += Penalties[g] * worst[g];
        return merit;
    }

    private void Run(Span<double> v, CancellationToken cancellation)
    {
        Span<double> trial = stackalloc double[N];
        for (var k = 0; k < N; k++) curvature[k * N + k] = 1;
        Evaluate(v);
        var merit = Merit(problem);
        for (var iteration = 0; iteration < MostSteps; iteration++)
        {
            cancellation.ThrowIfCancellationRequested();
            if (!SolveStep(v)) return;
            var predicted = PredictedDrop();
            if (predicted < 1e-3 || Longest(step) < 1e-4) return;

            problem.CostGradient.CopyTo(lagrangian, 0);
            AddRowGradients(lagrangian, -1);
            var length = 1.0;
            var accepted = TryStep(v, step, length, predicted, trial, ref merit) || (SolveCorrected() && TryStep(v, corrected, length, predicted, trial, ref merit));
            for (var halving = 1; halving <= MostHalvings && !accepted; halving++)
            {
                length *= 0.5;
                accepted = TryStep(v, step, length, predicted, trial, ref merit);
                if (halving != HalvingsBeforeTangents || accepted || !TryBesideKinks(v, predicted, trial, ref merit)) continue;
                (accepted, length) = (true, 1);
            }

            if (!accepted)
            {
                Evaluate(v);
                return;
            }

            UpdateCurvature(v, trial);
            trial.CopyTo(v);
            boxMm = Math.Clamp(2 * length * Longest(step), ShortestBoxMm, FirstStepMm);
        }
    }

    private bool TryStep(ReadOnlySpan<double> v, double[] along, double length, double predicted, Span<double> trial, ref double merit)
    {
        for (var k = 0; k < N; k++) trial[k] = Math.Clamp(v[k] + length * along[k], problem.Low[k], problem.High[k]);
        Evaluate(trial);
        var trialMerit = Merit(problem);
        // Asked this way round, a merit that is not a number is never accepted.
        if (!(trialMerit <= merit - 1e-4 * length * predicted)) return false;
        merit = trialMerit;
        return true;
    }

    private void Evaluate(ReadOnlySpan<double> v)
    {
        problem.Evaluate(v);
        Evaluations++;
    }

    // The strict program keeps every row; when its rows clash, the yielding one adds a give for each group of aims.
    private bool SolveStep(ReadOnlySpan<double> v)
    {
        if (!mustYield && SolveProgram(strict, v))
        {
            step.AsSpan(N).Clear();
            return true;
        }

        if (!SolveProgram(yielding ??= new(M), v)) return false;
        mustYield = MissedGroup >= 0;
        return true;
    }

    private bool SolveProgram(QuadraticProgram program, ReadOnlySpan<double> v)
    {
        var unknowns = program.Unknowns;
        MakeRoom(problem.RowCount + N + unknowns, unknowns);
        rowCount = 0;
        for (var r = 0; r < problem.RowCount; r++)
        {
            if (!WithinReach(r)) continue;
            problemRow[rowCount] = r;
            AddRow(unknowns, r, problem.Rows[r]);
        }

        problemRowCount = rowCount;
        for (var k = 0; k < N; k++)
        {
            NewRow(unknowns, Math.Min(v[k] - problem.Low[k], boxMm))[k] = 1;
            NewRow(unknowns, Math.Min(problem.High[k] - v[k], boxMm))[k] = -1;
        }

        for (var g = N; g < unknowns; g++) NewRow(unknowns, 0)[g] = 1;
        StateObjective(unknowns);
        if (!Solve(program, bounds, step)) return false;
        last = program;
        ReadMultipliers(program);
        return true;
    }

    // Rows of strength bend: a step along their tangents oversteps them by more than it gains, and ever shorter steps would only creep
    // (Maratos). The same program with its rows where the trial met them steps back onto them. Source: Nocedal and Wright, section 15.6 of
    // the first edition (from memory).
    private bool SolveCorrected()
    {
        for (var i = 0; i < problemRowCount; i++)
            metBounds[i] = problem.Rows[problemRow[i]] - Lanes.Dot(rows.AsSpan(i * last.Unknowns, N), step);
        bounds.AsSpan(problemRowCount, rowCount - problemRowCount).CopyTo(metBounds.AsSpan(problemRowCount));
        return Solve(last, metBounds, corrected);
    }

    // Where a row kinks, as where a face's slope changes sign, its tangent on this side is blind to the other, and ever shorter steps would
    // only creep along. The tangents where the trials ended join the program, until a step keeps to both sides. Source: cutting planes, Kelley
    // 1960, Journal of the SIAM 8:703-712 (from memory).
    private bool TryBesideKinks(ReadOnlySpan<double> v, double predicted, Span<double> trial, ref double merit)
    {
        Span<double> moved = stackalloc double[N];
        for (var time = 0; time < MostTangents; time++)
        {
            MakeRoom(rowCount + problem.RowCount, last.Unknowns);
            for (var k = 0; k < N; k++) moved[k] = trial[k] - v[k];
            for (var r = 0; r < problem.RowCount; r++)
            {
                if (WithinReach(r)) AddRow(last.Unknowns, r, problem.Rows[r] - Lanes.Dot(problem.RowGradients.AsSpan(r * N, N), moved));
            }

            if (!Solve(last, bounds, corrected)) return false;
            if (TryStep(v, corrected, 1, predicted, trial, ref merit)) return true;
        }

        return false;
    }

    private bool Solve(QuadraticProgram program, double[] bounds, double[] receives)
    {
        var n = program.Unknowns;
        return program.Solve(hessian.AsSpan(0, n * n), gradient, rows.AsSpan(0, rowCount * n), bounds.AsSpan(0, rowCount), receives);
    }

    private void StateObjective(int unknowns)
    {
        Array.Clear(hessian);
        var floor = LeastCurvature();
        for (var i = 0; i < N; i++)
        {
            for (var j = 0; j < N; j++) hessian[i * unknowns + j] = curvature[i * N + j];
            hessian[i * unknowns + i] += floor;
            gradient[i] = problem.CostGradient[i];
        }

        for (var g = N; g < unknowns; g++)
        {
            hessian[g * unknowns + g] = 1;
            gradient[g] = Penalties[g - N];
        }
    }

    // Damping may shrink a direction's curvature fivefold in every step; this keeps the program positive definite beyond rounding.
    private double LeastCurvature()
    {
        var most = 0.0;
        for (var k = 0; k < N; k++) most = Math.Max(most, curvature[k * N + k]);
        return Math.Max(LeastCurvatureGPerMm2, 1e-9 * most);
    }

    // A row that no step within the box can break is left out of the step's program.
    private bool WithinReach(int r) => problem.Rows[r] < boxMm * Lanes.Reach(problem.RowGradients.AsSpan(r * N, N));

    private void AddRow(int unknowns, int r, double value)
    {
        var row = NewRow(unknowns, value);
        problem.RowGradients.AsSpan(r * N, N).CopyTo(row);
        if (unknowns > N) row[N + (int)problem.Limits[r].Group] = 1;
    }

    // Most steps need no give and no more tangents: room for those is made when they come.
    private void MakeRoom(int count, int unknowns)
    {
        if (count > bounds.Length)
        {
            Array.Resize(ref bounds, count);
            Array.Resize(ref metBounds, count);
        }

        if (count * unknowns > rows.Length) Array.Resize(ref rows, count * unknowns);
    }

    private Span<double> NewRow(int unknowns, double value)
    {
        bounds[rowCount] = value;
        var row = rows.AsSpan(rowCount++ * unknowns, unknowns);
        row.Clear();
        return row;
    }

    private void ReadMultipliers(QuadraticProgram program)
    {
        Array.Clear(RowMultipliers);
        Array.Clear(LowMultipliers);
        Array.Clear(HighMultipliers);
        for (var a = 0; a < program.Active.Length; a++)
        {
            var (row, multiplier) = (program.Active[a], program.Multipliers[a]);
            var limit = row - problemRowCount;
            if (limit < 0) RowMultipliers[problemRow[row]] = multiplier;
            else if (limit < 2 * N) (limit % 2 == 0 ? LowMultipliers : HighMultipliers)[limit / 2] = multiplier;
        }
    }

    private double PredictedDrop()
    {
        Span<double> before = stackalloc double[Groups], after = stackalloc double[Groups];
        before.Clear();
        after.Clear();
        foreach (var r in problemRow.AsSpan(0, problemRowCount))
        {
            var g = (int)problem.Limits[r].Group;
            var value = problem.Rows[r];
            before[g] = Math.Max(before[g], -value);
            value += Lanes.Dot(problem.RowGradients.AsSpan(r * N, N), step);
            after[g] = Math.Max(after[g], -value);
        }

        var drop = 0.0;
        for (var g = 0; g < Groups; g++) drop += Penalties[g] * (before[g] - after[g]);
        for (var k = 0; k < N; k++) drop -= problem.CostGradient[k] * step[k];
        return drop;
    }

    private void AddRowGradients(Span<double> sum, double sign)
    {
        for (var r = 0; r < problem.RowCount; r++)
        {
            if (RowMultipliers[r] == 0) continue;
            Lanes.Add(sum[..N], sign * RowMultipliers[r], problem.RowGradients.AsSpan(r * N, N));
        }
    }

    // Damped BFGS on the Lagrangian: what the cost and the binding rows together curve along the step taken.
    private void UpdateCurvature(ReadOnlySpan<double> from, ReadOnlySpan<double> to)
    {
        Span<double> change = stackalloc double[N], slope = stackalloc double[N], product = stackalloc double[N];
        problem.CostGradient.CopyTo(slope);
        AddRowGradients(slope, -1);
        double along = 0, bend = 0;
        for (var k = 0; k < N; k++)
        {
            change[k] = to[k] - from[k];
            slope[k] -= lagrangian[k];
        }

        for (var i = 0; i < N; i++)
        {
            var sum = 0.0;
            for (var j = 0; j < N; j++) sum += curvature[i * N + j] * change[j];
            product[i] = sum;
            bend += sum * change[i];
            along += slope[i] * change[i];
        }

        if (bend < 1e-12) return;
        var mix = along >= 0.2 * bend ? 1 : 0.8 * bend / (bend - along);
        along = 0;
        for (var i = 0; i < N; i++)
        {
            slope[i] = mix * slope[i] + (1 - mix) * product[i];
            along += slope[i] * change[i];
        }

        for (var i = 0; i < N; i++)
        {
            for (var j = 0; j < N; j++)
                curvature[i * N + j] += slope[i] * slope[j] / along - product[i] * product[j] / bend;
        }
    }

    private static double Longest(ReadOnlySpan<double> step)
    {
        var longest = 0.0;
        for (var k = 0; k < N; k++) longest = Math.Max(longest, Math.Abs(step[k]));
        return longest;
    }
}
