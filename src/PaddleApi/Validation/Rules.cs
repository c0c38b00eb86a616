using System.Reflection;
using FluentValidation;
using Paddle.Design;
using Paddle.Design.Fitting;
using PaddleApi.Contracts.Problems;

namespace PaddleApi.Validation;

/// <summary>
/// Rules that carry their range, unit and reason to the caller. A rule without one of these still works: its message becomes the reason.
/// </summary>
internal static class Rules
{
    /// <summary>States in the description the range that the engine enforces, so that its refusals come as no surprise.</summary>
    /// <param name="min">Smallest value the engine takes.</param>
    /// <param name="max">Largest value the engine takes.</param>
    public static IRuleBuilderOptions<T, TNumber> EngineRange<T, TNumber>(this IRuleBuilder<T, TNumber> rule, double min, double max) =>
        rule.SetValidator(new EngineRangeRule<T, TNumber>(min, max));

    /// <summary>States in the description the widest range of several that the engine chooses between by another member.</summary>
    /// <typeparam name="T">The request.</typeparam>
    /// <param name="rule">The rule being built.</param>
    /// <param name="ranges">The ranges.</param>
    public static IRuleBuilderOptions<T, double?> EngineRange<T>(this IRuleBuilder<T, double?> rule, IEnumerable<Paddle.Design.Outline.Range> ranges)
    {
        var all = ranges.ToList();
        return rule.EngineRange(all.Min(range => range.Min), all.Max(range => range.Max));
    }

    /// <summary>States in the description the names that a rule between members, or the engine, takes.</summary>
    /// <typeparam name="T">The request.</typeparam>
    /// <param name="rule">The rule being built.</param>
    /// <param name="allowed">The names.</param>
    public static IRuleBuilderOptions<T, string?> EngineNames<T>(this IRuleBuilder<T, string?> rule, IEnumerable<string> allowed) =>
        rule.SetValidator(new StatedNamesRule<T>([.. allowed]));

    /// <summary>States in the description the letters of a text that its reader takes.</summary>
    /// <typeparam name="T">The request.</typeparam>
    /// <param name="rule">The rule being built.</param>
    /// <param name="pattern">A regular expression of ECMA-262.</param>
    /// <param name="longest">Most characters.</param>
    public static IRuleBuilderOptions<T, string?> EngineText<T>(this IRuleBuilder<T, string?> rule, string pattern, int longest) =>
        rule.SetValidator(new StatedTextRule<T>(pattern, longest));

    /// <summary>States in the description that a member may not be left out, where a rule between members or the engine says so.</summary>
    /// <typeparam name="T">The request.</typeparam>
    /// <typeparam name="TMember">Type of the member.</typeparam>
    /// <param name="rule">The rule being built.</param>
    public static IRuleBuilderOptions<T, TMember> EngineRequired<T, TMember>(this IRuleBuilder<T, TMember> rule) =>
        rule.SetValidator(new StatedRequiredRule<T, TMember>());

    /// <summary>Refuses a list of more items than are used; null passes.</summary>
    /// <param name="reason">Why the list ends there.</param>
    public static IRuleBuilderOptions<T, IReadOnlyList<TItem>?> AtMost<T, TItem>(
        this IRuleBuilder<T, IReadOnlyList<TItem>?> rule, int most, string unit, string reason) =>
        rule.CountBetween(0, most, unit, reason);

    /// <summary>Refuses a list of fewer or more items than are used; null passes.</summary>
    /// <param name="reason">Why the list begins and ends there.</param>
    public static IRuleBuilderOptions<T, IReadOnlyList<TItem>?> CountBetween<T, TItem>(
        this IRuleBuilder<T, IReadOnlyList<TItem>?> rule, int fewest, int most, string unit, string reason) =>
        rule.SetValidator(new CountRule<T, TItem>(fewest, most, isEnforced: true))
            .WithMessage(reason).WithState((_, list) => new Fault(reason, list?.Count, fewest, most, unit));

    /// <summary>States in the description how many items the engine, or a rule between members, takes.</summary>
    public static IRuleBuilderOptions<T, IReadOnlyList<TItem>?> EngineCount<T, TItem>(
        this IRuleBuilder<T, IReadOnlyList<TItem>?> rule, int fewest, int most) =>
        rule.SetValidator(new CountRule<T, TItem>(fewest, most, isEnforced: false));

    /// <summary>Refuses a text that is not one of the allowed names; null passes.</summary>
    public static IRuleBuilderOptions<T, string?> OneOf<T>(this IRuleBuilder<T, string?> rule, IReadOnlyList<string> allowed, string reason) =>
        rule.SetValidator(new NamesRule<T>(allowed))
            .WithMessage(reason).WithState((_, value) => new Fault(reason, FaultValue.Show(value), Allowed: allowed, Code: RefusalCodes.UnknownName));

    /// <summary>Refuses a member that is left out, and says what it may be.</summary>
    /// <param name="reason">What it is needed for.</param>
    public static IRuleBuilderOptions<T, TProperty> Needed<T, TProperty>(this IRuleBuilder<T, TProperty> rule, string reason)
    {
        BoundAttribute? bound = null;
        return rule.NotNull().Configure(own => bound = own.Member?.GetCustomAttribute<BoundAttribute>())
            .WithMessage(reason).WithState((_, _) => new Fault(reason, null, bound?.Least, bound?.Most, bound?.Unit, Code: RefusalCodes.Missing));
    }

    /// <summary>Says why the rule before it refuses, with a range where there is one.</summary>
    /// <param name="min">Smallest allowed value, if there is one.</param>
    /// <param name="max">Largest allowed value, if there is one.</param>
    public static IRuleBuilderOptions<T, TProperty> Because<T, TProperty>(
        this IRuleBuilderOptions<T, TProperty> rule, string reason, double? min = null, double? max = null, string? unit = null) =>
        rule.WithMessage(reason).WithState((_, value) => new Fault(
            reason, FaultValue.Show(value), min, max, unit, Code: min is null && max is null ? RefusalCodes.NotAccepted : RefusalCodes.OutOfRange));

    /// <summary>Refuses an id of a list that stands in it before.</summary>
    /// <param name="list">Path of the list, in C# names.</param>
    public static void RefuseSameIds<T>(this ValidationContext<T> context, string list, IEnumerable<string?>? ids)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (id, k) in (ids ?? []).Select((id, k) => (id, k)))
        {
            if (id is not null && !seen.Add(id))
                context.AddFault($"{list}[{k}].Id", new("Each id is given once, so that the answer can name it.", FaultValue.Show(id), Code: RefusalCodes.GivenTwice));
        }
    }

    /// <summary>Adds a fault found by hand inside <c>Custom</c>: for rules between several members.</summary>
    /// <param name="propertyPath">Path of the member that carries the fault, in C# names, from the root of the request.</param>
    public static void AddFault<T>(this ValidationContext<T> context, string propertyPath, Fault fault)
    {
        context.AddFailure(new FluentValidation.Results.ValidationFailure(propertyPath, fault.Reason) { CustomState = fault });
    }

    /// <summary>Adds a fault found by hand inside <c>Custom</c> of an item or a part.</summary>
    /// <param name="member">Member of the part that carries the fault, in C# names.</param>
    public static void AddFaultBelow<T>(this ValidationContext<T> context, string member, Fault fault) =>
        context.AddFault(context.PropertyChain.BuildPropertyPath(member), fault);
}
