using Paddle.Design.Units;

namespace Paddle.Design.Fitting;

/// <summary>Refuses people, boats and waters that cannot be, and warns where two measurements sit badly together.</summary>
internal static class FittingChecks
{
    /// <summary>Lowest body mass over stature squared accepted, kg/m² (assumption, no source: below anybody fit to paddle).</summary>
    public const double LowestMassIndex = 11;
    /// <summary>Highest body mass over stature squared accepted, kg/m² (assumption, no source).</summary>
    public const double HighestMassIndex = 70;

    /// <returns>Refusals (empty when the request can be answered) and cautions about doubtful measurements.</returns>
    public static (IReadOnlyList<InputRefusal> Refusals, IReadOnlyList<Caution> Cautions) Check(FittingRequest request)
    {
        var paddler = request.Paddler ?? new();
        var refusals = Ranges(request).ToList();
        if (paddler is { HandSpacingMm: null, ArmSpanMm: null, StatureMm: null }) refusals.Add(NoWayToHandSpacing());
        if (refusals.Count > 0) return (refusals, []);

        var units = DrawingRequest.Read(request.Drawing?.Units);
        var pairs = Pairs(paddler).ToList();
        refusals.AddRange(pairs.Where(p => p.Apart > HandSpacingMethods.RefusalStandardErrors).Select(Contradiction));
        refusals.AddRange(MassIndex(paddler));
        var cautions = pairs.Where(p => p.Apart > HandSpacingMethods.WarningStandardErrors).Select(p => Doubt(p, units)).Concat(Extrapolations(paddler, units))
            .ToList();
        return (refusals, cautions);
    }

    private static InputRefusal NoWayToHandSpacing() => new(
        "/paddler",
        RefusalCodes.NoWayToHandSpacing,
        "Nothing here gives a hand spacing: give it as measured with a bar on the head (best), or the arm span, or the stature.",
        MeasureInstead: [MeasurementCatalogue.HandSpacing.Id, MeasurementCatalogue.ArmSpan.Id, MeasurementCatalogue.Stature.Id]);

    private static IEnumerable<InputRefusal> Ranges(FittingRequest request) =>
        InputRefusal.Broken("/paddler", request.Paddler)
            .Concat(InputRefusal.Broken("/seat", request.Seat).Select(refusal => refusal.Value < 0 ? Flooded(refusal) : refusal))
            .Concat(InputRefusal.Broken("/water", request.Water))
            .Concat(InputRefusal.Broken("/outing", request.Outing));

    private static InputRefusal Flooded(InputRefusal seat) => seat with
    {
        Code = RefusalCodes.SeatBelowWater,
        Message = FormattableString.Invariant($"A seat {-seat.Value} mm below the water would be flooded. Give the height of the seat above the water, boat loaded as usual."),
    };

    private sealed record Pair(Measurement Doubted, double ValueMm, Measurement Against, double AgainstMm, double ExpectedMm, double Apart);

    private static IEnumerable<Pair> Pairs(PaddlerRequest p)
    {
        if (p.StatureMm is { } stature)
        {
            (Measurement Instruction, double? Value, StatureLines Lines)[] lines =
            [
                (MeasurementCatalogue.ArmSpan, p.ArmSpanMm, Survey.ArmSpanLines),
                (MeasurementCatalogue.SittingHeight, p.SittingHeightMm, Survey.SittingHeightLines),
                (MeasurementCatalogue.HandLength, p.HandLengthMm, Survey.HandLengthLines),
                (MeasurementCatalogue.HandBreadth, p.HandBreadthMm, Survey.HandBreadthLines),
            ];
            foreach (var (instruction, value, surveyLines) in lines)
            {
                if (value is { } v)
                {
                    var line = Survey.PooledLine(surveyLines);
                    var tape = line.Slope * MeasurementCatalogue.Stature.TypicalError;
                    var scatter = Math.Sqrt((line.StandardErrorMm * line.StandardErrorMm) + (tape * tape));
                    yield return new Pair(
                        instruction, v, MeasurementCatalogue.Stature, stature, line.At(stature),
                        HandSpacingMethods.StandardErrorsApart(v, instruction.TypicalError, line.At(stature), scatter));
                }
            }
        }

        if (p is { HandLengthMm: { } length, HandBreadthMm: { } across })
        {
            // The survey gives no line from hand length to breadth: the means' ratio, with the whole spread of breadths as scatter.
            var expected = length * Survey.PooledMean(Survey.HandBreadth) / Survey.PooledMean(Survey.HandLength);
            yield return new Pair(
                MeasurementCatalogue.HandBreadth, across, MeasurementCatalogue.HandLength, length, expected,
                HandSpacingMethods.StandardErrorsApart(across, MeasurementCatalogue.HandBreadth.TypicalError, expected, Survey.PooledStandardDeviation(Survey.HandBreadth)));
        }

        if (p.HandSpacingMm is { } bar)
        {
            if (p.StatureMm is { } h) yield return SpacingPair(bar, HandSpacingMethods.FromStature(h), MeasurementCatalogue.Stature, h);
            if (p.ArmSpanMm is { } span)
                yield return SpacingPair(bar, HandSpacingMethods.FromArmSpan(span), MeasurementCatalogue.ArmSpan, span);
        }

        if (p.ShoulderBreadthMm is { } breadth)
        {
            // The survey gives no line from stature to breadth: the mean in proportion to stature, with the whole spread of breadths as scatter.
            var share = p.StatureMm is { } tall ? tall / Survey.PooledMean(Survey.Stature) : 1;
            var expected = share * Survey.PooledMean(Survey.ShoulderBreadth);
            var deviation = Survey.PooledStandardDeviation(Survey.ShoulderBreadth);
            var apart = HandSpacingMethods.StandardErrorsApart(breadth, MeasurementCatalogue.ShoulderBreadth.TypicalError, expected, deviation);

            // It sets nothing, so it can be doubted but never contradict.
            yield return new Pair(
                MeasurementCatalogue.ShoulderBreadth, breadth, MeasurementCatalogue.ShoulderBreadth, expected, expected,
                Math.Min(apart, HandSpacingMethods.RefusalStandardErrors));
        }
    }

