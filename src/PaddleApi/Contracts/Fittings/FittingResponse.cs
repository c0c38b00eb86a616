using Paddle.Design;

namespace PaddleApi.Contracts.Fittings;

/// <summary>The paddle that fits a person, why, and the request that designs it.</summary>
internal sealed record FittingResponse : FittingReport
{
    /// <summary>The answer.</summary>
    /// <param name="report">What the engine says.</param>
    public FittingResponse(FittingReport report)
        : base(report)
    {
    }

    /// <summary>Version of the engine that answered.</summary>
    public string EngineVersion { get; init; } = Contracts.EngineVersion.Text;
}
