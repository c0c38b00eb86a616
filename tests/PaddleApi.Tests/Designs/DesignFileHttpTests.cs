using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Paddle.Drawings;
using PaddleApi.Contracts.Designs;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Endpoints.Designs.Files;
using PaddleApi.Tests.Contract;

namespace PaddleApi.Tests.Designs;

[Collection(HttpTests.Name)]
public sealed class DesignFileHttpTests(ApiFixture api)
{
    private const string Hostile = "A <b onload=\"x()\"> & 'c' ]]> \\ \"; filename=\"evil.exe 櫂";

    private static readonly ComputedDesign Design = DesignService.Compute(Requests.Read(Requests.Least));
    private static readonly string Address = $"{DesignAddresses.Root}/{Design.Code}";

    public static TheoryData<string> Files => [.. DesignFiles.All.Select(file => file.FileName)];

    public static TheoryData<string> Drawings => [.. DesignFiles.All.Where(file => file.FileName != "solid.stl").Select(file => file.FileName)];

    public static TheoryData<string> Svgs => [.. DesignFiles.All.Where(file => file.MediaType == "image/svg+xml").Select(file => file.FileName)];

    [Theory, MemberData(nameof(Files))]
    public async Task A_file_comes_as_the_drawing_wrote_it(string name)
    {
        var file = DesignFiles.Find(name)!;
        using var answer = await api.Client.GetAsync($"{Address}/{name}?units=inch");

        using var written = new MemoryStream();
        var resolved = DesignService.Read(Design.Code).Design!;
        file.Write(
            DesignService.Evaluate(resolved, Design.Code).Report,
            DesignFileQuery.Default(resolved.Request, Design.Code) with { Units = Paddle.Design.Units.DrawingUnits.Inch },
            written);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(file.MediaType, answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal(written.ToArray(), await answer.Content.ReadAsByteArrayAsync());
    }

    [Theory, MemberData(nameof(Drawings))]
    public async Task The_lettering_follows_the_units_and_the_design_has_a_default(string name)
    {
        var metric = await api.Client.GetByteArrayAsync($"{Address}/{name}?units=metric");

        Assert.Equal(metric, await api.Client.GetByteArrayAsync($"{Address}/{name}"));
        Assert.NotEqual(metric, await api.Client.GetByteArrayAsync($"{Address}/{name}?units=inch"));
    }

    [Theory, MemberData(nameof(Files))]
    public async Task HEAD_has_every_header_of_GET(string name)
    {
        using var get = await AskAsync(HttpMethod.Get, name, "identity");
        using var head = await AskAsync(HttpMethod.Head, name, "identity");
        using var packedGet = await AskAsync(HttpMethod.Get, name, "gzip");
        using var packedHead = await AskAsync(HttpMethod.Head, name, "gzip");

        Assert.Equal(HeadersOf(get), HeadersOf(head));
        Assert.Equal(HeadersOf(packedGet), HeadersOf(packedHead));
        Assert.Empty(await head.Content.ReadAsByteArrayAsync());
    }

    [Fact]
    public async Task Whatever_decides_the_bytes_is_in_the_tag_and_nothing_else()
    {
        string[] variants =
            ["outline.svg?units=inch", "templates.pdf?paper=letter", "templates.pdf?paper=a3", "templates.pdf?paper=roll", "templates.pdf?units=inch"];
        var tags = new List<string>();
        foreach (var address in DesignFiles.All.Select(file => file.FileName).Concat(variants)) tags.Add(await TagAsync($"{Address}/{address}"));

        Assert.Equal(tags.Count, tags.Distinct().Count());
        Assert.Equal(await TagAsync($"{Address}/templates.pdf"), await TagAsync($"{Address}/templates.pdf?paper=a4&units=metric"));
        var other = DesignService.Compute(Requests.Read(Requests.With("/label=\"other\""))).Code;
        Assert.DoesNotContain(await TagAsync($"{DesignAddresses.Root}/{other}/outline.svg"), tags);
    }

    [Theory, MemberData(nameof(Files))]
    public void Who_holds_a_file_is_told_so_without_computing_the_design(string name)
    {
        var file = DesignFiles.Find(name)!;
        var first = new DefaultHttpContext();
        DesignFileAnswer.For(file, Design.Code, first, DesignService.Evaluate);
        var second = new DefaultHttpContext();
        second.Request.Headers.IfNoneMatch = first.Response.Headers.ETag;

        var answer = DesignFileAnswer.For(file, Design.Code, second, (_, _) => throw new InvalidOperationException("computed"));

        Assert.Equal(StatusCodes.Status304NotModified, Assert.IsType<StatusCodeHttpResult>(answer).StatusCode);
        Assert.Equal(first.Response.Headers.ETag, second.Response.Headers.ETag);
        Assert.Equal(first.Response.Headers.Vary, second.Response.Headers.Vary);
    }

    [Fact]
    public void A_tag_does_not_spare_a_damaged_code_its_refusal()
    {
        var context = new DefaultHttpContext();
        context.Request.Headers.IfNoneMatch = "*";

        var answer = DesignFileAnswer.For(DesignFiles.All[0], Design.Code[..^3], context, DesignService.Evaluate);

        Assert.Equal(StatusCodes.Status400BadRequest, Assert.IsAssignableFrom<IStatusCodeHttpResult>(answer).StatusCode);
    }

    [Fact]
    public void Nor_does_a_tag_that_names_nothing_spare_a_code_of_another_maker()
    {
        var pinned = Design.Resolved.Pin(Design.Report.Sizes);
        var foreign = DesignCodes.Encode(pinned with { Blade = pinned.Blade! with { WidthMm = 999 } });
        var context = new DefaultHttpContext();
        context.Request.Headers.IfNoneMatch = "*";

        var answer = DesignFileAnswer.For(DesignFiles.All[0], foreign, context, DesignService.Evaluate);

        Assert.Equal(StatusCodes.Status400BadRequest, Assert.IsAssignableFrom<IStatusCodeHttpResult>(answer).StatusCode);
        Assert.Equal(0, context.Response.Headers.ETag.Count);
    }

    [Theory, MemberData(nameof(Svgs))]
    public async Task A_hostile_label_stays_text(string name)
    {
        // What parts the changes of a request from one another must not be in the label.
        var label = JsonSerializer.Serialize(Hostile).Replace("; ", ";", StringComparison.Ordinal);
        var code = DesignService.Compute(Requests.Read(Requests.With($"/label={label}"))).Code;
        using var answer = await api.Client.GetAsync($"{DesignAddresses.Root}/{code}/{name}");

        var svg = XDocument.Parse(await answer.Content.ReadAsStringAsync());
        Assert.DoesNotContain(svg.Descendants(), element => element.Name.LocalName == "b");
        Assert.Contains("<b onload", svg.Descendants().First(element => element.Name.LocalName is "title").Value, StringComparison.Ordinal);
        var saved = answer.Content.Headers.ContentDisposition!;
        Assert.Equal($"a-b-onload-x-c-filename-evil-exe-{name}", saved.FileName!.Trim('"'));
        Assert.EndsWith($"evil.exe 櫂 {name}", saved.FileNameStar, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Files))]
    public async Task A_browser_is_told_to_run_nothing_and_to_guess_nothing(string name)
    {
        using var answer = await api.Client.GetAsync($"{Address}/{name}");

        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        var drawing = name.EndsWith(".svg", StringComparison.Ordinal) ? "default-src 'none'; style-src 'unsafe-inline'; sandbox; " : "";
        Assert.Equal($"{drawing}frame-ancestors 'none'", Assert.Single(answer.Headers.GetValues("Content-Security-Policy")));
    }

