using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using Paddle.Design.Outline;

namespace Paddle.Design.Copying;

/// <summary>A paddle found from its readings.</summary>
/// <param name="Errors">Standard errors of the readings, that of their place counted.</param>
/// <param name="IsKept">Whether a reading counts; those that fit no paddle do not.</param>
/// <param name="Slopes">Changes of what is read with the parameters, over the readings' errors; a row a reading.</param>
/// <param name="Leverage">How much of itself a reading explains, 0 to 1; of one that does not count, the variance of its forecast over its own.</param>
internal sealed record CopyFit(CopyModel Model, LeastSquaresFit Fit, double[] Errors, bool[] IsKept, Matrix<double> Slopes, double[] Leverage)
{
    // Nobody else tells of a reading that explains itself as far as this.
    private const double MostLeverage = 0.97;

    public bool IsChecked(int reading) => !IsKept[reading] || Leverage[reading] <= MostLeverage;

    /// <summary>Residual of a reading over its standard error. Theory C4.</summary>
    public double Studentised(int reading, double predicted)
    {
        var residual = (Model.Readings.All[reading].Value - predicted) / Errors[reading];
        return residual / Math.Sqrt(IsKept[reading] ? Math.Max(1 - Leverage[reading], 1 - MostLeverage) : 1 + Leverage[reading]);
    }

    /// <summary>Standard error of what the model forecasts of a reading.</summary>
    public double ForecastError(int reading) => Errors[reading] * Math.Sqrt(Leverage[reading]);

    private IEnumerable<int> Kept => Enumerable.Range(0, IsKept.Length).Where(i => IsKept[i]);

    /// <summary>Sum of squares of the readings that count, each over its error.</summary>
    public double ChiSquare => Kept.Sum(i => Fit.Residuals[i] * Fit.Residuals[i]);

    /// <summary>Readings that count, less what the parameters took of them. Theory C3.</summary>
    public double DegreesOfFreedom => Kept.Sum(i => 1 - Leverage[i]);

    /// <summary>Chance of residuals as large or larger, were the paddle of this family and the errors as stated.</summary>
    public double Chance => 1 - ChiSquared.CDF(Math.Max(DegreesOfFreedom, 0.1), ChiSquare);

    /// <summary>Where residuals are larger than the stated errors allow, every standard error grows with them (Birge 1932). Theory C3.</summary>
    public double Growth => Math.Max(1, Math.Sqrt(ChiSquare / Math.Max(DegreesOfFreedom, 1)));

    /// <summary>Standard error of a parameter in its own unit.</summary>
    public double ErrorOf(int parameter) => Growth * Model.Scatter(parameter) * Math.Sqrt(Fit.Covariance[parameter, parameter]);

    /// <summary>Logarithm of the chance of these readings under the model, up to a constant (Laplace). Theory C5.</summary>
    public double LogEvidence
    {
        get
        {
            // One reading in a hundred is a slip, and then it could have been anything within this, mm.
            const double AnythingMm = 50, Slips = 0.01;
            var readings = Kept.Sum(i => Math.Log(Errors[i] * Math.Sqrt(2 * Math.PI)));
            return -(Fit.SumOfSquares + Fit.LogDeterminant) / 2 - readings + Kept.Count() * Math.Log(AnythingMm * (1 - Slips) / Slips);
        }
    }
}

/// <summary>Finds the paddle that explains readings.</summary>
internal static class CopyFitter
{
    // How far a blade may leave its family's curve, fractions of the half-breadth: not at all, as a hand fairs, another shape altogether.
    private static readonly double[] Departures = [0, 0.01, 0.04];

    // What a curve between stations may be off even where the family's fits, fraction of the half-breadth.
    private const double LeastDeparture = 0.003;

    // Families whose curve comes nearest: only these are looked at closely.
    private const int Nearest = 2;

    /// <summary>Chance that a sound set of readings has one named.</summary>
    public const double FalseAlarm = 0.01;

    // A step of this share of a parameter's scatter is far below its error.
    private const double Tolerance = 1e-5;
    private const int OutlineIterations = 12, MostIterations = 20;

    // More readings than this that fit no paddle: then it is the paddle that is of another kind.
    private const double MostWrongShare = 0.2;
    private const int MostWrong = 6;

