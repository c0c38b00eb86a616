using System.Text.Json.Serialization.Metadata;
using Paddle.Design.Balance;
using Paddle.Design.Build;
using Paddle.Design.Checks;
using Paddle.Design.Finishing;
using Paddle.Design.Fitting;
using Paddle.Design.Laminating;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Stroke;
using Paddle.Design.Uncertainty;
using Paddle.Design.Wood;
using PaddleApi.Contracts.Builds;

namespace PaddleApi.Contracts.Numbers;

/// <summary>
/// How far the numbers of answers are printed, said once: by the unit that a member's name ends in, as far as the maker's instruments show it.
/// Requests, what a caller stated, figures as books print them and what the engine has rounded itself are printed as they are.
/// </summary>
internal static class PrintedNumbers
{
    private static readonly RoundedNumber Whole = new(0), Tenths = new(1), Hundredths = new(2), Thousandths = new(3), TenThousandths = new(4);
    private static readonly RoundedNumber ThreeDigits = new(3, areSignificant: true), FourDigits = new(4, areSignificant: true);

    // Folders of the engine whose records are served as they are, and folders of answers of our own.
    private static readonly HashSet<string> Reports =
    [
        .. new[] { "Outline", "Fitting", "Solid", "Finishing", "Wood", "Strength", "Stroke", "Balance", "Laminating", "Checks", "Build", "Uncertainty" }.Select(step => "Paddle.Design." + step),
        .. new[] { "Designs", "Builds", "Boards", "Uncertainties", "SizeRuns" }.Select(topic => "PaddleApi.Contracts." + topic),
    ];

    // A caliper shows a tenth of a millimetre; what is held to less than that, or adds up, is printed to a hundredth.
    private static readonly HashSet<string> ShopFolders = ["Paddle.Design.Build", "Paddle.Design.Finishing", "Paddle.Design.Laminating", "PaddleApi.Contracts.Builds"];
    private static readonly HashSet<string> FineMm =
    [
        nameof(StageAllowance.OutlineMm), nameof(StageAllowance.BladeFaceMm), nameof(StageAllowance.ShaftFaceMm), nameof(StageAllowance.GripFaceMm),
        nameof(StageAllowance.FaceToleranceMm), nameof(SparGauge.BetweenFencesMm), nameof(SparGauge.FirstPointMm), nameof(SparGauge.BetweenPointsMm),
        nameof(SparGauge.LastPointMm), nameof(SparGauge.LineErrorMm), nameof(RoundOverChoice.RadiusMm), nameof(RoundOverChoice.FlatLeftMm),
        nameof(RoundOverChoice.LeftAtCornerMm), nameof(SandingStep.RemovesMm), nameof(SizeChange.BuiltMm), nameof(SizeChange.FlatSawnChangeMm),
        nameof(SizeChange.QuarterSawnChangeMm), nameof(Removal.PerFaceMm), nameof(Corrected.BenchFlexMm), nameof(LaminateComparison.BalanceOffsetMm),
    ];

    private static readonly Dictionary<string, RoundedNumber> ByUnit = new(StringComparer.Ordinal)
    {
        ["mm"] = Hundredths,
        ["g"] = Tenths,
        ["N"] = Tenths,
        ["cm²"] = Tenths,
        ["cm³"] = Tenths,
        ["kg/m³"] = Tenths,
        ["°"] = Tenths,
        ["N·m"] = Hundredths,
        ["Hz"] = Hundredths,
        ["J"] = Hundredths,
        ["%"] = Hundredths,
        ["MPa"] = ThreeDigits,
        ["kg·m²"] = FourDigits,
    };

