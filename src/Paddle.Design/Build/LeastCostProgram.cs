namespace Paddle.Design.Build;

/// <summary>A small linear program: least c·x with every row aᵢ·x ≤ bᵢ and x ≥ 0, no cost negative. Theory M25.</summary>
/// <remarks>
/// Dual simplex on the full tableau: with no negative cost the empty plan is dual feasible, so rows with negative b are mended
/// one after the other until none is left; the result is an exact vertex. Source: Lemke 1954, Naval Research Logistics Quarterly
/// 1:36-47 (from memory). A test holds it against enumeration of all vertices.
/// </remarks>
internal static class LeastCostProgram
{
    private const double Tiny = 1e-10;

    /// <param name="cost">c, none negative.</param>
    /// <param name="rows">a, row by row.</param>
    /// <param name="bounds">b.</param>
    /// <returns>x, or null when no x satisfies all rows.</returns>
    internal static double[]? Solve(double[] cost, IReadOnlyList<double[]> rows, IReadOnlyList<double> bounds)
    {
        int n = cost.Length, m = rows.Count;
        var tableau = new double[m, n + 1];   // basic variable of the row = last column − Σ entries · outside variables
        var price = (double[])cost.Clone();
        var basic = new int[m];
        var outside = new int[n];
        for (var j = 0; j < n; j++) outside[j] = j;
        for (var i = 0; i < m; i++)
        {
            basic[i] = n + i;
            for (var j = 0; j < n; j++) tableau[i, j] = rows[i][j];
            tableau[i, n] = bounds[i];
        }

        for (var pass = 0; pass < 100 * (n + m); pass++)
        {
            var row = Broken(tableau, m, n, theFirst: pass > 20 * (n + m));
            if (row < 0) return Read(tableau, basic, n, m);
            var column = Entering(tableau, price, row, n);
            if (column < 0) return null;
            Pivot(tableau, price, row, column, m, n);
            (basic[row], outside[column]) = (outside[column], basic[row]);
        }

        throw new InvalidOperationException("The linear program did not come to an end.");
    }

    // The row broken worst mends fastest; the first one cannot cycle, should that ever go on for long (Bland's rule).
    private static int Broken(double[,] tableau, int m, int n, bool theFirst)
    {
        var worst = -1;
        var depth = -Tiny;
        for (var i = 0; i < m; i++)
        {
            if (tableau[i, n] >= depth) continue;
            (worst, depth) = (i, tableau[i, n]);
            if (theFirst) break;
        }

        return worst;
    }

    // The cheapest variable per unit of mending; ties go to the first, so that a result never depends on chance.
    private static int Entering(double[,] tableau, double[] price, int row, int n)
    {
        var best = -1;
        var least = double.PositiveInfinity;
        for (var j = 0; j < n; j++)
        {
            if (tableau[row, j] >= -Tiny) continue;
            var ratio = price[j] / -tableau[row, j];
            if (ratio < least - Tiny) (best, least) = (j, ratio);
        }

        return best;
    }

    private static void Pivot(double[,] tableau, double[] price, int row, int column, int m, int n)
    {
        var pivot = tableau[row, column];
        for (var j = 0; j <= n; j++) tableau[row, j] = j == column ? 1 / pivot : tableau[row, j] / pivot;
        for (var i = 0; i < m; i++)
        {
            if (i == row) continue;
            var factor = tableau[i, column];
            if (factor == 0) continue;
            for (var j = 0; j <= n; j++)
                tableau[i, j] = j == column ? -factor / pivot : tableau[i, j] - factor * tableau[row, j];
        }

        var rate = price[column];
        for (var j = 0; j < n; j++) price[j] = j == column ? -rate / pivot : price[j] - rate * tableau[row, j];
    }

    private static double[] Read(double[,] tableau, int[] basic, int n, int m)
    {
        var x = new double[n];
        for (var i = 0; i < m; i++)
        {
            if (basic[i] < n) x[basic[i]] = Math.Max(0, tableau[i, n]);
        }

        return x;
    }
}
