using Paddle.Design.Wood;

namespace PaddleApi.Contracts.Woods;

/// <summary>A wood in the list.</summary>
/// <param name="Id">Its id, as <c>wood.species</c> of a design names it.</param>
/// <param name="CommonName">Common name.</param>
/// <param name="BotanicalName">Botanical name.</param>
/// <param name="IsSoftwood">True for a conifer.</param>
/// <param name="DensityAt12KgM3">Density at 12 % moisture, kg/m³.</param>
/// <param name="ModulusOfElasticity12MPa">Apparent modulus of elasticity at 12 % moisture, MPa.</param>
/// <param name="ModulusOfRupture12MPa">Modulus of rupture (bending strength) at 12 % moisture, MPa.</param>
/// <param name="Suitability">How well it serves for a canoe paddle.</param>
/// <param name="SuitabilityReason">Why.</param>
/// <param name="Href">Address of everything known about it.</param>
public sealed record WoodSummary(
    string Id,
    string CommonName,
    string BotanicalName,
    bool IsSoftwood,
    double DensityAt12KgM3,
    double ModulusOfElasticity12MPa,
    double ModulusOfRupture12MPa,
    Suitability Suitability,
    string SuitabilityReason,
    string Href);
