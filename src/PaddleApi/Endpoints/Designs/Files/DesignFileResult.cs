using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Http.Timeouts;
using Microsoft.Net.Http.Headers;
using Paddle.Design;
using Paddle.Drawings;
using PaddleApi.Hosting;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Telemetry;
using PaddleApi.Hosting.Work;

namespace PaddleApi.Endpoints.Designs.Files;

/// <summary>Answers with a file of a design that has been made: whole, or the range of it that was asked for.</summary>
internal sealed class DesignFileResult(IDesignFile file, string label, Stream content) : IResult
{
    /// <summary>Makes the file; a large one is only begun, and made as it is sent.</summary>
    /// <param name="drawing">What the drawing needs to know beside the design.</param>
    public static DesignFileResult Make(IDesignFile file, DesignReport report, DrawingContext drawing, CancellationToken cancellation)
    {
        using var step = ServiceTraces.Begin("draw")?.SetTag("file", file.FileName);
        if (file is IBlockwiseDesignFile blockwise)
        {
            cancellation.ThrowIfCancellationRequested();
            return new(file, drawing.Label, new InTurns(blockwise.Open(report, drawing)));
        }

        var made = new MemoryStream();
        file.Write(report, drawing, made, cancellation);
        made.Position = 0;
        return new(file, drawing.Label, made);
    }

    /// <inheritdoc/>
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        var (response, length) = (httpContext.Response, content.Length);
        response.Headers.ContentDisposition = DownloadNames.Disposition(file, label);
        if (response.Headers.ETag.Count > 0) response.Headers.AcceptRanges = "bytes";

        // The work is done. How long the caller takes to fetch it is the line's affair, and the server minds that it is not for ever.
        httpContext.Features.Get<IHttpRequestTimeoutFeature>()?.DisableTimeout();
        await Whole(httpContext).ExecuteAsync(httpContext);

        // The platform says nothing of a caller who left while it was sending, and its token comes late on a busy machine: the rest of a file has
        // then gone to nobody before, which the line tells by itself.
        if (httpContext.RequestAborted.IsCancellationRequested || (response.HasStarted && (await response.BodyWriter.FlushAsync()).IsCompleted)) HungUp.Note(httpContext);
        if (response.StatusCode == StatusCodes.Status416RangeNotSatisfiable && !response.HasStarted) await RefuseRangeAsync(httpContext, length);

        // A HEAD ends without a byte, but its headers must be settled as if one had been written: packing adds to them.
        if (HttpMethods.IsHead(httpContext.Request.Method)) await response.StartAsync(httpContext.RequestAborted);
    }

    private static async Task RefuseRangeAsync(HttpContext context, long length)
    {
        var size = context.Response.Headers.ContentRange;
        context.Response.Clear();
        context.Response.Headers.ContentRange = size;
        await new ProblemResult(
            ProblemKinds.RangeNotSatisfiable, $"The file has {length} bytes; the asked range begins after them.").ExecuteAsync(context);
    }

    // The tag lets the platform honour If-Range. If-Match guards against lost writes and means nothing to who only reads; it is left alone.
    private FileStreamHttpResult Whole(HttpContext context)
    {
        var tag = context.Response.Headers.ETag.ToString();
        return tag.Length > 0 && context.Request.Headers.IfMatch.Count == 0
            ? TypedResults.Stream(content, ContentType, enableRangeProcessing: true, entityTag: EntityTagHeaderValue.Parse(tag))
            : TypedResults.Stream(content, ContentType);
    }

    private string ContentType => IsUtf8 ? $"{file.MediaType}; charset=utf-8" : file.MediaType;

    private bool IsUtf8 => file.MediaType == MediaTypes.Svg || file.MediaType.StartsWith("text/", StringComparison.Ordinal);
}
