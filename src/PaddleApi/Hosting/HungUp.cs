namespace PaddleApi.Hosting;

/// <summary>Mark on a request whose caller went away before it was answered in full: nobody's error, and no success either.</summary>
internal sealed class HungUp
{
    /// <summary>The status by which a log tells such a request; it is sent to nobody. Common practice of proxies, not of RFC 9110.</summary>
    public const int Status = StatusCodes.Status499ClientClosedRequest;

    private static readonly HungUp Mark = new();

    /// <summary>Marks a request.</summary>
    public static void Note(HttpContext context) => context.Features.Set(Mark);

    /// <summary>Whether a request has been marked.</summary>
    public static bool Is(HttpContext context) => context.Features.Get<HungUp>() is not null;

    /// <summary>Marks the requests that end because the caller went away, also in the midst of an answer.</summary>
    public static async Task NoteAsync(HttpContext context, RequestDelegate next)
    {
        try
        {
            await next(context);
        }
        catch (Exception fault) when (fault is OperationCanceledException or IOException && context.RequestAborted.IsCancellationRequested)
        {
            Note(context);
            throw;
        }
    }
}
