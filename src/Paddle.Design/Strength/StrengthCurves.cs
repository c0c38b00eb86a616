using Paddle.Design.Solid;
using Paddle.Design.Wood;

namespace Paddle.Design.Strength;

/// <summary>How one load case runs along the paddle.</summary>
/// <param name="MomentsNm">Bending moment at each place, N·m.</param>
/// <param name="StressesMPa">Stress on the face at each place, MPa; 0 where the solid closes.</param>
/// <param name="StrengthsMPa">Strength that the stress is held against at each place, MPa.</param>
internal sealed record StrengthCurve(
    LoadCase Case, IReadOnlyList<double> MomentsNm, IReadOnlyList<double> StressesMPa, IReadOnlyList<double> StrengthsMPa);

/// <summary>Moments, stresses and the bench flex along the paddle, for a picture of what <see cref="StrengthCheck"/> sums up.</summary>
/// <param name="Cases">The cases that bend the paddle along its length.</param>
/// <param name="BenchDeflectionsMm">
/// Deflection at each place under the bench load at the centre of pressure, hands as supports, mm. Bending only: shear adds under
/// 1 %, so that this runs a little under <see cref="Flex.BenchFlexMm"/>.
/// </param>
internal sealed record StrengthCurves(
    IReadOnlyList<double> XsMm, IReadOnlyList<StrengthCurve> Cases, IReadOnlyList<double> BenchDeflectionsMm)
{
    /// <summary>Computes the curves at a solid's own places.</summary>
    /// <param name="solid">The solid; it must have a place at the throat.</param>
    /// <param name="check">What the strength check of the same solid found.</param>
    public static StrengthCurves Of(PaddleSolid solid, StrengthCheck check, Loads loads, WoodInUse wood)
    {
        var pressure = BladePressure.On(solid);
        var cases = loads.AlongTheGrain.Select(loadCase => Curve(solid, pressure, check.BucklingLoadN, loadCase, wood)).ToArray();
        return new(solid.X, cases, Deflections(solid, pressure.CentreOfPressureMm(StrokePivots.TouringMm), wood));
    }

    private static StrengthCurve Curve(PaddleSolid solid, BladePressure pressure, double bucklingN, LoadCase loadCase, WoodInUse wood)
    {
        var moments = new double[solid.Count];
        BendingMoments.Fill(solid, pressure, loadCase, bucklingN, moments);
        double[] stresses = new double[solid.Count], strengths = new double[solid.Count];
        for (var i = 0; i < solid.Count; i++)
        {
            (stresses[i], var ofMiddle) = StrengthCheck.StressMPa(solid, i, moments[i], loadCase.ThrustN);
            strengths[i] = ofMiddle * wood.BendingStrengthMPa * StrengthCheck.StrengthShare(solid, i, loadCase, wood);
        }

        for (var i = 0; i < moments.Length; i++) moments[i] /= 1000;
        return new(loadCase, moments, stresses, strengths);
    }

    private static double[] Deflections(PaddleSolid solid, double centreOfPressureMm, WoodInUse wood)
    {
        var curvature = new double[solid.Count];
        for (var i = 0; i < solid.Count; i++)
        {
            var moment = Loads.BenchN * Flex.UnitLoad(solid.Form, solid.X[i], centreOfPressureMm).Moment;
            if (moment > 0) curvature[i] = moment / (wood.ModulusMPa * solid.FlatSecondMoment[i]);
        }

        var deflections = new double[solid.Count];
        ElasticCurve.Deflect(solid.X, curvature, solid.Form.Places.TopHandMm, solid.Form.Places.LowerHandMm, deflections);
        return deflections;
    }
}

/// <summary>What finite elements see beyond beam theory where the spine tapers. Theory L14.</summary>
internal static class TaperAllowance
{
    private const double PerSlope = 1.5, From = 0.04, Full = 0.08;

    /// <summary>Growth of the stress with the face's slope at a place.</summary>
    internal static double PerSlopeAt(StationPattern pattern) =>
        pattern.Segment.Zone == Zone.Blade ? PerSlope * Smooth.Step((pattern.Coordinate - From) / (Full - From)) : 0;

    /// <summary>Stress over that of beam theory at a place where the face has a slope.</summary>
    internal static double Factor(StationPattern pattern, double slope) => 1 + PerSlopeAt(pattern) * slope;
}

/// <summary>What is left of the wood's bending strength at the face of a tapering spine. Thinning cuts the grain: on one of the two faces
/// the slope of the surface adds to the board's own slope of grain, and either face may be the one in tension. Theory L18.</summary>
/// <param name="boardSlope">Slope of grain of the board, rise over run.</param>
internal readonly struct TaperedGrain(double boardSlope)
{
    private readonly double ofBoard = GrainSlope.HankinsonFraction(boardSlope, GrainSlope.RuptureRatio);

    /// <summary>Share of the board's bending strength left at a surface slope: W4 at both slopes together over W4 at the board's.</summary>
    /// <param name="surfaceSlope">Slope of the face along the paddle, rise over run, 0 or more.</param>
    internal double Share(double surfaceSlope) => GrainSlope.HankinsonFraction(boardSlope + surfaceSlope, GrainSlope.RuptureRatio) / ofBoard;

    /// <summary>Derivative of <see cref="Share"/> by the surface slope.</summary>
    internal double ShareRate(double surfaceSlope) => GrainSlope.HankinsonRate(boardSlope + surfaceSlope, GrainSlope.RuptureRatio) / ofBoard;
}
