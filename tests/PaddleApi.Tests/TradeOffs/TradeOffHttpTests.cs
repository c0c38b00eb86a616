using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using PaddleApi.Tests.Contract;
using PaddleApi.Validation;

namespace PaddleApi.Tests.TradeOffs;

[Collection(HttpTests.Name)]
public sealed class TradeOffHttpTests(ApiFixture api)
{
    private const string Base = "\"base\":{\"handSpacingMm\":880,\"wood\":{\"species\":\"white-ash\"}}";
    private const string Wishes = "\"minimise\":[\"/mass/finishedG\",\"/stroke/slipSpeedMS\"]";
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public async Task Every_design_is_the_one_that_its_own_request_gives()
    {
        var answer = await Good($$"""{{{Base}},"vary":[{"pointer":"/blade/widthMm","values":[140,150]},{"pointer":"/wood/species","values":["white-ash","black-cherry"]}],{{Wishes}}}""");
        var designs = answer.GetProperty("designs").EnumerateArray().ToList();
        Assert.Equal(4, designs.Count);
        foreach (var one in designs)
        {
            var varied = one.GetProperty("varied");
            var report = await Report($$"""{"handSpacingMm":880,"wood":{"species":"{{varied[1].GetString()}}"},"blade":{"widthMm":{{varied[0].GetRawText()}} } }""");
            Assert.Equal(report.GetProperty("designCode").GetString(), one.GetProperty("designCode").GetString());
            Assert.Equal(Figure(report, "/mass/finishedG"), one.GetProperty("figures")[0].GetDouble());
            Assert.Equal(Figure(report, "/stroke/slipSpeedMS"), one.GetProperty("figures")[1].GetDouble());
        }
    }

    // Source: the drag law F = ½ρC·A·v² (any textbook of fluid mechanics): at a given force the slip falls as one over the root of the area, drag
    // coefficients of blades alike but for their width being nearly one; a lever's moment is force times arm: the arm grows with the blade's length.
    [Fact]
    public async Task A_larger_blade_slips_less_and_a_longer_one_turns_the_lower_hand_more()
    {
        var answer = await Good($$"""
            {{{Base}},"vary":[{"pointer":"/blade/lengthMm","values":[600,640]},{"pointer":"/blade/widthMm","values":[140,148,156]}],
             "minimise":["/stroke/slipSpeedMS","/stroke/lowerHandMomentNm"],"maximise":["/stroke/bladeAreaCm2"]}
            """);
        var figures = answer.GetProperty("designs").EnumerateArray().Select(one => one.GetProperty("figures")).Select(one => (Slip: one[0].GetDouble(), Moment: one[1].GetDouble(), Area: one[2].GetDouble())).ToList();
        for (var length = 0; length < 2; length++)
        {
            for (var width = 1; width < 3; width++)
            {
                var (before, after) = (figures[3 * length + width - 1], figures[3 * length + width]);
                Assert.True(after.Area > before.Area && after.Slip < before.Slip);
                Assert.Equal(Math.Sqrt(before.Area / after.Area), after.Slip / before.Slip, 0.01);
                Assert.Equal(before.Moment, after.Moment, 0.1);
            }
        }

        for (var width = 0; width < 3; width++) Assert.True(figures[3 + width].Moment > figures[width].Moment + 1);
    }

