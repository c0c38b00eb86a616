using FluentValidation;
using FluentValidation.Validators;

namespace PaddleApi.Validation;

/// <summary>A rule whose range can be read, so that the service's description states what the rule enforces.</summary>
internal interface IStatesRange
{
    /// <summary>Smallest allowed value.</summary>
    double Min { get; }

    /// <summary>Largest allowed value.</summary>
    double Max { get; }
}

/// <summary>A rule whose allowed names can be read.</summary>
internal interface IStatesNames
{
    /// <summary>The allowed names.</summary>
    IReadOnlyList<string> Allowed { get; }
}

/// <summary>A number lies in a closed range; null passes.</summary>
internal sealed class RangeRule<T, TNumber>(double min, double max) : PropertyValidator<T, TNumber>, IStatesRange
{
    public override string Name => "Range";

    public double Min { get; } = min;

    public double Max { get; } = max;

    public override bool IsValid(ValidationContext<T> context, TNumber value) =>
        value is null || (Convert.ToDouble(value, null) is var number && number >= Min && number <= Max);
}

/// <summary>States a range that the engine itself enforces, in words of its own; passes everything.</summary>
internal sealed class EngineRangeRule<T, TNumber>(double min, double max) : PropertyValidator<T, TNumber>, IStatesRange
{
    public override string Name => "EngineRange";

    public double Min { get; } = min;

    public double Max { get; } = max;

    public override bool IsValid(ValidationContext<T> context, TNumber value) => true;
}

/// <summary>A text is one of the allowed names, letter by letter; null passes.</summary>
internal sealed class NamesRule<T>(IReadOnlyList<string> allowed) : PropertyValidator<T, string?>, IStatesNames
{
    public override string Name => "Names";

    public IReadOnlyList<string> Allowed { get; } = allowed;

    public override bool IsValid(ValidationContext<T> context, string? value) => value is null || Allowed.Contains(value, StringComparer.Ordinal);
}
