using System.Text.Json;

namespace PaddleApi.Contracts.Checks;

/// <summary>How a catalogue of designs came out.</summary>
/// <param name="EngineVersion">Version of the engine that computed it; what moved between two versions is in the changelog.</param>
/// <param name="Passed">Designs that say all they must.</param>
/// <param name="Failed">Designs that do not.</param>
/// <param name="Cases">Every design, in the order of the request.</param>
internal sealed record DesignCheckResponse(string EngineVersion, int Passed, int Failed, IReadOnlyList<CheckedDesign> Cases);

/// <summary>How one design came out.</summary>
/// <param name="Id">The caller's name of it.</param>
/// <param name="Passed">Whether everything is as expected.</param>
/// <param name="DesignCode">Code of the design, to look at it.</param>
/// <param name="Expectations">Each figure that was expected.</param>
/// <param name="Approval">Beside the approved report; absent where none was given.</param>
internal sealed record CheckedDesign(
    string Id, bool Passed, string DesignCode, IReadOnlyList<CheckedExpectation> Expectations, CheckedApproval? Approval);

/// <summary>How one expectation came out.</summary>
/// <param name="Pointer">JSON Pointer of the value.</param>
/// <param name="Value">The value; absent where the report has none there, or one that is no number, text, or true or false.</param>
/// <param name="Passed">Whether it is as expected.</param>
/// <param name="Message">The value against what was expected, in words.</param>
internal sealed record CheckedExpectation(string Pointer, JsonElement? Value, bool Passed, string Message);

/// <summary>How a report came out beside the approved one.</summary>
/// <param name="Compared">Numbers and truths compared.</param>
/// <param name="Moved">Those that moved further than they may.</param>
/// <param name="Figures">The first hundred of them.</param>
internal sealed record CheckedApproval(int Compared, int Moved, IReadOnlyList<MovedFigure> Figures);

/// <summary>A figure that moved.</summary>
/// <param name="Pointer">JSON Pointer of it.</param>
/// <param name="Approved">What was approved.</param>
/// <param name="Value">What it is now; absent where there is none.</param>
/// <param name="Tolerance">How far it may move; absent for true or false.</param>
/// <param name="Unit">Unit of the three; absent for none.</param>
internal sealed record MovedFigure(string Pointer, JsonElement Approved, JsonElement? Value, double? Tolerance, string? Unit);
