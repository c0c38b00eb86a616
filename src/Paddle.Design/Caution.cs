namespace Paddle.Design;

/// <summary>Something that can hurt, and how not to be hurt.</summary>
/// <param name="Id">Name of the caution.</param>
/// <param name="Text">The caution.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Caution(string Id, string Text, string Source);
