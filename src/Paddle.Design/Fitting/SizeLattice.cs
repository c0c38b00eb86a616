using MathNet.Numerics.Distributions;

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
        return stockFirst > stockLast ? [] : [.. Enumerable.Range(0, (int)(last - first) + 1).Select(i => Multiple(first + i, stepMm))];
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

/// <summary>Customers as a distribution of one length. Two functions of a limit are all a size run needs: the share of customers up to the
/// limit and the sum of their lengths. Both kinds below give them exactly.</summary>
internal abstract class LengthDistribution
{
    /// <summary>Shortest length worth looking at, mm.</summary>
    public abstract double ShortestMm { get; }
    /// <summary>Longest length worth looking at, mm.</summary>
    public abstract double LongestMm { get; }

    /// <summary>Share of customers with a length of at most the limit.</summary>
    /// <returns>Share, 0 to 1.</returns>
    public abstract double Share(double limitMm);

    /// <summary>Mean of (length where it is at most the limit, else 0): the first partial moment.</summary>
    /// <returns>Partial moment, mm.</returns>
    public abstract double Moment(double limitMm);
}

/// <summary>A list of customers, each with a length.</summary>
internal sealed class CustomerLengths : LengthDistribution
{
    private readonly double[] _sorted;
    private readonly double[] _sums;

    /// <summary>Take a list of lengths.</summary>
    /// <param name="lengthsMm">Lengths, mm, at least one, all finite.</param>
    /// <exception cref="ArgumentException">The list is empty or holds a value that is not finite.</exception>
    public CustomerLengths(IReadOnlyList<double> lengthsMm)
    {
        _sorted = [.. lengthsMm];
        if (_sorted.Length == 0 || !Array.TrueForAll(_sorted, double.IsFinite))
            throw new ArgumentException("At least one length is needed, and every length must be a finite number.", nameof(lengthsMm));

        Array.Sort(_sorted);
        _sums = new double[_sorted.Length + 1];
        for (var i = 0; i < _sorted.Length; i++) _sums[i + 1] = _sums[i] + _sorted[i];
    }

    public override double ShortestMm => _sorted[0];
    public override double LongestMm => _sorted[^1];

    public override double Share(double limitMm) => (double)CountUpTo(limitMm) / _sorted.Length;

    public override double Moment(double limitMm) => _sums[CountUpTo(limitMm)] / _sorted.Length;

    private int CountUpTo(double limitMm)
    {
        var low = 0;
        var high = _sorted.Length;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (_sorted[middle] <= limitMm) low = middle + 1;
            else high = middle;
        }

        return low;
    }
}

/// <summary>One normal group of a mixture.</summary>
/// <param name="Share">Share of the customers, above 0; shares are taken in proportion.</param>
/// <param name="MeanMm">μ, mean length, mm.</param>
/// <param name="StandardDeviationMm">σ, standard deviation, mm, above 0.</param>
internal readonly record struct NormalGroup(double Share, double MeanMm, double StandardDeviationMm);

/// <summary>Customers as a mixture of normal groups.</summary>
internal sealed class NormalMixture : LengthDistribution
{
    /// <summary>How far the tails are looked at, standard deviations: two in a thousand million people lie further out.</summary>
    private const double TailDeviations = 6;

    private readonly NormalGroup[] _groups;

    /// <summary>Take a mixture.</summary>
    /// <param name="groups">Groups, at least one.</param>
    /// <exception cref="ArgumentException">No group, or a share or deviation not above 0.</exception>
    public NormalMixture(IReadOnlyList<NormalGroup> groups)
    {
        if (groups.Count == 0 || groups.Any(g => !(g.Share > 0 && g.StandardDeviationMm > 0 && double.IsFinite(g.MeanMm))))
            throw new ArgumentException("At least one group is needed; shares and deviations must be above 0.", nameof(groups));

        var sum = groups.Sum(g => g.Share);
        _groups = [.. groups.Select(g => g with { Share = g.Share / sum })];
    }

    public override double ShortestMm => _groups.Min(g => g.MeanMm - (TailDeviations * g.StandardDeviationMm));
    public override double LongestMm => _groups.Max(g => g.MeanMm + (TailDeviations * g.StandardDeviationMm));

    public override double Share(double limitMm) => _groups.Sum(g => g.Share * Normal.CDF(g.MeanMm, g.StandardDeviationMm, limitMm));

    /// <remarks>μ Φ(z) − σ φ(z), z = (limit − μ)/σ. Source: textbook, partial moment of the normal distribution.</remarks>
    public override double Moment(double limitMm) => _groups.Sum(g => g.Share * PartialMoment(g, limitMm));

    private static double PartialMoment(NormalGroup g, double limitMm)
    {
        if (double.IsInfinity(limitMm)) return limitMm > 0 ? g.MeanMm : 0;

        var z = (limitMm - g.MeanMm) / g.StandardDeviationMm;
        return (g.MeanMm * Normal.CDF(0, 1, z)) - (g.StandardDeviationMm * Normal.PDF(0, 1, z)); // theory F29
    }
}
