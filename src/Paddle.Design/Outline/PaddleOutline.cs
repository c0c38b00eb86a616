using System.Text.Json.Serialization;

namespace Paddle.Design.Outline;

/// <summary>Places along the paddle that every later step needs, mm from the top of the grip.</summary>
/// <param name="TopHandMm">Middle of the grip hand.</param>
/// <param name="GripEndMm">Where the plain shaft begins.</param>
/// <param name="LowerHandMm">Middle of the lower hand.</param>
/// <param name="ThroatMm">Where the shaft turns into the blade.</param>
/// <param name="OverallMm">Overall length.</param>
public sealed record PaddlePlaces(double TopHandMm, [property: JsonIgnore] double GripEndMm, double LowerHandMm, double ThroatMm, double OverallMm)
{
    /// <summary>Between the hands, mm.</summary>
    [JsonIgnore]
    public double HandSpacingMm => LowerHandMm - TopHandMm;
    /// <summary>Top of the grip to the throat, mm.</summary>
    public double ShaftMm => ThroatMm;
    /// <summary>Throat to tip, mm.</summary>
    public double BladeMm => OverallMm - ThroatMm;
}

/// <summary>Draws the half-breadth of the whole paddle: grip, shaft, blade.</summary>
internal static class PaddleOutline
{
    /// <summary>Draws the outline; tangent-continuous from the top of the grip to the tip.</summary>
    /// <param name="places">Places along the paddle.</param>
    /// <param name="shaftWidthMm">Full width of the shaft from the lower hand to the throat, mm.</param>
    /// <param name="upperWidthMm">Full width of the shaft just below the grip, mm.</param>
    public static HalfBreadthCurve Draw(PaddlePlaces places, GripShape grip, BladePlan blade, double shaftWidthMm, double upperWidthMm)
    {
        double half = shaftWidthMm / 2, upper = upperWidthMm / 2;
        return new(
        [
            .. DrawGrip(grip, upper),
            CubicBezier.Hermite(places.GripEndMm, upper, 0, places.LowerHandMm, half, 0),
            CubicBezier.Hermite(places.LowerHandMm, half, 0, places.ThroatMm, half, 0),
            .. blade.Draw(places.ThroatMm, half),
        ]);
    }

    private static CubicBezier[] DrawGrip(GripShape grip, double upper)
    {
        var pattern = GripPattern.Of(grip.Style);
        double half = grip.WidthMm / 2, crest = pattern.CrestAt * grip.LengthMm, run = grip.LengthMm - crest;
        var q = pattern.TopSquareness;
        return
        [
            new(0, 0, 0, q * half, crest - q * crest, half, crest, half),
            new(crest, half, crest + pattern.FlowStart * run, half, grip.LengthMm - pattern.FlowEnd * run, upper, grip.LengthMm, upper),
        ];
    }
}
