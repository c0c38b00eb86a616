using System.Globalization;
using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Paddle.Design;
using Paddle.Design.Build;
using PaddleApi.Endpoints.Builds;
using PaddleApi.Tests.Contract;
using PaddleApi.Tests.Designs;

namespace PaddleApi.Tests.Builds;

[Collection(HttpTests.Name)]
public sealed class BuildHttpTests(ApiFixture api)
{
    private static readonly string Design = $"/v1/designs/{BuildExamples.Weighed.DesignCode}";
    private static readonly string Address = $"{Design}/build";
    private static readonly string Sheet = $"{Design}/build-sheet.html";

    [Fact]
    public async Task Stage_by_stage_the_paddle_grows_lighter_down_to_the_designs_wood_and_is_finished_last()
    {
        var (build, design) = (await Good(Address), await Good(Design));

        var stages = build.GetProperty("stages").EnumerateArray().ToList();
        Assert.Equal(BuildStages.All.Select(stage => Names.Of(stage)), stages.Select(stage => stage.GetProperty("id").GetString()));
        var (wood, mass) = (stages.SkipLast(1).Select(stage => Band(stage, "massG").Value).ToList(), design.GetProperty("mass"));
        Assert.All(wood.Zip(wood.Skip(1)), pair => Assert.True(pair.Second < pair.First, $"{pair.Second} g after {pair.First} g"));
        Assert.Equal("sanded", stages[^2].GetProperty("id").GetString());
        Assert.Equal(Number(mass, "totalG"), wood[^1], 0.11);
        Assert.Equal(Number(mass, "centreOfMassMm"), Band(stages[^2], "balanceMm").Value, 0.11);

        Assert.Equal(("finished", "Finished: blade varnished, shaft and grip oiled"), (stages[^1].GetProperty("id").GetString(), stages[^1].GetProperty("title").GetString()));
        Assert.Equal(Number(mass, "finishedG"), Band(stages[^1], "massG").Value, 0.11);
        Assert.Equal(Number(mass, "finishedCentreOfMassMm"), Band(stages[^1], "balanceMm").Value, 0.11);
        Assert.Equal(Number(build.GetProperty("withFinish"), "massG"), Band(stages[^1], "massG").Value);
    }

    [Fact]
    public async Task Every_stage_says_what_to_expect_and_when_to_stop()
    {
        foreach (var stage in (await Good(Address)).GetProperty("stages").EnumerateArray())
        {
            foreach (var name in (string[])["massG", "balanceMm"])
            {
                var (value, low, high) = Band(stage, name);
                Assert.True(low < value && value < high, $"{stage.GetProperty("id")}: {name} {low} {value} {high}");
            }

            Assert.NotEqual(0, stage.GetProperty("mark").GetArrayLength());
            Assert.NotEqual(0, stage.GetProperty("measure").GetArrayLength());
            Assert.False(string.IsNullOrWhiteSpace(stage.GetProperty("stopWhen").GetString()));
            Assert.NotEqual(0, stage.GetProperty("cautions").GetArrayLength());
            Assert.All(stage.GetProperty("cautions").EnumerateArray(), caution => Assert.NotEqual("", caution.GetProperty("source").GetString()));
            Assert.Equal(Enumerable.Range(1, stage.GetProperty("stations").GetArrayLength()),
                stage.GetProperty("stations").EnumerateArray().Select(station => station.GetProperty("number").GetInt32()));
        }
    }

    [Fact]
    public async Task The_balance_point_moves_as_the_stage_before_said()
    {
        var stages = (await Good(Address)).GetProperty("stages").EnumerateArray().ToList();

        foreach (var (stage, next) in stages.Zip(stages.Skip(1)))
            Assert.Equal(Number(stage, "nextMoveMm"), Band(next, "balanceMm").Value - Band(stage, "balanceMm").Value, 0.16);
    }

