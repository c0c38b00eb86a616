namespace Paddle.Design.Strength;

/// <summary>Deflection of a straight beam held at two places, from its curvature. Theory L10.</summary>
/// <remarks>Source: elementary beam theory, y″ = M/(EI), summed by the trapezoid rule over neighbouring places.</remarks>
internal static class ElasticCurve
{
    /// <summary>Deflections (mm) that vanish at the two supports.</summary>
    /// <param name="x">Places in rising order, mm.</param>
    /// <param name="curvature">M/(EI) at each place, 1/mm.</param>
    /// <param name="supportA">x of one support, mm; within the places.</param>
    /// <param name="supportB">x of the other support, mm.</param>
    /// <param name="deflection">Receives the deflections, mm.</param>
    internal static void Deflect(
        ReadOnlySpan<double> x, ReadOnlySpan<double> curvature, double supportA, double supportB, Span<double> deflection)
    {
        double slope = 0, height = 0;
        deflection[0] = 0;
        for (var i = 1; i < x.Length; i++)
        {
            var step = x[i] - x[i - 1];
            var next = slope + 0.5 * step * (curvature[i - 1] + curvature[i]);

            // Curvature runs linearly between places, so the height gains a cubic.
            height += step * slope + step * step * (2 * curvature[i - 1] + curvature[i]) / 6;
            slope = next;
            deflection[i] = height;
        }

        double a = At(x, deflection, supportA), b = At(x, deflection, supportB);
        var tilt = (b - a) / (supportB - supportA);
        for (var i = 0; i < x.Length; i++) deflection[i] -= a + tilt * (x[i] - supportA);
    }

    /// <summary>Value at a place between two others, by a straight line.</summary>
    internal static double At(ReadOnlySpan<double> x, ReadOnlySpan<double> y, double place)
    {
        var after = x.BinarySearch(place);
        if (after >= 0) return y[after];
        after = ~after;
        if (after == 0) return y[0];
        if (after == x.Length) return y[^1];
        var share = (place - x[after - 1]) / (x[after] - x[after - 1]);
        return y[after - 1] + share * (y[after] - y[after - 1]);
    }
}
