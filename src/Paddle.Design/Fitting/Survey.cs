using MathNet.Numerics.Distributions;

namespace Paddle.Design.Fitting;

/// <summary>Mean and spread of one body dimension in one group of the survey.</summary>
/// <param name="Mean">Mean; mm, or kg for body mass.</param>
/// <param name="StandardDeviation">Standard deviation, same unit.</param>
/// <param name="Percentile5">Published 5th percentile, same unit.</param>
/// <param name="Percentile95">Published 95th percentile, same unit.</param>
internal readonly record struct SurveyFigure(double Mean, double StandardDeviation, double Percentile5, double Percentile95);

/// <summary>One body dimension of the survey, men and women.</summary>
/// <param name="Id">Name of the dimension as used in requests.</param>
internal sealed record SurveyDimension(string Id, SurveyFigure Men, SurveyFigure Women);

/// <summary>A straight line from stature to another dimension: y = a + b H.</summary>
/// <param name="InterceptMm">a, mm.</param>
/// <param name="Slope">b, mm per mm of stature.</param>
/// <param name="StandardErrorMm">Standard error of estimate (scatter of people about the line), mm.</param>
internal readonly record struct StatureLine(double InterceptMm, double Slope, double StandardErrorMm)
{
    /// <summary>The line's estimate.</summary>
    /// <param name="statureMm">H, stature, mm.</param>
    /// <returns>y, mm.</returns>
    public double At(double statureMm) => InterceptMm + (Slope * statureMm);

    /// <summary>The line read backwards.</summary>
    /// <param name="valueMm">y, mm.</param>
    /// <returns>H, mm.</returns>
    public double StatureMm(double valueMm) => (valueMm - InterceptMm) / Slope; // theory F35
}

/// <summary>Lines from stature to a dimension, for men and for women.</summary>
internal sealed record StatureLines(SurveyDimension Dimension, StatureLine Men, StatureLine Women);

/// <summary>Body dimensions of adults. Source of every figure: 2012 US Army Anthropometric Survey (ANSUR II), public raw data, 4 082 men
/// and 1 986 women aged 17 to 58, statistics computed from the raw files (report: Gordon et al. 2014, NATICK/TR-15/007). The people are
/// soldiers: there are no children and few frail people among them.</summary>
internal static class Survey
{
    /// <summary>How the survey is named in results.</summary>
    public const string Source = "ANSUR II, 2012 US Army Anthropometric Survey, public raw data (Gordon et al. 2014, NATICK/TR-15/007)";
    /// <summary>Men measured.</summary>
    public const int MenCount = 4082;
    /// <summary>Women measured.</summary>
    public const int WomenCount = 1986;
    /// <summary>Shortest person measured, mm.</summary>
    public const double ShortestStatureMm = 1409;
    /// <summary>Tallest person measured, mm.</summary>
    public const double TallestStatureMm = 1993;

    /// <summary>Stature, mm.</summary>
    public static readonly SurveyDimension Stature = new("statureMm", new(1756.2, 68.6, 1648, 1870), new(1628.5, 64.2, 1525, 1740));
    /// <summary>Arm span, mm.</summary>
    public static readonly SurveyDimension ArmSpan = new("armSpanMm", new(1814.2, 84.6, 1680, 1957), new(1660.3, 83.0, 1529, 1803));
    /// <summary>Sitting height, mm.</summary>
    public static readonly SurveyDimension SittingHeight = new("sittingHeightMm", new(918.3, 35.7, 860, 977), new(856.6, 33.1, 803, 912));
    /// <summary>Eye height, sitting, mm.</summary>
    public static readonly SurveyDimension EyeHeightSitting = new("eyeHeightSittingMm", new(804.5, 33.2, 750, 860), new(747.7, 30.4, 698, 799));
    /// <summary>Shoulder (acromial) height, sitting, mm; derived per person as sitting height − (stature − standing acromial height).</summary>
    public static readonly SurveyDimension ShoulderHeightSitting = new("shoulderHeightSittingMm", new(602.8, 30.8, 552, 653), new(563.2, 27.8, 515, 609));
    /// <summary>Shoulder breadth (biacromial), mm.</summary>
    public static readonly SurveyDimension ShoulderBreadth = new("shoulderBreadthMm", new(415.7, 19.2, 384, 447), new(365.3, 18.3, 335, 396));
    /// <summary>Hand length, mm.</summary>
    public static readonly SurveyDimension HandLength = new("handLengthMm", new(193.3, 9.9, 177, 210), new(181.1, 10.1, 165, 199));
    /// <summary>Hand breadth across the knuckles (metacarpal), mm.</summary>
    public static readonly SurveyDimension HandBreadth = new("handBreadthMm", new(88.3, 4.4, 81, 96), new(78.2, 3.8, 72, 85));
    /// <summary>Body mass, kg.</summary>
    public static readonly SurveyDimension BodyMass = new("bodyMassKg", new(85.5, 14.2, 64, 111), new(67.8, 11.0, 51, 87));

    /// <summary>Hand spacing with the upper arms level and the forearms upright, mm: derived per person as arm span − 2 (radiale–stylion
    /// length + hand length), the distance between the elbow axes.</summary>
    public static readonly SurveyDimension HandSpacing = new("handSpacingMm", new(891.8, 47.7, 816, 973), new(815.5, 45.2, 742, 891));

