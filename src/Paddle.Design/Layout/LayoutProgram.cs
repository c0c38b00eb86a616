using Google.OrTools.Sat;

namespace Paddle.Design.Layout;

/// <summary>A set of paddles that one kind of board holds.</summary>
/// <param name="Board">Which kind of board.</param>
/// <param name="Counts">How many of each kind of paddle.</param>
/// <param name="Laid">How they lie on it.</param>
internal sealed record CuttingPattern(int Board, int[] Counts, Arrangement Laid);

/// <summary>What the program may use and must make.</summary>
/// <param name="Supply">Boards of each kind.</param>
/// <param name="Required">Paddles of each kind that the order needs.</param>
/// <param name="Optional">Paddles of each kind that are welcome.</param>
/// <param name="Burden">What a board of each kind counts, none negative: its area or its price.</param>
internal sealed record CuttingOrder(int[] Supply, int[] Required, int[] Optional, long[] Burden);

/// <summary>
/// Chooses patterns: as many required paddles as can be, then as many optional ones, then the least of the boards. Theory N3, the cutting
/// stock problem as an integer program over patterns.
/// </summary>
/// <remarks>Source: Gilmore and Gomory, A linear programming approach to the cutting-stock problem, Operations Research 9 (1961), from memory.
/// One worker and a bound on deterministic time give the same answer at every call.</remarks>
internal static class LayoutProgram
{
    /// <summary>Solves the program.</summary>
    /// <returns>How many boards are cut by each pattern.</returns>
    public static int[] Solve(IReadOnlyList<CuttingPattern> patterns, CuttingOrder order, TimeSpan limit)
    {
        var model = new CpModel();
        var times = patterns.Select((pattern, k) => model.NewIntVar(0, order.Supply[pattern.Board], $"n{k}")).ToArray();
        for (var board = 0; board < order.Supply.Length; board++)
        {
            var cut = times.Where((_, k) => patterns[k].Board == board).ToArray();
            if (cut.Length > 0) model.Add(LinearExpr.Sum(cut) <= order.Supply[board]);
        }

        var required = Made(model, order.Required, "r");
        var optional = Made(model, order.Optional, "o");
        for (var kind = 0; kind < order.Required.Length; kind++)
        {
            var room = LinearExpr.WeightedSum(times, patterns.Select(pattern => (long)pattern.Counts[kind]).ToArray());
            model.Add(required[kind] + optional[kind] <= room);
        }

        // Each aim outweighs all that the next one can sum up to.
        var anOptional = 1 + order.Burden.Zip(order.Supply, (burden, count) => burden * count).Sum();
        var aRequired = anOptional * (1 + order.Optional.Sum());
        model.Maximize(
            aRequired * LinearExpr.Sum(required) + anOptional * LinearExpr.Sum(optional)
            - LinearExpr.WeightedSum(times, patterns.Select(pattern => order.Burden[pattern.Board]).ToArray()));
        var solver = new CpSolver { StringParameters = Parameters(limit) };
        var status = solver.Solve(model);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? Array.ConvertAll(times, count => (int)solver.Value(count))
            : new int[times.Length];
    }

    private static IntVar[] Made(CpModel model, int[] wanted, string name) => [.. wanted.Select((most, k) => model.NewIntVar(0, most, $"{name}{k}"))];

    private static string Parameters(TimeSpan limit) => string.Create(
        System.Globalization.CultureInfo.InvariantCulture,
        $"num_workers:1 random_seed:1 max_deterministic_time:0.5 max_time_in_seconds:{Math.Max(0.05, limit.TotalSeconds):F3}");
}
