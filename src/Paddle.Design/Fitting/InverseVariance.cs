using MathNet.Numerics.LinearAlgebra;

namespace Paddle.Design.Fitting;

/// <summary>The best linear combination of several estimates of one quantity.</summary>
/// <param name="Value">Combined value, unit of the estimates.</param>
/// <param name="StandardError">Standard error of the combined value, same unit.</param>
/// <param name="Weights">Weight given to each estimate, in the order given; they add up to 1 and none is negative.</param>
internal sealed record CombinedEstimate(double Value, double StandardError, IReadOnlyList<double> Weights);

/// <summary>Inverse-variance weighting. Independent estimates get weights 1/σ²; estimates whose errors go together are weighted by the
/// inverse of their covariance matrix, or the shared error would be counted as if it cancelled.</summary>
internal static class InverseVariance
{
    /// <summary>Combine independent estimates: x̂ = Σ(x/σ²)/Σ(1/σ²), σ̂ = 1/√Σ(1/σ²).</summary>
    /// <param name="values">x, estimates.</param>
    /// <param name="standardErrors">σ, standard error of each, above 0, same unit.</param>
    /// <remarks>Source: textbook result (minimum-variance unbiased linear combination).</remarks>
    /// <exception cref="ArgumentException">No estimate, lists of different length, or a standard error not above 0.</exception>
    public static CombinedEstimate Combine(IReadOnlyList<double> values, IReadOnlyList<double> standardErrors)
    {
        RequireSameLength(values.Count, standardErrors.Count);
        if (standardErrors.Any(s => !(s > 0))) throw new ArgumentException("Every standard error must be above 0.", nameof(standardErrors));

        var weights = standardErrors.Select(s => 1 / (s * s)).ToArray(); // theory F4
        var sum = weights.Sum();
        var value = values.Zip(weights, (x, w) => x * w).Sum() / sum;
        return new CombinedEstimate(value, 1 / Math.Sqrt(sum), [.. weights.Select(w => w / sum)]);
    }

    /// <summary>Combine estimates whose errors are correlated: w = C⁻¹1 / (1ᵀC⁻¹1), σ̂² = wᵀC w. An estimate whose weight would be negative
    /// is left out (weight 0): a fitting should not move away from a measurement because it was taken.</summary>
    /// <param name="values">x, estimates.</param>
    /// <param name="covariance">C, covariance matrix of the estimates' errors, unit squared, positive definite.</param>
    /// <remarks>Source: textbook result (generalised least squares of a constant).</remarks>
    /// <exception cref="ArgumentException">No estimate, or a matrix of another size.</exception>
    public static CombinedEstimate CombineCorrelated(IReadOnlyList<double> values, Matrix<double> covariance)
    {
        RequireSameLength(values.Count, covariance.RowCount);
        RequireSameLength(values.Count, covariance.ColumnCount);

        var kept = Enumerable.Range(0, values.Count).ToList();
        while (true)
        {
            var inner = Matrix<double>.Build.Dense(kept.Count, kept.Count, (i, j) => covariance[kept[i], kept[j]]);
            var solved = inner.Solve(Vector<double>.Build.Dense(kept.Count, 1.0));
            var weights = solved / solved.Sum(); // theory F5
            var worst = weights.MinimumIndex();
            if (weights[worst] < 0)
            {
                kept.RemoveAt(worst);
                continue;
            }

            var all = new double[values.Count];
            for (var i = 0; i < kept.Count; i++) all[kept[i]] = weights[i];

            var value = all.Zip(values, (w, x) => w * x).Sum();
            return new CombinedEstimate(value, Math.Sqrt(weights * inner * weights), all);
        }
    }

    private static void RequireSameLength(int values, int others)
    {
        if (values == 0 || values != others)
            throw new ArgumentException("At least one estimate is needed, and as many errors as estimates.");
    }
}
