using Paddle.Design.Outline;
using Paddle.Design.Solid;

namespace Paddle.Design.Build;

/// <summary>The saw kerf across the grip that says how deep to pare.</summary>
/// <param name="PlaceMm">Place from the top of the grip, at the thinnest of its hollow, mm.</param>
/// <param name="DepthMm">Depth below the board's face, mm, with the allowance left on.</param>
/// <param name="LeftMm">Wood left between the two kerfs, or between kerf and far face, mm.</param>
/// <param name="Faces">Faces to saw: 2 for matching faces, 1 for a one-sided grip.</param>
/// <param name="OtherFaceDepthMm">How far the face without a hollow lies below the board's face there, mm; 0 for matching faces.</param>
/// <remarks>
/// Theory M10. Source of the method: a woodworking magazine, no. 142, August 2004, pp. 32-40 (a kerf 38 mm from the end with
/// 9.5 mm left in the middle of one paddle; the figures here are this design's own).
/// </remarks>
internal sealed record GripKerf(double PlaceMm, double DepthMm, double LeftMm, int Faces, double OtherFaceDepthMm)
{
    /// <summary>Finds the kerf of a grip.</summary>
    /// <param name="allowanceMm">Left on each face for rasp and sandpaper, mm.</param>
    public static GripKerf For(PaddleSolid solid, Blank blank, double allowanceMm)
    {
        var (form, sizes) = (solid.Form, solid.Sizes);
        var slopes = SpineSlopes.Of(sizes);
        var hollow = form.Grip.HollowedFaces * form.Grip.HollowDepthMm;

        // The deepest place below the rounded top: every millimetre is looked at.
        double at = form.Grip.LengthMm, least = double.PositiveInfinity, hollowThere = 0;
        for (var x = GripProfile.CrestEnd * form.Grip.LengthMm; x <= form.Grip.LengthMm; x++)
        {
            var pattern = StationPattern.At(Segment.All[2], x / form.Grip.LengthMm);
            var thickness = pattern.ThicknessMm(sizes, slopes, hollow);
            if (thickness < least - 1e-9) (at, least, hollowThere) = (x, thickness, pattern.HollowShare * form.Grip.HollowDepthMm);
        }

        var oneSided = form.Grip.Faces == GripFaces.OneSided;
        var plain = oneSided ? (least + hollowThere) / 2 : least / 2; // full face above the middle of the board
        var hollowed = oneSided ? plain - hollowThere : plain;
        var half = blank.ThicknessMm / 2;
        var depth = Math.Max(0, half - hollowed - allowanceMm);
        var other = oneSided ? Math.Max(0, half - plain - allowanceMm) : 0;
        return new(at, depth, blank.ThicknessMm - (oneSided ? depth + other : 2 * depth), oneSided ? 1 : 2, other);
    }
}
