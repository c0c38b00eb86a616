using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using NetTopologySuite.Geometries;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Boards;

[Collection(HttpTests.Name)]
public sealed class BoardLayoutHttpTests(ApiFixture api)
{
    private const string Order = """
        { "boards": [
            { "id": "wide", "lengthMm": 1750, "widthMm": 260, "thicknessMm": 33.3, "species": "white-ash", "priceEach": 40,
              "defects": [{ "kind": "circle", "xMm": 300, "yMm": 130, "radiusMm": 8 }] },
            { "id": "long", "lengthMm": 3300, "widthMm": 170, "thicknessMm": 33.3, "species": "white-ash", "count": 2, "priceEach": 45 }],
          "paddles": [
            { "id": "guest", "count": 2, "design": { "handSpacingMm": 880, "wood": { "species": "white-ash" } } },
            { "id": "youth", "design": { "handSpacingMm": 780, "wood": { "species": "white-ash" } } }],
          "kerfMm": 3, "clearanceMm": 3 }
        """;

    // The answer read as a caller reads it: outlines from the stations of each design's report, laid by the rule of the contract, looked at
    // with NetTopologySuite.
    [Fact]
    public async Task A_caller_who_lays_out_the_outlines_finds_them_apart_and_on_the_boards()
    {
        var layout = await Good("/v1/board-layouts", Order);
        var request = JsonNode.Parse(Order)!;
        var stations = new Dictionary<string, List<(double X, double Half)>>();
        foreach (var paddle in request["paddles"]!.AsArray())
        {
            var design = await Good("/v1/designs", paddle!["design"]!.ToJsonString());
            stations[paddle["id"]!.GetValue<string>()] =
                [.. design.GetProperty("stations").EnumerateArray().Select(one => (Number(one, "xMm"), Number(one, "halfWidthMm")))];
        }

        var placed = layout.GetProperty("placements").EnumerateArray().ToList();
        Assert.Equal(3, placed.Count);
        Assert.Empty(layout.GetProperty("unplaced").EnumerateArray());
        var outlines = placed.ConvertAll(one => (Board: (one.GetProperty("boardId").GetString()!, one.GetProperty("boardCopy").GetInt32()), Outline: Outline(one, stations[one.GetProperty("paddleId").GetString()!])));
        foreach (var (board, outline) in outlines)
        {
            var given = request["boards"]!.AsArray().Single(one => one!["id"]!.GetValue<string>() == board.Item1)!;
            Assert.InRange(outline.EnvelopeInternal.MinX, -0.02, 10_000);
            Assert.InRange(outline.EnvelopeInternal.MinY, -0.02, 10_000);
            Assert.InRange(outline.EnvelopeInternal.MaxX, 0, given["lengthMm"]!.GetValue<double>() + 0.02);
            Assert.InRange(outline.EnvelopeInternal.MaxY, 0, given["widthMm"]!.GetValue<double>() + 0.02);
            if (board.Item1 == "wide") Assert.True(outline.Distance(new Point(300, 130)) > 8);
            // Stations are 10 mm apart: a chord lies inside a curve by less than a tenth, and outside it where the blade flows into the shaft.
            Assert.All(outlines.Where(other => other.Board == board && other.Outline != outline), other => Assert.True(other.Outline.Distance(outline) >= 3 - 0.2));
        }
    }

    [Fact]
    public async Task A_code_gives_the_same_layout_as_its_request()
    {
        var byRequest = await Good("/v1/board-layouts", Order);
        var order = JsonNode.Parse(Order)!;
        foreach (var paddle in order["paddles"]!.AsArray())
        {
            var design = await Good("/v1/designs", paddle!["design"]!.ToJsonString());
            paddle.AsObject().Remove("design");
            paddle["designCode"] = design.GetProperty("designCode").GetString();
        }

        var byCode = await Good("/v1/board-layouts", order.ToJsonString());
        Assert.Equal(byRequest.GetProperty("placements").GetRawText(), byCode.GetProperty("placements").GetRawText());
    }

