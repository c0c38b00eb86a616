using System.Text.Json;
using NetTopologySuite.Geometries;
using Paddle.Design.Layout;
using Paddle.Design.Tests.House;
using static Paddle.Design.Tests.Layout.LayoutSamples;

namespace Paddle.Design.Tests.Layout;

public class BoardLayoutTests
{
    private static IReadOnlyList<RackBoard> Rack(int count, int seed)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, count).Select(k => Board($"b{k}", 1650 + 50 * random.Next(40), 170 + 10 * random.Next(25)))];
    }

    // The published order of an invented fleet, 60 paddles of four kinds on 40 boards. First fit decreasing by bounding boxes is the way that most
    // cutting plans begin with.
    [Fact]
    public void True_outlines_save_a_sixth_of_what_bounding_boxes_take_on_the_published_order()
    {
        var request = JsonSerializer.Deserialize<BoardLayoutRequest>(Repository.Read("docs/examples/board-layout.json"), JsonSerializerOptions.Web)!;
        var order = LayoutOrderReader.Read(request, [.. request.Paddles!.Select(paddle => PaddleDesigner.Design(paddle.Design!))], isShopping: false);
        Assert.Equal((60, 40), (order.Paddles.Sum(paddle => paddle.Count), order.Boards.Sum(board => board.Count!.Value)));
        AssertSaves(order);
    }

    // As many kinds as paddles: an outfitter's customers, each with a paddle of their own.
    [Fact, Trait(Sweep.Name, Sweep.Full)]
    public void So_do_they_where_every_paddle_is_its_own()
    {
        var families = Families.ToArray();
        AssertSaves(Order(Rack(Sweep.Of(14, 40), 1), [.. Enumerable.Range(0, Sweep.Of(20, 60)).Select(k => NewPaddle($"p{k}", 760 + 37 * k % 200, families[k % families.Length]))], seconds: 2));
    }

    private static void AssertSaves(LayoutOrder order)
    {
        var layout = Solve(order);
        Assert.Empty(layout.Unplaced);
        AssertSound(order, layout);
        Assert.InRange(layout.Totals.BoardAreaM2, 0, 0.85 * BoundingBoxes(order));
    }

    public static TheoryData<int> Seeds => [.. Sweep.Of<int[]>([3], [3, 7, 12])];

    [Theory, Trait(Sweep.Name, Sweep.Full), MemberData(nameof(Seeds))]
    public void Few_paddles_take_no_more_than_three_hundredths_over_the_best_of_all_ways(int seed)
    {
        var random = new Random(seed);
        var families = Families.ToArray();
        IReadOnlyList<LayoutPaddle> paddles = [.. Enumerable.Range(0, 5).Select(k => NewPaddle($"p{k}", 780 + random.Next(140), families[random.Next(families.Length)]))];
        // No board is wide enough for three, so that every way is a choice of ones and pairs, whose least widths are known.
        IReadOnlyList<RackBoard> boards = [.. Enumerable.Range(0, 5).Select(k => Board($"b{k}", 1660 + random.Next(200), 175 + random.Next(120)))];
        var order = Order(boards, paddles, seconds: 2);
        var layout = Solve(order);
        AssertSound(order, layout);

        var least = paddles.Select(a => paddles.Select(b => boards.Select(board => Holds(board, a, b, ReferenceEquals(a, b))).ToArray()).ToArray()).ToArray();
        var best = Best(boards, least, 0, 0);
        Assert.Equal(best.Placed, layout.Totals.Paddles);
        Assert.InRange(layout.Totals.BoardAreaM2, best.AreaM2 - 1e-4, 1.03 * best.AreaM2);
    }

    [Fact]
    public void The_same_order_is_answered_the_same()
    {
        var order = Order(Rack(6, 5), [NewPaddle("a", 860, count: 5), NewPaddle("b", 800, "beavertail", 4)]);
        Assert.Equal(Solve(order).Placements, Solve(order).Placements);
    }

    [Fact]
    public void A_caller_who_has_gone_ends_the_search()
    {
        using var gone = new CancellationTokenSource();
        gone.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => BoardLayouter.Solve(Order(Rack(20, 2), [NewPaddle("a", 860, count: 30)]), gone.Token));
    }

    // Knots drawn at random: no outline holds one, and none lies within 12 mm of grip, shaft or the root of the blade.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void No_outline_holds_a_defect(int seed)
    {
        var random = new Random(seed);
        var knots = Enumerable.Range(0, 4).Select(_ => (X: 100 + 1600 * random.NextDouble(), Y: 300 * random.NextDouble(), R: 4 + 8 * random.NextDouble())).ToList();
        (double X, double Y)[] crack = [(0, 120 + 60 * random.NextDouble()), (140, 150), (0, 190)];
        var board = Board(
            "board", 1800, 330, 1, null, [.. knots.Select(knot => DefectSpan.Circle(knot.X, knot.Y, knot.R)), DefectSpan.Polygon(crack), DefectSpan.Rectangle(0, 318, 1800, 12)]);
        var order = Order([board], [NewPaddle("a", 850, count: 3)]);
        var layout = Solve(order);
        AssertSound(order, layout);
        Assert.NotEmpty(layout.Placements);

        List<Geometry> bad = [.. knots.Select(knot => Circle(knot.X, knot.Y, knot.R)), Rectangle(0, 318, 1800, 12), new Polygon(new([.. crack.Append(crack[0]).Select(p => new Coordinate(p.X, p.Y))]))];
        foreach (var place in layout.Placements)
        {
            var outline = OutlineOf(order, place);
            Assert.All(bad, defect => Assert.False(outline.Intersects(defect)));
            var sign = place.RotatedDegrees == 0 ? 1 : -1;
            var root = place.XMm + sign * order.Paddles[0].GuardedToMm;
            var guarded = outline.Intersection(Rectangle(Math.Min(place.XMm, root), 0, Math.Abs(root - place.XMm), 330));
            Assert.All(bad, defect => Assert.True(guarded.Distance(defect) >= LayoutShape.DefectMarginMm - 0.1));
        }
    }

    [Fact]
    public void Required_paddles_come_before_optional_ones()
    {
        var order = Order([Board("board", 1700, 170)], [NewPaddle("spare", 830, isOptional: true), NewPaddle("guest", 860)]);
        var layout = Solve(order);
        Assert.Equal("guest", Assert.Single(layout.Placements).PaddleId);
        Assert.Equal("no-room-left", layout.Unplaced[0].Reasons[0].Code);
    }

    private static readonly Dictionary<string, RackBoard> StoppingBoards = new()
    {
        { "no-board-of-species", Board("board", 1700, 260) with { Species = "black-cherry" } },
        { "thickness", Board("board", 1700, 260) with { ThicknessMm = 27 } },
        { "grain", Board("board", 1700, 260) with { GrainSlope = 0.06 } },
        { "length", Board("board", 1400, 260) },
        { "width", Board("board", 1700, 140) },
        { "defects", Board("board", 1560, 150, 1, null, DefectSpan.Circle(600, 75, 10)) },
    };

    public static TheoryData<string> Stops => [.. StoppingBoards.Keys];

    [Theory]
    [MemberData(nameof(Stops))]
    public void What_stopped_a_paddle_is_named_and_the_board_that_would_do_does(string code)
    {
        var paddle = NewPaddle("a", 860);
        var missing = Assert.Single(Solve(Order([StoppingBoards[code]], [paddle])).Unplaced);
        Assert.Equal(code, missing.Reasons[0].Code);

        var smallest = missing.SmallestBoard;
        var enough = new RackBoard("own", smallest.LengthMm, smallest.WidthMm, smallest.ThicknessMm, smallest.Species, 1, null, 0, []);
        Assert.Empty(Solve(Order([enough], [paddle])).Unplaced);
        Assert.NotEmpty(Solve(Order([enough with { WidthMm = smallest.WidthMm - 0.2 }], [paddle])).Unplaced);
        Assert.NotEmpty(Solve(Order([enough with { LengthMm = smallest.LengthMm - 0.2 }], [paddle])).Unplaced);
        Assert.NotEmpty(Solve(Order([enough with { ThicknessMm = smallest.ThicknessMm - 0.2 }], [paddle])).Unplaced);
    }

    [Fact]
    public void Off_cuts_are_clear_of_the_paddles_and_of_each_other()
    {
        var order = Order(Rack(3, 9), [NewPaddle("a", 860, count: 3)]);
        var layout = Solve(order);
        foreach (var cut in layout.Boards)
        {
            Geometry[] taken = [.. layout.Placements.Where(one => one.BoardId == cut.BoardId).Select(one => OutlineOf(order, one))];
            Geometry[] kept = [.. cut.Offcuts.Select(one => Rectangle(one.XMm, one.YMm, one.LengthMm, one.WidthMm))];
            Assert.All(kept, one => Assert.All(taken, paddle => Assert.True(one.Distance(paddle) >= GapMm - 0.1)));
            Assert.All(kept, one => Assert.All(kept, other => Assert.True(ReferenceEquals(one, other) || one.Intersection(other).Area < 1e-6)));
        }
    }

    // Source: the hardwood trade's rule as a supplier's page works it, 1 x 6 x 96 in = 4 board feet; under an inch counts as an inch (from memory).
    [Theory]
    [InlineData(25.4, 4)]
    [InlineData(19.05, 4)]
    [InlineData(38.1, 6)]
    public void Board_feet_are_those_of_the_trade(double thicknessMm, double feet) =>
        Assert.Equal(feet, (Board("board", 96 * 25.4, 6 * 25.4) with { ThicknessMm = thicknessMm }).BoardFeet, 9);

    [Fact]
    public void Waste_yield_and_cost_add_up()
    {
        var order = Order([Board("x", 1700, 260, 3, 40)], [NewPaddle("a", 860, count: 4)]);
        var totals = Solve(order).Totals;
        Assert.Equal(2, totals.Boards);
        Assert.Equal(80, totals.Cost);
        Assert.Equal(20, totals.CostPerPaddle);
        Assert.Equal(2 * 1.7 * 0.26, totals.BoardAreaM2, 6);
        Assert.Equal(100 * 4 * order.Paddles[0].AreaMm2 * 1e-6 / totals.BoardAreaM2, totals.YieldPercent, 0.05);
        Assert.Equal(2 * 1.7 * 0.26 * 33.3 - 4e-3 * order.Paddles[0].VolumeCm3, totals.WasteLitres, 0.01);
    }

    // A shop's boards: two narrow ones at 21 hold what a wide one at 40 does.
    [Theory]
    [InlineData(21, "wide")]
    [InlineData(19, "narrow")]
    public void A_shopping_list_is_the_cheapest(double narrowPrice, string bought)
    {
        var order = Order([Board("wide", 1700, 260, null, 40), Board("narrow", 1700, 160, null, narrowPrice)], [NewPaddle("a", 860, count: 4)], isByPrice: true);
        var layout = Solve(order);
        AssertSound(order, layout);
        Assert.All(layout.Boards, cut => Assert.Equal(bought, cut.BoardId));
        Assert.Equal(Math.Min(80, 4 * narrowPrice), layout.Totals.Cost);
    }

    // Every number of every pattern tried: the integer program against enumeration.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void The_integer_program_agrees_with_enumeration(int seed)
    {
        var random = new Random(seed);
        Arrangement none = new([], 0);
        CuttingPattern[] patterns = [.. Enumerable.Range(0, 6).Select(k => new CuttingPattern(k % 3, [random.Next(3), random.Next(3)], none))];
        CuttingOrder order = new([2, 2, 2], [3, 2], [1, 1], [50 + random.Next(50), 50 + random.Next(50), 50 + random.Next(50)]);
        var times = LayoutProgram.Solve(patterns, order, TimeSpan.FromSeconds(5));

        var best = Enumerable.Range(0, (int)Math.Pow(3, 6)).Select(code => Enumerable.Range(0, 6).Select(k => code / (int)Math.Pow(3, k) % 3).ToArray())
            .Where(tried => Enumerable.Range(0, 3).All(board => patterns.Select((pattern, k) => pattern.Board == board ? tried[k] : 0).Sum() <= order.Supply[board]))
            .Max(Worth);
        Assert.Equal(best, Worth(times));

        (int Required, int Optional, long Saved) Worth(int[] tried)
        {
            int[] made = [.. Enumerable.Range(0, 2).Select(kind => patterns.Select((pattern, k) => tried[k] * pattern.Counts[kind]).Sum())];
            var required = made.Select((count, kind) => Math.Min(count, order.Required[kind])).Sum();
            var all = made.Select((count, kind) => Math.Min(count, order.Required[kind] + order.Optional[kind])).Sum();
            return (required, all - required, -patterns.Select((pattern, k) => tried[k] * order.Burden[pattern.Board]).Sum());
        }
    }

    private static (int Placed, double AreaM2) Best(IReadOnlyList<RackBoard> boards, bool[][][] holds, int next, int done)
    {
        if (next == boards.Count) return (System.Numerics.BitOperations.PopCount((uint)done), 0);
        var best = Best(boards, holds, next + 1, done);
        for (var a = 0; a < holds.Length; a++)
        {
            for (var b = a; b < holds.Length; b++)
            {
                var taken = 1 << a | 1 << b;
                if ((done & taken) != 0 || !holds[a][b][next]) continue;
                var (placed, area) = Best(boards, holds, next + 1, done | taken);
                area += boards[next].AreaM2;
                if (placed > best.Placed || (placed == best.Placed && area < best.AreaM2 - 1e-9)) best = (placed, area);
            }
        }

        return best;
    }

    private static bool Holds(RackBoard board, LayoutPaddle a, LayoutPaddle b, bool isAlone) =>
        board.LengthMm >= a.LengthMm && board.LengthMm >= b.LengthMm
        && board.WidthMm >= (isAlone ? 2 * a.HalfWidthMm : LeastPairMm(a, b, board.LengthMm));

    private static double BoundingBoxes(LayoutOrder order)
    {
        var open = new List<(RackBoard Board, List<(double X, double Y, double L, double W)> Boxes)>();
        var rest = order.Boards.SelectMany(board => Enumerable.Repeat(board, board.Count!.Value)).OrderBy(board => board.AreaM2).ToList();
        foreach (var paddle in order.Paddles.SelectMany(paddle => Enumerable.Repeat(paddle, paddle.Count)).OrderByDescending(paddle => paddle.LengthMm * paddle.HalfWidthMm))
        {
            if (open.Exists(one => Put(one.Board, one.Boxes, paddle))) continue;
            // What finds no box at all is left out, to the boxes' good.
            var (board, boxes) = rest.Select(board => (board, boxes: new List<(double X, double Y, double L, double W)>())).FirstOrDefault(one => Put(one.board, one.boxes, paddle));
            if (board is null) continue;
            rest.Remove(board);
            open.Add((board, boxes));
        }

        return open.Sum(one => one.Board.AreaM2);

        static bool Put(RackBoard board, List<(double X, double Y, double L, double W)> boxes, LayoutPaddle paddle)
        {
            var (length, width) = (paddle.LengthMm, 2 * paddle.HalfWidthMm);
            foreach (var x in boxes.Select(box => box.X + box.L + GapMm).Append(0).Order())
            {
                foreach (var y in boxes.Select(box => box.Y + box.W + GapMm).Append(0).Order())
                {
                    if (x + length > board.LengthMm || y + width > board.WidthMm) continue;
                    if (!boxes.TrueForAll(box => x >= box.X + box.L + GapMm - 1e-9 || box.X >= x + length + GapMm - 1e-9
                        || y >= box.Y + box.W + GapMm - 1e-9 || box.Y >= y + width + GapMm - 1e-9)) continue;
                    boxes.Add((x, y, length, width));
                    return true;
                }
            }

            return false;
        }
    }
}
