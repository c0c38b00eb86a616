using MathNet.Numerics;

namespace Paddle.Design.Solid;

/// <summary>One strip of a paddle glued up of strips side by side, its planes parallel to the paddle's middle plane along its length; its
/// wood as ratios to the wood of the middle strip, which the sums are in.</summary>
/// <param name="FromMm">y of its one side, mm from the centre line; the outermost strip reaches as far as any blade.</param>
/// <param name="ToMm">y of its other side, mm.</param>
/// <param name="MassRatio">Density.</param>
/// <param name="ModulusRatio">Modulus along the grain, n.</param>
/// <param name="ShearRatio">Shear modulus along the grain.</param>
/// <param name="StrengthRatio">Bending strength.</param>
/// <param name="CrossStrengthRatio">Strength across the grain.</param>
/// <param name="CrossModulusRatio">Modulus across the grain.</param>
internal readonly record struct LaidStrip(
    double FromMm, double ToMm, double MassRatio, double ModulusRatio, double ShearRatio, double StrengthRatio, double CrossStrengthRatio,
    double CrossModulusRatio)
{
    /// <summary>Distance of its near side from the centre line, mm; 0 of a strip that the centre line runs through.</summary>
    internal double InnerMm => FromMm < 0 && ToMm > 0 ? 0 : Math.Min(Math.Abs(FromMm), Math.Abs(ToMm));
}

/// <summary>Pure numbers of a section in which every strip counts with a weight of its own: with 1 for every strip they are 1, G1, G2 and G3
/// of <see cref="SectionMoments"/>. Theory J2.</summary>
internal readonly record struct StripNumbers(double G0, double G1, double G2, double G3)
{
    internal static StripNumbers Of(SectionMoments moments) => new(1, moments.G1, moments.G2, moments.G3);

    internal StripNumbers Plus(double weight, in StripNumbers other) =>
        new(G0 + weight * other.G0, G1 + weight * other.G1, G2 + weight * other.G2, G3 + weight * other.G3);

    /// <summary>Weighted area, mm². Theory S3.</summary>
    internal double AreaMm2(in Section section) =>
        4 * section.HalfWidthMm * (section.EdgeHalfThicknessMm * G0 + (section.HalfThicknessMm - section.EdgeHalfThicknessMm) * G1);

    /// <summary>Weighted second moment for bending across the faces, mm⁴. Theory S4.</summary>
    internal double FlatSecondMomentMm4(in Section section)
    {
        double e = section.EdgeHalfThicknessMm, k = section.HalfThicknessMm - e;
        return 4.0 / 3 * section.HalfWidthMm * (e * e * e * G0 + 3 * e * e * k * G1 + 3 * e * k * k * G2 + k * k * k * G3);
    }
}

/// <summary>Numbers of a section with a sheet of even thickness on both faces: of the whole weighted with the sheets' wood, and of what is left
/// within them weighted with what its strips count more. Theory J12.</summary>
/// <param name="SheetMm">Thickness of each sheet, mm; 0 without.</param>
internal readonly record struct SectionSum(StripNumbers Whole, StripNumbers Core, double SheetMm)
{
    /// <summary>The same of the area: linear in the thicknesses, so that one set of numbers serves.</summary>
    internal StripNumbers OfArea => Whole.Plus(1, Core);

    /// <summary>Weighted area, mm².</summary>
    internal double AreaMm2(in Section section) => Whole.AreaMm2(section) + (SheetMm > 0 ? Core.AreaMm2(section.Within(SheetMm)) : 0);

    /// <summary>Weighted second moment for bending across the faces, mm⁴.</summary>
    internal double FlatSecondMomentMm4(in Section section) =>
        Whole.FlatSecondMomentMm4(section) + (SheetMm > 0 ? Core.FlatSecondMomentMm4(section.Within(SheetMm)) : 0);
}

/// <summary>The numbers of one section by what they are weighted with. Theory J2–J3.</summary>
/// <param name="Mass">By density.</param>
/// <param name="Stiff">By modulus.</param>
/// <param name="Shear">By shear modulus.</param>
internal readonly record struct SectionNumbers(SectionSum Mass, SectionSum Stiff, SectionSum Shear)
{
    internal static SectionNumbers Even(SectionMoments moments)
    {
        var plain = new SectionSum(StripNumbers.Of(moments), default, 0);
        return new(plain, plain, plain);
    }
}

