using Paddle.Design.Outline;
using Paddle.Design.Units;

namespace Paddle.Design.Fitting;

/// <summary>A group of customers known by mean and spread.</summary>
/// <param name="Share">Share of the customers; shares are taken in proportion.</param>
/// <param name="Quantity">What mean and deviation measure.</param>
internal sealed record CustomerGroup(double Share, double MeanMm, double StandardDeviationMm, CustomerQuantity Quantity = CustomerQuantity.HandSpacing)
{
    /// <summary>Every group of a request: the survey's men and women by hand spacing (ANSUR II), then its own.</summary>
    public static IEnumerable<CustomerGroup> Of(SizeRunRequest request)
    {
        if (request.Population?.Men is { } men) yield return Surveyed(men, Survey.HandSpacing.Men);
        if (request.Population?.Women is { } women) yield return Surveyed(women, Survey.HandSpacing.Women);
        foreach (var group in request.Groups ?? [])
            yield return new(group.Share, group.MeanMm, group.StandardDeviationMm, group.Quantity ?? CustomerQuantity.HandSpacing);
    }

    private static CustomerGroup Surveyed(double share, SurveyFigure figure) => new(share, figure.Mean, figure.StandardDeviation);
}

/// <summary>One size of the run.</summary>
/// <param name="OverallLengthMm">Overall length, mm.</param>
/// <param name="HandSpacingMm">Hand spacing that it fits, mm.</param>
/// <param name="Share">Share of the customers for whom it is the nearest, 0 to 1.</param>
/// <param name="Count">Paddles of this size in the fleet; left out when no fleet was given.</param>
internal sealed record FleetSize(double OverallLengthMm, double HandSpacingMm, double Share, int? Count);

/// <summary>The best choice with one number of sizes.</summary>
/// <param name="Sizes">k, number of sizes.</param>
/// <param name="MeanMisfitMm">Its mean misfit, mm.</param>
/// <param name="GainMm">What the last of them takes off the misfit, mm; left out for the first.</param>
/// <param name="SizesMm">The sizes, mm.</param>
internal sealed record MisfitPoint(int Sizes, double MeanMisfitMm, double? GainMm, IReadOnlyList<double> SizesMm);

/// <summary>A bar of the histogram of customers.</summary>
/// <param name="LowMm">Lower end, not included, mm.</param>
/// <param name="HighMm">Upper end, included, mm.</param>
/// <param name="Share">Share of the customers, 0 to 1.</param>
internal sealed record HistogramBin(double LowMm, double HighMm, double Share);

/// <summary>The few sizes that fit a fleet's customers best.</summary>
/// <param name="Sizes">The sizes, shortest first.</param>
/// <param name="MeanMisfitMm">Mean distance between a customer's length and the nearest size, mm; no other choice on the step has less.</param>
/// <param name="Within25MmShare">Share of the customers within 25 mm of their size, 0 to 1.</param>
/// <param name="Within50MmShare">Share of the customers within 50 mm of their size, 0 to 1.</param>
/// <param name="Curve">Least misfit against number of sizes: what one more size buys.</param>
/// <param name="Histogram">The customers by overall length; the shares add up to 1, the end bars hold the tails.</param>
/// <param name="Reasons">What the figures say, in plain words.</param>
internal record SizeRunAdvice(
    IReadOnlyList<FleetSize> Sizes, double MeanMisfitMm, double Within25MmShare, double Within50MmShare, IReadOnlyList<MisfitPoint> Curve,
    IReadOnlyList<HistogramBin> Histogram, IReadOnlyList<string> Reasons);

/// <summary>Finds the few sizes that fit a fleet's customers best: calls the steps in order.</summary>
internal static class SizeRun
{
    /// <summary>Most sizes asked for, and the length of the misfit curve.</summary>
    public const int MostSizes = 8;
    /// <summary>Step between lengths where none is given, mm.</summary>
    public const double DefaultStepMm = 25;
    /// <summary>Blade length where none is given, mm: that of the ottertail, as a fitting on a lake gives it to a hand spacing of 35 in.</summary>
    public const double DefaultBladeLengthMm = 620;

