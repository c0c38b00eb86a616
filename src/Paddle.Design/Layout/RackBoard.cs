using Paddle.Design.Boards;

namespace Paddle.Design.Layout;

/// <summary>A place on a board's face that no paddle may hold, by its extent across the board in each millimetre along it.</summary>
/// <remarks>A notch in a polygon's side counts as filled: no paddle is laid into the bay of a crack.</remarks>
internal sealed class DefectSpan
{
    private readonly double[] low, high;

    /// <param name="startMm">Whole millimetre at which the first column begins.</param>
    private DefectSpan(int startMm, double[] low, double[] high) => (StartMm, this.low, this.high) = (startMm, low, high);

    public int StartMm { get; }
    public int EndMm => StartMm + low.Length;

    /// <summary>A knot.</summary>
    public static DefectSpan Circle(double xMm, double yMm, double radiusMm) => Columns(xMm - radiusMm, xMm + radiusMm, (from, to) =>
    {
        var apart = Math.Max(0, Math.Max(from - xMm, xMm - to));
        var half = Math.Sqrt(Math.Max(0, radiusMm * radiusMm - apart * apart));
        return (yMm - half, yMm + half);
    });

    /// <summary>A rectangle along the board.</summary>
    public static DefectSpan Rectangle(double xMm, double yMm, double lengthMm, double widthMm) =>
        Columns(xMm, xMm + lengthMm, (_, _) => (yMm, yMm + widthMm));

    /// <summary>A polygon by its corners in order.</summary>
    public static DefectSpan Polygon(IReadOnlyList<(double X, double Y)> points) => Columns(points.Min(p => p.X), points.Max(p => p.X), (from, to) =>
    {
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        for (var k = 0; k < points.Count; k++)
        {
            var (a, b) = (points[k], points[(k + 1) % points.Count]);
            if (Math.Max(a.X, b.X) < from || Math.Min(a.X, b.X) > to) continue;
            foreach (var x in (double[])[Math.Clamp(from, Math.Min(a.X, b.X), Math.Max(a.X, b.X)), Math.Clamp(to, Math.Min(a.X, b.X), Math.Max(a.X, b.X))])
            {
                var isUpright = Math.Abs(b.X - a.X) < 1e-9;
                var y = isUpright ? a.Y : a.Y + (b.Y - a.Y) * (x - a.X) / (b.X - a.X);
                low = Math.Min(low, isUpright ? Math.Min(a.Y, b.Y) : y);
                high = Math.Max(high, isUpright ? Math.Max(a.Y, b.Y) : y);
            }
        }

        return (low, high);
    });

    /// <summary>Distances across the board at which a paddle's centre line may not lie.</summary>
    /// <param name="guard">Half-breadths by millimetres that must stay clear, mm.</param>
    /// <param name="startMm">Where the paddle's left end lies, whole mm.</param>
    /// <returns>The open interval, or null where the paddle passes by.</returns>
    public (double Low, double High)? Forbids(ReadOnlySpan<float> guard, int startMm)
    {
        int first = Math.Max(StartMm, startMm), end = Math.Min(EndMm, startMm + guard.Length);
        double least = double.PositiveInfinity, most = double.NegativeInfinity;
        for (var x = first; x < end; x++)
        {
            var clear = guard[x - startMm];
            least = Math.Min(least, low[x - StartMm] - clear);
            most = Math.Max(most, high[x - StartMm] + clear);
        }

        return least < most ? (least, most) : null;
    }

    /// <summary>Its shape on the board, corner by corner.</summary>
    public IEnumerable<(double XMm, double YMm)> Corners() =>
        Enumerable.Range(0, low.Length).Select(k => (StartMm + k + 0.5, low[k])).Concat(Enumerable.Range(0, high.Length).Reverse().Select(k => (StartMm + k + 0.5, high[k])));

    private static DefectSpan Columns(double startMm, double endMm, Func<double, double, (double Low, double High)> extent)
    {
        int start = (int)Math.Floor(startMm), count = Math.Max(1, (int)Math.Ceiling(endMm) - start);
        double[] low = new double[count], high = new double[count];
        for (var k = 0; k < count; k++) (low[k], high[k]) = extent(start + k, start + k + 1);
        return new(start, low, high);
    }
}

/// <summary>A kind of board in the rack.</summary>
/// <param name="Id">The caller's name of it.</param>
/// <param name="Count">How many alike there are; as many as are needed where it is null, as a shop sells them.</param>
/// <param name="Price">What one costs, in the caller's money, or null.</param>
/// <param name="GrainSlope">Slope of the grain to the long edge, rise over run.</param>
/// <param name="Defects">Where no paddle may lie, strips of sapwood included.</param>
internal sealed record RackBoard(
    string Id, double LengthMm, double WidthMm, double ThicknessMm, string Species, int? Count, double? Price, double GrainSlope, IReadOnlyList<DefectSpan> Defects)
{
    /// <summary>Area of the face, m².</summary>
    public double AreaM2 => LengthMm * WidthMm * 1e-6;
    public double VolumeCm3 => LengthMm * WidthMm * ThicknessMm * 1e-3;

    /// <summary>Measure by which it is sold.</summary>
    public double BoardFeet => BoardMeasure.Feet(LengthMm, WidthMm, ThicknessMm);
}
