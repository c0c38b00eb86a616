using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml;
using System.Xml.Linq;
using System.Xml.Schema;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Checks;

[Collection(HttpTests.Name)]
public sealed class DesignCheckHttpTests(ApiFixture api)
{
    private const string Ash = """{ "handSpacingMm": 880, "wood": { "species": "white-ash" } }""";

    [Theory]
    [InlineData("""{ "pointer": "/outcome", "equals": "met" }""", true)]
    [InlineData("""{ "pointer": "/outcome", "equals": "closest" }""", false)]
    [InlineData("""{ "pointer": "/balance/achieved", "equals": true }""", true)]
    [InlineData("""{ "pointer": "/balance/achieved", "equals": false }""", false)]
    [InlineData("""{ "pointer": "/balance/achieved", "equals": "true" }""", false)]
    [InlineData("""{ "pointer": "/design/handSpacingMm", "least": 880, "most": 880 }""", true)]
    [InlineData("""{ "pointer": "/design/handSpacingMm", "least": 880.1 }""", false)]
    [InlineData("""{ "pointer": "/design/handSpacingMm", "most": 879.9 }""", false)]
    [InlineData("""{ "pointer": "/design/handSpacingMm", "equals": 880.3, "within": 0.3 }""", true)]
    [InlineData("""{ "pointer": "/design/handSpacingMm", "equals": 880.3, "within": 0.2 }""", false)]
    [InlineData("""{ "pointer": "/design/handSpacingMm", "equals": 880, "least": 900 }""", false)]
    [InlineData("""{ "pointer": "/design/wood/species", "least": 1 }""", false)]
    [InlineData("""{ "pointer": "/strength/cases/1/id", "equals": "hard-stroke" }""", true)]
    [InlineData("""{ "pointer": "/strength/cases/99/id", "equals": "hard-stroke" }""", false)]
    [InlineData("""{ "pointer": "/mass", "least": 0 }""", false)]
    [InlineData("""{ "pointer": "", "least": 0 }""", false)]
    public async Task A_value_is_held_against_what_is_expected(string expectation, bool passes)
    {
        var one = (await Outcome(Case($"\"expect\": [{expectation}]"))).GetProperty("cases")[0];

        var found = one.GetProperty("expectations")[0];
        Assert.Equal((passes, passes), (one.GetProperty("passed").GetBoolean(), found.GetProperty("passed").GetBoolean()));
        Assert.Equal(JsonNode.Parse(expectation)!["pointer"]!.GetValue<string>(), found.GetProperty("pointer").GetString());
        Assert.NotEmpty(found.GetProperty("message").GetString()!);
    }

    [Fact]
    public async Task The_answer_counts_designs_and_shows_what_was_found()
    {
        var outcome = await Outcome($$"""
            { "cases": [
                { "id": "a", "design": {{Ash}}, "expect": [{ "pointer": "/mass/finishedG", "least": 1, "most": 2 }, { "pointer": "/outcome", "equals": "met" }] },
                { "id": "b", "design": {{Ash}}, "expect": [{ "pointer": "/outcome", "equals": "met" }] }] }
            """);
        var report = await Good("/v1/designs", Ash);

        Assert.Equal((1, 1), (outcome.GetProperty("passed").GetInt32(), outcome.GetProperty("failed").GetInt32()));
        var massG = report.GetProperty("mass").GetProperty("finishedG").GetRawText();
        var miss = outcome.GetProperty("cases")[0].GetProperty("expectations")[0];
        Assert.Equal(massG, miss.GetProperty("value").GetRawText());
        Assert.Equal($"{massG} g is more than the most, 2 g.", miss.GetProperty("message").GetString());
        Assert.Equal(report.GetProperty("designCode").GetString(), outcome.GetProperty("cases")[1].GetProperty("designCode").GetString());
    }

