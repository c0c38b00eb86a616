using FluentValidation;
using FluentValidation.Validators;
using Paddle.Design.Fitting;
using PaddleApi.Contracts.Problems;

namespace PaddleApi.Validation;

/// <summary>Names that callers give to their designs; they are printed on drawings and shop papers.</summary>
internal static class Labels
{
    /// <summary>Most characters of a label.</summary>
    internal const int Longest = 80;

    /// <summary>Refuses a label that does not print on one line, naming the character; null passes.</summary>
    internal static IRuleBuilderOptions<T, string?> Printable<T>(this IRuleBuilder<T, string?> rule, int longest) =>
        rule.SetValidator(new LabelRule<T>(longest)).WithState((_, label) =>
            new Fault(Reason(label!, longest), FaultValue.Show(label), 0, longest, "characters", Code: RefusalCodes.NotAccepted));

    /// <summary>Why a label is refused; null for one that prints.</summary>
    internal static string? Refusal(string label, int longest)
    {
        var count = 0;
        foreach (var (character, why) in LabelText.Read(label))
        {
            count++;
            if (why is not null) return string.Create(null, $"Character {count}, U+{character.Value:X4}, is refused: {why}.");
            if (count > longest) return "This one is longer; each part of a joined emoji counts.";
        }

        return null;
    }

    private static string Reason(string label, int longest) =>
        $"A label has up to {longest} characters that print on one line. {Refusal(label, longest)}";
}

/// <summary>A label prints on one line; null passes.</summary>
internal sealed class LabelRule<T>(int longest) : PropertyValidator<T, string?>, IStatesLength
{
    public override string Name => "Label";

    public int Longest { get; } = longest;

    public override bool IsValid(ValidationContext<T> context, string? value) => value is null || Labels.Refusal(value, Longest) is null;
}
