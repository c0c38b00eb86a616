using Paddle.Design.Units;

namespace Paddle.Drawings;

/// <summary>What a drawing needs to know beside the design.</summary>
/// <param name="Label">The owner's name for the design; any text, printed safely.</param>
/// <param name="Units">Units to letter in.</param>
/// <param name="EngineVersion">Version of the service that computed the design.</param>
/// <param name="DesignCode">Code by which the design can be had again, or null.</param>
/// <param name="Paper">Paper of printed templates.</param>
public sealed record DrawingContext(
    string Label,
    DrawingUnits Units,
    string EngineVersion,
    string? DesignCode = null,
    PaperSize Paper = PaperSize.A4);

/// <summary>Paper that templates are printed on.</summary>
public enum PaperSize
{
    /// <summary>210 × 297 mm.</summary>
    A4,
    /// <summary>8 1/2 × 11 in.</summary>
    Letter,
    /// <summary>297 × 420 mm.</summary>
    A3,
    /// <summary>One sheet as long as the template, for a roll plotter.</summary>
    Roll,
}
