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
internal sealed record BoardNeed(
    double ThickestMm, double NeededMm, BoardStock Stock, BoardStock FiveQuarter, FiveQuarterVerdict Verdict)
{
    /// <summary>Wood planed off each face of a flat rough board, mm: 1.0-1.5, common practice, no source; the least of it.</summary>
    public const double RoughFaceMm = 1.0;

    /// <summary>The board for a thickest section.</summary>
    /// <param name="thickestMm">Thickest finished section, mm.</param>
    /// <param name="isSoftwood">Softwood or hardwood sizes.</param>
    public static BoardNeed For(double thickestMm, bool isSoftwood)
    {
        const double Hair = 1e-6;
        var needed = thickestMm + 2 * PaddleSpecification.SurfacedFaceMm; // theory M6
        var fiveQuarter = BoardStock.FiveQuarter(isSoftwood);
        var verdict = needed <= fiveQuarter.ThicknessMm + Hair ? FiveQuarterVerdict.Surfaced
            : thickestMm + 2 * RoughFaceMm <= fiveQuarter.RoughMm + Hair ? FiveQuarterVerdict.Rough
            : FiveQuarterVerdict.No;
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
