using System.Text.Json;
using Paddle.Design.Fitting;
using PaddleApi.Endpoints.Fittings;
using PaddleApi.Hosting.Json;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Fittings;

[Collection(HttpTests.Name)]
public sealed class FittingHttpTests(ApiFixture api)
{
    private const string Address = "/v1/fittings";

    [Fact]
    public async Task The_guest_of_the_hire_fleet_gets_a_paddle_with_its_methods_and_reasons()
    {
        var (status, answer) = await api.Client.PostAsync(Address, File.ReadAllText("Examples/fitting.json"));

        Assert.Equal(200, status);
        Assert.Equal(880, answer.Number("handSpacingMm", "value"));
        Assert.Equal((870, 890), (answer.Number("handSpacingMm", "low"), answer.Number("handSpacingMm", "high"))); // the bar's 10 mm
        Assert.Equal("ottertail", answer.GetProperty("blade").GetProperty("family").GetString());
        Assert.Equal("pear", answer.GetProperty("grip").GetProperty("style").GetString());
        Assert.Equal("sitka-spruce", answer.GetProperty("design").GetProperty("wood").GetProperty("species").GetString());

        // The lengths add up: grip hand + spacing + freeboard + blade.
        var sum = answer.Number("grip", "topHandMm") + 880 + answer.Number("freeboardMm") + answer.Number("blade", "lengthMm");
        Assert.Equal(answer.Number("overallLengthMm", "value"), sum);

        var methods = answer.GetProperty("methods").EnumerateArray().ToList();
        Assert.All(methods, method => Assert.True(method.Number("standardErrorMm") > 0 && method.GetProperty("source").GetString()!.Length > 0));
        Assert.Equal(["bar-on-head"], methods.Where(method => Is(method, "handSpacingMm", "used")).Select(Id));
        Assert.Equal(["arm-span", "stature"], methods.Where(method => Is(method, "handSpacingMm", "check")).Select(Id));
        Assert.Equal(["service-geometry"], methods.Where(method => Is(method, "overallLengthMm", "used")).Select(Id));
        Assert.False(answer.GetProperty("lengthRules").GetProperty("flagged").GetBoolean());
        Assert.Equal("touring", answer.GetProperty("duty").GetString());

        // The shaft that fits is the shaft that is asked for.
        var shaft = answer.GetProperty("design").GetProperty("shaft");
        Assert.Equal((answer.Number("shaft", "widthMm"), answer.Number("shaft", "thicknessMm")), (shaft.Number("widthMm"), shaft.Number("thicknessMm")));
        Assert.Equal(2, answer.GetProperty("alternatives").GetArrayLength());
        Assert.NotEqual(0, answer.GetProperty("reasons").GetArrayLength());
        Assert.DoesNotContain(answer.GetProperty("cautions").Texts("id"), id => id.StartsWith("doubtful", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_stature_alone_is_answered_with_its_wide_band()
    {
        var (status, answer) = await api.Client.PostAsync(Address, """{"paddler":{"statureMm":1756}}""");

        // -72.8 + 0.5481 · 1756 = 889.7; error √(32² + 5.481² + 36²) = 48.5 mm either side of 890.
        Assert.Equal(200, status);
        Assert.Equal(890, answer.Number("handSpacingMm", "value"));
        Assert.Equal((842, 938), (answer.Number("handSpacingMm", "low"), answer.Number("handSpacingMm", "high")));
    }

    [Theory]
    [InlineData("fast-water", "square-tip", "t", "matching")]
    [InlineData("shallow", "sugar-island", "pear", "matching")]
    [InlineData("river", "sugar-island", "pear", "matching")]
    [InlineData("deep-lake", "ottertail", "pear", "matching")]
    public async Task The_water_chooses_blade_and_grip(string kind, string family, string grip, string faces)
    {
        var (_, answer) = await api.Client.PostAsync(Address, $$$"""{"paddler":{"statureMm":1756},"water":{"kind":"{{{kind}}}"}}""");
        var design = answer.GetProperty("design");

        Assert.Equal(family, design.GetProperty("blade").GetProperty("family").GetString());
        Assert.Equal(grip, design.GetProperty("grip").GetProperty("style").GetString());
        Assert.Equal(faces, design.GetProperty("grip").GetProperty("faces").GetString());
    }

    [Fact]
    public async Task Water_too_shallow_is_said_and_the_blade_shortened()
    {
        var (_, answer) = await api.Client.PostAsync(Address, """{"paddler":{"statureMm":1756},"water":{"depthMm":640}}""");

        Assert.False(answer.GetProperty("immersion").GetProperty("fits").GetBoolean());
        Assert.True(answer.Number("immersion", "neededMm") > 640);
        Assert.Equal(590, answer.Number("blade", "lengthMm"));
        Assert.Contains(answer.GetProperty("reasons").EnumerateArray(), reason => reason.GetString()!.Contains("kept to 590 mm", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_measured_spacing_far_from_stature_warns_and_further_off_is_refused()
    {
        var (warned, answer) = await api.Client.PostAsync(Address, """{"paddler":{"handSpacingMm":1020,"statureMm":1756}}""");
        var (refused, problem) = await api.Client.PostAsync(Address, """{"paddler":{"handSpacingMm":620,"statureMm":1756}}""");

        Assert.Equal((200, 422), (warned, refused));
        Assert.Contains("doubtful-handSpacingMm", answer.GetProperty("cautions").Texts("id"));
        Assert.Equal(1020, answer.Number("handSpacingMm", "value"));
        Assert.Contains("cannot belong to one person", problem.Fault("/paddler/handSpacingMm").GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    public static TheoryData<string, string, string, string, string[]> Refused => new()
    {
        { "{}", "/paddler", "no-way-to-hand-spacing", "hand spacing by a bar on the head, arm span, stature", ["handSpacingMm", "armSpanMm", "statureMm"] },
        { """{"paddler":{"handLengthMm":190,"bodyMassKg":80}}""", "/paddler", "no-way-to-hand-spacing", "hand spacing", ["handSpacingMm", "armSpanMm", "statureMm"] },
        { """{"paddler":{"shoulderBreadthMm":400}}""", "/paddler", "no-way-to-hand-spacing", "hand spacing", ["handSpacingMm", "armSpanMm", "statureMm"] },
        { """{"paddler":{"statureMm":1750},"seat":{"heightAboveWaterMm":-20}}""", "/seat/heightAboveWaterMm", "seat-below-water", "below the water", ["heightAboveWaterMm"] },
        { """{"paddler":{"statureMm":1750,"armSpanMm":1400}}""", "/paddler/armSpanMm", "measurements-contradict", "cannot belong to one person", ["armSpanMm", "statureMm"] },
        { """{"paddler":{"statureMm":1900,"bodyMassKg":32}}""", "/paddler/bodyMassKg", "body-mass-impossible", "nobody's body", ["bodyMassKg", "statureMm"] },
        { """{"paddler":{"statureMm":175}}""", "/paddler/statureMm", "out-of-range", "outside 900 to 2200 mm", ["statureMm"] },
        { """{"paddler":{"statureMm":1750},"water":{"depthMm":5}}""", "/water/depthMm", "out-of-range", "outside", ["depthMm"] },
    };

    [Theory, MemberData(nameof(Refused))]
    public async Task People_and_boats_that_cannot_be_are_refused_with_what_to_measure(string body, string place, string code, string why, string[] measure)
    {
        var (status, problem) = await api.Client.PostAsync(Address, body);
        var fault = problem.Fault(place);

        Assert.Equal(422, status);
        Assert.Equal(code, fault.GetProperty("code").GetString());
        var reason = fault.GetProperty("reason").GetString()!;
        Assert.Contains(why, reason, StringComparison.Ordinal);
        Assert.DoesNotContain(measure, id => reason.Contains(id, StringComparison.Ordinal)); // names in sentences, ids in their list
        Assert.Equal(measure, fault.GetProperty("measureInstead").EnumerateArray().Select(id => id.GetString()));
        Assert.Single(problem.GetProperty("errors").EnumerateObject());
    }

    [Theory]
    [InlineData("""{"paddler":{"statureMm":1756},"outing":{"purpose":"trip"}}""", "expedition", 0)]
    [InlineData("""{"paddler":{"statureMm":1756},"water":{"kind":"river"}}""", "expedition", 0)]
    [InlineData("""{"paddler":{"statureMm":1756},"outing":{"purpose":"race"},"seat":{"posture":"sitting"}}""", "racing", 12)]
    [InlineData("""{"paddler":{"statureMm":1756},"preferences":{"bentShaft":true},"seat":{"posture":"sitting"}}""", "touring", 12)]
    [InlineData("""{"paddler":{"statureMm":1756},"preferences":{"bentShaft":true}}""", "touring", 0)]
    [InlineData("""{"paddler":{"statureMm":1756},"outing":{"effort":"hard","strokesPerMinute":80},"seat":{"posture":"sitting"}}""", "touring", 0)]
    public async Task The_outing_chooses_the_duty_and_the_seat_the_bend(string body, string duty, double bend)
    {
        var (_, answer) = await api.Client.PostAsync(Address, body);

        Assert.Equal((duty, bend), (answer.GetProperty("duty").GetString(), answer.Number("blade", "bendDegrees")));
    }

    // Children's paddles run from 36 to 48 in (common practice, no source).
    [Theory]
    [InlineData(1000, 914, 1020)]
    [InlineData(1200, 1050, 1200)]
    public async Task A_child_gets_a_childs_paddle_that_can_be_designed(double statureMm, double leastMm, double mostMm)
    {
        var (_, answer) = await api.Client.PostAsync(Address, FormattableString.Invariant($$$"""{"paddler":{"statureMm":{{{statureMm}}}}}"""));
        var (status, design) = await api.Client.PostAsync("/v1/designs", answer.GetProperty("design").GetRawText());

        Assert.InRange(answer.Number("overallLengthMm", "value"), leastMm, mostMm);
        Assert.Equal(200, status);
        Assert.InRange(design.Number("sizes", "shaftWidthMm"), 20, 24);
        Assert.True(design.Number("mass", "totalG") < 400);
    }

    // 880 mm is 34 10/16 in, 28.6 mm the trade's 1 1/8 in, 78 kg 172 lb (1 in = 25.4 mm, 1 lb = 0.45359237 kg, both exactly).
    [Fact]
    public async Task A_shop_that_measures_in_inches_is_answered_in_them()
    {
        const string Asked = "{\"paddler\":{\"handSpacingMm\":880,\"bodyMassKg\":78},\"drawing\":{\"units\":\"inch\"}}";
        var (status, answer) = await api.Client.PostAsync(Address, Asked);
        var (_, metric) = await api.Client.PostAsync(Address, Asked.Replace("inch", "metric", StringComparison.Ordinal));

        Assert.Equal(200, status);
        Assert.Contains("The hand spacing of 34 5/8 in was", answer.GetProperty("reasons")[0].GetString(), StringComparison.Ordinal);
        Assert.Contains("The hand spacing of 880 mm was", metric.GetProperty("reasons")[0].GetString(), StringComparison.Ordinal);
        string[] said = [.. answer.GetProperty("reasons").EnumerateArray().Select(reason => reason.GetString()!)];
        Assert.Contains(said, reason => reason.Contains("172 lb (78 kg)", StringComparison.Ordinal));
        Assert.All(answer.GetProperty("alternatives").EnumerateArray().Select(other => other.GetProperty("design")).Append(answer.GetProperty("design")),
            design => Assert.Equal("inch", design.GetProperty("drawing").GetProperty("units").GetString()));
        Assert.DoesNotContain(said, reason => reason.Contains(" mm", StringComparison.Ordinal));
        Assert.Equal(metric.Number("overallLengthMm", "value"), answer.Number("overallLengthMm", "value"));
        var (designed, _) = await api.Client.PostAsync("/v1/designs", answer.GetProperty("design").GetRawText());
        Assert.Equal(200, designed);

        var (refused, problem) = await api.Client.PostAsync(Address, Asked.Replace("inch", "feet", StringComparison.Ordinal));
        Assert.Equal(422, refused);
        problem.Fault("/drawing/units");
    }

    [Fact]
    public async Task Everything_wrong_is_named_at_once()
    {
        var (_, problem) = await api.Client.PostAsync(
            Address,
            """
            {"label":"a\nb","paddler":{"statureMm":100,"bodyMassKg":5},"seat":{"heightAboveWaterMm":900},"water":{"depthMm":10,"temperatureC":80},
             "outing":{"hoursPerDay":30,"strokesPerMinute":300}}
            """);

        Assert.Equal(
            [
                "/label", "/outing/hoursPerDay", "/outing/strokesPerMinute", "/paddler/bodyMassKg", "/paddler/statureMm", "/seat/heightAboveWaterMm",
                "/water/depthMm", "/water/temperatureC",
            ],
            problem.GetProperty("errors").EnumerateObject().Select(error => error.Name));
    }

    [Theory]
    [InlineData("""{"paddler":{"statureMm":1750},"water":{"kind":"DeepLake"}}""", "/water/kind")]
    [InlineData("""{"paddler":{"statureMm":"1750"}}""", "/paddler/statureMm")]
    [InlineData("""{"paddler":{"stature":1750}}""", "/paddler/stature")]
    [InlineData("""{"paddler":{"statureMm":1e999}}""", "/paddler/statureMm")]
    [InlineData("""{"paddler":[]}""", "/paddler")]
    public async Task Json_of_another_shape_is_refused_with_its_place(string body, string place)
    {
        var (status, problem) = await api.Client.PostAsync(Address, body);

        Assert.Equal(400, status);
        problem.Fault(place);
    }

    [Fact]
    public async Task The_longest_label_still_labels_the_alternatives()
    {
        var (status, answer) = await api.Client.PostAsync(
            Address, $$$"""{"label":"{{{new string('x', 60)}}}","paddler":{"statureMm":1756},"preferences":{"sensitiveJoints":true}}""");

        Assert.Equal(200, status);
        foreach (var design in answer.GetProperty("alternatives").EnumerateArray().Select(other => other.GetProperty("design")))
            Assert.Equal(200, (await api.Client.PostAsync("/v1/designs", design.GetRawText())).Status);
    }

    [Fact]
    public void The_example_shown_is_the_file_of_the_docs() => Assert.Equal(
        JsonSerializer.Serialize(JsonSerializer.Deserialize<FittingRequest>(File.ReadAllText("Examples/fitting.json"), StrictJson.Options), StrictJson.Options),
        JsonSerializer.Serialize(FittingExamples.Guest, StrictJson.Options));

    private static bool Is(JsonElement method, string quantity, string role) =>
        method.GetProperty("quantity").GetString() == quantity && method.GetProperty("role").GetString() == role;

    private static string? Id(JsonElement method) => method.GetProperty("id").GetString();
}
