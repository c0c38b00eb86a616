using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Paddle.Design.Balance;

/// <summary>Sums over short vectors, four numbers at a time and always in the same order: a processor with wider registers must not round a
/// design differently, which a library that takes the widest there are would.</summary>
internal static class Lanes
{
    private const int Wide = 4;

    internal static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        ref var x = ref MemoryMarshal.GetReference(a);
        ref var y = ref MemoryMarshal.GetReference(b[..a.Length]);
        var sums = Vector256<double>.Zero;
        nuint i = 0, count = (nuint)a.Length;
        for (; i + Wide <= count; i += Wide) sums += Vector256.LoadUnsafe(ref x, i) * Vector256.LoadUnsafe(ref y, i);
        var rest = 0.0;
        for (var k = (int)i; k < a.Length; k++) rest += a[k] * b[k];
        return sums[0] + sums[1] + (sums[2] + sums[3]) + rest;
    }

    /// <summary>Σ|a|: the most that a step of one in every number changes aᵀb.</summary>
    internal static double Reach(ReadOnlySpan<double> a)
    {
        ref var x = ref MemoryMarshal.GetReference(a);
        var sums = Vector256<double>.Zero;
        nuint i = 0, count = (nuint)a.Length;
        for (; i + Wide <= count; i += Wide) sums += Vector256.Abs(Vector256.LoadUnsafe(ref x, i));
        var rest = 0.0;
        for (var k = (int)i; k < a.Length; k++) rest += Math.Abs(a[k]);
        return sums[0] + sums[1] + (sums[2] + sums[3]) + rest;
    }

    /// <summary>The next count that fills whole registers.</summary>
    internal static int Filled(int count) => (count + Wide - 1) / Wide * Wide;

    /// <summary>Σ weight · min(0, value + stepA·a + stepB·b): what is broken, weighted, over vectors that fill whole registers.</summary>
    internal static double Broken(
        ReadOnlySpan<double> values, ReadOnlySpan<double> weights, ReadOnlySpan<double> a, double stepA, ReadOnlySpan<double> b, double stepB)
    {
        Vector256<double> sums = Vector256<double>.Zero, byA = Vector256.Create(stepA), byB = Vector256.Create(stepB);
        for (var i = 0; i < values.Length; i += Wide)
        {
            var value = Four(values, i) + byA * Four(a, i) + byB * Four(b, i);
            sums += Four(weights, i) * Vector256.Min(value, Vector256<double>.Zero);
        }

        return sums[0] + sums[1] + (sums[2] + sums[3]);
    }

    private static Vector256<double> Four(ReadOnlySpan<double> vector, int from) => Vector256.Create(vector.Slice(from, Wide));

    /// <summary>sum += scale · vector.</summary>
    internal static void Add(Span<double> sum, double scale, ReadOnlySpan<double> vector)
    {
        ref var x = ref MemoryMarshal.GetReference(sum);
        ref var y = ref MemoryMarshal.GetReference(vector[..sum.Length]);
        var scales = Vector256.Create(scale);
        nuint i = 0, count = (nuint)sum.Length;
        for (; i + Wide <= count; i += Wide) (Vector256.LoadUnsafe(ref x, i) + scales * Vector256.LoadUnsafe(ref y, i)).StoreUnsafe(ref x, i);
        for (var k = (int)i; k < sum.Length; k++) sum[k] += scale * vector[k];
    }

    /// <summary>Turns the plane of two vectors: (p, q) becomes (cos p + sin q, cos q − sin p).</summary>
    internal static void Turn(Span<double> p, Span<double> q, double cos, double sin)
    {
        ref var x = ref MemoryMarshal.GetReference(p);
        ref var y = ref MemoryMarshal.GetReference(q[..p.Length]);
        Vector256<double> cosines = Vector256.Create(cos), sines = Vector256.Create(sin);
        nuint i = 0, count = (nuint)p.Length;
        for (; i + Wide <= count; i += Wide)
        {
            Vector256<double> a = Vector256.LoadUnsafe(ref x, i), b = Vector256.LoadUnsafe(ref y, i);
            (cosines * a + sines * b).StoreUnsafe(ref x, i);
            (cosines * b - sines * a).StoreUnsafe(ref y, i);
        }

        for (var k = (int)i; k < p.Length; k++) (p[k], q[k]) = (cos * p[k] + sin * q[k], cos * q[k] - sin * p[k]);
    }
}
