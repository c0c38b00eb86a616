using Microsoft.AspNetCore.Http.Timeouts;
using Microsoft.Extensions.Options;

namespace PaddleApi.Hosting;

/// <summary>Gives up on a request that takes too long.</summary>
internal static class Timeouts
{
    /// <summary>
    /// Adds the time limit. It only cancels <c>HttpContext.RequestAborted</c>: work that may be long must take that token and look at it.
    /// </summary>
    public static IServiceCollection AddTimeouts(this IServiceCollection services)
    {
        services.AddRequestTimeouts();
        services.AddOptions<RequestTimeoutOptions>().Configure<IOptions<ServiceLimits>>((timeouts, limits) =>
            timeouts.DefaultPolicy = new RequestTimeoutPolicy
            {
                Timeout = TimeSpan.FromSeconds(limits.Value.RequestTimeoutSeconds),
                TimeoutStatusCode = StatusCodes.Status504GatewayTimeout,
            });
        return services;
    }
}
