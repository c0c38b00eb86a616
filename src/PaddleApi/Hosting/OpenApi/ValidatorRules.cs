using System.Reflection;
using FluentValidation;
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
                if (validator is IStatesRange range) ranges[Key(rule.Member)] = range;
                else if (validator is IStatesNames allowed) names[Key(rule.Member)] = allowed;
                else if (validator is IStatesCount count) counts[Key(rule.Member)] = count;
                else if (validator is IStatesLength length) lengths[Key(rule.Member)] = length;
            }
        }
    }

    /// <summary>The range of a member, or null.</summary>
    public IStatesRange? RangeOf(MemberInfo member) => ranges.GetValueOrDefault(Key(member));

    /// <summary>The allowed names of a member, or null.</summary>
    public IReadOnlyList<string>? NamesOf(MemberInfo member) => names.GetValueOrDefault(Key(member))?.Allowed;

    /// <summary>How many items a list may have, or null.</summary>
    public IStatesCount? CountOf(MemberInfo member) => counts.GetValueOrDefault(Key(member));

    /// <summary>How long a text may be, or null.</summary>
    public IStatesLength? LengthOf(MemberInfo member) => lengths.GetValueOrDefault(Key(member));

    private static (Type?, string) Key(MemberInfo member) => (member.DeclaringType, member.Name);
}
