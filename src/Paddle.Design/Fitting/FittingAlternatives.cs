namespace Paddle.Design.Fitting;

/// <summary>Other paddles that would also do, the most telling first. There are always at least two.</summary>
internal static class FittingAlternatives
{
    public static IEnumerable<FittingAlternative> Of(
        SuggestedDesign design, double areaMm2, ChosenBlade blade, double handLengthMm, double handBreadthMm, WaterPlan water, PaddlerPreferences wishes,
        SeatedBody? seated, double seatHeightMm)
    {
        if (wishes.SensitiveJoints && seated is not null)
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

        bool shortBlade = blade.Family.Id is "sugar-island" or "square-tip" or "teardrop";
        var other = BladeChoice.Size(BladeChoice.Family(shortBlade ? "ottertail" : "sugar-island"), areaMm2, 0);
        if (!shortBlade || water.DepthMm is not { } depth || depth >= ImmersionDepth.NeededMm(other.LengthMm))
        {
            var grip = GripFit.Fit(handLengthMm, handBreadthMm, shortBlade ? WaterKind.DeepLake : water.Kind, 0, wishes);
            var shaft = ShaftFit.Fit(handLengthMm, wishes);
            double spacing = blade.BendDegrees > 0 ? design.HandSpacingMm + FittingAdvisor.BentShaftShorterMm : design.HandSpacingMm;
            string id = shortBlade ? "deeper-water" : "shallower-water";
            yield return new FittingAlternative(
                id,
                shortBlade
                    ? FormattableString.Invariant($"For deep water: the same area in a longer, quieter blade; needs {ImmersionDepth.NeededMm(other.LengthMm):0} mm of water.")
                    : FormattableString.Invariant($"For shallower water: the same area in a shorter, wider blade; needs {ImmersionDepth.NeededMm(other.LengthMm):0} mm of water."),
                SuggestedDesign.Of(design.Label + (shortBlade ? ", deeper water" : ", shallower water"), spacing, design.FreeboardMm, other, grip, shaft, design.Species, design.BodyMassKg, design.HardStrokeN));
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
}
