using System.Net;
using System.Text;
using System.Text.Json;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Http;

/// <summary>No refusal is a book, whatever is sent; and how long a list may be stands in the description.</summary>
[Collection(HttpTests.Name)]
public sealed class ProportionTests(ApiFixture api)
{
    // A problem lists up to 32 faults, each with a reason and the names allowed.
    private const int LongestProblem = 24 * 1024;

    public static TheoryData<string, string, HttpStatusCode> Lists => new()
    {
        { "/v1/balance-corrections", $"{{\"readings\":[{Many("{}", 20_000)}]}}", HttpStatusCode.UnprocessableEntity },
        { "/v1/balance-corrections", $"{{\"readings\":[{Many("{}", 200)}]}}", HttpStatusCode.UnprocessableEntity },
        { "/v1/balance-corrections", $"{{\"readings\":[{Many("{\"x\":1}", 20_000)}]}}", HttpStatusCode.BadRequest },
        { "/v1/designs", $"{{\"blade\":{{\"offsets\":[{Many("{}", 20_000)}]}}}}", HttpStatusCode.UnprocessableEntity },
        { "/v1/designs", $"{{\"blade\":{{\"offsets\":[{Many("{}", 60)}]}}}}", HttpStatusCode.UnprocessableEntity },
        { "/v1/designs", $"{{\"construction\":{{\"strips\":[{Many("{}", 20_000)}]}}}}", HttpStatusCode.UnprocessableEntity },
        { "/v1/designs", $"{{\"label\":\"{new string('x', 60_000)}\"}}", HttpStatusCode.UnprocessableEntity },
        { "/v1/designs", $"{{\"{new string('x', 60_000)}\":1}}", HttpStatusCode.BadRequest },
        { "/v1/designs", $"{{\"wood\":{{\"species\":\"{new string('\u0001', 60_000)}\"}}}}".Replace("\u0001", "\\u0001", StringComparison.Ordinal), HttpStatusCode.UnprocessableEntity },
        { "/v1/size-runs", $"{{\"sizes\":3,\"groups\":[{Many("{\"share\":1,\"meanMm\":1,\"standardDeviationMm\":1}", 20_000)}]}}", HttpStatusCode.UnprocessableEntity },
        { "/v1/size-runs", $"{{\"sizes\":3,\"customers\":[{Many("{}", 90_000)}]}}", HttpStatusCode.UnprocessableEntity },
        { "/v1/size-runs", $"{{\"sizes\":3,\"customers\":[{Many("{}", 900_000)}]}}", HttpStatusCode.UnprocessableEntity },
        { "/v1/size-runs", $"{{\"sizes\":3,\"customers\":[{Many("1", 900_000)}]}}", HttpStatusCode.UnprocessableEntity },
    };

    [Theory, MemberData(nameof(Lists))]
    public async Task A_refusal_stays_short(string address, string body, HttpStatusCode status)
    {
        using var content = new StringContent(body, Encoding.UTF8, "application/json");

        using var answer = await api.Client.PostAsync(new Uri(address, UriKind.Relative), content);

        var problem = await answer.Content.ReadAsByteArrayAsync();
        Assert.Equal(status, answer.StatusCode);
        Assert.InRange(problem.Length, 1, LongestProblem);
        using var read = JsonDocument.Parse(problem);
        Assert.InRange(read.RootElement.GetProperty("errors").EnumerateObject().Sum(place => place.Value.GetArrayLength()), 1, 32);
    }

    [Fact]
    public async Task A_list_beyond_any_is_counted_and_not_kept()
    {
        using var content = new StringContent($"{{\"sizes\":3,\"customers\":[{Many("{}", 150_000)}]}}", Encoding.UTF8, "application/json");

        using var answer = await api.Client.PostAsync(new Uri("/v1/size-runs", UriKind.Relative), content);

        using var problem = JsonDocument.Parse(await answer.Content.ReadAsByteArrayAsync());
        var fault = problem.RootElement.GetProperty("errors").GetProperty("/customers")[0];
        Assert.Equal(150_000, fault.GetProperty("value").GetInt32());
        Assert.Equal(100_000, fault.GetProperty("max").GetInt32());
    }

    [Theory]
    [InlineData("BalanceCorrectionRequest", "readings", null, 200)]
    [InlineData("BladeRequest", "offsets", 4, 60)]
    [InlineData("SizeRunRequest", "customers", 1, 100_000)]
    [InlineData("SizeRunRequest", "groups", 1, 20)]
    public void The_description_says_how_long_a_list_may_be(string schema, string member, int? fewest, int most)
    {
        var list = ApiFactory.Description.Root["components"]!["schemas"]![schema]!["properties"]![member]!;

        Assert.Equal(fewest, list["minItems"]?.GetValue<int>());
        Assert.Equal(most, list["maxItems"]!.GetValue<int>());
    }

    private static string Many(string item, int count) => string.Join(',', Enumerable.Repeat(item, count));
}
