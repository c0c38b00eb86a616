using Paddle.Design;
using Paddle.Design.Build;
using Paddle.Drawings.Pages;
using Paddle.Drawings.Sheets;

namespace Paddle.Drawings.Files;

/// <summary>The build sheet on paper: what <see cref="BuildSheetPage"/> shows, laid out for A4 or Letter.</summary>
internal sealed class BuildSheetPdf(BuildSheet sheet) : IDesignFile
{
    private const double Margin = 10;
    private const int MostPages = 6;
    private const double FootMm = 4;

    public string FileName => "build-sheet.pdf";
    public string MediaType => "application/pdf";
    public string Description => "The build sheet to print and tape to the wall.";
    public string Version => "1";
    public bool DependsOnPaper => true;
    public bool IsHeavy => true;

    public void Write(DesignReport report, DrawingContext context, Stream output, CancellationToken cancellation = default)
    {
        var (width, height) = context.Paper == PaperSize.Letter ? (215.9, 279.4) : (210.0, 297.0);
        var title = BuildSheetContent.Title(sheet, context);
        var pages = PageFlow.Pages([new Heading(1, title), .. BuildSheetContent.Of(report, sheet, context)], width - 2 * Margin, height - 2 * Margin - FootMm, MostPages);
        using var book = new PdfBook(title, context);
        for (var i = 0; i < pages.Count; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            var foot = new Sketch();
            foot.Text(FormattableString.Invariant($"Page {i + 1} of {pages.Count}"), width - Margin, height - Margin, 2, Anchor.End);
            foot.Text(title, Margin, height - Margin, Math.Min(2, 2 * 150 / Helvetica.WidthMm(Lettering.Safe(title), 2)));
            book.Add(width, height, FormattableString.Invariant($"Page {i + 1}"), ink =>
            {
                ink.Paint(pages[i], Margin, Margin);
                ink.Paint(foot.Finish("foot", "", "", width, height), 0, 0);
            });
        }

        cancellation.ThrowIfCancellationRequested();
        book.Write(output);
    }
}
