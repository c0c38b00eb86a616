using Paddle.Design.Finishing;
using Paddle.Design.Solid;

namespace Paddle.Design.Balance;

/// <summary>A limit that holds the design where it is.</summary>
/// <param name="Id">The limit: a size with min, max or pinned, an aim, or a rule of shape.</param>
/// <param name="Unit">Unit in which it is loosened; empty for a pure number.</param>
/// <param name="Gain">What loosening it by one unit would gain.</param>
/// <param name="GainUnit">Grams saved; or, while an aim is missed, how far that aim would be helped.</param>
public sealed record BindingLimit(string Id, string Unit, double Gain, string GainUnit);

/// <summary>How the finished paddle balances.</summary>
/// <param name="TargetMm">Where it should balance, mm from the top of the grip along the shaft's line.</param>
/// <param name="ActualMm">Where it does, finished.</param>
/// <param name="BareMm">Where the bare wood does, before the finish.</param>
/// <param name="ToleranceMm">How far off is still good, mm.</param>
/// <param name="BallastG">Weight let in at ballastAtMm that would bring it to the aim, g: named and priced, not built in. Theory M14.</param>
/// <param name="BallastAtMm">Where, mm from the top of the grip: near the tip, or at the grip hand.</param>
/// <param name="BindingLimits">The limits that hold the design where it is, the costliest first; none when every size is the maker's own.</param>
public sealed record BalanceResult(
    double TargetMm, double ActualMm, double BareMm, double ToleranceMm, double BallastG, double BallastAtMm, IReadOnlyList<BindingLimit> BindingLimits)
{
    private const double BallastAboveTipMm = 30;

    /// <summary>Balance point less target, mm; negative when grip-heavy.</summary>
    public double OffsetMm => ActualMm - TargetMm;
    /// <summary>Whether it balances within the tolerance.</summary>
    public bool Achieved => Math.Abs(OffsetMm) <= ToleranceMm;
    /// <summary>What to change when the balance is missed.</summary>
    public IReadOnlyList<string> Advice => Achieved ? [] : [OffBalanceWords.Advice(this)];

    /// <summary>Reads it off a finished paddle. Its ballast: dm = M·offset over its distance from the aim, theory M14.</summary>
    internal static BalanceResult Of(PaddleSpecification asked, MassProperties mass, FinishedMass finished, IReadOnlyList<BindingLimit> limits)
    {
        var (form, target) = (asked.Form, BalanceTarget.Mm(asked.Form, asked.Aims));
        var offset = finished.CentreOfMassMm - target;
        var at = offset < 0 ? form.Places.OverallMm - BallastAboveTipMm : form.Places.TopHandMm;
        return new(
            target, finished.CentreOfMassMm, mass.CentreOfMassMm, asked.Aims.BalanceToleranceMm,
            finished.MassG * Math.Abs(offset / (form.AlongShaftMm(at) - target)), at, limits); // theory M14
    }
}

/// <summary>The limits that hold a design where it is, and what each is worth: multipliers of one small step from the rounded sizes, so
/// that a design read back from its code says the same as it did when it was solved. Theory B8.</summary>
internal static class BindingLimitList
{
    /// <summary>Gain of a design that meets every aim: grams saved.</summary>
    internal const string Saved = "g";
    /// <summary>Gain while a strength is missed.</summary>
    internal const string OfSafety = "safety factor";
    /// <summary>Gain while the balance is missed.</summary>
    internal const string OfBalance = "mm of balance";
    /// <summary>Gain while the flex is missed.</summary>
    internal const string OfFlex = "mm of flex";
    /// <summary>The limit that the maker's board sets.</summary>
    internal const string Board = "wood.boardThicknessMm";
    private const string OfShape = "mm of shape";
    private const int N = DesignProblem.N;
    private const int Box = -1;
    // A limit further off than this does not hold the sizes; rounding leaves less than that.
    private const double BoxSteps = 4;
    // Limits worth less than this per unit, in g or in hundredths of the missed aim, are not what holds the design.
    private const double LeastWorth = 0.05;

