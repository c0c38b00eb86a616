using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Copies;

/// <summary>Readings in, a design and its variants out, all of which the service takes back.</summary>
[Collection(HttpTests.Name)]
public sealed class CopyHttpTests(ApiFixture api, OwnServices own) : IClassFixture<OwnServices>
{
    private static string Example => Committed.Description.Operations.Single(operation => operation.Id == "createCopy").RequestExamples.Values.Single();

    [Fact]
    public void The_example_in_the_docs_is_that_of_the_description() => Assert.True(
        JsonNode.DeepEquals(Numbers(JsonNode.Parse(File.ReadAllText(Path.Combine(Committed.Root(), "docs", "examples", "copy.json")))!), Numbers(JsonNode.Parse(Example)!)), Example);

    [Fact]
    public async Task The_design_goes_to_designs_as_it_is_and_reads_as_the_paddle_did()
    {
        var copy = await Good(Example);
        var design = await Good(copy["design"]!.ToJsonString(), "/v1/designs");
        Assert.Equal(copy["designCode"]!.ToString(), design["designCode"]!.ToString());
        double Predicted(string place) => Number(copy["readings"]!.AsArray().Single(row => row!["pointer"]!.ToString() == place)!["predicted"]!);
        Assert.Equal(Predicted("/massG"), Number(design["mass"]!["finishedG"]!), 1);
        Assert.Equal(Predicted("/balanceMm"), Number(design["balance"]!["actualMm"]!), 1);
        Assert.Equal(Predicted("/benchFlex/deflectionMm"), Number(design["flex"]!["benchFlexMm"]!), 1);

        // The modulus has its one meaning in both answers, and the design is asked for with the other as it is tested.
        Assert.Equal(Number(design["wood"]!["modulusMPa"]!), Number(copy["wood"]!["modulusMPa"]!), 0.005 * Number(copy["wood"]!["modulusMPa"]!));
        Assert.Equal(Number(copy["design"]!["wood"]!["measuredModulusMPa"]!), Number(copy["wood"]!["apparentModulusMPa"]!), 0.5);
        var again = Assert.Single(copy["measureAgain"]!.AsArray())!;
        Assert.Equal("/stations/12/widthMm", again["pointer"]!.ToString());
    }

