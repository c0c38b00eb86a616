using Paddle.Design.Outline;
using Paddle.Design.Strength;

namespace Paddle.Design.Fitting;

/// <summary>The paddler that a hand spacing stands for where nothing else is said: an adult with the family's usual blade, unless it is a
/// small person's, who has neither that strength nor that blade, or a tall one's, whose blade balances a longer shaft.</summary>
internal static class UsualPaddler
{
    private const double LowerQuartile = -0.6745; // of a normal distribution, standard deviations

    /// <summary>Hand spacing from which on a paddler is reckoned with an adult's body mass and blade, mm: the women's lower quartile.</summary>
    public static double AdultFromMm { get; } = Survey.HandSpacing.Women.Mean + LowerQuartile * Survey.HandSpacing.Women.StandardDeviation;

    private static double LeastAdultKg { get; } = UsualMassKg(AdultFromMm);

    /// <summary>Body mass that loads are reckoned with, whole kg: an adult's, and of a small person as large a share of it as people of that
    /// hand spacing weigh of what they weigh where adults begin.</summary>
    /// <param name="spacingMm">S, mm.</param>
    public static double BodyMassKg(double spacingMm) => Math.Round(MassKg(spacingMm));

    /// <summary>Length and width of a family's blade, whole mm: the family's own, smaller for small people by the rule of the fitting, longer for the tall.</summary>
    /// <param name="spacingMm">S, mm.</param>
    public static (double LengthMm, double WidthMm) Blade(BladeFamily family, double spacingMm)
    {
        double length = family.DefaultLengthMm, width = family.DefaultWidthMm;
        var reference = BladeChoice.ReferenceSpacingMm;
        if (spacingMm > reference) return (Math.Round(length * BladeChoice.LengthShare(spacingMm / reference, 1)), width);
        if (spacingMm >= AdultFromMm) return (length, width);
        var drag = EffortArea.DragShare(MassKg(spacingMm));
        var share = BladeChoice.LengthShare(spacingMm / AdultFromMm, drag);
        return (Math.Max(PaddleLengths.LeastBladeLengthMm, Math.Round(share * length)), Math.Round(drag / share * width)); // theory F42
    }

    /// <summary>Width of a grip, whole mm: the style's own, and as much less as a small person's hand is smaller, within what the style can be.</summary>
    /// <param name="spacingMm">S, mm.</param>
    public static double GripWidthMm(GripPattern pattern, double spacingMm) =>
        Math.Max(pattern.WidthLimitsMm.Min, Math.Round(Math.Min(1, spacingMm / AdultFromMm) * pattern.WidthMm)); // theory F43

    private static double MassKg(double spacingMm) => spacingMm >= AdultFromMm
        ? Loads.UnknownBodyMassKg
        : Loads.UnknownBodyMassKg * UsualMassKg(spacingMm) / LeastAdultKg; // theory F41

    private static double UsualMassKg(double spacingMm) => BodyMass.FromStatureKg(HandSpacingMethods.FromStatureLine.StatureMm(spacingMm));
}
