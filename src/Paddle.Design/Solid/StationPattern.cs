namespace Paddle.Design.Solid;

/// <summary>What is the same in every paddle at one place of one segment: how the nine sizes mix into the thickness there, and the pure
/// numbers of the section. Computed once for each place and shared by all designs.</summary>
public sealed class StationPattern
{
    private readonly SectionMoments moments = SectionMoments.Ellipse;
    private readonly ThicknessWeights weights, rates;

    private StationPattern(Segment segment, double coordinate, double weight)
    {
        Segment = segment;
        Coordinate = coordinate;
        Weight = weight;
        weights = ThicknessWeights.At(segment, coordinate);
        rates = ThicknessWeights.RatesAt(segment, coordinate);
        switch (segment.Zone)
        {
            case Zone.Shaft:
                LowerShare = Weights.Spine.Shaft;
                break;
            case Zone.Blade:
                EdgeShare = BladeBlend.EdgeShare(coordinate);
                moments = SectionMoments.For(BladeBlend.CrownExponent(coordinate), BladeBlend.CrownPower(coordinate));
                break;
        }
    }

    public Segment Segment { get; }
    /// <summary>Place in the segment's own coordinate.</summary>
    public double Coordinate { get; }
    /// <summary>Quadrature weight in the segment's own coordinate; 0 where the place only serves to look at the solid.</summary>
    public double Weight { get; }
    /// <summary>Pure numbers of the section.</summary>
    public ref readonly SectionMoments Moments => ref moments;
    /// <summary>Share of the lower shaft's sizes, against the upper shaft's.</summary>
    public double LowerShare { get; }
    /// <summary>Share of the edge thickness.</summary>
    public double EdgeShare { get; }
    /// <summary>Share of the grip's hollow.</summary>
    public double HollowShare => Weights.Hollow;
    /// <summary>How the sizes mix into the thickness.</summary>
    internal ref readonly ThicknessWeights Weights => ref weights;
    /// <summary>How they mix into the thickness's change along the segment's coordinate.</summary>
    internal ref readonly ThicknessWeights Rates => ref rates;
    /// <summary>Made when first asked for: a drawing looks at hundreds of places, and asks none for it.</summary>
    internal PerimeterPattern Perimeter => field ??= new(Moments);

    /// <param name="weight">Quadrature weight in that coordinate.</param>
    internal static StationPattern At(Segment segment, double coordinate, double weight = 0) => new(segment, coordinate, weight);

    /// <summary>Full thickness (mm) here, for the sizes and the inner slopes of their spine.</summary>
    internal double ThicknessMm(PaddleSizes sizes, in SpineSlopes slopes, double hollowMm) => Weights.Sum(sizes, slopes, hollowMm);

    /// <summary>Slope of the steeper face along the paddle, rise over run, 0 or more: half the thickness's change, a hollow's in full,
    /// since a one-sided grip takes it all from one face.</summary>
    /// <param name="unitMm">Length of one unit of the segment's coordinate, mm.</param>
    internal double FaceSlope(PaddleSizes sizes, in SpineSlopes slopes, double hollowDepthMm, double unitMm) =>
        Math.Abs(Rates.Sum(sizes, slopes, 2 * hollowDepthMm)) / (2 * unitMm);
}

/// <summary>Weights of the sizes, the spine's inner slopes and the hollow's depth in a thickness, or in its change.</summary>
internal readonly record struct ThicknessWeights(double Grip, double Upper, SpineWeights Spine, double Hollow)
{
    internal static ThicknessWeights At(Segment segment, double coordinate)
    {
        switch (segment.Zone)
        {
            case Zone.Grip:
                var cap = GripProfile.Cap(coordinate);
                var crest = GripProfile.CrestShare(coordinate);
                return new(cap * crest, cap * (1 - crest), default, GripProfile.HollowShare(coordinate));
            case Zone.Shaft:
                var lower = ReferenceEquals(segment, Segment.UpperShaft) ? Smooth.Step(coordinate) : 1;
                return new(0, 1 - lower, new(lower, 0, 0, 0, 0, 0), 0);
            default:
                return new(0, 0, SpineProfile.Weights(coordinate), 0);
        }
    }

    /// <summary>Change along the coordinate, by central differences inside the segment: its curves are cubics, so that this is good to
    /// 1e-7. The rounded top of the grip is no taper of a bent stick and counts as level.</summary>
    internal static ThicknessWeights RatesAt(Segment segment, double coordinate)
    {
        const double Half = 1e-4;
        if (segment.Zone == Zone.Grip && segment.ClosesAtStart) return default;
        var at = Math.Clamp(coordinate, segment.From + Half, segment.To - Half);
        ThicknessWeights before = At(segment, at - Half), after = At(segment, at + Half);
        double Rate(double from, double to) => (to - from) / (2 * Half);
        SpineWeights a = before.Spine, b = after.Spine;
        return new(
            Rate(before.Grip, after.Grip),
            Rate(before.Upper, after.Upper),
            new(
                Rate(a.Shaft, b.Shaft), Rate(a.Throat, b.Throat), Rate(a.Middle, b.Middle), Rate(a.Tip, b.Tip),
                Rate(a.ThroatSlope, b.ThroatSlope), Rate(a.MiddleSlope, b.MiddleSlope)),
            Rate(before.Hollow, after.Hollow));
    }

    internal double Sum(PaddleSizes sizes, in SpineSlopes slopes, double hollowMm) =>
        Grip * sizes.GripThicknessMm + Upper * sizes.UpperThicknessMm + Spine.Shaft * sizes.ShaftThicknessMm
        + Spine.Throat * sizes.ThroatThicknessMm
        + Spine.Middle * sizes.MiddleThicknessMm
        + Spine.Tip * sizes.TipThicknessMm
        + Spine.ThroatSlope * slopes.AtThroat
        + Spine.MiddleSlope * slopes.AtMiddle
        - Hollow * hollowMm;
}

/// <summary>Slopes of the spine thickness at the throat and middle knots, mm per blade.</summary>
internal readonly record struct SpineSlopes(double AtThroat, double AtMiddle)
{
    internal static SpineSlopes Of(PaddleSizes sizes)
    {
        var (throat, middle) = SpineProfile.Slopes(
            sizes.ShaftThicknessMm, sizes.ThroatThicknessMm, sizes.MiddleThicknessMm, sizes.TipThicknessMm);
        return new(throat, middle);
    }
}

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
/// <param name="From">Start, in the segment's own coordinate.</param>
/// <param name="To">End, in the segment's own coordinate.</param>
/// <param name="ClosesAtStart">Whether the solid closes with a vertical tangent at the start (top of the grip).</param>
/// <param name="ClosesAtEnd">Whether the solid closes with a vertical tangent at the end (tip of the blade).</param>
/// <remarks>The coordinate is the fraction of the grip's length in the grip, of the stretch between grip and lower hand in the upper shaft,
/// of the stretch between lower hand and throat in the lower shaft, and of the blade's length in the blade.</remarks>
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
