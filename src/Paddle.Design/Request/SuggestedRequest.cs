using Paddle.Design.Fitting;
using Paddle.Design.Units;

namespace Paddle.Design.Request;

/// <summary>What a fitting suggests, as a request for its design.</summary>
internal static class SuggestedRequest
{
    /// <summary>The request. The shaft is pinned, as it fits the hand; the blade's thicknesses stay open for the solver.</summary>
    public static DesignRequest ToRequest(this SuggestedDesign design) =>
        new()
        {
            Label = design.Label,
            HandSpacingMm = design.HandSpacingMm,
            FreeboardMm = design.FreeboardMm,
            Blade = new() { Family = design.BladeFamily, LengthMm = design.BladeLengthMm, WidthMm = design.BladeWidthMm },
            Shaft = new()
            {
                WidthMm = design.Shaft.WidthMm,
                ThicknessMm = design.Shaft.ThicknessMm,
                UpperWidthMm = design.Shaft.UpperWidthMm,
                UpperThicknessMm = design.Shaft.UpperThicknessMm,
                BendDegrees = design.BendDegrees,
            },
            Grip = new()
            {
                Style = Names.Of(design.Grip.Style),
                WidthMm = design.Grip.WidthMm,
                LengthMm = design.Grip.LengthMm,
                Faces = Names.Of(design.Grip.Faces),
            },
            Wood = new() { Species = design.Species },
            Loads = new() { Duty = Names.Of(design.Duty), BodyMassKg = Math.Round(design.BodyMassKg, 1) },
            Drawing = design.Units == DrawingUnits.Metric ? null : new() { Units = Names.Of(design.Units) },
        };
}