    [Fact]
    public async Task Which_design_beats_which_holds_by_the_figures_that_are_printed()
    {
        var answer = await Good(await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "Examples/trade-off.json")));
        var designs = answer.GetProperty("designs").EnumerateArray().ToList();
        double[] Figures(JsonElement one) => [.. one.GetProperty("figures").EnumerateArray().Select(figure => figure.GetDouble())];
        bool Beats(JsonElement a, JsonElement b) => Figures(a).Zip(Figures(b)).All(pair => pair.First <= pair.Second) && Figures(a).Zip(Figures(b)).Any(pair => pair.First < pair.Second);
        string Standing(JsonElement one) => one.GetProperty("standing").GetString()!;
        var judged = designs.Where(one => Standing(one) is "unbeaten" or "beaten").ToList();
        Assert.Contains(judged, one => Standing(one) == "beaten");
        Assert.Equal(judged.Count(one => Standing(one) == "unbeaten"), answer.GetProperty("unbeaten").GetInt32());
        Assert.All(judged, one => Assert.Equal(judged.Exists(other => Beats(other, one)), Standing(one) == "beaten"));
        Assert.All(judged.Where(one => Standing(one) == "beaten"), one => Assert.True(Beats(designs[one.GetProperty("beatenBy").GetInt32()], one)));
        Assert.All(designs.Except(judged), one => Assert.NotEmpty(one.GetProperty("unmetAims").EnumerateArray()));
    }

    [Fact]
    public async Task What_cannot_be_made_is_told_and_too_weak_a_paddle_beats_none()
    {
        var answer = await Good($$"""
            {"base":{"handSpacingMm":880,"overallLengthMm":1620,"wood":{"species":"black-cherry"} },
             "vary":[{"pointer":"/blade/lengthMm","values":[600,640]},{"pointer":"/handSpacingMm","values":[880,1000]},{"pointer":"/shaft/thicknessMm","values":[20,31]}],{{Wishes}} }
            """);
        var designs = answer.GetProperty("designs").EnumerateArray().ToList();
        Assert.Equal(8, designs.Count);
        var refused = designs.Where(one => one.GetProperty("standing").GetString() == "refused").ToList();
        Assert.NotEmpty(refused);
        Assert.All(refused, one => Assert.Equal("lengths-disagree", one.GetProperty("refused")[0].GetProperty("code").GetString()));
        var thin = designs.Where(one => one.GetProperty("varied")[2].GetDouble() == 20).Except(refused).ToList();
        Assert.NotEmpty(thin);
        Assert.All(thin, one => Assert.Equal("closest", one.GetProperty("standing").GetString()));
        Assert.All(thin, one => Assert.StartsWith("strength.", one.GetProperty("unmetAims")[0].GetProperty("code").GetString(), StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_picture_has_a_point_for_every_design_and_names_the_unbeaten_ones()
    {
        var body = await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "Examples/trade-off.json"));
        var answer = await Good(body);
        using var request = new HttpRequestMessage(HttpMethod.Post, "/v1/trade-offs") { Content = Json(body) };
        request.Headers.Accept.ParseAdd("image/svg+xml");
        using var drawn = await api.Client.SendAsync(request);
        Assert.Equal("image/svg+xml", drawn.Content.Headers.ContentType?.MediaType);
        var svg = XDocument.Parse(await drawn.Content.ReadAsStringAsync());
        int Points(string css) => svg.Descendants(Svg + "g").Where(group => ((string?)group.Attribute("class") ?? "").EndsWith($"point {css}", StringComparison.Ordinal)).Sum(group => group.Elements(Svg + "path").Count());
        int Standing(string name) => answer.GetProperty("designs").EnumerateArray().Count(one => one.GetProperty("standing").GetString() == name);
        // One more of a kind in the legend; a cross is two lines.
        Assert.Equal(answer.GetProperty("unbeaten").GetInt32() + 1, Points("unbeaten"));
        Assert.Equal(Standing("beaten") + 1, Points("beaten"));
        Assert.Equal(2 * (Standing("closest") + 1), Points("missed"));
        string[] texts = [.. svg.Descendants(Svg + "text").Select(text => text.Value)];
        Assert.Contains("mass finished, g (less is better)", texts);
        Assert.Contains("stroke slip speed, m/s (less is better)", texts);
        foreach (var one in answer.GetProperty("designs").EnumerateArray().Where(one => one.GetProperty("standing").GetString() == "unbeaten"))
            Assert.Contains(string.Join("; ", one.GetProperty("varied").EnumerateArray().Select(value => value.ToString())), texts);
    }

    [Theory]
    [InlineData("/base", "null", "/base")]
    [InlineData("/base/handSpacingMm", "10", "/base/handSpacingMm")]
    [InlineData("/vary", "[]", "/vary")]
    [InlineData("/vary/0/values", "[]", "/vary/0/values")]
    [InlineData("/vary/0/values", "[1e999]", "/vary/0/values/0")]
    [InlineData("/vary/0/values", "[150,{\"a\":1}]", "/vary/0/values/1")]
    [InlineData("/vary/0/values", "[150,\"\\ud800\"]", "/vary/0/values/1")]
    [InlineData("/vary/0/values", "[150,\"wide\"]", "/vary/0/values/1")]
    [InlineData("/vary/0/values", "[150,1500]", "/vary/0/values/1")]
    [InlineData("/vary/0/values", "[150,\"a text that goes on and on and on and on and on and on and on and on and on and on and on and on for ever\"]", "/vary/0/values/1")]
    [InlineData("/vary/0/pointer", "\"blade\"", "/vary/0/pointer")]
    [InlineData("/vary/0/pointer", "\"\"", "/vary/0/pointer")]
    [InlineData("/vary/0/pointer", "\"/blade/breadthMm\"", "/vary/0/pointer")]
    [InlineData("/vary/0/pointer", "\"/handSpacingMm/x\"", "/vary/0/pointer")]
    [InlineData("/vary/0/pointer", "\"/blade/offsets/0/xMm\"", "/vary/0/pointer")]
    [InlineData("/vary/1", "{\"pointer\":\"/blade/widthMm\",\"values\":[150]}", "/vary/1/pointer")]
    [InlineData("/minimise/1", "\"/mass/nothingG\"", "/minimise/1")]
    [InlineData("/minimise/1", "\"/designCode\"", "/minimise/1")]
    [InlineData("/minimise", "[\"/mass/finishedG\"]", "/minimise")]
    [InlineData("/minimise", "[\"/mass/finishedG\",\"/mass/finishedG\"]", "/minimise")]
    public async Task What_cannot_be_is_refused_by_its_place_in_the_callers_document(string place, string value, string refused)
    {
        var body = JsonNode.Parse($$"""{{{Base}},"vary":[{"pointer":"/blade/widthMm","values":[140,150]},{"pointer":"/wood/species","values":["white-ash"]}],{{Wishes}}}""")!;
        var text = body.ToJsonString();
        var at = JsonPointers.Find(JsonDocument.Parse(text).RootElement, place)!.Value.GetRawText();
        // As text, for no parser keeps what is not Unicode or not finite.
        var name = place[(place.LastIndexOf('/') + 1)..];
        text = int.TryParse(name, out _) ? text.Replace(at, value, StringComparison.Ordinal) : text.Replace($"\"{name}\":{at}", $"\"{name}\":{value}", StringComparison.Ordinal);
        using var answer = await Post(text);
        using var problem = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
        Assert.True(answer.StatusCode == HttpStatusCode.UnprocessableEntity, problem.RootElement.GetRawText());
        Assert.True(problem.RootElement.GetProperty("errors").TryGetProperty(refused, out _), problem.RootElement.GetRawText());
    }

    [Fact]
    public async Task Too_many_combinations_are_refused()
    {
        var values = string.Join(',', Enumerable.Range(100, 21));
        using var answer = await Post($$"""{{{Base}},"vary":[{"pointer":"/blade/widthMm","values":[{{values}}]},{"pointer":"/blade/lengthMm","values":[{{values}}]}],{{Wishes}}}""");
        using var problem = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
        var fault = problem.RootElement.GetProperty("errors").GetProperty("/vary")[0];
        Assert.Equal((441, 400), (fault.GetProperty("value").GetInt32(), fault.GetProperty("max").GetInt32()));
    }

    private static double Figure(JsonElement report, string pointer) => JsonPointers.Find(report, pointer)!.Value.GetDouble();

    private async Task<JsonElement> Report(string body)
    {
        using var answer = await api.Client.PostAsync(new Uri("/v1/designs", UriKind.Relative), Json(body));
        using var read = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
        return read.RootElement.Clone();
    }

    private async Task<JsonElement> Good(string body)
    {
        using var answer = await Post(body);
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode == HttpStatusCode.OK, text);
        using var read = JsonDocument.Parse(text);
        return read.RootElement.Clone();
    }

    private Task<HttpResponseMessage> Post(string body) => api.Client.PostAsync(new Uri("/v1/trade-offs", UriKind.Relative), Json(body));

    private static StringContent Json(string body) => new(body, Encoding.UTF8, "application/json");
}
