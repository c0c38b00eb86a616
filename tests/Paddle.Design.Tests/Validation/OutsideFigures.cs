using NetTopologySuite.Geometries;
using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Stroke;
using Paddle.Design.Water;
using Paddle.Design.Wood;

namespace Paddle.Design.Tests.Validation;

/// <summary>The rows of docs/validation.md.</summary>
internal static class OutsideFigures
{
    internal static IReadOnlyList<Comparison> All { get; } =
    [
        .. Sections(), .. Strips(), .. Outlines(), .. Beams(), .. WoodFigures(), .. WaterFigures(), .. Hands(),
    ];

    private static IEnumerable<Comparison> Sections()
    {
        const string Topic = "Sections";
        const string Handbook = "handbook formula of plane areas";
        double w = 16, c = 14;
        var ellipse = new Section(w, c, 0, SectionMoments.Ellipse);
        yield return new(Topic, "Ellipse 32 × 28 mm, area πab", Handbook, Math.PI * w * c, ellipse.AreaMm2, "mm²", 1e-6);
        yield return new(Topic, "Ellipse, second moment πab³/4", Handbook, Math.PI * w * c * c * c / 4, ellipse.FlatSecondMomentMm4, "mm⁴", 1e-6);
        yield return new(Topic, "Ellipse, edgewise πa³b/4", Handbook, Math.PI * w * w * w * c / 4, ellipse.EdgeSecondMomentMm4, "mm⁴", 1e-6);
        var diamond = new Section(60, 8, 0, SectionMoments.For(1, 1));
        yield return new(Topic, "Diamond 120 × 16 mm, bh³/48", Handbook, 120 * Math.Pow(16, 3) / 48, diamond.FlatSecondMomentMm4, "mm⁴", 1e-6);
        var lens = new Section(70, 5, 0, SectionMoments.For(2, 1));
        yield return new(Topic, "Parabolic lens 140 × 10 mm, area ⅔bh", Handbook, 2.0 / 3 * 140 * 10, lens.AreaMm2, "mm²", 1e-6);
        yield return new(
            Topic, "Parabolic lens, second moment 4bh³/105", "∫(2/3)h³dy of the parabola, by hand", 140 * Math.Pow(10, 3) * 4 / 105, lens.FlatSecondMomentMm4, "mm⁴", 1e-6);
        var slab = new Section(70, 4, 4, SectionMoments.For(2, 1));
        yield return new(Topic, "Rectangle 140 × 8 mm, bh³/12", Handbook, 140 * Math.Pow(8, 3) / 12, slab.FlatSecondMomentMm4, "mm⁴", 1e-6);
    }

    private static IEnumerable<Comparison> Strips()
    {
        const string Topic = "Sections of strips";
        const string Beam = "flitched beam, worked example of the transformed section, from memory, worked again by hand";
        var beam = new Section(80, 100, 100, SectionMoments.Ellipse);
        var strips = new StripLayup([new(-1000, -5, 1, 1, 1, 1, 1, 1), new(-5, 5, 1, 20, 1, 1, 1, 1), new(5, 1000, 1, 1, 1, 1, 1, 1)]);
        var second = strips.Numbers(beam.Moments, 80).Stiff.FlatSecondMomentMm4(beam);
        yield return new(Topic, "Steel 10 × 200 mm between two timbers 75 × 200 mm, n = 20: second moment in timber", Beam, 1e8 + 4e8 / 3, second, "mm⁴", 1e-6);
        yield return new(Topic, "The same under 10 kN·m: stress in the steel", Beam, 85.714, strips.Governing(beam, 1e7 * 100 / second, 0).StressMPa, "MPa", 0.01);

        const string Clipped = "NetTopologySuite, section as a polygon of 4 000 points clipped at the strip's lines";
        var lens = new Section(70, 8, 2, SectionMoments.For(1.6, 0.9));
        foreach (var (from, to) in ((double, double)[])[(-18, 18), (18, 43), (43, 1000)])
        {
            var what = to > 70 ? $"Blade section 140 × 16 mm, wing beyond {from} mm" : $"Blade section 140 × 16 mm, strip from {from} to {to} mm";
            var upper = UpperHalf(lens).Intersection(new GeometryFactory().ToGeometry(new Envelope(from, to, 0, 10)));
            var part = StripLayup.Part(lens.Moments, 70, from, to);
            yield return new(Topic, $"{what}, area", Clipped, 2 * upper.Area, part.AreaMm2(lens), "mm²", 0.001);
        }
    }

