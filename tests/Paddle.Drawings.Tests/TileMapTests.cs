using System.Globalization;
using System.Text.RegularExpressions;
using Paddle.Design.Units;
using Paddle.Drawings.Tests.Support;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using static Paddle.Drawings.Tests.Support.Printed;

namespace Paddle.Drawings.Tests;

/// <summary>The map of the tiles, and what joins them, read back from the pages of the printed template.</summary>
public class TileMapTests
{
    private const double PointMm = 25.4 / 72, Tiny = 0.03;

    private sealed record Box(double Left, double Top, double Right, double Bottom, bool IsDashed, bool IsCurved)
    {
        public double Width => Right - Left;
        public double Height => Bottom - Top;
        public double MiddleX => (Left + Right) / 2;
    }

    [Theory]
    [InlineData("ottertail", DrawingUnits.Metric, PaperSize.A4)]
    [InlineData("teardrop", DrawingUnits.Inch, PaperSize.Letter)]
    [InlineData("sugar-island", DrawingUnits.Inch, PaperSize.A3)]
    [InlineData("too weak", DrawingUnits.Metric, PaperSize.A4)]
    public void The_map_shows_the_tiles_that_follow_it(string name, DrawingUnits units, PaperSize paper)
    {
        var report = name == "too weak" ? SampleDesigns.TooWeak : SampleDesigns.Varied(name);
        using var pdf = PdfDocument.Open(DrawnFile.Written("templates.pdf", report, SampleDesigns.Context(units, paper: paper)));
        var pages = pdf.GetPages().ToList();
        var tiles = pages.Where(page => Texts(page).Exists(text => text.Text.Contains(": half template, tile ", StringComparison.Ordinal))).ToList();
        var (map, boxes) = (Texts(pages[0]), Boxes(pages[0]));
        var (places, form) = (report.Specification.Form.Places, report.Specification.Form);

        // What it says of them is what they are: cut marks stand in from the edge by the margin.
        var family = form.Blade.Family!.Name;
        var lies = tiles[0].Width > tiles[0].Height ? "lying" : "standing";
        var margin = Boxes(tiles[0]).Where(box => box.Width < 0.01 && Math.Abs(box.Height - 4) < Tiny).Min(box => box.Left);
        new Said($"{family} paddle: templates at true scale, {tiles.Count} tiles (paper {lies}, margins #, overlap #) and section cards", (margin, Near), (10, Near))
            .AssertIn(Assert.Single(map, text => text.Text.Contains("templates at true scale", StringComparison.Ordinal)).Text, units);
        Assert.True(Math.Abs(margin - 10) < Tiny || Math.Abs(margin - 6.35) < Tiny);
        double wide = tiles[0].Width * PointMm - 2 * margin, step = wide - 10;

        // Tiles by their numbers: as wide and as far apart as on the pages, at one scale with the outline under them.
        var numbers = map.Where(text => Regex.IsMatch(text.Text, "^[0-9]+$")).ToList();
        Assert.Equal(Enumerable.Range(1, tiles.Count).Select(k => k.ToString(CultureInfo.InvariantCulture)), numbers.Select(text => text.Text));
        var drawn = boxes.Where(box => !box.IsCurved && box.Width > 10 && box.Height > 10 && numbers.Exists(text => text.Y > box.Top && text.Y < box.Bottom && text.X > box.Left && text.X < box.Right)).ToList();
        var columns = tiles.Count / (drawn.Select(box => Math.Round(box.Top, 1)).Distinct().Count());
        var outline = boxes.Single(box => box.IsCurved && box.Width > 100);
        var scale = outline.Width / places.OverallMm;
        Assert.Equal(tiles.Count, drawn.Count);
        for (var k = 0; k < drawn.Count; k++)
        {
            Assert.Equal(scale * wide, drawn[k].Width, 0.05);
            Assert.Equal(drawn[0].Left + scale * step * (k % columns), drawn[k].Left, 0.05);
            Assert.Equal(drawn[k].MiddleX, numbers[k].Middle, 0.3);
            Assert.True(numbers[k].Y > drawn[k].Top && numbers[k].Y < drawn[k].Bottom);
        }

        Assert.Equal(10, drawn[0].Left, Tiny);
        Assert.Equal(pages[0].Width * PointMm - 10, drawn[^1].Right, 0.05);
        Assert.Equal(scale * Math.Max(form.Blade.WidthMm, form.Grip.WidthMm) / 2, outline.Height, 0.06);

        // The first tile shows the top of the grip where the map does.
        var grip = Boxes(tiles[0]).Where(box => box.IsCurved && box.Width > 100).Min(box => box.Left) - margin;
        Assert.Equal(grip, (outline.Left - drawn[0].Left) / scale, 0.3);

        // What to do, step by step.
        var side = units == DrawingUnits.Metric ? "100 mm within 0.5 mm" : "4 in within 1/64 in";
        string[] steps =
        [
            "1  Print every page at 100 %, never \"fit to page\".", $"2  Measure the square both ways: {side}. If it is off, stop and print again.",
            "3  Trim each tile at its left cut marks; lay it on the dashed line of the tile before.",
            "4  The crosses of both tiles must fall on one another, the centre line must run straight.",
            "6  Glue to thin board, cut, fair the edge; trace, flip about the centre line, trace again.",
        ];
        Assert.All(steps, words => Assert.Contains(map, text => text.Text == words));
        new Said("5  Check with a tape: overall #, throat # from the top.", (places.OverallMm, Near), (places.ThroatMm, Near))
            .AssertIn(Assert.Single(map, text => text.Text.StartsWith("5  ", StringComparison.Ordinal)).Text, units);
        Assert.Contains(map, text => text.Text == $"Scale 1:1 · lettered in {(units == DrawingUnits.Metric ? "millimetres" : "inches")} · engine 0.1.0 · design p1-abcdefghijklmnopqrstu…");

        // Every page names itself, and whose it is.
        for (var k = 0; k < pages.Count; k++)
        {
            var what = k == 0 ? "tile map and scale check" : k <= tiles.Count ? $"half template, tile {k} of {tiles.Count}" : "sections at true scale; cut out, halve on the middle line";
            Assert.Contains(Texts(pages[k]), text => text.Text == $"Page {k + 1} of {pages.Count}: {what}");
            Assert.Contains(Texts(pages[k]), text => text.Text == "Heron Lake hire paddle M · print at 100 % · engine 0.1.0");
            Assert.Equal(name == "too weak", Texts(pages[k]).Exists(text => text.Text.StartsWith("DO NOT BUILD: this paddle is too weak. ", StringComparison.Ordinal) && text.Y > 0.9 * pages[k].Height * PointMm));
        }

        Assert.Equal("Heron Lake hire paddle M: templates at true scale", pdf.Information.Title);
    }

