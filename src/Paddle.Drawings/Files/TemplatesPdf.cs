using System.Globalization;
using Paddle.Design;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;

namespace Paddle.Drawings.Files;

/// <summary>The half template and the section cards at true scale, to print: on sheets that overlap, or on one sheet for a roll. The first
/// page shows how the tiles lie and carries a square to measure; every page names itself.</summary>
/// <remarks>Paper: ISO 216 and the inch formats. A viewer is asked not to scale (PrintScaling None, ISO 32000, from memory).</remarks>
internal sealed class TemplatesPdf : IDesignFile
{
    private const double Margin = TilePlan.UsualMarginMm;
    private const double CutMarkMm = 6;
    private const double NoticeLineMm = 8;

    public string FileName => "templates.pdf";
    public string MediaType => "application/pdf";
    public string Description => "Half template and section cards at true scale, to print on A4, Letter, A3 or a roll.";
    public string Version => "3";
    public bool DependsOnPaper => true;
    public bool IsHeavy => true;

    public void Write(DesignReport report, DrawingContext context, Stream output, CancellationToken cancellation = default)
    {
        using var book = new PdfBook($"{context.Label}: templates at true scale", context);
        if (context.Paper == PaperSize.Roll) AddRoll(book, report, context);
        else AddTiles(book, report, context, cancellation);
        cancellation.ThrowIfCancellationRequested();
        book.Write(output);
    }

    private static (double Short, double Long) Paper(PaperSize paper) => paper switch
    {
        PaperSize.Letter => (215.9, 279.4),
        PaperSize.A3 => (297, 420),
        _ => (210, 297),
    };

    private static void AddRoll(PdfBook book, DesignReport report, DrawingContext context)
    {
        var half = HalfTemplateView.Draw(report, context);
        var sections = SectionCards.OneSheet(report, context, half.WidthMm);
        book.Add(half.WidthMm, half.HeightMm + sections.HeightMm, "Half template and sections", ink =>
        {
            ink.Paint(half, 0, 0);
            ink.Paint(sections, 0, half.HeightMm);
        });
    }

    private static void AddTiles(PdfBook book, DesignReport report, DrawingContext context, CancellationToken cancellation)
    {
        var half = HalfTemplateView.Draw(report, context, bare: true);
        var (shortMm, longMm) = Paper(context.Paper);
        var label = TilePlan.OneLineMm + (OutcomeNotice.IsNeeded(report) ? NoticeLineMm : 0);
        var plan = TilePlan.For(shortMm, longMm, half.WidthMm, half.HeightMm, label);
        var cards = SectionCards.Pages(report, context, longMm - 2 * Margin, shortMm - 2 * Margin - label);
        var count = 1 + plan.Count + cards.Count;

        book.Add(longMm, shortMm, "Tile map and scale check", ink =>
        {
            ink.Paint(TileMapView.Draw(report, context, half, plan, longMm, shortMm), 0, 0);
            Label(ink, report, context, longMm, shortMm, 1, count, "tile map and scale check");
        });

        var number = 1;
        for (var row = 0; row < plan.Rows; row++)
        {
            for (var column = 0; column < plan.Columns; column++)
            {
                var (name, tileRow, tileColumn) = (TileMapView.TileName(plan, row, column), row, column);
                number++;
                cancellation.ThrowIfCancellationRequested();
                book.Add(plan.PageWidthMm, plan.PageHeightMm, $"Half template, tile {name}", ink =>
                {
                    PaintTile(ink, half, plan, tileRow, tileColumn, HalfTemplateView.CentreY(report, context.Units));
                    Label(
                        ink, report, context, plan.PageWidthMm, plan.PageHeightMm, number, count,
                        $"half template, tile {name} of {plan.Count}", plan.MarginMm);
                });
            }
        }

        foreach (var card in cards)
        {
            number++;
            cancellation.ThrowIfCancellationRequested();
            book.Add(longMm, shortMm, $"Sections, page {number}", ink =>
            {
                ink.Paint(card, Margin, Margin);
                Label(ink, report, context, longMm, shortMm, number, count, "sections at true scale; cut out, halve on the middle line");
            });
        }
    }

    private static void PaintTile(PdfInk ink, Sheet sheet, TilePlan plan, int row, int column, double centreY)
    {
        var (left, top, margin) = (column * plan.StepX, row * plan.StepY, plan.MarginMm);
        var window = new Window(margin, margin, margin + plan.TileWidthMm, margin + plan.TileHeightMm);
        ink.PaintWindow(sheet, margin - left, margin - top, window);
        ink.Paint(TileMapView.Registers(plan, row, column, centreY), margin, margin);
    }

    private static void Label(PdfInk ink, DesignReport report, DrawingContext context, double width, double height, int number, int count, string what, double margin = Margin)
    {
        var sketch = new Sketch();
        var (left, y, inner) = (margin + CutMarkMm, height - margin - 1, width - 2 * (margin + CutMarkMm));
        var place = string.Create(CultureInfo.InvariantCulture, $"Page {number} of {count}: {what}");
        sketch.Text(place, left, y, Lettering.Note);
        var owner = $"{Lettering.Safe(context.Label)} · print at 100 % · engine {context.EngineVersion}";
        var room = inner - Helvetica.WidthMm(place, Lettering.Note) - 10;
        var wide = Helvetica.WidthMm(owner, Lettering.Small);
        sketch.Text(owner, left + inner, y, wide <= room ? Lettering.Small : Lettering.Small * room / wide, Anchor.End);
        if (OutcomeNotice.IsNeeded(report))
        {
            var notice = $"{OutcomeNotice.Headline(report)} {report.OutcomeIn(context.Units).Unmet[0].Message}";
            sketch.Text(notice, left, y - NoticeLineMm, Lettering.Figure * Math.Min(1, inner / Helvetica.WidthMm(notice, Lettering.Figure, strong: true)), strong: true);
        }

        ink.Paint(sketch.Finish("label", "", "", width, height), 0, 0);
    }
}
