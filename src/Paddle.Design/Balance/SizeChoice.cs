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
internal sealed record SizeChoice(
    PaddleSizes Sizes,
    IReadOnlyList<BindingLimit> BindingLimits,
    PaddleSolid Stations,
    BladePressure Pressure,
    StrengthCheck Strength)
{
    private const int Passes = 3;

    /// <summary>Chooses the sizes, then looks at every printed station and solves again should one fall short.</summary>
    internal static SizeChoice For(PaddleForm form, ReadOnlySpan<double?> pinned, WoodInUse wood, Loads loads, Aims aims)
    {
        var grid = form.PrintedGrid();
        Span<double> v = stackalloc double[DesignProblem.N];
        if (AllPinned(pinned, v)) return Checked(form, PaddleSizes.FromVector(v), [], grid, wood, loads);

        var reserve = 1.0;
        PaddleSizes? around = null;
        for (var pass = 1; ; pass++)
        {
            var problem = DesignProblem.State(form, pinned, wood, loads, aims, reserve, around);
            if (around is null) problem.Start.CopyTo(v);
            var solver = SizeSolver.SolveFromSeveralStarts(problem, v);
            var limits = BindingLimitList.Read(problem, solver, pinned, aims);
            SizeRounding.Round(problem, v);

            var choice = Checked(form, PaddleSizes.FromVector(v), limits, grid, wood, loads);
            var factor = choice.Strength.Governing.SafetyFactor;
            if (!solver.StrengthReached || factor >= aims.MinimumSafetyFactor || pass == Passes) return choice;
            reserve *= 1.001 * aims.MinimumSafetyFactor / factor;
            around = choice.Sizes;
        }
    }

    private static SizeChoice Checked(
        PaddleForm form, PaddleSizes sizes, IReadOnlyList<BindingLimit> limits, StationGrid grid, WoodInUse wood, Loads loads)
    {
        var stations = PaddleSolid.Shape(form, sizes, form.Outline(sizes), grid);
        var pressure = BladePressure.On(stations);
        return new(sizes, limits, stations, pressure, StrengthCheck.Of(stations, pressure, loads, wood));
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
