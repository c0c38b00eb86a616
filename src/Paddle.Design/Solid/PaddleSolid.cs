using Paddle.Design.Outline;

namespace Paddle.Design.Solid;

/// <summary>What fixes a paddle's solid apart from its nine sizes.</summary>
/// <param name="Places">Places along the paddle.</param>
/// <param name="BendDegrees">Angle between shaft and blade at the throat, degrees.</param>
public sealed record PaddleForm(PaddlePlaces Places, GripShape Grip, BladeShape Blade, double BendDegrees)
{
    /// <summary>The blade on its face; a form copied with another blade gets that blade's plan.</summary>
    public BladeShape Blade
    {
        get;
        init => (field, BladePlan) = (value, BladePlan.For(value));
    } = Blade;

    /// <summary>All of the blade's outline that does not depend on the shaft.</summary>
    public BladePlan BladePlan { get; private init; } = BladePlan.For(Blade);

    public ZoneLengths Lengths => new(
        Places.GripEndMm, Places.LowerHandMm - Places.GripEndMm, Places.ThroatMm - Places.LowerHandMm, Places.BladeMm);

    /// <summary>Strips side by side across the width, of a paddle glued up of strips; null of one piece.</summary>
    internal StripLayup? Strips { get; init; }

    /// <summary>The strips at a place, x in mm; null of one piece.</summary>
    internal StripLayup? StripsAt(double xMm) => Strips?.At(xMm);

    /// <summary>The coarse Gauss grid on which the solver works, split where the wood changes along the paddle.</summary>
    internal StationGrid CoarseGrid() => BladeKnot is { } knot ? StationGrid.SplitCoarse(knot) : StationGrid.Coarse;

    /// <summary>The fine Gauss grid from which the report's sums come, split likewise.</summary>
    internal StationGrid FineGrid() => BladeKnot is { } knot ? StationGrid.SplitFine(knot) : StationGrid.Fine;

    // Fraction of the blade at which a piece across the tip begins; sheets begin where the grids have a knot of their own.
    private double? BladeKnot => Strips?.Changes is { Count: > 0 } changes && (changes[^1].FromMm - Places.ThroatMm) / Places.BladeMm is var knot && knot > BladeBlend.ShoulderEnd + 1e-6
        ? knot : null;

    public double BendCosine => Math.Cos(BendDegrees * Math.PI / 180);
    public double BendSine => Math.Sin(BendDegrees * Math.PI / 180);

    /// <summary>x (mm) of a place of a segment.</summary>
    internal double XMm(StationPattern pattern) => pattern.Segment.Zone switch
    {
        Zone.Grip => pattern.Coordinate * Places.GripEndMm,
        Zone.Blade => Places.ThroatMm + pattern.Coordinate * Places.BladeMm,
        _ when ReferenceEquals(pattern.Segment, Segment.UpperShaft) =>
            Places.GripEndMm + pattern.Coordinate * (Places.LowerHandMm - Places.GripEndMm),
        _ => Places.LowerHandMm + pattern.Coordinate * (Places.ThroatMm - Places.LowerHandMm),
    };

    /// <summary>Distance (mm) from the top of the grip measured along the shaft's line: x itself down to the throat, foreshortened by the
    /// bend below it. This is the coordinate in which the paddle balances on a finger. Theory S10.</summary>
    public double AlongShaftMm(double xMm) => xMm <= Places.ThroatMm ? xMm : Places.ThroatMm + (xMm - Places.ThroatMm) * BendCosine;

    /// <summary>The places that a report prints: no more than 10 mm apart, and one at every knot.</summary>
    public StationGrid PrintedGrid() => StationGrid.Printed(Lengths, Blade.WidestAt, 10, BladeKnot);

    /// <summary>Area of the blade's face (mm²) under a shaft of usual width, which changes it by less than 1 %.</summary>
    public double BladeAreaMm2()
    {
        const double UsualMm = 28, UsualUpperMm = 24;
        return PaddleOutline.Draw(Places, Grip, BladePlan, UsualMm, UsualUpperMm).AreaFromMm2(Places.ThroatMm);
    }

    /// <summary>The outline for given shaft widths.</summary>
    public HalfBreadthCurve Outline(PaddleSizes sizes) => PaddleOutline.Draw(Places, Grip, BladePlan, sizes.ShaftWidthMm, sizes.UpperWidthMm);
}

/// <summary>A paddle's solid at the places of a grid: the numbers that every sum and every drawing starts from.</summary>
public sealed class PaddleSolid
{
    private PaddleSolid(PaddleForm form, PaddleSizes sizes, StationGrid grid, HalfBreadthCurve outline)
    {
        var count = grid.Patterns.Length;
        (Form, Sizes, Grid, Outline) = (form, sizes, grid, outline);
        X = new double[count];
        HalfWidth = new double[count];
        HalfThickness = new double[count];
        EdgeHalfThickness = new double[count];
        Area = new double[count];
        MassArea = StiffArea = ShearArea = Area;
        if (form.Strips is not null) (MassArea, StiffArea, ShearArea) = (new double[count], new double[count], new double[count]);
        FlatSecondMoment = new double[count];
        FaceSlope = new double[count];
        CurveParameter = new double[count];
    }

