using MathNet.Numerics.Integration;

namespace Paddle.Design.Outline;

/// <summary>The half-breadth of a paddle, or of a part of it, as a chain of cubic Béziers; the other half is its mirror image.</summary>
/// <remarks>Drawings use the same control points, so that a traced template and the computed area are one and the same curve.</remarks>
public sealed class HalfBreadthCurve
{
    // x·y·x' of a cubic is a polynomial of degree 8: five Gauss points integrate it exactly.
    private static readonly GaussRule Gauss = new(5);
    private readonly CubicBezier[] pieces;

    /// <summary>Joins pieces end to end.</summary>
    /// <param name="pieces">At least one piece, each beginning where the one before ends.</param>
    public HalfBreadthCurve(params CubicBezier[] pieces) => this.pieces = pieces;

    /// <summary>The pieces from small to large x.</summary>
    public ReadOnlySpan<CubicBezier> Pieces => pieces;
    /// <summary>Where the curve begins, mm.</summary>
    public double StartMm => pieces[0].X0;
    public double EndMm => pieces[^1].X3;

    /// <summary>Half-breadth (mm) at x (mm); 0 outside the curve.</summary>
    public double HalfBreadthMm(double xMm)
    {
        if (xMm < StartMm || xMm > EndMm) return 0;
        foreach (var piece in pieces)
        {
            if (xMm <= piece.X3) return piece.Y(piece.ParameterAtX(xMm));
        }

        return pieces[^1].Y3;
    }

    /// <summary>Half-breadths at many places at once.</summary>
    /// <param name="xsMm">Places in rising order, mm.</param>
    /// <param name="halfBreadthsMm">Receives the half-breadths, mm; as long as <paramref name="xsMm"/>.</param>
    /// <param name="parameters">Receives the Bézier parameters; as long as <paramref name="xsMm"/>.</param>
    public void Sample(ReadOnlySpan<double> xsMm, Span<double> halfBreadthsMm, Span<double> parameters)
    {
        var piece = 0;
        var parameter = 0.0;
        for (var i = 0; i < xsMm.Length; i++)
        {
            while (piece < pieces.Length - 1 && xsMm[i] > pieces[piece].X3)
            {
                piece++;
                parameter = 0;
            }

            parameter = pieces[piece].ParameterAtX(xsMm[i], parameter);
            halfBreadthsMm[i] = pieces[piece].Y(parameter);
            parameters[i] = parameter;
        }
    }

    /// <summary>Area of the whole outline, both halves, mm². Theory O2: Green's theorem, exact for Béziers.</summary>
    public double AreaMm2()
    {
        var area = 0.0;
        foreach (var piece in pieces) area += piece.AreaUnder();
        return 2 * area;
    }

    /// <summary>Area of both halves from a piece's start at <paramref name="fromMm"/> to the end, mm². Theory O2.</summary>
    public double AreaFromMm2(double fromMm)
    {
        var area = 0.0;
        foreach (var piece in pieces) area += piece.X0 >= fromMm - 1e-9 ? piece.AreaUnder() : 0;
        return 2 * area;
    }

    /// <summary>x (mm) of the centroid of the outline. Theory O3: ∮½x² dy = ∫x·y dx over both halves, exact.</summary>
    public double CentroidMm() => 2 * Integrate(static (x, y) => x * y) / AreaMm2();

    /// <summary>∫ f(x, y(x)) dx over one half; exact while f's degree keeps the integrand within degree 9 in the Bézier parameter.</summary>
    private double Integrate(Func<double, double, double> integrand)
    {
        var sum = 0.0;
        foreach (var piece in pieces)
        {
            for (var k = 0; k < Gauss.Abscissas.Length; k++)
            {
                var s = Gauss.Abscissas[k];
                sum += Gauss.Weights[k] * integrand(piece.X(s), piece.Y(s)) * piece.DX(s);
            }
        }

        return sum;
    }
}

/// <summary>A Gauss–Legendre rule on 0..1 with its points held ready: the library hands out a fresh copy at every look.</summary>
internal sealed class GaussRule
{
    internal GaussRule(int points)
    {
        var rule = new GaussLegendreRule(0, 1, points);
        (Abscissas, Weights) = (rule.Abscissas, rule.Weights);
    }

    internal double[] Abscissas { get; }
    internal double[] Weights { get; }
}
