using MathNet.Numerics.LinearAlgebra;
using Paddle.Design.Units;

namespace Paddle.Design.Fitting;

/// <summary>One estimate of a person's hand spacing.</summary>
/// <param name="Id">Method: <c>bar-on-head</c>, <c>arm-span</c> or <c>stature</c>.</param>
/// <param name="ValueMm">S, middle of the grip hand to middle of the lower hand, mm.</param>
/// <param name="StandardErrorMm">Standard error against the person's own bar test, mm.</param>
/// <param name="Source">Where the method comes from.</param>
internal sealed record SpacingEstimate(string Id, double ValueMm, double StandardErrorMm, string Source);

/// <summary>Ways to know the hand spacing S: measured with a bar on the head, or estimated from arm span or stature. Shoulder breadth plus
/// two upper arms is no method: it comes out a fifth too long (1086 mm for the mean man against 892), because the shoulder joints lie
/// inside the acromia and move inward as the arms are raised.</summary>
internal static class HandSpacingMethods
{
    /// <summary>Line from stature, both sexes. Source: ANSUR II, derived (−72.8 + 0.5481 H, scatter 32 mm).</summary>
    public static readonly StatureLine FromStatureLine = new(-72.8, 0.5481, 32);

    /// <summary>Intercept of S = −14.1 + 0.4995 span, mm. Source: ANSUR II, derived.</summary>
    public const double SpanInterceptMm = -14.1;
    /// <summary>Slope of S on arm span. Source: ANSUR II, derived.</summary>
    public const double SpanSlope = 0.4995;
    /// <summary>Scatter of people about the arm-span line, mm. Source: ANSUR II, derived.</summary>
    public const double SpanScatterMm = 20;
    /// <summary>Repeat error of a careful bar test, mm (assumption, no source).</summary>
    public const double BarErrorMm = 10;
    /// <summary>Error of stature measured at home, mm (assumption, no source).</summary>
    public const double HomeStatureErrorMm = 10;
    /// <summary>Error of arm span measured at home, mm (assumption, no source).</summary>
    public const double HomeSpanErrorMm = 15;
    /// <summary>Number of standard errors beyond which a measurement and an estimate are reported as at odds.</summary>
    public const double WarningStandardErrors = 2.5;
    /// <summary>Number of standard errors beyond which two measurements cannot both be right.</summary>
    public const double RefusalStandardErrors = 5;

    /// <summary>Spread of people's own elbow angle in the bar test, mm: 3° at 12 mm a degree. An estimate from the survey cannot know it,
    /// so every estimate carries it in full.</summary>
    public const double JudgementErrorMm = ElbowAngle.JudgementDegrees * ElbowAngle.SpacingMmPerDegree;

    private static readonly double StatureVariance =
        Square(FromStatureLine.StandardErrorMm) + Square(FromStatureLine.Slope * HomeStatureErrorMm);

    private static readonly double SpanVariance = Square(SpanScatterMm) + Square(SpanSlope * HomeSpanErrorMm);

    /// <summary>The person's own bar test.</summary>
    /// <param name="handSpacingMm">S as measured, mm.</param>
    public static SpacingEstimate FromBar(double handSpacingMm) =>
        new("bar-on-head", handSpacingMm, BarErrorMm, "measured by the paddler; method: common practice, no source; repeat error assumed");

    /// <summary>S = −72.8 + 0.5481 H.</summary>
    /// <param name="statureMm">H, stature, mm.</param>
    /// <returns>The estimate; its error joins body shape (32 mm), tape error and elbow judgement, about 49 mm, and beyond the survey's ends what the line itself may be off.</returns>
    public static SpacingEstimate FromStature(double statureMm) => // theory F6
        new("stature", FromStatureLine.At(statureMm), Math.Sqrt(StatureVariance + Square(JudgementErrorMm) + Square(ExtrapolationErrorMm(statureMm))), Survey.Source + ", derived line; tape and elbow errors assumed");

    /// <summary>What the line from stature may be off beyond the statures measured: nobody knows whether children keep to the line or to
    /// the adults' proportion S = 0.5055 H, and the two part by the difference of their slopes, 43 mm a metre.</summary>
    /// <param name="statureMm">H, stature, mm.</param>
    /// <returns>Standard error, mm; 0 inside the survey.</returns>
    /// <remarks>Source: derived from ANSUR II; that the difference is one standard error is an assumption.</remarks>
    public static double ExtrapolationErrorMm(double statureMm)
    {
        var beyond = Math.Max(0, Math.Max(Survey.ShortestStatureMm - statureMm, statureMm - Survey.TallestStatureMm));
        var proportion = Survey.PooledMean(Survey.HandSpacing) / Survey.PooledMean(Survey.Stature);
        return (FromStatureLine.Slope - proportion) * beyond; // theory F40
    }

