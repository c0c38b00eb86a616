namespace Paddle.Design.Uncertainty;

/// <summary>How one figure of the report spreads from paddle to paddle.</summary>
/// <param name="Pointer">JSON Pointer of the figure in the answer of <c>/v1/designs</c>.</param>
/// <param name="Unit">Its unit; empty for a factor.</param>
/// <param name="Designed">The figure of the design; a safety factor there stands on the strength that 19 sticks in 20 exceed.</param>
/// <param name="Mean">Mean.</param>
/// <param name="StandardDeviation">Standard deviation.</param>
/// <param name="P05">One paddle in twenty lies below.</param>
/// <param name="P50">Half lie below.</param>
/// <param name="P95">One in twenty lies above.</param>
internal sealed record UncertainFigure(
    string Pointer,
    string Unit,
    double Designed,
    double Mean,
    double StandardDeviation,
    double P05,
    double P50,
    double P95);

/// <summary>How often a check fails.</summary>
/// <param name="Id">Name of the check.</param>
/// <param name="FailChance">Chance that the figure lies outside the check's limit, 0 to 1.</param>
/// <param name="FailChanceStandardError">Standard error of that chance.</param>
/// <param name="BreakChance">Of a strength: chance that the wood gives way under the load itself; absent of any other check.</param>
/// <param name="BreakChanceStandardError">Standard error of that chance.</param>
internal sealed record UncertainCheck(
    string Id,
    double FailChance,
    double FailChanceStandardError,
    double? BreakChance,
    double? BreakChanceStandardError);

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

/// <summary>How a design comes out over many paddles made to it.</summary>
/// <param name="Samples">How many paddles were made.</param>
/// <param name="Seed">The seed.</param>
/// <param name="PlaningErrorMm">Standard deviation of each size about its plan, mm.</param>
/// <param name="BreakChance">Chance that the wood gives way under at least one of the load cases, should the paddle meet them all.</param>
/// <param name="BreakChanceStandardError">Standard error of that chance.</param>
/// <param name="Figures">Figures of the report and how they spread.</param>
/// <param name="Checks">Every check of the report that has a limit.</param>
internal record UncertaintyReport(
    int Samples, int Seed, double PlaningErrorMm, double BreakChance, double BreakChanceStandardError, IReadOnlyList<UncertainFigure> Figures, IReadOnlyList<UncertainCheck> Checks)
{
    private static readonly IReadOnlyList<SourcedText> Held =
    [
        new("Of a strength, failChance is the chance that this stick, were it tested, falls short of the factor asked: a drawn strength stands in the "
            + "place of the one that 19 sticks in 20 exceed, so that a design that only just reaches its factor reads 0.05 and is sound. breakChance is "
            + "the chance that the wood gives way under the load itself, its factor below 1, should that load ever come.", "definition"),
        new("From stick to stick of a species bending strength varies by 16 %, strength across the grain by 25 %, specific gravity by 10 %, all normal; the "
            + "modulus by 22 %, log-normal. Sticks that a maker throws out are not taken out, so that chances are high rather than low.",
            "USDA Wood Handbook table 5-6, quoted in a public small-craft material survey; 25 % and the log-normal modulus from memory"),
        new("Heavy sticks are strong and stiff ones: each property follows density by the power that it follows from species to species, and what is left "
            + "of its scatter is its own. Bending strength and modulus correlate by 0.8 in all.",
            "USDA Wood Handbook FPL-GTR-190 table 5-11a; JCSS Probabilistic Model Code, part 3.5: both from memory"),
        new("A measured density or modulus is that of the board and does not scatter; strength does, whatever was measured.", "the service's own rule"),
        new("Each of the nine sizes is off its plan by itself, normally, by planingErrorMm. The outline is sawn to the template and is not.", "common practice, no source"),
        new("Moisture, slope of grain, forces and the paddler are as stated: they are not drawn.", "the service's own limit"),
        new("A chance of 0 means that none of the samples did; its standard error says what may still be.", "Beta distribution after an even prior (Laplace)"),
    ];

    /// <summary>What the chances rest on, with sources.</summary>
    public IReadOnlyList<SourcedText> Assumptions { get; init; } = Held;
}
