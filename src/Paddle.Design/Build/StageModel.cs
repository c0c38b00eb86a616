using Paddle.Design.Solid;
using Paddle.Design.Units;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

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
/// <remarks>
/// The usual spreads are those of <see cref="StageScatter"/> and <see cref="StageAllowance"/>. A cut already taken beyond the plan
/// moves the expected thickness of its zone, and is itself off by <see cref="BalanceCorrection.CutVariation"/>.
/// </remarks>
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
