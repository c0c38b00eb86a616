using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;
using Paddle.Design.Fitting;

namespace Paddle.Design.Tests.Fitting;

public class SizeRunTests
{
    private static readonly PopulationRequest Men = new() { Men = 1 };

    private static SizeRunAdvice Advice(SizeRunRequest request)
    {
        var outcome = SizeRun.Advise(request);
        Assert.Empty(outcome.Refusals);
        return outcome.Answer!;
    }

    private static double MisfitOf(IEnumerable<double> customers, IReadOnlyList<double> sizes) =>
        customers.Average(x => sizes.Min(s => Math.Abs(x - s)));

    private static double Misfit(LengthDistribution d, double size, double above, double upto) =>
        (size * (d.Share(size) - d.Share(above))) - (d.Moment(size) - d.Moment(above))
        + (d.Moment(upto) - d.Moment(size)) - (size * (d.Share(upto) - d.Share(size)));

    private static IEnumerable<double[]> Choices(IReadOnlyList<double> from, int k, int start = 0) => k == 0
        ? [[]]
        : Enumerable.Range(start, from.Count - start).SelectMany(i => Choices(from, k - 1, i + 1).Select(rest => (double[])[from[i], .. rest]));

    // Every choice of k lattice lengths, tried one by one.
    [Fact]
    public void Sizes_are_as_good_as_the_best_of_every_choice()
    {
        var random = new Random(31415);
        for (var run = 0; run < 40; run++)
        {
            var step = run % 2 == 0 ? 25 : 25.4;
            var n = 1 + random.Next(40);
            double[] customers = [.. Enumerable.Range(0, n).Select(_ => 1300 + (260 * Math.Pow(random.NextDouble(), 1 + (run % 3))))];
            var distribution = new CustomerLengths(customers);
            var lattice = SizeLattice.Lengths(distribution, step);
            var best = SizeLattice.Solve(distribution, lattice, 5);
            for (var k = 1; k <= best.Count; k++)
            {
                var brute = Choices(lattice, k).Min(c => MisfitOf(customers, c));
                Assert.Equal(brute, best[k - 1].MeanMisfitMm, 1e-6);
                Assert.Equal(brute, MisfitOf(customers, best[k - 1].SizesMm), 1e-6);
                Assert.Equal(k, best[k - 1].SizesMm.Distinct().Count());
            }
        }
    }

    // The shortcut rests on the best neighbour never moving down; plain dynamic programming over all pairs must agree on large lattices.
    [Fact]
    public void Large_lattices_agree_with_plain_dynamic_programming()
    {
        var random = new Random(161803);
        for (var run = 0; run < 4; run++)
        {
            double[] customers = [.. Enumerable.Range(0, 300).Select(_ => 1200 + (random.Next(5) * 90) + (40 * random.NextDouble()))];
            LengthDistribution distribution = run % 2 == 0
                ? new CustomerLengths(customers)
                : new NormalMixture([new NormalGroup(1, 1400, 10 + (20 * run)), new NormalGroup(2, 1600, 60), new NormalGroup(0.1, 1300, 5)]);
            var lattice = SizeLattice.Lengths(distribution, 7);
            var fast = SizeLattice.Solve(distribution, lattice, 8);
            double[] best = [.. lattice.Select(l => Misfit(distribution, l, double.NegativeInfinity, l))];
            for (var k = 1; k <= 8; k++)
            {
                var plain = Enumerable.Range(0, best.Length).Min(j => best[j] + Misfit(distribution, lattice[j], lattice[j], double.PositiveInfinity));
                Assert.Equal(plain, fast[k - 1].MeanMisfitMm, 1e-7);
                best = [.. Enumerable.Range(0, best.Length).Select(j => j == 0 ? double.PositiveInfinity : Enumerable.Range(0, j).Min(i =>
                    best[i]
                    + Misfit(distribution, lattice[i], lattice[i], (lattice[i] + lattice[j]) / 2)
                    + Misfit(distribution, lattice[j], (lattice[i] + lattice[j]) / 2, lattice[j])))];
            }
        }
    }

