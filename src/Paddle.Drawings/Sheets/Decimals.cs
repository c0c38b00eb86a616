using System.Text;

namespace Paddle.Drawings.Sheets;

/// <summary>Writes sheet lengths with a fixed number of places at most: a drawing has thousands, and the platform's way took most of its time.</summary>
internal static class Decimals
{
    private const int MostCharacters = 32;

    /// <summary>Appends a number without idle noughts, the same in every culture.</summary>
    /// <param name="value">The number; a sheet's, so that all its digits fit 18.</param>
    /// <param name="scale">Ten to the power of the places.</param>
    /// <param name="isReal">Whether a whole number has a nought after its point too.</param>
    public static StringBuilder AppendDecimal(this StringBuilder text, double value, int scale, bool isReal = false)
    {
        Span<char> characters = stackalloc char[MostCharacters];
        return text.Append(Write(value, scale, isReal, characters));
    }

    /// <summary>The number by itself.</summary>
    public static string Text(double value, int scale) => new(Write(value, scale, false, stackalloc char[MostCharacters]));

    // From the last digit to the first.
    private static Span<char> Write(double value, int scale, bool isReal, Span<char> characters)
    {
        var steps = (long)Math.Round(value * scale);
        var (whole, part) = Math.DivRem((ulong)Math.Abs(steps), (uint)scale);
        var at = characters.Length;
        if (part > 0 || isReal)
        {
            for (var places = scale; places > 1; places /= 10)
            {
                (part, var digit) = Math.DivRem(part, 10);
                var isIdle = digit == 0 && at == characters.Length && (part > 0 || places > 10);
                if (!isIdle) characters[--at] = (char)('0' + digit);
            }

            characters[--at] = '.';
        }

        do
        {
            (whole, var digit) = Math.DivRem(whole, 10);
            characters[--at] = (char)('0' + digit);
        }
        while (whole > 0);

        if (steps < 0) characters[--at] = '-';
        return characters[at..];
    }
}
