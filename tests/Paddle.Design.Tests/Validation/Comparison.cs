namespace Paddle.Design.Tests.Validation;

/// <summary>One figure of the service held against something outside the project.</summary>
/// <param name="Topic">Heading under which it is printed.</param>
/// <param name="What">What is compared.</param>
/// <param name="Source">Where the outside figure comes from.</param>
/// <param name="Outside">The outside figure.</param>
/// <param name="Ours">The service's figure.</param>
/// <param name="Unit">Unit of both.</param>
/// <param name="TolerancePercent">How far apart they may lie, per cent of the outside figure.</param>
public sealed record Comparison(
    string Topic, string What, string Source, double Outside, double Ours, string Unit, double TolerancePercent)
{
    public double DifferencePercent => 100 * (Ours / Outside - 1);
}
