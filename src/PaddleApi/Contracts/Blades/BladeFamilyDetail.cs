using Paddle.Design;
using Paddle.Design.Outline;

namespace PaddleApi.Contracts.Blades;

/// <summary>The blade families that can be drawn.</summary>
/// <param name="EngineVersion">Version of the engine the figures belong to.</param>
/// <param name="BladeFamilies">The families, sorted by id.</param>
internal sealed record BladeFamilyList(string EngineVersion, IReadOnlyList<BladeFamilySummary> BladeFamilies);

/// <summary>A blade family in the list.</summary>
/// <param name="Id">Its id, as <c>blade.family</c> of a design names it.</param>
/// <param name="Name">Its name in the trade.</param>
/// <param name="Water">What water and use it is for.</param>
/// <param name="Defaults">Its sizes when a design gives none.</param>
/// <param name="Href">Address of everything known about it.</param>
internal sealed record BladeFamilySummary(string Id, string Name, string Water, BladeDefaults Defaults, string Href);

/// <summary>Everything known about one blade family.</summary>
/// <param name="EngineVersion">Version of the engine the figures belong to.</param>
/// <param name="Id">Its id, as <c>blade.family</c> of a design names it.</param>
/// <param name="Name">Its name in the trade.</param>
/// <param name="Water">What water and use it is for.</param>
/// <param name="Tail">How the part below the widest point is drawn.</param>
/// <param name="Defaults">Its sizes when a design gives none.</param>
/// <param name="Usual">Sizes usual in the trade.</param>
/// <param name="Limits">What the family's curve can carry; a design outside it is refused.</param>
/// <param name="Source">Where the sizes come from.</param>
internal sealed record BladeFamilyDetail(
    string EngineVersion,
    string Id,
    string Name,
    string Water,
    TailKind Tail,
    BladeDefaults Defaults,
    BladeUsualSizes Usual,
    BladeCurveLimits Limits,
    string Source);

/// <summary>Sizes of a family when a design gives none.</summary>
/// <param name="LengthMm">Blade length from throat to tip, mm.</param>
/// <param name="WidthMm">Full width at the widest point, mm.</param>
/// <param name="WidestAt">Place of the widest point as a fraction of the blade from the throat.</param>
/// <param name="Fullness">Area below the widest point, over that part's length times the full width.</param>
internal sealed record BladeDefaults(double LengthMm, double WidthMm, double WidestAt, double Fullness);

/// <summary>Sizes of a family usual in the trade.</summary>
/// <param name="LengthMm">Blade lengths, mm.</param>
/// <param name="WidthMm">Full widths, mm.</param>
internal sealed record BladeUsualSizes(ValueRange LengthMm, ValueRange WidthMm);

/// <summary>What a family's curve can carry.</summary>
/// <param name="WidestAt">Places of the widest point as a fraction of the blade from the throat.</param>
/// <param name="Fullness">Areas below the widest point, over that part's length times the full width.</param>
internal sealed record BladeCurveLimits(ValueRange WidestAt, ValueRange Fullness);
