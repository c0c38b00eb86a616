using Paddle.Design.Solid;

namespace Paddle.Design.Build;

/// <summary>Mass and balance with something added.</summary>
/// <param name="MassG">Mass, g.</param>
/// <param name="BalanceMm">Balance point, mm from the top of the grip along the shaft's line.</param>
/// <param name="ShiftMm">How far the balance point moved, mm; positive towards the tip.</param>
public sealed record Laden(double MassG, double BalanceMm, double ShiftMm);

/// <summary>Where the finish sits and what it does to the balance. Theory M14.</summary>
public static class FinishLoad
{
    /// <summary>
    /// Shift of the balance point when mass is taken off: <c>dx = dm d/(M - dm)</c>, away from it; with dm negative, mass is
    /// added and the point moves towards it. Theory M14. Source: statics.
    /// </summary>
    /// <param name="massG">M, mass before, g.</param>
    /// <param name="removedG">dm, g.</param>
    /// <param name="armMm">d, distance from the balance point, mm.</param>
    public static double ShiftMm(double massG, double removedG, double armMm) => removedG * armMm / (massG - removedG); // theory M14

    /// <summary>Bare wood with the finish of a plan spread evenly over its surfaces.</summary>
    /// <param name="solid">The finished paddle on <see cref="StationGrid.Fine"/>.</param>
    /// <param name="massG">Mass of bare wood, g.</param>
    /// <param name="balanceMm">Balance point of bare wood, mm.</param>
    /// <param name="plan">The finish.</param>
    public static Laden Add(PaddleSolid solid, double massG, double balanceMm, FinishPlan plan)
    {
        ArgumentNullException.ThrowIfNull(solid);
        ArgumentNullException.ThrowIfNull(plan);
        double hand = 0, handFirst = 0, blade = 0, bladeFirst = 0;
        for (var i = 0; i < solid.Count; i++)
        {
            var pattern = solid.Grid.Patterns[i];
            var surface = solid.WeightMm(i)
                * pattern.Perimeter.LengthMm(solid.HalfWidth[i], solid.HalfThickness[i], solid.EdgeHalfThickness[i]);
            var first = surface * solid.Form.AlongShaftMm(solid.X[i]);
            if (pattern.Segment.Zone == Zone.Blade) (blade, bladeFirst) = (blade + surface, bladeFirst + first);
            else (hand, handFirst) = (hand + surface, handFirst + first);
        }

        var total = massG + plan.VarnishDryG + plan.OilDryG;
        var centre = (massG * balanceMm + plan.VarnishDryG * bladeFirst / blade + plan.OilDryG * handFirst / hand) / total;
        return new(total, centre, centre - balanceMm);
    }
}
