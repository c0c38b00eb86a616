using System.Collections.Frozen;
using System.Text.Json;

namespace Paddle.Design;

/// <summary>How the values of an enumeration are written in requests, answers and addresses: the words of the member, in lower case and joined
/// by hyphens. One meaning has one spelling.</summary>
internal static class Names
{
    /// <summary>All names of an enumeration, in the order they are declared.</summary>
    public static IReadOnlyList<string> All<T>()
        where T : struct, Enum => Table<T>.InOrder;

    /// <summary>All names of an enumeration, in the order they are declared.</summary>
    public static IReadOnlyList<string> All(Type enumeration) => [.. Enum.GetNames(enumeration).Select(Spell)];

    /// <summary>The name of a value.</summary>
    public static string Of<T>(T value)
        where T : struct, Enum => Table<T>.ByValue[value];

    /// <summary>The value of a name, or null when there is none of exactly that name.</summary>
    public static T? Find<T>(string name)
        where T : struct, Enum => Table<T>.ByName.TryGetValue(name, out var value) ? value : null;

    /// <summary>The name of a member.</summary>
    public static string Spell(string member) => JsonNamingPolicy.KebabCaseLower.ConvertName(member);

    private static class Table<T>
        where T : struct, Enum
    {
        public static readonly IReadOnlyList<string> InOrder = [.. Enum.GetNames<T>().Select(Spell)];
        public static readonly FrozenDictionary<string, T> ByName = Enum.GetNames<T>().ToFrozenDictionary(Spell, Enum.Parse<T>, StringComparer.Ordinal);
        public static readonly FrozenDictionary<T, string> ByValue = ByName.ToFrozenDictionary(pair => pair.Value, pair => pair.Key);
    }
}
