using System.Text.Json.Serialization;
using Paddle.Design.Request;

namespace Paddle.Design.Copying;

/// <summary>A paddle found from readings.</summary>
/// <param name="InWords">What was found, in sentences.</param>
/// <param name="Fit">How well the paddle explains the readings.</param>
/// <param name="Readings">Every reading beside what the copy would read.</param>
/// <param name="MeasureAgain">Readings that fit no paddle with the others; they do not count.</param>
/// <param name="Sizes">Lengths and sizes found.</param>
/// <param name="Outline">The blade's table of offsets with its errors.</param>
/// <param name="Wood">What it is made of.</param>
/// <param name="Design">The copy as a request that can be sent to <c>/v1/designs</c> as it is.</param>
/// <param name="Figures">What the copy weighs and does.</param>
/// <param name="Variants">The copy with one thing changed.</param>
public record CopyReport(
    IReadOnlyList<string> InWords,
    CopyQuality Fit,
    IReadOnlyList<CopyReading> Readings,
    IReadOnlyList<CopyDoubt> MeasureAgain,
    IReadOnlyList<CopySize> Sizes,
    IReadOnlyList<CopyOffset> Outline,
    CopyWood Wood,
    DesignRequest Design,
    CopyFigures Figures,
    IReadOnlyList<CopyVariant> Variants)
{
    /// <summary>Code of the design.</summary>
    public string? DesignCode { get; init; }
}

/// <summary>How well a paddle explains its readings.</summary>
/// <param name="ChiSquare">Sum of squares of the residuals of the readings that count, each over its standard error.</param>
/// <param name="DegreesOfFreedom">What it should come to: readings that count, less what they had to tell.</param>
/// <param name="ChancePercent">Chance of a sum as large, were every error as stated.</param>
/// <param name="ErrorGrowth">Factor on every standard error where the residuals are larger than stated; 1 where they are not.</param>
/// <param name="Resembles">Family whose blade comes nearest.</param>
/// <param name="GripStyle">Style of the grip.</param>
public sealed record CopyQuality(double ChiSquare, double DegreesOfFreedom, double ChancePercent, double ErrorGrowth, string Resembles, string GripStyle);

/// <summary>A reading beside what the copy would read.</summary>
/// <param name="JsonPointer">Where it stands in the request.</param>
/// <param name="Value">What was read.</param>
/// <param name="Predicted">What the copy in <c>design</c> would read.</param>
/// <param name="Residual">The one less the other.</param>
/// <param name="StandardError">Standard error of the reading, that of its place counted.</param>
/// <param name="Studentised">The residual over its own standard error; null where nothing else tells of it.</param>
/// <param name="Unit">Unit of the values.</param>
/// <param name="Verdict"><c>fits</c>, <c>measure-again</c>, or <c>not-checked</c> where no other reading tells of it.</param>
public sealed record CopyReading(
    [property: JsonPropertyName("pointer")] string JsonPointer, double Value, double Predicted, double Residual, double StandardError, double? Studentised,
    string Unit, string Verdict);

/// <summary>A reading to be taken again.</summary>
/// <param name="JsonPointer">Where it stands in the request.</param>
/// <param name="Value">What was read.</param>
/// <param name="Expected">What the other readings make of it.</param>
/// <param name="ExpectedError">Standard error of that.</param>
/// <param name="Unit">Unit of the values.</param>
/// <param name="Message">The same in a sentence.</param>
public sealed record CopyDoubt([property: JsonPropertyName("pointer")] string JsonPointer, double Value, double Expected, double ExpectedError, string Unit, string Message);

/// <summary>A length or size found.</summary>
/// <param name="Name">Its name in a design's request.</param>
/// <param name="ValueMm">As it stands in the design, mm.</param>
/// <param name="StandardErrorMm">Standard error, mm.</param>
/// <param name="From"><c>readings</c>, or <c>usual</c> where they say little and it is what is usual.</param>
public sealed record CopySize(string Name, double ValueMm, double StandardErrorMm, string From);

/// <summary>A station of the blade's table.</summary>
/// <param name="XMm">Distance from the throat, mm.</param>
/// <param name="HalfBreadthMm">Half-breadth there, mm.</param>
/// <param name="StandardErrorMm">Standard error of the half-breadth, mm.</param>
public sealed record CopyOffset(double XMm, double HalfBreadthMm, double StandardErrorMm);

/// <summary>The wood of a paddle that was read.</summary>
/// <param name="Species">As stated, or else the likeliest.</param>
/// <param name="DensityKgM3">Density, kg/m³.</param>
/// <param name="DensityErrorKgM3">Standard error, kg/m³.</param>
/// <param name="DensityFrom"><c>readings</c>, or <c>book</c> where the paddle was not weighed.</param>
/// <param name="ModulusMPa">True modulus along the grain, MPa, shear taken out: what <c>modulusMPa</c> means in every answer.</param>
/// <param name="ModulusErrorMPa">Standard error, MPa.</param>
/// <param name="ApparentModulusMPa">Apparent modulus, MPa, shear included, as books print it and <c>wood.measuredModulusMPa</c> takes it.</param>
/// <param name="ModulusFrom"><c>readings</c>, or <c>book</c> where it was neither bent nor tapped.</param>
/// <param name="Candidates">Woods it may be, the likeliest first.</param>
public sealed record CopyWood(
    string Species, double DensityKgM3, double DensityErrorKgM3, string DensityFrom, double ModulusMPa, double ModulusErrorMPa, double ApparentModulusMPa, string ModulusFrom,
    IReadOnlyList<LikelyWood> Candidates);

/// <summary>What a paddle weighs and does.</summary>
/// <param name="MassG">Mass finished, g.</param>
/// <param name="BalanceMm">Balance point finished, mm from the top.</param>
/// <param name="BenchFlexMm">Give on the bench under 50 N as a design's answer has it, mm.</param>
/// <param name="LeastFactor">Safety factor of the load case nearest to its least one.</param>
/// <param name="GoverningCase">That case.</param>
public sealed record CopyFigures(double MassG, double BalanceMm, double BenchFlexMm, double LeastFactor, string GoverningCase)
{
    internal static CopyFigures Of(DesignReport report) => new(
        Math.Round(report.Finished.MassG, 1), Math.Round(report.Finished.CentreOfMassMm, 1), Math.Round(report.Flex.BenchFlexMm, 2),
        Math.Round(report.Strength.Governing.SafetyFactor, 2), report.Strength.Governing.Case.Id);
}

/// <summary>The copy with one thing changed.</summary>
/// <param name="Change">What was asked to change.</param>
/// <param name="Name">The same in words.</param>
/// <param name="Design">The request; null where it cannot be made.</param>
/// <param name="Figures">What it weighs and does.</param>
/// <param name="Difference">The same less that of the copy.</param>
/// <param name="InWords">What it costs, or why it cannot be made.</param>
public sealed record CopyVariant(string Change, string Name, DesignRequest? Design, CopyFigures? Figures, CopyDifference? Difference, string InWords)
{
    /// <summary>Code of its design; null where it cannot be made.</summary>
    public string? DesignCode { get; init; }
}

/// <summary>Figures of a variant less those of the copy.</summary>
/// <param name="MassG">Mass, g.</param>
/// <param name="BalanceMm">Balance point, mm; positive towards the tip.</param>
/// <param name="BenchFlexMm">Give on the bench, mm.</param>
/// <param name="LeastFactor">Safety factor.</param>
public sealed record CopyDifference(double MassG, double BalanceMm, double BenchFlexMm, double LeastFactor);
