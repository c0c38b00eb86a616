using System.Globalization;
using System.Text;
using Paddle.Design.Units;
using Paddle.Drawings.Tests.Support;

namespace Paddle.Drawings.Tests;

public class OffsetsCsvTests
{
    public static TheoryData<string> Families() => SampleDesigns.Families();

    [Theory]
    [MemberData(nameof(Families))]
    public void Every_row_gives_the_solid_in_both_units(string family)
    {
        var report = SampleDesigns.Varied(family);
        var rows = Rows(family, DrawingUnits.Metric);
        var last = -1.0;
        foreach (var row in rows)
        {
            double x = N(row[1]), half = N(row[2]), centre = N(row[3]), edge = N(row[4]);
            Assert.True(x > last);
            last = x;
            Assert.Equal(report.Outline.HalfBreadthMm(Math.Min(x, report.Outline.EndMm)), half, x > report.Outline.EndMm - 1 ? 0.5 : 0.012);
            Assert.True(centre >= edge && edge >= 0);
            Assert.Equal(x, InchRule.Read(row[5]), x > 300 ? 0.8 : 0.4);
            Assert.Equal(half, InchRule.Read(row[6]), 0.41);

            // Rounded up, but half a tenth of a millimetre is no step of an inch rule.
            Assert.InRange(InchRule.Read(row[7]), centre - 0.06, centre + 0.81);
            Assert.InRange(InchRule.Read(row[8]), edge - 0.06, edge + 0.81);
        }

        Assert.Equal(0, N(rows[0][1]));
        Assert.Equal(report.Specification.Form.Places.OverallMm, last, 0.01);
    }

    [Fact]
    public void Marks_are_named_and_their_sizes_are_the_designs()
    {
        var report = SampleDesigns.Of("ottertail");
        var rows = Rows("ottertail", DrawingUnits.Metric);
        var throat = Assert.Single(rows, row => row[0] == "throat");
        Assert.Equal(report.Sizes.ShaftThicknessMm, N(throat[3]), 0.01);
        Assert.Equal(report.Sizes.ShaftWidthMm / 2, N(throat[2]), 0.01);
        var widest = Assert.Single(rows, row => row[0] == "widest");
        Assert.Equal(report.Specification.Form.Blade.HalfWidthMm, N(widest[2]), 0.01);
        Assert.Contains(rows, row => row[0] == "lower hand");
        Assert.Contains(rows, row => row[0] == "tip");
    }

    [Fact]
    public void Stations_stand_closer_where_the_shape_turns()
    {
        var report = SampleDesigns.Of("ottertail");
        var xs = Rows("ottertail", DrawingUnits.Metric).Select(row => N(row[1])).ToArray();
        var overall = report.Specification.Form.Places.OverallMm;
        for (var i = 1; i < xs.Length; i++) Assert.True(xs[i] - xs[i - 1] <= (xs[i] > overall - 75 ? 25.01 : 50.01), $"gap before {xs[i]}");
    }

    private static string[][] Rows(string family, DrawingUnits units)
    {
        using var stream = new MemoryStream();
        DesignFiles.Find("offsets.csv")!.Write(SampleDesigns.Varied(family), SampleDesigns.Context(units), stream);
        var text = Encoding.UTF8.GetString(stream.ToArray());
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        Assert.StartsWith("mark,station_mm,half_breadth_mm,", text, StringComparison.Ordinal);
        string[][] rows = [.. CsvReader.Rows(text).Skip(1).Select(row => row.ToArray())];
        Assert.All(rows, row => Assert.Equal(10, row.Length));
        return rows;
    }

    private static double N(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
