namespace Paddle.Design.Fitting;

/// <summary>The hand spacing settled on, with every method that applied.</summary>
/// <param name="ValueMm">S, mm, before rounding.</param>
/// <param name="StandardErrorMm">Its standard error, mm.</param>
/// <param name="Methods">Every method, the one used marked.</param>
/// <param name="Reason">Why this one, in plain words.</param>
internal sealed record SpacingChoice(double ValueMm, double StandardErrorMm, IReadOnlyList<MethodResult> Methods, string Reason)
{
    private const string Quantity = "handSpacingMm";

    /// <summary>Settle the hand spacing: a measured one is used alone and the estimates only check it; without one, arm span and stature
    /// are combined; with one of them, that one is used.</summary>
    /// <param name="paddler">Measurements with at least one of hand spacing, arm span and stature.</param>
    /// <exception cref="ArgumentException">None of the three is given.</exception>
    public static SpacingChoice Of(PaddlerMeasurements paddler)
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
                FormattableString.Invariant($"The hand spacing of {bar:0} mm was measured with a bar on the head, so it goes before every estimate; ") + (estimates.Count > 0
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
            FormattableString.Invariant($"Hand spacing estimated from {(paddler.StatureMm is null ? "arm span" : "stature")}: one person in three lies more than {only.StandardErrorMm:0} mm off. A bar on the head would settle it."));
    }

    private static MethodResult Method(SpacingEstimate e, string role) => new(e.Id, Quantity, e.ValueMm, e.StandardErrorMm, e.Source, role);
}
