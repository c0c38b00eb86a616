namespace Paddle.Design.Balance;

/// <summary>Rounds solved sizes to what a caliper or an inch rule shows, without crossing a limit. Theory B7.</summary>
/// <remarks>Sizes move by less than a step of the lattice, where the problem's own straight-line model is exact enough: begin with every
/// size rounded up, then walk the lattice down one size at a time, then by exchanges between two, while mass and broken limits together
/// fall.</remarks>
internal static class SizeRounding
{
    private const int N = DesignProblem.N;

    /// <summary>Rounds <paramref name="v"/>, at which <paramref name="problem"/> was last evaluated.</summary>
    /// <param name="v">The sizes, mm.</param>
    internal static void Round(DesignProblem problem, Span<double> v, double stepMm)
    {
        Span<double> change = stackalloc double[N];
        Span<int> free = stackalloc int[N];
        var freeCount = 0;
        for (var k = 0; k < N; k++)
        {
            change[k] = 0;
            if (problem.High[k] - problem.Low[k] < stepMm) continue;
            free[freeCount++] = k;
            change[k] = Math.Ceiling(v[k] / stepMm - 1e-6) * stepMm - v[k];
            if (v[k] + change[k] > problem.High[k] + 1e-6) change[k] -= stepMm;
        }

        Span<int> near = stackalloc int[problem.RowCount];
        near = near[..NearRows(problem, near, stepMm)];
        var model = new LatticeModel(problem, v, near, stackalloc double[LatticeModel.Room(near.Length)], change);
        free = free[..freeCount];
        var merit = model.Merit(change, 0, 0, 0, 0);
        for (var sweep = 0; sweep < 6 && Improve(model, free, change, stepMm, ref merit); sweep++)
        {
        }

        for (var k = 0; k < N; k++)
        {
            if (problem.High[k] - problem.Low[k] >= stepMm) v[k] = Math.Round((v[k] + change[k]) / stepMm) * stepMm;
        }

        Tidy(v);
    }

    private static bool Improve(in LatticeModel model, ReadOnlySpan<int> free, Span<double> change, double stepMm, ref double merit)
    {
        var improved = false;
        foreach (var a in free)
            improved |= Try(model, change, ref merit, a, -stepMm, a, 0) || Try(model, change, ref merit, a, stepMm, a, 0);

        if (improved) return true;
        foreach (var a in free)
        {
            foreach (var b in free)
            {
                if (a != b) improved |= Try(model, change, ref merit, a, -stepMm, b, stepMm);
            }
        }

        return improved;
    }

    private static bool Try(in LatticeModel model, Span<double> change, ref double merit, int a, double stepA, int b, double stepB)
    {
        change[a] += stepA;
        change[b] += stepB;
        if (model.Allows(change, a) && model.Allows(change, b))
        {
            var trial = model.Merit(change, a, stepA, b, stepB);
            if (trial < merit - 1e-9)
            {
                merit = trial;
                model.Move(a, stepA);
                model.Move(b, stepB);
                return true;
            }
        }

        change[a] -= stepA;
        change[b] -= stepB;
        return false;
    }

    // Rows that a move of a few tenths could break.
    private static int NearRows(DesignProblem problem, Span<int> near, double stepMm)
    {
        var count = 0;
        for (var r = 0; r < problem.RowCount; r++)
        {
            if (problem.Rows[r] < 3 * stepMm * Lanes.Reach(problem.RowGradients.AsSpan(r * N, N))) near[count++] = r;
        }

        return count;
    }

    // 27.3 and not 27.299999999999997.
    private static void Tidy(Span<double> v)
    {
        for (var k = 0; k < N; k++) v[k] = Math.Round(v[k], 6);
    }

    // The near rows' straight lines around the sizes, turned: what one size's step does to all of them lies side by side.
    private readonly ref struct LatticeModel
    {
        private readonly DesignProblem problem;
        private readonly ReadOnlySpan<double> at;
        private readonly Span<double> values, penalties, slopes;

        internal LatticeModel(DesignProblem problem, ReadOnlySpan<double> at, ReadOnlySpan<int> near, Span<double> room, ReadOnlySpan<double> change)
        {
            var stride = Lanes.Filled(near.Length);
            this.problem = problem;
            this.at = at;
            room.Clear();
            values = room[..stride];
            penalties = room[stride..(2 * stride)];
            slopes = room[(2 * stride)..];
            for (var i = 0; i < near.Length; i++)
            {
                var gradient = problem.RowGradients.AsSpan(near[i] * N, N);
                values[i] = problem.Rows[near[i]] + Lanes.Dot(gradient, change);
                penalties[i] = SizeSolver.Penalty((int)problem.Limits[near[i]].Group);
                for (var k = 0; k < N; k++) slopes[k * stride + i] = gradient[k];
            }
        }

        internal static int Room(int rows) => (N + 2) * Lanes.Filled(rows);

        internal bool Allows(ReadOnlySpan<double> change, int k) =>
            at[k] + change[k] >= problem.Low[k] - 1e-6 && at[k] + change[k] <= problem.High[k] + 1e-6;

        /// <summary>What a change counts for, two steps of which have not been moved yet. Each broken row counts for itself: one that no lattice
        /// point can keep must not hide another.</summary>
        internal double Merit(ReadOnlySpan<double> change, int a, double stepA, int b, double stepB) =>
            Lanes.Dot(problem.CostGradient, change) - Lanes.Broken(values, penalties, Slopes(a), stepA, Slopes(b), stepB);

        internal void Move(int k, double stepMm) => Lanes.Add(values, stepMm, Slopes(k));

        private ReadOnlySpan<double> Slopes(int k) => slopes.Slice(k * values.Length, values.Length);
    }
}
