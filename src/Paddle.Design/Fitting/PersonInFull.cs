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
    /// <returns>The person. An adult's mean stands in for nothing: a child's span brings a child's hand and mass.</returns>
    /// <remarks>Source: ANSUR II's lines, read backwards for the stature; body mass see <see cref="BodyMass"/>.</remarks>
    public static PersonInFull Of(PaddlerMeasurements paddler)
    {
        var spacing = SpacingChoice.Of(paddler);
        var stature = Stature(paddler, spacing.ValueMm);
        var handLength = paddler.HandLengthMm ?? Survey.PooledLine(Survey.HandLengthLines).At(stature);
        var handBreadth = paddler.HandBreadthMm ?? Survey.PooledLine(Survey.HandBreadthLines).At(stature);
        var mass = paddler.BodyMassKg ?? BodyMass.FromStatureKg(stature);
        return new PersonInFull(spacing, stature, handLength, handBreadth, mass, [.. Tell(paddler, spacing, stature, handLength, handBreadth, mass)]);
    }

    private static double Stature(PaddlerMeasurements paddler, double spacingMm)
    {
        var span = Survey.PooledLine(Survey.ArmSpanLines);
        var spacing = HandSpacingMethods.FromStatureLine;
        return paddler.StatureMm
            ?? (paddler.ArmSpanMm is { } spread ? (spread - span.InterceptMm) / span.Slope : (spacingMm - spacing.InterceptMm) / spacing.Slope); // theory F35
    }

    private static IEnumerable<string> Tell(
        PaddlerMeasurements paddler, SpacingChoice spacing, double statureMm, double handLengthMm, double handBreadthMm, double massKg)
    {
        yield return spacing.Reason;
        if (statureMm is >= Survey.ShortestStatureMm and <= Survey.TallestStatureMm)
            yield return Rank(Survey.PooledPercentile(Survey.HandSpacing, spacing.ValueMm)) + " of the adults surveyed have a smaller hand spacing.";

        var from = paddler.StatureMm is null ? "at the stature that goes with these measurements" : "at this stature";
        var taken = (paddler.HandLengthMm, paddler.HandBreadthMm) switch
        {
            (null, null) => FormattableString.Invariant($"Hand not measured: {handLengthMm:0} mm long and {handBreadthMm:0} mm broad is the survey's hand"),
            (null, _) => FormattableString.Invariant($"Hand length not measured: {handLengthMm:0} mm is the survey's"),
            (_, null) => FormattableString.Invariant($"Hand breadth not measured: {handBreadthMm:0} mm is the survey's"),
            _ => null,
        };
        if (taken is not null) yield return $"{taken} {from}. Measure it before cutting the grip.";
        if (paddler.BodyMassKg is null)
            yield return FormattableString.Invariant($"Body mass not given: {massKg:0} kg is usual {from}. It scales the forces on the paddle and its blade; give it if you know it.");
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
