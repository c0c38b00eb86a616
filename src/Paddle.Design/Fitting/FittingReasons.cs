namespace Paddle.Design.Fitting;

/// <summary>All that was found on the way, for the sentences that tell of it.</summary>
/// <param name="Demand">What the outing asks.</param>
/// <param name="Immersion">Blade against depth.</param>
/// <param name="FamilyReason">Why this family.</param>
/// <param name="InWater">Slip and efficiency.</param>
/// <param name="Design">Design suggested.</param>
/// <param name="SeatedUnknown">Whether nothing tells the heights above the seat.</param>
internal sealed record FittingStory(
    PersonInFull Person,
    SeatPlan Seat,
    WaterPlan Water,
    PaddlerPreferences Wishes,
    StrokeDemand Demand,
    ImmersionAdvice Immersion,
    string FamilyReason,
    BladeInWater InWater,
    PaddleDuty Duty,
    SuggestedWood Wood,
    ShaftSection Shaft,
    GripSize Grip,
    SuggestedDesign Design,
    bool SeatedUnknown)
{
    public bool IsBent => Design.BendDegrees > 0;
}

/// <summary>Why the paddle is what it is, one sentence after the other in the order of the work.</summary>
internal static class FittingReasons
{
    private const double Mm2PerCm2 = 100;

    public static IEnumerable<string> Of(FittingStory story) =>
        story.Person.Reasons.Concat(Length(story)).Concat(Blade(story)).Concat(Strength(story)).Append(story.Grip.Reason);

    private static IEnumerable<string> Length(FittingStory story)
    {
        var design = story.Design;
        if (story.IsBent)
            yield return FormattableString.Invariant($"Bent shaft: the hands are set {FittingAdvisor.BentShaftShorterMm} mm closer than the body's own spacing (common practice 50 to 100), as the seated stroke is short and ends at the hip.");
        else if (story.Wishes.BentShaft)
            yield return story.Seat.Posture == Posture.Kneeling
                ? "The shaft stays straight: a bent one suits the short stroke of who sits, and this paddler kneels."
                : "The shaft stays straight: in rapids both faces of the blade must pull.";

        var clear = story.Design.FreeboardMm;
        yield return FormattableString.Invariant($"Clear shaft between the lower hand's middle and the blade: {clear:0} mm; the trade leaves 25 to 50, more on a high seat and where the paddler steers.");
        yield return "Overall length is grip end to hand + hand spacing + clear shaft + blade, with the hands taken at their middles; the bar-on-the-head rule of the trade adds half a hand and is shown beside it.";
        yield return FormattableString.Invariant($"Only the shaft, {design.Grip.TopHandMm + design.HandSpacingMm + clear:0} mm from grip end to blade, must fit the body: another blade changes the overall length millimetre for millimetre.");
        if (story.SeatedUnknown) yield return "Without a sitting height or a stature the rules for seated paddlers cannot be shown.";
    }

    private static IEnumerable<string> Blade(FittingStory story)
    {
        var (immersion, demand, water) = (story.Immersion, story.Demand, story.InWater);
        var blade = immersion.Blade;
        yield return story.FamilyReason;
        if (!immersion.Fits)
            yield return FormattableString.Invariant($"The water is {immersion.DepthMm:0} mm deep and a blade to this body's size needs {immersion.NeededMm:0}: it is kept to {blade.MadeLengthMm:0} mm and made wider instead, as far as {Words.WithArticle(blade.Family.Name)} goes.");
        yield return FormattableString.Invariant($"The blade's length follows the body and its width carries the area: {blade.AreaMm2 / Mm2PerCm2:0} cm² at {demand.BodyMassKg:0} kg and {demand.StrokesPerMinute:0} strokes a minute. The scale is set by what people carry, not by measurement.");
        yield return FormattableString.Invariant($"At {demand.BoatSpeedMS:0.0} m/s each pull averages {demand.MeanPullN:0} N over {demand.PullSeconds:0.00} s and the blade slips {water.SlipAtHighCoefficientMS:0.00} to {water.SlipAtLowCoefficientMS:0.00} m/s.");
    }

    private static IEnumerable<string> Strength(FittingStory story)
    {
        var shaft = story.Shaft;
        yield return Duties.Reason(story.Duty);
        yield return story.Wood.Reason;
        yield return FormattableString.Invariant($"Shaft {shaft.WidthMm:0.0} × {shaft.ThicknessMm:0.0} mm, as much round as {shaft.EquivalentDiameterMm:0.0} mm: ") + shaft.SetBy switch
        {
            ShaftSizeSetBy.Hand => "this hand holds it as the mean man's holds the trade's 28.6 mm (1 1/8 in)" + story.Wishes switch
            {
                { SensitiveJoints: true } => ", and a little more to spare the joints.",
                { LightCarry: true } => ", a little less for the carry.",
                _ => ".",
            },
            ShaftSizeSetBy.Aims => "as near as balance and strength allow to what the hand likes.",
            ShaftSizeSetBy.Strokes => "the trade's 28.6 mm (1 1/8 in) brought to the strokes of this body and this outing; the hand alone would take less.",
            _ => shaft.EquivalentDiameterMm > ShaftFit.TradeMm ? "no shaft is made thicker." : "the least for a shaft (7/8 in); this hand and its strokes would take less.",
        };
    }
}
