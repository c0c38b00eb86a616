using System.Globalization;
using Paddle.Design.Build;
using Paddle.Design.Checks;
using Paddle.Design.Units;
using Paddle.Drawings.Views;

namespace Paddle.Drawings.Pages;

/// <summary>The stages of the work on the printed sheet.</summary>
internal static class BuildSheetStages
{
    /// <summary>Every stage with its figures, its steps and its cautions.</summary>
    public static string All(BuildSheet sheet, DrawingUnits units)
    {
        // A sheet is taken apart at the bench: each stage of a paddle that is too weak says so for itself.
        var notice = sheet.Outcome.IsTooWeak ? Html.Paragraph($"{OutcomeNotice.TooWeak} {sheet.Outcome.Unmet[0].Advice}", "notice") : "";
        return string.Concat(sheet.Stages.Select((_, i) => Stage(sheet.Stages, i, notice, units)));
    }

    private static string Stage(IReadOnlyList<StageSheet> stages, int i, string notice, DrawingUnits units)
    {
        var stage = stages[i];
        return Html.Section(string.Concat(
            Html.Heading(2, BuildSheetTables.Numbered(i, stage.Title)),
            notice,
            Html.Paragraph(
                $"Expect {BuildSheetTables.MassBand(stage.MassG, units)}, balancing {BuildSheetTables.PlaceBand(stage.BalanceMm, units)} from the top of "
                + $"the grip. {stage.NextMove}", "expect"),
            Html.Paragraph(Allowance(stage, units)),
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
        var known = stages[i].Cautions.Where(caution => First(stages, caution) < i).GroupBy(Name)
            .Select(group => string.Create(CultureInfo.InvariantCulture, $"{group.Key.ToLowerInvariant()} (see stage {First(stages, group.First()) + 1})")).ToList();
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

    // The names that a maker reads are not those that a program does.
    private static string Name(Caution caution) => caution.Id switch
    {
        "design-aid" => "A calculation, no proof",
        "first-use" => "First launch",
        "stock" => "The stock",
        "band-saw" => "Band saw and jigsaw",
        "power-plane" => "Power plane",
        _ when caution.Id.StartsWith("wood-dust", StringComparison.Ordinal) => "Wood dust",
        _ when char.IsAsciiDigit(caution.Id[^1]) => "This wood",
        _ => Sentence(caution.Id.Replace('-', ' ')),
    };

    private static string Sentence(string words) => $"{char.ToUpperInvariant(words[0])}{words[1..]}";

    private static string Allowance(StageSheet stage, DrawingUnits units)
    {
        var left = stage.Allowance;
        if (stage.Stage == BuildStage.Finished) return "The wood is as it was sanded; only the finish is added.";
        if (left.OutlineMm == 0) return "Nothing is left on: these are the designed sizes.";
        string Face(double? mm) => mm is { } known ? DrawnLength.Shaving(known, units) : "the board's full thickness";
        return $"Left on: outside the line {Face(left.OutlineMm)}; each face of the blade {Face(left.BladeFaceMm)}, of the shaft "
            + $"{Face(left.ShaftFaceMm)}, of the grip {Face(left.GripFaceMm)}.";
    }
}
