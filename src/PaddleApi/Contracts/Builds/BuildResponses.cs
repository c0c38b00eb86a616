using Paddle.Design.Build;
using Paddle.Design.Finishing;
using Paddle.Design.Layout;
using PaddleApi.Contracts.Designs;

namespace PaddleApi.Contracts.Builds;

/// <summary>Turns a build sheet into the answer of the contract.</summary>
internal static class BuildResponses
{
    /// <summary>The answer.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="label">Name of the design, if it has one.</param>
    /// <param name="engineVersion">Version of the engine.</param>
    /// <param name="designCode">Code of the design.</param>
    /// <param name="links">Where to fetch it again.</param>
    /// <param name="inService">The paddle in use, or null where it is not asked.</param>
    /// <param name="onBoard">The paddle on the maker's own board, or null where it is not asked.</param>
    public static BuildResponse From(
        BuildSheet sheet, string? label, string engineVersion, string designCode, BuildLinks links, MoistureInService? inService, BoardLayout? onBoard)
    {
        var (blank, gauge, kerf) = (sheet.Blank, sheet.Gauge, sheet.Kerf);
        return new(
            engineVersion,
            designCode,
            links,
            label,
            DesignResponses.OutcomeName(sheet.Outcome),
            DesignResponses.UnmetAims(sheet.Outcome),
            new(blank.LengthMm, blank.WidthMm, blank.ThicknessMm, blank.EndTrimMm, blank.ThickestSectionMm, blank.OverMm, blank.IsOwn, blank.Stock),
            [.. sheet.Stages.Select(Stage)],
            [.. sheet.ShaftLines.Select(Line)],
            new(gauge.BetweenFencesMm, gauge.FirstPointMm, gauge.BetweenPointsMm, gauge.LastPointMm, gauge.LineErrorMm),
            [.. sheet.RoundOvers.Select(bit => new BuildRoundOver(bit.Name, bit.RadiusMm, bit.FlatLeftMm, bit.LeftAtCornerMm))],
            new(kerf.PlaceMm, kerf.DepthMm, kerf.LeftMm, kerf.Faces, kerf.OtherFaceDepthMm),
            [.. sheet.Sanding.Select(step => new BuildSanding(step.Zone, step.Grits, step.RemovesMm, step.Why, step.Source))],
            Finish(sheet.Finish),
            Laden(sheet.WithFinish),
            Tip(sheet.Tip, sheet.TipChosen),
            inService is null ? null : InService(inService),
            onBoard,
            sheet.Assumptions,
            sheet.GlueUp.Count > 0 ? sheet.GlueUp : null);
    }

    private static BuildStageSheet Stage(StageSheet stage)
    {
        var left = stage.Allowance;
        return new(
            stage.Id,
            stage.Title,
            new(left.OutlineMm, left.BladeFaceMm, left.ShaftFaceMm, left.GripFaceMm, left.FaceToleranceMm),
            Band(stage.MassG),
            Band(stage.BalanceMm),
            [
                .. stage.Stations.Select(station => new BuildStation(
                    station.Number, station.XMm, station.ThicknessMm, station.HalfBreadthMm, station.Mark.Length > 0 ? station.Mark : null)),
            ],
            stage.Mark,
            stage.Measure,
            stage.StopWhen,
            stage.NextMoveMm,
            stage.NextMove,
            [.. stage.Cautions.Select(caution => new DesignCaution(caution.Id, caution.Text, caution.Source))]);
    }

    private static BuildBand Band(StageFigure figure) => new(figure.Value, figure.Low, figure.High);

    private static BuildShaftLine Line(ShaftLine line) => new(
        line.Number,
        line.XMm,
        line.WidthMm,
        line.ThicknessMm,
        line.LineOnFaceMm,
        line.LineOnSideMm,
        line.ChamferDegrees,
        line.SixteenOnFaceMm,
        line.SixteenOnSideMm,
        line.SixteenOnCornerMm);

    private static BuildFinish Finish(FinishPlan plan) => new(
        1e4 * plan.VarnishAreaM2,
        1e4 * plan.OilAreaM2,
        plan.VarnishLitres,
        plan.OilLitres,
        plan.ThinnerLitres,
        plan.BuyVarnishLitres,
        plan.VarnishDryG,
        plan.OilDryG,
        plan.MaskingLineMm,
        [.. plan.Coats.Select(coat => new BuildCoat(
            coat.Number, coat.Finish, coat.Zone, coat.ThinnerPercent, coat.Litres, coat.StartDay, coat.WaitDays))],
        plan.ReadyDay,
        plan.Notes);

    private static BuildLaden Laden(Laden laden) => new(laden.MassG, laden.BalanceMm, laden.ShiftMm);

    private static BuildInService InService(MoistureInService use) => new(
        use.BuiltPercent,
        use.UsedPercent,
        [.. use.Sizes.Select(size => new BuildSizeChange(size.Id, size.BuiltMm, size.FlatSawnMm, size.QuarterSawnMm))],
        Laden(use.Service),
        use.Notes);

    private static BuildTip Tip(TipReinforcement tip, bool isChosen) =>
        new(isChosen, tip.LengthMm, tip.ClothGM2, tip.ClothAreaCm2, tip.AddedG, tip.ResinG, tip.ThicknessMm, Laden(tip.With));
}
