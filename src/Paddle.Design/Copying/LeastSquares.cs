using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace Paddle.Design.Copying;

/// <summary>Parameters that make a sum of squares least, and what they are worth.</summary>
/// <param name="Parameters">The parameters found.</param>
/// <param name="Residuals">Residuals there, in standard errors.</param>
/// <param name="Jacobian">Their changes with the parameters.</param>
/// <param name="Covariance">Covariance of the parameters, (JᵀJ)⁻¹. Theory C3.</param>
/// <param name="LogDeterminant">ln det JᵀJ.</param>
internal sealed record LeastSquaresFit(
    double[] Parameters, double[] Residuals, Matrix<double> Jacobian, Matrix<double> Covariance, double LogDeterminant)
{
    public double SumOfSquares => Residuals.Sum(r => r * r);
}

/// <summary>Least squares by the library's Levenberg-Marquardt; slopes by central differences. Theory C2.</summary>
internal static class LeastSquares
{
    // In units of the parameters' scatter: the error of a central difference is its square, what the model rounds off divides by it.
    private const double Step = 1e-3;

    /// <param name="residuals">Residuals over their standard errors; as many as parameters or more.</param>
    /// <param name="start">Where to begin, parameters in units of their scatter.</param>
    /// <param name="isOpen">Which parameters may move; all when null. One that may not needs a residual of its own.</param>
    /// <param name="tolerance">Where to stop: a step or a slope of this much, in units of the parameters' scatter.</param>
    public static LeastSquaresFit Solve(Func<double[], double[]> residuals, double[] start, Func<int, bool>? isOpen, int mostIterations, double tolerance, CancellationToken cancellation)
    {
        Vector<double> Model(Vector<double> at, Vector<double> x)
        {
            cancellation.ThrowIfCancellationRequested();
            return Vector<double>.Build.Dense(residuals(at.ToArray()));
        }

        double[] at = [];
        Matrix<double>? slopes = null;
        Matrix<double> Slopes(double[] here)
        {
            if (slopes is not null && here.AsSpan().SequenceEqual(at)) return slopes;
            (at, slopes) = (here, Jacobian(residuals, here, isOpen));
            return slopes;
        }

        var count = residuals(start).Length;
        var zeros = Vector<double>.Build.Dense(count);
        var objective = ObjectiveFunction.NonlinearModel(Model, (here, x) => Slopes(here.ToArray()), zeros, zeros);
        var found = new LevenbergMarquardtMinimizer(gradientTolerance: tolerance, stepTolerance: tolerance, functionTolerance: 1e-12, maximumIterations: mostIterations)
            .FindMinimum(objective, Vector<double>.Build.Dense(start)).MinimizingPoint.ToArray();
        var jacobian = Slopes(found);
        var normal = jacobian.TransposeThisAndMultiply(jacobian).Cholesky();
        return new(found, residuals(found), jacobian, normal.Solve(Matrix<double>.Build.DenseIdentity(found.Length)), normal.DeterminantLn);
    }

    internal static Matrix<double> Jacobian(Func<double[], double[]> residuals, double[] at, Func<int, bool>? isOpen)
    {
        var columns = new double[at.Length][];
        var moved = (double[])at.Clone();
        double[]? level = null;
        for (var k = 0; k < at.Length; k++)
        {
            if (isOpen?.Invoke(k) == false)
            {
                // Only its own residual, the last rows in the order of the parameters, knows of it.
                level ??= new double[residuals(at).Length];
                columns[k] = (double[])level.Clone();
                columns[k][^(at.Length - k)] = 1;
                continue;
            }

            var step = Step * Math.Max(1, Math.Abs(at[k]));
            moved[k] = at[k] + step;
            var up = residuals(moved);
            moved[k] = at[k] - step;
            var down = residuals(moved);
            moved[k] = at[k];
            columns[k] = [.. up.Zip(down, (a, b) => (a - b) / (2 * step))];
        }

        return Matrix<double>.Build.DenseOfColumnArrays(columns);
    }
}
