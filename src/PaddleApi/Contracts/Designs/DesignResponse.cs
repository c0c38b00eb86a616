using System.Text.Json.Serialization;
using Paddle.Design.Request;
using PaddleApi.Contracts.Numbers;

namespace PaddleApi.Contracts.Designs;

/// <summary>A finished design.</summary>
/// <param name="EngineVersion">Version of the engine that computed it.</param>
/// <param name="DesignCode">The design itself, every size pinned, in letters that fit a URL.</param>
/// <param name="Links">Where to fetch it again.</param>
/// <param name="Design">The request with every default filled in; sizes that the solver chose are still null.</param>
/// <param name="Lengths">Places along the paddle.</param>
/// <param name="Sizes">The nine sizes of the finished paddle.</param>
/// <param name="Stations">Cross-sections from the top of the grip to the tip.</param>
/// <param name="Wood">The values of the wood that were used.</param>
/// <param name="Mass">Mass, balance point and swing.</param>
/// <param name="Balance">How the finished paddle balances.</param>
/// <param name="Strength">Every load case.</param>
/// <param name="Flex">Bench flex and first frequency.</param>
/// <param name="Stroke">In the water.</param>
/// <param name="Outcome"><c>met</c>, or <c>closest</c> when an aim is missed.</param>
/// <param name="UnmetAims">The aims missed, the gravest first, with what to do.</param>
/// <param name="Checks">Every figure held against its limit.</param>
/// <param name="Cautions">What can hurt, with sources.</param>
/// <param name="Construction">How a laminated paddle is glued up, and one of one piece beside it; absent of one piece.</param>
internal sealed record DesignResponse(
    string EngineVersion,
    string DesignCode,
    DesignLinks Links,
    DesignRequest Design,
    DesignLengths Lengths,
    DesignSizes Sizes,
    [property: JsonConverter(typeof(StationsConverter))] IReadOnlyList<DesignStation> Stations,
    DesignWood Wood,
    DesignMass Mass,
    DesignBalance Balance,
    DesignStrength Strength,
    DesignFlex Flex,
    DesignStroke Stroke,
    string Outcome,
    IReadOnlyList<DesignUnmetAim> UnmetAims,
    IReadOnlyList<DesignCheckResult> Checks,
    IReadOnlyList<DesignCaution> Cautions,
    DesignConstruction? Construction = null);

/// <summary>Places along the paddle, mm from the top of the grip.</summary>
/// <param name="OverallMm">Overall length.</param>
/// <param name="ShaftMm">Top of the grip to the throat.</param>
/// <param name="BladeMm">Throat to tip.</param>
/// <param name="TopHandMm">Middle of the grip hand.</param>
/// <param name="LowerHandMm">Middle of the lower hand.</param>
/// <param name="ThroatMm">Where the shaft turns into the blade.</param>
internal sealed record DesignLengths(
    [property: JsonConverter(typeof(Hundredths))] double OverallMm,
    [property: JsonConverter(typeof(Hundredths))] double ShaftMm,
    [property: JsonConverter(typeof(Hundredths))] double BladeMm,
    [property: JsonConverter(typeof(Hundredths))] double TopHandMm,
    [property: JsonConverter(typeof(Hundredths))] double LowerHandMm,
    [property: JsonConverter(typeof(Hundredths))] double ThroatMm);

