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
/// <param name="FroudeEfficiency">Share of the paddler's power that moves the boat, low drag coefficient.</param>
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
public sealed record FamilyFigures(
    string Family,
    double LengthMm,
    double WidthMm,
    double ArmMm,
    double TopHandForceN,
    double LowerHandForceN,
    double DragCoefficient,
    double ImmersionMm);
