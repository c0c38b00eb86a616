using System.Text.Json.Serialization;
using Paddle.Design.Fitting;
using Paddle.Design.Request;

namespace Paddle.Design;

/// <summary>The paddle that fits a person, why, and the request that designs it.</summary>
public record FittingReport : FittingAdvice
{
    /// <param name="advice">What the fitting found, every paddle suggested tried.</param>
    internal FittingReport(FittingAdvice advice)
        : base(advice)
    {
        Alternatives = [.. advice.Others.Select(other => new FittingAlternativeDesign(other.Id, other.Reason, other.Design.ToRequest()))];
        Design = advice.Suggested.ToRequest();
    }

    /// <summary>Two other paddles that would do.</summary>
    [JsonPropertyOrder(1)]
    public IReadOnlyList<FittingAlternativeDesign> Alternatives { get; init; }
    /// <summary>A request ready to be sent to <c>/v1/designs</c>.</summary>
    [JsonPropertyOrder(1)]
    public DesignRequest Design { get; init; }
}

/// <summary>Another paddle that would do.</summary>
/// <param name="Id">Name of the alternative, such as <c>shallower-water</c>.</param>
/// <param name="Reason">When to choose it.</param>
/// <param name="Design">A request ready to be sent to <c>/v1/designs</c>.</param>
public sealed record FittingAlternativeDesign(string Id, string Reason, DesignRequest Design);
