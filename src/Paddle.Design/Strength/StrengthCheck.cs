using System.Text.Json.Serialization;
using Paddle.Design.Solid;
using Paddle.Design.Wood;

namespace Paddle.Design.Strength;

/// <summary>Every load case looked at at every place of a solid.</summary>
/// <param name="Cases">One result for each case.</param>
/// <param name="BucklingLoadN">Thrust at which the shaft would buckle between the hands, N.</param>
/// <param name="EdgeKnock">What an edge bears: reported, not designed for.</param>
public sealed record StrengthCheck(IReadOnlyList<CaseResult> Cases, double BucklingLoadN, KnockOnEdge EdgeKnock)
{
    /// <summary>The case nearest to its least factor, or furthest below it.</summary>
    public string GoverningCase => Governing.Id;
    /// <summary>Its safety factor.</summary>
    public double MinimumSafetyFactor => Governing.SafetyFactor;
    /// <summary>What the factors rest on.</summary>
    public string Basis { get; } = DutyRule.Basis;
    /// <summary>The case nearest to its least factor, or furthest below it.</summary>
    internal CaseResult Governing => Cases.MinBy(result => result.Margin)!;
    /// <summary>Least margin of the cases that the sizes are chosen for.</summary>
    internal double AlongTheGrainMargin => Cases.Where(result => result.Case.BendsAlongTheGrain).Min(result => result.Margin);

    /// <param name="solid">The solid at the places to look at.</param>
    internal static StrengthCheck Of(PaddleSolid solid, BladePressure pressure, Loads loads, WoodInUse wood)
    {
        var count = solid.Count;
        Span<double> moments = stackalloc double[count], grain = stackalloc double[count];
        var cut = new TaperedGrain(wood.SlopeOfGrain);
        for (var i = 0; i < count; i++) grain[i] = cut.Share(solid.FaceSlope[i]);
        var buckling = ShaftBucklingN(solid, wood);
        var cases = new CaseResult[loads.Cases.Count];
        for (var k = 0; k < cases.Length; k++)
        {
            var loadCase = loads.Cases[k];
            BendingMoments.Fill(solid, pressure, loadCase, buckling, moments);
            cases[k] = loadCase.BendsAlongTheGrain
                ? AlongTheGrain(solid, loadCase, moments, grain, wood)
                : AcrossTheGrain(solid, loadCase, moments, pressure, wood);
        }

        return new(cases, buckling, KnockOnEdge.Of(solid.Sizes.EdgeThicknessMm, wood, solid.Form.Strips?.WeakerEdge));
    }

    private static CaseResult AlongTheGrain(
        PaddleSolid solid, LoadCase loadCase, ReadOnlySpan<double> moments, ReadOnlySpan<double> grain, WoodInUse wood)
    {
        double mostUsed = 0, mostStress = 0;
        int weakest = 0, fullest = 0;
        for (var i = 0; i < solid.Count; i++)
        {
            var (stress, ofMiddle) = StressMPa(solid, i, moments[i], loadCase.ThrustN);
            var used = stress / (ofMiddle * grain[i]);
            if (used > mostUsed) (mostUsed, weakest) = (used, i);
            if (stress > mostStress) (mostStress, fullest) = (stress, i);
        }

        var (stressThere, ratio) = StressMPa(solid, weakest, moments[weakest], loadCase.ThrustN);
        var share = ratio * loadCase.StrengthShare * grain[weakest];
        return new(
            loadCase, stressThere, solid.X[weakest], share * wood.BendingStrengthMPa,
            share * wood.MeanBendingStrengthMPa, mostStress, solid.X[fullest]);
    }

    /// <summary>Share of the wood's bending strength that a case may use at a place: its duration and number, and the grain cut there.</summary>
    internal static double StrengthShare(PaddleSolid solid, int place, LoadCase loadCase, WoodInUse wood) =>
        loadCase.StrengthShare * new TaperedGrain(wood.SlopeOfGrain).Share(solid.FaceSlope[place]);

    /// <summary>Stress (MPa) on the face at a place: bending, with what beam theory misses where the spine tapers, and in a push-off the
    /// thrust. Theory L14. Of strips that of the one which uses most of its own strength, and that strength over the middle strip's; of one
    /// piece that is 1. Theory J4, J11–J12.</summary>
    internal static (double StressMPa, double StrengthRatio) StressMPa(PaddleSolid solid, int place, double momentNmm, double thrustN)
    {
        var (bending, thrust) = FaceStressMPa(solid, place, momentNmm, thrustN);
        if (bending <= 0 || solid.Form.StripsAt(solid.X[place]) is not { } strips) return (bending + thrust, 1);
        var (stress, ratio, _) = strips.Governing(solid.Section(place), bending, thrust);
        return (stress, ratio);
    }