    [Theory]
    [InlineData("outline.svg", "image/avif,image/webp,image/apng,image/svg+xml,image/*,*/*;q=0.8", HttpStatusCode.OK)]
    [InlineData("templates.pdf", "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8", HttpStatusCode.OK)]
    [InlineData("solid.stl", "*/*", HttpStatusCode.OK)]
    [InlineData("offsets.csv", "text/*", HttpStatusCode.OK)]
    [InlineData("outline.svg", "application/json", HttpStatusCode.NotAcceptable)]
    [InlineData("solid.stl", "image/*", HttpStatusCode.NotAcceptable)]
    public async Task A_caller_is_served_what_it_accepts(string name, string accept, HttpStatusCode status)
    {
        using var ask = new HttpRequestMessage(HttpMethod.Get, $"{Address}/{name}");
        ask.Headers.TryAddWithoutValidation("Accept", accept);

        using var answer = await api.Client.SendAsync(ask);

        Assert.Equal(status, answer.StatusCode);
    }

    [Theory, MemberData(nameof(Files))]
    public async Task Text_is_packed_on_the_way_and_a_pdf_is_not(string name)
    {
        using var answer = await AskAsync(HttpMethod.Get, name, "br, gzip");

        var isPacked = name != "templates.pdf";
        Assert.Equal(isPacked ? ["br"] : [], answer.Content.Headers.ContentEncoding);
        Assert.Equal(isPacked ? ["Accept-Encoding"] : [], answer.Headers.Vary);
    }

