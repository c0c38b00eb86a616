using System.Text.Json;
using PaddleApi.Contracts.Checks;
using PaddleApi.Contracts.Numbers;
using PaddleApi.Validation;

namespace PaddleApi.Endpoints.Checks;

/// <summary>Holds a report against one that was approved: every number and every truth in that must come out again, as near as its unit asks.</summary>
internal sealed class Approval
{
    private const int MostListed = 100;

    private readonly Dictionary<string, double?> tolerances;
    private readonly double ratio, share;
    private readonly List<MovedFigure> figures = [];
    private int compared, moved;

    private Approval(ToleranceRequest? allowed)
    {
        (ratio, share) = (allowed?.Ratio ?? 0, allowed?.Share ?? 0);
        tolerances = new(StringComparer.Ordinal)
        {
            ["mm"] = allowed?.Mm,
            ["cm²"] = allowed?.Cm2,
            ["cm³"] = allowed?.Cm3,
            ["g"] = allowed?.G,
            ["kg/m³"] = allowed?.KgM3,
            ["kg·m²"] = allowed?.KgM2,
            ["N"] = allowed?.N,
            ["N·m"] = allowed?.Nm,
            ["MPa"] = allowed?.MPa,
            ["Hz"] = allowed?.Hz,
            ["m/s"] = allowed?.MPerS,
            ["J"] = allowed?.J,
            ["%"] = allowed?.Percent,
            ["°"] = allowed?.Degrees,
        };
    }

    /// <summary>Compares.</summary>
    /// <param name="allowed">How far figures may move; null for not at all.</param>
    public static CheckedApproval Check(JsonElement approved, JsonElement report, ToleranceRequest? allowed)
    {
        var approval = new Approval(allowed);
        approval.Visit(approved, report, "", null);
        return new(approval.compared, approval.moved, approval.figures);
    }

    private void Visit(JsonElement approved, JsonElement? value, string place, string? unit)
    {
        switch (approved.ValueKind)
        {
            case JsonValueKind.Object:
                // Figures of checks and aims are called value and limit, and their unit stands beside them.
                var beside = approved.TryGetProperty("unit", out var named) && named.ValueKind == JsonValueKind.String ? named.GetString() : null;
                foreach (var member in approved.EnumerateObject())
                {
                    var found = value is { ValueKind: JsonValueKind.Object } own && own.TryGetProperty(member.Name, out var there) ? there : (JsonElement?)null;
                    Visit(member.Value, found, JsonPointers.Append(place, member.Name), UnitNames.Of(member.Name) ?? beside);
                }

                break;
            case JsonValueKind.Array:
                for (var k = 0; k < approved.GetArrayLength(); k++)
                {
                    var found = value is { ValueKind: JsonValueKind.Array } list && k < list.GetArrayLength() ? list[k] : (JsonElement?)null;
                    Visit(approved[k], found, JsonPointers.Append(place, k), unit);
                }

                break;
            case JsonValueKind.Number:
                var tolerance = Math.Max(unit is null ? ratio : tolerances.GetValueOrDefault(unit) ?? 0, share * Math.Abs(approved.GetDouble()));
                Note(place, approved, value, value is { ValueKind: JsonValueKind.Number } number && Expectation.IsNear(number, approved, tolerance), tolerance, unit);
                break;
            case JsonValueKind.True or JsonValueKind.False:
                Note(place, approved, value, value?.ValueKind == approved.ValueKind, null, null);
                break;
        }
    }

    private void Note(string place, JsonElement approved, JsonElement? value, bool isNear, double? tolerance, string? unit)
    {
        compared++;
        if (isNear) return;
        moved++;
        var isPlain = value is { ValueKind: not (JsonValueKind.Object or JsonValueKind.Array) };
        if (figures.Count < MostListed) figures.Add(new(place, approved, isPlain ? value : null, tolerance, unit));
    }
}
