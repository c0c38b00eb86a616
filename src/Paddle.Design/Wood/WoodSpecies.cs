using System.Collections.Frozen;
using Paddle.Design.Wood.Species;

namespace Paddle.Design.Wood;

/// <summary>One wood species as the books print it: means of small clear straight-grained specimens. They are neither design values nor the
/// properties of one board. Strengths and moduli are at 12 % moisture or green as each name says. Every figure's source is in <see
/// cref="Sources"/>.</summary>
internal sealed record WoodSpecies
{
    /// <summary>Identifier in requests: lower-case words joined by hyphens, such as <c>white-ash</c>.</summary>
    public required string Id { get; init; }
    public required string CommonName { get; init; }
    public required string BotanicalName { get; init; }
    /// <summary>True for a conifer.</summary>
    public required bool IsSoftwood { get; init; }
    /// <summary>G12: ovendry mass over volume at 12 % moisture, relative to water.</summary>
    public required double SpecificGravity12 { get; init; }
    /// <summary>Gb: ovendry mass over green volume, relative to water; null where none is published.</summary>
    public required double? SpecificGravityGreen { get; init; }
    /// <summary>Apparent modulus of elasticity at 12 %, MPa: centre load, span 14 times the depth, shear sag included.</summary>
    public required double ModulusOfElasticity12MPa { get; init; }
    /// <summary>Apparent modulus of elasticity, green, MPa; null where none is published.</summary>
    public required double? ModulusOfElasticityGreenMPa { get; init; }
    /// <summary>Modulus of rupture (bending strength) at 12 %, MPa.</summary>
    public required double ModulusOfRupture12MPa { get; init; }
    /// <summary>Modulus of rupture, green, MPa; null where none is published.</summary>
    public required double? ModulusOfRuptureGreenMPa { get; init; }
    /// <summary>Compression strength parallel to the grain at 12 %, MPa.</summary>
    public required double CompressionParallel12MPa { get; init; }
    /// <summary>Compression strength parallel to the grain, green, MPa; null where none is published.</summary>
    public required double? CompressionParallelGreenMPa { get; init; }
    /// <summary>Shear strength parallel to the grain at 12 %, MPa; null where none is published.</summary>
    public required double? ShearParallel12MPa { get; init; }
    /// <summary>Tension strength perpendicular to the grain at 12 %, MPa; null where the table prints a dash.</summary>
    public required double? TensionPerpendicular12MPa { get; init; }
    /// <summary>Tension strength perpendicular to the grain, green, MPa; null where the table prints a dash.</summary>
    public required double? TensionPerpendicularGreenMPa { get; init; }

    /// <summary>Stand-in for <see cref="TensionPerpendicular12MPa"/> where the table prints a dash, MPa: the lowest published value of
    /// similar species, named in its source. Null where the table has a value.</summary>
    public required double? CrossGrainDefault12MPa { get; init; }

    /// <summary>Green companion of <see cref="CrossGrainDefault12MPa"/>, MPa, by the same rule.</summary>
    public required double? CrossGrainDefaultGreenMPa { get; init; }
    /// <summary>Mp, the moisture in percent at which strength meets its green value on drying (table 5-13).</summary>
    public required double MpPercent { get; init; }
    /// <summary>Tangential shrinkage, green to ovendry, percent of the green dimension.</summary>
    public required double ShrinkageTangentialPercent { get; init; }
    /// <summary>Radial shrinkage, green to ovendry, percent of the green dimension.</summary>
    public required double ShrinkageRadialPercent { get; init; }
    /// <summary>Volumetric shrinkage, green to ovendry, percent of the green volume; null where none is published.</summary>
    public required double? ShrinkageVolumetricPercent { get; init; }
    /// <summary>Side hardness at 12 %, N; null where none is published.</summary>
    public required double? SideHardness12N { get; init; }
    /// <summary>ET/EL, tangential over longitudinal true modulus; null where none is published.</summary>
    public required double? TangentialModulusRatio { get; init; }
    /// <summary>GLR/EL, shear modulus in the longitudinal-radial plane over EL; null where none is published.</summary>
    public required double? ShearModulusRatioLR { get; init; }
    /// <summary>GLT/EL, shear modulus in the longitudinal-tangential plane over EL; null where none is published.</summary>
    public required double? ShearModulusRatioLT { get; init; }
    /// <summary>Decay resistance of the heartwood.</summary>
    public required DecayResistance DecayResistance { get; init; }
    /// <summary>Judgement of the wood for a paddle.</summary>
    public required Suitability Suitability { get; init; }
    /// <summary>Why <see cref="Suitability"/> is what it is.</summary>
    public required string SuitabilityReason { get; init; }
    /// <summary>Cautions that go with this species, beside those for any wood in <see cref="WoodSafety.DustCautions"/>.</summary>
    public required IReadOnlyList<SourcedText> SafetyNotes { get; init; }
    /// <summary>True when the strengths come from trade pages only: too weak a source for a strict check.</summary>
    public required bool WeakSource { get; init; }
    /// <summary>Every figure of this species with its unit and source.</summary>
    public required IReadOnlyList<FigureSource> Sources { get; init; }

