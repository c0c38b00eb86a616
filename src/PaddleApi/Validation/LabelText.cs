using System.Buffers;
using System.Globalization;
using System.Text;

namespace PaddleApi.Validation;

/// <summary>
/// Which characters of a label print as their writer sees them. Joined emoji, Persian and the scripts of India need invisible joiners between
/// their letters, and some flags are spelled in invisible letters; anywhere else what cannot be seen has no business in a name.
/// </summary>
internal static class LabelText
{
    private const int NonJoiner = 0x200C, Joiner = 0x200D, BlackFlag = 0x1F3F4, FirstTag = 0xE0020, EndOfTags = 0xE007F;

    /// <summary>Every character in its order, with why it is refused; null where it prints.</summary>
    internal static IEnumerable<(Rune Character, string? Why)> Read(string label)
    {
        Rune? before = null;
        var isFlag = false;
        for (var at = 0; at < label.Length;)
        {
            var isWhole = Rune.DecodeFromUtf16(label.AsSpan(at), out var character, out var length) == OperationStatus.Done;
            at += length;

            // A flag of a part of a country is a black flag and the letters of its code as tags (UTS 51, ED-14a, from memory).
            var isTag = isFlag && character.Value is >= FirstTag and <= EndOfTags;
            isFlag = character.Value == BlackFlag || (isTag && character.Value != EndOfTags);
            yield return (character, !isWhole ? "it is half of a surrogate pair" : isTag ? null : Fault(character, before));
            before = character;
        }
    }

    private static string? Fault(Rune character, Rune? before) => character.Value is NonJoiner or Joiner
        ? before is { } joined && Joins(Rune.GetUnicodeCategory(joined)) ? null : "it joins letters, marks, digits and symbols, and none stands before it"
        : Rune.GetUnicodeCategory(character) switch
        {
            UnicodeCategory.Control => "it is a control character and breaks lines and files",
            UnicodeCategory.Format => "it is invisible and turns or hides the text about it",
            UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => "it breaks the line",
            UnicodeCategory.PrivateUse => "it is for private use and prints differently in every typeface",
            UnicodeCategory.OtherNotAssigned => "it is no character of the Unicode known here",
            _ => null,
        };

    private static bool Joins(UnicodeCategory before) => before
        is UnicodeCategory.UppercaseLetter or UnicodeCategory.LowercaseLetter or UnicodeCategory.TitlecaseLetter or UnicodeCategory.ModifierLetter
        or UnicodeCategory.OtherLetter or UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.EnclosingMark
        or UnicodeCategory.DecimalDigitNumber or UnicodeCategory.LetterNumber or UnicodeCategory.OtherNumber
        or UnicodeCategory.OtherSymbol or UnicodeCategory.ModifierSymbol or UnicodeCategory.MathSymbol;
}
