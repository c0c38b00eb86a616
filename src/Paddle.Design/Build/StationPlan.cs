using Paddle.Design.Solid;
using Paddle.Design.Units;

namespace Paddle.Design.Build;

/// <summary>A station of a paddle: build sheet, template and table of offsets show the same ones.</summary>
/// <param name="Number">Number, from 1 at the top of the grip.</param>
/// <param name="XMm">Place from the top of the grip, mm.</param>
/// <param name="Mark">What the maker marks there, such as <c>throat</c>; empty at an even place.</param>
internal sealed record Station(int Number, double XMm, string Mark);

/// <summary>Where a paddle's stations are: at even places of the maker's rule, and at the places that are marked anyway.</summary>
/// <remarks>
/// Every 50 mm, or 2 in; half of that along the grip, near the throat and towards the tip, where the shape turns. Spacing: common
/// practice, no source.
/// </remarks>
internal static class StationPlan
{
    private const double CloseToTipMm = 100;
    private const double CloseToThroatMm = 60;

    // Nearer to a mark than this a pencil's line would cover both.
    private const double ApartMm = 0.5;

    /// <summary>Distance between even stations, mm.</summary>
    /// <param name="units">Units of the maker's rule.</param>
    public static double StepMm(DrawingUnits units) => units == DrawingUnits.Metric ? 50 : 2 * DrawnLength.MmPerInch;

    /// <summary>The stations in order.</summary>
    /// <param name="form">The paddle's places and outline.</param>
    /// <param name="units">Units of the maker's rule.</param>
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
    /// <param name="form">The paddle's places and outline.</param>
    /// <param name="units">Units of the maker's rule.</param>
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
