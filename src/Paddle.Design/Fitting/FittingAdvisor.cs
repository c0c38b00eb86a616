using Paddle.Design.Water;

namespace Paddle.Design.Fitting;

/// <summary>Which paddle for this person: calls the steps of a fitting in order.</summary>
public static class FittingAdvisor
{
    /// <summary>Shaft taken off for a bent paddle, mm (common practice, no source: 50 to 100).</summary>
    public const double BentShaftShorterMm = 75;

    /// <summary>
    /// Body mass above which a tougher wood is suggested, kg (service's own choice: half the body's weight leant on a long blade of cherry
    /// leaves less than the usual safety factor).
    /// </summary>
    public const double HeavyPaddlerKg = 95;

    private const double DefaultHoursPerDay = 4;
    private const double Mm2PerM2 = 1_000_000;

    /// <summary>Scatter of that shortening, mm: 50 to 100 taken as even.</summary>
    private static readonly double BentShaftShorterErrorMm = (100 - 50) / Math.Sqrt(12);

    /// <summary>Answer a fitting.</summary>
    /// <param name="request">The person, seat, water, outing and preferences.</param>
    /// <returns>The advice, or the refusals with what to measure instead. The same request always gives the same answer.</returns>
    public static FittingOutcome Advise(FittingRequest request)
    {
        var (refusals, doubts) = FittingChecks.Check(request);
        return refusals.Count > 0 ? new FittingOutcome(null, refusals) : new FittingOutcome(Answer(request, doubts), []);
    }

    /// <summary>
    /// Freeboard: 38 mm, a tenth of what the seat stands above 130 mm more, a little more where the paddler steers; kept within 25 to 50.
    /// </summary>
    /// <param name="seat">Seat.</param>
    /// <returns>c, whole mm.</returns>
    /// <remarks>Source: range common practice, no source; the shares inside it are the service's own choice.</remarks>
    public static double FreeboardMm(SeatPlan seat)
    {
        ArgumentNullException.ThrowIfNull(seat);
        double steering = seat.Place switch { SeatPlace.Stern => 6, SeatPlace.Solo => 3, _ => 0 };
        double seatHeight = seat.HeightAboveWaterMm ?? LengthRules.DefaultSeatHeightMm;
        double freeboard = LengthRules.DefaultFreeboardMm + (0.1 * (seatHeight - LengthRules.DefaultSeatHeightMm)) + steering; // theory F27
        return Math.Round(Math.Clamp(freeboard, LengthRules.LowestFreeboardMm, LengthRules.HighestFreeboardMm));
    }

