using MathNet.Numerics.LinearAlgebra;
using Paddle.Design.Finishing;
using Paddle.Design.Solid;
using Paddle.Design.Units;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>What density, change of density along the board and thickness errors explain a weighing, a balance and caliper readings. Theory
/// M23.</summary>
/// <remarks>Linearised least squares with prior spreads (Gauss-Newton): density about the design's, change along the board about none, each
/// zone's thickness about the stage's plan. Source: Bayesian linear regression, any text.</remarks>
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
    internal double ThicknessUncertaintyMm(CorrectionZone zone) => Math.Sqrt(Covariance[FirstZone + (int)zone, FirstZone + (int)zone]);

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
        StationPattern.At(Segment.All.First(segment => segment.Zone == zone && coordinate <= segment.To + 1e-12), coordinate);
}

/// <summary>What a reading is of.</summary>
internal enum ReadingKind
{
    Mass,
    /// <summary>The balance point.</summary>
    Balance,
    /// <summary>A thickness on the centre line.</summary>
    Thickness,
}

/// <summary>One reading beside what the model of its stage expects.</summary>
/// <param name="Index">Its number among the thickness readings; 0 for mass and balance.</param>
/// <param name="Read">As read, g or mm.</param>
/// <param name="Expected">As expected at the unknowns that the row was asked for.</param>
/// <param name="Slope">How that grows with each unknown.</param>
/// <param name="ReadingError">Standard uncertainty of the reading, its place included.</param>
/// <param name="Error">The same with how far the wood there may lie off its zone's mean.</param>
internal sealed record ReadingRow(
    ReadingKind Kind, int Index, double Read, double Expected, double[] Slope, double ReadingError, double Error);

/// <summary>What a stage should weigh, where it should balance and how thick it should be, as functions of the wood's density, its change
/// along the board and the thickness error of every zone; with how far these usually lie off. Theory M23.</summary>
/// <remarks>The usual spreads are those of <see cref="StageScatter"/> and <see cref="StageAllowance"/>. A cut already taken beyond the plan
/// moves the expected thickness of its zone, and is itself off by <see cref="BalanceCorrection.CutVariation"/>.</remarks>
internal sealed class StageModel
{
    // A place is found along the paddle with a tape. Common practice, no source.
    private const double PlaceErrorMm = 1;

    private readonly StageSolid stage;
    private readonly DesignReport report;
    private readonly BalanceReading reading;
    private readonly double[][] shares; // of every node, per zone
    private readonly double[] place;    // of every node along the board, from the design's balance point, in board lengths
    private readonly double[] planned;  // at every thickness reading
    private readonly double[][] readShares;
    private readonly double[] placeMm;  // what a place off by as much as a tape is read to does to a thickness
    private readonly double localMm;

    private StageModel(DesignReport report, StageSolid stage, PaddleSolid fine, BalanceReading reading, OutlineSaw saw)
    {
        (this.report, this.stage, this.reading) = (report, stage, reading);
        shares = [.. stage.Nodes.Select(node => CorrectionZones.Shares(node.Pattern))];
        place = [.. stage.Nodes.Select(node => StageEstimate.PlaceOf(report, node.AlongMm))];
        var readings = reading.Readings ?? [];
        var allowance = StageAllowance.After(stage.Stage, saw);
        var shape = new StageShape(fine, new(report.Outline), stage.Blank, stage.Stage, allowance);
        var patterns = readings.Select(r => StageEstimate.PatternAt(fine.Form, r.XMm)).ToArray();
        double ThicknessMm(double xMm) => shape.At(StageEstimate.PatternAt(fine.Form, xMm), xMm).ThicknessMm;
        planned = [.. readings.Select(r => ThicknessMm(r.XMm))];
        var last = fine.Form.Places.OverallMm;
        placeMm =
        [
            .. readings.Select(r => Math.Abs(
                ThicknessMm(Math.Min(last, r.XMm + PlaceErrorMm)) - ThicknessMm(Math.Max(0, r.XMm - PlaceErrorMm))) / 2),
        ];
        readShares = [.. patterns.Select(CorrectionZones.Shares)];

        // One face is held to the tolerance nine times in ten. A zone is off on both faces alike, a place of it on each by itself; and
        // whoever planes to printed figures leaves what they were rounded up by.
        var face = allowance.FaceToleranceMm / Scatter.FifthPercentileZ;
        localMm = Root(Math.Sqrt(2) * face, StepMm / Math.Sqrt(12));
        var zoneMm = Root(2 * face, StepMm / Math.Sqrt(3));
        TakenMm = Taken(reading);
        Mean = new double[StageEstimate.Unknowns];
        Deviation = new double[StageEstimate.Unknowns];
        for (var z = 0; z < TakenMm.Length; z++)
        {
            Mean[StageEstimate.FirstZone + z] = -TakenMm[z];
            Deviation[StageEstimate.FirstZone + z] = Root(zoneMm, BalanceCorrection.CutVariation * TakenMm[z]);
        }

        Deviation[StageEstimate.Density] = StageScatter.DensityVariation(report.Specification.Wood);
        Deviation[StageEstimate.Change] = StageScatter.EndToEndVariation;
    }

