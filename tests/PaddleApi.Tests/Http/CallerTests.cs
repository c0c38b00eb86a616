using System.Net;
using System.Net.Http.Headers;
using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;
using PaddleApi.Hosting.Callers;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Http;

/// <summary>Who calls, and how often: open to all as it stands, and as narrow as whoever runs the service wants it.</summary>
[Collection(HttpTests.Name)]
public sealed class CallerTests(ApiFixture api)
{
    private const string DesignKey = "5f0c6b1e-a-key-for-designs-of-good-length", WorkshopKey = "77aa-a-key-for-the-workshop-of-good-length";

    [Fact]
    public async Task As_it_stands_nobody_is_counted_and_no_key_is_asked_for()
    {
        using var ask = new HttpRequestMessage(HttpMethod.Get, "/v1/woods");
        ask.Headers.Authorization = new AuthenticationHeaderValue("Bearer", "anything");

        using var answer = await api.Client.SendAsync(ask);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.False(answer.Headers.Contains("RateLimit"));
        Assert.False(answer.Headers.Contains("Server"));
    }

    [Fact]
    public async Task A_caller_is_told_what_is_left_and_when_it_begins_again()
    {
        var clock = new Clock(DateTimeOffset.UnixEpoch.AddSeconds(18));
        using var factory = Counting(2, clock);
        using var client = factory.Client();

        Assert.Equal((200, "\"default\";r=1;t=42"), await AskAsync(client));
        Assert.Equal((200, "\"default\";r=0;t=42"), await AskAsync(client));
        clock.Now += TimeSpan.FromSeconds(40);
        using var refused = await client.GetAsync("/v1/woods");
        Assert.Equal(HttpStatusCode.TooManyRequests, refused.StatusCode);
        Assert.Equal(TimeSpan.FromSeconds(2), refused.Headers.RetryAfter!.Delta);
        Assert.Equal("\"default\";q=2;w=60", refused.Headers.GetValues("RateLimit-Policy").Single());
        clock.Now += TimeSpan.FromSeconds(2);
        Assert.Equal((200, "\"default\";r=1;t=60"), await AskAsync(client));
    }

    [Fact]
    public async Task Each_operation_is_counted_but_health()
    {
        using var factory = Counting(1);
        using var client = factory.Client();
        await AskAsync(client);

        foreach (var operation in Committed.Description.Operations)
        {
            using var answer = operation.Example() is { } body
                ? await client.PostAsync(new Uri(operation.ExamplePath(), UriKind.Relative), body)
                : await client.GetAsync(operation.ExamplePath());

            var isHealth = operation.Template.StartsWith("/health", StringComparison.Ordinal);
            Assert.Equal((operation.Id, isHealth), (operation.Id, answer.StatusCode != HttpStatusCode.TooManyRequests));
        }
    }

    [Theory]
    [InlineData("10.0.0.7", "10.0.0.0/8", "192.0.2.1", "192.0.2.2", true)]
    [InlineData("10.0.0.7", "10.0.0.7", "192.0.2.1", "192.0.2.2", true)]
    [InlineData("10.0.0.7", "10.0.0.7", "2001:db8::1", "2001:db8:0:1::1", true)]
    [InlineData("10.0.0.7", "10.0.0.7", "2001:db8::1", "2001:db8::2", false)]
    [InlineData("10.0.0.7", "10.0.0.8", "192.0.2.1", "192.0.2.2", false)]
    [InlineData("10.0.0.7", null, "192.0.2.1", "192.0.2.2", false)]
    [InlineData("10.0.0.7", "10.0.0.7", "192.0.2.1, 198.51.100.9", "192.0.2.2, 198.51.100.9", false)]
    public async Task Only_a_named_proxy_is_believed_who_calls(string from, string? trusted, string first, string second, bool areTwo)
    {
        var settings = trusted is null ? [] : new Dictionary<string, string> { ["Callers:TrustedProxies:0"] = trusted };
        using var factory = Counting(1, settings: settings, from: from);
        using var client = factory.Client();

        Assert.Equal(200, (await AskAsync(client, first)).Status);
        Assert.Equal(429, (await AskAsync(client, first)).Status);
        Assert.Equal(areTwo ? 200 : 429, (await AskAsync(client, second)).Status);
    }

