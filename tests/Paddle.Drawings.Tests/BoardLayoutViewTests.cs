using System.Xml.Linq;
using Paddle.Design;
using Paddle.Design.Laminating;
using Paddle.Design.Layout;
using Paddle.Design.Units;
using Paddle.Design.Wood;
using Paddle.Drawings.Sheets;
using Paddle.Drawings.Tests.Support;
using Paddle.Drawings.Views;
using static Paddle.Drawings.Tests.Support.DrawnFile;
using static Paddle.Drawings.Tests.Support.Printed;

namespace Paddle.Drawings.Tests;

/// <summary>Boards as they are drawn: every place chalked by it, measured in the picture and read beside it.</summary>
public class BoardLayoutViewTests
{
    private const double Tiny = 0.002;

    private static DesignReport Long { get; } = SampleDesigns.Of("ottertail");

    private static DesignReport Short { get; } = SampleDesigns.Varied("sturgeon-nose");

    private static DesignReport Glued { get; } = PaddleDesigner.Design(SampleDesigns.Asked("beavertail", species: "sitka-spruce").GluedUp(new(
        [new(Wood("sitka-spruce"), 40), new(Wood("black-walnut"), 80)], true, Adhesive.All[0])));

    private static WoodInUse Wood(string species) => WoodInUse.Resolve(WoodCatalogue.Find(species)!, 12, 0.04, null, null);

    // Laid by hand, so that nothing of it is what the search happens to find: two alike and one narrow board, one way round and the other.
    private static LayoutOrder Order { get; } = new(
        [
            new("rack 7", 1850, 305, 33.3, "white-ash", 2, null, 0, [DefectSpan.Circle(1200, 60, 15), DefectSpan.Rectangle(0, -1, 1850, 21)]),
            new("narrow", 1701.8, 180.5, 28.6, "white-ash", 1, null, 0, []),
        ],
        [LayoutPaddle.Of("long", Long, 2, false), LayoutPaddle.Of("short", Short, 4, false), .. LayoutPaddle.Pieces("glued", Glued, 1, false)],
        5.2, 1, TimeSpan.FromSeconds(1), false);

    private static BoardLayout Layout { get; } = new(
        [
            new("long", 1, "rack 7", 1, 20.4, 101.3, 0), new("long", 2, "rack 7", 1, 1831.7, 214.9, 180),
            new("short", 1, "rack 7", 2, 310.2, 98.6, 0), new("glued: strip 1", 1, "narrow", 1, 15.5, 60.2, 0), new("glued: strip 2", 1, "narrow", 1, 1680.9, 120.7, 180),
        ],
        [new("short", 3, [new("no-room-left", "narrow", "The other paddles take its room.")], new(1200, 150, 30, "white-ash", "5/4"))],
        [
            Cut("rack 7", 1, 2, 34.55, [new(1490, 22.4, 330, 61.3), new(40, 160.1, 420, 44.7)]), Cut("rack 7", 2, 1, 17.2, []), Cut("narrow", 1, 2, 40, [new(0, 90.5, 600, 70.1)]),
        ],
        new(3, 5, 1.2, 30, 27.368, 11, null, null), 5.2, []);

    private static CutBoard Cut(string id, int copy, int paddles, double yield, Offcut[] offcuts) =>
        new(id, copy, paddles, 100, null, yield, 30, 3, "", [], [], offcuts, 9, null);

