using Paddle.Design.Solid;

namespace Paddle.Design.Finishing;

/// <summary>Mass and balance with something added.</summary>
/// <param name="MassG">Mass, g.</param>
/// <param name="BalanceMm">Balance point, mm from the top of the grip along the shaft's line.</param>
/// <param name="ShiftMm">How far the balance point moved, mm; positive towards the tip.</param>
internal sealed record Laden(double MassG, double BalanceMm, double ShiftMm);

/// <summary>What a finish adds to a paddle, spread evenly over the surfaces it covers. Theory M14.</summary>
/// <param name="ClothG">Cloth and resin over the tip, g.</param>
/// <param name="FirstGmm">First moment about the top of the grip along the shaft's line, g·mm.</param>
/// <param name="SecondGmm2">Second moment about the same, g·mm².</param>
public sealed record FinishLoad(double BladeG, double ShaftG, double ClothG, double FirstGmm, double SecondGmm2)
{
    public double MassG => BladeG + ShaftG + ClothG;

    /// <summary>What a finish adds to a solid.</summary>
    /// <param name="solid">The sanded paddle on a Gauss grid.</param>
    public static FinishLoad On(PaddleSolid solid, FinishChoice choice)
    {
        var onBlade = FinishChoice.DryGPerM2(choice.Blade, choice.BladeCoats) * 1e-6;
        var onShaft = FinishChoice.DryGPerM2(choice.Shaft, choice.ShaftCoats) * 1e-6;
        double blade = 0, shaft = 0, first = 0, second = 0;
        for (var i = 0; i < solid.Count; i++)
        {
            var weight = solid.WeightMm(i);
            if (weight <= 0) continue;
            var pattern = solid.Grid.Patterns[i];
            var isBlade = pattern.Segment.Zone == Zone.Blade;
            var grams = weight * (isBlade ? onBlade : onShaft)
                * pattern.Perimeter.LengthMm(solid.HalfWidth[i], solid.HalfThickness[i], solid.EdgeHalfThickness[i]);
            var along = solid.Form.AlongShaftMm(solid.X[i]);
            if (isBlade) blade += grams;
            else shaft += grams;
            first += grams * along;
            second += grams * along * along;
        }

        if (!choice.TipReinforcement) return new(blade, shaft, 0, first, second);
        var cloth = TipReinforcement.For(solid, 0, 0);
        return new(
            blade, shaft, cloth.AddedG, first + cloth.AddedG * cloth.With.BalanceMm, second + cloth.AddedG * cloth.With.BalanceMm * cloth.With.BalanceMm);
    }
}

/// <summary>A finished paddle: wood and finish together.</summary>
/// <param name="CentreOfMassMm">Balance point along the shaft's line from the top of the grip, mm.</param>
/// <param name="ShiftMm">How far the finish moved the balance point, mm; positive towards the tip.</param>
/// <param name="InertiaCentreKgM2">Moment of inertia about the centre of mass, kg·m².</param>
/// <param name="InertiaTopHandKgM2">Moment of inertia about the grip hand, kg·m².</param>
/// <param name="InertiaLowerHandKgM2">Moment of inertia about the lower hand, kg·m².</param>
/// <param name="Load">What the finish adds.</param>
public sealed record FinishedMass(
    double MassG,
    double CentreOfMassMm,
    double ShiftMm,
    double InertiaCentreKgM2,
    double InertiaTopHandKgM2,
    double InertiaLowerHandKgM2,
    FinishLoad Load)
{
    /// <summary>Wood and finish together, by the parallel-axis theorem (elementary mechanics).</summary>
    /// <param name="load">The finish; its own spread across the paddle is left out (under 0.1 %).</param>
    internal static FinishedMass Of(Outline.PaddlePlaces places, MassProperties bare, FinishLoad load)
    {
        const double ToKgM2 = 1e-9;
        var mass = bare.TotalG + load.MassG;
        var centre = (bare.TotalG * bare.CentreOfMassMm + load.FirstGmm) / mass;
        double LoadAbout(double at) => (load.SecondGmm2 - 2 * at * load.FirstGmm + at * at * load.MassG) * ToKgM2;
        var off = bare.CentreOfMassMm - centre;
        return new(
            mass, centre, centre - bare.CentreOfMassMm, bare.InertiaCentreKgM2 + bare.TotalG * off * off * ToKgM2 + LoadAbout(centre),
            bare.InertiaTopHandKgM2 + LoadAbout(places.TopHandMm), bare.InertiaLowerHandKgM2 + LoadAbout(places.LowerHandMm), load);
    }
}
