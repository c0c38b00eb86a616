using MathNet.Numerics.Distributions;
using Paddle.Design.Request;
using Paddle.Design.Solid;
using Paddle.Design.Uncertainty;

namespace Paddle.Design.Tests.Uncertainty;

public class UncertaintyStudyTests
{
    private const string Mass = "/mass/totalG", Finished = "/mass/finishedG", Swing = "/mass/finishedInertiaLowerHandKgM2", Offset = "/balance/offsetMm",
        Bench = "/flex/benchFlexMm", Hertz = "/flex/firstFrequencyHz", HardFactor = "/strength/cases/1/safetyFactor", HardStroke = "strength.hard-stroke";

    private static readonly DesignRequest Cherry = new() { HandSpacingMm = 880, Wood = new() { Species = "black-cherry" } };

    /// <summary>As if the maker had weighed and tested the board: then only the plane scatters, strength aside.</summary>
    private static readonly DesignRequest Tested =
        Cherry with { Wood = new() { Species = "black-cherry", MeasuredDensityKgM3 = 570, MeasuredModulusMPa = 10_500 } };

    private const double SmallSlip = 0.1;

    // Studies that several tests look at.
    private static readonly Lazy<(UncertaintyReport Report, DesignReport Designed)> SmallSlips = new(() => Run(Tested, 2048, 1, SmallSlip)),
        PerfectHand = new(() => Run(Cherry, 16_384, 1, 0));

    // Source: variance of a linear function: V(c·x) = c²·V(x), exact. Mass is density times volume; the finish weighs what it weighs.
    [Fact]
    public void Of_a_perfect_hand_the_mass_scatters_as_the_density()
    {
        var (report, designed) = PerfectHand.Value;
        Assert.Equal(designed.Mass.TotalG, report.Figure(Mass).Designed);
        Assert.Equal(designed.Mass.TotalG, report.Figure(Mass).Mean, 0.05);
        Assert.Equal(0.10 * designed.Mass.TotalG, report.Figure(Mass).StandardDeviation, 0.1);
        Assert.Equal(0.10 * designed.Mass.TotalG, report.Figure(Finished).StandardDeviation, 0.1);
        Assert.Equal(designed.Mass.TotalG * (1 - 0.1 * 1.6449), report.Figure(Mass).P05, 0.3);
        Assert.Equal(designed.Mass.TotalG * (1 + 0.1 * 1.6449), report.Figure(Mass).P95, 0.3);
    }

    // Source: delta method (first-order Taylor), any textbook of statistics: σ² = Σ(∂f/∂x)²σx², with central differences of the design itself.
    [Theory]
    [InlineData(Mass)]
    [InlineData(Swing)]
    [InlineData(Offset)]
    [InlineData(Bench)]
    [InlineData(Hertz)]
    public void Small_slips_spread_a_figure_as_its_slopes_say(string figure)
    {
        const double Step = 0.05;
        var (report, designed) = SmallSlips.Value;
        var specification = Tested.Complete().Specification;
        double At(int size, double by)
        {
            var v = new double[PaddleSizes.Count];
            designed.Sizes.CopyTo(v);
            v[size] += by;
            return Read(PaddleDesigner.Design(specification with { Pinned = PinnedSizes.To(PaddleSizes.FromVector(v)) }), figure);
        }

        var square = Enumerable.Range(0, PaddleSizes.Count).Sum(size => Math.Pow((At(size, Step) - At(size, -Step)) / (2 * Step), 2));
        var expected = SmallSlip * Math.Sqrt(square);
        Assert.Equal(expected, report.Figure(figure).StandardDeviation, 0.01 * expected);
        Assert.Equal(Read(designed, figure), report.Figure(figure).Mean, 0.05 * expected);
    }

