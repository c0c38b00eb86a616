using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Paddle.Design;
using Paddle.Design.Fitting;
using PaddleApi.Contracts.Problems;
using PaddleApi.Validation;

namespace PaddleApi.Hosting.Json;

/// <summary>
/// Walks a JSON value beside the type it should have and notes each place where they part. It ends when it has noted as many faults as
/// are listed, or at a member given twice: who reads such an object cannot know which of the two is meant.
/// </summary>
internal sealed class JsonShapeWalk(JsonSerializerOptions options)
{
    private const string NoText = "This text is not Unicode: it holds half of a surrogate pair.";

    private readonly SortedDictionary<string, IReadOnlyList<Fault>> errors = new(StringComparer.Ordinal);
    private readonly Dictionary<Type, Dictionary<string, JsonPropertyInfo>> members = [];
    private int noted, tooLong;
    private bool metTwice;

    /// <summary>The faults found, by JSON Pointer.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<Fault>> Errors => errors;

    /// <summary>Whether it ended because no more faults are listed.</summary>
    public bool IsFull => noted >= Problem.MostFaults;

    /// <summary>Whether nothing but the length of lists is at fault: that is a matter of values and not of form.</summary>
    public bool IsOnlyTooLong => noted > 0 && tooLong == noted;

    private bool IsOver => IsFull || metTwice;

    /// <summary>Compares a value with a type.</summary>
    public void Visit(JsonElement value, Type type, bool allowNull, string pointer, int depth)
    {
        var target = Nullable.GetUnderlyingType(type) ?? type;
        if (value.ValueKind == JsonValueKind.Null)
        {
            if (!allowNull && target == type)
            {
                Note(pointer, $"{Expected(target)} is expected; null is not allowed here.");
            }
        }
        else if (depth > StrictJson.MaxDepth && value.ValueKind is JsonValueKind.Object or JsonValueKind.Array)
        {
            Note(pointer, $"This nests deeper than the {StrictJson.MaxDepth} levels that are read.");
        }
        else if (target == typeof(JsonElement))
        {
            VisitAny(value, pointer, depth);
        }
        else if (ItemType(target) is { } item)
        {
            VisitItems(value, target, item, pointer, depth);
        }
        else if (IsPlain(target))
        {
            VisitPlain(value, target, pointer);
        }
        else
        {
            VisitMembers(value, target, pointer, depth);
        }
    }

    // JSON of any form: but for text that is none, and names given twice, nothing can be wrong with it.
    private void VisitAny(JsonElement value, string pointer, int depth)
    {
        if (value.ValueKind == JsonValueKind.String && TextOf(value) is null) Note(pointer, NoText);
        var items = value.ValueKind == JsonValueKind.Array ? value.EnumerateArray().Select((entry, k) => ((string?)JsonPointers.Append(pointer, k), entry)) : [];
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var members = value.ValueKind == JsonValueKind.Object ? value.EnumerateObject().Select(given => (NameUnder(pointer, given, seen, null), given.Value)) : [];
        foreach (var (place, part) in items.Concat(members))
        {
            if (IsOver) return;
            if (place is not null) Visit(part, typeof(JsonElement), allowNull: true, place, depth + 1);
        }
    }

    // The place of a member; null where its name is no text or is given twice, which is noted.
    private string? NameUnder(string pointer, JsonProperty given, HashSet<string> seen, IEnumerable<string>? known)
    {
        if (NameOf(given) is not { } name)
        {
            Note(pointer, "The name of a member here is not Unicode: it holds half of a surrogate pair.", allowed: known is null ? null : [.. known]);
            return null;
        }

        // A name that is nobody's may be as long as the body; its beginning tells which is meant.
        var place = JsonPointers.Append(pointer, FaultValue.Shorten(name));
        if (seen.Add(name)) return place;
        Note(place, "This member is given twice.", code: RefusalCodes.GivenTwice);
        metTwice = true;
        return null;
    }

    private void VisitItems(JsonElement value, Type type, Type item, string pointer, int depth)
    {
        if (value.ValueKind != JsonValueKind.Array)
        {
            Note(pointer, $"{Expected(type)} is expected, not {Given(value)}.", Shown(value), code: RefusalCodes.WrongType);
            return;
        }

        if (value.GetArrayLength() is var length and > FilledListConverter.MostItems)
        {
            tooLong++;
            Note(pointer, new("No list is read beyond this length.", length, 0, FilledListConverter.MostItems, "items"));
            return;
        }

        var index = 0;
        foreach (var entry in value.EnumerateArray())
        {
            if (IsOver) return;
            Visit(entry, item, allowNull: false, JsonPointers.Append(pointer, index++), depth + 1);
        }
    }

