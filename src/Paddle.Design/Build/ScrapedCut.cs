namespace Paddle.Design.Build;

/// <summary>A cut in steps that a scraper takes. Theory M27.</summary>
/// <remarks>
/// A card scraper takes some 0.05 mm in a pass, so both faces together go down by 0.1 mm, and less than two passes on each face is
/// nothing that a maker can take or a caliper show. Common practice, no source.
/// </remarks>
internal static class ScrapedCut
{
    /// <summary>Step of a cut, mm of full thickness.</summary>
    internal const double StepMm = 0.1;

    /// <summary>Least cut that is asked for, mm of full thickness.</summary>
    internal const double LeastMm = 0.2;

    /// <summary>The best of all ways to take each zone's depth to a step below or above: every one is tried. Depths nearer to nothing than
    /// to the least are left, unless that misses what must be reached.</summary>
    /// <param name="depthMm">Exact depths, mm by zone.</param>
    /// <param name="cost">What a cut costs; the least wins.</param>
    /// <param name="fits">Whether it keeps all limits.</param>
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
