using System.Text.Json;
using Paddle.Design.Balance;

namespace PaddleApi.Contracts.TradeOffs;

/// <summary>Every combination designed, and which of them no other beats.</summary>
/// <param name="EngineVersion">Version of the engine that computed it.</param>
/// <param name="Objectives">What is wished, the small ones first; the figures of a design stand in this order.</param>
/// <param name="Unbeaten">How many designs no other beats.</param>
/// <param name="Designs">Every combination, the last input varying fastest.</param>
internal sealed record TradeOffResponse(string EngineVersion, IReadOnlyList<TradeOffObjective> Objectives, int Unbeaten, IReadOnlyList<TradeOffDesign> Designs);

/// <summary>A wish.</summary>
/// <param name="Pointer">JSON Pointer of the figure in a design's report.</param>
/// <param name="Aim"><c>minimise</c> or <c>maximise</c>.</param>
/// <param name="Unit">Unit of the figure; empty for a plain number.</param>
internal sealed record TradeOffObjective(string Pointer, string Aim, string Unit);

/// <summary>One combination.</summary>
/// <param name="Varied">The varied inputs, in the order of the request.</param>
/// <param name="Standing"><c>unbeaten</c>: no other is as good in all and better in one; <c>beaten</c>; <c>closest</c>: it misses an aim and is held
/// against none; <c>refused</c>: no such design can be asked for.</param>
/// <param name="Figures">Its figures as printed in its report; absent of one that is refused.</param>
/// <param name="DesignCode">The design; absent of one that is refused.</param>
/// <param name="BeatenBy">Place in <c>designs</c>, from 0, of an unbeaten one that beats it.</param>
/// <param name="UnmetAims">The aims that it misses.</param>
/// <param name="Refused">Why it is refused.</param>
internal sealed record TradeOffDesign(
    IReadOnlyList<JsonElement> Varied,
    string Standing,
    IReadOnlyList<double>? Figures = null,
    string? DesignCode = null,
    int? BeatenBy = null,
    IReadOnlyList<UnmetAim>? UnmetAims = null,
    IReadOnlyList<TradeOffRefusal>? Refused = null);

/// <summary>Why a combination is refused.</summary>
/// <param name="Pointer">JSON Pointer of the place in the request for a design.</param>
/// <param name="Reason">What is wrong there.</param>
/// <param name="Code">Stable code of the refusal.</param>
internal sealed record TradeOffRefusal(string Pointer, string Reason, string Code);
