using MathNet.Numerics.Interpolation;

namespace Paddle.Design.Outline;

/// <summary>Fairs a maker's table of offsets with a monotone, shape-preserving spline (PCHIP), as exact Béziers. Theory O7.</summary>
internal static class OffsetsOutline
{
    /// <summary>Draws the blade through every offset; a table that ends in zero half-breadth gets a round tip.</summary>
    internal static CubicBezier[] Draw(BladeShape blade, double throatMm, double shaftHalfWidthMm)
    {
        var (xs, ys) = Stations(blade.Offsets!, throatMm, shaftHalfWidthMm);
        var slopes = Slopes(xs, ys);
        var pieces = new CubicBezier[xs.Length - 1];
        for (var i = 0; i < pieces.Length; i++)
            pieces[i] = CubicBezier.Hermite(xs[i], ys[i], slopes[i], xs[i + 1], ys[i + 1], slopes[i + 1]);

        if (ys[^1] <= 0) pieces[^1] = RoundTip(xs[^2], ys[^2], slopes[^2], xs[^1]);
        return pieces;
    }

    /// <summary>The widest full width in the table, mm, and where it lies as a fraction of the blade.</summary>
    public static (double WidthMm, double WidestAt) Widest(IReadOnlyList<Offset> offsets)
    {
        var widest = offsets.MaxBy(offset => offset.HalfBreadthMm);
        return (2 * widest.HalfBreadthMm, widest.XMm / offsets[^1].XMm);
    }

    private static (double[] Xs, double[] Ys) Stations(IReadOnlyList<Offset> offsets, double throatMm, double shaftHalfWidthMm)
    {
        // The shaft itself is the station at the throat, whether or not the table repeats it.
        var below = offsets.Where(offset => offset.XMm > 0).ToArray();
        var xs = new double[below.Length + 1];
        var ys = new double[below.Length + 1];
        (xs[0], ys[0]) = (throatMm, shaftHalfWidthMm);
        for (var i = 0; i < below.Length; i++) (xs[i + 1], ys[i + 1]) = (throatMm + below[i].XMm, below[i].HalfBreadthMm);
        return (xs, ys);
    }

    private static double[] Slopes(double[] xs, double[] ys)
    {
        // PCHIP needs three points; a table has at least four, checked on entry.
        var spline = CubicSpline.InterpolatePchipSorted(xs, ys);
        var slopes = xs.Select(spline.Differentiate).ToArray();
        slopes[0] = 0; // tangent to the shaft
        return slopes;
    }

    private static CubicBezier RoundTip(double x0, double y0, double slope, double tip)
    {
        // Quarter-ellipse handles (0.5523); on a steep slope the first is shortened, never bent, so that the joint has no corner.
        const double Quarter = 0.5522847498;
        var reach = Math.Min(Quarter * (tip - x0), slope < 0 ? (1 - Quarter) * y0 / -slope : double.PositiveInfinity);
        var handleHeight = y0 + slope * reach;
        return new(x0, y0, x0 + reach, handleHeight, tip, Math.Min(Quarter * y0, handleHeight), tip, 0);
    }
}