    private static Polygon UpperHalf(Section section)
    {
        const int Points = 4000;
        var ring = new List<Coordinate> { new(-section.HalfWidthMm, 0) };
        for (var k = 0; k <= Points; k++)
        {
            var y = section.HalfWidthMm * Math.Sin(Math.PI * (k / (double)Points - 0.5));
            ring.Add(new(y, section.HalfThicknessAtMm(Math.Abs(y) / section.HalfWidthMm)));
        }

        return new GeometryFactory().CreatePolygon([.. ring, new(section.HalfWidthMm, 0), ring[0]]);
    }

    private static IEnumerable<Comparison> Outlines()
    {
        const string Topic = "Outlines";
        const string Source = "NetTopologySuite, polygon of 4 000 points";
        foreach (var family in BladeFamilies.All)
        {
            var shape = new BladeShape(
                family, family.DefaultLengthMm, family.DefaultWidthMm, family.DefaultWidestAt, family.DefaultFullness, null);
            var curve = new HalfBreadthCurve(BladePlan.For(shape).Draw(0, 15));
            var polygon = Polygon(curve);
            yield return new(Topic, $"{family.Name}, blade area", Source, polygon.Area / 100, curve.AreaMm2() / 100, "cm²", 0.01);
            yield return new(Topic, $"{family.Name}, blade centroid", Source, polygon.Centroid.X, curve.CentroidMm(), "mm", 0.01);
        }
    }

    private static Polygon Polygon(HalfBreadthCurve curve)
    {
        var upper = new List<Coordinate>();
        foreach (var piece in curve.Pieces)
        {
            for (var k = 0; k < 1000; k++) upper.Add(new(piece.X(k / 1000.0), piece.Y(k / 1000.0)));
        }

        upper.Add(new(curve.Pieces[^1].X3, curve.Pieces[^1].Y3));
        var ring = upper.Concat(upper.AsEnumerable().Reverse().Select(p => new Coordinate(p.X, -p.Y))).Append(upper[0]);
        return new GeometryFactory().CreatePolygon([.. ring]);
    }

    private static IEnumerable<Comparison> Beams()
    {
        const string Topic = "Beams, columns and vibration";
        var x = Enumerable.Range(0, 401).Select(i => i * 4.0).ToArray();
        const double EI = 4e8;

        // Overhanging beam: supports at 0 and a, load P at the overhang's end b beyond: δ = P b²(a + b)/(3EI).
        double a = 1000, b = 600, load = 50;
        var curvature = x.Select(at => (at <= a ? load * b * at / a : load * (a + b - at)) / EI).ToArray();
        var deflection = new double[x.Length];
        ElasticCurve.Deflect(x, curvature, 0, a, deflection);
        yield return new(
            Topic, "Uniform overhanging beam, end deflection Pb²(a+b)/(3EI)", "textbook of beam deflections", load * b * b * (a + b) / (3 * EI), deflection[^1], "mm", 0.05);

        var stiffness = x.Select(_ => EI).ToArray();
        yield return new(
            Topic, "Uniform column, π²EI/L²", "Euler", Math.PI * Math.PI * EI / (a * a), Buckling.CriticalLoadN(x, stiffness, 0, a), "N", 0.1);

        var mass = x.Select(_ => 4.2e-4).ToArray();
        var length = x[^1];
        var free = 4.7300 * 4.7300 / (2 * Math.PI) * Math.Sqrt(EI * 1000 / (4.2e-4 * Math.Pow(length, 4)));
        yield return new(
            Topic, "Uniform free beam, first frequency", "handbook of beam modes, βL = 4.7300", free, FreeVibration.FirstFrequencyHz(x, mass, stiffness), "Hz", 0.2);

        yield return new(
            Topic, "Round shaft 28.6 mm at 35 N·m, 32M/(πd³)", "strength of materials", 32 * 35000 / (Math.PI * Math.Pow(28.6, 3)),
            35000 / new Section(14.3, 14.3, 0, SectionMoments.Ellipse).FlatModulusMm3, "MPa", 1e-6);
        yield return new(
            Topic, "Shear's share of a sag at span 14 depths, E/G = 16", "Wood Handbook: modulus of table 5-3 is about 10 % low",
            0.10, ElasticConstants.ShearShareOfSag(16, 14), "", 3);
    }

