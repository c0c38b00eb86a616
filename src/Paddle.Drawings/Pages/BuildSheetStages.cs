using Paddle.Design.Build;
using Paddle.Drawings.Units;

namespace Paddle.Drawings.Pages;

/// <summary>One stage of the work on the printed sheet.</summary>
internal static class BuildSheetStages
{
    /// <summary>The stage with its figures, its steps and its cautions.</summary>
    public static string Stage(StageSheet stage, int number, DrawingUnits units) => Html.Section(string.Concat(
        Html.Heading(2, $"{number}. {stage.Title}"),
        Html.Paragraph(
            $"Expect {BuildSheetTables.Band(stage.MassG)} g, balancing at {BuildSheetTables.PlaceBand(stage.BalanceMm, units)} from the top of the "
            + $"grip. {stage.NextMove}", "expect"),
        Html.Paragraph(Allowance(stage.Allowance, units)),
        Html.Heading(3, "Mark and do"),
        Html.List(stage.Mark),
        Html.Heading(3, "Measure"),
        Html.List(stage.Measure),
        Html.Paragraph($"Stop when: {stage.StopWhen}", "stop"),
        Html.List(stage.Cautions.Select(caution => $"{caution.Text} [{caution.Source}]"), "cautions small")));

    private static string Allowance(StageAllowance left, DrawingUnits units)
    {
        string Face(double? mm) => mm is { } known ? DrawnLength.Text(known, units, LengthRounding.Up) : "the board's full thickness";
        return $"Left on: outside the line {Face(left.OutlineMm)}; each face of the blade {Face(left.BladeFaceMm)}, of the shaft "
            + $"{Face(left.ShaftFaceMm)}, of the grip {Face(left.GripFaceMm)}.";
    }
}
