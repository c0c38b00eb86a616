namespace Paddle.Design.Fitting;

/// <summary>What to mind with a fitting, beside doubts about single measurements.</summary>
internal static class FittingCautions
{
    /// <summary>Lean of the shaft at which the grip hand's height is judged, degrees (assumption, no source).</summary>
    private const double LeanDegrees = 20;

    /// <summary>Strokes a day above which a day counts as long: 6 h at 45 a minute (derived).</summary>
    private const double LongDayStrokes = 16_000;

    /// <summary>Water temperature below which the cold-water rule is printed, °C. Source: US Coast Guard page (about 70 °F).</summary>
    private const double ColdWaterC = 21;

    public static IEnumerable<FittingCaution> Of(
        double fittedMm, SuggestedDesign design, BladeInWater stroke, ImmersionAdvice immersion, RuleSpread spread, SeatedBody? seated, double seatHeightMm,
        WaterPlan water, IReadOnlyList<MethodResult> lengths)
    {
        var demand = stroke.Demand;
        if (Math.Abs(fittedMm - design.HandSpacingMm) > 0.5)
        {
            yield return new("spacing-limited", FormattableString.Invariant($"A hand spacing of {fittedMm:0} mm is outside what a design accepts ({PaddleLengths.HandSpacingLimitsMm.Min} to {PaddleLengths.HandSpacingLimitsMm.Max} mm, and {PaddleLengths.OverallLimitsMm.Min} mm overall at least): {design.HandSpacingMm:0} mm is suggested."), "service's own limit");
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

        double sustained = EffortArea.SustainedPullN(demand.BodyMassKg);
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

        double model = EffortArea.WaterAreaMm2(demand.TargetAreaMm2, water.Kind);
        if (Math.Abs((model / asked) - 1) > 0.001)
        {
            yield return new("area-outside-trade", FormattableString.Invariant($"The water model alone asks for {model / 100:0} cm²; the trade's range of {EffortArea.SmallestAreaMm2 / 100:0} to {EffortArea.LargestAreaMm2 / 100:0} cm² is kept."), "common practice, no source");
        }

        if (water is { Kind: WaterKind.Shallow, DepthMm: null })
        {
            yield return new("depth-unknown", FormattableString.Invariant($"The depth is not known: this blade needs {ImmersionDepth.NeededMm(design.BladeLengthMm):0} mm. Measure the shallowest place you paddle often."), "geometry; clearance assumed");
        }

        yield return new("water-model", "Slip and efficiency come from steady flow with a low and a high drag coefficient: use them to compare blades, not to predict speed.", "Hoerner's plate data; Caplan and Gardner's flume data; published paddling efficiency is 67 to 76 % (Ho, Smith and O'Meara 2009)");
        if (water.TemperatureC is < ColdWaterC)
        {
            yield return new("cold-water", "Cold water: about a minute to get the breath back, ten minutes of useful movement, an hour before unconsciousness. Dress for the water, not the air.", "Giesbrecht's 1-10-1, as printed by a Canadian park agency and the US Coast Guard");
        }

        yield return new("life-jacket", "Wear a fastened life jacket all the time on the water: in 2021 81 % of fatal boating accidents' victims with known cause drowned, and 83 % of those wore none.", "US Coast Guard, Recreational Boating Statistics 2021");
    }
}
