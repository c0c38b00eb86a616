using MathNet.Numerics.LinearAlgebra;
using Paddle.Design.Solid;

namespace Paddle.Design.Build;

/// <summary>
/// What density, change of density along the board and thickness errors explain a weighing, a balance and caliper readings.
/// Theory M23.
/// </summary>
/// <remarks>
/// Linearised least squares with prior spreads (Gauss-Newton): density about the design's, change along the board about none,
/// each zone's thickness about the stage's plan. Source: Bayesian linear regression, any text; the spreads are those of
/// <see cref="StageScatter"/> and <see cref="StageAllowance"/>.
/// </remarks>
internal sealed class StageEstimate
{
    private const int Density = 0;
    private const int Change = 1;
    internal const int FirstZone = 2;
    private const int Passes = 6;

    private readonly DesignReport report;
    private readonly StageSolid stage;
    private readonly double[][] shares; // of every node, per zone
    private readonly double[] place;    // of every node along the board, from the design's balance point, in board lengths

    private StageEstimate(DesignReport report, StageSolid stage)
    {
        (this.report, this.stage) = (report, stage);
        shares = [.. stage.Nodes.Select(node => CorrectionZones.Shares(node.Pattern))];
        place = [.. stage.Nodes.Select(node => PlaceOf(report, node.AlongMm))];
        Theta = new double[Unknowns];
        Covariance = Matrix<double>.Build.Dense(Unknowns, Unknowns);
    }

    internal static int Unknowns => FirstZone + CorrectionZones.All.Count;

    /// <summary>Relative density, change along the board, thickness error of every zone (mm).</summary>
    internal double[] Theta { get; private set; }

    /// <summary>Their covariance.</summary>
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

    internal static StageEstimate Fit(DesignReport report, StageSolid stage, PaddleSolid fine, BalanceReading reading, OutlineSaw saw)
    {
        var estimate = new StageEstimate(report, stage);
        var readings = reading.Readings ?? [];
        var weighed = reading.OfBareWood(report);
        var shape = new StageShape(fine, new(report.Outline), stage.Blank, reading.Stage, StageAllowance.After(reading.Stage, saw));
        var planned = readings.Select(r => shape.At(PatternAt(fine.Form, r.XMm), r.XMm).ThicknessMm).ToArray();
        var readShares = readings.Select(r => CorrectionZones.Shares(PatternAt(fine.Form, r.XMm))).ToArray();
        var prior = Prior(report, reading.Stage, saw);

        for (var pass = 0; pass < Passes; pass++)
        {
            var normal = Matrix<double>.Build.DenseOfDiagonalArray([.. prior.Select(sd => 1 / (sd * sd))]);
            var right = Vector<double>.Build.Dense([.. estimate.Theta.Zip(prior, (value, sd) => -value / (sd * sd))]);

            void Add(double[] slope, double miss, double error)
            {
                var row = Vector<double>.Build.Dense(slope);
                normal += row.OuterProduct(row) / (error * error);
                right += row * (miss / (error * error));
            }

            var (mass, balance, byMass, byBalance) = estimate.Model();
            Add(byMass, weighed.MassG - mass, reading.MassErrorG);
            Add(byBalance, weighed.BalanceMm - balance, reading.BalanceErrorMm);
            for (var k = 0; k < readings.Count; k++)
            {
                var slope = new double[Unknowns];
                var expected = planned[k];
                for (var z = 0; z < CorrectionZones.All.Count; z++)
                {
                    slope[FirstZone + z] = readShares[k][z];
                    expected += readShares[k][z] * estimate.Theta[FirstZone + z];
                }

                Add(slope, readings[k].ThicknessMm - expected, reading.ThicknessErrorMm);
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

    private static double[] Prior(DesignReport report, BuildStage stage, OutlineSaw saw)
    {
        // Both faces are off by as much as one of them is trusted to, 9 times in 10.
        var thickness = 2 * StageAllowance.After(stage, saw).FaceToleranceMm / Wood.Scatter.FifthPercentileZ;
        var prior = new double[Unknowns];
        Array.Fill(prior, thickness);
        prior[Density] = StageScatter.DensityVariation(report.Specification.Wood);
        prior[Change] = StageScatter.EndToEndVariation;
        return prior;
    }

    // Mass (g), balance (mm) and their slopes at the current unknowns.
    private (double Mass, double Balance, double[] ByMass, double[] ByBalance) Model()
    {
        double mass = 0, first = 0;
        double[] byMass = new double[Unknowns], byFirst = new double[Unknowns];
        for (var i = 0; i < stage.Nodes.Count; i++)
        {
            var node = stage.Nodes[i];
            var density = GramsPerMm3(report, Theta, place[i]);
            var area = node.Section.AreaMm2;
            for (var z = 0; z < shares[i].Length; z++) area += node.Section.AreaPerThickness * shares[i][z] * Theta[FirstZone + z];
            var grams = node.WeightMm * density * area;
            mass += grams;
            first += grams * node.AlongMm;

            void Spread(int k, double rate)
            {
                byMass[k] += rate;
                byFirst[k] += rate * node.AlongMm;
            }

            Spread(Density, grams / (1 + Theta[Density]));
            Spread(Change, grams * place[i] / (1 + Theta[Change] * place[i]));
            for (var z = 0; z < shares[i].Length; z++)
                Spread(FirstZone + z, node.WeightMm * density * node.Section.AreaPerThickness * shares[i][z]);
        }

        var balance = first / mass;
        return (mass, balance, byMass, [.. byFirst.Select((slope, k) => (slope - balance * byMass[k]) / mass)]);
    }
}
