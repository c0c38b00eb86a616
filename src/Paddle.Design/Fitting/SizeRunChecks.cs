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

    private static readonly BoundAttribute Overall = Bounds.Of<CustomerRequest>(nameof(CustomerRequest.OverallLengthMm));
    private static readonly BoundAttribute HandSpacing = Bounds.Of<CustomerRequest>(nameof(CustomerRequest.HandSpacingMm));
    private static readonly BoundAttribute Stature = Bounds.Of<CustomerRequest>(nameof(CustomerRequest.StatureMm));

    /// <summary>What the mean of a group may be at the widest, mm: that of its own quantity is narrower.</summary>
    public static Range MeanLimitsMm { get; } = new(
        new[] { Overall, HandSpacing, Stature }.Min(bound => bound.Least), new[] { Overall, HandSpacing, Stature }.Max(bound => bound.Most));

    /// <returns>Refusals; empty when the request can be answered.</returns>
    public static IReadOnlyList<InputRefusal> Check(SizeRunRequest request) => [.. Settings(request), .. Who(request).Take(MostReported)];

    private static IEnumerable<InputRefusal> Settings(SizeRunRequest r)
    {
        foreach (var refusal in InputRefusal.Broken("", r)) yield return refusal;
        if (r is { ShortestStockMm: { } low, LongestStockMm: { } high } && low > high)
            yield return new InputRefusal("/shortestStockMm", RefusalCodes.StockLimitsCross, "The shortest stock length is longer than the longest.", low, High: high, Unit: "mm");
    }

    private static IEnumerable<InputRefusal> Who(SizeRunRequest r)
    {
        if (r.Customers is null == (r.Population is null && r.Groups is null))
            return [new InputRefusal("/customers", RefusalCodes.CustomersOrGroups, "Give either a list of customers or a population in groups, not both and not neither.")];

        if (r.Customers is { } customers)
        {
            return customers.Count is < 1 or > MostCustomers
                ? [InputRefusal.OutOfRange("/customers", customers.Count, 1, MostCustomers, "customers", "a run needs one, and longer lists are better given as groups.")]
                : Enumerable.Range(0, customers.Count).Where(i => !Passes(customers[i])).SelectMany(i => One(customers[i], i));
        }

        var groups = CustomerGroup.Of(r).ToList();
        var place = r.Population is null ? "/groups" : "/population";
        if (groups.Count is < 1 or > MostGroups)
            return [InputRefusal.OutOfRange(place, groups.Count, 1, MostGroups, "groups", "a population needs one, and twenty describe any.")];

        var found = InputRefusal.Broken("/population", r.Population).Concat((r.Groups ?? []).SelectMany(GroupOf));
        return groups.Sum(group => group.Share) > 0
            ? found
            : found.Append(new InputRefusal(place, RefusalCodes.NoShares, "The shares add up to nothing: at least one group must have a share above 0."));
    }

    /// <summary>The same rules as <see cref="One"/> without the words: a long list must not pay for messages nobody needs.</summary>
    private static bool Passes(CustomerRequest c) => c switch
    {
        { OverallLengthMm: { } length, HandSpacingMm: null, StatureMm: null } => Overall.Holds(length),
        { OverallLengthMm: null, HandSpacingMm: { } spacing, StatureMm: null } => HandSpacing.Holds(spacing),
        { OverallLengthMm: null, HandSpacingMm: null, StatureMm: { } stature } => Stature.Holds(stature),
        _ => false,
    };

    private static IEnumerable<InputRefusal> One(CustomerRequest c, int i)
    {
        var at = FormattableString.Invariant($"/customers/{i}");
        var given = new[] { c.OverallLengthMm, c.HandSpacingMm, c.StatureMm }.Count(figure => figure is not null);
        return given == 1
            ? InputRefusal.Broken(at, c)
            : [new InputRefusal(at, RefusalCodes.OneFigureEach, "Give exactly one of overall length, hand spacing and stature.", MeasureInstead: [MeasurementCatalogue.HandSpacing.Id, MeasurementCatalogue.Stature.Id])];
    }

    private static IEnumerable<InputRefusal> GroupOf(CustomerGroupRequest group, int i)
    {
        var at = FormattableString.Invariant($"/groups/{i}");
        foreach (var refusal in InputRefusal.Broken(at, group)) yield return refusal;
        var bound = group.Quantity switch { CustomerQuantity.OverallLength => Overall, CustomerQuantity.Stature => Stature, _ => HandSpacing };
        if (!bound.Holds(group.MeanMm)) yield return InputRefusal.Broken(at + "/meanMm", bound, group.MeanMm) with { MeasureInstead = null }; // nobody measures a mean
    }
}
