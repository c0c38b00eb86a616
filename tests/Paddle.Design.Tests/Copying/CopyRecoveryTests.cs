using System.Text.Json;
using Paddle.Design.Copying;
using Paddle.Design.Solid;
using Paddle.Design.Tests.House;
using Xunit.Abstractions;

namespace Paddle.Design.Tests.Copying;

/// <summary>Paddles drawn at random, read with the errors of hand, caliper and scale, and found again.</summary>
public class CopyRecoveryTests(ITestOutputHelper output)
{
    // Beyond this a deviation is no luck: one in a thousand, both sides.
    private const double NoLuck = 3.29;
    private const double Inside = 1.96;

    // Stations of the copy's table that are looked at: shoulder, widest point, tail.
    private static readonly int[] Looked = [4, 9, 13, 20, 26];

    private sealed record Found(CopyReport Copy, double[] Z, double ChiSquare, double Freedom);

    // The deviations of what is found from what is true, over the standard errors that are stated.
    private static Found Find(int seed)
    {
        var random = new Random(seed);
        var truth = CopySamples.Draw(random);
        var request = CopySamples.Read(truth, random);
        var readings = CopyReadings.Of(request);
        var fit = CopyFitter.Find(request, readings, WoodPrior.Of(request.Species), default);
        var (model, at, form, wood) = (fit.Model, fit.Fit.Parameters, truth.Specification.Form, truth.Specification.Wood);
        double Z(int parameter, double value) => (model.Value(at, parameter) - value) / fit.ErrorOf(parameter);
        var sizes = new double[PaddleSizes.Count];
        truth.Sizes.CopyTo(sizes);
        var copy = PaddleCopier.Copy(request with { Variants = [] });

        // Half-breadths of the copy's table at some of its stations, against the blade that was read.
        var halves = Looked.Select(j => copy.Outline[j])
            .Select(offset => (offset.HalfBreadthMm - truth.Outline.HalfBreadthMm(truth.Specification.Form.Places.ThroatMm + offset.XMm)) / Math.Max(offset.StandardErrorMm, 0.05));
        return new(
            copy,
            [
                .. sizes.Select((size, k) => Z(CopyModel.Sizes + k, size)), Z(CopyModel.Density, Math.Log(wood.DensityKgM3)), Z(CopyModel.Modulus, Math.Log(wood.ApparentModulusMPa)),
                Z(CopyModel.Throat, form.Places.ThroatMm), Z(CopyModel.Overall, form.Places.OverallMm), Z(CopyModel.GripLength, form.Places.GripEndMm),
                Z(CopyModel.GripWidth, form.Grip.WidthMm), .. halves,
            ],
            fit.ChiSquare, fit.DegreesOfFreedom);
    }

    [Fact, Trait(Sweep.Name, Sweep.Full)]
    public void Paddles_are_found_within_the_errors_stated()
    {
        var count = Sweep.Of(16, 200);
        var found = new Found[count];
        Parallel.For(0, count, n => found[n] = Find(1000 + n));
        string[] names =
        [
            "shaft width", "shaft thickness", "upper width", "upper thickness", "throat", "middle", "tip", "edge", "grip", "density", "modulus", "throat's place", "overall",
            "grip length", "grip width", "half-breadth 1", "half-breadth 2", "half-breadth 3", "half-breadth 4", "half-breadth 5",
        ];
        for (var k = 0; k < names.Length; k++)
        {
            var z = found.Select(one => one.Z[k]).ToList();
            var inside = z.Count(v => Math.Abs(v) <= Inside);
            output.WriteLine($"{names[k]}: {inside} of {count} inside, mean {z.Average():0.00}, rms {Math.Sqrt(z.Average(v => v * v)):0.00}");

            // Binomial: 19 of 20 expected, and never fewer than luck allows.
            Assert.True((0.95 * count - inside) / Math.Sqrt(count * 0.95 * 0.05) <= NoLuck, names[k]);
        }

        var all = found.SelectMany(one => one.Z).ToList();
        var share = all.Count(v => Math.Abs(v) <= Inside) / (double)all.Count;
        output.WriteLine($"all: {share:0.0000}");

        // Figures of one paddle hang together, so that the spread is that of fewer: a fifth of them taken as free.
        Assert.InRange((share - 0.95) / Math.Sqrt(0.95 * 0.05 / (all.Count / 5.0)), -NoLuck, NoLuck);

        var (chi, freedom) = (found.Sum(one => one.ChiSquare), found.Sum(one => one.Freedom));
        output.WriteLine($"chi-square {chi:0} of {freedom:0}");
        Assert.InRange((chi - freedom) / Math.Sqrt(2 * freedom), -NoLuck, NoLuck);

        // One sound set of readings in a hundred has a reading named.
        var alarms = found.Count(one => one.Copy.MeasureAgain.Count > 0);
        output.WriteLine($"named in sound readings: {alarms}");
        Assert.True((alarms - CopyFitter.FalseAlarm * count) / Math.Sqrt(CopyFitter.FalseAlarm * count) <= NoLuck, $"{alarms} named");
    }

