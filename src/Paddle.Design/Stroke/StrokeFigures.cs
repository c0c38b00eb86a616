using System.Text.Json.Serialization;
using Paddle.Design.Outline;

namespace Paddle.Design.Stroke;

/// <summary>What the paddle does in the water and to the joints. Theory K1–K6.</summary>
/// <param name="BladeAreaCm2">Area of one face of the blade, cm².</param>
/// <param name="AspectRatio">Blade length squared over area.</param>
/// <param name="CentreOfPressureMm">Resultant of an easy stroke's pressure, mm from the top of the grip.</param>
/// <param name="DragCoefficient">Steady drag coefficient of a plate of this aspect ratio: the low figure.</param>
/// <param name="DragCoefficientHigh">Drag coefficient measured on blades in a flume: the high figure.</param>
/// <param name="ForceN">Peak force of the easy stroke that the figures below belong to, N.</param>
/// <param name="MeanForceN">Its mean over the pull, N.</param>
/// <param name="TopHandForceN">Force on the top hand at the peak, N.</param>
/// <param name="LowerHandForceN">Force on the lower hand at the peak, N.</param>
/// <param name="LowerHandMomentNm">Bending moment at the lower hand at the peak, N·m.</param>
/// <param name="SlipSpeedMS">Speed of the blade through the water at the mean force, low drag coefficient, m/s.</param>
/// <param name="SlipSpeedLowMS">The same with the high drag coefficient, m/s.</param>
/// <param name="BoatSpeedMS">Boat speed for the efficiency, m/s.</param>
/// <param name="FroudeEfficiency">Share of the paddler's power that moves the boat, low drag coefficient: a comparison, not a prediction.</param>
/// <param name="FroudeEfficiencyHigh">The same with the high drag coefficient.</param>
/// <param name="LiftEnergyJ">Energy to lift the paddle once, J.</param>
/// <param name="LiftEnergyPerDayKJ">Energy to lift it through a day of strokes, kJ.</param>
/// <param name="ImmersionMm">Depth of water that covers the blade to the throat at the shaft's usual lean, mm.</param>
/// <param name="Families">The same blade area in each family's usual shape, for comparison.</param>
public sealed record StrokeFigures(
    double BladeAreaCm2,
    double AspectRatio,
    double CentreOfPressureMm,
    double DragCoefficient,
    double DragCoefficientHigh,
    double ForceN,
    double MeanForceN,
    double TopHandForceN,
    double LowerHandForceN,
    double LowerHandMomentNm,
    double SlipSpeedMS,
    double SlipSpeedLowMS,
    double BoatSpeedMS,
    double FroudeEfficiency,
    double FroudeEfficiencyHigh,
    double LiftEnergyJ,
    double LiftEnergyPerDayKJ,
    double ImmersionMm,
    IReadOnlyList<FamilyFigures> Families);

/// <summary>A blade family at equal area: why one family is kinder to the joints than another, in numbers.</summary>
/// <param name="Family">Family id.</param>
/// <param name="LengthMm">Blade length of its usual proportions at this area, mm.</param>
/// <param name="WidthMm">Blade width of its usual proportions at this area, mm.</param>
/// <param name="ArmMm">Lower hand to centre of pressure, mm.</param>
/// <param name="TopHandForceN">Force on the top hand at the easy stroke's peak, N.</param>
/// <param name="LowerHandForceN">Force on the lower hand at the easy stroke's peak, N.</param>
/// <param name="DragCoefficient">Steady drag coefficient.</param>
/// <param name="ImmersionMm">Depth of water that covers it, mm.</param>
/// <param name="TopHandForceAtEqualLengthN">
/// Force on the top hand were the family drawn at this blade's length as well as its area: what its shape alone does, N.
/// </param>
public sealed record FamilyFigures(
    string Family,
    double LengthMm,
    double WidthMm,
    double ArmMm,
    double TopHandForceN,
    double LowerHandForceN,
    double DragCoefficient,
    double ImmersionMm,
    [property: JsonIgnore] double TopHandForceAtEqualLengthN);

/// <summary>Each family's usual blade, summed once, so that it can be scaled to any area. Theory K6.</summary>
internal static class FamilyTable
{
    private static readonly GaussRule Gauss = new(8);

    internal static IReadOnlyList<FamilyBlade> Blades { get; } = [.. BladeFamilies.All.Select(Sum)];

    private static FamilyBlade Sum(BladeFamily family)
    {
        var shape = new BladeShape(
            family, family.DefaultLengthMm, family.DefaultWidthMm, family.DefaultWidestAt, family.DefaultFullness, null);
        var moments = new double[4];
        foreach (var piece in BladePlan.For(shape).Draw(0, BladeShape.NominalShaftHalfWidthMm))
        {
            for (var k = 0; k < Gauss.Abscissas.Length; k++)
            {
                var s = Gauss.Abscissas[k];
                var strip = 2 * Gauss.Weights[k] * piece.Y(s) * piece.DX(s);
                for (var power = 0; power < moments.Length; power++) moments[power] += strip * Math.Pow(piece.X(s), power);
            }
        }

        return new(family.Id, family.DefaultLengthMm, family.DefaultWidthMm, moments[0], moments[1], moments[2], moments[3]);
    }
}

/// <summary>A family's usual blade: its sizes (mm) and ∫x^k dA over its face from the throat (mm^(k+2)).</summary>
internal sealed record FamilyBlade(string Family, double LengthMm, double WidthMm, double M0, double M1, double M2, double M3)
{
    /// <summary>Centre of pressure (mm from the throat) of the blade stretched along and across, pivot above the throat.</summary>
    /// <param name="along">Factor on its length.</param>
    /// <param name="pivotMm">Distance of the stroke's pivot above the throat, mm.</param>
    /// <remarks>A factor on the width changes all moments alike and drops out.</remarks>
    internal double CentreOfPressureMm(double along, double pivotMm)
    {
        var p = pivotMm / along;
        return along * (M3 + 2 * p * M2 + p * p * M1) / (M2 + 2 * p * M1 + p * p * M0);
    }
}