    [Theory]
    [InlineData("templates.pdf")]
    [InlineData("solid.stl")]
    public async Task A_download_that_broke_off_goes_on_only_where_the_file_is_still_the_same(string name)
    {
        using var first = await api.Client.GetAsync($"{Address}/{name}");
        var whole = await first.Content.ReadAsByteArrayAsync();

        using var same = await ResumeAsync(name, first.Headers.ETag!);
        using var other = await ResumeAsync(name, new EntityTagHeaderValue("\"other\""));

        Assert.Equal(HttpStatusCode.PartialContent, same.StatusCode);
        Assert.Equal(whole[1000..], await same.Content.ReadAsByteArrayAsync());
        Assert.Equal(HttpStatusCode.OK, other.StatusCode);
        Assert.Equal(whole, await other.Content.ReadAsByteArrayAsync());
    }

    [Fact]
    public async Task A_condition_that_guards_writes_does_not_hinder_reading()
    {
        using var ask = new HttpRequestMessage(HttpMethod.Get, $"{Address}/templates.pdf");
        ask.Headers.IfMatch.Add(new EntityTagHeaderValue("\"other\""));
        ask.Headers.Range = new RangeHeaderValue(0, 9);

        using var answer = await api.Client.SendAsync(ask);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public async Task The_server_itself_sends_the_solid_that_is_made_as_it_is_read()
    {
        using var factory = new ApiFactory();
        using var client = factory.SocketClient();

        using var answer = await client.GetAsync($"{Address}/solid.stl", HttpCompletionOption.ResponseHeadersRead);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.InRange(answer.Content.Headers.ContentLength!.Value, 1_000_000, 8_000_000);
        Assert.Equal(await api.Client.GetByteArrayAsync($"{Address}/solid.stl"), await answer.Content.ReadAsByteArrayAsync());
    }

    [Fact]
    public async Task Paper_is_refused_where_there_is_none_saying_what_the_file_knows()
    {
        using var answer = await api.Client.GetAsync($"{Address}/outline.svg?paper=a4");

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("The query knows no 'paper'; it knows units.", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("outline.png")]
    [InlineData("outline.svg.bak")]
    [InlineData("..%2f..%2fappsettings.json")]
    public async Task A_file_that_there_is_not_is_answered_with_those_there_are(string name)
    {
        using var answer = await api.Client.GetAsync($"{Address}/{name}");

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        var problem = await answer.Content.ReadAsStringAsync();
        Assert.All(DesignFiles.All, file => Assert.Contains(file.FileName, problem, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Every_link_of_an_answer_leads_to_its_file()
    {
        using var least = new StringContent(Requests.Least, Encoding.UTF8, "application/json");
        using var posted = await api.Client.PostAsync(new Uri(DesignAddresses.Root, UriKind.Relative), least);
        using var body = JsonDocument.Parse(await posted.Content.ReadAsStringAsync());
        var links = body.RootElement.GetProperty("links").EnumerateObject().ToList();

        Assert.Equal(
            ["self", "build", "buildSheet", "buildSheetPdf", "overview", "outline", "halfTemplate", "elevation", "sections", "strength", "offsets", "dxf", "templates", "stl"],
            links.Select(link => link.Name));
        foreach (var link in links)
        {
            using var answer = await api.Client.SendAsync(new HttpRequestMessage(HttpMethod.Head, link.Value.GetString()));
            Assert.True(answer.IsSuccessStatusCode, link.Name);
        }
    }

    private async Task<HttpResponseMessage> AskAsync(HttpMethod method, string name, string encodings)
    {
        using var ask = new HttpRequestMessage(method, $"{Address}/{name}");
        ask.Headers.TryAddWithoutValidation("Accept-Encoding", encodings);
        return await api.Client.SendAsync(ask);
    }

    private async Task<HttpResponseMessage> ResumeAsync(string name, EntityTagHeaderValue tag)
    {
        using var ask = new HttpRequestMessage(HttpMethod.Get, $"{Address}/{name}");
        ask.Headers.Range = new RangeHeaderValue(1000, null);
        ask.Headers.IfRange = new RangeConditionHeaderValue(tag);
        return await api.Client.SendAsync(ask);
    }

    private async Task<string> TagAsync(string address)
    {
        using var answer = await api.Client.SendAsync(new HttpRequestMessage(HttpMethod.Head, address));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return answer.Headers.ETag!.Tag;
    }

    private static IEnumerable<string> HeadersOf(HttpResponseMessage answer) => answer.Headers.Concat(answer.Content.Headers)
        .Where(header => !header.Key.Equals("X-Request-Id", StringComparison.OrdinalIgnoreCase) && header.Key != "Date")
        .Select(header => $"{header.Key}: {string.Join(", ", header.Value)}").Order(StringComparer.Ordinal);
}
