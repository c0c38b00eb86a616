using Paddle.Design.Build;
using Paddle.Design.Solid;

namespace Paddle.Design.Tests.Build;

/// <summary>
/// A paddle as wood and hands make it: density off, changing along the board, faces off plan by zone and in waves. Made apart
/// from the estimate: it has a bend in its density and waves in its faces that the estimate knows nothing of.
/// </summary>
internal sealed class RealPaddle
{
    private static readonly double[] CaliperAt = [40, 75, 200, 400, 600, 800, 900];
    private static readonly double[] CaliperOnBlade = [0.1, 0.25, 0.4, 0.55, 0.7, 0.85, 0.95];

    private readonly DesignReport report;
    private readonly double density;
    private readonly double change;
    private readonly double curve;
    private readonly double[] zoneError;
    private readonly double waveMm;
    private readonly double waveLength;
    private readonly double wavePhase;

    internal RealPaddle(DesignReport report, Random random, double faceSdMm)
    {
        this.report = report;
        density = 1 + 0.10 * Normal(random);
        change = 0.05 * Normal(random);
        curve = 0.02 * Normal(random);
        zoneError = [.. CorrectionZones.All.Select(_ => faceSdMm * Normal(random))];
        waveMm = 0.1 * Normal(random);
        waveLength = 150 + 300 * random.NextDouble();
        wavePhase = 2 * Math.PI * random.NextDouble();
    }

    internal static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    internal double FaceErrorMm(StationPattern pattern, double x) =>
        CorrectionZones.All.Select((zone, z) => CorrectionZones.Share(zone, pattern) * zoneError[z]).Sum()
        + waveMm * Math.Sin(2 * Math.PI * x / waveLength + wavePhase);

    /// <summary>Mass and balance of a stage with its face errors, less cuts given as depth by removal.</summary>
    internal (double MassG, double BalanceMm) Weigh(StageSolid stage, IReadOnlyList<(Removal Cut, double Done)> cuts)
    {
        double mass = 0, first = 0;
        foreach (var node in stage.Nodes)
        {
            var place = (node.AlongMm - 700) / 1500;
            var grams = report.Specification.Wood.DensityKgM3 * 1e-6 * density
                * (1 + change * place + curve * (4 * place * place - 0.3));
            var area = node.Section.AreaMm2 + node.Section.AreaPerThickness * FaceErrorMm(node.Pattern, node.XMm);
            foreach (var (cut, done) in cuts) area -= done * CutAreaMm2(cut, node);
            mass += grams * node.WeightMm * area;
            first += grams * node.WeightMm * area * node.AlongMm;
        }

        return (mass, first / mass);
    }

    internal BalanceReading Read(StageSolid stage, IReadOnlyList<StageStation> plan, Random random, IReadOnlyList<(Removal Cut, double Done)> cuts)
    {
        var (mass, balance) = Weigh(stage, cuts);
        var form = report.Specification.Form;
        double[] at = [.. CaliperAt, .. CaliperOnBlade.Select(t => form.Places.ThroatMm + t * form.Places.BladeMm)];
        var readings = at.Select(x =>
        {
            var station = plan.MinBy(s => Math.Abs(s.XMm - x))!;
            var pattern = StageEstimate.PatternAt(form, station.XMm);
            var cut = cuts.Sum(c => c.Done * c.Cut.ThicknessMm * CorrectionZones.Share(c.Cut.Zone, pattern));
            return new ThicknessReading(
                station.XMm, station.ThicknessMm + FaceErrorMm(pattern, station.XMm) - cut + 0.2 * Normal(random));
        });
        return new(stage.Stage, mass + Normal(random), balance + 2 * Normal(random), [.. readings]);
    }

    // Taken off the middle and run out to the edge.
    private static double CutAreaMm2(Removal cut, StageNode node) =>
        cut.ThicknessMm * CorrectionZones.Share(cut.Zone, node.Pattern) * 2 * node.Section.HalfWidthMm * node.Pattern.Moments.G1;
}
