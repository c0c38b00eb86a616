using Paddle.Design.Wood;

namespace Paddle.Design.Laminating;

/// <summary>Stress in a glue line because the woods beside it swell by different amounts. Theory J10.</summary>
/// <param name="Species">The one wood.</param>
/// <param name="OtherSpecies">The other.</param>
/// <param name="StrainPercent">Difference of their swelling in the thickness across the change of moisture, per cent.</param>
/// <param name="StressMPa">Stress across the grain where one is held by the other, MPa: an upper estimate, wood creeps.</param>
/// <param name="StrengthMPa">Strength across the grain of the weaker, 5th percentile, MPa.</param>
public sealed record SwellingMismatch(string Species, string OtherSpecies, double StrainPercent, double StressMPa, double StrengthMPa)
{
    /// <summary>Change of moisture that it is reckoned for, per cent: a dry shop to a summer on the water (common practice, no source).</summary>
    internal const double ChangePercent = 4;

    /// <summary>Change of moisture, percent.</summary>
    public double MoisturePercent { get; } = ChangePercent;

    /// <summary>Share of the strength beyond which the maker is warned: about half of the stress creeps away (common practice, no source).</summary>
    internal const double WarnShare = 0.5;

    /// <summary>Whether the woods may open the line.</summary>
    internal bool IsRisky => StressMPa > WarnShare * StrengthMPa;

    /// <summary>The worst pair of neighbours.</summary>
    internal static SwellingMismatch Of(Laminate laminate) =>
        Enumerable.Range(0, laminate.Across.Count - 1).Select(k => Between(laminate.Across[k].Wood, laminate.Across[k + 1].Wood))
            .MaxBy(pair => pair.StressMPa / pair.StrengthMPa)!;

    internal static SwellingMismatch Between(WoodInUse one, WoodInUse other)
    {
        var strain = Math.Abs(Swelling(one) - Swelling(other));
        double a = Laminate.AcrossMPa(one), b = Laminate.AcrossMPa(other);
        return new(one.Species, other.Species, 100 * strain, strain * a * b / (a + b), Math.Min(one.CrossGrainStrengthMPa, other.CrossGrainStrengthMPa)); // theory J10
    }

    /// <summary>A thin sheet on a thick strip: the strip hardly gives. Theory J10 with the sheet's modulus alone.</summary>
    internal static SwellingMismatch OnFace(WoodInUse strip, WoodInUse sheet)
    {
        var strain = Math.Abs(Swelling(strip) - Swelling(sheet));
        return new(sheet.Species, strip.Species, 100 * strain, strain * Laminate.AcrossMPa(sheet), Math.Min(strip.CrossGrainStrengthMPa, sheet.CrossGrainStrengthMPa));
    }

    private static double Swelling(WoodInUse wood) => Shrinkage.ChangeMm(
        1, WoodCatalogue.Find(wood.Species)!.ShrinkageTangentialPercent, wood.MoisturePercent, wood.MoisturePercent + ChangePercent);
}