    [Theory]
    [InlineData("true")]
    [InlineData("fit")]
    public async Task The_drawing_shows_every_board_and_every_paddle(string scale)
    {
        var order = JsonNode.Parse(Order)!.AsObject();
        order["drawing"] = new JsonObject { ["units"] = "inch", ["scale"] = scale };
        var layout = await Good("/v1/board-layouts", order.ToJsonString());
        using var asked = new HttpRequestMessage(HttpMethod.Post, "/v1/board-layouts") { Content = Json(order.ToJsonString()) };
        asked.Headers.Accept.ParseAdd("image/svg+xml");
        using var answer = await api.Client.SendAsync(asked);
        var root = XDocument.Parse(await answer.Content.ReadAsStringAsync()).Root!;

        Assert.Equal("image/svg+xml", answer.Content.Headers.ContentType!.MediaType);
        int Paths(string css) => root.Descendants().Where(element => ((string?)element.Attribute("class"))?.Split(' ').Contains(css) == true).Sum(group => group.Elements().Count());
        Assert.Equal(layout.GetProperty("placements").GetArrayLength(), Paths("paddle"));
        Assert.Equal(layout.GetProperty("boards").GetArrayLength(), Paths("board"));
        Assert.Contains(" in", root.Value, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", root.Value, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_shopping_list_buys_the_cheapest_and_says_what_it_costs()
    {
        var order = JsonNode.Parse(Order)!.AsObject();
        foreach (var board in order["boards"]!.AsArray()) board!.AsObject().Remove("count");
        var list = await Good("/v1/shopping-lists", order.ToJsonString());
        var totals = list.GetProperty("totals");
        // A wide board holds two beside each other at 40, a long one two in a row at 45; three paddles need two boards.
        Assert.Equal(80, Number(totals, "cost"));
        Assert.Equal(Math.Round(80 / 3.0, 2), Number(totals, "costPerPaddle"));
    }

    [Theory]
    [InlineData("/boards=[]", "/boards")]
    [InlineData("/paddles=null", "/paddles")]
    [InlineData("/boards/0/thicknessMm=3", "/boards/0/thicknessMm")]
    [InlineData("/boards/0/species=\"ash\"", "/boards/0/species")]
    [InlineData("/boards/1/id=\"wide\"", "/boards/1/id")]
    [InlineData("/boards/0/defects/0/radiusMm=null", "/boards/0/defects/0/radiusMm")]
    [InlineData("/boards/0/defects/0={\"kind\":\"polygon\",\"points\":[{\"xMm\":0,\"yMm\":0},{\"xMm\":50,\"yMm\":50},{\"xMm\":50,\"yMm\":0},{\"xMm\":0,\"yMm\":50}]}", "/boards/0/defects/0/points")]
    [InlineData("/paddles/0/count=0", "/paddles/0/count")]
    [InlineData("/paddles/0/count=299; /paddles/1/count=299", "/paddles")]
    [InlineData("/paddles/1/designCode=\"p1abc\"", "/paddles/1/designCode")]
    [InlineData("/paddles/1={\"id\":\"x\",\"designCode\":\"p1abcd\"}", "/paddles/1/designCode")]
    [InlineData("/paddles/1/design/handSpacingMm=10", "/paddles/1/design/handSpacingMm")]
    [InlineData("/timeLimitMs=1", "/timeLimitMs")]
    [InlineData("/boards/0/thicknessMm=20; /boards/1/thicknessMm=20", "/boards/1/thicknessMm")]
    public async Task What_cannot_be_is_refused_by_place(string changes, string place)
    {
        using var answer = await Post("/v1/board-layouts", With(Order, changes));
        using var body = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.True(body.RootElement.GetProperty("errors").TryGetProperty(place, out _), body.RootElement.GetRawText());
    }

    [Fact]
    public async Task A_shop_without_a_price_is_refused()
    {
        using var answer = await Post("/v1/shopping-lists", With(Order, "/boards/1/priceEach=null"));
        using var body = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
        Assert.True(body.RootElement.GetProperty("errors").TryGetProperty("/boards/1/priceEach", out _));
    }

    [Fact]
    public async Task The_best_paddle_of_a_board_opens_again_by_its_code()
    {
        const string Fit = """{ "board": { "id": "b", "lengthMm": 1676, "widthMm": 203, "thicknessMm": 28.6, "species": "white-ash" }, "design": { "handSpacingMm": 840 }, "count": 2 }""";
        var fit = await Good("/v1/board-fits", Fit);
        Assert.Equal(2, fit.GetProperty("count").GetInt32());
        Assert.Equal(2, fit.GetProperty("layout").GetProperty("placements").GetArrayLength());
        Assert.InRange(Number(fit.GetProperty("layout").GetProperty("boards")[0], "usedWidthMm"), 190, 203);
        var design = fit.GetProperty("design");
        using var again = await api.Client.GetAsync(new Uri(design.GetProperty("links").GetProperty("self").GetString()!, UriKind.Relative));
        using var read = JsonDocument.Parse(await again.Content.ReadAsStringAsync());
        Assert.Equal(design.GetProperty("sizes").GetRawText(), read.RootElement.GetProperty("sizes").GetRawText());
    }

    [Theory]
    [InlineData("/board/grainDegrees=6", "/board/grainDegrees")]
    [InlineData("/design/wood={\"species\":\"black-cherry\"}", "/design/wood/species")]
    [InlineData("/design/handSpacingMm=3000", "/design/handSpacingMm")]
    [InlineData("/count=9", "/count")]
    [InlineData("/board/thicknessMm=12", "/board/thicknessMm")]
    [InlineData("/board=null", "/board")]
    [InlineData("/design/construction={\"kind\":\"laminated\",\"strips\":[{\"species\":\"sitka-spruce\",\"widthMm\":36},{\"species\":\"black-cherry\",\"widthMm\":60}]}", "/board/species")]
    [InlineData("/design/construction={\"kind\":\"laminated\"}", "/design/construction/strips")]
    [InlineData("/design/construction={\"kind\":\"laminated\",\"strips\":[{\"widthMm\":36},{\"widthMm\":60}]}; /board/thicknessMm=16", "/board/thicknessMm")]
    public async Task A_board_or_a_wish_that_cannot_be_is_refused_by_place(string changes, string place)
    {
        const string Fit = """{ "board": { "id": "b", "lengthMm": 1676, "widthMm": 203, "thicknessMm": 28.6, "species": "white-ash" }, "design": { "handSpacingMm": 840 } }""";
        using var answer = await Post("/v1/board-fits", With(Fit, changes));
        using var body = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.True(body.RootElement.GetProperty("errors").TryGetProperty(place, out _), body.RootElement.GetRawText());
    }

    // The board is of the wings' wood: they come out of it, and the shaft's strip is to be bought.
    [Fact]
    public async Task Strips_come_out_of_a_board_of_their_wood()
    {
        const string Fit = """
            { "board": { "id": "b", "lengthMm": 760, "widthMm": 140, "thicknessMm": 24, "species": "western-redcedar" },
              "design": { "handSpacingMm": 840, "wood": { "species": "white-ash" },
                          "construction": { "kind": "laminated", "strips": [ { "widthMm": 36 }, { "species": "western-redcedar", "widthMm": 60 } ] } } }
            """;
        var fit = await Good("/v1/board-fits", Fit);
        Assert.Equal(1, fit.GetProperty("count").GetInt32());
        Assert.Equal("white-ash", Assert.Single(fit.GetProperty("toBuy").EnumerateArray()).GetProperty("species").GetString());
        using var again = await api.Client.GetAsync(new Uri(fit.GetProperty("design").GetProperty("links").GetProperty("self").GetString()!, UriKind.Relative));
        Assert.Equal(HttpStatusCode.OK, again.StatusCode);
    }

    private static Polygon Outline(JsonElement placement, IReadOnlyList<(double X, double Half)> stations)
    {
        var sign = placement.GetProperty("rotatedDegrees").GetInt32() == 0 ? 1 : -1;
        Coordinate At(double x, double y) => new(Number(placement, "xMm") + sign * x, Number(placement, "yMm") + sign * y);
        var ring = stations.Select(one => At(one.X, one.Half)).Concat(stations.Reverse().Select(one => At(one.X, -one.Half))).ToList();
        ring.Add(ring[0].Copy());
        return new(new LinearRing([.. ring.Where((point, k) => k == 0 || !point.Equals2D(ring[k - 1]))]));
    }

    private static string With(string order, string changes)
    {
        var root = JsonNode.Parse(order)!;
        foreach (var change in changes.Split("; ", StringSplitOptions.RemoveEmptyEntries))
        {
            var at = change.IndexOf('=', StringComparison.Ordinal);
            var parts = change[1..at].Split('/');
            var holder = parts[..^1].Aggregate(root, (node, part) => int.TryParse(part, out var index) ? node[index]! : node[part]!);
            var value = JsonNode.Parse(change[(at + 1)..]);
            if (int.TryParse(parts[^1], out var place)) holder[place] = value;
            else holder[parts[^1]] = value;
        }

        return root.ToJsonString();
    }

    private async Task<JsonElement> Good(string path, string body)
    {
        using var answer = await Post(path, body);
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode == HttpStatusCode.OK, text);
        using var read = JsonDocument.Parse(text);
        return read.RootElement.Clone();
    }

    private Task<HttpResponseMessage> Post(string path, string body) => api.Client.PostAsync(new Uri(path, UriKind.Relative), Json(body));

    private static StringContent Json(string body) => new(body, Encoding.UTF8, "application/json");

    private static double Number(JsonElement holder, string member) => holder.GetProperty(member).GetDouble();
}
