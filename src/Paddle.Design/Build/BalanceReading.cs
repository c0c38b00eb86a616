using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>A thickness read with a caliper on the centre line.</summary>
/// <param name="XMm">Place from the top of the grip, mm.</param>
internal sealed record ThicknessReading(double XMm, double ThicknessMm);

/// <summary>A cut of an earlier correction that has been taken.</summary>
/// <param name="ThicknessMm">Full thickness off the middle in the heart of the zone, mm.</param>
internal sealed record EarlierRemoval(CorrectionZone Zone, double ThicknessMm);

/// <summary>A paddle weighed and balanced while it is being made.</summary>
/// <param name="Stage">The stage just done.</param>
/// <param name="BalanceMm">Balance point, mm from the finished top of the grip, along the shaft's line.</param>
/// <param name="Readings">Thickness readings, or none.</param>
/// <param name="MassErrorG">Standard uncertainty of the mass, g.</param>
/// <param name="BalanceErrorMm">Standard uncertainty of the balance point, mm.</param>
/// <param name="ThicknessErrorMm">Standard uncertainty of a thickness reading, mm.</param>
/// <param name="EarlierRemovals">Wood taken beyond the plan by earlier corrections, or none.</param>
/// <param name="MeasuredAgain">Whether the readings have been taken again and hold.</param>
internal sealed record BalanceReading(
    BuildStage Stage,
    double MassG,
    double BalanceMm,
    IReadOnlyList<ThicknessReading>? Readings = null,
    double MassErrorG = 1,
    double BalanceErrorMm = 2,
    double ThicknessErrorMm = 0.2,
    IReadOnlyList<EarlierRemoval>? EarlierRemovals = null,
    bool MeasuredAgain = false);

/// <summary>What the correction aims for.</summary>
/// <param name="Confidence">
/// How sure the maker wants to be of ending in tolerance, 0.5 to 0.99: the aim is drawn in from the tolerance by so many standard
/// uncertainties. At 0.5 the best estimate alone decides.
/// </param>
/// <param name="CountFinish">Whether the aim is for the paddle with its varnish and oil on; the design's own aim is the finished paddle.</param>
/// <param name="Build">Board, saw and coats as on the build sheet; null for the defaults.</param>
internal sealed record CorrectionOptions(double Confidence = 0.95, bool CountFinish = true, BuildOptions? Build = null);

/// <summary>A reading that does not fit the design, the stage and the other readings.</summary>
/// <param name="Index">Its number among the thickness readings; 0 for mass and balance.</param>
/// <param name="Read">As read, g or mm.</param>
/// <param name="Expected">What design, stage and the readings that fit expect.</param>
/// <param name="Low">5th percentile of what they expect.</param>
/// <param name="High">95th percentile of it.</param>
/// <param name="Deviations">How many standard deviations it lies off.</param>
/// <param name="WouldFit">A usual slip set right that would fit: a digit too many or too few, or the other end; else null.</param>
internal sealed record ReadingDoubt(
    ReadingKind Kind, int Index, double Read, double Expected, double Low, double High, double Deviations, double? WouldFit);

/// <summary>Whether readings can be of this paddle at this stage. Theory M26.</summary>
/// <param name="Doubts">Readings that do not fit, the worst first.</param>
/// <param name="MisfitSquare">Sum of squares by which all of them together lie off.</param>
/// <param name="MostMisfitSquare">The most that chance allows it.</param>
/// <remarks>Each reading against what the stage's plan with its usual scatter and all other readings expect of it, in standard deviations:
/// the measurement test of data reconciliation. The worst is set aside and the rest tested again until all fit; what then is left must also
/// fit as a whole, by chi square. Source: Mah and Tamhane, Detection of gross errors in process data, AIChE Journal 28 (1982), 828-830
/// (abstract read); the level of 0.1 % to a reading, 3.29 standard deviations, is Baarda's (1968, from memory).</remarks>
internal sealed record ReadingTest(IReadOnlyList<ReadingDoubt> Doubts, double MisfitSquare, double MostMisfitSquare)
{
    // One honest reading in a thousand is doubted; doubting it costs a weighing, believing a false one the paddle.
    private const double Level = 0.001;
    // More slips than this at once are no slips: the stage or the paddle is another.
    private const int MostDoubts = 5;

