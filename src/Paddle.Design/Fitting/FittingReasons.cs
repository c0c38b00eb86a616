using Paddle.Design.Strength;
using Paddle.Design.Units;

namespace Paddle.Design.Fitting;

/// <summary>All that was found on the way, for the sentences that tell of it.</summary>
/// <param name="Demand">What the outing asks.</param>
/// <param name="Immersion">Blade against depth.</param>
/// <param name="InWater">Slip and efficiency.</param>
/// <param name="Design">Design suggested.</param>
/// <param name="Units">Units of the sentences.</param>
/// <param name="SeatedUnknown">Whether nothing tells the heights above the seat.</param>
internal sealed record FittingStory(
    PersonInFull Person,
    SeatRequest Seat,
    WaterRequest Water,
    PreferencesRequest Wishes,
    StrokeDemand Demand,
    ImmersionAdvice Immersion,
    string FamilyReason,
    BladeInWater InWater,
    Duty Duty,
    SuggestedWood Wood,
    FittedShaft Shaft,
    FittedGrip Grip,
    SuggestedDesign Design,
    DrawingUnits Units,
    bool SeatedUnknown)
{
    public bool IsBent => Design.BendDegrees > 0;

    /// <summary>A length as people say it, with its unit: what is carved to a tenth or a thirty-second, what a body or a water measures roughly.</summary>
    public string Exact(double lengthMm) => DrawnLength.Text(lengthMm, Units);
    /// <inheritdoc cref="Exact"/>
    public string Rough(double lengthMm) => DrawnLength.Rough(lengthMm, Units);
    /// <summary>A rough length without its unit.</summary>
    public string Figure(double lengthMm) => DrawnLength.RoughFigure(lengthMm, Units);
    /// <summary>From one rough length to another.</summary>
    public string Range(double fromMm, double toMm) => $"{Figure(fromMm)} to {Rough(toMm)}";
    /// <summary>An area.</summary>
    public string Area(double areaMm2) => DrawnAmount.Area(areaMm2 / Mm2PerCm2, Units);

    private const double Mm2PerCm2 = 100;
}

/// <summary>Why the paddle is what it is, one sentence after the other in the order of the work.</summary>
internal static class FittingReasons
{
    public static IEnumerable<string> Of(FittingStory story) =>
        story.Person.Reasons.Concat(Length(story)).Concat(Blade(story)).Concat(Strength(story)).Append(story.Grip.Reason);

    private static IEnumerable<string> Length(FittingStory story)
    {
        var design = story.Design;
        if (story.IsBent)
            yield return FormattableString.Invariant($"Bent shaft: the hands are set {story.Rough(FittingAdvisor.BentShaftShorterMm)} closer than the body's own spacing (common practice {story.Range(50, 100)}), as the seated stroke is short and ends at the hip.");
        else if (story.Wishes.BentShaft is true)
            yield return story.Seat.Posture == Posture.Kneeling
                ? "The shaft stays straight: a bent one suits the short stroke of who sits, and this paddler kneels."
                : "The shaft stays straight: in rapids both faces of the blade must pull.";

        var clear = story.Design.FreeboardMm;
        yield return FormattableString.Invariant($"Clear shaft between the lower hand's middle and the blade: {story.Rough(clear)}; the trade leaves {story.Range(LengthRules.LowestFreeboardMm, LengthRules.HighestFreeboardMm)}, more on a high seat and where the paddler steers.");
        yield return "Overall length is grip end to hand + hand spacing + clear shaft + blade, with the hands taken at their middles; the bar-on-the-head rule of the trade adds half a hand and is shown beside it.";
        yield return FormattableString.Invariant($"Only the shaft, {story.Rough(design.Grip.TopHandMm + design.HandSpacingMm + clear)} from grip end to blade, must fit the body: another blade changes the overall length {(story.Units == DrawingUnits.Metric ? "millimetre for millimetre" : "inch for inch")}.");
        if (story.SeatedUnknown) yield return "Without a sitting height or a stature the rules for seated paddlers cannot be shown.";
    }