/// <summary>A thin sheet on both faces, within the designed thickness; its wood as ratios to the middle strip's.</summary>
/// <param name="ThicknessMm">Thickness of each sheet, mm.</param>
internal readonly record struct LaidSheet(
    double ThicknessMm, double MassRatio, double ModulusRatio, double ShearRatio, double StrengthRatio, double CrossStrengthRatio);

/// <summary>The strips of a paddle across its width, from −y to +y.</summary>
/// <param name="Strips">The strips in order; together they reach beyond any blade on both sides.</param>
internal sealed record StripLayup(IReadOnlyList<LaidStrip> Strips)
{
    /// <summary>Whether all strips are of one wood: then nothing depends on where they meet.</summary>
    internal bool IsEven { get; } = Strips.All(strip => strip is { MassRatio: 1, ModulusRatio: 1, ShearRatio: 1, StrengthRatio: 1 });

    /// <summary>Least strength across the grain of any strip, against the middle one's.</summary>
    internal double LeastCrossStrengthRatio =>
        Changes.Where(change => change.Layup.Sheet is not null).Select(change => change.Layup.Sheet!.Value.CrossStrengthRatio).Concat(Strips.Select(strip => strip.CrossStrengthRatio)).Min();

    /// <summary>Whether it is of a piece whose grain runs across the paddle.</summary>
    internal bool IsAcross { get; init; }

    /// <summary>The sheet on both faces, or null.</summary>
    internal LaidSheet? Sheet { get; init; }

    /// <summary>Where another layup takes its place, x in rising order, mm: where sheets begin, and a piece across the tip.</summary>
    internal IReadOnlyList<(double FromMm, StripLayup Layup)> Changes { get; init; } = [];

    /// <summary>The layup at a place along the paddle. Theory J11–J12.</summary>
    internal StripLayup At(double xMm)
    {
        const double Hair = 1e-6;
        var at = this;
        foreach (var (from, layup) in Changes) at = xMm >= from - Hair ? layup : at;
        return at;
    }

    /// <summary>The strip at the edge that bears less across the grain.</summary>
    internal LaidStrip WeakerEdge => Strips[0].CrossStrengthRatio < Strips[^1].CrossStrengthRatio ? Strips[0] : Strips[^1];

    /// <summary>Numbers of one strip's part of a section: its share of the width, and the integrals of g, g² and g³ over it, each the mean of
    /// both sides of the centre line. Theory J1.</summary>
    internal static StripNumbers Part(SectionMoments moments, double halfWidthMm, double fromMm, double toMm)
    {
        StripNumbers to = Partial(moments, toMm, halfWidthMm), from = Partial(moments, fromMm, halfWidthMm);
        return new((to.G0 - from.G0) / 2, (to.G1 - from.G1) / 2, (to.G2 - from.G2) / 2, (to.G3 - from.G3) / 2);
    }

    /// <summary>The weighted numbers of a section. Theory J2.</summary>
    internal SectionNumbers Numbers(SectionMoments moments, double halfWidthMm)
    {
        if (Sheet is { } sheet)
        {
            var plain = StripNumbers.Of(moments);
            var (core, none) = ((this with { Sheet = null }).Numbers(moments, halfWidthMm), default(StripNumbers));
            SectionSum Faced(double ratio, in SectionSum within) => new(none.Plus(ratio, plain), within.Whole.Plus(-ratio, plain), sheet.ThicknessMm); // theory J12
            return new(Faced(sheet.MassRatio, core.Mass), Faced(sheet.ModulusRatio, core.Stiff), Faced(sheet.ShearRatio, core.Shear));
        }

        StripNumbers mass = default, stiff = default, shear = default;
        var before = Partial(moments, Strips[0].FromMm, halfWidthMm);
        foreach (var strip in Strips)
        {
            var after = Partial(moments, strip.ToMm, halfWidthMm);
            var part = new StripNumbers(
                (after.G0 - before.G0) / 2, (after.G1 - before.G1) / 2, (after.G2 - before.G2) / 2, (after.G3 - before.G3) / 2);
            mass = mass.Plus(strip.MassRatio, part);
            stiff = stiff.Plus(strip.ModulusRatio, part);
            shear = shear.Plus(strip.ShearRatio, part);
            before = after;
        }

        return new(new(mass, default, 0), new(stiff, default, 0), new(shear, default, 0));
    }

