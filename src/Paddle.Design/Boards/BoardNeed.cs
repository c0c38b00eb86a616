using Paddle.Design.Units;

namespace Paddle.Design.Boards;

/// <summary>Whether 5/4 stock holds a paddle.</summary>
public enum FiveQuarterVerdict
{
    /// <summary>Surfaced, as it is sold.</summary>
    Surfaced,
    /// <summary>Only rough, if it is flat and planed at home.</summary>
    Rough,
    No,
}

/// <summary>The board that a paddle asks for. Theory M6.</summary>
/// <param name="ThickestMm">Thickest finished section, mm.</param>
/// <param name="NeededMm">Thickness that a surfaced board must have, mm.</param>
/// <param name="Stock">The thinnest surfaced stock of that thickness.</param>
/// <param name="FiveQuarter">5/4 stock of the same kind of wood.</param>
/// <param name="Verdict">Whether that holds the paddle.</param>
internal sealed record BoardNeed(double ThickestMm, double NeededMm, BoardStock Stock, BoardStock FiveQuarter, FiveQuarterVerdict Verdict)
{
    /// <summary>Wood planed off each face of a flat rough board, mm: 1.0-1.5, common practice, no source; the least of it.</summary>
    public const double RoughFaceMm = 1.0;

    /// <summary>The board for a thickest section.</summary>
    public static BoardNeed For(double thickestMm, bool isSoftwood)
    {
        const double Hair = 1e-6;
        var needed = thickestMm + 2 * PaddleSpecification.SurfacedFaceMm; // theory M6
        var fiveQuarter = BoardStock.FiveQuarter(isSoftwood);
        var verdict = needed <= fiveQuarter.ThicknessMm + Hair ? FiveQuarterVerdict.Surfaced
            : thickestMm + 2 * RoughFaceMm <= fiveQuarter.RoughMm + Hair ? FiveQuarterVerdict.Rough : FiveQuarterVerdict.No;
        return new(thickestMm, needed, BoardStock.Holding(needed, isSoftwood), fiveQuarter, verdict);
    }

    /// <summary>Which board to buy, in a sentence or two.</summary>
    public string InWords(DrawingUnits units)
    {
        string Up(double mm) => DrawnLength.Text(mm, units, LengthRounding.Up);
        var thickest = $"The thickest section is {Up(ThickestMm)}, so that a surfaced board must be {Up(NeededMm)}";
        var stock = $"{Stock.Name} ({DrawnLength.Text(Stock.ThicknessMm, units)})";
        return Verdict switch
        {
            FiveQuarterVerdict.Surfaced => Stock == FiveQuarter
                ? $"{thickest}: 5/4 stock suffices, {stock}."
                : $"{thickest}: 5/4 stock suffices, and {stock} does too.",
            FiveQuarterVerdict.Rough =>
                $"{thickest}: 5/4 stock suffices only rough ({DrawnLength.Text(FiveQuarter.RoughMm!.Value, units)} at least) and flat, planed "
                + $"{DrawnLength.Shaving(RoughFaceMm, units)} a face at home; surfaced, take {stock}. State your board's thickness to have a paddle that a thinner one holds.",
            _ => $"{thickest}: 5/4 stock does not suffice ({DrawnLength.Text(FiveQuarter.ThicknessMm, units)} surfaced), take {stock}. "
                + "State your board's thickness to have a paddle that a thinner one holds.",
        };
    }
}

/// <summary>A thickness that boards are sold in.</summary>
internal sealed record BoardStock(string Name, double ThicknessMm)
{
    /// <summary>Least thickness as sawn and kiln-dried, mm; null where none is known.</summary>
    public double? RoughMm { get; init; }

    /// <summary>Surfaced softwood. Source: American Softwood Lumber Standard PS 20, dry dressed sizes, read in a table of sizes.</summary>
    public static IReadOnlyList<BoardStock> Softwood { get; } =
    [
        new("softwood nominal 1, surfaced", 19.05), new("softwood nominal 1-1/4, surfaced", 25.4),
        new("softwood nominal 1-1/2, surfaced", 31.75), new("softwood nominal 2, surfaced", 38.1),
    ];

    /// <summary>Surfaced hardwood (S2S). Source: suppliers' charts and pages built on the hardwood grading rules; shops vary by 1/16 in, so
    /// the maker's own board may be stated instead. Rough: 15/16 and 1 3/16 in as those pages say, the thicker two from memory.</summary>
    public static IReadOnlyList<BoardStock> Hardwood { get; } =
    [
        new("hardwood 4/4 S2S", 20.6) { RoughMm = 23.8 }, new("hardwood 5/4 S2S", 27.0) { RoughMm = 30.2 },
        new("hardwood 6/4 S2S", 33.3) { RoughMm = 36.5 }, new("hardwood 8/4 S2S", 44.4) { RoughMm = 47.6 },
    ];

    /// <summary>Place of 5/4, nominal 1 1/4 in, in both lists: the board that paddles are bought for first.</summary>
    private const int FiveQuarterPlace = 1;

    /// <summary>5/4 stock of a kind of wood.</summary>
    public static BoardStock FiveQuarter(bool isSoftwood) => Sold(isSoftwood)[FiveQuarterPlace];

    /// <summary>The thinnest stock of at least a thickness; planed-up rough stock of just that thickness beyond the last.</summary>
    public static BoardStock Holding(double thicknessMm, bool isSoftwood) =>
        Sold(isSoftwood).FirstOrDefault(stock => stock.ThicknessMm >= thicknessMm - 1e-9)
        ?? new("planed from rough stock", Math.Ceiling(thicknessMm));

    private static IReadOnlyList<BoardStock> Sold(bool isSoftwood) => isSoftwood ? Softwood : Hardwood;
}
