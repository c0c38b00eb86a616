using Paddle.Design.Water;

namespace Paddle.Design.Fitting;

/// <summary>Which paddle for this person: calls the steps of a fitting in order.</summary>
public static class FittingAdvisor
{
    /// <summary>Hand spacing accepted by a design, mm.</summary>
    private const double LowestSpacingMm = 500;
    private const double HighestSpacingMm = 1100;

    /// <summary>Shaft taken off for a bent paddle, mm (common practice, no source: 50 to 100).</summary>
    private const double BentShaftShorterMm = 75;
    private const double BentShaftShorterErrorMm = 50 / 3.4641016151377544; // even between 50 and 100

    /// <summary>Lean of the shaft at which the grip hand's height is judged, degrees (assumption, no source).</summary>
    private const double LeanDegrees = 20;

    private const double DefaultHoursPerDay = 4;
    private const double LongDayStrokes = 16_000; // derived: 6 h at 45 a minute
    private const double Mm2PerM2 = 1_000_000;

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
        double area = TradeArea(demand.TargetAreaMm2, water.Kind);
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
        double spacing = WithinDesign(fitted);
        var (lengthMethods, spread) = LengthMethods.Show(
            grip.TopHandMm, spacing, body, handBreadth, freeboard, blade.LengthMm, seatHeight, paddler.StatureMm, seated);
        var spacingMethods = bent ? Shortened(body.Methods, fitted, spacingError) : body.Methods;
        if (bent)
        {
            reasons.Add(FormattableString.Invariant($"Bent shaft: the hands are set {BentShaftShorterMm} mm closer than the body's own spacing (common practice 50 to 100), as the seated stroke is short and ends at the hip."));
        }

        reasons.Add("Overall length is grip end to hand + hand spacing + freeboard + blade, with the hands taken at their middles; the bar-on-the-head rule of the trade adds half a hand and is shown beside it.");
        reasons.Add(FormattableString.Invariant($"Only the shaft, {grip.TopHandMm + spacing + freeboard:0} mm from grip end to throat, fits the body: another blade changes the overall length millimetre for millimetre."));
        if (seated is null)
        {
            reasons.Add("Without a sitting height or a stature the rules for seated paddlers cannot be shown.");
        }

