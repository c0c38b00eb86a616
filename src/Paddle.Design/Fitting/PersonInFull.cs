using Paddle.Design.Units;

namespace Paddle.Design.Fitting;

/// <summary>A person with every figure the fitting needs: measured where measured, else taken from the survey at the person's stature.</summary>
/// <param name="Spacing">Hand spacing settled on.</param>
/// <param name="StatureMm">Stature given, else that which goes with the arm span or the hand spacing, mm.</param>
/// <param name="Reasons">What was taken from where, in plain words.</param>
internal sealed record PersonInFull(
    SpacingChoice Spacing, double StatureMm, double HandLengthMm, double HandBreadthMm, double BodyMassKg, IReadOnlyList<string> Reasons)
{
    /// <summary>Complete a person.</summary>
    /// <param name="paddler">Measurements with at least one of hand spacing, arm span and stature.</param>
    /// <param name="units">Units of the sentences.</param>
    /// <returns>The person. An adult's mean stands in for nothing: a child's span brings a child's hand and mass.</returns>
    /// <remarks>Source: ANSUR II's lines, read backwards for the stature; body mass see <see cref="BodyMass"/>.</remarks>
    public static PersonInFull Of(PaddlerRequest paddler, DrawingUnits units = DrawingUnits.Metric)
    {
        var spacing = SpacingChoice.Of(paddler, units);
        var stature = Stature(paddler, spacing.ValueMm);
        var handLength = paddler.HandLengthMm ?? Survey.PooledLine(Survey.HandLengthLines).At(stature);
        var handBreadth = paddler.HandBreadthMm ?? Survey.PooledLine(Survey.HandBreadthLines).At(stature);
        var mass = paddler.BodyMassKg ?? BodyMass.FromStatureKg(stature);
        return new PersonInFull(spacing, stature, handLength, handBreadth, mass, [.. Tell(paddler, spacing, stature, handLength, handBreadth, mass, units)]);
    }

    private static double Stature(PaddlerRequest paddler, double spacingMm) => paddler.StatureMm
        ?? (paddler.ArmSpanMm is { } span ? Survey.PooledLine(Survey.ArmSpanLines).StatureMm(span) : HandSpacingMethods.FromStatureLine.StatureMm(spacingMm));

    private static IEnumerable<string> Tell(
        PaddlerRequest paddler, SpacingChoice spacing, double statureMm, double handLengthMm, double handBreadthMm, double massKg, DrawingUnits units)
    {
        string Rough(double mm) => DrawnLength.Rough(mm, units);
        yield return spacing.Reason;
        if (statureMm is >= Survey.ShortestStatureMm and <= Survey.TallestStatureMm)
            yield return Rank(Survey.PooledPercentile(Survey.HandSpacing, spacing.ValueMm)) + " of the adults surveyed have a smaller hand spacing.";

        var from = paddler.StatureMm is null ? "at the stature that goes with these measurements" : "at this stature";
        var taken = (paddler.HandLengthMm, paddler.HandBreadthMm) switch
        {
            (null, null) => FormattableString.Invariant($"Hand not measured: {Rough(handLengthMm)} long and {Rough(handBreadthMm)} broad is the survey's hand"),
            (null, _) => FormattableString.Invariant($"Hand length not measured: {Rough(handLengthMm)} is the survey's"),
            (_, null) => FormattableString.Invariant($"Hand breadth not measured: {Rough(handBreadthMm)} is the survey's"),
            _ => null,
        };
        if (taken is not null) yield return $"{taken} {from}. Measure it before cutting the grip.";
        if (paddler.BodyMassKg is null)
            yield return FormattableString.Invariant($"Body mass not given: {DrawnAmount.BodyMass(massKg, units)} is usual {from}. It scales the forces on the paddle and its blade; give it if you know it.");
        if (paddler.ShoulderBreadthMm is not null)
            yield return "Shoulder breadth only checks the other measurements: two upper arms added to it overstate the hand spacing by about a fifth, because the shoulder joints lie inside the shoulder points.";
    }

    private static string Rank(double percent) => percent switch
    {
        < 1 => "Fewer than 1 %",
        > 99 => "More than 99 %",
        _ => FormattableString.Invariant($"About {percent:0} %"),
    };
}

