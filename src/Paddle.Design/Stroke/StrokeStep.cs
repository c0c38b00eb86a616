using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Water;

namespace Paddle.Design.Stroke;

/// <summary>Works out what the paddle does in the water and to the joints.</summary>
internal static class StrokeStep
{
    /// <summary>Water temperature, °C.</summary>
    public const double WaterC = 15;
    /// <summary>Touring speed of a canoe, m/s (common practice: 1.3–1.8).</summary>
    public const double BoatSpeedMS = 1.5;
    /// <summary>Height that a stroke lifts the paddle, m (engineering assumption: 0.30–0.40).</summary>
    public const double LiftM = 0.35;
    /// <summary>Strokes in a day's touring: six hours at 45 a minute (trip reports give about 1 000 an hour and more).</summary>
    public const double StrokesPerDay = 16200;

    private static readonly double WaterKgM3 = FreshWater.DensityKgM3(WaterC);

    /// <summary>The figures of a finished solid.</summary>
    /// <param name="form">What fixes the solid apart from its sizes.</param>
    public static StrokeFigures Of(PaddleForm form, BladePressure pressure, Loads loads, double massG)
    {
        var places = form.Places;
        var area = pressure.AreaMm2;
        var centre = pressure.CentreOfPressureMm(StrokePivots.TouringMm);
        var aspect = places.BladeMm * places.BladeMm / area;
        var drag = PlateDrag.Band(aspect);
        var hands = HandForces.Of(form, loads.Touring.ForceN, centre - places.ThroatMm);
        var mean = loads.Touring.ForceN / Loads.PeakOverMean;
        double slip = PlateDrag.SlipMS(mean, drag.Low, area * 1e-6, WaterKgM3), slipLow = PlateDrag.SlipMS(mean, drag.High, area * 1e-6, WaterKgM3);
        var lift = massG / 1000 * 9.80665 * LiftM; // theory K5
        return new(
            area / 100,
            aspect,
            centre,
            drag.Low,
            drag.High,
            loads.Touring.ForceN,
            mean,
            hands.TopN,
            hands.LowerN,
            hands.MomentNm,
            slip,
            slipLow,
            BoatSpeedMS,
            PlateDrag.FroudeEfficiency(BoatSpeedMS, slip),
            PlateDrag.FroudeEfficiency(BoatSpeedMS, slipLow),
            lift,
            lift * StrokesPerDay / 1000,
            places.BladeMm * form.BendCosine,
            Families(form, loads, area));
    }

    private static FamilyFigures[] Families(PaddleForm form, Loads loads, double areaMm2)
    {
        var figures = new FamilyFigures[FamilyTable.Blades.Count];
        for (var i = 0; i < figures.Length; i++)
        {
            var blade = FamilyTable.Blades[i];
            var scale = Math.Sqrt(areaMm2 / blade.M0);
            double length = blade.LengthMm * scale, centre = blade.CentreOfPressureMm(scale, StrokePivots.TouringMm);
            var hands = HandForces.Of(form, loads.Touring.ForceN, centre);
            var sameLength = blade.CentreOfPressureMm(form.Places.BladeMm / blade.LengthMm, StrokePivots.TouringMm);
            figures[i] = new(
                blade.Family,
                length,
                blade.WidthMm * scale,
                centre + form.Places.ThroatMm - form.Places.LowerHandMm,
                hands.TopN,
                hands.LowerN,
                PlateDrag.Coefficient(length * length / areaMm2),
                length * form.BendCosine,
                HandForces.Of(form, loads.Touring.ForceN, sameLength).TopN);
        }

        return figures;
    }
}

/// <summary>Forces on the two hands by the lever law. Theory K1–K3.</summary>
/// <param name="MomentNm">Bending moment at the lower hand, N·m.</param>
internal readonly record struct HandForces(double TopN, double LowerN, double MomentNm)
{
    /// <summary>The forces that hold a force across the blade.</summary>
    /// <param name="forceN">The force, N, square to the blade.</param>
    /// <remarks>F_top = M/a, M = F·(d + b·cos β), F_low = F·cos β + F_top; the paddle's own weight is left out.</remarks>
    public static HandForces Of(PaddleForm form, double forceN, double belowThroatMm)
    {
        var places = form.Places;
        var moment = forceN * (belowThroatMm + (places.ThroatMm - places.LowerHandMm) * form.BendCosine);
        var top = moment / places.HandSpacingMm;
        return new(top, forceN * form.BendCosine + top, moment / 1000);
    }
}
