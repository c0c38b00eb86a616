namespace Paddle.Design;

/// <summary>A closed range of values.</summary>
/// <param name="Min">Smallest value.</param>
/// <param name="Max">Largest value.</param>
public sealed record ValueRange(double Min, double Max);
