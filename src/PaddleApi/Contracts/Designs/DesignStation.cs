using System.Buffers;
using System.Text.Json;
using System.Text.Json.Serialization;
using Paddle.Design.Solid;
using PaddleApi.Contracts.Numbers;

namespace PaddleApi.Contracts.Designs;

/// <summary>The cross-section at one place.</summary>
/// <param name="XMm">Place, mm from the top of the grip along the paddle.</param>
/// <param name="HalfWidthMm">Half-width w, mm.</param>
/// <param name="HalfThicknessMm">Half-thickness at the centre c, mm.</param>
/// <param name="EdgeHalfThicknessMm">Half-thickness at the edge e, mm.</param>
/// <param name="CrownExponent">p of h(u) = e + (c − e)(1 − u^p)^r.</param>
/// <param name="CrownPower">r of h(u) = e + (c − e)(1 − u^p)^r.</param>
/// <param name="CentreOffsetMm">Offset of the section's centre from the shaft's line, mm, along +z.</param>
internal readonly record struct DesignStation(
    double XMm,
    double HalfWidthMm,
    double HalfThicknessMm,
    double EdgeHalfThicknessMm,
    double CrownExponent,
    double CrownPower,
    double CentreOffsetMm)
{
    /// <summary>Every printed place of a solid.</summary>
    public static DesignStation[] Of(PaddleSolid solid)
    {
        var stations = new DesignStation[solid.Count];
        for (var i = 0; i < stations.Length; i++)
        {
            var shape = solid.Grid.Patterns[i].Moments;
            stations[i] = new(solid.X[i], solid.HalfWidth[i], solid.HalfThickness[i], solid.EdgeHalfThickness[i], shape.P, shape.R, solid.CentreOffsetMm(i));
        }

        return stations;
    }
}

/// <summary>Writes all stations in one piece: they are nine tenths of the numbers of a report. mm to 0.01, exponents to 0.0001.</summary>
internal sealed class StationsConverter : JsonConverter<IReadOnlyList<DesignStation>>
{
    // Seven names with their quotes, colons and commas, and seven numbers.
    private const int MostBytes = 160 + 7 * JsonNumbers.MostBytes;

    /// <inheritdoc/>
    public override IReadOnlyList<DesignStation> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        JsonSerializer.Deserialize<DesignStation[]>(ref reader, options)!;

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, IReadOnlyList<DesignStation> value, JsonSerializerOptions options)
    {
        var rented = ArrayPool<byte>.Shared.Rent(2 + value.Count * MostBytes);
        try
        {
            writer.WriteRawValue(rented.AsSpan(0, Fill(rented, value as DesignStation[] ?? [.. value])), skipInputValidation: true);
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(rented);
        }
    }

    private static int Fill(Span<byte> text, ReadOnlySpan<DesignStation> stations)
    {
        var end = 0;
        text[end++] = (byte)'[';
        foreach (ref readonly var station in stations)
        {
            if (end > 1) text[end++] = (byte)',';
            Add(text, ref end, "{\"xMm\":"u8, station.XMm, 2);
            Add(text, ref end, ",\"halfWidthMm\":"u8, station.HalfWidthMm, 2);
            Add(text, ref end, ",\"halfThicknessMm\":"u8, station.HalfThicknessMm, 2);
            Add(text, ref end, ",\"edgeHalfThicknessMm\":"u8, station.EdgeHalfThicknessMm, 2);
            Add(text, ref end, ",\"crownExponent\":"u8, station.CrownExponent, 4);
            Add(text, ref end, ",\"crownPower\":"u8, station.CrownPower, 4);
            Add(text, ref end, ",\"centreOffsetMm\":"u8, station.CentreOffsetMm, 2);
            text[end++] = (byte)'}';
        }

        text[end++] = (byte)']';
        return end;
    }

    private static void Add(Span<byte> text, ref int end, ReadOnlySpan<byte> name, double value, int decimals)
    {
        name.CopyTo(text[end..]);
        end += name.Length;
        end += JsonNumbers.WriteFixed(value, decimals, text[end..]);
    }
}
