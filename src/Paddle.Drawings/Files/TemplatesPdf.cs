using System.Globalization;
using Paddle.Design;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Paddle.Drawings.Files;

/// <summary>The half template and the section cards at true scale, to print: on sheets that overlap, or on one sheet for a roll. The first
/// page shows how the tiles lie and carries a square to measure; every page names itself.</summary>
/// <remarks>Paper: ISO 216 and the inch formats. A viewer is asked not to scale (PrintScaling None, ISO 32000, from memory).</remarks>
internal sealed class TemplatesPdf : IDesignFile
{
    private const double Margin = TilePlan.MarginMm;
    private const double CutMarkMm = 6;
    private const double NoticeLineMm = 8;

    public string FileName => "templates.pdf";
    public string MediaType => "application/pdf";
    public string Description => "Half template and section cards at true scale, to print on A4, Letter, A3 or a roll.";
    public string Version => "2";
    public bool DependsOnPaper => true;
    public bool IsHeavy => true;

    public void Write(DesignReport report, DrawingContext context, Stream output, CancellationToken cancellation = default)
    {
        using var document = NewDocument(context);
        if (context.Paper == PaperSize.Roll) AddRoll(document, report, context);
        else AddTiles(document, report, context, cancellation);
        cancellation.ThrowIfCancellationRequested();

        // The library closes what it saves to and needs to seek; the caller's stream may do neither.
        using var bytes = new MemoryStream();
        document.Save(bytes, closeStream: false);
        var written = bytes.GetBuffer().AsSpan(0, (int)bytes.Length);
        FixIdentifiers(written);
        output.Write(written);
    }

    // The library's metadata name the document by two random numbers. They are set to nothing, in place, so that no offset moves.
    private static void FixIdentifiers(Span<byte> pdf)
    {
        var mark = "ID>uuid:"u8;
        const int Digits = 36;
        for (var from = 0; ;)
        {
            var at = pdf[from..].IndexOf(mark);
            if (at < 0) return;
            from += at + mark.Length;
            foreach (ref var digit in pdf.Slice(from, Digits))
            {
                if (digit != (byte)'-') digit = (byte)'0';
            }
        }
    }

    private static PdfDocument NewDocument(DrawingContext context)
    {
        var document = new PdfDocument();

        // The library copies the title into XML as it stands, so the three signs that XML would read must not be in it.
        var label = Lettering.Safe(context.Label).Replace('<', '(').Replace('>', ')').Replace('&', '+');
        document.Info.Title = $"{label}: templates at true scale";
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
        AddPage(document, half.WidthMm, half.HeightMm + sections.HeightMm, "Half template and sections", ink =>
        {
            ink.Paint(half, 0, 0);
            ink.Paint(sections, 0, half.HeightMm);
        });
    }

    private static void AddTiles(PdfDocument document, DesignReport report, DrawingContext context, CancellationToken cancellation)
    {
        var half = HalfTemplateView.Draw(report, context, bare: true);
        var (shortMm, longMm) = Paper(context.Paper);
        var label = TilePlan.OneLineMm + (OutcomeNotice.IsNeeded(report) ? NoticeLineMm : 0);
        var plan = TilePlan.For(shortMm, longMm, half.WidthMm, half.HeightMm, label);
        var cards = SectionCards.Pages(report, context, longMm - 2 * Margin, shortMm - 2 * Margin - label);
        var count = 1 + plan.Columns * plan.Rows + cards.Count;

        AddPage(document, longMm, shortMm, "Tile map and scale check", ink =>
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
                AddPage(document, plan.PageWidthMm, plan.PageHeightMm, $"Half template, tile {name}", ink =>
                {
                    PaintTile(ink, half, plan, tileRow, tileColumn, HalfTemplateView.CentreY(report, context.Units));
                    Label(
                        ink, report, context, plan.PageWidthMm, plan.PageHeightMm, number, count,
                        $"half template, tile {name} of {plan.Columns * plan.Rows}");
                });
            }
        }

        foreach (var card in cards)
        {
            number++;
            cancellation.ThrowIfCancellationRequested();
            AddPage(document, longMm, shortMm, $"Sections, page {number}", ink =>
            {
                ink.Paint(card, Margin, Margin);
                Label(ink, report, context, longMm, shortMm, number, count, "sections at true scale; cut out, halve on the middle line");
            });
        }
    }

    // The lettering is drawn; the same words lie unseen over it, so that a reader finds, marks and speaks them.
    private static void AddPage(PdfDocument document, double widthMm, double heightMm, string bookmark, Action<PdfInk> paint)
    {
        var page = document.AddPage();
        page.Width = XUnit.FromMillimeter(widthMm);
        page.Height = XUnit.FromMillimeter(heightMm);
        document.Outlines.Add(bookmark, page);
        var ink = new PdfInk(heightMm);
        paint(ink);
        page.Elements.SetObject("/Resources", PdfInk.Resources(document));
        page.Contents.AppendContent().CreateStream(ink.ToBytes()).Zip();
    }

    private static void PaintTile(PdfInk ink, Sheet sheet, TilePlan plan, int row, int column, double centreY)
    {
        double left = column * plan.StepX, top = row * plan.StepY;
        var window = new Window(Margin, Margin, Margin + plan.TileWidthMm, Margin + plan.TileHeightMm);
        ink.PaintWindow(sheet, Margin - left, Margin - top, window);
        ink.Paint(TileMapView.Registers(plan, row, column, centreY), Margin, Margin);
    }

    private static void Label(PdfInk ink, DesignReport report, DrawingContext context, double width, double height, int number, int count, string what)
    {
        var sketch = new Sketch();
        var y = height - Margin - 1;
        var place = string.Create(CultureInfo.InvariantCulture, $"Page {number} of {count}: {what}");
        sketch.Text(place, Margin + CutMarkMm, y, Lettering.Note);
        var owner = $"{Lettering.Safe(context.Label)} · print at 100 % · engine {context.EngineVersion}";
        var room = width - 2 * (Margin + CutMarkMm) - StrokeAlphabet.WidthMm(place, Lettering.Note) - 10;
        var wide = StrokeAlphabet.WidthMm(owner, Lettering.Small);
        sketch.Text(owner, width - Margin - CutMarkMm, y, wide <= room ? Lettering.Small : Lettering.Small * room / wide, Anchor.End);
        if (OutcomeNotice.IsNeeded(report))
        {
            var (notice, most) = ($"{OutcomeNotice.Headline(report)} {report.OutcomeIn(context.Units).Unmet[0].Message}", width - 2 * (Margin + CutMarkMm));
            sketch.Text(notice, Margin + CutMarkMm, y - NoticeLineMm, Lettering.Figure * Math.Min(1, most / StrokeAlphabet.WidthMm(notice, Lettering.Figure)), strong: true);
        }

        ink.Paint(sketch.Finish("label", "", "", width, height), 0, 0);
    }
}
