namespace Paddle.Design.Fitting;

/// <summary>Why an input is refused, in words that let the caller put it right.</summary>
/// <param name="JsonPointer">JSON Pointer to the input, such as <c>/paddler/armSpanMm</c>.</param>
/// <param name="Message">What is wrong and why, in plain words.</param>
/// <param name="Value">The value given, if there was one.</param>
/// <param name="Low">Lowest value accepted, if a range was broken.</param>
/// <param name="High">Highest value accepted, if a range was broken.</param>
/// <param name="Unit">Unit of the three figures.</param>
/// <param name="MeasureInstead">Names of the measurements that would answer (see the measurement catalogue).</param>
public sealed record InputRefusal(
    string JsonPointer,
    string Message,
    double? Value = null,
    double? Low = null,
    double? High = null,
    string? Unit = null,
    IReadOnlyList<string>? MeasureInstead = null)
{
    /// <summary>A value outside its range.</summary>
    /// <param name="jsonPointer">JSON Pointer to the input.</param>
    /// <param name="value">Value given.</param>
    /// <param name="low">Lowest accepted.</param>
    /// <param name="high">Highest accepted.</param>
    /// <param name="unit">Unit.</param>
    /// <param name="why">Why the range is what it is.</param>
    /// <returns>The refusal.</returns>
    public static InputRefusal OutOfRange(string jsonPointer, double value, double low, double high, string unit, string why) =>
        new(jsonPointer, FormattableString.Invariant($"{value} {unit} is outside {low} to {high} {unit}: {why}"), value, low, high, unit);

    /// <summary>Check a value against a range; a value that is not a number never passes.</summary>
    /// <param name="jsonPointer">JSON Pointer to the input.</param>
    /// <param name="value">Value given, or null where absent.</param>
    /// <param name="low">Lowest accepted.</param>
    /// <param name="high">Highest accepted.</param>
    /// <param name="unit">Unit.</param>
    /// <param name="why">Why the range is what it is.</param>
    /// <returns>A refusal, or null where the value is absent or passes.</returns>
    public static InputRefusal? Unless(string jsonPointer, double? value, double low, double high, string unit, string why) =>
        value is not { } v || (v >= low && v <= high) ? null : OutOfRange(jsonPointer, v, low, high, unit, why);
}