    // Lattice lengths outside the customers' own range cannot help: a wider lattice gives the same misfit.
    [Fact]
    public void A_wider_lattice_does_no_better()
    {
        double[] customers = [1411, 1422, 1480, 1490, 1533];
        var distribution = new CustomerLengths(customers);
        double[] wide = [.. Enumerable.Range(48, 20).Select(i => i * 25.0)];
        for (var k = 1; k <= 4; k++)
        {
            var narrow = SizeLattice.Solve(distribution, SizeLattice.Lengths(distribution, 25), 4)[k - 1].MeanMisfitMm;
            Assert.Equal(Choices(wide, k).Min(c => MisfitOf(customers, c)), narrow, 1e-9);
        }
    }

    // A mixture of normals, each choice's misfit from E|X − c| integrated numerically over the density.
    [Fact]
    public void Sizes_of_a_population_are_as_good_as_the_best_of_every_choice()
    {
        NormalGroup[] groups = [new(0.5, 1540, 45), new(0.5, 1465, 42)];
        var mixture = new NormalMixture(groups);
        double[] lattice = [.. Enumerable.Range(0, 15).Select(i => 1325.0 + (25 * i))];
        var best = SizeLattice.Solve(mixture, lattice, 3);
        for (var k = 1; k <= 3; k++)
        {
            var brute = Choices(lattice, k).Min(c => Integrated(groups, c));
            Assert.Equal(brute, best[k - 1].MeanMisfitMm, 1e-4);
            Assert.Equal(brute, Integrated(groups, best[k - 1].SizesMm), 1e-4);
        }
    }

    private static double Integrated(NormalGroup[] groups, IReadOnlyList<double> sizes)
    {
        double[] knots = [900, .. sizes, .. sizes.Zip(sizes.Skip(1), (a, b) => (a + b) / 2), 2100];
        Array.Sort(knots);
        return knots.Zip(knots.Skip(1), (a, b) => GaussLegendreRule.Integrate(
            x => sizes.Min(s => Math.Abs(x - s)) * groups.Sum(g => g.Share * Normal.PDF(g.MeanMm, g.StandardDeviationMm, x)), a, b, 64)).Sum();
    }

    // Folded normal: E|X − c| = σ √(2/π) e^(−d²/2σ²) + d (1 − 2 Φ(−d/σ)), d = μ − c (textbook).
    [Theory]
    [InlineData(1500, 1500)]
    [InlineData(1500, 1525)]
    [InlineData(1500, 1400)]
    public void One_size_for_one_normal_group_has_the_folded_normals_mean(double meanMm, double sizeMm)
    {
        const double Sigma = 47.7;
        var d = meanMm - sizeMm;
        var expected = (Sigma * Math.Sqrt(2 / Math.PI) * Math.Exp(-d * d / (2 * Sigma * Sigma))) + (d * (1 - (2 * Normal.CDF(0, 1, -d / Sigma))));
        var mixture = new NormalMixture([new NormalGroup(3, meanMm, Sigma)]);
        Assert.Equal(expected, SizeLattice.Solve(mixture, [sizeMm], 1)[0].MeanMisfitMm, 1e-9);
    }

    [Fact]
    public void Partial_moment_matches_numerical_integration()
    {
        var mixture = new NormalMixture([new NormalGroup(0.67, 891.8, 47.7), new NormalGroup(0.33, 815.5, 45.2)]);
        foreach (var limit in new[] { 750.0, 820, 866.8, 900, 1000 })
        {
            var integral = GaussLegendreRule.Integrate(
                x => x * ((0.67 * Normal.PDF(891.8, 47.7, x)) + (0.33 * Normal.PDF(815.5, 45.2, x))), 400, limit, 256);
            Assert.Equal(integral, mixture.Moment(limit), 1e-6);
        }
    }

