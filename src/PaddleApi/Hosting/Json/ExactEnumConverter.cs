using System.Collections.Frozen;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace PaddleApi.Hosting.Json;

/// <summary>
/// Reads and writes enumerations as kebab-case names, letter by letter. The platform's own converter also takes other cases and
/// digits in quotes, and one meaning must have one spelling.
/// </summary>
internal sealed class ExactEnumConverter : JsonConverterFactory
{
    public override bool CanConvert(Type typeToConvert) => typeToConvert.IsEnum;

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        (JsonConverter)Activator.CreateInstance(typeof(Converter<>).MakeGenericType(typeToConvert))!;

    /// <summary>The name of an enumeration's value in the contract.</summary>
    public static string NameOf(string member) => JsonNamingPolicy.KebabCaseLower.ConvertName(member);

    /// <summary>All names of an enumeration in the contract, in the order they are declared.</summary>
    public static IReadOnlyList<string> NamesOf(Type enumeration) => [.. Enum.GetNames(enumeration).Select(NameOf)];

    private sealed class Converter<T> : JsonConverter<T>
        where T : struct, Enum
    {
        private static readonly FrozenDictionary<string, T> ByName =
            Enum.GetNames<T>().ToFrozenDictionary(NameOf, Enum.Parse<T>, StringComparer.Ordinal);

        private static readonly FrozenDictionary<T, string> Names = ByName.ToFrozenDictionary(pair => pair.Value, pair => pair.Key);

        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.String && ByName.TryGetValue(reader.GetString()!, out var value)
                ? value
                : throw new JsonException("Not one of the allowed names.");

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(Names[value]);
    }
}