    private static IEnumerable<Comparison> WoodFigures()
    {
        const string Topic = "Wood";
        const string Handbook = "Wood Handbook GTR-282, transcription";
        var ash = WoodCatalogue.Find("white-ash")!;
        var cherry = WoodCatalogue.Find("black-cherry")!;
        yield return new(Topic, "White ash bending strength at 8 %", Handbook + ", its own example of eq. 5-3", 119.5, MoistureAdjustment.ModulusOfRuptureMPa(ash, 8), "MPa", 0.1);
        var spruce = WoodCatalogue.Find("sitka-spruce")!;
        yield return new(
            Topic, "Sitka spruce bending strength at 16 %", "ANC-18 rule quoted in a boat-building text: 70 × 1.039⁻⁴", 60.07,
            MoistureAdjustment.ModulusOfRuptureMPa(spruce, 16), "MPa", 0.5);
        yield return new(Topic, "Density at 12 %, specific gravity 0.60", Handbook + ", table 4-6a", 672, WoodDensity.KgM3(0.60, 12), "kg/m³", 0.01);
        yield return new(Topic, "Strength left at grain slope 1:10", "Wood Handbook table 5-12, from memory", 0.81, GrainSlope.HankinsonFraction(0.1, GrainSlope.RuptureRatio), "", 3);
        yield return new(Topic, "Strength left at grain slope 1:15", "Wood Handbook table 5-12, from memory", 0.89, GrainSlope.HankinsonFraction(1.0 / 15, GrainSlope.RuptureRatio), "", 3);
        yield return new(Topic, "Equilibrium moisture, 21.1 °C and 40 %", Handbook + ", table 4-2", 7.7, EquilibriumMoisture.Percent(21.1, 40), "%", 1);
        yield return new(
            Topic, "Sugar maple, change coefficient 0.00353 per %", "Maple Flooring Manufacturers Association data page", 0.00353,
            Shrinkage.ChangeMm(1, 9.9, 10, 11), "", 0.2);
        yield return new(
            Topic, "Black cherry, 5th percentile of bending strength at 12 %", "normal distribution with the table 5-6 variation of 16 %, by hand", 62.63,
            Scatter.FifthPercentile(MoistureAdjustment.ModulusOfRuptureMPa(cherry, 12), Scatter.RuptureVariation), "MPa", 0.02);
    }

    private static IEnumerable<Comparison> WaterFigures()
    {
        const string Topic = "Water";
        yield return new(Topic, "Fresh water at 15 °C", "Bettin and Spieweck (ITS-90)", 999.10, FreshWater.DensityKgM3(15), "kg/m³", 0.001);
        yield return new(Topic, "Drag coefficient of a plate, aspect ratio 5", "Hoerner's plate data, read", 1.20, PlateDrag.Coefficient(5), "", 1);
        yield return new(Topic, "Force at 1.5 m/s, C 1.2, 0.075 m²", "½ρCAv² by hand", 101.2, PlateDrag.ForceN(1.2, 0.075, 1.5, 999.1), "N", 0.1);
        yield return new(Topic, "Efficiency at 1.5 m/s and slip 0.943 m/s", "V/(V+s) by hand", 0.614, PlateDrag.FroudeEfficiency(1.5, 0.943), "", 0.1);
    }

    private static IEnumerable<Comparison> Hands()
    {
        const string Topic = "Hand forces";
        const string Source = "lever law, worked by hand: 100 N, hands 889 mm apart, arm 350 mm";
        var form = SampleDesigns.Touring("white-ash", 375, handSpacingMm: 889).Form;
        var hands = HandForces.Of(form, 100, 350 - (form.Places.ThroatMm - form.Places.LowerHandMm));
        yield return new(Topic, "Top hand", Source, 39.37, hands.TopN, "N", 0.02);
        yield return new(Topic, "Lower hand", Source, 139.37, hands.LowerN, "N", 0.01);
        yield return new(Topic, "Moment at the lower hand", Source, 35.0, hands.MomentNm, "N·m", 0.01);
    }
}
