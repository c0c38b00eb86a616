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

/// <summary>A rule whose number of items can be read.</summary>
internal interface IStatesCount
{
    /// <summary>Fewest items.</summary>
    int Fewest { get; }

    /// <summary>Most items.</summary>
    int Most { get; }
}

/// <summary>A rule whose longest text can be read.</summary>
internal interface IStatesLength
{
    /// <summary>Most characters: code points, as JSON Schema counts them.</summary>
    int Longest { get; }
}

/// <summary>A rule whose pattern of letters can be read.</summary>
internal interface IStatesPattern
{
    /// <summary>A regular expression of ECMA-262, as JSON Schema takes it.</summary>
    string Pattern { get; }
}

/// <summary>A rule that says that a member may not be left out.</summary>
internal interface IStatesRequired;

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

/// <summary>States names that a rule between members enforces, in words of its own; passes everything.</summary>
internal sealed class StatedNamesRule<T>(IReadOnlyList<string> allowed) : PropertyValidator<T, string?>, IStatesNames
{
    public override string Name => "StatedNames";

    public IReadOnlyList<string> Allowed { get; } = allowed;

    public override bool IsValid(ValidationContext<T> context, string? value) => true;
}

/// <summary>States the letters of a text that its reader enforces; passes everything.</summary>
internal sealed class StatedTextRule<T>(string pattern, int longest) : PropertyValidator<T, string?>, IStatesPattern, IStatesLength
{
    public override string Name => "StatedText";

    public string Pattern { get; } = pattern;

    public int Longest { get; } = longest;

    public override bool IsValid(ValidationContext<T> context, string? value) => true;
}

/// <summary>States that a member is required where a rule between members enforces it; passes everything.</summary>
internal sealed class StatedRequiredRule<T, TMember> : PropertyValidator<T, TMember>, IStatesRequired
{
    public override string Name => "StatedRequired";

    public override bool IsValid(ValidationContext<T> context, TMember value) => true;
}

/// <summary>A list has so many items; null passes. Where something else enforces it, this only states it.</summary>
internal sealed class CountRule<T, TItem>(int fewest, int most, bool isEnforced) : PropertyValidator<T, IReadOnlyList<TItem>?>, IStatesCount
{
    public override string Name => "Count";

    public int Fewest { get; } = fewest;

    public int Most { get; } = most;

    public override bool IsValid(ValidationContext<T> context, IReadOnlyList<TItem>? value) =>
        !isEnforced || value is null || (value.Count >= Fewest && value.Count <= Most);
}
