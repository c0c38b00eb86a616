namespace Paddle.Design.Balance;

/// <summary>Reads the binding limits and their worth from a solved problem's multipliers. Theory B8.</summary>
internal static class BindingLimitList
{
    // Limits worth less than this per unit (g) are not what holds the design.
    private const double LeastWorth = 0.05;

    internal static IReadOnlyList<BindingLimit> Read(
        DesignProblem problem, SizeSolver solver, ReadOnlySpan<double?> pinned, Aims aims)
    {
        var worths = new List<(string Id, string Unit, double Worth)>();
        for (var r = 0; r < problem.RowCount; r++)
            Add(worths, problem.Limits[r].Id, problem.Limits[r].Unit, solver.RowMultipliers[r] * problem.Limits[r].RowPerUnit);

        for (var k = 0; k < DesignProblem.N; k++)
        {
            var name = SizeLimits.Names[k];
            var isPinned = pinned[k] is not null;
            Add(worths, isPinned ? name + ".pinned" : name + ".min", "mm", solver.LowMultipliers[k]);
            Add(worths, isPinned ? name + ".pinned" : name + ".max", "mm", solver.HighMultipliers[k]);
        }

        // While an aim is missed, every multiplier is measured in its penalty: turn it back into the aim's own unit.
        var (scale, unit) = solver.MissedGroup switch
        {
            (int)LimitGroup.Strength => (2 * aims.MinimumSafetyFactor / SizeSolver.Penalty((int)LimitGroup.Strength), "safety factor"),
            (int)LimitGroup.Thinning => (1 / SizeSolver.Penalty((int)LimitGroup.Thinning), "mm of shape"),
            (int)LimitGroup.Comfort => (1 / SizeSolver.Penalty((int)LimitGroup.Comfort), "mm of shape"),
            (int)LimitGroup.Balance => (DesignProblem.BalanceScaleMm / SizeSolver.Penalty((int)LimitGroup.Balance), "mm of balance"),
            (int)LimitGroup.Flex => (1 / SizeSolver.Penalty((int)LimitGroup.Flex), "mm of flex"),
            _ => (1, "g"),
        };
        return
        [
            .. worths
                .Where(worth => worth.Worth > LeastWorth)
                .OrderByDescending(worth => worth.Worth)
                .Select(worth => new BindingLimit(worth.Id, worth.Unit, worth.Worth * scale, unit)),
        ];
    }

    private static void Add(List<(string Id, string Unit, double Worth)> worths, string id, string unit, double worth)
    {
        if (worth <= 0) return;
        var known = worths.FindIndex(entry => entry.Id == id);
        if (known < 0) worths.Add((id, unit, worth));
        else worths[known] = (id, unit, worths[known].Worth + worth);
    }
}