/// <summary>The nine sizes of the finished paddle, full widths and thicknesses, mm.</summary>
/// <param name="ShaftWidthMm">Shaft width at the lower hand.</param>
/// <param name="ShaftThicknessMm">Shaft thickness at the lower hand.</param>
/// <param name="UpperWidthMm">Shaft width just below the grip.</param>
/// <param name="UpperThicknessMm">Shaft thickness just below the grip.</param>
/// <param name="ThroatThicknessMm">Spine thickness at 0.08 of the blade.</param>
/// <param name="MiddleThicknessMm">Spine thickness at 0.5 of the blade.</param>
/// <param name="TipThicknessMm">Spine thickness from 0.92 of the blade.</param>
/// <param name="EdgeThicknessMm">Edge thickness.</param>
/// <param name="GripThicknessMm">Thickness of the grip's crest.</param>
internal sealed record DesignSizes(
    [property: JsonConverter(typeof(Thousandths))] double ShaftWidthMm,
    [property: JsonConverter(typeof(Thousandths))] double ShaftThicknessMm,
    [property: JsonConverter(typeof(Thousandths))] double UpperWidthMm,
    [property: JsonConverter(typeof(Thousandths))] double UpperThicknessMm,
    [property: JsonConverter(typeof(Thousandths))] double ThroatThicknessMm,
    [property: JsonConverter(typeof(Thousandths))] double MiddleThicknessMm,
    [property: JsonConverter(typeof(Thousandths))] double TipThicknessMm,
    [property: JsonConverter(typeof(Thousandths))] double EdgeThicknessMm,
    [property: JsonConverter(typeof(Thousandths))] double GripThicknessMm);

/// <summary>The values of the wood that were used.</summary>
/// <param name="Species">Species id.</param>
/// <param name="MoisturePercent">Moisture, percent of ovendry mass.</param>
/// <param name="SlopeOfGrain">Slope of grain, rise over run.</param>
/// <param name="DensityKgM3">Density with its water, kg/m³.</param>
/// <param name="ModulusMPa">True modulus along the grain, MPa; shear is counted apart.</param>
/// <param name="ApparentModulusMPa">Apparent modulus, shear included, MPa.</param>
/// <param name="ShearModulusMPa">Shear modulus along the grain, MPa.</param>
/// <param name="BendingStrengthMPa">5th-percentile bending strength, MPa.</param>
/// <param name="MeanBendingStrengthMPa">Mean bending strength, MPa.</param>
/// <param name="CompressionStrengthMPa">5th-percentile compression strength along the grain, MPa.</param>
/// <param name="CrossGrainStrengthMPa">5th-percentile tension strength across the grain, MPa.</param>
/// <param name="Sources">Where each value comes from.</param>
internal sealed record DesignWood(
    string Species,
    [property: JsonConverter(typeof(Hundredths))] double MoisturePercent,
    [property: JsonConverter(typeof(FourDigits))] double SlopeOfGrain,
    [property: JsonConverter(typeof(Tenths))] double DensityKgM3,
    [property: JsonConverter(typeof(ThreeDigits))] double ModulusMPa,
    [property: JsonConverter(typeof(ThreeDigits))] double ApparentModulusMPa,
    [property: JsonConverter(typeof(ThreeDigits))] double ShearModulusMPa,
    [property: JsonConverter(typeof(ThreeDigits))] double BendingStrengthMPa,
    [property: JsonConverter(typeof(ThreeDigits))] double MeanBendingStrengthMPa,
    [property: JsonConverter(typeof(ThreeDigits))] double CompressionStrengthMPa,
    [property: JsonConverter(typeof(ThreeDigits))] double CrossGrainStrengthMPa,
    IReadOnlyList<string> Sources);

