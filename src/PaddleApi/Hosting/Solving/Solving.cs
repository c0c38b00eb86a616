using PaddleApi.Hosting.OpenApi;
using PaddleApi.Hosting.Problems;

namespace PaddleApi.Hosting.Solving;

/// <summary>Marks the endpoints that solve a design, so that they share the places there are.</summary>
public static class Solving
{
    /// <summary>Adds the gate.</summary>
    /// <param name="services">The service collection.</param>
    /// <returns>The same collection.</returns>
    public static IServiceCollection AddSolveGate(this IServiceCollection services) => services.AddSingleton<SolveGate>();

    /// <summary>
    /// Makes an endpoint, or a group, wait for a place before it runs. Add it after <c>Validate</c>: the place is taken only once the body
    /// has been read and checked, so that a slow or a wrong caller holds none.
    /// </summary>
    /// <typeparam name="TBuilder">Kind of builder.</typeparam>
    /// <param name="builder">The endpoint or group.</param>
    /// <returns>The same builder.</returns>
    public static TBuilder Solves<TBuilder>(this TBuilder builder)
        where TBuilder : IEndpointConventionBuilder =>
        builder.AddEndpointFilter<TBuilder, SolvingFilter>().Refuses(ProblemKinds.Busy);

    private sealed class SolvingFilter(SolveGate gate) : IEndpointFilter
    {
        public async ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
        {
            using var place = await gate.EnterAsync(context.HttpContext.RequestAborted);
            return place.IsAcquired
                ? await next(context)
                : new ProblemResult(ProblemKinds.Busy, ProblemKinds.Busy.Meaning, RetryAfterSeconds: gate.RetryAfterSeconds);
        }
    }
}
