namespace Paddle.Design.Boards;

/// <summary>A thickness that boards are sold in.</summary>
/// <param name="Name">Name in the trade.</param>
/// <param name="ThicknessMm">Surfaced thickness, mm.</param>
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
    /// <param name="isSoftwood">Softwood or hardwood sizes.</param>
    public static BoardStock FiveQuarter(bool isSoftwood) => Sold(isSoftwood)[FiveQuarterPlace];

    /// <summary>The thinnest stock of at least a thickness; planed-up rough stock of just that thickness beyond the last.</summary>
    /// <param name="isSoftwood">Softwood or hardwood sizes.</param>
    public static BoardStock Holding(double thicknessMm, bool isSoftwood) =>
        Sold(isSoftwood).FirstOrDefault(stock => stock.ThicknessMm >= thicknessMm - 1e-9)
        ?? new("planed from rough stock", Math.Ceiling(thicknessMm));

    private static IReadOnlyList<BoardStock> Sold(bool isSoftwood) => isSoftwood ? Softwood : Hardwood;
}