    /// <summary>S = −14.1 + 0.4995 span.</summary>
    /// <param name="armSpanMm">Arm span, finger tip to finger tip, mm.</param>
    /// <returns>The estimate; its error joins body shape (20 mm), tape error and elbow judgement, about 42 mm.</returns>
    public static SpacingEstimate FromArmSpan(double armSpanMm) => // theory F7
        new("arm-span", SpanInterceptMm + (SpanSlope * armSpanMm), Math.Sqrt(SpanVariance + Square(JudgementErrorMm)), Survey.Source + ", derived line; tape and elbow errors assumed");

    /// <summary>Combine the estimates from arm span and stature. Their errors go together (a person's arms are long for both), so the
    /// weights come from the covariance: nearly all of it falls on the span, which already holds what stature knows. Weights 1/σ² would
    /// give stature 28 % and claim an error too small.</summary>
    /// <param name="statureMm">H, stature, mm.</param>
    /// <returns>The combination; weights in the order span, stature.</returns>
    public static CombinedEstimate CombineSpanAndStature(double armSpanMm, double statureMm)
    {
        var shared = SharedBodyVariance() + Square(JudgementErrorMm);
        var covariance = Matrix<double>.Build.DenseOfArray(new[,]
        {
            { SpanVariance + Square(JudgementErrorMm), shared },
            { shared, StatureVariance + Square(JudgementErrorMm) },
        });
        return InverseVariance.CombineCorrelated([FromArmSpan(armSpanMm).ValueMm, FromStature(statureMm).ValueMm], covariance);
    }

    /// <summary>Covariance of the body-shape errors of the two lines over the whole survey, mm²: cov(S − b_A A, S − b_H H) = var S − b_A
    /// cov(S, A) − b_H cov(S, H) + b_A b_H cov(A, H), with cov(S, A) = b_A var A.</summary>
    /// <returns>Covariance, mm².</returns>
    /// <remarks>Source: derived from the survey's published means, deviations and lines.</remarks>
    public static double SharedBodyVariance()
    {
        var spacing = Square(Survey.PooledStandardDeviation(Survey.HandSpacing));
        var span = Square(Survey.PooledStandardDeviation(Survey.ArmSpan));
        var slope = FromStatureLine.Slope;
        return spacing // theory F8
            - (SpanSlope * SpanSlope * span)
            - (slope * Survey.PooledCovarianceWithStature(Survey.HandSpacingLines))
            + (SpanSlope * slope * Survey.PooledCovarianceWithStature(Survey.ArmSpanLines));
    }

    /// <summary>Distance between two readings of one quantity in standard errors of their difference, errors taken as independent.</summary>
    /// <param name="firstErrorMm">Its standard error, mm.</param>
    /// <param name="secondErrorMm">Its standard error, mm.</param>
    /// <returns>|first − second| / √(σ₁² + σ₂²), dimensionless.</returns>
    public static double StandardErrorsApart(double firstMm, double firstErrorMm, double secondMm, double secondErrorMm) =>
        Math.Abs(firstMm - secondMm) / Math.Sqrt(Square(firstErrorMm) + Square(secondErrorMm)); // theory F9

    private static double Square(double x) => x * x;
}

/// <summary>The hand spacing settled on, with every method that applied.</summary>
/// <param name="ValueMm">S, mm, before rounding.</param>
/// <param name="StandardErrorMm">Its standard error, mm.</param>
/// <param name="Reason">Why this one, in plain words.</param>
internal sealed record SpacingChoice(double ValueMm, double StandardErrorMm, IReadOnlyList<MethodResult> Methods, string Reason)
{
    private const string Quantity = "handSpacingMm";

