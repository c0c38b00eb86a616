namespace Paddle.Design.Balance;

/// <summary>Between what the solver may choose each size: what hands like and tools can hold. Theory B2.</summary>
/// <remarks>Shaft: 28–40 mm accepted for the hand, trade shafts 25.4–35 mm (Kong and Lowe 2005, abstract; common practice). Blade spine
/// 9–14 mm at mid-blade (5/8 in before fairing on a club's plan), edge 3.5–5.5 mm (3/16 in usual), tip edge 1–2 mm more, shaft below the
/// grip and grip down to 7/8 in (forums, a club workshop's magazine plan and common practice). Wood beyond that is ballast: it is named and
/// priced, not built in.</remarks>
internal static class SizeLimits
{
    /// <summary>Names in the contract, in the order of <see cref="Solid.PaddleSizes"/>.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        "shaft.widthMm", "shaft.thicknessMm", "shaft.upperWidthMm", "shaft.upperThicknessMm",
        "blade.throatThicknessMm", "blade.middleThicknessMm", "blade.tipThicknessMm", "blade.edgeThicknessMm", "grip.thicknessMm",
    ];

    private static readonly Outline.Range[] Hardwood =
    [
        new(25, 34), new(26, 36), new(22, 30), new(22, 30), new(18, 34), new(9, 14), new(5, 8.5), new(3.5, 5.5), new(22, 30),
    ];

    private static readonly Outline.Range[] Softwood =
    [
        new(25, 36), new(26, 40), new(22, 30), new(22, 30), new(18, 36), new(9, 16), new(5, 8.5), new(3.5, 5.5), new(22, 30),
    ];

    /// <summary>Limits for the solver in hardwood, in the same order, mm; in softwood some go further up.</summary>
    public static IReadOnlyList<Outline.Range> Solver => Hardwood;

    /// <summary>Hand spacing below which a paddle is a child's, mm: the women's 5th percentile (ANSUR II, theory F1).</summary>
    public const double SmallSpacingMm = 742;

    /// <summary>Share of an adult's sizes that a small paddle is carved to: in proportion to the hand spacing, down to a shaft of 7/8 in
    /// for one of 1 1/8 in (common practice, no source).</summary>
    /// <returns>Share, 1 for adults.</returns>
    public static double SmallShare(double handSpacingMm) => Math.Clamp(handSpacingMm / SmallSpacingMm, 22.0 / 28, 1);

    /// <summary>Limits for the solver, in the same order, mm.</summary>
    /// <param name="smallShare">Share of an adult's sizes; spine and edges keep it at both ends, the shaft may be as thick as its loads ask.</param>
    /// <param name="usableThicknessMm">Thickness that the maker's board leaves, mm, or null; no thickness may exceed it.</param>
    /// <param name="latticeMm">Step of the sizes, mm: a limit between two of them moves to the nearer, the board's to the one it still holds.</param>
    /// <remarks>All of them lie within <see cref="PinnedOn"/>: what is chosen here is pinned in a design's code.</remarks>
    internal static Outline.Range[] For(bool isSoftwood, double smallShare, double? usableThicknessMm, double latticeMm)
    {
        double OnLattice(double size) => Math.Round(size / latticeMm) * latticeMm;
        var limits = new Outline.Range[Names.Count];
        for (var k = 0; k < limits.Length; k++)
        {
            var adult = (isSoftwood ? Softwood : Hardwood)[k];
            var isBlade = k is 5 or 6 or 7;
            var least = OnLattice(smallShare * adult.Min);
            limits[k] = OnBoard(
                new(least < Pinned[k].Min ? Math.Ceiling(Pinned[k].Min / latticeMm) * latticeMm : least, OnLattice(isBlade ? smallShare * adult.Max : adult.Max)),
                k, usableThicknessMm, latticeMm);
        }

        return limits;
    }

    /// <summary>Thickest size that a board holds, mm: the last step of the lattice in it.</summary>
    internal static double ThickestMm(double usableThicknessMm, double latticeMm) =>
        Math.Round(Math.Floor(usableThicknessMm / latticeMm + 1e-6) * latticeMm, 6);

    /// <summary>Thickest that the solver may make the grip, mm.</summary>
    internal static double ThickestGripMm(double? usableThicknessMm, double latticeMm) => OnBoard(Solver[^1], Names.Count - 1, usableThicknessMm, latticeMm).Max;

    /// <summary>Limits of a pinned size, mm: a board that is thinner than its least gives what it has, and the design says what that is worth.</summary>
    /// <param name="size">Its place in <see cref="Names"/>.</param>
    internal static Outline.Range PinnedOn(int size, double? usableThicknessMm, double latticeMm) =>
        Pinned[size] with { Min = OnBoard(Pinned[size], size, usableThicknessMm, latticeMm).Min };

    // Widths are cut out of the board's face; everything else out of its thickness.
    private static Outline.Range OnBoard(Outline.Range limit, int size, double? usableThicknessMm, double latticeMm)
    {
        if (usableThicknessMm is not { } usable || size is 0 or 2) return limit;
        var most = ThickestMm(usable, latticeMm);
        return new(Math.Min(limit.Min, most), Math.Min(limit.Max, most));
    }

    /// <summary>Limits for sizes that the caller pins, in the same order, mm: wider, but still a paddle.</summary>
    public static IReadOnlyList<Outline.Range> Pinned { get; } =
    [
        new(20, 45), new(20, 45), new(18, 45), new(18, 45), new(10, 45), new(4, 40), new(3, 30), new(1.5, 20), new(18, 50),
    ];

    /// <summary>Wood that must stay between the hollowed faces of a grip, mm: 3/8 in (common practice, no source).</summary>
    public const double LeastGripCoreMm = 9.5;
    /// <summary>Smallest mean of width and thickness at the lower hand, mm: 1 1/8 in less a shaving.</summary>
    public const double LeastMeanAtLowerHandMm = 28;
    /// <summary>Smallest mean of width and thickness just below the grip, mm: 7/8 in (common practice: 7/8 to 1 in; no hand closes there).</summary>
    public const double LeastMeanAtGripMm = 22.2;

    /// <summary>Most that the spine may have thinned from the shaft by the throat's place, mm: the shaft's depth is held some 50 mm into
    /// the blade (common practice; a plan of 1905 thins 1 1/8 in to 1 in there).</summary>
    public const double MostThroatThinningMm = 5;

    /// <summary>Least that the tip, all round, is thicker than the side edges, mm (common practice: 1–2, against knocks).</summary>
    public const double LeastTipOverEdgeMm = 1;
    /// <summary>Most that the spine near the tip stands above the edge, mm (common practice: edge + 1 to 3).</summary>
    public const double MostTipOverEdgeMm = 3;

    /// <summary>Least that the spine thins from the middle of the blade to its lower end, mm: a club's plan in a magazine, 2015, has 5/8 in
    /// in the middle third over 3/8 in in the lower one before fairing; a blade as thick at the tip as in the middle is a plank.</summary>
    public const double LeastLowerThinningMm = 2;

    /// <summary>Most that the shaft may thin from the lower hand to the grip, in width or thickness, mm. Common practice is 2–3 on a 28.6
    /// mm shaft; a shaft made thicker at the lower hand for its strength may lose more, where the moment fades anyway.</summary>
    public const double MostTaperMm = 7;

    /// <summary>Most that the shaft may be oval: thickness over width (common practice 1.1–1.25).</summary>
    public const double MostOval = 1.25;
}
