using Paddle.Design;
using Paddle.Design.Balance;
using Paddle.Design.Checks;
using Paddle.Design.Finishing;
using Paddle.Design.Outline;
using Paddle.Design.Request;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Stroke;
using Paddle.Design.Water;

namespace PaddleApi.Contracts.Designs;

/// <summary>Turns a report into the answer of the contract.</summary>
internal static class DesignResponses
{
    /// <summary>The answer to a request.</summary>
    /// <param name="resolved">The request read.</param>
    /// <param name="report">Its report.</param>
    /// <param name="engineVersion">Version of the engine.</param>
    /// <param name="designCode">Code of the design.</param>
    /// <param name="links">Where to fetch it again.</param>
    public static DesignResponse From(
        ResolvedDesign resolved, DesignReport report, string engineVersion, string designCode, DesignLinks links) => new(
        engineVersion,
        designCode,
        links,
        resolved.Request,
        Lengths(report.Specification.Form.Places),
        Sizes(report.Sizes),
        Stations(report.Stations),
        Wood(report),
        Mass(report.Mass, report.Finished),
        Balance(report),
        Strength(report.Strength),
        new(Loads.BenchN, report.Flex.BenchFlexMm, report.Flex.TipDeflectionMm, report.Flex.FirstFrequencyHz),
        Stroke(report.Stroke),
        OutcomeName(report.Outcome),
        UnmetAims(report.Outcome),
        Map(report.Checks, Check),
        Map(report.Cautions, caution => new DesignCaution(caution.Id, caution.Text, caution.Source)),
        DesignConstruction.Of(report));

    /// <summary>How all aims came out, in a word.</summary>
    internal static string OutcomeName(DesignOutcome outcome) => outcome.IsMet ? "met" : "closest";

    /// <summary>The aims missed.</summary>
    internal static IReadOnlyList<DesignUnmetAim> UnmetAims(DesignOutcome outcome) =>
        Map(outcome.Unmet, aim => new DesignUnmetAim(aim.Code, aim.Value, aim.Limit, aim.Unit, aim.Message, aim.Advice));

    private static DesignLengths Lengths(PaddlePlaces places) => new(
        places.OverallMm, places.ThroatMm, places.BladeMm, places.TopHandMm, places.LowerHandMm, places.ThroatMm);

    private static DesignSizes Sizes(PaddleSizes sizes) => new(
        sizes.ShaftWidthMm,
        sizes.ShaftThicknessMm,
        sizes.UpperWidthMm,
        sizes.UpperThicknessMm,
        sizes.ThroatThicknessMm,
        sizes.MiddleThicknessMm,
        sizes.TipThicknessMm,
        sizes.EdgeThicknessMm,
        sizes.GripThicknessMm);

    private static DesignStation[] Stations(PaddleSolid solid)
    {
        var stations = new DesignStation[solid.Count];
        var patterns = solid.Grid.Patterns;
        for (var i = 0; i < stations.Length; i++)
        {
            stations[i] = new(
                solid.X[i],
                solid.HalfWidth[i],
                solid.HalfThickness[i],
                solid.EdgeHalfThickness[i],
                patterns[i].Moments.P,
                patterns[i].Moments.R,
                solid.CentreOffsetMm(i));
        }

        return stations;
    }

    private static DesignWood Wood(DesignReport report)
    {
        var wood = report.Specification.Wood;
        return new(
            wood.SpeciesId,
            wood.MoisturePercent,
            wood.SlopeOfGrain,
            wood.DensityKgM3,
            wood.ModulusMPa,
            wood.ApparentModulusMPa,
            wood.ShearModulusMPa,
            wood.BendingStrengthMPa,
            wood.MeanBendingStrengthMPa,
            wood.CompressionStrengthMPa,
            wood.CrossGrainStrengthMPa,
            wood.Sources);
    }

