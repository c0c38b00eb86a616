using System.Globalization;
using Paddle.Design.Build;
using Paddle.Design.Checks;
using Paddle.Drawings.Units;

namespace Paddle.Drawings.Pages;

/// <summary>The stages of the work on the printed sheet.</summary>
internal static class BuildSheetStages
{
    /// <summary>Every stage with its figures, its steps and its cautions.</summary>
    public static string All(IReadOnlyList<StageSheet> stages, DrawingUnits units) =>
        string.Concat(stages.Select((stage, i) => Stage(stages, i, units)));

    private static string Stage(IReadOnlyList<StageSheet> stages, int i, DrawingUnits units)
    {
        var stage = stages[i];
        return Html.Section(string.Concat(
            Html.Heading(2, $"{i + 1}. {stage.Title}"),
            Html.Paragraph(
                $"Expect {BuildSheetTables.Band(stage.MassG)} g, balancing at {BuildSheetTables.PlaceBand(stage.BalanceMm, units)} from the top of "
                + $"the grip. {stage.NextMove}", "expect"),
            Html.Paragraph(Allowance(stage.Allowance)),
            Html.Heading(3, "Mark and do"),
            Html.List(stage.Mark),
            Html.Heading(3, "Measure"),
            Html.List(stage.Measure),
            Html.Paragraph($"Stop when: {stage.StopWhen}", "stop"),
            Cautions(stages, i)));
    }

    // Printed in full where the danger first comes up and called back by name after that: eleven copies of a text are read by nobody.
    private static string Cautions(IReadOnlyList<StageSheet> stages, int i)
    {
        var fresh = stages[i].Cautions.Where(caution => First(stages, caution) == i);
        var known = stages[i].Cautions.Where(caution => First(stages, caution) < i)
            .Select(caution => string.Create(CultureInfo.InvariantCulture, $"{Name(caution)} (see stage {First(stages, caution) + 1})")).ToList();
        return Html.List(
            [
                .. known.Count > 0 ? [$"Again: {string.Join(", ", known)}."] : (string[])[],
                .. fresh.Select(caution => $"{Name(caution)}: {caution.Text} [{caution.Source}]"),
            ],
            "cautions");
    }

    private static int First(IReadOnlyList<StageSheet> stages, Caution caution)
    {
        var i = 0;
        while (stages[i].Cautions.All(other => other.Id != caution.Id)) i++;
        return i;
    }

    private static string Name(Caution caution) => caution.Id.Replace('-', ' ');

    private static string Allowance(StageAllowance left)
    {
        if (left.OutlineMm == 0) return "Nothing is left on: these are the designed sizes.";
        static string Face(double? mm) =>
            mm is { } known ? string.Create(CultureInfo.InvariantCulture, $"{known:0.0#} mm") : "the board's full thickness";
        return $"Left on: outside the line {Face(left.OutlineMm)}; each face of the blade {Face(left.BladeFaceMm)}, of the shaft "
            + $"{Face(left.ShaftFaceMm)}, of the grip {Face(left.GripFaceMm)}.";
    }
}
