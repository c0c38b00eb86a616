using Paddle.Design.Outline;
using Paddle.Design.Solid;

namespace Paddle.Design.Strength;

/// <summary>Moments ∫ξᵏ dA of the blade's face from every place to the tip, ξ being the distance below the throat: all that any water
/// pressure growing with the square of the distance from a pivot, or spread evenly, needs. Theory L5–L6.</summary>
/// <remarks>Summed over the very Béziers that are drawn. Strip force of a turning blade ∝ w(x)·(x − x₀)²: the drag law applied strip by
/// strip about the stroke's pivot x₀, the point of the paddle at rest in the water.</remarks>
internal sealed class BladePressure
{
    private const int Powers = 4;
    private static readonly GaussRule Gauss = new(3);
    private readonly double[] moments; // Powers for each blade place
    private readonly double throatMm;
    private readonly int firstPlace;

    private BladePressure(double throatMm, int firstPlace, int count)
    {
        (this.throatMm, this.firstPlace) = (throatMm, firstPlace);
        moments = new double[count * Powers];
    }

    /// <summary>Area of the blade's face, mm².</summary>
    public double AreaMm2 => moments[0];
    /// <summary>x of the face's centroid, mm: the resultant of an even pressure.</summary>
    public double CentroidMm => throatMm + moments[1] / moments[0];

    /// <summary>Sums the moments from every blade place of a solid to its tip.</summary>
    /// <param name="solid">The solid; its first blade place is the throat.</param>
    public static BladePressure On(PaddleSolid solid)
    {
        var first = solid.Grid.FirstBladePlace;
        var throat = solid.Form.Places.ThroatMm;
        var pressure = new BladePressure(throat, first, solid.Count - first);
        pressure.SumFromTip(solid.Outline.Pieces, solid.X.AsSpan(first), solid.CurveParameter.AsSpan(first));
        return pressure;
    }

    /// <summary>x (mm) of the resultant of a stroke whose pivot lies <paramref name="pivotMm"/> above the throat.</summary>
    public double CentreOfPressureMm(double pivotMm)
    {
        var (force, moment) = Stroke(0, pivotMm);
        return throatMm + moment / force;
    }

    /// <summary>Bending moment (N·mm) at a blade place from a total force spread evenly.</summary>
    internal double EvenMomentNmm(int place, double x, double forceN)
    {
        var at = (place - firstPlace) * Powers;
        return forceN / moments[0] * (moments[at + 1] - (x - throatMm) * moments[at]);
    }

    /// <summary>Bending moment (N·mm) at a blade place from a stroke's total force.</summary>
    internal double StrokeMomentNmm(int place, double x, double forceN, double pivotMm)
    {
        var (force, moment) = Stroke(place - firstPlace, pivotMm);
        return forceN / Stroke(0, pivotMm).Force * (moment - (x - throatMm) * force);
    }

    /// <summary>Local pressure (MPa) of a stroke at x (mm).</summary>
    internal double StrokePressureMPa(double x, double forceN, double pivotMm)
    {
        var arm = x - throatMm + pivotMm;
        return forceN * arm * arm / Stroke(0, pivotMm).Force;
    }

    // ∫(ξ + p)² dA and ∫(ξ + p)² ξ dA from a place to the tip.
    private (double Force, double Moment) Stroke(int blade, double p)
    {
        var m = moments.AsSpan(blade * Powers, Powers);
        return (m[2] + 2 * p * m[1] + p * p * m[0], m[3] + 2 * p * m[2] + p * p * m[1]);
    }

    private void SumFromTip(ReadOnlySpan<CubicBezier> pieces, ReadOnlySpan<double> xs, ReadOnlySpan<double> parameters)
    {
        Span<double> sums = stackalloc double[Powers];
        sums.Clear();
        var place = xs.Length - 1;
        for (var p = pieces.Length - 1; p >= 0 && pieces[p].X0 >= throatMm - 1e-9; p--)
        {
            var upper = 1.0;
            for (; place >= 0 && xs[place] > pieces[p].X0; place--)
            {
                Add(pieces[p], parameters[place], upper, sums);
                sums.CopyTo(moments.AsSpan(place * Powers));
                upper = parameters[place];
            }

            Add(pieces[p], 0, upper, sums);
        }

        for (; place >= 0; place--) sums.CopyTo(moments.AsSpan(place * Powers));
    }

    private void Add(in CubicBezier piece, double from, double to, Span<double> sums)
    {
        if (to <= from) return;
        for (var k = 0; k < Gauss.Abscissas.Length; k++)
        {
            var s = from + (to - from) * Gauss.Abscissas[k];
            var below = piece.X(s) - throatMm;
            var strip = 2 * Gauss.Weights[k] * (to - from) * piece.Y(s) * piece.DX(s);
            sums[0] += strip;
            sums[1] += strip * below;
            sums[2] += strip * below * below;
            sums[3] += strip * below * below * below;
        }
    }
}
