namespace PaddleApi.Contracts.Problems;

/// <summary>A kind of problem this service can answer with.</summary>
/// <param name="Type">Its address, as in the member <c>type</c> of a problem.</param>
/// <param name="Title">The kind in a few words.</param>
/// <param name="Status">The HTTP status it comes with.</param>
/// <param name="Meaning">What it means.</param>
/// <param name="Remedy">What to do about it.</param>
public sealed record ProblemKind(string Type, string Title, int Status, string Meaning, string Remedy);
