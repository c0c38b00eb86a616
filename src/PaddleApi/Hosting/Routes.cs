namespace PaddleApi.Hosting;

/// <summary>Ways to map endpoints.</summary>
internal static class Routes
{
    /// <summary>
    /// Methods of an address that is read: GET, and HEAD with the same headers and no body (RFC 9110, 9.1 asks for both). For the platform's own
    /// <c>MapMethods</c>, called where the handler stands: the compiler writes the code that reads its parameters only for what it can see, and
    /// without that every start would.
    /// </summary>
    public static readonly string[] Reading = [HttpMethods.Get, HttpMethods.Head];
}
