using Paddle.Design.Finishing;
using Paddle.Design.Solid;
using Paddle.Design.Strength;

namespace Paddle.Design.Balance;

/// <summary>The sizes chosen for a paddle, and the solid they make.</summary>
/// <param name="Sizes">The sizes, on the lattice asked for where the solver chose them.</param>
/// <param name="Stations">The solid at the places that a report prints.</param>
/// <param name="Strength">Every load case at every printed place.</param>
/// <param name="Mass">Mass and balance of its wood.</param>
internal sealed record SizeChoice(
    PaddleSizes Sizes, PaddleSolid Stations, BladePressure Pressure, StrengthCheck Strength, PaddleSolid Fine, MassProperties Mass,
    FinishedMass Finished)
{
    private const int Passes = 6;
    private const double HopelessReserve = 1.015;

    /// <summary>Chooses the sizes, then looks at every printed station and the fine grid, and solves again should one fall short.</summary>
    internal static SizeChoice For(PaddleSpecification asked, CancellationToken cancellation = default)
    {
        var grid = asked.Form.PrintedGrid();
        Span<double> v = stackalloc double[DesignProblem.N];
        if (AllPinned(asked.Pinned.ToVector(), v)) return At(asked, PaddleSizes.FromVector(v), grid);

        var (reserve, leastSpine) = (1.0, default(LeastSpine));
        var tightened = asked;
        PaddleSizes? around = null;
        SizeChoice? best = null;
        for (var pass = 1; ; pass++)
        {
            var problem = DesignProblem.State(tightened, reserve, around, leastSpine);
            if (around is null) problem.Start.CopyTo(v);
            for (var k = 0; k < v.Length; k++) v[k] = Math.Clamp(v[k], problem.Low[k], problem.High[k]);
            SizeSolver.SolveLettingGo(problem, v, cancellation);
            SizeRounding.Round(problem, v, asked.LatticeMm);

            var choice = At(asked, PaddleSizes.FromVector(v), grid);
            var margin = choice.Strength.AlongTheGrainMargin;
            // What is hopeless is let go, as long as more in hand helps; the rest is held with what the coarse grid may not see in hand.
            var hopeless = problem.HasLetGo(LimitGroup.Strength);
            var strong = margin >= 1 || (hopeless && reserve > 1 && margin <= best!.Strength.AlongTheGrainMargin);
            var thicker = leastSpine.ThickerFor(choice, problem);
            var tighter = Tighten(tightened, asked, choice, problem);
            best = Better(best, choice, asked);
            var settled = asked.Form.Strips?.IsEven != false || IsNear(around, choice.Sizes);
            if ((strong && thicker == leastSpine && tighter == tightened && settled) || pass == Passes) return best;
            if (!strong) reserve *= hopeless ? HopelessReserve : Stride(margin, pass, choice.Sizes == around);
            leastSpine = thicker;
            tightened = tighter;
            around = choice.Sizes;
        }
    }

    // Where rounding takes back what was gained, a longer stride; a longer one yet where it ends at the very same sizes.
    private static double Stride(double margin, int pass, bool stands)
    {
        const double Hair = 0.002;
        return stands ? Math.Pow((1 + Hair) / margin, pass * pass) : (1 + Hair) / margin * (1 + Hair * Math.Max(0, pass - 2));
    }

    // Of strips the solver takes the shares of the width as they were around the last sizes: it goes on until they are those of its own
    // sizes. Theory J5.
    private static bool IsNear(PaddleSizes? around, PaddleSizes sizes)
    {
        const double NearMm = 0.25;
        return around is not null && Math.Abs(around.ShaftWidthMm - sizes.ShaftWidthMm) <= NearMm && Math.Abs(around.UpperWidthMm - sizes.UpperWidthMm) <= NearMm
            && Math.Abs(around.ShaftThicknessMm - sizes.ShaftThicknessMm) <= NearMm && Math.Abs(around.EdgeThicknessMm - sizes.EdgeThicknessMm) <= NearMm;
    }

    // Passes on a coarse lattice may step to and fro over a limit: the strongest counts until all hold, then what misses less balance.
    private static SizeChoice Better(SizeChoice? best, SizeChoice choice, PaddleSpecification asked)
    {
        if (best is null) return choice;
        double Strength(SizeChoice one) => Math.Min(1, one.Strength.Governing.Margin);
        double Off(SizeChoice one) => Math.Max(
            0, Math.Abs(one.Finished.CentreOfMassMm - BalanceTarget.Mm(asked.Form, asked.Aims)) - asked.Aims.BalanceToleranceMm);
        var stronger = Strength(choice).CompareTo(Strength(best));
        if (stronger != 0) return stronger > 0 ? choice : best;
        return Off(choice) <= Off(best) ? choice : best;
    }

    // Aims drawn in by as much as the rounded solid on the fine grid oversteps them; unchanged where it does not.
    private static PaddleSpecification Tighten(PaddleSpecification tightened, PaddleSpecification asked, SizeChoice choice, DesignProblem problem)
    {
        const double Hair = 0.05;
        var (aims, drawn) = (asked.Aims, tightened.Aims);
        if (!problem.HasLetGo(LimitGroup.Balance))
        {
            var off = Math.Abs(choice.Finished.CentreOfMassMm - BalanceTarget.Mm(asked.Form, aims)) - aims.BalanceToleranceMm;
            if (off > 0) drawn = drawn with { BalanceToleranceMm = Math.Max(drawn.BalanceToleranceMm - off - Hair, 0.2) };
        }

        if ((aims.LeastBenchFlexMm ?? aims.MostBenchFlexMm) is not null && !problem.HasLetGo(LimitGroup.Flex))
        {
            var flex = Flex.Deflections(choice.Fine, choice.Pressure.CentreOfPressureMm(StrokePivots.TouringMm), asked.Wood).BenchMm;
            if (flex > aims.MostBenchFlexMm) drawn = drawn with { MostBenchFlexMm = drawn.MostBenchFlexMm - (flex - aims.MostBenchFlexMm) - Hair };
            if (flex < aims.LeastBenchFlexMm) drawn = drawn with { LeastBenchFlexMm = drawn.LeastBenchFlexMm + (aims.LeastBenchFlexMm - flex) + Hair };
        }

        return drawn == tightened.Aims ? tightened : tightened with { Aims = drawn };
    }

    /// <summary>The paddle of given sizes: nothing is solved.</summary>
    internal static SizeChoice At(PaddleSpecification asked, PaddleSizes sizes, StationGrid grid)
    {
        var (form, _, wood, loads, _) = asked;
        var stations = PaddleSolid.Shape(form, sizes, form.Outline(sizes), grid);
        var pressure = BladePressure.On(stations);
        var fine = PaddleSolid.Shape(form, sizes, stations.Outline, form.FineGrid());
        var mass = MassProperties.Of(fine, wood.DensityKgM3);
        return new(
            sizes, stations, pressure, StrengthCheck.Of(stations, pressure, loads, wood), fine, mass,
            FinishedMass.Of(form.Places, mass, FinishLoad.On(fine, asked.Finish)));
    }

    private static bool AllPinned(ReadOnlySpan<double?> pinned, Span<double> v)
    {
        for (var k = 0; k < pinned.Length; k++)
        {
            if (pinned[k] is not { } size) return false;
            v[k] = size;
        }

        return true;
    }
}