        // 5. Put together.
        string species = Species(water.Kind, wishes);
        var design = Design(label, spacing, freeboard, blade, grip, shaft, species, demand.BodyMassKg);
        double overallError = LengthMethods.Join(spacingError, LengthMethods.FreeboardErrorMm);
        var cautions = doubts.Concat(Cautions(fitted, design, inWater, immersion, spread, seated, seatHeight, water, lengthMethods)).ToList();
        var alternatives = Alternatives(design, area, blade, handLength, handBreadth, water, wishes, seated, seatHeight, demand).Take(2).ToList();
        return new FittingAdvice(
            Band(design.OverallLengthMm, overallError),
            Band(design.HandSpacingMm, spacingError),
            freeboard, blade, shaft, grip, immersion, inWater,
            [.. spacingMethods, .. lengthMethods],
            spread, reasons, alternatives, cautions, design);
    }

    private static double FromStatureOrMean(PaddlerMeasurements paddler, StatureLines lines) =>
        paddler.StatureMm is { } h ? Survey.PooledLine(lines).At(h) : Survey.PooledMean(lines.Dimension);

    private static double ModelArea(double areaMm2, WaterKind water) => water == WaterKind.FastWater ? areaMm2 * EffortArea.FastWaterFactor : areaMm2;

    private static double TradeArea(double areaMm2, WaterKind water) =>
        Math.Clamp(ModelArea(areaMm2, water), EffortArea.SmallestAreaMm2, EffortArea.LargestAreaMm2);

    private static double WithinDesign(double spacingMm) => Math.Round(Math.Clamp(spacingMm, LowestSpacingMm, HighestSpacingMm));

    private static ValueBand Band(double value, double error) => new(value, Math.Round(value - error), Math.Round(value + error));

    private static string Species(WaterKind water, PaddlerPreferences wishes) =>
        water == WaterKind.FastWater ? "white-ash" : wishes.LightCarry ? "sitka-spruce" : "black-cherry";

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

    private static SuggestedDesign Design(
        string label, double spacingMm, double freeboardMm, ChosenBlade blade, GripSize grip, ShaftSection shaft, string species, double bodyMassKg) =>
        new(
            label, spacingMm, freeboardMm, blade.Family.Id, blade.LengthMm, blade.WidthMm, blade.BendDegrees,
            grip.Style, grip.WidthMm, grip.LengthMm, grip.Faces, species, Math.Round(EffortArea.HardStrokeN(bodyMassKg)),
            shaft.WidthMm, shaft.ThicknessMm, grip.TopHandMm);

    private static IEnumerable<FittingAlternative> Alternatives(
        SuggestedDesign design, double areaMm2, ChosenBlade blade, double handLengthMm, double handBreadthMm, WaterPlan water, PaddlerPreferences wishes,
        SeatedBody? seated, double seatHeightMm, StrokeDemand demand)
    {
        if (wishes.SensitiveJoints && seated is not null)
        {
            double low = WithinDesign(seated.ShoulderHeightMm + seatHeightMm - design.FreeboardMm);
            if (low <= design.HandSpacingMm - LengthRules.LowestFreeboardMm)
            {
                yield return new FittingAlternative(
                    "hand-at-shoulder",
                    "Keeps the grip hand at shoulder height with the shaft upright, to spare the shoulder; both hand forces rise as the hands come closer.",
                    design with { Label = design.Label + ", hand at shoulder", HandSpacingMm = low });
            }
        }

        bool shortBlade = blade.Family.Id is "sugar-island" or "square-tip" or "teardrop";
        var other = BladeChoice.Size(BladeChoice.Family(shortBlade ? "ottertail" : "sugar-island"), areaMm2, 0);
        if (!shortBlade || water.DepthMm is not { } depth || depth >= ImmersionDepth.NeededMm(other.LengthMm))
        {
            var grip = GripFit.Fit(handLengthMm, handBreadthMm, shortBlade ? WaterKind.DeepLake : water.Kind, 0, wishes);
            var shaft = ShaftFit.Fit(handLengthMm, wishes);
            double spacing = blade.BendDegrees > 0 ? WithinDesign(design.HandSpacingMm + BentShaftShorterMm) : design.HandSpacingMm;
            string id = shortBlade ? "deeper-water" : "shallower-water";
            yield return new FittingAlternative(
                id,
                shortBlade
                    ? FormattableString.Invariant($"For deep water: the same area in a longer, quieter blade; needs {ImmersionDepth.NeededMm(other.LengthMm):0} mm of water.")
                    : FormattableString.Invariant($"For shallower water: the same area in a shorter, wider blade; needs {ImmersionDepth.NeededMm(other.LengthMm):0} mm of water."),
                Design(design.Label + (shortBlade ? ", deeper water" : ", shallower water"), spacing, design.FreeboardMm, other, grip, shaft, design.Species, demand.BodyMassKg));
        }

        if (design.Species != "sitka-spruce")
        {
            var light = ShaftFit.Fit(handLengthMm, new PaddlerPreferences(LightCarry: true));
            yield return new FittingAlternative(
                "lighter-carry",
                "Lighter on the portage: a softwood of two thirds to four fifths of the weight and the slimmest shaft that fits the hand; it dents more easily.",
                design with { Label = design.Label + ", lighter carry", Species = "sitka-spruce", ShaftWidthMm = light.WidthMm, ShaftThicknessMm = light.ThicknessMm });
        }
        else
        {
            yield return new FittingAlternative(
                "harder-use", "For rocks and years of hire: a tougher, heavier wood.", design with { Label = design.Label + ", harder use", Species = "white-ash" });
        }

        bool atTop = design.FreeboardMm >= LengthRules.HighestFreeboardMm;
        yield return new FittingAlternative(
            atTop ? "lower-seat" : "higher-seat",
            atTop ? "For a lower seat: the least clear shaft of common practice." : "For a higher seat or more reach in steering: the most clear shaft of common practice.",
            design with
            {
                Label = design.Label + (atTop ? ", lower seat" : ", higher seat"),
                FreeboardMm = atTop ? LengthRules.LowestFreeboardMm : LengthRules.HighestFreeboardMm,
            });
    }

    private static IEnumerable<FittingCaution> Cautions(
        double fittedMm, SuggestedDesign design, BladeInWater stroke, ImmersionAdvice immersion, RuleSpread spread, SeatedBody? seated, double seatHeightMm,
        WaterPlan water, IReadOnlyList<MethodResult> lengths)
    {
        var demand = stroke.Demand;
        if (Math.Abs(fittedMm - design.HandSpacingMm) > 0.5)
        {
            yield return new("spacing-limited", FormattableString.Invariant($"A hand spacing of {fittedMm:0} mm is outside what a design accepts ({LowestSpacingMm} to {HighestSpacingMm} mm): the nearest is suggested."), "service's own limit");
        }

        if (spread.Flagged)
        {
            yield return new("rules-differ", FormattableString.Invariant($"The trade's length rules differ by {spread.SpreadMm:0} mm for this person. They serve two styles, long reach and seated, so they are shown side by side, not averaged; the one used is {spread.UsedId}. Try a paddle of each length if you can."), "comparison of the rules shown in methods");
        }

        if (lengths.FirstOrDefault(m => m.Role == "cap") is { } cap && design.OverallLengthMm > cap.ValueMm)
        {
            yield return new("grip-above-crown", FormattableString.Invariant($"With the shaft upright and the throat at the water the grip would stand above the crown ({design.OverallLengthMm:0} against {cap.ValueMm:0} mm): choose a shorter paddle or check the seat height."), cap.Source);
        }

        if (seated is not null)
        {
            double hand = LengthRules.TopHandAboveSeatMm(design.HandSpacingMm + design.FreeboardMm, LeanDegrees, seatHeightMm);
            if (hand > seated.EyeHeightMm)
            {
                yield return new("hand-above-eye", FormattableString.Invariant($"With the shaft leaning {LeanDegrees}° the grip hand is {hand:0} mm above the seat, higher than the eye ({seated.EyeHeightMm:0} mm): hard on the shoulder."), "geometry; advice from an outfitter's article");
            }
            else if (hand > seated.ShoulderHeightMm)
            {
                yield return new("hand-above-shoulder", FormattableString.Invariant($"With the shaft leaning {LeanDegrees}° the grip hand is {hand:0} mm above the seat, above the shoulder ({seated.ShoulderHeightMm:0} mm): usual for a long reach; keep it lower when the shoulder complains and whenever you brace."), "geometry; advice from an outfitter's article");
            }
        }

        if (immersion.ImmersedShare < 1)
        {
            yield return new("blade-not-immersed", FormattableString.Invariant($"Even the shortest blade has only {100 * immersion.ImmersedShare:0} % of its length under water here; air drawn down its back can take far more of the pull than that, by an amount nobody has published. Expect to pole or wade."), "geometry; common practice, no source");
        }

        double sustained = EffortArea.SustainedPullPerMass * EffortArea.MassScale(demand.BodyMassKg);
        if (demand.MeanPullN > sustained)
        {
            yield return new("pull-hard-to-hold", FormattableString.Invariant($"At {demand.StrokesPerMinute:0} strokes/min each pull must average {demand.MeanPullN:0} N, more than trained paddlers of this body mass averaged ({sustained:0} N): raise the cadence or ease off."), "Ho, Smith and O'Meara 2009 (abstract)");
        }

        if (stroke.StrokesPerDay > LongDayStrokes)
        {
            yield return new("long-day", FormattableString.Invariant($"{stroke.StrokesPerDay:0} strokes a day is more than most trips ask (8000 to 16 000): weight and a comfortable shaft count more than area."), "a canoe-trip article (about 8000 a day) and cadence times hours");
        }

        double asked = stroke.TargetAreaMm2;
        if (Math.Abs((stroke.BladeAreaMm2 / asked) - 1) > 0.05)
        {
            yield return new("area-limited", FormattableString.Invariant($"This family's sizes give {stroke.BladeAreaMm2 / 100:0} cm² where {asked / 100:0} cm² were asked for."), "common practice, no source");
        }

        double model = ModelArea(demand.TargetAreaMm2, water.Kind);
        if (Math.Abs((model / asked) - 1) > 0.001)
        {
            yield return new("area-outside-trade", FormattableString.Invariant($"The water model alone asks for {model / 100:0} cm²; the trade's range of {EffortArea.SmallestAreaMm2 / 100:0} to {EffortArea.LargestAreaMm2 / 100:0} cm² is kept."), "common practice, no source");
        }

        if (water is { Kind: WaterKind.Shallow, DepthMm: null })
        {
            yield return new("depth-unknown", FormattableString.Invariant($"The depth is not known: this blade needs {ImmersionDepth.NeededMm(design.BladeLengthMm):0} mm. Measure the shallowest place you paddle often."), "geometry; clearance assumed");
        }

        yield return new("water-model", "Slip and efficiency come from steady flow with a low and a high drag coefficient: use them to compare blades, not to predict speed.", "Hoerner's plate data; Caplan and Gardner's flume data; published paddling efficiency is 67 to 76 % (Ho, Smith and O'Meara 2009)");
        if (water.TemperatureC is < 21)
        {
            yield return new("cold-water", "Cold water: about a minute to get the breath back, ten minutes of useful movement, an hour before unconsciousness. Dress for the water, not the air.", "Giesbrecht's 1-10-1, as printed by a Canadian park agency and the US Coast Guard");
        }

        yield return new("life-jacket", "Wear a fastened life jacket all the time on the water: in 2021 81 % of fatal boating accidents' victims with known cause drowned, and 83 % of those wore none.", "US Coast Guard, Recreational Boating Statistics 2021");
    }
}
