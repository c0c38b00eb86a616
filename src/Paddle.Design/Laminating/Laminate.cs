using Paddle.Design.Outline;
using Paddle.Design.Solid;
using Paddle.Design.Strength;
using Paddle.Design.Wood;

namespace Paddle.Design.Laminating;

/// <summary>One strip as the maker lists it.</summary>
/// <param name="WidthMm">Width across the paddle, mm.</param>
public sealed record Strip(WoodInUse Wood, double WidthMm);

/// <summary>A hard piece across the end of the blade, its grain square to the paddle.</summary>
/// <param name="LengthMm">Along the paddle, mm, at the centre line.</param>
public sealed record TipPiece(WoodInUse Wood, double LengthMm);

/// <summary>A thin sheet on both faces of the blade, within its thickness, grain along, from where the edge has its full thickness to the tip.</summary>
/// <param name="ThicknessMm">Thickness of each, mm.</param>
public sealed record Facing(WoodInUse Wood, double ThicknessMm);

/// <summary>How a paddle is glued up of strips across its width.</summary>
/// <param name="Strips">
/// The strips in the order of the list: mirrored from the middle outward, the first straddling the centre line and every further one on both
/// sides; not mirrored from one edge to the other.
/// </param>
/// <param name="Adhesive">The glue by its class.</param>
public sealed record Laminate(IReadOnlyList<Strip> Strips, bool IsMirrored, Adhesive Adhesive)
{
    // Beyond any blade: the outermost strip is sawn off at the line.
    private const double BeyondMm = 1000;

    /// <summary>A piece across the tip, or null.</summary>
    public TipPiece? TipPiece { get; init; }

    /// <summary>Sheets on the blade's faces, or null.</summary>
    public Facing? Facing { get; init; }

    /// <summary>Every strip from one edge to the other.</summary>
    internal IReadOnlyList<Strip> Across { get; } =
        IsMirrored ? [.. Strips.Skip(1).Reverse(), Strips[0], .. Strips.Skip(1)] : Strips;

    /// <summary>Width of all the strips together, mm.</summary>
    internal double WidthMm => Across.Sum(strip => strip.WidthMm);

    /// <summary>Place in <see cref="Across"/> of the strip that the centre line runs through; of two that meet there the first.</summary>
    internal int Middle => MiddleOf([.. Across.Select(strip => strip.WidthMm)]);

    /// <summary>The glue lines, y in mm from the centre line, one fewer than the strips across.</summary>
    internal IReadOnlyList<double> LinesMm
    {
        get
        {
            var lines = new double[Across.Count - 1];
            var y = -WidthMm / 2;
            for (var k = 0; k < lines.Length; k++) lines[k] = y += Across[k].WidthMm;
            return lines;
        }
    }

    /// <summary>Its woods, each once.</summary>
    internal IReadOnlyList<string> SpeciesIds => [.. Woods.Select(wood => wood.Species)];

    /// <summary>The same with their values.</summary>
    internal IReadOnlyList<WoodInUse> Woods =>
        [.. Strips.Select(strip => strip.Wood).Append(TipPiece?.Wood).Append(Facing?.Wood).OfType<WoodInUse>().DistinctBy(wood => wood.Species)];

    /// <summary>The middle one of strips that lie side by side: the one that the centre line runs through, of two that meet there the first.</summary>
    internal static int MiddleOf(ReadOnlySpan<double> widthsMm)
    {
        var half = 0.0;
        foreach (var width in widthsMm) half += width / 2;
        var (middle, reached) = (0, widthsMm[0]);
        while (reached < half - 1e-9) reached += widthsMm[++middle];
        return middle;
    }

    /// <summary>Strips, sheets and the piece across the tip as ratios to the middle strip's wood. Theory J2–J4, J11–J12.</summary>
    /// <param name="wood">Wood of the middle strip.</param>
    internal StripLayup Layup(WoodInUse wood, PaddlePlaces places)
    {
        LaidSheet? sheet = Facing is { Wood: var face } facing
            ? new(
                facing.ThicknessMm, face.DensityKgM3 / wood.DensityKgM3, face.ModulusMPa / wood.ModulusMPa, face.ShearModulusMPa / wood.ShearModulusMPa,
                face.BendingStrengthMPa / wood.BendingStrengthMPa,
                face.CrossGrainStrengthMPa / wood.CrossGrainStrengthMPa / Math.Max(1, AcrossMPa(face) / AcrossMPa(wood)))
            : null;
        var strips = Layup(wood);
        var changes = new List<(double, StripLayup)>();
        if (sheet is not null) changes.Add((FacingFromMm(places), strips with { Sheet = sheet }));
        if (TipPiece is { Wood: var hard } tip)
        {
            // Grain across: along the paddle it has the modulus across the grain, and across the blade what is along it. It takes wear and is there to
            // be replaced: no aim looks at its strength, as if the strips went on to the tip. What it bears is told (GluedOnParts). Theory J11.
            var laid = new LaidStrip(
                -BeyondMm, BeyondMm, hard.DensityKgM3 / wood.DensityKgM3, AcrossMPa(hard) / wood.ModulusMPa, hard.ShearModulusMPa / wood.ShearModulusMPa,
                1, hard.BendingStrengthMPa / wood.CrossGrainStrengthMPa, hard.ModulusMPa / AcrossMPa(wood));
            changes.Add((places.OverallMm - tip.LengthMm, new([laid]) { IsAcross = true, Sheet = sheet }));
        }

        return strips with { Changes = changes };
    }

    /// <summary>Where sheets on the faces begin, mm from the top of the grip: nearer the throat the section is a shaft's.</summary>
    internal static double FacingFromMm(PaddlePlaces places) => places.ThroatMm + BladeBlend.ShoulderEnd * places.BladeMm;

    /// <summary>The strips as ratios to the middle one's wood. Theory J2–J4.</summary>
    /// <param name="wood">Wood of the middle strip.</param>
    internal StripLayup Layup(WoodInUse wood)
    {
        var lines = LinesMm;
        var laid = new LaidStrip[Across.Count];
        for (var k = 0; k < laid.Length; k++)
        {
            var own = Across[k].Wood;
            laid[k] = new(
                k == 0 ? -BeyondMm : lines[k - 1], k == lines.Count ? BeyondMm : lines[k], own.DensityKgM3 / wood.DensityKgM3,
                own.ModulusMPa / wood.ModulusMPa, own.ShearModulusMPa / wood.ShearModulusMPa, own.BendingStrengthMPa / wood.BendingStrengthMPa,
                own.CrossGrainStrengthMPa / wood.CrossGrainStrengthMPa, AcrossMPa(own) / AcrossMPa(wood));
        }

        return new(laid);
    }

    /// <summary>Modulus across the grain, MPa.</summary>
    internal static double AcrossMPa(WoodInUse wood) =>
        wood.ModulusMPa * (WoodCatalogue.Find(wood.Species)?.TangentialModulusRatio ?? KnockOnEdge.UsualTangentialRatio);
}
