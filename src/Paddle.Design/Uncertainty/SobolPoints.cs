using System.Buffers.Binary;
using System.Numerics;

namespace Paddle.Design.Uncertainty;

/// <summary>Points that fill the unit cube more evenly than random ones: Sobol's sequence, scrambled from a seed. A point follows from its index
/// alone, so that any thread may compute any of them. Theory U4.</summary>
/// <remarks>Direction numbers: S. Joe and F. Y. Kuo 2008, SIAM J. Sci. Comput. 30:2635-2654, file new-joe-kuo-6.21201, as several public copies
/// have it. Scrambling: Owen's nested permutation of the digits by a hash, Laine and Karras 2011 in the form of B. Burley 2020, J. Comput.
/// Graph. Tech. 9(4), from memory.</remarks>
internal sealed class SobolPoints
{
    // Degree of the primitive polynomial, its inner coefficients, and the first direction numbers, for the second dimension and those after it.
    private static readonly (int Degree, uint Inner, uint[] First)[] Table =
    [
        (1, 0, [1]), (2, 1, [1, 3]), (3, 1, [1, 3, 1]), (3, 2, [1, 1, 1]), (4, 1, [1, 1, 3, 3]), (4, 4, [1, 3, 5, 13]), (5, 2, [1, 1, 5, 5, 17]),
        (5, 4, [1, 1, 5, 5, 5]), (5, 7, [1, 1, 7, 11, 19]), (5, 11, [1, 1, 5, 1, 1]), (5, 13, [1, 1, 1, 3, 11]), (5, 14, [1, 3, 5, 5, 31]),
    ];

    private const int Bits = 32;
    private const double Cell = 1.0 / (1L << Bits);
    private static readonly uint[][] Directions = [.. Enumerable.Range(0, MostDimensions).Select(DirectionsOf)];
    private readonly uint[] seeds;

    /// <param name="dimensions">1 to <see cref="MostDimensions"/>.</param>
    /// <param name="seed">Another seed, another scrambling; null for the sequence as published, whose first point is 0.</param>
    public SobolPoints(int dimensions, int? seed)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(dimensions, MostDimensions);
        (Dimensions, seeds) = (dimensions, []);
        if (seed is { } given) seeds = [.. Enumerable.Range(0, dimensions).Select(d => Mixed((uint)given * 0x9E3779B9u + (uint)d))];
    }

    /// <summary>Dimensions that there are direction numbers for.</summary>
    public static int MostDimensions => Table.Length + 1;

    /// <summary>Coordinates of a point.</summary>
    public int Dimensions { get; }

    /// <summary>Writes a point; scrambled, each coordinate lies in the middle of its cell and is neither 0 nor 1.</summary>
    public void Fill(uint index, Span<double> point)
    {
        // The order of the published sequence: each point differs from the one before in a single direction (Antonov and Saleev's Gray code).
        var gray = index ^ (index >> 1);
        for (var d = 0; d < Dimensions; d++)
        {
            var x = 0u;
            for (var rest = gray; rest != 0; rest &= rest - 1) x ^= Directions[d][BitOperations.TrailingZeroCount(rest)];
            point[d] = seeds.Length == 0 ? x * Cell : (Scrambled(x, seeds[d]) + 0.5) * Cell;
        }
    }

    // Joe and Kuo's recurrence over the primitive polynomial; the first dimension is van der Corput's.
    private static uint[] DirectionsOf(int dimension)
    {
        var v = new uint[Bits];
        if (dimension == 0)
        {
            for (var i = 0; i < Bits; i++) v[i] = 1u << (Bits - 1 - i);
            return v;
        }

        var (degree, inner, first) = Table[dimension - 1];
        for (var i = 0; i < Bits; i++)
        {
            if (i < degree)
            {
                v[i] = first[i] << (Bits - 1 - i);
                continue;
            }

            v[i] = v[i - degree] ^ (v[i - degree] >> degree);
            for (var k = 1; k < degree; k++) v[i] ^= (inner >> (degree - 1 - k) & 1) * v[i - k];
        }

        return v;
    }

    // Each digit is turned or not by a hash of the digits before it: with the bits reversed, of the bits below it.
    private static uint Scrambled(uint x, uint seed)
    {
        x = Reversed(x) + seed;
        x ^= x * 0x6c50b47cu;
        x ^= x * 0xb82f1e52u;
        x ^= x * 0xc7afe638u;
        x ^= x * 0x8d22f6e6u;
        return Reversed(x);
    }

    private static uint Reversed(uint x)
    {
        x = (x >> 1 & 0x55555555u) | (x & 0x55555555u) << 1;
        x = (x >> 2 & 0x33333333u) | (x & 0x33333333u) << 2;
        x = (x >> 4 & 0x0F0F0F0Fu) | (x & 0x0F0F0F0Fu) << 4;
        return BinaryPrimitives.ReverseEndianness(x);
    }

    // Finaliser of MurmurHash3 (Appleby, public domain), from memory: neighbouring seeds become strangers.
    private static uint Mixed(uint x)
    {
        x = (x ^ x >> 16) * 0x85ebca6bu;
        x = (x ^ x >> 13) * 0xc2b2ae35u;
        return x ^ x >> 16;
    }
}
