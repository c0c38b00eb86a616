using Paddle.Design.Solid;
using Paddle.Design.Wood;

namespace Paddle.Design.Strength;

/// <summary>Every load case looked at at every place of a solid.</summary>
/// <param name="Cases">One result for each case.</param>
/// <param name="BucklingLoadN">Thrust at which the shaft would buckle between the hands, N.</param>
public sealed record StrengthCheck(IReadOnlyList<CaseResult> Cases, double BucklingLoadN)
{
    /// <summary>The case nearest to its least factor, or furthest below it.</summary>
    public CaseResult Governing => Cases.MinBy(result => result.Margin)!;

    /// <summary>Least margin of the cases that the sizes are chosen for.</summary>
    internal double AlongTheGrainMargin => Cases.Where(result => result.Case.BendsAlongTheGrain).Min(result => result.Margin);

    /// <summary>Checks a solid.</summary>
    /// <param name="solid">The solid at the places to look at.</param>
    /// <param name="pressure">Water pressure on its blade.</param>
    /// <param name="loads">The forces.</param>
    /// <param name="wood">The wood's strengths.</param>
    public static StrengthCheck Of(PaddleSolid solid, BladePressure pressure, Loads loads, WoodInUse wood)
    {
        var count = solid.Count;
        Span<double> moments = stackalloc double[count];
        var buckling = ShaftBucklingN(solid, wood);
        var cases = new CaseResult[loads.Cases.Count];
        for (var k = 0; k < cases.Length; k++)
        {
            var loadCase = loads.Cases[k];
            if (!loadCase.BendsAlongTheGrain)
            {
                cases[k] = AcrossTheGrain(solid, pressure, loadCase, wood);
                continue;
            }

            BendingMoments.Fill(solid, pressure, loadCase, buckling, moments);
            cases[k] = AlongTheGrain(solid, loadCase, moments, wood);
        }

        return new(cases, buckling);
    }

    private static CaseResult AlongTheGrain(PaddleSolid solid, LoadCase loadCase, ReadOnlySpan<double> moments, WoodInUse wood)
    {
        double mostUsed = 0, mostStress = 0;
        int weakest = 0, fullest = 0;
        for (var i = 0; i < solid.Count; i++)
        {
            var stress = StressMPa(solid, i, moments[i], loadCase.ThrustN);
            var used = stress / StrengthShare(solid, i, loadCase, wood);
            if (used > mostUsed) (mostUsed, weakest) = (used, i);
            if (stress > mostStress) (mostStress, fullest) = (stress, i);
        }

        var share = StrengthShare(solid, weakest, loadCase, wood);
        return new(
            loadCase,
            StressMPa(solid, weakest, moments[weakest], loadCase.ThrustN),
            solid.X[weakest],
            share * wood.BendingStrengthMPa,
            share * wood.MeanBendingStrengthMPa,
            mostStress,
            solid.X[fullest]);
    }

    /// <summary>Share of the wood's bending strength that a case may use at a place: its duration and number, and the grain cut there.</summary>
    internal static double StrengthShare(PaddleSolid solid, int place, LoadCase loadCase, WoodInUse wood) =>
        loadCase.StrengthShare * TaperedGrain.Share(wood.SlopeOfGrain, solid.FaceSlope[place]);

    /// <summary>
    /// Stress (MPa) on the face at a place: bending, with what beam theory misses where the spine tapers, and in a push-off the thrust.
    /// Theory L14.
    /// </summary>
    internal static double StressMPa(PaddleSolid solid, int place, double momentNmm, double thrustN)
    {
        // Both ends close to nothing; so does the moment there, faster.
        if (solid.Area[place] <= 1e-9 || momentNmm <= 0) return 0;

        // A thrust spreads over the section within about one thickness of where it enters (Saint-Venant).
        var spread = solid.X[place] <= solid.Form.Places.OverallMm - solid.Sizes.TipThicknessMm;
        return TaperAllowance.Factor(solid.Grid.Patterns[place], solid.FaceSlope[place]) * momentNmm * solid.HalfThickness[place] / solid.FlatSecondMoment[place]
            + (spread ? thrustN / solid.Area[place] : 0);
    }

    /// <summary>Thrust (N) at which the shaft would buckle between the hands. Theory L11.</summary>
    internal static double ShaftBucklingN(PaddleSolid solid, WoodInUse wood)
    {
        Span<double> stiffness = stackalloc double[solid.Count];
        for (var i = 0; i < solid.Count; i++) stiffness[i] = wood.ModulusMPa * solid.FlatSecondMoment[i];
        return Buckling.CriticalLoadN(solid.X, stiffness, solid.Form.Places.TopHandMm, solid.Form.Places.LowerHandMm);
    }

    // Theory L15: a strip across the blade is a cantilever from the spine, σ = 6m/t² with m = p·w²/2 and t = 2c. No place nearer the
    // edge is worse while the section stays convex: h(u) ≥ c(1 − u), and the moment falls as (1 − u)².
    private static CaseResult AcrossTheGrain(PaddleSolid solid, BladePressure pressure, LoadCase loadCase, WoodInUse wood)
    {
        double worst = 0, at = 0;
        for (var i = solid.Grid.FirstBladePlace; i < solid.Count; i++)
        {
            double slenderness = solid.HalfWidth[i] / solid.HalfThickness[i];
            var stress = 0.75 * pressure.StrokePressureMPa(solid.X[i], loadCase.ForceN, loadCase.PivotMm) * slenderness * slenderness;
            if (stress > worst) (worst, at) = (stress, solid.X[i]);
        }

        return new(loadCase, worst, at, wood.CrossGrainStrengthMPa, wood.MeanCrossGrainStrengthMPa, worst, at);
    }
}
