namespace PaddleApi.Contracts;

/// <summary>A sentence for the maker under a name that does not change with its wording.</summary>
/// <param name="Code">Its name: lower-case words joined by hyphens.</param>
/// <param name="Text">The sentence.</param>
internal sealed record CodedText(string Code, string Text);
