namespace Paddle.Design.Balance;

/// <summary>Between what the solver may choose each size: what hands like and tools can hold. Theory B2.</summary>
/// <remarks>
/// Shaft: 28–40 mm accepted for the hand, trade shafts 25.4–35 mm (Kong and Lowe 2005, abstract; common practice). Blade spine
/// 8–12 mm at mid-blade, edge 3–6 mm, tip edge 1–2 mm more (common practice, no source). A spine that must serve as ballast may
/// stand higher than that.
/// </remarks>
public static class SizeLimits
{
    /// <summary>Names in the contract, in the order of <see cref="Solid.PaddleSizes"/>.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        "shaft.widthMm", "shaft.thicknessMm", "shaft.upperWidthMm", "shaft.upperThicknessMm",
        "blade.throatThicknessMm", "blade.middleThicknessMm", "blade.tipThicknessMm", "blade.edgeThicknessMm", "grip.thicknessMm",
    ];

    /// <summary>Limits for the solver, in the same order, mm.</summary>
    public static IReadOnlyList<Outline.Range> Solver { get; } =
    [
        new(26, 38), new(27, 40), new(24, 36), new(24, 38), new(18, 40), new(7, 22), new(5, 11), new(3, 6), new(25, 36),
    ];

    /// <summary>Limits for sizes that the caller pins, in the same order, mm: wider, but still a paddle.</summary>
    public static IReadOnlyList<Outline.Range> Pinned { get; } =
    [
        new(20, 45), new(20, 45), new(18, 45), new(18, 45), new(10, 45), new(4, 40), new(3, 30), new(1.5, 20), new(18, 50),
    ];

    /// <summary>Smallest mean of width and thickness at the lower hand, mm: 1 1/8 in less a shaving.</summary>
    public const double LeastMeanAtLowerHandMm = 28;

    /// <summary>Smallest mean of width and thickness just below the grip, mm: 1 in.</summary>
    public const double LeastMeanAtGripMm = 25.4;

    /// <summary>
    /// Most that the spine may have thinned from the shaft by the throat's place, mm: the shaft's depth is held some 50 mm into the
    /// blade (common practice; a plan of 1905 thins 1 1/8 in to 1 in there).
    /// </summary>
    public const double MostThroatThinningMm = 5;

    /// <summary>Least that the tip, all round, is thicker than the side edges, mm (common practice: 1–2, against knocks).</summary>
    public const double LeastTipOverEdgeMm = 1;

    /// <summary>Most that the spine near the tip stands above the edge, mm (common practice: edge + 1 to 3).</summary>
    public const double MostTipOverEdgeMm = 3;

    /// <summary>
    /// Most that the shaft may thin from the lower hand to the grip, in width or thickness, mm. Common practice is 2–3 on a
    /// 28.6 mm shaft; a shaft made thicker at the lower hand for its strength may lose more, where the moment fades anyway.
    /// </summary>
    public const double MostTaperMm = 6;

    /// <summary>Most that the shaft may be oval: thickness over width (common practice 1.1–1.25).</summary>
    public const double MostOval = 1.25;
}
