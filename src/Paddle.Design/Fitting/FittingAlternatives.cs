namespace Paddle.Design.Fitting;

/// <summary>Other paddles that would also do, the most telling first. There are always at least two.</summary>
internal static class FittingAlternatives
{
    public static IEnumerable<FittingAlternative> Of(SuggestedDesign design, FittingStory story, SeatedBody? seated, double seatHeightMm)
    {
        if (story.Wishes.SensitiveJoints is true && seated is not null)
        {
            var low = (design with { HandSpacingMm = seated.ShoulderHeightMm + seatHeightMm - design.FreeboardMm }).WithinLimits();
            if (low.HandSpacingMm <= design.HandSpacingMm - LengthRules.LowestFreeboardMm)
            {
                yield return new FittingAlternative(
                    "hand-at-shoulder",
                    "Keeps the grip hand at shoulder height with the shaft upright, to spare the shoulder; both hand forces rise as the hands come closer.",
                    low with { Label = design.Label + ", hand at shoulder" });
            }
        }

        if (OtherBend(design, story) is { } otherBend) yield return otherBend;
        if (OtherDepth(design, story) is { } otherDepth) yield return otherDepth;
        yield return OtherWood(design, story);

        var atTop = design.FreeboardMm >= LengthRules.HighestFreeboardMm;
        yield return new FittingAlternative(
            atTop ? "lower-seat" : "higher-seat",
            atTop ? "For a lower seat: the least clear shaft of common practice." : "For a higher seat or more reach in steering: the most clear shaft of common practice.",
            design with
            {
                Label = design.Label + (atTop ? ", lower seat" : ", higher seat"),
                FreeboardMm = atTop ? LengthRules.LowestFreeboardMm : LengthRules.HighestFreeboardMm,
            });
    }

    // The family that a straight shaft would have here.
    private static BladeSizes StraightFamily(FittingStory story) =>
        BladeChoice.Choose(story.Water.Kind, story.Seat.Place, false, story.Wishes.SensitiveJoints is true).Family;

    // Who sits may switch sides with a bent shaft, and who has one may want both faces.
    private static FittingAlternative? OtherBend(SuggestedDesign design, FittingStory story)
    {
        if (story.Seat.Posture != Posture.Sitting || story.Water.Kind == WaterKind.FastWater) return null;
        return story.IsBent
            ? new FittingAlternative(
                "straight-shaft",
                "With a straight shaft: the body's own hand spacing and a longer blade, for steering, leaning on the blade and pulling with either face.",
                Other(design, story, ", straight shaft", StraightFamily(story), 0))
            : new FittingAlternative(
                "sit-and-switch",
                "For sitting, switching sides and a quick cadence: a bent shaft with the hands closer and a short, wide blade.",
                Other(design, story, ", sit and switch", BladeChoice.Family("teardrop"), BladeChoice.BentShaftDegrees));
    }

    private static FittingAlternative? OtherDepth(SuggestedDesign design, FittingStory story) =>
        design.BladeFamily is not ("sugar-island" or "square-tip" or "teardrop") || story.Immersion.ImmersedShare < 1 ? Shallower(design, story) : Deeper(design, story);

    private static FittingAlternative? Deeper(SuggestedDesign design, FittingStory story)
    {
        var longer = BladeChoice.Family("ottertail");
        if (story.IsBent && StraightFamily(story) == longer) return null; // a straight shaft has it already
        var needed = ImmersionDepth.NeededMm(BladeChoice.Size(longer, story.Person.Spacing.ValueMm, story.Demand, 0).MadeLengthMm);
        return story.Water.DepthMm < needed ? null : new FittingAlternative(
            "deeper-water",
            FormattableString.Invariant($"For deep water: a longer, narrower, quieter blade; it needs {story.Rough(needed)} of water."),
            Other(design, story, ", deeper water", longer, 0, WaterKind.DeepLake));
    }

