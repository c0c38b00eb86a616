using System.Text.Json.Serialization;

namespace Paddle.Design.Wood;

/// <summary>The values of a wood that one design uses: at its moisture, with its slope of grain, and with what the maker
/// measured.</summary>
public sealed record WoodInUse
{
    /// <summary>Species id.</summary>
    public required string Species { get; init; }
    /// <summary>Whether it is sold and carved as a softwood.</summary>
    [JsonIgnore]
    public bool IsSoftwood { get; init; }
    /// <summary>Moisture the values hold at, percent of ovendry mass.</summary>
    public required double MoisturePercent { get; init; }
    /// <summary>Slope of grain, rise over run.</summary>
    public required double SlopeOfGrain { get; init; }
    /// <summary>Density with its water, kg/m3.</summary>
    public required double DensityKgM3 { get; init; }
    /// <summary>Apparent modulus of elasticity (span of 14 depths, shear sag included), MPa.</summary>
    public required double ApparentModulusMPa { get; init; }
    /// <summary>True longitudinal modulus EL, for bending with shear counted apart, MPa.</summary>
    public required double ModulusMPa { get; init; }
    /// <summary>Shear modulus along the grain, MPa.</summary>
    public required double ShearModulusMPa { get; init; }
    /// <summary>Mean bending strength, MPa.</summary>
    public required double MeanBendingStrengthMPa { get; init; }
    /// <summary>Bending strength that 19 sticks in 20 exceed, MPa.</summary>
    public required double BendingStrengthMPa { get; init; }
    /// <summary>Compression strength along the grain that 19 sticks in 20 exceed, MPa.</summary>
    public required double CompressionStrengthMPa { get; init; }
    /// <summary>Mean tension strength across the grain, MPa.</summary>
    [JsonIgnore]
    public double MeanCrossGrainStrengthMPa { get; init; }
    /// <summary>Tension strength across the grain that 19 sticks in 20 exceed, MPa.</summary>
    public required double CrossGrainStrengthMPa { get; init; }
    /// <summary>Where each value came from, one line a value.</summary>
    public required IReadOnlyList<string> Sources { get; init; }

    /// <summary>The values of a species in use. Book values are brought to the moisture (theory W1 to W3, W10, W11) and the slope of grain
    /// (W4), strengths then lowered to the 5th percentile (W6). A measured density is the density as weighed at the stated moisture, and
    /// replaces the book's. A measured modulus is the apparent modulus of the maker's own board at that moisture on the book's basis, a
    /// span of 14 depths; the board's own grain is in it, so neither moisture nor slope is applied again. Strength stays the species': a
    /// stiff or heavy board is not credited with strength nobody tested.</summary>
    /// <param name="moisturePercent">
    /// Moisture in use, percent, 0 to 40. What a request may ask is narrower: see <see cref="WoodSafety.MaximumMoisturePercent"/>.
    /// </param>
    /// <param name="slopeOfGrain">Rise over run of the grain, 0 to 1.</param>
    /// <param name="measuredDensityKgM3">Density as weighed, kg/m3, above 0; null for the book's.</param>
    /// <param name="measuredModulusMPa">Apparent modulus as measured, MPa, above 0; null for the book's.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not a number or outside its range.</exception>
    internal static WoodInUse Resolve(
        WoodSpecies species, double moisturePercent, double slopeOfGrain, double? measuredDensityKgM3, double? measuredModulusMPa)
    {
        Require(moisturePercent is >= 0 and <= 40, moisturePercent, nameof(moisturePercent), "0 to 40 %");
        Require(slopeOfGrain is >= 0 and <= 1, slopeOfGrain, nameof(slopeOfGrain), "0 to 1");
        Require(measuredDensityKgM3 is not { } d || (d > 0 && double.IsFinite(d)), measuredDensityKgM3, nameof(measuredDensityKgM3),
            "above 0 kg/m3");
        Require(measuredModulusMPa is not { } e || (e > 0 && double.IsFinite(e)), measuredModulusMPa, nameof(measuredModulusMPa),
            "above 0 MPa");

        var apparent = measuredModulusMPa
            ?? (MoistureAdjustment.ModulusOfElasticityMPa(species, moisturePercent)
                * GrainSlope.HankinsonFraction(slopeOfGrain, GrainSlope.ElasticityRatio));
        var modulus = ElasticConstants.TrueModulusMPa(apparent);
        var bending = MoistureAdjustment.ModulusOfRuptureMPa(species, moisturePercent)
            * GrainSlope.HankinsonFraction(slopeOfGrain, GrainSlope.RuptureRatio);
        var compression = MoistureAdjustment.CompressionParallelMPa(species, moisturePercent)
            * GrainSlope.HankinsonFraction(slopeOfGrain, GrainSlope.CompressionRatio);
        var across = MoistureAdjustment.AcrossTheGrainMPa(
            species.CrossGrainStrength12MPa, species.CrossGrainStrengthGreenMPa, species.MpPercent, moisturePercent);

        return new WoodInUse
        {
            Species = species.Id,
            IsSoftwood = species.IsSoftwood,
            MoisturePercent = moisturePercent,
            SlopeOfGrain = slopeOfGrain,
            DensityKgM3 = measuredDensityKgM3 ?? WoodDensity.KgM3(species, moisturePercent),
            ApparentModulusMPa = apparent,
            ModulusMPa = modulus,
            ShearModulusMPa = ElasticConstants.ShearModulusMPa(species, modulus),
            MeanBendingStrengthMPa = bending,
            BendingStrengthMPa = Scatter.FifthPercentile(bending, Scatter.RuptureVariation),
            CompressionStrengthMPa = Scatter.FifthPercentile(compression, Scatter.CompressionVariation),
            MeanCrossGrainStrengthMPa = across,
            CrossGrainStrengthMPa = Scatter.FifthPercentile(across, Scatter.TensionPerpendicularVariation),
            Sources = WoodInUseSources.For(species, measuredDensityKgM3.HasValue, measuredModulusMPa.HasValue),
        };
    }

    private static void Require(bool holds, double? value, string name, string range)
    {
        if (!holds) throw new ArgumentOutOfRangeException(name, value, $"Must lie in {range}.");
    }
}