/// <summary>Mass, balance point and swing.</summary>
/// <param name="TotalG">Mass, g.</param>
/// <param name="GripG">Mass of the grip, g.</param>
/// <param name="ShaftG">Mass of the shaft, g.</param>
/// <param name="BladeG">Mass of the blade, g.</param>
/// <param name="VolumeCm3">Volume, cm³.</param>
/// <param name="DensityKgM3">Density of the paddle, kg/m³.</param>
/// <param name="CentreOfMassMm">Balance point, mm from the top of the grip along the shaft's line.</param>
/// <param name="InertiaCentreKgM2">Moment of inertia about the balance point, kg·m².</param>
/// <param name="InertiaTopHandKgM2">Moment of inertia about the grip hand, kg·m².</param>
/// <param name="InertiaLowerHandKgM2">Moment of inertia about the lower hand, kg·m².</param>
/// <param name="SurfaceCm2">Surface, cm².</param>
/// <param name="GripSurfaceCm2">Surface of the grip, cm².</param>
/// <param name="ShaftSurfaceCm2">Surface of the shaft, cm².</param>
/// <param name="BladeSurfaceCm2">Surface of the blade, both faces and edges, cm².</param>
/// <param name="Floats">Whether the bare wood floats in fresh water.</param>
/// <param name="FinishG">Finish that stays on, cloth included, g.</param>
/// <param name="FinishedG">Mass finished, g; the others above are those of the bare wood.</param>
/// <param name="FinishedCentreOfMassMm">Balance point finished, mm.</param>
/// <param name="FinishedInertiaCentreKgM2">Moment of inertia about it finished, kg·m².</param>
/// <param name="FinishedInertiaTopHandKgM2">Moment of inertia about the grip hand finished, kg·m².</param>
/// <param name="FinishedInertiaLowerHandKgM2">Moment of inertia about the lower hand finished, kg·m².</param>
internal sealed record DesignMass(
    [property: JsonConverter(typeof(Tenths))] double TotalG,
    [property: JsonConverter(typeof(Tenths))] double GripG,
    [property: JsonConverter(typeof(Tenths))] double ShaftG,
    [property: JsonConverter(typeof(Tenths))] double BladeG,
    [property: JsonConverter(typeof(Tenths))] double VolumeCm3,
    [property: JsonConverter(typeof(Tenths))] double DensityKgM3,
    [property: JsonConverter(typeof(Hundredths))] double CentreOfMassMm,
    [property: JsonConverter(typeof(FourDigits))] double InertiaCentreKgM2,
    [property: JsonConverter(typeof(FourDigits))] double InertiaTopHandKgM2,
    [property: JsonConverter(typeof(FourDigits))] double InertiaLowerHandKgM2,
    [property: JsonConverter(typeof(Tenths))] double SurfaceCm2,
    [property: JsonConverter(typeof(Tenths))] double GripSurfaceCm2,
    [property: JsonConverter(typeof(Tenths))] double ShaftSurfaceCm2,
    [property: JsonConverter(typeof(Tenths))] double BladeSurfaceCm2,
    bool Floats,
    [property: JsonConverter(typeof(Tenths))] double FinishG,
    [property: JsonConverter(typeof(Tenths))] double FinishedG,
    [property: JsonConverter(typeof(Hundredths))] double FinishedCentreOfMassMm,
    [property: JsonConverter(typeof(FourDigits))] double FinishedInertiaCentreKgM2,
    [property: JsonConverter(typeof(FourDigits))] double FinishedInertiaTopHandKgM2,
    [property: JsonConverter(typeof(FourDigits))] double FinishedInertiaLowerHandKgM2);

/// <summary>How the finished paddle balances.</summary>
/// <param name="TargetMm">Where it should balance, mm from the top of the grip along the shaft's line.</param>
/// <param name="ActualMm">Where it does, finished.</param>
/// <param name="OffsetMm">Balance point less target, mm; negative when grip-heavy.</param>
/// <param name="BareMm">Where the bare wood balances, before the finish.</param>
/// <param name="ToleranceMm">How far off is still good, mm.</param>
/// <param name="Achieved">Whether it balances within the tolerance.</param>
/// <param name="BallastG">Weight let in at ballastAtMm that would bring it to the aim, g: named and priced, not built in.</param>
/// <param name="BallastAtMm">Where, mm from the top of the grip.</param>
/// <param name="BindingLimits">The limits that hold the design where it is, the costliest first.</param>
/// <param name="Advice">What to change when the balance is missed.</param>
internal sealed record DesignBalance(
    [property: JsonConverter(typeof(Hundredths))] double TargetMm,
    [property: JsonConverter(typeof(Hundredths))] double ActualMm,
    [property: JsonConverter(typeof(Hundredths))] double OffsetMm,
    [property: JsonConverter(typeof(Hundredths))] double BareMm,
    [property: JsonConverter(typeof(Hundredths))] double ToleranceMm,
    bool Achieved,
    [property: JsonConverter(typeof(Tenths))] double BallastG,
    [property: JsonConverter(typeof(Hundredths))] double BallastAtMm,
    IReadOnlyList<DesignBindingLimit> BindingLimits,
    IReadOnlyList<string> Advice);

