using Paddle.Design.Fitting;
using Paddle.Design.Strength;
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
                Style = Names.GripStyles.NameOf(design.Grip.Style),
                WidthMm = design.Grip.WidthMm,
                LengthMm = design.Grip.LengthMm,
                Faces = Names.GripFaces.NameOf(design.Grip.Faces),
            },
            Wood = new() { Species = design.Species },
            Loads = new() { Duty = DutyName(design.Duty), BodyMassKg = Math.Round(design.BodyMassKg, 1) },
            Drawing = design.Units == DrawingUnits.Metric ? null : new() { Units = Names.Units.NameOf(design.Units) },
        };

    /// <summary>A fitting's duty by the name of the design's: fitting comes before strength in the order of the work and has duties of its own.</summary>
    public static string DutyName(PaddleDuty duty) => Names.Duties.NameOf(Enum.Parse<Duty>(duty.ToString()));
}