    [Fact]
    public void A_large_drawn_crowd_agrees_with_its_population()
    {
        var random = new Random(2718);
        CustomerRequest[] crowd = [.. Enumerable.Range(0, 100_000).Select(i => new CustomerRequest { HandSpacingMm = i % 2 == 0 ? Normal.Sample(random, 891.8, 47.7) : Normal.Sample(random, 815.5, 45.2) })];
        var drawn = Advice(new SizeRunRequest { Sizes = 3, Customers = crowd });
        var exact = Advice(new SizeRunRequest { Sizes = 3, Population = new() { Men = 0.5, Women = 0.5 } });
        Assert.Equal(exact.Sizes.Select(s => s.OverallLengthMm), drawn.Sizes.Select(s => s.OverallLengthMm));
        Assert.Equal(exact.MeanMisfitMm, drawn.MeanMisfitMm, 0.3);
        Assert.Equal(exact.Within25MmShare, drawn.Within25MmShare, 0.01);
        Assert.Equal(exact.Within50MmShare, drawn.Within50MmShare, 0.01);
        for (var i = 0; i < 3; i++) Assert.Equal(exact.Sizes[i].Share, drawn.Sizes[i].Share, 0.01);
    }

    [Fact]
    public void Shares_counts_and_histogram_agree_with_plain_counting()
    {
        var random = new Random(99);
        double[] spacings = [.. Enumerable.Range(0, 5_000).Select(_ => Math.Round(700 + (300 * random.NextDouble())))];
        var a = Advice(new SizeRunRequest { Sizes = 4, StepMm = 25.4, Customers = [.. spacings.Select(s => new CustomerRequest { HandSpacingMm = s })], FleetCount = 37 });
        double[] lengths = [.. spacings.Select(s => s + 20 + 38 + 620)];
        double[] sizes = [.. a.Curve[3].SizesMm];
        Assert.Equal(MisfitOf(lengths, sizes), a.MeanMisfitMm, 1e-6);
        Assert.Equal(lengths.Count(l => sizes.Min(s => Math.Abs(l - s)) <= 25) / 5000.0, a.Within25MmShare, 1e-9);
        Assert.Equal(lengths.Count(l => sizes.Min(s => Math.Abs(l - s)) <= 50) / 5000.0, a.Within50MmShare, 1e-9);
        for (var i = 0; i < 4; i++)
        {
            Assert.Equal(lengths.Count(l => sizes.MinBy(s => Math.Abs(l - s)) == sizes[i]) / 5000.0, a.Sizes[i].Share, 1e-9);
            Assert.Equal(a.Sizes[i].OverallLengthMm - 678, a.Sizes[i].HandSpacingMm, 0.06);
        }

        Assert.Equal(37, a.Sizes.Sum(s => s.Count));
        Assert.Equal(1, a.Histogram.Sum(b => b.Share), 1e-9);
        foreach (var bin in a.Histogram.Skip(1).SkipLast(1))
            Assert.Equal(lengths.Count(l => l > bin.LowMm && l <= bin.HighMm) / 5000.0, bin.Share, 1e-9);
    }

    [Fact]
    public void Curve_falls_and_names_what_each_size_buys()
    {
        var a = Advice(new SizeRunRequest { Sizes = 3, Population = new() { Men = 0.6, Women = 0.4 }, FleetCount = 20 });
        Assert.Equal(Enumerable.Range(1, 8), a.Curve.Select(p => p.Sizes));
        Assert.Null(a.Curve[0].GainMm);
        Assert.All(a.Curve.Skip(1), p => Assert.True(p.GainMm > 0));
        Assert.All(a.Curve.Zip(a.Curve.Skip(1)), p => Assert.Equal(p.First.MeanMisfitMm - p.Second.MeanMisfitMm, p.Second.GainMm!.Value, 9));
        Assert.Equal(a.Curve[2].MeanMisfitMm, a.MeanMisfitMm, 12);
        Assert.Equal(1, a.Sizes.Sum(s => s.Share), 9);
        Assert.All(a.Sizes, s => Assert.Equal(0, s.OverallLengthMm % 25, 9));
    }

