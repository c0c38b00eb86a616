namespace Paddle.Design.Build;

/// <summary>A rectangle taken to eight sides, sixteen sides and an ellipse. All lines scale with the side that they lie on, so one set of
/// pure numbers serves the square and, by stretching one axis (an affine map), the rectangle. Theory M1 to M5.</summary>
internal static class Rounding
{
    /// <summary>Line of the octagon from each edge, as a share of the face: <c>1 - 1/sqrt 2 = 0.2929</c>. Theory M1. Source: geometry of
    /// the regular octagon.</summary>
    public static double EightSideLine { get; } = 1 - Math.Sqrt(0.5);

    /// <summary>Flat left on a face at eight sides, as a share of the face: <c>sqrt 2 - 1 = 0.4142</c>. Theory M1.</summary>
    public static double EightSideFlat { get; } = Math.Sqrt(2) - 1;

    /// <summary>Line of the sixteen sides from each corner of the octagon, as a share of the facet: <c>(tan(pi/8) - tan(pi/16))/(2
    /// tan(pi/8)) = 0.2599</c>. Theory M2. Source: both polygons touch the same circle, whose facet at n sides is <c>w
    /// tan(pi/n)</c>.</summary>
    public static double SixteenSideLine { get; } = (Math.Tan(Math.PI / 8) - Math.Tan(Math.PI / 16)) / (2 * Math.Tan(Math.PI / 8));

    /// <summary>Area of the polygon of n sides that touches the ellipse, over width times thickness: <c>(n/4) tan(pi/n)</c>: 1, 0.8284 and
    /// 0.7956 for 4, 8 and 16 sides. Theory M3. Source: geometry of the regular polygon round a circle.</summary>
    /// <param name="sides">n, 4 or more.</param>
    public static double PolygonAreaShare(int sides) => sides / 4.0 * Math.Tan(Math.PI / sides);

    /// <summary>Area of the ellipse over width times thickness, pi/4. Theory M3.</summary>
    public const double EllipseAreaShare = Math.PI / 4;

    /// <summary>Wood left at the 45 degree corner of a square by a round-over bit, mm: <c>(sqrt 2 - 1)(w/2 - r)</c>. Theory M5. Source:
    /// distance from a quarter circle of radius r to one of radius w/2 along the diagonal.</summary>
    /// <param name="widthMm">w, mm.</param>
    /// <param name="radiusMm">r, mm.</param>
    public static double LeftAtCornerMm(double widthMm, double radiusMm) => (Math.Sqrt(2) - 1) * (widthMm / 2 - radiusMm); // theory M5
}
