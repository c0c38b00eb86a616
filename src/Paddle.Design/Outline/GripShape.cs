namespace Paddle.Design.Outline;

/// <summary>Grip shapes of the trade.</summary>
public enum GripStyle
{
    /// <summary>Pear: widest a little below the top, flowing long into the shaft.</summary>
    Pear,
    /// <summary>Palm: a broad rounded top for the heel of the hand.</summary>
    Palm,
    /// <summary>T: a bar across the shaft to close the fingers round.</summary>
    T,
}

/// <summary>Whether both faces of the grip are shaped alike.</summary>
public enum GripFaces
{
    /// <summary>Both faces alike: the paddle may be turned over.</summary>
    Matching,
    /// <summary>One face hollowed for the palm, the other left full, for a straighter wrist.</summary>
    OneSided,
}

/// <summary>The grip to be drawn.</summary>
/// <param name="WidthMm">Full width at its widest, mm.</param>
/// <param name="LengthMm">From the top to where the plain shaft begins, mm.</param>
/// <param name="Faces">Matching or one-sided.</param>
/// <param name="HollowDepthMm">Depth of the hollow below the crest, on each hollowed face, mm.</param>
public sealed record GripShape(GripStyle Style, double WidthMm, double LengthMm, GripFaces Faces, double HollowDepthMm)
{
    /// <summary>How many faces are hollowed.</summary>
    public int HollowedFaces => Faces == GripFaces.Matching ? 2 : 1;
}

/// <summary>What a grip style looks like when nothing else is asked, and how its curve runs.</summary>
/// <param name="WidthMm">Default full width, mm.</param>
/// <param name="WidthLimitsMm">Allowed full widths, mm.</param>
/// <param name="HandMm">Grip end to the middle of the grip hand, mm.</param>
/// <param name="CrestAt">Place of the widest point as a fraction of the length.</param>
/// <param name="TopSquareness">Handle fraction of the top: 0.55 is a quarter ellipse, more is squarer.</param>
/// <param name="FlowStart">Handle below the crest, as a fraction of the run into the shaft.</param>
/// <param name="FlowEnd">Handle at the shaft, as a fraction of the run into the shaft.</param>
internal sealed record GripPattern(
    GripStyle Style, double WidthMm, Range WidthLimitsMm, double LengthMm, Range LengthLimitsMm, double HollowDepthMm, double HandMm,
    double CrestAt, double TopSquareness, double FlowStart, double FlowEnd)
{
    /// <summary>The patterns. Widths and lengths: common practice, no source (palm 0.75–0.9 of the hand's breadth; T the hand's breadth + 15 mm or more).</summary>
    public static IReadOnlyList<GripPattern> All { get; } =
    [
        new(GripStyle.Pear, 64, new(45, 85), 95, new(70, 140), 5, 20, 0.34, 0.60, 0.40, 0.50),
        new(GripStyle.Palm, 70, new(50, 95), 85, new(60, 130), 4, 20, 0.36, 0.66, 0.42, 0.50),
        new(GripStyle.T, 100, new(80, 130), 62, new(45, 90), 0, 15, 0.26, 0.80, 0.55, 0.62),
    ];

    public static GripPattern Of(GripStyle style) => All.First(pattern => pattern.Style == style);
}