    private static readonly double Most = Normal.InvCDF(0, 1, 1 - Level / 2);

    /// <summary>Whether every reading fits, and all of them together.</summary>
    internal bool Fits => Doubts.Count == 0 && MisfitSquare <= MostMisfitSquare;

    /// <summary>Share of honest paddles whose readings lie as far off together; null where they do not fit.</summary>
    /// <param name="deviation">Standard deviation of each unknown.</param>
    internal static double? ChanceOf(IReadOnlyList<ReadingRow> rows, IReadOnlyList<double> deviation)
    {
        var (_, _, misfit) = Fit(deviation, rows);
        return misfit <= MostSquare(rows.Count) && Worst(deviation, rows).Deviations <= Most
            ? 1 - ChiSquared.CDF(rows.Count, misfit)
            : null;
    }

    /// <summary>Tests the readings of a stage.</summary>
    /// <param name="rows">The readings, beside what is expected with no error but the cuts taken.</param>
    /// <param name="deviation">Standard deviation of each unknown.</param>
    /// <param name="lengthMm">Length of the paddle along the shaft's line, mm, to know a balance read from the other end.</param>
    internal static ReadingTest Of(IReadOnlyList<ReadingRow> rows, IReadOnlyList<double> deviation, double lengthMm)
    {
        var kept = rows.ToList();
        var aside = new List<ReadingRow>();
        while (aside.Count < MostDoubts && kept.Count > 0)
        {
            var (worst, deviations) = Worst(deviation, kept);
            if (deviations <= Most) break;
            aside.Add(worst);
            kept.Remove(worst);
        }

        var (mean, covariance, misfit) = Fit(deviation, kept);
        var doubts = aside.Select(row => Doubt(row, mean, covariance, lengthMm)).Where(doubt => doubt.Deviations > Most);
        return new([.. doubts.OrderByDescending(doubt => doubt.Deviations)], misfit, MostSquare(kept.Count));
    }

    private static double MostSquare(int readings) => ChiSquared.InvCDF(Math.Max(1, readings), 1 - Level);

    private static (ReadingRow Row, double Deviations) Worst(IReadOnlyList<double> deviation, IReadOnlyList<ReadingRow> rows)
    {
        // What the rows before and after one add is kept, so that leaving one out needs no subtraction.
        var before = new Sums[rows.Count + 1];
        var after = new Sums[rows.Count + 1];
        before[0] = after[rows.Count] = Sums.None(deviation.Count);
        for (var i = 0; i < rows.Count; i++) before[i + 1] = before[i].With(rows[i]);
        for (var i = rows.Count - 1; i >= 0; i--) after[i] = after[i + 1].With(rows[i]);

        var (worst, most) = (rows[0], 0.0);
        for (var i = 0; i < rows.Count; i++)
        {
            var (mean, covariance) = Solved(deviation, before[i].Plus(after[i + 1]));
            var (miss, sd) = Miss(rows[i], mean, covariance);
            if (Math.Abs(miss) / sd > most) (worst, most) = (rows[i], Math.Abs(miss) / sd);
        }

        return (worst, most);
    }

    private static (Vector<double> Mean, Matrix<double> Covariance, double Misfit) Fit(IReadOnlyList<double> deviation, IReadOnlyList<ReadingRow> rows)
    {
        var (mean, covariance) = Solved(deviation, rows.Aggregate(Sums.None(deviation.Count), (sums, row) => sums.With(row)));
        var misfit = 0.0;
        for (var k = 0; k < mean.Count; k++) misfit += Square(mean[k] / deviation[k]);
        foreach (var row in rows) misfit += Square((row.Read - row.Expected - Vector<double>.Build.Dense(row.Slope) * mean) / row.Error);
        return (mean, covariance, misfit); // theory M26
    }

    // Errors of the unknowns about the model's mean, given some readings.
    private static (Vector<double> Mean, Matrix<double> Covariance) Solved(IReadOnlyList<double> deviation, Sums sums)
    {
        var normal = sums.Normal + Matrix<double>.Build.DenseOfDiagonalArray([.. deviation.Select(sd => 1 / (sd * sd))]);
        var covariance = normal.Cholesky().Solve(Matrix<double>.Build.DenseIdentity(deviation.Count));
        return (covariance * sums.Right, covariance);
    }

