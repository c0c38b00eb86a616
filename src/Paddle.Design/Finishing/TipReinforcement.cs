using MathNet.Numerics.Integration;
using Paddle.Design.Solid;

namespace Paddle.Design.Finishing;

/// <summary>Glass cloth over the tip on both faces.</summary>
/// <param name="LengthMm">How far it reaches up from the tip, mm.</param>
/// <param name="ClothGM2">Weight of the cloth, g/m².</param>
/// <param name="ClothAreaCm2">Cloth to cut for both faces, with 10 mm all round to wrap the edge, cm².</param>
/// <param name="AddedG">Mass that it adds, g.</param>
/// <param name="ResinG">Resin to mix, with 30 % for cup and brush and never under 30 g, g.</param>
/// <param name="ThicknessMm">Thickness on each face, mm.</param>
/// <param name="With">The finished paddle with it; the shift is what the cloth alone does.</param>
internal sealed record TipReinforcement(
    double LengthMm, double ClothGM2, double ClothAreaCm2, double AddedG, double ResinG, double ThicknessMm, Laden With)
{
    /// <summary>Whether it is part of the design, and in its finished figures; otherwise it is offered.</summary>
    public bool Chosen { get; init; }
    /// <summary>Weight of a usual cloth, g/m²: 6 oz a square yard.</summary>
    public const double UsualClothGM2 = 203;
    /// <summary>Resin for the weave filled, over the cloth's weight. Source: a hobby boatbuilding page on resin use, read.</summary>
    public const double ResinPerCloth = 2;
    /// <summary>Resin that bare wood soaks up besides, g/m²: 50-100, common practice, no source.</summary>
    public const double SoakGM2 = 75;
    private const double GlassGCm3 = 2.55;  // E-glass, from memory
    private const double EpoxyGCm3 = 1.15;  // cured epoxy, from memory
    private const double WrapMm = 10;
    private const double LeastBatchG = 30;  // below it the mixing ratio goes wrong; common practice, no source

    /// <summary>A reinforced tip and its effect on the balance, recomputed. Theory M15.</summary>
    /// <param name="lengthMm">How far it reaches up from the tip, mm; 10 mm to half the blade.</param>
    /// <param name="clothGM2">Weight of the cloth, g/m², 30 to 400.</param>
    /// <exception cref="ArgumentOutOfRangeException">Length or cloth outside its range.</exception>
    public static TipReinforcement For(
        PaddleSolid solid, double massG, double balanceMm, double lengthMm = 60, double clothGM2 = UsualClothGM2)
    {
        var places = solid.Form.Places;
        ArgumentOutOfRangeException.ThrowIfLessThan(lengthMm, 10);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(lengthMm, places.BladeMm / 2);
        ArgumentOutOfRangeException.ThrowIfLessThan(clothGM2, 30);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(clothGM2, 400);

        double from = places.OverallMm - lengthMm, to = places.OverallMm;

        // With x = to - s² the square root at the tip is smooth, and Gauss keeps its power.
        double Over(Func<double, double> f) => GaussLegendreRule.Integrate(
            s => 2 * s * f(to - s * s) * 2 * solid.Outline.HalfBreadthMm(to - s * s), 0, Math.Sqrt(to - from), 20);
        var face = Over(_ => 1);
        var wrap = WrapMm * (2 * lengthMm + 2 * solid.Outline.HalfBreadthMm(from));
        var centre = Over(solid.Form.AlongShaftMm) / face;
        var grams = 2 * face * 1e-6 * (clothGM2 * (1 + ResinPerCloth) + SoakGM2) + wrap * 1e-6 * clothGM2 * (1 + ResinPerCloth);
        var total = massG + grams;
        var balance = (massG * balanceMm + grams * centre) / total;
        var resin = grams - (2 * face + wrap) * 1e-6 * clothGM2;
        return new(
            lengthMm,
            clothGM2,
            (2 * face + wrap) / 100,
            grams,
            Math.Max(LeastBatchG, 1.3 * resin),
            clothGM2 * 1e-4 / GlassGCm3 * 10 + clothGM2 * ResinPerCloth * 1e-4 / EpoxyGCm3 * 10,
            new(total, balance, balance - balanceMm)); // theory M15
    }
}
