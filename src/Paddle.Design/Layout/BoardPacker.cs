namespace Paddle.Design.Layout;

/// <summary>A paddle laid on a board.</summary>
/// <param name="Kind">Which of the shapes.</param>
/// <param name="StartMm">Its left end, whole mm from the board's left end.</param>
/// <param name="CentreMm">Its centre line, mm from the board's near edge.</param>
/// <param name="IsTurned">Whether its tip is at the left.</param>
internal readonly record struct Laid(int Kind, int StartMm, double CentreMm, bool IsTurned);

/// <summary>Paddles on a board, and the width of it that they take from the near edge, mm.</summary>
internal sealed record Arrangement(IReadOnlyList<Laid> Paddles, double TopMm);

/// <summary>How carefully the packing looks.</summary>
/// <param name="Beam">Arrangements that are carried on at each step.</param>
/// <param name="StepMm">Steps along the board, mm.</param>
internal readonly record struct PackingCare(int Beam, int StepMm)
{
    /// <summary>Enough to tell whether a set of paddles fits with some room.</summary>
    public static PackingCare Quick => new(3, 3 * DistanceTable.LatticeMm);
    /// <summary>For what fits by a hair.</summary>
    public static PackingCare Thorough => new(8, DistanceTable.LatticeMm);
}

/// <summary>
/// Lays paddles on one board from its near edge upward: each next one as near to that edge as those before it let it. Theory N2.
/// </summary>
internal sealed class BoardPacker(RackBoard board, DistanceTable table, SearchEffort effort)
{
    private readonly IReadOnlyList<LayoutShape> shapes = table.Shapes;
    private readonly (double Low, double High)[]?[] forbiddenAt = new (double, double)[]?[2 * board.Defects.Count * table.Shapes.Count];

    internal const double Hair = 1e-6;
    private const double LatticeMm = 0.01;
    // A distance by the fine silhouettes costs as much as so many that are known.
    private const int FineLooks = 60, DefectLooks = 30;
    // An edge is rarely clean: where there is room the outlines stay off it.
    private const double EdgeMm = 5;
    // Closer by less than this is no closer.
    private const double ClosestMm = 0.05;
    // A quick look asks for too much by up to this: what stays within it is looked at again, and by the fine silhouettes what misses by a hair.
    private const double AllowanceMm = 12, HairyMm = 4;

    /// <summary>Lays a set of paddles.</summary>
    /// <param name="counts">How many of each shape.</param>
    /// <returns>An arrangement within the board's width, or null where none was found.</returns>
    public Arrangement? Pack(ReadOnlySpan<int> counts)
    {
        foreach (var care in (PackingCare[])[PackingCare.Quick, PackingCare.Thorough])
        {
            if (Look(counts, care) is not { } found) return null;
            if (found.TopMm <= board.WidthMm + Hair) return found;
            if (found.TopMm <= board.WidthMm + HairyMm && Tighten(found) is { } tight) return tight;
        }

        return null;
    }

    /// <summary>Looks once for the arrangement that takes the least of the board's width.</summary>
    /// <returns>An arrangement, up to a little wider than the board, or null.</returns>
    public Arrangement? Look(ReadOnlySpan<int> counts, PackingCare care)
    {
        var total = 0;
        var area = 0.0;
        for (var kind = 0; kind < counts.Length; kind++)
        {
            if (counts[kind] == 0) continue;
            if (!MayHold(shapes[kind])) return null;
            total += counts[kind];
            area += counts[kind] * shapes[kind].AreaMm2;
        }

        if (area > board.LengthMm * (board.WidthMm + Hair)) return null;
        var beam = new List<State> { new(new([], 0), counts.ToArray()) };
        for (var depth = 0; depth < total && beam.Count > 0; depth++)
            beam = [.. beam.SelectMany(state => Further(state, care)).OrderBy(next => next.Rank).ThenBy(next => next.Tie).Take(care.Beam).Select(next => next.Make())];
        return beam.Count == 0 ? null : beam[0].Arrangement;
    }

    /// <summary>Lays one more paddle among those that lie where they lie.</summary>
    /// <returns>The arrangement that takes the least of the board's width, or null where there is no room.</returns>
    public Arrangement? Insert(Arrangement laid, int kind) => Insertions(laid, kind).MinBy(one => one.TopMm);

    /// <summary>The same, each way round.</summary>
    public IEnumerable<Arrangement> Insertions(Arrangement laid, int kind)
    {
        if (!MayHold(shapes[kind])) yield break;
        var state = new State(laid, []);
        foreach (var isTurned in Ways(kind))
        {
            if (Nearest(state, kind, isTurned, PackingCare.Quick.StepMm) is { } one && one.TopMm <= board.WidthMm + Hair) yield return new([.. laid.Paddles, one.Next], one.TopMm);
        }
    }