    // How far a reading lies off what the others expect, and the standard deviation of that.
    private static (double Miss, double Sd) Miss(ReadingRow row, Vector<double> mean, Matrix<double> covariance)
    {
        var slope = Vector<double>.Build.Dense(row.Slope);
        return (row.Read - row.Expected - slope * mean, Math.Sqrt(slope * covariance * slope + row.Error * row.Error)); // theory M26
    }

    private static ReadingDoubt Doubt(ReadingRow row, Vector<double> mean, Matrix<double> covariance, double lengthMm)
    {
        var (miss, sd) = Miss(row, mean, covariance);
        var expected = row.Read - miss;
        double[] slips = row.Kind == ReadingKind.Balance ? [row.Read * 10, row.Read / 10, lengthMm - row.Read] : [row.Read * 10, row.Read / 10];
        return new(
            row.Kind,
            row.Index,
            row.Read,
            expected,
            Math.Max(0, expected - Scatter.FifthPercentileZ * sd),
            expected + Scatter.FifthPercentileZ * sd,
            Math.Abs(miss) / sd,
            slips.Where(slip => Math.Abs(slip - expected) <= Scatter.FifthPercentileZ * sd).Select(slip => (double?)slip).FirstOrDefault());
    }

    private static double Square(double x) => x * x;

    /// <summary>Sums of the normal equations.</summary>
    private sealed record Sums(Matrix<double> Normal, Vector<double> Right)
    {
        internal static Sums None(int unknowns) =>
            new(Matrix<double>.Build.Dense(unknowns, unknowns), Vector<double>.Build.Dense(unknowns));

        internal Sums With(ReadingRow row)
        {
            var slope = Vector<double>.Build.Dense(row.Slope);
            var weight = 1 / (row.Error * row.Error);
            return new(Normal + slope.OuterProduct(slope) * weight, Right + slope * ((row.Read - row.Expected) * weight));
        }

        internal Sums Plus(Sums other) => new(Normal + other.Normal, Right + other.Right);
    }
}

/// <summary>Limits of readings that a caller may want to state.</summary>
internal static class BalanceReadingLimits
{
    /// <summary>Most that one earlier cut may have taken off a zone, mm. Own choice.</summary>
    public const double MostTakenMm = 10;
}

/// <summary>Refuses readings and options that cannot be.</summary>
internal static class BalanceReadingChecks
{
    internal static void Require(DesignReport report, BalanceReading reading, CorrectionOptions options)
    {
        Positive(reading.MassG, nameof(reading.MassG));
        Positive(reading.BalanceMm, nameof(reading.BalanceMm));
        Positive(reading.MassErrorG, nameof(reading.MassErrorG));
        Positive(reading.BalanceErrorMm, nameof(reading.BalanceErrorMm));
        Positive(reading.ThicknessErrorMm, nameof(reading.ThicknessErrorMm));
        var overall = report.Specification.Form.Places.OverallMm;
        if (reading.BalanceMm >= overall)
            throw new ArgumentOutOfRangeException(nameof(reading), reading.BalanceMm, "The balance point must lie on the paddle.");
        foreach (var thickness in reading.Readings ?? [])
        {
            if (!(thickness.ThicknessMm >= 0) || !double.IsFinite(thickness.ThicknessMm))
                throw new ArgumentOutOfRangeException(nameof(reading), thickness.ThicknessMm, "A thickness must be 0 or more.");
            if (!(thickness.XMm >= 0 && thickness.XMm <= overall))
                throw new ArgumentOutOfRangeException(nameof(reading), thickness.XMm, "A reading must lie on the paddle.");
        }

        foreach (var cut in reading.EarlierRemovals ?? [])
        {
            if (!(cut.ThicknessMm is >= 0 and <= BalanceReadingLimits.MostTakenMm))
                throw new ArgumentOutOfRangeException(nameof(reading), cut.ThicknessMm, "An earlier cut must lie in 0 to 10 mm.");
        }

        if (!(options.Confidence is >= 0.5 and <= 0.99))
            throw new ArgumentOutOfRangeException(nameof(options), options.Confidence, "Confidence must lie in 0.5 to 0.99.");
    }

    private static void Positive(double value, string name)
    {
        if (!(value > 0) || !double.IsFinite(value)) throw new ArgumentOutOfRangeException(name, value, "Must be above 0.");
    }
}
