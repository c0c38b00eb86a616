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
    [InlineData(29, DrawingUnits.Metric, "29.0 mm")]
    [InlineData(29.04, DrawingUnits.Metric, "29.0 mm")]
    [InlineData(28.575, DrawingUnits.Inch, "1 1/8 in")]
    [InlineData(300, DrawingUnits.Inch, "11 13/16 in")]
    [InlineData(300.5, DrawingUnits.Inch, "11 13/16 in")]
    [InlineData(1608, DrawingUnits.Inch, "63 5/16 in")]
    public void Lengths_carry_their_unit(double mm, DrawingUnits units, string expected) => Assert.Equal(expected, DrawnLength.Text(mm, units));

    [Theory]
    [InlineData(5.0, DrawingUnits.Metric, "5.0")]
    [InlineData(5.01, DrawingUnits.Metric, "5.1")]
    [InlineData(28.6, DrawingUnits.Metric, "28.6")]
    [InlineData(5.0, DrawingUnits.Inch, "7/32")]
    [InlineData(4.7625, DrawingUnits.Inch, "3/16")]
    public void A_thickness_that_a_limit_holds_is_never_rounded_down(double mm, DrawingUnits units, string expected) =>
        Assert.Equal(expected, DrawnLength.Figure(mm, units, LengthRounding.Up));

    [Theory]
    [InlineData(850, DrawingUnits.Metric, "850")]
    [InlineData(1179.2, DrawingUnits.Metric, "1179.2")]
    [InlineData(863.6, DrawingUnits.Inch, "34")]
    public void Places_are_short(double mm, DrawingUnits units, string expected) => Assert.Equal(expected, DrawnLength.Place(mm, units));

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
            var metricUp = double.Parse(DrawnLength.Figure(mm, DrawingUnits.Metric, LengthRounding.Up), System.Globalization.CultureInfo.InvariantCulture);
            return Math.Abs(nearest - mm) <= half + 1e-9 && up >= mm - 1e-4 && up < mm + 2 * half + 1e-9 && metricUp >= mm - 1e-4 && metricUp < mm + 0.1;
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
