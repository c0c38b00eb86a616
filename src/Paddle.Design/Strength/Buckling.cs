namespace Paddle.Design.Strength;

/// <summary>Buckling of the shaft between the hands, a column of changing stiffness pinned at both. Theory L11.</summary>
/// <remarks>Vianello's method of successive approximation (Timoshenko and Gere, Theory of Elastic Stability, from memory): the deflection
/// that a thrust causes on an assumed shape is the next shape; at the critical load the two are equal. The blade below the lower hand is
/// taken as held by the bottom that it pushes on.</remarks>
internal static class Buckling
{
    // Each pass divides what is wrong with the load by about 16.
    private const int Passes = 4;

    /// <summary>Critical thrust, N.</summary>
    /// <param name="x">Places in rising order, mm; only those between the pins count.</param>
    /// <param name="stiffness">EI at each place, N·mm².</param>
    /// <param name="pinA">x of the upper pin, mm.</param>
    /// <param name="pinB">x of the lower pin, mm.</param>
    internal static double CriticalLoadN(ReadOnlySpan<double> x, ReadOnlySpan<double> stiffness, double pinA, double pinB)
    {
        // Beyond the pins nothing counts but the places next to them, to which the curvature runs out.
        var from = Math.Max(0, FirstAt(x, pinA) - 1);
        var count = Math.Min(x.Length, FirstAt(x, Math.BitIncrement(pinB)) + 1) - from;
        x = x.Slice(from, count);
        stiffness = stiffness.Slice(from, count);
        Span<double> shape = stackalloc double[x.Length];
        Span<double> next = stackalloc double[x.Length];
        Span<double> curvature = stackalloc double[x.Length];
        for (var i = 0; i < x.Length; i++) shape[i] = Math.Sin(Math.PI * (x[i] - pinA) / (pinB - pinA));

        var critical = 0.0;
        for (var pass = 0; pass < Passes; pass++)
        {
            for (var i = 0; i < x.Length; i++)
                curvature[i] = x[i] >= pinA && x[i] <= pinB && stiffness[i] > 0 ? -shape[i] / stiffness[i] : 0;

            ElasticCurve.Deflect(x, curvature, pinA, pinB, next);
            double same = 0, square = 0;
            for (var i = 0; i < x.Length; i++)
            {
                if (x[i] < pinA || x[i] > pinB) continue;
                same += shape[i] * next[i];
                square += next[i] * next[i];
            }

            critical = same / square;
            for (var i = 0; i < x.Length; i++) shape[i] = next[i] * critical;
        }

        return critical;
    }

    private static int FirstAt(ReadOnlySpan<double> x, double place)
    {
        var at = 0;
        while (at < x.Length && x[at] < place) at++;
        return at;
    }

    /// <summary>Growth of a column's moments with its thrust: 1/(1 − P/Pcr); steep but finite beyond 0.95 of the critical load.</summary>
    internal static double Growth(double thrustN, double criticalN) =>
        thrustN < 0.95 * criticalN ? 1 / (1 - thrustN / criticalN) : 19 + thrustN / (0.95 * criticalN);
}
