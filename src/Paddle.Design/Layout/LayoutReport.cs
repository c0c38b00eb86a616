using Paddle.Design.Boards;
using Paddle.Design.Build;
using Paddle.Design.Units;
using Paddle.Design.Wood;

namespace Paddle.Design.Layout;

/// <summary>Tells a solved order: places, boards, cuts, off-cuts and sums.</summary>
internal static class LayoutReport
{
    private const double EndChecksMm = 25;

    /// <summary>Solves an order and tells it.</summary>
    /// <param name="units">Units that the shop measures in.</param>
    /// <exception cref="OperationCanceledException">The caller has gone.</exception>
    public static BoardLayout Of(LayoutOrder order, DrawingUnits units, CancellationToken cancellation = default) =>
        Of(order, BoardLayouter.Solve(order, cancellation), units);

    /// <summary>Tells a solved order.</summary>
    /// <param name="units">Units that the shop measures in.</param>
    public static BoardLayout Of(LayoutOrder order, SolvedLayout solved, DrawingUnits units)
    {
        var placements = Placements(order, solved);
        CutBoard[] boards = [.. solved.Boards.Select((filled, k) => Board(order, solved, filled, [.. placements[k]], units))];
        var reasons = new LayoutReasons(order, units);
        UnplacedPaddle[] unplaced =
        [
            .. order.Paddles
                .Select((paddle, p) => (Paddle: paddle, Index: p, Missing: paddle.Count - solved.Boards.Sum(one => one.Paddles.Count(q => q == p))))
                .Where(one => one.Missing > 0)
                .Select(one => reasons.Of(one.Paddle, one.Missing, b => solved.Fits(b, one.Index))),
        ];
        return new([.. placements.SelectMany(one => one)], unplaced, boards, Totals(order, solved), Math.Round(order.GapMm, 2), Notes(order, solved, placements, units));
    }

    private static List<PaddlePlacement>[] Placements(LayoutOrder order, SolvedLayout solved)
    {
        int[] copies = new int[order.Paddles.Count], boardCopies = new int[order.Boards.Count];
        return
        [
            .. solved.Boards.Select(filled =>
            {
                var board = ++boardCopies[filled.Board];
                return filled.Arrangement.Paddles.OrderBy(one => one.CentreMm).ThenBy(one => one.StartMm).Select(one => new PaddlePlacement(
                    order.Paddles[one.Kind].Id, ++copies[one.Kind], order.Boards[filled.Board].Id, board,
                    Math.Round(one.IsTurned ? one.StartMm + order.Paddles[one.Kind].LengthMm : one.StartMm, 3), Math.Round(one.CentreMm, 3), one.IsTurned ? 180 : 0)).ToList();
            }),
        ];
    }

    private static CutBoard Board(LayoutOrder order, SolvedLayout solved, FilledBoard filled, PaddlePlacement[] placements, DrawingUnits units)
    {
        var board = order.Boards[filled.Board];
        LayoutPaddle[] paddles = [.. placements.Select(order.PaddleOf)];
        var low = placements.Zip(paddles, (one, paddle) => one.YMm - paddle.HalfWidthMm).Min();
        var high = placements.Zip(paddles, (one, paddle) => one.YMm + paddle.HalfWidthMm).Max();
        var gap = ExactClearance.LeastMm([.. placements.Zip(paddles, (one, paddle) => ExactClearance.Outline(paddle, one))]);
        var thickest = paddles.Max(paddle => paddle.ThickestMm);
        return new(
            board.Id, placements[0].BoardCopy, placements.Length, Math.Round(high - low, 2), gap is { } mm ? Math.Round(mm, 2) : null,
            Math.Round(100e-6 * paddles.Sum(paddle => paddle.AreaMm2) / board.AreaM2, 1), Math.Round(thickest, 1), Math.Round(board.ThicknessMm - thickest, 1),
            Thickness(board, units), [.. Pairs(placements, paddles)], Cuts(board, placements, paddles, units),
            Offcuts.Of(board, filled.Arrangement.Paddles, solved.Shapes, order.GapMm), Math.Round(board.BoardFeet, 2), board.Price);
    }

    // Sold by quarters of an inch of its rough thickness: what is measured is less, by planing and drying.
    private static string Thickness(RackBoard board, DrawingUnits units)
    {
        var isSoftwood = WoodCatalogue.Find(board.Species)!.IsSoftwood;
        var stock = (isSoftwood ? BoardStock.Softwood : BoardStock.Hardwood).LastOrDefault(one => one.ThicknessMm <= board.ThicknessMm + 0.5);
        var measured = $"{DrawnLength.Text(board.ThicknessMm, units)} as measured";
        return stock is null
            ? $"{measured}: thinner than any stock that is sold surfaced."
            : $"{measured}: {stock.Name} is sold at {DrawnLength.Text(stock.ThicknessMm, units)}, its name being that of the rough board in quarters or inches.";
    }