    [Theory]
    [InlineData("ottertail", PaperSize.A4)]
    [InlineData("square-tip", PaperSize.Letter)]
    public void Neighbours_have_the_same_crosses_and_each_says_where_the_next_begins(string name, PaperSize paper)
    {
        using var pdf = PdfDocument.Open(DrawnFile.Written("templates.pdf", SampleDesigns.Varied(name), SampleDesigns.Context(paper: paper)));
        var tiles = pdf.GetPages().Where(page => Texts(page).Exists(text => text.Text.Contains(": half template, tile ", StringComparison.Ordinal))).ToList();
        var margin = Boxes(tiles[0]).Where(box => box.Width < 0.01 && Math.Abs(box.Height - 4) < Tiny).Min(box => box.Left);
        double wide = tiles[0].Width * PointMm - 2 * margin, step = wide - 10;
        var crosses = tiles.ConvertAll(Crosses);
        for (var k = 0; k < tiles.Count; k++)
        {
            // On all but the last a dashed line, and its words in the strip beyond it.
            var next = Texts(tiles[k]).Where(text => text.Text.Contains("starts here", StringComparison.Ordinal)).ToList();
            Assert.Equal(k + 1 < tiles.Count ? [$"tile {k + 2} starts here"] : [], next.Select(text => text.Text));
            var dashed = Boxes(tiles[k]).Where(box => box.IsDashed && box.Width < 0.01 && box.Height > 100).ToList();
            Assert.Equal(k + 1 < tiles.Count ? 1 : 0, dashed.Count);
            if (dashed.Count == 0) continue;
            Assert.Equal(margin + step, dashed[0].Left, Tiny);
            Assert.InRange(next[0].X, dashed[0].Left, dashed[0].Left + 10);

            // Two crosses in the join, and what else both show, at the same place of the template.
            var mine = crosses[k].Where(at => at.X > margin + step + 1 && at.X < margin + wide - 1).ToList();
            var others = crosses[k + 1].Where(at => at.X > margin + 1 && at.X < margin + 9).ToList();
            Assert.InRange(mine.Count, 2, 3);
            Assert.Equal(mine.Count, others.Count);
            Assert.All(mine, at => Assert.Contains(others, other => Math.Abs(other.X - at.X + step) < Tiny && Math.Abs(other.Y - at.Y) < Tiny));
            Assert.Equal(2, mine.Count(at => Math.Abs(at.X - margin - step - 5) < Tiny));
        }

        // Those along the template stand every 100 mm of it.
        var row = crosses.SelectMany((list, k) => list.Select(at => (X: at.X - margin + k * step, at.Y))).Where(at => Math.Abs(at.X / 100 - Math.Round(at.X / 100)) < 1e-3).ToList();
        Assert.True(row.Count >= 15 && row.Max(at => at.Y) - row.Min(at => at.Y) < Tiny);
        Assert.Equal(Enumerable.Range(0, 1 + (int)Math.Round(row.Max(at => at.X) / 100)), row.Select(at => (int)Math.Round(at.X / 100)).Distinct().Order());
    }

