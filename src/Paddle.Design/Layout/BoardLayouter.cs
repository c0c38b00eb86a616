namespace Paddle.Design.Layout;

/// <summary>An order read: boards, paddles and what the saw takes.</summary>
/// <param name="GapMm">Least distance between two outlines, mm.</param>
/// <param name="PlaningMm">Planed off a board's thickness, both faces together, mm.</param>
/// <param name="Limit">Longest time for the search.</param>
/// <param name="IsByPrice">Whether the cheapest boards are sought, and not the least area.</param>
internal sealed record LayoutOrder(
    IReadOnlyList<RackBoard> Boards, IReadOnlyList<LayoutPaddle> Paddles, double GapMm, double PlaningMm, TimeSpan Limit, bool IsByPrice)
{
    /// <summary>The paddle of a placement.</summary>
    public LayoutPaddle PaddleOf(PaddlePlacement place) => Paddles.First(paddle => paddle.Id == place.PaddleId);
}

/// <summary>A board with the paddles that come out of it.</summary>
/// <param name="Board">Which kind of board.</param>
/// <param name="Paddles">Which kinds of paddle, one for each.</param>
/// <param name="Arrangement">Where they lie; shapes are numbered as the order's paddles.</param>
internal sealed record FilledBoard(int Board, IReadOnlyList<int> Paddles, Arrangement Arrangement);

/// <summary>An order solved.</summary>
/// <param name="Boards">The boards that are cut, in the order of the rack.</param>
/// <param name="Shapes">Shapes of the order's paddles.</param>
/// <param name="Fits">Whether a board holds a paddle alone.</param>
/// <param name="IsCutShort">Whether the search ran out of time.</param>
internal sealed record SolvedLayout(IReadOnlyList<FilledBoard> Boards, IReadOnlyList<LayoutShape> Shapes, Func<int, int, bool> Fits, bool IsCutShort);

/// <summary>
/// Lays paddles out on boards with their true outlines. Where there are few kinds of paddle, the sets that each board
/// holds are listed and an integer program chooses among them; where there are many, board after board is filled. The answer is then mended: a
/// few boards are emptied and their paddles laid anew, again and again, and what counts less is kept. Theory N2–N4.
/// </summary>
internal sealed class BoardLayouter
{
    // With more kinds the sets are too many to list.
    private const int MostListed = 5;
    private const int MostOnABoard = 12;
    // Arrangements of a set that larger sets grow from.
    private const int MostKept = 3;
    // Boards are looked at by steps of length; more room to slide than this lets nothing come closer.
    private const double LengthStepMm = 50, SlideMm = 300;
    // More of a face than this no set of outlines covers: the blade of one lies beside the shaft of another at best.
    private const double MostCover = 0.6;
    // So many mendings in a row that mend nothing end the search.
    private const int VainMendings = 60;
    // Shares of the effort after which listing and mending end, and of the time left that the program may take.
    private const double ListingShare = 0.6, MendingShare = 0.85, ProgramShare = 0.5;

    private readonly LayoutOrder order;
    private readonly SearchEffort effort;
    private readonly LayoutShape[] shapes;
    private readonly BoardPacker[] packers;
    private readonly Dictionary<(int Board, string Set), FilledBoard?> packed = [];
    private readonly Dictionary<(int Board, int Paddle), int> holds = [];

    private BoardLayouter(LayoutOrder order, CancellationToken cancellation)
    {
        (this.order, effort) = (order, new(order.Limit, cancellation));
        shapes = [.. order.Paddles.Select(paddle => LayoutShape.Of(paddle, order.GapMm))];
        var table = new DistanceTable(shapes, effort);
        packers = [.. order.Boards.Select(board => new BoardPacker(board, table, effort))];
    }

