using Range = Paddle.Design.Outline.Range;

namespace Paddle.Design.Fitting;

/// <summary>Refuses size runs that have no answer.</summary>
internal static class SizeRunChecks
{
    public const int MostCustomers = 100_000;
    /// <summary>Most groups in one mixture.</summary>
    public const int MostGroups = 20;
    /// <summary>Most refusals of single customers reported: the first ones tell the caller enough.</summary>
    private const int MostReported = 20;

    /// <summary>Steps between lengths, mm.</summary>
    public static Range StepLimitsMm { get; } = new(1, 100);
    /// <summary>Paddles in a fleet.</summary>
    public static Range FleetLimits { get; } = new(1, 1_000_000);
    /// <summary>Overall lengths of paddles that customers may name, mm; wider than what is designed, for fleets as they are.</summary>
    public static Range OverallLimitsMm { get; } = new(800, 2200);
    /// <summary>Shares of groups, in any unit: they are taken in proportion.</summary>
    public static Range ShareLimits { get; } = new(0, 1_000_000_000);
    /// <summary>Standard deviations of groups of people, mm.</summary>
    public static Range DeviationLimitsMm { get; } = new(1, 300);

    /// <returns>Refusals; empty when the request can be answered.</returns>
    public static IReadOnlyList<InputRefusal> Check(SizeRunRequest request) =>
        [.. Settings(request).OfType<InputRefusal>(), .. Who(request).OfType<InputRefusal>().Take(MostReported)];

    private static IEnumerable<InputRefusal?> Settings(SizeRunRequest r)
    {
        yield return InputRefusal.Unless("/sizes", r.Sizes, 1, SizeRun.MostSizes, "sizes", "more than eight is no longer a run of few sizes.");
        yield return Within("/stepMm", r.StepMm, StepLimitsMm, "mm", "lengths are made to a millimetre at best, and a coarser step leaves no choice.");
        yield return Within("/fleetCount", r.FleetCount, FleetLimits, "paddles", "a fleet has at least one paddle.");
        yield return Within("/bladeLengthMm", r.BladeLengthMm, PaddleLengths.BladeLengthLimitsMm, "mm", "blades are designed in this range.");
        yield return Within("/freeboardMm", r.FreeboardMm, PaddleLengths.FreeboardLimitsMm, "mm", "paddles are designed in this range.");
        yield return Overall("/shortestStockMm", r.ShortestStockMm);
        yield return Overall("/longestStockMm", r.LongestStockMm);
        if (r is { ShortestStockMm: { } low, LongestStockMm: { } high } && low > high)
        {
            yield return new InputRefusal("/shortestStockMm", RefusalCodes.StockLimitsCross, "The shortest stock length is longer than the longest.", low, High: high, Unit: "mm");
        }
    }

    private static IEnumerable<InputRefusal?> Who(SizeRunRequest r)
    {
        if (r.Customers is null == r.Groups is null)
        {
            return [new InputRefusal("/customers", RefusalCodes.CustomersOrGroups, "Give either a list of customers or a population in groups, not both and not neither.")];
        }

        if (r.Customers is { } customers)
        {
            return customers.Count is < 1 or > MostCustomers
                ? [InputRefusal.OutOfRange("/customers", customers.Count, 1, MostCustomers, "customers", "a run needs one, and longer lists are better given as groups.")]
                : Enumerable.Range(0, customers.Count).Where(i => !Passes(customers[i])).SelectMany(i => One(customers[i], i));
        }

        if (r.Groups!.Count is < 1 or > MostGroups)
        {
            return [InputRefusal.OutOfRange("/population", r.Groups.Count, 1, MostGroups, "groups", "a population needs one, and twenty describe any.")];
        }

        var found = r.Groups.SelectMany(GroupOf);
        return r.Groups.Sum(g => g.Share) > 0
            ? found
            : found.Append(new InputRefusal("/population", RefusalCodes.NoShares, "The shares add up to nothing: at least one group must have a share above 0."));
    }

    /// <summary>The same rules as <see cref="One"/> without the words: a long list must not pay for messages nobody needs.</summary>
    private static bool Passes(Customer c) => c switch
    {
        { OverallLengthMm: { } l, HandSpacingMm: null, StatureMm: null } => OverallLimitsMm.Contains(l),
        { OverallLengthMm: null, HandSpacingMm: { } s, StatureMm: null } => s >= MeasurementCatalogue.HandSpacing.Lowest && s <= MeasurementCatalogue.HandSpacing.Highest,
        { OverallLengthMm: null, HandSpacingMm: null, StatureMm: { } h } => h >= MeasurementCatalogue.Stature.Lowest && h <= MeasurementCatalogue.Stature.Highest,
        _ => false,
    };

    private static IEnumerable<InputRefusal?> One(Customer c, int i)
    {
        var at = FormattableString.Invariant($"/customers/{i}");
        var given = (c.OverallLengthMm is null ? 0 : 1) + (c.HandSpacingMm is null ? 0 : 1) + (c.StatureMm is null ? 0 : 1);
        if (given != 1)
        {
            yield return new InputRefusal(
                at, RefusalCodes.OneFigureEach, "Give exactly one of overall length, hand spacing and stature.", MeasureInstead: [MeasurementCatalogue.HandSpacing.Id, MeasurementCatalogue.Stature.Id]);
            yield break;
        }

        yield return c.OverallLengthMm is null ? null : Overall(at + "/overallLengthMm", c.OverallLengthMm);
        yield return c.HandSpacingMm is null ? null : Catalogue(at, MeasurementCatalogue.HandSpacing, c.HandSpacingMm);
        yield return c.StatureMm is null ? null : Catalogue(at, MeasurementCatalogue.Stature, c.StatureMm);
    }

    private static IEnumerable<InputRefusal?> GroupOf(CustomerGroup g, int i)
    {
        var at = FormattableString.Invariant($"/population/{i}");
        yield return Within(at + "/share", g.Share, ShareLimits, "share", "shares are parts of one whole, none negative.");
        yield return Within(at + "/standardDeviationMm", g.StandardDeviationMm, DeviationLimitsMm, "mm", "no group of people is more alike or more unlike.");
        yield return g.Quantity switch
        {
            CustomerQuantity.OverallLength => Overall(at + "/meanMm", g.MeanMm),
            CustomerQuantity.HandSpacing => InputRefusal.Unless(at + "/meanMm", g.MeanMm, MeasurementCatalogue.HandSpacing.Lowest, MeasurementCatalogue.HandSpacing.Highest, "mm", MeasurementCatalogue.HandSpacing.WhyTheRange + "."),
            CustomerQuantity.Stature => InputRefusal.Unless(at + "/meanMm", g.MeanMm, MeasurementCatalogue.Stature.Lowest, MeasurementCatalogue.Stature.Highest, "mm", MeasurementCatalogue.Stature.WhyTheRange + "."),
            _ => new InputRefusal(at + "/quantity", RefusalCodes.UnknownName, "Unknown quantity."),
        };
    }

    private static InputRefusal? Overall(string jsonPointer, double? valueMm) =>
        Within(jsonPointer, valueMm, OverallLimitsMm, "mm", "canoe paddles are made in this range.");

    private static InputRefusal? Within(string jsonPointer, double? value, Range limits, string unit, string why) =>
        InputRefusal.Unless(jsonPointer, value, limits.Min, limits.Max, unit, why);

    private static InputRefusal? Catalogue(string at, MeasurementInstruction m, double? valueMm) =>
        InputRefusal.Unless(at + "/" + m.Id, valueMm, m.Lowest, m.Highest, m.Unit, m.WhyTheRange + ".");
}