    [Fact, Trait(Sweep.Name, Sweep.Full)]
    public void A_slip_of_five_millimetres_is_named_and_does_not_count()
    {
        var count = Sweep.Of(8, 40);
        var right = new bool[count];
        Parallel.For(0, count, n =>
        {
            var random = new Random(7000 + n);
            var request = CopySamples.Read(CopySamples.Draw(random), random);
            var stations = request.Stations!.ToList();

            // Not the last station at the tip, where a millimetre of place is as much as the slip.
            var at = random.Next(stations.Count - 2);
            var by = random.Next(2) == 0 ? 5 : -5;
            var isWidth = random.Next(2) == 0;
            stations[at] = isWidth
                ? stations[at] with { WidthMm = stations[at].WidthMm + by }
                : stations[at] with { ThicknessMm = stations[at].ThicknessMm + by };
            var copy = PaddleCopier.Copy(request with { Stations = stations, Variants = [] });
            var pointer = $"/stations/{at}/{(isWidth ? "widthMm" : "thicknessMm")}";
            right[n] = copy.MeasureAgain.Count > 0 && copy.MeasureAgain.MaxBy(one => Math.Abs(copy.Readings.Single(row => row.JsonPointer == one.JsonPointer).Studentised!.Value))!.JsonPointer == pointer;
            if (!right[n]) output.WriteLine($"{n}: {pointer} {by:+0;-0}: {string.Join(", ", copy.MeasureAgain.Select(one => one.JsonPointer))}");
        });
        output.WriteLine($"named: {right.Count(one => one)} of {count}");
        Assert.True(right.Count(one => one) >= 0.95 * count);
    }

