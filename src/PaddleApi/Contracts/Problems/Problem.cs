namespace PaddleApi.Contracts.Problems;

/// <summary>What went wrong, in the form of RFC 9457.</summary>
/// <param name="Type">Address of the page that explains this kind of problem; the same for the same kind, so a program can go by it.</param>
/// <param name="Title">The kind of problem in a few words; the same for the same kind.</param>
/// <param name="Status">The HTTP status, repeated here.</param>
/// <param name="Detail">What went wrong this time and what to do about it.</param>
/// <param name="Instance">Path of the request that went wrong.</param>
/// <param name="RequestId">Identifier of the request, as in the header X-Request-Id: name it when you ask for help.</param>
/// <param name="Errors">
/// Each fault in the request, up to 32: in the body under the JSON Pointer (RFC 6901) of its place, in the query under <c>?</c> and the
/// parameter's name.
/// </param>
internal sealed record Problem(
    string Type,
    string Title,
    int Status,
    string Detail,
    string Instance,
    string RequestId,
    IReadOnlyDictionary<string, IReadOnlyList<Fault>>? Errors = null)
{
    /// <summary>Most faults that are listed: enough to mend a request by, and a hostile body is not answered with a book.</summary>
    public const int MostFaults = 32;
}