    /// <summary>Every dimension held here.</summary>
    public static IReadOnlyList<SurveyDimension> Dimensions { get; } =
    [
        Stature, ArmSpan, SittingHeight, EyeHeightSitting, ShoulderHeightSitting, ShoulderBreadth, HandLength, HandBreadth, BodyMass, HandSpacing,
    ];

    /// <summary>Arm span from stature.</summary>
    public static readonly StatureLines ArmSpanLines = new(ArmSpan, new(29.4, 1.0162, 48), new(-63.6, 1.0586, 48));
    /// <summary>Sitting height from stature.</summary>
    public static readonly StatureLines SittingHeightLines = new(SittingHeight, new(205.8, 0.4057, 22), new(215.8, 0.3935, 21));
    /// <summary>Eye height, sitting, from stature.</summary>
    public static readonly StatureLines EyeHeightSittingLines = new(EyeHeightSitting, new(158.0, 0.3681, 22), new(181.1, 0.3479, 21));
    /// <summary>Shoulder height, sitting, from stature.</summary>
    public static readonly StatureLines ShoulderHeightSittingLines = new(ShoulderHeightSitting, new(78.9, 0.2983, 23), new(119.0, 0.2728, 22));
    /// <summary>Hand length from stature.</summary>
    public static readonly StatureLines HandLengthLines = new(HandLength, new(21.7, 0.0977, 7.4), new(16.2, 0.1012, 7.7));
    /// <summary>Hand breadth from stature.</summary>
    public static readonly StatureLines HandBreadthLines = new(HandBreadth, new(35.8, 0.0298, 3.9), new(32.1, 0.0283, 3.4));
    /// <summary>Hand spacing from stature.</summary>
    public static readonly StatureLines HandSpacingLines = new(HandSpacing, new(14.8, 0.4994, 33), new(-47.1, 0.5297, 30));

    /// <summary>Every set of lines held here.</summary>
    public static IReadOnlyList<StatureLines> Lines { get; } =
    [
        ArmSpanLines, SittingHeightLines, EyeHeightSittingLines, ShoulderHeightSittingLines, HandLengthLines, HandBreadthLines, HandSpacingLines,
    ];

    /// <summary>Share of men among the people measured, 0 to 1.</summary>
    public static double ShareOfMen => (double)MenCount / (MenCount + WomenCount);

    /// <summary>Mean of a dimension over the whole survey, men and women in the proportion measured.</summary>
    public static double PooledMean(SurveyDimension dimension) =>
        (ShareOfMen * dimension.Men.Mean) + ((1 - ShareOfMen) * dimension.Women.Mean);

    /// <summary>Standard deviation of a dimension over the whole survey, by the law of total variance: σ² = p σ_m² + (1 − p) σ_w² + p (1 −
    /// p)(μ_m − μ_w)².</summary>
    public static double PooledStandardDeviation(SurveyDimension dimension)
    {
        var men = dimension.Men.StandardDeviation;
        var women = dimension.Women.StandardDeviation;
        return Math.Sqrt(Pooled(men * men, women * women, dimension, dimension)); // theory F1
    }

    /// <summary>Covariance of a dimension with stature over the whole survey, from the two groups' lines (slope times variance of stature
    /// is the covariance inside a group) and the law of total covariance.</summary>
    /// <returns>Covariance, mm².</returns>
    public static double PooledCovarianceWithStature(StatureLines lines)
    {
        var men = lines.Men.Slope * Stature.Men.StandardDeviation * Stature.Men.StandardDeviation;
        var women = lines.Women.Slope * Stature.Women.StandardDeviation * Stature.Women.StandardDeviation;
        return Pooled(men, women, Stature, lines.Dimension);
    }

    /// <summary>One line from stature for a person of unknown sex: b = cov(y, H) / var(H), a = ȳ − b H̄, scatter √(var(y) − b cov(y, H)),
    /// all over the whole survey.</summary>
    public static StatureLine PooledLine(StatureLines lines)
    {
        var covariance = PooledCovarianceWithStature(lines);
        var statureDeviation = PooledStandardDeviation(Stature);
        var deviation = PooledStandardDeviation(lines.Dimension);
        var slope = covariance / (statureDeviation * statureDeviation); // theory F2
        var intercept = PooledMean(lines.Dimension) - (slope * PooledMean(Stature));
        return new StatureLine(intercept, slope, Math.Sqrt((deviation * deviation) - (slope * covariance)));
    }

    /// <summary>Share of the survey's people below a value, each group taken as normal.</summary>
    /// <param name="value">Value, unit of the dimension.</param>
    /// <returns>Percentile, 0 to 100.</returns>
    public static double PooledPercentile(SurveyDimension dimension, double value)
    {
        var men = Normal.CDF(dimension.Men.Mean, dimension.Men.StandardDeviation, value);
        var women = Normal.CDF(dimension.Women.Mean, dimension.Women.StandardDeviation, value);
        return 100 * ((ShareOfMen * men) + ((1 - ShareOfMen) * women));
    }

    private static double Pooled(double menCovariance, double womenCovariance, SurveyDimension a, SurveyDimension b)
    {
        var p = ShareOfMen;
        var between = p * (1 - p) * (a.Men.Mean - a.Women.Mean) * (b.Men.Mean - b.Women.Mean);
        return (p * menCovariance) + ((1 - p) * womenCovariance) + between;
    }
}
