using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Design.Balance;

/// <summary>The sizes chosen for a paddle, what held them, and the solid they make.</summary>
/// <param name="Sizes">The sizes, rounded to 0.1 mm where the solver chose them.</param>
/// <param name="BindingLimits">The limits that bind, the costliest first.</param>
/// <param name="Stations">The solid at the places that a report prints.</param>
/// <param name="Pressure">Water pressure on its blade.</param>
/// <param name="Strength">Every load case at every printed place.</param>
/// <param name="Fine">The solid on the fine grid.</param>
/// <param name="Mass">Its mass and balance.</param>
internal sealed record SizeChoice(
    PaddleSizes Sizes,
    IReadOnlyList<BindingLimit> BindingLimits,
    PaddleSolid Stations,
    BladePressure Pressure,
    StrengthCheck Strength,
    PaddleSolid Fine,
    MassProperties Mass)
{
    private const int Passes = 6;

    /// <summary>Chooses the sizes, then looks at every printed station and the fine grid, and solves again should one fall short.</summary>
    internal static SizeChoice For(PaddleForm form, ReadOnlySpan<double?> pinned, WoodInUse wood, Loads loads, Aims aims)
    {
        var grid = form.PrintedGrid();
        Span<double> v = stackalloc double[DesignProblem.N];
        if (AllPinned(pinned, v)) return Checked(form, PaddleSizes.FromVector(v), [], grid, wood, loads);

        var reserve = 1.0;
        var tightened = aims;
        PaddleSizes? around = null;
        for (var pass = 1; ; pass++)
        {
            var problem = DesignProblem.State(form, pinned, wood, loads, tightened, reserve, around);
            if (around is null) problem.Start.CopyTo(v);
            var solver = SizeSolver.SolveFromSeveralStarts(problem, v);
            var limits = BindingLimitList.Read(problem, solver, pinned, aims);
            SizeRounding.Round(problem, v);

            var choice = Checked(form, PaddleSizes.FromVector(v), limits, grid, wood, loads);
            var margin = choice.Strength.Governing.Margin;
            var strong = !solver.StrengthReached || margin >= 1;
            var tighter = solver.MissedGroup < 0 ? Tighten(tightened, aims, choice, form, wood) : tightened;
            if ((strong && tighter == tightened) || pass == Passes) return choice;
            if (!strong) reserve *= 1.002 / margin;
            tightened = tighter;
            around = choice.Sizes;
        }
    }

    // Aims drawn in by as much as the rounded solid on the fine grid oversteps them; unchanged where it does not.
    private static Aims Tighten(Aims tightened, Aims aims, SizeChoice choice, PaddleForm form, WoodInUse wood)
    {
        const double Hair = 0.05;
        var off = Math.Abs(choice.Mass.CentreOfMassMm - BalanceTarget.Mm(form, aims)) - aims.BalanceToleranceMm;
        if (off > 0) tightened = tightened with { BalanceToleranceMm = Math.Max(tightened.BalanceToleranceMm - off - Hair, 0.2) };
        if (aims.LeastBenchFlexMm is null && aims.MostBenchFlexMm is null) return tightened;

        var flex = Flex.Deflections(choice.Fine, choice.Pressure.CentreOfPressureMm(StrokePivots.TouringMm), wood).BenchMm;
        if (flex > aims.MostBenchFlexMm) tightened = tightened with { MostBenchFlexMm = tightened.MostBenchFlexMm - (flex - aims.MostBenchFlexMm) - Hair };
        if (flex < aims.LeastBenchFlexMm) tightened = tightened with { LeastBenchFlexMm = tightened.LeastBenchFlexMm + (aims.LeastBenchFlexMm - flex) + Hair };
        return tightened;
    }

    private static SizeChoice Checked(
        PaddleForm form, PaddleSizes sizes, IReadOnlyList<BindingLimit> limits, StationGrid grid, WoodInUse wood, Loads loads)
    {
        var stations = PaddleSolid.Shape(form, sizes, form.Outline(sizes), grid);
        var pressure = BladePressure.On(stations);
        var fine = PaddleSolid.Shape(form, sizes, stations.Outline, StationGrid.Fine);
        return new(
            sizes,
            limits,
            stations,
            pressure,
            StrengthCheck.Of(stations, pressure, loads, wood),
            fine,
            MassProperties.Of(fine, wood.DensityKgM3));
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
