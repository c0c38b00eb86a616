using Paddle.Design.Units;

namespace Paddle.Design.Boards;

/// <summary>The measure by which boards are sold.</summary>
internal static class BoardMeasure
{
    /// <summary>1 board foot, cm³: 144 cubic inches, exactly.</summary>
    public const double FootCm3 = 144 * 16.387064;

    /// <summary>Board feet: thickness × width × length / 144 in³, stock thinner than an inch counted as an inch. Theory N5.</summary>
    /// <remarks>Source: the hardwood trade's rule, read on a supplier's page; the inch floor from memory.</remarks>
    public static double Feet(double lengthMm, double widthMm, double thicknessMm) =>
        lengthMm * widthMm * Math.Max(thicknessMm, DrawnLength.MmPerInch) * 1e-3 / FootCm3;
}
