using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Paddle.Design.Units;

namespace Paddle.Design.Tests.Units;

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
    [InlineData(28.62, DrawingUnits.Inch, "1 1/8")] // 0.045 mm over: the same on a rule
    [InlineData(28.63, DrawingUnits.Inch, "1 5/32")] // 0.055 mm over: not the same
    [InlineData(-28.3, DrawingUnits.Inch, "-1 1/8")] // below nothing there is nothing to leave on: the nearest
    public void A_thickness_that_a_limit_holds_is_never_rounded_down(double mm, DrawingUnits units, string expected) =>
        Assert.Equal(expected, DrawnLength.Figure(mm, units, LengthRounding.Up));

    [Theory]
    [InlineData(850, DrawingUnits.Metric, "850", "850.0", "850 mm")]
    [InlineData(1179.2, DrawingUnits.Metric, "1179.2", "1179.2", "1179 mm")]
    [InlineData(1179.5, DrawingUnits.Metric, "1179.5", "1179.5", "1180 mm")]
    [InlineData(-0.04, DrawingUnits.Metric, "0", "0.0", "0 mm")]
    [InlineData(-2.55, DrawingUnits.Metric, "-2.6", "-2.6", "-3 mm")]
    [InlineData(-0.2, DrawingUnits.Inch, "0", "0", "0 in")]
    [InlineData(10, DrawingUnits.Inch, "13/32", "13/32", "3/8 in")]
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
    [InlineData(0.19, DrawingUnits.Inch, "less than 1/64 in")] // half of 1/64 in is 0.198 mm
    [InlineData(0.2, DrawingUnits.Inch, "1/64 in")]
    [InlineData(0.05, DrawingUnits.Inch, "less than 1/64 in")]
    [InlineData(3.45, DrawingUnits.Inch, "9/64 in")] // 8.69 sixty-fourths
    [InlineData(3.6, DrawingUnits.Inch, "5/32 in")] // 4.54 thirty-seconds
    [InlineData(310, DrawingUnits.Inch, "12 1/4 in")] // 195.3 sixteenths
    [InlineData(0, DrawingUnits.Inch, "0 in")]
    public void What_is_left_on_is_never_less_than_meant(double mm, DrawingUnits units, string expected) =>
        Assert.Equal(expected, DrawnLength.Shaving(mm, units));

    [Theory]
    [InlineData(76.2, 1, "3")]
    [InlineData(-25.4 / 32, 32, "-1/32")]
    [InlineData(-0.1, 32, "0")]
    public void Whole_inches_are_a_rule_too_and_the_least_step_back_has_its_sign(double mm, int denominator, string expected) =>
        Assert.Equal(expected, DrawnLength.InchFigure(mm, denominator));

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
            var nearest = InchRule.Read(DrawnLength.Figure(mm, DrawingUnits.Inch));
            var up = InchRule.Read(DrawnLength.Figure(mm, DrawingUnits.Inch, LengthRounding.Up));
            // A tenth of a millimetre is the finest that a size is stated to; half of one is the same size on an inch rule.
            var metricUp = double.Parse(DrawnLength.Figure(mm, DrawingUnits.Metric, LengthRounding.Up), System.Globalization.CultureInfo.InvariantCulture);
            return Math.Abs(nearest - mm) <= half + 1e-9 && up >= mm - 0.0501 && up < mm + 2 * half + 1e-9 && metricUp >= mm - 1e-4 && metricUp < mm + 0.1;
        });
}
