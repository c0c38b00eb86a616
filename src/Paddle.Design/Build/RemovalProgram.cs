namespace Paddle.Design.Build;

/// <summary>Least wood that brings the balance point between two places: a linear program over the zones' thickness. Theory M25.</summary>
/// <remarks>
/// A cut off the middle takes mass and moment in proportion to its depth, so balance in tolerance,
/// <c>low (M - sum m r) &lt;= F - sum f r &lt;= high (M - sum m r)</c>, is linear in the depths r, and so is the depth at each
/// station. Where that cannot be met, a slack of so many millimetres, dearer than any wood, takes up what is missing.
/// </remarks>
internal static class RemovalProgram
{
    // Dearer than wood: a millimetre of missed balance costs more grams than there are in a paddle.
    internal const double MissG = 1e4;

    // A gram too heavy is dear as well, but less than a millimetre off balance.
    internal const double HeavyG = MissG / 100;

    /// <param name="massG">M, mass before, g.</param>
    /// <param name="first">F, first moment before, g·mm.</param>
    /// <param name="gPerMm">m, grams a millimetre of depth takes, by zone.</param>
    /// <param name="firstPerMm">f, moment that it takes, g·mm by zone.</param>
    /// <param name="lowMm">Least balance that is good enough, mm.</param>
    /// <param name="highMm">Most balance that is, mm.</param>
    /// <param name="leastRemovedG">Grams that must come off in any case, g.</param>
    /// <param name="shares">Share of each zone's depth at each station.</param>
    /// <param name="limitsMm">Most depth at each station, mm.</param>
    /// <returns>Depths by zone, mm, and the millimetres by which that is missed.</returns>
    internal static (double[] DepthMm, double MissedMm) Solve(
        double massG,
        double first,
        double[] gPerMm,
        double[] firstPerMm,
        double lowMm,
        double highMm,
        double leastRemovedG,
        IReadOnlyList<double[]> shares,
        IReadOnlyList<double> limitsMm)
    {
        var n = gPerMm.Length;
        var rows = new List<double[]>();
        var bounds = new List<double>();

        // Balance rows divided by the mass, so that the slack is in millimetres.
        rows.Add([.. gPerMm.Select((m, z) => (highMm * m - firstPerMm[z]) / massG), -1, 0]);
        bounds.Add(highMm - first / massG);
        rows.Add([.. gPerMm.Select((m, z) => (firstPerMm[z] - lowMm * m) / massG), -1, 0]);
        bounds.Add(first / massG - lowMm);
        rows.Add([.. gPerMm.Select(m => -m), 0, -1]);
        bounds.Add(-leastRemovedG);
        for (var i = 0; i < shares.Count; i++)
        {
            if (!shares[i].Any(share => share > 1e-9)) continue;
            rows.Add([.. shares[i], 0, 0]);
            bounds.Add(limitsMm[i]);
        }

        var x = LeastCostProgram.Solve([.. gPerMm, MissG, HeavyG], rows, bounds)
            ?? throw new InvalidOperationException("With slack the program always has a solution.");
        return (x[..n], x[n]);
    }
}