    private static IEnumerable<string> Blade(FittingStory story)
    {
        var (immersion, demand, water) = (story.Immersion, story.Demand, story.InWater);
        var blade = immersion.Blade;
        yield return story.FamilyReason;
        if (!immersion.Fits)
            yield return FormattableString.Invariant($"The water is {story.Rough(immersion.DepthMm!.Value)} deep and a blade to this body's size needs {story.Figure(immersion.NeededMm)}: it is kept to {story.Rough(blade.MadeLengthMm)} and made wider instead, as far as {Words.WithArticle(blade.Family.Name)} goes.");
        yield return FormattableString.Invariant($"The blade's length follows the body and its width carries the area: {story.Area(blade.AreaMm2)} at {DrawnAmount.BodyMass(demand.BodyMassKg, story.Units)} and {demand.StrokesPerMinute:0} strokes a minute. The scale is set by what people carry, not by measurement.");
        yield return FormattableString.Invariant($"At {demand.BoatSpeedMS:0.0} m/s each pull averages {demand.MeanPullN:0} N over {demand.PullSeconds:0.00} s and the blade slips {water.SlipAtHighCoefficientMS:0.00} to {water.SlipAtLowCoefficientMS:0.00} m/s.");
    }

    private static IEnumerable<string> Strength(FittingStory story)
    {
        var shaft = story.Shaft;
        yield return Duties.Reason(story.Duty);
        yield return story.Wood.Reason;
        yield return FormattableString.Invariant($"Shaft {DrawnLength.Figure(shaft.WidthMm, story.Units)} × {story.Exact(shaft.ThicknessMm)}, as much round as {story.Exact(shaft.EquivalentDiameterMm)}: ") + shaft.SetBy switch
        {
            ShaftSizeSetBy.Hand => $"this hand holds it as the mean man's holds the trade's {Trade(ShaftFit.TradeMm, story)}" + story.Wishes switch
            {
                { SensitiveJoints: true } => ", and a little more to spare the joints.",
                { LightCarry: true } => ", a little less for the carry.",
                _ => ".",
            },
            ShaftSizeSetBy.Aims => "as near as balance and strength allow to what the hand likes.",
            ShaftSizeSetBy.Strokes => $"the trade's {Trade(ShaftFit.TradeMm, story)} brought to the strokes of this body and this outing; the hand alone would take less.",
            _ => shaft.EquivalentDiameterMm > ShaftFit.TradeMm ? "no shaft is made thicker." : $"the least for a shaft ({Trade(ShaftFit.SmallestMm, story)}); this hand and its strokes would take less.",
        };
    }

    // The trade names its shafts in inches, wherever it is.
    private static string Trade(double diameterMm, FittingStory story) =>
        story.Units == DrawingUnits.Metric ? $"{story.Exact(diameterMm)} ({DrawnLength.Text(diameterMm, DrawingUnits.Inch)})" : story.Exact(diameterMm);
}

/// <summary>What to mind with a fitting, beside doubts about single measurements.</summary>
internal static class FittingCautions
{
    /// <summary>Lean of the shaft at which the grip hand's height is judged, degrees (assumption, no source).</summary>
    private const double LeanDegrees = 20;
    /// <summary>Strokes a day above which a day counts as long: 6 h at 45 a minute (derived).</summary>
    private const double LongDayStrokes = 16_000;
    /// <summary>Water temperature below which the cold-water rule is printed, °C. Source: US Coast Guard page (about 70 °F).</summary>
    private const double ColdWaterC = 21;

    public static IEnumerable<Caution> Of(
        FittingStory story, double fittedMm, RuleSpread spread, SeatedBody? seated, double seatHeightMm, IReadOnlyList<MethodResult> lengths) =>
        Length(story, fittedMm, spread, lengths).Concat(Reach(story, seated, seatHeightMm)).Concat(Blade(story))
            .Concat(Strokes(story))
            .Concat(OnTheWater(story.Water));

