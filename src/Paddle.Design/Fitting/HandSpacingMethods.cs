using MathNet.Numerics.LinearAlgebra;

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
