using System.Globalization;
using System.Text;
using FsCheck.Xunit;
using PaddleApi.Contracts.Numbers;

namespace PaddleApi.Tests.Designs;

public sealed class JsonNumbersTests
{
    public static TheoryData<double> Awkward => new(
        0, -0.0, 1, -1, 0.5, -0.5, 0.005, -0.005, 0.004999999999999999, 0.125, 0.375, 1.005, 1.115, 2.675, 0.285, 1e-9, -1e-9, 1e-300,
        double.Epsilon, 9.995, 99.995, 999.9999, 123456.789, -98765.4321, 4503599627370495.5, 9007199254740991, 9007199254740992 / 100.0,
        0.1 + 0.2, Math.PI, -Math.E, 1588, 938.0000000001, 0.04, 1e15);

    [Theory]
    [MemberData(nameof(Awkward))]
    public void Fixed_numbers_read_as_the_platform_writes_them(double value)
    {
        for (var decimals = 0; decimals <= 4; decimals++)
        {
            if (Math.Abs(value) * Math.Pow(10, decimals) < 9007199254740992) Assert.Equal(Platform(value, decimals), Fixed(value, decimals));
        }
    }

    [Property(MaxTest = 2000)]
    public void Any_number_of_a_report_reads_as_the_platform_writes_it(int units, ushort parts)
    {
        var value = units / 1000.0 + parts / 7e6;
        for (var decimals = 0; decimals <= 4; decimals++) Assert.Equal(Platform(value, decimals), Fixed(value, decimals));
    }

    [Property(MaxTest = 2000)]
    public void Halves_round_as_the_platform_rounds_them(int units)
    {
        var value = units / 100.0 + 0.005;
        Assert.Equal(Platform(value, 2), Fixed(value, 2));
    }

    [Theory]
    [InlineData(1e18)]
    [InlineData(-1.7976931348623157e308)]
    [InlineData(9.007199254740993e15)]
    public void Huge_numbers_keep_every_digit(double value) =>
        Assert.Equal(value, double.Parse(Fixed(value, 2), CultureInfo.InvariantCulture));

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void What_is_no_number_is_null(double value)
    {
        Assert.Equal("null", Fixed(value, 2));
        Assert.Equal("null", Significant(value, 3));
    }

    [Theory]
    [InlineData(-0.001)]
    [InlineData(-0.0)]
    [InlineData(-1e-200)]
    public void There_is_no_negative_zero(double value) => Assert.Equal("0", Fixed(value, 2));

    [Theory]
    [InlineData(0, 3, "0")]
    [InlineData(12.3456, 3, "12.3")]
    [InlineData(12.35, 3, "12.3")] // the nearest double lies below the half
    [InlineData(12.25, 3, "12.2")]
    [InlineData(12.75, 3, "12.8")]
    [InlineData(99.96, 3, "100")]
    [InlineData(0.0123456, 3, "0.0123")]
    [InlineData(-0.0123456, 3, "-0.0123")]
    [InlineData(0.1, 3, "0.1")]
    [InlineData(1, 3, "1")]
    [InlineData(11987.4, 3, "12000")]
    [InlineData(11950, 3, "12000")]
    [InlineData(11949.9, 3, "11900")]
    [InlineData(0.167049, 4, "0.167")]
    [InlineData(0.854649, 4, "0.8546")]
    [InlineData(1000, 1, "1000")]
    [InlineData(1e-12, 3, "0")]
    [InlineData(1e300, 3, "1E+300")]
    public void Significant_digits_are_counted_from_the_first(double value, int digits, string text) => Assert.Equal(text, Significant(value, digits));

    private static string Fixed(double value, int decimals)
    {
        Span<byte> text = stackalloc byte[JsonNumbers.MostBytes];
        return Encoding.ASCII.GetString(text[..JsonNumbers.WriteFixed(value, decimals, text)]);
    }

    private static string Significant(double value, int digits)
    {
        Span<byte> text = stackalloc byte[JsonNumbers.MostBytes];
        return Encoding.ASCII.GetString(text[..JsonNumbers.WriteSignificant(value, digits, text)]);
    }

    private static string Platform(double value, int decimals)
    {
        var text = value.ToString($"F{decimals}", CultureInfo.InvariantCulture);
        if (text.Contains('.', StringComparison.Ordinal)) text = text.TrimEnd('0').TrimEnd('.');
        return text == "-0" ? "0" : text;
    }
}