    /// <summary>What fixes the solid apart from its sizes.</summary>
    public PaddleForm Form { get; }
    /// <summary>The nine sizes.</summary>
    public PaddleSizes Sizes { get; }
    /// <summary>The places.</summary>
    public StationGrid Grid { get; }
    /// <summary>The outline on the face.</summary>
    public HalfBreadthCurve Outline { get; }
    /// <summary>x of each place, mm, along the paddle's centre line.</summary>
    public double[] X { get; }
    /// <summary>Half-widths w, mm.</summary>
    public double[] HalfWidth { get; }
    /// <summary>Half-thicknesses at the centre c, mm.</summary>
    public double[] HalfThickness { get; }
    /// <summary>Half-thicknesses at the edge e, mm.</summary>
    public double[] EdgeHalfThickness { get; }
    /// <summary>Areas of the sections, mm².</summary>
    public double[] Area { get; }
    /// <summary>Areas in which every strip counts with its density over the middle strip's, mm²; of one piece the areas themselves. Theory J2.</summary>
    internal double[] MassArea { get; }
    /// <summary>The same by modulus: what carries a thrust, mm². Theory J3.</summary>
    internal double[] StiffArea { get; }
    /// <summary>The same by shear modulus, mm².</summary>
    internal double[] ShearArea { get; }
    /// <summary>Second moments of the sections for bending across the faces, mm⁴; of strips those of the transformed section, theory J3.</summary>
    public double[] FlatSecondMoment { get; }
    /// <summary>Slopes of the steeper face along the paddle, rise over run, none negative: how far the taper cuts the grain.</summary>
    public double[] FaceSlope { get; }
    /// <summary>Parameters of the outline's Béziers at the places.</summary>
    internal double[] CurveParameter { get; }
    /// <summary>How many places there are.</summary>
    public int Count => X.Length;

    /// <summary>Shapes the solid at every place of a grid.</summary>
    /// <param name="form">What fixes the solid apart from its sizes.</param>
    internal static PaddleSolid Shape(PaddleForm form, PaddleSizes sizes, HalfBreadthCurve outline, StationGrid grid)
    {
        var solid = new PaddleSolid(form, sizes, grid, outline);
        var slopes = SpineSlopes.Of(sizes);
        var hollow = form.Grip.HollowedFaces * form.Grip.HollowDepthMm;
        var lengths = form.Lengths;
        for (var i = 0; i < solid.Count; i++)
        {
            var pattern = grid.Patterns[i];
            solid.X[i] = form.XMm(pattern);
            solid.HalfThickness[i] = pattern.ThicknessMm(sizes, slopes, hollow) / 2;
            solid.EdgeHalfThickness[i] = pattern.EdgeShare * sizes.EdgeThicknessMm / 2;
            solid.FaceSlope[i] = pattern.FaceSlope(sizes, slopes, form.Grip.HollowDepthMm, lengths.Of(pattern.Segment));
        }

        outline.Sample(solid.X, solid.HalfWidth, solid.CurveParameter);
        for (var i = 0; i < solid.Count; i++) solid.SumSection(i);
        return solid;
    }

    /// <summary>The same paddle with the spine planed down, running out to nothing at the edges: outline and edges stay.</summary>
    /// <param name="removedMm">Full thickness taken off the middle at each place, mm; negative where wood stands proud.</param>
    /// <remarks>No place is thinned below its edge or below nothing.</remarks>
    internal PaddleSolid Thinned(ReadOnlySpan<double> removedMm)
    {
        var solid = new PaddleSolid(Form, Sizes, Grid, Outline);
        for (var i = 0; i < Count; i++)
        {
            solid.X[i] = X[i];
            solid.HalfWidth[i] = HalfWidth[i];
            solid.CurveParameter[i] = CurveParameter[i];
            solid.EdgeHalfThickness[i] = EdgeHalfThickness[i];
            solid.HalfThickness[i] = Math.Max(EdgeHalfThickness[i], HalfThickness[i] - removedMm[i] / 2);
            solid.SumSection(i);
            solid.FaceSlope[i] = FaceSlope[i] + Math.Abs(RemovalSlope(removedMm, i)) / 2;
        }

        return solid;
    }

    private void SumSection(int i)
    {
        var section = Section(i);
        Area[i] = section.AreaMm2;
        if (Form.StripsAt(X[i]) is { } strips)
        {
            var numbers = strips.Numbers(section.Moments, section.HalfWidthMm);
            MassArea[i] = numbers.Mass.AreaMm2(section);
            StiffArea[i] = numbers.Stiff.AreaMm2(section);
            ShearArea[i] = numbers.Shear.AreaMm2(section);
            FlatSecondMoment[i] = numbers.Stiff.FlatSecondMomentMm4(section); // theory J3
        }
        else
        {
            FlatSecondMoment[i] = section.FlatSecondMomentMm4;
        }
    }

    // Ends of a cut run out over the next places: their slope is that of the chord to the neighbours.
    private double RemovalSlope(ReadOnlySpan<double> removedMm, int i)
    {
        int before = Math.Max(0, i - 1), after = Math.Min(Count - 1, i + 1);
        return X[after] > X[before] ? (removedMm[after] - removedMm[before]) / (X[after] - X[before]) : 0;
    }

    /// <summary>The section at place <paramref name="i"/>.</summary>
    internal Section Section(int i) => new(HalfWidth[i], HalfThickness[i], EdgeHalfThickness[i], Grid.Patterns[i].Moments);

    /// <summary>Quadrature weight of place <paramref name="i"/>, mm.</summary>
    public double WeightMm(int i) => Grid.Patterns[i].Weight * Form.Lengths.Of(Grid.Patterns[i].Segment);

    /// <summary>Offset (mm, along +z) of the section's centre from the shaft's line: a one-sided grip's hollow pushes it away from the
    /// hollowed face, a bend carries the blade off. Theory S10.</summary>
    public double CentreOffsetMm(int i)
    {
        var pattern = Grid.Patterns[i];
        return pattern.Segment.Zone switch
        {
            Zone.Grip when Form.Grip.Faces == GripFaces.OneSided => -pattern.HollowShare * Form.Grip.HollowDepthMm / 2,
            Zone.Blade => (X[i] - Form.Places.ThroatMm) * Form.BendSine,
            _ => 0,
        };
    }
}