    /// <summary>The stated errors follow from slopes; the same paddle read again and again has the scatter itself.</summary>
    [Fact, Trait(Sweep.Name, Sweep.Full)]
    public void Errors_are_the_scatter_of_the_same_paddle_read_again_and_again()
    {
        var count = Sweep.Of(16, 100);
        var truth = CopySamples.Draw(new(11));
        var found = new CopyFit[count];
        Parallel.For(0, count, n =>
        {
            var request = CopySamples.Read(truth, new(300 + n)) with { Grip = new() { Style = Names.Of(truth.Specification.Form.Grip.Style) } };
            found[n] = CopyFitter.Find(request, CopyReadings.Of(request), WoodPrior.Of(request.Species), default);
        });
        foreach (var k in (int[])[.. Enumerable.Range(CopyModel.Sizes, PaddleSizes.Count), CopyModel.Density, CopyModel.Modulus, CopyModel.Throat])
        {
            var values = found.Select(fit => fit.Model.Value(fit.Fit.Parameters, k)).ToList();
            var mean = values.Average();
            var scatter = Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (count - 1));
            var stated = found.Average(fit => fit.ErrorOf(k));
            output.WriteLine($"{k}: scatter {scatter:0.0000}, stated {stated:0.0000}");

            // A standard deviation of n is itself good to 1/√(2(n − 1)): of 100, 7 %.
            var good = 1 / Math.Sqrt(2 * (count - 1));
            Assert.InRange(scatter / stated, 1 - NoLuck * good, 1 + NoLuck * good);
        }
    }

    [Fact]
    public void The_design_reads_as_the_paddle_did_and_is_that_of_its_report()
    {
        var random = new Random(21);
        var truth = CopySamples.Draw(random);
        var request = CopySamples.Read(truth, random);
        var copy = PaddleCopier.Copy(request);
        var report = PaddleDesigner.Design(copy.Design);
        double Predicted(string pointer) => copy.Readings.Single(row => row.JsonPointer == pointer).Predicted;
        Assert.Equal(report.Finished.MassG, Predicted("/massG"), 1);
        Assert.Equal(report.Finished.CentreOfMassMm, Predicted("/balanceMm"), 1);
        Assert.Equal(report.Flex.BenchFlexMm, Predicted("/benchFlex/deflectionMm"), 1);
        Assert.Equal(report.Flex.FirstFrequencyHz, Predicted("/tapHz"), 1);
        Assert.InRange(report.Finished.MassG, truth.Finished.MassG - 8, truth.Finished.MassG + 8);
        Assert.InRange(report.Finished.CentreOfMassMm, truth.Finished.CentreOfMassMm - 6, truth.Finished.CentreOfMassMm + 6);
        Assert.All(copy.Readings.Where(row => row.Verdict == "fits"), row => Assert.InRange(row.Residual / row.StandardError, -5, 5));
    }

    [Fact]
    public void What_was_not_read_is_the_books_with_the_books_scatter()
    {
        var random = new Random(5);
        var request = CopySamples.Read(CopySamples.Draw(random), random) with { MassG = null, BalanceMm = null, BenchFlex = null, TapHz = null, Species = "white-ash" };
        var wood = PaddleCopier.Copy(request with { Variants = [] }).Wood;
        var book = WoodPrior.Of("white-ash");
        Assert.Equal(("book", "book"), (wood.DensityFrom, wood.ModulusFrom));
        Assert.Equal(Math.Exp(book.LogDensity), wood.DensityKgM3, 0);

        // The handbook's coefficients of variation, 10 % and 22 % (table 5-6).
        Assert.InRange(wood.DensityErrorKgM3 / wood.DensityKgM3, 0.0999, 0.115);
        Assert.InRange(wood.ModulusErrorMPa / wood.ModulusMPa, 0.2199, 0.255);
    }

    [Fact, Trait(Sweep.Name, Sweep.Full)]
    public void A_wood_that_nobody_knows_is_among_the_likely_ones()
    {
        var count = Sweep.Of(16, 40);
        var (first, chance) = (0, 0.0);
        for (var n = 0; n < count; n++)
        {
            var random = new Random(900 + n);
            var truth = CopySamples.Draw(random);
            var request = CopySamples.Read(truth, random, hasSpecies: false);
            var prior = WoodPrior.Of(null);
            var woods = prior.Judge(CopyFitter.Find(request, CopyReadings.Of(request), prior, default));
            Assert.Equal(100, woods.Sum(wood => wood.ChancePercent), 0);
            var own = woods.Single(wood => wood.Species == truth.Specification.Wood.Species);
            first += woods[0] == own ? 1 : 0;
            chance += own.ChancePercent / 100 / count;
        }

        output.WriteLine($"likeliest {first} of {count}; mean chance of the true one {chance:0.000}");

        // Blind guesses among all woods would be right as often as there are woods.
        var blind = 1.0 / Paddle.Design.Wood.WoodCatalogue.All.Count;
        Assert.True(chance > 1.5 * blind && first > count * blind);
    }

    [Fact]
    public void One_thing_changes_and_the_rest_stays()
    {
        var request = JsonSerializer.Deserialize<CopyRequest>(Repository.Read("docs/examples/copy.json"), JsonSerializerOptions.Web)!;
        var copy = PaddleCopier.Copy(request with { Variants = null });
        CopyVariant Of(string change) => copy.Variants.Single(one => one.Change == change);
        Assert.Equal(copy.Design.OverallLengthMm!.Value + 50.8, Of("longer").Design!.OverallLengthMm!.Value, 1);
        Assert.Same(copy.Design.Blade, Of("longer").Design!.Blade);
        Assert.Equal("white-ash", Of("species").Design!.Wood!.Species);
        Assert.Equal(-50, Of("lighter").Difference!.MassG, 0);
        Assert.Equal(20, Of("balance-lower").Difference!.BalanceMm, 0);
        Assert.True(Of("longer").Difference!.MassG > 0 && Of("longer").Difference!.BenchFlexMm > 0);
        Assert.Equal(copy.Design.Blade!.Offsets, Of("lighter").Design!.Blade!.Offsets);
    }
}
