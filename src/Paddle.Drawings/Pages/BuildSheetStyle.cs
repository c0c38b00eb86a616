namespace Paddle.Drawings.Pages;

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
