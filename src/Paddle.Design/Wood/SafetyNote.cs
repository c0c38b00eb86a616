namespace Paddle.Design.Wood;

/// <summary>A caution for the maker, with the place it comes from.</summary>
/// <param name="Text">The caution in plain words.</param>
/// <param name="Source">Where it was read, or <c>common practice, no source</c>, or <c>from memory</c>.</param>
internal sealed record SafetyNote(string Text, string Source);
