using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace PaddleApi.Hosting.Json;

/// <summary>
/// Reads lists, but no empty place in them, and none longer than any list of the contract. The platform honours "not null" on members but
/// not on the items of a list, and a rule that looks inside each item would pass over a null one; and a body of empty objects would fill
/// forty times its size in memory before a rule could count them.
/// </summary>
internal sealed class FilledListConverter : JsonConverterFactory
{
    /// <summary>Most items of any list: the customers of a size run. Shorter limits are rules of their members.</summary>
    public const int MostItems = 100_000;

    public override bool CanConvert(Type typeToConvert) =>
        typeToConvert.IsGenericType && typeToConvert.GetGenericTypeDefinition() == typeof(IReadOnlyList<>);

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        (JsonConverter)Activator.CreateInstance(typeof(Converter<>).MakeGenericType(typeToConvert.GetGenericArguments()))!;

    private sealed class Converter<T> : JsonConverter<IReadOnlyList<T>>
    {
        public override IReadOnlyList<T> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            if (reader.TokenType != JsonTokenType.StartArray)
            {
                throw new JsonException("A list is expected.");
            }

            var type = (JsonTypeInfo<T>)options.GetTypeInfo(typeof(T));
            var items = new List<T>();
            while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
            {
                if (items.Count == MostItems) throw new JsonException("The list is too long.");
                var item = JsonSerializer.Deserialize(ref reader, type);
                items.Add(item is not null ? item : throw new JsonException("A list has no empty places."));
            }

            return items;
        }

        public override void Write(Utf8JsonWriter writer, IReadOnlyList<T> value, JsonSerializerOptions options)
        {
            var type = (JsonTypeInfo<T>)options.GetTypeInfo(typeof(T));
            writer.WriteStartArray();
            for (var i = 0; i < value.Count; i++) JsonSerializer.Serialize(writer, value[i], type);
            writer.WriteEndArray();
        }
    }
}