    [Fact]
    public void Stock_limits_are_kept()
    {
        var a = Advice(new SizeRunRequest { Sizes = 4, Population = Men, ShortestStockMm = 1480, LongestStockMm = 1550 });
        Assert.All(a.Sizes, s => Assert.InRange(s.OverallLengthMm, 1480, 1550));
        Assert.Equal(3, a.Sizes.Count);
        Assert.Contains(a.Reasons, r => r.Contains("Only 3", StringComparison.Ordinal));
        var beyond = Advice(new SizeRunRequest { Sizes = 2, Customers = [new() { OverallLengthMm = 1400 }, new() { OverallLengthMm = 1410 }], ShortestStockMm = 1500 });
        Assert.Equal([1500.0], beyond.Sizes.Select(s => s.OverallLengthMm));
        Assert.Equal(95, beyond.MeanMisfitMm, 1e-9);
        Assert.Equal("/longestStockMm", Assert.Single(SizeRun.Advise(new SizeRunRequest { Sizes = 2, Population = Men, ShortestStockMm = 1510, LongestStockMm = 1520 }).Refusals).JsonPointer);
    }

    [Fact]
    public void Statures_become_hand_spacings_by_the_surveys_line()
    {
        var one = Advice(new SizeRunRequest { Sizes = 1, StepMm = 1, Customers = [new() { StatureMm = 1756 }] });
        Assert.Equal(890 + 678, one.Sizes[0].OverallLengthMm, 1.0);
        var group = Advice(new SizeRunRequest { Sizes = 1, StepMm = 1, Groups = [new() { Share = 1, MeanMm = 1713.9, StandardDeviationMm = 90.1, Quantity = CustomerQuantity.Stature }] });
        var spacing = Advice(new SizeRunRequest { Sizes = 1, StepMm = 1, Groups = [new() { Share = 1, MeanMm = 866.8, StandardDeviationMm = 59 }] });
        Assert.Equal(spacing.MeanMisfitMm, group.MeanMisfitMm, 0.3);
    }

    [Theory]
    [InlineData(new[] { 0.5, 0.3, 0.2 }, 10, new[] { 5, 3, 2 })]
    [InlineData(new[] { 0.40, 0.35, 0.25 }, 7, new[] { 3, 2, 2 })]
    [InlineData(new[] { 0.98, 0.01, 0.01 }, 5, new[] { 3, 1, 1 })]
    [InlineData(new[] { 0.5, 0.5 }, 1, new[] { 1, 0 })]
    public void Fleet_is_shared_in_whole_paddles(double[] shares, int fleet, int[] expected) => Assert.Equal(expected, FleetCounts.Share(shares, fleet));

    // Hand formula: of customers spread evenly over a range R, k sizes leave a mean misfit of R/(4k). Half a per cent for the draw.
    [Fact]
    public void A_hundred_thousand_even_customers_misfit_by_the_range_over_four_sizes()
    {
        var random = new Random(5);
        CustomerRequest[] crowd = [.. Enumerable.Range(0, 100_000).Select(_ => new CustomerRequest { HandSpacingMm = 700 + (300 * random.NextDouble()) })];
        var run = Advice(new SizeRunRequest { Sizes = 8, StepMm = 1, Customers = crowd, FleetCount = 500 });
        Assert.Equal(300.0 / (4 * 8), run.MeanMisfitMm, 0.05);
        Assert.Equal(500, run.Sizes.Sum(size => size.Count));
    }

