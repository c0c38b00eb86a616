using System.Text.Json;
using System.Text.Json.Serialization;

namespace PaddleApi.Contracts.Numbers;

/// <summary>Writes a number rounded.</summary>
/// <param name="digits">Decimals, or significant digits, 0 to 9.</param>
/// <param name="areSignificant">Which of the two.</param>
internal sealed class RoundedNumber(int digits, bool areSignificant = false) : JsonConverter<double>
{
    /// <summary>The same for a number that may be absent.</summary>
    public JsonConverter<double?> OrNull => new Nullable(this);

    /// <inheritdoc/>
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options)
    {
        Span<byte> text = stackalloc byte[JsonNumbers.MostBytes];
        var length = areSignificant ? JsonNumbers.WriteSignificant(value, digits, text) : JsonNumbers.WriteFixed(value, digits, text);
        writer.WriteRawValue(text[..length], skipInputValidation: true);
    }

    private sealed class Nullable(RoundedNumber number) : JsonConverter<double?>
    {
        public override double? Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

        public override void Write(Utf8JsonWriter writer, double? value, JsonSerializerOptions options)
        {
            if (value is { } known) number.Write(writer, known, options);
            else writer.WriteNullValue();
        }
    }
}