    /// <summary>Solves an order.</summary>
    /// <exception cref="OperationCanceledException">The caller has gone.</exception>
    public static SolvedLayout Solve(LayoutOrder order, CancellationToken cancellation = default)
    {
        var layouter = new BoardLayouter(order, cancellation);
        var filled = order.Paddles.Select(paddle => paddle.Species).Distinct().SelectMany(layouter.SolveSpecies).ToList();
        return new(layouter.Closely(filled), layouter.shapes, (board, paddle) => layouter.Packed(board, [paddle]) is not null, layouter.effort.IsCutShort);
    }

    /// <summary>Every paddle on the first board, or null where it does not hold them all.</summary>
    public static SolvedLayout? OnOneBoard(LayoutOrder order, CancellationToken cancellation)
    {
        var layouter = new BoardLayouter(order, cancellation);
        int[] all = [.. order.Paddles.SelectMany((paddle, p) => Enumerable.Repeat(p, paddle.Count)).OrderByDescending(p => order.Paddles[p].HalfWidthMm)];
        return (order.Paddles.Any(paddle => paddle.IsStrip) ? layouter.StripsOnFirst(all) : layouter.Packed(0, all)) is { } one
            ? new(layouter.Closely([one]), layouter.shapes, (_, _) => true, IsCutShort: false) : null;
    }

    // Strips are laid the widest first: a look for the least width would lay the narrow ones below all others.
    private FilledBoard? StripsOnFirst(int[] paddles)
    {
        if (!paddles.All(p => Takes(0, p)) || paddles.Sum(p => shapes[p].AreaMm2) > 1e6 * order.Boards[0].AreaM2) return null;
        Arrangement? laid = new([], 0);
        foreach (var p in paddles) laid = laid is null ? null : packers[0].Insert(laid, p);
        return laid is null ? null : new(0, paddles, laid);
    }

    private List<FilledBoard> SolveSpecies(string speciesId)
    {
        int[] boards = [.. Enumerable.Range(0, order.Boards.Count).Where(b => order.Boards[b].Species == speciesId)];
        int[] paddles = [.. Enumerable.Range(0, order.Paddles.Count).Where(p => order.Paddles[p].Species == speciesId && boards.Any(b => Takes(b, p)))];
        if (paddles.Length == 0) return [];
        var best = paddles.Length <= MostListed ? Program(boards, paddles) : new([], [.. paddles.SelectMany(p => Enumerable.Repeat(p, order.Paddles[p].Count))]);
        Fill(best, boards);
        return Mended(best, boards).Boards;
    }

    /// <summary>Boards filled so far, and the paddles that wait.</summary>
    private sealed record PartialLayout(List<FilledBoard> Boards, List<int> Waiting)
    {
        public PartialLayout Copy() => new([.. Boards], [.. Waiting]);
    }

    // Required paddles left over, optional ones left over, and what the boards count, in this order.
    private int Compare(PartialLayout a, PartialLayout b) => Cost(a).CompareTo(Cost(b));

    private (int Required, int Optional, long Burden) Cost(PartialLayout layout) => (
        layout.Waiting.Count(p => !order.Paddles[p].IsOptional), layout.Waiting.Count(p => order.Paddles[p].IsOptional), layout.Boards.Sum(one => Burden(one.Board)));

    private bool Takes(int board, int paddle) => LayoutReasons.Stop(order.Boards[board], order.Paddles[paddle], order.PlaningMm) is null;

    // A shop's boards by price, the least area among equals; a rack's by area.
    private long Burden(int b)
    {
        var board = order.Boards[b];
        var areaCm2 = (long)Math.Round(1e4 * board.AreaM2);
        return order.IsByPrice ? (long)Math.Round(100 * board.Price!.Value) * 100_000 + areaCm2 : areaCm2;
    }

