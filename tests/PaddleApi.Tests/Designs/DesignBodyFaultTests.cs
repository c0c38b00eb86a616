using System.Net;
using System.Text;
using System.Text.Json;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Designs;

/// <summary>A body that cannot be read as a design request is refused with exactly its own faults, each at its place.</summary>
[Collection(HttpTests.Name)]
public sealed class DesignBodyFaultTests(ApiFixture api)
{
    [Theory]
    [InlineData("""{"wood":{"species":"white-ash"},"handSpacingMm":880,"colour":"red"}""", "/colour")]
    [InlineData("""{"wood":{"species":"white-ash","age":3},"handSpacingMm":880}""", "/wood/age")]
    [InlineData("""{"wood":{"species":"white-ash"},"handSpacingMm":"880"}""", "/handSpacingMm")]
    [InlineData("""{"wood":{"species":"white-ash"},"handSpacingMm":1e999}""", "/handSpacingMm")]
    [InlineData("""{"wood":{"species":"white-ash"},"handSpacingMm":880,"blade":[]}""", "/blade")]
    [InlineData("""{"wood":{"species":"white-ash"},"handSpacingMm":880,"handSpacingMm":881}""", "/handSpacingMm")]
    [InlineData("""{"wood":{"species":7},"handSpacingMm":true,"x":1}""", "/handSpacingMm /wood/species /x")]
    public async Task Only_the_faults_there_are_get_named(string body, string pointers)
    {
        using var content = new StringContent(body, Encoding.UTF8, "application/json");
        using var answer = await api.Client.PostAsync("/v1/designs", content);
        using var problem = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        var named = problem.RootElement.GetProperty("errors").EnumerateObject().Select(error => error.Name).Order(StringComparer.Ordinal);
        Assert.Equal(pointers.Split(' '), named);
    }
}
