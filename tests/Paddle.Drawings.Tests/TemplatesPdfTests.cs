using Paddle.Design;
using Paddle.Design.Outline;
using Paddle.Design.Units;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Views;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
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
    [InlineData(PaperSize.A4, 6)]
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
        var plan = Plan(report, paper);
        Assert.Equal(longMm, plan.PageWidthMm);
        var (corners, tile) = (new List<(double X, double Y)>(), 0);
        foreach (var page in pdf.GetPages().Skip(1))
        {
            foreach (var curve in page.Paths.SelectMany(path => path.SelectMany(sub => sub.Commands)).OfType<PdfSubpath.CubicBezierCurve>())
                corners.Add((curve.EndPoint.X * PointMm - plan.MarginMm + tile * plan.StepX - HalfTemplateView.OriginX, (page.Height - curve.EndPoint.Y) * PointMm - plan.MarginMm));
            tile++;
        }

        // Each joint of the outline must be found where the design has it.
        foreach (var piece in report.Outline.Pieces.ToArray())
        {
            var y = HalfTemplateView.CentreY(report, DrawingUnits.Metric) - piece.Y3;
            Assert.Contains(corners, corner => Math.Abs(corner.X - piece.X3) < 0.05 && Math.Abs(corner.Y - y) < 0.05);
        }
    }

    [Theory, MemberData(nameof(FamiliesAndPapers))]
    public void Tiles_are_as_few_as_paper_and_printer_allow(string family, PaperSize paper)
    {
        var report = SampleDesigns.Varied(family);
        foreach (var units in Enum.GetValues<DrawingUnits>())
        {
            var context = SampleDesigns.Context(units, paper: paper);
            var (sheet, plan) = (HalfTemplateView.Draw(report, context, bare: true), Plan(report, paper, units));
            Assert.True((plan.Columns - 1) * plan.StepX + plan.TileWidthMm >= sheet.WidthMm && (plan.Rows - 1) * plan.StepY + plan.TileHeightMm >= sheet.HeightMm);

            // Tiles that overlap by 10 mm, on lying or standing paper, with no margin under a quarter of an inch: none does with fewer.
            foreach (var (across, down) in ((double, double)[])[(plan.PageWidthMm, plan.PageHeightMm), (plan.PageHeightMm, plan.PageWidthMm)])
            {
                int Need(double length, double page) => (int)Math.Ceiling((length - 10) / (page - 2 * 6.35 - 10) - 1e-9);
                Assert.True(plan.Count <= Need(sheet.WidthMm, across) * Need(sheet.HeightMm, down - TilePlan.OneLineMm));
            }

            using var pdf = PdfDocument.Open(Written(paper, report: report, units: units));
            Assert.Equal(plan.Count, pdf.GetPages().Count(page => Words(page).Contains("half template, tile", StringComparison.Ordinal)));
            Assert.Contains(plan.InWords(context), Words(pdf.GetPage(1)), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_smaller_margin_is_taken_only_where_it_saves_a_sheet()
    {
        // 6 lying A4 tiles with margins of 10 mm hold 6 x 267 + 10 = 1612 mm, with 6.35 mm 6 x 274.3 + 10 = 1655.8 mm.
        Assert.Equal((6, 10.0), Of(1612));
        Assert.Equal((6, 6.35), Of(1613));
        Assert.Equal((6, 6.35), Of(1655));
        Assert.Equal((7, 10.0), Of(1656));
        static (int, double) Of(double length) => TilePlan.For(210, 297, length, 110) is var plan ? (plan.Count, plan.MarginMm) : default;
    }

    [Fact]
    public void A_label_can_be_marked_and_copied()
    {
        using var pdf = PdfDocument.Open(Written(PaperSize.A4, "Ørsted’s ash · ½ size"));
        foreach (var page in pdf.GetPages()) Assert.Contains("Ørsted’s ash · ½ size", Words(page), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Příští žluť Łódź", "Prˇíští žlutˇ Łódz´")]
    [InlineData("עברית 7", "????? 7")]
    public void A_letter_that_is_pieced_together_or_lacking_is_told_to_who_copies_it(string label, string drawn)
    {
        using var pdf = PdfDocument.Open(Written(PaperSize.A4, label));
        Assert.Contains(drawn, Words(pdf.GetPage(1)), StringComparison.Ordinal);
        Assert.Contains(pdf.GetPage(1).GetMarkedContents(), content => content.ActualText == label);
    }

    [Fact]
    public void Every_word_of_the_drawings_is_on_the_pages_in_the_built_in_face()
    {
        var (report, context) = (SampleDesigns.Of("ottertail"), SampleDesigns.Context());
        using var pdf = Open(PaperSize.A4);
        var pages = pdf.GetPages().Select(Words).ToList();
        var drawn = HalfTemplateView.Draw(report, context, bare: true).Items.Concat(SectionCards.Pages(report, context, 277, 182).SelectMany(page => page.Items)).OfType<TextItem>();
        Assert.All(drawn, item => Assert.Contains(pages, words => words.Contains(item.Text, StringComparison.Ordinal)));
        Assert.All(pdf.GetPages().SelectMany(page => page.Letters), letter => Assert.StartsWith("Helvetica", letter.FontName, StringComparison.Ordinal));
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

    private static byte[] Written(PaperSize paper, string label = "Heron Lake hire paddle M", DesignReport? report = null, DrawingUnits units = DrawingUnits.Metric) =>
        Support.DrawnFile.Written("templates.pdf", report ?? SampleDesigns.Of("ottertail"), SampleDesigns.Context(units, label, paper));

    private static PdfDocument Open(PaperSize paper) => PdfDocument.Open(Written(paper));

    private static string Words(Page page) => string.Concat(page.Letters.Select(letter => letter.Value));

    private static TilePlan Plan(DesignReport report, PaperSize paper, DrawingUnits units = DrawingUnits.Metric)
    {
        var (shortMm, longMm) = paper switch { PaperSize.Letter => (215.9, 279.4), PaperSize.A3 => (297, 420), _ => (210, 297) };
        var sheet = HalfTemplateView.Draw(report, SampleDesigns.Context(units, paper: paper), bare: true);
        return TilePlan.For(shortMm, longMm, sheet.WidthMm, sheet.HeightMm);
    }

    public static TheoryData<string, PaperSize> FamiliesAndPapers()
    {
        var data = new TheoryData<string, PaperSize>();
        foreach (var family in BladeFamilies.All.Select(family => family.Id).Append(SampleDesigns.OwnOffsets))
        {
            foreach (var paper in (PaperSize[])[PaperSize.A4, PaperSize.Letter, PaperSize.A3]) data.Add(family, paper);
        }

        return data;
    }
}