    /// <summary>Stress (MPa) on the face at a place, of the middle strip's wood: from bending, with what beam theory misses, and from a thrust.</summary>
    internal static (double BendingMPa, double ThrustMPa) FaceStressMPa(PaddleSolid solid, int place, double momentNmm, double thrustN)
    {
        // Both ends close to nothing; so does the moment there, faster.
        if (solid.Area[place] <= 1e-9 || momentNmm <= 0) return (0, 0);

        // A thrust spreads over the section within about one thickness of where it enters (Saint-Venant).
        var spread = solid.X[place] <= solid.Form.Places.OverallMm - solid.Sizes.TipThicknessMm;
        var bending = TaperAllowance.Factor(solid.Grid.Patterns[place], solid.FaceSlope[place]) * momentNmm * solid.HalfThickness[place] / solid.FlatSecondMoment[place];
        return (bending, spread ? thrustN / solid.StiffArea[place] : 0);
    }

    /// <summary>Thrust (N) at which the shaft would buckle between the hands. Theory L11.</summary>
    internal static double ShaftBucklingN(PaddleSolid solid, WoodInUse wood)
    {
        Span<double> stiffness = stackalloc double[solid.Count];
        for (var i = 0; i < solid.Count; i++) stiffness[i] = wood.ModulusMPa * solid.FlatSecondMoment[i];
        return Buckling.CriticalLoadN(solid.X, stiffness, solid.Form.Places.TopHandMm, solid.Form.Places.LowerHandMm);
    }

    private static CaseResult AcrossTheGrain(
        PaddleSolid solid, LoadCase loadCase, ReadOnlySpan<double> moments, BladePressure pressure, WoodInUse wood)
    {
        var (stress, at) = CrossGrainBending.Of(solid, moments, pressure, loadCase.ForceN, loadCase.PivotMm);
        // Glued up, the weakest strip counts, wherever it lies: the elements see a second peak in the wings, theory L19.
        var share = loadCase.StrengthShare * (solid.Form.Strips?.LeastCrossStrengthRatio ?? 1);
        return new(loadCase, stress, at, share * wood.CrossGrainStrengthMPa, share * wood.MeanCrossGrainStrengthMPa, stress, at);
    }
}

/// <summary>How one load case comes out. Theory L14.</summary>
/// <param name="StressMPa">Stress where the safety factor is least, MPa, with the allowance for a tapering spine.</param>
/// <param name="AtMm">Where that is, mm from the top of the grip.</param>
/// <param name="StrengthMPa">
/// Strength it is held against there, MPa: 5th percentile at the slope of the board's grain and of the taper together, times strengthShare.
/// </param>
/// <param name="MeanStrengthMPa">The same from the mean strength, MPa.</param>
/// <param name="MaxStressMPa">Greatest stress anywhere, MPa.</param>
/// <param name="MaxStressAtMm">Where that is, mm from the top of the grip.</param>
public sealed record CaseResult(
    [property: JsonIgnore] LoadCase Case, double StressMPa, double AtMm, double StrengthMPa, [property: JsonIgnore] double MeanStrengthMPa, double MaxStressMPa,
    double MaxStressAtMm)
{
    /// <summary>The case.</summary>
    public string Id => Case.Id;
    /// <summary>Its force, N.</summary>
    public double ForceN => Case.ForceN;
    /// <summary>Its force sideways on the tip, N; 0 unless the case is a thrust.</summary>
    public double SideForceN => Case.SideForceN;
    /// <summary>Share of a five-minute test's strength that a load of this duration and number may use.</summary>
    public double StrengthShare => Case.StrengthShare;
    /// <summary>Strength over stress where that is least.</summary>
    public double SafetyFactor => StrengthMPa / StressMPa;
    /// <summary>The factor asked.</summary>
    public double LeastSafetyFactor => Case.LeastFactor;
    /// <summary>Safety factor over the least factor asked of the case: 1 or more when it holds.</summary>
    internal double Margin => SafetyFactor / Case.LeastFactor;
    /// <summary>Mean strength over stress.</summary>
    public double SafetyFactorOnMean => MeanStrengthMPa / StressMPa;
    /// <summary>Where force, share and factor come from.</summary>
    public string Source => Case.Source;
}