    [Fact]
    public async Task The_octagon_line_is_its_share_of_the_face()
    {
        foreach (var line in (await Good(Address)).GetProperty("shaftLines").EnumerateArray())
            Assert.Equal(0.2929 * Number(line, "widthMm"), Number(line, "lineOnFaceMm"), 0.08);
    }

    [Fact]
    public async Task The_makers_choices_count()
    {
        var (usual, chosen) = (await Good(Address), await Good($"{Address}?boardThicknessMm=44.4&saw=jigsaw"));

        Assert.Equal(44.4, Number(chosen.GetProperty("blank"), "thicknessMm"));
        Assert.True(Band(chosen.GetProperty("stages")[1], "massG").Value > Band(usual.GetProperty("stages")[1], "massG").Value);
        Assert.Equal($"{Address}?boardThicknessMm=44.4&saw=jigsaw",
            chosen.GetProperty("links").GetProperty("self").GetString());
    }

    [Fact]
    public async Task On_the_makers_own_board_the_paddle_is_laid_as_often_as_that_holds_it()
    {
        var wide = (await Good($"{Address}?boardLengthMm=1830&boardWidthMm=400")).GetProperty("onBoard");
        Assert.Equal(3, wide.GetProperty("placements").GetArrayLength());
        Assert.InRange(Number(wide.GetProperty("boards")[0], "usedWidthMm"), 300, 400);
        var narrow = (await Good($"{Address}?boardLengthMm=1830&boardWidthMm=100")).GetProperty("onBoard");
        Assert.Equal("width", narrow.GetProperty("unplaced")[0].GetProperty("reasons")[0].GetProperty("code").GetString());
        Assert.False((await Good(Address)).TryGetProperty("onBoard", out _));
    }

    [Fact]
    public async Task Other_choices_have_another_tag()
    {
        using var usual = await api.Client.GetAsync(Address);
        using var ask = new HttpRequestMessage(HttpMethod.Get, $"{Address}?saw=jigsaw");
        ask.Headers.IfNoneMatch.Add(usual.Headers.ETag!);

        using var answer = await api.Client.SendAsync(ask);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.NotEqual(usual.Headers.ETag, answer.Headers.ETag);
    }