    [Fact]
    public async Task A_report_passes_as_it_was_approved_and_nothing_in_it_may_move()
    {
        var report = JsonNode.Parse((await Good("/v1/designs", Ash)).GetRawText())!.AsObject();
        var same = (await Outcome(Approving(report))).GetProperty("cases")[0];
        Assert.True(same.GetProperty("passed").GetBoolean());
        Assert.Equal(Figures(report), same.GetProperty("approval").GetProperty("compared").GetInt32());

        // Words may be improved; a number or a truth may not move.
        report["cautions"]![0]!["text"] = "Other words.";
        report["mass"]!["finishedG"] = report["mass"]!["finishedG"]!.GetValue<double>() + 1;
        report["balance"]!["achieved"] = false;
        report["mass"]!["soldG"] = 5;
        var moved = (await Outcome(Approving(report))).GetProperty("cases")[0];
        Assert.False(moved.GetProperty("passed").GetBoolean());
        Assert.Equal(
            ["/mass/finishedG", "/mass/soldG", "/balance/achieved"],
            moved.GetProperty("approval").GetProperty("figures").EnumerateArray().Select(one => one.GetProperty("pointer").GetString()));
    }

    [Theory]
    [InlineData("mass", "finishedG", 1.5, """{ "g": 1.5 }""", """{ "g": 1.4, "mm": 9, "ratio": 9 }""")]
    [InlineData("balance", "actualMm", -0.4, """{ "mm": 0.4 }""", """{ "mm": 0.3, "g": 9 }""")]
    [InlineData("stroke", "bladeAreaCm2", 5, """{ "cm2": 5 }""", """{ "cm2": 4, "mm": 9 }""")]
    [InlineData("mass", "volumeCm3", 2, """{ "cm3": 2 }""", """{ "cm3": 1, "cm2": 9 }""")]
    [InlineData("wood", "densityKgM3", 3, """{ "kgM3": 3 }""", """{ "kgM3": 2, "kgM2": 9 }""")]
    [InlineData("mass", "inertiaCentreKgM2", 0.01, """{ "kgM2": 0.01 }""", """{ "kgM2": 0.009, "kgM3": 9 }""")]
    [InlineData("stroke", "topHandForceN", 2, """{ "n": 2 }""", """{ "n": 1, "nm": 9 }""")]
    [InlineData("stroke", "lowerHandMomentNm", 2, """{ "nm": 2 }""", """{ "nm": 1, "n": 9 }""")]
    [InlineData("wood", "bendingStrengthMPa", 2, """{ "mPa": 2 }""", """{ "mPa": 1, "n": 9 }""")]
    [InlineData("flex", "firstFrequencyHz", 0.5, """{ "hz": 0.5 }""", """{ "hz": 0.4 }""")]
    [InlineData("stroke", "slipSpeedMS", 0.5, """{ "mPerS": 0.5 }""", """{ "mPerS": 0.4 }""")]
    [InlineData("stroke", "liftEnergyJ", 0.5, """{ "j": 0.5 }""", """{ "j": 0.4 }""")]
    [InlineData("wood", "moisturePercent", 1, """{ "percent": 1 }""", """{ "percent": 0.9, "ratio": 9 }""")]
    [InlineData("strength", "minimumSafetyFactor", 0.2, """{ "ratio": 0.2 }""", """{ "ratio": 0.1, "mm": 9 }""")]
    [InlineData("mass", "finishedG", 7, """{ "share": 0.01 }""", """{ "share": 0.005 }""")]
    public async Task A_figure_may_move_as_far_as_its_unit_allows(string part, string member, double by, string enough, string tooLittle)
    {
        var report = await Good("/v1/designs", Ash);
        var approved = new JsonObject { [part] = new JsonObject { [member] = Math.Round(report.GetProperty(part).GetProperty(member).GetDouble() + by, 6) } };

        Assert.True((await Outcome(Approving(approved, enough))).GetProperty("cases")[0].GetProperty("passed").GetBoolean());
        var miss = (await Outcome(Approving(approved, tooLittle))).GetProperty("cases")[0];
        Assert.Equal($"/{part}/{member}", Assert.Single(miss.GetProperty("approval").GetProperty("figures").EnumerateArray()).GetProperty("pointer").GetString());
    }