/// <summary>An aim that the design misses.</summary>
/// <param name="Code">Stable name: <c>strength.</c> and the case, <c>balance</c>, <c>flex.least</c>, <c>flex.most</c> or <c>mass</c>.</param>
/// <param name="Value">What the design reaches.</param>
/// <param name="Limit">What was asked.</param>
/// <param name="Unit">Unit of both; empty for a factor.</param>
/// <param name="Message">What is missed.</param>
/// <param name="Advice">What to change.</param>
internal sealed record DesignUnmetAim(
    string Code,
    [property: JsonConverter(typeof(FourDigits))] double Value,
    [property: JsonConverter(typeof(FourDigits))] double Limit,
    string Unit,
    string Message,
    string Advice);

/// <summary>A limit that holds the design where it is.</summary>
/// <param name="Id">The limit: a size's name with min or max, an aim, or a rule of shape.</param>
/// <param name="Unit">Unit in which it is loosened; empty for a pure number.</param>
/// <param name="Gain">What loosening it by one unit would gain.</param>
/// <param name="GainUnit">Unit of the gain: grams saved; or, while an aim is missed, how far that aim would be helped.</param>
internal sealed record DesignBindingLimit(
    string Id, string Unit, [property: JsonConverter(typeof(ThreeDigits))] double Gain, string GainUnit);

/// <summary>Every load case.</summary>
/// <param name="Cases">One result for each case.</param>
/// <param name="GoverningCase">The case nearest to its least factor, or furthest below it.</param>
/// <param name="MinimumSafetyFactor">Its safety factor.</param>
/// <param name="BucklingLoadN">Thrust at which the shaft would buckle between the hands, N.</param>
/// <param name="EdgeKnock">What an edge bears: reported, not designed for.</param>
/// <param name="Basis">What the factors rest on.</param>
internal sealed record DesignStrength(
    IReadOnlyList<DesignLoadCase> Cases,
    string GoverningCase,
    [property: JsonConverter(typeof(Thousandths))] double MinimumSafetyFactor,
    [property: JsonConverter(typeof(Tenths))] double BucklingLoadN,
    DesignEdgeKnock EdgeKnock,
    string Basis);

/// <summary>What a knock on 20 mm of the edge may be before the wood opens along the grain. No wooden edge survives a rock by strength.</summary>
/// <param name="BareN">On bare wood, N.</param>
/// <param name="UnderClothN">On wood under glass cloth of 203 g/m² on both faces, N.</param>
/// <param name="ClothTearsN">At which that cloth tears, N.</param>
internal sealed record DesignEdgeKnock(
    [property: JsonConverter(typeof(ThreeDigits))] double BareN,
    [property: JsonConverter(typeof(ThreeDigits))] double UnderClothN,
    [property: JsonConverter(typeof(ThreeDigits))] double ClothTearsN);