    internal static IReadOnlyList<BindingLimit> At(PaddleSpecification asked, PaddleSizes sizes)
    {
        if (asked.Free.Bits == 0) return [];
        var problem = DesignProblem.State(asked, around: sizes);
        Span<double> v = stackalloc double[N];
        sizes.CopyTo(v);
        problem.Evaluate(v);
        var missed = Missed(problem);
        var (gradient, scale, unit) = missed is { } row ? Towards(problem, row, asked.Aims) : ([.. problem.CostGradient], 1, Saved);
        return Read(problem, v, gradient, BoxSteps * asked.LatticeMm, scale, unit, asked);
    }

    // The row of the foremost group that is missed by more than rounding.
    private static int? Missed(DesignProblem problem)
    {
        int? worst = null;
        for (var r = 0; r < problem.RowCount; r++)
        {
            if (problem.Rows[r] >= -0.006) continue;
            if (worst is not { } w || problem.Limits[r].Group < problem.Limits[w].Group
                || (problem.Limits[r].Group == problem.Limits[w].Group && problem.Rows[r] < problem.Rows[w])) worst = r;
        }

        return worst;
    }

    // What would help a missed aim, in that aim's own unit.
    private static (double[] Gradient, double Scale, string Unit) Towards(DesignProblem problem, int row, Aims aims)
    {
        double[] gradient = [.. problem.RowGradients.AsSpan(row * N, N)];
        for (var k = 0; k < N; k++) gradient[k] = -gradient[k];
        return problem.Limits[row].Group switch
        {
            LimitGroup.Strength => (gradient, 2 * aims.MinimumSafetyFactor, OfSafety),
            LimitGroup.Balance => (gradient, DesignProblem.BalanceScaleMm, OfBalance),
            LimitGroup.Flex => (gradient, 1, OfFlex),
            _ => (gradient, 1, OfShape),
        };
    }

    private static IReadOnlyList<BindingLimit> Read(
        DesignProblem problem, ReadOnlySpan<double> v, double[] gradient, double boxMm, double scale, string unit, PaddleSpecification asked)
    {
        var steepest = gradient.Max(Math.Abs);
        var hessian = new double[N * N];
        for (var k = 0; k < N; k++) hessian[k * N + k] = steepest / (100 * boxMm);
        var most = problem.RowCount + 4 * N;
        Span<double> rows = stackalloc double[most * N], bounds = stackalloc double[most];
        Span<int> stands = stackalloc int[most]; // for a row of the problem, else for one of the sizes' limits or the box
        rows.Clear();
        var count = 0;
        for (var r = 0; r < problem.RowCount; r++)
        {
            var gradientOfRow = problem.RowGradients.AsSpan(r * N, N);
            if (problem.Rows[r] > boxMm * Lanes.Reach(gradientOfRow)) continue;
            gradientOfRow.CopyTo(rows[(count * N)..]);
            bounds[count] = Math.Max(problem.Rows[r], 0); // what is missed is held where it is
            stands[count++] = r;
        }

        for (var k = 0; k < N; k++)
        {
            for (var side = 0; side < 2; side++)
            {
                var room = Math.Max(0, side == 0 ? v[k] - problem.Low[k] : problem.High[k] - v[k]);
                rows[count * N + k] = side == 0 ? 1 : -1;
                bounds[count] = Math.Min(room, boxMm);
                stands[count++] = room < boxMm ? problem.RowCount + 2 * k + side : Box;
            }
        }

        var program = new QuadraticProgram(N);
        Span<double> step = stackalloc double[N];
        if (!program.Solve(hessian, gradient, rows[..(count * N)], bounds[..count], step)) return [];
        var worths = new Dictionary<(string Id, string Unit), double>();
        for (var a = 0; a < program.Active.Length; a++)
        {
            var stood = stands[program.Active[a]];
            if (stood == Box) continue;
            var (id, limitUnit, perUnit) = Named(problem, asked, stood);
            worths[(id, limitUnit)] = worths.GetValueOrDefault((id, limitUnit)) + program.Multipliers[a] * perUnit * scale;
        }

        return
        [
            .. worths.Where(worth => worth.Value > (unit == Saved ? LeastWorth : LeastWorth / 100)).OrderByDescending(worth => worth.Value)
                .Select(worth => new BindingLimit(worth.Key.Id, worth.Key.Unit, worth.Value, unit)),
        ];
    }

