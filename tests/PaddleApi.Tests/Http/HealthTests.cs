using System.Net;
using Microsoft.Extensions.DependencyInjection;
using PaddleApi.Hosting.Health;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Http;

[Collection(HttpTests.Name)]
public sealed class HealthTests
{
    [Fact]
    public async Task The_service_is_not_ready_before_its_trial_design_and_ready_after()
    {
        using var allowed = new ManualResetEventSlim();
        using var factory = new ApiFactory(services: services => services.AddSingleton(new WarmUpWork(allowed.Wait)));
        using var client = factory.Client();

        using var live = await client.GetAsync("/health/live");
        using var early = await client.GetAsync("/health/ready");
        allowed.Set();
        var later = await UntilAsync(client, HttpStatusCode.OK);

        Assert.Equal(HttpStatusCode.OK, live.StatusCode);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, early.StatusCode);
        Assert.NotNull(early.Headers.RetryAfter);
        Assert.True(early.Headers.CacheControl!.NoStore);
        Assert.Equal(HttpStatusCode.OK, later.StatusCode);
        Assert.True(later.Headers.CacheControl!.NoStore);
    }

    [Fact]
    public async Task A_service_whose_trial_fails_stays_up_and_never_becomes_ready()
    {
        using var failed = new ManualResetEventSlim();
        using var factory = new ApiFactory(services: services => services.AddSingleton(new WarmUpWork(() =>
        {
            failed.Set();
            throw new InvalidOperationException("the trial fails");
        })));
        using var client = factory.Client();

        using var live = await client.GetAsync("/health/live");
        Assert.True(failed.Wait(TimeSpan.FromSeconds(10)));
        using var ready = await client.GetAsync("/health/ready");

        Assert.Equal(HttpStatusCode.OK, live.StatusCode);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, ready.StatusCode);
    }

    [Fact]
    public void The_trial_design_succeeds() => TrialDesign.Run();

    private static async Task<HttpResponseMessage> UntilAsync(HttpClient client, HttpStatusCode status)
    {
        for (var attempt = 0; ; attempt++)
        {
            var answer = await client.GetAsync("/health/ready");
            if (answer.StatusCode == status || attempt == 100)
            {
                return answer;
            }

            await Task.Delay(20);
        }
    }
}
