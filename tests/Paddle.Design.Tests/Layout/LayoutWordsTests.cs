using Paddle.Design.Build;
using Paddle.Design.Layout;
using Paddle.Design.Outline;
using Paddle.Design.Units;
using static Paddle.Design.Tests.Layout.LayoutSamples;

namespace Paddle.Design.Tests.Layout;

/// <summary>Figures and words of an answer about boards, worked out by hand for rectangles laid by hand.</summary>
public class LayoutWordsTests
{
    // Nothing of a rectangle needs to be looked up.
    private static LayoutPaddle Slab(string id, double lengthMm, double widthMm, int count, double volumeCm3) => new(
        id, "white-ash", new(CubicBezier.Hermite(0, widthMm / 2, 0, lengthMm, widthMm / 2, 0)), new(0, 0, 0, 0, lengthMm), 29.2, 0.04, volumeCm3, count, false);

    private static readonly LayoutPaddle Long = Slab("slab", 1500, 100, 2, 3000), Short = Slab("short", 400, 80, 1, 500);

    private static BoardLayout Told(RackBoard board, DrawingUnits units, Laid[] laid, bool isCutShort = false)
    {
        var order = Order([board], [Long, Short]);
        int[] kinds = [.. laid.Select(one => one.Kind)];
        return LayoutReport.Of(order, new([new(0, kinds, new(laid, 230))], [.. order.Paddles.Select(paddle => LayoutShape.Of(paddle, GapMm))], (_, _) => true, isCutShort), units);
    }

    private static readonly Laid[] Three = [new(0, 20, 60, false), new(0, 70, 180, true), new(1, 1650, 50, false)];

    [Theory]
    [InlineData(DrawingUnits.Metric, "1610 mm", "33.3 mm", "25 mm")]
    [InlineData(DrawingUnits.Inch, "63 3/8 in", "1 5/16 in", "1 in")]
    public void A_board_is_told_with_its_sums_and_cuts(DrawingUnits units, string crossCut, string thick, string end)
    {
        var layout = Told(Board("b", 2200, 300, price: 61.5), units, Three, isCutShort: true);
        Assert.Equal(
            [new("short", 1, "b", 1, 1650, 50, 0), new("slab", 1, "b", 1, 20, 60, 0), new("slab", 2, "b", 1, 1570, 180, 180)], layout.Placements);
        Assert.Empty(layout.Unplaced);
        Assert.Equal(5.2, layout.GapMm);

        // From 10 to 230 mm across; 20 mm between the two; 332 of 660 thousand square millimetres.
        var cut = Assert.Single(layout.Boards);
        Assert.Equal((3, 220, 20, 50.3, 29.2, 4.1), (cut.Paddles, cut.UsedWidthMm, cut.LeastGapMm!.Value, cut.YieldPercent, cut.ThickestMm, cut.ToPlaneMm));
        Assert.Equal(["slab no. 1 and slab no. 2"], cut.HeadToTail);
        Assert.Equal($"{thick} as measured: hardwood 6/4 S2S is sold at {thick}, its name being that of the rough board in quarters or inches.", cut.Thickness);
        Assert.Equal(
            [
                "Chalk every outline from the near edge and the left end of board b, then look again for checks at the ends.",
                // Half way between 1570 and 1650 mm.
                $"Cross-cut at {crossCut} from the left end.", "Saw between slab no. 2 and slab no. 1 along the gap, then free slab no. 2.", "Free slab no. 1.", "Free short no. 1.",
            ],
            cut.Cuts);

        // 2200 x 300 x 33.3 mm: 21.98 L, and 9.31 feet of 144 cubic inches; 3000 + 3000 + 500 cm³ of it are paddles.
        var feet = Math.Round(2200 * 300 * 33.3 / (25.4 * 25.4 * 25.4 * 144), 2);
        Assert.Equal(new(1, 3, 0.66, 50.3, feet, 15.48, 61.5, 20.5), layout.Totals);
        Assert.Equal((feet, 61.5), (cut.BoardFeet, cut.Cost!.Value));

        Assert.Equal(["look-first", "near-the-end", "cut-short"], layout.Notes.Select(note => note.Code));
        Assert.StartsWith("Look at both faces and the ends before you saw: checks, hidden knots and wind are not on this plan.", layout.Notes[0].Text, StringComparison.Ordinal);
        Assert.StartsWith($"On b (copy 1) an outline comes within {end} of the board's end, where dried boards often have checks", layout.Notes[1].Text, StringComparison.Ordinal);
        Assert.StartsWith("The search ended with the time limit", layout.Notes[2].Text, StringComparison.Ordinal);
    }

