namespace Paddle.Design;

/// <summary>A sentence for the maker with the place it comes from.</summary>
/// <param name="Text">The sentence.</param>
/// <param name="Source">Where it was read, or that it is common practice or from memory.</param>
internal sealed record SourcedText(string Text, string Source);
