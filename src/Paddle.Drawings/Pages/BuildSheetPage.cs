using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Units;
using Paddle.Drawings.Views;

namespace Paddle.Drawings.Pages;

/// <summary>A build sheet to print and take to the bench, as one page that needs nothing else.</summary>
public static class BuildSheetPage
{
    /// <summary>Writes the page.</summary>
    /// <param name="report">The design.</param>
    /// <param name="sheet">Its build sheet.</param>
    /// <param name="context">Label, units and origin. Places and sizes in tables follow the units; sentences keep millimetres.</param>
    /// <returns>HTML that is well-formed XML too; no script, no reference to anything outside it.</returns>
    public static string Write(DesignReport report, BuildSheet sheet, DrawingContext context)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(context);
        var title = Html.Escape($"Build sheet: {context.Label}");
        return $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8" />
            <meta name="viewport" content="width=device-width" />
            <title>{title}</title>
            <style>{BuildSheetStyle.Css}</style>
            </head>
            <body>
            <h1>{title}</h1>
            {Body(report, sheet, context)}</body>
            </html>

            """.ReplaceLineEndings("\n");
    }

    private static string Body(DesignReport report, BuildSheet sheet, DrawingContext context) => string.Concat(
        Html.Paragraph(UnitsNote(context.Units)),
        SvgWriter.Write(OverviewView.Draw(report, context), scalable: true),
        Html.Heading(2, "Where you should be"),
        BuildSheetTables.Overview(sheet, context.Units),
        Html.Section(Html.Heading(2, "The board") + BuildSheetTables.Board(sheet, context.Units)),
        BuildSheetStages.All(sheet.Stages, context.Units),
        Html.Heading(2, "Numbered stations"),
        BuildSheetTables.Stations(sheet, context.Units),
        Html.Heading(2, "Shaft and grip"),
        BuildSheetTables.ShaftLines(sheet, context.Units),
        BuildSheetTables.Tools(sheet, context.Units),
        Html.Heading(2, "Sanding and finish"),
        BuildSheetTables.Sanding(sheet),
        BuildSheetTables.Coats(sheet, context.Units),
        Html.Section(Html.Heading(2, "What the figures rest on") + Html.List(sheet.Assumptions)),
        Origin(context));

    private static string UnitsNote(DrawingUnits units) => units == DrawingUnits.Inch
        ? "Tables are in inches, sizes of wood rounded up to the next fraction; sentences are in millimetres. The picture is not to scale."
        : "All lengths are in millimetres. The picture is not to scale.";

    private static string Origin(DrawingContext context) => Html.Paragraph(
        $"Engine {context.EngineVersion}.{(context.DesignCode is { } code ? $" Design code {code}" : "")}", "small");
}
