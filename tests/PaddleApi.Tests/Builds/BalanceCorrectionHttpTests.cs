using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using PaddleApi.Endpoints.Builds;
using PaddleApi.Tests.Contract;
using PaddleApi.Tests.Fittings;

namespace PaddleApi.Tests.Builds;

[Collection(HttpTests.Name)]
public sealed class BalanceCorrectionHttpTests(ApiFixture api)
{
    private static readonly string Code = BuildExamples.Weighed.DesignCode!;

    [Fact]
    public async Task Readings_to_plan_need_no_explanation()
    {
        var (mass, balance) = await Predicted("blade-planed");
        var answer = await Good(Weighed("blade-planed", mass, balance));

        var design = await Design();
        var density = design.GetProperty("wood").GetProperty("densityKgM3").GetDouble();
        Assert.InRange(Number(answer, "densityKgM3") / density, 0.995, 1.005);
        Assert.False(answer.GetProperty("explanation").GetProperty("unevenNeeded").GetBoolean());
        Assert.Equal(Number(design.GetProperty("mass"), "finishedG"), Number(answer.GetProperty("finished"), "massG"), 3.0);
        Assert.Equal(Number(design.GetProperty("mass"), "finishedCentreOfMassMm"), Number(answer.GetProperty("finished"), "balanceMm"), 1.0);
    }

    [Fact]
    public async Task A_board_denser_than_the_book_is_found_out_and_corrected()
    {
        var (mass, balance) = await Predicted("blade-planed");
        var answer = await Good(Weighed("blade-planed", 1.08 * mass, balance, confidence: 0.5));

        var design = await Design();
        var density = design.GetProperty("wood").GetProperty("densityKgM3").GetDouble();
        Assert.InRange(Number(answer, "densityKgM3") / density, 1.07, 1.09);
        var woodG = Number(answer.GetProperty("finished"), "massG") - Number(design.GetProperty("mass"), "finishG");
        Assert.InRange(woodG / Number(design.GetProperty("mass"), "totalG"), 1.07, 1.09);
        Agree(answer);
    }

    [Fact]
    public async Task A_tip_heavy_paddle_is_thinned_in_the_blade_until_it_balances()
    {
        var (mass, balance) = await Predicted("sanded");
        var answer = await Good(Weighed("sanded", mass, balance + 25, confidence: 0.5, again: true));

        var (finished, corrected) = (answer.GetProperty("finished"), answer.GetProperty("corrected"));
        var (target, tolerance) = (Number(answer, "targetMm"), Number(answer, "toleranceMm"));
        Assert.True(Number(finished, "balanceMm") > target + tolerance, answer.GetRawText());
        Assert.True(answer.GetProperty("achievable").GetBoolean(), answer.GetRawText());
        Assert.InRange(Number(corrected, "balanceMm"), target - tolerance - 0.1, target + tolerance + 0.1);
        Assert.NotEqual(0, answer.GetProperty("removals").GetArrayLength());
        Assert.Contains(answer.GetProperty("removals").EnumerateArray(),
            cut => cut.GetProperty("zone").GetString()!.StartsWith("blade", StringComparison.Ordinal));
        Assert.True(Number(corrected, "minimumSafetyFactor") >= 1.499, answer.GetRawText());
        Assert.True(answer.GetProperty("explanation").GetProperty("unevenNeeded").GetBoolean());
        Agree(answer);
    }

    [Fact]
    public async Task When_wood_would_have_to_be_added_the_choices_left_are_named()
    {
        var (mass, balance) = await Predicted("sanded");
        var answer = await Good(Weighed("sanded", mass, balance - 36, again: true));

        Assert.False(answer.GetProperty("achievable").GetBoolean(), answer.GetRawText());
        var left = answer.GetProperty("leastBad");
        Assert.True(Number(left, "acceptOffsetMm") < -12);
        Assert.True(Number(left, "addAtTipG") > 0);
        Assert.False(left.TryGetProperty("addAtGripG", out _));
        Assert.Contains("short-of-aim", Codes(answer, "advice"));
        Assert.Contains("add-at-tip", Codes(answer, "advice"));
    }

