using Paddle.Design;
using Paddle.Design.Boards;
using Paddle.Design.Build;
using Paddle.Design.Units;
using Paddle.Design.Wood;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;

namespace Paddle.Drawings.Pages;

/// <summary>A build sheet to print and take to the bench, as one page that needs nothing else.</summary>
internal static class BuildSheetPage
{
    /// <param name="report">The design.</param>
    /// <returns>HTML that is well-formed XML too; no script, no reference to anything outside it.</returns>
    public static string Write(DesignReport report, BuildSheet sheet, DrawingContext context)
    {
        context = context with { Units = sheet.Units };
        var isTooWeak = sheet.Outcome.IsTooWeak;
        var title = Html.Escape($"{(isTooWeak ? "NOT TO BE BUILT. " : "")}Build sheet: {context.Label}");
        return $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8" />
            <meta name="viewport" content="width=device-width" />
            <title>{title}</title>
            <style>{BuildSheetStyle.Css}</style>
            </head>
            <body{(isTooWeak ? " class=\"too-weak\"" : "")}>
            <h1>{title}</h1>
            {Body(report, sheet, context)}</body>
            </html>

            """.ReplaceLineEndings("\n");
    }

    private static string Body(DesignReport report, BuildSheet sheet, DrawingContext context) => string.Concat(
        Notice(report, context.Units),
        Html.Paragraph(UnitsNote(context.Units)),
        SvgWriter.Write(OverviewView.Draw(report, context), scalable: true),
        Html.Section(Html.Heading(2, "Where you should be") + BuildSheetTables.Overview(sheet, context.Units)),
        Html.Section(Html.Heading(2, "Which board") + BuildSheetTables.Board(sheet, Need(report, sheet), context.Units)),
        BuildSheetStages.All(sheet, context.Units),
        Html.Heading(2, "Numbered stations"),
        BuildSheetTables.Stations(sheet, context.Units),
        Html.Heading(2, "Shaft and grip"),
        BuildSheetTables.ShaftLines(sheet, context.Units),
        BuildSheetTables.Tools(sheet, context.Units),
        Html.Heading(2, "Sanding and finish"),
        BuildSheetTables.Sanding(sheet, context.Units),
        BuildSheetTables.Coats(sheet, context.Units),
        Html.Section(Html.Heading(2, "What the figures rest on") + Html.List(sheet.Assumptions)),
        Origin(context));

    private static string Notice(DesignReport report, DrawingUnits units)
    {
        var lines = OutcomeNotice.Lines(report, units);
        return lines.Count == 0 ? "" : Html.Section(Html.Heading(2, lines[0]) + Html.List(lines.Skip(1)), "notice");
    }

    private static BoardNeed Need(DesignReport report, BuildSheet sheet) => BoardNeed.For(
        sheet.Blank.ThickestSectionMm, WoodCatalogue.Find(report.Specification.Wood.SpeciesId)?.IsSoftwood ?? false);

    private static string UnitsNote(DrawingUnits units) => units == DrawingUnits.Inch
        ? "All lengths are in inches, sizes of wood rounded up to the next fraction; weights in ounces, grams beside. The picture is not to scale."
        : "All lengths are in millimetres. The picture is not to scale.";

    private static string Origin(DrawingContext context) => Html.Paragraph(
        $"Engine {context.EngineVersion}.{(context.DesignCode is { } code ? $" Design code {code}" : "")}", "small");
}