    private static Pair SpacingPair(double barMm, SpacingEstimate estimate, Measurement against, double againstMm) => new(
        MeasurementCatalogue.HandSpacing, barMm, against, againstMm, estimate.ValueMm,
        HandSpacingMethods.StandardErrorsApart(barMm, HandSpacingMethods.BarErrorMm, estimate.ValueMm, estimate.StandardErrorMm));

    private static InputRefusal Contradiction(Pair p) => new(
        "/paddler/" + p.Doubted.Id,
        RefusalCodes.MeasurementsContradict,
        FormattableString.Invariant($"{p.Doubted.Name} {p.ValueMm:0} mm and {Words.Small(p.Against.Name)} {p.AgainstMm:0} mm cannot belong to one person: {p.ExpectedMm:0} mm would be expected, {p.Apart:0.0} standard errors away. Measure both again."),
        p.ValueMm,
        Unit: "mm",
        MeasureInstead: [p.Doubted.Id, p.Against.Id]);

    private static Caution Doubt(Pair p, DrawingUnits units) => new(
        "doubtful-" + p.Doubted.Id,
        p.Doubted == p.Against
            ? FormattableString.Invariant($"{p.Doubted.Name} {DrawnLength.Rough(p.ValueMm, units)} is far from the {DrawnLength.Rough(p.ExpectedMm, units)} of the people surveyed: measure it again. It is not used for hand spacing.")
            : FormattableString.Invariant($"{p.Doubted.Name} {DrawnLength.Rough(p.ValueMm, units)} is {p.Apart:0.0} standard errors from the {DrawnLength.Rough(p.ExpectedMm, units)} that {Words.Small(p.Against.Name)} {DrawnLength.Rough(p.AgainstMm, units)} suggests: measure both again before cutting wood."),
        Survey.Source + "; tape errors assumed");

    private static IEnumerable<InputRefusal> MassIndex(PaddlerRequest p)
    {
        if (p is { BodyMassKg: { } mass, StatureMm: { } stature })
        {
            var metres = stature / 1000;
            var index = mass / (metres * metres);
            if (index is < LowestMassIndex or > HighestMassIndex)
            {
                yield return new InputRefusal(
                    "/paddler/bodyMassKg",
                    RefusalCodes.BodyMassImpossible,
                    FormattableString.Invariant($"{mass:0.#} kg at a stature of {stature:0} mm is nobody's body ({index:0} kg/m², accepted {LowestMassIndex} to {HighestMassIndex}). Check both and their units."),
                    mass,
                    LowestMassIndex * metres * metres,
                    HighestMassIndex * metres * metres,
                    "kg",
                    [MeasurementCatalogue.BodyMass.Id, MeasurementCatalogue.Stature.Id]);
            }
        }
    }

    private static IEnumerable<Caution> Extrapolations(PaddlerRequest p, DrawingUnits units)
    {
        if (p.StatureMm is { } stature && stature is < Survey.ShortestStatureMm or > Survey.TallestStatureMm)
            yield return Outside(FormattableString.Invariant($"A stature of {DrawnLength.Rough(stature, units)}"), p.StatureMm < Survey.ShortestStatureMm, p.HandSpacingMm is null, units);

        var spanLine = Survey.PooledLine(Survey.ArmSpanLines);
        if (p is { ArmSpanMm: { } span, StatureMm: null } && (span < spanLine.At(Survey.ShortestStatureMm) || span > spanLine.At(Survey.TallestStatureMm)))
            yield return Outside(FormattableString.Invariant($"An arm span of {DrawnLength.Rough(span, units)}"), span < spanLine.At(Survey.ShortestStatureMm), p.HandSpacingMm is null, units);
    }

    private static Caution Outside(string what, bool below, bool spacingEstimated, DrawingUnits units) => new(
        "outside-survey",
        what + FormattableString.Invariant($" lies {(below ? "below" : "beyond")} the adults surveyed ({DrawnLength.RoughFigure(Survey.ShortestStatureMm, units)} to {DrawnLength.Rough(Survey.TallestStatureMm, units)} tall): what is estimated from it carries their proportions on.")
        + (below ? " There are no children among them, and a child soon outgrows a paddle: measure again each season." : string.Empty)
        + (spacingEstimated ? " Measure the hand spacing with a bar on the head." : string.Empty),
        Survey.Source);
}
