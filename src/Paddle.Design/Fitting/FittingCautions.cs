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

    private const double Mm2PerCm2 = 100;

    public static IEnumerable<FittingCaution> Of(
        FittingStory story, double fittedMm, RuleSpread spread, SeatedBody? seated, double seatHeightMm, IReadOnlyList<MethodResult> lengths) =>
        Length(story.Design, fittedMm, spread, lengths)
            .Concat(Reach(story, seated, seatHeightMm))
            .Concat(Blade(story))
            .Concat(Strokes(story))
            .Concat(OnTheWater(story.Water));

    private static IEnumerable<FittingCaution> Length(SuggestedDesign design, double fittedMm, RuleSpread spread, IReadOnlyList<MethodResult> lengths)
    {
        if (Math.Abs(fittedMm - design.HandSpacingMm) > 0.5)
        {
            yield return new("spacing-limited", FormattableString.Invariant($"A hand spacing of {fittedMm:0} mm is outside what a design accepts ({PaddleLengths.HandSpacingLimitsMm.Min} to {PaddleLengths.HandSpacingLimitsMm.Max} mm, and {PaddleLengths.OverallLimitsMm.Min} to {PaddleLengths.OverallLimitsMm.Max} mm overall): {design.HandSpacingMm:0} mm is suggested."), "service's own limit");
        }

        if (spread.Flagged)
        {
            var longer = lengths.Where(m => m.Role == "beside").Average(m => m.ValueMm) < design.OverallLengthMm;
            yield return new("rules-differ", FormattableString.Invariant($"By the trade's rules of thumb for this person the paddle comes out {(longer ? "long" : "short")}, by more than the rules differ among themselves. The hand spacing goes before them; measure it and the stature again, or try a paddle of each length."), "comparison of the rules shown in methods; their scatter assumed");
        }

        if (lengths.FirstOrDefault(m => m.Role == "cap") is { } cap && design.OverallLengthMm > cap.ValueMm)
        {
            yield return new("grip-above-crown", FormattableString.Invariant($"With the shaft upright and the blade just under water the grip would stand above the crown ({design.OverallLengthMm:0} mm overall, where {cap.ValueMm:0} reach it): choose a shorter paddle or check the seat height."), cap.Source);
        }
    }

    private static IEnumerable<FittingCaution> Reach(FittingStory story, SeatedBody? seated, double seatHeightMm)
    {
        if (seated is null) yield break;
        var design = story.Design;
        var hand = LengthRules.TopHandAboveSeatMm(design.HandSpacingMm + design.FreeboardMm, LeanDegrees, seatHeightMm);
        if (hand > seated.EyeHeightMm)
        {
            yield return new("hand-above-eye", FormattableString.Invariant($"With the shaft leaning {LeanDegrees}° the grip hand is {hand:0} mm above the seat, higher than the eye ({seated.EyeHeightMm:0} mm): hard on the shoulder."), "geometry; advice from an outfitter's article");
        }
        else if (hand > seated.ShoulderHeightMm && story.Wishes.SensitiveJoints)
        {
            yield return new("hand-above-shoulder", FormattableString.Invariant($"With the shaft leaning {LeanDegrees}° the grip hand is {hand:0} mm above the seat, above the shoulder ({seated.ShoulderHeightMm:0} mm): usual for a long reach, but keep it lower when the shoulder complains and whenever you brace."), "geometry; advice from an outfitter's article");
        }
    }

    private static IEnumerable<FittingCaution> Blade(FittingStory story)
    {
        var (immersion, blade) = (story.Immersion, story.Immersion.Blade);
        if (immersion.ImmersedShare < 1)
        {
            yield return new("blade-not-immersed", FormattableString.Invariant($"Even the shortest {blade.Family.Name} has only {100 * immersion.ImmersedShare:0} % of its length under water here; air drawn down its back can take far more of the pull than that, by an amount nobody has published. Look at the other paddles offered, or expect to pole and wade."), "geometry; common practice, no source");
        }

        var share = blade.AreaMm2 / blade.WantedAreaMm2;
        if (Math.Abs(share - 1) > 0.05)
        {
            yield return new("area-limited", FormattableString.Invariant($"The usual sizes of {Words.WithArticle(blade.Family.Name)} give {blade.AreaMm2 / Mm2PerCm2:0} cm² where this outing would ask for {blade.WantedAreaMm2 / Mm2PerCm2:0}: the blade slips a little {(share < 1 ? "more" : "less")} than usual."), "common practice, no source");
        }

        if (story.Water is { Kind: WaterKind.Shallow, DepthMm: null })
        {
            yield return new("depth-unknown", FormattableString.Invariant($"The depth is not known: this blade needs {ImmersionDepth.NeededMm(story.Design.BladeLengthMm):0} mm. Measure the shallowest place you paddle often."), "geometry; clearance assumed");
        }
    }

    private static IEnumerable<FittingCaution> Strokes(FittingStory story)
    {
        var demand = story.Demand;
        var sustained = EffortArea.SustainedPullN(demand.BodyMassKg);
        if (demand.MeanPullN > sustained)
        {
            yield return new("pull-hard-to-hold", FormattableString.Invariant($"At {demand.StrokesPerMinute:0} strokes a minute each pull must average {demand.MeanPullN:0} N, more than trained paddlers of this body mass averaged ({sustained:0} N): raise the cadence or ease off."), "Ho, Smith and O'Meara 2009 (abstract)");
        }

        if (story.InWater.StrokesPerDay > LongDayStrokes)
        {
            yield return new("long-day", FormattableString.Invariant($"A day of {story.InWater.StrokesPerDay:0} strokes is more than most trips ask (8000 to 16 000): weight and a comfortable shaft count more than area."), "a canoe-trip article (about 8000 a day) and cadence times hours");
        }

        yield return new("water-model", "Slip and efficiency come from steady flow with a low and a high drag coefficient: use them to compare blades, not to predict speed.", "Hoerner's plate data; Caplan and Gardner's flume data; published paddling efficiency is 67 to 76 % (Ho, Smith and O'Meara 2009)");
    }

    private static IEnumerable<FittingCaution> OnTheWater(WaterPlan water)
    {
        if (water.TemperatureC is < ColdWaterC)
        {
            yield return new("cold-water", "Cold water: about a minute to get the breath back, ten minutes of useful movement, an hour before unconsciousness. Dress for the water, not the air.", "Giesbrecht's 1-10-1, as printed by a Canadian park agency and the US Coast Guard");
        }

        yield return new("life-jacket", "Wear a fastened life jacket all the time on the water: in 2021 81 % of fatal boating accidents' victims with known cause drowned, and 83 % of those wore none.", "US Coast Guard, Recreational Boating Statistics 2021");
    }
}
