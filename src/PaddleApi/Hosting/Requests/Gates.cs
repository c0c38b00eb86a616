using PaddleApi.Hosting.Describing;
using PaddleApi.Hosting.Problems;
using PaddleApi.Hosting.Work;

namespace PaddleApi.Hosting.Requests;

/// <summary>Puts the gates before the work, and marks the endpoints that have one.</summary>
internal static class Gates
{
    /// <summary>
    /// Makes an endpoint wait for a place before it solves. Add it after <c>Validate</c>: the place is taken only once the body has been
    /// read and checked, so that a wrong caller holds none.
    /// </summary>
    public static RouteHandlerBuilder Solves(this RouteHandlerBuilder endpoint) =>
        endpoint.AddEndpointFilter<RouteHandlerBuilder, SolvingFilter>().Refuses(ProblemKinds.Busy);

    /// <summary>
    /// Makes an endpoint wait for room before its body is taken in, and for a place before it is read as JSON, because that is heavy work too.
    /// </summary>
    public static RouteHandlerBuilder HasHeavyBody(this RouteHandlerBuilder endpoint) =>
        endpoint.WithMetadata(HeavyBodyMark.Instance).Refuses(ProblemKinds.Busy);

    /// <summary>Places the gate of room for heavy bodies in the pipeline, before <c>UseWholeBodies</c>: what waits for room is not here yet.</summary>
    public static IApplicationBuilder UseRoomForBodies(this IApplicationBuilder app) => app.UseGateOfBodies<BodyGate>();

    /// <summary>Places the gate of work on heavy bodies in the pipeline, behind <c>UseWholeBodies</c>: a slow caller holds no place.</summary>
    public static IApplicationBuilder UseWorkOnBodies(this IApplicationBuilder app) => app.UseGateOfBodies<FileGate>();

    private static IApplicationBuilder UseGateOfBodies<TGate>(this IApplicationBuilder app)
        where TGate : WorkGate
    {
        var gate = app.ApplicationServices.GetRequiredService<TGate>();
        return app.Use(async (context, next) =>
        {
            if (context.GetEndpoint()?.Metadata.GetMetadata<HeavyBodyMark>() is null)
            {
                await next(context);
                return;
            }

            using var place = await gate.EnterAsync(context.RequestAborted);
            if (place.IsTaken) await next(context);
            else await Busy(place).ExecuteAsync(context);
        });
    }

    /// <summary>What a refused caller is told.</summary>
    internal static ProblemResult Busy(WorkPlace place) => new(ProblemKinds.Busy, ProblemKinds.Busy.Meaning, RetryAfterSeconds: place.RetryAfterSeconds);

    private sealed class SolvingFilter(SolveGate gate) : IEndpointFilter
    {
        public async ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
        {
            using var place = await gate.EnterAsync(context.HttpContext.RequestAborted);
            return place.IsTaken ? await next(context) : Busy(place);
        }
    }
}

/// <summary>Mark on endpoints whose bodies are heavy work to read.</summary>
internal sealed class HeavyBodyMark
{
    /// <summary>The mark.</summary>
    public static HeavyBodyMark Instance { get; } = new();
}
