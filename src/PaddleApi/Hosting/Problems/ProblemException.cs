using PaddleApi.Contracts.Problems;

namespace PaddleApi.Hosting.Problems;

/// <summary>
/// A problem met where no result can be returned, such as while a parameter is read. Its words are for the caller: they must tell
/// nothing of the inside.
/// </summary>
internal sealed class ProblemException : Exception
{
    /// <summary>A problem with its public words.</summary>
    /// <param name="detail">What went wrong this time.</param>
    /// <param name="errors">Faults by JSON Pointer, if any.</param>
    public ProblemException(ProblemKind kind, string detail, IReadOnlyDictionary<string, IReadOnlyList<Fault>>? errors = null)
        : base(detail)
    {
        Kind = kind;
        Errors = errors;
    }

    /// <summary>The kind of problem.</summary>
    public ProblemKind Kind { get; }

    /// <summary>Faults by JSON Pointer, if any.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<Fault>>? Errors { get; }
}
