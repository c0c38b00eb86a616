using Paddle.Design;
using Paddle.Design.Wood;
using PaddleApi.Contracts;
using PaddleApi.Contracts.Woods;

namespace PaddleApi.Endpoints;

/// <summary>Turns the wood catalogue into answers.</summary>
internal static class WoodAnswers
{
    private const double BookMoisturePercent = 12;

    /// <summary>All woods, and what holds for any of them.</summary>
    /// <param name="address">Address below which each wood has its own.</param>
    public static WoodList List(string address) => new(
        EngineVersion.Text,
        [.. WoodCatalogue.All.Select(species => Summary(species, address))],
        new WoodLimits(
            new ValueRange(WoodSafety.MinimumMoisturePercent, WoodSafety.MaximumMoisturePercent),
            WoodSafety.MoistureRangeSource,
            WoodSafety.WarnSlopeOfGrain,
            WoodSafety.RefuseSlopeOfGrain,
            WoodSafety.SlopeOfGrainSource),
        WoodSafety.KnotRule,
        WoodSafety.DustCautions,
        WoodSafety.RefusedTreatments,
        WoodSafety.RefusedSpecies);

    /// <summary>Everything known about one wood.</summary>
    public static WoodDetail Detail(WoodSpecies species) => new(
        EngineVersion.Text,
        species.Id,
        species.CommonName,
        species.BotanicalName,
        species.IsSoftwood,
        species.Suitability,
        species.SuitabilityReason,
        species.DecayResistance,
        species.WeakSource,
        DensityAt12KgM3(species),
        Figures(species),
        species.SafetyNotes);

    private static WoodSummary Summary(WoodSpecies species, string address) => new(
        species.Id,
        species.CommonName,
        species.BotanicalName,
        species.IsSoftwood,
        DensityAt12KgM3(species),
        TrueModulus12MPa(species),
        species.ModulusOfElasticity12MPa,
        species.ModulusOfRupture12MPa,
        species.Suitability,
        species.SuitabilityReason,
        $"{address}/{species.Id}");

    private static WoodFigures Figures(WoodSpecies species) => new(
        species.SpecificGravity12,
        species.SpecificGravityGreen,
        TrueModulus12MPa(species),
        species.ModulusOfElasticity12MPa,
        species.ModulusOfElasticityGreenMPa,
        species.ModulusOfRupture12MPa,
        species.ModulusOfRuptureGreenMPa,
        species.CompressionParallel12MPa,
        species.CompressionParallelGreenMPa,
        species.ShearParallel12MPa,
        species.CrossGrainStrength12MPa,
        species.ShrinkageTangentialPercent,
        species.ShrinkageRadialPercent,
        species.ShrinkageVolumetricPercent,
        species.SideHardness12N,
        species.Sources);

    // To the kilogram: the specific gravities behind it have two figures.
    private static double DensityAt12KgM3(WoodSpecies species) => Math.Round(WoodDensity.KgM3(species, BookMoisturePercent));

    // To the megapascal: the apparent modulus behind it has three or four figures.
    private static double TrueModulus12MPa(WoodSpecies species) => Math.Round(ElasticConstants.TrueModulusMPa(species.ModulusOfElasticity12MPa));
}
