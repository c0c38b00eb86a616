using System.Globalization;
using System.Text;
using System.Xml;

namespace Paddle.Drawings.Sheets;

/// <summary>Heights, widths and safe text of a drawing's lettering.</summary>
/// <remarks>Capital heights from the series 2.5, 3.5, 5, 7, 10, 14 mm of ISO 3098, from memory.</remarks>
internal static class Lettering
{
    public const double Small = 2.5;
    public const double Note = 3.5;
    public const double Figure = 5;
    public const double Heading = 7;
    public const double Title = 10;
    /// <summary>Capital height as a share of the font size: 0.72 to 0.73 in the usual sans-serif faces, measured on one of them.</summary>
    public const double CapitalShare = 0.72;

    /// <summary>Most that a text may be wide, mm, whatever sans-serif face the reader has.</summary>
    public static double WidthMm(string text, double heightMm)
    {
        var ems = 0.0;
        foreach (var rune in text.EnumerateRunes()) ems += WidthEm(rune);
        return ems * heightMm / CapitalShare;
    }

    /// <summary>The height at which a text fits a width, at most the wanted one.</summary>
    public static double FitHeightMm(string text, double heightMm, double widthMm)
    {
        var wide = WidthMm(text, heightMm);
        return wide <= widthMm ? heightMm : heightMm * widthMm / wide;
    }

    /// <summary>Text that no file format can mistake: line breaks become spaces; control characters, direction overrides and broken
    /// surrogates are dropped. Everything else stays as its owner wrote it.</summary>
    public static string Safe(string text)
    {
        var safe = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune == Rune.ReplacementChar || rune.Value is 0xFFFE or 0xFFFF) continue;
            if (rune.Value is '\n' or '\r' or '\t' or 0x85 or 0x2028 or 0x2029) safe.Append(' ');
            else if (Rune.GetUnicodeCategory(rune) == UnicodeCategory.Control || IsDirectionControl(rune)) continue;
            else if (rune.IsBmp && !XmlConvert.IsXmlChar((char)rune.Value)) continue;
            else safe.Append(rune.ToString());
        }

        return safe.ToString().Trim();
    }

    private static bool IsDirectionControl(Rune rune) => rune.Value is (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069);

    private static double WidthEm(Rune rune) => rune.Value switch
    {
        ' ' or '.' or ',' or '/' or '|' or 'i' or 'l' or '(' or ')' or ':' or ';' or '\'' => 0.36,
        'W' or 'M' or 'm' or 'w' or '%' or '@' => 0.98,
        >= 'A' and <= 'Z' => 0.75,
        < 0x250 => 0.64,
        >= 0x1100 => 1.4,
        _ => 0.8,
    };
}
