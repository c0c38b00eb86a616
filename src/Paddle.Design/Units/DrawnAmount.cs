using System.Globalization;

namespace Paddle.Design.Units;

/// <summary>Prints what is weighed, poured or felt as a shop of one system says it; an inch shop has grams beside its ounces.</summary>
/// <remarks>1 lb = 453.59237 g exactly (international yard and pound agreement, 1959); US fluid ounce = 29.5735295625 mL (231 in³ to the gallon).</remarks>
internal static class DrawnAmount
{
    private const double GramsPerPound = 453.59237;
    private const double GramsPerOunce = GramsPerPound / 16;
    private const double MlPerFluidOunce = 29.5735295625;
    private const double KgM3PerLbFt3 = 16.018463374;
    private const double Cm2PerSquareInch = 6.4516;
    private const double GM2PerOzSquareYard = 33.905747;

    /// <summary>A mass: <c>687 g</c> or <c>24.2 oz (687 g)</c>.</summary>
    public static string Mass(double massG, DrawingUnits units) => Beside(Ounces(massG), "oz", massG, "g", units);

    /// <summary>A person's mass: <c>78 kg</c> or <c>172 lb (78 kg)</c>.</summary>
    public static string BodyMass(double massKg, DrawingUnits units) => Beside(Number(1000 * massKg / GramsPerPound, "0"), "lb", massKg, "kg", units);

    /// <summary>Ounces to a tenth, without the unit.</summary>
    public static string Ounces(double massG) => Number(massG / GramsPerOunce, "0.0");

    /// <summary>A volume: <c>103 mL</c> or <c>3.5 fl oz (103 mL)</c>.</summary>
    /// <param name="litres">The volume, L.</param>
    public static string Volume(double litres, DrawingUnits units) =>
        Beside(Number(1000 * litres / MlPerFluidOunce, "0.0"), "fl oz", 1000 * litres, "mL", units);

    /// <summary>A density: <c>560 kg/m³</c> or <c>35 lb/ft³ (560 kg/m³)</c>.</summary>
    /// <param name="kgM3">The density, kg/m³.</param>
    public static string Density(double kgM3, DrawingUnits units) => Beside(Number(kgM3 / KgM3PerLbFt3, "0"), "lb/ft³", kgM3, "kg/m³", units);

    /// <summary>An area of cloth or blade: <c>120 cm²</c> or <c>19 in²</c>.</summary>
    /// <param name="cm2">The area, cm².</param>
    public static string Area(double cm2, DrawingUnits units) =>
        units == DrawingUnits.Metric ? Number(cm2, "0") + " cm²" : Number(cm2 / Cm2PerSquareInch, "0") + " in²";

    /// <summary>A weight of cloth: <c>203 g/m²</c> or <c>6 oz/yd² (203 g/m²)</c>.</summary>
    /// <param name="gM2">The weight, g/m².</param>
    public static string Cloth(double gM2, DrawingUnits units) => Beside(Number(gM2 / GM2PerOzSquareYard, "0.#"), "oz/yd²", gM2, "g/m²", units);

    /// <summary>A temperature: <c>20 °C</c> or <c>68 °F</c>.</summary>
    public static string Temperature(double temperatureC, DrawingUnits units) =>
        units == DrawingUnits.Metric ? $"{Number(temperatureC, "0")} °C" : $"{Number(32 + 1.8 * temperatureC, "0")} °F";

    /// <summary>A range of temperatures: <c>15-25 °C</c> or <c>59-77 °F</c>.</summary>
    public static string Temperatures(double fromC, double toC, DrawingUnits units) => units == DrawingUnits.Metric
        ? $"{Number(fromC, "0")}-{Number(toC, "0")} °C"
        : $"{Number(32 + 1.8 * fromC, "0")}-{Number(32 + 1.8 * toC, "0")} °F";

    private static string Beside(string figure, string unit, double metric, string metricUnit, DrawingUnits units)
    {
        var own = $"{Number(metric, "0")} {metricUnit}";
        return units == DrawingUnits.Metric ? own : $"{figure} {unit} ({own})";
    }

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