/// <summary>Heights above the seat, mm, each with its standard error.</summary>
/// <param name="SittingHeightMm">Crown.</param>
/// <param name="EyeHeightMm">Eye.</param>
/// <param name="ShoulderHeightMm">Shoulder (acromion).</param>
/// <param name="SittingHeightErrorMm">Standard error of the crown's height.</param>
/// <param name="Source">Where the heights come from.</param>
internal sealed record SeatedBody(
    double SittingHeightMm, double EyeHeightMm, double ShoulderHeightMm, double SittingHeightErrorMm, double EyeHeightErrorMm,
    double ShoulderHeightErrorMm, string Source)
{
    /// <summary>Heights of a person: from the sitting height where measured (less the survey's mean distance of eye and shoulder below the
    /// crown), else from stature by the survey's pooled lines, else unknown.</summary>
    /// <returns>The heights, or null where neither sitting height nor stature is known.</returns>
    /// <remarks>Source: ANSUR II. With a measured sitting height the scatter of eye and shoulder is taken as that of the stature lines (assumption, an upper bound).</remarks>
    public static SeatedBody? Of(PaddlerRequest paddler)
    {
        var crown = Survey.PooledLine(Survey.SittingHeightLines);
        var eye = Survey.PooledLine(Survey.EyeHeightSittingLines);
        var shoulder = Survey.PooledLine(Survey.ShoulderHeightSittingLines);
        if (paddler.SittingHeightMm is { } measured)
        {
            var crownMean = Survey.PooledMean(Survey.SittingHeight);
            return new SeatedBody( // theory F26
                measured,
                measured - (crownMean - Survey.PooledMean(Survey.EyeHeightSitting)),
                measured - (crownMean - Survey.PooledMean(Survey.ShoulderHeightSitting)),
                MeasurementCatalogue.SittingHeight.TypicalError,
                eye.StandardErrorMm,
                shoulder.StandardErrorMm,
                "measured sitting height less the mean distances of " + Survey.Source);
        }

        return paddler.StatureMm is { } stature
            ? new SeatedBody(
                crown.At(stature), eye.At(stature), shoulder.At(stature),
                crown.StandardErrorMm, eye.StandardErrorMm, shoulder.StandardErrorMm,
                Survey.Source + ", lines from stature, both sexes")
            : null;
    }
}

/// <summary>Body mass of a person who was not weighed, from stature.</summary>
internal static class BodyMass
{
    /// <summary>Body mass over stature squared of adults, kg/m². Source: age-standardised means of 2014, 24.2 (men) and 24.4 (women), NCD
    /// Risk Factor Collaboration 2016 (summary).</summary>
    public const double AdultIndex = (24.2 + 24.4) / 2;

    // Up to here everybody is taken as a child, from there on as an adult; in between one turns into the other without a step
    // (assumption, no source: a person of 1.5 m may be either).
    private const double ChildUpToM = 1.40, AdultFromM = 1.70;

    private const double MmPerM = 1000;

    /// <summary>Body mass of a child: the mean of 2.120 exp(1.993 H), girls, and 2.379 exp(1.895 H), boys.</summary>
    /// <param name="statureM">H, stature, m.</param>
    /// <returns>m, kg.</returns>
    /// <remarks>Source: Braillon 2017 (abstract), fitted to children of 2 to 18 years in twelve countries.</remarks>
    public static double ChildKg(double statureM) =>
        ((2.120 * Math.Exp(1.993 * statureM)) + (2.379 * Math.Exp(1.895 * statureM))) / 2; // theory F33

    /// <summary>Body mass from stature alone: a child's, an adult's, or between the two.</summary>
    /// <param name="statureMm">H, stature, mm.</param>
    /// <returns>m, kg; it grows with stature without a step.</returns>
    public static double FromStatureKg(double statureMm)
    {
        var stature = statureMm / MmPerM;
        var t = Math.Clamp((stature - ChildUpToM) / (AdultFromM - ChildUpToM), 0, 1);
        var adult = t * t * (3 - (2 * t));
        return ((1 - adult) * ChildKg(stature)) + (adult * AdultIndex * stature * stature); // theory F34
    }
}
