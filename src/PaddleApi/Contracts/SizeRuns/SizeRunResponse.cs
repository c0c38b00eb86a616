using Paddle.Design.Fitting;

namespace PaddleApi.Contracts.SizeRuns;

/// <summary>The few sizes that fit a fleet's customers best.</summary>
internal sealed record SizeRunResponse : SizeRunAdvice
{
    /// <summary>The answer.</summary>
    /// <param name="advice">The advice.</param>
    public SizeRunResponse(SizeRunAdvice advice)
        : base(advice)
    {
    }

    /// <summary>Version of the engine that answered.</summary>
    public string EngineVersion { get; init; } = Contracts.EngineVersion.Text;
}
