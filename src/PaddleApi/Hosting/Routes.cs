namespace PaddleApi.Hosting;

/// <summary>Ways to map endpoints.</summary>
internal static class Routes
{
    private static readonly string[] Reading = [HttpMethods.Get, HttpMethods.Head];

    /// <summary>Maps an address that is read: GET, and HEAD with the same headers and no body (RFC 9110, 9.1 asks for both).</summary>
    public static RouteHandlerBuilder MapRead(this IEndpointRouteBuilder routes, [System.Diagnostics.CodeAnalysis.StringSyntax("Route")] string pattern, Delegate handler) =>
        routes.MapMethods(pattern, Reading, handler);
}
