using System.Globalization;
using System.Net;
using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Comparisons;

[Collection(HttpTests.Name)]
public sealed class ComparisonHttpTests(ApiFixture api)
{
    private const string Ash = """{ "handSpacingMm": 880, "wood": { "species": "white-ash" } }""";
    private const string Spruce = """{ "label": "Light", "handSpacingMm": 880, "wood": { "species": "sitka-spruce" } }""";
    private const string Wide = """{ "label": "Wide", "handSpacingMm": 820, "wood": { "species": "white-ash" }, "blade": { "family": "beavertail" }, "drawing": { "units": "inch" } }""";

    [Fact]
    public async Task Every_figure_is_the_one_of_the_report_and_the_best_and_worst_are_told()
    {
        var reports = new[] { await Good("/v1/designs", Ash), await Good("/v1/designs", Spruce), await Good("/v1/designs", Wide) };
        var answer = await Good("/v1/comparisons", Three);

        var figures = answer.GetProperty("figures").EnumerateArray().ToList();
        Assert.True(figures.Count >= 15);
        foreach (var figure in figures)
        {
            double[] values = [.. figure.GetProperty("values").EnumerateArray().Select(value => value.GetDouble())];
            var pointer = figure.GetProperty("pointer").GetString()!;
            double[] shown = [.. reports.Select(report => At(report, pointer).GetDouble())];

            // A moment of inertia is printed to four digits in the report.
            Assert.All(values.Zip(shown), pair => Assert.Equal(pair.Second, pair.First, Math.Max(0.0051 * Math.Abs(pair.Second), 0.001) / 5));
            if (!figure.TryGetProperty("better", out var better))
            {
                Assert.Empty(figure.GetProperty("best").EnumerateArray());
                continue;
            }

            var key = better.GetString() switch
            {
                "less" => (Func<double, double>)(value => value),
                "more" => value => -value,
                _ => Math.Abs,
            };
            string[] ids = ["ash", "light", "wide"];
            Assert.Equal(ids.Where((_, k) => key(values[k]) == values.Min(key)), Names(figure, "best"));
            Assert.Equal(ids.Where((_, k) => key(values[k]) == values.Max(key)), Names(figure, "worst"));
        }
    }

