using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using PaddleApi.Hosting.Work;

namespace PaddleApi.Tests.Contract;

/// <summary>
/// What must hold of any operation, tried on each of them: a new operation is tested by being described. The cases come from the
/// committed description, which another test keeps equal to the code's.
/// </summary>
[Collection(HttpTests.Name)]
public sealed class EveryOperationTests(ApiFixture api, OwnServices own) : IClassFixture<OwnServices>
{
    public static TheoryData<string> Reads => Those(operation => operation.Method == "GET");

    public static TheoryData<string> Writes => Those(operation => operation.HasBody);

    public static TheoryData<string> FixedContents => Those(operation => operation.Documents(304));

    public static TheoryData<string> Negotiated => Those(operation => operation.Documents(406));

    public static TheoryData<string> Lookups => Those(operation => operation.Documents(404));

    public static TheoryData<string> Codes => Those(operation => operation.ParameterNames.Contains("designCode"));

    public static TheoryData<string> Parts => Those(operation => operation.Documents(206));

    public static TheoryData<string> Chosen => Those(operation => operation.Choices.Count > 0);

    public static TheoryData<string> All => Those(_ => true);

    public static TheoryData<string> Gated => Those(operation => operation.Template.StartsWith("/v1/", StringComparison.Ordinal) && operation.Documents(503) && !operation.IsBatch);

    [Theory, MemberData(nameof(Reads))]
    public async Task Reading_the_example_answers_200(string id)
    {
        using var answer = await api.Client.GetAsync(Find(id).ExamplePath());

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Theory, MemberData(nameof(Reads))]
    public async Task HEAD_answers_with_the_headers_of_GET(string id)
    {
        using var get = await api.Client.GetAsync(Find(id).ExamplePath());
        using var ask = new HttpRequestMessage(HttpMethod.Head, Find(id).ExamplePath());
        using var head = await api.Client.SendAsync(ask);

        Assert.Equal(get.StatusCode, head.StatusCode);
        Assert.Equal(get.Headers.ETag, head.Headers.ETag);
        Assert.Equal(get.Content.Headers.ContentType, head.Content.Headers.ContentType);
    }

    [Theory, MemberData(nameof(Writes))]
    public async Task Every_request_example_is_accepted(string id)
    {
        var operation = Find(id);
        Assert.NotEmpty(operation.RequestExamples);
        foreach (var (name, body) in operation.RequestExamples)
        {
            using var answer = await SendAsync(api.Client, operation, body);

            Assert.True(answer.IsSuccessStatusCode, $"{id}, example {name}: {await answer.Content.ReadAsStringAsync()}");
        }
    }