    /// <summary>Tension strength across the grain at 12 % a design may use, MPa: published, else the stated default.</summary>
    public double CrossGrainStrength12MPa => TensionPerpendicular12MPa ?? CrossGrainDefault12MPa
        ?? throw new InvalidOperationException($"Wood '{Id}' has neither a published nor a default cross-grain strength.");

    /// <summary>Tension strength across the grain when green that a design may use, MPa: published, else the stated default, else the value
    /// at 12 %.</summary>
    public double CrossGrainStrengthGreenMPa => TensionPerpendicularGreenMPa ?? CrossGrainDefaultGreenMPa ?? CrossGrainStrength12MPa;
}

/// <summary>
/// How well heartwood resists decay. Source: US Navy manual MO-312 table 2-1 and a reprint of the Forest Products
/// Laboratory list. Sapwood of any species has none.
/// </summary>
internal enum DecayResistance
{
    /// <summary>Slightly resistant or not resistant: the finish, end grain first, is all that keeps rot out.</summary>
    SlightOrNone,
    /// <summary>Moderately resistant.</summary>
    Moderate,
    /// <summary>Resistant or very resistant.</summary>
    Resistant,
}

/// <summary>How well a wood serves for a canoe paddle: a judgement, not a measurement; the reason stands beside it.</summary>
internal enum Suitability
{
    /// <summary>A good paddle wood on every count that matters.</summary>
    Recommended,
    /// <summary>Makes a sound paddle if its stated weakness is respected.</summary>
    Usable,
    /// <summary>Possible, but something about it needs a second thought first.</summary>
    Caution,
}

/// <summary>The woods a paddle can be designed in.</summary>
internal static class WoodCatalogue
{
    private static readonly FrozenDictionary<string, WoodSpecies> ById = Load(
        [.. NorthAmericanHardwoods.All, .. NorthAmericanSoftwoods.All, .. EuropeanHardwoods.All]);

    /// <summary>Every species, sorted by id.</summary>
    public static IReadOnlyList<WoodSpecies> All { get; } =
        Array.AsReadOnly([.. ById.Values.OrderBy(species => species.Id, StringComparer.Ordinal)]);

    /// <summary>The species with an id, or null. Ids are compared exactly.</summary>
    /// <param name="id">Identifier, such as <c>white-ash</c>.</param>
    /// <returns>The species, or null when the catalogue has none of that id.</returns>
    public static WoodSpecies? Find(string id) => ById.GetValueOrDefault(id);

    /// <summary>The ids nearest to one that was not found, nearest first: for an error message that helps.</summary>
    /// <param name="count">How many to return at most.</param>
    /// <returns>Up to <paramref name="count"/> ids.</returns>
    public static IReadOnlyList<string> NearestIds(string wrong, int count = 3) =>
        NearestNames.Rank(All.Select(species => species.Id), wrong, count);

    /// <summary>Checks every row and indexes them by id.</summary>
    /// <exception cref="InvalidOperationException">A row is malformed or an id occurs twice.</exception>
    internal static FrozenDictionary<string, WoodSpecies> Load(IReadOnlyList<SpeciesEntry> entries)
    {
        var byId = new Dictionary<string, WoodSpecies>(entries.Count, StringComparer.Ordinal);
        foreach (var entry in entries)
        {
            if (!byId.TryAdd(entry.Id, entry.ToSpecies()))
                throw new InvalidOperationException($"Wood species table: the id '{entry.Id}' occurs twice.");
        }

        return byId.ToFrozenDictionary(StringComparer.Ordinal);
    }
}
