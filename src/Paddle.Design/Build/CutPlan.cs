using MathNet.Numerics.Distributions;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>The least cut that can be scraped, held against every limit on the real solid. Theory M24, M25 and M27.</summary>
/// <param name="DepthMm">Full thickness off the middle by zone, mm.</param>
/// <param name="Strength">Every load case after it.</param>
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
        DesignReport report, FinishedForecast forecast, StageEstimate estimate, PaddleSolid fine, CutGoal goal, double uncertaintyMm,
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

/// <summary>Where a corrected paddle is to balance and how much it may weigh. Theory M27.</summary>
/// <remarks>The aim within its tolerance; and a design that lies outside its own tolerance or mass, as its answer says, is no more than
/// what it promised: nobody cuts wood off a paddle for following its plan.</remarks>
/// <param name="AimMm">Aimed balance point, mm.</param>
/// <param name="PlannedMm">Balance point of the paddle exactly to plan, mm.</param>
/// <param name="Confidence">How sure the maker wants to be of ending in tolerance.</param>
internal sealed record CutGoal(double AimMm, double ToleranceMm, double PlannedMm, double MaximumMassG, double Confidence)
{
    // Half of what a kitchen scale shows.
    private const double MassSlackG = 0.5;

    internal static CutGoal Of(DesignReport report, (double MassG, double BalanceMm) planned, double confidence)
    {
        var aims = report.Specification.Aims;
        return new(
            report.Balance.TargetMm, aims.BalanceToleranceMm, planned.BalanceMm,
            Math.Max(aims.MaximumMassG ?? double.PositiveInfinity, planned.MassG), confidence);
    }

    /// <summary>Whether the paddle exactly to plan is in tolerance.</summary>
    internal bool IsMetByPlan => Math.Abs(PlannedMm - AimMm) <= ToleranceMm;
    /// <summary>Least balance that is in tolerance, mm.</summary>
    internal double LowMm => Low(ToleranceMm);
    /// <summary>Most balance that is, mm.</summary>
    internal double HighMm => High(ToleranceMm);

    /// <summary>Whether a paddle is where it should be.</summary>
    /// <param name="slackMm">How far beyond the tolerance still counts, mm.</param>
    internal bool Holds(double balanceMm, double massG, double slackMm) =>
        balanceMm >= LowMm - slackMm - 1e-6 && balanceMm <= HighMm + slackMm + 1e-6 && HoldsMass(massG);

    /// <summary>Whether a paddle is light enough.</summary>
    internal bool HoldsMass(double massG) => massG <= MaximumMassG + MassSlackG;

    /// <summary>The same drawn in so that chance is on the maker's side; never to less than a tenth of the tolerance.</summary>
    /// <param name="uncertaintyMm">Standard uncertainty of the balance point, mm.</param>
    internal (double LowMm, double HighMm) Reach(double uncertaintyMm)
    {
        var inside = Math.Max(0.1 * ToleranceMm, ToleranceMm - Normal.InvCDF(0, 1, Confidence) * uncertaintyMm);
        return (Low(inside), High(inside));
    }

    private double Low(double insideMm) => IsMetByPlan ? AimMm - insideMm : Math.Min(AimMm - insideMm, PlannedMm);

    private double High(double insideMm) => IsMetByPlan ? AimMm + insideMm : Math.Max(AimMm + insideMm, PlannedMm);
}

/// <summary>A cut in steps that a scraper takes. Theory M27.</summary>
/// <remarks>A card scraper takes some 0.05 mm in a pass, so both faces together go down by 0.1 mm, and less than two passes on each face is
/// nothing that a maker can take or a caliper show. Common practice, no source.</remarks>
internal static class ScrapedCut
{
    /// <summary>Step of a cut, mm of full thickness.</summary>
    internal const double StepMm = 0.1;
    /// <summary>Least cut that is asked for, mm of full thickness.</summary>
    internal const double LeastMm = 0.2;

    /// <summary>The best of all ways to take each zone's depth to a step below or above: every one is tried. Depths nearer to nothing than
    /// to the least are left, unless that misses what must be reached.</summary>
    /// <param name="suffices">Whether it reaches what must be reached.</param>
    internal static double[] Round(double[] depthMm, Func<double[], double> cost, Func<double[], bool> fits, Func<double[], bool> suffices)
    {
        var best = Best(depthMm, LeastMm / 2, cost, fits);
        return suffices(best) ? best : Best(depthMm, 0, cost, fits);
    }

    private static double[] Best(double[] depthMm, double leftBelowMm, Func<double[], double> cost, Func<double[], bool> fits)
    {
        var best = new double[depthMm.Length];
        var least = double.PositiveInfinity;
        var choices = depthMm.Select(depth => Choices(depth, leftBelowMm)).ToArray();
        for (var k = 0; k < 1 << depthMm.Length; k++)
        {
            double[] trial = [.. choices.Select((choice, z) => (k >> z & 1) == 0 ? choice.Below : choice.Above)];
            if (!fits(trial) || !(cost(trial) < least)) continue;
            (best, least) = (trial, cost(trial));
        }

        return best;
    }

    private static (double Below, double Above) Choices(double depthMm, double leftBelowMm)
    {
        if (depthMm <= 1e-9 || depthMm < leftBelowMm) return (0, 0);
        if (depthMm < LeastMm) return (0, LeastMm);
        var steps = Math.Floor(depthMm / StepMm + 1e-9);
        return (steps / 10, (steps + 1) / 10);
    }
}
