namespace PaddleApi.Contracts.Problems;

/// <summary>All kinds of problem.</summary>
/// <param name="Kinds">The kinds, in order of their HTTP status.</param>
internal sealed record ProblemKindList(IReadOnlyList<ProblemKind> Kinds);