    private static DesignMass Mass(MassProperties mass, FinishedMass finished)
    {
        var densityKgM3 = 1000 * mass.TotalG / mass.VolumeCm3;
        return new(
            mass.TotalG,
            mass.GripG,
            mass.ShaftG,
            mass.BladeG,
            mass.VolumeCm3,
            densityKgM3,
            mass.CentreOfMassMm,
            mass.InertiaCentreKgM2,
            mass.InertiaTopHandKgM2,
            mass.InertiaLowerHandKgM2,
            mass.SurfaceCm2,
            mass.GripSurfaceCm2,
            mass.ShaftSurfaceCm2,
            mass.BladeSurfaceCm2,
            densityKgM3 < FreshWater.DensityKgM3(FreshWater.DefaultTemperatureC),
            finished.Load.MassG,
            finished.MassG,
            finished.CentreOfMassMm,
            finished.InertiaCentreKgM2,
            finished.InertiaTopHandKgM2,
            finished.InertiaLowerHandKgM2);
    }

    private static DesignBalance Balance(DesignReport report)
    {
        var balance = report.Balance;
        return new(
            balance.TargetMm,
            balance.ActualMm,
            balance.OffsetMm,
            balance.BareMm,
            balance.ToleranceMm,
            balance.Achieved,
            balance.Ballast.G,
            balance.Ballast.AtMm,
            Map(balance.BindingLimits, limit => new DesignBindingLimit(limit.Id, limit.Unit, limit.Gain, limit.GainUnit)),
            [.. report.Outcome.Unmet.Where(aim => aim.Code == "balance").Select(aim => aim.Advice)]);
    }

    private static DesignStrength Strength(StrengthCheck strength)
    {
        var governing = strength.Governing;
        return new(
            Map(strength.Cases, result => new DesignLoadCase(
                result.Case.Id,
                result.Case.ForceN,
                result.Case.SideForceN,
                result.StressMPa,
                result.AtMm,
                result.StrengthMPa,
                result.MaxStressMPa,
                result.MaxStressAtMm,
                result.Case.StrengthShare,
                result.SafetyFactor,
                result.Case.LeastFactor,
                result.SafetyFactorOnMean,
                result.Case.Source)),
            governing.Case.Id,
            governing.SafetyFactor,
            strength.BucklingLoadN,
            new(strength.Knock.BareN, strength.Knock.UnderClothN, strength.Knock.ClothTearsN),
            DutyRule.Basis);
    }

    private static DesignStroke Stroke(StrokeFigures stroke) => new(
        stroke.BladeAreaCm2,
        stroke.AspectRatio,
        stroke.CentreOfPressureMm,
        stroke.DragCoefficient,
        stroke.DragCoefficientHigh,
        stroke.ForceN,
        stroke.MeanForceN,
        stroke.TopHandForceN,
        stroke.LowerHandForceN,
        stroke.LowerHandMomentNm,
        stroke.SlipSpeedMS,
        stroke.SlipSpeedLowMS,
        stroke.BoatSpeedMS,
        stroke.FroudeEfficiency,
        stroke.FroudeEfficiencyHigh,
        stroke.LiftEnergyJ,
        stroke.LiftEnergyPerDayKJ,
        stroke.ImmersionMm,
        Map(stroke.Families, family => new DesignFamily(
            family.Family,
            family.LengthMm,
            family.WidthMm,
            family.ArmMm,
            family.TopHandForceN,
            family.LowerHandForceN,
            family.DragCoefficient,
            family.ImmersionMm)));

    private static DesignCheckResult Check(DesignCheck check) => new(
        check.Id, StatusName(check.Status), check.Value, check.Limit, check.Unit, check.Message, check.Source);

    private static string StatusName(CheckStatus status) => status switch
    {
        CheckStatus.Pass => "pass",
        CheckStatus.Warn => "warn",
        _ => "fail",
    };

    private static TTo[] Map<TFrom, TTo>(IReadOnlyList<TFrom> from, Func<TFrom, TTo> map)
    {
        var to = new TTo[from.Count];
        for (var i = 0; i < to.Length; i++) to[i] = map(from[i]);
        return to;
    }
}
