using Paddle.Design.Outline;
using Paddle.Design.Solid;

namespace Paddle.Design.Build;

/// <summary>One stage's solid summed on a Gauss grid, with what the allowance and the trim add beyond both ends. Theory M8.</summary>
internal sealed class StageSolid
{
    private static readonly GaussRule EndRule = new(3);

    private StageSolid(BuildStage stage, Blank blank, StageNode[] nodes, int overhang)
    {
        (Stage, Blank, Nodes, FirstPlace) = (stage, blank, nodes, overhang);
        double volume = 0, first = 0;
        foreach (var node in nodes)
        {
            volume += node.WeightMm * node.Section.AreaMm2;
            first += node.WeightMm * node.Section.AreaMm2 * node.AlongMm;
        }

        (VolumeMm3, CentreMm) = (volume, first / volume);
    }

    public BuildStage Stage { get; }
    /// <summary>The board.</summary>
    public Blank Blank { get; }
    /// <summary>Volume, mm³.</summary>
    public double VolumeMm3 { get; }
    /// <summary>Balance point of even wood, mm from the finished top of the grip along the shaft's line.</summary>
    public double CentreMm { get; }
    /// <summary>The nodes of the sum from the top end to the bottom end.</summary>
    internal IReadOnlyList<StageNode> Nodes { get; }
    /// <summary>Index of the node that stands for the first place of <see cref="StationGrid.Fine"/>.</summary>
    internal int FirstPlace { get; }

    /// <param name="densityKgM3">Density of the wood, kg/m³.</param>
    public double MassG(double densityKgM3) => densityKgM3 * 1e-6 * VolumeMm3;

    /// <summary>Shapes and sums a stage.</summary>
    /// <param name="finished">The finished paddle on <see cref="StationGrid.Fine"/>.</param>
    public static StageSolid Of(PaddleSolid finished, Blank blank, BuildStage stage, OutlineSaw saw) =>
        Of(finished, new(finished.Outline), blank, stage, saw);

    internal static StageSolid Of(PaddleSolid finished, OutlineLine line, Blank blank, BuildStage stage, OutlineSaw saw)
    {
        var allowance = StageAllowance.After(stage, saw);
        var shape = new StageShape(finished, line, blank, stage, allowance);
        var top = StationPattern.At(Segment.All[0], 0);
        var tip = StationPattern.At(Segment.All[^1], 1);
        var length = finished.Form.Places.OverallMm;
        var nodes = new List<StageNode>(finished.Count + 2 * EndRule.Abscissas.Length);

        void Add(StationPattern pattern, double x, double weight) => nodes.Add(
            new(pattern, x, finished.Form.AlongShaftMm(x), weight, shape.At(pattern, x)));

        // Beyond the ends the line closes like a square root: points in the square root of the distance keep Gauss its power.
        var reach = stage == BuildStage.Blank ? blank.EndTrimMm : allowance.OutlineMm;
        for (var k = 0; reach > 0 && k < EndRule.Abscissas.Length; k++)
        {
            var s = EndRule.Abscissas[k];
            Add(top, -reach + reach * s * s, EndRule.Weights[k] * 2 * reach * s);
        }

        var overhang = nodes.Count;
        for (var i = 0; i < finished.Count; i++) Add(finished.Grid.Patterns[i], finished.X[i], finished.WeightMm(i));
        for (var k = 0; reach > 0 && k < EndRule.Abscissas.Length; k++)
        {
            var s = EndRule.Abscissas[k];
            Add(tip, length + reach - reach * s * s, EndRule.Weights[k] * 2 * reach * s);
        }

        return new(stage, blank, [.. nodes], overhang);
    }
}

/// <summary>One node of a stage's sum.</summary>
/// <param name="XMm">x, mm.</param>
/// <param name="AlongMm">Place along the shaft's line, mm.</param>
/// <param name="WeightMm">Quadrature weight, mm.</param>
internal readonly record struct StageNode(StationPattern Pattern, double XMm, double AlongMm, double WeightMm, StageSection Section);

/// <summary>The section that stands at one place at one stage.</summary>
/// <param name="ThicknessMm">What a caliper reads at the centre line, mm.</param>
/// <param name="AreaMm2">Area, mm².</param>
/// <param name="AreaPerThickness">
/// How the area grows with the caliper reading when both faces are off by the same all across, mm² per mm.
/// </param>
internal readonly record struct StageSection(double HalfWidthMm, double ThicknessMm, double AreaMm2, double AreaPerThickness)
{
    /// <summary>Density of its wood over that of the middle strip, which the areas of a glued-up paddle are weighted with; 1 of one piece.</summary>
    internal double MassShare { get; init; } = 1;

    /// <summary>The same section of strips of several woods. Theory J2.</summary>
    internal StageSection Weighted(StripLayup? strips, in Section shape)
    {
        if (strips is null) return this;
        var share = strips.MassShare(shape);
        return this with { AreaMm2 = share * AreaMm2, AreaPerThickness = share * AreaPerThickness, MassShare = share };
    }
}

