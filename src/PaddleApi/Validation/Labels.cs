using System.Globalization;
using FluentValidation;

namespace PaddleApi.Validation;

/// <summary>Names that callers give to their designs; they are printed on drawings and shop papers.</summary>
internal static class Labels
{
    /// <summary>Most characters of a label.</summary>
    internal const int Longest = 80;

    /// <summary>Refuses a label that does not print on one line; null passes.</summary>
    /// <typeparam name="T">The request.</typeparam>
    /// <param name="rule">The rule being built.</param>
    /// <param name="longest">Most characters.</param>
    internal static IRuleBuilderOptions<T, string?> Printable<T>(this IRuleBuilder<T, string?> rule, int longest) =>
        rule.Must(label => IsPrintable(label, longest))
            .Saying($"A label has up to {longest} characters that print on one line.", 0, longest, "characters");

    // Format characters turn text about or hide it; control characters break lines and files; half a surrogate pair is no character.
    private static bool IsPrintable(string? label, int longest)
    {
        if (label is null) return true;
        var count = 0;
        for (var i = 0; i < label.Length; i += char.IsSurrogatePair(label, i) ? 2 : 1)
        {
            var category = CharUnicodeInfo.GetUnicodeCategory(label, i);
            if (category is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse
                or UnicodeCategory.OtherNotAssigned or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator) return false;
            count++;
        }

        return count <= longest;
    }
}
