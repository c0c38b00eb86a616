using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>The least cut that can be scraped, held against every limit on the real solid. Theory M24, M25 and M27.</summary>
/// <param name="DepthMm">Full thickness off the middle by zone, mm.</param>
/// <param name="Strength">Every load case after it.</param>
/// <param name="BenchFlexMm">Bench flex after it, mm.</param>
/// <param name="UncertaintyMm">Standard uncertainty of the balance point with the cut's own error, mm.</param>
internal sealed record CutPlan(double[] DepthMm, StrengthCheck Strength, double BenchFlexMm, double UncertaintyMm)
{
    private const int Passes = 6;

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
        CutGoal goal,
        double uncertaintyMm,
        bool leave)
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
        if (leave) return new(new double[tooThin.Length], before.Strength, before.BenchFlexMm, uncertaintyMm);

        // A paddle planed too thin already may not get weaker still; elsewhere the factor asked for holds.
        var least = Math.Min(1, before.Strength.Governing.Margin) - 1e-9;
        var mostFlex = Math.Max(aims.MostBenchFlexMm ?? double.PositiveInfinity, before.BenchFlexMm) + 1e-9;
        var (mass, first) = forecast.Sum(estimate.Theta);
        var (gPerMm, firstPerMm) = forecast.PerMillimetre(estimate);
        var excess = Math.Max(0, mass - goal.MaximumMassG);
        double[] Least(double[] limits, double doubtMm)
        {
            var (low, high) = goal.Reach(doubtMm);
            return RemovalProgram.Solve(mass, first, gPerMm, firstPerMm, low, high, excess, shares, limits).DepthMm;
        }

        double[] Scraped(double[] depthMm, double[] limits, double doubtMm)
        {
            var (low, high) = goal.Reach(doubtMm);
            (double G, double BalanceMm) After(double[] depth)
            {
                var removed = depth.Zip(gPerMm, (d, g) => d * g).Sum();
                return (removed, (first - depth.Zip(firstPerMm, (d, f) => d * f).Sum()) / (mass - removed));
            }

            double Cost(double[] depth)
            {
                var (removed, balance) = After(depth);
                return removed + RemovalProgram.MissG * Math.Max(0, Math.Max(low - balance, balance - high))
                    + RemovalProgram.HeavyG * Math.Max(0, excess - removed);
            }

            bool Suffices(double[] depth)
            {
                var (removed, balance) = After(depth);
                return goal.Holds(balance, mass - removed, 0);
            }

            bool Fits(double[] depth) => Depths(shares, depth).Zip(limits, (cut, limit) => cut <= limit + 1e-9).All(holds => holds);
            return ScrapedCut.Round(depthMm, Cost, Fits, Suffices);
        }

        // The deeper the cut, the more it may be off itself: a draft says how far it must carry, the plan allows for that.
        var limits = RemovalLimits.At(planed, loads, wood);
        var uncertainty = WithCutting(uncertaintyMm, Least(limits, uncertaintyMm), gPerMm, firstPerMm, mass, first);
        double reserve = 1, scale = 1;
        for (var pass = 1; ; pass++)
        {
            var depth = Scraped(Least(limits, uncertainty), limits, uncertainty);

            // The cut itself changes buckling and flex a little: look at the real solid, and draw the limits in should it fall short.
            double[] both = [.. depth.Zip(tooThin, (cut, thin) => cut + thin)];
            var after = Looked(stations.Thinned(Depths(shares, both)), fine.Thinned(Depths(fineShares, both)), loads, wood);
            var weak = after.Strength.Governing.Margin < least;
            var soft = after.BenchFlexMm > mostFlex;
            if (!weak && !soft)
                return new(depth, after.Strength, after.BenchFlexMm, WithCutting(uncertaintyMm, depth, gPerMm, firstPerMm, mass, first));
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