    [Fact]
    public async Task Every_variant_is_a_design_of_its_own_and_opens_by_its_code()
    {
        var copy = await Good(With(root => root["variants"] = JsonNode.Parse("""
            [{ "change": "longer", "value": -25 }, { "change": "species", "species": "sitka-spruce" }, { "change": "lighter", "value": 30 },
             { "change": "balance-lower", "value": -10 }, { "change": "shaft.thicknessMm", "value": 27 }, { "change": "longer", "value": 300 }]
            """)));
        var variants = copy["variants"]!.AsArray();
        foreach (var variant in variants.Take(5))
        {
            var design = await Good(variant!["design"]!.ToJsonString(), "/v1/designs");
            Assert.Equal(variant["designCode"]!.ToString(), design["designCode"]!.ToString());
            Assert.Equal(Number(variant["figures"]!["massG"]!), Number(design["mass"]!["finishedG"]!), 1);
            using var read = await api.Client.GetAsync(new Uri("/v1/designs/" + variant["designCode"], UriKind.Relative));
            Assert.Equal(HttpStatusCode.OK, read.StatusCode);
        }

        Assert.InRange(Number(variants[2]!["difference"]!["massG"]!), -32, -28);
        Assert.InRange(Number(variants[3]!["difference"]!["balanceMm"]!), -12, -8);

        // Hands farther apart than any person's.
        Assert.Null(variants[5]!["design"]);
        Assert.Contains("cannot be made", variants[5]!["inWords"]!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_shop_in_inches_is_answered_in_inches()
    {
        var copy = await Good(With(root => root["drawing"] = new JsonObject { ["units"] = "inch" }));
        Assert.Contains(" in was read", copy["measureAgain"]![0]!["message"]!.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", string.Concat(copy["inWords"]!.AsArray()), StringComparison.Ordinal);
    }

    public static TheoryData<string, string, string> Refused => new()
    {
        { "/overallLengthMm", "null", "/overallLengthMm" },
        { "/throatMm", "1300", "/throatMm" },
        { "/stations", "null", "/stations" },
        { "/stations", "[]", "/stations" },
        { "/stations/3/xMm", "20", "/stations/3/xMm" },
        { "/stations/17/xMm", "1600", "/stations/17/xMm" },
        { "/stations/2/widthMm", "1e9", "/stations/2/widthMm" },
        { "/stations/3/edgeThicknessMm", "4", "/stations/3/edgeThicknessMm" },
        { "/stations", "[{\"xMm\":30,\"widthMm\":60},{\"xMm\":400,\"widthMm\":25,\"thicknessMm\":25},{\"xMm\":1200,\"widthMm\":140,\"thicknessMm\":12}]", "/stations" },
        { "/balanceMm", "1570", "/balanceMm" },
        { "/massG", "-1", "/massG" },
        { "/tapHz", "0", "/tapHz" },
        { "/species", "\"oak-of-nowhere\"", "/species" },
        { "/lowerHandMm", "1000", "/lowerHandMm" },
        { "/handSpacingMm", "700", "/handSpacingMm" },
        { "/benchFlex/deflectionMm", "null", "/benchFlex/deflectionMm" },
        { "/benchFlex/lowerSupportMm", "1000", "/benchFlex/lowerSupportMm" },
        { "/benchFlex/loadAtMm", "940", "/benchFlex/loadAtMm" },
        { "/grip/style", "\"ball\"", "/grip/style" },
        { "/grip/widthMm", "94", "/grip/widthMm" },
        { "/readingErrors", "{\"caliperMm\":0}", "/readingErrors/caliperMm" },
        { "/variants", "[{\"change\":\"species\"}]", "/variants/0/species" },
        { "/variants", "[{\"change\":\"shaft.widthMm\"}]", "/variants/0/value" },
        { "/finish", "{\"blade\":\"paint\"}", "/finish/blade" },
    };

    [Theory, MemberData(nameof(Refused))]
    public async Task Readings_that_cannot_be_are_refused_by_place(string member, string value, string place)
    {
        using var answer = await Post("/v1/copies", With(root => Set(root, member, JsonNode.Parse(value))));
        var body = JsonNode.Parse(await answer.Content.ReadAsStringAsync())!;
        Assert.Equal((HttpStatusCode)422, answer.StatusCode);
        Assert.True(body["errors"]!.AsObject().ContainsKey(place), body.ToJsonString());
    }

    [Fact]
    public async Task A_paddle_that_nobody_weighed_of_a_wood_that_nobody_knows_cannot_be_told()
    {
        using var answer = await Post("/v1/copies", With(root => (root["species"], root["massG"]) = (null, null)));
        Assert.Contains("too-few-readings", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        var unknown = await Good(With(root => root["species"] = null));
        Assert.True(unknown["wood"]!["candidates"]!.AsArray().Count > 1);
    }

    public static TheoryData<int> Seeds => [.. Sweep.Of<int[]>([1], [1, 2, 3])];

    /// <summary>Readings of no paddle: whatever comes, it is an answer or a refusal.</summary>
    [Theory, Trait(Sweep.Name, Sweep.Full), MemberData(nameof(Seeds))]
    public async Task Nonsense_within_the_limits_is_answered_or_refused(int seed)
    {
        var random = new Random(seed);
        // What is asked is what comes, not how soon on a machine that tests other things at the same time.
        var (_, client) = own.With(overSockets: false, ("Limits:RequestTimeoutSeconds", "120"));
        var body = With(root =>
        {
            foreach (var station in root["stations"]!.AsArray())
            {
                station!["widthMm"] = Math.Round(300 * random.NextDouble(), 1);
                station["thicknessMm"] = Math.Round(100 * random.NextDouble(), 1);
                if (station["edgeThicknessMm"] is not null) station["edgeThicknessMm"] = Math.Round(50 * random.NextDouble(), 1);
            }

            root["massG"] = 100 + Math.Round(2900 * random.NextDouble());
            root["balanceMm"] = 1 + Math.Round(1500 * random.NextDouble());
            root["benchFlex"]!["deflectionMm"] = 1 + Math.Round(299 * random.NextDouble());
            root["tapHz"] = 2 + Math.Round(198 * random.NextDouble());
        });
        using var answer = await client.PostAsync("/v1/copies", new StringContent(body, Encoding.UTF8, "application/json"));
        Assert.True(answer.StatusCode is HttpStatusCode.OK or HttpStatusCode.UnprocessableEntity, await answer.Content.ReadAsStringAsync());
    }

    private static string With(Action<JsonNode> change)
    {
        var root = JsonNode.Parse(Example)!;
        change(root);
        return root.ToJsonString();
    }

    private static void Set(JsonNode root, string member, JsonNode? value)
    {
        var parts = member[1..].Split('/');
        var holder = parts[..^1].Aggregate(root, (node, part) => int.TryParse(part, out var index) ? node[index]! : node[part]!);
        if (int.TryParse(parts[^1], out var place)) holder[place] = value;
        else holder[parts[^1]] = value;
    }

    private static double Number(JsonNode node) => node.GetValue<JsonElement>().GetDouble();

    // 16.0 in the one and 16 in the other are one number.
    private static JsonNode Numbers(JsonNode node) => JsonNode.Parse(JsonSerializer.Serialize(JsonSerializer.Deserialize<Paddle.Design.Copying.CopyRequest>(node, JsonSerializerOptions.Web), JsonSerializerOptions.Web))!;

    private Task<HttpResponseMessage> Post(string path, string body)
    {
        var content = new StringContent(body, Encoding.UTF8, "application/json");
        return api.Client.PostAsync(new Uri(path, UriKind.Relative), content);
    }

    private async Task<JsonNode> Good(string body, string path = "/v1/copies")
    {
        using var answer = await Post(path, body);
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode == HttpStatusCode.OK, text);
        return JsonNode.Parse(text)!;
    }
}