    [Theory]
    [InlineData(DrawingUnits.Metric, false)]
    [InlineData(DrawingUnits.Metric, true)]
    [InlineData(DrawingUnits.Inch, false)]
    [InlineData(DrawingUnits.Inch, true)]
    public void Outlines_off_cuts_and_defects_lie_where_they_are_measured_to(DrawingUnits units, bool isToFit)
    {
        var svg = XDocument.Parse(BoardLayoutSvg.Write(Order, Layout, SampleDesigns.Context(units), isToFit));
        var (inks, texts) = (Ink.Of(svg.Root!), Texts(svg));

        // To fit, the longest is as long as a sheet of paper less its edges; all are at one scale.
        var scale = isToFit ? 257.0 / 1850 : 1;
        var boards = inks.Where(ink => ink.Css.EndsWith(BoardLayoutView.BoardCss, StringComparison.Ordinal)).ToList();
        Assert.Equal(3, boards.Count);
        var end = double.PositiveInfinity;
        for (var k = boards.Count - 1; k >= 0; k--)
        {
            AssertBoard(boards[k], Layout.Boards[k], scale, inks, [.. texts.Where(text => text.Y < end)], units);
            end = boards[k].Top - 3;
            Assert.Equal(20, boards[k].Left, Tiny);
        }

        Said summary = new("5 paddles out of 3 boards, 27.37 board feet; # between outlines at least; near edges below", (5.2, Near));
        summary.AssertIn(Assert.Single(texts, text => text.Text.Contains("board feet", StringComparison.Ordinal)).Text, units);
        Assert.Contains(texts, text => text.Text == "Heron Lake hire paddle M");
        Assert.Equal("Heron Lake hire paddle M: boards", svg.Root!.Element(SvgReader.Svg + "title")!.Value);
        (summary with { Words = summary.Words + "." }).AssertIn(svg.Root!.Element(SvgReader.Svg + "desc")!.Value, units);
        var missing = Assert.Single(texts, text => text.Text == "Not placed: short × 3. The other paddles take its room.");
        Assert.True(missing.Y > boards[^1].Bottom && Assert.Single(texts, text => text.Text == "Engine 0.1.0").Y > missing.Y);
    }

    [Theory]
    [InlineData(DrawingUnits.Metric)]
    [InlineData(DrawingUnits.Inch)]
    public void One_board_is_as_wide_as_the_column_that_it_stands_in(DrawingUnits units)
    {
        var layout = Layout with { Placements = [Layout.Placements[3]], Boards = [Layout.Boards[2]], Totals = new(1, 1, 1, 30, 4, 11, null, null) };
        var svg = XDocument.Parse(SvgWriter.Write(BoardLayoutView.Board(Order, layout, units, 188)));
        var inks = Ink.Of(svg.Root!);
        var board = inks.Single(ink => ink.Css.EndsWith(BoardLayoutView.BoardCss, StringComparison.Ordinal));
        Assert.Equal((1, 187), (board.Left, board.Right), (a, b) => Math.Abs(a.Item1 - b.Item1) < Tiny && Math.Abs(a.Item2 - b.Item2) < Tiny);
        AssertBoard(board, Layout.Boards[2] with { Paddles = 1 }, 186 / 1701.8, inks, Texts(svg), units, layout);
        new Said("1 paddle out of 1 board, 4 board feet; # between outlines at least; near edges below.", (5.2, Near)).AssertIn(svg.Root!.Element(SvgReader.Svg + "desc")!.Value, units);
        Assert.Equal("The board with the outlines chalked on it, near edge below", svg.Root!.Element(SvgReader.Svg + "title")!.Value);
    }

