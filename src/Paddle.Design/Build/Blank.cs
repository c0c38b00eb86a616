using Paddle.Design.Boards;
using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Units;

namespace Paddle.Design.Build;

/// <summary>The board that a paddle is cut from.</summary>
/// <param name="LengthMm">Length with both ends' trim, mm.</param>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="ThicknessMm">Thickness, mm.</param>
/// <param name="EndTrimMm">Kept beyond the paddle at each end, clear of end checks, mm.</param>
/// <param name="ThickestSectionMm">Thickest finished section that it must hold, mm.</param>
/// <param name="Stock">Name of the thickness in the trade.</param>
internal sealed record Blank(
    double LengthMm, double WidthMm, double ThicknessMm, double EndTrimMm, double ThickestSectionMm, string Stock)
{
    // Common practice, no source: 25-50 mm of each end is lost to checks; a hand's margin outside the saw line.
    private const double TrimMm = 25;
    private const double MarginMm = 5;

    /// <summary>Whether it is the maker's own board, and no stock to be bought.</summary>
    public bool IsOwn { get; init; }
    /// <summary>Wood to plane away between the board and the thickest section, both faces together, mm.</summary>
    public double OverMm => ThicknessMm - ThickestSectionMm;

    /// <summary>The smallest board that holds a paddle. Theory M6.</summary>
    /// <param name="solid">The finished paddle at close places.</param>
    /// <param name="isSoftwood">Whether the wood is sold by the softwood sizes.</param>
    /// <param name="thicknessMm">Thickness of the maker's board as measured, mm, or null for the next standard one.</param>
    /// <exception cref="ArgumentOutOfRangeException">The stated board is thinner than the thickest section.</exception>
    public static Blank For(PaddleSolid solid, bool isSoftwood, OutlineSaw saw, double? thicknessMm = null)
    {
        var thickest = 2 * solid.HalfThickness.Max();
        if (thicknessMm is { } stated && !(stated >= thickest))
        {
            throw new ArgumentOutOfRangeException(
                nameof(thicknessMm), stated, $"The board must be at least as thick as the thickest section, {thickest:F1} mm.");
        }

        var stock = BoardNeed.For(thickest, isSoftwood).Stock;
        return new(
            solid.Form.Places.OverallMm + 2 * TrimMm,
            2 * (solid.HalfWidth.Max() + StageAllowance.SawMm(saw) + MarginMm),
            thicknessMm ?? stock.ThicknessMm,
            TrimMm,
            thickest,
            thicknessMm is null ? stock.Name : "your own board, as measured")
        {
            IsOwn = thicknessMm is not null,
        };
    }
}

/// <summary>A station of a paddle: build sheet, template and table of offsets show the same ones.</summary>
/// <param name="Number">Number, from 1 at the top of the grip.</param>
/// <param name="XMm">Place from the top of the grip, mm.</param>
/// <param name="Mark">What the maker marks there, such as <c>throat</c>; empty at an even place.</param>
internal sealed record Station(int Number, double XMm, string Mark);

/// <summary>Where a paddle's stations are: at even places of the maker's rule, and at the places that are marked anyway.</summary>
/// <remarks>Every 50 mm, or 2 in; half of that along the grip, near the throat and towards the tip, where the shape turns. Spacing: common
/// practice, no source.</remarks>
internal static class StationPlan
{
    private const double CloseToTipMm = 100;
    private const double CloseToThroatMm = 60;
    // Nearer to a mark than this a pencil's line would cover both.
    private const double ApartMm = 0.5;

    /// <summary>Distance between even stations, mm.</summary>
    public static double StepMm(DrawingUnits units) => units == DrawingUnits.Metric ? 50 : 2 * DrawnLength.MmPerInch;

    /// <summary>The stations in order.</summary>
    public static IReadOnlyList<Station> Of(PaddleForm form, DrawingUnits units)
    {
        var marks = Marks(form);
        return
        [
            .. marks.Concat(Even(form, units).Where(x => Array.TrueForAll(marks, mark => Math.Abs(mark.XMm - x) > ApartMm)).Select(x => (x, "")))
                .OrderBy(place => place.Item1)
                .Select((place, i) => new Station(i + 1, place.Item1, place.Item2)),
        ];
    }

    /// <summary>The even places alone, mm: those that a rule is laid along for.</summary>
    public static IEnumerable<double> Even(PaddleForm form, DrawingUnits units)
    {
        var places = form.Places;
        var half = StepMm(units) / 2;
        bool IsClose(double x) => x < places.GripEndMm || x > places.OverallMm - CloseToTipMm || Math.Abs(x - places.ThroatMm) < CloseToThroatMm;
        for (var k = 1; k * half < places.OverallMm - ApartMm; k++)
        {
            if (k % 2 == 0 || IsClose(k * half)) yield return k * half;
        }
    }

    private static (double XMm, string Mark)[] Marks(PaddleForm form)
    {
        var places = form.Places;
        return
        [
            (0, "grip top"),
            (places.TopHandMm, "top hand"),
            (places.GripEndMm, "grip end"),
            (places.LowerHandMm, "lower hand"),
            (places.ThroatMm, "throat"),
            (places.ThroatMm + form.Blade.WidestAt * places.BladeMm, "widest"),
            (places.OverallMm, "tip"),
        ];
    }
}

/// <summary>The saw kerf across the grip that says how deep to pare.</summary>
/// <param name="PlaceMm">Place from the top of the grip, at the thinnest of its hollow, mm.</param>
/// <param name="DepthMm">Depth below the board's face, mm, with the allowance left on.</param>
/// <param name="LeftMm">Wood left between the two kerfs, or between kerf and far face, mm.</param>
/// <param name="Faces">Faces to saw: 2 for matching faces, 1 for a one-sided grip.</param>
/// <param name="OtherFaceDepthMm">How far the face without a hollow lies below the board's face there, mm; 0 for matching faces.</param>
/// <remarks>Theory M10. Source of the method: a woodworking magazine, no. 142, August 2004, pp. 32-40 (a kerf 38 mm from the end with 9.5
/// mm left in the middle of one paddle; the figures here are this design's own).</remarks>
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
