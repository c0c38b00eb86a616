using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Net.Http.Headers;
using Paddle.Design;
using Paddle.Drawings;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Problems;

namespace PaddleApi.Endpoints.Designs.Files;

/// <summary>Answers with a file of a design: whole, or the range of it that was asked for.</summary>
/// <param name="File">The file.</param>
/// <param name="Report">The design.</param>
/// <param name="Context">What the drawing needs to know beside the design.</param>
public sealed record DesignFileResult(IDesignFile File, DesignReport Report, DrawingContext Context) : IResult
{
    /// <inheritdoc/>
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        ArgumentNullException.ThrowIfNull(httpContext);
        var headers = httpContext.Response.Headers;
        headers.ContentDisposition = DownloadNames.Disposition(File, Context.Label);
        if (headers.ETag.Count > 0) headers.AcceptRanges = "bytes";

        // A part cannot be cut out of what has not been made: who asks for one has the whole made first.
        if (File is IBlockwiseDesignFile blockwise && !WantsRange(httpContext.Request)) await StreamAsync(blockwise, httpContext);
        else await SendAsync(httpContext);

        // A HEAD ends without a byte, but its headers must be settled as if one had been written: packing adds to them.
        if (HttpMethods.IsHead(httpContext.Request.Method)) await httpContext.Response.StartAsync(httpContext.RequestAborted);
    }

    // Each block waits until the caller has taken the one before: no thread is held by a slow caller, and no more than a block of memory.
    private async Task StreamAsync(IBlockwiseDesignFile blockwise, HttpContext context)
    {
        context.Response.ContentType = ContentType;
        if (HttpMethods.IsHead(context.Request.Method)) return;
        foreach (var block in blockwise.Blocks(Report, Context))
        {
            await context.Response.Body.WriteAsync(block, context.RequestAborted);
        }
    }

    private async Task SendAsync(HttpContext context)
    {
        using var made = new MemoryStream();
        File.Write(Report, Context, made);
        await Whole(made.GetBuffer().AsMemory(0, (int)made.Length), context).ExecuteAsync(context);
        var response = context.Response;
        if (response.StatusCode != StatusCodes.Status416RangeNotSatisfiable || response.HasStarted) return;
        var size = response.Headers.ContentRange;
        response.Clear();
        response.Headers.ContentRange = size;
        await new ProblemResult(
            ProblemKinds.RangeNotSatisfiable, $"The file has {made.Length} bytes; the asked range begins after them.").ExecuteAsync(context);
    }

    // The tag lets the platform honour If-Range. If-Match guards against lost writes and means nothing to who only reads; it is left alone.
    private FileContentHttpResult Whole(ReadOnlyMemory<byte> bytes, HttpContext context)
    {
        var tag = context.Response.Headers.ETag.ToString();
        return tag.Length > 0 && context.Request.Headers.IfMatch.Count == 0
            ? TypedResults.Bytes(bytes, ContentType, enableRangeProcessing: true, entityTag: EntityTagHeaderValue.Parse(tag))
            : TypedResults.Bytes(bytes, ContentType);
    }

    private string ContentType => IsUtf8 ? $"{File.MediaType}; charset=utf-8" : File.MediaType;

    private bool IsUtf8 => File.MediaType == MediaTypes.Svg || File.MediaType.StartsWith("text/", StringComparison.Ordinal);

    private static bool WantsRange(HttpRequest request) => request.Headers.Range.Count > 0 && HttpMethods.IsGet(request.Method);
}