    private static readonly Dictionary<string, RoundedNumber> ByName = new(StringComparer.Ordinal)
    {
        [nameof(FittedImmersion.NeededMm)] = Whole,
        [nameof(FittedStroke.StrokesPerDay)] = Whole,
        [nameof(FleetSize.Share)] = TenThousandths,
        [nameof(SizeRunAdvice.Within25MmShare)] = TenThousandths,
        [nameof(SizeRunAdvice.Within50MmShare)] = TenThousandths,
        [nameof(BindingLimit.Gain)] = ThreeDigits,
        [nameof(WoodInUse.SlopeOfGrain)] = FourDigits,
        [nameof(StrokeFigures.LiftEnergyPerDayKJ)] = Tenths,
        [nameof(StrokeFigures.ImmersionMm)] = Tenths,
        [nameof(LaminateReport.SidesDifferPercent)] = Tenths,
        [nameof(SwellingMismatch.StrainPercent)] = Thousandths,
        [nameof(LaminateComparison.BoardFeet)] = Hundredths,
        [nameof(LaminateComparison.WoodCost)] = Hundredths,
        [nameof(Adhesive.SpreadGM2)] = Tenths,
        [nameof(Adhesive.CureHours)] = Tenths,
        [nameof(Adhesive.ClampLeastMPa)] = Hundredths,
        [nameof(Adhesive.ClampMostMPa)] = Hundredths,
        [nameof(TipReinforcement.ClothGM2)] = Tenths,
        [nameof(Coat.ThinnerPercent)] = Tenths,
        [nameof(Coat.StartDay)] = Tenths,
        [nameof(Coat.WaitDays)] = Tenths,
        [nameof(FinishPlan.ReadyDay)] = Tenths,
        [nameof(UncertainFigure.Mean)] = FourDigits,
        [nameof(UncertainFigure.Designed)] = FourDigits,
        [nameof(UncertainFigure.StandardDeviation)] = FourDigits,
        [nameof(UncertainFigure.P05)] = FourDigits,
        [nameof(UncertainFigure.P50)] = FourDigits,
        [nameof(UncertainFigure.P95)] = FourDigits,
        [nameof(UncertainCheck.FailChance)] = FourDigits,
        [nameof(UncertainCheck.BreakChance)] = FourDigits,
        [nameof(UncertainCheck.FailChanceStandardError)] = ThreeDigits,
        [nameof(UncertainCheck.BreakChanceStandardError)] = ThreeDigits,
        [nameof(BoardFigure.StandardUncertainty)] = ThreeDigits,
        [nameof(BoardFigure.At12Percent)] = FourDigits,
        [nameof(BoardFigure.ZScore)] = Hundredths,
        [nameof(Boards.PlainBeamFigure.TrueOverPlainBeam)] = FourDigits,
        [nameof(Boards.MeasuredWood.MeasuredDensityKgM3)] = FourDigits,
        [nameof(Boards.MeasuredWood.MeasuredModulusMPa)] = FourDigits,
    };

    /// <summary>Gives the numbers of a record that is served their printed form.</summary>
    public static void Round(JsonTypeInfo type)
    {
        if (type.Kind != JsonTypeInfoKind.Object || !Reports.Contains(type.Type.Namespace ?? "") || IsStated(type.Type)) return;
        foreach (var member in type.Properties)
        {
            if (member.PropertyType == typeof(double)) member.CustomConverter = Of(type.Type, Named(member));
            else if (member.PropertyType == typeof(double?)) member.CustomConverter = Of(type.Type, Named(member)).OrNull;
        }
    }

    /// <summary>How a number of a record is printed.</summary>
    internal static RoundedNumber Of(Type record, string member)
    {
        if (record == typeof(PaddleSizes)) return Thousandths; // 1/32 in is 0.794 mm
        if (record == typeof(KnockOnEdge)) return ThreeDigits;
        if (record == typeof(StageFigure) || record == typeof(CorrectionDoubt)) return Tenths;
        if ((record == typeof(FamilyFigures) || record == typeof(MethodResult) || record == typeof(RuleSpread)) && UnitNames.Of(member) == "mm") return Tenths;
        if (record == typeof(Facing) || (record == typeof(FacingReport) && member == nameof(FacingReport.ThicknessMm))) return Hundredths;
        if (record == typeof(TipReinforcement) && member == nameof(FacingReport.ThicknessMm)) return Hundredths;
        if ((record == typeof(CorrectionRemoval) || record == typeof(ZoneThickness)) && member == nameof(ZoneThickness.ThicknessMm)) return Hundredths;
        if (member is nameof(DesignCheck.Value) or nameof(DesignCheck.Limit)) return FourDigits;
        if (ByName.TryGetValue(member, out var known)) return known;
        if (UnitNames.Of(member) is not { } unit) return Thousandths;
        return unit == "mm" && ShopFolders.Contains(record.Namespace!) && !FineMm.Contains(member) ? Tenths : ByUnit.GetValueOrDefault(unit, Thousandths);
    }

    private static bool IsStated(Type record) => record == typeof(FigureSource) || record.Name.EndsWith("Request", StringComparison.Ordinal);

    // The record's own name of the member: the reader's is in camel case.
    private static string Named(JsonPropertyInfo member) => (member.AttributeProvider as System.Reflection.MemberInfo)?.Name ?? member.Name;
}
