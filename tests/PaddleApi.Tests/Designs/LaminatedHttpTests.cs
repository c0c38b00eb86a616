using System.Net;
using System.Text;
using System.Text.Json;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Designs;

[Collection(HttpTests.Name)]
public sealed class LaminatedHttpTests(ApiFixture api)
{
    [Fact]
    public async Task The_example_balances_and_says_how_it_is_glued_up()
    {
        var design = await Post("/v1/designs", await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "Examples", "laminated-paddle.json")));

        Assert.Equal("met", design.GetProperty("outcome").GetString());
        var construction = design.GetProperty("construction");
        Assert.Equal("laminated", construction.GetProperty("kind").GetString());
        Assert.Equal(["sitka-spruce", "black-cherry", "black-cherry"], construction.GetProperty("strips").EnumerateArray().Select(strip => strip.GetProperty("species").GetString()));
        Assert.Equal(4, construction.GetProperty("glueLines").GetProperty("count").GetInt32());
        Assert.InRange(construction.GetProperty("glueLines").GetProperty("glueG").GetDouble(), 5, 100);
        Assert.True(construction.GetProperty("shear").GetProperty("safetyFactor").GetDouble() > construction.GetProperty("shear").GetProperty("leastFactor").GetDouble());
        Assert.Equal(design.GetProperty("mass").GetProperty("finishedG").GetDouble(), construction.GetProperty("laminated").GetProperty("finishedG").GetDouble());
        Assert.Equal(0, construction.GetProperty("onePiece").GetProperty("glueLines").GetInt32());
        Assert.Contains(design.GetProperty("cautions").EnumerateArray(), caution => caution.GetProperty("id").GetString() == "adhesive");
    }

    // The row of one piece is what a design of one piece says of itself.
    [Fact]
    public async Task The_row_of_one_piece_is_that_design()
    {
        var glued = await Post("/v1/designs", Requests.With("/construction=" + Requests.Wings));
        var one = await Post("/v1/designs", Requests.Least);

        var row = glued.GetProperty("construction").GetProperty("onePiece");
        Assert.Equal(one.GetProperty("mass").GetProperty("finishedG").GetDouble(), row.GetProperty("finishedG").GetDouble());
        Assert.Equal(one.GetProperty("flex").GetProperty("benchFlexMm").GetDouble(), row.GetProperty("benchFlexMm").GetDouble());
        Assert.False(one.TryGetProperty("construction", out _));
        Assert.Equal("""{"kind":"one-piece"}""", one.GetProperty("design").GetProperty("construction").GetRawText());
    }

    [Fact]
    public async Task The_code_brings_back_the_same_glue_up()
    {
        var posted = await Post("/v1/designs", Requests.With("/construction=" + Requests.Wings));

        using var answer = await api.Client.GetAsync(posted.GetProperty("links").GetProperty("self").GetString());
        var fetched = JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement;

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        foreach (var part in (string[])["designCode", "construction", "sizes", "mass", "balance", "strength", "flex", "checks", "cautions"])
            Assert.Equal(posted.GetProperty(part).GetRawText(), fetched.GetProperty(part).GetRawText());
        var echo = fetched.GetProperty("design").GetProperty("construction");
        Assert.Equal(("epoxy", true), (echo.GetProperty("adhesive").GetString(), echo.GetProperty("isMirrored").GetBoolean()));
        Assert.Equal("white-ash", echo.GetProperty("strips")[0].GetProperty("species").GetString());
    }

    // Files and the build know its weight; its strips come out of boards of their own woods.
    [Fact]
    public async Task Files_and_build_are_made_and_its_strips_laid_on_boards()
    {
        var posted = await Post("/v1/designs", Requests.With("/construction=" + Requests.Wings));
        var links = posted.GetProperty("links");
        using var build = await api.Client.GetAsync(links.GetProperty("build").GetString());
        using var sheet = await api.Client.GetAsync(links.GetProperty("buildSheet").GetString());
        Assert.Equal((HttpStatusCode.OK, HttpStatusCode.OK), (build.StatusCode, sheet.StatusCode));
        Assert.Contains("Gluing up", await sheet.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        var stages = JsonDocument.Parse(await build.Content.ReadAsStringAsync()).RootElement.GetProperty("stages").EnumerateArray().ToList();
        var sanded = stages[^2].GetProperty("massG").GetProperty("value").GetDouble();
        Assert.Equal(posted.GetProperty("mass").GetProperty("totalG").GetDouble(), sanded, 0.01 * sanded);

        var strips = posted.GetProperty("construction").GetProperty("strips").EnumerateArray().ToList();
        var woods = strips.Select(strip => strip.GetProperty("species").GetString()!).Distinct().ToList();
        var boards = string.Join(',', woods.Select(wood => $$"""{"id":"{{wood}}","lengthMm":1800,"widthMm":200,"thicknessMm":40,"species":"{{wood}}"}"""));
        var layout = await Post(
            "/v1/board-layouts", $$"""{"boards":[{{boards}}],"paddles":[{"id":"glued","designCode":"{{posted.GetProperty("designCode").GetString()}}"}]}""");
        Assert.Empty(layout.GetProperty("unplaced").EnumerateArray());
        Assert.Equal(strips.Sum(strip => strip.GetProperty("count").GetInt32()), layout.GetProperty("placements").GetArrayLength());
        Assert.Equal(woods.Order(), layout.GetProperty("boards").EnumerateArray().Select(board => board.GetProperty("boardId").GetString()!).Order());
    }

    private async Task<JsonElement> Post(string address, string json)
    {
        using var content = new StringContent(json, Encoding.UTF8, "application/json");
        using var answer = await api.Client.PostAsync(address, content);
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode == HttpStatusCode.OK, text);
        return JsonDocument.Parse(text).RootElement.Clone();
    }
}
