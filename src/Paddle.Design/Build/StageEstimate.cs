using MathNet.Numerics.LinearAlgebra;
using Paddle.Design.Solid;

namespace Paddle.Design.Build;

/// <summary>What density, change of density along the board and thickness errors explain a weighing, a balance and caliper readings. Theory
/// M23.</summary>
/// <remarks>
/// Linearised least squares with prior spreads (Gauss-Newton): density about the design's, change along the board about none,
/// each zone's thickness about the stage's plan. Source: Bayesian linear regression, any text.
/// </remarks>
internal sealed class StageEstimate
{
    internal const int Density = 0;
    internal const int Change = 1;
    internal const int FirstZone = 2;
    private const int Passes = 6;

    private readonly DesignReport report;

    private StageEstimate(DesignReport report, double[] start)
    {
        this.report = report;
        Theta = [.. start];
        Covariance = Matrix<double>.Build.Dense(Unknowns, Unknowns);
    }

    internal static int Unknowns => FirstZone + CorrectionZones.All.Count;

    /// <summary>Relative density, change along the board, thickness error of every zone (mm).</summary>
    internal double[] Theta { get; private set; }

    internal Matrix<double> Covariance { get; private set; }

    /// <summary>Density at the design's balance point, kg/m³.</summary>
    internal double DensityKgM3 => report.Specification.Wood.DensityKgM3 * (1 + Theta[Density]);

    /// <summary>Standard uncertainty of the density, kg/m³.</summary>
    internal double DensityUncertaintyKgM3 => report.Specification.Wood.DensityKgM3 * Math.Sqrt(Covariance[Density, Density]);

    /// <summary>Change of density from the grip end to the tip end, as a fraction of it.</summary>
    internal double EndToEnd => Theta[Change];

    /// <summary>Thickness error of a zone against the stage's plan, mm.</summary>
    internal double ThicknessErrorMm(CorrectionZone zone) => Theta[FirstZone + (int)zone];

    /// <summary>Standard uncertainty of a zone's thickness error, mm.</summary>
    internal double ThicknessUncertaintyMm(CorrectionZone zone) =>
        Math.Sqrt(Covariance[FirstZone + (int)zone, FirstZone + (int)zone]);

    /// <summary>Place along the board in board lengths, 0 at the design's balance point.</summary>
    internal static double PlaceOf(DesignReport report, double alongMm) =>
        (alongMm - report.Mass.CentreOfMassMm) / report.Specification.Form.Places.OverallMm;

    /// <summary>Density (g/mm³) at a place for unknowns θ.</summary>
    internal static double GramsPerMm3(DesignReport report, double[] theta, double place) =>
        report.Specification.Wood.DensityKgM3 * 1e-6 * (1 + theta[Density]) * (1 + theta[Change] * place);

    internal static StageEstimate Fit(DesignReport report, StageModel model)
    {
        var estimate = new StageEstimate(report, model.Mean);
        for (var pass = 0; pass < Passes; pass++)
        {
            var normal = Matrix<double>.Build.DenseOfDiagonalArray([.. model.Deviation.Select(sd => 1 / (sd * sd))]);
            var right = Vector<double>.Build.Dense(
                Unknowns, k => (model.Mean[k] - estimate.Theta[k]) / (model.Deviation[k] * model.Deviation[k]));
            foreach (var row in model.Rows(estimate.Theta))
            {
                var slope = Vector<double>.Build.Dense(row.Slope);
                normal += slope.OuterProduct(slope) / (row.Error * row.Error);
                right += slope * ((row.Read - row.Expected) / (row.Error * row.Error));
            }

            var factor = normal.Cholesky();
            var step = factor.Solve(right);
            for (var k = 0; k < Unknowns; k++) estimate.Theta[k] += step[k];
            estimate.Covariance = factor.Solve(Matrix<double>.Build.DenseIdentity(Unknowns));
        }

        return estimate; // theory M23
    }

    /// <summary>Pattern of the place at x.</summary>
    internal static StationPattern PatternAt(PaddleForm form, double xMm)
    {
        var places = form.Places;
        var x = Math.Clamp(xMm, 0, places.OverallMm);
        if (x < places.GripEndMm) return At(x / places.GripEndMm, Zone.Grip);
        if (x < places.LowerHandMm)
            return StationPattern.At(Segment.UpperShaft, (x - places.GripEndMm) / (places.LowerHandMm - places.GripEndMm));
        if (x < places.ThroatMm)
            return StationPattern.At(Segment.LowerShaft, (x - places.LowerHandMm) / (places.ThroatMm - places.LowerHandMm));
        return At((x - places.ThroatMm) / places.BladeMm, Zone.Blade);
    }

    private static StationPattern At(double coordinate, Zone zone) =>
        StationPattern.At(
            Segment.All.First(segment => segment.Zone == zone && coordinate <= segment.To + 1e-12), coordinate);
}
