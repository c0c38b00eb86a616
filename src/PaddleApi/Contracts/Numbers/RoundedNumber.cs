using System.Text.Json;
using System.Text.Json.Serialization;

namespace PaddleApi.Contracts.Numbers;

/// <summary>Writes a number to a fixed number of decimals.</summary>
/// <param name="decimals">Decimals, 0 to 9.</param>
internal abstract class FixedNumberConverter(int decimals) : JsonConverter<double>
{
    /// <inheritdoc/>
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options)
    {
        Span<byte> text = stackalloc byte[JsonNumbers.MostBytes];
        writer.WriteRawValue(text[..JsonNumbers.WriteFixed(value, decimals, text)], skipInputValidation: true);
    }
}

/// <summary>Writes a number to a number of significant digits.</summary>
/// <param name="digits">Significant digits, 1 to 9.</param>
internal abstract class SignificantNumberConverter(int digits) : JsonConverter<double>
{
    /// <inheritdoc/>
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.GetDouble();

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options)
    {
        Span<byte> text = stackalloc byte[JsonNumbers.MostBytes];
        writer.WriteRawValue(text[..JsonNumbers.WriteSignificant(value, digits, text)], skipInputValidation: true);
    }
}

/// <summary>To 0.1: grams, newtons, areas.</summary>
internal sealed class Tenths() : FixedNumberConverter(1);

/// <summary>To 0.01: millimetres, newton metres, hertz.</summary>
internal sealed class Hundredths() : FixedNumberConverter(2);

/// <summary>To 0.001: factors, coefficients, speeds.</summary>
internal sealed class Thousandths() : FixedNumberConverter(3);

/// <summary>To three significant digits: stresses, strengths, moduli.</summary>
internal sealed class ThreeDigits() : SignificantNumberConverter(3);

/// <summary>To four significant digits: moments of inertia, figures of checks.</summary>
internal sealed class FourDigits() : SignificantNumberConverter(4);