    // The longer of the two short blades that the water takes whole; where it takes neither, the shorter.
    private static FittingAlternative? Shallower(SuggestedDesign design, FittingStory story)
    {
        var shorter = Other(design, story, ", shallower water", BladeChoice.Family("sugar-island"), 0, WaterKind.Shallow);
        var shortest = Other(design, story, ", shallower water", BladeChoice.Family("square-tip"), 0, WaterKind.Shallow);
        var other = story.Water.DepthMm < ImmersionDepth.NeededMm(shorter.BladeLengthMm) ? shortest : shorter;
        var needed = ImmersionDepth.NeededMm(other.BladeLengthMm);
        return story.IsBent || other.BladeLengthMm >= design.BladeLengthMm ? null : new FittingAlternative(
            "shallower-water",
            FormattableString.Invariant($"For shallower water: a shorter, wider blade; it needs {story.Rough(needed)} of water") + (story.Water.DepthMm < needed ? ", so even of it some stays out here." : "."),
            other);
    }

    // A lighter wood than ash is cherry, a lighter one than cherry spruce; from spruce the way leads back to what is tough.
    private static FittingAlternative OtherWood(SuggestedDesign design, FittingStory story)
    {
        if (story.Wood == SuggestedWood.Spruce)
            return new("harder-use", "For rocks and years of hire: a tougher, heavier wood.", InWood(design, story, SuggestedWood.Ash, story.Wishes, ", harder use"));

        var carried = story.Wishes with { LightCarry = true };
        return story.Wood == SuggestedWood.Ash
            ? new(
                "lighter-carry",
                "Lighter on the portage: black cherry, about a sixth lighter than ash, with a thicker shaft where it needs one.",
                InWood(design, story, SuggestedWood.Cherry, carried, ", lighter carry"))
            : new(
                "lighter-carry",
                "Lighter on the portage: Sitka spruce, about a fifth lighter than cherry, with a thicker shaft where it needs one; it dents more easily.",
                InWood(design, story, SuggestedWood.Spruce, carried, ", lighter carry"));
    }

    private static SuggestedDesign InWood(SuggestedDesign design, FittingStory story, SuggestedWood wood, PreferencesRequest wishes, string suffix) => design with
    {
        Label = design.Label + suffix,
        Species = wood.Species,
        Shaft = Shaft(design, story, wood, story.Immersion.Blade.Family, design.BladeLengthMm, wishes),
    };

    private static SuggestedDesign Other(
        SuggestedDesign design, FittingStory story, string suffix, BladeSizes family, double bendDegrees, WaterKind? water = null)
    {
        var kind = water ?? story.Water.Kind;
        var spacing = story.Person.Spacing.ValueMm;
        var blade = ImmersionDepth.Check(family, spacing, story.Demand, bendDegrees, story.Water.DepthMm).Blade;
        return new SuggestedDesign(
            design.Label + suffix,
            bendDegrees > 0 ? spacing - FittingAdvisor.BentShaftShorterMm : spacing,
            design.FreeboardMm, family.Id, blade.MadeLengthMm, blade.MadeWidthMm, bendDegrees,
            Shaft(design, story, story.Wood, family, blade.LengthMm, story.Wishes),
            GripFit.Fit(story.Person.HandLengthMm, story.Person.HandBreadthMm, kind, bendDegrees, story.Wishes),
            design.Species, design.BodyMassKg, design.Duty)
        {
            Units = design.Units,
        };
    }

    private static FittedShaft Shaft(
        SuggestedDesign design, FittingStory story, SuggestedWood wood, BladeSizes family, double bladeLengthMm, PreferencesRequest wishes) => ShaftFit.Fit(
        story.Person.HandLengthMm,
        ShaftFit.ForStrokesMm(design.BodyMassKg, design.Duty, design.FreeboardMm, family, bladeLengthMm, wood),
        wishes);
}
