namespace Paddle.Design.Wood;

/// <summary>Density and specific gravity of wood with its water. Specific gravity is ovendry mass over volume at the moisture.</summary>
internal static class WoodDensity
{
    /// <summary>Specific gravity of the cell wall. Source: USDA Wood Handbook FPL-GTR-282, equation 4-3.</summary>
    public const double CellWallSpecificGravity = 1.54;

    /// <summary>Specific gravity at moisture M from the basic one: <c>GM = Gb/(1 - SM/100)</c>. Theory W10. Source: USDA Wood Handbook
    /// FPL-GTR-282, equation 4-11.</summary>
    /// <param name="basicSpecificGravity">Gb, ovendry mass over green volume.</param>
    /// <param name="volumetricShrinkagePercent">S0, green to ovendry, percent.</param>
    /// <param name="moisturePercent">M, percent.</param>
    /// <returns>GM.</returns>
    public static double SpecificGravityFromBasic(
        double basicSpecificGravity, double volumetricShrinkagePercent, double moisturePercent) =>
        basicSpecificGravity / (1.0 - (Shrinkage.ToMoisturePercent(volumetricShrinkagePercent, moisturePercent) / 100.0)); // theory W10

    /// <summary>Specific gravity at moisture M from that at 12 %, so that the mass at 12 % stays the printed one: <c>GM = G12 (1 -
    /// S12/100)/(1 - SM/100)</c>. Theory W10, taken twice.</summary>
    /// <param name="specificGravity12">G12.</param>
    /// <param name="volumetricShrinkagePercent">S0, green to ovendry, percent.</param>
    /// <param name="moisturePercent">M, percent.</param>
    /// <returns>GM.</returns>
    public static double SpecificGravityFrom12(double specificGravity12, double volumetricShrinkagePercent, double moisturePercent)
    {
        var basic = specificGravity12 * (1.0 - (Shrinkage.ToMoisturePercent(volumetricShrinkagePercent, 12.0) / 100.0));
        return SpecificGravityFromBasic(basic, volumetricShrinkagePercent, moisturePercent); // theory W10
    }

    /// <summary>Density with its water: <c>rho = 1000 GM (1 + M/100)</c>. Theory W11. Source: USDA Wood Handbook FPL-GTR-282, equation
    /// 4-14.</summary>
    /// <param name="specificGravityAtMoisture">GM, at the same moisture.</param>
    /// <param name="moisturePercent">M, percent.</param>
    /// <returns>rho, kg/m3.</returns>
    public static double KgM3(double specificGravityAtMoisture, double moisturePercent) =>
        1000.0 * specificGravityAtMoisture * (1.0 + (moisturePercent / 100.0)); // theory W11

    /// <summary>Density of a species at moisture M, kg/m3: theory W10 and W11 from the printed specific gravity at 12 %.</summary>
    /// <param name="moisturePercent">M, percent.</param>
    /// <returns>rho, kg/m3.</returns>
    public static double KgM3(WoodSpecies species, double moisturePercent) =>
        KgM3(SpecificGravityFrom12(species.SpecificGravity12, Shrinkage.VolumetricPercent(species), moisturePercent), moisturePercent);
}
