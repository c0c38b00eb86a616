using System.Buffers;
using System.Text.Json;
using Microsoft.Extensions.ObjectPool;
using PaddleApi.Hosting.Json;
using PaddleApi.Hosting.Telemetry;

namespace PaddleApi.Hosting.Requests;

/// <summary>
/// An answer of 200 with JSON that is written whole before the first byte leaves: its length is known, and one large answer costs one
/// write instead of many small waits.
/// </summary>
/// <param name="fields">The members that the caller wants; null for all.</param>
internal sealed class WholeJson<T>(T value, FieldSelection? fields = null) : IResult
{
    /// <inheritdoc/>
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        var buffer = AnswerBuffers.Pool.Get();
        var bytes = Write(buffer);
        var response = httpContext.Response;
        response.StatusCode = StatusCodes.Status200OK;
        response.ContentType = "application/json; charset=utf-8";
        response.ContentLength = bytes.Length;
        await response.Body.WriteAsync(bytes, httpContext.RequestAborted);
        AnswerBuffers.Pool.Return(buffer); // not of a write that failed: it may still be read
    }

    private ReadOnlyMemory<byte> Write(ArrayBufferWriter<byte> buffer)
    {
        using var step = ServiceTraces.Begin("report");
        using (var writer = new Utf8JsonWriter(buffer, AnswerBuffers.Writing)) JsonSerializer.Serialize(writer, value, StrictJson.Options);
        return fields is null ? buffer.WrittenMemory : fields.Shorten(buffer.WrittenSpan);
    }
}

/// <summary>Room to write answers in, used again by the next: a report is 50 KB, most of what a design would otherwise leave to be collected.</summary>
internal static class AnswerBuffers
{
    private const int UsualBytes = 64 * 1024;

    /// <summary>The room.</summary>
    public static ObjectPool<ArrayBufferWriter<byte>> Pool { get; } = new DefaultObjectPool<ArrayBufferWriter<byte>>(new Policy());

    /// <summary>How answers are written.</summary>
    public static JsonWriterOptions Writing { get; } = new() { Encoder = StrictJson.Options.Encoder, MaxDepth = StrictJson.Options.MaxDepth, SkipValidation = true };

    private sealed class Policy : PooledObjectPolicy<ArrayBufferWriter<byte>>
    {
        public override ArrayBufferWriter<byte> Create() => new(UsualBytes);

        // A large answer's room is not held for the small ones after it.
        public override bool Return(ArrayBufferWriter<byte> buffer)
        {
            buffer.ResetWrittenCount();
            return buffer.Capacity == UsualBytes;
        }
    }
}