    /// <summary>The same paddles laid closer, by the fine silhouettes.</summary>
    /// <returns>The closest arrangement found; null where the fine look needs more than the board's width.</returns>
    public Arrangement? Tighten(Arrangement found)
    {
        var order = found.Paddles.OrderBy(one => one.CentreMm).ToList();
        var best = found.Paddles.Count == 2 && board.Defects.Count == 0 ? Pair(order[0], order[1]) : Dropped(order, isFine: true);
        if (order.Count != 2 || board.Defects.Count > 0)
        {
            foreach (var step in (int[])[8, 2, 1])
            {
                for (var k = 0; k < order.Count; k++)
                {
                    best = Moved(order, k, step, best);
                }
            }
        }

        return best?.TopMm <= board.WidthMm + LatticeMm ? best : null;
    }

    /// <summary>An arrangement laid closer and, as far as defects let it, in the middle of the board's length and a little off its edge.</summary>
    public Arrangement Close(Arrangement found)
    {
        var tight = found.Paddles.All(one => shapes[one.Kind].IsRectangle) ? found : Tighten(found) ?? found;
        var endMm = tight.Paddles.Max(one => one.StartMm + shapes[one.Kind].LengthMm);
        var along = (int)Math.Floor((board.LengthMm - endMm - tight.Paddles.Min(one => one.StartMm)) / 2 + Hair);
        var across = Math.Max(0, Math.Min(EdgeMm, OffLattice((board.WidthMm - tight.TopMm) / 2)));
        foreach (var share in (double[])[1, 0.75, 0.5, 0.25])
        {
            var moved = Moved(tight, (int)(share * along), OffLattice(share * across));
            if (moved.Paddles.All(IsClear)) return moved;
        }

        return tight;
    }

    private static Arrangement Moved(Arrangement laid, int alongMm, double acrossMm) => new(
        [.. laid.Paddles.Select(one => one with { StartMm = one.StartMm + alongMm, CentreMm = Math.Round(one.CentreMm + acrossMm, 2) })], laid.TopMm + acrossMm);

    private bool IsClear(Laid one) => Enumerable.Range(0, board.Defects.Count).All(defect =>
        Forbidden(defect, one.Kind, one.IsTurned, one.StartMm) is var (low, high) && (one.CentreMm <= low || one.CentreMm >= high));

    /// <summary>Whether a shape is short and narrow enough for the board's bare edges.</summary>
    public bool MayHold(LayoutShape shape) => Slack(shape) >= 0 && 2 * shape.HalfWidthMm <= board.WidthMm + Hair;

    private bool[] Ways(int kind) => shapes[kind].IsRectangle ? [false] : [false, true];

    // Without defects one of two paddles may be pushed to an end of the board, and mirroring the board leaves one way round for the first.
    private Arrangement? Pair(Laid a, Laid b)
    {
        Arrangement? best = null;
        foreach (var (first, second) in ((Laid, Laid)[])[(a, b), (b, a)])
        {
            foreach (var start in (int[])[0, Slack(shapes[first.Kind])])
            {
                foreach (var isTurned in (bool[])[false, true])
                {
                    var fixedOne = first with { StartMm = start, IsTurned = false };
                    var along = Enumerable.Range(0, Slack(shapes[second.Kind]) + 1)
                        .Select(x => second with { StartMm = x, IsTurned = isTurned })
                        .Select(one => (One: one, Top: Dropped([fixedOne, one], isFine: false)!.TopMm))
                        .ToList();
                    var least = along.Min(one => one.Top);
                    foreach (var (one, _) in along.Where(one => one.Top <= least + 1.5))
                    {
                        if (Dropped([fixedOne, one], isFine: true) is { } fine && !(best?.TopMm <= fine.TopMm)) best = fine;
                    }
                }
            }
        }

        return best;
    }

    private Arrangement? Moved(List<Laid> order, int which, int stepMm, Arrangement? best)
    {
        var was = order[which];
        var slack = Slack(shapes[was.Kind]);
        var range = 8 * stepMm;
        var kept = was;
        foreach (var isTurned in (bool[])[was.IsTurned, !was.IsTurned])
        {
            for (var x = Math.Max(0, was.StartMm - range); x <= Math.Min(slack, was.StartMm + range); x += stepMm)
            {
                order[which] = was with { StartMm = x, IsTurned = isTurned };
                if (Dropped(order, isFine: true) is not { } next || next.TopMm > (best?.TopMm ?? double.PositiveInfinity) - ClosestMm) continue;
                (best, kept) = (next, order[which]);
            }
        }

        order[which] = kept;
        return best;
    }

    private Arrangement? Dropped(List<Laid> order, bool isFine)
    {
        var laid = new List<Laid>(order.Count);
        var top = 0.0;
        foreach (var one in order)
        {
            if (Lowest(laid, one.Kind, one.StartMm, one.IsTurned, isFine) is not { } centre) return null;
            laid.Add(one with { CentreMm = centre });
            top = Math.Max(top, centre + shapes[one.Kind].HalfWidthMm);
        }

        return new(laid, top);
    }