    [Fact]
    public async Task The_sheet_to_print_is_one_page_that_needs_nothing_else()
    {
        using var answer = await api.Client.GetAsync(Sheet);
        var text = await answer.Content.ReadAsStringAsync();
        var page = XDocument.Parse(text);

        Assert.Equal("text/html", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal(12, page.Descendants().Count(element => element.Name.LocalName == "svg")); // the paddle and eleven stages
        Assert.DoesNotContain(page.Descendants(), element => element.Name.LocalName is "script" or "link" or "img" or "iframe" or "object" or "base");
        Assert.DoesNotContain(page.Descendants().SelectMany(element => element.Attributes()),
            attribute => attribute.Name.LocalName is "href" or "src" or "style" || attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        Assert.DoesNotContain("url(", text, StringComparison.Ordinal);
        Assert.DoesNotContain("@import", text, StringComparison.Ordinal);
        Assert.Contains("Heron Lake hire fleet", page.Descendants().Single(element => element.Name.LocalName == "h1").Value, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Its_policy_lets_its_own_style_through_and_nothing_else()
    {
        using var answer = await api.Client.GetAsync(Sheet);
        var text = await answer.Content.ReadAsStringAsync();
        var style = text[(text.IndexOf("<style>", StringComparison.Ordinal) + 7)..text.IndexOf("</style>", StringComparison.Ordinal)];
        var digest = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)));

        Assert.Equal(
            $"default-src 'none'; style-src 'sha256-{digest}'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
            string.Join(';', answer.Headers.GetValues("Content-Security-Policy")));
    }

    [Fact]
    public async Task The_sheet_comes_as_a_pdf_too()
    {
        var links = (await Good($"{Address}?saw=jigsaw")).GetProperty("links");
        Assert.Equal($"{Design}/build-sheet.pdf?saw=jigsaw", links.GetProperty("sheetPdf").GetString());
        using var answer = await api.Client.GetAsync(links.GetProperty("sheetPdf").GetString());
        var bytes = await answer.Content.ReadAsByteArrayAsync();
        Assert.Equal("application/pdf", answer.Content.Headers.ContentType!.MediaType);
        Assert.StartsWith("inline; filename=heron-lake-hire-fleet", answer.Content.Headers.ContentDisposition!.ToString().Replace("\"", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.StartsWith("%PDF-1", Encoding.ASCII.GetString(bytes[..8]), StringComparison.Ordinal);

        using var ask = new HttpRequestMessage(HttpMethod.Get, answer.RequestMessage!.RequestUri);
        ask.Headers.IfNoneMatch.Add(answer.Headers.ETag!);
        using var held = await api.Client.SendAsync(ask);
        Assert.Equal(HttpStatusCode.NotModified, held.StatusCode);
        using var part = new HttpRequestMessage(HttpMethod.Get, answer.RequestMessage!.RequestUri);
        part.Headers.Range = new(0, 3);
        using var begun = await api.Client.SendAsync(part);
        Assert.Equal((HttpStatusCode.PartialContent, "%PDF"), (begun.StatusCode, await begun.Content.ReadAsStringAsync()));

        using var letter = await api.Client.GetAsync($"{Design}/build-sheet.pdf?saw=jigsaw&paper=letter");
        Assert.Equal(HttpStatusCode.OK, letter.StatusCode);
        Assert.NotEqual(answer.Headers.ETag, letter.Headers.ETag);
        Assert.NotEqual(bytes, await letter.Content.ReadAsByteArrayAsync());
        using var roll = await api.Client.GetAsync($"{Design}/build-sheet.pdf?paper=roll");
        using var body = JsonDocument.Parse(await roll.Content.ReadAsStringAsync());
        Assert.Equal(HttpStatusCode.UnprocessableEntity, roll.StatusCode);
        Assert.Equal(["a4", "letter"], body.RootElement.GetProperty("errors").GetProperty("?paper")[0].GetProperty("allowed").EnumerateArray().Select(name => name.GetString()));
    }

    [Fact]
    public async Task The_page_says_what_the_figures_say()
    {
        var build = await Good(Address);
        var page = XDocument.Parse(await api.Client.GetStringAsync(Sheet));

        var rows = page.Descendants("table").First().Descendants("tbody").Single().Elements().Select(row => row.Elements().Select(cell => cell.Value).ToList()).ToList();
        Assert.Equal(11, rows.Count);
        foreach (var (stage, row) in build.GetProperty("stages").EnumerateArray().Zip(rows))
        {
            Assert.EndsWith(stage.GetProperty("title").GetString()!, row[0], StringComparison.Ordinal);
            var printed = double.Parse(Regex.Match(row[1], @"(\d+) g \(").Groups[1].Value, CultureInfo.InvariantCulture);
            Assert.Equal(Band(stage, "massG").Value, printed, 0.56); // one is rounded to 0.1 g, the other to 1 g
            Assert.Contains(stage.GetProperty("stopWhen").GetString()!, page.Root!.Value, StringComparison.Ordinal);
            Assert.All(stage.GetProperty("cautions").EnumerateArray(), caution =>
                Assert.Contains($"{caution.GetProperty("text").GetString()} [{caution.GetProperty("source").GetString()}]", page.Root!.Value, StringComparison.Ordinal));
        }
    }

    [Fact]
    public async Task A_label_is_printed_and_never_run()
    {
        using var made = await api.Client.PostAsync(new Uri("/v1/designs", UriKind.Relative), new StringContent(
            Requests.With("/label=\"<script>alert(1)</script> & \\\"M\\\"\"; /drawing/units=\"inch\""), Encoding.UTF8, "application/json"));
        using var design = JsonDocument.Parse(await made.Content.ReadAsStringAsync());

        var text = await api.Client.GetStringAsync($"/v1/designs/{design.RootElement.GetProperty("designCode").GetString()}/build-sheet.html");

        Assert.DoesNotContain("<script", text, StringComparison.OrdinalIgnoreCase);
        Assert.Equal("Build sheet: <script>alert(1)</script> & \"M\"",
            XDocument.Parse(text).Descendants().Single(element => element.Name.LocalName == "h1").Value);
        Assert.Contains("All lengths are in inches", text, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\d ?mm\b", text[text.IndexOf("<body", StringComparison.Ordinal)..]);
    }

    [Fact]
    public async Task A_paddle_that_is_too_weak_says_so_in_its_build_and_on_its_sheet()
    {
        // The trade's cherry paddle with its shaft thinned to 23 mm.
        var design = await Made("/handSpacingMm=889; /wood/species=\"black-cherry\"; /shaft/widthMm=23; /shaft/thicknessMm=23");
        var address = $"/v1/designs/{design.GetProperty("designCode").GetString()}";
        var (build, again) = (await Good($"{address}/build"), await Good(address));

        Assert.Equal("closest", build.GetProperty("outcome").GetString());
        var unmet = build.GetProperty("unmetAims");
        Assert.StartsWith("strength.", unmet[0].GetProperty("code").GetString(), StringComparison.Ordinal);
        Assert.Equal(again.GetProperty("unmetAims").GetRawText(), unmet.GetRawText());
        Assert.All(unmet.EnumerateArray(), aim => Assert.NotEqual("", aim.GetProperty("advice").GetString()));

        var page = XDocument.Parse(await api.Client.GetStringAsync($"{address}/build-sheet.html")).Root!.Element("body")!;
        Assert.StartsWith("NOT TO BE BUILT", page.Element("h1")!.Value, StringComparison.Ordinal);
        Assert.Contains(unmet[0].GetProperty("message").GetString()!, page.Elements().ElementAt(1).Value, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_sound_paddle_says_nothing_of_the_kind()
    {
        var design = await Made("/handSpacingMm=889; /wood/species=\"black-cherry\"");
        var address = $"/v1/designs/{design.GetProperty("designCode").GetString()}";
        var build = await Good($"{address}/build");
        Assert.Equal("met", build.GetProperty("outcome").GetString());
        Assert.Equal(0, build.GetProperty("unmetAims").GetArrayLength());
        Assert.DoesNotContain("BUILD", XDocument.Parse(await api.Client.GetStringAsync($"{address}/build-sheet.html")).Root!.Element("body")!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Stage_and_finish_follow_the_design()
    {
        var design = await Made("/finish/blade=\"varnish\"; /finish/shaft=\"varnish\"; /finish/tipReinforcement=\"glass-cloth\"; /wood/boardThicknessMm=32");
        var build = await Good($"/v1/designs/{design.GetProperty("designCode").GetString()}/build");
        Assert.Equal("Finished: tip reinforced, varnished all over", build.GetProperty("stages")[10].GetProperty("title").GetString());
        Assert.False(build.GetProperty("finish").TryGetProperty("maskingLineMm", out _));
        Assert.True(build.GetProperty("tip").GetProperty("chosen").GetBoolean());
        Assert.Equal(Number(design.GetProperty("mass"), "finishedG"), Number(build.GetProperty("tip").GetProperty("with"), "massG"), 0.11);
        var blank = build.GetProperty("blank");
        Assert.True(blank.GetProperty("isOwn").GetBoolean());
        Assert.Equal((32, Math.Round(32 - Number(blank, "thickestSectionMm"), 1)), (Number(blank, "thicknessMm"), Math.Round(Number(blank, "overMm"), 1)));
        Assert.Equal(
            ["grip top", "top hand", "grip end", "lower hand", "throat", "widest", "tip"],
            build.GetProperty("stages")[0].GetProperty("stations").EnumerateArray().Where(station => station.TryGetProperty("mark", out _))
                .Select(station => station.GetProperty("mark").GetString()));
    }

    [Fact]
    public async Task Unasked_the_answer_says_nothing_of_service() => Assert.False((await Good(Address)).TryGetProperty("inService", out _));

    [Fact]
    public async Task Dried_in_use_the_paddle_shrinks_and_weighs_less()
    {
        var build = await Good($"{Address}?usedMoisturePercent=8");
        var (use, design) = (build.GetProperty("inService"), await Good(Design));

        var built = Number(design.GetProperty("wood"), "moisturePercent");
        Assert.Equal(built, Number(use, "builtMoisturePercent"));
        Assert.Equal(8, Number(use, "moisturePercent"));
        Assert.All(use.GetProperty("sizes").EnumerateArray(), size =>
        {
            Assert.True(Number(size, "flatSawnChangeMm") < 0, size.GetRawText());
            Assert.True(Number(size, "quarterSawnChangeMm") < 0, size.GetRawText());
        });

        // The ovendry wood stays (theory M16), and wood dried alike everywhere balances where it did.
        var bare = use.GetProperty("bareWood");
        Assert.Equal(Number(design.GetProperty("mass"), "totalG") * 108 / (100 + built), Number(bare, "massG"), 0.11);
        Assert.Equal(0, Number(bare, "shiftMm"), 0.051);
    }

    [Fact]
    public async Task Used_at_its_own_moisture_nothing_changes()
    {
        var built = Number((await Good(Design)).GetProperty("wood"), "moisturePercent").ToString(CultureInfo.InvariantCulture);

        var use = (await Good($"{Address}?usedMoisturePercent={built}")).GetProperty("inService");

        Assert.All(use.GetProperty("sizes").EnumerateArray(), size => Assert.Equal(0, Number(size, "flatSawnChangeMm")));
        Assert.Empty(use.GetProperty("notes").EnumerateArray());
    }

    [Fact]
    public async Task A_climate_stands_for_its_moisture()
    {
        // Wood Handbook table 4-2 (from memory): 12.0 % at 21.1 degrees C and 65 %.
        var use = (await Good($"{Address}?temperatureC=21.1&relativeHumidityPercent=65")).GetProperty("inService");

        Assert.Equal(12.0, Number(use, "moisturePercent"), 0.06);
    }

    [Fact]
    public async Task The_wettest_climates_are_answered()
    {
        foreach (var degrees in (string[])["-1", "60"])
        {
            var use = (await Good($"{Address}?temperatureC={degrees}&relativeHumidityPercent=100")).GetProperty("inService");
            Assert.InRange(Number(use, "moisturePercent"), 20, 40);
            Assert.Contains(use.GetProperty("notes").EnumerateArray(), note => note.GetString()!.Contains("fungi", StringComparison.Ordinal));
        }
    }

    [Fact]
    public async Task Another_moisture_has_another_tag_and_the_same_sheet()
    {
        using var dry = await api.Client.GetAsync($"{Address}?saw=jigsaw&usedMoisturePercent=8");
        using var ask = new HttpRequestMessage(HttpMethod.Get, $"{Address}?saw=jigsaw&usedMoisturePercent=9");
        ask.Headers.IfNoneMatch.Add(dry.Headers.ETag!);
        using var damp = await api.Client.SendAsync(ask);
        using var again = new HttpRequestMessage(HttpMethod.Get, $"{Address}?saw=jigsaw&usedMoisturePercent=9");
        again.Headers.IfNoneMatch.Add(damp.Headers.ETag!);
        using var held = await api.Client.SendAsync(again);

        Assert.Equal(HttpStatusCode.OK, damp.StatusCode);
        Assert.Equal(HttpStatusCode.NotModified, held.StatusCode);
        using var body = JsonDocument.Parse(await damp.Content.ReadAsStringAsync());
        var sheet = body.RootElement.GetProperty("links").GetProperty("sheet").GetString();
        Assert.Equal($"{Sheet}?saw=jigsaw", sheet);
        using var page = await api.Client.GetAsync(sheet);
        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
    }

    [Theory]
    [InlineData("usedMoisturePercent=-1", "?usedMoisturePercent")]
    [InlineData("usedMoisturePercent=41", "?usedMoisturePercent")]
    [InlineData("usedMoisturePercent=NaN", "?usedMoisturePercent")]
    [InlineData("usedMoisturePercent=9&temperatureC=20&relativeHumidityPercent=65", "?usedMoisturePercent")]
    [InlineData("temperatureC=20", "?relativeHumidityPercent")]
    [InlineData("relativeHumidityPercent=65", "?temperatureC")]
    [InlineData("temperatureC=61&relativeHumidityPercent=65", "?temperatureC")]
    [InlineData("temperatureC=20&relativeHumidityPercent=101", "?relativeHumidityPercent")]
    public Task A_climate_that_cannot_be_is_refused_by_place(string query, string place) => AssertRefusedAsync(query, place);

    [Theory]
    [InlineData("boardThicknessMm=9", "?boardThicknessMm")]
    [InlineData("boardThicknessMm=20", "?boardThicknessMm")] // the design's shaft is thicker
    [InlineData("boardThicknessMm=NaN", "?boardThicknessMm")]
    [InlineData("saw=chainsaw", "?saw")]
    public async Task Choices_out_of_range_are_refused_by_place(string query, string place)
    {
        foreach (var address in (string[])[Address, Sheet])
        {
            using var answer = await api.Client.GetAsync($"{address}?{query}");
            using var body = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());

            Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
            Assert.Equal("/problems/invalid-values", body.RootElement.GetProperty("type").GetString());
            Assert.True(body.RootElement.GetProperty("errors").TryGetProperty(place, out _), body.RootElement.GetRawText());
            Assert.Null(answer.Headers.ETag);
        }
    }

    [Theory]
    [InlineData("boardThicknessMm=44,4", "?boardThicknessMm")]
    [InlineData("boardThicknessMm=4,0", "?boardThicknessMm")]
    [InlineData("boardThicknessMm= 44", "?boardThicknessMm")]
    [InlineData("boardThicknessMm=44 mm", "?boardThicknessMm")]
    [InlineData("boardThicknessMm=%2B44", "?boardThicknessMm")]
    [InlineData("boardThicknessMm=44.", "?boardThicknessMm")]
    [InlineData("boardThicknessMm=.5", "?boardThicknessMm")]
    [InlineData("boardThicknessMm=044", "?boardThicknessMm")]
    [InlineData("boardThicknessMm=1_0", "?boardThicknessMm")]
    [InlineData("boardThicknessMm=0x2C", "?boardThicknessMm")]
    [InlineData("boardThicknessMm=Infinity", "?boardThicknessMm")]
    [InlineData("boardThicknessMm=1e999", "?boardThicknessMm")]
    [InlineData("boardThicknessMm=", "?boardThicknessMm")]
    [InlineData("boardThicknessMm=%D9%A4%D9%A4", "?boardThicknessMm")] // forty-four in Arabic digits
    [InlineData("boardThicknessMm=44&boardThicknessMm=44", "?boardThicknessMm")]
    [InlineData("usedMoisturePercent=1,2", "?usedMoisturePercent")]
    [InlineData("usedMoisturePercent=1&usedMoisturePercent=2", "?usedMoisturePercent")]
    [InlineData("temperatureC=2,0&relativeHumidityPercent=65", "?temperatureC")]
    [InlineData("saw=band-saw&saw=band-saw", "?saw")]
    [InlineData("saw=band-saw,jigsaw", "?saw")]
    [InlineData("saw=", "?saw")]
    public Task A_value_that_can_be_read_in_two_ways_is_read_in_none(string query, string place) => AssertRefusedAsync(query, place);

    [Theory]
    [InlineData("coats=3", "?coats")]
    [InlineData("Saw=jigsaw", "?Saw")]
    [InlineData("boardThicknessMm=44&BoardThicknessMm=44", "?BoardThicknessMm")]
    [InlineData("=3", "?")]
    [InlineData("saw=jigsaw&unit=mm&x", "?unit ?x")]
    public async Task A_parameter_that_is_not_known_is_refused_by_name(string query, string places)
    {
        using var answer = await api.Client.GetAsync($"{Address}?{query}");
        using var body = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal(places.Split(' '), body.RootElement.GetProperty("errors").EnumerateObject().Select(error => error.Name));
    }

    // A strong tag names bytes (RFC 9110, 8.8.1), so the bytes must be the same too.
    [Theory]
    [InlineData("build", "saw=band-saw", "")]
    [InlineData("build", "usedMoisturePercent=9.0&saw=jigsaw", "saw=jigsaw&usedMoisturePercent=9")]
    [InlineData("build", "boardThicknessMm=4.44e1&saw=jigsaw", "saw=jigsaw&boardThicknessMm=44.40")]
    [InlineData("build", "temperatureC=-0&relativeHumidityPercent=65", "temperatureC=0&relativeHumidityPercent=65")]
    [InlineData("build-sheet.html", "saw=band-saw", "")]
    [InlineData("build-sheet.pdf", "paper=a4&saw=band-saw", "")]
    public async Task The_same_asked_in_another_way_is_the_same_answer(string part, string one, string other)
    {
        using var first = await api.Client.GetAsync($"{Design}/{part}?{one}");
        using var second = await api.Client.GetAsync(other.Length == 0 ? $"{Design}/{part}" : $"{Design}/{part}?{other}");

        Assert.Equal(HttpStatusCode.OK, first.StatusCode);
        Assert.Equal(second.Headers.ETag, first.Headers.ETag);
        Assert.Equal(await second.Content.ReadAsByteArrayAsync(), await first.Content.ReadAsByteArrayAsync());
    }

    [Fact]
    public async Task A_damaged_code_is_refused()
    {
        using var answer = await api.Client.GetAsync(Address.Replace("/p1", "/p1A", StringComparison.Ordinal));
        using var body = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal("/problems/invalid-design-code", body.RootElement.GetProperty("type").GetString());
    }

    private async Task<JsonElement> Made(string changes)
    {
        using var body = new StringContent(Requests.With(changes), Encoding.UTF8, "application/json");
        using var answer = await api.Client.PostAsync(new Uri("/v1/designs", UriKind.Relative), body);
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode == HttpStatusCode.OK, text);
        using var read = JsonDocument.Parse(text);
        return read.RootElement.Clone();
    }

    private async Task<JsonElement> Good(string address)
    {
        using var answer = await api.Client.GetAsync(address);
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode == HttpStatusCode.OK, text);
        using var read = JsonDocument.Parse(text);
        return read.RootElement.Clone();
    }

    private static double Number(JsonElement holder, string member) => holder.GetProperty(member).GetDouble();

    private static (double Value, double Low, double High) Band(JsonElement stage, string member)
    {
        var band = stage.GetProperty(member);
        return (Number(band, "value"), Number(band, "low"), Number(band, "high"));
    }

    private async Task AssertRefusedAsync(string query, string place)
    {
        using var answer = await api.Client.GetAsync($"{Address}?{query}");
        using var body = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal([place], body.RootElement.GetProperty("errors").EnumerateObject().Select(error => error.Name));
        Assert.Null(answer.Headers.ETag);
    }
}
