using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Wood;

namespace Paddle.Design.Strength;

/// <summary>How the paddle gives under a weight that a maker can hang, and how it rings when tapped.</summary>
/// <param name="BenchFlexMm">Deflection at the centre of pressure under the bench load there, hands as supports, mm.</param>
/// <param name="TipDeflectionMm">Deflection of the tip under the same load, mm.</param>
/// <param name="FirstFrequencyHz">First bending frequency of the free paddle, Hz.</param>
public sealed record Flex(double BenchFlexMm, double TipDeflectionMm, double FirstFrequencyHz)
{
    /// <summary>Weight hung at the centre of pressure, hands as supports, N.</summary>
    public double BenchLoadN { get; } = Loads.BenchN;

    // Form factor of shear: 6/5 of a rectangle; an ellipse has 10/9. Shear is under 1 % of the flex, so one figure serves.
    internal const double ShearForm = 1.2;

    /// <param name="fine">The solid on a Gauss grid, for the deflections.</param>
    /// <param name="stations">The solid at close places, for the frequency.</param>
    /// <param name="centreOfPressureMm">Where the bench load hangs, mm.</param>
    internal static Flex Of(PaddleSolid fine, PaddleSolid stations, double centreOfPressureMm, WoodInUse wood)
    {
        var (bench, tip) = Deflections(fine, centreOfPressureMm, wood);
        return new(bench, tip, FrequencyHz(stations, wood.DensityKgM3, wood.ModulusMPa));
    }

    /// <summary>First bending frequency of a free paddle at close places, Hz.</summary>
    internal static double FrequencyHz(PaddleSolid stations, double densityKgM3, double modulusMPa)
    {
        Span<double> mass = stackalloc double[stations.Count];
        Span<double> stiffness = stackalloc double[stations.Count];
        for (var i = 0; i < stations.Count; i++)
        {
            mass[i] = densityKgM3 * 1e-9 * stations.MassArea[i];
            stiffness[i] = modulusMPa * stations.FlatSecondMoment[i];
        }

        return FreeVibration.FirstFrequencyHz(stations.X, mass, stiffness);
    }

    /// <summary>Bench flex and tip deflection by virtual work. Theory L12.</summary>
    /// <param name="fine">The solid on a Gauss grid.</param>
    /// <param name="wood">True modulus and shear modulus, MPa.</param>
    /// <remarks>δ = F∫m²/(EI)dx + F∫k·v²/(GA)dx with m, v of a unit load. The modulus is the true one because shear is counted apart (Wood
    /// Handbook table 5-3, footnote: the tabulated modulus is apparent and about 10 % low).</remarks>
    internal static (double BenchMm, double TipMm) Deflections(PaddleSolid fine, double centreOfPressureMm, WoodInUse wood)
    {
        double bench = 0, tip = 0;
        for (var i = 0; i < fine.Count; i++)
        {
            var weight = fine.WeightMm(i);
            if (weight <= 0) continue;
            var (m, v) = UnitLoad(fine.Form, fine.X[i], centreOfPressureMm);
            var (mTip, vTip) = UnitLoad(fine.Form, fine.X[i], fine.Form.Places.OverallMm);
            var bending = weight / (wood.ModulusMPa * fine.FlatSecondMoment[i]);
            var shear = weight * ShearForm / (wood.ShearModulusMPa * fine.ShearArea[i]);
            bench += m * m * bending + v * v * shear;
            tip += m * mTip * bending + v * vTip * shear;
        }

        return (Loads.BenchN * bench, Loads.BenchN * tip);
    }

    /// <summary>Deflection under a weight of 1 N across the blade, held anywhere on the shaft, mm. Theory L12.</summary>
    /// <param name="held">Places, with the supports where the hands are.</param>
    /// <param name="atMm">Where the weight hangs, on the blade.</param>
    internal static double PerNewtonMm(PaddleSolid fine, PaddlePlaces held, double atMm, double modulusMPa, double shearModulusMPa)
    {
        var form = fine.Form with { Places = held };
        var sum = 0.0;
        for (var i = 0; i < fine.Count; i++)
        {
            var weight = fine.WeightMm(i);
            if (weight <= 0) continue;
            var (m, v) = UnitLoad(form, fine.X[i], atMm);
            sum += weight * (m * m / (modulusMPa * fine.FlatSecondMoment[i]) + v * v * ShearForm / (shearModulusMPa * fine.ShearArea[i]));
        }

        return sum;
    }

    /// <summary>Moment (mm) and shear (-) at x from a unit load across the blade at <paramref name="at"/>.</summary>
    internal static (double Moment, double Shear) UnitLoad(PaddleForm form, double x, double at)
    {
        var places = form.Places;
        if (x >= places.ThroatMm) return x < at ? (at - x, 1) : (0, 0);
        var atThroat = at - places.ThroatMm;
        if (x >= places.LowerHandMm) return (atThroat + form.BendCosine * (places.ThroatMm - x), form.BendCosine);
        if (x <= places.TopHandMm) return (0, 0);
        var topHand = (atThroat + form.BendCosine * (places.ThroatMm - places.LowerHandMm)) / places.HandSpacingMm;
        return (topHand * (x - places.TopHandMm), topHand);
    }
}
