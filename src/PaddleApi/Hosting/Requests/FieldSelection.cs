using System.Buffers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Paddle.Design.Fitting;
using PaddleApi.Contracts.Problems;
using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Json;
using PaddleApi.Hosting.Problems;
using PaddleApi.Validation;

namespace PaddleApi.Hosting.Requests;

/// <summary>
/// The members of an answer that a caller wants: a page that shows ten numbers need not fetch forty kilobytes. What is kept stays where it was,
/// so that the same code reads a slim answer and a whole one.
/// </summary>
internal sealed class FieldSelection
{
    /// <summary>Name of the parameter.</summary>
    public const string Parameter = "fields";

    // Designs and fittings have these.
    private const string Example = "engineVersion,design/handSpacingMm";
    private const int MostFields = 100;
    private const string About = "Members to answer with, with commas between them: names with / between levels, as in a JSON Pointer. Of a list each entry "
        + "is shortened. Everything else is left out, though the schema requires it; the whole answer when left out.";

    private readonly SortedDictionary<string, FieldSelection> members = new(StringComparer.Ordinal);

    // Whether all below is kept.
    private bool isWhole;

    /// <summary>Its members in one order, for a tag.</summary>
    public override string ToString() => isWhole ? "" : string.Join(',', members.Select(member => $"{JsonPointers.Append("", member.Key)}{(member.Value.isWhole ? "" : $"({member.Value})")}"));

    /// <summary>Reads the parameter.</summary>
    /// <typeparam name="T">What is answered.</typeparam>
    /// <returns>The selection, null for all; or the problem to answer with.</returns>
    public static (FieldSelection? Fields, ProblemResult? Problem) Of<T>(HttpRequest request)
    {
        var values = new QueryValues(request.Query);
        if (values.Text(Parameter) is not { } text) return (null, values.Faults.Count == 0 ? null : Validated.Refusal(values.Faults));
        var selection = new FieldSelection();
        var fields = text.Split(',', MostFields + 1);
        if (fields.Length > MostFields) return (null, Refusal(new($"Up to {MostFields} members are named.", fields.Length, 1, MostFields, "members")));
        foreach (var field in fields)
            if (selection.Add(field, typeof(T)) is { } fault) return (null, Refusal(fault));
        return (selection, null);
    }

    /// <summary>Documents the parameter on an endpoint.</summary>
    public static RouteHandlerBuilder TakesFields(RouteHandlerBuilder endpoint) =>
        endpoint.Query(Parameter, About, Example, []).Refuses(ProblemKinds.InvalidValues);

    /// <summary>JSON with the selected members alone.</summary>
    public byte[] Shorten(ReadOnlySpan<byte> json)
    {
        var made = new ArrayBufferWriter<byte>(Math.Min(json.Length, 4096));
        var reader = new Utf8JsonReader(json);
        using (var writer = new Utf8JsonWriter(made, new() { Encoder = StrictJson.Options.Encoder, SkipValidation = true }))
        {
            reader.Read();
            Copy(ref reader, json, writer);
        }

        return made.WrittenSpan.ToArray();
    }

    private static ProblemResult Refusal(Fault fault) => Validated.Refusal([($"?{Parameter}", fault)]);

    private Fault? Add(string field, Type type)
    {
        var place = this;
        foreach (var part in (field.StartsWith('/') ? field[1..] : field).Split('/'))
        {
            var name = part.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal);
            var known = Members(ref type);
            if (known is not null)
            {
                if (known.FirstOrDefault(member => member.Name == name) is not { } member)
                    return new("No member of this name is known here; names are case-sensitive.", FaultValue.Show(field), Allowed: [.. known.Select(one => one.Name)], Code: RefusalCodes.UnknownName);
                type = member.PropertyType;
            }

            if (!place.members.TryGetValue(name, out var next)) place.members[name] = next = new();
            place = next;
        }

        place.isWhole = true;
        return null;
    }

    // Of a list those of its entries; null where a converter of its own writes them, and no type knows.
    private static IList<JsonPropertyInfo>? Members(ref Type type)
    {
        type = Nullable.GetUnderlyingType(type) ?? type;
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>)) type = type.GetGenericArguments()[0];
        var info = StrictJson.Options.GetTypeInfo(type);
        return info.Kind == JsonTypeInfoKind.Object ? info.Properties : type.IsPrimitive || type == typeof(string) ? [] : null;
    }

    private void Copy(ref Utf8JsonReader reader, ReadOnlySpan<byte> json, Utf8JsonWriter writer)
    {
        if (isWhole || reader.TokenType is not (JsonTokenType.StartObject or JsonTokenType.StartArray))
        {
            var start = (int)reader.TokenStartIndex;
            reader.Skip();
            writer.WriteRawValue(json[start..(int)reader.BytesConsumed], skipInputValidation: true);
        }
        else if (reader.TokenType == JsonTokenType.StartArray)
        {
            writer.WriteStartArray();
            while (reader.Read() && reader.TokenType != JsonTokenType.EndArray) Copy(ref reader, json, writer);
            writer.WriteEndArray();
        }
        else
        {
            writer.WriteStartObject();
            while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
            {
                var name = Encoding.UTF8.GetString(reader.ValueSpan);
                reader.Read();
                if (members.TryGetValue(name, out var kept))
                {
                    writer.WritePropertyName(name);
                    kept.Copy(ref reader, json, writer);
                }
                else
                {
                    reader.Skip();
                }
            }

            writer.WriteEndObject();
        }
    }
}
