using System.Text.Json;
using System.Text.Json.Serialization;
using Paddle.Design;

namespace PaddleApi.Hosting.Json;

/// <summary>
/// Reads and writes enumerations by their names, letter by letter. The platform's own converter also takes other cases and digits in quotes,
/// and one meaning must have one spelling.
/// </summary>
internal sealed class ExactEnumConverter : JsonConverterFactory
{
    public override bool CanConvert(Type typeToConvert) => typeToConvert.IsEnum;

    public override JsonConverter CreateConverter(Type typeToConvert, JsonSerializerOptions options) =>
        (JsonConverter)Activator.CreateInstance(typeof(Converter<>).MakeGenericType(typeToConvert))!;

    private sealed class Converter<T> : JsonConverter<T>
        where T : struct, Enum
    {
        public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            (reader.TokenType == JsonTokenType.String ? Names.Find<T>(reader.GetString()!) : null) ?? throw new JsonException("Not one of the allowed names.");

        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(Names.Of(value));
    }
}
