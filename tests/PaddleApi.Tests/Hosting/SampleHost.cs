using System.Collections.Concurrent;
using FluentValidation;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Paddle.Design;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Json;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;
using PaddleApi.Validation;

namespace PaddleApi.Tests.Hosting;

/// <summary>A body with one member of every kind that the contract uses.</summary>
public sealed record Sample(
    string Name,
    [property: Bound(70, 240, "mm", "Narrower does not pull, wider does not swing", Source = null)] double WidthMm,
    [property: Bound(1, 9, "1", "A run has one to nine", Source = null)] int Count = 1,
    bool Flag = false,
    SampleKind Kind = SampleKind.PlainOne,
    SamplePart? Part = null,
    IReadOnlyList<SamplePart>? Parts = null);

public sealed record SamplePart([property: Bound(0, 1000, "mm", "A station lies on the blade", Source = null)] double? XMm = null, SamplePart? Inner = null);

public enum SampleKind
{
    PlainOne,
    OtherOne,
}

internal sealed class SampleValidator : BoundedValidator<Sample>
{
    public SampleValidator()
    {
        RuleFor(sample => sample.Name).Must(name => name.Length < 90).Because("A name is short.");
        RuleForEach(sample => sample.Parts).SetValidator(new BoundedValidator<SamplePart>());
        RuleFor(sample => sample).Custom((sample, context) =>
        {
            if (sample is { Flag: true, Count: > 1 })
            {
                context.AddFault(nameof(Sample.Flag), new("Flag and count are at odds.", true));
            }
        });
    }
}

/// <summary>The service's own handling of bodies and failures, over an endpoint that only tests need.</summary>
public sealed class SampleHost : IAsyncDisposable
{
    private readonly WebApplication app;

    private SampleHost(WebApplication app, ErrorLog log) => (this.app, Errors) = (app, log.Written);

    /// <summary>What went into the log as an error.</summary>
    public IReadOnlyCollection<string> Errors { get; }

    public static async Task<SampleHost> StartAsync()
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions { EnvironmentName = "Production" });
        builder.WebHost.UseTestServer();
        builder.Services.AddStrictJson().AddProblems().AddTimeouts().AddSingleton<IValidator<Sample>, SampleValidator>();
        builder.Services.Configure<ServiceLimits>(_ => { });
        var log = new ErrorLog();
        builder.Logging.ClearProviders().AddProvider(log);
        builder.Services.Configure<Microsoft.AspNetCore.Http.Timeouts.RequestTimeoutOptions>(timeouts =>
            timeouts.AddPolicy("short", TimeSpan.FromMilliseconds(50)));
        var app = builder.Build();
        app.UseRequestIds();
        app.UseProblems();
        app.UseWholeBodies();
        app.UseRequestTimeouts();
        app.MapPost("/sample", (Sample sample) => TypedResults.Ok(sample)).Validate<Sample>();
        app.MapGet("/broken", IResult () => throw new InvalidOperationException("secret: the inside"));
        app.MapGet("/slow", async (CancellationToken cancellation) =>
        {
            await Task.Delay(TimeSpan.FromSeconds(30), cancellation);
            return "late";
        }).WithRequestTimeout("short");
        app.MapGet("/number", () => TypedResults.Ok(new SamplePart(double.NaN)));
        await app.StartAsync();
        return new SampleHost(app, log);
    }

    public HttpClient Client() => app.GetTestClient();

    public async ValueTask DisposeAsync() => await app.DisposeAsync();

    private sealed class ErrorLog : ILoggerProvider, ILogger
    {
        public ConcurrentQueue<string> Written { get; } = new();

        public ILogger CreateLogger(string categoryName) => this;

        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => logLevel >= LogLevel.Error;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
        {
            if (IsEnabled(logLevel))
            {
                Written.Enqueue($"{formatter(state, exception)} {exception?.Message}");
            }
        }

        public void Dispose()
        {
        }
    }
}
