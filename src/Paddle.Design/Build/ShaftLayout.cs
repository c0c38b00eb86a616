using Paddle.Design.Solid;

namespace Paddle.Design.Build;

/// <summary>Lines to mark at one station of the shaft before its corners come off; all in mm.</summary>
/// <param name="Number">Number of the station on the build sheet.</param>
/// <param name="XMm">Place from the top of the grip.</param>
/// <param name="WidthMm">Width of the squared shaft there, seen on the face: finished width and allowance.</param>
/// <param name="ThicknessMm">Thickness of the squared shaft there: finished thickness and allowance.</param>
/// <param name="LineOnFaceMm">Eight-side line from each edge of the faces: 0.2929 of the width.</param>
/// <param name="LineOnSideMm">Eight-side line from each edge of the sides: 0.2929 of the thickness.</param>
/// <param name="ChamferDegrees">Angle between the corner facet and the face: 45 on a square shaft only.</param>
/// <param name="SixteenOnFaceMm">Sixteen-side line in from each octagon corner on the faces.</param>
/// <param name="SixteenOnCornerMm">The same on the corner facets.</param>
internal sealed record ShaftLine(
    int Number,
    double XMm,
    double WidthMm,
    double ThicknessMm,
    double LineOnFaceMm,
    double LineOnSideMm,
    double ChamferDegrees,
    double SixteenOnFaceMm,
    double SixteenOnSideMm,
    double SixteenOnCornerMm);

/// <summary>Layout of the shaft's eight and sixteen sides. Theory M1 and M2.</summary>
internal static class ShaftLayout
{
    /// <summary>Lines on one rectangle.</summary>
    /// <param name="widthMm">Width of the rectangle on the face, mm.</param>
    public static ShaftLine At(int number, double xMm, double widthMm, double thicknessMm)
    {
        double face = Rounding.EightSideLine * widthMm, side = Rounding.EightSideLine * thicknessMm;
        return new(
            number,
            xMm,
            widthMm,
            thicknessMm,
            face,
            side,
            Math.Atan2(side, face) * 180 / Math.PI,
            Rounding.SixteenSideLine * Rounding.EightSideFlat * widthMm,
            Rounding.SixteenSideLine * Rounding.EightSideFlat * thicknessMm,
            Rounding.SixteenSideLine * Math.Sqrt(face * face + side * side));
    }

    /// <summary>Lines at the shaft's stations, on the shaft squared to size with the eight-side stage's allowance.</summary>
    /// <param name="stations">Numbered stations of the eight-sided stage.</param>
    /// <param name="zones">Zone of each station, in the same order.</param>
    internal static IReadOnlyList<ShaftLine> For(IReadOnlyList<StageStation> stations, IReadOnlyList<Zone> zones)
    {
        var lines = new List<ShaftLine>();
        for (var i = 0; i < stations.Count; i++)
        {
            if (zones[i] == Zone.Shaft)
                lines.Add(At(stations[i].Number, stations[i].XMm, 2 * stations[i].HalfBreadthMm, stations[i].ThicknessMm));
        }

        return lines;
    }
}