    // Source: flex goes as 1/E, and of a log-normal E with variation V the mean of 1/E is (1 + V²)/Ē, that of its logarithm lies V²/2 lower (moments
    // of the log-normal distribution, any textbook). Shear sags with it: G goes with E.
    [Fact]
    public void Bench_flex_is_on_average_more_than_designed_since_it_goes_as_one_over_the_modulus()
    {
        var (report, designed) = PerfectHand.Value;
        const double Square = 0.22 * 0.22;
        Assert.Equal(designed.Flex.BenchFlexMm * (1 + Square), report.Figure(Bench).Mean, 0.003);
        Assert.Equal(designed.Flex.BenchFlexMm * Math.Sqrt(1 + Square), report.Figure(Bench).P50, 0.005);
        Assert.Equal(0.22 * report.Figure(Bench).Mean, report.Figure(Bench).StandardDeviation, 0.01);
    }

    // Source: structural reliability, Cornell's index: resistance R normal, load S known, P(R < S) = Φ(−β), β = (μ − S)/σ (any textbook).
    [Theory]
    [InlineData(1.0)]
    [InlineData(1.3)]
    public void The_chance_of_a_normal_strength_under_a_known_load_is_the_closed_form(double leastFactor)
    {
        var request = Cherry with { Aims = new() { MinimumSafetyFactor = leastFactor } };
        var (report, designed) = Run(request, 8192, 1, 0);
        var hard = designed.Strength.Cases[1];
        double Below(double factor) => Normal.CDF(0, 1, -(hard.SafetyFactorOnMean - factor) / (0.16 * hard.SafetyFactorOnMean));
        var chance = report.Check(HardStroke);
        Assert.Equal(Below(1), chance.BreakChance!.Value, 0.0008);
        Assert.Equal(Below(leastFactor), chance.FailChance, 0.0015);
        // 19 sticks in 20 exceed the strength that the designed factor stands on.
        Assert.Equal(hard.SafetyFactor, report.Figure(HardFactor).P05, 0.005);
    }

    [Fact, Trait(Sweep.Name, Sweep.Full)]
    public void Plain_Monte_Carlo_agrees_within_its_own_error()
    {
        var count = Sweep.Of(2000, 20_000);
        var (sobol, _) = Run(Cherry, Sweep.Of(2048, 16_384), 1, 0.4);
        var monteCarlo = Random(Cherry, count, 11, 0.4);
        foreach (var (ours, theirs) in sobol.Figures.Zip(monteCarlo.Figures))
            Assert.Equal(theirs.Mean, ours.Mean, 4 * theirs.StandardDeviation / Math.Sqrt(count));
        foreach (var (ours, theirs) in sobol.Checks.Zip(monteCarlo.Checks))
        {
            Assert.Equal(theirs.Id, ours.Id);
            Assert.Equal(theirs.FailChance, ours.FailChance, 4 * Math.Sqrt(2) * theirs.FailChanceStandardError);
        }
    }

    // Source: the error of plain Monte Carlo goes as n^-1/2 (central limit), that of scrambled Sobol points on smooth functions nearly as n^-3/2
    // (Owen 1997); held against a run of many times as many points.
    [Fact, Trait(Sweep.Name, Sweep.Full)]
    public void It_converges_faster_than_Monte_Carlo()
    {
        var (few, many, seeds, all) = Sweep.Of((64, 512, 4, 1 << 13), (256, 4096, 6, 1 << 17));
        var best = Run(Cherry, all, 99, 0.4).Report;
        Dictionary<string, double> Errors(Func<int, UncertaintyReport> run)
        {
            var runs = Enumerable.Range(1, seeds).Select(run).ToList();
            return best.Figures.ToDictionary(
                exact => exact.Pointer, exact => Math.Sqrt(runs.Average(one => Math.Pow(one.Figure(exact.Pointer).Mean - exact.Mean, 2))));
        }

        var (ofFew, ofMany) = (Errors(seed => Run(Cherry, few, seed, 0.4).Report), Errors(seed => Run(Cherry, many, seed, 0.4).Report));
        var monteCarlo = Errors(seed => Random(Cherry, many, seed, 0.4));
        // The least factor of all has a kink wherever another case takes over.
        foreach (var figure in new[] { Mass, Finished, Swing, Offset, Bench, Hertz, HardFactor })
        {
            Assert.True(ofMany[figure] < ofFew[figure] / Math.Pow(many / few, 0.75), $"{figure}: {ofFew[figure]} at {few}, {ofMany[figure]} at {many}: no better than Monte Carlo's n^-1/2");
            Assert.True(ofMany[figure] < monteCarlo[figure] / 5, $"{figure}: {ofMany[figure]} against {monteCarlo[figure]} of Monte Carlo");
        }
    }

