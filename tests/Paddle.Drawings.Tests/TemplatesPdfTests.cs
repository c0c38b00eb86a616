using Paddle.Design.Units;
using Paddle.Drawings.Views;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Outline;

namespace Paddle.Drawings.Tests;

public class TemplatesPdfTests
{
    private const double PointMm = 25.4 / 72;

    [Theory]
    [InlineData(PaperSize.A4, 210, 297)]
    [InlineData(PaperSize.Letter, 215.9, 279.4)]
    [InlineData(PaperSize.A3, 297, 420)]
    public void Every_page_has_the_papers_size(PaperSize paper, double shortMm, double longMm)
    {
        using var pdf = Open(paper);
        foreach (var page in pdf.GetPages())
        {
            Assert.Equal(shortMm, Math.Min(page.Width, page.Height) * PointMm, 0.05);
            Assert.Equal(longMm, Math.Max(page.Width, page.Height) * PointMm, 0.05);
        }
    }

    [Theory]
    [InlineData(PaperSize.A4, 7)]
    [InlineData(PaperSize.Letter, 7)]
    [InlineData(PaperSize.A3, 5)]
    public void Every_page_is_named_in_the_bookmarks(PaperSize paper, int tiles)
    {
        using var pdf = Open(paper);
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        var names = bookmarks.GetNodes().OfType<DocumentBookmarkNode>().OrderBy(node => node.PageNumber).ToList();
        Assert.Equal(Enumerable.Range(1, pdf.NumberOfPages), names.Select(node => node.PageNumber));
        Assert.StartsWith("Tile map", names[0].Title, StringComparison.Ordinal);
        Assert.Equal(tiles, names.Count(node => node.Title.StartsWith("Half template, tile", StringComparison.Ordinal)));
        Assert.Contains(names, node => node.Title.StartsWith("Sections", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.Letter)]
    [InlineData(PaperSize.A3)]
    [InlineData(PaperSize.Roll)]
    public void The_first_page_carries_a_square_of_a_hundred_millimetres(PaperSize paper)
    {
        using var pdf = Open(paper);
        Assert.Contains(pdf.GetPage(1).Paths.Select(Box), box =>
            Math.Abs(box.Width - 100) < 0.05 && Math.Abs(box.Height - 100) < 0.05);
    }

    [Fact]
    public void The_roll_is_one_sheet_longer_than_the_paddle()
    {
        using var pdf = Open(PaperSize.Roll);
        var page = Assert.Single(pdf.GetPages());
        Assert.True(page.Width * PointMm > SampleDesigns.Of("ottertail").Specification.Form.Places.OverallMm);
        Assert.True(page.Width < 14400);
    }

    [Theory]
    [InlineData(PaperSize.A4, 297)]
    [InlineData(PaperSize.A3, 420)]
    public void The_tiles_put_together_give_the_half_template_at_true_scale(PaperSize paper, double longMm)
    {
        var report = SampleDesigns.Of("ottertail");
        using var pdf = Open(paper);
        var step = longMm - 2 * TilePlan.MarginMm - TilePlan.OverlapMm;
        var (corners, tile) = (new List<(double X, double Y)>(), 0);
        foreach (var page in pdf.GetPages().Skip(1))
        {
            foreach (var curve in page.Paths.SelectMany(path => path.SelectMany(sub => sub.Commands)).OfType<PdfSubpath.CubicBezierCurve>())
                corners.Add((curve.EndPoint.X * PointMm - TilePlan.MarginMm + tile * step - HalfTemplateView.OriginX, (page.Height - curve.EndPoint.Y) * PointMm - TilePlan.MarginMm));
            tile++;
        }

        // Each joint of the outline must be found where the design has it.
        foreach (var piece in report.Outline.Pieces.ToArray())
        {
            var y = HalfTemplateView.CentreY(report, DrawingUnits.Metric) - piece.Y3;
            Assert.Contains(corners, corner => Math.Abs(corner.X - piece.X3) < 0.05 && Math.Abs(corner.Y - y) < 0.05);
        }
    }

    [Theory]
    [InlineData(210, 297, 1600, 110, 6)]
    [InlineData(215.9, 279.4, 1600, 110, 7)]
    [InlineData(297, 420, 1600, 110, 5)]
    public void Tiles_are_as_few_as_the_overlap_allows(double shortMm, double longMm, double length, double width, int expected)
    {
        var plan = TilePlan.For(shortMm, longMm, length, width);
        Assert.Equal(expected, plan.Columns);
        Assert.Equal(1, plan.Rows);
        Assert.True((plan.Columns - 1) * plan.StepX + plan.TileWidthMm >= length);
    }

    [Fact]
    public void A_viewer_is_asked_not_to_scale()
    {
        var text = System.Text.Encoding.Latin1.GetString(Written(PaperSize.A4));
        Assert.Matches("/PrintScaling\\s*/None", text);
    }

    [Fact]
    public void A_hostile_label_is_printed_and_breaks_nothing()
    {
        using var pdf = PdfDocument.Open(Written(PaperSize.A4, SampleDesigns.HostileLabel));
        using var plain = Open(PaperSize.A4);
        Assert.Equal(plain.NumberOfPages, pdf.NumberOfPages);
        Assert.StartsWith("(script)", pdf.Information.Title, StringComparison.Ordinal);
        Assert.True(pdf.TryGetXmpMetadata(out var metadata));
        var xml = metadata.GetXDocument();
        Assert.DoesNotContain(xml.Descendants(), element => element.Name.LocalName == "script");
        Assert.StartsWith("(script)", xml.Descendants().Single(element => element.Name.LocalName == "title").Value, StringComparison.Ordinal);
    }

    private static (double Width, double Height) Box(UglyToad.PdfPig.Graphics.PdfPath path)
    {
        var box = path.GetBoundingRectangle();
        return box is { } b ? (b.Width * PointMm, b.Height * PointMm) : (0, 0);
    }

    private static byte[] Written(PaperSize paper, string label = "Heron Lake hire paddle M")
    {
        using var stream = new MemoryStream();
        DesignFiles.Find("templates.pdf")!.Write(SampleDesigns.Of("ottertail"), SampleDesigns.Context(label: label, paper: paper), stream);
        return stream.ToArray();
    }

    private static PdfDocument Open(PaperSize paper) => PdfDocument.Open(Written(paper));
}
