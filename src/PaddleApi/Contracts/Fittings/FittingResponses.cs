using Paddle.Design;
using Paddle.Design.Fitting;
using Paddle.Design.Request;

namespace PaddleApi.Contracts.Fittings;

/// <summary>Turns the engine's advice into the answer of the contract.</summary>
internal static class FittingResponses
{
    private const double Mm2PerCm2 = 100;

    /// <summary>The answer.</summary>
    /// <param name="advice">The advice.</param>
    public static FittingResponse From(FittingAdvice advice)
    {
        return new(
            EngineVersion.Text,
            advice.OverallLengthMm,
            advice.HandSpacingMm,
            advice.FreeboardMm,
            Names.Of(advice.Duty),
            Blade(advice),
            new(
                advice.Shaft.WidthMm, advice.Shaft.ThicknessMm, advice.Shaft.EquivalentDiameterMm, advice.Shaft.LowMm, advice.Shaft.HighMm),
            Grip(advice.Grip),
            new(advice.Immersion.DepthMm, Math.Round(advice.Immersion.NeededMm), advice.Immersion.Fits, Math.Round(advice.Immersion.ImmersedShare, 3)),
            Stroke(advice.Water),
            advice.Methods,
            advice.Spread,
            advice.Reasons,
            [.. advice.Alternatives.Select(other => new FittingAlternativeDesign(other.Id, other.Reason, other.Design.ToRequest()))],
            advice.Cautions,
            advice.Design.ToRequest());
    }

    private static FittedBlade Blade(FittingAdvice advice) => new(
        advice.Blade.Family.Id,
        advice.Blade.MadeLengthMm,
        advice.Blade.MadeWidthMm,
        advice.Blade.BendDegrees,
        Area(advice.Blade.AreaMm2),
        Area(advice.Blade.WantedAreaMm2));

    private static FittedGrip Grip(GripSize grip) => new(
        Names.Of(grip.Style), grip.WidthMm, grip.LengthMm, Names.Of(grip.Faces), grip.TopHandMm, grip.Reason);

    private static FittedStroke Stroke(BladeInWater water) => new(
        Math.Round(water.Demand.BodyMassKg, 1),
        water.Demand.StrokesPerMinute,
        Math.Round(water.StrokesPerDay),
        Math.Round(water.Demand.BoatSpeedMS, 3),
        Math.Round(water.Demand.HullDragN, 1),
        Math.Round(water.Demand.MeanPullN, 1),
        Math.Round(water.Demand.PullSeconds, 3),
        Range(water.DragCoefficientLow, water.DragCoefficientHigh),
        Range(water.SlipAtHighCoefficientMS, water.SlipAtLowCoefficientMS),
        Range(water.EfficiencyAtLowCoefficient, water.EfficiencyAtHighCoefficient));

    private static double Area(double areaMm2) => Math.Round(areaMm2 / Mm2PerCm2, 1);

    private static ValueRange Range(double least, double most) => new(Math.Round(least, 3), Math.Round(most, 3));
}