    [Fact]
    public async Task The_unit_of_a_checks_value_stands_beside_it()
    {
        var check = (await Good("/v1/designs", Ash)).GetProperty("checks").EnumerateArray().First(one => one.GetProperty("unit").GetString() == "g");
        var approved = $$"""{ "checks": [{ "value": 1, "limit": 2, "unit": "g" }] }""";
        var figures = (await Outcome(Approving(JsonNode.Parse(approved)!.AsObject()))).GetProperty("cases")[0].GetProperty("approval").GetProperty("figures");
        Assert.All(figures.EnumerateArray(), figure => Assert.Equal("g", figure.GetProperty("unit").GetString()));
        Assert.Equal("g", check.GetProperty("unit").GetString());
    }

    [Fact]
    public async Task A_code_is_checked_as_its_design_is()
    {
        var code = (await Good("/v1/designs", Ash)).GetProperty("designCode").GetString();
        var outcome = await Outcome($$"""{ "cases": [{ "id": "a", "designCode": "{{code}}", "expect": [{ "pointer": "/designCode", "equals": "{{code}}" }] }] }""");
        Assert.Equal(1, outcome.GetProperty("passed").GetInt32());
    }

    // junit-10.xsd of the xUnit plugin of Jenkins, reduced to what is written here; counts are numbers and all names required.
    [Fact]
    public async Task The_xml_is_what_build_servers_read()
    {
        using var answer = await Send($$"""
            { "label": "Fleet & <guests>", "cases": [
                { "id": "a \"1\"", "design": {{Ash}}, "expect": [{ "pointer": "/outcome", "equals": "met" }, { "pointer": "/outcome", "equals": "<no>" }], "approved": { "mass": { "finishedG": 1 } } },
                { "id": "b", "design": {{Ash}}, "expect": [{ "pointer": "/outcome", "equals": "met" }] }] }
            """, "application/xml");
        Assert.Equal("application/xml", answer.Content.Headers.ContentType!.MediaType);
        var document = XDocument.Parse(await answer.Content.ReadAsStringAsync());
        document.Validate(Schema(), (_, fault) => Assert.Fail(fault.Message));

        var root = document.Root!;
        Assert.Equal(("Fleet & <guests>", "4", "2"), (root.Attribute("name")!.Value, root.Attribute("tests")!.Value, root.Attribute("failures")!.Value));
        var suites = root.Elements("testsuite").ToList();
        Assert.Equal(["a \"1\"", "b"], suites.Select(suite => suite.Attribute("name")!.Value));
        Assert.All(suites, suite =>
        {
            Assert.Equal(suite.Elements("testcase").Count(), (int)suite.Attribute("tests")!);
            Assert.Equal(suite.Descendants("failure").Count(), (int)suite.Attribute("failures")!);
        });
        Assert.Contains("\"<no>\"", suites[0].Elements("testcase").ElementAt(1).Element("failure")!.Attribute("message")!.Value, StringComparison.Ordinal);
        Assert.Contains("/mass/finishedG: 1 was approved", suites[0].Elements("testcase").Last().Element("failure")!.Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ }""", "/cases", null)]
    [InlineData("""{ "cases": [] }""", "/cases", null)]
    [InlineData("""{ "cases": [{ "id": "a", "expect": [{ "pointer": "/outcome", "equals": 1 }] }] }""", "/cases/0/designCode", null)]
    [InlineData("""{ "cases": [{ "id": "a", "design": ASH }] }""", "/cases/0/expect", null)]
    [InlineData("""{ "cases": [{ "id": "a", "design": ASH, "expect": [{ "pointer": "outcome", "equals": 1 }] }] }""", "/cases/0/expect/0/pointer", null)]
    [InlineData("""{ "cases": [{ "id": "a", "design": ASH, "expect": [{ "pointer": "/a" }] }] }""", "/cases/0/expect/0/least", null)]
    [InlineData("""{ "cases": [{ "id": "a", "design": ASH, "expect": [{ "pointer": "/a", "least": 2, "most": 1 }] }] }""", "/cases/0/expect/0/least", null)]
    [InlineData("""{ "cases": [{ "id": "a", "design": ASH, "expect": [{ "pointer": "/a", "equals": [1] }] }] }""", "/cases/0/expect/0/equals", "wrong-type")]
    [InlineData("""{ "cases": [{ "id": "a", "design": ASH, "expect": [{ "pointer": "/a", "equals": "x", "within": 1 }] }] }""", "/cases/0/expect/0/within", null)]
    [InlineData("""{ "cases": [{ "id": "a", "design": ASH, "expect": [{ "pointer": "/a", "equals": 1e999 }] }] }""", "/cases/0/expect/0/equals", null)]
    [InlineData("""{ "cases": [{ "id": "a", "design": ASH, "approved": [1] }] }""", "/cases/0/approved", "wrong-type")]
    [InlineData("""{ "cases": [{ "id": "a", "design": ASH, "approved": { "x": 1e999 } }] }""", "/cases/0/approved", null)]
    [InlineData("""{ "cases": [{ "id": "a", "design": ASH, "approved": {} }, { "id": "a", "design": ASH, "approved": {} }] }""", "/cases/1/id", "given-twice")]
    [InlineData("""{ "cases": [{ "id": "a", "design": { "handSpacingMm": 1, "wood": { "species": "white-ash" } }, "approved": {} }] }""", "/cases/0/design/handSpacingMm", "out-of-range")]
    [InlineData("""{ "cases": [{ "id": "a", "designCode": "p1x", "approved": {} }] }""", "/cases/0/designCode", null)]
    [InlineData("""{ "cases": [{ "id": "a", "design": ASH, "approved": {} }], "tolerances": { "share": 2 } }""", "/tolerances/share", "out-of-range")]
    public async Task What_cannot_be_used_is_refused_at_its_place(string body, string place, string? code)
    {
        using var answer = await Send(body.Replace("ASH", Ash, StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        var errors = (await Json(answer)).GetProperty("errors");
        Assert.True(errors.TryGetProperty(place, out var faults), errors.GetRawText());
        if (code is not null) Assert.Equal(code, faults[0].GetProperty("code").GetString());
    }

    // JSON of any form is no way round the rules of text.
    [Theory]
    [InlineData("""{ "cases": [{ "id": "a", "design": ASH, "approved": { "\ud800": 1 } }] }""", "/cases/0/approved")]
    [InlineData("""{ "cases": [{ "id": "a", "design": ASH, "approved": { "x": 1, "x": 2 } }] }""", "/cases/0/approved/x")]
    [InlineData("""{ "cases": [{ "id": "a", "design": ASH, "expect": [{ "pointer": "/a", "equals": "\ud800" }] }] }""", "/cases/0/expect/0/equals")]
    public async Task Half_characters_and_names_given_twice_are_refused(string body, string place)
    {
        using var answer = await Send(body.Replace("ASH", Ash, StringComparison.Ordinal));
        Assert.InRange((int)answer.StatusCode, 400, 422);
        Assert.True((await Json(answer)).GetProperty("errors").TryGetProperty(place, out _), await answer.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task The_demo_catalogue_passes_and_notices_another_wood()
    {
        var catalogue = await File.ReadAllTextAsync(Path.Combine(Committed.Root(), "docs", "examples", "ci", "catalogue.json"));
        Assert.Equal(0, (await Outcome(catalogue)).GetProperty("failed").GetInt32());
        Assert.Equal(2, (await Outcome(catalogue.Replace("white-ash", "shagbark-hickory", StringComparison.Ordinal).Replace("black-cherry", "white-ash", StringComparison.Ordinal))).GetProperty("failed").GetInt32());
    }

    [Fact]
    public void The_script_to_paste_is_the_one_in_the_guide()
    {
        var folder = Path.Combine(Committed.Root(), "docs");
        Assert.Contains($"```bash\n{File.ReadAllText(Path.Combine(folder, "examples", "ci", "check-designs.sh"))}```", File.ReadAllText(Path.Combine(folder, "guide.md")), StringComparison.Ordinal);
    }

    private static string Case(string expected) => $$"""{ "cases": [{ "id": "a", "design": {{Ash}}, {{expected}} }] }""";

    private static string Approving(JsonObject report, string tolerances = "null") =>
        $$"""{ "cases": [{ "id": "a", "design": {{Ash}}, "approved": {{report.ToJsonString()}} }], "tolerances": {{tolerances}} }""";

    // Every number and every truth in it, counted apart from the service.
    private static int Figures(JsonNode? node) => node switch
    {
        JsonObject members => members.Sum(member => Figures(member.Value)),
        JsonArray items => items.Sum(Figures),
        JsonValue value => value.GetValueKind() is JsonValueKind.Number or JsonValueKind.True or JsonValueKind.False ? 1 : 0,
        _ => 0,
    };

    private static XmlSchemaSet Schema()
    {
        const string Text = """
            <xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema">
              <xs:element name="testsuites"><xs:complexType>
                <xs:sequence><xs:element ref="testsuite" minOccurs="0" maxOccurs="unbounded"/></xs:sequence>
                <xs:attribute name="name" type="xs:string"/><xs:attribute name="tests" type="xs:nonNegativeInteger"/>
                <xs:attribute name="failures" type="xs:nonNegativeInteger"/><xs:attribute name="errors" type="xs:nonNegativeInteger"/>
              </xs:complexType></xs:element>
              <xs:element name="testsuite"><xs:complexType>
                <xs:sequence>
                  <xs:element name="properties" minOccurs="0"><xs:complexType><xs:sequence>
                    <xs:element name="property" maxOccurs="unbounded"><xs:complexType><xs:attribute name="name" use="required"/><xs:attribute name="value" use="required"/></xs:complexType></xs:element>
                  </xs:sequence></xs:complexType></xs:element>
                  <xs:element name="testcase" minOccurs="0" maxOccurs="unbounded"><xs:complexType>
                    <xs:sequence><xs:element name="failure" minOccurs="0"><xs:complexType><xs:simpleContent><xs:extension base="xs:string">
                      <xs:attribute name="message"/><xs:attribute name="type"/></xs:extension></xs:simpleContent></xs:complexType></xs:element></xs:sequence>
                    <xs:attribute name="name" type="xs:string" use="required"/><xs:attribute name="classname" type="xs:string" use="required"/>
                  </xs:complexType></xs:element>
                </xs:sequence>
                <xs:attribute name="name" type="xs:string" use="required"/><xs:attribute name="tests" type="xs:nonNegativeInteger" use="required"/>
                <xs:attribute name="failures" type="xs:nonNegativeInteger" use="required"/><xs:attribute name="errors" type="xs:nonNegativeInteger"/>
              </xs:complexType></xs:element>
            </xs:schema>
            """;
        var set = new XmlSchemaSet();
        using var reader = XmlReader.Create(new StringReader(Text));
        set.Add(null, reader);
        return set;
    }

    private async Task<JsonElement> Outcome(string body) => await Good("/v1/design-checks", body);

    private async Task<JsonElement> Good(string path, string body)
    {
        using var answer = await Send(body, path: path);
        Assert.True(answer.IsSuccessStatusCode, await answer.Content.ReadAsStringAsync());
        return await Json(answer);
    }

    private async Task<HttpResponseMessage> Send(string body, string accept = "application/json", string path = "/v1/design-checks")
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = new StringContent(body, Encoding.UTF8, "application/json") };
        request.Headers.Accept.Add(MediaTypeWithQualityHeaderValue.Parse(accept));
        return await api.Client.SendAsync(request);
    }

    private static async Task<JsonElement> Json(HttpResponseMessage answer) => JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement;
}
