using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Work;

namespace PaddleApi.Hosting.Requests;

/// <summary>
/// An answer that is heavy to make: it is made at a place of the gate of files, and sent when the place is free again, so that a slow caller
/// holds none. Who holds the answer already never comes here.
/// </summary>
internal sealed class Gated(Func<IResult> make) : IResult
{
    /// <inheritdoc/>
    public async Task ExecuteAsync(HttpContext httpContext)
    {
        var result = await MakeAsync(httpContext);
        await result.ExecuteAsync(httpContext);
    }

    private async Task<IResult> MakeAsync(HttpContext context)
    {
        var gate = context.RequestServices.GetRequiredService<FileGate>();
        using var place = await gate.EnterAsync(context.RequestAborted);
        if (!place.IsTaken) return Refusal(context, place);
        context.RequestAborted.ThrowIfCancellationRequested();
        return make();
    }

    // The tag and the age were those of the answer.
    private static ProblemResult Refusal(HttpContext context, WorkPlace place)
    {
        context.Response.Headers.ETag = default;
        context.Response.Headers.CacheControl = default;
        return Gates.Busy(place);
    }
}
