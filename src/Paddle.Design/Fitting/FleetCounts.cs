namespace Paddle.Design.Fitting;

/// <summary>Shares out a fleet between sizes in whole paddles.</summary>
internal static class FleetCounts
{
    /// <summary>Whole numbers that add up to the fleet, by largest remainder; where the fleet is large enough every size gets at least one.
    /// Ties go to the shorter size.</summary>
    /// <param name="shares">Share of the customers each size serves; they add up to 1.</param>
    /// <param name="fleetCount">n, paddles in the fleet, 0 or more.</param>
    /// <remarks>Source: largest-remainder (Hamilton) apportionment, textbook.</remarks>
    public static IReadOnlyList<int> Share(IReadOnlyList<double> shares, int fleetCount)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(fleetCount);
        var least = fleetCount >= shares.Count ? 1 : 0;
        double[] quotas = [.. shares.Select(s => s * fleetCount)];
        int[] counts = [.. quotas.Select(q => Math.Max(least, (int)Math.Floor(q)))];
        while (counts.Sum() < fleetCount) counts[Furthest(quotas, counts, +1, 0)]++;

        while (counts.Sum() > fleetCount) counts[Furthest(quotas, counts, -1, least)]--;

        return counts;
    }

    private static int Furthest(double[] quotas, int[] counts, int direction, int least)
    {
        var found = -1;
        for (var i = 0; i < quotas.Length; i++)
        {
            var allowed = direction > 0 || counts[i] > least;
            if (allowed && (found < 0 || direction * (quotas[i] - counts[i]) > (direction * (quotas[found] - counts[found])) + 1e-12))
                found = i;
        }

        return found;
    }
}