    private PartialLayout Program(int[] boards, int[] paddles)
    {
        var patterns = Patterns(boards, paddles);
        int[] counts = [.. paddles.Select(p => order.Paddles[p].Count)];
        int Wanted(int k, bool isOptional) => order.Paddles[paddles[k]].IsOptional == isOptional ? counts[k] : 0;
        var times = LayoutProgram.Solve(
            patterns,
            new(
                [.. boards.Select(b => order.Boards[b].Count ?? counts.Sum())],
                [.. paddles.Select((_, k) => Wanted(k, false))],
                [.. paddles.Select((_, k) => Wanted(k, true))],
                [.. boards.Select(Burden)]),
            ProgramShare * effort.Left);
        return Assign(patterns, times, boards, paddles);
    }

    // A board without defects holds the sets that its length lets be narrow enough: boards of like length share the look.
    private List<CuttingPattern> Patterns(int[] boards, int[] paddles)
    {
        var table = new DistanceTable([.. paddles.Select(p => shapes[p])], effort);
        int[] most = [.. paddles.Select(p => order.Paddles[p].Count)];
        var found = new List<CuttingPattern>();
        var (shortest, longest) = (paddles.Min(p => shapes[p].LengthMm), paddles.Max(p => shapes[p].LengthMm));
        foreach (var group in boards.GroupBy(b => order.Boards[b].Defects.Count == 0 ? Likeness(order.Boards[b].LengthMm, shortest, longest) : -1 - b))
        {
            var kinds = group.Select(b => order.Boards[b]).ToList();
            var widest = kinds.MaxBy(board => board.WidthMm)! with { LengthMm = kinds.Min(board => board.LengthMm) };
            var sets = Sets(new(widest, table, effort), most);
            foreach (var b in group)
            {
                bool IsHeld((int[] Counts, Arrangement Laid) set) =>
                    set.Laid.TopMm <= order.Boards[b].WidthMm + BoardPacker.Hair && paddles.Select((p, kind) => set.Counts[kind] == 0 || Takes(b, p)).All(holds => holds);
                var held = sets.Where(IsHeld).ToList();
                found.AddRange(held.Where(set => !held.Exists(other => IsWithin(set.Counts, other.Counts))).Select(set => new CuttingPattern(Array.IndexOf(boards, b), set.Counts, set.Laid)));
            }
        }

        return found;
    }

    // A board's further length gives room to slide, until there is enough of it, and then until two lie in a row.
    private static double Likeness(double boardMm, double shortestMm, double longestMm) =>
        boardMm < longestMm + SlideMm ? Math.Floor(boardMm / LengthStepMm)
        : boardMm < 2 * shortestMm ? Math.Floor((longestMm + SlideMm) / LengthStepMm)
        : Math.Floor(boardMm / LengthStepMm);

    // Sets grow by one paddle at a time: what a board does not hold it holds with no further paddle either, and the best
    // arrangements of a set grow out of good ones of the sets with one paddle less.
    private List<(int[] Counts, Arrangement Laid)> Sets(BoardPacker packer, int[] most)
    {
        var layer = new List<int[]> { new int[most.Length] };
        var known = new Dictionary<string, (int[] Counts, List<Arrangement> Laid)> { [Key(layer[0])] = (layer[0], [new([], 0)]) };
        for (var size = 1; size <= MostOnABoard && layer.Count > 0; size++)
        {
            var next = new List<int[]>();
            foreach (var set in layer)
            {
                for (var kind = 0; kind < most.Length && !effort.IsOver(ListingShare); kind++)
                {
                    // Each set is reached in one way only: by adding kinds in their order.
                    if (set[kind] == most[kind] || set.AsSpan(kind + 1).ContainsAnyExcept(0)) continue;
                    var more = (int[])set.Clone();
                    more[kind]++;
                    var laid = Grown(more);
                    if (laid.Count == 0) continue;
                    known[Key(more)] = (more, laid);
                    next.Add(more);
                }
            }

            layer = next;
        }

        return [.. known.Values.Skip(1).Select(one => (one.Counts, one.Laid[0]))];

        List<Arrangement> Grown(int[] set)
        {
            var found = new List<Arrangement>();
            for (var kind = 0; kind < set.Length; kind++)
            {
                if (set[kind] == 0) continue;
                set[kind]--;
                var isKnown = known.TryGetValue(Key(set), out var fewer);
                set[kind]++;
                if (!isKnown) return [];
                foreach (var laid in fewer.Laid) found.AddRange(packer.Insertions(laid, kind));
            }

            return [.. found.OrderBy(laid => laid.TopMm).DistinctBy(laid => Math.Round(laid.TopMm)).Take(MostKept)];
        }

        static string Key(int[] set) => string.Join(' ', set);
    }

