using System.Net;
using System.Text.Json;

namespace PaddleApi.Tests.Hosting;

/// <summary>What callers learn of failures inside: that there was one, and the id to report it by.</summary>
public sealed class FailureTests : IAsyncLifetime
{
    private SampleHost host = null!;

    public async Task InitializeAsync() => host = await SampleHost.StartAsync();

    public async Task DisposeAsync() => await host.DisposeAsync();

    [Theory]
    [InlineData("/broken", 500, "internal-error")]
    [InlineData("/number", 500, "internal-error")]
    [InlineData("/slow", 504, "timeout")]
    [InlineData("/nowhere", 404, "not-found")]
    public async Task A_failure_is_a_problem_and_tells_nothing_of_the_inside(string path, int status, string kind)
    {
        using var client = host.Client();
        using var answer = await client.GetAsync(path);
        var text = await answer.Content.ReadAsStringAsync();
        using var problem = JsonDocument.Parse(text);

        Assert.Equal(status, (int)answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal($"/problems/{kind}", problem.RootElement.GetProperty("type").GetString());
        Assert.Equal(path, problem.RootElement.GetProperty("instance").GetString());
        Assert.Equal(answer.Headers.GetValues("X-Request-Id").Single(), problem.RootElement.GetProperty("requestId").GetString());
        Assert.True(answer.Headers.CacheControl!.NoStore);
        Assert.DoesNotContain("secret", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Faults_of_the_service_are_logged_and_those_of_callers_are_not()
    {
        using var client = host.Client();
        using var wrong = await client.PostAsync("/sample", new StringContent("{", System.Text.Encoding.UTF8, "application/json"));
        Assert.Empty(host.Errors);

        using var broken = await client.GetAsync("/broken");

        Assert.Contains(host.Errors, line => line.Contains("secret: the inside", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_caller_who_wants_a_picture_still_gets_the_problem()
    {
        using var client = host.Client();
        client.DefaultRequestHeaders.Accept.ParseAdd("image/svg+xml");

        using var answer = await client.GetAsync("/broken");

        Assert.Equal(HttpStatusCode.InternalServerError, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType!.MediaType);
    }

    [Theory]
    [InlineData("abc-DEF_1.2", true)]
    [InlineData("a", true)]
    [InlineData("has space", false)]
    [InlineData("<script>", false)]
    [InlineData("0123456789012345678901234567890123456789012345678901234567890123", true)]
    [InlineData("01234567890123456789012345678901234567890123456789012345678901234", false)]
    public async Task The_callers_request_id_is_kept_when_it_is_fit_to_be_logged(string given, bool kept)
    {
        using var client = host.Client();
        client.DefaultRequestHeaders.TryAddWithoutValidation("X-Request-Id", given);

        using var answer = await client.GetAsync("/nowhere");

        var id = answer.Headers.GetValues("X-Request-Id").Single();
        Assert.Equal(kept, id == given);
        Assert.Matches("^[A-Za-z0-9._-]{1,64}$", id);
    }
}