    /// <summary>The blade's family and the grip's style that explain the widths best, then everything. Theory C5.</summary>
    public static CopyFit Find(CopyRequest request, CopyReadings readings, WoodPrior wood, CancellationToken cancellation)
    {
        var styles = request.Grip?.Style is { } style ? [Names.Find<GripStyle>(style)!.Value] : Enum.GetValues<GripStyle>();
        CopyModel Outline(BladeFamily family, GripStyle grip, double departure) => new(request, readings, wood, family, grip, departure, isOutlineOnly: true);
        var ranked = BladeFamilies.All.Select(family => Robust(Outline(family, styles[0], 0), null, cancellation)).OrderByDescending(fit => fit.LogEvidence).Take(Nearest);
        CopyFit? best = null;
        var chosen = 0.0;
        foreach (var near in ranked)
        {
            foreach (var departure in Departures)
            {
                var fit = Robust(Outline(near.Model.Family, styles[0], departure), near.Fit.Parameters, cancellation);
                if (best is null || fit.LogEvidence > best.LogEvidence) (best, chosen) = (fit, departure);
            }
        }

        var found = best!;
        foreach (var other in styles.Skip(1))
        {
            var fit = Robust(Outline(found.Model.Family, other, chosen), found.Fit.Parameters, cancellation);
            if (fit.LogEvidence > found.LogEvidence + 1e-6) found = fit;
        }

        return Robust(new(request, readings, wood, found.Model.Family, found.Model.Style, Math.Max(chosen, LeastDeparture), isOutlineOnly: false), found.Fit.Parameters, cancellation);
    }

    /// <summary>Fits, leaves out the reading that fits worst as long as one fails the test, and fits again. Theory C4.</summary>
    /// <param name="start">Where to begin; null for what is usual, and then nothing is left out: the fit only ranks.</param>
    private static CopyFit Robust(CopyModel model, double[]? start, CancellationToken cancellation)
    {
        var readings = model.Readings.All;
        var count = readings.Count;
        var isKept = readings.Select(reading => !model.IsOutlineOnly || reading.IsWidth).ToArray();
        var looked = isKept.Count(kept => kept);
        var critical = Normal.InvCDF(0, 1, 1 - FalseAlarm / 2 / looked);
        var z = start ?? new double[CopyModel.Count];
        while (true)
        {
            var errors = Errors(model, z);
            double[] Residuals(double[] at, bool isAll)
            {
                var predicted = model.Predict(at);
                var residuals = new double[count + CopyModel.Count];
                for (var i = 0; i < count; i++) residuals[i] = isAll || isKept[i] ? (predicted[i] - readings[i].Value) / errors[i] : 0;
                at.CopyTo(residuals, count);
                return residuals;
            }

            var fit = LeastSquares.Solve(at => Residuals(at, isAll: false), z, model.IsOpen, model.IsOutlineOnly ? OutlineIterations : MostIterations, Tolerance, cancellation);
            z = fit.Parameters;
            var slopes = model.IsOutlineOnly || isKept.All(kept => kept) ? fit.Jacobian : LeastSquares.Jacobian(at => Residuals(at, isAll: true), z, model.IsOpen);
            var leverage = new double[count];
            for (var i = 0; i < count; i++) leverage[i] = slopes.Row(i) * fit.Covariance * slopes.Row(i);
            var found = new CopyFit(model, fit, errors, isKept, slopes, leverage);
            var predicted = model.Predict(z);

            // Lengths are doubted last, with everything else known: a blade of another curve would make a throat wrong.
            var worst = Enumerable.Range(0, count).Where(i => isKept[i] && found.IsChecked(i) && (!model.IsOutlineOnly || readings[i].Kind == ReadingKind.Width))
                .MaxBy(i => Math.Abs(found.Studentised(i, predicted[i])));
            var isFull = looked - isKept.Count(kept => kept) >= Math.Min(MostWrong, (int)(MostWrongShare * looked));
            if (start is null || isFull || Math.Abs(found.Studentised(worst, predicted[worst])) <= critical) return found;
            isKept = (bool[])isKept.Clone();
            isKept[worst] = false;
        }
    }

    // Theory C2: a station off its place reads what stands beside it; the slope of what is read turns the one error into the other.
    private static double[] Errors(CopyModel model, double[] z)
    {
        var place = Math.Max(model.Readings.PlaceErrorMm, 0.05);
        var (before, after) = (model.Predict(z, -place), model.Predict(z, place));
        return
        [
            .. model.Readings.All.Select((reading, i) =>
                reading.Station < 0 ? reading.Error : Math.Sqrt(Math.Pow(reading.Error, 2) + Math.Pow((after[i] - before[i]) / 2 / place * model.Readings.PlaceErrorMm, 2))),
        ];
    }
}
