namespace PaddleApi.Contracts.Health;

/// <summary>State of the service.</summary>
/// <param name="Status"><c>live</c> when it runs, <c>ready</c> when it can take designs.</param>
/// <param name="EngineVersion">Version of the engine that computes the answers.</param>
internal sealed record HealthState(string Status, string EngineVersion);
