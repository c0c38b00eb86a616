using System.Globalization;

namespace Paddle.Drawings.Units;

/// <summary>Prints lengths as a shop reads them off its rules. Never compute from a printed length.</summary>
/// <remarks>1 in = 25.4 mm exactly (international yard and pound agreement, 1959). Steps: common practice, no source.</remarks>
public static class DrawnLength
{
    /// <summary>Millimetres in an inch, exactly.</summary>
    public const double MmPerInch = 25.4;

    /// <summary>Lengths above this (mm) are printed to 1/16 in, others to 1/32 in.</summary>
    public const double FineUpToMm = 300;

    // Keeps 28.6 mm, which is stored a hair above itself, from being pushed up a whole step.
    private const double Hair = 1e-6;

    /// <summary>A length with its unit, such as <c>29.0 mm</c> or <c>1 5/32 in</c>.</summary>
    /// <param name="lengthMm">The length, mm.</param>
    /// <param name="units">Units to print.</param>
    /// <param name="rounding">Which way to round.</param>
    public static string Text(double lengthMm, DrawingUnits units, LengthRounding rounding = LengthRounding.Nearest) =>
        Figure(lengthMm, units, rounding) + UnitSuffix(units);

    /// <summary>A length without its unit, such as <c>29.0</c> or <c>1 5/32</c>.</summary>
    /// <param name="lengthMm">The length, mm.</param>
    /// <param name="units">Units to print.</param>
    /// <param name="rounding">Which way to round.</param>
    public static string Figure(double lengthMm, DrawingUnits units, LengthRounding rounding = LengthRounding.Nearest) =>
        units == DrawingUnits.Metric
            ? (Steps(lengthMm * 10, rounding) / 10).ToString("0.0", CultureInfo.InvariantCulture)
            : InchFigure(lengthMm, Denominator(lengthMm), rounding);

    /// <summary>A place along the paddle without its unit: whole millimetres carry no decimal.</summary>
    /// <param name="placeMm">The place, mm.</param>
    /// <param name="units">Units to print.</param>
    public static string Place(double placeMm, DrawingUnits units) =>
        units == DrawingUnits.Metric
            ? (Steps(placeMm * 10, LengthRounding.Nearest) / 10).ToString("0.#", CultureInfo.InvariantCulture)
            : Figure(placeMm, units);

    /// <summary>The unit to print after a figure, with the space before it.</summary>
    /// <param name="units">Units to print.</param>
    public static string UnitSuffix(DrawingUnits units) => " " + UnitName(units);

    /// <summary>The unit's short name.</summary>
    /// <param name="units">Units to print.</param>
    public static string UnitName(DrawingUnits units) => units == DrawingUnits.Metric ? "mm" : "in";

    /// <summary>The finest fraction in which a length of this size is printed: 16 above 300 mm, else 32.</summary>
    /// <param name="lengthMm">The length, mm.</param>
    public static int Denominator(double lengthMm) => Math.Abs(lengthMm) > FineUpToMm ? 16 : 32;

    /// <summary>Inches and a reduced fraction without the unit, such as <c>1 1/8</c>, <c>3/8</c> or <c>59</c>.</summary>
    /// <param name="lengthMm">The length, mm.</param>
    /// <param name="denominator">Steps in an inch, a power of two.</param>
    /// <param name="rounding">Which way to round.</param>
    /// <exception cref="ArgumentOutOfRangeException">The denominator is no power of two from 1 to 64.</exception>
    public static string InchFigure(double lengthMm, int denominator, LengthRounding rounding = LengthRounding.Nearest)
    {
        if (denominator is < 1 or > 64 || (denominator & (denominator - 1)) != 0)
            throw new ArgumentOutOfRangeException(nameof(denominator), denominator, "Must be 1, 2, 4, 8, 16, 32 or 64.");

        var steps = (long)Steps(Math.Abs(lengthMm) / MmPerInch * denominator, lengthMm < 0 ? LengthRounding.Nearest : rounding);
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

    private static double Steps(double steps, LengthRounding rounding) =>
        rounding == LengthRounding.Up ? Math.Ceiling(steps - Hair) : Math.Round(steps, MidpointRounding.AwayFromZero);
}
