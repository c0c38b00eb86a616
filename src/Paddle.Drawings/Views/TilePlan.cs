namespace Paddle.Drawings.Views;

/// <summary>How a long sheet is cut into pages that overlap.</summary>
/// <param name="PageWidthMm">Paper across, mm.</param>
/// <param name="PageHeightMm">Paper down, mm.</param>
/// <param name="Columns">Tiles across.</param>
/// <param name="Rows">Tiles down.</param>
/// <param name="LabelMm">Strip at the foot of each tile for its own label, mm.</param>
/// <remarks>n = ceil((L − o)/(p − o)) tiles of p with the overlap o for a length L.</remarks>
internal sealed record TilePlan(double PageWidthMm, double PageHeightMm, int Columns, int Rows, double LabelMm)
{
    /// <summary>Edge that printers leave white, mm; common practice, no source.</summary>
    public const double MarginMm = 10;

    /// <summary>How far neighbours overlap, mm; common practice, no source.</summary>
    public const double OverlapMm = 10;

    /// <summary>Strip for a label of one line, mm.</summary>
    public const double OneLineMm = 8;

    /// <summary>Drawing on one tile across, mm.</summary>
    public double TileWidthMm => PageWidthMm - 2 * MarginMm;

    /// <summary>Drawing on one tile down, mm.</summary>
    public double TileHeightMm => PageHeightMm - 2 * MarginMm - LabelMm;

    /// <summary>From one tile to the next across, mm.</summary>
    public double StepX => TileWidthMm - OverlapMm;

    /// <summary>From one tile to the next down, mm.</summary>
    public double StepY => TileHeightMm - OverlapMm;

    /// <summary>Tiles for a sheet; of lying and standing paper the one that needs fewer, lying when equal.</summary>
    public static TilePlan For(double paperShortMm, double paperLongMm, double sheetWidthMm, double sheetHeightMm, double labelMm = OneLineMm)
    {
        var lying = Of(paperLongMm, paperShortMm, sheetWidthMm, sheetHeightMm, labelMm);
        var standing = Of(paperShortMm, paperLongMm, sheetWidthMm, sheetHeightMm, labelMm);
        return standing.Columns * standing.Rows < lying.Columns * lying.Rows ? standing : lying;
    }

    private static TilePlan Of(double pageWidth, double pageHeight, double width, double height, double label)
    {
        var plan = new TilePlan(pageWidth, pageHeight, 1, 1, label);
        return plan with { Columns = Count(width, plan.TileWidthMm), Rows = Count(height, plan.TileHeightMm) };
    }

    private static int Count(double length, double tile) => Math.Max(1, (int)Math.Ceiling((length - OverlapMm) / (tile - OverlapMm) - 1e-9));
}
