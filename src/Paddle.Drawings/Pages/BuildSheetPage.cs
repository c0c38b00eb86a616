using Paddle.Design;
using Paddle.Design.Build;

namespace Paddle.Drawings.Pages;

/// <summary>A build sheet to print and take to the bench, as one page that needs nothing else.</summary>
internal static class BuildSheetPage
{
    /// <param name="report">The design.</param>
    /// <returns>HTML that is well-formed XML too; no script, no reference to anything outside it.</returns>
    public static string Write(DesignReport report, BuildSheet sheet, DrawingContext context) => HtmlWriter.Page(
        BuildSheetContent.Title(sheet, context), BuildSheetStyle.Css, BuildSheetContent.Of(report, sheet, context), sheet.Outcome.IsTooWeak ? "too-weak" : null);
}

/// <summary>The one style sheet of a printed build sheet.</summary>
internal static class BuildSheetStyle
{
    /// <summary>The rules. No page size is named, so the sheet fills A4 and Letter alike: what is wide is set to the width of the paper,
    /// and nothing rests on its height. On a telephone pictures stand over their words and tables move in their frames.</summary>
    public const string Css = """

        @page { margin: 10mm; }
        * { box-sizing: border-box; }
        html { font: 10pt/1.35 Arial, Helvetica, "Liberation Sans", "DejaVu Sans Condensed", sans-serif; color: #000; background: #fff; }
        body { max-width: 190mm; margin: 0 auto; padding: 0 2mm; }
        h1 { font-size: 17pt; margin: 0 0 1mm; overflow-wrap: anywhere; }
        h2 { font-size: 12.5pt; margin: 4mm 0 1.5mm; border-bottom: 0.5mm solid #000; break-after: avoid; }
        p { margin: 0 0 1.2mm; }
        ul { margin: 0 0 1mm; padding-left: 4.5mm; }
        section { break-inside: avoid; }
        svg { display: block; width: 100%; height: auto; font-family: inherit; }
        .beside { display: grid; grid-template-columns: 43% 1fr; gap: 3mm; align-items: start; }
        .wide { overflow-x: auto; }
        table { width: 100%; border-collapse: collapse; margin: 1mm 0 2mm; font-variant-numeric: tabular-nums; }
        caption { break-after: avoid; text-align: left; font-weight: bold; padding: 0.6mm 0; }
        th, td { border: 0.2mm solid #777; padding: 0.5mm 1.2mm; text-align: left; vertical-align: top; }
        th { background: #f6efe2; font-weight: bold; }
        tbody th { background: none; font-weight: normal; }
        tr { break-inside: avoid; }
        .figures { font-size: 0.78em; line-height: 1.15; }
        .figures th, .figures td { text-align: right; white-space: nowrap; padding: 0.2mm 0.8mm; }
        .figures thead th { white-space: normal; }
        .room td { height: 9mm; white-space: nowrap; }
        .room td:nth-child(4), .room td:nth-child(5) { min-width: 26mm; }
        .expect, .stop { border: 0.3mm solid #000; padding: 0.8mm 1.6mm; }
        .stop { border-width: 0.8mm; font-weight: bold; }
        .check { list-style: "☐ "; }
        .notice { border: 1.2mm double #000; padding: 1.5mm 3mm; font-weight: bold; color: #8a0f0f; break-inside: avoid; }
        .notice h2 { border: 0; margin: 0 0 1mm; font-size: 14pt; }
        .too-weak section { border-left: 2.4mm double #000; padding-left: 3mm; }
        .small { font-size: 0.85em; line-height: 1.25; overflow-wrap: anywhere; }
        @media (max-width: 130mm) {
        .beside { display: block; } .wide > svg { min-width: 150mm; } .figures { font-size: 0.9em; } .figures th:first-child { position: sticky; left: 0; background: #fff; }
        .room { font-size: 0.85em; } .room th, .room td { padding: 0.5mm; } .room td { white-space: normal; height: auto; } .room td:nth-child(n) { min-width: 0; } }
        @media print {
        html { print-color-adjust: exact; font-size: 7.6pt; line-height: 1.17; } body { max-width: none; padding: 0; } .wide { overflow: visible; } p { margin-bottom: 0.6mm; }
        h2 { margin: 2mm 0 0.8mm; font-size: 10.5pt; } .beside { grid-template-columns: 38% 1fr; } .room td { height: 7.2mm; } .too-weak { font-size: 6.9pt; }
        .too-weak section { padding-left: 2mm; } p.notice { border-width: 0.8mm; padding: 0.5mm 1.5mm; } }

        """;
}
