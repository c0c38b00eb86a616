using System.Globalization;
using Paddle.Design;
using Paddle.Design.Wood;
using Paddle.Drawings.Units;

namespace Paddle.Drawings.Views;

/// <summary>One entry of a title block.</summary>
internal sealed record KeyFigure(string Name, string Value);

/// <summary>The figures that go with every drawing of a design.</summary>
internal static class KeyFigures
{
    /// <summary>Name of the blade: its family's, or that it is the maker's own.</summary>
    public static string BladeName(DesignReport report) => report.Specification.Form.Blade.Family?.Name ?? "Own offsets";

    /// <summary>Name of the wood as printed.</summary>
    public static string WoodName(DesignReport report) =>
        WoodCatalogue.Find(report.Specification.Wood.SpeciesId)?.CommonName ?? report.Specification.Wood.SpeciesId;

    /// <summary>Sizes, mass, balance, strength and origin.</summary>
    public static IReadOnlyList<KeyFigure> Of(DesignReport report, DrawingContext context)
    {
        var units = context.Units;
        var (form, sizes, wood) = (report.Specification.Form, report.Sizes, report.Specification.Wood);
        var places = form.Places;
        var governing = report.Strength.Governing;
        string L(double mm) => DrawnLength.Text(mm, units);
        string F(double mm) => DrawnLength.Figure(mm, units);
        string Up(double mm) => DrawnLength.Figure(mm, units, LengthRounding.Up);
        string N(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
        return
        [
            new("Overall", L(places.OverallMm)),
            new("Between the hands", L(places.HandSpacingMm)),
            new("Blade, length × width", $"{F(places.BladeMm)} × {L(form.Blade.WidthMm)}"),
            new("Shaft at lower hand", $"{Up(sizes.ShaftWidthMm)} × {DrawnLength.Text(sizes.ShaftThicknessMm, units, LengthRounding.Up)}"),
            new("Shaft below grip", $"{Up(sizes.UpperWidthMm)} × {DrawnLength.Text(sizes.UpperThicknessMm, units, LengthRounding.Up)}"),
            new("Blade spine, throat · middle · tip",
                $"{Up(sizes.ThroatThicknessMm)} · {Up(sizes.MiddleThicknessMm)} · {DrawnLength.Text(sizes.TipThicknessMm, units, LengthRounding.Up)}"),
            new("Blade edge", DrawnLength.Text(sizes.EdgeThicknessMm, units, LengthRounding.Up)),
            new("Wood", $"{WoodName(report)}, {N(wood.MoisturePercent, "0.#")} %, {N(wood.DensityKgM3, "0")} kg/m³"),
            new("Mass", units == DrawingUnits.Metric
                ? $"{N(report.Mass.TotalG, "0")} g"
                : $"{N(report.Mass.TotalG / GramsPerOunce, "0.0")} oz ({N(report.Mass.TotalG, "0")} g)"),
            new("Balance from lower hand", BalanceText(report, units)),
            new("Least safety factor", $"{N(governing.SafetyFactor, "0.00")} ({governing.Case.Name})"),
            new("Blade area", units == DrawingUnits.Metric
                ? $"{N(report.Stroke.BladeAreaCm2, "0")} cm²"
                : $"{N(report.Stroke.BladeAreaCm2 / Cm2PerSquareInch, "0")} in²"),
        ];
    }

    /// <summary>Where it balances, seen from the lower hand.</summary>
    public static string BalanceText(DesignReport report, DrawingUnits units)
    {
        var off = report.Mass.CentreOfMassMm - report.Specification.Form.Places.LowerHandMm;
        if (Math.Abs(off) < 0.05) return "at the lower hand";
        return $"{DrawnLength.Text(Math.Abs(off), units)} towards the {(off > 0 ? "blade" : "grip")}";
    }

    /// <summary>Small print: scale, units, origin.</summary>
    public static string Origin(DrawingContext context)
    {
        var code = context.DesignCode is { Length: > 0 } c ? $" · design {Shortened(c)}" : "";
        return $"Scale 1:1 · lettered in {(context.Units == DrawingUnits.Metric ? "millimetres" : "inches")} · engine {context.EngineVersion}{code}";
    }

    // Gram and inch: exact definitions of the international yard and pound agreement.
    private const double GramsPerOunce = 28.349523125;
    private const double Cm2PerSquareInch = 6.4516;

    private static string Shortened(string code) => code.Length <= 24 ? code : code[..24] + "…";
}
