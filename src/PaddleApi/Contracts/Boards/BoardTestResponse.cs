using System.Text.Json.Serialization;
using PaddleApi.Contracts.Numbers;

namespace PaddleApi.Contracts.Boards;

/// <summary>What a board's own readings say of it.</summary>
/// <param name="EngineVersion">Version of the engine that computed it.</param>
/// <param name="DensityKgM3">Density, kg/m³.</param>
/// <param name="ModulusMPa">Modulus of elasticity on the book's basis, a span of 14 depths, MPa; null without sag or tap.</param>
/// <param name="Wood">The result as the wood of a design request, ready to paste.</param>
/// <param name="Corrections">Which corrections were made and how much each mattered.</param>
/// <param name="Warnings">What looks wrong with species or readings; empty when nothing does.</param>
public sealed record BoardTestResponse(
    string EngineVersion,
    BoardFigure DensityKgM3,
    BoardFigure? ModulusMPa,
    MeasuredWood Wood,
    IReadOnlyList<string> Corrections,
    IReadOnlyList<string> Warnings);

/// <summary>A property of the board beside its species; the name of the member that holds it says the unit.</summary>
/// <param name="Value">At the board's own moisture.</param>
/// <param name="StandardUncertainty">Standard uncertainty of the value, from those of the readings.</param>
/// <param name="At12Percent">At 12 % moisture.</param>
/// <param name="ZScore">Standard deviations above the species' published mean at 12 %.</param>
/// <param name="Compared">The same in words.</param>
public sealed record BoardFigure(
    [property: JsonConverter(typeof(FourDigits))] double Value,
    [property: JsonConverter(typeof(ThreeDigits))] double StandardUncertainty,
    [property: JsonConverter(typeof(FourDigits))] double At12Percent,
    [property: JsonConverter(typeof(Hundredths))] double ZScore,
    string Compared);

/// <summary>A measured board as the member <c>wood</c> of a design request.</summary>
/// <param name="Species">Id of the wood.</param>
/// <param name="MoisturePercent">Moisture of the board, percent.</param>
/// <param name="MeasuredDensityKgM3">Density, kg/m³.</param>
/// <param name="MeasuredModulusMPa">Modulus of elasticity, MPa; null without sag or tap.</param>
public sealed record MeasuredWood(
    string Species,
    [property: JsonConverter(typeof(Tenths))] double MoisturePercent,
    [property: JsonConverter(typeof(FourDigits))] double MeasuredDensityKgM3,
    [property: JsonConverter(typeof(FourDigits))] double? MeasuredModulusMPa);
