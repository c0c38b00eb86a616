using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using PaddleApi.Contracts.Problems;
using PaddleApi.Validation;

namespace PaddleApi.Hosting.Json;

/// <summary>Walks a JSON value beside the type it should have and notes each place where they part.</summary>
/// <param name="options">Options that the type is read with.</param>
internal sealed class JsonShapeWalk(JsonSerializerOptions options)
{
    // Enough to mend a request by; a hostile body must not be answered with a book.
    private const int MostFaults = 32;

    private readonly SortedDictionary<string, IReadOnlyList<Fault>> errors = new(StringComparer.Ordinal);

    /// <summary>The faults found, by JSON Pointer.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<Fault>> Errors => errors;

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

    private void VisitItems(JsonElement value, Type type, Type item, string pointer, int depth)
    {
        if (value.ValueKind != JsonValueKind.Array)
        {
            Note(pointer, $"{Expected(type)} is expected, not {Given(value)}.", Shown(value));
            return;
        }

        var index = 0;
        foreach (var entry in value.EnumerateArray())
        {
            Visit(entry, item, allowNull: false, JsonPointers.Append(pointer, index++), depth + 1);
        }
    }

    private void VisitMembers(JsonElement value, Type type, string pointer, int depth)
    {
        if (value.ValueKind != JsonValueKind.Object)
        {
            Note(pointer, $"{Expected(type)} is expected, not {Given(value)}.", Shown(value));
            return;
        }

        var members = options.GetTypeInfo(type).Properties.Where(member => member.Set is not null || member.AssociatedParameter is not null)
            .ToDictionary(member => member.Name, StringComparer.Ordinal);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var given in value.EnumerateObject())
        {
            var place = JsonPointers.Append(pointer, given.Name);
            if (!members.TryGetValue(given.Name, out var member))
            {
                Note(place, "No member of this name is known here; names are case-sensitive.", allowed: [.. members.Keys]);
            }
            else if (!seen.Add(given.Name))
            {
                Note(place, "This member is given twice.");
            }
            else
            {
                Visit(given.Value, member.PropertyType, AllowsNull(member), place, depth + 1);
            }
        }

        foreach (var missing in members.Values.Where(member => IsRequired(member) && !seen.Contains(member.Name)))
        {
            Note(JsonPointers.Append(pointer, missing.Name), "This member is required and is missing.");
        }
    }

    private void VisitPlain(JsonElement value, Type type, string pointer)
    {
        if (type.IsEnum)
        {
            var names = ExactEnumConverter.NamesOf(type);
            if (value.ValueKind != JsonValueKind.String || !names.Contains(value.GetString()!, StringComparer.Ordinal))
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
                Note(pointer, "A whole number is expected.", Shown(value));
            }
        }
        else if (value.ValueKind != KindOf(type) && !(type == typeof(bool) && value.ValueKind == JsonValueKind.False))
        {
            Note(pointer, $"{Expected(type)} is expected, not {Given(value)}.", Shown(value));
        }
    }

    private void Note(string pointer, string reason, object? value = null, IReadOnlyList<string>? allowed = null)
    {
        if (errors.Count < MostFaults)
        {
            errors[pointer] = [.. errors.GetValueOrDefault(pointer) ?? [], new Fault(reason, value, Allowed: allowed)];
        }
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
        JsonValueKind.String => FaultValue.Shorten(value.GetString()!),
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => null,
    };
}