    /// <summary>Settle the hand spacing: a measured one is used alone and the estimates only check it; without one, arm span and stature
    /// are combined; with one of them, that one is used.</summary>
    /// <param name="paddler">Measurements with at least one of hand spacing, arm span and stature.</param>
    /// <param name="units">Units of the sentence.</param>
    /// <exception cref="ArgumentException">None of the three is given.</exception>
    public static SpacingChoice Of(PaddlerRequest paddler, DrawingUnits units = DrawingUnits.Metric)
    {
        var estimates = new List<SpacingEstimate>();
        if (paddler.ArmSpanMm is { } span) estimates.Add(HandSpacingMethods.FromArmSpan(span));
        if (paddler.StatureMm is { } stature) estimates.Add(HandSpacingMethods.FromStature(stature));
        if (paddler.HandSpacingMm is { } bar)
        {
            var measured = HandSpacingMethods.FromBar(bar);
            return new SpacingChoice(
                measured.ValueMm,
                measured.StandardErrorMm,
                [Method(measured, "used"), .. estimates.Select(e => Method(e, "check"))],
                FormattableString.Invariant($"The hand spacing of {DrawnLength.Rough(bar, units)} was measured with a bar on the head, so it goes before every estimate; ") + (estimates.Count > 0
                    ? "those from other measurements only check it."
                    : "no other measurement was given to check it."));
        }

        if (paddler is { ArmSpanMm: { } a, StatureMm: { } h })
        {
            var combined = HandSpacingMethods.CombineSpanAndStature(a, h);
            var result = new MethodResult(
                "combined", Quantity, combined.Value, combined.StandardError, "inverse-variance combination with the survey's own covariance of the two errors", "used");
            return new SpacingChoice(
                combined.Value,
                combined.StandardError,
                [result, .. estimates.Zip(combined.Weights, (e, w) => Method(e, "combined") with { Weight = w })],
                FormattableString.Invariant($"Hand spacing estimated from arm span and stature together (weights {combined.Weights[0]:0.00} and {combined.Weights[1]:0.00}): long arms show in both, so stature adds little to a measured span. A bar on the head would settle it."));
        }

        var only = estimates.Count > 0
            ? estimates[0]
            : throw new ArgumentException("A hand spacing, an arm span or a stature is needed.", nameof(paddler));
        return new SpacingChoice(
            only.ValueMm,
            only.StandardErrorMm,
            [Method(only, "used")],
            FormattableString.Invariant($"Hand spacing estimated from {(paddler.StatureMm is null ? "arm span" : "stature")}: one person in three lies more than {DrawnLength.Rough(only.StandardErrorMm, units)} off. A bar on the head would settle it."));
    }

    private static MethodResult Method(SpacingEstimate e, string role) => new(e.Id, Quantity, e.ValueMm, e.StandardErrorMm, e.Source, role);
}

/// <summary>How far the hands move apart or together when the elbows are not square in the bar-on-the-head test.</summary>
internal static class ElbowAngle
{
    /// <summary>Upper arm as a fraction of stature. Source: Drillis and Contini 1966, from memory; the survey gives 0.191 between neighbouring landmarks.</summary>
    public const double UpperArmOverStature = 0.186;
    /// <summary>Error of judging a square elbow by eye, degrees (assumption, no source).</summary>
    public const double JudgementDegrees = 3;
    /// <summary>Change of hand spacing per degree of elbow angle near 90°, mm. Source: derived from <see cref="SpacingMm"/> at the survey's mean man.</summary>
    public const double SpacingMmPerDegree = 12;

    /// <summary>Hand spacing at elbow angle θ with the bar resting on the head: S(θ) = 2 (w + √(u² + f² − 2 u f cos θ − f²)), w = S90/2 −
    /// u.</summary>
    /// <param name="spacingAtRightAngleMm">S90, hand spacing with square elbows, mm.</param>
    /// <param name="upperArmMm">u, shoulder joint to elbow axis, mm.</param>
    /// <param name="forearmToGripMm">f, elbow axis to the middle of the gripping hand, mm; also the bar's height above the raised shoulder joint.</param>
    /// <param name="elbowDegrees">θ, angle between upper arm and forearm, degrees.</param>
    /// <returns>S, mm.</returns>
    /// <remarks>Source: derived from the triangle shoulder–elbow–grip with the bar's height held fixed.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The arm cannot reach the bar's height at that angle.</exception>
    public static double SpacingMm(double spacingAtRightAngleMm, double upperArmMm, double forearmToGripMm, double elbowDegrees)
    {
        var cosine = Math.Cos(elbowDegrees * Math.PI / 180);
        var reachSquared = (upperArmMm * upperArmMm) - (2 * upperArmMm * forearmToGripMm * cosine);
        if (!(reachSquared >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(elbowDegrees), elbowDegrees, "The hands cannot hold the bar at that height with so sharp an elbow.");
        }

        var jointHalfSpacing = (spacingAtRightAngleMm / 2) - upperArmMm;
        return 2 * (jointHalfSpacing + Math.Sqrt(reachSquared)); // theory F3
    }
}

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
