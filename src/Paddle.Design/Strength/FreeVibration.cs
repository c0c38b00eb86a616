namespace Paddle.Design.Strength;

/// <summary>First bending frequency of a free beam of changing section, by Stodola's method. Theory L13.</summary>
/// <remarks>Source: Stodola iteration (Den Hartog, Mechanical Vibrations, from memory). The inertia load of an assumed shape, freed of the
/// two rigid motions, bends the beam into the next shape; ω² is the ratio of the two.</remarks>
internal static class FreeVibration
{
    // Each pass divides what is wrong with ω² by (ω₂/ω₁)⁴, about 50.
    private const int Passes = 4;

    /// <param name="x">Places in rising order, mm.</param>
    /// <param name="massPerLength">Mass per length at each place, kg/mm.</param>
    /// <param name="stiffness">EI at each place, N·mm².</param>
    internal static double FirstFrequencyHz(ReadOnlySpan<double> x, ReadOnlySpan<double> massPerLength, ReadOnlySpan<double> stiffness)
    {
        var count = x.Length;
        Span<double> mass = stackalloc double[count];
        Span<double> shape = stackalloc double[count];
        Span<double> next = stackalloc double[count];
        Span<double> curvature = stackalloc double[count];
        for (var i = 0; i < count; i++)
        {
            var reach = (i == 0 ? 0 : x[i] - x[i - 1]) + (i == count - 1 ? 0 : x[i + 1] - x[i]);
            mass[i] = massPerLength[i] * reach / 2;
            var place = (x[i] - x[0]) / (x[^1] - x[0]);
            shape[i] = place * place;
        }

        var moments = MassMoments(x, mass);
        var omegaSquared = 0.0;
        for (var pass = 0; pass < Passes; pass++)
        {
            RemoveRigidMotion(x, mass, moments, shape);

            // Moment of the inertia loads m·y to the left of each place; balanced, so it vanishes at both ends.
            double force = 0, moment = 0;
            for (var i = 0; i < count; i++)
            {
                if (i > 0) moment += force * (x[i] - x[i - 1]);
                force += mass[i] * shape[i];
                curvature[i] = stiffness[i] > 0 ? moment / stiffness[i] : 0;
            }

            curvature[^1] = 0;
            ElasticCurve.Deflect(x, curvature, x[0], x[^1], next);
            RemoveRigidMotion(x, mass, moments, next);
            double same = 0, square = 0;
            for (var i = 0; i < count; i++)
            {
                same += mass[i] * shape[i] * next[i];
                square += mass[i] * next[i] * next[i];
            }

            // kg·mm/(N·…) : shape in mm against next in kg·mm²·mm/N = 1e-3 s² mm.
            omegaSquared = same / square;
            for (var i = 0; i < count; i++) shape[i] = next[i] * omegaSquared;
        }

        return Math.Sqrt(omegaSquared * 1000) / (2 * Math.PI);
    }

    private static (double M0, double M1, double M2) MassMoments(ReadOnlySpan<double> x, ReadOnlySpan<double> mass)
    {
        double m0 = 0, m1 = 0, m2 = 0;
        for (var i = 0; i < x.Length; i++)
        {
            m0 += mass[i];
            m1 += mass[i] * x[i];
            m2 += mass[i] * x[i] * x[i];
        }

        return (m0, m1, m2);
    }

    private static void RemoveRigidMotion(
        ReadOnlySpan<double> x, ReadOnlySpan<double> mass, (double M0, double M1, double M2) massMoments, Span<double> shape)
    {
        var (m0, m1, m2) = massMoments;
        double y0 = 0, y1 = 0;
        for (var i = 0; i < x.Length; i++)
        {
            y0 += mass[i] * shape[i];
            y1 += mass[i] * shape[i] * x[i];
        }

        var determinant = m0 * m2 - m1 * m1;
        double rise = (y0 * m2 - y1 * m1) / determinant, turn = (m0 * y1 - m1 * y0) / determinant;
        for (var i = 0; i < x.Length; i++) shape[i] -= rise + turn * x[i];
    }
}
