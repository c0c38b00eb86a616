using Paddle.Design.Balance;
using Paddle.Design.Comparison;
using Paddle.Design.Request;

namespace PaddleApi.Contracts.Comparisons;

/// <summary>Designs to be set side by side.</summary>
internal sealed record ComparisonRequest
{
    /// <summary>Name of the comparison, up to 80 printable characters.</summary>
    public string? Label { get; init; }

    /// <summary>The designs; required, 2 to 12. The others are told beside the first.</summary>
    public IReadOnlyList<ComparedDesignRequest>? Designs { get; init; }
}

/// <summary>A design to be set beside others.</summary>
internal sealed record ComparedDesignRequest : IGivesDesign
{
    /// <summary>The caller's name of it, each once; its own label, or else A, B, C by its place, when null.</summary>
    public string? Id { get; init; }

    /// <summary>Code of a design that was made before.</summary>
    public string? DesignCode { get; init; }

    /// <summary>A design to be made.</summary>
    public DesignRequest? Design { get; init; }
}

/// <summary>Designs side by side.</summary>
/// <param name="EngineVersion">Version of the engine that computed it.</param>
/// <param name="Links">Where to fetch it again.</param>
/// <param name="Designs">The designs.</param>
/// <param name="Figures">Every figure, with the best and the worst.</param>
/// <param name="Differences">Every design but the first, beside the first, in the units of the first design's drawings.</param>
internal sealed record ComparisonResponse(
    string EngineVersion,
    ComparisonLinks Links,
    IReadOnlyList<ComparedDesign> Designs,
    IReadOnlyList<ComparedFigure> Figures,
    IReadOnlyList<DesignDifference> Differences);

/// <summary>Where to fetch a comparison again. There the designs are called by their labels, or else A, B, C by their places.</summary>
/// <param name="Self">This answer.</param>
/// <param name="Drawing">Outlines and thicknesses laid over one another, fit for an img tag.</param>
internal sealed record ComparisonLinks(string Self, string Drawing);

/// <summary>A design among others.</summary>
/// <param name="Id">The caller's name of it, or what stands for one.</param>
/// <param name="Label">Its own name, if it has one.</param>
/// <param name="DesignCode">Its code.</param>
/// <param name="Outcome"><c>met</c>, or <c>closest</c> when an aim is missed.</param>
/// <param name="UnmetAims">The aims missed, the gravest first.</param>
/// <param name="Warnings">Names of its checks that warn or fail.</param>
internal sealed record ComparedDesign(
    string Id, string? Label, string DesignCode, string Outcome, IReadOnlyList<UnmetAim> UnmetAims, IReadOnlyList<string> Warnings);
