namespace Paddle.Design.Balance;

/// <summary>A small, dense, strictly convex quadratic program: least ½dᵀHd + gᵀd with every row rᵢᵀd + bᵢ ≥ 0. Theory B5.</summary>
/// <remarks>Dual active-set method: from the free minimum, take in the row broken worst, let go of rows whose multiplier would turn
/// negative. Source: Goldfarb and Idnani 1983, Mathematical Programming 27:1–33 (from memory). MathNet.Numerics has no constrained program,
/// and a solve here is some microseconds, so it is written out; a test holds it against the optimality conditions on random programs. Not
/// safe for several threads: it keeps its workspace.</remarks>
internal sealed class QuadraticProgram
{
    private const double Tiny = 1e-11;

    private readonly int n;
    private readonly double[] basis;        // J, column after column: H⁻¹ = J·Jᵀ, its first columns span the active rows
    private readonly double[] triangle;     // R: J₁ᵀ·(active rows), upper triangular
    private readonly double[] projected;    // Jᵀ·row
    private readonly double[] step;
    private readonly double[] dualStep;
    private readonly double[] multipliers;
    private readonly int[] active;
    private int activeCount;

    internal QuadraticProgram(int unknowns)
    {
        n = unknowns;
        basis = new double[n * n];
        triangle = new double[n * n];
        projected = new double[n];
        step = new double[n];
        dualStep = new double[n];
        multipliers = new double[n + 1];
        active = new int[n];
    }

    /// <summary>How many unknowns it has.</summary>
    internal int Unknowns => n;
    /// <summary>Indices of the rows that hold the solution, after <see cref="Solve"/>.</summary>
    internal ReadOnlySpan<int> Active => active.AsSpan(0, activeCount);
    /// <summary>Multipliers of <see cref="Active"/>, none negative.</summary>
    internal ReadOnlySpan<double> Multipliers => multipliers.AsSpan(0, activeCount);

    /// <param name="hessian">H, row by row; symmetric and positive definite.</param>
    /// <param name="gradient">g.</param>
    /// <param name="rows">The rows, each as long as the unknowns.</param>
    /// <param name="bounds">b, one for each row.</param>
    /// <param name="solution">Receives d.</param>
    /// <returns>False when no d satisfies all rows, the iteration cap is reached, or rows so nearly parallel that rounding tells them apart
    /// have thrown d out of bounds: a d that is not a number breaks no row, and must not pass for a solution.</returns>
    internal bool Solve(
        ReadOnlySpan<double> hessian, ReadOnlySpan<double> gradient, ReadOnlySpan<double> rows, ReadOnlySpan<double> bounds, Span<double> solution)
    {
        InvertFactor(hessian);
        activeCount = 0;
        FreeMinimum(gradient[..n], solution);
        for (var pass = 0; pass < 20 * n + 4 * bounds.Length; pass++)
        {
            var worst = MostBroken(rows, bounds, solution);
            if (worst < 0) return IsFinite(solution[..n]);
            if (!TakeIn(worst, rows, bounds, solution)) return false;
        }

        return false;
    }

    private static bool IsFinite(ReadOnlySpan<double> values)
    {
        foreach (var value in values)
        {
            if (!double.IsFinite(value)) return false;
        }

        return true;
    }

