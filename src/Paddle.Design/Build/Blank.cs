using Paddle.Design.Solid;

namespace Paddle.Design.Build;

/// <summary>The board that a paddle is cut from.</summary>
/// <param name="LengthMm">Length with both ends' trim, mm.</param>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="ThicknessMm">Thickness, mm.</param>
/// <param name="EndTrimMm">Kept beyond the paddle at each end, clear of end checks, mm.</param>
/// <param name="ThickestSectionMm">Thickest finished section that it must hold, mm.</param>
/// <param name="Stock">Name of the thickness in the trade.</param>
public sealed record Blank(
    double LengthMm, double WidthMm, double ThicknessMm, double EndTrimMm, double ThickestSectionMm, string Stock)
{
    // Common practice, no source: 25-50 mm of each end is lost to checks; a hand's margin outside the saw line.
    private const double TrimMm = 25;
    private const double MarginMm = 5;

    /// <summary>The smallest board that holds a paddle. Theory M6.</summary>
    /// <param name="solid">The finished paddle at close places.</param>
    /// <param name="isSoftwood">Whether the wood is sold by the softwood sizes.</param>
    /// <param name="saw">The saw that cuts the outline.</param>
    /// <param name="thicknessMm">Thickness of the maker's board as measured, mm, or null for the next standard one.</param>
    /// <exception cref="ArgumentOutOfRangeException">The stated board is thinner than the thickest section.</exception>
    public static Blank For(PaddleSolid solid, bool isSoftwood, OutlineSaw saw, double? thicknessMm = null)
    {
        ArgumentNullException.ThrowIfNull(solid);
        var thickest = 2 * solid.HalfThickness.Max();
        if (thicknessMm is { } stated && !(stated >= thickest))
        {
            throw new ArgumentOutOfRangeException(
                nameof(thicknessMm), stated, $"The board must be at least as thick as the thickest section, {thickest:F1} mm.");
        }

        var stock = BoardStock.Holding(thickest + 2 * PaddleSpecification.SurfacedFaceMm, isSoftwood);
        return new(
            solid.Form.Places.OverallMm + 2 * TrimMm,
            2 * (solid.HalfWidth.Max() + StageAllowance.SawMm(saw) + MarginMm),
            thicknessMm ?? stock.ThicknessMm,
            TrimMm,
            thickest,
            thicknessMm is null ? stock.Name : "as measured");
    }
}

/// <summary>A thickness that boards are sold in.</summary>
/// <param name="Name">Name in the trade.</param>
/// <param name="ThicknessMm">Surfaced thickness, mm.</param>
public sealed record BoardStock(string Name, double ThicknessMm)
{
    /// <summary>
    /// Surfaced softwood. Source: American Softwood Lumber Standard PS 20, dry dressed sizes, read in a table of sizes.
    /// </summary>
    public static IReadOnlyList<BoardStock> Softwood { get; } =
    [
        new("softwood nominal 1, surfaced", 19.05), new("softwood nominal 1-1/4, surfaced", 25.4),
        new("softwood nominal 1-1/2, surfaced", 31.75), new("softwood nominal 2, surfaced", 38.1),
    ];

    /// <summary>
    /// Surfaced hardwood (S2S). Source: suppliers' charts and pages built on the hardwood grading rules; shops vary by 1/16 in,
    /// so the maker's own board may be stated instead.
    /// </summary>
    public static IReadOnlyList<BoardStock> Hardwood { get; } =
    [
        new("hardwood 4/4 S2S", 20.6), new("hardwood 5/4 S2S", 27.0), new("hardwood 6/4 S2S", 33.3), new("hardwood 8/4 S2S", 44.4),
    ];

    /// <summary>The thinnest stock of at least a thickness; planed-up rough stock of just that thickness beyond the last.</summary>
    /// <param name="thicknessMm">Thickness needed, mm.</param>
    /// <param name="isSoftwood">Softwood or hardwood sizes.</param>
    public static BoardStock Holding(double thicknessMm, bool isSoftwood) =>
        (isSoftwood ? Softwood : Hardwood).FirstOrDefault(stock => stock.ThicknessMm >= thicknessMm - 1e-9)
        ?? new("planed from rough stock", Math.Ceiling(thicknessMm));
}