    private static bool IsWithin(int[] set, int[] other)
    {
        var isLess = false;
        for (var k = 0; k < set.Length; k++)
        {
            if (set[k] > other[k]) return false;
            isLess |= set[k] < other[k];
        }

        return isLess;
    }

    // A pattern may hold more than are wanted: required ones are dealt out first.
    private PartialLayout Assign(List<CuttingPattern> patterns, int[] times, int[] boards, int[] paddles)
    {
        int[] waiting = [.. paddles.Select(p => order.Paddles[p].Count)];
        var filled = new List<FilledBoard>();
        for (var k = 0; k < patterns.Count; k++)
        {
            for (var time = 0; time < times[k]; time++)
            {
                var laid = new List<Laid>();
                foreach (var one in patterns[k].Laid.Paddles)
                {
                    if (waiting[one.Kind] == 0) continue;
                    waiting[one.Kind]--;
                    laid.Add(one with { Kind = paddles[one.Kind] });
                }

                if (laid.Count > 0) filled.Add(new(boards[patterns[k].Board], [.. laid.Select(one => one.Kind)], new(laid, patterns[k].Laid.TopMm)));
            }
        }

        return new(filled, [.. paddles.SelectMany((p, kind) => Enumerable.Repeat(p, waiting[kind]))]);
    }

    private FilledBoard? Packed(int board, IReadOnlyList<int> paddles)
    {
        var area = paddles.Sum(p => shapes[p].AreaMm2);
        if (area > (paddles.Any(p => order.Paddles[p].IsStrip) ? 1 : MostCover) * 1e6 * order.Boards[board].AreaM2 || !paddles.All(p => Takes(board, p))) return null;
        var key = (board, string.Join(' ', paddles.Order()));
        if (packed.TryGetValue(key, out var known)) return known;
        var counts = new int[shapes.Length];
        foreach (var p in paddles) counts[p]++;
        return packed[key] = packers[board].Pack(counts) is { } arrangement ? new(board, paddles, arrangement) : null;
    }

    // One more paddle: beside the others as they lie, or else with all of them laid anew.
    private FilledBoard? With(FilledBoard one, int paddle)
    {
        if (!Takes(one.Board, paddle)) return null;
        int[] paddles = [.. one.Paddles, paddle];
        return packers[one.Board].Insert(one.Arrangement, paddle) is { } arrangement ? new(one.Board, paddles, arrangement) : Packed(one.Board, paddles);
    }

    // Widest first, each into the open board that it fills best, or into the new one that gives the most paddles for what it counts.
    private void Fill(PartialLayout layout, int[] boards, Random? shuffle = null)
    {
        int[] queue = shuffle is null
            ? [.. layout.Waiting.OrderBy(p => order.Paddles[p].IsOptional).ThenByDescending(p => shapes[p].HalfWidthMm * shapes[p].LengthMm).ThenBy(p => p)]
            : [.. layout.Waiting.OrderBy(p => order.Paddles[p].IsOptional).ThenByDescending(p => shapes[p].HalfWidthMm * shapes[p].LengthMm * (0.7 + 0.6 * shuffle.NextDouble()))];
        layout.Waiting.Clear();
        foreach (var p in queue)
        {
            if (!Join(layout.Boards, p) && !Open(layout.Boards, boards, p, shuffle)) layout.Waiting.Add(p);
        }
    }