    /// <summary>Answer a size run.</summary>
    /// <param name="request">Customers, number of sizes, step, fleet and stock limits.</param>
    /// <returns>The advice, or the refusals. The same request always gives the same answer.</returns>
    public static AnswerOrRefusals<SizeRunAdvice> Advise(SizeRunRequest request, CancellationToken cancellation = default)
    {
        var refusals = SizeRunChecks.Check(request);
        if (refusals.Count > 0) return new(null, refusals);

        cancellation.ThrowIfCancellationRequested();
        var extra = LengthRules.OwnGeometryMm(GripPattern.Of(GripStyle.Pear).HandMm, 0, request.FreeboardMm ?? LengthRules.DefaultFreeboardMm, request.BladeLengthMm ?? DefaultBladeLengthMm);
        var step = request.StepMm ?? DefaultStepMm;
        LengthDistribution customers = request.Customers is { } list
            ? new CustomerLengths([.. list.Select(c => OverallLengthMm(c, extra))])
            : new NormalMixture([.. CustomerGroup.Of(request).Where(g => g.Share > 0).Select(g => Group(g, extra))]);
        var lengths = SizeLattice.Lengths(customers, step, request.ShortestStockMm, request.LongestStockMm);
        if (lengths.Count == 0)
        {
            return new(null, [new InputRefusal("/longestStockMm", RefusalCodes.NoLengthOnStep, "No multiple of the step lies between the shortest and the longest stock length: widen the limits or take a smaller step.", request.LongestStockMm, Unit: "mm")]);
        }

        var best = SizeLattice.Solve(customers, lengths, MostSizes, cancellation);
        var chosen = best[Math.Min(request.Sizes, best.Count) - 1];
        return new(Answer(request, step, customers, best, chosen, extra), []);
    }

    private static double OverallLengthMm(CustomerRequest c, double extraMm) =>
        c.OverallLengthMm ?? (extraMm + (c.HandSpacingMm ?? HandSpacingMethods.FromStatureLine.At(c.StatureMm ?? double.NaN)));

    /// <summary>A group as a normal of overall length; a group of statures keeps the scatter of people about the line.</summary>
    private static NormalGroup Group(CustomerGroup g, double extraMm)
    {
        var line = HandSpacingMethods.FromStatureLine;
        return g.Quantity switch
        {
            CustomerQuantity.OverallLength => new NormalGroup(g.Share, g.MeanMm, g.StandardDeviationMm),
            CustomerQuantity.HandSpacing => new NormalGroup(g.Share, g.MeanMm + extraMm, g.StandardDeviationMm),
            _ => new NormalGroup( // theory F31
                g.Share, line.At(g.MeanMm) + extraMm, LengthMethods.Join(line.Slope * g.StandardDeviationMm, line.StandardErrorMm)),
        };
    }

    private static SizeRunAdvice Answer(
        SizeRunRequest request, double stepMm, LengthDistribution customers, IReadOnlyList<BestSizes> best, BestSizes chosen, double extraMm)
    {
        double[] shares = [.. Catchments(chosen.SizesMm).Select(c => customers.Share(c.UptoMm) - customers.Share(c.AboveMm))];
        var counts = request.FleetCount is { } n ? FleetCounts.Share(shares, n) : null;
        var sizes = chosen.SizesMm.Select((l, i) => new FleetSize(Math.Round(l, 1), Math.Round(l - extraMm, 1), shares[i], counts?[i]))
            .ToList();
        IReadOnlyList<MisfitPoint> curve = best
            .Select((b, i) => new MisfitPoint(i + 1, b.MeanMisfitMm, i == 0 ? null : best[i - 1].MeanMisfitMm - b.MeanMisfitMm, b.SizesMm))
            .ToList();
        return new SizeRunAdvice(
            sizes, chosen.MeanMisfitMm, ShareWithin(customers, chosen.SizesMm, 25), ShareWithin(customers, chosen.SizesMm, 50), curve,
            Histogram(customers, stepMm), [.. Reasons(request, curve, chosen)]);
    }

    /// <summary>Limits between which each size is the nearest.</summary>
    private static IEnumerable<(double SizeMm, double AboveMm, double UptoMm)> Catchments(IReadOnlyList<double> sizesMm) =>
        sizesMm.Select((size, i) => (
            size,
            i == 0 ? double.NegativeInfinity : (sizesMm[i - 1] + size) / 2,
            i == sizesMm.Count - 1 ? double.PositiveInfinity : (size + sizesMm[i + 1]) / 2));

    private static double ShareWithin(LengthDistribution customers, IReadOnlyList<double> sizesMm, double distanceMm)
    {
        const double Slack = 1e-9; // a customer exactly at the distance counts
        return Catchments(sizesMm).Sum(c =>
            customers.Share(Math.Min(c.UptoMm, c.SizeMm + distanceMm + Slack)) - customers.Share(Math.Max(c.AboveMm, c.SizeMm - distanceMm - Slack)));
    }