    [Fact]
    public async Task Differences_are_told_in_plain_words_beside_the_first()
    {
        var (ash, light) = (await Good("/v1/designs", Ash), await Good("/v1/designs", Spruce));
        var answer = await Good("/v1/comparisons", Three);

        var told = answer.GetProperty("differences").EnumerateArray().ToList();
        Assert.Equal(["light", "wide"], told.Select(one => one.GetProperty("id").GetString()));
        Assert.All(told, one => Assert.Equal("ash", one.GetProperty("than").GetString()));
        var sentences = Names(told[0], "sentences");
        double a = At(ash, "/mass/finishedG").GetDouble(), b = At(light, "/mass/finishedG").GetDouble();
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"It is {a - b:0} g ({100 * (a - b) / a:0} %) lighter."), sentences);
        Assert.Contains(sentences, one => one.StartsWith("Wood: sitka spruce, not ", StringComparison.Ordinal));
        Assert.Contains(Names(told[1], "sentences"), one => one.StartsWith("Blade: beavertail, not ", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_same_paddle_twice_differs_in_nothing()
    {
        var answer = await Good("/v1/comparisons", $$"""{ "designs": [{ "id": "a", "design": {{Ash}} }, { "id": "b", "design": {{Ash}} }] }""");
        Assert.Equal(["Nothing that a hand, a scale or a tape would notice."], Names(answer.GetProperty("differences")[0], "sentences"));
        Assert.All(answer.GetProperty("figures").EnumerateArray(), figure => Assert.Empty(figure.GetProperty("best").EnumerateArray()));
    }

    [Fact]
    public async Task Words_are_in_the_units_of_the_first_design()
    {
        var answer = await Good("/v1/comparisons", $$"""{ "designs": [{ "id": "a", "design": {{Wide}} }, { "id": "b", "design": {{Ash}} }] }""");
        var sentences = Names(answer.GetProperty("differences")[0], "sentences");
        Assert.Contains(sentences, one => one.Contains(" oz (", StringComparison.Ordinal));
        Assert.DoesNotContain(sentences, one => one.Contains(" mm", StringComparison.Ordinal));
    }

    [Fact]
    public async Task By_its_codes_it_is_the_same_and_any_cache_may_keep_it()
    {
        var posted = await Good("/v1/comparisons", Three);
        using var answer = await api.Client.GetAsync(posted.GetProperty("links").GetProperty("self").GetString());
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.NotNull(answer.Headers.ETag);
        var read = await Json(answer);
        Assert.Equal(["A", "Light", "Wide"], read.GetProperty("designs").EnumerateArray().Select(one => one.GetProperty("id").GetString()));
        Assert.Equal(
            posted.GetProperty("figures").EnumerateArray().SelectMany(figure => figure.GetProperty("values").EnumerateArray()).Select(value => value.GetDouble()),
            read.GetProperty("figures").EnumerateArray().SelectMany(figure => figure.GetProperty("values").EnumerateArray()).Select(value => value.GetDouble()));
    }

    [Fact]
    public async Task The_drawing_lays_every_outline_and_thickness_of_the_reports_over_the_others()
    {
        var posted = await Good("/v1/comparisons", Three);
        var drawing = XDocument.Parse(await api.Client.GetStringAsync(posted.GetProperty("links").GetProperty("drawing").GetString()));
        var reports = new[] { await Good("/v1/designs", Ash), await Good("/v1/designs", Spruce), await Good("/v1/designs", Wide) };
        var overallMm = reports.Max(report => At(report, "/lengths/overallMm").GetDouble());
        List<List<(double X, double Y)>>? lines0 = null;
        for (var k = 0; k < 3; k++)
        {
            var lines = drawing.Descendants().Where(one => ((string?)one.Attribute("class"))?.Split(' ') is { } names && names.Contains("outline") && names.Contains($"paddle{k}"))
                .Elements().Select(path => Points(path.Attribute("d")!.Value)).ToList();
            Assert.Equal(2, lines.Count);
            // Two designs in one scale: their breadths at the widest, and their shafts at the lower hand, are as the reports have them.
            Assert.Equal(At(reports[k], "/lengths/overallMm").GetDouble() / overallMm * 258, lines[0].Max(p => p.X) - lines[0].Min(p => p.X), 0.3);
            var first = lines0 ??= lines;
            Assert.Equal(Widest(reports[k]) / Widest(reports[0]), lines[0].Max(p => Height(lines[0], p)) / first[0].Max(p => Height(first[0], p)), 0.005);
            Assert.Equal(
                At(reports[k], "/sizes/shaftThicknessMm").GetDouble() / At(reports[0], "/sizes/shaftThicknessMm").GetDouble(),
                Height(lines[1], AtHand(lines[1], reports[k], overallMm)) / Height(first[1], AtHand(first[1], reports[0], overallMm)), 0.005);
        }

        Assert.Contains("Light", drawing.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_gives_no_names_finds_labels_and_letters()
    {
        var answer = await Good("/v1/comparisons", $$"""{ "designs": [{ "design": {{Ash}} }, { "design": {{Spruce}} }, { "id": "A", "design": {{Wide}} }, { "design": {{Ash}} }] }""");
        Assert.Equal(["Design 1", "Light", "A", "D"], answer.GetProperty("designs").EnumerateArray().Select(one => one.GetProperty("id").GetString()));
    }

    [Theory]
    [InlineData("""{ }""", "/designs")]
    [InlineData("""{ "designs": [{ "id": "a", "design": ASH }] }""", "/designs")]
    [InlineData("""{ "designs": [{ "id": "a", "design": ASH }, { "id": "a", "design": ASH }] }""", "/designs/1/id")]
    [InlineData("""{ "designs": [{ "id": "a", "design": ASH }, { "id": "b" }] }""", "/designs/1/designCode")]
    [InlineData("""{ "designs": [{ "id": "a", "design": ASH }, { "id": "b", "designCode": "p1x" }] }""", "/designs/1/designCode")]
    [InlineData("""{ "designs": [{ "id": "a", "design": ASH }, { "id": "b", "design": { "handSpacingMm": 880 } }] }""", "/designs/1/design/wood/species")]
    public async Task What_cannot_be_compared_is_refused_at_its_place(string body, string place)
    {
        using var answer = await Post("/v1/comparisons", body.Replace("ASH", Ash, StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.True((await Json(answer)).GetProperty("errors").TryGetProperty(place, out _));
    }

    [Fact]
    public async Task Thirteen_designs_or_one_code_are_refused()
    {
        var many = string.Join(',', Enumerable.Range(0, 13).Select(k => $$"""{ "id": "{{k}}", "design": {{Ash}} }"""));
        using var tooMany = await Post("/v1/comparisons", $$"""{ "designs": [{{many}}] }""");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, tooMany.StatusCode);
        var code = (await Good("/v1/designs", Ash)).GetProperty("designCode").GetString();
        foreach (var codes in (string[])[code!, $"{code}.", $"{code}.p1x", $"{code},{code}", string.Join('.', Enumerable.Repeat(code, 13))])
        {
            using var answer = await api.Client.GetAsync($"/v1/comparisons/{codes}");
            Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        }
    }

    private static string Three => $$"""
        { "designs": [{ "id": "ash", "design": {{Ash}} }, { "id": "light", "design": {{Spruce}} }, { "id": "wide", "design": {{Wide}} }] }
        """;

    private static double Widest(JsonElement report) => report.GetProperty("stations").EnumerateArray().Max(one => one.GetProperty("halfWidthMm").GetDouble());

    // Above the line of nothing, on which the outline's tip ends; a spine ends above it by the thickness of the tip's edge.
    private static double Height(List<(double X, double Y)> line, (double X, double Y) point) => Foot(line) - point.Y;

    private static double Foot(List<(double X, double Y)> line) => line.Max(point => point.Y);

    private static (double X, double Y) AtHand(List<(double X, double Y)> line, JsonElement report, double overallMm) =>
        line.MinBy(point => Math.Abs(point.X - line[0].X - 258 * At(report, "/lengths/lowerHandMm").GetDouble() / overallMm));

    private static List<(double X, double Y)> Points(string data) =>
    [
        .. data.Split(['M', 'L'], StringSplitOptions.RemoveEmptyEntries).Select(pair => pair.Trim().Split(' '))
            .Select(pair => (double.Parse(pair[0], CultureInfo.InvariantCulture), double.Parse(pair[1], CultureInfo.InvariantCulture))),
    ];

    private static JsonElement At(JsonElement report, string pointer) =>
        pointer.Split('/')[1..].Aggregate(report, (place, name) => place.GetProperty(name));

    private static string[] Names(JsonElement holder, string list) => [.. holder.GetProperty(list).EnumerateArray().Select(name => name.GetString()!)];

    private async Task<JsonElement> Good(string path, string body)
    {
        using var answer = await Post(path, body);
        Assert.True(answer.IsSuccessStatusCode, await answer.Content.ReadAsStringAsync());
        return await Json(answer);
    }

    private async Task<HttpResponseMessage> Post(string path, string body)
    {
        using var content = new StringContent(body, Encoding.UTF8, "application/json");
        return await api.Client.PostAsync(path, content);
    }

    private static async Task<JsonElement> Json(HttpResponseMessage answer) => JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement;
}
