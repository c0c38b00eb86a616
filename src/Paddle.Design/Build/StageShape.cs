using Paddle.Design.Solid;

namespace Paddle.Design.Build;

/// <summary>The section that stands at one place at one stage.</summary>
/// <param name="HalfWidthMm">Half-breadth, mm.</param>
/// <param name="ThicknessMm">What a caliper reads at the centre line, mm.</param>
/// <param name="AreaMm2">Area, mm².</param>
/// <param name="AreaPerThickness">
/// How the area grows with the caliper reading when both faces are off by the same all across, mm² per mm.
/// </param>
internal readonly record struct StageSection(double HalfWidthMm, double ThicknessMm, double AreaMm2, double AreaPerThickness);

/// <summary>The solid at one stage, place by place: the board's rectangle, the polygonal shaft or the designed section with its allowance.
/// Theory M8.</summary>
/// <remarks>
/// Down to 0.08 of the blade the throat keeps the shaft's section while the shaft is square or polygonal; from there to 0.25 the
/// one runs out into the other, as a spokeshave leaves it, with the share that the finished solid's own shoulder has.
/// </remarks>
internal sealed class StageShape
{
    private readonly PaddleForm form;
    private readonly PaddleSizes sizes;
    private readonly OutlineLine line;
    private readonly SpineSlopes slopes;
    private readonly double hollowMm;
    private readonly StageAllowance allowance;
    private readonly Blank blank;
    private readonly BuildStage stage;

    internal StageShape(PaddleSolid solid, OutlineLine line, Blank blank, BuildStage stage, StageAllowance allowance)
    {
        (form, sizes, this.line) = (solid.Form, solid.Sizes, line);
        slopes = SpineSlopes.Of(sizes);
        hollowMm = form.Grip.HollowedFaces * form.Grip.HollowDepthMm;
        (this.blank, this.stage, this.allowance) = (blank, stage, allowance);
    }

    internal StageSection At(StationPattern pattern, double xMm)
    {
        if (stage == BuildStage.Blank) return Rectangle(blank.WidthMm / 2, blank.ThicknessMm / 2, 1);
        var c = pattern.ThicknessMm(sizes, slopes, hollowMm) / 2;
        return pattern.Segment.Zone switch
        {
            Zone.Grip => allowance.GripFaceMm is { } face
                ? Designed(pattern, Line(xMm, face), c, 0, face)
                : Rectangle(Line(xMm, allowance.OutlineMm), blank.ThicknessMm / 2, 1),
            Zone.Shaft => ShaftAt(xMm, c),
            _ => BladeAt(pattern, xMm, c),
        };
    }

    private double Line(double xMm, double allowanceMm) => line.HalfBreadthMm(xMm, allowanceMm);

    private StageSection ShaftAt(double xMm, double c) =>
        Rectangle(
            Line(xMm, allowance.ShaftFaceMm ?? allowance.OutlineMm),
            allowance.ShaftFaceMm is { } face ? Within(c + face) : blank.ThicknessMm / 2,
            Share(allowance.Shaft));

    private StageSection BladeAt(StationPattern pattern, double xMm, double c)
    {
        var shaft = ShaftAt(xMm, c);
        if (allowance.BladeFaceMm is not { } face) return shaft;
        var e = pattern.EdgeShare * sizes.EdgeThicknessMm / 2;
        var blade = Designed(pattern, Line(xMm, allowance.OutlineMm), c, e, face);
        if (allowance.Shaft == ShaftShape.Round) return blade;
        var share = pattern.EdgeShare;
        return new(
            blade.HalfWidthMm,
            share * blade.ThicknessMm + (1 - share) * shaft.ThicknessMm,
            share * blade.AreaMm2 + (1 - share) * shaft.AreaMm2,
            share * blade.AreaPerThickness + (1 - share) * shaft.AreaPerThickness);
    }

    // The designed section with the allowance on every face: at a round edge it closes, at a full edge the edge is thicker by it too.
    private StageSection Designed(StationPattern pattern, double w, double c, double e, double face)
    {
        var thick = Within(c + face);
        var edge = Math.Min(e + face * pattern.EdgeShare, thick);
        var section = new Section(w, thick, edge, pattern.Moments);
        var perThickness = 2 * w * (pattern.EdgeShare + (1 - pattern.EdgeShare) * pattern.Moments.G1);
        return new(w, 2 * thick, section.AreaMm2, perThickness);
    }

    private double Within(double halfThickness) => Math.Min(halfThickness, blank.ThicknessMm / 2);

    private static StageSection Rectangle(double w, double c, double share) => new(w, 2 * c, 4 * w * c * share, 2 * w * share);

    private static double Share(ShaftShape shape) => shape switch
    {
        ShaftShape.Square => 1,
        ShaftShape.EightSided => Rounding.PolygonAreaShare(8),
        ShaftShape.SixteenSided => Rounding.PolygonAreaShare(16),
        _ => Rounding.EllipseAreaShare,
    };
}