    private static (string Id, string Unit, double PerUnit) Named(DesignProblem problem, PaddleSpecification asked, int stood)
    {
        if (stood < problem.RowCount) return (problem.Limits[stood].Id, problem.Limits[stood].Unit, problem.Limits[stood].RowPerUnit);
        var (k, isLow) = ((stood - problem.RowCount) / 2, (stood - problem.RowCount) % 2 == 0);
        var byBoard = !isLow && !SizeLimits.Rows[k].IsWidth && asked.UsableThicknessMm is { } usable && problem.High[k] >= SizeLimits.ThickestMm(usable, asked.LatticeMm);
        var id = asked.Fixed[k] is not null ? SizeLimits.Names[k] + ".pinned"
            : byBoard ? Board : SizeLimits.Names[k] + (isLow ? ".min" : ".max");
        return (id, "mm", 1);
    }
}

/// <summary>How the spine's two inner slopes answer to the sizes: the gradient of the weighted harmonic mean. Theory S7.</summary>
internal readonly record struct SpineSensitivity(
    double ThroatByShaft, double ThroatByThroat, double ThroatByMiddle, double MiddleByThroat, double MiddleByMiddle, double MiddleByTip)
{
    /// <summary>The sensitivities at sizes <paramref name="v"/> (mm), in the order of <see cref="PaddleSizes"/>.</summary>
    internal static SpineSensitivity At(ReadOnlySpan<double> v)
    {
        const double Upper = SpineProfile.Throat, Middle = SpineProfile.Middle - SpineProfile.Throat;
        const double Lower = SpineProfile.Tip - SpineProfile.Middle;
        double first = (v[PaddleSizes.Throat] - v[PaddleSizes.Shaft]) / Upper, second = (v[PaddleSizes.Middle] - v[PaddleSizes.Throat]) / Middle;
        var third = (v[PaddleSizes.Tip] - v[PaddleSizes.Middle]) / Lower;
        var (a, b) = Gradient(first, second, Upper, Middle);
        var (c, d) = Gradient(second, third, Middle, Lower);
        return new(-a / Upper, a / Upper - b / Middle, b / Middle, -c / Middle, c / Middle - d / Lower, d / Lower);
    }

    // Chords this little above level (mm per blade) are level but for rounding, and are taken from the thinning side: a solver
    // that rests on "no thicker than the shaft" must not see the gradient jump to zero and back.
    private const double Level = 1e-6;

    // Derivatives of (w1 + w2)·a·b/(w1·b + w2·a), zero where the chords do not both thin.
    private static (double ByBefore, double ByAfter) Gradient(double a, double b, double spanA, double spanB)
    {
        if (a > Level || b > Level) return (0, 0);
        (a, b) = (Math.Min(a, 0), Math.Min(b, 0));
        if (a == 0 && b == 0) return (0, 0);
        double w1 = 2 * spanB + spanA, w2 = spanB + 2 * spanA, mix = w1 * b + w2 * a, scale = (w1 + w2) / (mix * mix);
        return (scale * w1 * b * b, scale * w2 * a * a);
    }
}

/// <summary>Which aim a limit belongs to; aims that clash give way in the reverse of this order.</summary>
internal enum LimitGroup
{
    /// <summary>The paddle thins from the lower hand to the tip and to the grip. The sizes' own limits always leave room for it.</summary>
    Thinning,
    /// <summary>Safety factors.</summary>
    Strength,
    /// <summary>What hands and eyes expect of the shape.</summary>
    Comfort,
    /// <summary>Balance within its tolerance.</summary>
    Balance,
    /// <summary>Bench flex within the asked range.</summary>
    Flex,
}

/// <summary>One limit of the design problem: a row that must not turn negative.</summary>
/// <param name="Id">Name to print.</param>
/// <param name="Group">The aim it belongs to.</param>
/// <param name="RowPerUnit">How much the row gains when the limit is loosened by one unit.</param>
internal readonly record struct Limit(string Id, LimitGroup Group, string Unit, double RowPerUnit);
