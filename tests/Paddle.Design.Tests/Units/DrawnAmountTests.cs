using Paddle.Design.Units;

namespace Paddle.Design.Tests.Units;

/// <summary>What the drawings print for an inch shop, against the factors of NIST SP 811 (2008), appendix B.8 (from memory).</summary>
public class DrawnAmountTests
{
    private const double GramsPerOunce = 28.349523125, MlPerFluidOunce = 29.5735295625, KgM3PerLbFt3 = 16.01846337, Cm2PerSquareInch = 6.4516,
        GM2PerOzSquareYard = 33.90575, GramsPerPound = 453.59237;

    [Theory]
    [InlineData("16.0 oz (454 g)", 16 * GramsPerOunce)] // a pound is 16 ounces and 453.59237 g by definition
    [InlineData("24.2 oz (687 g)", 687)]
    [InlineData("100.0 oz (2835 g)", 100 * GramsPerOunce)]
    public void A_mass(string expected, double massG)
    {
        Assert.Equal(expected, DrawnAmount.Mass(massG, DrawingUnits.Inch));
        Assert.Equal(expected.Split(" oz")[0], DrawnAmount.Ounces(massG));
    }

    [Theory]
    [InlineData("172 lb (78 kg)", 78)]
    [InlineData("300 lb (136 kg)", 300 * GramsPerPound / 1000)]
    public void A_body(string expected, double massKg) => Assert.Equal(expected, DrawnAmount.BodyMass(massKg, DrawingUnits.Inch));

    [Theory]
    [InlineData("8.0 fl oz (237 mL)", 8 * MlPerFluidOunce / 1000)] // a cup
    [InlineData("128.0 fl oz (3785 mL)", 128 * MlPerFluidOunce / 1000)] // a gallon
    public void A_volume(string expected, double litres) => Assert.Equal(expected, DrawnAmount.Volume(litres, DrawingUnits.Inch));

    [Theory]
    [InlineData("62 lb/ft³ (1000 kg/m³)", 1000)] // water: 62.4
    [InlineData("40 lb/ft³ (641 kg/m³)", 40 * KgM3PerLbFt3)]
    public void A_density(string expected, double kgM3) => Assert.Equal(expected, DrawnAmount.Density(kgM3, DrawingUnits.Inch));

    [Theory]
    [InlineData("144 in²", 144 * Cm2PerSquareInch)] // a square foot
    [InlineData("120 in²", 774)]
    public void An_area(string expected, double cm2) => Assert.Equal(expected, DrawnAmount.Area(cm2, DrawingUnits.Inch));

    [Theory]
    [InlineData("6 oz/yd² (203 g/m²)", 6 * GM2PerOzSquareYard)]
    [InlineData("3.7 oz/yd² (125 g/m²)", 125)]
    [InlineData("20 oz/yd² (678 g/m²)", 20 * GM2PerOzSquareYard)]
    public void A_cloth(string expected, double gM2) => Assert.Equal(expected, DrawnAmount.Cloth(gM2, DrawingUnits.Inch));

    [Theory]
    [InlineData("32-212 °F", 0, 100)] // water freezes and boils
    [InlineData("-40-98 °F", -40, 36.6)]
    [InlineData("59-77 °F", 15, 25)]
    public void Temperatures(string expected, double fromC, double toC) =>
        Assert.Equal(expected, DrawnAmount.Temperatures(fromC, toC, DrawingUnits.Inch));

    [Fact]
    public void A_metric_shop_reads_no_other_units() => Assert.Equal(
        ["687 g", "78 kg", "103 mL", "560 kg/m³", "120 cm²", "203 g/m²", "15-25 °C"],
        [
            DrawnAmount.Mass(687.4, DrawingUnits.Metric), DrawnAmount.BodyMass(78, DrawingUnits.Metric), DrawnAmount.Volume(0.103, DrawingUnits.Metric),
            DrawnAmount.Density(560.4, DrawingUnits.Metric), DrawnAmount.Area(119.6, DrawingUnits.Metric), DrawnAmount.Cloth(203.4, DrawingUnits.Metric),
            DrawnAmount.Temperatures(15, 25, DrawingUnits.Metric),
        ]);
}
