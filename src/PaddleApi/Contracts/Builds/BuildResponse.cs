using System.Text.Json.Serialization;
using Paddle.Design.Balance;
using Paddle.Design.Build;
using Paddle.Design.Layout;

namespace PaddleApi.Contracts.Builds;

/// <summary>From board to finished paddle: what to mark, what to measure and when to stop.</summary>
internal sealed record BuildResponse : BuildSheet
{
    /// <summary>The answer that shows a sheet.</summary>
    public BuildResponse(BuildSheet sheet)
        : base(sheet)
    {
    }

    /// <summary>Version of the engine that computed it.</summary>
    public string EngineVersion { get; } = Contracts.EngineVersion.Text;
    /// <summary>Code of the design.</summary>
    public required string DesignCode { get; init; }
    /// <summary>Where to fetch sheet and design again.</summary>
    public required BuildLinks Links { get; init; }
    /// <summary>Name of the design, if it has one.</summary>
    public string? Label { get; init; }
    /// <summary><c>met</c>, or <c>closest</c> when the design misses an aim.</summary>
    [JsonPropertyName("outcome")]
    public string OutcomeWord => Outcome.Word;
    /// <summary>The aims missed, the gravest first, with what to do; a code that begins with <c>strength.</c> means: do not build it so.</summary>
    public IReadOnlyList<UnmetAim> UnmetAims => Outcome.Unmet;
    /// <summary>The paddle at the moisture it is used at; only where the query states it.</summary>
    public MoistureInService? InService { get; init; }
    /// <summary>Where the paddle lies on the maker's own board, as often as that holds it; only where the query states the board.</summary>
    public BoardLayout? OnBoard { get; init; }
    /// <summary>What comes before the first stage where it is glued up of strips; absent of one piece.</summary>
    [JsonPropertyName("glueUp")]
    public IReadOnlyList<string>? GlueUpFirst => GlueUp.Count > 0 ? GlueUp : null;
}

/// <summary>Where to fetch a build sheet again.</summary>
/// <param name="Self">This answer.</param>
/// <param name="Sheet">The same to print.</param>
/// <param name="SheetPdf">That as a PDF, six pages at most.</param>
/// <param name="Design">The design.</param>
internal sealed record BuildLinks(string Self, string Sheet, string SheetPdf, string Design);
