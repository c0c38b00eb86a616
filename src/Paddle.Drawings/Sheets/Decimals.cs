using System.Text;

namespace Paddle.Drawings.Sheets;

/// <summary>Writes sheet lengths with a fixed number of places at most: a drawing has thousands, and the platform's way took most of its time.</summary>
internal static class Decimals
{
    /// <summary>Appends a number without idle noughts, the same in every culture.</summary>
    /// <param name="value">The number; a sheet's, so that all its digits fit 18.</param>
    /// <param name="scale">Ten to the power of the places.</param>
    /// <param name="isReal">Whether a whole number has a nought after its point too.</param>
    public static StringBuilder AppendDecimal(this StringBuilder text, double value, int scale, bool isReal = false)
    {
        var steps = (long)Math.Round(value * scale);
        if (steps < 0) text.Append('-');
        var (whole, part) = Math.DivRem(Math.Abs(steps), scale);
        text.Append(whole);
        if (part == 0) return isReal ? text.Append(".0") : text;
        text.Append('.');
        for (; part > 0; part = part * 10 % scale) text.Append((char)('0' + part * 10 / scale));
        return text;
    }
}
