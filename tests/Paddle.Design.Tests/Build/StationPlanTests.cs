using Paddle.Design.Build;
using Paddle.Design.Units;

namespace Paddle.Design.Tests.Build;

public class StationPlanTests
{
    public static TheoryData<string, DrawingUnits> Paddles()
    {
        var data = new TheoryData<string, DrawingUnits>();
        foreach (var family in (string[])["ottertail", "teardrop", "square-tip", "voyageur"])
        {
            foreach (var units in Enum.GetValues<DrawingUnits>()) data.Add(family, units);
        }

        return data;
    }

    [Theory, MemberData(nameof(Paddles))]
    public void Stations_lie_on_the_makers_rule_and_at_what_is_marked_anyway(string family, DrawingUnits units)
    {
        var form = BuildSamples.Design(family, "black-cherry").Specification.Form;
        var stations = StationPlan.Of(form, units);
        var half = units == DrawingUnits.Metric ? 25 : 25.4;

        Assert.Equal(Enumerable.Range(1, stations.Count), stations.Select(station => station.Number));
        Assert.Equal(
            ["grip top", "top hand", "grip end", "lower hand", "throat", "widest", "tip"],
            stations.Where(station => station.Mark.Length > 0).Select(station => station.Mark));
        Assert.Equal((0, form.Places.OverallMm), (stations[0].XMm, stations[^1].XMm));
        Assert.All(stations.Where(station => station.Mark.Length == 0), station => Assert.Equal(0, Math.IEEERemainder(station.XMm, half), 1e-9));

        // Never further apart than 50 mm or 2 in, half of that near the throat and the tip, and no two under one pencil line.
        foreach (var (one, next) in stations.Zip(stations.Skip(1)))
        {
            var close = Math.Abs(one.XMm - form.Places.ThroatMm) < 35 || one.XMm > form.Places.OverallMm - 70;
            Assert.InRange(next.XMm - one.XMm, 0.5, (close ? half : 2 * half) + 0.5);
        }
    }

    [Fact]
    public void The_shops_steps_are_fifty_millimetres_and_two_inches() =>
        Assert.Equal((50, 50.8), (StationPlan.StepMm(DrawingUnits.Metric), StationPlan.StepMm(DrawingUnits.Inch)));

    [Theory]
    [InlineData(24.0, "1 1/8 in", "21/64 in", "15/32 in")]
    [InlineData(29.5, "1 1/2 in", "7/16 in", "5/8 in")]
    [InlineData(37.0, "1 1/2 in", "7/16 in", "5/8 in")]
    [InlineData(37.2, "1 7/8 in", "35/64 in", "25/32 in")]
    public void A_spar_gauge_in_inches_is_set_out_with_the_marks_of_a_rule(double widest, string between, string first, string apart)
    {
        // 7 : 10 : 7 of 24 parts, as the trade's gauge for an inch and a half is set out: 7/16, 5/8 and 7/16 in.
        var gauge = SparGauge.For(widest, DrawingUnits.Inch);
        Assert.Equal((between, first, apart), (gauge.Between(DrawingUnits.Inch), gauge.First(DrawingUnits.Inch), gauge.Apart(DrawingUnits.Inch)));
        Assert.True(gauge.BetweenFencesMm >= widest + 1 - 1e-9);
        Assert.Equal(gauge.BetweenFencesMm, gauge.FirstPointMm + gauge.BetweenPointsMm + gauge.LastPointMm, 1e-9);
    }

    [Fact]
    public void Bits_are_those_of_the_shops_own_system()
    {
        Assert.All(RoundOver.Choices(29, 31), bit => Assert.EndsWith(" mm", bit.Name));
        Assert.All(RoundOver.Choices(29, 31, DrawingUnits.Inch), bit => Assert.EndsWith(" in", bit.Name));
        Assert.Equal(["1/2 in", "3/8 in", "5/16 in"], RoundOver.Choices(29, 31, DrawingUnits.Inch).Select(bit => bit.Name));
    }
}
