using Paddle.Design.Solid;

namespace Paddle.Design.Build;

/// <summary>Zones that wood is taken from to move the balance.</summary>
internal enum CorrectionZone
{
    /// <summary>The grip's crest, running out into the shaft.</summary>
    Grip,
    /// <summary>The shaft below the grip, running out to nothing at the lower hand.</summary>
    ShaftUpper,
    /// <summary>The shaft round the lower hand down to the shoulder of the blade.</summary>
    ShaftLower,
    /// <summary>Upper third of the blade.</summary>
    BladeUpper,
    /// <summary>Middle third of the blade.</summary>
    BladeMiddle,
    /// <summary>Lower third of the blade.</summary>
    BladeLower,
}

/// <summary>Names and reach of the zones.</summary>
internal static class CorrectionZones
{
    // Neighbouring thirds of the blade run into each other over this fraction of the blade on both sides of their border.
    private const double RunOut = 0.065;

    /// <summary>All zones from the top down.</summary>
    public static IReadOnlyList<CorrectionZone> All { get; } = Enum.GetValues<CorrectionZone>();

    /// <summary>The contract's name of a zone.</summary>
    public static string Id(CorrectionZone zone) => zone switch
    {
        CorrectionZone.Grip => "grip",
        CorrectionZone.ShaftUpper => "shaft-upper",
        CorrectionZone.ShaftLower => "shaft-lower",
        CorrectionZone.BladeUpper => "blade-upper-third",
        CorrectionZone.BladeMiddle => "blade-middle-third",
        _ => "blade-lower-third",
    };

    /// <summary>Share of a zone's thickness figure that applies at a place: 1 in its heart, running out smoothly; all shares at a place of
    /// shaft or blade add up to 1. Theory M22.</summary>
    public static double Share(CorrectionZone zone, StationPattern pattern)
    {
        var t = pattern.Coordinate;
        var blade = pattern.Segment.Zone == Zone.Blade;
        return zone switch
        {
            CorrectionZone.Grip => pattern.Weights.Grip,
            CorrectionZone.ShaftUpper => pattern.Weights.Upper,
            CorrectionZone.ShaftLower when blade => 1 - Shoulder(t),
            CorrectionZone.ShaftLower => pattern.LowerShare,
            _ when !blade => 0,
            CorrectionZone.BladeUpper => Shoulder(t) * (1 - Past(t, 1.0 / 3)),
            CorrectionZone.BladeMiddle => Past(t, 1.0 / 3) * (1 - Past(t, 2.0 / 3)),
            _ => Past(t, 2.0 / 3),
        };
    }

    internal static double[] Shares(StationPattern pattern) => [.. All.Select(zone => Share(zone, pattern))];

    private static double Shoulder(double t) => Smooth.Step(t / BladeBlend.ShoulderEnd);

    private static double Past(double t, double border) => Smooth.Step((t - border + RunOut) / (2 * RunOut));
}
