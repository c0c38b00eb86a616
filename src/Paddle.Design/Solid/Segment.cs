namespace Paddle.Design.Solid;

/// <summary>Zones of the paddle that mass and surface are reported for.</summary>
public enum Zone
{
    /// <summary>From the top to where the plain shaft begins.</summary>
    Grip,
    /// <summary>From the grip to the throat.</summary>
    Shaft,
    /// <summary>From the throat to the tip.</summary>
    Blade,
}

/// <summary>A smooth stretch of the paddle: nothing in the solid has a knot inside it, apart from the blade's outline.</summary>
/// <param name="Zone">The zone it belongs to.</param>
/// <param name="From">Start, in the segment's own coordinate.</param>
/// <param name="To">End, in the segment's own coordinate.</param>
/// <param name="ClosesAtStart">Whether the solid closes with a vertical tangent at the start (top of the grip).</param>
/// <param name="ClosesAtEnd">Whether the solid closes with a vertical tangent at the end (tip of the blade).</param>
/// <remarks>
/// The coordinate is the fraction of the grip's length in the grip, of the stretch between grip and lower hand in the upper
/// shaft, of the stretch between lower hand and throat in the lower shaft, and of the blade's length in the blade.
/// </remarks>
public sealed record Segment(Zone Zone, double From, double To, bool ClosesAtStart = false, bool ClosesAtEnd = false)
{
    /// <summary>The shaft from the grip to the lower hand.</summary>
    public static Segment UpperShaft { get; } = new(Zone.Shaft, 0, 1);

    /// <summary>The shaft from the lower hand to the throat.</summary>
    public static Segment LowerShaft { get; } = new(Zone.Shaft, 0, 1);

    /// <summary>All segments from the top of the grip to the tip.</summary>
    public static IReadOnlyList<Segment> All { get; } =
    [
        new(Zone.Grip, 0, GripProfile.CapEnd, ClosesAtStart: true),
        new(Zone.Grip, GripProfile.CapEnd, GripProfile.CrestEnd),
        new(Zone.Grip, GripProfile.CrestEnd, 1),
        UpperShaft,
        LowerShaft,
        new(Zone.Blade, 0, SpineProfile.Throat),
        new(Zone.Blade, SpineProfile.Throat, BladeBlend.ShoulderEnd),
        new(Zone.Blade, BladeBlend.ShoulderEnd, SpineProfile.Middle),
        new(Zone.Blade, SpineProfile.Middle, SpineProfile.Tip),
        new(Zone.Blade, SpineProfile.Tip, 1, ClosesAtEnd: true),
    ];
}
