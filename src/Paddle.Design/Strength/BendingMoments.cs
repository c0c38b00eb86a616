using Paddle.Design.Solid;

namespace Paddle.Design.Strength;

/// <summary>Bending moment along the paddle held by two hands, from what the blade carries. Statics of an overhanging beam: the moment
/// grows from the tip to the lower hand and falls evenly to nothing at the top hand. Theory L7–L9.</summary>
internal static class BendingMoments
{
    /// <summary>Fills the moments (N·mm) at every place.</summary>
    /// <param name="loadCase">The case; one across the grain has the moments of its stroke.</param>
    /// <param name="bucklingN">Thrust at which the shaft would buckle, N: how near it is decides how far a thrust's moments grow.</param>
    /// <param name="moments">Receives the moments, one for each place.</param>
    internal static void Fill(PaddleSolid solid, BladePressure pressure, LoadCase loadCase, double bucklingN, Span<double> moments)
    {
        FirstOrder(solid, pressure, loadCase, moments);
        if (loadCase.ThrustN == 0) return;
        var growth = Buckling.Growth(loadCase.ThrustN, bucklingN);
        for (var i = 0; i < moments.Length; i++) moments[i] *= growth;
    }

    private static void FirstOrder(PaddleSolid solid, BladePressure pressure, LoadCase loadCase, Span<double> moments)
    {
        var force = loadCase.Action == LoadAction.TipThrust ? loadCase.SideForceN : loadCase.ForceN;
        var places = solid.Form.Places;
        for (var i = solid.Grid.FirstBladePlace; i < solid.Count; i++)
        {
            moments[i] = loadCase.Action switch
            {
                LoadAction.EvenPressure => pressure.EvenMomentNmm(i, solid.X[i], force),
                LoadAction.TipThrust => ThrustOnBlade(solid, loadCase, solid.X[i]),
                _ => pressure.StrokeMomentNmm(i, solid.X[i], force, loadCase.PivotMm),
            };
        }

        var atThroat = moments[solid.Grid.FirstBladePlace];
        var across = force * solid.Form.BendCosine;
        var atLowerHand = atThroat + across * (places.ThroatMm - places.LowerHandMm);
        for (var i = 0; i < solid.Grid.FirstBladePlace; i++)
        {
            var x = solid.X[i];
            moments[i] = x >= places.LowerHandMm
                ? atThroat + across * (places.ThroatMm - x)
                : atLowerHand * Math.Max(0, x - places.TopHandMm) / places.HandSpacingMm;
        }
    }

    // Theory L9: the side force on its arm, and the thrust off the axis by half the shaft's depth at the throat, by nothing at the tip.
    private static double ThrustOnBlade(PaddleSolid solid, LoadCase loadCase, double x)
    {
        var toTip = solid.Form.Places.OverallMm - x;
        var eccentricity = solid.Sizes.ShaftThicknessMm / 2 * toTip / solid.Form.Places.BladeMm;
        return loadCase.SideForceN * toTip + loadCase.ThrustN * eccentricity;
    }
}
