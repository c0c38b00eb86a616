using MathNet.Numerics.Distributions;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>The least cut, held against every limit on the real solid. Theory M24 and M25.</summary>
/// <param name="DepthMm">Full thickness off the middle by zone, mm.</param>
/// <param name="Strength">Every load case after it.</param>
/// <param name="BenchFlexMm">Bench flex after it, mm.</param>
/// <param name="UncertaintyMm">Standard uncertainty of the balance point with the cut's own error, mm.</param>
internal sealed record CutPlan(double[] DepthMm, StrengthCheck Strength, double BenchFlexMm, double UncertaintyMm)
{
    private const int Passes = 6;

    // Drawn in from the tolerance so that chance is on the maker's side; never to less than a tenth of it.
    private static double Reach(double toleranceMm, double uncertaintyMm, double confidence) =>
        Math.Max(0.1 * toleranceMm, toleranceMm - Normal.InvCDF(0, 1, confidence) * uncertaintyMm);

    private static double WithCutting(
        double uncertaintyMm, double[] depthMm, double[] gPerMm, double[] firstPerMm, double massG, double first)
    {
        var square = uncertaintyMm * uncertaintyMm;
        for (var z = 0; z < depthMm.Length; z++)
        {
            var shift = depthMm[z] * (firstPerMm[z] - gPerMm[z] * first / massG) / massG;
            square += BalanceCorrection.CutVariation * shift * (BalanceCorrection.CutVariation * shift);
        }

        return Math.Sqrt(square);
    }

    internal static CutPlan For(
        DesignReport report,
        FinishedForecast forecast,
        StageEstimate estimate,
        PaddleSolid fine,
        double uncertaintyMm,
        double confidence)
    {
        var (_, _, wood, loads, aims) = report.Specification;
        var stations = report.Stations;
        var shares = stations.Grid.Patterns.ToArray().Select(CorrectionZones.Shares).ToArray();
        var fineShares = fine.Grid.Patterns.ToArray().Select(CorrectionZones.Shares).ToArray();

        // Thin beyond the doubt of the readings counts against strength; thinner by less than that may be nothing but noise.
        double[] tooThin =
        [
            .. CorrectionZones.All.Select(zone => Math.Max(
                0, -forecast.LeftMm(zone, estimate.ThicknessErrorMm(zone) + estimate.ThicknessUncertaintyMm(zone)))),
        ];
        var planed = stations.Thinned(Depths(shares, tooThin));
        var before = Looked(planed, fine.Thinned(Depths(fineShares, tooThin)), loads, wood);

        // A paddle planed too thin already may not get weaker still; elsewhere the factor asked for holds.
        var least = Math.Min(1, before.Strength.Governing.Margin) - 1e-9;
        var mostFlex = Math.Max(aims.MostBenchFlexMm ?? double.PositiveInfinity, before.BenchFlexMm) + 1e-9;
        var (mass, first) = forecast.Sum(estimate.Theta);
        var (gPerMm, firstPerMm) = forecast.PerMillimetre(estimate);
        var excess = Math.Max(0, mass - (aims.MaximumMassG ?? double.PositiveInfinity));
        double[] Least(double[] limits, double doubtMm) => RemovalProgram.Solve(
            mass, first, gPerMm, firstPerMm, report.Balance.TargetMm, Reach(aims.BalanceToleranceMm, doubtMm, confidence), excess, shares,
            limits).DepthMm;

        // The deeper the cut, the more it may be off itself: a draft says how far it must carry, the plan allows for that.
        var limits = RemovalLimits.At(planed, loads, wood);
        var uncertainty = WithCutting(uncertaintyMm, Least(limits, uncertaintyMm), gPerMm, firstPerMm, mass, first);
        double reserve = 1, scale = 1;
        for (var pass = 1; ; pass++)
        {
            var depth = Least(limits, uncertainty);

            // The cut itself changes buckling and flex a little: look at the real solid, and draw the limits in should it fall short.
            double[] both = [.. depth.Zip(tooThin, (cut, thin) => cut + thin)];
            var after = Looked(stations.Thinned(Depths(shares, both)), fine.Thinned(Depths(fineShares, both)), loads, wood);
            var weak = after.Strength.Governing.Margin < least;
            var soft = after.BenchFlexMm > mostFlex;
            if (!weak && !soft) return new(depth, after.Strength, after.BenchFlexMm, uncertainty);
            if (pass == Passes) return new(new double[depth.Length], before.Strength, before.BenchFlexMm, uncertaintyMm);
            if (weak) reserve *= 1.001 * least / after.Strength.Governing.Margin;
            if (soft) scale *= 0.5;
            limits = [.. RemovalLimits.At(planed, loads, wood, reserve).Select(limit => limit * scale)];
        }
    }

    private static (StrengthCheck Strength, double BenchFlexMm) Looked(PaddleSolid stations, PaddleSolid fine, Loads loads, WoodInUse wood)
    {
        var pressure = BladePressure.On(stations);
        return (
            StrengthCheck.Of(stations, pressure, loads, wood),
            Flex.Of(fine, stations, pressure.CentreOfPressureMm(StrokePivots.TouringMm), wood).BenchFlexMm);
    }

    private static double[] Depths(double[][] shares, double[] depthMm) =>
        [.. shares.Select(share => share.Zip(depthMm, (s, d) => s * d).Sum())];
}
