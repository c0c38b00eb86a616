using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Statistics;
using Paddle.Design.Request;
using Paddle.Design.Wood;

namespace Paddle.Design.Copying;

/// <summary>A wood that a paddle may be of.</summary>
/// <param name="Species">Its id.</param>
/// <param name="Name">Its common name.</param>
/// <param name="ChancePercent">Chance among the woods known here, all thought as likely before anything was read.</param>
/// <param name="DensityKgM3">Its usual density, kg/m³.</param>
/// <param name="ModulusMPa">Its usual true modulus, MPa.</param>
public sealed record LikelyWood(string Species, string Name, double ChancePercent, double DensityKgM3, double ModulusMPa);

/// <summary>What is known of a wood before the paddle is weighed or bent: means and scatter of the logarithms of density and apparent modulus.</summary>
/// <param name="ShearOverModulus">Shear modulus over the true modulus.</param>
internal sealed record WoodPrior(double LogDensity, double DensityScatter, double LogModulus, double ModulusScatter, double ShearOverModulus)
{
    private static readonly WoodInUse[] Book =
        [.. WoodCatalogue.All.Select(species => WoodInUse.Resolve(species, DesignDefaults.MoisturePercent, DesignDefaults.SlopeOfGrain, null, null))];

    /// <summary>Of a species, or of any wood in the catalogue when null. Theory C6.</summary>
    public static WoodPrior Of(string? species)
    {
        var woods = Book.Where(wood => species is null || wood.Species == species).ToList();
        double[] densities = [.. woods.Select(wood => Math.Log(wood.DensityKgM3))], moduli = [.. woods.Select(wood => Math.Log(wood.ApparentModulusMPa))];
        double About(double[] logs, double own) => Math.Sqrt(own * own + ArrayStatistics.PopulationVariance(logs));
        return new(
            densities.Average(), About(densities, Scatter.SpecificGravityVariation), moduli.Average(), About(moduli, Scatter.ElasticityVariation),
            woods.Average(wood => wood.ShearModulusMPa / wood.ModulusMPa));
    }

    /// <summary>How likely the paddle is of each wood, the likeliest first. Theory C6.</summary>
    /// <param name="fit">The paddle found with this as what was known before.</param>
    public IReadOnlyList<LikelyWood> Judge(CopyFit fit)
    {
        // What the readings alone say of density and modulus: the answer's precision less that of what was known before.
        var (at, scatter) = (fit.Fit.Parameters, new[] { DensityScatter, ModulusScatter });
        var scale = Matrix<double>.Build.DenseOfDiagonalArray(scatter);
        var block = scale * fit.Fit.Covariance.SubMatrix(CopyModel.Density, 2, CopyModel.Density, 2) * scale;
        var before = Matrix<double>.Build.DenseOfDiagonalArray([.. scatter.Select(s => 1 / (s * s))]);
        var told = block.Inverse() - before;
        var off = Vector<double>.Build.Dense([scatter[0] * at[CopyModel.Density], scatter[1] * at[CopyModel.Modulus]]);
        var (logDensity, logModulus) = (LogDensity + off[0], LogModulus + off[1]);
        var pull = before * off; // slope of what the readings say, at the answer
        double Log(WoodInUse wood)
        {
            var mean = Vector<double>.Build.Dense([Math.Log(wood.DensityKgM3) - logDensity, Math.Log(wood.ApparentModulusMPa) - logModulus]);
            var own = Matrix<double>.Build.DenseOfDiagonalArray(
                [1 / Math.Pow(Scatter.SpecificGravityVariation, 2), 1 / Math.Pow(Scatter.ElasticityVariation, 2)]);
            var (both, sum) = (told + own, pull + own * mean);
            return (sum.DotProduct(both.Inverse() * sum) - mean.DotProduct(own * mean) - Math.Log(both.Determinant())) / 2;
        }

        var logs = Book.Select(Log).ToArray();
        var most = logs.Max();
        var all = logs.Sum(log => Math.Exp(log - most));
        return
        [
            .. Book.Zip(logs, (wood, log) => new LikelyWood(
                wood.Species, WoodCatalogue.Find(wood.Species)!.CommonName, Math.Round(100 * Math.Exp(log - most) / all, 1), Math.Round(wood.DensityKgM3),
                10 * Math.Round(wood.ModulusMPa / 10))).OrderByDescending(wood => wood.ChancePercent).ThenBy(wood => wood.Species, StringComparer.Ordinal),
        ];
    }
}
