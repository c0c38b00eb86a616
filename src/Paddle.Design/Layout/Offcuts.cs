namespace Paddle.Design.Layout;

/// <summary>Rectangles of sound board that are left beside the paddles.</summary>
internal static class Offcuts
{
    // Common practice, no source: shorter or narrower than this nobody keeps it for a grip, a wedge or the strips of the next paddle.
    private const double LeastLengthMm = 300, LeastWidthMm = 40;
    private const int MostKept = 4;
    private const int StepMm = 10;

    /// <summary>The largest rectangles, one after another, each clear of the paddles and of those before it.</summary>
    /// <param name="laid">The paddles.</param>
    /// <param name="shapes">Their shapes.</param>
    /// <param name="gapMm">Kept between a paddle and a rectangle, mm.</param>
    public static IReadOnlyList<Offcut> Of(RackBoard board, IReadOnlyList<Laid> laid, IReadOnlyList<LayoutShape> shapes, double gapMm)
    {
        var columns = Columns(board, laid, shapes, gapMm);
        var kept = new List<Offcut>();
        while (kept.Count < MostKept && Largest(board, columns) is { } next)
        {
            kept.Add(next);
            for (var x = (int)(next.XMm / StepMm); x < columns.Length && x * StepMm < next.XMm + next.LengthMm; x++) columns[x].Add((next.YMm, next.YMm + next.WidthMm));
        }

        return kept;
    }

    // What is taken in each slice along the board.
    private static List<(double Low, double High)>[] Columns(RackBoard board, IReadOnlyList<Laid> laid, IReadOnlyList<LayoutShape> shapes, double gapMm)
    {
        var columns = new List<(double Low, double High)>[(int)(board.LengthMm / StepMm)];
        for (var x = 0; x < columns.Length; x++)
        {
            int from = x * StepMm, to = from + StepMm;
            columns[x] = [];
            foreach (var one in laid)
            {
                var half = shapes[one.Kind].Face(one.IsTurned, isFine: false).HalfMm;
                int first = Math.Max(0, from - one.StartMm - (int)gapMm), end = Math.Min(half.Length, to - one.StartMm + (int)gapMm);
                if (first >= end) continue;
                var widest = 0f;
                foreach (var breadth in half[first..end]) widest = Math.Max(widest, breadth);
                columns[x].Add((one.CentreMm - widest - gapMm, one.CentreMm + widest + gapMm));
            }

            foreach (var defect in board.Defects)
            {
                if (defect.Forbids(new float[StepMm], from) is { } bad) columns[x].Add(bad);
            }
        }

        return columns;
    }

    private static Offcut? Largest(RackBoard board, List<(double Low, double High)>[] columns)
    {
        Offcut? best = null;
        for (var start = 0; start < columns.Length; start++)
        {
            // What stays free over all slices from the first to the last.
            List<(double Low, double High)> free = [(0, board.WidthMm)];
            for (var end = start; end < columns.Length; end++)
            {
                foreach (var taken in columns[end]) free = Without(free, taken);
                if (free.Count == 0) break;
                var (low, high) = free.MaxBy(one => one.High - one.Low);
                double length = (end + 1 - start) * StepMm, width = high - low;
                if (length >= LeastLengthMm && length * width > (best?.LengthMm * best?.WidthMm ?? 0))
                    best = new(start * StepMm, Math.Ceiling(low * 10) / 10, length, Math.Floor((high - Math.Ceiling(low * 10) / 10) * 10) / 10);
            }
        }

        return best;
    }

    // Strips too narrow to keep are no strips.
    private static List<(double Low, double High)> Without(List<(double Low, double High)> free, (double Low, double High) taken)
    {
        if (!free.Exists(one => one.Low < taken.High && one.High > taken.Low)) return free;
        var rest = new List<(double Low, double High)>(free.Count + 1);
        foreach (var (low, high) in free)
        {
            if (Math.Min(high, taken.Low) - low >= LeastWidthMm) rest.Add((low, Math.Min(high, taken.Low)));
            if (high - Math.Max(low, taken.High) >= LeastWidthMm) rest.Add((Math.Max(low, taken.High), high));
        }

        return rest;
    }
}
