using System.Globalization;
using Paddle.Design.Units;

namespace Paddle.Design.Build;

/// <summary>A spar gauge: two fences that ride the shaft's sides, two points between them that scribe the eight-side lines.</summary>
/// <param name="BetweenFencesMm">Clear width between the fences' points, mm.</param>
/// <param name="FirstPointMm">Fence to the first point, mm.</param>
/// <param name="BetweenPointsMm">Between the two points, mm.</param>
/// <param name="LastPointMm">Second point to the other fence, mm.</param>
/// <param name="LineErrorMm">How far its line lies outside the exact one on the widest face, mm: wood left on, never cut into.</param>
/// <remarks>
/// Theory M1. Source of 7:10:7: a maritime skills training page and a boat-building page, read; 7/24 = 0.2917 against 0.2929.
/// The fences must bear at points: round pins shift the line when the gauge is canted on a taper.
/// </remarks>
internal sealed record SparGauge(
    double BetweenFencesMm, double FirstPointMm, double BetweenPointsMm, double LastPointMm, double LineErrorMm)
{
    /// <summary>Share of the width at which the gauge scribes: 7/24.</summary>
    public const double Share = 7.0 / 24;

    // 24 parts of 1/64 in: such a gauge is set out with a rule, 7, 10 and 7 marks of it at a time.
    private const double InchStepMm = 24 * DrawnLength.MmPerInch / 64;

    /// <summary>The gauge for a widest face.</summary>
    /// <param name="widestMm">Widest face that it rides on, mm.</param>
    /// <param name="units">Units of the rule that it is set out with.</param>
    public static SparGauge For(double widestMm, DrawingUnits units = DrawingUnits.Metric)
    {
        // A millimetre of play lets it pass the widest place; canted, it fits every narrower one and keeps its shares.
        var between = units == DrawingUnits.Metric ? Math.Ceiling(widestMm) + 1 : Math.Ceiling((widestMm + 1) / InchStepMm) * InchStepMm;
        return new(between, between * Share, between * (1 - 2 * Share), between * Share, (Rounding.EightSideLine - Share) * widestMm);
    }

    /// <summary>Clear width between the fences, in words.</summary>
    public string Between(DrawingUnits units) => Text(BetweenFencesMm, units);

    /// <summary>Fence to the first point, in words.</summary>
    public string First(DrawingUnits units) => Text(FirstPointMm, units);

    /// <summary>Between the points, in words.</summary>
    public string Apart(DrawingUnits units) => Text(BetweenPointsMm, units);

    // A gauge is built once and must be right: hundredths of a millimetre, or the marks that it was set out by.
    private static string Text(double mm, DrawingUnits units) => units == DrawingUnits.Metric
        ? mm.ToString("0.##", CultureInfo.InvariantCulture) + " mm"
        : DrawnLength.InchFigure(mm, 64) + " in";
}
