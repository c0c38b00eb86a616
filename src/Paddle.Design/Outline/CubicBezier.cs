namespace Paddle.Design.Outline;

/// <summary>One cubic Bézier piece of a half-breadth curve: x (mm) along the paddle never turns back, y (mm) is the half-breadth.</summary>
/// <param name="X0">x of the start, mm.</param>
/// <param name="Y0">y of the start, mm.</param>
/// <param name="X1">x of the handle at the start, mm.</param>
/// <param name="Y1">y of the handle at the start, mm.</param>
/// <param name="X2">x of the handle at the end, mm.</param>
/// <param name="Y2">y of the handle at the end, mm.</param>
/// <param name="X3">x of the end, mm.</param>
/// <param name="Y3">y of the end, mm.</param>
/// <remarks>Theory O1. Source: Bernstein form of a cubic (any text on splines).</remarks>
public readonly record struct CubicBezier(
    double X0, double Y0, double X1, double Y1, double X2, double Y2, double X3, double Y3)
{
    /// <summary>A cubic whose x runs evenly with its parameter: y is then a plain cubic in x with the given end slopes.</summary>
    /// <param name="x0">Start, mm.</param>
    /// <param name="y0">Half-breadth at the start, mm.</param>
    /// <param name="slope0">dy/dx at the start.</param>
    /// <param name="x3">End, mm.</param>
    /// <param name="y3">Half-breadth at the end, mm.</param>
    /// <param name="slope3">dy/dx at the end.</param>
    public static CubicBezier Hermite(double x0, double y0, double slope0, double x3, double y3, double slope3)
    {
        var third = (x3 - x0) / 3;
        return new(x0, y0, x0 + third, y0 + slope0 * third, x3 - third, y3 - slope3 * third, x3, y3);
    }

    /// <summary>The same piece further along the paddle.</summary>
    public CubicBezier ShiftedAlong(double byMm) => this with { X0 = X0 + byMm, X1 = X1 + byMm, X2 = X2 + byMm, X3 = X3 + byMm };

    /// <summary>x (mm) at the parameter <paramref name="s"/> in 0..1.</summary>
    public double X(double s) => Blend(X0, X1, X2, X3, s);

    /// <summary>y (mm) at the parameter <paramref name="s"/> in 0..1.</summary>
    public double Y(double s) => Blend(Y0, Y1, Y2, Y3, s);

    /// <summary>dx/ds (mm) at the parameter <paramref name="s"/>.</summary>
    public double DX(double s) => Slope(X0, X1, X2, X3, s);

    /// <summary>dy/ds (mm) at the parameter <paramref name="s"/>.</summary>
    public double DY(double s) => Slope(Y0, Y1, Y2, Y3, s);

    /// <summary>The parameter at which the piece passes <paramref name="x"/> (mm); clamped to 0..1 outside the piece.</summary>
    /// <remarks>Newton kept inside a shrinking bracket: x grows with s, but stands still at a vertical tangent.</remarks>
    public double ParameterAtX(double x, double guess = 0.5)
    {
        if (x <= X0) return 0;
        if (x >= X3) return 1;
        double low = 0, high = 1, s = Math.Clamp(guess, 0.001, 0.999);
        for (var step = 0; step < 60; step++)
        {
            var error = X(s) - x;
            if (Math.Abs(error) < 1e-9) return s;
            if (error > 0) high = s;
            else low = s;
            var next = s - error / DX(s);
            s = next > low && next < high ? next : 0.5 * (low + high);
        }

        return s;
    }

    /// <summary>Area under the piece, ∫y dx (mm²), in closed form. Theory O2 (Green's theorem on a cubic).</summary>
    public double AreaUnder()
    {
        // ∫ Bi(s) B'j(s) ds for cubics, times the control values.
        double dx0 = X1 - X0, dx1 = X2 - X1, dx2 = X3 - X2;
        return (Y0 * (10 * dx0 + 4 * dx1 + dx2) + Y1 * (6 * dx0 + 6 * dx1 + 3 * dx2) + Y2 * (3 * dx0 + 6 * dx1 + 6 * dx2)
                + Y3 * (dx0 + 4 * dx1 + 10 * dx2)) / 20;
    }

    private static double Blend(double a, double b, double c, double d, double s)
    {
        var t = 1 - s;
        return t * t * (t * a + 3 * s * b) + s * s * (3 * t * c + s * d);
    }

    private static double Slope(double a, double b, double c, double d, double s)
    {
        var t = 1 - s;
        return 3 * (t * t * (b - a) + 2 * t * s * (c - b) + s * s * (d - c));
    }
}