    // An inch is lost at an end to checks, and no less is warned of.
    [Theory]
    [InlineData(24, 1560, true)]
    [InlineData(25, 1550, false)]
    [InlineData(30, 1554, true)]
    [InlineData(30, 1555, false)]
    public void An_outline_near_an_end_is_warned_of(int startMm, double boardMm, bool isWarned) => Assert.Equal(
        isWarned, Told(Board("b", boardMm, 300), default, [new(0, startMm, 60, false)]).Notes.Any(note => note.Code == "near-the-end"));

    // Half a millimetre is measured less often enough.
    [Theory]
    [InlineData(44.4, "44.4 mm as measured: hardwood 8/4 S2S is sold at 44.4 mm")]
    [InlineData(32.9, "32.9 mm as measured: hardwood 6/4 S2S is sold at 33.3 mm")]
    [InlineData(32.7, "32.7 mm as measured: hardwood 5/4 S2S is sold at 27 mm")]
    [InlineData(20, "20 mm as measured: thinner than any stock that is sold surfaced.")]
    public void A_thickness_is_named_by_what_is_sold(double thicknessMm, string words) => Assert.StartsWith(
        words, Told(Board("b", 2200, 300) with { ThicknessMm = thicknessMm }, default, Three).Boards[0].Thickness, StringComparison.Ordinal);

    // Above all three 300 - 235.2 mm all along, then beside the two long ones above the short one; slices of 10 mm begin clear of what ends at 1570 + 5.2 mm.
    [Fact]
    public void Off_cuts_are_the_largest_that_stay_clear()
    {
        var offcuts = Told(Board("b", 2200, 300), default, Three).Boards[0].Offcuts;
        Assert.Equal([(0, 235.2, 2200, 64.8), (1580, 95.2, 620, 140)], offcuts.Select(one => (one.XMm, one.YMm, one.LengthMm, one.WidthMm)), (a, b) =>
            a.XMm == b.XMm && Math.Abs(a.YMm - b.YMm) < 0.11 && a.LengthMm == b.LengthMm && Math.Abs(a.WidthMm - b.WidthMm) < 0.21);
    }

    // Nobody keeps one shorter than 300 or narrower than 40 mm (common practice, no source).
    [Theory]
    [InlineData(1800, 110, false)]
    [InlineData(1810, 110, true)]
    [InlineData(1600, 149, false)]
    [InlineData(1600, 151, true)]
    public void Off_cuts_too_small_are_none(double lengthMm, double widthMm, bool isKept) =>
        Assert.Equal(isKept, Told(Board("b", lengthMm, widthMm), default, [new(0, 0, 55, false)]).Boards[0].Offcuts.Count > 0);

    public static TheoryData<DrawingUnits, string, string> Stops => new()
    {
        { DrawingUnits.Metric, "thickness", "Board b is 27 mm thick; the thickest section is 29.2 mm and 1 mm is planed off, 30.2 mm in all. State wood.boardThicknessMm to have a paddle that this board holds." },
        { DrawingUnits.Inch, "thickness", "Board b is 1 1/16 in thick; the thickest section is 1 5/32 in and 3/64 in is planed off, 1 3/16 in in all. State wood.boardThicknessMm to have a paddle that this board holds." },
        { DrawingUnits.Metric, "grain", "The grain of board b runs at 1 in 17; the design counts with 1 in 25 and would be weaker than computed. Make it with wood.slopeOfGrain 0.060, or take straighter wood." },
        { DrawingUnits.Metric, "length", "Board b is 1400 mm long, the paddle 1500 mm." },
        { DrawingUnits.Inch, "length", "Board b is 55 1/8 in long, the paddle 59 1/16 in." },
        { DrawingUnits.Metric, "width", "Board b is 90 mm wide, the paddle 100 mm." },
        { DrawingUnits.Inch, "width", "Board b is 3 17/32 in wide, the paddle 3 15/16 in." },
        { DrawingUnits.Metric, "defects", "Board b is large enough, but a defect or sapwood lies inside the outline, or within 12 mm of grip, shaft and throat, wherever it is laid." },
        { DrawingUnits.Inch, "defects", "Board b is large enough, but a defect or sapwood lies inside the outline, or within 1/2 in of grip, shaft and throat, wherever it is laid." },
        { DrawingUnits.Metric, "no-room-left", "Board b would hold it alone; the other paddles take its room." },
    };

    [Theory, MemberData(nameof(Stops))]
    public void What_stops_a_paddle_is_said_in_the_shops_units(DrawingUnits units, string code, string words)
    {
        var board = Board("b", 1700, 150);
        board = code switch
        {
            "thickness" => board with { ThicknessMm = 27 },
            "grain" => board with { GrainSlope = 0.06 },
            "length" => board with { LengthMm = 1400 },
            "width" => board with { WidthMm = 90 },
            _ => board,
        };
        var missing = new LayoutReasons(Order([board], [Long]), units).Of(Long, 2, _ => code == "no-room-left");
        Assert.Equal(("slab", 2), (missing.PaddleId, missing.Count));
        Assert.Equal([new(code, "b", words)], missing.Reasons);

        // To the tenth of a millimetre above; 29.2 mm and 1 mm planed off come out of what is sold at 33.3 mm.
        Assert.Equal(new(1500, 100, 30.2, "white-ash", "hardwood 6/4 S2S"), missing.SmallestBoard);
    }