    // Two strokes of one length that halve each other.
    private static List<(double X, double Y)> Crosses(Page page)
    {
        var boxes = Boxes(page);
        var upright = boxes.Where(box => box.Width < 0.01 && (Math.Abs(box.Height - 4) < Tiny || Math.Abs(box.Height - 8) < Tiny)).ToList();
        return
        [
            .. boxes.Where(box => box.Height < 0.01).Where(level => upright.Exists(one =>
                    Math.Abs(one.Left - level.MiddleX) < Tiny && Math.Abs((one.Top + one.Bottom) / 2 - level.Top) < Tiny && Math.Abs(one.Height - level.Width) < Tiny))
                .Select(level => (level.MiddleX, level.Top)),
        ];
    }

    // Every subpath by itself, mm from the top left corner.
    private static List<Box> Boxes(Page page) =>
    [
        .. page.Paths.SelectMany(path => path.Select(sub => (Path: path, Box: sub.GetBoundingRectangle(), IsCurved: sub.Commands.OfType<PdfSubpath.CubicBezierCurve>().Any()))).Where(one => one.Box is not null)
            .Select(one => new Box(
                one.Box!.Value.Left * PointMm, (page.Height - one.Box.Value.Top) * PointMm, one.Box.Value.Right * PointMm, (page.Height - one.Box.Value.Bottom) * PointMm,
                one.Path.LineDashPattern is { Array.Count: 2 }, one.IsCurved)),
    ];

    // What is printed at one stroke of the pen, where it begins and its middle, mm from the top left corner.
    private static List<(string Text, double X, double Y, double Middle)> Texts(Page page) =>
    [
        .. page.Letters.GroupBy(letter => letter.TextSequence).Select(letters => (
            string.Concat(letters.Select(letter => letter.Value)), letters.First().StartBaseLine.X * PointMm, (page.Height - letters.First().StartBaseLine.Y) * PointMm,
            (letters.First().StartBaseLine.X + letters.Last().EndBaseLine.X) / 2 * PointMm)),
    ];
}
