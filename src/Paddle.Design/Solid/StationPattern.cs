namespace Paddle.Design.Solid;

/// <summary>
/// What is the same in every paddle at one place of one segment: how the nine sizes mix into the thickness there, and the
/// pure numbers of the section. Computed once for each place and shared by all designs.
/// </summary>
public sealed class StationPattern
{
    private StationPattern(Segment segment, double coordinate, double weight)
    {
        Segment = segment;
        Coordinate = coordinate;
        Weight = weight;
        Moments = SectionMoments.Ellipse;
        switch (segment.Zone)
        {
            case Zone.Grip:
                var (cap, crest) = (GripProfile.Cap(coordinate), GripProfile.CrestShare(coordinate));
                GripWeight = cap * crest;
                UpperWeight = cap * (1 - crest);
                HollowShare = GripProfile.HollowShare(coordinate);
                break;
            case Zone.Shaft:
                LowerShare = ReferenceEquals(segment, Segment.UpperShaft) ? Smooth.Step(coordinate) : 1;
                UpperWeight = 1 - LowerShare;
                Spine = new SpineWeights(LowerShare, 0, 0, 0, 0, 0);
                break;
            default:
                Spine = SpineProfile.Weights(coordinate);
                EdgeShare = BladeBlend.EdgeShare(coordinate);
                Moments = SectionMoments.For(BladeBlend.CrownExponent(coordinate), BladeBlend.CrownPower(coordinate));
                break;
        }

        Perimeter = new PerimeterPattern(Moments);
    }

    /// <summary>The segment.</summary>
    public Segment Segment { get; }

    /// <summary>Place in the segment's own coordinate.</summary>
    public double Coordinate { get; }

    /// <summary>Quadrature weight in the segment's own coordinate; 0 where the place only serves to look at the solid.</summary>
    public double Weight { get; }

    /// <summary>Pure numbers of the section.</summary>
    public SectionMoments Moments { get; }

    /// <summary>Share of the lower shaft's sizes, against the upper shaft's.</summary>
    public double LowerShare { get; }

    /// <summary>Share of the edge thickness.</summary>
    public double EdgeShare { get; }

    /// <summary>Share of the grip's hollow.</summary>
    public double HollowShare { get; }

    internal double GripWeight { get; }

    internal double UpperWeight { get; }

    internal SpineWeights Spine { get; }

    internal PerimeterPattern Perimeter { get; }

    /// <summary>The pattern at a coordinate of a segment.</summary>
    /// <param name="segment">The segment.</param>
    /// <param name="coordinate">Place in its own coordinate.</param>
    /// <param name="weight">Quadrature weight in that coordinate.</param>
    public static StationPattern At(Segment segment, double coordinate, double weight = 0) => new(segment, coordinate, weight);

    /// <summary>Full thickness (mm) here, for the sizes and the inner slopes of their spine.</summary>
    internal double ThicknessMm(PaddleSizes sizes, in SpineSlopes slopes, double hollowMm) =>
        GripWeight * sizes.GripThicknessMm
        + UpperWeight * sizes.UpperThicknessMm
        + Spine.Shaft * sizes.ShaftThicknessMm
        + Spine.Throat * sizes.ThroatThicknessMm
        + Spine.Middle * sizes.MiddleThicknessMm
        + Spine.Tip * sizes.TipThicknessMm
        + Spine.ThroatSlope * slopes.AtThroat
        + Spine.MiddleSlope * slopes.AtMiddle
        - HollowShare * hollowMm;
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
