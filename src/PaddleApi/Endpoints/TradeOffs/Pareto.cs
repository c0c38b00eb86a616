namespace PaddleApi.Endpoints.TradeOffs;

/// <summary>Which of several choices no other beats: as good in every wish and better in one (Pareto). Theory U6.</summary>
internal static class Pareto
{
    /// <summary>For each choice the place of an unbeaten one that beats it, or null where it is unbeaten itself.</summary>
    /// <param name="costs">Of each choice what is wished small; equal choices beat none of each other.</param>
    public static int?[] BeatenBy(IReadOnlyList<IReadOnlyList<double>> costs)
    {
        // Whoever beats another comes before it in this order, so that only the unbeaten ones found so far need be asked.
        var order = Enumerable.Range(0, costs.Count).Order(Comparer<int>.Create((a, b) =>
            costs[a].Zip(costs[b], (x, y) => x.CompareTo(y)).FirstOrDefault(sign => sign != 0) is var sign and not 0 ? sign : a.CompareTo(b)));
        var (by, unbeaten) = (new int?[costs.Count], new List<int>());
        foreach (var k in order)
        {
            foreach (var other in unbeaten)
            {
                if (!Beats(costs[other], costs[k])) continue;
                by[k] = other;
                break;
            }

            if (by[k] is null) unbeaten.Add(k);
        }

        return by;
    }

    private static bool Beats(IReadOnlyList<double> a, IReadOnlyList<double> b)
    {
        var isBetter = false;
        for (var i = 0; i < a.Count; i++)
        {
            if (a[i] > b[i]) return false;
            isBetter |= a[i] < b[i];
        }

        return isBetter;
    }
}
