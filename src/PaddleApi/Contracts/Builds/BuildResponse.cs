using Paddle.Design.Balance;
using Paddle.Design.Build;
using Paddle.Design.Finishing;
using Paddle.Design.Layout;

namespace PaddleApi.Contracts.Builds;

/// <summary>From board to finished paddle: what to mark, what to measure and when to stop.</summary>
/// <param name="EngineVersion">Version of the engine that computed it.</param>
/// <param name="DesignCode">Code of the design.</param>
/// <param name="Links">Where to fetch sheet and design again.</param>
/// <param name="Label">Name of the design, if it has one.</param>
/// <param name="Outcome"><c>met</c>, or <c>closest</c> when the design misses an aim.</param>
/// <param name="UnmetAims">The aims missed, the gravest first, with what to do; a code that begins with <c>strength.</c> means: do not build it so.</param>
/// <param name="Blank">The board.</param>
/// <param name="Stages">Every stage in the order of the work.</param>
/// <param name="ShaftLines">Eight- and sixteen-side lines at the shaft's stations.</param>
/// <param name="Gauge">A spar gauge for them.</param>
/// <param name="RoundOvers">Round-over bits that may be used instead, largest first.</param>
/// <param name="Kerf">The saw kerf across the grip that says how deep to pare.</param>
/// <param name="Sanding">Sanding by zone.</param>
/// <param name="Finish">The design's finish, with quantities and days.</param>
/// <param name="WithFinish">Mass and balance with it on; the last stage, <c>finished</c>, has the same with their bands.</param>
/// <param name="Tip">A reinforced tip of usual cloth, chosen or offered.</param>
/// <param name="InService">The paddle at the moisture it is used at; only where the query states it.</param>
/// <param name="OnBoard">Where the paddle lies on the maker's own board, as often as that holds it; only where the query states the board.</param>
/// <param name="Assumptions">What the figures rest on, with sources.</param>
/// <param name="GlueUp">What comes before the first stage where it is glued up of strips; absent of one piece.</param>
internal sealed record BuildResponse(
    string EngineVersion,
    string DesignCode,
    BuildLinks Links,
    string? Label,
    string Outcome,
    IReadOnlyList<UnmetAim> UnmetAims,
    Blank Blank,
    IReadOnlyList<StageSheet> Stages,
    IReadOnlyList<ShaftLine> ShaftLines,
    SparGauge Gauge,
    IReadOnlyList<RoundOverChoice> RoundOvers,
    GripKerf Kerf,
    IReadOnlyList<SandingStep> Sanding,
    FinishPlan Finish,
    Laden WithFinish,
    TipReinforcement Tip,
    MoistureInService? InService,
    BoardLayout? OnBoard,
    IReadOnlyList<string> Assumptions,
    IReadOnlyList<string>? GlueUp)
{
    /// <summary>The answer.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="label">Name of the design, if it has one.</param>
    /// <param name="designCode">Code of the design.</param>
    /// <param name="links">Where to fetch it again.</param>
    /// <param name="inService">The paddle in use, or null where it is not asked.</param>
    /// <param name="onBoard">The paddle on the maker's own board, or null where it is not asked.</param>
    public static BuildResponse Of(BuildSheet sheet, string? label, string designCode, BuildLinks links, MoistureInService? inService, BoardLayout? onBoard) => new(
        Contracts.EngineVersion.Text, designCode, links, label, sheet.Outcome.Word, sheet.Outcome.Unmet, sheet.Blank, sheet.Stages, sheet.ShaftLines, sheet.Gauge, sheet.RoundOvers,
        sheet.Kerf, sheet.Sanding, sheet.Finish, sheet.WithFinish, sheet.Tip, inService, onBoard, sheet.Assumptions, sheet.GlueUp.Count > 0 ? sheet.GlueUp : null);
}

/// <summary>Where to fetch a build sheet again.</summary>
/// <param name="Self">This answer.</param>
/// <param name="Sheet">The same to print.</param>
/// <param name="SheetPdf">That as a PDF, six pages at most.</param>
/// <param name="Design">The design.</param>
internal sealed record BuildLinks(string Self, string Sheet, string SheetPdf, string Design);
