using System.Text.Json;
using Paddle.Design.Fitting;
using PaddleApi.Hosting.Json;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Fittings;

/// <summary>The way an outfitter's site goes: a person is fitted, and the design of the answer is sent to be designed.</summary>
[Collection(HttpTests.Name)]
public sealed class FittedDesignTests(ApiFixture api)
{
    private static readonly int People = Sweep.Of(100, 2000);

    // Without the harness that holds each answer against its schema: thousands of the same kind tell nothing new.
    private readonly HttpClient client = api.Factory.CreateClient();

    [Fact, Trait(Sweep.Name, Sweep.Full)]
    public async Task Whoever_is_fitted_can_have_the_paddle_designed()
    {
        var random = new Random(31415);
        var achieved = 0;
        for (var i = 0; i < People; i++)
        {
            var body = JsonSerializer.Serialize(Draw(random), StrictJson.Options);
            var (status, fitting) = await client.PostAsync("/v1/fittings", body);
            Assert.True(status == 200, $"{body}\n{fitting}");

            var design = await DesignAsync(fitting.GetProperty("design"), body);
            Assert.Equal(fitting.Number("overallLengthMm", "value"), design.Number("lengths", "overallMm"), 0.011);

            // The shaft that fits the hand is the shaft of the design.
            Assert.Equal(
                (fitting.Number("shaft", "widthMm"), fitting.Number("shaft", "thicknessMm")),
                (design.Number("sizes", "shaftWidthMm"), design.Number("sizes", "shaftThicknessMm")));

            // The fitting takes a family's area by its default proportions, the design by its outline: within 4 % of each other.
            Assert.InRange(fitting.Number("blade", "areaCm2") / design.Number("stroke", "bladeAreaCm2"), 0.96, 1.04);
            if (design.GetProperty("outcome").GetString() == "met") achieved++;
            if (i % 20 == 0)
            {
                foreach (var other in fitting.GetProperty("alternatives").EnumerateArray()) await DesignAsync(other.GetProperty("design"), body);
                Assert.Equal(fitting.GetRawText(), (await client.PostAsync("/v1/fittings", body)).Body.GetRawText());
            }
        }

        // Four in five of so wide a draw meet every aim; the rest, with arms, blades or strokes far from usual, are told how far off and why.
        Assert.InRange(achieved, People * 4 / 5, People);
    }

    private async Task<JsonElement> DesignAsync(JsonElement request, string about)
    {
        var (status, design) = await client.PostAsync("/v1/designs", request.GetRawText());
        Assert.True(status == 200, $"{about}\n{request}\n{design}");
        var balance = design.GetProperty("balance");
        Assert.True(
            balance.GetProperty("achieved").GetBoolean()
                || (balance.GetProperty("advice").GetArrayLength() > 0 && balance.GetProperty("bindingLimits").GetArrayLength() > 0),
            $"Neither solved nor told what binds: {about}\n{request}\n{balance}");
        return design;
    }

    // People scattered about the survey's lines and beyond its ends, each measured as far as it happened, with at least one way to a spacing.
    private static FittingRequest Draw(Random random)
    {
        double Between(double low, double high) => low + (high - low) * random.NextDouble();
        bool Or(double share) => random.NextDouble() < share;
        double? Maybe(double share, double low, double high) => Or(share) ? Math.Round(Between(low, high), 1) : null;
        double? About(double share, Measurement what, double value, double scatter) =>
            Maybe(share, value - scatter, value + scatter) is { } taken ? Math.Clamp(taken, what.Range.Min, what.Range.Max) : null;
        T? Any<T>() where T : struct, Enum => Or(0.7) ? Enum.GetValues<T>()[random.Next(Enum.GetValues<T>().Length)] : null;

        var stature = Between(1000, 2150);
        var spacing = About(1, MeasurementCatalogue.HandSpacing, HandSpacingMethods.FromStature(stature).ValueMm, 90);
        var way = 1 + random.Next(7);
        return new()
        {
            Label = Or(0.5) ? "Heron Lake hire fleet" : null,
            Paddler = new()
            {
                HandSpacingMm = (way & 1) != 0 ? spacing : null,
                ArmSpanMm = (way & 2) != 0 ? About(1, MeasurementCatalogue.ArmSpan, Survey.PooledLine(Survey.ArmSpanLines).At(stature), 60) : null,
                StatureMm = (way & 4) != 0 ? Math.Round(stature, 1) : null,
                SittingHeightMm = About(0.4, MeasurementCatalogue.SittingHeight, Survey.PooledLine(Survey.SittingHeightLines).At(stature), 40),
                ShoulderBreadthMm = Maybe(0.3, 300, 480),
                HandLengthMm = About(0.5, MeasurementCatalogue.HandLength, Survey.PooledLine(Survey.HandLengthLines).At(stature), 20),
                HandBreadthMm = About(0.5, MeasurementCatalogue.HandBreadth, Survey.PooledLine(Survey.HandBreadthLines).At(stature), 9),
                BodyMassKg = Maybe(0.6, 0.75 * BodyMass.FromStatureKg(stature), 1.6 * BodyMass.FromStatureKg(stature)),
            },
            Seat = Or(0.8) ? new() { Posture = Any<Posture>(), HeightAboveWaterMm = Maybe(0.6, 0, 350), Place = Any<SeatPlace>() } : null,
            Water = Or(0.8) ? new() { Kind = Any<WaterKind>(), DepthMm = Maybe(0.5, 100, 2500), TemperatureC = Maybe(0.3, 1, 30) } : null,
            Outing = Or(0.8) ? new() { HoursPerDay = Maybe(0.5, 0.5, 12), StrokesPerMinute = Maybe(0.6, 20, 110), Effort = Any<Effort>(), Purpose = Any<OutingPurpose>() } : null,
            Preferences = Or(0.8) ? new() { SensitiveJoints = Or(0.4), StraighterWrist = Or(0.4), LightCarry = Or(0.4), BentShaft = Or(0.4) } : null,
        };
    }
}
