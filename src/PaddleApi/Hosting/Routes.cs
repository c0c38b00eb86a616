namespace PaddleApi.Hosting;

/// <summary>Ways to map endpoints.</summary>
public static class Routes
{
    private static readonly string[] Reading = [HttpMethods.Get, HttpMethods.Head];

    /// <summary>Maps an address that is read: GET, and HEAD with the same headers and no body (RFC 9110, 9.1 asks for both).</summary>
    /// <param name="routes">Where to map it.</param>
    /// <param name="pattern">Its pattern.</param>
    /// <param name="handler">Its handler.</param>
    /// <returns>The endpoint.</returns>
    public static RouteHandlerBuilder MapRead(this IEndpointRouteBuilder routes, [System.Diagnostics.CodeAnalysis.StringSyntax("Route")] string pattern, Delegate handler) =>
        routes.MapMethods(pattern, Reading, handler);
}
