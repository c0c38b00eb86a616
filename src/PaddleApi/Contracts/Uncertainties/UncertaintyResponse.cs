using Paddle.Design.Uncertainty;

namespace PaddleApi.Contracts.Uncertainties;

/// <summary>How a design comes out over many paddles made to it.</summary>
internal sealed record UncertaintyResponse : UncertaintyReport
{
    /// <summary>The answer.</summary>
    /// <param name="report">What the study says.</param>
    public UncertaintyResponse(UncertaintyReport report)
        : base(report)
    {
    }

    /// <summary>Version of the engine that computed it.</summary>
    public string EngineVersion { get; init; } = Contracts.EngineVersion.Text;
    /// <summary>The design whose sizes were made again and again.</summary>
    public required string DesignCode { get; init; }
}