    [Fact]
    public void The_same_seed_gives_the_same_answer_whichever_thread_is_first()
    {
        var (one, again, other) = (Run(Cherry, 500, 5, 0.4).Report, Run(Cherry, 500, 5, 0.4).Report, Run(Cherry, 500, 6, 0.4).Report);
        Assert.Equal(one.Figures, again.Figures);
        Assert.Equal(one.Checks, again.Checks);
        Assert.NotEqual(one.Figures, other.Figures);
    }

    // Source: Beta distribution of MathNet.Numerics.
    [Theory]
    [InlineData(0, 10_000)]
    [InlineData(37, 8192)]
    [InlineData(500, 500)]
    public void A_chance_has_the_error_of_its_count(int count, int samples)
    {
        var chance = Chance.Of(count, samples);
        Assert.Equal((double)count / samples, chance.Value);
        Assert.Equal(new Beta(count + 1, samples - count + 1).StdDev, chance.StandardError, 1e-12);
    }

    [Fact, Trait(Sweep.Name, Sweep.Full)]
    public void A_clumsier_hand_misses_the_balance_more_often_and_a_weaker_design_breaks_more_often()
    {
        var samples = Sweep.Of(768, 4096);
        double Off(double error) => Run(Cherry, samples, 1, error).Report.Check("balance.offset").FailChance;
        Assert.True(Off(0) <= Off(0.3) && Off(0.3) < Off(0.6) && Off(0.6) < Off(1));
        double Breaks(double factor) => Run(Cherry with { Aims = new() { MinimumSafetyFactor = factor } }, samples, 1, 0.4).Report.BreakChance;
        Assert.True(Breaks(1.6) < Breaks(1.3) && Breaks(1.3) < Breaks(1));
    }

    [Fact]
    public void It_stops_when_asked_to()
    {
        var design = Cherry.Complete();
        var sizes = PaddleDesigner.Design(design.Specification).Sizes;
        Assert.Throws<OperationCanceledException>(() => UncertaintyStudy.Of(design, sizes, 20_000, 1, 0.4, new CancellationToken(canceled: true)));
    }

    private static (UncertaintyReport Report, DesignReport Designed) Run(DesignRequest request, int samples, int seed, double planingErrorMm)
    {
        var design = request.Complete();
        var designed = PaddleDesigner.Design(design.Specification);
        return (UncertaintyStudy.Of(design, designed.Sizes, samples, seed, planingErrorMm), designed);
    }

    private static UncertaintyReport Random(DesignRequest request, int samples, int seed, double planingErrorMm)
    {
        var design = request.Complete();
        return UncertaintyStudy.Of(design, PaddleDesigner.Design(design.Specification).Sizes, samples, planingErrorMm, (k, z) =>
        {
            var random = new Random(seed * 1_000_003 + k);
            for (var d = 0; d < z.Length; d++) z[d] = Normal.InvCDF(0, 1, Math.Max(1e-12, random.NextDouble()));
        });
    }

    private static double Read(DesignReport report, string figure) => figure switch
    {
        Mass => report.Mass.TotalG,
        Swing => report.Finished.InertiaLowerHandKgM2,
        Offset => report.Balance.OffsetMm,
        Bench => report.Flex.BenchFlexMm,
        _ => report.Flex.FirstFrequencyHz,
    };
}

/// <summary>Looks figures and checks up.</summary>
file static class Found
{
    internal static UncertainFigure Figure(this UncertaintyReport report, string at) => report.Figures.Single(figure => figure.Pointer == at);

    internal static UncertainCheck Check(this UncertaintyReport report, string id) => report.Checks.Single(check => check.Id == id);
}