    [Fact]
    public async Task Where_a_scope_is_not_open_a_key_of_that_scope_is_needed()
    {
        using var factory = new ApiFactory(Keys("none"));
        using var client = factory.Client();
        var scopes = new Dictionary<string, string>
        {
            ["/v1/designs"] = "design",
            ["/v1/design-batches"] = "design",
            ["/v1/fitting-batches"] = "fit",
            ["/v1/design-checks"] = "design",
            ["/v1/comparisons"] = "design",
            ["/v1/uncertainties"] = "design",
            ["/v1/trade-offs"] = "design",
            ["/v1/fittings"] = "fit",
            ["/v1/size-runs"] = "fit",
            ["/v1/board-tests"] = "workshop",
            ["/v1/board-layouts"] = "workshop",
            ["/v1/shopping-lists"] = "workshop",
            ["/v1/board-fits"] = "workshop",
            ["/v1/copies"] = "design",
            ["/v1/balance-corrections"] = "workshop",
        };
        foreach (var operation in Committed.Description.Operations.Where(operation => operation.Method == "POST"))
        {
            var scope = scopes[operation.Template];
            Assert.Equal(("""[{},{"key":[]}]""", scope), (operation.Node["security"]!.ToJsonString(), operation.Node["x-scope"]!.GetValue<string>()));
            Assert.Equal((401, $"Bearer realm=\"PaddleApi\", scope=\"{scope}\""), await PostAsync(client, operation, null));
            Assert.Equal((401, "Bearer realm=\"PaddleApi\", error=\"invalid_token\""), await PostAsync(client, operation, DesignKey[..^1]));
            Assert.Equal((401, "Bearer realm=\"PaddleApi\", error=\"invalid_token\""), await PostAsync(client, operation, new string('x', 5000)));
            foreach (var (key, its) in new[] { (DesignKey, "design"), (WorkshopKey, "workshop") })
            {
                var (status, said) = await PostAsync(client, operation, key);
                Assert.Equal((operation.Id, its == scope ? 200 : 403), (operation.Id, status));
                Assert.Equal(its == scope ? null : $"Bearer realm=\"PaddleApi\", error=\"insufficient_scope\", scope=\"{scope}\"", said);
            }
        }

        using var read = await client.GetAsync("/v1/woods");
        Assert.Equal(HttpStatusCode.OK, read.StatusCode);
    }

    [Fact]
    public async Task What_is_open_needs_no_key_but_a_key_that_is_not_known_is_said_to_be_so()
    {
        using var factory = new ApiFactory(Keys("design"));
        using var client = factory.Client();
        var design = Committed.Description.Operations.Single(operation => operation.Id == "createDesign");

        Assert.Equal((200, null), await PostAsync(client, design, null));
        Assert.Equal((200, null), await PostAsync(client, design, WorkshopKey));
        Assert.Equal(401, (await PostAsync(client, design, "guess")).Status);
        Assert.Equal(401, (await PostAsync(client, Committed.Description.Operations.Single(operation => operation.Id == "createFitting"), null)).Status);
    }

    [Theory]
    [InlineData("Callers:RequestsPerMinute", "-1")]
    [InlineData("Callers:TrustedProxies:0", "anybody")]
    [InlineData("Callers:OpenScopes:0", "everything")]
    [InlineData("Callers:Keys:0:Id", "outfitter")]
    public void A_rule_that_makes_no_sense_stops_the_service_at_start(string key, string value)
    {
        using var factory = new ApiFactory(new Dictionary<string, string> { [key] = value });

        Assert.Throws<OptionsValidationException>(() => factory.CreateClient());
    }

    [Fact]
    public void However_many_call_the_count_stays_bounded()
    {
        var window = new RateWindow(5, new Clock(DateTimeOffset.UnixEpoch));
        for (var caller = 0; caller < 100_000; caller++) window.Count(caller.ToString(System.Globalization.CultureInfo.InvariantCulture));

        var last = Enumerable.Range(0, 10).Select(caller => window.Count($"late {caller}").IsAllowed).ToList();

        Assert.Contains(false, last);
    }

    private static Dictionary<string, string> Keys(string open) => new()
    {
        ["Callers:OpenScopes:0"] = open,
        ["Callers:Keys:0:Id"] = "outfitter",
        ["Callers:Keys:0:Sha256"] = Digest(DesignKey),
        ["Callers:Keys:0:Scopes:0"] = "design",
        ["Callers:Keys:1:Id"] = "workshop",
        ["Callers:Keys:1:Sha256"] = Digest(WorkshopKey).ToLowerInvariant(),
        ["Callers:Keys:1:Scopes:0"] = "workshop",
    };

    private static ApiFactory Counting(int most, TimeProvider? clock = null, Dictionary<string, string>? settings = null, string from = "192.0.2.9") => new(
        new Dictionary<string, string>(settings ?? []) { ["Callers:RequestsPerMinute"] = most.ToString(System.Globalization.CultureInfo.InvariantCulture) },
        services => services.AddSingleton(clock ?? new Clock(DateTimeOffset.UnixEpoch)).AddSingleton<IStartupFilter>(new From(IPAddress.Parse(from))));

    private static async Task<(int Status, string Left)> AskAsync(HttpClient client, string? forwardedFor = null)
    {
        using var ask = new HttpRequestMessage(HttpMethod.Get, "/v1/woods");
        if (forwardedFor is not null) ask.Headers.Add("X-Forwarded-For", forwardedFor);
        using var answer = await client.SendAsync(ask);
        return ((int)answer.StatusCode, answer.Headers.GetValues("RateLimit").Single());
    }

    private static async Task<(int Status, string? Said)> PostAsync(HttpClient client, ApiOperation operation, string? key)
    {
        using var ask = new HttpRequestMessage(HttpMethod.Post, operation.ExamplePath()) { Content = operation.Example() };
        if (key is not null) ask.Headers.Authorization = new AuthenticationHeaderValue("Bearer", key);
        using var answer = await client.SendAsync(ask);
        return ((int)answer.StatusCode, answer.Headers.WwwAuthenticate.Count > 0 ? answer.Headers.WwwAuthenticate.ToString() : null);
    }

    private static string Digest(string key) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(key)));

    private sealed class Clock(DateTimeOffset now) : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = now;

        public override DateTimeOffset GetUtcNow() => Now;
    }

    private sealed class From(IPAddress address) : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
        {
            app.Use((context, rest) =>
            {
                context.Connection.RemoteIpAddress = address;
                return rest(context);
            });
            next(app);
        };
    }
}