    private static void AssertBoard(Ink drawn, CutBoard cut, double scale, List<Ink> all, List<Lettered> texts, DrawingUnits units, BoardLayout? layout = null)
    {
        var board = Order.Boards.Single(one => one.Id == cut.BoardId);
        Assert.Equal(scale * board.LengthMm, drawn.Width, Tiny);
        Assert.Equal(scale * board.WidthMm, drawn.Height, Tiny);
        (double X, double Y) On((double X, double Y) p) => ((p.X - drawn.Left) / scale, (drawn.Bottom - p.Y) / scale);
        var off = Tiny / scale;
        bool Same((double X, double Y) a, (double X, double Y) b) => Math.Abs(a.X - b.X) < off && Math.Abs(a.Y - b.Y) < off;
        var on = all.Where(ink => ink != drawn && ink.Top >= drawn.Top - Tiny && ink.Bottom <= drawn.Bottom + Tiny).ToList();

        var head = texts.Where(text => text.Text.StartsWith("Board ", StringComparison.Ordinal) && text.Y < drawn.Top).MaxBy(text => text.Y)!;
        var name = board.Id == "rack 7" ? $"Board rack 7, copy {cut.Copy}" : "Board narrow";
        var yield = (cut.BoardId, cut.Copy) switch { ("narrow", _) => "40", (_, 1) => "34.6", _ => "17.2" };
        new Said($"{name}: # × # × #; yield {yield} %", (board.LengthMm, Near), (board.WidthMm, Near), (board.ThicknessMm, Near)).AssertIn(head.Text, units);

        // Off-cuts: where they begin, how large, and the same lettered in their middle.
        var offcuts = on.Where(ink => ink.Layer == "stations").ToList();
        Assert.Equal(cut.Offcuts.Count, offcuts.Count);
        foreach (var (offcut, ink) in cut.Offcuts.Zip(offcuts))
        {
            Assert.True(Same((offcut.XMm, offcut.YMm), On((ink.Left, ink.Bottom))));
            Assert.True(Same((offcut.XMm + offcut.LengthMm, offcut.YMm + offcut.WidthMm), On((ink.Right, ink.Top))));
            var letter = Assert.Single(texts, text => text.Text.StartsWith("off-cut", StringComparison.Ordinal) && Math.Abs(text.X - ink.Centre.X) < Tiny && Math.Abs(text.Y - ink.Centre.Y) < Tiny);
            new Said("off-cut # × #", (offcut.LengthMm, Near), (offcut.WidthMm, Near)).AssertIn(letter.Text, units);
        }

        // A knot about its centre, and the strip of sapwood as far as it is on the board.
        var defects = on.Where(ink => ink.Css.EndsWith(BoardLayoutView.DefectCss, StringComparison.Ordinal)).ToList();
        Assert.Equal(board.Defects.Count, defects.Count);
        if (defects.Count > 0)
        {
            var (x, y) = On(defects[0].Centre);
            Assert.True(Math.Abs(x - 1200) < 0.6 && Math.Abs(y - 60) < 0.1 && Math.Abs(defects[0].Height / scale - 30) < 0.2 && Math.Abs(defects[0].Width / scale - 30) < 1.1);
            Assert.Equal((0, 20), (On((0, defects[1].Bottom)).Y, On((0, defects[1].Top)).Y), (a, b) => Math.Abs(a.Item1 - b.Item1) < off && Math.Abs(a.Item2 - b.Item2) < off);
        }

        // Every outline with its centre line and its name on the blade, and what to measure for it, the far one first.
        var places = (layout ?? Layout).Placements.Where(one => one.BoardId == cut.BoardId && one.BoardCopy == cut.Copy).OrderByDescending(one => one.YMm).ToList();
        var outlines = on.Where(ink => ink.Css.EndsWith(BoardLayoutView.OutlineCss, StringComparison.Ordinal)).ToList();
        var centres = on.Where(ink => ink.Layer == "centre").ToList();
        var rows = texts.Where(text => text.Text.Contains("centre line", StringComparison.Ordinal) && text.Y > drawn.Bottom).OrderBy(text => text.Y).ToList();
        Assert.Equal((places.Count, places.Count, places.Count), (outlines.Count, centres.Count, rows.Count));
        for (var k = 0; k < places.Count; k++)
        {
            var (place, paddle) = (places[k], Order.Paddles.Single(one => one.Id == places[k].PaddleId));
            var sign = place.RotatedDegrees == 180 ? -1 : 1;
            double Along(double x) => place.XMm + sign * x;
            foreach (var piece in paddle.Outline.Pieces.ToArray())
            {
                foreach (var side in (int[])[1, -1]) Assert.Contains(outlines[k].Points, p => Same((Along(piece.X3), place.YMm + side * piece.Y3), On(p)));
            }

            double tip = Along(paddle.LengthMm), middle = Along(paddle.Places.ThroatMm + 0.5 * paddle.Places.BladeMm);
            Assert.True(Same((place.XMm, place.YMm), On(centres[k].Points[0])) && Same((tip, place.YMm), On(centres[k].Points[1])));
            var called = Assert.Single(texts, text => text.Text == $"{place.PaddleId} no. {place.Copy}");
            Assert.InRange((called.X - drawn.Left) / scale, middle - 0.1 * paddle.Places.BladeMm, middle + 0.1 * paddle.Places.BladeMm);
            Assert.InRange(called.Y, drawn.Bottom - scale * place.YMm - 2, drawn.Bottom - scale * place.YMm);
            Said measure = paddle.IsStrip
                ? new($"{place.PaddleId} no. {place.Copy}: centre line # from the near edge; from the left end, ends at # and #, # wide",
                    (place.YMm, Near), (Math.Min(place.XMm, tip), Near), (Math.Max(place.XMm, tip), Near), (outlines[k].Height / scale, Near))
                : new($"{place.PaddleId} no. {place.Copy}: centre line # from the near edge; from the left end, top of the grip at #, throat at #, tip at #",
                    (place.YMm, Near), (place.XMm, Near), (Along(paddle.Places.ThroatMm), Near), (tip, Near));
            measure.AssertIn(rows[k].Text, units);
        }
    }
}
