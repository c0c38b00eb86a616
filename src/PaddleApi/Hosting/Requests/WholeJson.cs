using System.Text.Json;
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
        var bytes = Write();
        var response = httpContext.Response;
        response.StatusCode = StatusCodes.Status200OK;
        response.ContentType = "application/json; charset=utf-8";
        response.ContentLength = bytes.Length;
        await response.Body.WriteAsync(bytes, httpContext.RequestAborted);
    }

    private byte[] Write()
    {
        using var step = ServiceTraces.Begin("report");
        var bytes = JsonSerializer.SerializeToUtf8Bytes(value, StrictJson.Options);
        return fields is null ? bytes : fields.Shorten(bytes);
    }
}
