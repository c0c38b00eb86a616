using System.Globalization;
using System.Text.Json;
using PaddleApi.Contracts.Checks;
using PaddleApi.Contracts.Numbers;
using PaddleApi.Validation;

namespace PaddleApi.Endpoints.Checks;

/// <summary>Holds single values of a report against what was expected of them.</summary>
internal static class Expectation
{
    /// <summary>Looks one up.</summary>
    /// <param name="report">The report, as it is served.</param>
    public static CheckedExpectation Check(ExpectationRequest expected, JsonElement report)
    {
        var place = expected.Pointer!;
        if (JsonPointers.Find(report, place) is not { } value) return new(place, null, false, "The report has nothing there.");
        if (value.ValueKind is JsonValueKind.Object or JsonValueKind.Array)
            return new(place, null, false, $"The report has {(value.ValueKind == JsonValueKind.Array ? "a list" : "an object")} there: name a value in it.");

        string[] misses = [.. Misses(expected, value)];
        var unit = UnitNames.Of(place[(place.LastIndexOf('/') + 1)..]) is { } name ? $" {name}" : "";
        var shown = value.ValueKind == JsonValueKind.Number ? value.GetRawText() + unit : value.GetRawText();
        return new(place, value, misses.Length == 0, misses.Length == 0 ? $"{shown}, as expected." : $"{shown} is {string.Join(", and ", misses)}{unit}.");
    }

    private static IEnumerable<string> Misses(ExpectationRequest expected, JsonElement value)
    {
        if (expected.Least is not null || expected.Most is not null)
        {
            if (value.ValueKind != JsonValueKind.Number) yield return "no number";
            else if (value.GetDouble() < expected.Least) yield return $"less than the least, {Text(expected.Least.Value)}";
            else if (value.GetDouble() > expected.Most) yield return $"more than the most, {Text(expected.Most.Value)}";
        }

        if (expected.EqualTo is not { } equal || Agree(value, equal, expected.Within ?? 0)) yield break;
        yield return expected.Within is { } within ? $"not {equal.GetRawText()} within {Text(within)}" : $"not {equal.GetRawText()}";
    }

    private static bool Agree(JsonElement value, JsonElement expected, double within) => (value.ValueKind, expected.ValueKind) switch
    {
        (JsonValueKind.Number, JsonValueKind.Number) => IsNear(value, expected, within),
        (JsonValueKind.String, JsonValueKind.String) => value.GetString() == expected.GetString(),
        var (kind, other) => kind == other,
    };

    /// <summary>Whether two numbers lie no further apart than they may, as they are written: 0.3 is within 0.1 of 0.2.</summary>
    public static bool IsNear(JsonElement value, JsonElement expected, double within)
    {
        // Decimals subtract as they are written, where doubles are off in the last digit.
        if (value.TryGetDecimal(out var left) && expected.TryGetDecimal(out var right) && within < (double)decimal.MaxValue / 2)
            return Math.Abs(left - right) <= (decimal)within;
        return Math.Abs(value.GetDouble() - expected.GetDouble()) <= within;
    }

    private static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