    /// <summary>Bars aligned with the lattice, at most 120 of them; the end bars hold the tails.</summary>
    private static IReadOnlyList<HistogramBin> Histogram(LengthDistribution customers, double stepMm)
    {
        const int MostBins = 120;
        const double TailShare = 0.0005;
        var low = Edge(customers, stepMm, TailShare);
        var steps = Edge(customers, stepMm, 1 - TailShare) + 1 - low;
        var stepsPerBin = Math.Ceiling(steps / MostBins);
        var count = (int)Math.Ceiling(steps / stepsPerBin);
        double[] edges = [.. Enumerable.Range(0, count + 1).Select(i => SizeLattice.Multiple(low + (i * stepsPerBin), stepMm))];
        return
        [
            .. Enumerable.Range(0, count).Select(i => new HistogramBin(
                edges[i],
                edges[i + 1],
                (i == count - 1 ? 1 : customers.Share(edges[i + 1])) - (i == 0 ? 0 : customers.Share(edges[i])))),
        ];
    }

    /// <summary>Last multiple of the step, as a number of steps, below which no more than a share of the customers lies.</summary>
    private static double Edge(LengthDistribution customers, double stepMm, double share)
    {
        var first = Math.Floor(customers.ShortestMm / stepMm);
        var last = Math.Ceiling(customers.LongestMm / stepMm);
        while (last - first > 1)
        {
            var middle = Math.Floor((first + last) / 2);
            if (customers.Share(middle * stepMm) <= share) first = middle;
            else last = middle;
        }

        return first;
    }

    private static IEnumerable<string> Reasons(SizeRunRequest request, IReadOnlyList<MisfitPoint> curve, BestSizes chosen)
    {
        var k = chosen.SizesMm.Count;
        var units = DrawingRequest.Read(request.Drawing?.Units);
        yield return FormattableString.Invariant($"With {k} {(k == 1 ? "size" : "sizes")} a customer is {DrawnLength.Text(chosen.MeanMisfitMm, units)} off on average.");
        if (k < request.Sizes)
            yield return FormattableString.Invariant($"Only {k} lengths on the step lie among these customers, so no more sizes can help.");
        if (k > 1) yield return FormattableString.Invariant($"Size number {k} bought {DrawnLength.Text(curve[k - 1].GainMm!.Value, units)}.");
        if (k < curve.Count) yield return FormattableString.Invariant($"Size number {k + 1} would buy {DrawnLength.Text(curve[k].GainMm!.Value, units)} more.");
        if (request.Customers?.Any(c => c is { OverallLengthMm: null, HandSpacingMm: null }) == true)
        {
            yield return FormattableString.Invariant($"Statures were turned into hand spacings by the survey's line; people of one stature differ by {DrawnLength.Rough(HandSpacingMethods.FromStatureLine.StandardErrorMm, units)} (one standard deviation), which is not in the misfit.");
        }
    }
}

/// <summary>Shares out a fleet between sizes in whole paddles.</summary>
internal static class FleetCounts
{
    /// <summary>Whole numbers that add up to the fleet, by largest remainder; where the fleet is large enough every size gets at least one.
    /// Ties go to the shorter size.</summary>
    /// <param name="shares">Share of the customers each size serves; they add up to 1.</param>
    /// <param name="fleetCount">n, paddles in the fleet, 0 or more.</param>
    /// <remarks>Source: largest-remainder (Hamilton) apportionment, textbook.</remarks>
    public static IReadOnlyList<int> Share(IReadOnlyList<double> shares, int fleetCount)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(fleetCount);
        var least = fleetCount >= shares.Count ? 1 : 0;
        double[] quotas = [.. shares.Select(s => s * fleetCount)];
        int[] counts = [.. quotas.Select(q => Math.Max(least, (int)Math.Floor(q)))];
        while (counts.Sum() < fleetCount) counts[Furthest(quotas, counts, +1, 0)]++;

        while (counts.Sum() > fleetCount) counts[Furthest(quotas, counts, -1, least)]--;

        return counts;
    }

    private static int Furthest(double[] quotas, int[] counts, int direction, int least)
    {
        var found = -1;
        for (var i = 0; i < quotas.Length; i++)
        {
            var allowed = direction > 0 || counts[i] > least;
            if (allowed && (found < 0 || direction * (quotas[i] - counts[i]) > (direction * (quotas[found] - counts[found])) + 1e-12))
                found = i;
        }

        return found;
    }
}
