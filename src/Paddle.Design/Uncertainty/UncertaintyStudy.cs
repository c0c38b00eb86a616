using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using Paddle.Design.Balance;
using Paddle.Design.Checks;
using Paddle.Design.Finishing;
using Paddle.Design.Request;
using Paddle.Design.Solid;
using Paddle.Design.Strength;

namespace Paddle.Design.Uncertainty;

/// <summary>Makes one design many times over, each time of another stick and with other slips of the plane, and looks how it comes out.
/// Nothing is solved again: the sizes are those of the plan. Theory U1–U5.</summary>
internal static class UncertaintyStudy
{
    /// <summary>Coordinates of a point: the wood, then the nine sizes.</summary>
    internal const int Dimensions = WoodDraw.Dimensions + PaddleSizes.Count;

    // A slip never halves a size: such a paddle is thrown away.
    private const double LeastOfSize = 0.5;

    /// <param name="design">A design of one piece.</param>
    /// <param name="sizes">Its sizes as designed.</param>
    /// <param name="planingErrorMm">Standard deviation of every size about its plan, mm.</param>
    internal static UncertaintyReport Of(
        ResolvedDesign design, PaddleSizes sizes, int samples, int seed, double planingErrorMm, CancellationToken cancellation = default)
    {
        var points = new SobolPoints(Dimensions, seed);
        return Of(design, sizes, samples, planingErrorMm, (k, z) =>
        {
            points.Fill((uint)k, z);
            for (var d = 0; d < z.Length; d++) z[d] = Normal.InvCDF(0, 1, z[d]);
        }, cancellation) with
        { Seed = seed };
    }

    /// <summary>Fills independent standard normal numbers for the k-th sample.</summary>
    internal delegate void Draw(int k, Span<double> z);

    /// <summary>The same with numbers drawn in any way.</summary>
    internal static UncertaintyReport Of(
        ResolvedDesign design, PaddleSizes sizes, int samples, double planingErrorMm, Draw draw, CancellationToken cancellation = default)
    {
        var asked = design.Specification;
        var grid = asked.Form.PrintedGrid();
        var stick = new WoodDraw(asked.Wood, design.Request.Wood!.MeasuredDensityKgM3 is not null, design.Request.Wood.MeasuredModulusMPa is not null);
        var planned = Made.Of(asked, sizes, grid);
        var figures = Figure.Of(planned);
        var limited = planned.Checks.Select((check, k) => (check, k)).Where(one => one.check is not { Value: 0, Limit: 0 }).ToArray();

        // By sample, so that the order in which threads finish leaves no trace.
        var values = figures.Select(_ => new double[samples]).ToArray();
        var (failed, broken) = (new ulong[samples], new ulong[samples]);
        Parallel.For(0, samples, new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = Environment.ProcessorCount }, k =>
        {
            Span<double> z = stackalloc double[Dimensions];
            draw(k, z);
            var made = Made.Of(asked with { Wood = stick.At(z) }, Slipped(sizes, z[WoodDraw.Dimensions..], planingErrorMm), grid);
            for (var f = 0; f < figures.Count; f++) values[f][k] = figures[f].Read(made);
            for (var c = 0; c < made.Checks.Count; c++)
            {
                if (made.Checks[c].Status != CheckStatus.Pass) failed[k] |= 1ul << c;
                if (made.Checks[c].Value < 1) broken[k] |= 1ul << c;
            }
        });

        Chance Among(ulong[] of, ulong bits) => Chance.Of(of.Count(one => (one & bits) != 0), samples);
        ulong Bits(Func<DesignCheck, bool> of) => limited.Where(one => of(one.check)).Aggregate(0ul, (bits, one) => bits | 1ul << one.k);
        var cases = planned.Strength.Cases.Select(result => "strength." + result.Case.Id).ToHashSet();
        var anyBreak = Among(broken, Bits(check => cases.Contains(check.Id)));
        return new(
            samples, 0, planingErrorMm, anyBreak.Value, anyBreak.StandardError,
            [.. figures.Select((figure, f) => Spread(figure, figure.Read(planned), values[f]))],
            [.. limited.Select(one => Chances(one.check, Among(failed, 1ul << one.k), Among(broken, 1ul << one.k)))]);
    }

    private static UncertainCheck Chances(DesignCheck check, Chance fail, Chance breaks) =>
        IsFactor(check) ? new(check.Id, fail.Value, fail.StandardError, breaks.Value, breaks.StandardError) : new(check.Id, fail.Value, fail.StandardError, null, null);

    private static bool IsFactor(DesignCheck check) => check.Id.StartsWith("strength.", StringComparison.Ordinal);

    private static PaddleSizes Slipped(PaddleSizes sizes, ReadOnlySpan<double> z, double planingErrorMm)
    {
        Span<double> v = stackalloc double[PaddleSizes.Count];
        sizes.CopyTo(v);
        for (var i = 0; i < v.Length; i++) v[i] = Math.Max(LeastOfSize * v[i], v[i] + planingErrorMm * z[i]); // theory U3
        return PaddleSizes.FromVector(v);
    }

    private static UncertainFigure Spread(Figure figure, double designed, double[] values)
    {
        var (mean, deviation) = ArrayStatistics.MeanStandardDeviation(values);
        Array.Sort(values);
        double At(double share) => SortedArrayStatistics.Quantile(values, share);
        return new(figure.Pointer, figure.Unit, designed, mean, deviation, At(0.05), At(0.50), At(0.95));
    }

    /// <summary>A paddle as made: what of a report depends on wood and sizes, and no more.</summary>
    private sealed record Made(FinishedMass Finished, MassProperties Mass, double OffsetMm, StrengthCheck Strength, Flex Flex, IReadOnlyList<DesignCheck> Checks)
    {
        internal static Made Of(PaddleSpecification asked, PaddleSizes sizes, StationGrid grid)
        {
            var (_, stations, pressure, strength, fine, mass, finished) = SizeChoice.At(asked, sizes, grid);
            var flex = Flex.Of(fine, stations, pressure.CentreOfPressureMm(StrokePivots.TouringMm), asked.Wood);
            var balance = BalanceResult.Of(asked, mass, finished, []);
            var checks = DesignChecks.Of(asked, sizes, 2 * stations.HalfThickness.Max(), balance, mass, finished, strength, flex);
            return new(finished, mass, balance.OffsetMm, strength, flex, checks);
        }
    }

    /// <summary>A figure that is looked at.</summary>
    private sealed record Figure(string Pointer, string Unit, Func<Made, double> Read)
    {
        internal static IReadOnlyList<Figure> Of(Made planned) =>
        [
            new("/mass/totalG", "g", made => made.Mass.TotalG),
            new("/mass/finishedG", "g", made => made.Finished.MassG),
            new("/mass/finishedInertiaLowerHandKgM2", "kg·m²", made => made.Finished.InertiaLowerHandKgM2),
            new("/balance/offsetMm", "mm", made => made.OffsetMm),
            new("/flex/benchFlexMm", "mm", made => made.Flex.BenchFlexMm),
            new("/flex/firstFrequencyHz", "Hz", made => made.Flex.FirstFrequencyHz),
            .. planned.Strength.Cases.Select((_, k) => new Figure($"/strength/cases/{k}/safetyFactor", "", made => made.Strength.Cases[k].SafetyFactor)),
            new("/strength/minimumSafetyFactor", "", made => made.Strength.Governing.SafetyFactor),
        ];
    }
}
