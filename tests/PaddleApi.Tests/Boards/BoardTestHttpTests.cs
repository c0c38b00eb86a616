using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Boards;

[Collection(HttpTests.Name)]
public sealed class BoardTestHttpTests(ApiFixture api)
{
    private const string Stick =
        """{"species":"white-ash","moisturePercent":12,"lengthMm":1000,"widthMm":50,"thicknessMm":20,"massG":650}""";

    private const string Sag = """{"spanMm":900,"loadN":20,"sagMm":0.76}""";

    [Fact]
    public async Task Density_is_mass_over_volume_and_its_uncertainty_that_of_the_readings()
    {
        var density = (await Good(With(""))).GetProperty("densityKgM3");

        // 650 g in 1000 x 50 x 20 mm; relative variances of 1/1000, 0.3/50, 0.1/20 and 1/650 add up.
        Assert.Equal(650, Number(density, "value"));
        var relative = Math.Sqrt(Math.Pow(1 / 1000.0, 2) + Math.Pow(0.3 / 50, 2) + Math.Pow(0.1 / 20, 2) + Math.Pow(1 / 650.0, 2));
        Assert.Equal(650 * relative, Number(density, "standardUncertainty"), 0.01);
        Assert.Equal(650, Number(density, "at12Percent"));
        Assert.Contains("of its species", density.GetProperty("compared").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_sag_or_tap_there_is_no_modulus()
    {
        var answer = await Good(With(""));

        Assert.False(answer.TryGetProperty("modulusMPa", out _));
        Assert.False(answer.TryGetProperty("apparentModulusMPa", out _));
        Assert.False(answer.TryGetProperty("plainBeamModulusMPa", out _));
        Assert.False(answer.GetProperty("wood").TryGetProperty("measuredModulusMPa", out _));
    }

    [Fact]
    public async Task A_sag_gives_the_textbook_modulus_less_its_shear()
    {
        var answer = await Good(With($"/sag={Sag}"));
        var plain = answer.GetProperty("plainBeamModulusMPa");
        var (modulus, apparent) = (
            Number(answer.GetProperty("modulusMPa"), "value"), Number(answer.GetProperty("apparentModulusMPa"), "value"));

        // F L^3 / (48 I s), I = b h^3 / 12, holds the shear of a span of 45 depths; the book's basis of 14 depths holds more.
        var textbook = 20 * Math.Pow(900, 3) / (48 * (50 * Math.Pow(20, 3) / 12) * 0.76);
        Assert.Equal(textbook, Number(plain, "value"), 5.0);
        Assert.Equal(modulus, Number(plain, "value") * Number(plain, "trueOverPlainBeam"), 20.0);
        Assert.InRange(modulus, textbook * 1.001, textbook * 1.02);
        Assert.Equal(modulus / 1.10, apparent, 5.0);
        Assert.Equal(apparent, Number(answer.GetProperty("wood"), "measuredModulusMPa"));
        Assert.Equal(
            ["basis", "own-weight", "shear-taken-out"],
            answer.GetProperty("corrections").EnumerateArray().Select(note => note.GetProperty("code").GetString()!).Order());
    }

    [Fact]
    public async Task Twice_the_sag_is_half_the_modulus()
    {
        var (once, twice) = (
            Number((await Good(With($"/sag={Sag}"))).GetProperty("modulusMPa"), "value"),
            Number((await Good(With("""/sag={"spanMm":900,"loadN":20,"sagMm":1.52}"""))).GetProperty("modulusMPa"), "value"));

        Assert.Equal(2, once / twice, 0.001);
    }

    [Fact]
    public async Task A_tap_on_the_board_that_a_sag_describes_gives_the_same_modulus()
    {
        var sagged = Number((await Good(With($"/sag={Sag}"))).GetProperty("modulusMPa"), "value");

        // Free-free bar: f = 22.373 / (2 pi L^2) sqrt(E I / m per length), of the stick's true modulus.
        var frequency = 22.373 / (2 * Math.PI) * Math.Sqrt(sagged * 1e6 * (0.05 * Math.Pow(0.02, 3) / 12) / 0.65);
        var tapped = Number(
            (await Good(With(FormattableString.Invariant($"/tap={{\"frequencyHz\":{frequency}}}")))).GetProperty("modulusMPa"), "value");

        Assert.InRange(tapped / sagged, 1, 1.02); // the thick-bar correction puts a little back
    }

    [Fact]
    public async Task The_result_is_ready_to_paste_into_a_design()
    {
        var wood = (await Good(With($"/sag={Sag}"))).GetProperty("wood");
        using var design = await api.Client.PostAsync(
            new Uri("/v1/designs", UriKind.Relative), Json($"{{\"handSpacingMm\":880,\"wood\":{wood.GetRawText()}}}"));
        using var body = JsonDocument.Parse(await design.Content.ReadAsStringAsync());

        Assert.Equal(HttpStatusCode.OK, design.StatusCode);
        Assert.Equal(650, Number(body.RootElement.GetProperty("wood"), "densityKgM3"));
    }

    [Fact]
    public async Task A_name_means_the_same_in_the_test_and_in_the_design_made_with_it()
    {
        var test = await Good(With($"/sag={Sag}"));
        using var answer = await api.Client.PostAsync(
            new Uri("/v1/designs", UriKind.Relative), Json($"{{\"handSpacingMm\":880,\"wood\":{test.GetProperty("wood").GetRawText()}}}"));
        using var design = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());

        foreach (var name in (string[])["modulusMPa", "apparentModulusMPa"])
        {
            // A design prints moduli to three digits.
            Assert.Equal(1, Number(design.RootElement.GetProperty("wood"), name) / Number(test.GetProperty(name), "value"), 0.005);
        }
    }

    [Fact]
    public async Task A_wood_that_a_design_would_refuse_is_told_of_before_it_is_pasted()
    {
        var answer = await Good(With("/moisturePercent=25"));
        Assert.Contains("moisture", Warning(answer, "design-refuses-wood"), StringComparison.Ordinal);
        Assert.DoesNotContain("design-refuses-wood", (await Good(With(""))).GetRawText(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Readings_of_another_species_are_warned_of()
    {
        var answer = await Good(With("/species=\"western-redcedar\""));

        Assert.True(Number(answer.GetProperty("densityKgM3"), "zScore") > 2.5);
        Assert.Contains("density", Warning(answer, "density-odd"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_coarser_scale_makes_a_less_certain_density()
    {
        var (usual, coarse) = (
            Number((await Good(With(""))).GetProperty("densityKgM3"), "standardUncertainty"),
            Number((await Good(With("/readingErrors={\"massG\":50}"))).GetProperty("densityKgM3"), "standardUncertainty"));

        Assert.Equal(50, Math.Sqrt(coarse * coarse - usual * usual), 0.5);
    }

    [Theory]
    [InlineData("/species=null", "/species")]
    [InlineData("/moisturePercent=41", "/moisturePercent")]
    [InlineData("/moisturePercent=null", "/moisturePercent")]
    [InlineData("/lengthMm=99", "/lengthMm")]
    [InlineData("/widthMm=0", "/widthMm")]
    [InlineData("/thicknessMm=-20", "/thicknessMm")]
    [InlineData("/massG=null", "/massG")]
    [InlineData("/massG=1e9", "/massG")]
    [InlineData("/sag={\"spanMm\":1001,\"loadN\":20,\"sagMm\":0.76}", "/sag/spanMm")]
    [InlineData("/sag={\"spanMm\":900,\"sagMm\":0.76}", "/sag/loadN")]
    [InlineData("/sag={\"spanMm\":900,\"loadN\":20,\"sagMm\":0.1}", "/sag/sagMm")]
    [InlineData("/sag={\"spanMm\":900,\"loadN\":20,\"sagMm\":0.76}; /tap={\"frequencyHz\":90}", "/tap")]
    [InlineData("/tap={\"frequencyHz\":0}", "/tap/frequencyHz")]
    [InlineData("/readingErrors={\"thicknessMm\":-1}", "/readingErrors/thicknessMm")]
    [InlineData("/readingErrors={\"thicknessMm\":10}; /thicknessMm=15", "/thicknessMm")]
    public async Task Readings_that_cannot_be_are_refused_by_place(string changes, string place)
    {
        using var answer = await Post(With(changes));
        using var body = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.True(body.RootElement.GetProperty("errors").TryGetProperty(place, out _), body.RootElement.GetRawText());
    }

    [Fact]
    public async Task An_unknown_species_is_answered_with_the_nearest()
    {
        using var answer = await Post(With("/species=\"white-ahs\""));
        using var body = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());

        var fault = body.RootElement.GetProperty("errors").GetProperty("/species")[0];
        Assert.Contains("white-ash", fault.GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.Contains("white-ash", fault.GetProperty("allowed").EnumerateArray().Select(name => name.GetString()));
    }

    private static string Warning(JsonElement answer, string code) =>
        answer.GetProperty("warnings").EnumerateArray().Single(note => note.GetProperty("code").GetString() == code).GetProperty("text").GetString()!;

    private static string With(string changes)
    {
        var root = JsonNode.Parse(Stick)!.AsObject();
        foreach (var change in changes.Split("; ", StringSplitOptions.RemoveEmptyEntries))
        {
            var at = change.IndexOf('=', StringComparison.Ordinal);
            root[change[1..at]] = JsonNode.Parse(change[(at + 1)..]);
        }

        return root.ToJsonString();
    }

    private async Task<JsonElement> Good(string body)
    {
        using var answer = await Post(body);
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode == HttpStatusCode.OK, text);
        using var read = JsonDocument.Parse(text);
        return read.RootElement.Clone();
    }

    private Task<HttpResponseMessage> Post(string body) => api.Client.PostAsync(new Uri("/v1/board-tests", UriKind.Relative), Json(body));

    private static StringContent Json(string body) => new(body, Encoding.UTF8, "application/json");

    private static double Number(JsonElement holder, string member) => holder.GetProperty(member).GetDouble();
}
