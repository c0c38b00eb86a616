using System.Net;
using System.Text;
using System.Text.Json;

namespace PaddleApi.Tests.Hosting;

/// <summary>One table of bad bodies: what is sent, the status, the kind of problem and the place it names.</summary>
public sealed class RefusedBodyTests : IAsyncLifetime
{
    private SampleHost host = null!;

    public async Task InitializeAsync() => host = await SampleHost.StartAsync();

    public async Task DisposeAsync() => await host.DisposeAsync();

    public static TheoryData<string, int, string, string> Table => new()
    {
        { "", 400, "malformed-json", "" },
        { "   ", 400, "malformed-json", "" },
        { "{", 400, "malformed-json", "" },
        { "{} x", 400, "malformed-json", "" },
        { "null", 400, "malformed-json", "" },
        { "[]", 400, "malformed-json", "" },
        { "7", 400, "malformed-json", "" },
        { """{"name":"a","widthMm":NaN}""", 400, "malformed-json", "" },
        { """{"name":"a","widthMm":Infinity}""", 400, "malformed-json", "" },
        { """{"name":"a","widthMm":100,}""", 400, "malformed-json", "" },
        { """{"name":"a","widthMm":100 /* no */}""", 400, "malformed-json", "" },
        { """{"name":"a","widthMm":1e999}""", 400, "malformed-json", "/widthMm" },
        { """{"name":"a","widthMm":-1e999}""", 400, "malformed-json", "/widthMm" },
        { """{"name":"a","widthMm":"100"}""", 400, "malformed-json", "/widthMm" },
        { """{"name":"a","widthMm":null}""", 400, "malformed-json", "/widthMm" },
        { """{"name":"a"}""", 400, "malformed-json", "/widthMm" },
        { """{"widthMm":100}""", 400, "malformed-json", "/name" },
        { """{"name":null,"widthMm":100}""", 400, "malformed-json", "/name" },
        { """{"name":5,"widthMm":100}""", 400, "malformed-json", "/name" },
        { """{"Name":"a","widthMm":100}""", 400, "malformed-json", "/Name" },
        { """{"name":"a","widthMm":100,"colour":"red"}""", 400, "malformed-json", "/colour" },
        { """{"name":"a","widthMm":100,"a/b~c":1}""", 400, "malformed-json", "/a~1b~0c" },
        { """{"name":"a","widthMm":100,"widthMm":100}""", 400, "malformed-json", "/widthMm" },
        { """{"name":"a","widthMm":100,"count":1.5}""", 400, "malformed-json", "/count" },
        { """{"name":"a","widthMm":100,"count":99999999999}""", 400, "malformed-json", "/count" },
        { """{"name":"a","widthMm":100,"flag":"true"}""", 400, "malformed-json", "/flag" },
        { """{"name":"a","widthMm":100,"flag":0}""", 400, "malformed-json", "/flag" },
        { """{"name":"a","widthMm":100,"kind":"third-one"}""", 400, "malformed-json", "/kind" },
        { """{"name":"a","widthMm":100,"kind":"PlainOne"}""", 400, "malformed-json", "/kind" },
        { """{"name":"a","widthMm":100,"kind":"Plain-one"}""", 400, "malformed-json", "/kind" },
        { """{"name":"a","widthMm":100,"kind":1}""", 400, "malformed-json", "/kind" },
        { """{"name":"a","widthMm":100,"kind":"1"}""", 400, "malformed-json", "/kind" },
        { """{"name":"a","widthMm":100,"part":[]}""", 400, "malformed-json", "/part" },
        { """{"name":"a","widthMm":100,"part":{"y":1}}""", 400, "malformed-json", "/part/y" },
        { """{"name":"a","widthMm":100,"parts":{}}""", 400, "malformed-json", "/parts" },
        { """{"name":"a","widthMm":100,"parts":[{},null]}""", 400, "malformed-json", "/parts/1" },
        { """{"name":"a","widthMm":100,"parts":[{},{"xMm":"1"}]}""", 400, "malformed-json", "/parts/1/xMm" },
        { """{"name":"a","widthMm":69}""", 422, "invalid-values", "/widthMm" },
        { """{"name":"a","widthMm":240.001}""", 422, "invalid-values", "/widthMm" },
        { """{"name":"a","widthMm":100,"count":0}""", 422, "invalid-values", "/count" },
        { """{"name":"a","widthMm":100,"parts":[{},{},{"xMm":-1}]}""", 422, "invalid-values", "/parts/2/xMm" },
        { """{"name":"a","widthMm":100,"count":2,"flag":true}""", 422, "invalid-values", "/flag" },
    };

