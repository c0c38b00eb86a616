namespace PaddleApi.Contracts.Fittings;

/// <summary>How to take every measurement that a fitting asks for.</summary>
/// <param name="EngineVersion">Version of the engine that the ranges belong to.</param>
/// <param name="Measurements">The measurements, in the order a person would take them.</param>
internal sealed record MeasurementList(string EngineVersion, IReadOnlyList<Measurement> Measurements);

/// <summary>How to take one measurement at home.</summary>
/// <param name="Id">Name of the member it belongs in, such as <c>armSpanMm</c>.</param>
/// <param name="Name">Plain name.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Steps">What to do, in order.</param>
/// <param name="TypicalError">Typical error, one standard deviation, in the unit.</param>
/// <param name="Range">Values accepted, in the unit.</param>
/// <param name="RangeReason">Why values outside are refused.</param>
/// <param name="UsedFor">What the measurement decides.</param>
/// <param name="Source">Source of the method and of its error.</param>
internal sealed record Measurement(
    string Id,
    string Name,
    string Unit,
    IReadOnlyList<string> Steps,
    double TypicalError,
    ValueRange Range,
    string RangeReason,
    string UsedFor,
    string Source);