    private IEnumerable<Candidate> Further(State state, PackingCare care)
    {
        for (var kind = 0; kind < state.Left.Length; kind++)
        {
            if (state.Left[kind] == 0) continue;
            foreach (var isTurned in Ways(kind))
            {
                if (Nearest(state, kind, isTurned, care.StepMm) is { } one) yield return one;
            }
        }
    }

    // The place along the board at which one more paddle takes the least width.
    private Candidate? Nearest(State state, int kind, bool isTurned, int stepMm)
    {
        Candidate? best = null;
        foreach (var start in Starts(shapes[kind], state.Arrangement.Paddles.Count == 0, stepMm))
        {
            if (Lowest(state.Arrangement.Paddles, kind, start, isTurned, isFine: false) is not { } centre) continue;
            var top = Math.Max(state.Arrangement.TopMm, centre + shapes[kind].HalfWidthMm);
            if (top > board.WidthMm + AllowanceMm) continue;
            var fromEnd = Math.Min(start, Slack(shapes[kind]) - start);
            var (rank, tie) = (Math.Round(top, 1), centre + 1e-3 * fromEnd);
            if (best is { } other && (other.Rank, other.Tie).CompareTo((rank, tie)) <= 0) continue;
            best = new(state, new(kind, start, centre, isTurned), top, rank, tie);
        }

        return best;
    }

    // With nothing in its way the first paddle lies at an end; among defects it is looked for all along.
    private IEnumerable<int> Starts(LayoutShape shape, bool isFirst, int stepMm)
    {
        var slack = Slack(shape);
        yield return 0;
        if (!isFirst || board.Defects.Count > 0)
        {
            // Long boards hold two in a row: a coarser look suffices there.
            var step = slack > 100 * stepMm ? 2 * stepMm : stepMm;
            for (var x = step; x < slack; x += step) yield return x;
        }

        // On the lattice, where distances are known; the fine look finds the last millimetres.
        if (slack >= DistanceTable.LatticeMm) yield return slack / DistanceTable.LatticeMm * DistanceTable.LatticeMm;
    }

    private double? Lowest(IReadOnlyList<Laid> laid, int kind, int startMm, bool isTurned, bool isFine)
    {
        effort.Spend((1 + laid.Count) * (isFine ? FineLooks : 1));
        var shape = shapes[kind];
        Span<(double Low, double High)> forbidden = stackalloc (double, double)[laid.Count + board.Defects.Count];
        var count = 0;
        foreach (var one in laid)
        {
            var distance = isFine
                ? shapes[one.Kind].Face(one.IsTurned, true).DistanceMm(shape.Face(isTurned, true), startMm - one.StartMm)
                : table.DistanceMm(one, kind, isTurned, startMm - one.StartMm);
            if (distance > 0) forbidden[count++] = (one.CentreMm - distance, one.CentreMm + distance);
        }

        for (var d = 0; d < board.Defects.Count; d++)
        {
            if (Forbidden(d, kind, isTurned, startMm) is { Low: < double.PositiveInfinity } interval) forbidden[count++] = interval;
        }

        var centre = shape.HalfWidthMm;
        if (isFine) centre = OnLattice(centre);
        for (var k = 0; k < count; k++)
        {
            if (!(forbidden[k].Low < centre - Hair && forbidden[k].High > centre + Hair)) continue;
            centre = isFine ? OnLattice(forbidden[k].High) : forbidden[k].High;
            k = -1;
        }

        return !isFine || centre + shape.HalfWidthMm <= board.WidthMm + LatticeMm ? centre : null;
    }

    // Where a paddle passes a defect by, low is infinite; what was asked for before is known.
    private (double Low, double High) Forbidden(int defect, int kind, bool isTurned, int startMm)
    {
        ref var row = ref forbiddenAt[(defect * shapes.Count + kind) * 2 + (isTurned ? 1 : 0)];
        if (row is null)
        {
            row = new (double, double)[Slack(shapes[kind]) + 1];
            Array.Fill(row, (double.NaN, double.NaN));
        }

        ref var known = ref row[startMm];
        if (!double.IsNaN(known.Low)) return known;
        effort.Spend(DefectLooks);
        return known = board.Defects[defect].Forbids(shapes[kind].Guard(isTurned), startMm) ?? (double.PositiveInfinity, double.NegativeInfinity);
    }

    private int Slack(LayoutShape shape) => (int)Math.Floor(board.LengthMm - shape.LengthMm + Hair);

    private static double OffLattice(double mm) => Math.Floor(mm / LatticeMm) * LatticeMm;

    private static double OnLattice(double mm) => Math.Ceiling(mm / LatticeMm - Hair) * LatticeMm;

    private sealed record State(Arrangement Arrangement, int[] Left);

    private readonly record struct Candidate(State From, Laid Next, double TopMm, double Rank, double Tie)
    {
        public State Make()
        {
            var left = (int[])From.Left.Clone();
            left[Next.Kind]--;
            return new(new([.. From.Arrangement.Paddles, Next], TopMm), left);
        }
    }
}
