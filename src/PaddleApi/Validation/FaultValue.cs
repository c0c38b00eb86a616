using FluentValidation.Results;
using Paddle.Design;
using PaddleApi.Contracts.Problems;

namespace PaddleApi.Validation;

/// <summary>What of a refused value is shown to the caller.</summary>
internal static class FaultValue
{
    private const int LongestShown = 80;

    /// <summary>A number, a short text or a truth as it is; null for anything larger, which the pointer names well enough.</summary>
    public static object? Show(object? value) => value switch
    {
        double number => double.IsFinite(number) ? number : null,
        int or bool => value,
        string text => Shorten(text),
        Enum name => Names.Spell(name.ToString()),
        _ => null,
    };

    /// <summary>The fault of a broken rule.</summary>
    public static Fault ToFault(this ValidationFailure failure) => failure.CustomState as Fault ?? new(failure.ErrorMessage, Show(failure.AttemptedValue));

    /// <summary>A text cut to a length that is fit to show.</summary>
    public static string Shorten(string text)
    {
        if (text.Length <= LongestShown) return text;

        // Half a surrogate pair is no character, and JSON cannot hold it.
        var length = char.IsHighSurrogate(text[LongestShown - 1]) ? LongestShown - 1 : LongestShown;
        return string.Concat(text.AsSpan(0, length), "…");
    }
}