    private void InvertFactor(ReadOnlySpan<double> hessian)
    {
        // Cholesky H = L·Lᵀ into the triangle's space, then J = L⁻ᵀ by back substitution.
        var lower = triangle.AsSpan();
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var sum = hessian[i * n + j];
                for (var k = 0; k < j; k++) sum -= lower[i * n + k] * lower[j * n + k];
                lower[i * n + j] = i == j ? Math.Sqrt(Math.Max(sum, 1e-12)) : sum / lower[j * n + j];
            }
        }

        basis.AsSpan().Clear();
        for (var k = 0; k < n; k++)
        {
            // Column k of L⁻ᵀ solves Lᵀ·x = e.
            var column = Column(k);
            column[k] = 1 / lower[k * n + k];
            for (var i = k - 1; i >= 0; i--)
            {
                var sum = 0.0;
                for (var j = i + 1; j <= k; j++) sum += lower[j * n + i] * column[j];
                column[i] = -sum / lower[i * n + i];
            }
        }
    }

    private void FreeMinimum(ReadOnlySpan<double> gradient, Span<double> solution)
    {
        Project(gradient);
        var least = solution[..n];
        least.Clear();
        for (var k = 0; k < n; k++) Lanes.Add(least, -projected[k], Column(k));
    }

    private int MostBroken(ReadOnlySpan<double> rows, ReadOnlySpan<double> bounds, ReadOnlySpan<double> solution)
    {
        var worst = -1;
        var depth = -1e-9;
        for (var r = 0; r < bounds.Length; r++)
        {
            var value = bounds[r] + Lanes.Dot(rows.Slice(r * n, n), solution);
            if (value < depth && !Active.Contains(r)) (worst, depth) = (r, value);
        }

        return worst;
    }

    private bool TakeIn(int row, ReadOnlySpan<double> rows, ReadOnlySpan<double> bounds, Span<double> solution)
    {
        var normal = rows.Slice(row * n, n);
        var incoming = 0.0;
        while (true)
        {
            Project(normal);
            var (reach, square) = PrimalStep();
            DualStep();

            // Longest step that keeps every multiplier from turning negative.
            var longest = double.PositiveInfinity;
            var leaving = -1;
            for (var k = 0; k < activeCount; k++)
            {
                if (dualStep[k] > Tiny && multipliers[k] / dualStep[k] < longest)
                    (longest, leaving) = (multipliers[k] / dualStep[k], k);
            }

            var value = bounds[row] + Lanes.Dot(normal, solution);
            var full = reach ? -value / square : double.PositiveInfinity;
            var length = Math.Min(longest, full);
            if (double.IsPositiveInfinity(length)) return false;

            for (var k = 0; k < activeCount; k++) multipliers[k] -= length * dualStep[k];
            incoming += length;
            if (reach) Lanes.Add(solution[..n], length, step);

            if (full <= longest)
            {
                Add(row, incoming);
                return true;
            }

            Drop(leaving);
        }
    }

    private void Project(ReadOnlySpan<double> vector)
    {
        for (var k = 0; k < n; k++) projected[k] = Lanes.Dot(Column(k), vector);
    }

    private Span<double> Column(int k) => basis.AsSpan(k * n, n);

    // Part of the row that no active row covers; its square is the gain per unit step.
    private (bool Reach, double Square) PrimalStep()
    {
        var uncovered = projected.AsSpan(activeCount);
        double square = Lanes.Dot(uncovered, uncovered), whole = Lanes.Dot(projected, projected);
        Array.Clear(step);
        for (var k = activeCount; k < n; k++) Lanes.Add(step, projected[k], Column(k));
        return (square > 1e-13 * Math.Max(whole, 1e-30), square);
    }

    private void DualStep()
    {
        for (var k = activeCount - 1; k >= 0; k--)
        {
            var sum = projected[k];
            for (var j = k + 1; j < activeCount; j++) sum -= triangle[k * n + j] * dualStep[j];
            dualStep[k] = sum / triangle[k * n + k];
        }
    }

    private void Add(int row, double multiplier)
    {
        // Rotations fold the uncovered part of the row into one new column.
        for (var k = n - 1; k > activeCount; k--) Rotate(k - 1, k);
        for (var k = 0; k <= activeCount; k++) triangle[k * n + activeCount] = projected[k];
        active[activeCount] = row;
        multipliers[activeCount] = multiplier;
        activeCount++;
    }

    private void Rotate(int a, int b)
    {
        double x = projected[a], y = projected[b], length = Math.Sqrt(x * x + y * y);
        if (length < 1e-300 || y == 0) return;
        double cos = x / length, sin = y / length;
        (projected[a], projected[b]) = (length, 0);
        Lanes.Turn(Column(a), Column(b), cos, sin);
    }

    private void Drop(int place)
    {
        activeCount--;
        for (var k = place; k < activeCount; k++)
        {
            active[k] = active[k + 1];
            multipliers[k] = multipliers[k + 1];
            for (var i = 0; i < n; i++) triangle[i * n + k] = triangle[i * n + k + 1];
        }

        // The columns moved left stand one row too low; rotate each back into the triangle.
        for (var k = place; k < activeCount; k++)
        {
            double x = triangle[k * n + k], y = triangle[(k + 1) * n + k], length = Math.Sqrt(x * x + y * y);
            if (length < 1e-300) continue;
            double cos = x / length, sin = y / length;
            for (var j = k; j < activeCount; j++)
            {
                double p = triangle[k * n + j], q = triangle[(k + 1) * n + j];
                triangle[k * n + j] = cos * p + sin * q;
                triangle[(k + 1) * n + j] = cos * q - sin * p;
            }

            Lanes.Turn(Column(k), Column(k + 1), cos, sin);
        }
    }
}