    // One of 100 mm is stored a hair above itself.
    [Fact]
    public void The_smallest_board_is_no_tenth_too_wide_and_does()
    {
        var smallest = new LayoutReasons(Order([Board("b", 1700, 90)], [Long]), default).Of(Long, 1, _ => false).SmallestBoard;
        Assert.True(2 * Long.HalfWidthMm > 100 && smallest.WidthMm == 100);
        var board = Board("own", smallest.LengthMm, smallest.WidthMm) with { ThicknessMm = smallest.ThicknessMm };
        Assert.Empty(Solve(Order([board], [Long with { Count = 1 }], seconds: 1)).Unplaced);
    }

    [Fact]
    public void The_most_promising_three_boards_are_told_of()
    {
        RackBoard[] rack =
        [
            Board("other", 1700, 200) with { Species = "black-cherry" }, Board("thin", 1700, 200) with { ThicknessMm = 20 }, Board("short", 1300, 200), Board("shorter", 1200, 400), Board("narrow", 1700, 90),
        ];
        var missing = new LayoutReasons(Order(rack, [Long]), default).Of(Long, 1, _ => false);
        Assert.Equal([("width", "narrow"), ("length", "shorter"), ("length", "short")], missing.Reasons.Select(reason => (reason.Code, reason.BoardId!)));
        var none = new LayoutReasons(Order(rack[..1], [Long]), default).Of(Long, 1, _ => false);
        Assert.Equal([new("no-board-of-species", null, "No board of white ash is in the rack.")], none.Reasons, (a, b) => a.Code == b.Code && a.BoardId == b.BoardId && string.Equals(a.Message, b.Message, StringComparison.OrdinalIgnoreCase));
    }

    // Kerf and twice what the saw leaves outside the line: 2 mm of a band saw, 3 of a jigsaw (common practice, no source).
    [Theory]
    [InlineData(null, null, null, 5.2)]
    [InlineData("band-saw", null, null, 5.2)]
    [InlineData("jigsaw", null, null, 7.5)]
    [InlineData(null, 2.0, null, 6)]
    [InlineData("jigsaw", 2.0, null, 8)]
    [InlineData(null, null, 3.0, 3)]
    [InlineData(null, 2.0, 1.0, 2)]
    [InlineData(null, null, 0.0, 1.2)]
    [InlineData("jigsaw", null, 0.0, 1.5)]
    public void The_gap_is_the_kerf_and_what_is_left_outside_both_lines(string? saw, double? kerfMm, double? clearanceMm, double gapMm)
    {
        BoardLayoutRequest request = new() { Boards = [], Paddles = [], Saw = saw, KerfMm = kerfMm, ClearanceMm = clearanceMm };
        var order = LayoutOrderReader.Read(request, [], isShopping: false);
        Assert.Equal(gapMm, order.GapMm, 9);
        Assert.Equal((1, 2), (order.PlaningMm, order.Limit.TotalSeconds));
        Assert.Equal(5.2, LayoutOrderReader.GapMm(OutlineSaw.BandSaw), 9);
        Assert.Equal(7.5, LayoutOrderReader.GapMm(OutlineSaw.Jigsaw), 9);
    }

    [Fact]
    public void A_board_is_read_with_its_grain_sapwood_and_number()
    {
        RackBoardRequest asked = new() { Id = "b", LengthMm = 1800, WidthMm = 250, ThicknessMm = 33.3, Species = "white-ash", GrainDegrees = 3, SapwoodNearMm = 20, SapwoodFarMm = 15, PriceEach = 40 };
        var board = LayoutOrderReader.Board(asked, isShopping: false);
        Assert.Equal((1, 40), (board.Count, board.Price));
        Assert.Null(LayoutOrderReader.Board(asked, isShopping: true).Count);
        Assert.Equal(Math.Tan(3 * Math.PI / 180), board.GrainSlope, 9);
        Assert.Equal([20, 250 - 15], [board.Defects[0].Corners().Max(corner => corner.YMm), board.Defects[1].Corners().Min(corner => corner.YMm)]);
        Assert.All(board.Defects, strip => Assert.Equal((0.5, 1799.5), (strip.Corners().Min(corner => corner.XMm), strip.Corners().Max(corner => corner.XMm))));
    }
}
