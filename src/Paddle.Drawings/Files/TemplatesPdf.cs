using System.Globalization;
using Paddle.Design;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Paddle.Drawings.Files;

/// <summary>
/// The half template and the section cards at true scale, to print: on sheets that overlap, or on one sheet for a roll. The first
/// page shows how the tiles lie and carries a square to measure; every page names itself.
/// </summary>
/// <remarks>Paper: ISO 216 and the inch formats. A viewer is asked not to scale (PrintScaling None, ISO 32000, from memory).</remarks>
internal sealed class TemplatesPdf : IDesignFile
{
    private const double Margin = TilePlan.MarginMm;

    public string FileName => "templates.pdf";

    public string MediaType => "application/pdf";

    public string Description => "Half template and section cards at true scale, to print on A4, Letter, A3 or a roll.";

    public string Version => "1";

    public bool DependsOnPaper => true;

    public void Write(DesignReport report, DrawingContext context, Stream output)
    {
        using var document = NewDocument(context);
        if (context.Paper == PaperSize.Roll) AddRoll(document, report, context);
        else AddTiles(document, report, context);

        // The library closes what it saves to and needs to seek; the caller's stream may do neither.
        using var bytes = new MemoryStream();
        document.Save(bytes, closeStream: false);
        bytes.Position = 0;
        bytes.CopyTo(output);
    }

    private static PdfDocument NewDocument(DrawingContext context)
    {
        var document = new PdfDocument();
        document.Info.Title = $"{Lettering.Safe(context.Label)}: templates at true scale";
        document.Info.Creator = $"Paddle engine {context.EngineVersion}";
        document.ViewerPreferences.Elements.SetName("/PrintScaling", "/None");

        // The same design must give the same bytes: no clock, no chance.
        document.Info.CreationDate = new DateTime(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);
        document.Info.ModificationDate = document.Info.CreationDate;
        document.Internals.FirstDocumentID = "paddle-templates";
        document.Internals.SecondDocumentID = "paddle-templates";
        return document;
    }

    private static (double Short, double Long) Paper(PaperSize paper) => paper switch
    {
        PaperSize.Letter => (215.9, 279.4),
        PaperSize.A3 => (297, 420),
        _ => (210, 297),
    };

    private static void AddRoll(PdfDocument document, DesignReport report, DrawingContext context)
    {
        var half = HalfTemplateView.Draw(report, context);
        var sections = SectionCards.OneSheet(report, context, half.WidthMm);
        using var page = NewPage(document, half.WidthMm, half.HeightMm + sections.HeightMm, "Half template and sections");
        PdfPainter.Paint(page, half, 0, 0);
        PdfPainter.Paint(page, sections, 0, half.HeightMm);
    }

    private static void AddTiles(PdfDocument document, DesignReport report, DrawingContext context)
    {
        var half = HalfTemplateView.Draw(report, context, bare: true);
        var (shortMm, longMm) = Paper(context.Paper);
        var plan = TilePlan.For(shortMm, longMm, half.WidthMm, half.HeightMm);
        var cards = SectionCards.Pages(report, context, longMm - 2 * Margin, shortMm - 2 * Margin - TilePlan.LabelMm);
        var count = 1 + plan.Columns * plan.Rows + cards.Count;

        using (var page = NewPage(document, longMm, shortMm, "Tile map and scale check"))
        {
            PdfPainter.Paint(page, TileMapView.Draw(report, context, half, plan, longMm, shortMm), 0, 0);
            Label(page, context, longMm, shortMm, 1, count, "tile map and scale check");
        }

        var number = 1;
        for (var row = 0; row < plan.Rows; row++)
        {
            for (var column = 0; column < plan.Columns; column++)
            {
                var name = TileMapView.TileName(plan, row, column);
                using var page = NewPage(document, plan.PageWidthMm, plan.PageHeightMm, $"Half template, tile {name}");
                PaintTile(page, half, plan, row, column, HalfTemplateView.CentreY(report));
                Label(page, context, plan.PageWidthMm, plan.PageHeightMm, ++number, count, $"half template, tile {name} of {plan.Columns * plan.Rows}");
            }
        }

        foreach (var card in cards)
        {
            using var page = NewPage(document, longMm, shortMm, $"Sections, page {number + 1}");
            PdfPainter.Paint(page, card, Margin, Margin);
            Label(page, context, longMm, shortMm, ++number, count, "sections at true scale; cut out, halve on the middle line");
        }
    }

    private static XGraphics NewPage(PdfDocument document, double widthMm, double heightMm, string bookmark)
    {
        var page = document.AddPage();
        page.Width = XUnit.FromMillimeter(widthMm);
        page.Height = XUnit.FromMillimeter(heightMm);
        document.Outlines.Add(bookmark, page);
        return XGraphics.FromPdfPage(page, XGraphicsUnit.Millimeter);
    }

    private static void PaintTile(XGraphics page, Sheet sheet, TilePlan plan, int row, int column, double centreY)
    {
        double left = column * plan.StepX, top = row * plan.StepY;
        var window = new XRect(Margin, Margin, plan.TileWidthMm, plan.TileHeightMm);
        page.Save();
        page.IntersectClip(window);
        PdfPainter.Paint(page, sheet, Margin - left, Margin - top);
        page.Restore();
        PdfPainter.Paint(page, TileMapView.Registers(plan, row, column, centreY), Margin, Margin);
    }

    private static void Label(XGraphics page, DrawingContext context, double width, double height, int number, int count, string what)
    {
        var sketch = new Sketch();
        var y = height - Margin - 1;
        var place = string.Create(CultureInfo.InvariantCulture, $"Page {number} of {count}: {what}");
        sketch.Text(place, Margin, y, Lettering.Note);
        var owner = $"{Lettering.Safe(context.Label)} · print at 100 % · engine {context.EngineVersion}";
        var room = width - 2 * Margin - StrokeAlphabet.WidthMm(place, Lettering.Note) - 10;
        var wide = StrokeAlphabet.WidthMm(owner, Lettering.Small);
        sketch.Text(owner, width - Margin, y, wide <= room ? Lettering.Small : Lettering.Small * room / wide, Anchor.End);
        PdfPainter.Paint(page, sketch.Finish("label", "", "", width, height), 0, 0);
    }
}
