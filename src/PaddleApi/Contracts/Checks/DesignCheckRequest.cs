using System.Text.Json;
using System.Text.Json.Serialization;
using Paddle.Design;
using Paddle.Design.Request;

namespace PaddleApi.Contracts.Checks;

/// <summary>A catalogue of designs, each with what its report must say.</summary>
internal sealed record DesignCheckRequest
{
    /// <summary>Name of the catalogue, up to 80 printable characters.</summary>
    public string? Label { get; init; }

    /// <summary>The designs; required, 1 to 200.</summary>
    public IReadOnlyList<CheckedDesignRequest>? Cases { get; init; }

    /// <summary>How far figures may lie from those of approved reports, in every case; nothing when null.</summary>
    public ToleranceRequest? Tolerances { get; init; }
}

/// <summary>A design with what its report must say.</summary>
internal sealed record CheckedDesignRequest : IGivesDesign
{
    /// <summary>The caller's name of it; required, each once.</summary>
    public string? Id { get; init; }

    /// <summary>Code of a design that was made before.</summary>
    public string? DesignCode { get; init; }

    /// <summary>A design to be made.</summary>
    public DesignRequest? Design { get; init; }

    /// <summary>What single figures must be; up to 100.</summary>
    public IReadOnlyList<ExpectationRequest>? Expect { get; init; }

    /// <summary>
    /// A report that was approved, whole or in part, as <c>/v1/designs</c> answered it: each number and each true or false in it must come out
    /// again. Words are not compared, for they are improved from version to version; hold a word with <c>expect</c>.
    /// </summary>
    public JsonElement? Approved { get; init; }
}

/// <summary>What one value of a report must be.</summary>
internal sealed record ExpectationRequest
{
    /// <summary>JSON Pointer (RFC 6901) of the value in the answer of <c>/v1/designs</c>; required.</summary>
    public string? Pointer { get; init; }

    /// <summary>The least it may be.</summary>
    public double? Least { get; init; }

    /// <summary>The most it may be.</summary>
    public double? Most { get; init; }

    /// <summary>What it must be: a number, a text, or true or false.</summary>
    [JsonPropertyName("equals")]
    public JsonElement? EqualTo { get; init; }

    /// <summary>How far it may lie from the number in <c>equals</c>, either way; nothing when null.</summary>
    [Bound(0, 1e12, "", "A distance", Source = null)]
    public double? Within { get; init; }
}

/// <summary>How far a figure may lie from the approved one, by the unit that its name ends in. What is left out is nothing.</summary>
internal sealed record ToleranceRequest
{
    private const double Most = 1e6;
    private const string Why = "A distance between two figures";

    /// <summary>Lengths, mm.</summary>
    [Bound(0, Most, "mm", Why, Source = null)]
    public double? Mm { get; init; }

    /// <summary>Areas, cm².</summary>
    [Bound(0, Most, "cm²", Why, Source = null)]
    public double? Cm2 { get; init; }

    /// <summary>Volumes, cm³.</summary>
    [Bound(0, Most, "cm³", Why, Source = null)]
    public double? Cm3 { get; init; }

    /// <summary>Masses, g.</summary>
    [Bound(0, Most, "g", Why, Source = null)]
    public double? G { get; init; }

    /// <summary>Densities, kg/m³.</summary>
    [Bound(0, Most, "kg/m³", Why, Source = null)]
    public double? KgM3 { get; init; }

    /// <summary>Moments of inertia, kg·m².</summary>
    [Bound(0, Most, "kg·m²", Why, Source = null)]
    public double? KgM2 { get; init; }

    /// <summary>Forces, N.</summary>
    [Bound(0, Most, "N", Why, Source = null)]
    public double? N { get; init; }

    /// <summary>Moments, N·m.</summary>
    [Bound(0, Most, "N·m", Why, Source = null)]
    public double? Nm { get; init; }

    /// <summary>Stresses, strengths and moduli, MPa.</summary>
    [Bound(0, Most, "MPa", Why, Source = null)]
    public double? MPa { get; init; }

    /// <summary>Frequencies, Hz.</summary>
    [Bound(0, Most, "Hz", Why, Source = null)]
    public double? Hz { get; init; }

    /// <summary>Speeds, m/s.</summary>
    [Bound(0, Most, "m/s", Why, Source = null)]
    public double? MPerS { get; init; }

    /// <summary>Energies, J.</summary>
    [Bound(0, Most, "J", Why, Source = null)]
    public double? J { get; init; }

    /// <summary>Percentages, in points.</summary>
    [Bound(0, Most, "%", Why, Source = null)]
    public double? Percent { get; init; }

    /// <summary>Angles, degrees.</summary>
    [Bound(0, Most, "°", Why, Source = null)]
    public double? Degrees { get; init; }

    /// <summary>Numbers without a unit: factors, coefficients, ratios.</summary>
    [Bound(0, Most, "", Why, Source = null)]
    public double? Ratio { get; init; }

    /// <summary>A share of the approved figure, whatever its unit: 0.01 is one percent. The wider of the two holds.</summary>
    [Bound(0, 1, "", "A share of the approved figure: 0.01 is one percent", Source = null)]
    public double? Share { get; init; }
}
