namespace Paddle.Design.Uncertainty;

/// <summary>How one figure of the report spreads from paddle to paddle.</summary>
/// <param name="Pointer">JSON Pointer of the figure in a design's report.</param>
/// <param name="Unit">Unit; empty for a factor.</param>
/// <param name="Designed">The figure as designed; a safety factor there stands on the strength that 19 sticks in 20 exceed.</param>
/// <param name="P05">One paddle in twenty lies below.</param>
/// <param name="P50">Half lie below.</param>
/// <param name="P95">One in twenty lies above.</param>
internal sealed record FigureSpread(
    string Pointer, string Unit, double Designed, double Mean, double StandardDeviation, double P05, double P50, double P95);

/// <summary>A chance found by counting.</summary>
internal readonly record struct Chance(double Value, double StandardError)
{
    /// <summary>Share of the samples, and the deviation of what the true chance may be after that count.</summary>
    internal static Chance Of(int count, int samples)
    {
        // Even prior (Laplace): Beta(k + 1, n - k + 1). None in ten thousand is not never. Theory U5.
        double a = count + 1, b = samples - count + 1, n = a + b;
        return new((double)count / samples, Math.Sqrt(a * b / (n * n * (n + 1)))); // theory U5
    }
}

/// <summary>How often a check fails.</summary>
/// <param name="Fail">Chance that the figure lies outside the check's limit.</param>
/// <param name="Break">Of a strength: chance that the drawn wood gives way under the load itself, its factor below 1; null of any other check.</param>
internal sealed record CheckChance(string Id, Chance Fail, Chance? Break);

/// <summary>How a design comes out over many paddles made to it.</summary>
/// <param name="AnyBreak">Chance that the wood gives way under at least one of the load cases.</param>
internal sealed record UncertaintyReport(IReadOnlyList<FigureSpread> Figures, IReadOnlyList<CheckChance> Checks, Chance AnyBreak);
