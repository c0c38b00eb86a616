using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Paddle.Design.Units;

namespace Paddle.Drawings.Tests;

public class DrawnLengthTests
{
    [Theory]
    [InlineData(28.575, 16, "1 1/8")]
    [InlineData(28.6, 16, "1 1/8")]
    [InlineData(29, 16, "1 1/8")]
    [InlineData(29, 32, "1 5/32")]
    [InlineData(30, 16, "1 3/16")]
    [InlineData(9.525, 32, "3/8")]
    [InlineData(8, 32, "5/16")]
    [InlineData(150, 16, "5 7/8")]
    [InlineData(150, 32, "5 29/32")]
    [InlineData(1500, 16, "59 1/16")]
    [InlineData(0, 32, "0")]
    [InlineData(0.3, 32, "0")]
    [InlineData(25.2, 32, "1")]
    [InlineData(-28.575, 16, "-1 1/8")]
    public void Fractions_are_nearest_and_reduced(double mm, int denominator, string expected) =>
        Assert.Equal(expected, DrawnLength.InchFigure(mm, denominator));

    [Theory]
    [InlineData(29, DrawingUnits.Metric, "29 mm")]
    [InlineData(29.04, DrawingUnits.Metric, "29 mm")]
    [InlineData(28.6, DrawingUnits.Metric, "28.6 mm")]
    [InlineData(1475, DrawingUnits.Metric, "1475 mm")]
    [InlineData(28.575, DrawingUnits.Inch, "1 1/8 in")]
    [InlineData(300, DrawingUnits.Inch, "11 13/16 in")]
    [InlineData(300.5, DrawingUnits.Inch, "11 13/16 in")]
    [InlineData(1608, DrawingUnits.Inch, "63 5/16 in")]
    public void Lengths_carry_their_unit(double mm, DrawingUnits units, string expected) => Assert.Equal(expected, DrawnLength.Text(mm, units));

    [Theory]
    [InlineData(5.0, DrawingUnits.Metric, "5")]
    [InlineData(5.01, DrawingUnits.Metric, "5.1")]
    [InlineData(28.6, DrawingUnits.Metric, "28.6")]
    [InlineData(5.0, DrawingUnits.Inch, "7/32")]
    [InlineData(4.7625, DrawingUnits.Inch, "3/16")]
    [InlineData(28.6, DrawingUnits.Inch, "1 1/8")] // 1 1/8 in is 28.575 mm: stated to a tenth of a millimetre it is 28.6
    [InlineData(28.7, DrawingUnits.Inch, "1 5/32")]
    public void A_thickness_that_a_limit_holds_is_never_rounded_down(double mm, DrawingUnits units, string expected) =>
        Assert.Equal(expected, DrawnLength.Figure(mm, units, LengthRounding.Up));

    [Theory]
    [InlineData(850, DrawingUnits.Metric, "850", "850.0", "850 mm")]
    [InlineData(1179.2, DrawingUnits.Metric, "1179.2", "1179.2", "1179 mm")]
    [InlineData(863.6, DrawingUnits.Inch, "34", "34", "34 in")]
    [InlineData(8.3, DrawingUnits.Inch, "5/16", "5/16", "5/16 in")]
    public void A_figure_is_short_a_column_lines_up_and_a_finger_finds_no_tenths(
        double mm, DrawingUnits units, string figure, string inColumn, string rough)
    {
        Assert.Equal(figure, DrawnLength.Figure(mm, units));
        Assert.Equal(inColumn, DrawnLength.InColumn(mm, units));
        Assert.Equal(rough, DrawnLength.Rough(mm, units));
    }

    [Theory]
    [InlineData(2.0, DrawingUnits.Metric, "2 mm")]
    [InlineData(0.05, DrawingUnits.Metric, "0.05 mm")]
    [InlineData(2.0, DrawingUnits.Inch, "5/64 in")]
    [InlineData(1.0, DrawingUnits.Inch, "3/64 in")]
    [InlineData(0.5, DrawingUnits.Inch, "1/32 in")]
    [InlineData(0.3, DrawingUnits.Inch, "1/64 in")]
    [InlineData(0.05, DrawingUnits.Inch, "less than 1/64 in")]
    public void What_is_left_on_is_never_less_than_meant(double mm, DrawingUnits units, string expected) =>
        Assert.Equal(expected, DrawnLength.Shaving(mm, units));

    [Theory]
    [InlineData(453.59237, "16.0 oz (454 g)")] // a pound is 16 ounces and 453.59237 g by definition
    [InlineData(687, "24.2 oz (687 g)")]
    public void An_inch_shop_has_ounces_and_grams_beside(double grams, string expected)
    {
        Assert.Equal(expected, DrawnAmount.Mass(grams, DrawingUnits.Inch));
        Assert.DoesNotContain("oz", DrawnAmount.Mass(grams, DrawingUnits.Metric), StringComparison.Ordinal);
    }

    [Fact]
    public void Other_amounts_are_those_of_the_tables()
    {
        // Water at 62.4 lb/ft³, 8 US fluid ounces to the cup of 237 mL, freezing 32 and boiling 212 °F: everyday conversion tables.
        Assert.StartsWith("62 lb/ft³", DrawnAmount.Density(1000, DrawingUnits.Inch), StringComparison.Ordinal);
        Assert.Equal("8.0 fl oz (237 mL)", DrawnAmount.Volume(0.2366, DrawingUnits.Inch));
        Assert.Equal("32-212 °F", DrawnAmount.Temperatures(0, 100, DrawingUnits.Inch));
        Assert.StartsWith("6 oz/yd²", DrawnAmount.Cloth(203, DrawingUnits.Inch), StringComparison.Ordinal);
        Assert.Equal("144 in²", DrawnAmount.Area(929.03, DrawingUnits.Inch));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(128)]
    public void Only_the_fractions_of_a_rule_exist(int denominator) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => DrawnLength.InchFigure(10, denominator));

    [Property(MaxTest = 500)]
    public Property Every_length_reads_back_within_half_a_step_and_up_never_below() => Prop.ForAll(
        Gen.Choose(0, 2_500_000).Select(micrometres => micrometres / 1000.0).ToArbitrary(),
        mm =>
        {
            var half = 25.4 / DrawnLength.Denominator(mm) / 2;
            var nearest = Read(DrawnLength.Figure(mm, DrawingUnits.Inch));
            var up = Read(DrawnLength.Figure(mm, DrawingUnits.Inch, LengthRounding.Up));
            // A tenth of a millimetre is the finest that a size is stated to; half of one is the same size on an inch rule.
            var metricUp = double.Parse(DrawnLength.Figure(mm, DrawingUnits.Metric, LengthRounding.Up), System.Globalization.CultureInfo.InvariantCulture);
            return Math.Abs(nearest - mm) <= half + 1e-9 && up >= mm - 0.0501 && up < mm + 2 * half + 1e-9 && metricUp >= mm - 1e-4 && metricUp < mm + 0.1;
        });

    // Reads "1 5/32" as a maker would, in mm.
    internal static double Read(string figure)
    {
        var inches = 0.0;
        foreach (var part in figure.Split(' '))
        {
            var slash = part.Split('/').Select(int.Parse).ToArray();
            Assert.True(slash.Length == 1 || (slash[0] % 2 == 1 && slash[0] < slash[1]), $"{figure} is not reduced");
            inches += slash.Length == 1 ? slash[0] : slash[0] / (double)slash[1];
        }

        return inches * 25.4;
    }
}
