using System.Reflection;
using FluentValidation;
using FluentValidation.Validators;
using Paddle.Design;
using PaddleApi.Validation;

namespace PaddleApi.Hosting.OpenApi;

/// <summary>
/// The ranges, names and lengths that the validators enforce, by member: the description takes them from here, so the two cannot part.
/// </summary>
internal sealed class ValidatorRules
{
    private readonly Dictionary<(Type?, string), IStatesRange> ranges = [];
    private readonly Dictionary<(Type?, string), IStatesNames> names = [];
    private readonly Dictionary<(Type?, string), IStatesCount> counts = [];
    private readonly Dictionary<(Type?, string), IStatesLength> lengths = [];
    private readonly Dictionary<(Type?, string), IStatesPattern> patterns = [];
    private readonly HashSet<(Type?, string)> required = [];

    /// <summary>Reads the rules of every validator of this assembly.</summary>
    /// <param name="services">Where the validators are registered.</param>
    public ValidatorRules(IServiceProvider services)
    {
        var validators = AssemblyScanner.FindValidatorsInAssembly(typeof(ValidatorRules).Assembly, includeInternalTypes: true)
            .SelectMany(found => services.GetServices(found.InterfaceType)).OfType<IEnumerable<IValidationRule>>();
        foreach (var rule in validators.SelectMany(rules => rules).Where(rule => rule.Member is not null))
        {
            foreach (var validator in rule.Components.Select(component => component.Validator))
            {
                var key = Key(rule.Member);
                if (validator is IStatesRange range) ranges[key] = range;
                if (validator is IStatesNames allowed) names[key] = allowed;
                if (validator is IStatesCount count) counts[key] = count;
                if (validator is IStatesLength length) lengths[key] = length;
                if (validator is IStatesPattern pattern) patterns[key] = pattern;
                if (validator is INotNullValidator or IStatesRequired) required.Add(key);
            }
        }
    }

    /// <summary>The range of a member, or null: the bound written beside it, or what a rule between members leaves it at the widest.</summary>
    public (double Min, double Max)? RangeOf(MemberInfo member) => ranges.TryGetValue(Key(member), out var range) ? (range.Min, range.Max)
        : member.GetCustomAttribute<BoundAttribute>() is { } bound ? (bound.Least, bound.Most)
        : null;

    /// <summary>The allowed names of a member, or null.</summary>
    public IReadOnlyList<string>? NamesOf(MemberInfo member) => names.GetValueOrDefault(Key(member))?.Allowed;

    /// <summary>How many items a list may have, or null.</summary>
    public IStatesCount? CountOf(MemberInfo member) => counts.GetValueOrDefault(Key(member));

    /// <summary>How long a text may be, or null.</summary>
    public IStatesLength? LengthOf(MemberInfo member) => lengths.GetValueOrDefault(Key(member));

    /// <summary>The pattern of a text, or null.</summary>
    public string? PatternOf(MemberInfo member) => patterns.GetValueOrDefault(Key(member))?.Pattern;

    /// <summary>Whether a member may not be left out.</summary>
    public bool IsRequired(MemberInfo member) => required.Contains(Key(member));

    private static (Type?, string) Key(MemberInfo member) => (member.DeclaringType, member.Name);
}
