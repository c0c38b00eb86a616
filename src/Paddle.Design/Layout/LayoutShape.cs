namespace Paddle.Design.Layout;

/// <summary>What the packing needs of a paddle, or of several that one shape stands for.</summary>
internal sealed class LayoutShape
{
    /// <summary>Wood kept between a defect and grip, shaft or root of the blade, mm: the grain runs around a knot (common practice, no source).</summary>
    public const double DefectMarginMm = 12;

    // Beside the rest of the blade a defect only must not touch the line.
    private const float ClearOfLineMm = 0.5f;
    // A quarter of a millimetre: with the slopes of an outline the distance is then a tenth of a millimetre too long at most.
    private const double FineMm = 0.25, CoarseMm = 1;

    private readonly Silhouette[] coarse;
    private readonly Lazy<Silhouette>[] fine;
    private readonly float[][] guards;

    private LayoutShape(double lengthMm, double halfWidthMm, double areaMm2, Silhouette[] coarse, Lazy<Silhouette>[] fine, float[][] guards) =>
        (LengthMm, HalfWidthMm, AreaMm2, this.coarse, this.fine, this.guards) = (lengthMm, halfWidthMm, areaMm2, coarse, fine, guards);

    /// <summary>Whether it is a rectangle: the same either way round, and known exactly by the coarse silhouette.</summary>
    public bool IsRectangle { get; private init; }
    public double LengthMm { get; }
    public double HalfWidthMm { get; }
    /// <summary>Area of the face, mm²; that of the smallest where it stands for several.</summary>
    public double AreaMm2 { get; }

    /// <summary>Reads a paddle.</summary>
    public static LayoutShape Of(LayoutPaddle paddle, double gapMm)
    {
        Silhouette[] coarse = [.. Ways.Select(isTurned => Silhouette.Of(paddle.Outline, isTurned, gapMm, CoarseMm))];
        Lazy<Silhouette>[] fine = [.. Ways.Select(isTurned => new Lazy<Silhouette>(() => Silhouette.Of(paddle.Outline, isTurned, gapMm, FineMm)))];
        return new(paddle.LengthMm, paddle.HalfWidthMm, paddle.AreaMm2, coarse, fine, [.. Ways.Select((isTurned, way) => Guard(paddle, coarse[way], isTurned))]) { IsRectangle = paddle.IsStrip };
    }

    /// <summary>The silhouette one way round; the fine one decides a placement, the coarse one finds it.</summary>
    public Silhouette Face(bool isTurned, bool isFine) => isFine ? fine[isTurned ? 1 : 0].Value : coarse[isTurned ? 1 : 0];

    /// <summary>Half-breadths by millimetres that must be clear of defects, mm.</summary>
    public ReadOnlySpan<float> Guard(bool isTurned) => guards[isTurned ? 1 : 0];

    private static bool[] Ways { get; } = [false, true];

    private static float[] Guard(LayoutPaddle paddle, Silhouette face, bool isTurned)
    {
        var guarded = face.HalfMm.ToArray();
        for (var k = 0; k < guarded.Length; k++)
        {
            if ((isTurned ? paddle.LengthMm - k : k) > paddle.GuardedToMm) guarded[k] = float.NegativeInfinity;
        }

        var (wide, reach) = Silhouette.Widen(guarded, DefectMarginMm, CoarseMm);
        return [.. guarded.Select((_, k) => Math.Max(face.HalfMm[k] + ClearOfLineMm, wide[k + reach]))];
    }
}
