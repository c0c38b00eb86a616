using System.Globalization;
using System.Numerics;

namespace PaddleApi.Contracts.Numbers;

/// <summary>
/// Writes rounded numbers as JSON, digit by digit: a report holds over a thousand, and the shortest exact form of a double costs
/// more to find than the whole rest of the answer. No trailing zeros, no exponent below 2^53 units, never a negative zero; what is
/// not a number at all becomes <c>null</c>, the only thing JSON has for it.
/// </summary>
internal static class JsonNumbers
{
    /// <summary>Bytes that any number may need.</summary>
    public const int MostBytes = 32;

    /// <summary>Most decimals that can be asked for.</summary>
    public const int MostDecimals = 9;

    // Above this many units a double no longer holds every whole number.
    private const double MostUnits = 1L << 53;

    private static ReadOnlySpan<double> Powers => [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9];

    /// <summary>Writes a value to a number of decimals, exact halves to the even digit, as <c>ToString("F…")</c> rounds.</summary>
    /// <param name="value">The value.</param>
    /// <param name="decimals">Decimals, 0 to 9.</param>
    /// <param name="to">Receives the text; at least <see cref="MostBytes"/> long.</param>
    /// <returns>Bytes written.</returns>
    public static int WriteFixed(double value, int decimals, Span<byte> to)
    {
        if (!double.IsFinite(value)) return WriteNull(to);
        var magnitude = Math.Abs(value);
        var scale = Powers[decimals];
        if (magnitude * scale >= MostUnits) return WriteExact(value, to);
        return WriteUnits(value < 0, RoundHalfEven(magnitude, scale), decimals, to);
    }

    /// <summary>Writes a value to a number of significant digits; zeros fill the places above them.</summary>
    /// <param name="value">The value.</param>
    /// <param name="digits">Significant digits, 1 to 9.</param>
    /// <param name="to">Receives the text; at least <see cref="MostBytes"/> long.</param>
    /// <returns>Bytes written.</returns>
    public static int WriteSignificant(double value, int digits, Span<byte> to)
    {
        if (!double.IsFinite(value)) return WriteNull(to);
        var magnitude = Math.Abs(value);
        if (magnitude >= MostUnits) return WriteExact(value, to);
        var decimals = digits - WholeDigits(magnitude);
        if (decimals >= 0) return WriteFixed(value, Math.Min(decimals, MostDecimals), to);
        if (-decimals > MostDecimals) return WriteExact(value, to);
        var step = (ulong)Powers[-decimals];
        return WriteUnits(value < 0, RoundHalfEven(magnitude / step, 1) * step, 0, to);
    }

    // Digits before the point; 0 for 0.1 to 1, and less for less.
    private static int WholeDigits(double magnitude)
    {
        var digits = 0;
        if (magnitude >= 1)
        {
            for (var rest = magnitude; rest >= 1; rest /= 10) digits++;
            return digits;
        }

        for (var rest = magnitude; rest < 0.1 && digits > -MostDecimals; rest *= 10) digits--;
        return digits;
    }

    // The product may round to a half that the exact value does not reach; the fused product gives back what was lost.
    private static ulong RoundHalfEven(double magnitude, double scale)
    {
        var product = magnitude * scale;
        var units = (ulong)product;
        var fraction = product - units;
        if (fraction < 0.5) return units;
        if (fraction > 0.5) return units + 1;
        var lost = Math.FusedMultiplyAdd(magnitude, scale, -product);
        return lost > 0 || (lost == 0 && (units & 1) == 1) ? units + 1 : units;
    }

    private static int WriteUnits(bool negative, ulong units, int decimals, Span<byte> to)
    {
        if (units == 0)
        {
            to[0] = (byte)'0';
            return 1;
        }

        var sign = negative ? 1 : 0;
        if (negative) to[0] = (byte)'-';

        // Nearly every number of a report fits 32 bits, where division by ten is cheapest.
        return sign + (units <= uint.MaxValue ? WriteSmall((uint)units, decimals, to[sign..]) : WriteLarge(units, decimals, to[sign..]));
    }

    private static int WriteSmall(uint units, int decimals, Span<byte> to)
    {
        while (decimals > 0 && units % 10 == 0)
        {
            units /= 10;
            decimals--;
        }

        var length = Math.Max(CountDigits(units), decimals + 1) + (decimals > 0 ? 1 : 0);
        var place = length;
        if (decimals > 0)
        {
            for (; decimals > 0; decimals--)
            {
                to[--place] = (byte)('0' + units % 10);
                units /= 10;
            }

            to[--place] = (byte)'.';
        }

        while (place > 0)
        {
            to[--place] = (byte)('0' + units % 10);
            units /= 10;
        }

        return length;
    }

    private static int WriteLarge(ulong units, int decimals, Span<byte> to)
    {
        var (whole, rest) = Math.DivRem(units, (ulong)Powers[decimals]);
        whole.TryFormat(to, out var at, default, CultureInfo.InvariantCulture);
        if (rest == 0) return at;
        while (rest % 10 == 0)
        {
            rest /= 10;
            decimals--;
        }

        to[at] = (byte)'.';
        for (var place = at + decimals; place > at; place--)
        {
            to[place] = (byte)('0' + rest % 10);
            rest /= 10;
        }

        return at + decimals + 1;
    }

    // Of a number above 0, from its bits: 1233/4096 is log10 2 closely enough for 32 of them.
    private static int CountDigits(uint value)
    {
        var digits = (BitOperations.Log2(value) + 1) * 1233 >> 12;
        return value < Powers[digits] ? digits : digits + 1;
    }

    private static int WriteExact(double value, Span<byte> to)
    {
        value.TryFormat(to, out var written, default, CultureInfo.InvariantCulture);
        return written;
    }

    private static int WriteNull(Span<byte> to)
    {
        "null"u8.CopyTo(to);
        return 4;
    }
}