    /// <summary>The strip that uses most of its own strength, its stress and its strength against the middle strip's. Theory J4.</summary>
    /// <param name="bendingMPa">Stress of the middle strip's wood at the section's centre from bending, MPa.</param>
    /// <param name="thrustMPa">Stress of the middle strip's wood from a thrust, MPa.</param>
    /// <param name="ofStrips">Whether only the strips are looked at, and not the sheets.</param>
    internal (double StressMPa, double StrengthRatio, int Strip) Governing(in Section section, double bendingMPa, double thrustMPa, bool ofStrips = false)
    {
        var (most, worst) = (double.NegativeInfinity, (0.0, 1.0, 0));
        if (Sheet is { } sheet && !ofStrips)
        {
            var stress = sheet.ModulusRatio * (bendingMPa + thrustMPa); // theory J12
            (most, worst) = (stress / sheet.StrengthRatio, (stress, sheet.StrengthRatio, 0));
        }

        for (var s = 0; s < Strips.Count; s++)
        {
            var strip = Strips[s];
            if (Depth(section, strip) is not { } share) continue;
            var stress = strip.ModulusRatio * (share * bendingMPa + thrustMPa);
            if (stress / strip.StrengthRatio <= most) continue;
            (most, worst) = (stress / strip.StrengthRatio, (stress, strip.StrengthRatio, s));
        }

        return worst;
    }

    /// <summary>Most stress (MPa) from bending of the middle strip's wood at the section's centre that leaves every strip within its own
    /// strength. Theory J4.</summary>
    /// <param name="allowedMPa">What the middle strip's wood may bear, MPa.</param>
    /// <param name="thrustMPa">Stress of the middle strip's wood from a thrust, MPa.</param>
    internal double MostBendingMPa(in Section section, double allowedMPa, double thrustMPa)
    {
        var least = Sheet is { } sheet ? allowedMPa * sheet.StrengthRatio / sheet.ModulusRatio - thrustMPa : double.PositiveInfinity;
        foreach (var strip in Strips)
        {
            if (Depth(section, strip) is not { } share) continue;
            least = Math.Min(least, (allowedMPa * strip.StrengthRatio / strip.ModulusRatio - thrustMPa) / share);
        }

        return least;
    }

    // How far a strip's own outermost fibre lies from the middle plane, over the half-thickness at the centre.
    private double? Depth(in Section section, in LaidStrip strip) =>
        ThicknessShare(section, strip.InnerMm) is { } share ? share - (Sheet?.ThicknessMm ?? 0) / section.HalfThicknessMm : null;

    /// <summary>Density of a section's wood over the middle strip's. Theory J2.</summary>
    internal double MassShare(in Section section) => section.AreaMm2 is > 0 and var area
        ? Numbers(section.Moments, section.HalfWidthMm).Mass.AreaMm2(section) / area
        : 1;

    /// <summary>Half-thickness of a section at y over that at its centre; null beyond its edge.</summary>
    internal static double? ThicknessShare(in Section section, double yMm)
    {
        if (yMm == 0) return 1;
        return yMm < section.HalfWidthMm ? section.HalfThicknessAtMm(yMm / section.HalfWidthMm) / section.HalfThicknessMm : null;
    }

    // ∫ of 1, g, g² and g³ over u from the centre line to y, odd in y. ∫0..u g^k du = G_k·I(u^p; 1/p, kr + 1), I the regularised
    // incomplete Beta function: t = u^p. Theory J1.
    private static StripNumbers Partial(SectionMoments m, double yMm, double halfWidthMm)
    {
        var distance = Math.Abs(yMm);
        double sign = Math.Sign(yMm);
        if (distance >= halfWidthMm) return new(sign, sign * m.G1, sign * m.G2, sign * m.G3);
        var u = distance / halfWidthMm;
        if (u == 0) return default;
        double a = 1 / m.P, x = Math.Pow(u, m.P);
        double Share(int k) => SpecialFunctions.BetaRegularized(a, k * m.R + 1, x);
        return new(sign * u, sign * m.G1 * Share(1), sign * m.G2 * Share(2), sign * m.G3 * Share(3));
    }
}
