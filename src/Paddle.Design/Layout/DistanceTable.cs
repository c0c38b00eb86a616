namespace Paddle.Design.Layout;

/// <summary>Distances of centre lines that were asked for before, on a lattice along the board: a search asks for the same ones over and over.</summary>
internal sealed class DistanceTable(IReadOnlyList<LayoutShape> shapes, SearchEffort effort)
{
    /// <summary>Lattice of the quick looks along a board, mm.</summary>
    public const int LatticeMm = 4;

    // A distance computed costs as much as so many that are known.
    private const int Looks = 15;

    private readonly int reach = (int)Math.Ceiling(shapes.Max(shape => shape.LengthMm) / LatticeMm) + LatticeMm;
    private readonly float[]?[] known = new float[]?[4 * shapes.Count * shapes.Count];

    /// <summary>The shapes.</summary>
    public IReadOnlyList<LayoutShape> Shapes => shapes;

    /// <summary>The least distance of two centre lines by the coarse silhouettes, mm; 0 when the paddles pass each other.</summary>
    /// <param name="laid">A paddle on the board.</param>
    /// <param name="alongMm">How much further the other's left end lies, mm.</param>
    public double DistanceMm(Laid laid, int kind, bool isTurned, int alongMm)
    {
        var (steps, off) = Math.DivRem(alongMm, LatticeMm);
        if (off != 0) return Compute(laid, kind, isTurned, alongMm);
        if (Math.Abs(steps) > reach) return 0;
        ref var row = ref known[((laid.Kind * shapes.Count + kind) * 2 + (laid.IsTurned ? 1 : 0)) * 2 + (isTurned ? 1 : 0)];
        if (row is null)
        {
            row = new float[2 * reach + 1];
            Array.Fill(row, float.NaN);
        }

        ref var value = ref row[steps + reach];
        if (float.IsNaN(value)) value = (float)Compute(laid, kind, isTurned, alongMm);
        return value;
    }

    private double Compute(Laid laid, int kind, bool isTurned, int alongMm)
    {
        effort.Spend(Looks);
        return shapes[laid.Kind].Face(laid.IsTurned, isFine: false).DistanceMm(shapes[kind].Face(isTurned, isFine: false), alongMm);
    }
}
