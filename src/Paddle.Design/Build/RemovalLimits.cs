using Paddle.Design.Balance;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Design.Build;

/// <summary>How much may be planed off the middle at every printed station before a limit is crossed. Theory M24.</summary>
/// <remarks>
/// Limits: the safety factor asked for in every load case; the least sizes a paddle may have (<see cref="SizeLimits.Pinned"/>);
/// the shaft's least mean of width and thickness and its roundness; the spine a millimetre above the edge; and
/// <see cref="MostMm"/> in one correction.
/// </remarks>
internal static class RemovalLimits
{
    /// <summary>Most that one correction takes off a zone, mm of full thickness; beyond it, it is another design. Own choice.</summary>
    internal const double MostMm = 4;

    private const int Halvings = 30;

    /// <summary>Most that may come off at each station, mm of full thickness; 0 where a limit is reached already.</summary>
    /// <param name="solid">The paddle planed to plan at the printed stations.</param>
    /// <param name="reserve">Factor on every case's least factor.</param>
    internal static double[] At(PaddleSolid solid, Loads loads, WoodInUse wood, double reserve = 1)
    {
        var pressure = BladePressure.On(solid);
        var buckling = StrengthCheck.ShaftBucklingN(solid, wood);
        var moments = new double[loads.AlongTheGrain.Count][];
        for (var k = 0; k < moments.Length; k++)
        {
            moments[k] = new double[solid.Count];
            BendingMoments.Fill(solid, pressure, loads.AlongTheGrain[k], buckling, moments[k]);
        }

        var limits = new double[solid.Count];
        for (var i = 0; i < limits.Length; i++)
        {
            var most = Math.Min(MostMm, 2 * solid.HalfThickness[i] - LeastThicknessMm(solid, i));
            if (most <= 0) continue;
            var place = i;
            bool Holds(double removed) =>
                IsStrong(solid, place, removed, moments, loads, wood, reserve);
            limits[i] = Holds(most) ? most : Bisect(Holds, most);
        }

        return limits;
    }

    private static double Bisect(Func<double, bool> holds, double high)
    {
        var low = 0.0;
        if (!holds(0)) return 0;
        for (var pass = 0; pass < Halvings; pass++)
        {
            var middle = (low + high) / 2;
            if (holds(middle)) low = middle;
            else high = middle;
        }

        return low;
    }

    private static double LeastThicknessMm(PaddleSolid solid, int i)
    {
        var pattern = solid.Grid.Patterns[i];
        var limits = SizeLimits.Pinned;
        var width = 2 * solid.HalfWidth[i];
        switch (pattern.Segment.Zone)
        {
            case Zone.Grip:
                // Where cap and hollow thin the grip the crest's limit does not apply, but its share of the crest does.
                return limits[8].Min * pattern.Weights.Grip + limits[3].Min * pattern.Weights.Upper
                    - pattern.HollowShare * solid.Form.Grip.HollowedFaces * solid.Form.Grip.HollowDepthMm;
            case Zone.Shaft:
                var share = pattern.LowerShare;
                var mean = SizeLimits.SmallShare(solid.Form.Places.HandSpacingMm)
                    * (share * SizeLimits.LeastMeanAtLowerHandMm + (1 - share) * SizeLimits.LeastMeanAtGripMm);
                return Math.Max(
                    Math.Max(share * limits[1].Min + (1 - share) * limits[3].Min, 2 * mean - width), width / SizeLimits.MostOval);
            default:
                var t = pattern.Coordinate;
                var least = t < SpineProfile.Middle
                    ? Between(limits[4].Min, limits[5].Min, (t - SpineProfile.Throat) / (SpineProfile.Middle - SpineProfile.Throat))
                    : Between(limits[5].Min, limits[6].Min, (t - SpineProfile.Middle) / (SpineProfile.Tip - SpineProfile.Middle));
                return Math.Max(least, 2 * solid.EdgeHalfThickness[i] + SizeLimits.LeastTipOverEdgeMm * pattern.EdgeShare);
        }
    }

    private static double Between(double from, double to, double share) => from + (to - from) * Math.Clamp(share, 0, 1);

    private static bool IsStrong(
        PaddleSolid solid,
        int i,
        double removedMm,
        double[][] moments,
        Loads loads,
        WoodInUse wood,
        double reserve)
    {
        var section = solid.Section(i) with { HalfThicknessMm = solid.HalfThickness[i] - removedMm / 2 };
        if (section.HalfThicknessMm <= section.EdgeHalfThicknessMm) return false;
        for (var k = 0; k < moments.Length; k++)
        {
            if (moments[k][i] <= 0) continue;
            var loadCase = loads.AlongTheGrain[k];
            var share = StrengthCheck.StrengthShare(solid, i, loadCase, wood);
            var stress = TaperAllowance.Factor(solid.Grid.Patterns[i], solid.FaceSlope[i]) * moments[k][i] / section.FlatModulusMm3 + loadCase.ThrustN / section.AreaMm2;
            if (stress * loadCase.LeastFactor * reserve > share * wood.BendingStrengthMPa) return false;
        }

        return true;
    }
}
