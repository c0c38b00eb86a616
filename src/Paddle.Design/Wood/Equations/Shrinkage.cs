namespace Paddle.Design.Wood;

/// <summary>Shrinkage and swelling with moisture below fibre saturation, taken as 30 % moisture.</summary>
internal static class Shrinkage
{
    /// <summary>Fibre saturation of the shrinkage equations, percent moisture. Source: USDA Wood Handbook, equation 4-9.</summary>
    public const double FibreSaturationPercent = 30.0;

    /// <summary>Shrinkage from green to moisture M: <c>SM = S0 (30 - M)/30</c>, nil above 30 %. Theory W7. Source: USDA Wood Handbook
    /// FPL-GTR-282, equation 4-9.</summary>
    /// <param name="toOvendryPercent">S0, shrinkage green to ovendry (radial, tangential or volumetric), percent.</param>
    /// <param name="moisturePercent">M, percent, 0 or more.</param>
    /// <returns>SM, percent of the green size.</returns>
    public static double ToMoisturePercent(double toOvendryPercent, double moisturePercent) =>
        toOvendryPercent * (1.0 - (Math.Min(moisturePercent, FibreSaturationPercent) / FibreSaturationPercent)); // theory W7

    /// <summary>Change of a dimension between two moistures: <c>dD = D (MF - MI)/(3000/S - 30 + MI)</c>, moistures above 30 % counting as
    /// 30. Theory W8. Source: exact form behind USDA Wood Handbook equation 13-2, from memory; it follows from W7.</summary>
    /// <param name="dimensionMm">D, the dimension at the first moisture, mm.</param>
    /// <param name="toOvendryPercent">S, shrinkage green to ovendry in the direction of D, percent.</param>
    /// <param name="fromMoisturePercent">MI, percent.</param>
    /// <param name="toMoisturePercent">MF, percent.</param>
    /// <returns>dD, mm, negative when the wood dries.</returns>
    public static double ChangeMm(double dimensionMm, double toOvendryPercent, double fromMoisturePercent, double toMoisturePercent)
    {
        var from = Math.Min(fromMoisturePercent, FibreSaturationPercent);
        var to = Math.Min(toMoisturePercent, FibreSaturationPercent);
        return dimensionMm * (to - from) / ((3000.0 / toOvendryPercent) - 30.0 + from); // theory W8
    }

    /// <summary>Volumetric shrinkage of a species: published, else estimated as <c>S0 = 26.5 Gb</c>; where Gb too is unknown it is
    /// recovered from G12 by W9 at 12 %, <c>Gb = G12/(1 + 0.265 G12 (1 - 12/30))</c>. Theory W9. Source: USDA Wood Handbook FPL-GTR-282,
    /// equations 4-12 and 4-13.</summary>
    /// <returns>S0, percent of the green volume.</returns>
    public static double VolumetricPercent(WoodSpecies species)
    {
        return species.ShrinkageVolumetricPercent
            ?? (26.5 * (species.SpecificGravityGreen ?? BasicSpecificGravityFrom12(species.SpecificGravity12))); // theory W9
    }

    private static double BasicSpecificGravityFrom12(double specificGravity12) =>
        specificGravity12 / (1.0 + (0.265 * specificGravity12 * (1.0 - (12.0 / FibreSaturationPercent))));
}
