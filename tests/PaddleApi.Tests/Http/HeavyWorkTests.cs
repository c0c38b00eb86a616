using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using FluentValidation;
using FluentValidation.Results;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Paddle.Design;
using Paddle.Design.Fitting;
using Paddle.Design.Request;
using Paddle.Drawings;
using PaddleApi.Endpoints.Builds;
using PaddleApi.Endpoints.Designs;
using PaddleApi.Endpoints.Designs.Files;
using PaddleApi.Hosting.Requests;
using PaddleApi.Hosting.Work;
using PaddleApi.Tests.Contract;
using PaddleApi.Tests.Designs;

namespace PaddleApi.Tests.Http;

/// <summary>Heavy work waits for its turn, holds up nothing light, and ends when nobody waits for it any more.</summary>
[Collection(HttpTests.Name)]
public sealed class HeavyWorkTests(ApiFixture api, OwnServices own) : IClassFixture<OwnServices>
{
    private static readonly string Code = BuildExamples.Weighed.DesignCode!;
    private static readonly string Address = $"{DesignAddresses.Root}/{Code}";
    private static readonly CancellationToken Gone = new(canceled: true);

    private static readonly string[] HeavyFiles = ["templates.pdf", "template.dxf", "solid.stl", "build", "build-sheet.html", "build-sheet.pdf"];

    public static TheoryData<string> Heavy => [.. HeavyFiles];

    [Fact]
    public async Task A_page_that_designs_for_a_whole_fleet_in_one_moment_is_answered()
    {
        var spacings = Enumerable.Range(0, 64).Select(i => 800 + 2 * i);

        var answers = await Task.WhenAll(spacings.Select(spacing => api.Client.PostAsync(
            new Uri("/v1/designs", UriKind.Relative),
            new StringContent($$"""{"handSpacingMm":{{spacing}},"wood":{"species":"white-ash"} }""", Encoding.UTF8, "application/json"))));

        Assert.All(answers, answer => Assert.Equal(HttpStatusCode.OK, answer.StatusCode));
    }

    [Theory, MemberData(nameof(Heavy))]
    public async Task While_heavy_work_waits_for_its_turn_all_else_goes_on(string heavy)
    {
        var (factory, client) = own.With(overSockets: false, ("Limits:ConcurrentFiles", "1"), ("Limits:MostWaitSeconds", "60"));
        var place = await factory.Services.GetRequiredService<FileGate>().EnterAsync(CancellationToken.None);
        var waits = Enumerable.Range(0, 6).Select(_ => client.GetAsync($"{Address}/{heavy}")).ToList();

        using var report = await client.GetAsync(Address);
        using var drawing = await client.GetAsync($"{Address}/outline.svg");
        using var design = await client.PostAsync(
            new Uri("/v1/designs", UriKind.Relative), new StringContent(Requests.Least, Encoding.UTF8, "application/json"));
        Assert.All([report, drawing, design], answer => Assert.Equal(HttpStatusCode.OK, answer.StatusCode));
        Assert.All(waits, wait => Assert.False(wait.IsCompleted));

        place.Dispose();
        Assert.All(await Task.WhenAll(waits), answer => Assert.Equal(HttpStatusCode.OK, answer.StatusCode));
    }

    [Theory, MemberData(nameof(Heavy))]
    public async Task Who_holds_the_answer_already_does_not_wait(string heavy)
    {
        using var first = await api.Client.GetAsync($"{Address}/{heavy}");
        var (factory, client) = own.With(overSockets: false, ("Limits:ConcurrentFiles", "1"), ("Limits:QueuedFiles", "0"));
        using var place = await factory.Services.GetRequiredService<FileGate>().EnterAsync(CancellationToken.None);
        using var ask = new HttpRequestMessage(HttpMethod.Get, $"{Address}/{heavy}");
        ask.Headers.IfNoneMatch.Add(first.Headers.ETag!);

        using var answer = await client.SendAsync(ask);

        Assert.Equal(HttpStatusCode.NotModified, answer.StatusCode);
    }

    [Fact]
    public async Task A_place_is_free_again_when_the_file_is_made_and_not_when_it_is_fetched()
    {
        using var factory = new ApiFactory(new Dictionary<string, string> { ["Limits:ConcurrentFiles"] = "1", ["Limits:QueuedFiles"] = "0" });
        using var client = factory.SocketClient();
        using var slow = new HttpClient { BaseAddress = client.BaseAddress };
        using var begun = await slow.GetAsync($"{Address}/solid.stl", HttpCompletionOption.ResponseHeadersRead);

        using var other = await client.GetAsync($"{Address}/templates.pdf");

        Assert.Equal((HttpStatusCode.OK, HttpStatusCode.OK), (begun.StatusCode, other.StatusCode));
    }

    [Fact]
    public async Task A_body_that_does_not_come_is_not_waited_for()
    {
        using var factory = new ApiFactory(new Dictionary<string, string> { ["Limits:UploadTimeoutSeconds"] = "1" });
        using var client = factory.Client();
        var asked = Committed.Description.Operations.Where(operation => operation.HasBody).Select(async operation =>
        {
            using var dripping = new StreamContent(new EndlessBody());
            dripping.Headers.ContentType = new MediaTypeHeaderValue("application/json");
            return await client.PostAsync(new Uri(operation.ExamplePath(), UriKind.Relative), dripping);
        });

        foreach (var answer in await Task.WhenAll(asked))
        {
            Assert.Equal(HttpStatusCode.RequestTimeout, answer.StatusCode);
            using var problem = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
            Assert.Equal("/problems/slow-body", problem.RootElement.GetProperty("type").GetString());
        }
    }

