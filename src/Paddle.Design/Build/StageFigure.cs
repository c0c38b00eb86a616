namespace Paddle.Design.Build;

/// <summary>A predicted figure with the band that nine paddles in ten fall in.</summary>
/// <param name="Value">Prediction for the design's wood.</param>
/// <param name="Low">5th percentile.</param>
/// <param name="High">95th percentile.</param>
internal sealed record StageFigure(double Value, double Low, double High)
{
    /// <summary>A band of a half-width on both sides.</summary>
    internal static StageFigure Around(double value, double half) => new(value, value - half, value + half);
}
