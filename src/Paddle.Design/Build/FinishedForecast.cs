using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using Paddle.Design.Finishing;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>The finished paddle that a measured stage leads to when it is planed to plan. Theory M24.</summary>
/// <remarks>Wood standing proud of the plan before the sanding is planed off; wood already too thin stays too thin. Sanding follows the
/// shape, so from then on every error of thickness stays.</remarks>
internal sealed class FinishedForecast
{
    private readonly DesignReport report;
    private readonly StageSolid finished;
    private readonly StageAllowance allowance;
    private readonly bool followsShape;
    private readonly double[][] shares;
    private readonly double[] place;
    private readonly IReadOnlyList<double> takenMm;
    private readonly double finishG;
    private readonly double finishFirst;

    internal FinishedForecast(
        DesignReport report, StageSolid finished, BuildStage stage, OutlineSaw saw, IReadOnlyList<double> takenMm, Laden? finish)
    {
        (this.report, this.finished, this.takenMm) = (report, finished, takenMm);
        allowance = StageAllowance.After(stage, saw);
        followsShape = stage >= BuildStage.Sanded;
        shares = [.. finished.Nodes.Select(node => CorrectionZones.Shares(node.Pattern))];
        place = [.. finished.Nodes.Select(node => StageEstimate.PlaceOf(report, node.AlongMm))];
        finishG = finish is null ? 0 : finish.MassG - report.Mass.TotalG;
        finishFirst = finish is null ? 0 : finish.MassG * finish.BalanceMm - report.Mass.TotalG * report.Mass.CentreOfMassMm;
    }

    /// <summary>Error of thickness that is left in a zone when finished, mm; a cut already taken stays taken.</summary>
    internal double LeftMm(CorrectionZone zone, double errorMm)
    {
        if (followsShape) return errorMm;
        var face = zone switch
        {
            CorrectionZone.Grip => allowance.GripFaceMm,
            CorrectionZone.ShaftUpper or CorrectionZone.ShaftLower => allowance.ShaftFaceMm,
            _ => allowance.BladeFaceMm,
        };
        var taken = takenMm[(int)zone];
        return face is { } left ? Math.Min(0, 2 * left + errorMm + taken) - taken : -taken;
    }

    /// <summary>Mass (g) and first moment (g·mm) of the finished paddle for unknowns θ, finish included where it counts.</summary>
    internal (double MassG, double First) Sum(double[] theta)
    {
        double[] left = [.. CorrectionZones.All.Select(zone => LeftMm(zone, theta[StageEstimate.FirstZone + (int)zone]))];
        return Sum(theta, left);
    }

    /// <summary>Mass (g) and balance (mm) of the paddle exactly to plan, finish included where it counts.</summary>
    internal (double MassG, double BalanceMm) Planned()
    {
        var (mass, first) = Sum(new double[StageEstimate.Unknowns], new double[CorrectionZones.All.Count]);
        return (mass, first / mass);
    }

    private (double MassG, double First) Sum(double[] theta, double[] left)
    {
        double mass = finishG, first = finishFirst;
        for (var i = 0; i < finished.Nodes.Count; i++)
        {
            var node = finished.Nodes[i];
            var area = node.Section.AreaMm2;
            for (var z = 0; z < left.Length; z++) area += node.Section.AreaPerThickness * shares[i][z] * left[z];
            var grams = node.WeightMm * area * StageEstimate.GramsPerMm3(report, theta, place[i]);
            mass += grams;
            first += grams * node.AlongMm;
        }

        return (mass, first);
    }

    /// <summary>Standard uncertainty of the finished balance point, mm.</summary>
    internal double BalanceUncertaintyMm(StageEstimate estimate)
    {
        double Balance(double[] theta)
        {
            var (mass, first) = Sum(theta);
            return first / mass;
        }

        var slope = Vector<double>.Build.Dense(StageEstimate.Unknowns);
        for (var k = 0; k < slope.Count; k++)
        {
            var step = Math.Max(1e-4, Math.Sqrt(estimate.Covariance[k, k]));
            double[] up = [.. estimate.Theta], down = [.. estimate.Theta];
            up[k] += step;
            down[k] -= step;
            slope[k] = (Balance(up) - Balance(down)) / (2 * step);
        }

        var square = slope * estimate.Covariance * slope;
        return Math.Sqrt(square + (followsShape ? 0 : PlaningSquare(estimate)));
    }

    /// <summary>Grams (g) and first moment (g·mm) that a millimetre off the middle of each zone takes away.</summary>
    internal (double[] G, double[] First) PerMillimetre(StageEstimate estimate)
    {
        double[] grams = new double[CorrectionZones.All.Count], first = new double[CorrectionZones.All.Count];
        for (var i = 0; i < finished.Nodes.Count; i++)
        {
            var node = finished.Nodes[i];

            // Taken off the middle and run out to the edge, the cut has the shape of the crown.
            var rate = node.WeightMm * 2 * node.Section.HalfWidthMm * node.Pattern.Moments.G1 * node.Section.MassShare
                * StageEstimate.GramsPerMm3(report, estimate.Theta, place[i]);
            for (var z = 0; z < grams.Length; z++)
            {
                grams[z] += rate * shares[i][z];
                first[z] += rate * shares[i][z] * node.AlongMm;
            }
        }

        return (grams, first);
    }

    /// <summary>Chance that a balance point ends within a tolerance of an aim.</summary>
    internal static double Chance(double balanceMm, double uncertaintyMm, double aimMm, double toleranceMm) =>
        Normal.CDF(balanceMm, uncertaintyMm, aimMm + toleranceMm) - Normal.CDF(balanceMm, uncertaintyMm, aimMm - toleranceMm);

    // What planing to plan will itself be off by, each zone on its own.
    private double PlaningSquare(StageEstimate estimate)
    {
        var (mass, first) = Sum(estimate.Theta);
        var sd = 2 * StageAllowance.After(BuildStage.Finished, OutlineSaw.BandSaw).FaceToleranceMm / Scatter.FifthPercentileZ;
        var square = 0.0;
        for (var z = 0; z < CorrectionZones.All.Count; z++)
        {
            double grams = 0, moment = 0;
            for (var i = 0; i < finished.Nodes.Count; i++)
            {
                var node = finished.Nodes[i];
                var rate = node.WeightMm * node.Section.AreaPerThickness * shares[i][z]
                    * StageEstimate.GramsPerMm3(report, estimate.Theta, place[i]);
                grams += rate;
                moment += rate * (node.AlongMm - first / mass);
            }

            square += moment / mass * sd * (moment / mass * sd);
        }

        return square;
    }
}
