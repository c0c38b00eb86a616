using Paddle.Design.Solid;

namespace Paddle.Design.Balance;

/// <summary>One of the nine sizes: its name in the contract, and between what it may lie, mm.</summary>
/// <param name="Hardwood">Limits for the solver in hardwood.</param>
/// <param name="Softwood">Limits for the solver in softwood.</param>
/// <param name="Pinned">Limits for a size that the caller pins: wider, but still a paddle.</param>
internal sealed record SizeRow(string Name, Outline.Range Hardwood, Outline.Range Softwood, Outline.Range Pinned)
{
    /// <summary>Whether it is cut out of the board's face; everything else comes out of its thickness.</summary>
    public bool IsWidth { get; init; }
    /// <summary>Whether a small paddle has less of it at the upper end too: spine and edges; its shaft may be as thick as its loads ask.</summary>
    public bool IsThinOnSmall { get; init; }
}

/// <summary>Between what the solver may choose each size: what hands like and tools can hold. Theory B2.</summary>
/// <remarks>Shaft: 28–40 mm accepted for the hand, trade shafts 25.4–35 mm (Kong and Lowe 2005, abstract; common practice). Blade spine
/// 9–14 mm at mid-blade (5/8 in before fairing on a club's plan), edge 3.5–5.5 mm (3/16 in usual), tip edge 1–2 mm more, shaft below the
/// grip and grip down to 7/8 in (forums, a club workshop's magazine plan and common practice). Wood beyond that is ballast: it is named and
/// priced, not built in.</remarks>
internal static class SizeLimits
{
    /// <summary>The nine sizes, in the order of <see cref="PaddleSizes"/>.</summary>
    public static IReadOnlyList<SizeRow> Rows { get; } =
    [
        new("shaft.widthMm", Hardwood: new(25, 34), Softwood: new(25, 36), Pinned: new(20, 45)) { IsWidth = true },
        new("shaft.thicknessMm", Hardwood: new(26, 36), Softwood: new(26, 40), Pinned: new(20, 45)),
        new("shaft.upperWidthMm", Hardwood: new(22, 30), Softwood: new(22, 30), Pinned: new(18, 45)) { IsWidth = true },
        new("shaft.upperThicknessMm", Hardwood: new(22, 30), Softwood: new(22, 30), Pinned: new(18, 45)),
        new("blade.throatThicknessMm", Hardwood: new(18, 34), Softwood: new(18, 36), Pinned: new(10, 45)),
        new("blade.middleThicknessMm", Hardwood: new(9, 14), Softwood: new(9, 16), Pinned: new(4, 40)) { IsThinOnSmall = true },
        new("blade.tipThicknessMm", Hardwood: new(5, 8.5), Softwood: new(5, 8.5), Pinned: new(3, 30)) { IsThinOnSmall = true },
        new("blade.edgeThicknessMm", Hardwood: new(3.5, 5.5), Softwood: new(3.5, 5.5), Pinned: new(1.5, 20)) { IsThinOnSmall = true },
        new("grip.thicknessMm", Hardwood: new(22, 30), Softwood: new(22, 30), Pinned: new(18, 50)),
    ];

    /// <summary>Names in the contract, in the same order.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Rows.Select(row => row.Name)];

    /// <summary>Limits for the solver in hardwood, in the same order, mm; in softwood some go further up.</summary>
    public static IReadOnlyList<Outline.Range> Solver { get; } = [.. Rows.Select(row => row.Hardwood)];

    /// <summary>Limits for sizes that the caller pins, in the same order, mm: wider, but still a paddle.</summary>
    public static IReadOnlyList<Outline.Range> Pinned { get; } = [.. Rows.Select(row => row.Pinned)];

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
        Outline.Range Limits(SizeRow row)
        {
            var adult = isSoftwood ? row.Softwood : row.Hardwood;
            var least = OnLattice(smallShare * adult.Min);
            return OnBoard(
                new(least < row.Pinned.Min ? Math.Ceiling(row.Pinned.Min / latticeMm) * latticeMm : least, OnLattice(row.IsThinOnSmall ? smallShare * adult.Max : adult.Max)),
                row, usableThicknessMm, latticeMm);
        }

        return [.. Rows.Select(Limits)];
    }

    /// <summary>Thickest size that a board holds, mm: the last step of the lattice in it.</summary>
    internal static double ThickestMm(double usableThicknessMm, double latticeMm) =>
        Math.Round(Math.Floor(usableThicknessMm / latticeMm + 1e-6) * latticeMm, 6);

    /// <summary>Thickest that the solver may make the grip, mm.</summary>
    internal static double ThickestGripMm(double? usableThicknessMm, double latticeMm) => OnBoard(Solver[PaddleSizes.Grip], Rows[PaddleSizes.Grip], usableThicknessMm, latticeMm).Max;

    /// <summary>Limits of a pinned size, mm: a board that is thinner than its least gives what it has, and the design says what that is worth.</summary>
    /// <param name="size">Its place in <see cref="Rows"/>.</param>
    internal static Outline.Range PinnedOn(int size, double? usableThicknessMm, double latticeMm) =>
        Pinned[size] with { Min = OnBoard(Pinned[size], Rows[size], usableThicknessMm, latticeMm).Min };

    private static Outline.Range OnBoard(Outline.Range limit, SizeRow size, double? usableThicknessMm, double latticeMm)
    {
        if (usableThicknessMm is not { } usable || size.IsWidth) return limit;
        var most = ThickestMm(usable, latticeMm);
        return new(Math.Min(limit.Min, most), Math.Min(limit.Max, most));
    }

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
