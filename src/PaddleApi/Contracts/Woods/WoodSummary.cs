using Paddle.Design.Wood;

namespace PaddleApi.Contracts.Woods;

/// <summary>A wood in the list.</summary>
/// <param name="Id">Its id, as <c>wood.species</c> of a design names it.</param>
/// <param name="CommonName">Common name.</param>
/// <param name="BotanicalName">Botanical name.</param>
/// <param name="IsSoftwood">True for a conifer.</param>
/// <param name="DensityAt12KgM3">Density at 12 % moisture, kg/m³.</param>
/// <param name="Modulus12MPa">True modulus of elasticity along the grain at 12 % moisture, MPa: shear counts apart.</param>
/// <param name="ApparentModulus12MPa">Apparent modulus of elasticity at 12 % moisture as books print it, a span of 14 depths with its shear in, MPa.</param>
/// <param name="ModulusOfRupture12MPa">Modulus of rupture (bending strength) at 12 % moisture, MPa.</param>
/// <param name="Suitability">How well it serves for a canoe paddle.</param>
/// <param name="SuitabilityReason">Why.</param>
/// <param name="Href">Address of everything known about it.</param>
internal sealed record WoodSummary(
    string Id,
    string CommonName,
    string BotanicalName,
    bool IsSoftwood,
    double DensityAt12KgM3,
    double Modulus12MPa,
    double ApparentModulus12MPa,
    double ModulusOfRupture12MPa,
    Suitability Suitability,
    string SuitabilityReason,
    string Href);
