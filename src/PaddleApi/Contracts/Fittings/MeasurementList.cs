using Paddle.Design.Fitting;

namespace PaddleApi.Contracts.Fittings;

/// <summary>How to take every measurement that a fitting asks for.</summary>
/// <param name="EngineVersion">Version of the engine that the ranges belong to.</param>
/// <param name="Measurements">The measurements, in the order a person would take them.</param>
internal sealed record MeasurementList(string EngineVersion, IReadOnlyList<Measurement> Measurements);