/// <summary>The solid at one stage, place by place: the board's rectangle, the polygonal shaft or the designed section with its allowance.
/// Theory M8.</summary>
/// <remarks>Down to 0.08 of the blade the throat keeps the shaft's section while the shaft is square or polygonal; from there to 0.25 the
/// one runs out into the other, as a spokeshave leaves it, with the share that the finished solid's own shoulder has.</remarks>
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
        if (stage == BuildStage.Blank) return Rectangle(xMm, blank.WidthMm / 2, blank.ThicknessMm / 2, 1);
        var c = pattern.ThicknessMm(sizes, slopes, hollowMm) / 2;
        return pattern.Segment.Zone switch
        {
            Zone.Grip => allowance.GripFaceMm is { } face
                ? Designed(pattern, xMm, Line(xMm, face), c, 0, face)
                : Rectangle(xMm, Line(xMm, allowance.OutlineMm), blank.ThicknessMm / 2, 1),
            Zone.Shaft => ShaftAt(xMm, c),
            _ => BladeAt(pattern, xMm, c),
        };
    }

    private double Line(double xMm, double allowanceMm) => line.HalfBreadthMm(xMm, allowanceMm);

    private StageSection ShaftAt(double xMm, double c) =>
        Rectangle(
            xMm,
            Line(xMm, allowance.ShaftFaceMm ?? allowance.OutlineMm),
            allowance.ShaftFaceMm is { } face ? Within(c + face) : blank.ThicknessMm / 2,
            Share(allowance.Shaft));

    private StageSection BladeAt(StationPattern pattern, double xMm, double c)
    {
        var shaft = ShaftAt(xMm, c);
        if (allowance.BladeFaceMm is not { } face) return shaft;
        var e = pattern.EdgeShare * sizes.EdgeThicknessMm / 2;
        var blade = Designed(pattern, xMm, Line(xMm, allowance.OutlineMm), c, e, face);
        if (allowance.Shaft == ShaftShape.Round) return blade;
        var share = pattern.EdgeShare;
        return new StageSection(
            blade.HalfWidthMm, share * blade.ThicknessMm + (1 - share) * shaft.ThicknessMm,
            share * blade.AreaMm2 + (1 - share) * shaft.AreaMm2, share * blade.AreaPerThickness + (1 - share) * shaft.AreaPerThickness)
        {
            MassShare = share * blade.MassShare + (1 - share) * shaft.MassShare,
        };
    }

    // The designed section with the allowance on every face: at a round edge it closes, at a full edge the edge is thicker by it too.
    private StageSection Designed(StationPattern pattern, double xMm, double w, double c, double e, double face)
    {
        var thick = Within(c + face);
        var edge = Math.Min(e + face * pattern.EdgeShare, thick);
        var section = new Section(w, thick, edge, pattern.Moments);
        var perThickness = 2 * w * (pattern.EdgeShare + (1 - pattern.EdgeShare) * pattern.Moments.G1);
        return new StageSection(w, 2 * thick, section.AreaMm2, perThickness).Weighted(form.StripsAt(xMm), section);
    }

    private double Within(double halfThickness) => Math.Min(halfThickness, blank.ThicknessMm / 2);

    private StageSection Rectangle(double xMm, double w, double c, double share) =>
        new StageSection(w, 2 * c, 4 * w * c * share, 2 * w * share).Weighted(form.StripsAt(xMm), new(w, c, c, SectionMoments.Ellipse));

    private static double Share(ShaftShape shape) => shape switch
    {
        ShaftShape.Square => 1,
        ShaftShape.EightSided => Rounding.PolygonAreaShare(8),
        ShaftShape.SixteenSided => Rounding.PolygonAreaShare(16),
        _ => Rounding.EllipseAreaShare,
    };
}

/// <summary>The outline with an even allowance all round: the curve that a tool leaves when it stays the same distance off the line
/// everywhere, round the ends too. Theory M7.</summary>
/// <remarks>Source: parallel curve as the edge of a disc's sweep (Minkowski sum), elementary geometry.</remarks>
internal static class SawnOutline
{
    /// <summary>Half-breadth (mm) at x: the highest point that a disc of the allowance's radius reaches from the line.</summary>
    /// <param name="xMm">x, mm; from the allowance above the top to the allowance below the tip.</param>
    /// <param name="allowanceMm">Distance off the line, mm, 0 or more.</param>
    public static double HalfBreadthMm(HalfBreadthCurve outline, double xMm, double allowanceMm)
    {
        if (allowanceMm <= 0) return outline.HalfBreadthMm(xMm);
        double low = Math.Max(outline.StartMm, xMm - allowanceMm), high = Math.Min(outline.EndMm, xMm + allowanceMm);
        if (low > high) return 0;

        double Reach(double centre) =>
            outline.HalfBreadthMm(centre) + Math.Sqrt(Math.Max(0, allowanceMm * allowanceMm - (xMm - centre) * (xMm - centre)));

        // Golden-section search: over so short a stretch the line bends one way, so there is one highest reach; a ten-thousandth
        // of a millimetre in place is far less in height, which is level there.
        const double Golden = 0.6180339887498949;
        double a = high - Golden * (high - low), b = low + Golden * (high - low);
        double atA = Reach(a), atB = Reach(b);
        for (var pass = 0; pass < 40 && high - low > 1e-4; pass++)
        {
            if (atA < atB)
            {
                (low, a, atA) = (a, b, atB);
                b = low + Golden * (high - low);
                atB = Reach(b);
            }
            else
            {
                (high, b, atB) = (b, a, atA);
                a = high - Golden * (high - low);
                atA = Reach(a);
            }
        }

        return Math.Max(Reach((low + high) / 2), Reach(Math.Clamp(xMm, outline.StartMm, outline.EndMm)));
    }
}

/// <summary><see cref="SawnOutline"/> with a memory: several stages leave the same allowance at the same places, and each is searched for
/// once. Belongs to one sheet or one correction; not for several threads.</summary>
internal sealed class OutlineLine(HalfBreadthCurve outline)
{
    private readonly Dictionary<(double XMm, double AllowanceMm), double> known = [];

    internal double HalfBreadthMm(double xMm, double allowanceMm)
    {
        if (known.TryGetValue((xMm, allowanceMm), out var half)) return half;
        half = SawnOutline.HalfBreadthMm(outline, xMm, allowanceMm);
        known.Add((xMm, allowanceMm), half);
        return half;
    }
}