    /// <summary>Unknowns as planned: no error but the cuts already taken.</summary>
    internal double[] Mean { get; }
    /// <summary>Standard deviation of each unknown about it.</summary>
    internal double[] Deviation { get; }
    /// <summary>Full thickness already taken beyond the plan, mm, by zone.</summary>
    internal double[] TakenMm { get; }
    /// <summary>What the thicknesses that the maker works to are printed to, rounded up, mm.</summary>
    internal double StepMm => report.Specification.Units == DrawingUnits.Metric ? 0.1 : DrawnLength.MmPerInch / 32;

    internal static StageModel Of(DesignReport report, StageSolid stage, PaddleSolid fine, BalanceReading reading, OutlineSaw saw) =>
        new(report, stage, fine, reading, saw);

    /// <summary>Every reading beside what is expected of it at unknowns θ: mass, balance, then the thicknesses in their order.</summary>
    internal IReadOnlyList<ReadingRow> Rows(double[] theta)
    {
        var (mass, balance, byMass, byBalance) = Weighed(theta);
        var rows = new List<ReadingRow>(2 + planned.Length)
        {
            new(ReadingKind.Mass, 0, reading.MassG, mass, byMass, reading.MassErrorG, reading.MassErrorG),
            new(ReadingKind.Balance, 0, reading.BalanceMm, balance, byBalance, reading.BalanceErrorMm, reading.BalanceErrorMm),
        };
        for (var k = 0; k < planned.Length; k++)
        {
            var slope = new double[StageEstimate.Unknowns];
            var expected = planned[k];
            for (var z = 0; z < readShares[k].Length; z++)
            {
                slope[StageEstimate.FirstZone + z] = readShares[k][z];
                expected += readShares[k][z] * theta[StageEstimate.FirstZone + z];
            }

            var error = Root(reading.ThicknessErrorMm, placeMm[k]);
            rows.Add(new(ReadingKind.Thickness, k, reading.Readings![k].ThicknessMm, expected, slope, error, Root(error, localMm)));
        }

        return rows;
    }

    private static double[] Taken(BalanceReading reading)
    {
        var taken = new double[CorrectionZones.All.Count];
        foreach (var cut in reading.EarlierRemovals ?? []) taken[(int)cut.Zone] += cut.ThicknessMm;
        return taken;
    }

    // Mass (g), balance (mm) and their slopes.
    private (double Mass, double Balance, double[] ByMass, double[] ByBalance) Weighed(double[] theta)
    {
        double mass = 0, first = 0;
        double[] byMass = new double[StageEstimate.Unknowns], byFirst = new double[StageEstimate.Unknowns];
        for (var i = 0; i < stage.Nodes.Count; i++)
        {
            var node = stage.Nodes[i];
            var density = StageEstimate.GramsPerMm3(report, theta, place[i]);
            var area = node.Section.AreaMm2;
            for (var z = 0; z < shares[i].Length; z++)
                area += node.Section.AreaPerThickness * shares[i][z] * theta[StageEstimate.FirstZone + z];
            var grams = node.WeightMm * density * area;
            mass += grams;
            first += grams * node.AlongMm;

            void Spread(int k, double rate)
            {
                byMass[k] += rate;
                byFirst[k] += rate * node.AlongMm;
            }

            Spread(StageEstimate.Density, grams / (1 + theta[StageEstimate.Density]));
            Spread(StageEstimate.Change, grams * place[i] / (1 + theta[StageEstimate.Change] * place[i]));
            for (var z = 0; z < shares[i].Length; z++)
                Spread(StageEstimate.FirstZone + z, node.WeightMm * density * node.Section.AreaPerThickness * shares[i][z]);
        }

        // After the last stage the finish is on the paddle, before it none.
        if (stage.Stage == BuildStage.Finished)
        {
            mass += report.Finished.Load.MassG;
            first += report.Finished.Load.FirstGmm;
        }

        var balance = first / mass;
        return (mass, balance, byMass, [.. byFirst.Select((slope, k) => (slope - balance * byMass[k]) / mass)]);
    }