/// <summary>How one load case comes out.</summary>
/// <param name="Id">The case.</param>
/// <param name="ForceN">Its force, N.</param>
/// <param name="SideForceN">Its force sideways on the tip, N; 0 unless the case is a thrust.</param>
/// <param name="StressMPa">Stress where the safety factor is least, MPa.</param>
/// <param name="AtMm">Where that is, mm from the top of the grip.</param>
/// <param name="StrengthMPa">
/// Strength it is held against there, MPa: 5th percentile at the slope of the board's grain and of the taper together, times strengthShare.
/// </param>
/// <param name="MaxStressMPa">Greatest stress anywhere, MPa.</param>
/// <param name="MaxStressAtMm">Where that is, mm from the top of the grip.</param>
/// <param name="StrengthShare">Share of a five-minute test's strength that a load of this duration and number may use.</param>
/// <param name="SafetyFactor">Strength over stress where that is least.</param>
/// <param name="LeastSafetyFactor">The factor asked.</param>
/// <param name="SafetyFactorOnMean">Mean strength over stress.</param>
/// <param name="Source">Where force, share and factor come from.</param>
internal sealed record DesignLoadCase(
    string Id,
    [property: JsonConverter(typeof(Tenths))] double ForceN,
    [property: JsonConverter(typeof(Tenths))] double SideForceN,
    [property: JsonConverter(typeof(ThreeDigits))] double StressMPa,
    [property: JsonConverter(typeof(Hundredths))] double AtMm,
    [property: JsonConverter(typeof(ThreeDigits))] double StrengthMPa,
    [property: JsonConverter(typeof(ThreeDigits))] double MaxStressMPa,
    [property: JsonConverter(typeof(Hundredths))] double MaxStressAtMm,
    [property: JsonConverter(typeof(Thousandths))] double StrengthShare,
    [property: JsonConverter(typeof(Thousandths))] double SafetyFactor,
    [property: JsonConverter(typeof(Thousandths))] double LeastSafetyFactor,
    [property: JsonConverter(typeof(Thousandths))] double SafetyFactorOnMean,
    string Source);

/// <summary>How the paddle gives under a weight and rings when tapped.</summary>
/// <param name="BenchLoadN">Weight hung at the centre of pressure, hands as supports, N.</param>
/// <param name="BenchFlexMm">Deflection there, mm.</param>
/// <param name="TipDeflectionMm">Deflection of the tip, mm.</param>
/// <param name="FirstFrequencyHz">First bending frequency of the free paddle, Hz.</param>
internal sealed record DesignFlex(
    [property: JsonConverter(typeof(Tenths))] double BenchLoadN,
    [property: JsonConverter(typeof(Hundredths))] double BenchFlexMm,
    [property: JsonConverter(typeof(Hundredths))] double TipDeflectionMm,
    [property: JsonConverter(typeof(Hundredths))] double FirstFrequencyHz);

