using System.Globalization;
using Paddle.Design;
using Paddle.Design.Units;
using Paddle.Design.Wood;

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
        WoodCatalogue.Find(report.Specification.Wood.Species)?.CommonName ?? report.Specification.Wood.Species;

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
        string UpText(double mm) => DrawnLength.Text(mm, units, LengthRounding.Up);
        string N(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
        return
        [
            new("Overall", L(places.OverallMm)),
            new("Between the hands", L(places.HandSpacingMm)),
            new("Blade, length × width", $"{F(places.BladeMm)} × {L(form.Blade.WidthMm)}"),
            new("Shaft at lower hand", $"{Up(sizes.ShaftWidthMm)} × {UpText(sizes.ShaftThicknessMm)}"),
            new("Shaft below grip", $"{Up(sizes.UpperWidthMm)} × {UpText(sizes.UpperThicknessMm)}"),
            new("Blade spine, throat · middle · tip", $"{Up(sizes.ThroatThicknessMm)} · {Up(sizes.MiddleThicknessMm)} · {UpText(sizes.TipThicknessMm)}"),
            new("Blade edge", UpText(sizes.EdgeThicknessMm)),
            new("Wood", $"{WoodName(report)}, {N(wood.MoisturePercent, "0.#")} %, {DrawnAmount.Density(wood.DensityKgM3, units)}"),
            new("Weight, finished", DrawnAmount.Mass(report.Finished.MassG, units)),
            new("Balance, finished", FromHand(report, report.Finished.CentreOfMassMm, units)),
            new("Weight, bare wood", DrawnAmount.Mass(report.Mass.TotalG, units)),
            new("Balance, bare wood", FromHand(report, report.Mass.CentreOfMassMm, units)),
            new("Finish", Words.Capital(report.Specification.Finish.InWords())),
            new("Least safety factor, of asked", $"{N(governing.SafetyFactor, "0.00")} of {N(governing.Case.LeastFactor, "0.00")}, {governing.Case.Name}"),
            new("Bench flex", L(report.Flex.BenchFlexMm)),
            new("Blade area", DrawnAmount.Area(report.Stroke.BladeAreaCm2, units)),
        ];
    }

    /// <summary>A balance point seen from the lower hand; a finger finds one to a millimetre or two.</summary>
    /// <param name="report">The design.</param>
    /// <param name="balanceMm">The balance point, mm from the top of the grip.</param>
    public static string FromHand(DesignReport report, double balanceMm, DrawingUnits units)
    {
        var offMm = balanceMm - report.Specification.Form.Places.LowerHandMm;
        var off = DrawnLength.Rough(Math.Abs(offMm), units);
        return off == DrawnLength.Rough(0, units) ? "at the lower hand" : $"{off} towards the {(offMm > 0 ? "blade" : "grip")}";
    }

    /// <summary>Small print: scale, units, origin.</summary>
    public static string Origin(DrawingContext context)
    {
        var code = context.DesignCode is { Length: > 0 } c ? $" · design {Shortened(c)}" : "";
        return $"Scale 1:1 · lettered in {(context.Units == DrawingUnits.Metric ? "millimetres" : "inches")} · engine {context.EngineVersion}{code}";
    }

    private static string Shortened(string code) => code.Length <= 24 ? code : code[..24] + "…";
}