    [Theory, MemberData(nameof(Table))]
    public async Task A_bad_body_is_refused_with_its_place(string body, int status, string kind, string place)
    {
        var (answer, problem) = await PostAsync(body);

        Assert.Equal(status, (int)answer.StatusCode);
        Assert.Equal($"/problems/{kind}", problem.GetProperty("type").GetString());
        Assert.Equal(status, problem.GetProperty("status").GetInt32());
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType!.MediaType);
        Assert.True(problem.GetProperty("errors").TryGetProperty(place, out var faults), problem.GetRawText());
        Assert.All(faults.EnumerateArray(), fault => Assert.False(string.IsNullOrWhiteSpace(fault.GetProperty("reason").GetString())));
        Assert.DoesNotContain("System.", problem.GetRawText(), StringComparison.Ordinal);
        Assert.DoesNotContain("PaddleApi", problem.GetRawText(), StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", problem.GetRawText(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_body_nested_too_deep_is_refused_at_the_depth_it_passes()
    {
        var deep = string.Concat(Enumerable.Repeat("{\"inner\":", 20)) + "{}" + new string('}', 20);

        var (answer, problem) = await PostAsync($$"""{"name":"a","widthMm":100,"part":{{deep}}}""");

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        var place = problem.GetProperty("errors").EnumerateObject().Single();
        Assert.Equal("/part" + string.Concat(Enumerable.Repeat("/inner", 15)), place.Name);
        Assert.Contains("16 levels", place.Value[0].GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task All_faults_of_a_body_are_named_at_once()
    {
        var (_, problem) = await PostAsync("""{"nam":"a","widthMm":"wide","kind":"third-one"}""");

        Assert.Equal(["/kind", "/nam", "/name", "/widthMm"], problem.GetProperty("errors").EnumerateObject().Select(error => error.Name));
    }

    [Fact]
    public async Task An_unknown_name_is_answered_with_the_names_that_are_known()
    {
        var (_, problem) = await PostAsync("""{"name":"a","widthMm":100,"kind":"third-one"}""");

        var fault = problem.GetProperty("errors").GetProperty("/kind")[0];
        Assert.Equal("third-one", fault.GetProperty("value").GetString());
        Assert.Equal(["plain-one", "other-one"], fault.GetProperty("allowed").EnumerateArray().Select(name => name.GetString()));
    }

    [Fact]
    public async Task All_broken_rules_are_named_at_once_with_value_range_unit_and_reason()
    {
        var (_, problem) = await PostAsync("""{"name":"a","widthMm":999,"count":12}""");

        var errors = problem.GetProperty("errors");
        Assert.Equal(["/count", "/widthMm"], errors.EnumerateObject().Select(error => error.Name));
        var fault = errors.GetProperty("/widthMm")[0];
        Assert.Equal(999, fault.GetProperty("value").GetDouble());
        Assert.Equal(70, fault.GetProperty("min").GetDouble());
        Assert.Equal(240, fault.GetProperty("max").GetDouble());
        Assert.Equal("mm", fault.GetProperty("unit").GetString());
        Assert.Equal("Narrower does not pull, wider does not swing.", fault.GetProperty("reason").GetString());
    }

    [Fact]
    public async Task A_good_body_comes_back_as_it_was_read()
    {
        var (answer, body) = await PostAsync("""{"name":"Æ'","widthMm":-0.0e2,"parts":[{"xMm":1.5}],"kind":"other-one"}""".Replace("-0.0e2", "100", StringComparison.Ordinal));

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("""{"name":"Æ'","widthMm":100,"count":1,"flag":false,"kind":"other-one","parts":[{"xMm":1.5}]}""", body.GetRawText());
    }

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/xml")]
    public async Task Another_media_type_is_refused(string mediaType)
    {
        using var client = host.Client();
        using var answer = await client.PostAsync("/sample", new StringContent("{}", Encoding.UTF8, mediaType));

        Assert.Equal(HttpStatusCode.UnsupportedMediaType, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType!.MediaType);
    }

    private async Task<(HttpResponseMessage Answer, JsonElement Body)> PostAsync(string body)
    {
        using var client = host.Client();
        var answer = await client.PostAsync("/sample", new StringContent(body, Encoding.UTF8, "application/json"));
        using var document = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
        return (answer, document.RootElement.Clone());
    }
}
