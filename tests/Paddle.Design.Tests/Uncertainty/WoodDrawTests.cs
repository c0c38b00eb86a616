using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using Paddle.Design.Uncertainty;
using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Uncertainty;

public class WoodDrawTests
{
    private const int Count = 1 << 14;

    // Source: USDA Wood Handbook table 5-6, quoted in a public small-craft material survey; 25 % from memory.
    [Theory]
    [InlineData("white-ash")]
    [InlineData("sitka-spruce")]
    public void Drawn_sticks_scatter_as_published(string species)
    {
        var (mean, drawn) = Drawn(species);
        void Scatters(Func<WoodInUse, double> of, double expected, double variation)
        {
            var (average, deviation) = drawn.Select(of).MeanStandardDeviation();
            Assert.Equal(expected, average, expected * 1e-3);
            Assert.Equal(variation, deviation / average, 1e-3);
        }

        Scatters(wood => wood.DensityKgM3, mean.DensityKgM3, 0.10);
        Scatters(wood => wood.BendingStrengthMPa, mean.MeanBendingStrengthMPa, 0.16);
        Scatters(wood => wood.ModulusMPa, mean.ModulusMPa, 0.22);
        Scatters(wood => wood.CrossGrainStrengthMPa, mean.MeanCrossGrainStrengthMPa, 0.25);
    }

    // Source: a straight line on density whose slope is that of table 5-11a explains b·V(G)/V of the property's deviation (regression, any
    // textbook). JCSS Probabilistic Model Code 3.5, from memory: strength and modulus 0.8; density with strength 0.6, strength with strength
    // across the grain 0.4, which nothing here is fitted to.
    [Theory]
    [InlineData("white-ash", 1.13, 0.70, 1.30)]
    [InlineData("sitka-spruce", 1.01, 0.84, 1.11)]
    public void Drawn_sticks_go_together_as_published(string species, double rupture, double elasticity, double across)
    {
        var (_, drawn) = Drawn(species);
        double Together(Func<WoodInUse, double> a, Func<WoodInUse, double> b) => Correlation.Pearson(drawn.Select(a), drawn.Select(b));
        Assert.Equal(rupture * 0.10 / 0.16, Together(wood => wood.DensityKgM3, wood => wood.BendingStrengthMPa), 0.005);
        // The modulus is log-normal: of its logarithm, which is what is normal.
        Assert.Equal(elasticity * 0.10 / 0.22, Together(wood => wood.DensityKgM3, wood => Math.Log(wood.ModulusMPa)), 0.005);
        Assert.Equal(across * 0.10 / 0.25, Together(wood => wood.DensityKgM3, wood => wood.CrossGrainStrengthMPa), 0.005);
        Assert.Equal(0.8, Together(wood => wood.BendingStrengthMPa, wood => Math.Log(wood.ModulusMPa)), 0.005);
        Assert.Equal(0.6, Together(wood => wood.DensityKgM3, wood => wood.BendingStrengthMPa), 0.12);
        Assert.Equal(0.4, Together(wood => wood.CrossGrainStrengthMPa, wood => wood.BendingStrengthMPa), 0.12);
    }

    // Source: Wood Handbook table 5-11a, metric, 12 %, from memory: MPa of G; against the handbook's own means of table 5-3a. The handbook says
    // that single species stray from the functions; of these northern white-cedar strays most, 28 % limper. The mean of all lies within a tenth.
    [Theory]
    [InlineData(false, 171.3, 1.13, 16_500, 0.70)]
    [InlineData(true, 170.7, 1.01, 20_500, 0.84)]
    public void The_powers_of_density_lead_through_the_species_of_the_handbook(bool isSoftwood, double rupture, double rupturePower, double elasticity, double elasticityPower)
    {
        var power = DensityPower.Of(isSoftwood);
        Assert.Equal((rupturePower, elasticityPower), (power.Rupture, power.Elasticity));
        var woods = WoodCatalogue.All.Where(wood => wood.IsSoftwood == isSoftwood && !wood.WeakSource).ToList();
        Assert.True(woods.Count >= 5);
        var strong = woods.Select(wood => wood.ModulusOfRupture12MPa / (rupture * Math.Pow(wood.SpecificGravity12, power.Rupture))).ToList();
        var stiff = woods.Select(wood => wood.ModulusOfElasticity12MPa / (elasticity * Math.Pow(wood.SpecificGravity12, power.Elasticity))).ToList();
        Assert.All(strong.Concat(stiff), ratio => Assert.InRange(ratio, 0.7, 1.3));
        Assert.Equal(1, strong.Average(), 0.1);
        Assert.Equal(1, stiff.Average(), 0.1);
    }

    [Fact]
    public void What_was_measured_does_not_scatter_and_strength_does()
    {
        var wood = WoodInUse.Resolve(WoodCatalogue.Find("white-ash")!, 12, 0.04, 700, 13_000);
        var drawn = new WoodDraw(wood, isDensityMeasured: true, isModulusMeasured: true).At([2, 2, 2, 2]);
        Assert.Equal((700, wood.ModulusMPa, wood.ShearModulusMPa), (drawn.DensityKgM3, drawn.ModulusMPa, drawn.ShearModulusMPa));
        Assert.True(drawn.BendingStrengthMPa > 1.3 * wood.MeanBendingStrengthMPa);
    }

    [Fact]
    public void No_stick_is_weaker_than_nothing()
    {
        var wood = WoodInUse.Resolve(WoodCatalogue.Find("white-ash")!, 12, 0.04, null, null);
        var drawn = new WoodDraw(wood, false, false).At([-20, -20, -20, -20]);
        Assert.All([drawn.DensityKgM3, drawn.BendingStrengthMPa, drawn.ModulusMPa, drawn.CrossGrainStrengthMPa], value => Assert.True(value > 0));
    }

    private static (WoodInUse Mean, IReadOnlyList<WoodInUse> Drawn) Drawn(string species)
    {
        var wood = WoodInUse.Resolve(WoodCatalogue.Find(species)!, 12, 0.04, null, null);
        var (stick, points) = (new WoodDraw(wood, false, false), new SobolPoints(WoodDraw.Dimensions, 3));
        return (wood, [.. Enumerable.Range(0, Count).Select(k =>
        {
            Span<double> z = stackalloc double[WoodDraw.Dimensions];
            points.Fill((uint)k, z);
            for (var d = 0; d < z.Length; d++) z[d] = Normal.InvCDF(0, 1, z[d]);
            return stick.At(z);
        })]);
    }
}