    private static FittingAdvice Answer(FittingRequest request, IReadOnlyList<FittingCaution> doubts)
    {
        var paddler = request.Paddler;
        var seat = request.Seat ?? new SeatPlan();
        var water = request.Water ?? new WaterPlan();
        var outing = request.Outing ?? new OutingPlan();
        var wishes = request.Preferences ?? new PaddlerPreferences();
        string label = string.IsNullOrWhiteSpace(request.Label) ? "Fitted paddle" : request.Label;
        var reasons = new List<string>();

        // 1. Body: hand spacing, hands, heights above the seat.
        var body = SpacingChoice.Of(paddler);
        reasons.Add(body.Reason);
        reasons.Add(FormattableString.Invariant($"About {Survey.PooledPercentile(Survey.HandSpacing, body.ValueMm):0} % of the adults surveyed have a smaller hand spacing."));
        double handLength = paddler.HandLengthMm ?? FromStatureOrMean(paddler, Survey.HandLengthLines);
        double handBreadth = paddler.HandBreadthMm ?? FromStatureOrMean(paddler, Survey.HandBreadthLines);
        if (paddler.HandLengthMm is null || paddler.HandBreadthMm is null)
        {
            reasons.Add(FormattableString.Invariant($"Hand size not fully measured: {handLength:0} by {handBreadth:0} mm taken from the survey{(paddler.StatureMm is null ? "'s mean" : " at this stature")}. Measure the hand before cutting the grip."));
        }

        if (paddler.ShoulderBreadthMm is not null)
        {
            reasons.Add("Shoulder breadth only checks the other measurements: two upper arms added to it overstate the hand spacing by about a fifth, because the shoulder joints lie inside the shoulder points.");
        }

        var seated = SeatedBody.Of(paddler);
        double seatHeight = seat.HeightAboveWaterMm ?? LengthRules.DefaultSeatHeightMm;

        // 2. Water and stroke: area, family, depth.
        double cadence = outing.StrokesPerMinute ?? EffortArea.DefaultStrokesPerMinute(outing.Effort);
        double density = FreshWater.DensityKgM3(water.TemperatureC ?? FreshWater.DefaultTemperatureC);
        var demand = EffortArea.Demand(paddler.BodyMassKg ?? EffortArea.DefaultBodyMassKg, outing.Effort, cadence, density);
        double area = EffortArea.TradeAreaMm2(demand.TargetAreaMm2, water.Kind);
        var (family, bend, familyReason) = BladeChoice.Choose(water.Kind, seat, cadence, wishes.SensitiveJoints);
        reasons.Add(familyReason);
        var immersion = ImmersionDepth.Check(BladeChoice.Size(family, area, bend), area, water.DepthMm);
        var blade = immersion.Blade;
        if (!immersion.Fits)
        {
            reasons.Add(FormattableString.Invariant($"Depth {immersion.DepthMm:0} mm is too shallow for the {family.Id} first chosen (needs {immersion.NeededMm:0} mm): a {blade.Family.Id} of {blade.LengthMm:0} mm is offered instead."));
        }

        var inWater = InWater(demand, area, blade, immersion.ImmersedShare, density, cadence * 60 * (outing.HoursPerDay ?? DefaultHoursPerDay));
        reasons.Add(FormattableString.Invariant($"Blade area {blade.AreaMm2 / 100:0} cm² (asked {area / 100:0}): at {demand.BodyMassKg:0} kg, {cadence:0} strokes/min and {demand.BoatSpeedMS:0.0} m/s each pull averages {demand.MeanPullN:0} N and the blade slips {inWater.SlipAtHighCoefficientMS:0.00} to {inWater.SlipAtLowCoefficientMS:0.00} m/s."));

        // 3. Hands: shaft, grip, wrist.
        var shaft = ShaftFit.Fit(handLength, wishes);
        var grip = GripFit.Fit(handLength, handBreadth, water.Kind, blade.BendDegrees, wishes);
        reasons.Add(FormattableString.Invariant($"Shaft: hands of this length grip hardest at {shaft.LowMm:0.0} mm and find {shaft.HighMm:0.0} mm most comfortable (studies of handles); wooden shafts are commonly slimmer, 28.6 by 33 mm or so, to save weight, and 28 mm across is the least to accept."));
        reasons.Add(grip.Reason);

        // 4. Length.
        double freeboard = FreeboardMm(seat);
        bool bent = blade.BendDegrees > 0;
        double fitted = bent ? body.ValueMm - BentShaftShorterMm : body.ValueMm;
        double spacingError = bent ? LengthMethods.Join(body.StandardErrorMm, BentShaftShorterErrorMm) : body.StandardErrorMm;
        string species = Species(water.Kind, wishes, demand.BodyMassKg);
        double? hardStroke = EffortArea.HardStrokeN(demand.BodyMassKg, outing.Effort);
        var design = SuggestedDesign.Of(label, fitted, freeboard, blade, grip, shaft, species, demand.BodyMassKg, hardStroke).WithinLimits();
        double spacing = design.HandSpacingMm;
        var (lengthMethods, spread) = LengthMethods.Show(
            grip.TopHandMm, spacing, body, handBreadth, freeboard, blade.LengthMm, seatHeight, paddler.StatureMm, seated);
        var spacingMethods = bent ? Shortened(body.Methods, fitted, spacingError) : body.Methods;
        if (bent)
        {
            reasons.Add(FormattableString.Invariant($"Bent shaft: the hands are set {BentShaftShorterMm} mm closer than the body's own spacing (common practice 50 to 100), as the seated stroke is short and ends at the hip."));
        }

        reasons.Add("Overall length is grip end to hand + hand spacing + freeboard + blade, with the hands taken at their middles; the bar-on-the-head rule of the trade adds half a hand and is shown beside it.");
        reasons.Add(FormattableString.Invariant($"Only the shaft, {grip.TopHandMm + spacing + freeboard:0} mm from grip end to throat, fits the body: another blade changes the overall length millimetre for millimetre."));
        reasons.Add(hardStroke is { } force
            ? FormattableString.Invariant($"The paddle is to bear a hard stroke of {force:0} N: the peak of trained paddlers of {demand.BodyMassKg:0} kg and one standard deviation more. The best racers pull half as hard again: ask for a hard effort if that may happen.")
            : "The paddle is to bear the hardest strokes of the best racers, as the effort is hard.");
        if (seated is null)
        {
            reasons.Add("Without a sitting height or a stature the rules for seated paddlers cannot be shown.");
        }

        // 5. Put together.
        double overallError = LengthMethods.Join(spacingError, LengthMethods.FreeboardErrorMm);
        var cautions = doubts.Concat(FittingCautions.Of(fitted, design, inWater, immersion, spread, seated, seatHeight, water, lengthMethods)).ToList();
        var alternatives = FittingAlternatives.Of(design, area, blade, handLength, handBreadth, water, wishes, seated, seatHeight)
            .Select(other => other with { Design = other.Design.WithinLimits() }).Take(2).ToList();
        return new FittingAdvice(
            Band(design.OverallLengthMm, overallError),
            Band(design.HandSpacingMm, spacingError),
            freeboard, blade, shaft, grip, immersion, inWater,
            [.. spacingMethods, .. lengthMethods],
            spread, reasons, alternatives, cautions, design);
    }

    private static double FromStatureOrMean(PaddlerMeasurements paddler, StatureLines lines) =>
        paddler.StatureMm is { } h ? Survey.PooledLine(lines).At(h) : Survey.PooledMean(lines.Dimension);

    private static ValueBand Band(double value, double error) => new(value, Math.Round(value - error), Math.Round(value + error));

    private static string Species(WaterKind water, PaddlerPreferences wishes, double bodyMassKg) =>
        water == WaterKind.FastWater ? "white-ash"
        : wishes.LightCarry ? "sitka-spruce"
        : bodyMassKg > HeavyPaddlerKg ? "white-ash"
        : "black-cherry";

    private static IReadOnlyList<MethodResult> Shortened(IReadOnlyList<MethodResult> methods, double fittedMm, double errorMm) =>
    [
        new MethodResult("bent-shaft", "handSpacingMm", fittedMm, errorMm, "body's spacing less 75 mm; common practice 50 to 100, no source", "used"),
        .. methods.Select(m => m.Role == "used" ? m with { Role = "basis" } : m),
    ];

    private static BladeInWater InWater(StrokeDemand demand, double targetAreaMm2, ChosenBlade blade, double immersedShare, double density, double strokesPerDay)
    {
        var drag = PlateDrag.Band(PlateDrag.AspectRatio(blade.LengthMm, blade.WidthMm));
        double areaM2 = blade.AreaMm2 * immersedShare / Mm2PerM2;
        double most = PlateDrag.SlipMS(demand.MeanPullN, drag.Low, areaM2, density);
        double least = PlateDrag.SlipMS(demand.MeanPullN, drag.High, areaM2, density);
        return new BladeInWater(
            demand, targetAreaMm2, blade.AreaMm2, drag.Low, drag.High, most, least,
            PlateDrag.FroudeEfficiency(demand.BoatSpeedMS, most), PlateDrag.FroudeEfficiency(demand.BoatSpeedMS, least), strokesPerDay);
    }
}
