using Paddle.Design.Boards;
using Paddle.Design.Solid;

namespace Paddle.Design.Build;

/// <summary>The board that a paddle is cut from.</summary>
/// <param name="LengthMm">Length with both ends' trim, mm.</param>
/// <param name="EndTrimMm">Kept beyond the paddle at each end, clear of end checks, mm.</param>
/// <param name="ThickestSectionMm">Thickest finished section that it must hold, mm.</param>
/// <param name="Stock">Name of the thickness in the trade.</param>
internal sealed record Blank(
    double LengthMm, double WidthMm, double ThicknessMm, double EndTrimMm, double ThickestSectionMm, string Stock)
{
    // Common practice, no source: 25-50 mm of each end is lost to checks; a hand's margin outside the saw line.
    private const double TrimMm = 25;
    private const double MarginMm = 5;

    /// <summary>Whether it is the maker's own board, and no stock to be bought.</summary>
    public bool IsOwn { get; init; }

    /// <summary>Wood to plane away between the board and the thickest section, both faces together, mm.</summary>
    public double OverMm => ThicknessMm - ThickestSectionMm;

    /// <summary>The smallest board that holds a paddle. Theory M6.</summary>
    /// <param name="solid">The finished paddle at close places.</param>
    /// <param name="isSoftwood">Whether the wood is sold by the softwood sizes.</param>
    /// <param name="thicknessMm">Thickness of the maker's board as measured, mm, or null for the next standard one.</param>
    /// <exception cref="ArgumentOutOfRangeException">The stated board is thinner than the thickest section.</exception>
    public static Blank For(PaddleSolid solid, bool isSoftwood, OutlineSaw saw, double? thicknessMm = null)
    {
        var thickest = 2 * solid.HalfThickness.Max();
        if (thicknessMm is { } stated && !(stated >= thickest))
        {
            throw new ArgumentOutOfRangeException(
                nameof(thicknessMm), stated, $"The board must be at least as thick as the thickest section, {thickest:F1} mm.");
        }

        var stock = BoardNeed.For(thickest, isSoftwood).Stock;
        return new(
            solid.Form.Places.OverallMm + 2 * TrimMm,
            2 * (solid.HalfWidth.Max() + StageAllowance.SawMm(saw) + MarginMm),
            thicknessMm ?? stock.ThicknessMm,
            TrimMm,
            thickest,
            thicknessMm is null ? stock.Name : "your own board, as measured")
        {
            IsOwn = thicknessMm is not null,
        };
    }
}
