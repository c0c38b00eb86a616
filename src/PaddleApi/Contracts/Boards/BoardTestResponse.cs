using Paddle.Design.Build;

namespace PaddleApi.Contracts.Boards;

/// <summary>What a board's own readings say of it.</summary>
/// <param name="EngineVersion">Version of the engine that computed it.</param>
/// <param name="DensityKgM3">Density, kg/m³.</param>
/// <param name="PlainBeamModulusMPa">
/// What the plain beam formula makes of the sag or the tone, nothing corrected; with the factor that corrects it. Null without sag or tap.
/// </param>
/// <param name="ModulusMPa">
/// True modulus along the grain, MPa, shear taken out: what <c>modulusMPa</c> means in every answer. Null without sag or tap.
/// </param>
/// <param name="ApparentModulusMPa">
/// Apparent modulus, MPa, that of a span of 14 depths with its shear in, as books print it: what <c>apparentModulusMPa</c> means in every
/// answer. It is the value that <c>wood.measuredModulusMPa</c> of a design asks for. Null without sag or tap.
/// </param>
/// <param name="Wood">The result as the member <c>wood</c> of a design request, ready to paste.</param>
/// <param name="Corrections">Which corrections were made and how much each mattered.</param>
/// <param name="Warnings">What looks wrong with species or readings; empty when nothing does.</param>
internal sealed record BoardTestResponse(
    string EngineVersion,
    BoardFigure DensityKgM3,
    PlainBeamFigure? PlainBeamModulusMPa,
    BoardFigure? ModulusMPa,
    BoardFigure? ApparentModulusMPa,
    MeasuredWood Wood,
    IReadOnlyList<CodedNote> Corrections,
    IReadOnlyList<CodedNote> Warnings);

/// <summary>
/// A modulus by the plain beam formula. A sag's, <c>P L³/(48 I y)</c>, holds the shear of its own span and thickness, a tone's the shear
/// and rotation of its own bar: it compares with no other modulus.
/// </summary>
/// <param name="Value">At the board's own moisture, MPa.</param>
/// <param name="StandardUncertainty">Standard uncertainty of the value, from those of the readings, MPa.</param>
/// <param name="TrueOverPlainBeam">What it is multiplied by to give <c>modulusMPa</c>.</param>
internal sealed record PlainBeamFigure(
    double Value,
    double StandardUncertainty,
    double TrueOverPlainBeam);

/// <summary>A measured board as the member <c>wood</c> of a design request.</summary>
/// <param name="Species">Id of the wood.</param>
/// <param name="MoisturePercent">Moisture of the board, percent.</param>
/// <param name="MeasuredDensityKgM3">Density, kg/m³.</param>
/// <param name="MeasuredModulusMPa">
/// The board's apparent modulus, MPa: <c>apparentModulusMPa.value</c> of this answer, and <c>apparentModulusMPa</c> of the design made with
/// it. Null without sag or tap.
/// </param>
internal sealed record MeasuredWood(
    string Species,
    double MoisturePercent,
    double MeasuredDensityKgM3,
    double? MeasuredModulusMPa);
