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
        var model = new LatticeModel(problem, v, near[..NearRows(problem, near, stepMm)]);
        free = free[..freeCount];
        var merit = model.Merit(change);
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
            var trial = model.Merit(change);
            if (trial < merit - 1e-9)
            {
                merit = trial;
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

    private readonly ref struct LatticeModel(DesignProblem problem, ReadOnlySpan<double> at, ReadOnlySpan<int> near)
    {
        private readonly ReadOnlySpan<double> at = at;
        private readonly ReadOnlySpan<int> near = near;

        internal bool Allows(ReadOnlySpan<double> change, int k) =>
            at[k] + change[k] >= problem.Low[k] - 1e-6 && at[k] + change[k] <= problem.High[k] + 1e-6;

        internal double Merit(ReadOnlySpan<double> change)
        {
            // Each broken row counts for itself: one that no lattice point can keep must not hide another.
            var merit = Lanes.Dot(problem.CostGradient, change);
            foreach (var r in near)
            {
                var value = problem.Rows[r] + Lanes.Dot(problem.RowGradients.AsSpan(r * N, N), change);
                if (value < 0) merit -= SizeSolver.Penalty((int)problem.Limits[r].Group) * value;
            }

            return merit;
        }
    }
}