    [Fact]
    public async Task A_glued_up_paddle_is_weighed_from_the_eight_sided_shaft_on()
    {
        var (_, design) = await api.Client.PostAsync("/v1/designs", """
            { "handSpacingMm": 880, "wood": { "species": "white-ash" }, "construction": { "kind": "laminated", "strips": [ { "widthMm": 34 }, { "species": "sitka-spruce", "widthMm": 70 } ] } }
            """);
        var code = design.GetProperty("designCode").GetString();
        var build = await Read(await api.Client.GetAsync($"/v1/designs/{code}/build"));
        foreach (var stage in build.GetProperty("stages").EnumerateArray())
        {
            var id = stage.GetProperty("id").GetString()!;
            var (status, answer) = await api.Client.PostAsync("/v1/balance-corrections", JsonSerializer.Serialize(new
            {
                designCode = code,
                stage = id,
                massG = Number(stage.GetProperty("massG"), "value"),
                balanceMm = Number(stage.GetProperty("balanceMm"), "value"),
            }));

            if (id is "blank" or "sawn" or "edge-lined" or "blade-roughed" or "blade-planed")
            {
                Assert.Equal(422, status);
                Assert.Equal("shaft-eight-sided", answer.Fault("/stage").GetProperty("allowed")[0].GetString());
            }
            else
            {
                Assert.Equal(200, status);
                Assert.Equal("on-plan", answer.GetProperty("status").GetString());
            }
        }
    }

    [Fact]
    public async Task A_paddle_exactly_to_plan_is_told_so_at_every_stage()
    {
        var build = await Read(await api.Client.GetAsync($"/v1/designs/{Code}/build"));
        foreach (var sheet in build.GetProperty("stages").EnumerateArray())
        {
            var request = Weighed(
                sheet.GetProperty("id").GetString()!,
                Math.Round(Number(sheet.GetProperty("massG"), "value")),
                Math.Round(Number(sheet.GetProperty("balanceMm"), "value")));
            request["readings"] = new JsonArray([.. sheet.GetProperty("stations").EnumerateArray().Select(station => new JsonObject
            {
                ["xMm"] = Number(station, "xMm"),
                ["thicknessMm"] = Number(station, "thicknessMm"),
            })]);
            var answer = await Good(request);
            Assert.Equal("on-plan", answer.GetProperty("status").GetString());
            Assert.Equal(0, answer.GetProperty("removals").GetArrayLength());
            Assert.Equal(0, answer.GetProperty("doubts").GetArrayLength());
        }
    }

    [Theory]
    [InlineData(2.9)]
    [InlineData(290)]
    public async Task A_thickness_typed_wrong_is_named_by_its_place_in_the_request(double typed)
    {
        var (mass, balance) = await Predicted("blade-planed");
        var build = await Read(await api.Client.GetAsync($"/v1/designs/{Code}/build"));
        var stations = build.GetProperty("stages").EnumerateArray().Single(one => one.GetProperty("id").GetString() == "blade-planed")
            .GetProperty("stations").EnumerateArray().ToArray();
        var shaft = stations.MinBy(station => Math.Abs(Number(station, "xMm") - 600));
        var request = Weighed("blade-planed", mass, balance);
        request["readings"] = new JsonArray(
            new JsonObject { ["xMm"] = Number(stations[3], "xMm"), ["thicknessMm"] = Number(stations[3], "thicknessMm") },
            new JsonObject { ["xMm"] = Number(shaft, "xMm"), ["thicknessMm"] = typed });
        var answer = await Good(request);

        Assert.Equal("measure-again", answer.GetProperty("status").GetString());
        Assert.Equal(0, answer.GetProperty("removals").GetArrayLength());
        Assert.False(answer.TryGetProperty("corrected", out _));
        var doubt = Assert.Single(answer.GetProperty("doubts").EnumerateArray());
        Assert.Equal("thickness-does-not-fit", doubt.GetProperty("code").GetString());
        Assert.Equal("/readings/1/thicknessMm", doubt.GetProperty("reading").GetString());
        Assert.InRange(Number(shaft, "thicknessMm"), Number(doubt, "low"), Number(doubt, "high"));
        Assert.DoesNotContain(answer.GetProperty("advice").EnumerateArray(), note => note.GetProperty("text").GetString()!.Length == 0);
    }