    private void VisitMembers(JsonElement value, Type type, string pointer, int depth)
    {
        if (value.ValueKind != JsonValueKind.Object)
        {
            Note(pointer, $"{Expected(type)} is expected, not {Given(value)}.", Shown(value), code: RefusalCodes.WrongType);
            return;
        }

        var known = MembersOf(type);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var given in value.EnumerateObject())
        {
            if (IsOver) return;
            if (NameUnder(pointer, given, seen, known.Keys) is not { } place) continue;
            if (!known.TryGetValue(given.Name, out var member))
            {
                Note(place, "No member of this name is known here; names are case-sensitive.", allowed: [.. known.Keys]);
            }
            else
            {
                Visit(given.Value, member.PropertyType, AllowsNull(member), place, depth + 1);
            }
        }

        foreach (var missing in known.Values.Where(member => IsRequired(member) && !seen.Contains(member.Name)))
        {
            Note(JsonPointers.Append(pointer, missing.Name), "This member is required and is missing.", code: RefusalCodes.Missing);
        }
    }

    private void VisitPlain(JsonElement value, Type type, string pointer)
    {
        if (value.ValueKind == JsonValueKind.String && (type.IsEnum || type == typeof(string)) && TextOf(value) is null)
        {
            Note(pointer, NoText, allowed: type.IsEnum ? Names.All(type) : null);
        }
        else if (type.IsEnum)
        {
            var names = Names.All(type);
            if (value.ValueKind != JsonValueKind.String || !names.Contains(TextOf(value)!, StringComparer.Ordinal))
            {
                Note(pointer, "One of the allowed names is expected.", Shown(value), names);
            }
        }
        else if (type == typeof(double) && value.ValueKind == JsonValueKind.Number)
        {
            if (!double.IsFinite(value.GetDouble()))
            {
                Note(pointer, "This number is too large.");
            }
        }
        else if (type == typeof(int) && value.ValueKind == JsonValueKind.Number)
        {
            if (!value.TryGetInt32(out _))
            {
                Note(pointer, "A whole number is expected.", Shown(value), code: RefusalCodes.WrongType);
            }
        }
        else if (value.ValueKind != KindOf(type) && !(type == typeof(bool) && value.ValueKind == JsonValueKind.False))
        {
            Note(pointer, $"{Expected(type)} is expected, not {Given(value)}.", Shown(value), code: RefusalCodes.WrongType);
        }
    }

    private void Note(string pointer, string reason, object? value = null, IReadOnlyList<string>? allowed = null, string? code = null) =>
        Note(pointer, new(reason, value, Allowed: allowed, Code: code));

    private void Note(string pointer, Fault fault)
    {
        if (IsOver) return;
        noted++;
        errors[pointer] = [.. errors.GetValueOrDefault(pointer) ?? [], fault];
    }

    private Dictionary<string, JsonPropertyInfo> MembersOf(Type type)
    {
        if (members.TryGetValue(type, out var found)) return found;
        return members[type] = options.GetTypeInfo(type).Properties.Where(member => member.Set is not null || member.AssociatedParameter is not null)
            .ToDictionary(member => member.Name, StringComparer.Ordinal);
    }

    private static Type? ItemType(Type type) =>
        type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>) ? type.GetGenericArguments()[0] : null;

    private static bool IsPlain(Type type) => type.IsEnum || type == typeof(double) || type == typeof(int) || type == typeof(bool) || type == typeof(string);

    private static bool AllowsNull(JsonPropertyInfo member) =>
        member.AssociatedParameter is { } parameter ? parameter.IsNullable : member.IsSetNullable;

    private static bool IsRequired(JsonPropertyInfo member) =>
        member.IsRequired || member.AssociatedParameter is { HasDefaultValue: false, IsMemberInitializer: false };

    private static JsonValueKind KindOf(Type type) =>
        type == typeof(string) ? JsonValueKind.String : type == typeof(bool) ? JsonValueKind.True : JsonValueKind.Number;

    private static string Expected(Type type) =>
        ItemType(type) is not null ? "A list"
        : type.IsEnum || type == typeof(string) ? "A text"
        : type == typeof(int) ? "A whole number"
        : type == typeof(double) ? "A number"
        : type == typeof(bool) ? "true or false"
        : "An object";

    private static string Given(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a text",
        JsonValueKind.Number => "a number",
        _ => "true or false",
    };

    private static object? Shown(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Number => value.TryGetDouble(out var number) && double.IsFinite(number) ? number : null,
        JsonValueKind.String => TextOf(value) is { } text ? FaultValue.Shorten(text) : null,
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => null,
    };

    // An escape such as \ud800 alone is well-formed JSON but no text; the reader throws where it is asked for one.
    private static string? TextOf(JsonElement value)
    {
        try
        {
            return value.GetString();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    private static string? NameOf(JsonProperty member)
    {
        try
        {
            return member.Name;
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }
}