    private bool Join(List<FilledBoard> filled, int paddle)
    {
        var best = -1;
        FilledBoard? bestOne = null;
        var bestRoom = double.PositiveInfinity;
        for (var k = 0; k < filled.Count; k++)
        {
            if (With(filled[k], paddle) is not { } more) continue;
            var room = order.Boards[more.Board].AreaM2 - 1e-6 * more.Paddles.Sum(p => shapes[p].AreaMm2);
            if (room >= bestRoom) continue;
            (best, bestOne, bestRoom) = (k, more, room);
        }

        if (bestOne is null) return false;
        filled[best] = bestOne;
        return true;
    }

    private bool Open(List<FilledBoard> filled, int[] boards, int paddle, Random? shuffle)
    {
        foreach (var board in Left(filled, boards).Where(b => Takes(b, paddle)).OrderBy(b => BurdenByPaddle(b, paddle) * (1 + 0.5 * (shuffle?.NextDouble() ?? 0))).ThenBy(b => b))
        {
            if (Packed(board, [paddle]) is not { } one) continue;
            filled.Add(one);
            return true;
        }

        return false;
    }

    // What a board counts by the number of such paddles that it holds.
    private double BurdenByPaddle(int board, int paddle)
    {
        if (!holds.TryGetValue((board, paddle), out var count))
        {
            var laid = new Arrangement([], 0);
            while (count < MostOnABoard && packers[board].Insert(laid, paddle) is { } more) (laid, count) = (more, count + 1);

            holds[(board, paddle)] = count;
        }

        return count == 0 ? double.PositiveInfinity : (double)Burden(board) / count;
    }

    // A few boards are emptied and their paddles laid anew in another order; what is no worse is kept.
    private PartialLayout Mended(PartialLayout best, int[] boards)
    {
        var random = new Random(1);
        for (var vain = 0; vain < VainMendings && best.Boards.Count > 0 && !effort.IsOver(MendingShare); vain++)
        {
            var next = best.Copy();
            var emptied = 1 + random.Next(Math.Min(3, next.Boards.Count));
            for (var k = 0; k < emptied; k++)
            {
                // The one with the most waste among three drawn.
                var worst = Enumerable.Range(0, 3).Select(_ => random.Next(next.Boards.Count)).MaxBy(at => Waste(next.Boards[at]));
                next.Waiting.AddRange(next.Boards[worst].Paddles);
                next.Boards.RemoveAt(worst);
            }

            Fill(next, boards, random);
            for (var k = 0; k < next.Boards.Count; k++) next.Boards[k] = Lesser(next.Boards, next.Boards[k], boards);
            var better = Compare(next, best);
            if (better < 0) vain = 0;
            if (better <= 0) best = next;
        }

        return best;
    }

    private double Waste(FilledBoard one) => order.Boards[one.Board].AreaM2 - 1e-6 * one.Paddles.Sum(p => shapes[p].AreaMm2);

    // The same paddles on the board that counts least.
    private FilledBoard Lesser(List<FilledBoard> filled, FilledBoard one, int[] boards)
    {
        foreach (var board in Left(filled, boards).Where(b => Burden(b) < Burden(one.Board)).OrderBy(Burden))
        {
            if (Packed(board, one.Paddles) is { } less) return less;
        }

        return one;
    }

    private IEnumerable<int> Left(List<FilledBoard> filled, int[] boards) =>
        boards.Where(b => order.Boards[b].Count is not { } count || filled.Count(one => one.Board == b) < count);

    // In the order of the rack, as it is cut.
    private List<FilledBoard> Closely(List<FilledBoard> filled) =>
        [.. filled.OrderBy(one => one.Board).Select(one => one with { Arrangement = packers[one.Board].Close(one.Arrangement) })];
}