    private static IEnumerable<Caution> Length(FittingStory story, double fittedMm, RuleSpread spread, IReadOnlyList<MethodResult> lengths)
    {
        var design = story.Design;
        if (Math.Abs(fittedMm - design.HandSpacingMm) > 0.5)
        {
            yield return new("spacing-limited", FormattableString.Invariant($"A hand spacing of {story.Rough(fittedMm)} is outside what a design accepts ({story.Range(PaddleLengths.HandSpacingLimitsMm.Min, PaddleLengths.HandSpacingLimitsMm.Max)}, and {story.Range(PaddleLengths.OverallLimitsMm.Min, PaddleLengths.OverallLimitsMm.Max)} overall): {story.Rough(design.HandSpacingMm)} is suggested."), "service's own limit");
        }

        if (spread.Flagged)
        {
            var longer = lengths.Where(m => m.Role == "beside").Average(m => m.ValueMm) < design.OverallLengthMm;
            yield return new("rules-differ", FormattableString.Invariant($"By the trade's rules of thumb for this person the paddle comes out {(longer ? "long" : "short")}, by more than the rules differ among themselves. The hand spacing goes before them; measure it and the stature again, or try a paddle of each length."), "comparison of the rules shown in methods; their scatter assumed");
        }

        if (lengths.FirstOrDefault(m => m.Role == "cap") is { } cap && design.OverallLengthMm > cap.ValueMm)
        {
            yield return new("grip-above-crown", FormattableString.Invariant($"With the shaft upright and the blade just under water the grip would stand above the crown ({story.Rough(design.OverallLengthMm)} overall, where {story.Figure(cap.ValueMm)} reach it): choose a shorter paddle or check the seat height."), cap.Source);
        }
    }

    private static IEnumerable<Caution> Reach(FittingStory story, SeatedBody? seated, double seatHeightMm)
    {
        if (seated is null) yield break;
        var design = story.Design;
        var hand = LengthRules.TopHandAboveSeatMm(design.HandSpacingMm + design.FreeboardMm, LeanDegrees, seatHeightMm);
        if (hand > seated.EyeHeightMm)
        {
            yield return new("hand-above-eye", FormattableString.Invariant($"With the shaft leaning {LeanDegrees}° the grip hand is {story.Rough(hand)} above the seat, higher than the eye ({story.Rough(seated.EyeHeightMm)}): hard on the shoulder."), "geometry; advice from an outfitter's article");
        }
        else if (hand > seated.ShoulderHeightMm && story.Wishes.SensitiveJoints is true)
        {
            yield return new("hand-above-shoulder", FormattableString.Invariant($"With the shaft leaning {LeanDegrees}° the grip hand is {story.Rough(hand)} above the seat, above the shoulder ({story.Rough(seated.ShoulderHeightMm)}): usual for a long reach, but keep it lower when the shoulder complains and whenever you brace."), "geometry; advice from an outfitter's article");
        }
    }

    private static IEnumerable<Caution> Blade(FittingStory story)
    {
        var (immersion, blade) = (story.Immersion, story.Immersion.Blade);
        if (immersion.ImmersedShare < 1)
        {
            yield return new("blade-not-immersed", FormattableString.Invariant($"Even the shortest {blade.Family.Name} has only {100 * immersion.ImmersedShare:0} % of its length under water here; air drawn down its back can take far more of the pull than that, by an amount nobody has published. Look at the other paddles offered, or expect to pole and wade."), "geometry; common practice, no source");
        }

        var share = blade.AreaMm2 / blade.WantedAreaMm2;
        if (Math.Abs(share - 1) > 0.05)
        {
            yield return new("area-limited", FormattableString.Invariant($"The usual sizes of {Words.WithArticle(blade.Family.Name)} give {story.Area(blade.AreaMm2)} where this outing would ask for {story.Area(blade.WantedAreaMm2)}: the blade slips a little {(share < 1 ? "more" : "less")} than usual."), "common practice, no source");
        }

        if (story.Water is { Kind: WaterKind.Shallow, DepthMm: null })
        {
            yield return new("depth-unknown", FormattableString.Invariant($"The depth is not known: this blade needs {story.Rough(ImmersionDepth.NeededMm(story.Design.BladeLengthMm))}. Measure the shallowest place you paddle often."), "geometry; clearance assumed");
        }
    }

    private static IEnumerable<Caution> Strokes(FittingStory story)
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

    private static IEnumerable<Caution> OnTheWater(WaterRequest water)
    {
        if (water.TemperatureC is < ColdWaterC)
        {
            yield return new("cold-water", "Cold water: about a minute to get the breath back, ten minutes of useful movement, an hour before unconsciousness. Dress for the water, not the air.", "Giesbrecht's 1-10-1, as printed by a Canadian park agency and the US Coast Guard");
        }

        yield return new("life-jacket", "Wear a fastened life jacket all the time on the water: in 2021 81 % of fatal boating accidents' victims with known cause drowned, and 83 % of those wore none.", "US Coast Guard, Recreational Boating Statistics 2021");
    }
}
