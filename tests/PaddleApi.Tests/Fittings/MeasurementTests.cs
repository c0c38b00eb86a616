using Paddle.Design.Fitting;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Fittings;

[Collection(HttpTests.Name)]
public sealed class MeasurementTests(ApiFixture api)
{
    [Fact]
    public async Task Every_measurement_that_a_fitting_takes_is_explained()
    {
        var list = await Asking.ReadAsync(await api.Client.GetAsync("/v1/measurements"));
        var measurements = list.GetProperty("measurements").EnumerateArray().ToList();
        var asked = typeof(PaddlerRequest).GetProperties().Select(member => char.ToLowerInvariant(member.Name[0]) + member.Name[1..])
            .Concat(["heightAboveWaterMm", "depthMm"]);

        Assert.Equal(asked.Order(), measurements.Select(one => one.GetProperty("id").GetString()!).Order());
        Assert.All(measurements, one =>
        {
            Assert.NotEqual(0, one.GetProperty("steps").GetArrayLength());
            Assert.True(one.Number("typicalError") > 0);
            Assert.True(one.Number("range", "min") < one.Number("range", "max"));
            Assert.Contains("no source", one.GetProperty("source").GetString(), StringComparison.Ordinal);
        });
    }

    // What the list promises holds at the ends of each range, in a request with nothing else to contradict it.
    [Fact]
    public async Task The_ranges_listed_are_those_enforced()
    {
        var list = await Asking.ReadAsync(await api.Client.GetAsync("/v1/measurements"));
        foreach (var id in (string[])["handSpacingMm", "statureMm", "armSpanMm"])
        {
            var range = list.GetProperty("measurements").EnumerateArray().Single(one => one.GetProperty("id").GetString() == id).GetProperty("range");
            double low = range.Number("min"), high = range.Number("max");
            foreach (var (value, status) in new[] { (low - 0.1, 422), (low, 200), (high, 200), (high + 0.1, 422) })
            {
                var body = FormattableString.Invariant($$$"""{"paddler":{"{{{id}}}":{{{value}}}}}""");
                Assert.Equal((body, status), (body, (await api.Client.PostAsync("/v1/fittings", body)).Status));
            }
        }
    }
}
