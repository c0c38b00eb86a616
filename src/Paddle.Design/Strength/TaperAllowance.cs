using Paddle.Design.Solid;

namespace Paddle.Design.Strength;

/// <summary>What finite elements see beyond beam theory where the spine tapers. Theory L14.</summary>
internal static class TaperAllowance
{
    private const double PerSlope = 1.5, From = 0.04, Full = 0.08;

    /// <summary>Growth of the stress with the face's slope at a place.</summary>
    internal static double PerSlopeAt(StationPattern pattern) =>
        pattern.Segment.Zone == Zone.Blade ? PerSlope * Smooth.Step((pattern.Coordinate - From) / (Full - From)) : 0;

    /// <summary>Stress over that of beam theory at a place where the face has a slope.</summary>
    internal static double Factor(StationPattern pattern, double slope) => 1 + PerSlopeAt(pattern) * slope;
}