    [Fact]
    public async Task A_cut_already_taken_is_held_against_the_plan_less_it()
    {
        var (mass, balance) = await Predicted("sanded");
        var first = await Good(Weighed("sanded", mass, balance + 17));
        Assert.Equal("cut", first.GetProperty("status").GetString());
        var cuts = first.GetProperty("removals").EnumerateArray().ToArray();
        Assert.All(cuts, cut => Assert.True(Number(cut, "thicknessMm") >= 0.2));

        // The answer's balance points are with the finish on, which the cut does not touch: bare, the same cut moves a lighter paddle further.
        var weighs = (await Design()).GetProperty("mass");
        var moved = (Number(first.GetProperty("corrected"), "balanceMm") - Number(first.GetProperty("finished"), "balanceMm"))
            * Number(weighs, "finishedG") / Number(weighs, "totalG");
        var request = Weighed("sanded", mass - cuts.Sum(cut => Number(cut, "massG")), balance + 17 + moved);
        request["earlierRemovals"] = new JsonArray([.. cuts.Select(cut => new JsonObject
        {
            ["zone"] = cut.GetProperty("zone").GetString(),
            ["thicknessMm"] = Number(cut, "thicknessMm"),
        })]);
        var second = await Good(request);
        Assert.Empty(Codes(second, "doubts"));
        Assert.True(
            second.GetProperty("removals").EnumerateArray().Sum(cut => Number(cut, "massG")) < 0.5 * cuts.Sum(cut => Number(cut, "massG")),
            second.GetRawText());
    }

    [Theory]
    [InlineData(100, 1)]
    [InlineData(100, 1580)]
    [InlineData(20000, 1)]
    [InlineData(20000, 1580)]
    public async Task Readings_that_no_paddle_gives_are_answered_with_a_doubt(double mass, double balance)
    {
        foreach (var stage in (string[])["blank", "finished"])
        {
            var answer = await Good(Weighed(stage, mass, balance));
            Assert.Equal("measure-again", answer.GetProperty("status").GetString());
            Assert.NotEmpty(Codes(answer, "doubts"));
            Assert.Equal(0, answer.GetProperty("removals").GetArrayLength());
        }
    }

    [Theory]
    [InlineData("designCode", "null", "/designCode")]
    [InlineData("stage", "null", "/stage")]
    [InlineData("stage", "\"planed\"", "/stage")]
    [InlineData("massG", "99", "/massG")]
    [InlineData("massG", "null", "/massG")]
    [InlineData("balanceMm", "0", "/balanceMm")]
    [InlineData("balanceMm", "1590", "/balanceMm")] // beyond the tip of this paddle
    [InlineData("confidence", "1", "/confidence")]
    [InlineData("readings", "[{\"xMm\":1000,\"thicknessMm\":30},{\"xMm\":1600,\"thicknessMm\":12}]", "/readings/1/xMm")]
    [InlineData("readings", "[{\"xMm\":1000}]", "/readings/0/thicknessMm")]
    [InlineData("readings", "[{\"xMm\":1000,\"thicknessMm\":-1}]", "/readings/0/thicknessMm")]
    [InlineData("earlierRemovals", "[{\"zone\":\"blade\",\"thicknessMm\":0.4}]", "/earlierRemovals/0/zone")]
    [InlineData("earlierRemovals", "[{\"zone\":\"grip\",\"thicknessMm\":11}]", "/earlierRemovals/0/thicknessMm")]
    [InlineData("earlierRemovals", "[{\"thicknessMm\":1}]", "/earlierRemovals/0/zone")]
    [InlineData("readingErrors", "{\"massG\":0}", "/readingErrors/massG")]
    [InlineData("build", "{\"saw\":\"axe\"}", "/build/saw")]
    [InlineData("build", "{\"boardThicknessMm\":20}", "/build/boardThicknessMm")]
    public async Task Readings_that_cannot_be_are_refused_by_place(string member, string value, string place)
    {
        var request = Weighed("blade-planed", 1500, 850);
        request[member] = JsonNode.Parse(value);

        using var answer = await Post(request.ToJsonString());
        using var body = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.True(body.RootElement.GetProperty("errors").TryGetProperty(place, out var faults), body.RootElement.GetRawText());
        Assert.All(faults.EnumerateArray(), fault => Assert.NotEqual("", fault.GetProperty("code").GetString()));
    }

