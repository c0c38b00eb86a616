using System.Globalization;
using Paddle.Design.Laminating;
using Paddle.Design.Units;

namespace Paddle.Design.Build;

/// <summary>What is done before the outline is sawn where a paddle is glued up of strips, in the order of the work.</summary>
internal static class GlueUpWords
{
    /// <summary>The steps; none of one piece.</summary>
    internal static IReadOnlyList<string> For(DesignReport report)
    {
        if (report.Laminate is not { } laminate) return [];
        var (up, glue, units) = (laminate.GlueLines, laminate.Laminate.Adhesive, report.Specification.Units);
        string Up(double mm) => DrawnLength.Text(mm, units, LengthRounding.Up);
        return
        [
            .. up.Strips.Select(strip => Cut(strip, Up)),
            $"Plane the edges square and straight just before gluing, {DrawnLength.Shaving(1, units)} off each. Lay the strips with their middle planes in one plane and their "
                + "grain running the same way, so that one plane shaves them all.",
            "Fit them dry, with every clamp, and hold the joints against the light: nothing may show through. Mark a line across all strips to find the places again.",
            $"Spread {DrawnAmount.Mass(up.GlueG, units)} of {glue.Name} in all, for {Count(up.Count, "joint")} of {DrawnAmount.Area(up.AreaCm2, units)} together. {glue.Use}",
            $"Clamp every {DrawnLength.Rough(up.ClampSpacingMm, units)}, from the middle outward, over battens and release film: {up.Clamps} clamps for the longest joint, "
                + $"{Force(up.ClampForceN)} each at least. Keep the strips flat with battens across. Wipe off what is squeezed out before it hardens.",
            .. laminate.Laminate.TipPiece is { } tip
                ? (string[])[$"The piece across the tip, {DrawnLength.Text(tip.LengthMm, units)} of {Name(tip.Wood.Species)}, is glued on last, to the ends of the strips planed square: size the end grain with a first "
                    + "thin coat, then spread again; a tongue or a spline along the joint keeps it where a knock would open it. Its grain lies across the blade."]
                : [],
            $"Leave it {glue.CureHours:0} hours at {DrawnAmount.Temperature(20, units)}, longer in the cold, before the clamps come off and before it is planed. Then plane the faces fair: that is the "
                + "board which the stages start from. Strips are no thicker than they must be, so the weights of a full board do not hold at first: weigh from the "
                + "eight-sided shaft on.",
            .. laminate is { Facing: { } faced, Laminate.Facing: { } facing }
                ? (string[])[$"The sheets on the faces: 2 of {Name(facing.Wood.Species)}, {DrawnLength.Shaving(facing.ThicknessMm, units)} thick, {Up(faced.WidthMm + 20)} by {Up(faced.LengthMm + 20)} with something to trim, "
                    + $"from {DrawnLength.Text(faced.FromMm, units)} below the top of the grip to the tip. Plane the blade to its plan less {DrawnLength.Shaving(facing.ThicknessMm, units)} on each face there, spread "
                    + $"{DrawnAmount.Area(faced.AreaCm2, units)} in all, lay both at once so that the blade stays flat, and press them between padded cauls shaped to the crown or in a vacuum bag. "
                    + "Feather the upper end into the wood. Weights of the stages are those of a blade with its sheets on."]
                : [],
            $"{glue.Caution} [{glue.CautionSource}]",
        ];
    }

    private static string Cut(StripToCut strip, Func<double, string> up) =>
        $"{strip.Count} of {Name(strip.Species)}, {(strip.Part == "whole" ? "whole length" : strip.Part == "tip" ? "across the tip" : $"for the {strip.Part}")}: saw {up(strip.CutWidthMm)} wide, "
        + $"{up(strip.ThicknessMm)} thick, {up(strip.LengthMm)} long"
        + (strip.Part == "whole" ? "." : $"; its finished wood lies from {up(strip.FromMm)} to {up(strip.ToMm)} below the top of the grip.");

    private static string Name(string species) => species.Replace('-', ' ');

    private static string Count(int number, string what) => string.Create(CultureInfo.InvariantCulture, $"{number} {what}{(number == 1 ? "" : "s")}");

    private static string Force(double newtons) => string.Create(CultureInfo.InvariantCulture, $"{10 * Math.Ceiling(newtons / 10):0} N");
}
