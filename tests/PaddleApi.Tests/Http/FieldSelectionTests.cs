using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using PaddleApi.Contracts.Designs;
using PaddleApi.Hosting.Requests;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Http;

/// <summary>Slim answers. Their clients are plain: the contract's schemas are those of whole answers.</summary>
[Collection(HttpTests.Name)]
public sealed class FieldSelectionTests(ApiFixture api)
{
    private const string Ash = """{ "handSpacingMm": 880, "wood": { "species": "white-ash" } }""";
    private const string Guest = """{ "paddler": { "statureMm": 1720 } }""";

    private readonly HttpClient plain = api.Factory.CreateClient();

    [Theory]
    [InlineData("designCode")]
    [InlineData("mass/finishedG,balance/offsetMm,outcome")]
    [InlineData("/mass/finishedG,/mass")]
    [InlineData("mass,/mass/finishedG")]
    [InlineData("strength/cases/safetyFactor,strength/governingCase")]
    [InlineData("stations/xMm,stations/halfWidthMm,links/outline,construction,wood/sources")]
    [InlineData("design/wood/species")]
    public async Task What_is_asked_for_stays_as_and_where_it_was(string fields)
    {
        var whole = JsonNode.Parse(await Post("/v1/designs", Ash))!;
        var slim = await Post($"/v1/designs?fields={fields}", Ash);
        Assert.True(JsonNode.DeepEquals(Keep(whole, [.. fields.Split(',').Select(one => one.TrimStart('/').Split('/'))]), JsonNode.Parse(slim)), slim);

        var code = whole["designCode"]!.GetValue<string>();
        Assert.Equal(slim, await plain.GetStringAsync($"/v1/designs/{code}?fields={fields}"));
    }

    [Fact]
    public async Task A_fitting_is_slimmed_too()
    {
        var whole = JsonNode.Parse(await Post("/v1/fittings", Guest))!;
        Assert.Equal($$$"""{"overallLengthMm":{"value":{{{whole["overallLengthMm"]!["value"]}}}}}""", await Post("/v1/fittings?fields=overallLengthMm/value", Guest));
        Assert.True(JsonNode.DeepEquals(whole["design"], JsonNode.Parse(await Post("/v1/fittings?fields=design", Guest))!["design"]));
    }

    [Theory]
    [InlineData("")]
    [InlineData("mass,")]
    [InlineData("Mass")]
    [InlineData("mass/finishedKg")]
    [InlineData("outcome/x")]
    [InlineData("strength/cases/0/safetyFactor")]
    [InlineData("mass//finishedG")]
    public async Task What_no_answer_has_is_refused_with_what_it_has(string fields)
    {
        foreach (var sent in new[] { Send(HttpMethod.Post, $"/v1/designs?fields={fields}"), Send(HttpMethod.Get, $"/v1/designs/{await Code()}?fields={fields}") })
        {
            using var answer = await sent;
            Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
            var fault = JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement.GetProperty("errors").GetProperty("?fields")[0];
            Assert.Equal("unknown-name", fault.GetProperty("code").GetString());
        }
    }

    [Fact]
    public async Task Too_many_and_twice_are_refused()
    {
        foreach (var query in new[] { "fields=" + string.Join(',', Enumerable.Repeat("mass", 101)), "fields=mass&fields=wood" })
        {
            using var answer = await Send(HttpMethod.Post, $"/v1/designs?{query}");
            Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        }
    }

    [Fact]
    public async Task Each_selection_has_a_tag_of_its_own_and_the_order_asked_in_does_not_matter()
    {
        var address = $"/v1/designs/{await Code()}";
        var tags = new List<string>();
        foreach (var query in (string[])["", "?fields=mass", "?fields=mass,wood", "?fields=wood,mass", "?fields=mass/totalG,wood"])
        {
            using var answer = await plain.GetAsync(address + query);
            tags.Add(answer.Headers.ETag!.Tag);
        }

        Assert.Equal(tags[2], tags[3]);
        Assert.Equal(4, tags.Distinct().Count());

        using var again = new HttpRequestMessage(HttpMethod.Get, $"{address}?fields=mass");
        again.Headers.IfNoneMatch.Add(new EntityTagHeaderValue(tags[1]));
        using var held = await plain.SendAsync(again);
        Assert.Equal(HttpStatusCode.NotModified, held.StatusCode);
    }

    [Fact]
    public void Names_and_texts_may_hold_anything()
    {
        var fields = Selection("outcome");
        Assert.Equal("""{"outcome":"a \"b\" é \\ { ] ,"}""", Encoding.UTF8.GetString(fields.Shorten("""{"x":[{"outcome":1}],"outcome":"a \"b\" é \\ { ] ,","y":{}}"""u8)));
    }

    private static FieldSelection Selection(string fields)
    {
        var context = new Microsoft.AspNetCore.Http.DefaultHttpContext();
        context.Request.QueryString = new($"?fields={fields}");
        return FieldSelection.Of<DesignResponse>(context.Request).Fields!;
    }

    // The same, written apart from the service: of each list every entry.
    private static JsonNode? Keep(JsonNode? node, IReadOnlyList<string[]> paths) => node switch
    {
        _ when paths.Any(path => path.Length == 0) => node?.DeepClone(),
        JsonArray list => new JsonArray([.. list.Select(entry => Keep(entry, paths))]),
        JsonObject members => new JsonObject(members
            .Where(member => paths.Any(path => path[0] == member.Key))
            .Select(member => KeyValuePair.Create(member.Key, Keep(member.Value, [.. paths.Where(path => path[0] == member.Key).Select(path => path[1..])])))),
        _ => node?.DeepClone(),
    };

    private async Task<string> Code() => JsonNode.Parse(await Post("/v1/designs", Ash))!["designCode"]!.GetValue<string>();

    private async Task<HttpResponseMessage> Send(HttpMethod method, string address)
    {
        using var request = new HttpRequestMessage(method, address) { Content = method == HttpMethod.Post ? new StringContent(Ash, Encoding.UTF8, "application/json") : null };
        return await api.Client.SendAsync(request);
    }

    private async Task<string> Post(string address, string body)
    {
        using var content = new StringContent(body, Encoding.UTF8, "application/json");
        using var answer = await plain.PostAsync(address, content);
        Assert.True(answer.IsSuccessStatusCode, await answer.Content.ReadAsStringAsync());
        return await answer.Content.ReadAsStringAsync();
    }
}
