using System.Net;
using System.Text;
using System.Text.Json;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Uncertainties;

[Collection(HttpTests.Name)]
public sealed class UncertaintyHttpTests(ApiFixture api)
{
    private const string Cherry = """{"handSpacingMm":880,"wood":{"species":"black-cherry"}}""";

    [Fact]
    public async Task A_code_spreads_as_its_request_does_and_pointers_lead_into_the_report()
    {
        var byRequest = await Good($$"""{"design":{{Cherry}},"samples":500}""");
        var byCode = await Good($$"""{"designCode":"{{byRequest.GetProperty("designCode").GetString()}}","samples":500}""");
        Assert.Equal(byRequest.GetRawText(), byCode.GetRawText());

        using var posted = await api.Client.PostAsync(new Uri("/v1/designs", UriKind.Relative), Json(Cherry));
        using var report = JsonDocument.Parse(await posted.Content.ReadAsStringAsync());
        Assert.All(byRequest.GetProperty("figures").EnumerateArray(), figure =>
        {
            var printed = Validation.JsonPointers.Find(report.RootElement, figure.GetProperty("pointer").GetString()!)!.Value.GetDouble();
            var designed = figure.GetProperty("designed").GetDouble();
            // Four digits here, the report's own decimals there.
            Assert.Equal(printed, designed, figure.GetProperty("unit").GetString() is "mm" ? 0.0051 : 0.051 * Math.Abs(printed) / 100);
        });
        string[] limited = [.. report.RootElement.GetProperty("checks").EnumerateArray().Select(check => check.GetProperty("id").GetString()!).Where(id => id != "wood.suitability")];
        Assert.Equal(limited, byRequest.GetProperty("checks").EnumerateArray().Select(check => check.GetProperty("id").GetString()));
        Assert.NotEmpty(byRequest.GetProperty("assumptions").EnumerateArray());
    }

    [Fact]
    public async Task A_board_that_was_weighed_and_tested_spreads_less()
    {
        var book = await Good($$"""{"design":{{Cherry}},"samples":2000}""");
        var board = await Good("""{"design":{"handSpacingMm":880,"wood":{"species":"black-cherry","measuredDensityKgM3":560,"measuredModulusMPa":10100}},"samples":2000}""");
        double Deviation(JsonElement answer, int figure) => answer.GetProperty("figures")[figure].GetProperty("standardDeviation").GetDouble();
        Assert.Equal("/mass/finishedG", board.GetProperty("figures")[1].GetProperty("pointer").GetString());
        Assert.Equal("/flex/benchFlexMm", board.GetProperty("figures")[4].GetProperty("pointer").GetString());
        Assert.True(Deviation(board, 1) < Deviation(book, 1) / 4);
        Assert.True(Deviation(board, 4) < Deviation(book, 4) / 4);
    }

    [Theory]
    [InlineData("""{"samples":500}""", "/designCode")]
    [InlineData($$"""{"design":{{Cherry}},"designCode":"p1abcd"}""", "/designCode")]
    [InlineData("""{"designCode":"p1abcd"}""", "/designCode")]
    [InlineData($$"""{"design":{{Cherry}},"samples":99}""", "/samples")]
    [InlineData($$"""{"design":{{Cherry}},"samples":10001}""", "/samples")]
    [InlineData($$"""{"design":{{Cherry}},"seed":-1}""", "/seed")]
    [InlineData($$"""{"design":{{Cherry}},"planingErrorMm":1.1}""", "/planingErrorMm")]
    [InlineData("""{"design":{"handSpacingMm":10,"wood":{"species":"black-cherry"}}}""", "/design/handSpacingMm")]
    [InlineData("""{"design":{"handSpacingMm":880,"wood":{"species":"sitka-spruce"},"construction":{"kind":"laminated","strips":[{"species":"sitka-spruce","widthMm":30},{"species":"white-ash","widthMm":70}]}}}""", "/design/construction/kind")]
    public async Task What_cannot_be_is_refused_by_place(string body, string place)
    {
        using var answer = await Post(body);
        using var problem = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.True(problem.RootElement.GetProperty("errors").TryGetProperty(place, out _), problem.RootElement.GetRawText());
    }

    private async Task<JsonElement> Good(string body)
    {
        using var answer = await Post(body);
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode == HttpStatusCode.OK, text);
        using var read = JsonDocument.Parse(text);
        return read.RootElement.Clone();
    }

    private Task<HttpResponseMessage> Post(string body) => api.Client.PostAsync(new Uri("/v1/uncertainties", UriKind.Relative), Json(body));

    private static StringContent Json(string body) => new(body, Encoding.UTF8, "application/json");
}
