using Paddle.Design.Solid;
using Paddle.Design.Wood;

namespace Paddle.Design.Strength;

/// <summary>A knock on an unprotected edge: what force on 20 mm of it the wood across the grain bears, and what cloth laid over the edge
/// adds. Not a limit of the design: no wooden edge survives a rock by strength. Theory L20–L21.</summary>
/// <remarks>The wood opens along the grain beside the knock, where the edge bends across. Finite elements of 36 knocks on blades, 20-node
/// bricks, made apart from this project: σ = 0.8·P/t² reads 1.0 to 1.9 of their stress on the body of the blade, up to 2.7 near the
/// tip.</remarks>
internal static class EdgeKnock
{
    // Stress beside the knock: σ = 0.8·P/t². As a moment on a strip, σ = 6m/t²: m = P·0.8/6 for each millimetre.
    private const double StressShape = 0.8;
    private const double MomentShape = StressShape / 6;

    // Across the grain wood also opens under shear, however stiff its faces: the knock's own shear spreads over some 55 mm of the edge, and
    // in the middle of the thickness it pulls with 0.10 to 0.13·P/t² in finite elements of a clamped blade under cloth.
    private const double ShearShape = 0.135;

    /// <summary>Force (N) on 20 mm of the edge at which the wood opens. Theory L20.</summary>
    /// <param name="crossGrainStrengthMPa">Strength across the grain, MPa.</param>
    internal static double BorneN(double crossGrainStrengthMPa, double edgeThicknessMm) =>
        crossGrainStrengthMPa * edgeThicknessMm * edgeThicknessMm / StressShape; // theory L20

    /// <summary>Force (N) on 20 mm of an edge with cloth on both faces at which the wood under the cloth opens. Theory L21.</summary>
    /// <param name="crossGrainStrengthMPa">Strength of the wood across the grain, MPa.</param>
    /// <param name="crossGrainModulusMPa">Modulus of the wood across the grain, MPa.</param>
    /// <remarks>Transformed section of a strip across the edge: wood t thick between two facings. The same moment bends a stiffer strip
    /// less, so the wood's strain falls in the proportion of the stiffnesses. Shear across the grain opens it at the latest: pure shear
    /// pulls under 45° as hard as it shears.</remarks>
    internal static double BorneUnderClothN(
        double crossGrainStrengthMPa, double crossGrainModulusMPa, double edgeThicknessMm, ClothFacing cloth)
    {
        var t = edgeThicknessMm;
        var wood = crossGrainModulusMPa * t * t * t / 12;
        var bent = BorneN(crossGrainStrengthMPa, t) * (wood + FacingStiffness(t, cloth)) / wood;
        return Math.Min(bent, crossGrainStrengthMPa * t * t / ShearShape); // theory L21
    }

    /// <summary>Force (N) on 20 mm of the edge at which the cloth itself tears, the wood between having opened: only the two facings still
    /// pull and push. Theory L21.</summary>
    internal static double ClothTearsN(double edgeThicknessMm, ClothFacing cloth) =>
        cloth.StrengthMPa * cloth.ThicknessMm * (edgeThicknessMm + cloth.ThicknessMm) / MomentShape; // theory L21

    // Of both facings about the middle of the wood, N·mm²/mm.
    private static double FacingStiffness(double t, ClothFacing cloth)
    {
        double s = cloth.ThicknessMm, arm = (t + s) / 2;
        return 2 * cloth.ModulusMPa * (s * s * s / 12 + s * arm * arm);
    }
}

/// <summary>What a knock on 20 mm of the edge may be before the wood opens along the grain. No wooden edge survives a rock by strength. Theory L20–L21.</summary>
/// <param name="BareN">On bare wood, N.</param>
/// <param name="UnderClothN">On wood under glass cloth of 203 g/m² on both faces, N.</param>
/// <param name="ClothTearsN">At which that cloth tears, N.</param>
public sealed record KnockOnEdge(double BareN, double UnderClothN, double ClothTearsN)
{
    // EL to ET of woods with no published ratio: 0.05, in the middle of the Wood Handbook's table 5-1 (from memory).
    internal const double UsualTangentialRatio = 0.05;
    private const double UsualClothGM2 = 203;

    /// <param name="wood">The wood; of strips the middle one's.</param>
    /// <param name="edge">The strip at the edge; null of one piece.</param>
    internal static KnockOnEdge Of(double edgeThicknessMm, WoodInUse wood, LaidStrip? edge)
    {
        var across = wood.ModulusMPa * (WoodCatalogue.Find(wood.Species)?.TangentialModulusRatio ?? UsualTangentialRatio) * (edge?.CrossModulusRatio ?? 1);
        var strength = wood.CrossGrainStrengthMPa * (edge?.CrossStrengthRatio ?? 1);
        var cloth = ClothFacing.WovenGlass(UsualClothGM2, layers: 1);
        return new(
            EdgeKnock.BorneN(strength, edgeThicknessMm),
            EdgeKnock.BorneUnderClothN(strength, across, edgeThicknessMm, cloth),
            EdgeKnock.ClothTearsN(edgeThicknessMm, cloth));
    }
}

/// <summary>Cloth in resin on one face of the blade.</summary>
/// <param name="ModulusMPa">Modulus across the blade's grain, MPa.</param>
/// <param name="StrengthMPa">Tensile strength in the same direction, MPa.</param>
internal sealed record ClothFacing(double ThicknessMm, double ModulusMPa, double StrengthMPa)
{
    // E-glass 2 560 kg/m³ and 72 GPa, epoxy 3.3 GPa: from memory. A third of the volume glass: wetted out by hand (common practice, no
    // source). Strength 250 MPa: from memory; a table of woven E-glass in epoxy with 48 % resin by mass gives 330 MPa (Non-destructive
    // Testing and Repair of Pipelines, table 6).
    private const double GlassDensityKgM3 = 2560, GlassModulusMPa = 72000, ResinModulusMPa = 3300, GlassShare = 1.0 / 3, WovenStrengthMPa = 250;

    /// <summary>Plain-woven glass cloth in epoxy, half its threads across the blade.</summary>
    /// <param name="clothGM2">Mass of one layer of dry cloth, g/m².</param>
    /// <remarks>Rule of mixtures: half the glass lies along the pull, the rest counts as resin.</remarks>
    internal static ClothFacing WovenGlass(double clothGM2, int layers) => new(
        layers * clothGM2 / GlassDensityKgM3 / GlassShare,
        GlassShare / 2 * GlassModulusMPa + (1 - GlassShare / 2) * ResinModulusMPa,
        WovenStrengthMPa);
}
