using System.Numerics;
using Paddle.Design.Outline;

namespace Paddle.Design.Layout;

/// <summary>
/// A paddle's face in cells along its length, one way round or turned end for end, so that "how near may two centre lines come?" is a sum
/// and a maximum. A cell holds the largest half-breadth within it: what fits in cells fits in truth.
/// </summary>
/// <remarks>Theory N1. An outline is its own mirror image and reaches from edge to edge at every place, so that of two paddles at given
/// places along the board only the distance of their centre lines decides.</remarks>
internal sealed class Silhouette
{
    private readonly float[] half;
    private readonly float[] wide;
    private readonly int reach;
    private readonly double cellMm;

    private Silhouette(float[] half, double gapMm, double cellMm)
    {
        this.half = half;
        this.cellMm = cellMm;
        (wide, reach) = Widen(half, gapMm, cellMm);
    }

    /// <summary>Largest half-breadths by cells from the paddle's left end on the board, mm.</summary>
    public ReadOnlySpan<float> HalfMm => half;

    /// <summary>Reads a curve.</summary>
    /// <param name="isTurned">Whether the tip lies where the top of the grip lay.</param>
    /// <param name="gapMm">Wood kept between this paddle and another, mm.</param>
    /// <param name="cellMm">Size of a cell, mm.</param>
    public static Silhouette Of(HalfBreadthCurve curve, bool isTurned, double gapMm, double cellMm)
    {
        var count = (int)Math.Ceiling(curve.EndMm / cellMm - 1e-9);
        var edges = new double[count + 1];
        for (var k = 0; k <= count; k++)
        {
            var x = Math.Min(k * cellMm, curve.EndMm);
            edges[k] = isTurned ? curve.EndMm - x : x;
        }

        if (isTurned) Array.Reverse(edges);
        double[] values = new double[count + 1], unused = new double[count + 1];
        curve.Sample(edges, values, unused);
        if (isTurned) Array.Reverse(values);
        var half = new float[count];
        for (var k = 0; k < count; k++) half[k] = MathF.BitIncrement((float)Math.Max(values[k], values[k + 1]));
        return new(half, gapMm, cellMm);
    }

    /// <summary>The least distance (mm) between the centre lines of this paddle and another that lies further along the board; 0 when they
    /// pass each other.</summary>
    /// <param name="alongMm">How much further the other's left end lies, a whole number of cells in mm; may be negative.</param>
    public double DistanceMm(Silhouette other, int alongMm)
    {
        // Index m of the widened cells stands for the cell m − reach of this paddle.
        var shift = (int)Math.Round(alongMm / cellMm) + reach;
        int first = Math.Max(0, shift), end = Math.Min(wide.Length, shift + other.half.Length);
        if (first >= end) return 0;
        ReadOnlySpan<float> a = wide.AsSpan(first, end - first), b = other.half.AsSpan(first - shift, end - first);
        var most = Vector<float>.Zero;
        var k = 0;
        for (; k <= a.Length - Vector<float>.Count; k += Vector<float>.Count) most = Vector.Max(most, new Vector<float>(a[k..]) + new Vector<float>(b[k..]));
        var result = 0f;
        for (var lane = 0; lane < Vector<float>.Count; lane++) result = Math.Max(result, most[lane]);
        for (; k < a.Length; k++) result = Math.Max(result, a[k] + b[k]);
        return result;
    }

    /// <summary>Half-breadths widened as a disc widens them. A point of cell k and one of cell m are |k − m| − 1 cells apart at least.</summary>
    /// <returns>The widened half-breadths, and how many cells before the first they begin.</returns>
    internal static (float[] Wide, int Reach) Widen(float[] half, double gapMm, double cellMm)
    {
        var reach = (int)Math.Ceiling(gapMm / cellMm);
        var wide = new float[half.Length + 2 * reach];
        Array.Fill(wide, float.NegativeInfinity);
        for (var t = -reach; t <= reach; t++)
        {
            var apart = Math.Max(0, Math.Abs(t) - 1) * cellMm;
            if (apart > gapMm) continue;
            var more = (float)Math.Sqrt(gapMm * gapMm - apart * apart);
            for (var k = 0; k < half.Length; k++) wide[k + t + reach] = Math.Max(wide[k + t + reach], half[k] + more);
        }

        return (wide, reach);
    }
}