    private static double Root(double a, double b) => Math.Sqrt(a * a + b * b);
}

/// <summary>How far a stage's mass and balance may differ from the prediction, nine times in ten. Theory M9.</summary>
internal static class StageScatter
{
    /// <summary>Coefficient of variation of density when the maker weighed the board: reading errors. Common practice, no source.</summary>
    public const double MeasuredVariation = 0.02;

    /// <summary>Standard deviation of the density's change from one end of a board to the other, as a fraction of the mean. Assumption, no
    /// published figure found: half the coefficient of variation of specific gravity between boards.</summary>
    public const double EndToEndVariation = Scatter.SpecificGravityVariation / 2;

    /// <summary>Coefficient of variation of the design's density: the book's 10 % (Wood Handbook table 5-6, read in a survey), or <see
    /// cref="MeasuredVariation"/> when the design's density is not the book's.</summary>
    public static double DensityVariation(WoodInUse wood) =>
        WoodCatalogue.Find(wood.Species) is { } species
            && Math.Abs(WoodDensity.KgM3(species, wood.MoisturePercent) - wood.DensityKgM3) <= 1e-9 * wood.DensityKgM3
            ? Scatter.SpecificGravityVariation
            : MeasuredVariation;

    /// <summary>Mass and balance of a stage with their bands.</summary>
    /// <remarks>Independent errors add as squares: the wood's density, its change along the board (which moves the balance point by the
    /// change per length times the spread of mass about it), and the faces of grip, shaft and blade being off each on their own.</remarks>
    public static (StageFigure MassG, StageFigure BalanceMm) Of(StageSolid solid, WoodInUse wood, OutlineSaw saw)
    {
        var tolerance = StageAllowance.After(solid.Stage, saw).FaceToleranceMm;
        Span<double> volume = stackalloc double[3], shift = stackalloc double[3];
        volume.Clear();
        shift.Clear();
        double spread = 0;
        foreach (var node in solid.Nodes)
        {
            var arm = node.AlongMm - solid.CentreMm;
            var zone = (int)node.Pattern.Segment.Zone;
            var faces = 2 * tolerance * node.WeightMm * node.Section.AreaPerThickness;
            volume[zone] += faces;
            shift[zone] += faces * arm / solid.VolumeMm3;
            spread += node.WeightMm * node.Section.AreaMm2 * arm * arm / solid.VolumeMm3;
        }

        const double Z = Scatter.FifthPercentileZ;
        var massG = solid.MassG(wood.DensityKgM3);
        var massSquare = Square(Z * DensityVariation(wood) * massG);
        var balanceSquare = Square(Z * EndToEndVariation * spread / solid.Blank.LengthMm);
        for (var zone = 0; zone < 3; zone++)
        {
            massSquare += Square(wood.DensityKgM3 * 1e-6 * volume[zone]);
            balanceSquare += Square(shift[zone]);
        }

        return (StageFigure.Around(massG, Math.Sqrt(massSquare)), StageFigure.Around(solid.CentreMm, Math.Sqrt(balanceSquare)));
    }

    /// <summary>The same figures once the finish is on: what it adds is known to the coverage's spread, and errors add as squares.</summary>
    public static (StageFigure MassG, StageFigure BalanceMm) WithFinish((StageFigure MassG, StageFigure BalanceMm) bare, FinishedMass finished)
    {
        double Half(StageFigure figure, double added) =>
            Math.Sqrt(Square(figure.High - figure.Value) + Square(FinishPlan.CoverageVariation * added));
        return (
            StageFigure.Around(finished.MassG, Half(bare.MassG, finished.Load.MassG)),
            StageFigure.Around(finished.CentreOfMassMm, Half(bare.BalanceMm, finished.ShiftMm))); // theory M9
    }

    private static double Square(double x) => x * x;
}
