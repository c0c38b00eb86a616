namespace Paddle.Design.Wood;

/// <summary>One figure of a wood species with the place it was read.</summary>
/// <param name="Name">What the figure is, in the trade's words, with its moisture where it has one.</param>
/// <param name="Value">The figure, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit of the figure: MPa, N, %, or 1 for a plain ratio.</param>
/// <param name="Source">Where the figure was read; it says so when the figure is from memory or a default.</param>
internal sealed record SourcedFigure(string Name, double Value, string Unit, string Source);
