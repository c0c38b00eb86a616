using Paddle.Design.Fitting;

namespace PaddleApi.Contracts.Problems;

/// <summary>One fault in a request: what was given, what is allowed, and why.</summary>
/// <param name="Reason">What is wrong and why the limit is there.</param>
/// <param name="Value">The value that was given, when it is a number, a short text or true or false.</param>
/// <param name="Min">Smallest allowed value, in <paramref name="Unit"/>.</param>
/// <param name="Max">Largest allowed value, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit of the values.</param>
/// <param name="Allowed">The names that are allowed here.</param>
/// <param name="MeasureInstead">What to measure instead, or again: ids of <c>/v1/measurements</c>.</param>
/// <param name="Code">Stable code of the refusal, for programs; the words of the reason may change. Where none is given, what the other members say.</param>
internal sealed record Fault(
    string Reason,
    object? Value = null,
    double? Min = null,
    double? Max = null,
    string? Unit = null,
    IReadOnlyList<string>? Allowed = null,
    IReadOnlyList<string>? MeasureInstead = null,
    string? Code = null)
{
    /// <summary>The value that was given. JSON has no way to write a number that is not finite, so none is shown.</summary>
    public object? Value { get; init => field = Shown(value); } = Shown(Value);

    /// <summary>Smallest allowed value; null also where it came out as no finite number.</summary>
    public double? Min { get; init => field = Finite(value); } = Finite(Min);

    /// <summary>Largest allowed value; null also where it came out as no finite number.</summary>
    public double? Max { get; init => field = Finite(value); } = Finite(Max);

    /// <summary>Stable code of the refusal; there always is one.</summary>
    public string Code { get; init; } = Code
        ?? (Allowed is not null ? RefusalCodes.UnknownName : Min is null && Max is null ? RefusalCodes.NotAccepted : RefusalCodes.OutOfRange);

    private static object? Shown(object? value) => value is double number ? Finite(number) : value;

    private static double? Finite(double? number) => number is { } value && double.IsFinite(value) ? value : null;
}
