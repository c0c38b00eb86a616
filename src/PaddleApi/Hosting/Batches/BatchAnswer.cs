using System.Buffers;
using System.IO.Pipelines;
using System.Text.Json;
using System.Threading.Channels;
using FluentValidation;
using Microsoft.Extensions.Options;
using PaddleApi.Hosting.Json;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Requests;
using PaddleApi.Hosting.Work;

namespace PaddleApi.Hosting.Batches;

/// <summary>
/// A request a line in, an answer a line out, in order and as they come. Lines are answered at the places where designs are solved, each waiting
/// its turn among all callers; a few more are read ahead, and no more: who does not read is not read from.
/// </summary>
/// <param name="member">What an answer is called in its line.</param>
/// <param name="answer">Answers a request that its validator has passed.</param>
/// <param name="fields">The members of an answer that the caller wants; null for all.</param>
internal sealed partial class BatchAnswer<TRequest, TAnswer>(string member, Func<TRequest, CancellationToken, TAnswer> answer, FieldSelection? fields) : IResult
    where TRequest : class
{
    // Enough that every place has work while a slow line holds up the writing.
    private const int ReadAheadPerPlace = 8;

    /// <inheritdoc/>
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        var services = httpContext.RequestServices;
        using var place = await services.GetRequiredService<BatchGate>().EnterAsync(httpContext.RequestAborted);
        if (!place.IsTaken)
        {
            await Gates.Busy(place).ExecuteAsync(httpContext);
            return;
        }

        httpContext.Response.ContentType = BatchMedia.Ndjson;
        using var ended = CancellationTokenSource.CreateLinkedTokenSource(httpContext.RequestAborted);
        var means = new Means(
            services.GetRequiredService<SolveGate>(), services.GetRequiredService<IValidator<TRequest>>(), services.GetRequiredService<IOptions<ServiceLimits>>().Value,
            services.GetRequiredService<ILogger<BatchAnswer<TRequest, TAnswer>>>(), httpContext.Request.Path.ToUriComponent(), httpContext.TraceIdentifier);
        var ahead = Channel.CreateBounded<Task<ReadOnlyMemory<byte>>>(ReadAheadPerPlace * means.Gate.Places);
        var reading = ReadAsync(httpContext.Request.BodyReader, means, ahead.Writer, ended.Token);
        try
        {
            await WriteAsync(httpContext.Response, ahead.Reader, ended.Token);
            await reading;
        }
        catch (Exception fault) when (ExceptionToProblem.IsForeseen(fault) && httpContext.Response.HasStarted)
        {
            // The caller left, or its body broke off: what is on the line already cannot be taken back, and half an answer must not look whole.
            HungUp.Note(httpContext);
            httpContext.Abort();
        }
        finally
        {
            await ended.CancelAsync();
            await reading.ContinueWith(static _ => { }, CancellationToken.None, TaskContinuationOptions.None, TaskScheduler.Default);
        }
    }

    // What the lines need: they are answered side by side, and a request's context is for one at a time.
    private sealed record Means(SolveGate Gate, IValidator<TRequest> Validator, ServiceLimits Limits, ILogger Log, string Path, string RequestId);

    private async Task ReadAsync(PipeReader body, Means means, ChannelWriter<Task<ReadOnlyMemory<byte>>> ahead, CancellationToken cancellation)
    {
        try
        {
            await foreach (var line in BodyLines.ReadAsync(body, means.Limits.MaxRequestBodyBytes, cancellation))
            {
                if (line.Number > means.Limits.MaxBatchLines)
                {
                    var over = new ProblemResult(ProblemKinds.TooLarge, $"A batch has up to {means.Limits.MaxBatchLines} lines; from this one on nothing was read.");
                    await ahead.WriteAsync(Task.FromResult(Write(means, line.Number, over)), cancellation);
                    break;
                }

                await ahead.WriteAsync(Task.Run(() => AnswerAsync(means, line, cancellation), cancellation), cancellation);
            }

            ahead.Complete();
        }
        catch (Exception fault)
        {
            ahead.Complete(fault);
            throw;
        }
    }

    private static async Task WriteAsync(HttpResponse response, ChannelReader<Task<ReadOnlyMemory<byte>>> ahead, CancellationToken cancellation)
    {
        await foreach (var made in ahead.ReadAllAsync(cancellation))
        {
            // What is ready leaves before anything is waited for.
            if (!made.IsCompleted) await response.BodyWriter.FlushAsync(cancellation);
            await response.BodyWriter.WriteAsync(await made, cancellation);
        }

        // An answer without a line is an answer too.
        await response.StartAsync(cancellation);
    }

    private async Task<ReadOnlyMemory<byte>> AnswerAsync(Means means, BodyLine line, CancellationToken cancellation)
    {
        using var place = await PlaceAsync(means.Gate, cancellation);
        return line.Text is null
            ? Write(means, line.Number, new ProblemResult(ProblemKinds.TooLarge, $"The line is longer than {means.Limits.MaxRequestBodyBytes} bytes, which is more than a request needs."))
            : Answer(means, line.Number, line.Text, cancellation);
    }

    // A page that is told to come back does so; a batch waits instead, for it has been let in.
    private static async Task<WorkPlace> PlaceAsync(SolveGate gate, CancellationToken cancellation)
    {
        while (true)
        {
            var place = await gate.EnterAsync(cancellation);
            if (place.IsTaken) return place;
            await Task.Delay(TimeSpan.FromSeconds(place.RetryAfterSeconds), cancellation);
        }
    }

    private ReadOnlyMemory<byte> Answer(Means means, int number, byte[] text, CancellationToken cancellation)
    {
        try
        {
            var request = JsonSerializer.Deserialize<TRequest>(text, StrictJson.Options);
            if (request is null) return Write(means, number, ExceptionToProblem.OfBody(text, typeof(TRequest)));
            var outcome = means.Validator.Validate(request);
            if (!outcome.IsValid) return Write(means, number, Validated.Refusal(outcome.Errors));
            var json = JsonSerializer.SerializeToUtf8Bytes(answer(request, cancellation), StrictJson.Options);
            return Write(number, StatusCodes.Status200OK, member, fields?.Shorten(json) ?? json);
        }
        catch (JsonException)
        {
            return Write(means, number, ExceptionToProblem.OfBody(text, typeof(TRequest)));
        }
        catch (Exception fault) when (!ExceptionToProblem.IsForeseen(fault))
        {
            LogFault(means.Log, number, fault);
            return Write(means, number, new ProblemResult(ProblemKinds.Internal, "The service met a fault of its own. Report the request id and the line if it happens again."));
        }
    }

    private static ReadOnlyMemory<byte> Write(Means means, int number, ProblemResult problem) => Write(
        number, problem.StatusCode!.Value, "problem", JsonSerializer.SerializeToUtf8Bytes(problem.ToProblem(means.Path, means.RequestId), StrictJson.Options));

    private static ReadOnlyMemory<byte> Write(int number, int status, string name, byte[] json)
    {
        var made = new ArrayBufferWriter<byte>(json.Length + 64);
        using (var writer = new Utf8JsonWriter(made, new() { SkipValidation = true }))
        {
            writer.WriteStartObject();
            writer.WriteNumber("line", number);
            writer.WriteNumber("status", status);
            writer.WritePropertyName(name);
            writer.WriteRawValue(json, skipInputValidation: true);
            writer.WriteEndObject();
        }

        made.Write("\n"u8);
        return made.WrittenMemory;
    }

    [LoggerMessage(LogLevel.Error, "A line of a batch met a fault: {Line}")]
    private static partial void LogFault(ILogger logger, int line, Exception fault);
}

/// <summary>The media type of batches.</summary>
internal static class BatchMedia
{
    /// <summary>JSON values with a line feed after each, as the newline-delimited JSON specification has it.</summary>
    public const string Ndjson = "application/x-ndjson";
}