    [Fact]
    public void Runs_without_an_answer_are_refused()
    {
        static string[] Pointers(SizeRunRequest r) => [.. SizeRun.Advise(r).Refusals.Select(x => x.JsonPointer)];
        Assert.Equal(["/customers"], Pointers(new SizeRunRequest { Sizes = 3 }));
        Assert.Equal(["/customers"], Pointers(new SizeRunRequest { Sizes = 3, Customers = [new() { StatureMm = 1700 }], Population = Men }));
        Assert.Equal(["/customers"], Pointers(new SizeRunRequest { Sizes = 3, Customers = [] }));
        Assert.Equal(["/sizes"], Pointers(new SizeRunRequest { Sizes = 9, Population = Men }));
        Assert.Equal(["/stepMm"], Pointers(new SizeRunRequest { Sizes = 3, StepMm = double.NaN, Population = Men }));
        Assert.Equal(["/fleetCount"], Pointers(new SizeRunRequest { Sizes = 3, Population = Men, FleetCount = 0 }));
        Assert.Equal(["/population"], Pointers(new SizeRunRequest { Sizes = 3, Population = new() { Men = 0 } }));
        Assert.Equal(["/population/men"], Pointers(new SizeRunRequest { Sizes = 3, Population = new() { Men = -1, Women = 2 } }));
        Assert.Equal(["/customers/1"], Pointers(new SizeRunRequest { Sizes = 3, Customers = [new() { StatureMm = 1700 }, new() { StatureMm = 1700, HandSpacingMm = 880 }] }));
        Assert.Equal(["/customers/0/statureMm"], Pointers(new SizeRunRequest { Sizes = 3, Customers = [new() { StatureMm = 170 }] }));
        Assert.Equal(["/shortestStockMm"], Pointers(new SizeRunRequest { Sizes = 3, Population = Men, ShortestStockMm = 1600, LongestStockMm = 1500 }));
    }

    // Any list and any population: sizes ascending on the step, shares and counts whole, figures finite, the same twice.
    [Fact]
    public void Any_run_gets_a_sound_answer()
    {
        var random = new Random(777);
        for (var i = 0; i < 400; i++)
        {
            var step = 1 + (60 * random.NextDouble());
            var list = i % 2 == 0;
            var request = new SizeRunRequest
            {
                Sizes = 1 + random.Next(8),
                StepMm = step,
                Customers = list ? [.. Enumerable.Range(0, 1 + random.Next(200)).Select(_ => new CustomerRequest { StatureMm = 1200 + (1000 * random.NextDouble()) })] : null,
                Groups = list ? null : [.. Enumerable.Range(0, 1 + random.Next(3)).Select(_ => Group(random))],
                FleetCount = 1 + random.Next(60),
            };
            var a = Advice(request);
            Assert.InRange(a.Sizes.Count, 1, request.Sizes);
            Assert.Equal(a.Sizes.Select(s => s.OverallLengthMm).Order(), a.Sizes.Select(s => s.OverallLengthMm));
            Assert.Equal(1, a.Sizes.Sum(s => s.Share), 1e-9);
            Assert.Equal(request.FleetCount, a.Sizes.Sum(s => s.Count));
            Assert.InRange(a.Within25MmShare, -1e-12, a.Within50MmShare + 1e-12);
            Assert.InRange(a.Within50MmShare, 0, 1 + 1e-12);
            Assert.True(double.IsFinite(a.MeanMisfitMm) && a.MeanMisfitMm >= 0);
            Assert.All(a.Curve.Skip(1), p => Assert.True(p.GainMm >= -1e-9));
            Assert.Equal(1, a.Histogram.Sum(b => b.Share), 1e-9);
            Assert.InRange(a.Histogram.Count, 1, 120);
            if (i % 20 == 0) Assert.Equivalent(a, Advice(request), strict: true);
        }
    }

    private static CustomerGroupRequest Group(Random random) => new()
    {
        Share = random.NextDouble() + 0.01,
        MeanMm = 700 + (300 * random.NextDouble()),
        StandardDeviationMm = 1 + (80 * random.NextDouble()),
    };
}