    [Fact]
    public async Task A_damaged_code_is_refused_at_its_place()
    {
        var request = Weighed("blade-planed", 1500, 850);
        request["designCode"] = Code[..^4];

        using var answer = await Post(request.ToJsonString());
        using var body = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal("/problems/invalid-design-code", body.RootElement.GetProperty("type").GetString());
        Assert.True(body.RootElement.GetProperty("errors").TryGetProperty("/designCode", out _));
    }

    // Removals and the two forecasts are figures of one sum.

    [Fact]
    public async Task Where_to_take_wood_is_drawn_for_who_asks_for_a_picture()
    {
        var (mass, balance) = await Predicted("sanded");
        var request = Weighed("sanded", mass, balance + 25, confidence: 0.5, again: true);
        var answer = await Good(request);
        using var ask = new HttpRequestMessage(HttpMethod.Post, "/v1/balance-corrections");
        ask.Headers.Accept.ParseAdd("image/svg+xml");
        ask.Content = new StringContent(request.ToJsonString(), Encoding.UTF8, "application/json");

        using var drawn = await api.Client.SendAsync(ask);
        var svg = XDocument.Parse(await drawn.Content.ReadAsStringAsync()).Root!;

        Assert.Equal("image/svg+xml", drawn.Content.Headers.ContentType!.MediaType);
        Assert.Contains("Accept", drawn.Headers.Vary);
        var texts = svg.Descendants().Where(node => node.Name.LocalName == "text").Select(node => node.Value).ToList();
        Assert.Contains("Where to take wood", texts);
        Assert.Contains(answer.GetProperty("summary").GetString()!, string.Join(' ', texts), StringComparison.Ordinal);
        Assert.Equal(
            2 * answer.GetProperty("removals").GetArrayLength(),
            svg.Descendants().Count(node => node.Name.LocalName == "path" && node.Parent!.Attribute("class")!.Value.EndsWith(" cut", StringComparison.Ordinal)));
    }

    private static void Agree(JsonElement answer)
    {
        var cuts = answer.GetProperty("removals").EnumerateArray().ToList();
        Assert.Equal(
            Number(answer.GetProperty("finished"), "massG") - cuts.Sum(cut => Number(cut, "massG")),
            Number(answer.GetProperty("corrected"), "massG"),
            0.05 * (cuts.Count + 2) + 0.2);
        Assert.All(cuts, cut => Assert.Equal(Number(cut, "thicknessMm"), 2 * Number(cut, "perFaceMm"), 0.016));
    }

    private async Task<(double MassG, double BalanceMm)> Predicted(string stage)
    {
        var build = await Read(await api.Client.GetAsync($"/v1/designs/{Code}/build"));
        var sheet = build.GetProperty("stages").EnumerateArray().Single(one => one.GetProperty("id").GetString() == stage);
        return (Number(sheet.GetProperty("massG"), "value"), Number(sheet.GetProperty("balanceMm"), "value"));
    }

    private async Task<JsonElement> Design() => await Read(await api.Client.GetAsync($"/v1/designs/{Code}"));

    private static JsonObject Weighed(string stage, double massG, double balanceMm, double confidence = 0.95, bool again = false) => new()
    {
        ["designCode"] = Code,
        ["stage"] = stage,
        ["massG"] = massG,
        ["balanceMm"] = balanceMm,
        ["confidence"] = confidence,
        ["measuredAgain"] = again,
    };

    private async Task<JsonElement> Good(JsonObject request)
    {
        using var answer = await Post(request.ToJsonString());
        Assert.True(answer.StatusCode == HttpStatusCode.OK, await answer.Content.ReadAsStringAsync());
        return await Read(answer);
    }

    private Task<HttpResponseMessage> Post(string body) =>
        api.Client.PostAsync(new Uri("/v1/balance-corrections", UriKind.Relative), new StringContent(body, Encoding.UTF8, "application/json"));

    private static async Task<JsonElement> Read(HttpResponseMessage answer)
    {
        using var body = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
        return body.RootElement.Clone();
    }

    private static IReadOnlyList<string> Codes(JsonElement answer, string member) =>
        [.. answer.GetProperty(member).EnumerateArray().Select(note => note.GetProperty("code").GetString()!)];

    private static double Number(JsonElement holder, string member) => holder.GetProperty(member).GetDouble();
}