    [Theory, MemberData(nameof(Writes))]
    public async Task A_broken_body_is_refused_with_its_place(string id)
    {
        using var answer = await SendAsync(api.Client, Find(id), "{\n  \"a\": }");

        var problem = await ProblemAsync(answer, HttpStatusCode.BadRequest, "/problems/malformed-json");
        Assert.Contains("line 2", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Writes))]
    public async Task An_unknown_member_is_refused_by_name(string id)
    {
        using var answer = await SendAsync(api.Client, Find(id), "{\"noSuchMember\":1}");

        var problem = await ProblemAsync(answer, HttpStatusCode.BadRequest, "/problems/malformed-json");
        Assert.True(problem.GetProperty("errors").TryGetProperty("/noSuchMember", out _), problem.GetRawText());
    }

    [Theory, MemberData(nameof(Writes))]
    public async Task An_empty_body_is_refused(string id)
    {
        using var answer = await SendAsync(api.Client, Find(id), "");

        await ProblemAsync(answer, HttpStatusCode.BadRequest, "/problems/malformed-json");
    }

    [Theory, MemberData(nameof(Writes))]
    public async Task Another_media_type_is_refused(string id)
    {
        using var answer = await SendAsync(api.Client, Find(id), "{}", "text/plain");

        await ProblemAsync(answer, HttpStatusCode.UnsupportedMediaType, "/problems/unsupported-media-type");
    }

    [Theory, MemberData(nameof(Writes))]
    public async Task An_oversize_body_is_refused(string id)
    {
        // Size runs may be longer than other bodies; here they get the same limit.
        var (_, client) = own.With(overSockets: true, ("Limits:MaxSizeRunBodyBytes", "65536"));

        using var answer = await SendAsync(client, Find(id), $"{{\"label\":\"{new string('x', 70 * 1024)}\"}}");

        var problem = await ProblemAsync(answer, HttpStatusCode.RequestEntityTooLarge, "/problems/payload-too-large");
        Assert.Contains("65536 bytes", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(FixedContents))]
    public async Task Fixed_content_is_not_sent_twice(string id)
    {
        using var first = await api.Client.GetAsync(Find(id).ExamplePath());
        using var ask = new HttpRequestMessage(HttpMethod.Get, Find(id).ExamplePath());
        Assert.False(first.Headers.ETag!.IsWeak);
        ask.Headers.IfNoneMatch.Add(first.Headers.ETag);

        using var second = await api.Client.SendAsync(ask);

        Assert.Equal(HttpStatusCode.NotModified, second.StatusCode);
        Assert.Equal(first.Headers.ETag, second.Headers.ETag);
        Assert.True(second.Headers.CacheControl!.Public);
    }

    [Theory, MemberData(nameof(FixedContents))]
    public async Task Compressed_bytes_have_a_tag_of_their_own(string id)
    {
        using var plain = await api.Client.GetAsync(Find(id).ExamplePath());
        using var ask = new HttpRequestMessage(HttpMethod.Get, Find(id).ExamplePath());
        ask.Headers.AcceptEncoding.Add(new StringWithQualityHeaderValue("gzip"));
        using var packed = await api.Client.SendAsync(ask);
        if (packed.Content.Headers.ContentEncoding.Count == 0)
        {
            Assert.Equal(plain.Headers.ETag, packed.Headers.ETag);
            return;
        }

        Assert.NotEqual(plain.Headers.ETag, packed.Headers.ETag);
        using var again = new HttpRequestMessage(HttpMethod.Get, Find(id).ExamplePath());
        again.Headers.IfNoneMatch.Add(packed.Headers.ETag!);
        using var held = await api.Client.SendAsync(again);
        Assert.Equal(HttpStatusCode.NotModified, held.StatusCode);
    }

    [Theory, MemberData(nameof(Negotiated))]
    public async Task A_media_type_not_on_offer_is_refused(string id)
    {
        var operation = Find(id);
        using var ask = new HttpRequestMessage(new HttpMethod(operation.Method), operation.ExamplePath());
        ask.Headers.Accept.Add(new MediaTypeWithQualityHeaderValue("application/x-not-on-offer"));
        ask.Content = operation.Example();

        using var answer = await api.Client.SendAsync(ask);

        await ProblemAsync(answer, HttpStatusCode.NotAcceptable, "/problems/not-acceptable");
    }

    [Theory, MemberData(nameof(Lookups))]
    public async Task What_does_not_exist_is_not_found(string id)
    {
        using var answer = await api.Client.GetAsync(Find(id).AbsentPath());

        await ProblemAsync(answer, HttpStatusCode.NotFound, "/problems/not-found");
    }

    [Theory, MemberData(nameof(Codes))]
    public async Task A_code_that_cannot_be_read_is_refused(string id)
    {
        using var answer = await api.Client.GetAsync(Find(id).AbsentPath());

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Theory, MemberData(nameof(Parts))]
    public async Task A_part_is_cut_out_of_the_whole(string id)
    {
        var whole = await api.Client.GetByteArrayAsync(Find(id).ExamplePath());
        using var ask = new HttpRequestMessage(HttpMethod.Get, Find(id).ExamplePath());
        ask.Headers.Range = new RangeHeaderValue(10, 29);

        using var part = await api.Client.SendAsync(ask);

        Assert.Equal(HttpStatusCode.PartialContent, part.StatusCode);
        Assert.Equal(whole[10..30], await part.Content.ReadAsByteArrayAsync());
        Assert.Equal(new ContentRangeHeaderValue(10, 29, whole.Length), part.Content.Headers.ContentRange);
    }

    [Theory, MemberData(nameof(Parts))]
    public async Task A_part_beyond_the_end_is_refused_saying_how_much_there_is(string id)
    {
        var whole = await api.Client.GetByteArrayAsync(Find(id).ExamplePath());
        using var ask = new HttpRequestMessage(HttpMethod.Get, Find(id).ExamplePath());
        ask.Headers.Range = new RangeHeaderValue(whole.Length, null);

        using var answer = await api.Client.SendAsync(ask);

        await ProblemAsync(answer, HttpStatusCode.RequestedRangeNotSatisfiable, "/problems/range-not-satisfiable");
        Assert.Equal(whole.Length, answer.Content.Headers.ContentRange!.Length);
        Assert.Null(answer.Headers.ETag);
    }

    [Theory, MemberData(nameof(Chosen))]
    public async Task Every_choice_that_is_listed_works_and_no_other(string id)
    {
        foreach (var (name, choices) in Find(id).Choices)
        {
            foreach (var choice in choices)
            {
                using var answer = await api.Client.GetAsync($"{Find(id).ExamplePath()}?{name}={choice}");
                Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            }

            foreach (var wrong in (string[])["", "no-such-thing", choices[0].ToUpperInvariant(), $"{choices[0]}&{name}={choices[0]}"])
            {
                using var answer = await api.Client.GetAsync($"{Find(id).ExamplePath()}?{name}={wrong}");
                var fault =
                    (await ProblemAsync(answer, HttpStatusCode.UnprocessableEntity, "/problems/invalid-values"))
                    .GetProperty("errors").GetProperty($"?{name}")[0];
                Assert.Equal(choices, fault.GetProperty("allowed").EnumerateArray().Select(allowed => allowed.GetString()));
            }
        }
    }

    [Theory, MemberData(nameof(All))]
    public async Task A_parameter_that_is_not_listed_is_refused_naming_those_that_are(string id)
    {
        using var answer = await AskAsync(Find(id), $"{Find(id).ExamplePath()}?noSuchThing=1");

        var problem = await ProblemAsync(answer, HttpStatusCode.BadRequest, "/problems/bad-request");
        var fault = problem.GetProperty("errors").GetProperty("?noSuchThing")[0];
        Assert.Equal(Find(id).QueryNames, fault.GetProperty("allowed").EnumerateArray().Select(name => name.GetString()));
        Assert.Contains("'noSuchThing'", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(All))]
    public async Task Another_spelling_of_the_path_is_not_found_naming_the_plain_one(string id)
    {
        var path = Find(id).ExamplePath();
        string[] others = [$"{path}/", path.Replace(Fixed(path), Fixed(path).ToUpperInvariant(), StringComparison.Ordinal)];
        foreach (var other in others)
        {
            using var answer = await AskAsync(Find(id), other);

            var problem = await ProblemAsync(answer, HttpStatusCode.NotFound, "/problems/not-found");
            Assert.Contains($"Write {path[..Math.Min(path.Length, 80)]}", problem.GetProperty("detail").GetString(), StringComparison.Ordinal);
            Assert.Null(answer.Headers.ETag);
        }
    }

    [Theory, MemberData(nameof(Gated))]
    public async Task When_all_places_are_taken_the_caller_is_told_when_to_come_back(string id)
    {
        var (factory, client) = own.With(
            overSockets: false, ("Limits:ConcurrentSolves", "1"), ("Limits:QueuedSolves", "0"), ("Limits:ConcurrentFiles", "1"), ("Limits:QueuedFiles", "0"));
        using var solving = await factory.Services.GetRequiredService<SolveGate>().EnterAsync(CancellationToken.None);
        using var making = await factory.Services.GetRequiredService<FileGate>().EnterAsync(CancellationToken.None);

        using var answer = await AskAsync(client, Find(id), Find(id).ExamplePath());

        await ProblemAsync(answer, HttpStatusCode.ServiceUnavailable, "/problems/busy");
        Assert.NotNull(answer.Headers.RetryAfter!.Delta);
        Assert.Null(answer.Headers.ETag);
        Assert.True(answer.Headers.CacheControl!.NoStore);
    }

    [Theory, MemberData(nameof(Reads)), MemberData(nameof(Writes))]
    public async Task Another_method_is_refused_naming_those_allowed(string id)
    {
        using var answer = await api.Client.DeleteAsync(Find(id).ExamplePath());

        await ProblemAsync(answer, HttpStatusCode.MethodNotAllowed, "/problems/method-not-allowed");
        Assert.Contains(Find(id).Method, answer.Content.Headers.Allow);
    }

    // The first part of the path: fixed words, unlike a code or an id.
    private static string Fixed(string path) => path.Split('/')[1] is "v1" ? path.Split('/')[2] : path.Split('/')[1];

    private Task<HttpResponseMessage> AskAsync(ApiOperation operation, string path) => AskAsync(api.Client, operation, path);

    private static Task<HttpResponseMessage> AskAsync(HttpClient client, ApiOperation operation, string path) => operation.Example() is { } body
        ? client.PostAsync(new Uri(path, UriKind.Relative), body)
        : client.GetAsync(path);

    private static TheoryData<string> Those(Func<ApiOperation, bool> choice) =>
        [.. Committed.Description.Operations.Where(choice).Select(operation => operation.Id)];

    private static ApiOperation Find(string id) => Committed.Description.Operations.Single(operation => operation.Id == id);

    private static Task<HttpResponseMessage> SendAsync(HttpClient client, ApiOperation operation, string body, string mediaType = "application/json") =>
        client.SendAsync(new HttpRequestMessage(new HttpMethod(operation.Method), operation.ExamplePath()) { Content = Body(body, mediaType) });

    private static StringContent Body(string text, string mediaType) => new(text, Encoding.UTF8, mediaType);

    private static async Task<JsonElement> ProblemAsync(HttpResponseMessage answer, HttpStatusCode status, string type)
    {
        var text = await answer.Content.ReadAsStringAsync();
        Assert.True(status == answer.StatusCode, $"{(int)answer.StatusCode}: {text}");
        using var body = JsonDocument.Parse(text);
        Assert.Equal(type, body.RootElement.GetProperty("type").GetString());
        return body.RootElement.Clone();
    }
}