/// <summary>What the paddle does in the water and to the joints.</summary>
/// <param name="BladeAreaCm2">Area of one face of the blade, cm².</param>
/// <param name="AspectRatio">Blade length squared over area.</param>
/// <param name="CentreOfPressureMm">Resultant of an easy stroke's pressure, mm from the top of the grip.</param>
/// <param name="DragCoefficient">Steady drag coefficient: the low figure.</param>
/// <param name="DragCoefficientHigh">Drag coefficient measured on blades in a flume: the high figure.</param>
/// <param name="ForceN">Peak force of the easy stroke, N.</param>
/// <param name="MeanForceN">Its mean over the pull, N.</param>
/// <param name="TopHandForceN">Force on the top hand at the peak, N.</param>
/// <param name="LowerHandForceN">Force on the lower hand at the peak, N.</param>
/// <param name="LowerHandMomentNm">Bending moment at the lower hand at the peak, N·m.</param>
/// <param name="SlipSpeedMS">Speed of the blade through the water at the mean force, low coefficient, m/s.</param>
/// <param name="SlipSpeedLowMS">The same with the high coefficient, m/s.</param>
/// <param name="BoatSpeedMS">Boat speed for the efficiency, m/s.</param>
/// <param name="FroudeEfficiency">Share of the power that moves the boat, low coefficient: a comparison, not a prediction.</param>
/// <param name="FroudeEfficiencyHigh">The same with the high coefficient.</param>
/// <param name="LiftEnergyJ">Energy to lift the paddle once, J.</param>
/// <param name="LiftEnergyPerDayKJ">Energy to lift it through a day of strokes, kJ.</param>
/// <param name="ImmersionMm">Depth of water that covers the blade to the throat, mm.</param>
/// <param name="Families">The same blade area in each family's usual shape.</param>
internal sealed record DesignStroke(
    [property: JsonConverter(typeof(Tenths))] double BladeAreaCm2,
    [property: JsonConverter(typeof(Thousandths))] double AspectRatio,
    [property: JsonConverter(typeof(Hundredths))] double CentreOfPressureMm,
    [property: JsonConverter(typeof(Thousandths))] double DragCoefficient,
    [property: JsonConverter(typeof(Thousandths))] double DragCoefficientHigh,
    [property: JsonConverter(typeof(Tenths))] double ForceN,
    [property: JsonConverter(typeof(Tenths))] double MeanForceN,
    [property: JsonConverter(typeof(Tenths))] double TopHandForceN,
    [property: JsonConverter(typeof(Tenths))] double LowerHandForceN,
    [property: JsonConverter(typeof(Hundredths))] double LowerHandMomentNm,
    [property: JsonConverter(typeof(Thousandths))] double SlipSpeedMS,
    [property: JsonConverter(typeof(Thousandths))] double SlipSpeedLowMS,
    [property: JsonConverter(typeof(Thousandths))] double BoatSpeedMS,
    [property: JsonConverter(typeof(Thousandths))] double FroudeEfficiency,
    [property: JsonConverter(typeof(Thousandths))] double FroudeEfficiencyHigh,
    [property: JsonConverter(typeof(Hundredths))] double LiftEnergyJ,
    [property: JsonConverter(typeof(Tenths))] double LiftEnergyPerDayKJ,
    [property: JsonConverter(typeof(Tenths))] double ImmersionMm,
    IReadOnlyList<DesignFamily> Families);

/// <summary>A blade family at equal area.</summary>
/// <param name="Family">Family id.</param>
/// <param name="LengthMm">Blade length, mm.</param>
/// <param name="WidthMm">Blade width, mm.</param>
/// <param name="ArmMm">Lower hand to centre of pressure, mm.</param>
/// <param name="TopHandForceN">Force on the top hand at the peak, N.</param>
/// <param name="LowerHandForceN">Force on the lower hand at the peak, N.</param>
/// <param name="DragCoefficient">Steady drag coefficient.</param>
/// <param name="ImmersionMm">Depth of water that covers it, mm.</param>
internal sealed record DesignFamily(
    string Family,
    [property: JsonConverter(typeof(Tenths))] double LengthMm,
    [property: JsonConverter(typeof(Tenths))] double WidthMm,
    [property: JsonConverter(typeof(Tenths))] double ArmMm,
    [property: JsonConverter(typeof(Tenths))] double TopHandForceN,
    [property: JsonConverter(typeof(Tenths))] double LowerHandForceN,
    [property: JsonConverter(typeof(Thousandths))] double DragCoefficient,
    [property: JsonConverter(typeof(Tenths))] double ImmersionMm);

/// <summary>One figure held against its limit.</summary>
/// <param name="Id">Name of the check.</param>
/// <param name="Status"><c>pass</c>, <c>warn</c> or <c>fail</c>.</param>
/// <param name="Value">The figure.</param>
/// <param name="Limit">Its limit.</param>
/// <param name="Unit">Unit of both.</param>
/// <param name="Message">What it means, in plain words.</param>
/// <param name="Source">Where the limit comes from.</param>
internal sealed record DesignCheckResult(
    string Id,
    string Status,
    [property: JsonConverter(typeof(FourDigits))] double Value,
    [property: JsonConverter(typeof(FourDigits))] double Limit,
    string Unit,
    string Message,
    string Source);

/// <summary>Something that can hurt, and how not to be hurt.</summary>
/// <param name="Id">Name of the caution.</param>
/// <param name="Text">The caution.</param>
/// <param name="Source">Where it comes from.</param>
internal sealed record DesignCaution(string Id, string Text, string Source);
