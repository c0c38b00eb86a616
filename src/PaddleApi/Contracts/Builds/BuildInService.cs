using System.Text.Json.Serialization;
using PaddleApi.Contracts.Numbers;

namespace PaddleApi.Contracts.Builds;

/// <summary>The paddle, shaped to size at the moisture of the design's wood, at the moisture it is used at. Theory M16.</summary>
/// <param name="BuiltMoisturePercent">Moisture of the design's wood, at which it is shaped, percent of ovendry mass.</param>
/// <param name="MoisturePercent">Moisture in use, as stated or as wood comes to in the stated climate, percent of ovendry mass.</param>
/// <param name="Sizes">What shrinks or swells and by how much (Wood Handbook equation 13-2 and table 4-3).</param>
/// <param name="BareWood">Mass and balance of the bare wood in use; the shift is from the paddle as designed.</param>
/// <param name="Notes">What it means.</param>
internal sealed record BuildInService(
    [property: JsonConverter(typeof(Hundredths))] double BuiltMoisturePercent,
    [property: JsonConverter(typeof(Hundredths))] double MoisturePercent,
    IReadOnlyList<BuildSizeChange> Sizes,
    BuildLaden BareWood,
    IReadOnlyList<string> Notes);

/// <summary>How one size changes between shop and water, for both ways that the growth rings can lie.</summary>
/// <param name="Id">Which size.</param>
/// <param name="BuiltMm">As built, mm.</param>
/// <param name="FlatSawnChangeMm">Change if the rings lie along the face, mm; negative when it shrinks.</param>
/// <param name="QuarterSawnChangeMm">Change if the rings stand square to the face, mm; negative when it shrinks.</param>
internal sealed record BuildSizeChange(
    string Id,
    [property: JsonConverter(typeof(Hundredths))] double BuiltMm,
    [property: JsonConverter(typeof(Hundredths))] double FlatSawnChangeMm,
    [property: JsonConverter(typeof(Hundredths))] double QuarterSawnChangeMm);
