using Paddle.Design.Copying;

namespace Paddle.Design.Tests.Copying;

/// <summary>The fitter against figures that others certified, and against a formula.</summary>
public class LeastSquaresTests
{
    // Parameters are counted in units near their size, as the fitter expects.
    private static (double[] Values, double[] Errors, double Sum) Fit(double[] x, double[] y, double[] units, double[] start, Func<double[], double, double> model)
    {
        double[] Own(double[] z) => [.. z.Zip(units, (a, b) => a * b)];
        var fit = LeastSquares.Solve(z => [.. x.Zip(y, (at, read) => model(Own(z), at) - read)], [.. start.Zip(units, (a, b) => a / b)], null, 200, 1e-9, default);

        // The reference's errors come from the residuals' own scatter.
        var scatter = fit.SumOfSquares / (x.Length - units.Length);
        return (Own(fit.Parameters), [.. units.Select((unit, k) => unit * Math.Sqrt(scatter * fit.Covariance[k, k]))], fit.SumOfSquares);
    }

    /// <summary>NIST StRD, nonlinear regression, Misra1a (lower difficulty), certified values; data and values from memory: were a figure
    /// wrong, they would not agree with each other.</summary>
    [Fact]
    public void Misra1a_of_the_statistical_reference_data()
    {
        double[] y = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40, 75.47, 81.78];
        double[] x = [77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760.0];
        var (b, e, sum) = Fit(x, y, [100, 1e-4], [250, 0.0005], (p, at) => p[0] * (1 - Math.Exp(-p[1] * at)));
        Close(2.3894212918E+02, b[0], 1e-6);
        Close(5.5015643181E-04, b[1], 1e-6);
        Close(2.7070075241E+00, e[0], 1e-4);
        Close(7.2668688436E-06, e[1], 1e-4);
        Close(1.2455138894E-01, sum, 1e-8);
    }

    /// <summary>NIST StRD, DanWood (lower difficulty), certified values; from memory as above.</summary>
    [Fact]
    public void DanWood_of_the_statistical_reference_data()
    {
        double[] y = [2.138, 3.421, 3.597, 4.340, 4.882, 5.660], x = [1.309, 1.471, 1.490, 1.565, 1.611, 1.680];
        var (b, e, sum) = Fit(x, y, [1, 1], [1, 5], (p, at) => p[0] * Math.Pow(at, p[1]));
        Close(7.6886226176E-01, b[0], 1e-6);
        Close(3.8604055871E+00, b[1], 1e-6);
        Close(1.8281973860E-02, e[0], 1e-4);
        Close(5.1726610913E-02, e[1], 1e-4);
        Close(4.3173084083E-03, sum, 1e-8);
    }

    /// <summary>A straight line: slope Sxy/Sxx, its variance σ²/Sxx (any textbook).</summary>
    [Fact]
    public void A_straight_line_is_that_of_the_formula()
    {
        double[] x = [1, 2, 4, 7, 11], y = [2.1, 3.9, 8.3, 13.8, 22.4];
        var (xm, ym) = (x.Average(), y.Average());
        var sxx = x.Sum(v => (v - xm) * (v - xm));
        var slope = x.Zip(y, (a, b) => (a - xm) * (b - ym)).Sum() / sxx;
        var fit = LeastSquares.Solve(z => [.. x.Zip(y, (a, b) => (z[0] + z[1] * a - b) / 0.3)], [0, 0], null, 50, 1e-10, default);
        Assert.Equal(slope, fit.Parameters[1], 8);
        Assert.Equal(0.09 / sxx, fit.Covariance[1, 1], 8);
        Assert.Equal(Math.Log(x.Length * sxx / Math.Pow(0.09, 2)), fit.LogDeterminant, 6);
    }

    private static void Close(double expected, double actual, double relative) => Assert.InRange(actual, expected * (1 - relative), expected * (1 + relative));
}
