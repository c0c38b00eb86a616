using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Design.Balance;

/// <summary>The sizes chosen for a paddle, and what held them.</summary>
/// <param name="Sizes">The sizes, rounded to 0.1 mm where the solver chose them.</param>
/// <param name="BindingLimits">The limits that bind, the costliest first.</param>
internal sealed record SizeChoice(PaddleSizes Sizes, IReadOnlyList<BindingLimit> BindingLimits)
{
    private const int Passes = 3;

    /// <summary>Chooses the sizes, then looks at every printed station and solves again should one fall short.</summary>
    internal static SizeChoice For(PaddleForm form, ReadOnlySpan<double?> pinned, WoodInUse wood, Loads loads, Aims aims)
    {
        Span<double> v = stackalloc double[DesignProblem.N];
        if (AllPinned(pinned, v)) return new(PaddleSizes.FromVector(v), []);

        var reserve = 1.0;
        PaddleSizes? sizes = null;
        for (var pass = 1; ; pass++)
        {
            var problem = DesignProblem.State(form, pinned, wood, loads, aims, reserve, sizes);
            if (sizes is null) problem.Start.CopyTo(v);
            var solver = SizeSolver.Solve(problem, v);
            var reached = solver.StrengthReached;
            var limits = BindingLimitList.Read(problem, solver, pinned, aims);
            SizeRounding.Round(problem, v);
            sizes = PaddleSizes.FromVector(v);
            if (!reached || pass == Passes) return new(sizes, limits);

            var factor = LeastSafetyFactor(form, sizes, wood, loads);
            if (factor >= aims.MinimumSafetyFactor) return new(sizes, limits);
            reserve *= 1.001 * aims.MinimumSafetyFactor / factor;
        }
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

    private static double LeastSafetyFactor(PaddleForm form, PaddleSizes sizes, WoodInUse wood, Loads loads)
    {
        var solid = PaddleSolid.Shape(form, sizes, form.Outline(sizes), form.PrintedGrid());
        return StrengthCheck.Of(solid, StrokePressures.On(solid), loads, wood).Governing.SafetyFactor;
    }
}