    private static IEnumerable<string> Pairs(PaddlePlacement[] placements, LayoutPaddle[] paddles)
    {
        for (var k = 1; k < placements.Length; k++)
        {
            var (a, b) = (placements[k - 1], placements[k]);
            var overlap = Math.Min(End(a, paddles[k - 1]), End(b, paddles[k])) - Math.Max(Start(a, paddles[k - 1]), Start(b, paddles[k]));
            if (!paddles[k].IsStrip && !paddles[k - 1].IsStrip && a.RotatedDegrees != b.RotatedDegrees && overlap > 0.5 * Math.Min(paddles[k - 1].LengthMm, paddles[k].LengthMm)) yield return $"{a.Name} and {b.Name}";
        }
    }

    private static string[] Cuts(RackBoard board, PaddlePlacement[] placements, LayoutPaddle[] paddles, DrawingUnits units)
    {
        var spans = placements.Select((one, k) => (One: one, From: Start(one, paddles[k]), To: End(one, paddles[k]), Half: paddles[k].HalfWidthMm)).OrderBy(span => span.From).ToList();
        var groups = new List<List<(PaddlePlacement One, double From, double To, double Half)>>();
        foreach (var span in spans)
        {
            if (groups.Count > 0 && span.From < groups[^1].Max(one => one.To)) groups[^1].Add(span);
            else groups.Add([span]);
        }

        var cuts = new List<string> { $"Chalk every outline from the near edge and the left end of board {board.Id}, then look again for checks at the ends." };
        for (var g = 1; g < groups.Count; g++)
        {
            var at = (groups[g - 1].Max(one => one.To) + groups[g].Min(one => one.From)) / 2;
            cuts.Add($"Cross-cut at {DrawnLength.Rough(at, units)} from the left end.");
        }

        foreach (var group in groups)
        {
            // From the far edge inward: what is left keeps the straight near edge to lie on.
            var order = group.OrderByDescending(span => span.One.YMm).ToList();
            for (var k = 0; k < order.Count; k++)
            {
                cuts.Add(k < order.Count - 1
                    ? $"Saw between {order[k].One.Name} and {order[k + 1].One.Name} along the gap, then free {order[k].One.Name}."
                    : $"Free {order[k].One.Name}.");
            }
        }

        return [.. cuts];
    }

    private static LayoutTotals Totals(LayoutOrder order, SolvedLayout solved)
    {
        var boards = solved.Boards.Select(one => order.Boards[one.Board]).ToList();
        var paddles = solved.Boards.SelectMany(one => one.Paddles).Select(p => order.Paddles[p]).ToList();
        var area = boards.Sum(board => board.AreaM2);
        double? cost = boards.Count > 0 && boards.TrueForAll(board => board.Price is not null) ? boards.Sum(board => board.Price!.Value) : null;
        return new(
            boards.Count, paddles.Count, Math.Round(area, 4), area > 0 ? Math.Round(100e-6 * paddles.Sum(paddle => paddle.AreaMm2) / area, 1) : 0,
            Math.Round(boards.Sum(board => board.BoardFeet), 2), Math.Round(1e-3 * (boards.Sum(board => board.VolumeCm3) - paddles.Sum(paddle => paddle.VolumeCm3)), 2),
            cost is { } all ? Math.Round(all, 2) : null, cost is { } sum && paddles.Count > 0 ? Math.Round(sum / paddles.Count, 2) : null);
    }

    private static List<CodedNote> Notes(LayoutOrder order, SolvedLayout solved, List<PaddlePlacement>[] placements, DrawingUnits units)
    {
        var notes = new List<CodedNote>
        {
            new("look-first", "Look at both faces and the ends before you saw: checks, hidden knots and wind are not on this plan. Straight grain belongs in shaft and throat."),
        };
        string[] close =
        [
            .. solved.Boards.Select((filled, k) => (Board: order.Boards[filled.Board], Places: placements[k]))
                .Where(one => one.Places.Exists(place => EndRoom(order, one.Board, place) < EndChecksMm))
                .Select(one => $"{one.Board.Id} (copy {one.Places[0].BoardCopy})").Distinct(),
        ];
        if (close.Length > 0)
        {
            notes.Add(new("near-the-end", $"On {string.Join(", ", close)} an outline comes within {DrawnLength.Rough(EndChecksMm, units)} of the board's end, where dried boards often have "
                + "checks: cut there only where the end grain is sound (25 to 50 mm of each end is usually lost; common practice, no source)."));
        }

        if (solved.IsCutShort) notes.Add(new("cut-short", "The search ended with the time limit; more time, or fewer kinds of paddle at once, may use less board."));
        return notes;
    }

    private static double EndRoom(LayoutOrder order, RackBoard board, PaddlePlacement place)
    {
        var paddle = order.PaddleOf(place);
        return Math.Min(Start(place, paddle), board.LengthMm - End(place, paddle));
    }

    private static double Start(PaddlePlacement one, LayoutPaddle paddle) => one.RotatedDegrees == 0 ? one.XMm : one.XMm - paddle.LengthMm;

    private static double End(PaddlePlacement one, LayoutPaddle paddle) => Start(one, paddle) + paddle.LengthMm;
}
