namespace Paddle.Design.Build;

/// <summary>Uncertainty of a result from those of its readings. Theory M17.</summary>
/// <remarks>
/// <c>u² = sum (df/dx_i u_i)²</c>, first order, independent readings. Source: law of propagation of uncertainty, ISO/IEC Guide
/// 98-3 (GUM), from memory. The derivatives are central differences over the readings' own uncertainties.
/// </remarks>
internal static class Propagation
{
    internal static double StandardUncertainty(
        Func<double[], double> f, IReadOnlyList<double> readings, IReadOnlyList<double> uncertainties)
    {
        var square = 0.0;
        for (var i = 0; i < readings.Count; i++)
        {
            double[] up = [.. readings], down = [.. readings];
            up[i] += uncertainties[i];
            down[i] -= uncertainties[i];
            var change = (f(up) - f(down)) / 2;
            square += change * change;
        }

        return Math.Sqrt(square); // theory M17
    }
}
