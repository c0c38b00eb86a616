using System.Globalization;

namespace Paddle.Design.Units;

/// <summary>Prints lengths as a shop reads them off its rules. Never compute from a printed length.</summary>
/// <remarks>1 in = 25.4 mm exactly (international yard and pound agreement, 1959). Steps: common practice, no source.</remarks>
internal static class DrawnLength
{
    /// <summary>Millimetres in an inch, exactly.</summary>
    public const double MmPerInch = 25.4;
    /// <summary>Lengths above this (mm) are printed to 1/16 in, others to 1/32 in.</summary>
    public const double FineUpToMm = 300;
    // Keeps 28.6 mm, which is stored a hair above itself, from being pushed up a whole step.
    private const double Hair = 1e-6;
    // A size stated to a tenth of a millimetre is known to half of one: 28.6 mm is a 1 1/8 in shaft, not one of 1 5/32 in.
    private const double SameOnARuleMm = 0.05;
    // Shavings are set with the finest marks of a rule, 1/64 in.
    private const int FinestMarks = 64;
    private const double ShavingUpToMm = 3.5;

    /// <summary>A length with its unit, such as <c>29 mm</c> or <c>1 5/32 in</c>.</summary>
    public static string Text(double lengthMm, DrawingUnits units, LengthRounding rounding = LengthRounding.Nearest) =>
        Figure(lengthMm, units, rounding) + UnitSuffix(units);

    /// <summary>A length without its unit as people say it, such as <c>29</c>, <c>28.6</c> or <c>1 5/32</c>.</summary>
    public static string Figure(double lengthMm, DrawingUnits units, LengthRounding rounding = LengthRounding.Nearest) =>
        Figure(lengthMm, units, rounding, "0.#");

    /// <summary>The same for a column of figures, where the points must stand below one another: <c>29.0</c>.</summary>
    public static string InColumn(double lengthMm, DrawingUnits units, LengthRounding rounding = LengthRounding.Nearest) =>
        Figure(lengthMm, units, rounding, "0.0");

    /// <summary>A distance that is found by finger or tape, with its unit: whole millimetres, or sixteenths of an inch.</summary>
    public static string Rough(double lengthMm, DrawingUnits units) => RoughFigure(lengthMm, units) + UnitSuffix(units);

    /// <summary>The same without its unit.</summary>
    public static string RoughFigure(double lengthMm, DrawingUnits units) => units == DrawingUnits.Metric
        ? (Math.Round(lengthMm, MidpointRounding.AwayFromZero) + 0).ToString("0", CultureInfo.InvariantCulture) // + 0: minus nothing is nothing
        : InchFigure(lengthMm, 16);

    /// <summary>Wood left on for the next tool, with its unit: hundredths of a millimetre, or sixty-fourths of an inch, never less than is
    /// meant.</summary>
    public static string Shaving(double lengthMm, DrawingUnits units)
    {
        if (units == DrawingUnits.Metric) return lengthMm.ToString("0.##", CultureInfo.InvariantCulture) + UnitSuffix(units);
        if (lengthMm is > 0 and < MmPerInch / FinestMarks / 2) return $"less than {InchFigure(MmPerInch / FinestMarks, FinestMarks)}{UnitSuffix(units)}";
        return InchFigure(lengthMm, lengthMm <= ShavingUpToMm ? FinestMarks : Denominator(lengthMm), LengthRounding.Up) + UnitSuffix(units);
    }

    /// <summary>The unit to print after a figure, with the space before it.</summary>
    public static string UnitSuffix(DrawingUnits units) => " " + UnitName(units);

    /// <summary>The unit's short name.</summary>
    public static string UnitName(DrawingUnits units) => units == DrawingUnits.Metric ? "mm" : "in";

    /// <summary>The finest fraction in which a length of this size is printed: 16 above 300 mm, else 32.</summary>
    public static int Denominator(double lengthMm) => Math.Abs(lengthMm) > FineUpToMm ? 16 : 32;

    /// <summary>Inches and a reduced fraction without the unit, such as <c>1 1/8</c>, <c>3/8</c> or <c>59</c>.</summary>
    /// <param name="denominator">Steps in an inch, a power of two.</param>
    /// <exception cref="ArgumentOutOfRangeException">The denominator is no power of two from 1 to 64.</exception>
    public static string InchFigure(double lengthMm, int denominator, LengthRounding rounding = LengthRounding.Nearest)
    {
        if (denominator is < 1 or > 64 || (denominator & (denominator - 1)) != 0)
            throw new ArgumentOutOfRangeException(nameof(denominator), denominator, "Must be 1, 2, 4, 8, 16, 32 or 64.");

        var exact = Math.Abs(lengthMm) / MmPerInch * denominator;
        var steps = rounding == LengthRounding.Up && lengthMm > 0
            ? (long)Math.Ceiling(exact - SameOnARuleMm / MmPerInch * denominator)
            : (long)Math.Round(exact, MidpointRounding.AwayFromZero);
        var (whole, part) = Math.DivRem(steps, denominator);
        while (part != 0 && part % 2 == 0)
        {
            part /= 2;
            denominator /= 2;
        }

        var sign = lengthMm < 0 && steps > 0 ? "-" : "";
        if (part == 0) return string.Create(CultureInfo.InvariantCulture, $"{sign}{whole}");
        return whole == 0
            ? string.Create(CultureInfo.InvariantCulture, $"{sign}{part}/{denominator}")
            : string.Create(CultureInfo.InvariantCulture, $"{sign}{whole} {part}/{denominator}");
    }

    private static string Figure(double lengthMm, DrawingUnits units, LengthRounding rounding, string format)
    {
        if (units == DrawingUnits.Inch) return InchFigure(lengthMm, Denominator(lengthMm), rounding);
        var tenths = rounding == LengthRounding.Up
            ? Math.Ceiling(lengthMm * 10 - Hair)
            : Math.Round(lengthMm * 10, MidpointRounding.AwayFromZero);
        return (tenths == 0 ? 0 : tenths / 10).ToString(format, CultureInfo.InvariantCulture);
    }
}

/// <summary>Units that a shop measures in: drawings and sentences are lettered in one of them; geometry is millimetres either way.</summary>
public enum DrawingUnits
{
    /// <summary>Millimetres, to 0.1 mm, and grams.</summary>
    Metric,
    /// <summary>Inches and fractions, and ounces with grams beside.</summary>
    Inch,
}

/// <summary>Which way a printed length may leave the exact one.</summary>
internal enum LengthRounding
{
    /// <summary>To the nearest step; halves away from nothing.</summary>
    Nearest,
    /// <summary>To the step above: for thicknesses that a limit holds, where less wood would cross it.</summary>
    Up,
}
