using MathNet.Numerics.Distributions;

namespace Paddle.Design.Fitting;

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

    /// <inheritdoc/>
    public override double ShortestMm => _sorted[0];

    /// <inheritdoc/>
    public override double LongestMm => _sorted[^1];

    /// <inheritdoc/>
    public override double Share(double limitMm) => (double)CountUpTo(limitMm) / _sorted.Length;

    /// <inheritdoc/>
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

    /// <inheritdoc/>
    public override double ShortestMm => _groups.Min(g => g.MeanMm - (TailDeviations * g.StandardDeviationMm));

    /// <inheritdoc/>
    public override double LongestMm => _groups.Max(g => g.MeanMm + (TailDeviations * g.StandardDeviationMm));

    /// <inheritdoc/>
    public override double Share(double limitMm) => _groups.Sum(g => g.Share * Normal.CDF(g.MeanMm, g.StandardDeviationMm, limitMm));

    /// <inheritdoc/>
    /// <remarks>μ Φ(z) − σ φ(z), z = (limit − μ)/σ. Source: textbook, partial moment of the normal distribution.</remarks>
    public override double Moment(double limitMm) => _groups.Sum(g => g.Share * PartialMoment(g, limitMm));

    private static double PartialMoment(NormalGroup g, double limitMm)
    {
        if (double.IsInfinity(limitMm)) return limitMm > 0 ? g.MeanMm : 0;

        var z = (limitMm - g.MeanMm) / g.StandardDeviationMm;
        return (g.MeanMm * Normal.CDF(0, 1, z)) - (g.StandardDeviationMm * Normal.PDF(0, 1, z)); // theory F29
    }
}
