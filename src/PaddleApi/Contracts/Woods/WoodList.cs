using Paddle.Design;
using Paddle.Design.Wood;

namespace PaddleApi.Contracts.Woods;

/// <summary>The woods a paddle can be designed in, and what holds for any of them.</summary>
/// <param name="EngineVersion">Version of the engine the figures belong to.</param>
/// <param name="Woods">The woods, sorted by id.</param>
/// <param name="Limits">Limits on the stick itself.</param>
/// <param name="KnotRule">Where the stick must be clear of knots.</param>
/// <param name="DustCautions">Cautions on the dust of any wood.</param>
/// <param name="RefusedTreatments">Treated or unknown stock that is refused.</param>
/// <param name="RefusedSpecies">Woods that are refused because they are poisonous.</param>
internal sealed record WoodList(
    string EngineVersion,
    IReadOnlyList<WoodSummary> Woods,
    WoodLimits Limits,
    SourcedText KnotRule,
    IReadOnlyList<SourcedText> DustCautions,
    IReadOnlyList<RefusedWood> RefusedTreatments,
    IReadOnlyList<RefusedWood> RefusedSpecies);

/// <summary>Limits on the stick itself.</summary>
/// <param name="MoisturePercent">Moisture a design may state, percent.</param>
/// <param name="MoistureSource">Where the moisture limits come from.</param>
/// <param name="WarnSlopeOfGrain">Grain steeper than this is warned of, rise over run.</param>
/// <param name="RefuseSlopeOfGrain">Grain steeper than this is refused, rise over run.</param>
/// <param name="SlopeOfGrainSource">Where the limits on the grain come from.</param>
internal sealed record WoodLimits(
    ValueRange MoisturePercent, string MoistureSource, double WarnSlopeOfGrain, double RefuseSlopeOfGrain, string SlopeOfGrainSource);
