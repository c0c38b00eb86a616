using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Designs;

[Collection(HttpTests.Name)]
public sealed class DesignHttpTests(ApiFixture api)
{
    private const string Root = "/v1/designs";

    [Fact]
    public async Task A_request_is_answered_with_a_balanced_paddle()
    {
        using var answer = await Post(await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "Examples", "hire-paddle.json")));
        var design = await Read(answer);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.True(design.GetProperty("balance").GetProperty("achieved").GetBoolean());
        Assert.InRange(Math.Abs(Number(design, "balance", "offsetMm")), 0, 12);
        Assert.True(Number(design, "strength", "minimumSafetyFactor") >= 1.5);
        Assert.Equal(1588, Number(design, "lengths", "overallMm"));
        Assert.True(design.GetProperty("mass").GetProperty("floats").GetBoolean());
        Assert.Equal("Heron Lake hire fleet, size M", design.GetProperty("design").GetProperty("label").GetString());
        Assert.False(design.GetProperty("design").GetProperty("shaft").TryGetProperty("widthMm", out _), "the solver's sizes stay open in the echo");
        Assert.Equal(5, design.GetProperty("strength").GetProperty("cases").GetArrayLength());
    }

    [Fact]
    public async Task The_parts_of_the_answer_agree_with_one_another()
    {
        var design = await Read(await Post(Requests.Least));

        var mass = design.GetProperty("mass");
        var parts = mass.GetProperty("gripG").GetDouble() + mass.GetProperty("shaftG").GetDouble() + mass.GetProperty("bladeG").GetDouble();
        Assert.Equal(mass.GetProperty("totalG").GetDouble(), parts, 0.16); // four figures, each to 0.1 g
        Assert.Equal(Number(design, "balance", "actualMm"), mass.GetProperty("centreOfMassMm").GetDouble());
        Assert.Equal(Number(design, "balance", "targetMm"), Number(design, "lengths", "lowerHandMm"));
        Assert.Equal(Number(design, "lengths", "overallMm"), Number(design, "lengths", "shaftMm") + Number(design, "lengths", "bladeMm"), 0.011);
        var stations = design.GetProperty("stations").EnumerateArray().ToList();
        Assert.Equal(0, stations[0].GetProperty("xMm").GetDouble());
        Assert.Equal(Number(design, "lengths", "overallMm"), stations[^1].GetProperty("xMm").GetDouble());
        Assert.Equal(74, stations.Max(station => station.GetProperty("halfWidthMm").GetDouble())); // an ottertail is 148 mm wide
        var cases = design.GetProperty("strength").GetProperty("cases").EnumerateArray().ToList();
        var least = cases.MinBy(result => result.GetProperty("safetyFactor").GetDouble());
        Assert.Equal(design.GetProperty("strength").GetProperty("governingCase").GetString(), least.GetProperty("id").GetString());
    }

    [Fact]
    public async Task The_code_brings_back_the_same_paddle_with_every_size_pinned()
    {
        var posted = await Read(await Post(Requests.With("/blade/family=\"beavertail\"; /shaft/bendDegrees=7")));

        using var answer = await api.Client.GetAsync(posted.GetProperty("links").GetProperty("self").GetString());
        var fetched = await Read(answer);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        foreach (var part in (string[])["designCode", "links", "lengths", "sizes", "stations", "wood", "mass", "strength", "flex", "stroke", "checks", "cautions"])
            Assert.Equal(posted.GetProperty(part).GetRawText(), fetched.GetProperty(part).GetRawText());
        Assert.Equal(Number(posted, "sizes", "shaftWidthMm"), fetched.GetProperty("design").GetProperty("shaft").GetProperty("widthMm").GetDouble());
    }

    [Fact]
    public async Task The_same_request_gives_the_same_bytes() =>
        Assert.Equal(await (await Post(Requests.Least)).Content.ReadAsStringAsync(), await (await Post(Requests.Least)).Content.ReadAsStringAsync());

    [Fact]
    public async Task An_aim_out_of_reach_is_answered_with_the_closest_paddle_and_advice()
    {
        using var answer = await Post(Requests.With("/aims/maximumMassG=200"));
        var balance = (await Read(answer)).GetProperty("balance");

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.False(balance.GetProperty("achieved").GetBoolean());
        Assert.NotEqual(0, balance.GetProperty("advice").GetArrayLength());
    }

    [Fact]
    public async Task The_outline_may_be_had_at_once_or_by_its_address()
    {
        var code = (await Read(await Post(Requests.With("/label=\"A <b> & \\\"c\\\"\"")))).GetProperty("designCode").GetString();
        using var ask = new HttpRequestMessage(HttpMethod.Post, Root) { Content = Json(Requests.With("/label=\"A <b> & \\\"c\\\"\"")) };
        ask.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue("image/svg+xml"));

        using var posted = await api.Client.SendAsync(ask);
        using var fetched = await api.Client.GetAsync($"{Root}/{code}/outline.svg");

        var svg = await fetched.Content.ReadAsStringAsync();
        Assert.Equal(svg, await posted.Content.ReadAsStringAsync());
        Assert.Equal("image/svg+xml", fetched.Content.Headers.ContentType!.MediaType);
        Assert.Equal("svg", XDocument.Parse(svg).Root!.Name.LocalName);
        Assert.Contains("Accept", posted.Headers.Vary);
    }

    [Fact]
    public async Task A_caller_of_images_is_served_as_a_browser_asks()
    {
        using var ask = new HttpRequestMessage(HttpMethod.Get, $"{Root}/{await Code()}/outline.svg");
        ask.Headers.TryAddWithoutValidation("Accept", "image/avif,image/webp,image/png,image/svg+xml,image/*;q=0.8,*/*;q=0.5");

        using var answer = await api.Client.SendAsync(ask);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.True(answer.Headers.CacheControl!.Public);
    }

    [Fact]
    public async Task Report_and_outline_of_a_design_have_tags_of_their_own()
    {
        var code = await Code();
        using var report = await api.Client.GetAsync($"{Root}/{code}");
        using var outline = await api.Client.GetAsync($"{Root}/{code}/outline.svg");
        using var ask = new HttpRequestMessage(HttpMethod.Get, $"{Root}/{code}/outline.svg");
        ask.Headers.IfNoneMatch.Add(report.Headers.ETag!);

        using var answer = await api.Client.SendAsync(ask);

        Assert.NotEqual(report.Headers.ETag, outline.Headers.ETag);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Theory]
    [InlineData("")]
    [InlineData("/outline.svg")]
    public async Task A_head_is_a_get_without_its_body(string file)
    {
        var address = $"{Root}/{await Code()}{file}";
        using var get = await api.Client.GetAsync(address);
        using var head = await api.Client.SendAsync(new HttpRequestMessage(HttpMethod.Head, address));

        Assert.Equal(HttpStatusCode.OK, head.StatusCode);
        Assert.Equal(get.Headers.ETag, head.Headers.ETag);
        Assert.Equal(get.Content.Headers.ContentType, head.Content.Headers.ContentType);
    }

    [Theory]
    [InlineData("x", "does not begin with p1")]
    [InlineData("p2abcdefgh", "does not begin with p1")]
    [InlineData("p1abc", "cut short")]
    [InlineData("p1AAAA*AAA", "other than letters")]
    [InlineData("p1%0d%0aSet-Cookie", "other than letters")]
    public async Task A_code_that_cannot_be_read_is_refused_saying_why(string code, string why)
    {
        foreach (var file in (string[])["", "/outline.svg"])
        {
            using var answer = await api.Client.GetAsync($"{Root}/{code}{file}");
            var problem = await Read(answer);

            Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
            Assert.Equal("/problems/invalid-design-code", problem.GetProperty("type").GetString());
            Assert.Contains(why, problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
            Assert.True(answer.Headers.CacheControl!.NoStore);
        }
    }

    [Fact]
    public async Task Values_out_of_range_are_refused_by_place()
    {
        using var answer = await Post(Requests.With("/blade/widthMm=500; /wood/species=\"balsam\""));
        var errors = (await Read(answer)).GetProperty("errors");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal(240, errors.GetProperty("/blade/widthMm")[0].GetProperty("max").GetDouble());
        Assert.True(errors.TryGetProperty("/wood/species", out _));
    }

    [Theory]
    [InlineData("""{"handSpacingMm":1e999,"wood":{"species":"white-ash"}}""")]
    [InlineData("""{"handSpacingMm":"880","wood":{"species":"white-ash"}}""")]
    [InlineData("""{"handSpacingMm":880,"handSpacingMm":880,"wood":{"species":"white-ash"}}""")]
    [InlineData("""{"handSpacingMm":880,"wood":{"species":"white-ash"},"blade":{"offsets":[null]}}""")]
    [InlineData("""{"handSpacingMm":880,"wood":{"Species":"white-ash"}}""")]
    [InlineData("null")]
    [InlineData("[]")]
    public async Task Json_of_another_shape_is_refused(string body)
    {
        using var answer = await Post(body);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    private async Task<string> Code() => (await Read(await Post(Requests.Least))).GetProperty("designCode").GetString()!;

    private Task<HttpResponseMessage> Post(string body) => api.Client.PostAsync(new Uri(Root, UriKind.Relative), Json(body));

    private static StringContent Json(string body) => new(body, Encoding.UTF8, "application/json");

    private static async Task<JsonElement> Read(HttpResponseMessage answer)
    {
        using var body = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
        return body.RootElement.Clone();
    }

    private static double Number(JsonElement design, string part, string member) => design.GetProperty(part).GetProperty(member).GetDouble();
}
