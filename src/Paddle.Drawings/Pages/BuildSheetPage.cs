using System.Text.Encodings.Web;
using System.Text.Unicode;
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

/// <summary>Pieces of a page as text. Only <see cref="Escape"/> turns words into markup, and every piece that takes words calls it; the
/// rest take markup made here.</summary>
internal static class Html
{
    private static readonly HtmlEncoder Encoder = HtmlEncoder.Create(UnicodeRanges.All);

    /// <summary>Words as markup: nothing in them is taken for a tag.</summary>
    public static string Escape(string words) => Encoder.Encode(words);

    public static string Paragraph(string words, string? css = null) => $"<p{Class(css)}>{Escape(words)}</p>\n";

    /// <summary>A heading of level 2 or 3.</summary>
    public static string Heading(int level, string words) => $"<h{level}>{Escape(words)}</h{level}>\n";

    /// <summary>A list of words; nothing for none.</summary>
    public static string List(IEnumerable<string> items, string? css = null)
    {
        var lines = string.Concat(items.Select(item => $"<li>{Escape(item)}</li>\n"));
        return lines.Length == 0 ? "" : $"<ul{Class(css)}>\n{lines}</ul>\n";
    }

    /// <summary>A table of words with one row of headings that repeats on every printed page.</summary>
    public static string Table(string caption, IReadOnlyList<string> headings, IEnumerable<IReadOnlyList<string>> rows, string? css = null)
    {
        var head = string.Concat(headings.Select(heading => $"<th scope=\"col\">{Escape(heading)}</th>"));
        var body = string.Concat(rows.Select(row => $"<tr>{string.Concat(row.Select(cell => $"<td>{Escape(cell)}</td>"))}</tr>\n"));
        return $"<table{Class(css)}>\n<caption>{Escape(caption)}</caption>\n<thead><tr>{head}</tr></thead>\n<tbody>\n{body}</tbody>\n</table>\n";
    }

    /// <summary>Markup held together where a page ends, as far as it fits on one.</summary>
    public static string Section(string markup, string? css = null) => $"<section{Class(css)}>\n{markup}</section>\n";

    private static string Class(string? css) => css is null ? "" : $" class=\"{css}\"";
}

/// <summary>The one style sheet of a printed build sheet.</summary>
internal static class BuildSheetStyle
{
    /// <summary>The rules. No page size is named, so the sheet fills A4 and Letter alike: what is wide is set to the width of the paper,
    /// and nothing rests on its height.</summary>
    public const string Css = """

        @page { margin: 12mm; }
        * { box-sizing: border-box; }
        html { font: 10pt/1.35 Arial, Helvetica, "Liberation Sans", "DejaVu Sans", sans-serif; color: #000; background: #fff; }
        body { max-width: 190mm; margin: 0 auto; padding: 0 2mm; }
        h1 { font-size: 17pt; margin: 0 0 1mm; }
        h2 { font-size: 12.5pt; margin: 5mm 0 1.5mm; border-bottom: 0.5mm solid #000; break-after: avoid; }
        h3 { font-size: 9pt; margin: 2mm 0 0.5mm; text-transform: uppercase; letter-spacing: 0.06em; break-after: avoid; }
        p { margin: 0 0 1.5mm; }
        ul { margin: 0 0 1.5mm; padding-left: 5mm; }
        section { break-inside: avoid; }
        svg { display: block; width: 100%; height: auto; max-height: 150mm; margin: 2mm auto; }
        table { width: 100%; border-collapse: collapse; margin: 1mm 0 3mm; font-variant-numeric: tabular-nums; }
        caption { break-after: avoid; text-align: left; font-weight: bold; padding: 1mm 0; }
        th, td { border: 0.2mm solid #777; padding: 0.6mm 1.2mm; text-align: left; vertical-align: top; }
        th { background: #eee; font-weight: bold; }
        tr { break-inside: avoid; }
        .figures { font-size: 7.5pt; line-height: 1.2; }
        .figures th, .figures td { text-align: right; white-space: nowrap; padding: 0.3mm 0.8mm; }
        .figures tr:nth-child(even) td { background: #f5f5f5; }
        .figures th { white-space: normal; }
        .stations td:nth-child(3) { text-align: left; }
        .overview td { height: 9mm; }
        .overview td:nth-child(4), .overview td:nth-child(5) { min-width: 24mm; }
        .expect, .stop { border: 0.4mm solid #000; padding: 1mm 2mm; }
        .stop { border-width: 0.8mm; font-weight: bold; }
        .cautions { border-left: 1.2mm solid #000; list-style: none; padding-left: 3mm; font-size: 8pt; }
        .notice { border: 1.2mm double #000; padding: 1.5mm 3mm; font-weight: bold; color: #8a0f0f; break-inside: avoid; }
        .notice h2 { border: 0; margin: 0 0 1mm; font-size: 14pt; }
        .too-weak section { border-left: 2.4mm double #000; padding-left: 3mm; }
        .small { font-size: 8pt; overflow-wrap: anywhere; }
        @media print { html { print-color-adjust: exact; } }

        """;
}
