using System.Text.Json;
using System.Text.Json.Serialization;

namespace PaddleApi.Hosting.Json;

/// <summary>Reads numbers, but not those too large to hold: the platform would read 1e999 as infinity.</summary>
internal sealed class FiniteNumberConverter : JsonConverter<double>
{
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.Number)
        {
            throw new JsonException("A number is expected.");
        }

        var value = reader.GetDouble();
        return double.IsFinite(value) ? value : throw new JsonException("The number is too large.");
    }

    // Adding zero turns the negative zero, which prints as "-0", into plain zero.
    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) => writer.WriteNumberValue(value + 0.0);
}
