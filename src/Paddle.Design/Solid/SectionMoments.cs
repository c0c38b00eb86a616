using MathNet.Numerics;

namespace Paddle.Design.Solid;

/// <summary>Pure numbers of the section family h(u) = e + (c − e)·g(u), g(u) = (1 − u^p)^r, u = |y|/w, from which every section property
/// follows in closed form. Theory S1–S3.</summary>
/// <param name="P">Crown exponent p: 1 makes a ridge, 2 a round crown.</param>
/// <param name="R">Crown power r: ½ closes with a round edge, 1 with a sharp one.</param>
/// <param name="G1">∫0..1 g du.</param>
/// <param name="G2">∫0..1 g² du.</param>
/// <param name="G3">∫0..1 g³ du.</param>
public readonly record struct SectionMoments(double P, double R, double G1, double G2, double G3)
{
    /// <summary>∫0..1 u·g du.</summary>
    public double U1 { get; private init; }

    /// <summary>∫0..1 u·g² du.</summary>
    public double U2 { get; private init; }

    /// <summary>∫0..1 u·g³ du.</summary>
    public double U3 { get; private init; }

    /// <summary>Ellipse of the shaft: p = 2, r = ½.</summary>
    public static SectionMoments Ellipse { get; } = For(2, 0.5);

    /// <summary>Computes the numbers for a pair of exponents.</summary>
    /// <param name="p">Crown exponent, above 0.</param>
    /// <param name="r">Crown power, above 0.</param>
    /// <remarks>∫0..1 u^m (1 − u^p)^(k·r) du = B((m + 1)/p, k·r + 1)/p. Source: definition of Euler's Beta function with t = u^p.</remarks>
    public static SectionMoments For(double p, double r) => new(p, r, Integral(0, 1, p, r), Integral(0, 2, p, r), Integral(0, 3, p, r))
    {
        U1 = Integral(1, 1, p, r),
        U2 = Integral(1, 2, p, r),
        U3 = Integral(1, 3, p, r),
    };

    /// <summary>∫0..1 u^m g(u)^k du.</summary>
    /// <param name="m">Power of u.</param>
    /// <param name="k">Power of g.</param>
    /// <param name="p">Crown exponent.</param>
    /// <param name="r">Crown power.</param>
    public static double Integral(int m, int k, double p, double r) => SpecialFunctions.Beta((m + 1) / p, k * r + 1) / p; // theory S2
}
