using MathNet.Numerics.Integration;
using Paddle.Design.Outline;
using Paddle.Design.Solid;

namespace Paddle.Design.Strength;

/// <summary>
/// Water pressure on the blade in two patterns: even, and growing with the square of the distance from the stroke's pivot
/// (the point of the paddle at rest in the water). Theory L5–L6.
/// </summary>
/// <remarks>Strip force ∝ w(x)·(x − x₀)² from the drag law applied to each strip of a turning blade.</remarks>
public sealed class BladePressure
{
    private static readonly GaussLegendreRule Gauss = new(0, 1, 4);

    private readonly double[] even0;
    private readonly double[] even1;
    private readonly double[] square0;
    private readonly double[] square1;

    private BladePressure(double pivotMm, int count)
    {
        PivotMm = pivotMm;
        even0 = new double[count];
        even1 = new double[count];
        square0 = new double[count];
        square1 = new double[count];
    }

    /// <summary>x of the stroke's pivot, mm.</summary>
    public double PivotMm { get; }

    /// <summary>Area of the blade, mm².</summary>
    public double AreaMm2 => 2 * even0[0];

    /// <summary>x of the blade's centroid, mm: the resultant of an even pressure.</summary>
    public double CentroidMm => even1[0] / even0[0];

    /// <summary>x of the centre of pressure of a stroke, mm.</summary>
    public double CentreOfPressureMm => square1[0] / square0[0];

    /// <summary>First place of the grid that lies on the blade.</summary>
    public int FirstBladePlace { get; private init; }

    /// <summary>Sums the two patterns from every blade place of a solid to its tip.</summary>
    /// <param name="solid">The solid; its first blade place is the throat.</param>
    /// <param name="pivotAboveThroatMm">Distance of the stroke's pivot above the throat, mm.</param>
    public static BladePressure On(PaddleSolid solid, double pivotAboveThroatMm)
    {
        var throat = solid.Form.Places.ThroatMm;
        var first = solid.Grid.FirstBladePlace;
        var xs = solid.X.AsSpan(first);
        var pressure = new BladePressure(throat - pivotAboveThroatMm, xs.Length) { FirstBladePlace = first };
        pressure.SumFromTip(solid.Outline, throat, xs);
        return pressure;
    }

    /// <summary>Shear force (N) and bending moment (N·mm) at a blade place from a total force spread evenly.</summary>
    internal (double ShearN, double MomentNmm) Even(int place, double x, double forceN) => Resultant(even0, even1, place, x, forceN);

    /// <summary>Shear force (N) and bending moment (N·mm) at a blade place from a stroke's total force.</summary>
    internal (double ShearN, double MomentNmm) Stroke(int place, double x, double forceN) => Resultant(square0, square1, place, x, forceN);

    /// <summary>Local pressure (MPa) of a stroke at x (mm).</summary>
    internal double StrokePressureMPa(double x, double forceN) => forceN * (x - PivotMm) * (x - PivotMm) / (2 * square0[0]);

    private (double ShearN, double MomentNmm) Resultant(double[] s0, double[] s1, int place, double x, double forceN)
    {
        var i = place - FirstBladePlace;
        var scale = forceN / s0[0];
        return (scale * s0[i], scale * (s1[i] - x * s0[i]));
    }

    // Walks the Béziers from the tip, so that each sum is exact for the very curve that is drawn.
    private void SumFromTip(HalfBreadthCurve outline, double throatMm, ReadOnlySpan<double> xs)
    {
        Span<double> sums = stackalloc double[4];
        sums.Clear();
        var place = xs.Length - 1;
        var pieces = outline.Pieces;
        for (var p = pieces.Length - 1; p >= 0 && pieces[p].X0 >= throatMm - 1e-9; p--)
        {
            var upper = 1.0;
            while (place >= 0 && xs[place] >= pieces[p].X0)
            {
                var lower = pieces[p].ParameterAtX(xs[place], upper);
                Add(pieces[p], lower, upper, sums);
                (even0[place], even1[place], square0[place], square1[place]) = (sums[0], sums[1], sums[2], sums[3]);
                upper = lower;
                place--;
            }

            Add(pieces[p], 0, upper, sums);
        }

        for (; place >= 0; place--)
            (even0[place], even1[place], square0[place], square1[place]) = (sums[0], sums[1], sums[2], sums[3]);
    }

    private void Add(in CubicBezier piece, double from, double to, Span<double> sums)
    {
        if (to <= from) return;
        for (var k = 0; k < Gauss.Abscissas.Length; k++)
        {
            var s = from + (to - from) * Gauss.Abscissas[k];
            double x = piece.X(s), arm = x - PivotMm;
            var strip = Gauss.Weights[k] * (to - from) * piece.Y(s) * piece.DX(s);
            sums[0] += strip;
            sums[1] += strip * x;
            sums[2] += strip * arm * arm;
            sums[3] += strip * arm * arm * x;
        }
    }
}