    [Fact]
    public async Task A_large_body_waits_for_room_before_it_is_taken_in()
    {
        using var factory = new ApiFactory(new Dictionary<string, string> { ["Limits:ConcurrentSizeRunBodies"] = "1", ["Limits:QueuedFiles"] = "0" });
        using var client = factory.Client();
        using var room = await factory.Services.GetRequiredService<BodyGate>().EnterAsync(CancellationToken.None);
        using var unread = new EndlessBody();
        using var body = new StreamContent(unread);
        body.Headers.ContentType = new MediaTypeHeaderValue("application/json");

        using var answer = await client.PostAsync(new Uri("/v1/size-runs", UriKind.Relative), body);

        Assert.Equal(HttpStatusCode.ServiceUnavailable, answer.StatusCode);
    }

    [Fact]
    public async Task A_body_in_pages_is_the_body_that_came()
    {
        var bytes = new byte[200_001];
        new Random(1).NextBytes(bytes);
        using var body = new PagedBody();

        await body.TakeAsync(new MemoryStream(bytes), CancellationToken.None);

        Assert.Equal(bytes.Length, body.Length);
        var copy = new byte[bytes.Length];
        await body.ReadExactlyAsync(copy);
        Assert.Equal(bytes, copy);
        Assert.Equal(-1, body.ReadByte());
        body.Position = 65_535;
        Assert.Equal((bytes[65_535], bytes[65_536]), ((byte)body.ReadByte(), (byte)body.ReadByte()));
    }

    [Fact]
    public void Solving_ends_when_nobody_waits_for_it()
    {
        var asked = DesignRequestReader.Read(DesignExamples.HirePaddle).Specification;

        Assert.Throws<OperationCanceledException>(() => PaddleDesigner.Design(asked, Gone));
        Assert.Throws<OperationCanceledException>(() => SizeRun.Advise(new() { Sizes = 3, Population = new() { Men = 1, Women = 1 } }, Gone));
    }

    [Theory]
    [InlineData("templates.pdf")]
    [InlineData("solid.stl")]
    public void Making_a_file_ends_when_nobody_waits_for_it(string name)
    {
        var design = DesignService.Evaluate(DesignService.Read(Code).Design!, Code);

        Assert.Throws<OperationCanceledException>(() => DesignFileResult.Make(
            DesignFiles.Find(name)!, design.Report, DesignFileQuery.Default(design.Resolved.Request, Code), Gone));
    }

    [Fact]
    public async Task Nothing_heavy_is_read_for_a_caller_who_has_gone()
    {
        using var factory = new ApiFactory(services: services => services.AddSingleton<IStartupFilter>(new Leaving()));
        using var client = factory.CreateClient();
        foreach (var heavy in HeavyFiles)
        {
            using var answer = await client.GetAsync($"{Address}/{heavy}");

            Assert.True(StatusCodes.Status499ClientClosedRequest == (int)answer.StatusCode, $"{heavy}: {answer.StatusCode}");
        }
    }

    [Fact]
    public async Task No_design_is_solved_for_a_caller_who_goes_while_it_is_checked()
    {
        using var leaves = new CancellationTokenSource();
        using var factory = new ApiFactory(services: services => services
            .AddSingleton<IStartupFilter>(new Leaving(leaves.Token))
            .AddSingleton<IValidator<DesignRequest>>(new LeavesWhenChecked(leaves)));
        using var client = factory.CreateClient();

        using var answer = await client.PostAsync(
            new Uri("/v1/designs", UriKind.Relative), new StringContent(Requests.Least, Encoding.UTF8, "application/json"));

        Assert.Equal(StatusCodes.Status499ClientClosedRequest, (int)answer.StatusCode);
    }

    [Fact]
    public void One_byte_of_a_solid_is_not_the_whole_of_it()
    {
        var design = DesignService.Evaluate(DesignService.Read(Code).Design!, Code);
        var file = (IBlockwiseDesignFile)DesignFiles.Find("solid.stl")!;
        var drawing = DesignFileQuery.Default(design.Resolved.Request, Code);
        using var whole = new MemoryStream();
        file.Write(design.Report, drawing, whole);
        var bytes = whole.ToArray();
        var places = (int[])[0, 79, 84, 85, 134, 12_345, bytes.Length / 2, bytes.Length - 51, bytes.Length - 1];

        using var opened = file.Open(design.Report, drawing);
        Assert.Equal(bytes.Length, opened.Length);
        foreach (var place in places)
        {
            opened.Position = place;
            Assert.Equal(bytes[place], opened.ReadByte());
        }

        // What is held is the mesh's corners, each of which comes in six facets.
        var before = GC.GetAllocatedBytesForCurrentThread();
        using var one = file.Open(design.Report, drawing);
        one.Position = bytes.Length / 2;
        one.ReadExactly(new byte[1]);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 1, bytes.Length * 3 / 4);
    }

    private sealed class Leaving(CancellationToken? leaves = null) : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
        {
            app.Use((context, rest) =>
            {
                context.RequestAborted = leaves ?? Gone;
                return rest(context);
            });
            next(app);
        };
    }

    private sealed class LeavesWhenChecked(CancellationTokenSource leaves) : AbstractValidator<DesignRequest>
    {
        public override ValidationResult Validate(ValidationContext<DesignRequest> context)
        {
            leaves.Cancel();
            return new();
        }
    }

    private sealed class EndlessBody : Stream
    {
        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => 0; set => throw new NotSupportedException(); }

        public override async ValueTask<int> ReadAsync(Memory<byte> buffer, CancellationToken cancellationToken = default)
        {
            await Task.Delay(100, cancellationToken);
            buffer.Span[0] = (byte)' ';
            return 1;
        }

        public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
