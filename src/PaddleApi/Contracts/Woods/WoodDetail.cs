using Paddle.Design;
using Paddle.Design.Wood;

namespace PaddleApi.Contracts.Woods;

/// <summary>Everything known about one wood.</summary>
/// <param name="EngineVersion">Version of the engine the figures belong to.</param>
/// <param name="Id">Its id, as <c>wood.species</c> of a design names it.</param>
/// <param name="CommonName">Common name.</param>
/// <param name="BotanicalName">Botanical name.</param>
/// <param name="IsSoftwood">True for a conifer.</param>
/// <param name="Suitability">How well it serves for a canoe paddle.</param>
/// <param name="SuitabilityReason">Why.</param>
/// <param name="DecayResistance">How well its heartwood resists decay.</param>
/// <param name="WeakSource">True when the strengths come from trade pages only.</param>
/// <param name="DensityAt12KgM3">Density at 12 % moisture, kg/m³.</param>
/// <param name="Figures">Each published figure with its source: means of small clear specimens, not design values.</param>
/// <param name="SafetyNotes">Cautions that go with this wood, beside those for any wood in the list.</param>
internal sealed record WoodDetail(
    string EngineVersion,
    string Id,
    string CommonName,
    string BotanicalName,
    bool IsSoftwood,
    Suitability Suitability,
    string SuitabilityReason,
    DecayResistance DecayResistance,
    bool WeakSource,
    double DensityAt12KgM3,
    WoodFigures Figures,
    IReadOnlyList<SourcedText> SafetyNotes);

/// <summary>The published figures of a wood. A figure that is not published is left out.</summary>
/// <param name="SpecificGravity12">Ovendry mass over volume at 12 % moisture, relative to water.</param>
/// <param name="SpecificGravityGreen">Ovendry mass over green volume, relative to water.</param>
/// <param name="Modulus12MPa">True modulus of elasticity along the grain at 12 %, MPa: 1.10 times the apparent, shear counted apart.</param>
/// <param name="ApparentModulus12MPa">Apparent modulus of elasticity at 12 % as published, a span of 14 depths with its shear in, MPa.</param>
/// <param name="ApparentModulusGreenMPa">Apparent modulus of elasticity, green, as published, MPa.</param>
/// <param name="ModulusOfRupture12MPa">Modulus of rupture (bending strength) at 12 %, MPa.</param>
/// <param name="ModulusOfRuptureGreenMPa">Modulus of rupture, green, MPa.</param>
/// <param name="CompressionParallel12MPa">Compression strength along the grain at 12 %, MPa.</param>
/// <param name="CompressionParallelGreenMPa">Compression strength along the grain, green, MPa.</param>
/// <param name="ShearParallel12MPa">Shear strength along the grain at 12 %, MPa.</param>
/// <param name="CrossGrainStrength12MPa">Tension strength across the grain at 12 % that designs use, MPa.</param>
/// <param name="ShrinkageTangentialPercent">Tangential shrinkage from green to ovendry, percent.</param>
/// <param name="ShrinkageRadialPercent">Radial shrinkage from green to ovendry, percent.</param>
/// <param name="ShrinkageVolumetricPercent">Volumetric shrinkage from green to ovendry, percent.</param>
/// <param name="SideHardness12N">Side hardness at 12 %, N.</param>
/// <param name="Sources">Where each figure was read, with every further figure that the calculations use.</param>
internal sealed record WoodFigures(
    double SpecificGravity12,
    double? SpecificGravityGreen,
    double Modulus12MPa,
    double ApparentModulus12MPa,
    double? ApparentModulusGreenMPa,
    double ModulusOfRupture12MPa,
    double? ModulusOfRuptureGreenMPa,
    double CompressionParallel12MPa,
    double? CompressionParallelGreenMPa,
    double? ShearParallel12MPa,
    double CrossGrainStrength12MPa,
    double ShrinkageTangentialPercent,
    double ShrinkageRadialPercent,
    double? ShrinkageVolumetricPercent,
    double? SideHardness12N,
    IReadOnlyList<FigureSource> Sources);
