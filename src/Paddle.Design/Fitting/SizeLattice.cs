namespace Paddle.Design.Fitting;

/// <summary>The sizes that fit best for one number of sizes.</summary>
/// <param name="SizesMm">Sizes, mm, ascending.</param>
/// <param name="MeanMisfitMm">Mean of |customer − nearest size|, mm.</param>
internal sealed record BestSizes(IReadOnlyList<double> SizesMm, double MeanMisfitMm);

/// <summary>The k sizes on a lattice of lengths that make the mean misfit least: exact one-dimensional k-medians by dynamic programming
/// over the lattice. With the sizes ascending, the customers between two neighbours go to the nearer one (the shorter at the middle), so
/// the misfit is a sum over neighbouring pairs: best(k, j) = min over i below j of best(k−1, i) + gap(i, j).</summary>
internal static class SizeLattice
{
    /// <summary>Lengths allowed: whole multiples of the step that can matter to these customers, inside the stock's limits.</summary>
    /// <param name="stepMm">Step, mm, above 0.</param>
    /// <param name="shortestStockMm">Shortest length held, mm, or null.</param>
    /// <param name="longestStockMm">Longest length held, mm, or null.</param>
    /// <returns>Lengths, mm, ascending; empty where the stock's limits leave none.</returns>
    public static IReadOnlyList<double> Lengths(LengthDistribution customers, double stepMm, double? shortestStockMm = null, double? longestStockMm = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(stepMm);
        const double Slack = 1e-9; // a limit written as a multiple of the step must count as one
        var stockFirst = shortestStockMm is { } s ? Math.Ceiling((s / stepMm) - Slack) : double.NegativeInfinity;
        var stockLast = longestStockMm is { } l ? Math.Floor((l / stepMm) + Slack) : double.PositiveInfinity;

        // Clamping keeps the nearest stock length when every customer lies beyond the stock.
        var first = Math.Clamp(Math.Floor(customers.ShortestMm / stepMm), Math.Min(stockFirst, stockLast), stockLast);
        var last = Math.Clamp(Math.Ceiling(customers.LongestMm / stepMm), Math.Min(stockFirst, stockLast), stockLast);
        return stockFirst > stockLast
            ? []
            : [.. Enumerable.Range(0, (int)(last - first) + 1).Select(i => Multiple(first + i, stepMm))];
    }

    /// <summary>A multiple of the step without the last binary digits: 61 × 25.4 reads 1549.4.</summary>
    /// <returns>Length, mm, to a millionth.</returns>
    internal static double Multiple(double count, double stepMm) => Math.Round(count * stepMm, 6);

    /// <summary>Best sizes for 1, 2, … up to a number of sizes.</summary>
    /// <param name="lengthsMm">Lengths allowed, mm, evenly spaced, ascending, at least one.</param>
    /// <param name="mostSizes">Largest number of sizes, 1 or more; numbers beyond the lengths allowed are left out.</param>
    /// <returns>One entry for each number of sizes, starting at 1. Misfit never rises along the list.</returns>
    /// <exception cref="ArgumentException">No length is allowed.</exception>
    public static IReadOnlyList<BestSizes> Solve(
        LengthDistribution customers, IReadOnlyList<double> lengthsMm, int mostSizes, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(mostSizes, 1);
        if (lengthsMm.Count == 0) throw new ArgumentException("At least one length must be allowed.", nameof(lengthsMm));

        var count = lengthsMm.Count;
        var most = Math.Min(mostSizes, count);
        var table = new HalfStepTable(customers, lengthsMm);
        double[] tail = [.. Enumerable.Range(0, count).Select(table.Above)];
        double[] best = [.. Enumerable.Range(0, count).Select(table.Below)];
        var previous = new int[most][];
        var answers = new List<BestSizes>(most);
        for (var k = 1; k <= most; k++)
        {
            cancellation.ThrowIfCancellationRequested();
            if (k > 1) (best, previous[k - 1]) = Next(table, best, k - 1);

            answers.Add(Answer(lengthsMm, best, tail, previous, k));
        }

        return answers;
    }

