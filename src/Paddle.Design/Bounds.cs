using System.Collections.Concurrent;
using System.Reflection;

namespace Paddle.Design;

/// <summary>The bounds of requests: every <see cref="BoundAttribute"/>, found by the record that its member stands in.</summary>
public static class Bounds
{
    private static readonly ConcurrentDictionary<Type, BoundedMember[]> Known = new();

    /// <summary>The bounded members of one record of a request, in the order written; those of records inside it are theirs.</summary>
    /// <param name="part">The record.</param>
    public static IReadOnlyList<BoundedMember> Of(Type part) => Known.GetOrAdd(part, static type =>
    [
        .. from member in type.GetProperties()
           let bound = member.GetCustomAttribute<BoundAttribute>()
           where bound is not null
           select new BoundedMember(member, bound),
    ]);

    /// <summary>The bound of one member.</summary>
    /// <typeparam name="T">The record that it stands in.</typeparam>
    /// <param name="member">Its name.</param>
    /// <exception cref="InvalidOperationException">It has none.</exception>
    public static BoundAttribute Of<T>(string member) => Of(typeof(T)).First(one => one.Member.Name == member).Bound;

    /// <summary>The members of one record that are stated and lie outside their bounds.</summary>
    /// <param name="part">The record.</param>
    public static IEnumerable<(BoundedMember Member, double Value)> Broken(object part)
    {
        foreach (var member in Of(part.GetType()))
        {
            if (member.ValueIn(part) is { } value && !member.Bound.Holds(value)) yield return (member, value);
        }
    }
}

/// <summary>A member of a request with its bound.</summary>
/// <param name="Member">The member.</param>
/// <param name="Bound">What it may be.</param>
public sealed record BoundedMember(PropertyInfo Member, BoundAttribute Bound)
{
    /// <summary>Its value in a record, in the unit; null where it is left out.</summary>
    public double? ValueIn(object part) => Member.GetValue(part) switch
    {
        double number => number,
        int count => count,
        _ => null,
    };
}