    private static (double[] Best, int[] Previous) Next(HalfStepTable table, double[] best, int firstIndex)
    {
        var next = new double[best.Length];
        var previous = new int[best.Length];
        Array.Fill(next, double.PositiveInfinity);
        Fill(table, best, next, previous, firstIndex, best.Length - 1, firstIndex - 1, best.Length - 2);
        return (next, previous);
    }

    /// <summary>Fill next[from..to] knowing that the best neighbour below lies in [lowest, highest]. The best neighbour never moves down as
    /// the size moves up (the gap's misfit obeys the quadrangle inequality), so the middle's neighbour bounds both halves: M log M steps,
    /// not M².</summary>
    private static void Fill(HalfStepTable table, double[] best, double[] next, int[] previous, int from, int to, int lowest, int highest)
    {
        if (from > to) return;

        var middle = (from + to) / 2;
        for (var i = lowest; i <= Math.Min(highest, middle - 1); i++)
        {
            var cost = best[i] + table.Between(i, middle); // theory F30
            if (cost < next[middle])
            {
                next[middle] = cost;
                previous[middle] = i;
            }
        }

        Fill(table, best, next, previous, from, middle - 1, lowest, previous[middle]);
        Fill(table, best, next, previous, middle + 1, to, previous[middle], highest);
    }

    private static BestSizes Answer(IReadOnlyList<double> lengthsMm, double[] best, double[] tail, int[][] previous, int k)
    {
        var last = k - 1;
        for (var j = k; j < best.Length; j++)
        {
            if (best[j] + tail[j] < best[last] + tail[last]) last = j;
        }

        var misfit = best[last] + tail[last];
        var sizes = new double[k];
        for (var level = k - 1; level >= 0; level--)
        {
            sizes[level] = lengthsMm[last];
            last = level > 0 ? previous[level][last] : last;
        }

        return new BestSizes(sizes, Math.Max(0, misfit));
    }

    /// <summary>Shares and moments at every lattice length and every middle between two: all the misfits are differences of them.</summary>
    private sealed class HalfStepTable
    {
        private readonly IReadOnlyList<double> _lengths;
        private readonly double[] _share;
        private readonly double[] _moment;
        private readonly double _mean;

        public HalfStepTable(LengthDistribution customers, IReadOnlyList<double> lengthsMm)
        {
            _lengths = lengthsMm;
            _share = new double[(2 * lengthsMm.Count) - 1];
            _moment = new double[_share.Length];
            for (var h = 0; h < _share.Length; h++)
            {
                var at = h % 2 == 0 ? lengthsMm[h / 2] : (lengthsMm[h / 2] + lengthsMm[(h / 2) + 1]) / 2;
                _share[h] = customers.Share(at);
                _moment[h] = customers.Moment(at);
            }

            _mean = customers.Moment(double.PositiveInfinity);
        }

        /// <summary>Misfit of the customers below size j when it is the shortest.</summary>
        public double Below(int j) => (_lengths[j] * _share[2 * j]) - _moment[2 * j];

        /// <summary>Misfit of the customers above size j when it is the longest.</summary>
        public double Above(int j) => (_mean - _moment[2 * j]) - (_lengths[j] * (1 - _share[2 * j]));

        /// <summary>Misfit of the customers between neighbouring sizes i and j.</summary>
        public double Between(int i, int j)
        {
            var middle = i + j;
            var toShorter = (_moment[middle] - _moment[2 * i]) - (_lengths[i] * (_share[middle] - _share[2 * i]));
            var toLonger = (_lengths[j] * (_share[2 * j] - _share[middle])) - (_moment[2 * j] - _moment[middle]);
            return toShorter + toLonger; // theory F28
        }
    }
}
